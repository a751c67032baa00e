// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/line/linearity.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/support/csv.h"
#include "tests/support/digits.h"

namespace {

using core::ReferenceLine;
using testing::HasSubstr;

const std::string folder = std::string(SHUNTWRIGHT_TESTS_DIR) + "/reference/lines/";

/// Checks intercept, slope, greatest deviation and share against the table; its values are worked out
/// in exact rational arithmetic from the data of the source named in the data file.
void expectReference(const core::Linearity& linearity, const std::string& dataset,
                     const std::string& method) {
  const std::map<std::string, double> values = {{"intercept", linearity.intercept},
                                                {"slope", linearity.slope},
                                                {"max_abs_dev", std::abs(linearity.greatestDeviation)},
                                                {"max_dev_pct_FSO", 100 * linearity.share}};
  std::size_t checked = 0;
  for (const auto& row : test::readCsv(folder + "results.csv")) {
    if (row.at("dataset") != dataset || row.at("method") != method) continue;
    EXPECT_NEAR(values.at(row.at("quantity")), test::number(row, "value"), test::number(row, "tolerance"))
        << dataset << " " << method << " " << row.at("quantity");
    ++checked;
  }
  EXPECT_EQ(checked, values.size());
}

TEST(Linearity, OfAPressureGaugeUpAndDownUsesTheMeanCurve) {
  const auto rows = test::readCsv(folder + "pressure_gauge_up_down.csv");
  auto x = test::numbers(rows, "x");
  auto y = test::numbers(rows, "y_up");
  const auto down = test::numbers(rows, "y_down");
  x.insert(x.end(), x.begin(), x.begin() + static_cast<std::ptrdiff_t>(down.size()));
  y.insert(y.end(), down.begin(), down.end());
  const auto leastSquares = core::linearityOf(x, y, ReferenceLine::LeastSquares);
  const auto endPoint = core::linearityOf(x, y, ReferenceLine::EndPoint);
  ASSERT_TRUE(leastSquares && endPoint);
  expectReference(*leastSquares, "pressure_gauge_up_down", "least_squares_mean");
  expectReference(*endPoint, "pressure_gauge_up_down", "endpoint_mean");
  EXPECT_DIGITS(endPoint->fullScaleOutput, 10.905, 14);
}

TEST(Linearity, OfAPressureSensor) {
  // Data: Kessel, Kacker and Sommer, Measurement 45 (2012) 1661-1669, Table 4.
  const auto rows = test::readCsv(folder + "pressure_sensor_kessel.csv");
  const auto x = test::numbers(rows, "x");
  const auto y = test::numbers(rows, "y");
  const auto leastSquares = core::linearityOf(x, y, ReferenceLine::LeastSquares);
  const auto endPoint = core::linearityOf(x, y, ReferenceLine::EndPoint);
  ASSERT_TRUE(leastSquares && endPoint);
  expectReference(*leastSquares, "pressure_sensor_kessel", "least_squares_mean");
  expectReference(*endPoint, "pressure_sensor_kessel", "endpoint_mean");
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

TEST(Linearity, RefusesPointsWithoutARange) {
  const double x[] = {0, 1, 2};
  const double flat[] = {3, 4, 3};
  EXPECT_THAT(core::linearityOf(x, flat, ReferenceLine::EndPoint).error().text(), HasSubstr("no full scale"));
  const double same[] = {1, 1, 1};
  EXPECT_THAT(core::linearityOf(same, flat, ReferenceLine::LeastSquares).error().text(),
              HasSubstr("all x are equal"));
}

}  // namespace
