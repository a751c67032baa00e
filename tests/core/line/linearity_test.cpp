// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/line/linearity.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <random>
#include <set>

#include "tests/support/csv.h"
#include "tests/support/digits.h"

namespace linearity_test {

using core::ReferenceLine;
using testing::HasSubstr;

const std::string folder = std::string(SHUNTWRIGHT_TESTS_DIR) + "/reference/lines/";

constexpr ReferenceLine allLines[] = {ReferenceLine::LeastSquares, ReferenceLine::EndPoint,
                                      ReferenceLine::Minimax, ReferenceLine::ZeroBasedLeastSquares,
                                      ReferenceLine::ZeroBasedMinimax};

struct Points {
  std::vector<double> x, y;
};

/// Data seen in stored teaching notes, of a textbook by Doebelin (from memory).
Points pressureGauge() {
  const auto rows = test::readCsv(folder + "pressure_gauge_up_down.csv");
  Points points{test::numbers(rows, "x"), test::numbers(rows, "y_up")};
  const auto x = points.x, down = test::numbers(rows, "y_down");
  points.x.insert(points.x.end(), x.begin(), x.end());
  points.y.insert(points.y.end(), down.begin(), down.end());
  return points;
}

/// Kessel, Kacker and Sommer, Measurement 45 (2012) 1661-1669, Table 4.
Points pressureSensor() {
  const auto rows = test::readCsv(folder + "pressure_sensor_kessel.csv");
  return {test::numbers(rows, "x"), test::numbers(rows, "y")};
}

/// The same characteristic counted from its first mean point; `mean` is that of both passes there.
core::Result<core::Linearity> fromFirstPoint(Points points, double x0, double mean, ReferenceLine reference) {
  for (double& x : points.x) x -= x0;
  for (double& y : points.y) y -= mean;
  auto linearity = core::linearityOf(points.x, points.y, reference);
  if (linearity) linearity->intercept += mean - linearity->slope * x0;
  return linearity;
}

/// Every figure of the methods that draw a line through the mean characteristic. The table's values are
/// worked out in exact rational arithmetic from the data of the source named in the data file.
const std::map<std::string, ReferenceLine> meanMethods = {
    {"endpoint_mean", ReferenceLine::EndPoint},
    {"least_squares_mean", ReferenceLine::LeastSquares},
    {"minimax_mean", ReferenceLine::Minimax},
    {"ls_through_origin_mean", ReferenceLine::ZeroBasedLeastSquares},
    {"minimax_through_origin_mean", ReferenceLine::ZeroBasedMinimax},
    {"ls_through_first_point_mean", ReferenceLine::ZeroBasedLeastSquares},
    {"minimax_through_first_point_mean", ReferenceLine::ZeroBasedMinimax}};

/// Methods of the table that are no line of ours, and where else they are checked.
const std::set<std::string> notALine = {
    "minimax_all_points",  // not offered: scatter and hysteresis would count as non-linearity
    "hysteresis",
    "zero_return",  // tests/reference/merits_test
    "ols_all22",
    "ols_up",
    "ols_down",
    "divisor_n_instead_of_n-2",  // fits with their scatter
    "two_line_comparison",
    "tost_slope_margin_0.03",
    "tost_slope_margin_0.02",      // two lines
    "model_ranking_R_convention",  // evidence
    "endpoint_two_point",
    "use_U_k2_at_point_0",
    "use_U_k2_at_point_5",
    "use_U_k2_at_point_10"};

/// Checks all linearity rows of `dataset`; returns how many there were.
std::size_t expectTable(const std::string& dataset, const Points& points, double firstMean) {
  std::size_t checked = 0;
  for (const auto& row : test::readCsv(folder + "results.csv")) {
    if (row.at("dataset") != dataset) continue;
    const std::string& method = row.at("method");
    if (notALine.contains(method)) continue;
    ReferenceLine reference = ReferenceLine::EndPoint;
    if (method != "linearity") reference = meanMethods.at(method);
    const auto linearity = method.find("first_point") == std::string::npos
                               ? core::linearityOf(points.x, points.y, reference)
                               : fromFirstPoint(points, 0, firstMean, reference);
    if (!linearity) throw std::runtime_error(linearity.error().text());
    const std::map<std::string, double> values = {{"FSO", linearity->fullScaleOutput},
                                                  {"intercept", linearity->intercept},
                                                  {"slope", linearity->slope},
                                                  {"max_abs_dev", std::abs(linearity->greatestDeviation)},
                                                  {"max_dev_pct_FSO", 100 * linearity->share}};
    EXPECT_NEAR(values.at(row.at("quantity")), test::number(row, "value"), test::number(row, "tolerance"))
        << dataset << " " << method << " " << row.at("quantity");
    ++checked;
  }
  return checked;
}

TEST(Linearity, OfAPressureGaugeUpAndDownByAllLines) {
  const std::size_t figures = 4;
  EXPECT_EQ(expectTable("pressure_gauge_up_down", pressureGauge(), (-1.12 - 0.69) / 2),
            1 + figures * meanMethods.size());
}

TEST(Linearity, OfAPressureSensorByAllLines) {
  const std::size_t figures = 4;
  EXPECT_EQ(expectTable("pressure_sensor_kessel", pressureSensor(), 0), 1 + figures * meanMethods.size());
}

/// A characteristic with curvature and scatter; now and then with several points at one x.
Points random(std::mt19937& generator) {
  std::uniform_real_distribution<double> uniform(-1, 1);
  const std::size_t n = 3 + generator() % 12;
  Points points;
  for (std::size_t i = 0; i < n; ++i) {
    points.x.push_back(i > 1 && generator() % 5 == 0 ? points.x.back() : 10 * uniform(generator));
    const double x = points.x.back();
    points.y.push_back(1.5 + 2 * x + 0.05 * x * x + uniform(generator));
  }
  return points;
}

TEST(Linearity, TheOrderOfTheLinesHolds) {
  // Derived: minimax is the least of all lines by its definition; of the lines through zero likewise; the
  // end-point line shifted by half its greatest deviations of both signs is off by at least half of it.
  std::mt19937 generator(20260);
  for (int round = 0; round < 2000; ++round) {
    const Points points = random(generator);
    std::map<ReferenceLine, double> off;
    for (const ReferenceLine line : allLines) {
      const auto linearity = core::linearityOf(points.x, points.y, line);
      ASSERT_TRUE(linearity) << linearity.error().text();
      off[line] = std::abs(linearity->greatestDeviation);
    }
    const double rounding = 1e-12;  // of values up to 30
    EXPECT_LE(off[ReferenceLine::Minimax], off[ReferenceLine::LeastSquares] + rounding);
    EXPECT_LE(off[ReferenceLine::Minimax], off[ReferenceLine::EndPoint] + rounding);
    EXPECT_LE(off[ReferenceLine::Minimax], off[ReferenceLine::ZeroBasedMinimax] + rounding);
    EXPECT_GE(off[ReferenceLine::Minimax], off[ReferenceLine::EndPoint] / 2 - rounding);
    EXPECT_LE(off[ReferenceLine::ZeroBasedMinimax], off[ReferenceLine::ZeroBasedLeastSquares] + rounding);
  }
}

/// Deviations of a characteristic with one point per x.
std::vector<double> deviations(const Points& points, double intercept, double slope) {
  std::vector<double> off;
  for (std::size_t i = 0; i < points.x.size(); ++i)
    off.push_back(points.y[i] - intercept - slope * points.x[i]);
  return off;
}

double greatest(const std::vector<double>& off) {
  double most = 0;
  for (const double d : off) most = std::max(most, std::abs(d));
  return most;
}

/// Points with rising, different x.
Points randomCharacteristic(std::mt19937& generator) {
  std::uniform_real_distribution<double> uniform(-1, 1);
  Points points;
  double x = -8;
  const std::size_t n = 3 + generator() % 12;
  for (std::size_t i = 0; i < n; ++i) {
    x += 0.1 + generator() % 3;
    points.x.push_back(x);
    points.y.push_back(1.5 + 2 * x + 0.05 * x * x + uniform(generator));
  }
  return points;
}

TEST(ReferenceLines, TheMinimaxLineIsTouchedOnBothSidesInTurn) {
  // Chebyshev's criterion: the greatest deviation is reached at three points or more with signs in turn.
  std::mt19937 generator(77);
  for (int round = 0; round < 1000; ++round) {
    const Points points = randomCharacteristic(generator);
    const auto line = core::referenceLineOf(points.x, points.y, ReferenceLine::Minimax);
    ASSERT_TRUE(line);
    const std::vector<double> off = deviations(points, line->intercept, line->slope);
    const double most = greatest(off);
    int turns = 0;
    double last = 0;
    for (const double d : off) {
      if (std::abs(d) < most - 1e-12 || d * last > 0) continue;  // rounding of values up to 50
      last = d;
      ++turns;
    }
    EXPECT_GE(turns, 3);
  }
}

TEST(ReferenceLines, NoOtherSlopeThroughZeroIsBetter) {
  std::mt19937 generator(78);
  for (int round = 0; round < 1000; ++round) {
    const Points points = randomCharacteristic(generator);
    const auto line = core::referenceLineOf(points.x, points.y, ReferenceLine::ZeroBasedMinimax);
    ASSERT_TRUE(line);
    EXPECT_EQ(line->intercept, 0);
    const double least = greatest(deviations(points, 0, line->slope));
    for (const double step : {-0.1, -1e-3, -1e-6, 1e-6, 1e-3, 0.1})
      EXPECT_GE(greatest(deviations(points, 0, line->slope + step)), least - 1e-12);
  }
}

TEST(ReferenceLines, TheSlopeThroughZeroIsThatOfThePointsAwayFromZero) {
  // Derived: y = 2 x at 1 and 2, and 5 at zero, which is off by 5 whatever the slope is.
  const double x[] = {0, 1, 2};
  const double y[] = {5, 2, 4};
  const auto line = core::referenceLineOf(x, y, ReferenceLine::ZeroBasedMinimax);
  ASSERT_TRUE(line);
  EXPECT_EQ(line->slope, 2);
  const auto linearity = core::linearityOf(x, y, ReferenceLine::ZeroBasedMinimax);
  ASSERT_TRUE(linearity);
  EXPECT_EQ(linearity->greatestDeviation, 5);
  EXPECT_EQ(linearity->atX, 0);
}

TEST(ReferenceLines, BothSidesOfZeroCountAlike) {
  // Derived: through zero, y/x is 1 at -2 and 1.5 at 2; by symmetry 1.25 is off by 0.5 at both.
  const double x[] = {-2, 0, 2};
  const double y[] = {-2, 0, 3};
  const auto line = core::referenceLineOf(x, y, ReferenceLine::ZeroBasedMinimax);
  ASSERT_TRUE(line);
  EXPECT_EQ(line->slope, 1.25);
}

TEST(ReferenceLines, EveryLineIsTheLinearFormThatItsWeightsSay) {
  std::mt19937 generator(79);
  for (int round = 0; round < 200; ++round) {
    const Points points = randomCharacteristic(generator);
    for (const ReferenceLine reference : allLines) {
      const auto line = core::referenceLineOf(points.x, points.y, reference);
      ASSERT_TRUE(line);
      double slope = 0, intercept = 0;
      for (std::size_t i = 0; i < points.y.size(); ++i) {
        slope += line->slopeWeights[i] * points.y[i];
        intercept += line->interceptWeights[i] * points.y[i];
      }
      // Sums of up to 14 products below 100, with weights that cancel.
      EXPECT_NEAR(slope, line->slope, 1e-12);
      EXPECT_NEAR(intercept, line->intercept, 1e-11);
    }
  }
}

TEST(ReferenceLines, TwoPointsHaveTheOneLineThroughThem) {
  const double x[] = {1, 3};
  const double y[] = {2, 8};
  for (const ReferenceLine reference :
       {ReferenceLine::LeastSquares, ReferenceLine::EndPoint, ReferenceLine::Minimax}) {
    const auto line = core::referenceLineOf(x, y, reference);
    ASSERT_TRUE(line);
    EXPECT_EQ(line->slope, 3);
    EXPECT_EQ(line->intercept, -1);
  }
}

TEST(ReferenceLines, RefuseXThatDoNotRiseAndNumbersThatOverflow) {
  const double falling[] = {1, 0, 2};
  const double y[] = {0, 1, 2};
  EXPECT_THAT(core::referenceLineOf(falling, y, ReferenceLine::Minimax).error().text(),
              HasSubstr("does not rise"));
  const double x[] = {0, 1e-300, 2e-300};
  const double huge[] = {-1e300, 1e299, 1e300};
  for (const ReferenceLine reference : allLines)
    EXPECT_FALSE(core::referenceLineOf(x, huge, reference)) << int(reference);
}

TEST(Linearity, KeepsTheSignOfAFallingOutputAndOfTheDeviation) {
  // Derived: end-point line y = -x; the middle point lies 0.5 above it; full scale -4.
  const double x[] = {4, 0, 2};
  const double y[] = {-4, 0, -1.5};
  const auto linearity = core::linearityOf(x, y, ReferenceLine::EndPoint);
  ASSERT_TRUE(linearity);
  EXPECT_EQ(linearity->fullScaleOutput, -4);
  EXPECT_EQ(linearity->greatestDeviation, 0.5);
  EXPECT_EQ(linearity->atX, 2);
  EXPECT_EQ(linearity->share, 0.125);
}

TEST(Linearity, OfEquallyFarPointsTheFirstIsNamed) {
  // Derived: the minimax line of these is off by the same at all three; values that round in binary.
  const double x[] = {0.1, 0.2, 0.3};
  const double y[] = {0.1, 0.4, 0.3};
  const auto linearity = core::linearityOf(x, y, ReferenceLine::Minimax);
  ASSERT_TRUE(linearity);
  EXPECT_EQ(linearity->atX, 0.1);
}

TEST(Linearity, RefusesPointsWithoutARange) {
  const double x[] = {0, 1, 2};
  const double flat[] = {3, 4, 3};
  EXPECT_THAT(core::linearityOf(x, flat, ReferenceLine::EndPoint).error().text(), HasSubstr("no full scale"));
  const double same[] = {1, 1, 1};
  EXPECT_THAT(core::linearityOf(same, flat, ReferenceLine::LeastSquares).error().text(),
              HasSubstr("all x are equal"));
}

}  // namespace linearity_test
