// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/line/polynomial.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/line/line.h"
#include "tests/support/digits.h"

namespace polynomial_test {

using testing::HasSubstr;

const std::vector<double> x = {-2, -1, 0, 1, 2};

TEST(Polynomial, ThroughPointsOnAParabolaFindsIt) {
  // Derived: y = 1 - 2 x + 3 x^2.
  const std::vector<double> y = {17, 6, 1, 2, 9};
  const auto fit = core::fitPolynomial(x, y, 2);
  ASSERT_TRUE(fit);
  EXPECT_EQ(fit->coefficients, (std::vector<double>{1, -2, 3}));
  EXPECT_EQ(fit->residualSumOfSquares, 0);
  EXPECT_EQ(core::valueAt(*fit, 2), 9);
}

TEST(Polynomial, OfDegreeOneIsTheLineWithItsCovariance) {
  const std::vector<double> y = {0.3, 1.1, 1.9, 3.4, 3.9};
  std::vector<double> shifted;
  for (const double v : x) shifted.push_back(v + 7.5);
  const auto fit = core::fitPolynomial(shifted, y, 1);
  const auto line = core::fitLine(shifted, y);
  ASSERT_TRUE(fit && line);
  EXPECT_DIGITS(fit->coefficients[0], line->intercept, 14);
  EXPECT_DIGITS(fit->coefficients[1], line->slope, 14);
  EXPECT_DIGITS((*fit->covariance)[0][1], *line->covariance, 14);
  EXPECT_DIGITS((*fit->covariance)[1][0], *line->covariance, 14);
  EXPECT_DIGITS((*fit->errors)[0], *line->interceptError, 14);
}

TEST(Polynomial, ThroughAllItsPointsHasNoErrors) {
  const auto fit = core::fitPolynomial(x, std::vector<double>{1, 0, 2, 5, 3}, 4);
  ASSERT_TRUE(fit);
  EXPECT_EQ(fit->degreesOfFreedom, 0);
  EXPECT_FALSE(fit->errors);
  EXPECT_FALSE(fit->covariance);
  EXPECT_FALSE(fit->residualDeviation);
}

TEST(Polynomial, OfEqualReadingsHasNoRSquared) {
  const auto fit = core::fitPolynomial(x, std::vector<double>(5, 0.1), 2);
  ASSERT_TRUE(fit);
  EXPECT_FALSE(fit->rSquared);
  EXPECT_DIGITS(fit->coefficients[0], 0.1, 15);
}

TEST(Polynomial, RefusesTooFewDifferentX) {
  const std::vector<double> doubled = {1, 1, 2, 2, 1};
  EXPECT_THAT(core::fitPolynomial(doubled, x, 2).error().text(), HasSubstr("2 different x"));
  EXPECT_TRUE(core::fitPolynomial(doubled, x, 1));
}

TEST(Polynomial, RefusesDegreesItCannotFit) {
  EXPECT_THAT(core::fitPolynomial(x, x, -1).error().text(), HasSubstr("degree -1"));
  EXPECT_THAT(core::fitPolynomial(x, x, 13).error().mend, HasSubstr("0 to 12"));
  EXPECT_FALSE(core::fitPolynomial({}, {}, 1));
}

}  // namespace polynomial_test
