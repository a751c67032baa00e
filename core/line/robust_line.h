// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>

#include "core/units/result.h"

namespace core {

/// A line that up to almost half of the points cannot pull away. An aid for finding the points that are off:
/// it has no uncertainty, and no verdict rests on it.
struct RobustLine {
  double intercept = 0;
  double slope = 0;
  double scale = 0;  ///< 1.4826 x median |residual|: scatter of the good points, as of a normal distribution
};

/// Repeated medians: the slope is the median over points of the median slope to all other points, the
/// intercept the median of y - slope x. Source: A. F. Siegel, Biometrika 69 (1982) 242. Points at the
/// same x give no slope and are left out of each other's. Fails as fitLine, and with more than 10,000 points:
/// its time grows with their square.
Result<RobustLine> fitRobustLine(std::span<const double> x, std::span<const double> y);

}  // namespace core
