// SPDX-License-Identifier: GPL-3.0-or-later
// Correlated means and level finding against outside truth. Data, values and sources stand in
// tests/reference/lines.
#include "core/levels/levels.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>
#include <sstream>

#include "core/levels/describe.h"
#include "core/levels/robust.h"
#include "core/levels/statistics.h"
#include "tests/support/csv.h"
#include "tests/support/reached_digits.h"

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

/// NumAcc2 and NumAcc4 by the rule NIST gives: `first`, then 500 pairs of `low` and `high`.
std::vector<double> numAcc(double first, double low, double high) {
  std::vector<double> values{first};
  for (int i = 0; i < 500; ++i) values.insert(values.end(), {low, high});
  return values;
}

TEST(Autocorrelation, OfNistUnivariateSetsComesOutCertified) {
  EXPECT_DIGITS_REACHED("NIST StRD, Mavro", "autocorrelation", core::autocorrelation(series("nist_mavro"), 1),
                        value("nist_mavro", "certified", "r1"), 12);
  EXPECT_DIGITS_REACHED("NIST StRD, Lew", "autocorrelation", core::autocorrelation(series("nist_lew"), 1),
                        value("nist_lew", "certified", "r1"), 14);
  EXPECT_DIGITS_REACHED("NIST StRD, NumAcc1", "autocorrelation",
                        core::autocorrelation({{10000001, 10000003, 10000002}}, 1), -0.5, 15);  // NumAcc1
  EXPECT_DIGITS_REACHED("NIST StRD, NumAcc2", "autocorrelation",
                        core::autocorrelation(numAcc(1.2, 1.1, 1.3), 1), -0.999, 13);
  // NumAcc4: 10000000.1 is held to 2e-9 only, 2e-8 of the deviations.
  EXPECT_DIGITS_REACHED("NIST StRD, NumAcc4", "autocorrelation",
                        core::autocorrelation(numAcc(10000000.2, 10000000.1, 10000000.3), 1), -0.999, 7);
}

TEST(RobustMeanOf, TheNickelDeterminationsIsThatOfRsHuber) {
  // R 4.2.2, MASS::huber stops when it moves by less than 1e-6 of the scale, 4e-6; it prints ten digits.
  const auto robust = core::robustMeanOf(series("abbey"));
  EXPECT_REACHED("R 4.2.2, MASS::huber", "location", robust.mean,
                 value("abbey", "huber_k1.5_mad_scale", "location"), 1e-5);
  EXPECT_DIGITS_REACHED("R 4.2.2, mad", "scale", robust.scale, value("abbey", "mad_scaled", "scale"), 12);
  auto values = series("abbey");
  EXPECT_EQ(core::medianOf(values), value("abbey", "median", "location"));
}

/// The whole of a published series as one level.
core::Level wholeOf(const std::vector<double>& values) {
  const std::vector<core::SampleSpan> all = {{0, values.size()}};
  return core::describeLevels(core::TimeAxis::even(0, 1, values.size()), values, all).front();
}

TEST(EffectiveSamples, OfAPlateauWithStrongCorrelationAreFew) {
  // Of 50 samples the published ways to count leave between n (1 - r1)/(1 + r1) = 1.6, noise of the first
  // order on a long record, and 4.9, the sum of the series' own autocorrelations, which is too small on a
  // short one.
  const core::Level level = wholeOf(series("nist_mavro"));
  EXPECT_GE(level.effectiveSamples, value("nist_mavro", "ar1_large_n", "n_eff"));
  EXPECT_LE(level.effectiveSamples, value("nist_mavro", "acf_sum_to_first_nonpositive_lag", "n_eff"));
  EXPECT_EQ(level.quality, core::LevelQuality::Poor);
}

TEST(EffectiveSamples, OfPeriodicDataAreNoMoreThanTheSamples) {
  EXPECT_LE(wholeOf(series("nist_lew")).effectiveSamples, 200);
}

/// State levels of a record of two levels: the histogram between its extremes is halved in the middle, and
/// the fullest bin of either half is its level. Source: IEEE Std 181-2011, state levels by the mode of a
/// bimodal histogram, split at i_low + (i_high - i_low)/2.
std::pair<double, double> stateLevels(const std::vector<double>& values, std::size_t bins, double& width) {
  const auto [low, high] = std::minmax_element(values.begin(), values.end());
  width = (*high - *low) / static_cast<double>(bins);
  std::vector<std::size_t> counts(bins, 0);
  for (const double v : values) ++counts[std::min(bins - 1, static_cast<std::size_t>((v - *low) / width))];
  const auto middle = counts.begin() + static_cast<std::ptrdiff_t>(bins / 2);
  const auto centreOf = [&](auto bin) {
    return *low + (static_cast<double>(bin - counts.begin()) + 0.5) * width;
  };
  return {centreOf(std::max_element(counts.begin(), middle)),
          centreOf(std::max_element(middle, counts.end()))};
}

TEST(Levels, OfATwoLevelRecordAreItsStateLevels) {
  std::mt19937 random(181);
  for (int round = 0; round < 10; ++round) {
    SCOPED_TRACE(round);
    const double low = -3 + round;
    const double high = low + 10;
    std::vector<double> values;
    for (const double height : {low, high, low, high, low}) {
      for (int i = 0; i < 3000; ++i) {
        double noise = -6;  // the sum of twelve even numbers is about normal, of deviation 1
        for (int k = 0; k < 12; ++k) noise += random() / 4294967296.0;
        values.push_back(height + 0.1 * noise);
      }
    }
    double width = 0;
    const auto [lower, upper] = stateLevels(values, 100, width);
    const auto levels = core::findLevels(core::TimeAxis::even(0, 0.001, values.size()), values);
    ASSERT_TRUE(levels) << levels.error().text();
    ASSERT_EQ(levels->size(), 5u);
    for (std::size_t k = 0; k < 5; ++k) EXPECT_NEAR((*levels)[k].mean, k % 2 == 0 ? lower : upper, width);
  }
}

TEST(Levels, OfTheNileChangeWhenTheFirstDamWasBuilt) {
  // One change, behind observation 28 (1898): Cobb 1978; R strucchange, breakpoints() by its BIC. Three
  // samples on either side may be left out as not sure to belong to their level.
  const auto flow = series("nile");
  const auto levels = core::findLevels(core::TimeAxis::even(0, 1, flow.size()), flow);
  ASSERT_TRUE(levels) << levels.error().text();
  ASSERT_EQ(levels->size(), 2u);
  const auto last =
      static_cast<std::size_t>(value("nile", "optimal_partition_min15_m1", "breaks_last_index_of_segment"));
  EXPECT_LE((*levels)[0].span.end, last);
  EXPECT_GE((*levels)[0].span.end, last - 3);
  EXPECT_GE((*levels)[1].span.begin, last);
  EXPECT_LE((*levels)[1].span.begin, last + 3);
  // The means of the whole segments, to three standard uncertainties of what three samples of deviation 128
  // may change of a mean of 25: 3 * 128 * sqrt(3)/28.
  EXPECT_NEAR((*levels)[0].mean, value("nile", "optimal_partition_min15_m1", "mean_1"), 24);
  EXPECT_NEAR((*levels)[1].mean, value("nile", "optimal_partition_min15_m1", "mean_2"), 24);
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
