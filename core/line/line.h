// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "core/units/result.h"

namespace core {

/// A least-squares line y = intercept + slope * x with what the scatter about it says.
///
/// The standard errors hold when x is exact and all y have the same unknown, independent scatter; it
/// is taken from the residuals, so they are relative to it and need at least one degree of freedom.
/// What cannot be known is absent, never NaN or 0.
struct Line {
  double intercept = 0;
  double slope = 0;
  std::optional<double> interceptError;     ///< standard error; 0 for a line through zero, absent at dof 0
  std::optional<double> slopeError;         ///< standard error; absent at dof 0
  std::optional<double> covariance;         ///< of intercept and slope; absent at dof 0
  std::optional<double> residualDeviation;  ///< sqrt(residual sum of squares / dof); absent at dof 0
  std::optional<double> rSquared;           ///< absent when the y (through zero: all y) do not vary
  double residualSumOfSquares = 0;
  int degreesOfFreedom = 0;  ///< points less parameters: n - 2, through zero n - 1
  bool throughZero = false;
  double centre = 0;              ///< mean of x, where the line is known best; 0 through zero
  std::vector<double> residuals;  ///< y less the line, in the order of the points
};

/// Ordinary least squares, all points with equal weight; orthogonalised on centred x and carried out in
/// double-double, so the result is right to the last digits for the numbers given.
/// R2 = 1 - RSS / sum (y - mean y)^2.
/// Fails, naming the point counted from 1, on a value that is not finite; on columns of different
/// length; with fewer than two points; when all x are equal.
Result<Line> fitLine(std::span<const double> x, std::span<const double> y);

/// As fitLine, held through (0, 0). R2 is uncentred, 1 - RSS / sum y^2 (the convention of NIST StRD,
/// data sets NoInt1 and NoInt2): it must not be compared with that of fitLine.
/// One point is enough; fails when all x are zero.
Result<Line> fitLineThroughZero(std::span<const double> x, std::span<const double> y);

double valueAt(const Line& line, double x);

/// Standard uncertainty of the line itself at `x`, the covariance of intercept and slope included:
/// u^2 = u^2(intercept) + x^2 u^2(slope) + 2 x cov, which is s^2/n + (x - centre)^2 u^2(slope). A single
/// new reading scatters by residualDeviation on top. Absent at dof 0.
std::optional<double> predictionErrorAt(const Line& line, double x);

}  // namespace core
