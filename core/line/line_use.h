// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/line/line.h"

// What a fitted line is worth when it is used.

namespace core {

/// A value with its standard uncertainty; absent where the line has none (dof 0 of an ordinary fit).
struct LineEstimate {
  double value = 0;
  std::optional<double> standard;
};

/// y of the line at `x`, whose standard uncertainty is `ux` (ISO/TS 28037 clause 11.2):
/// u^2 = u^2(a) + x^2 u^2(b) + 2 x cov(a, b) + b^2 ux^2. It is that of the line, not of a new reading.
LineEstimate forwardOf(const Line& line, double x, double ux = 0);

/// x at which the line is `y`, whose standard uncertainty is `uy` (clause 11.1):
/// u^2 = [uy^2 + u^2(a) + x^2 u^2(b) + 2 x cov(a, b)] / b^2. To first order in the uncertainties: the
/// slope must be many times its own. Fails when the slope is zero.
Result<LineEstimate> inverseOf(const Line& line, double y, double uy = 0);
/// As above, y being the mean of `readings` new readings that scatter as the fitted points do (ordinary fits
/// only, others fail): uy = residual deviation / sqrt(readings). Fails with no reading.
Result<LineEstimate> inverseOfMean(const Line& line, double y, unsigned readings);

/// Half widths of bands about the line at `x` with probability `coverage` (0.95): Student's t with the line's
/// degrees of freedom where the scatter is taken from the residuals, normal where it was stated. Absent where
/// the line has no uncertainty.
std::optional<double> confidenceHalfWidth(const Line& line, double x, double coverage);
/// Of one new reading, whose own standard uncertainty is `uNew`; of an ordinary fit the residual deviation
/// stands for it.
std::optional<double> predictionHalfWidth(const Line& line, double x, double coverage, double uNew);
/// Of the whole line at once (Working-Hotelling): sqrt(2 F(2, dof)) u, sqrt of chi-square with two degrees of
/// freedom where the scatter was stated; through zero as confidenceHalfWidth.
std::optional<double> simultaneousHalfWidth(const Line& line, double x, double coverage);

}  // namespace core
