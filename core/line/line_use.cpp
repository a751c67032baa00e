// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/line/line_use.h"

#include <cmath>

namespace core {

LineEstimate forwardOf(const Line& line, double x, double ux) {
  LineEstimate estimate{valueAt(line, x), std::nullopt};
  if (!line.slopeError || !line.interceptError || !line.covariance) return estimate;
  // About the centre, where intercept and slope are uncorrelated, nothing cancels.
  const double atCentre2 = line.throughZero
                               ? 0
                               : *line.interceptError * *line.interceptError -
                                     line.centre * line.centre * *line.slopeError * *line.slopeError;
  estimate.standard =
      std::hypot(std::sqrt(std::max(0.0, atCentre2)), (x - line.centre) * *line.slopeError, line.slope * ux);
  return estimate;
}

}  // namespace core
