// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <span>
#include <vector>

#include "core/recording/samples.h"

namespace core {

/// Least and greatest of some values; least above greatest when there was no number among them.
struct Extremes {
  double least = 1;
  double greatest = 0;

  bool empty() const { return least > greatest; }
  friend bool operator==(const Extremes&, const Extremes&) = default;
};

/// Many of them: they lie where samples do.
using ExtremeBlocks = std::vector<Extremes, SampleAllocator<Extremes>>;

/// What is the extreme of either.
Extremes joined(Extremes a, Extremes b);

/// The extremes of blocks of a column in ever longer blocks, so that a curve of any length is drawn at the
/// cost of its pixels. NaN is passed over. Takes about a thirtieth of the memory of the values.
class Envelope {
 public:
  Envelope() = default;
  explicit Envelope(std::span<const double> values);

  /// The extremes of samples begin to end - 1. `values` are those the envelope was made of; they are looked
  /// at where the ends lie within a shortest block. Costs the logarithm of the length.
  Extremes of(std::span<const double> values, std::size_t begin, std::size_t end) const;

  /// The same for a drawing: a stretch of 4096 samples or more may take in up to 63 on either side, since
  /// those at its ends would be fetched from the disk.
  Extremes drawn(std::span<const double> values, std::size_t begin, std::size_t end) const;

 private:
  std::vector<ExtremeBlocks> m_scales;  ///< blocks of 64, 64*8, 64*8*8 ... samples
};

}  // namespace core
