// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/line/line_use.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>

#include "core/line/stated_fits.h"
#include "tests/support/digits.h"

namespace {

using testing::HasSubstr;
using Column = std::vector<double>;

const Column x{1, 2, 3, 4, 5, 6}, y{3.3, 5.6, 7.1, 9.3, 10.7, 12.1};  // ISO/TS 28037:2010 clause 6.3

core::Line ordinary() { return *core::fitLine(x, y); }
core::Line stated() { return *core::fitWeightedLine(x, y, Column(6, 0.5)); }

TEST(LineUse, BandsOfScatterTakeStudentsTAndThoseOfStatedUncertaintiesTheNormal) {
  // Quantiles, 97.5 %: t(4) = 2.776445105198, normal 1.959963984540. Simultaneous, 95 %: F(2, 4) =
  // 6.944271909999, chi-square(2) = -2 ln 0.05 exactly (tables; F and t to the digits given by R 4.2).
  const double at = 2;
  const double scatter = *core::forwardOf(ordinary(), at).standard,
               known = *core::forwardOf(stated(), at).standard;
  EXPECT_DIGITS(*core::confidenceHalfWidth(ordinary(), at, 0.95), 2.776445105198 * scatter, 11);
  EXPECT_DIGITS(*core::confidenceHalfWidth(stated(), at, 0.95), 1.959963984540 * known, 11);
  EXPECT_DIGITS(*core::predictionHalfWidth(ordinary(), at, 0.95, 99),
                2.776445105198 * std::hypot(scatter, *ordinary().residualDeviation), 11);
  EXPECT_DIGITS(*core::predictionHalfWidth(stated(), at, 0.95, 0.5), 1.959963984540 * std::hypot(known, 0.5),
                11);
  EXPECT_DIGITS(*core::simultaneousHalfWidth(ordinary(), at, 0.95), std::sqrt(2 * 6.944271909999) * scatter,
                11);
  EXPECT_DIGITS(*core::simultaneousHalfWidth(stated(), at, 0.95), std::sqrt(-2 * std::log(0.05)) * known, 11);
}

TEST(LineUse, TheBandOfTheWholeLineIsWiderThanThatOfOnePoint) {
  for (const core::Line& line : {ordinary(), stated()})
    for (const double at : {-10.0, 3.5, 40.0})
      EXPECT_GT(*core::simultaneousHalfWidth(line, at, 0.95), *core::confidenceHalfWidth(line, at, 0.95));
  // Through zero there is but one parameter, so that both are the same.
  const core::Line through = *core::fitLineThroughZero(x, y);
  EXPECT_EQ(*core::simultaneousHalfWidth(through, 3, 0.95), *core::confidenceHalfWidth(through, 3, 0.95));
}

TEST(LineUse, ForwardAndInverseAreEachOthersInverse) {
  for (const core::Line& line : {ordinary(), stated(), *core::fitLineThroughZero(x, y)}) {
    const auto back = core::inverseOf(line, core::forwardOf(line, 4.7).value);
    ASSERT_TRUE(back);
    EXPECT_DIGITS(back->value, 4.7, 14);
    // Clause 11: without uncertainty of the reading u(x0) is u(y0) / |b|.
    EXPECT_DIGITS(*back->standard, *core::forwardOf(line, 4.7).standard / line.slope, 13);
  }
}

TEST(LineUse, KeepsTheUncertaintyWhereInterceptAndSlopeCancel) {
  // Derived: shifting all x by 2^26, which is exact, moves the line and leaves its uncertainty. Taken from
  // u(a), u(b) and their covariance, 1e14 would be subtracted from 1e14.
  Column far = x;
  for (double& value : far) value += 67108864;
  for (const double at : {1.0, 3.5, 12.0}) {
    EXPECT_DIGITS(*core::forwardOf(*core::fitLine(far, y), at + 67108864).standard,
                  *core::forwardOf(ordinary(), at).standard, 14);
    EXPECT_DIGITS(*core::forwardOf(*core::fitWeightedLine(far, y, Column(6, 0.5)), at + 67108864).standard,
                  *core::forwardOf(stated(), at).standard, 13);
  }
}

TEST(LineUse, ForwardAddsTheUncertaintyOfX) {
  const core::Line line = stated();
  EXPECT_DIGITS(*core::forwardOf(line, 3, 0.2).standard,
                std::hypot(*core::forwardOf(line, 3).standard, 0.2 * line.slope), 14);
}

TEST(LineUse, AMeanOfMoreReadingsIsSurer) {
  const core::Line line = ordinary();
  const double one = *core::inverseOfMean(line, 8, 1)->standard,
               four = *core::inverseOfMean(line, 8, 4)->standard;
  EXPECT_LT(four, one);
  // Derived: the squares differ by s^2 (1 - 1/4) / b^2.
  EXPECT_DIGITS(one * one - four * four, 0.75 * std::pow(*line.residualDeviation / line.slope, 2), 12);
}

TEST(LineUse, TellsWhatItCannotSay) {
  EXPECT_THAT(core::inverseOfMean(ordinary(), 8, 0).error().text(), HasSubstr("readings: there are none"));
  EXPECT_THAT(core::inverseOfMean(stated(), 8, 3).error().text(), HasSubstr("stated uncertainties"));
  const core::Line flat = *core::fitLine(Column{1, 2, 3}, Column{4, 4, 4});
  EXPECT_THAT(core::inverseOf(flat, 4).error().text(), HasSubstr("slope is zero"));
  EXPECT_THAT(core::inverseOf(flat, 5).error().text(), HasSubstr("slope is zero"));
  const core::Line two = *core::fitLine(Column{1, 2}, Column{3, 5});
  EXPECT_FALSE(core::inverseOf(two, 4)->standard);
  EXPECT_EQ(core::inverseOf(two, 4)->value, 1.5);
  EXPECT_FALSE(core::confidenceHalfWidth(two, 1, 0.95));
  EXPECT_FALSE(core::predictionHalfWidth(two, 1, 0.95, 1));
  EXPECT_FALSE(core::simultaneousHalfWidth(two, 1, 0.95));
}

}  // namespace
