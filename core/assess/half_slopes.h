// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <vector>

#include "core/assess/check_points.h"

namespace core {

/// Slope of measured against expected readings over some points of a check, as the linear form that it is:
/// slope = sum of weights[i] * measured[i], over all points.
struct SlopeForm {
  double slope = 0;
  std::vector<double> weights;     ///< one a point of the check, 0 where it takes no part
  bool hasUsedCovariance = false;  ///< generalised least squares; else ordinary
};

/// The slope over `members` by generalised least squares with the covariance of the check (ISO/TS 28037:2010,
/// clause 9). Where that is not known or is singular, as that of readings typed without an uncertainty is, by
/// ordinary least squares. The expected values of the members must not all be equal.
SlopeForm slopeOver(const CheckPoints& points, std::span<const std::size_t> members);

}  // namespace core
