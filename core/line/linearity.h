// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <span>
#include <vector>

#include "core/line/reference_line.h"
#include "core/units/result.h"

// How far a characteristic strays from a straight line. A linearity figure means nothing without its line and
// its denominator, so they travel with it.

namespace core {

/// A reference line through a characteristic of one y per x, as the linear form of the y that it is:
/// slope = sum of slopeWeights[i] * y[i], intercept likewise. Of the minimax lines that holds while the same
/// points are the ones farthest off; an uncertainty of the line follows from the weights to first order.
struct ReferenceFit {
  double intercept = 0;
  double slope = 0;
  std::vector<double> interceptWeights;
  std::vector<double> slopeWeights;
};

/// The line `reference` through points whose x rise strictly.
///
/// The minimax line is exact: the greatest deviation of a slope is half the range of y - slope x, which only
/// the convex hull decides and which is least at the slope of one of the hull's edges (Chebyshev;
/// statistics texts, from memory). There is one such line when the x differ. The zero-based one is the
/// minimax line of the points and their mirror images in (0, 0). A point at x = 0 is off by its y whatever
/// the slope is: when that is the greatest deviation, every slope near is as good. The slope is therefore the
/// one that is best for the points at other x, and that one is unique. Fails as fitLine does, and when the x
/// do not rise.
Result<ReferenceFit> referenceLineOf(std::span<const double> x, std::span<const double> y,
                                     ReferenceLine reference);

struct Linearity {
  ReferenceLine reference = ReferenceLine::LeastSquares;
  double intercept = 0;  ///< of the reference line
  double slope = 0;
  double fullScaleOutput = 0;    ///< mean y at the largest x less mean y at the smallest x; has a sign
  double greatestDeviation = 0;  ///< mean y less the line where that is farthest off; has a sign
  double atX = 0;                ///< where that is; of equal ones (but for rounding) the smallest x
  double share = 0;              ///< |greatestDeviation| / |fullScaleOutput|: 0.01 is 1 %
};

/// Readings at equal x are averaged first (rising and falling alike), so hysteresis and scatter do not
/// count as non-linearity. All lines use that mean characteristic, one point per x.
/// Definitions: reference lines as in ISA-37.1 (from memory), denominator full-scale output. A line through
/// the first measured point is the zero-based one of x and y counted from that point.
/// Fails as fitLine does, and when the outputs at both ends are equal: there is no full scale then.
Result<Linearity> linearityOf(std::span<const double> x, std::span<const double> y, ReferenceLine reference);

/// Index of the deviation that is greatest in magnitude: of those that differ from it by rounding alone the
/// first, so that it does not depend on last digits which one is named. `size` is that of the values whose
/// differences the deviations are. 0 when there are none.
std::size_t farthestOff(std::span<const double> deviations, double size);

}  // namespace core
