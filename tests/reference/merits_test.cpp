// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/assess/merits.h"

#include <gtest/gtest.h>

#include "tests/support/csv.h"
#include "tests/support/reached_digits.h"

// Figures of merit of published calibrations. A check is made of the rows of their tables: each x is a step,
// what it is expected to read is x times a factor, and the readings are y.

namespace core {
namespace merits_test {

const std::string folder = std::string(SHUNTWRIGHT_TESTS_DIR) + "/reference/lines/";

/// A check of steps that simulate `x`, are expected to read `factor` times that, and read `y`.
struct TableCheck {
  Setup setup;
  SetupPrediction prediction;
  Budget budget;
  Check check;

  TableCheck(const std::vector<double>& x, double factor, const std::vector<double>& y) {
    setup.shunts.push_back({"R", Resistance(100000)});
    for (std::size_t i = 0; i < x.size(); ++i) {
      setup.sequence.push_back({});
      if (x[i] != 0) setup.sequence.back().closed = {0};
      Prediction step;
      step.simulated = x[i];
      step.reading = Reading(factor * x[i]);
      prediction.steps.push_back(step);
      check.readings.push_back(Measured{Reading(y[i]), {}, {}, {}});
      for (ScopeBudget& scope : budget.scopes) scope.steps.push_back(StepUncertainty{});
    }
  }

  Merit merit(MeritKind kind, ReferenceLine line = ReferenceLine::LeastSquares) {
    setup.limits.linearityFrom = line;
    return meritsOf(setup, prediction, budget, check).at(static_cast<std::size_t>(kind));
  }
};

/// Up and down again; expected to read the full-scale output of 10.905 at the greatest pressure, so that
/// shares of the expected and of the measured span are the same.
TableCheck pressureGauge() {
  const auto rows = test::readCsv(folder + "pressure_gauge_up_down.csv");
  std::vector<double> x = test::numbers(rows, "x"), y = test::numbers(rows, "y_up");
  const std::vector<double> down = test::numbers(rows, "y_down");
  for (std::size_t i = down.size(); i-- > 0;) {
    x.push_back(x[i]);
    y.push_back(down[i]);
  }
  return TableCheck(x, 1.0905, y);
}

TableCheck pressureSensor() {
  const auto rows = test::readCsv(folder + "pressure_sensor_kessel.csv");
  return TableCheck(test::numbers(rows, "x"), 9.8, test::numbers(rows, "y"));
}

/// The value of one row of the table of results, and how far off it may be.
void expectRow(const std::string& dataset, const std::string& method, const std::string& quantity,
               double value) {
  int found = 0;
  for (const auto& row : test::readCsv(folder + "results.csv")) {
    if (row.at("dataset") != dataset || row.at("method") != method || row.at("quantity") != quantity)
      continue;
    EXPECT_REACHED("Pressure gauge and sensor, " + method, quantity, value, test::number(row, "value"),
                   test::number(row, "tolerance"))
        << method << quantity;
    ++found;
  }
  EXPECT_EQ(found, 1) << dataset << method << quantity;
}

TEST(MeritReference, HysteresisOfAPressureGauge) {
  const Merit merit = pressureGauge().merit(MeritKind::Hysteresis);
  ASSERT_TRUE(merit.value) << merit.reason;
  expectRow("pressure_gauge_up_down", "hysteresis", "max_abs", *merit.value);
  expectRow("pressure_gauge_up_down", "hysteresis", "max_pct_FSO", 100 * *merit.share);
  // Published over the input span of 10; a share of the input is not offered.
  expectRow("pressure_gauge_up_down", "hysteresis", "max_pct_of_input_span", 100 * *merit.value / 10);
  EXPECT_EQ(merit.step, 15u);  // coming down to 6, counted from 0
}

TEST(MeritReference, ZeroReturnOfAPressureGauge) {
  const Merit merit = pressureGauge().merit(MeritKind::ZeroReturn);
  ASSERT_TRUE(merit.value) << merit.reason;
  expectRow("pressure_gauge_up_down", "zero_return", "y_down_minus_y_up_at_zero", *merit.value);
  expectRow("pressure_gauge_up_down", "zero_return", "pct_FSO", 100 * *merit.share);
}

TEST(MeritReference, NonlinearityOfBothByEveryLine) {
  const std::map<std::string, ReferenceLine> free = {{"endpoint_mean", ReferenceLine::EndPoint},
                                                     {"least_squares_mean", ReferenceLine::LeastSquares},
                                                     {"minimax_mean", ReferenceLine::Minimax}};
  TableCheck gauge = pressureGauge(), sensor = pressureSensor();
  for (const auto& [method, line] : free) {
    const Merit ofGauge = gauge.merit(MeritKind::Nonlinearity, line);
    const Merit ofSensor = sensor.merit(MeritKind::Nonlinearity, line);
    ASSERT_TRUE(ofGauge.value && ofSensor.value);
    expectRow("pressure_gauge_up_down", method, "max_abs_dev", std::abs(*ofGauge.value));
    expectRow("pressure_gauge_up_down", method, "max_dev_pct_FSO", 100 * std::abs(*ofGauge.share));
    expectRow("pressure_sensor_kessel", method, "max_abs_dev", std::abs(*ofSensor.value));
    expectRow("pressure_sensor_kessel", method, "max_dev_pct_FSO", 100 * std::abs(*ofSensor.share));
  }
  // The lines through zero go through the check's first zero reading, which is (0, 0) of the sensor.
  const std::map<std::string, ReferenceLine> zeroBased = {
      {"ls_through_origin_mean", ReferenceLine::ZeroBasedLeastSquares},
      {"minimax_through_origin_mean", ReferenceLine::ZeroBasedMinimax}};
  for (const auto& [method, line] : zeroBased) {
    const Merit merit = sensor.merit(MeritKind::Nonlinearity, line);
    ASSERT_TRUE(merit.value);
    expectRow("pressure_sensor_kessel", method, "max_abs_dev", std::abs(*merit.value));
    expectRow("pressure_sensor_kessel", method, "max_dev_pct_FSO", 100 * std::abs(*merit.share));
  }
}

TEST(MeritReference, ASensorReadOnTheWayUpAloneHasNoHysteresis) {
  EXPECT_FALSE(pressureSensor().merit(MeritKind::Hysteresis).value);
}

}  // namespace merits_test
}  // namespace core
