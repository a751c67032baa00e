// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

namespace core {

/// Centre and scale that a few wild values do not move.
struct RobustMean {
  double mean = 0;   ///< Huber's M-estimate with k = 1.5
  double scale = 0;  ///< 1.4826 times the median absolute deviation from the median
};

/// Of at least one value. With a scale of zero the median is the mean.
/// Source: Huber, Robust Statistics (1981); k and scale as R's MASS::huber has them.
RobustMean robustMeanOf(std::vector<double> values);

/// Middle value; the mean of the two middle ones of an even number. At least one value.
double medianOf(std::vector<double>& values);

}  // namespace core
