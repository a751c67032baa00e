// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>

// Two straight lines through readings whose uncertainties are not stated, held against each other. Formulas
// are those of any course on regression (analysis of covariance; from memory) and stand at each function.

namespace core {

/// What an ordinary least-squares line leaves behind: enough to compare it with another.
struct LineSample {
  std::size_t points = 0;
  double intercept = 0, slope = 0;
  double meanX = 0, squaresX = 0;    ///< squaresX: sum of (x - mean x)^2
  double meanY = 0, productsXY = 0;  ///< productsXY: sum of (x - mean x)(y - mean y)
  double residualSquares = 0;

  double dof() const { return static_cast<double>(points) - 2; }
};

/// Of points in columns of equal length; none with fewer than two points or all x equal.
std::optional<LineSample> lineSampleOf(std::span<const double> x, std::span<const double> y);

/// s_p^2 = (RSS1 + RSS2) / (n1 + n2 - 4).
struct Scatter {
  double variance = 0;
  double dof = 0;
};
/// None without a degree of freedom.
std::optional<Scatter> pooledScatter(const LineSample& before, const LineSample& after);

/// Two-sided p of F = s1^2 / s2^2 against equal scatter of both; none where one has no degree of freedom or
/// no scatter.
std::optional<double> equalScatterProbability(const LineSample& before, const LineSample& after);

struct ParameterDifference {
  double value = 0;  ///< later less earlier
  double standard = 0;
  double dof = 0;

  double t() const { return value / standard; }
};

/// Difference of slopes. Pooled: SE = s_p sqrt(1/S_xx1 + 1/S_xx2) with n1 + n2 - 4 degrees of freedom; else,
/// for unequal scatter, sqrt(s1^2/S_xx1 + s2^2/S_xx2) with those of Welch and Satterthwaite. None without a
/// degree of freedom (Welch: in each).
std::optional<ParameterDifference> slopeDifference(const LineSample& before, const LineSample& after,
                                                   bool pooled = true);
/// The same of intercepts: SE = s_p sqrt(1/n1 + xbar1^2/S_xx1 + 1/n2 + xbar2^2/S_xx2). To be looked at when
/// the slopes agree.
std::optional<ParameterDifference> interceptDifference(const LineSample& before, const LineSample& after,
                                                       bool pooled = true);

/// One line for both? F = [(RSS of the common line - RSS1 - RSS2) / 2] / s_p^2 with (2, n1 + n2 - 4).
struct CommonLine {
  double residualSquares = 0;
  double f = 0;
  double probability = 0;  ///< of an F so large when there is one line
};
std::optional<CommonLine> commonLine(const LineSample& before, const LineSample& after);

/// d^T (V1 + V2)^-1 d of d = (difference of intercepts, of slopes), which are correlated, against chi-square
/// with 2 degrees of freedom: uncertainties known, independent of each other. Covariance of each line as
/// u(a)^2, cov(a, b), u(b)^2. None when the sum has no inverse.
struct LineCovariance {
  double intercept = 0, both = 0, slope = 0;
};
struct JointTest {
  double chiSquare = 0;
  double probability = 0;
};
std::optional<JointTest> jointTest(double interceptDifference, double slopeDifference,
                                   const LineCovariance& before, const LineCovariance& after);

}  // namespace core
