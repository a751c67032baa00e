// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/line/line.h"
#include "core/line/line_use.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <limits>
#include <map>

#include "tests/support/csv.h"
#include "tests/support/digits.h"

namespace {

using testing::HasSubstr;

const std::string folder = std::string(SHUNTWRIGHT_TESTS_DIR) + "/reference/lines/";
constexpr double nan = std::numeric_limits<double>::quiet_NaN();

core::Line lineOf(const std::string& dataset, const std::string& x = "x", const std::string& y = "y") {
  const auto rows = test::readCsv(folder + dataset + ".csv");
  const auto line = core::fitLine(test::numbers(rows, x), test::numbers(rows, y));
  if (!line) throw std::runtime_error(line.error().text());
  return *line;
}

TEST(Line, AgreesWithEveryOrdinaryLineOfTheReferenceTable) {
  // Each row carries its own source and tolerance: half a unit of the last printed digit, or what exact
  // rational arithmetic warrants.
  const std::map<std::string, core::Line> lines = {
      {"bevington_6_1 ols", lineOf("bevington_6_1")},
      {"walpole_myers ols", lineOf("walpole_myers")},
      {"quam_a5_calibration ols", lineOf("quam_a5_calibration")},
      {"iso28037_annexE ols", lineOf("iso28037_annexE")},
      {"pressure_gauge_up_down ols_up", lineOf("pressure_gauge_up_down", "x", "y_up")},
      {"pressure_gauge_up_down ols_down", lineOf("pressure_gauge_up_down", "x", "y_down")}};
  int checked = 0;
  for (const auto& row : test::readCsv(folder + "results.csv")) {
    const auto found = lines.find(row.at("dataset") + " " + row.at("method"));
    if (found == lines.end()) continue;
    const core::Line& line = found->second;
    const std::map<std::string, double> values = {{"a", line.intercept},
                                                  {"b", line.slope},
                                                  {"u_a", *line.interceptError},
                                                  {"u_b", *line.slopeError},
                                                  {"cov_ab", *line.covariance},
                                                  {"s", *line.residualDeviation},
                                                  {"resid_sd", *line.residualDeviation}};
    const auto value = values.find(row.at("quantity"));
    if (value == values.end()) continue;
    EXPECT_NEAR(value->second, test::number(row, "value"), test::number(row, "tolerance"))
        << found->first << " " << value->first << ", " << row.at("source_or_note");
    ++checked;
  }
  EXPECT_GE(checked, 30);
}

TEST(Line, KnowsItsUncertaintyAtAnyXWithTheCovariance) {
  // JCGM 100:2008 H.3.4: correction at 30 degC -0.1494, standard uncertainty 0.0041; without the
  // covariance it would be 0.0073. All digits: exact rational arithmetic on Table H.6.
  const auto rows = test::readCsv(folder + "gum_h3.csv");
  std::vector<double> fromTwenty;
  for (const double t : test::numbers(rows, "t")) fromTwenty.push_back(t - 20);
  const auto line = core::fitLine(fromTwenty, test::numbers(rows, "b"));
  ASSERT_TRUE(line);
  EXPECT_NEAR(core::valueAt(*line, 10), -0.1494, 5e-5);
  EXPECT_NEAR(*core::forwardOf(*line, 10).standard, 0.0041, 5e-5);
  EXPECT_DIGITS(core::valueAt(*line, 10), -0.14937681273247722, 12);
  EXPECT_DIGITS(*core::forwardOf(*line, 10).standard, 0.004138595752854948, 12);
  EXPECT_EQ(line->degreesOfFreedom, 9);
}

TEST(Line, MeanResponseOfWalpoleAndMyers) {
  // Walpole and Myers, as computed by R: 21.9025 with standard error 0.877939 at x = 20.
  const core::Line line = lineOf("walpole_myers");
  EXPECT_NEAR(core::valueAt(line, 20), 21.9025, 5e-5);
  EXPECT_NEAR(*core::forwardOf(line, 20).standard, 0.877939, 5e-7);
}

TEST(Line, ThroughPointsOnALineLeavesNoResidual) {
  // Derived: y = 3 - 2 x in small integers is exact in binary.
  const double x[] = {-2, 0, 1, 5};
  const double y[] = {7, 3, 1, -7};
  const auto line = core::fitLine(x, y);
  ASSERT_TRUE(line);
  EXPECT_EQ(line->intercept, 3);
  EXPECT_EQ(line->slope, -2);
  EXPECT_EQ(line->residualSumOfSquares, 0);
  EXPECT_EQ(*line->slopeError, 0);
  EXPECT_EQ(*line->rSquared, 1);
  EXPECT_EQ(line->residuals, std::vector<double>(4, 0.0));
}

TEST(Line, KeepsItsDigitsWhenXIsFarFromZero) {
  // Derived: shifting x by 2^30 (exact in binary) leaves the slope and its error as they were.
  const double x[] = {0, 1, 2, 3, 4};
  const double y[] = {0.1, 1.3, 1.9, 3.2, 3.9};
  double shifted[5];
  for (int i = 0; i < 5; ++i) shifted[i] = x[i] + 1073741824.0;
  const auto near = core::fitLine(x, y);
  const auto far = core::fitLine(shifted, y);
  ASSERT_TRUE(near && far);
  EXPECT_DIGITS(far->slope, near->slope, 15);
  EXPECT_DIGITS(*far->slopeError, *near->slopeError, 15);
}

TEST(Line, ScalesWithItsUnits) {
  // Derived: y = 0, 1, 3 at x = 0, 1, 2 has slope 3/2 and intercept -1/6. Squares of the scaled numbers
  // overflow.
  const double x[] = {0, 1e200, 2e200};
  const double y[] = {0, 1e100, 3e100};
  const auto line = core::fitLine(x, y);
  ASSERT_TRUE(line) << line.error().text();
  EXPECT_DIGITS(line->slope, 1.5e-100, 15);
  EXPECT_DIGITS(line->intercept, -1e100 / 6, 14);
}

TEST(Line, ThroughTwoPointsHasNoErrorsRatherThanZeros) {
  const double x[] = {0, 2};
  const double y[] = {1, 2};
  const auto line = core::fitLine(x, y);
  ASSERT_TRUE(line);
  EXPECT_EQ(line->slope, 0.5);
  EXPECT_EQ(line->intercept, 1);
  EXPECT_EQ(line->degreesOfFreedom, 0);
  EXPECT_FALSE(line->slopeError);
  EXPECT_FALSE(line->interceptError);
  EXPECT_FALSE(line->covariance);
  EXPECT_FALSE(line->residualDeviation);
  EXPECT_FALSE(core::forwardOf(*line, 1).standard);
}

TEST(Line, ThroughEqualReadingsIsFlatAndHasNoRSquared) {
  const double x[] = {0, 1, 2};
  const double y[] = {4.7, 4.7, 4.7};
  const auto line = core::fitLine(x, y);
  ASSERT_TRUE(line);
  EXPECT_EQ(line->slope, 0);
  EXPECT_EQ(line->intercept, 4.7);
  EXPECT_FALSE(line->rSquared);
}

TEST(Line, ThroughZeroKnowsItsInterceptExactly) {
  // Derived: sum(x^2) = 14, sum(xy) = 13, sum(y^2) = 14, so the slope is 13/14 and the residual sum of
  // squares 14 - 13^2/14.
  const double x[] = {1, 2, 3};
  const double y[] = {1, 3, 2};
  const auto line = core::fitLineThroughZero(x, y);
  ASSERT_TRUE(line);
  EXPECT_DIGITS(line->slope, 13.0 / 14.0, 15);
  EXPECT_DIGITS(line->residualSumOfSquares, 14.0 - 169.0 / 14.0, 14);
  EXPECT_EQ(line->intercept, 0);
  EXPECT_EQ(*line->interceptError, 0);
  EXPECT_EQ(line->degreesOfFreedom, 2);
  EXPECT_EQ(*core::forwardOf(*line, 0).standard, 0);
  EXPECT_DIGITS(*core::forwardOf(*line, -3).standard, 3 * *line->slopeError, 15);
}

TEST(Line, RefusesPointsThatFixNoLine) {
  const double one[] = {1};
  EXPECT_THAT(core::fitLine(one, one).error().text(), HasSubstr("at least 2"));
  EXPECT_FALSE(core::fitLine({}, {}));
  const double same[] = {2, 2, 2};
  const double y[] = {1, 2, 3};
  EXPECT_THAT(core::fitLine(same, y).error().text(), HasSubstr("all x are equal"));
  const double zeros[] = {0, 0, 0};
  EXPECT_THAT(core::fitLineThroughZero(zeros, y).error().text(), HasSubstr("all x are zero"));
  EXPECT_TRUE(core::fitLineThroughZero(same, y));
  const double two[] = {1, 2};
  EXPECT_THAT(core::fitLine(y, two).error().what, HasSubstr("3 x values do not pair with 2"));
}

TEST(Line, NamesThePointThatIsNotANumber) {
  const double x[] = {1, 2, 3, 4};
  const double badY[] = {1, 2, nan, 4};
  EXPECT_EQ(core::fitLine(x, badY).error().where, "point 3");
  const double badX[] = {1, std::numeric_limits<double>::infinity(), 3, 4};
  const auto error = core::fitLine(badX, x).error();
  EXPECT_EQ(error.where, "point 2");
  EXPECT_THAT(error.what, HasSubstr("x is not a finite number"));
  EXPECT_FALSE(error.mend.empty());
}

TEST(Line, RefusesWhatOverflows) {
  const double x[] = {0, 1e-300, 2e-300};
  const double y[] = {0, 1e300, 2e300};
  EXPECT_THAT(core::fitLine(x, y).error().text(), HasSubstr("too large or too small"));
}

}  // namespace
