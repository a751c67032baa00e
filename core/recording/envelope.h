// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <span>
#include <vector>

namespace core {

/// Least and greatest of some values; least above greatest when there was no number among them.
struct Extremes {
  float least = 1;
  float greatest = 0;

  bool empty() const { return least > greatest; }
};

/// The extremes of blocks of a column in ever longer blocks, so that a curve of any length is drawn at the
/// cost of its pixels. NaN is passed over. Takes about an eighth of the memory of the values.
class Envelope {
 public:
  Envelope() = default;
  explicit Envelope(std::span<const double> values);

  /// The extremes of `pixels` equal parts of the samples begin to end - 1, each part with its neighbours'
  /// edges so that no stroke is missed. `values` are those the envelope was made of; they are looked at where
  /// a part is shorter than the shortest block. Costs a few operations a pixel whatever the length.
  std::vector<Extremes> over(std::span<const double> values, std::size_t begin, std::size_t end,
                             std::size_t pixels) const;

 private:
  std::vector<std::vector<Extremes>> m_scales;  ///< blocks of 64, 64*8, 64*8*8 ... samples
};

}  // namespace core
