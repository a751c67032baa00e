// SPDX-License-Identifier: GPL-3.0-or-later
// Segmentation, correlated means and level finding against outside truth. Data, values and sources stand in
// tests/reference/lines.
#include "core/levels/levels.h"

#include <gtest/gtest.h>

#include <cmath>
#include <sstream>

#include "core/levels/robust.h"
#include "core/levels/segmentation.h"
#include "core/levels/statistics.h"
#include "tests/support/csv.h"
#include "tests/support/digits.h"

namespace {

const std::string folder = std::string(SHUNTWRIGHT_TESTS_DIR) + "/reference/lines/";

std::vector<double> series(const std::string& dataset, const std::string& column = "y") {
  return test::numbers(test::readCsv(folder + dataset + ".csv"), column);
}

/// The row of the results table; throws when there is none.
test::CsvRow result(const std::string& dataset, const std::string& method, const std::string& quantity) {
  static const auto rows = test::readCsv(folder + "results.csv");
  for (const auto& row : rows) {
    if (row.at("dataset") == dataset && row.at("method") == method && row.at("quantity") == quantity)
      return row;
  }
  throw std::runtime_error("no " + quantity + " of " + dataset);
}

double value(const std::string& dataset, const std::string& method, const std::string& quantity) {
  return test::number(result(dataset, method, quantity), "value");
}

std::vector<std::size_t> indices(const std::string& text) {
  std::istringstream stream(text);
  std::vector<std::size_t> list;
  for (std::size_t i = 0; stream >> i;) list.push_back(i);
  return list;
}

/// NumAcc2 and NumAcc4 by the rule NIST gives: `first`, then 500 pairs of `low` and `high`.
std::vector<double> numAcc(double first, double low, double high) {
  std::vector<double> values{first};
  for (int i = 0; i < 500; ++i) values.insert(values.end(), {low, high});
  return values;
}

TEST(Autocorrelation, OfNistUnivariateSetsComesOutCertified) {
  EXPECT_DIGITS(core::autocorrelation(series("nist_mavro"), 1), value("nist_mavro", "certified", "r1"), 12);
  EXPECT_DIGITS(core::autocorrelation(series("nist_lew"), 1), value("nist_lew", "certified", "r1"), 14);
  EXPECT_DIGITS(core::autocorrelation({{10000001, 10000003, 10000002}}, 1), -0.5, 15);  // NumAcc1
  EXPECT_DIGITS(core::autocorrelation(numAcc(1.2, 1.1, 1.3), 1), -0.999, 13);
  // NumAcc4: 10000000.1 is held to 2e-9 only, 2e-8 of the deviations.
  EXPECT_DIGITS(core::autocorrelation(numAcc(10000000.2, 10000000.1, 10000000.3), 1), -0.999, 7);
}

TEST(RobustMeanOf, TheNickelDeterminationsIsThatOfRsHuber) {
  // R 4.2.2, MASS::huber stops when it moves by less than 1e-6 of the scale, 4e-6; it prints ten digits.
  const auto robust = core::robustMeanOf(series("abbey"));
  EXPECT_NEAR(robust.mean, value("abbey", "huber_k1.5_mad_scale", "location"), 1e-5);
  EXPECT_DIGITS(robust.scale, value("abbey", "mad_scaled", "scale"), 12);
  auto values = series("abbey");
  EXPECT_EQ(core::medianOf(values), value("abbey", "median", "location"));
}

TEST(EffectiveSampleSize, OfAPlateauWithStrongCorrelationIsSmall) {
  // Expected values: n / (1 + 2 sum (1 - k/n) r_k) to the first lag that is not positive, worked out with
  // NumPy from the NIST data (last positive lag 11).
  const auto mavro = series("nist_mavro");
  const double expected = value("nist_mavro", "acf_sum_to_first_nonpositive_lag", "n_eff");
  EXPECT_DIGITS(core::effectiveSampleSize(mavro), expected, 9);
  // NIST certifies the standard deviation, 0.000429123454003053.
  EXPECT_DIGITS(core::uncertaintyOfMean(mavro), value("nist_mavro", "certified", "sd") / std::sqrt(expected),
                9);
}

TEST(EffectiveSampleSize, EarnsNothingFromPeriodicData) {
  EXPECT_EQ(core::effectiveSampleSize(series("nist_lew")), 200);
}

TEST(OptimalPartition, FindsTheExactOptimumOfTheSmallSeries) {
  // Optima in exact arithmetic over all cuts. Where the table says "tie" only the objective is fixed.
  const auto y = series("optpart_tiny_a");
  for (const int penalty : {5, 12, 30, 100}) {
    for (const int shortest : {1, 2, 3}) {
      const std::string method =
          "penalised_L2_beta" + std::to_string(penalty) + "_min" + std::to_string(shortest);
      SCOPED_TRACE(method);
      const auto partition = core::optimalPartition(y, penalty, static_cast<std::size_t>(shortest));
      EXPECT_DIGITS(partition.objective, value("optpart_tiny_a", method, "objective"), 13);
      const auto row = result("optpart_tiny_a", method, "changes_first_index_of_new_segment_0based");
      if (row.at("source_or_note") == "tie") continue;
      EXPECT_EQ(partition.changes, indices(row.at("value")));
    }
  }
}

TEST(OptimalPartition, FindsTheOneChangeOfTheNile) {
  // R strucchange, at least 15 years per segment: squares 2835157 with no change, 1597457 with one after year
  // 28, 1552924 with two. So one change is best for any penalty between the differences.
  const auto flow = series("nile");
  for (const double penalty : {45'000.0, 200'000.0, 1'237'000.0}) {
    const auto partition = core::optimalPartition(flow, penalty, 15);
    EXPECT_EQ(partition.changes, (std::vector<std::size_t>{28}));
    EXPECT_NEAR(partition.objective - penalty, 1597457, 0.5);
  }
  EXPECT_TRUE(core::optimalPartition(flow, 1'238'000, 15).changes.empty());
  EXPECT_EQ(core::optimalPartition(flow, 44'000, 15).changes, (std::vector<std::size_t>{28, 83}));
}

TEST(Levels, OfAStepRecordingWithKnownTruth) {
  // Truth: the rule the recording was made by (AR(1) noise of deviation 1, settling, drift 0.01 per second,
  // pick-up, three spikes); boundaries and settled means stand in its truth table.
  const auto rows = test::readCsv(folder + "plateau_synth_a.csv");
  const auto truth = test::readCsv(folder + "plateau_synth_a_truth.csv");
  const auto levels = core::findLevels(core::TimeAxis(test::numbers(rows, "t")), test::numbers(rows, "y"));
  ASSERT_TRUE(levels) << levels.error().text();
  ASSERT_EQ(levels->size(), truth.size());
  std::size_t outliers = 0;
  for (std::size_t k = 0; k < truth.size(); ++k) {
    SCOPED_TRACE("level " + std::to_string(k));
    const core::Level& level = (*levels)[k];
    const double start_s = test::number(truth[k], "start") / 50;
    const double settled_s = test::number(truth[k], "settled") / 50;
    const double last_s = (test::number(truth[k], "end") - 1) / 50;
    // Not before the step, at the earliest 0.1 s before "settled to 0.5 %", and no more than 0.3 s of it
    // lost.
    EXPECT_GE(level.begin_s, std::max(start_s, settled_s - 0.1));
    EXPECT_LE(level.begin_s, settled_s + 0.3);
    EXPECT_LE(level.end_s, last_s + 1e-9);
    EXPECT_GE(level.end_s, last_s - 0.3);
    // White noise of deviation 1 with AR coefficient 0.6 over n samples: u = sqrt(4 / n), here 0.16 to 0.2.
    const double u = std::sqrt(4.0 / static_cast<double>(level.samples));
    EXPECT_NEAR(level.mean, test::number(truth[k], "level") + test::number(truth[k], "drift_mid"), 4 * u);
    // The mean of the table counts the spikes in.
    if (level.outliers == 0) {
      EXPECT_NEAR(level.mean, test::number(truth[k], "mean_settled"), 2 * u);
    }
    EXPECT_GT(level.stdUncertainty, u / 2);
    EXPECT_LT(level.stdUncertainty, u * 2);
    outliers += level.outliers;
  }
  EXPECT_EQ(outliers, 3u);  // the three spikes
}

}  // namespace
