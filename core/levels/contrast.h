// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <vector>

#include "core/levels/cells.h"

namespace core {

/// Mean of the `window` cells from `at` on, less that of as many before it.
inline double contrastAt(const Cells& cells, std::size_t at, std::size_t window) {
  return (cells.sums[at + window] - 2 * cells.sums[at] + cells.sums[at - window]) /
         static_cast<double>(window);
}

/// What contrasts over one window are where there is no step.
struct Scale {
  std::size_t window = 1;  ///< cells on either side
  double drift = 0;        ///< their usual value
  double noise = 0;        ///< their standard deviation about it: noise of any colour, wandering
};

/// Scales from `shortest` cells to a twentieth of the recording, each about a third longer than the one
/// before. Where steps stand so close that they make most of the contrasts the noise comes out too large,
/// never too small.
std::vector<Scale> scalesOf(const Cells& cells, std::size_t shortest);

/// `scales` with the noise of those that many steps were in the way of judged again, from the contrasts that
/// see none of the steps at `places` (rising).
std::vector<Scale> withoutSteps(const Cells& cells, std::vector<Scale> scales,
                                const std::vector<std::size_t>& places);

/// Where a recording scatters more than it usually does.
class LocalNoise {
 public:
  LocalNoise(const Cells& cells, const std::vector<Scale>& scales);
  /// Standard deviation of the contrast at cell `at` over the window of `scale`.
  double of(const Scale& scale, std::size_t at) const;

 private:
  Scale m_shortest;
  std::size_t m_stretch = 1;      ///< cells that one entry of m_squares stands for
  std::vector<double> m_squares;  ///< running sums of the squared noise of stretches, at the shortest scale
};

/// The least noise of all scales with windows of `most` cells at most: that of a contrast over `most` cells
/// is no larger, though steps that stand close may make it seem so.
double leastNoise(const std::vector<Scale>& scales, std::size_t most);

/// The longest of `scales` (rising) with a window of `most` at most; the first when there is none.
const Scale& scaleFor(const std::vector<Scale>& scales, std::size_t most);

}  // namespace core
