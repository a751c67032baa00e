// SPDX-License-Identifier: GPL-3.0-or-later
// Published values of AIC, AICc and BIC of three models are checked in
// tests/reference/published_lines_test.cpp.
#include "core/line/information.h"

#include <gtest/gtest.h>

#include <cmath>

#include "tests/support/digits.h"

namespace {

TEST(Information, OfStatedUncertaintiesCountsOnlyTheParameters) {
  // Definition (Akaike 1974; Schwarz 1978): chi2 + 2 p and chi2 + p ln n.
  const auto information = core::informationOfChiSquare(7.5, 2, 9);
  EXPECT_DIGITS(information.akaike, 11.5, 15);
  EXPECT_DIGITS(information.bayesian, 7.5 + 2 * std::log(9.0), 15);
}

TEST(Information, PreferAParameterThatEarnsMoreThanItCosts) {
  EXPECT_LT(core::informationOfChiSquare(5, 3, 9).akaike, core::informationOfChiSquare(8, 2, 9).akaike);
  EXPECT_GT(core::informationOfChiSquare(7, 3, 9).akaike, core::informationOfChiSquare(8, 2, 9).akaike);
  EXPECT_LT(core::informationOfResiduals(0.1, 3, 20, 1e-6).bayesian,
            core::informationOfResiduals(1, 2, 20, 1e-6).bayesian);
}

TEST(Information, AnExactFitProvesNoMoreThanTheResolution) {
  const auto exact = core::informationOfResiduals(0, 2, 9, 0.01);
  const auto fine = core::informationOfResiduals(9 * 0.01 * 0.01, 2, 9, 0.01);
  EXPECT_TRUE(std::isfinite(exact.akaike));
  EXPECT_EQ(exact.akaike, fine.akaike);
  EXPECT_EQ(exact.bayesian, fine.bayesian);
}

TEST(Information, TooFewPointsRuleAModelOut) {
  // k = p + 1 = 3: the correction 2 k (k + 1) / (n - k - 1) has no meaning up to n = 4.
  EXPECT_EQ(core::informationOfResiduals(1, 2, 4, 0.1).akaike, HUGE_VAL);
  EXPECT_TRUE(std::isfinite(core::informationOfResiduals(1, 2, 5, 0.1).akaike));
}

TEST(Information, FollowsTheUnitsByAConstantOnly) {
  // Derived: y in other units scales RSS and adds 2 n ln(unit) to all models alike.
  const auto first = core::informationOfResiduals(3, 2, 12, 0.001),
             second = core::informationOfResiduals(1, 3, 12, 0.001);
  const auto firstBig = core::informationOfResiduals(3e6, 2, 12, 1),
             secondBig = core::informationOfResiduals(1e6, 3, 12, 1);
  EXPECT_NEAR(first.akaike - second.akaike, firstBig.akaike - secondBig.akaike, 1e-12);
  EXPECT_NEAR(first.bayesian - second.bayesian, firstBig.bayesian - secondBig.bayesian, 1e-12);
}

}  // namespace
