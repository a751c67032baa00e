// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cassert>
#include <cstddef>
#include <utility>

#include "core/recording/samples.h"

namespace core {

/// The times of the samples of a recording, in seconds, never falling: a time of its own for each sample, or
/// one spacing for all, which costs no memory.
class TimeAxis {
 public:
  TimeAxis() = default;
  /// Sample k at start_s + k spacing_s; `spacing_s` above 0.
  static TimeAxis even(double start_s, double spacing_s, std::size_t samples);
  /// Finite times that never fall.
  explicit TimeAxis(Samples times_s) : m_times_s(std::move(times_s)), m_size(m_times_s.size()) {}

  std::size_t size() const { return m_size; }
  bool empty() const { return m_size == 0; }
  double operator[](std::size_t k) const {
    assert(k < m_size);
    return m_times_s.empty() ? m_start_s + static_cast<double>(k) * m_spacing_s : m_times_s[k];
  }
  double front() const { return (*this)[0]; }
  double back() const { return (*this)[m_size - 1]; }

  /// The first sample that does not lie before `time_s`; size() when all do. Logarithmic or constant time.
  std::size_t indexAt(double time_s) const;
  /// Median of the spacings above 0, of at most some thousands of them spread over the whole; 0 when there is
  /// none.
  double usualSpacing_s() const;

 private:
  Samples m_times_s;
  double m_start_s = 0;
  double m_spacing_s = 1;
  std::size_t m_size = 0;
};

}  // namespace core
