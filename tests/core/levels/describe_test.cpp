// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/levels/describe.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <numbers>

#include "tests/support/normal.h"

namespace {

using core::Level;
using core::LevelQuality;
using core::SampleSpan;
using core::TimeAxis;
using testing::HasSubstr;

constexpr double nan = std::numeric_limits<double>::quiet_NaN();

/// How the samples of levels come about; all amplitudes in the same unit.
struct Trouble {
  const char* name;
  std::vector<int> samples;
  double white = 1;
  std::vector<double> phis = {};  ///< of first-order noises of deviation `red`
  double red = 0;
  double hum = 0;            ///< amplitude; its third harmonic has a third of it
  double humPeriod = 20.03;  ///< in samples
  double drift = 0;          ///< per level
  double spikes = 0;         ///< share of samples that 8 to 48 is added to
  double missing = 0;        ///< share of samples
  double resolution = 0;
  int repeats = 1;  ///< how often the logger writes each value of the noise
  bool hasOwnStrengths = false;
};

struct Made {
  std::vector<double> values;
  std::vector<SampleSpan> spans;
  std::vector<double> truths;  ///< means of the noise-free signal over the spans
};

Made made(const Trouble& trouble, test::Normal& normal) {
  Made made;
  std::vector<double> states;
  for (std::size_t a = 0; a < trouble.phis.size(); ++a) states.push_back(normal());
  const double phase = normal.uniform();
  double white = 0;
  for (const int samples : trouble.samples) {
    const double height = 1000 * normal.uniform();
    const double strength = trouble.hasOwnStrengths ? std::exp(normal()) : 1;
    made.spans.push_back({made.values.size(), made.values.size() + static_cast<std::size_t>(samples)});
    made.truths.push_back(height);
    for (int k = 0; k < samples; ++k) {
      if (k % trouble.repeats == 0) white = normal();
      double value = height + trouble.drift * ((k + 0.5) / samples - 0.5) + strength * trouble.white * white;
      for (std::size_t a = 0; a < states.size(); ++a) {
        value += trouble.red * states[a];
        states[a] = trouble.phis[a] * states[a] + std::sqrt(1 - trouble.phis[a] * trouble.phis[a]) * normal();
      }
      const double turns = static_cast<double>(made.values.size()) / trouble.humPeriod + phase;
      value += trouble.hum * std::cos(2 * std::numbers::pi * turns);
      value += trouble.hum / 3 * std::cos(6 * std::numbers::pi * turns);
      if (normal.uniform() < trouble.spikes) value += 8 + 40 * normal.uniform();
      if (trouble.resolution > 0) value = trouble.resolution * std::round(value / trouble.resolution);
      made.values.push_back(normal.uniform() < trouble.missing ? nan : value);
    }
  }
  return made;
}

std::vector<Level> described(const Made& made, const core::LevelOptions& options = {}) {
  return core::describeLevels(TimeAxis::even(0, 0.001, made.values.size()), made.values, made.spans, options);
}

/// The share of intervals mean +- 1.96 uncertainties that hold the truth, over 1000 levels or more.
double coverage(const Trouble& trouble, unsigned seed) {
  test::Normal normal(seed);
  double all = 0, within = 0;
  while (all < 1000) {
    const Made recording = made(trouble, normal);
    const auto levels = described(recording);
    for (std::size_t k = 0; k < levels.size(); ++k) {
      all += 1;
      within += std::abs(levels[k].mean - recording.truths[k]) <= 1.96 * levels[k].stdUncertainty;
    }
  }
  return within / all;
}

std::vector<int> nine(int samples) { return std::vector<int>(9, samples); }

TEST(DescribeLevels, StateIntervalsThatHoldTheTruthNineteenTimesInTwenty) {
  // Truth: the rule the samples are made by. A share of 0.95 of 1000 comes out within 0.023 of it in 99.9 %
  // of trials (binomial). For each kind a bias of 0.015 is allowed on top, towards too wide of 0.025: of few
  // samples red noise cannot be told from white, and a uniform error has no tails. Over all kinds (20,000
  // levels) chance makes 0.005 and the share must be from 0.93 to 0.97.
  const std::vector<int> uneven = {20, 50, 100, 500, 2000, 10000, 30, 40, 5000};
  const Trouble troubles[] = {
      {.name = "white, few", .samples = nine(20)},
      {.name = "white", .samples = nine(200)},
      {.name = "white, one level", .samples = {2000}},
      {.name = "white, uneven lengths", .samples = uneven},
      {.name = "own strengths", .samples = nine(200), .hasOwnStrengths = true},
      {.name = "red 0.5", .samples = nine(100), .white = 0, .phis = {0.5}, .red = 1},
      {.name = "red 0.9", .samples = nine(300), .white = 0, .phis = {0.9}, .red = 1},
      {.name = "red 0.95 and white", .samples = nine(500), .phis = {0.95}, .red = 0.5},
      {.name = "red 0.99", .samples = nine(5000), .white = 0, .phis = {0.99}, .red = 1},
      {.name = "two reds and white", .samples = nine(3000), .phis = {0.7, 0.97}, .red = 0.5},
      {.name = "hum", .samples = nine(200), .hum = 3},
      {.name = "hum of few periods", .samples = nine(30), .hum = 3},
      {.name = "hum and red", .samples = nine(500), .white = 0, .phis = {0.9}, .red = 1, .hum = 3},
      {.name = "written five times", .samples = nine(500), .repeats = 5},
      {.name = "drift", .samples = nine(200), .drift = 5},
      {.name = "spikes", .samples = nine(500), .spikes = 0.01},
      {.name = "spikes in hum", .samples = nine(1000), .hum = 3, .spikes = 0.01},
      {.name = "missing", .samples = nine(300), .missing = 0.2},
      {.name = "coarse", .samples = nine(200), .resolution = 1},
      {.name = "coarser than the noise", .samples = nine(200), .resolution = 5},
  };
  double sum = 0;
  for (const Trouble& trouble : troubles) {
    const double share = coverage(trouble, 20);
    EXPECT_GE(share, 0.95 - 0.023 - 0.015) << trouble.name;
    EXPECT_LE(share, 0.95 + 0.023 + 0.012) << trouble.name;
    sum += share / std::size(troubles);
  }
  EXPECT_GE(sum, 0.93);
  EXPECT_LE(sum, 0.97);
}

TEST(DescribeLevels, OfWhiteNoiseAreAsUncertainAsTheirNumberSays) {
  // Truth: deviation 2 over the root of the number. Twenty levels of 2000 samples tell it within about 10 %.
  test::Normal normal(3);
  const auto levels =
      described(made({.name = "", .samples = std::vector<int>(20, 2000), .white = 2}, normal));
  for (const Level& level : levels) {
    EXPECT_NEAR(level.stdUncertainty / (2 / std::sqrt(2000.0)), 1, 0.15);
    EXPECT_GT(level.effectiveSamples, 1500);
    EXPECT_LE(level.effectiveSamples, 2000);
    EXPECT_EQ(level.quality, LevelQuality::Good) << level.reason;
  }
}

TEST(DescribeLevels, OfRedNoiseCountTheirEffectiveSamples) {
  // Zhang's closed form for phi = 0.9: n (1 - phi)/(1 + phi) = 2000/19 = 105. Twenty levels tell it within
  // some 15 %, twice that is allowed.
  test::Normal normal(4);
  const Trouble red = {
      .name = "", .samples = std::vector<int>(20, 2000), .white = 0, .phis = {0.9}, .red = 1};
  for (const Level& level : described(made(red, normal))) {
    EXPECT_NEAR(level.effectiveSamples, 105, 32);
    EXPECT_NEAR(level.stdUncertainty, std::sqrt(1 / 105.0), 0.02);
  }
}

TEST(DescribeLevels, TellTheDriftWithItsUncertainty) {
  // Truth: 4 per level of 0.2 s is 20 a second; the slope of 200 white samples of 1 ms has the deviation
  // sqrt(12/200^3)/1 ms = 1.22 a second. Mean square of 90 deviations: 1 within 5 sqrt(2/90).
  double squares = 0;
  test::Normal normal(5);
  for (int recording = 0; recording < 10; ++recording) {
    for (const Level& level : described(made({.name = "", .samples = nine(200), .drift = 4}, normal))) {
      EXPECT_NEAR(level.driftUncertainty_per_s, 1.22, 0.35);
      squares += std::pow((level.drift_per_s - 20) / level.driftUncertainty_per_s, 2) / 90;
    }
  }
  EXPECT_NEAR(squares, 1, 0.75);
}

TEST(DescribeLevels, LeaveSpikesOutAndCountThem) {
  test::Normal normal(6);
  Made recording = made({.name = "", .samples = {500, 500}}, normal);
  for (const std::size_t k : {20u, 90u, 333u}) recording.values[k] += 60;
  const auto levels = described(recording);
  EXPECT_EQ(levels[0].outliers, 3u);
  EXPECT_EQ(levels[0].samples, 497u);
  EXPECT_EQ(levels[1].outliers, 0u);
  // Deviation 1 of 500: five times 0.045. The spikes would shift the mean by 0.36.
  EXPECT_NEAR(levels[0].mean, recording.truths[0], 0.22);
  EXPECT_NEAR(levels[0].robustMean, recording.truths[0], 0.25);
}

TEST(DescribeLevels, TakeTheHumOffTheMean) {
  // 30 samples of a hum of amplitude 50 and period 20.03: the plain mean is off by up to 50 * 2/(3 pi) = 10.
  test::Normal normal(7);
  const Made recording = made({.name = "", .samples = nine(30), .white = 0.1, .hum = 50}, normal);
  const auto levels = described(recording);
  for (std::size_t k = 0; k < levels.size(); ++k) {
    EXPECT_NEAR(levels[k].mean, recording.truths[k], 0.15);
    EXPECT_LT(levels[k].stdUncertainty, 0.1);
  }
}

TEST(DescribeLevels, AreWhereTheirSpansAre) {
  Made recording{.values = {1, 2, 3, 4, 5, 9, 9, 9}, .spans = {{1, 4}, {5, 8}}, .truths = {}};
  const auto levels =
      core::describeLevels(TimeAxis({0, 1, 2, 3, 4, 10, 11, 14}), recording.values, recording.spans);
  ASSERT_EQ(levels.size(), 2u);
  EXPECT_EQ(levels[0].begin_s, 1);
  EXPECT_EQ(levels[0].end_s, 3);
  EXPECT_EQ(levels[1].end_s, 14);
  EXPECT_EQ(levels[1].span, (SampleSpan{5, 8}));
  EXPECT_EQ(levels[0].mean, 3);
  EXPECT_EQ(levels[1].mean, 9);
  EXPECT_EQ(levels[0].quality, LevelQuality::Poor);
  EXPECT_EQ(levels[0].reason, "only 3 samples");
  EXPECT_TRUE(core::describeLevels(TimeAxis({0, 1}), std::vector<double>{1, 2}, {}).empty());
}

TEST(DescribeLevels, OfOneSampleOrOfNoneSaySo) {
  const std::vector<double> values = {4, nan, nan, nan, 7, 8};
  const SampleSpan spans[] = {{0, 1}, {1, 4}, {4, 6}};
  const auto levels = core::describeLevels(TimeAxis::even(0, 1, 6), values, spans);
  ASSERT_EQ(levels.size(), 3u);
  EXPECT_EQ(levels[0].mean, 4);
  EXPECT_EQ(levels[0].reason, "only 1 sample");
  EXPECT_TRUE(std::isnan(levels[1].mean));
  EXPECT_TRUE(std::isnan(levels[1].robustMean));
  EXPECT_EQ(levels[1].samples, 0u);
  EXPECT_EQ(levels[1].quality, LevelQuality::Poor);
  EXPECT_EQ(levels[1].reason, "none of its samples is a number");
  EXPECT_EQ(levels[2].mean, 7.5);
  for (const Level& level : levels) EXPECT_TRUE(std::isfinite(level.stdUncertainty));
}

TEST(DescribeLevels, HaveAMeanWhileThereIsANumber) {
  // Spans without noise, beside others that hum or settle, so that a hum is found and taken off: their means
  // are the values themselves, within the rounding of sums (1e-9 of what is beside them).
  for (const std::size_t samples :
       {std::size_t{2}, std::size_t{3}, std::size_t{20}, std::size_t{73}, std::size_t{5000}}) {
    for (const double odd : {0.0, 1.0, 1e6}) {
      SCOPED_TRACE(testing::Message() << samples << " samples, odd one " << odd);
      std::vector<double> values;
      std::vector<SampleSpan> spans;
      for (int level = 0; level < 9; ++level) {
        const std::size_t begin = values.size();
        for (std::size_t k = 0; k < samples; ++k) {
          const auto place = static_cast<double>(k);
          const double tail = level % 3 == 1 ? 1000 * std::exp(-place / 3) : 0;
          const double hum = level % 3 == 2 ? std::sin(2 * std::numbers::pi * place / 7.3) : 0;
          values.push_back(level % 3 == 0 ? 0 : 1000 * level + tail + hum);
        }
        spans.push_back({begin, values.size()});
      }
      values[samples / 2] += odd;
      const auto levels = core::describeLevels(TimeAxis::even(0, 0.02, values.size()), values, spans);
      for (const Level& level : levels) {
        EXPECT_TRUE(std::isfinite(level.mean));
        EXPECT_GT(2 * level.samples, samples);
        EXPECT_TRUE(std::isfinite(level.stdUncertainty));
      }
      for (const std::size_t k : {std::size_t{3}, std::size_t{6}}) EXPECT_NEAR(levels[k].mean, 0, 1e-6);
      // One odd sample of two is half of what there is; of fifty or more, which know their own scatter, it is
      // no part.
      if (samples >= 73) {
        EXPECT_NEAR(levels[0].mean, 0, 1e-6);
      }
      if (samples == 2) {
        EXPECT_NEAR(levels[0].mean, odd / 2, 1e-6 + 1e-9 * odd);
      }
    }
  }
}

TEST(DescribeLevels, OfEqualSamplesAreAsUncertainAsTheResolution) {
  const std::vector<double> values(100, 300.0);
  const SampleSpan span{0, 100};
  const TimeAxis time = TimeAxis::even(0, 0.01, 100);
  const auto bare = core::describeLevels(time, values, {&span, 1});
  EXPECT_EQ(bare[0].mean, 300);
  EXPECT_EQ(bare[0].stdUncertainty, 0);
  EXPECT_EQ(bare[0].quality, LevelQuality::Fair);
  // In a file of two decimals they are known to half of the last one.
  const std::vector<double> decimals(100, 3.14);
  EXPECT_DOUBLE_EQ(core::describeLevels(time, decimals, {&span, 1})[0].stdUncertainty,
                   0.01 / std::sqrt(12.0));
  const auto known = core::describeLevels(time, values, {&span, 1}, {.resolution = 0.6});
  // JCGM 100:2008, F.2.2.1: resolution/sqrt(12).
  EXPECT_DOUBLE_EQ(known[0].stdUncertainty, 0.6 / std::sqrt(12.0));
  EXPECT_THAT(known[0].reason, HasSubstr("all samples are equal: the resolution"));
}

TEST(DescribeLevels, SeeATailOfSettlingAndDistrustTheMean) {
  test::Normal normal(8);
  Made recording = made({.name = "", .samples = nine(1000)}, normal);
  // Twenty deviations that die away with a tenth of the level: they shift the mean by 2.
  for (std::size_t k = 0; k < 1000; ++k)
    recording.values[4000 + k] += 20 * std::exp(-static_cast<double>(k) / 100);
  const auto levels = described(recording);
  EXPECT_EQ(levels[4].quality, LevelQuality::Poor);
  EXPECT_THAT(levels[4].reason, HasSubstr("still settling at its beginning"));
  EXPECT_LT(std::abs(levels[4].mean - recording.truths[4]), 1.96 * levels[4].stdUncertainty);
  EXPECT_EQ(levels[5].quality, LevelQuality::Good) << levels[5].reason;
}

TEST(DescribeLevels, FollowTheScaleAndTheOriginOfTheValues) {
  test::Normal normal(9);
  Made recording = made({.name = "", .samples = nine(300), .phis = {0.9}, .red = 1, .hum = 2}, normal);
  const auto levels = described(recording);
  for (double& v : recording.values) v = -64 * v + 1024;  // exact in binary but for the last digits
  const auto other = described(recording);
  for (std::size_t k = 0; k < levels.size(); ++k) {
    // The line search in frequency and the rounding of 1e5 leave some 1e-6.
    EXPECT_NEAR(other[k].mean, -64 * levels[k].mean + 1024, 1e-3);
    EXPECT_NEAR(other[k].stdUncertainty / (64 * levels[k].stdUncertainty), 1, 1e-3);
    EXPECT_EQ(other[k].quality, levels[k].quality);
  }
}

TEST(DescribeLevels, AreTheSameForALongRecordingWhereverItsPiecesAreCut) {
  // A span of 100,000 samples is read in pieces and in blocks: mean, number and outliers are exact all the
  // same.
  test::Normal normal(10);
  Made recording = made({.name = "", .samples = {100'000}}, normal);
  for (std::size_t k = 0; k < 100'000; k += 1000) recording.values[k] = nan;
  recording.values[54'321] += 1000;
  double sum = 0;
  for (std::size_t k = 0; k < 100'000; ++k) {
    if (k % 1000 != 0 && k != 54'321) sum += recording.values[k] - recording.truths[0];
  }
  const auto levels = described(recording);
  EXPECT_EQ(levels[0].samples + levels[0].outliers, 99'900u);
  EXPECT_LE(levels[0].outliers, 3u);  // five deviations are passed in one normal sample of two millions
  EXPECT_GE(levels[0].outliers, 1u);
  // Two normal outliers at five deviations would shift the mean by 1e-4.
  EXPECT_NEAR(levels[0].mean - recording.truths[0], sum / 99'899, 2e-4);
  EXPECT_NEAR(levels[0].stdUncertainty, 1 / std::sqrt(99'900.0), 0.0008);
}

}  // namespace
