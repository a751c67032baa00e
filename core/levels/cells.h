// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <span>
#include <stop_token>
#include <vector>

#include "core/levels/sample_span.h"
#include "core/units/progress.h"

namespace core {

/// A recording made small: means of equal short runs of samples, kept as running sums, so that the mean of
/// any stretch of them costs two look-ups. Single samples and pairs that stick out do not count, nor do
/// missing values; a cell with too few numbers is left out.
struct Cells {
  std::size_t length = 1;         ///< samples in a cell; the last one may have up to twice as many
  std::size_t samples = 0;        ///< in the recording
  double origin = 0;              ///< a value of the recording, taken off all others to keep the sums small
  std::vector<double> sums{0.0};  ///< of the means of all cells before each, one more than there are cells
  std::vector<std::size_t>
      places;  ///< which run of `length` samples each cell is; empty when none is missing

  std::size_t size() const { return sums.size() - 1; }
  double mean(std::size_t begin, std::size_t end) const {
    return (sums[end] - sums[begin]) / static_cast<double>(end - begin);
  }
  double operator[](std::size_t cell) const { return sums[cell + 1] - sums[cell]; }
  /// The samples from cell `begin` to cell `end` - 1.
  SampleSpan samplesOf(std::size_t begin, std::size_t end) const;
};

/// As many samples to a cell as make the work small without making short levels invisible: one up to some
/// 100,000 samples, a million cells at most.
std::size_t usualCellLength(std::size_t samples);

/// `values` in cells of `length` samples. Missing values are NaN. Empty when stopped.
Cells cellsOf(std::span<const double> values, std::size_t length, const std::stop_token& stop = {},
              const Progress& progress = {});

/// `cells` with each replaced by the mean of `width` cells about it, twice: what repeats every `width` cells
/// vanishes, steps become slopes 2 `width` long. `width` up to the number of cells.
Cells smoothed(Cells cells, std::size_t width);

/// `values` (no NaN) with what sticks out of the noise for one or two samples replaced by a median of its
/// neighbours; steps stay where they are.
std::vector<double> despiked(std::span<const double> values);

}  // namespace core
