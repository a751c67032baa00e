// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <span>

#include "core/line/reference_line.h"
#include "core/units/result.h"

namespace core {

/// How far a characteristic strays from a straight line. A linearity figure means nothing without its
/// line and its denominator, so they travel with it.
struct Linearity {
  ReferenceLine reference = ReferenceLine::LeastSquares;
  double intercept = 0;  ///< of the reference line
  double slope = 0;
  double fullScaleOutput = 0;    ///< mean y at the largest x less mean y at the smallest x; has a sign
  double greatestDeviation = 0;  ///< mean y less the line where that is farthest off; has a sign
  double atX = 0;                ///< where that is; the smallest such x
  double share = 0;              ///< |greatestDeviation| / |fullScaleOutput|: 0.01 is 1 %
};

/// Readings at equal x are averaged first (rising and falling alike), so hysteresis and scatter do not
/// count as non-linearity. All lines use that mean characteristic, one point per x.
/// Definitions: reference lines as in ISA-37.1 (from memory), denominator full-scale output.
/// Fails as fitLine does, and when the outputs at both ends are equal: there is no full scale then.
Result<Linearity> linearityOf(std::span<const double> x, std::span<const double> y, ReferenceLine reference);

}  // namespace core
