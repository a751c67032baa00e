// SPDX-License-Identifier: GPL-3.0-or-later
// Properties and refusals of the fits to stated uncertainties. Numbers of published examples are checked in
// tests/reference/published_lines_test.cpp, random ones against GSL in tests/reference/line_gsl_test.cpp.
#include "core/line/stated_fits.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <numeric>
#include <random>

#include "core/line/line_use.h"
#include "tests/support/digits.h"

namespace stated_fits_test {

using core::Line;
using core::Through;
using testing::HasSubstr;
using Column = std::vector<double>;

constexpr double nan = std::numeric_limits<double>::quiet_NaN();
constexpr double infinity = std::numeric_limits<double>::infinity();

/// Points about y = 3 - 2 x with uncertainties that differ tenfold, fixed by a seed.
struct Points {
  Column x, y, ux, uy, covariances;
};

Points scattered(unsigned seed, std::size_t count) {
  std::mt19937 generator(seed);
  const auto even = [&] { return static_cast<double>(generator()) / 4294967296.0; };
  Points points;
  for (std::size_t i = 0; i < count; ++i) {
    const double ux = 0.02 * std::pow(10, even()), uy = 0.03 * std::pow(10, even());
    const double x = static_cast<double>(i) - 2;
    points.x.push_back(x + ux * (4 * even() - 2));
    points.y.push_back(3 - 2 * x + uy * (4 * even() - 2));
    points.ux.push_back(ux);
    points.uy.push_back(uy);
    points.covariances.push_back(ux * uy * (1.6 * even() - 0.8));
  }
  return points;
}

Column matrixOf(const Column& variances) {
  Column matrix(variances.size() * variances.size(), 0.0);
  for (std::size_t i = 0; i < variances.size(); ++i) matrix[i * variances.size() + i] = variances[i];
  return matrix;
}

Column squares(Column column) {
  for (double& v : column) v *= v;
  return column;
}

/// Covariance of x_1..x_m, y_1..y_m that is nothing but that within each point.
Column blocksOf(const Points& points) {
  const std::size_t m = points.x.size();
  Column variances = squares(points.ux);
  const Column ofY = squares(points.uy);
  variances.insert(variances.end(), ofY.begin(), ofY.end());
  Column matrix = matrixOf(variances);
  for (std::size_t i = 0; i < m; ++i)
    matrix[i * 2 * m + m + i] = matrix[(m + i) * 2 * m + i] = points.covariances[i];
  return matrix;
}

Line fitted(core::Result<Line> line) {
  if (!line) throw std::runtime_error(line.error().text());
  return *std::move(line);
}

void expectSame(const Line& line, const Line& other, double digits) {
  EXPECT_DIGITS(line.intercept, other.intercept, digits);
  EXPECT_DIGITS(line.slope, other.slope, digits);
  EXPECT_DIGITS(*line.interceptError, *other.interceptError, digits);
  EXPECT_DIGITS(*line.slopeError, *other.slopeError, digits);
  EXPECT_DIGITS(*line.covariance, *other.covariance, digits);
  EXPECT_DIGITS(*line.chiSquare, *other.chiSquare, digits);
  EXPECT_DIGITS(*line.chiSquareProbability, *other.chiSquareProbability, digits);
  for (std::size_t i = 0; i < line.residuals.size(); ++i) {
    EXPECT_NEAR(line.residuals[i], other.residuals[i], std::pow(10, -digits)) << i;
    EXPECT_NEAR(line.standardised[i], other.standardised[i], std::pow(10, 1 - digits)) << i;
    EXPECT_NEAR(line.leverages[i], other.leverages[i], std::pow(10, -digits)) << i;
  }
}

TEST(StatedFits, EqualWeightsGiveTheOrdinaryLineWithItsErrorsUnscaled) {
  // Derived: with u the same for all, the normal equations are those of the ordinary fit; its errors hold s
  // where these hold u. 14 digits: both sides round once or twice.
  const Points p = scattered(1, 9);
  const double u = 0.4;
  const Line stated = fitted(core::fitWeightedLine(p.x, p.y, Column(9, u)));
  const Line plain = fitted(core::fitLine(p.x, p.y));
  EXPECT_DIGITS(stated.slope, plain.slope, 14);
  EXPECT_DIGITS(stated.intercept, plain.intercept, 14);
  EXPECT_DIGITS(*stated.slopeError / u, *plain.slopeError / *plain.residualDeviation, 14);
  EXPECT_DIGITS(*stated.interceptError / u, *plain.interceptError / *plain.residualDeviation, 14);
  EXPECT_DIGITS(*stated.chiSquare, plain.residualSumOfSquares / (u * u), 13);
  EXPECT_DIGITS(*stated.rSquared, *plain.rSquared, 14);
  for (std::size_t i = 0; i < 9; ++i) {
    EXPECT_NEAR(stated.leverages[i], plain.leverages[i], 1e-14);
    EXPECT_NEAR(stated.standardised[i] * u, plain.standardised[i] * *plain.residualDeviation, 1e-13);
  }
}

TEST(StatedFits, LeveragesSumToTheParameters) {
  // Derived: the trace of a projection is its rank.
  const Points p = scattered(2, 7);
  const auto sum = [](const Line& line) {
    return std::accumulate(line.leverages.begin(), line.leverages.end(), 0.0);
  };
  for (const Through through : {Through::Anywhere, Through::Zero}) {
    const double parameters = through == Through::Zero ? 1 : 2;
    EXPECT_NEAR(sum(fitted(core::fitWeightedLine(p.x, p.y, p.uy, through))), parameters, 1e-13);
    EXPECT_NEAR(sum(fitted(core::fitDistanceLine(p.x, p.y, p.ux, p.uy, p.covariances, through))), parameters,
                1e-13);
    EXPECT_NEAR(sum(fitted(core::fitGeneralisedLine(p.x, p.y, blocksOf(p), through))), parameters, 1e-13);
  }
  EXPECT_NEAR(sum(fitted(core::fitLine(p.x, p.y))), 2, 1e-14);
  EXPECT_NEAR(sum(fitted(core::fitLineThroughZero(p.x, p.y))), 1, 1e-14);
}

TEST(StatedFits, AUniformOffsetIsKnownFromTheInterceptAlone) {
  // Derived: V + c^2 1 1^T = V + A (c^2 0; 0 0) A^T adds c^2 to the variance of the intercept and leaves the
  // estimates (Rao's lemma), whatever V.
  const Points p = scattered(3, 9);
  const Column independent = matrixOf(squares(p.uy));
  for (const double c : {0.1, 30.0}) {
    Column shared = independent;
    for (double& v : shared) v += c * c;
    const Line without = fitted(core::fitCorrelatedLine(p.x, p.y, independent));
    const Line with = fitted(core::fitCorrelatedLine(p.x, p.y, shared));
    // c is up to a thousand times the smallest u: adding c^2 costs V, the input, up to six of its digits.
    EXPECT_DIGITS(with.slope, without.slope, 9);
    EXPECT_DIGITS(*with.slopeError, *without.slopeError, 9);
    EXPECT_DIGITS(*with.covariance, *without.covariance, 8);
    EXPECT_DIGITS(*with.chiSquare, *without.chiSquare, 8);
    EXPECT_DIGITS(*with.interceptError, std::hypot(*without.interceptError, c), 12);
  }
}

TEST(StatedFits, ASharedGainIsKnownFromTheSlopeAlone) {
  // Derived as above: V + g^2 x x^T adds g^2 to the variance of the slope.
  const Points p = scattered(4, 9);
  const double g = 0.05;
  Column shared = matrixOf(squares(p.uy));
  for (std::size_t i = 0; i < 9; ++i)
    for (std::size_t j = 0; j < 9; ++j) shared[i * 9 + j] += g * g * p.x[i] * p.x[j];
  const Line without = fitted(core::fitWeightedLine(p.x, p.y, p.uy));
  const Line with = fitted(core::fitCorrelatedLine(p.x, p.y, shared));
  // g x is at most ten times the smallest u, which costs two digits.
  EXPECT_DIGITS(with.slope, without.slope, 12);
  EXPECT_DIGITS(*with.interceptError, *without.interceptError, 12);
  EXPECT_DIGITS(*with.slopeError, std::hypot(*without.slopeError, g), 12);
}

TEST(StatedFits, EachReducesToTheSimplerOne) {
  const Points p = scattered(5, 8);
  for (const Through through : {Through::Anywhere, Through::Zero}) {
    const Line weighted = fitted(core::fitWeightedLine(p.x, p.y, p.uy, through));
    // 12 digits: two ways of rounding, nothing ill-conditioned.
    expectSame(fitted(core::fitCorrelatedLine(p.x, p.y, matrixOf(squares(p.uy)), through)), weighted, 12);
    expectSame(fitted(core::fitDistanceLine(p.x, p.y, Column(8, 0.0), p.uy, {}, through)), weighted, 12);
    // 10 digits: the iterations end when a step is 1e-12 of the uncertainties.
    expectSame(fitted(core::fitGeneralisedLine(p.x, p.y, blocksOf(p), through)),
               fitted(core::fitDistanceLine(p.x, p.y, p.ux, p.uy, p.covariances, through)), 10);
  }
}

TEST(StatedFits, AnExactXAmongUncertainOnesIsKept) {
  Points p = scattered(6, 6);
  p.ux[2] = p.covariances[2] = 0;
  const Line pairs = fitted(core::fitDistanceLine(p.x, p.y, p.ux, p.uy, p.covariances));
  expectSame(fitted(core::fitGeneralisedLine(p.x, p.y, blocksOf(p))), pairs, 10);
  EXPECT_EQ(pairs.adjustedX[2], p.x[2]);
  EXPECT_NE(pairs.adjustedX[3], p.x[3]);
}

TEST(StatedFits, ExchangingXAndYTurnsTheDistanceLineAbout) {
  // Derived: the sum of squares is symmetric in x and y, so the best line is the same line; u(1/b) =
  // u(b)/b^2.
  for (unsigned seed = 10; seed < 20; ++seed) {
    const Points p = scattered(seed, 9);
    const Line line = fitted(core::fitDistanceLine(p.x, p.y, p.ux, p.uy, p.covariances));
    const Line turned = fitted(core::fitDistanceLine(p.y, p.x, p.uy, p.ux, p.covariances));
    // The end of the iteration: 1e-12 of an uncertainty of a few percent.
    EXPECT_DIGITS(turned.slope, 1 / line.slope, 12);
    EXPECT_DIGITS(turned.intercept, -line.intercept / line.slope, 12);
    EXPECT_DIGITS(*turned.slopeError, *line.slopeError / (line.slope * line.slope), 11);
    EXPECT_DIGITS(*turned.chiSquare, *line.chiSquare, 11);
  }
}

TEST(StatedFits, AdjustedPointsAreTheNearestOnTheLine) {
  // Derived: with u_x = u_y = 1 the best true point is the foot of the perpendicular,
  // X = (x + b (y - a)) / (1 + b^2).
  const Points p = scattered(7, 6);
  const Line line = fitted(core::fitDistanceLine(p.x, p.y, Column(6, 1.0), Column(6, 1.0)));
  for (std::size_t i = 0; i < 6; ++i)
    EXPECT_NEAR(line.adjustedX[i],
                (p.x[i] + line.slope * (p.y[i] - line.intercept)) / (1 + line.slope * line.slope), 1e-13);
}

TEST(StatedFits, ShiftsAndScalesGoThrough) {
  // Derived: x -> 2^20 + 8 x and y -> 1024 y are exact in binary up to the digits that x loses, so slope and
  // chi-square follow; what is lost is 2^20 / 0.02 of the digits of x over its uncertainty.
  const Points p = scattered(8, 9);
  Points moved = p;
  for (std::size_t i = 0; i < 9; ++i) {
    moved.x[i] = 1048576 + 8 * p.x[i];
    moved.y[i] *= 1024, moved.ux[i] *= 8, moved.uy[i] *= 1024, moved.covariances[i] *= 8 * 1024;
  }
  const auto compare = [](const Line& line, const Line& far) {
    EXPECT_DIGITS(far.slope, line.slope * 128, 9);
    EXPECT_DIGITS(*far.slopeError, *line.slopeError * 128, 9);
    EXPECT_DIGITS(*far.chiSquare, *line.chiSquare, 8);
    EXPECT_DIGITS(*core::forwardOf(far, 1048576 + 8 * 2.5).standard,
                  *core::forwardOf(line, 2.5).standard * 1024, 9);
  };
  compare(fitted(core::fitWeightedLine(p.x, p.y, p.uy)),
          fitted(core::fitWeightedLine(moved.x, moved.y, moved.uy)));
  compare(fitted(core::fitCorrelatedLine(p.x, p.y, matrixOf(squares(p.uy)))),
          fitted(core::fitCorrelatedLine(moved.x, moved.y, matrixOf(squares(moved.uy)))));
  compare(fitted(core::fitDistanceLine(p.x, p.y, p.ux, p.uy, p.covariances)),
          fitted(core::fitDistanceLine(moved.x, moved.y, moved.ux, moved.uy, moved.covariances)));
  compare(fitted(core::fitGeneralisedLine(p.x, p.y, blocksOf(p))),
          fitted(core::fitGeneralisedLine(moved.x, moved.y, blocksOf(moved))));
}

TEST(StatedFits, KeepsItsDigitsWithAPointThatWeighsNothing) {
  // Derived: 1, 3, 5 at 0, 1, 2 lie on y = 1 + 2 x; the fourth point, 1e10 off, counts 1e-40 of them.
  const Line line = fitted(
      core::fitWeightedLine(Column{0, 1, 2, 3}, Column{1, 3, 5, 1e10}, Column{1e-6, 1e-6, 1e-6, 1e14}));
  EXPECT_DIGITS(line.intercept, 1, 14);
  EXPECT_DIGITS(line.slope, 2, 14);
  EXPECT_DIGITS(*line.slopeError, 1e-6 / std::sqrt(2), 14);
}

TEST(StatedFits, TwoPointsHaveAnUncertaintyButNoTest) {
  // Derived: b = y2 - y1, u^2(b) = u1^2 + u2^2 over the distance of x; the line meets both points.
  const Column x{0, 2}, y{1, 5}, u{0.3, 0.4};
  for (const Line& line :
       {fitted(core::fitWeightedLine(x, y, u)), fitted(core::fitCorrelatedLine(x, y, matrixOf(squares(u)))),
        fitted(core::fitDistanceLine(x, y, Column{0, 0}, u))}) {
    EXPECT_DIGITS(line.slope, 2, 15);
    EXPECT_DIGITS(*line.slopeError, 0.25, 14);
    EXPECT_DIGITS(*line.interceptError, 0.3, 14);
    EXPECT_EQ(line.degreesOfFreedom, 0);
    EXPECT_NEAR(*line.chiSquare, 0, 1e-28);
    EXPECT_FALSE(line.chiSquareProbability);
    EXPECT_FALSE(line.residualDeviation);
    EXPECT_EQ(line.standardised, Column(2, 0.0));
  }
  // The same through uncertain x: both points fix the line whatever u_x.
  const Line distance = fitted(core::fitDistanceLine(x, y, Column{0.1, 0.2}, u));
  EXPECT_DIGITS(distance.slope, 2, 12);
}

TEST(StatedFits, ThroughZeroFollowsItsFormula) {
  // Derived: b = sum(w x y) / sum(w x^2), u(b) = 1 / sqrt(sum(w x^2)), w = 1 / u^2:
  // (1*2/1 + 2*3/4 + 4*9/1) / (1 + 4/4 + 16) = 39.5 / 18.
  const Line line =
      fitted(core::fitWeightedLine(Column{1, 2, 4}, Column{2, 3, 9}, Column{1, 2, 1}, Through::Zero));
  EXPECT_DIGITS(line.slope, 39.5 / 18, 15);
  EXPECT_DIGITS(*line.slopeError, 1 / std::sqrt(18.0), 15);
  EXPECT_EQ(line.intercept, 0);
  EXPECT_EQ(*line.interceptError, 0);
  EXPECT_EQ(*line.covariance, 0);
  EXPECT_EQ(line.degreesOfFreedom, 2);
  EXPECT_TRUE(line.throughZero);
  const Line one = fitted(core::fitWeightedLine(Column{2}, Column{3}, Column{0.5}, Through::Zero));
  EXPECT_DIGITS(*one.slopeError, 0.25, 15);
}

TEST(StatedFits, ChiSquareTellsWhetherTheUncertaintiesAreBelievable) {
  // Chi-square of 4 degrees of freedom: exceeded with probability (1 + c/2) exp(-c/2) exactly.
  const Line line = fitted(core::fitWeightedLine(Column{1, 2, 3, 4, 5, 6},
                                                 Column{3.3, 5.6, 7.1, 9.3, 10.7, 12.1}, Column(6, 0.5)));
  const double half = *line.chiSquare / 2;
  EXPECT_DIGITS(*line.chiSquareProbability, (1 + half) * std::exp(-half), 13);
}

struct Refused {
  const char* name;
  core::Result<Line> line;
  const char* where;
  const char* what;
};

TEST(StatedFits, RefuseWhatIsNoUncertainty) {
  const Column x{1, 2, 3}, y{1, 2, 4}, u{1, 1, 1};
  const Refused cases[] = {
      {"zero", core::fitWeightedLine(x, y, Column{1, 0, 1}), "point 2", "uy is zero"},
      {"negative", core::fitWeightedLine(x, y, Column{1, 1, -1}), "point 3", "uy is negative"},
      {"NaN", core::fitWeightedLine(x, y, Column{nan, 1, 1}), "point 1", "uy is not a finite number"},
      {"infinite", core::fitWeightedLine(x, y, Column{1, infinity, 1}), "point 2", "not a finite number"},
      {"too few", core::fitWeightedLine(x, y, Column{1, 1}), "uy", "2 of them for 3 points"},
      {"ux negative", core::fitDistanceLine(x, y, Column{-1, 1, 1}, u), "point 1", "ux is negative"},
      {"ux NaN", core::fitDistanceLine(x, y, Column{1, 1, nan}, u), "point 3", "ux is not a finite"},
      {"uy zero", core::fitDistanceLine(x, y, u, Column{1, 1, 0}), "point 3", "uy is zero"},
      {"cov too large", core::fitDistanceLine(x, y, u, u, Column{0, 1.5, 0}), "point 2", "not smaller than"},
      {"cov certain", core::fitDistanceLine(x, y, u, u, Column{0, -1, 0}), "point 2", "not smaller than"},
      {"cov NaN", core::fitDistanceLine(x, y, u, u, Column{0, 0, nan}), "point 3", "not a finite number"},
      {"cov of exact x", core::fitDistanceLine(x, y, Column{0, 1, 1}, u, Column{0.1, 0, 0}), "point 1",
       "not smaller than"},
      {"cov missing", core::fitDistanceLine(x, y, u, u, Column{0, 0}), "covxy", "2 of them for 3 points"},
      {"one x", core::fitWeightedLine(Column{2, 2, 2}, y, u), "points", "all x are equal"},
      {"one x, distance", core::fitDistanceLine(Column{2, 2, 2}, y, u, u), "points", "all x are equal"},
      {"zero x", core::fitWeightedLine(Column{0, 0, 0}, y, u, Through::Zero), "points", "all x are zero"},
      {"NaN y", core::fitWeightedLine(x, Column{1, nan, 2}, u), "point 2", "y is not a finite number"},
      {"one point", core::fitWeightedLine(Column{1}, Column{1}, Column{1}), "points", "at least 2"}};
  for (const Refused& refused : cases) {
    SCOPED_TRACE(refused.name);
    ASSERT_FALSE(refused.line);
    EXPECT_EQ(refused.line.error().where, refused.where);
    EXPECT_THAT(refused.line.error().what, HasSubstr(refused.what));
    EXPECT_FALSE(refused.line.error().mend.empty());
  }
}

TEST(StatedFits, RefuseWhatIsNoCovariance) {
  const Column x{1, 2, 3}, y{1, 2, 4};
  const auto fit = [&](Column matrix) { return core::fitCorrelatedLine(x, y, matrix); };
  const char* const of = " of the covariance of y";
  const std::pair<core::Result<Line>, std::pair<std::string, const char*>> cases[] = {
      {fit({1, 0, 0, 1}), {"the covariance of y", "it has 4 numbers, the points need 3 rows of 3"}},
      {fit({1, 0, 0, 0, nan, 0, 0, 0, 1}), {std::string("row 2, column 2") + of, "not a finite number"}},
      {fit({1, 0, infinity, 0, 1, 0, 0, 0, 1}), {std::string("row 1, column 3") + of, "not a finite number"}},
      {fit({1, 0, 0, 0, -1, 0, 0, 0, 1}), {std::string("row 2, column 2") + of, "cannot be negative"}},
      {fit({1, 0, 0, 0, 0, 0, 0, 0, 1}), {std::string("row 2") + of, "variance is not positive"}},
      {fit({1, 0.5, 0, 0.4, 1, 0, 0, 0, 1}), {std::string("row 2, column 1") + of, "not symmetric"}},
      {fit({1, 1, 1, 1, 1, 1, 1, 1, 1}), {std::string("row 2") + of, "singular"}},
      // Rank two: the third reading is the mean of the others.
      {fit({1, 0, 0.5, 0, 1, 0.5, 0.5, 0.5, 0.5}), {std::string("row 3") + of, "singular"}},
      {fit({1, 2, 0, 2, 1, 0, 0, 0, 1}), {std::string("row 2") + of, "negative variance"}},
      // No pair is worse than -0.9, but all three cannot be.
      {fit({1, -0.9, -0.9, -0.9, 1, -0.9, -0.9, -0.9, 1}), {std::string("row 3") + of, "negative variance"}}};
  for (const auto& [line, expected] : cases) {
    SCOPED_TRACE(expected.first + ": " + expected.second);
    ASSERT_FALSE(line);
    EXPECT_EQ(line.error().where, expected.first);
    EXPECT_THAT(line.error().what, HasSubstr(expected.second));
  }
}

TEST(StatedFits, RefuseASharedOffsetWithNothingElseAtAnySize) {
  // A hundred readings that share all they are uncertain by: singular, however small the numbers.
  Column x(100), y(100, 1.0);
  std::iota(x.begin(), x.end(), 0.0);
  for (const double variance : {1e-12, 0.3, 7e9}) {
    const auto line = core::fitCorrelatedLine(x, y, Column(10'000, variance));
    ASSERT_FALSE(line);
    EXPECT_THAT(line.error().text(), HasSubstr("row 2 of the covariance of y: the matrix is singular"));
  }
}

TEST(StatedFits, RefuseAFullCovarianceThatCannotBe) {
  const Column x{1, 2, 3}, y{1, 2, 4};
  const auto fit = [&](std::size_t row, std::size_t column, double value) {
    Column matrix = matrixOf(Column(6, 1.0));
    matrix[row * 6 + column] = matrix[column * 6 + row] = value;
    return core::fitGeneralisedLine(x, y, matrix);
  };
  EXPECT_TRUE(fit(0, 3, 0.5));
  EXPECT_THAT(fit(0, 3, 1).error().text(),
              HasSubstr("row 4 of the covariance of x and y: the matrix is singular"));
  EXPECT_THAT(fit(1, 2, -1.5).error().what, HasSubstr("negative variance"));
  EXPECT_THAT(fit(4, 4, 0).error().text(),
              HasSubstr("row 5 of the covariance of x and y: its variance is not"));
  EXPECT_TRUE(fit(1, 1, 0)) << "an exact x";
  Column exact = matrixOf(Column(6, 1.0));
  exact[1 * 6 + 1] = 0, exact[1 * 6 + 4] = exact[4 * 6 + 1] = 0.1;
  EXPECT_FALSE(core::fitGeneralisedLine(x, y, exact)) << "an exact x with a covariance";
  EXPECT_THAT(core::fitGeneralisedLine(x, y, matrixOf(Column(3, 1.0))).error().what,
              HasSubstr("it has 9 numbers, the points need 6 rows of 6"));
}

TEST(StatedFits, RefusePointsWhoseBestLineIsVertical) {
  // Derived: about the weighted mean x = 3.8 the sum of (x - 3.8)^2 / u_x^2 is 0.8. No slope does as well;
  // the steeper the line, the nearer it comes (scanned over all directions with NumPy).
  const auto line =
      core::fitDistanceLine(Column{2, 4, 4, 2}, Column{1, 1, 4, 4}, Column{3, 1, 1, 3}, Column{2, 3, 3, 1});
  ASSERT_FALSE(line);
  EXPECT_THAT(line.error().what, HasSubstr("does not settle"));
}

TEST(StatedFits, RefuseUncertaintiesFartherApartThanNumbersReach) {
  // Squares of 1e-300 / 1e300 are zero: weights of infinity would leave residuals that are no numbers.
  const Column x{1, 2, 3}, y{1, 2, 4}, u{1e-300, 1e300, 1e300};
  EXPECT_FALSE(core::fitWeightedLine(x, y, u));
  EXPECT_FALSE(core::fitWeightedLine(x, y, u, Through::Zero));
  EXPECT_FALSE(core::fitDistanceLine(x, y, Column(3, 0.0), u));
}

TEST(StatedFits, RefuseWhatOverflows) {
  const auto line =
      core::fitWeightedLine(Column{0, 1, 2}, Column{0, 1e300, 1e300}, Column{1e-300, 1e-300, 1e-300});
  ASSERT_FALSE(line);
  EXPECT_THAT(line.error().what, HasSubstr("too large or too small"));
}

}  // namespace stated_fits_test
