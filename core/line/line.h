// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

#include "core/units/result.h"

namespace core {

/// How a line was fitted.
enum class LineFit : std::uint8_t {
  Ordinary,     ///< equal, independent scatter of y, taken from the residuals
  Weighted,     ///< stated uncertainty of each y (ISO/TS 28037 clause 6)
  Distance,     ///< stated uncertainties of each x and y, correlated within a point (clauses 7 and 8)
  Correlated,   ///< stated covariance of all y, x exact (clause 9)
  Generalised,  ///< stated covariance of all x and y (clause 10)
};

/// "ordinary least squares", "weighted least squares", "generalised distance regression", ...
std::string_view lineFitName(LineFit fit);

/// A line y = intercept + slope * x with what is known about it.
///
/// Of an ordinary fit the standard errors hold when x is exact and all y have the same unknown, independent
/// scatter; it is taken from the residuals, so they are relative to it and need at least one degree of
/// freedom. Of all other fits they follow from the stated uncertainties alone and are never scaled by the
/// residuals: whether these agree with what was stated is what `chiSquare` tells.
/// What cannot be known is absent, never NaN or 0.
struct Line {
  LineFit fit = LineFit::Ordinary;
  double intercept = 0;
  double slope = 0;
  std::optional<double> interceptError;     ///< standard error; 0 for a line through zero, absent at dof 0
  std::optional<double> slopeError;         ///< standard error; absent at dof 0
  std::optional<double> covariance;         ///< of intercept and slope; absent at dof 0
  std::optional<double> residualDeviation;  ///< sqrt(residual sum of squares / dof); absent at dof 0
  /// Share of the variation of y that the line explains; of Weighted and Correlated in weighted squares.
  /// Absent when the y (through zero: all y) do not vary, and where x has an uncertainty too.
  std::optional<double> rSquared;
  double residualSumOfSquares = 0;  ///< of the residuals as they are, without weights
  int degreesOfFreedom = 0;         ///< points less parameters: n - 2, through zero n - 1
  bool throughZero = false;
  double centre = 0;                  ///< (weighted) mean of x, where the line is known best; 0 through zero
  std::optional<double> centreError;  ///< standard error there, independent of the slope's; 0 through zero
  std::vector<double> residuals;      ///< y less the line at the given x, in the order of the points

  std::optional<double> chiSquare;  ///< weighted sum of squared residuals; of stated uncertainties only
  /// Of a chi-square with `degreesOfFreedom` to be at least `chiSquare`: below 0.05 the line or the stated
  /// uncertainties are to be doubted. Absent with `chiSquare` and at dof 0.
  std::optional<double> chiSquareProbability;
  /// Residuals over their own standard uncertainty, which the fit has made smaller (internally studentised);
  /// 0 where a point has no freedom to be off the line. Empty at dof 0 of an ordinary fit.
  std::vector<double> standardised;
  /// Pull of each point on its own fitted value, d fitted / d y: 0 to 1 with independent points; they sum to
  /// the number of parameters.
  std::vector<double> leverages;
  std::vector<double> adjustedX;  ///< best estimates of the true x; of Distance and Generalised only
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

}  // namespace core
