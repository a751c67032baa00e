// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <span>
#include <vector>

namespace core {

/// What tells a step from noise in one recording.
struct StepNoise {
  std::size_t window = 1;   ///< samples averaged on either side of a supposed step
  double contrast = 0;      ///< standard deviation of the difference of those two averages
  double leastStep = 0;     ///< smaller differences are no steps
  bool isMeasured = false;  ///< `contrast` is the scatter of the recording and not its least value

  /// Standard deviation of white noise that would scatter long averages as the recording does: correlated
  /// noise and mains pick-up are in it.
  double longRun() const;
};

/// Mean of the next `window` values less that of the last `window`, for each index with so many on both
/// sides; 0 for the others.
std::vector<double> contrastsOf(std::span<const double> values, std::size_t window);

/// Takes off all contrasts their median, which is what a drift adds to each; never more than `most`, so that
/// holds between long ramps do not look like steps.
void takeDriftOut(std::vector<double>& contrasts, std::size_t window, double most);

/// Scatter of the contrasts, from their lower quartile since steps make some of them large. It is not taken
/// below a twentieth of `leastStep`, so that a recording without noise has steps too.
StepNoise stepNoise(const std::vector<double>& contrasts, std::size_t window, double leastStep);

/// Where steps may be: the largest |contrast| within a window on either side, and beyond 2.5 times the noise
/// and half the least step. At most 20,000, the strongest. A slow drift has none.
std::vector<std::size_t> stepCandidates(const std::vector<double>& contrasts, const StepNoise& noise);

}  // namespace core
