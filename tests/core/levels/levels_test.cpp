// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/levels/levels.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <random>

namespace levels_test {

using core::Level;
using core::LevelOptions;
using testing::HasSubstr;
using namespace core::literals;

/// A recording made by a rule, so that the truth about it is known.
struct Rule {
  std::vector<double> heights;
  double hold_s = 1;
  double rate = 50;       ///< samples per second
  double settling_s = 0;  ///< time constant of a first-order lag
  double ramp_s = 0;      ///< time from one height to the next
  double noise = 0;       ///< standard deviation, white and normal
  double drift_per_s = 0;
};

struct Made {
  std::vector<double> time_s;
  std::vector<double> values;
};

/// Normal numbers by Box and Muller: those of the standard library may differ from one to the next.
double normal(std::mt19937& random) {
  const double u = (random() + 1.0) / 4294967297.0;
  const double v = random() / 4294967296.0;
  return std::sqrt(-2 * std::log(u)) * std::cos(2 * 3.14159265358979 * v);
}

Made made(const Rule& rule, unsigned seed = 1) {
  std::mt19937 random(seed);
  Made made;
  double state = rule.heights.front();
  for (const double height : rule.heights) {
    const double from = state;
    const int samples = static_cast<int>(std::lround(rule.hold_s * rule.rate));
    for (int i = 0; i < samples; ++i) {
      const double way = rule.ramp_s > 0 ? std::min(1.0, (i + 1) / (rule.ramp_s * rule.rate)) : 1;
      const double target = from + way * (height - from);
      const double share = rule.settling_s > 0 ? 1 - std::exp(-1 / (rule.rate * rule.settling_s)) : 1;
      state += share * (target - state);
      const double t = static_cast<double>(made.time_s.size()) / rule.rate;
      made.time_s.push_back(t);
      made.values.push_back(state + rule.drift_per_s * t +
                            (rule.noise > 0 ? rule.noise * normal(random) : 0));
    }
  }
  return made;
}

std::vector<Level> levelsOf(const Made& made, const LevelOptions& options = {}) {
  const auto levels = core::findLevels(core::TimeAxis(made.time_s), made.values, options);
  if (!levels) throw std::runtime_error(levels.error().text());
  return *levels;
}

/// Each level in its own stretch of time, its mean within `tolerance` of the height (plus drift).
void expectHeights(const std::vector<Level>& levels, const Rule& rule, double tolerance) {
  ASSERT_EQ(levels.size(), rule.heights.size());
  for (std::size_t k = 0; k < levels.size(); ++k) {
    SCOPED_TRACE("level " + std::to_string(k));
    const double begin_s = static_cast<double>(k) * rule.hold_s;
    EXPECT_GE(levels[k].begin_s, begin_s - 1.01 / rule.rate);
    EXPECT_LE(levels[k].end_s, begin_s + rule.hold_s + 0.01 / rule.rate);
    const double middle_s = (levels[k].begin_s + levels[k].end_s) / 2;
    EXPECT_NEAR(levels[k].mean, rule.heights[k] + rule.drift_per_s * middle_s, tolerance);
  }
}

const std::vector<double> shuntSteps = {0, 500, 0, 1000, 0, -500, 0, -1000, 0};

TEST(Levels, WithoutNoiseComeOutExactly) {
  const Rule rule{.heights = shuntSteps};
  const auto levels = levelsOf(made(rule));
  expectHeights(levels, rule, 0);
  EXPECT_EQ(levels[1].stdUncertainty, 0);
}

TEST(Levels, LeaveSettlingOut) {
  // With a lag of 60 ms what is left of a step of 1000 after the trim is under a thousandth of it.
  const Rule rule{.heights = shuntSteps, .hold_s = 1.5, .settling_s = 0.06};
  expectHeights(levelsOf(made(rule)), rule, 1);
}

TEST(Levels, StandOutOfNoiseOfAFifthOfTheSmallestStep) {
  // 100 of noise over at least 20 samples: standard deviation of a mean below 23, taken four times.
  const Rule rule{.heights = shuntSteps, .hold_s = 2, .settling_s = 0.03, .noise = 100};
  for (unsigned seed = 1; seed <= 20; ++seed) {
    SCOPED_TRACE(seed);
    const auto levels = levelsOf(made(rule, seed));
    ASSERT_EQ(levels.size(), shuntSteps.size());
    for (std::size_t k = 0; k < levels.size(); ++k) EXPECT_NEAR(levels[k].mean, shuntSteps[k], 92);
  }
}

TEST(Levels, TellTheirUncertainty) {
  // White noise of deviation 2: the standard deviation of a mean of n is 2/sqrt(n); over 180 levels the mean
  // square of deviation over uncertainty is 1 within its own scatter, sqrt(2/180) = 0.1, taken five times.
  double squares = 0;
  for (unsigned seed = 1; seed <= 20; ++seed) {
    const auto levels = levelsOf(made({.heights = shuntSteps, .hold_s = 2, .noise = 2}, seed));
    ASSERT_EQ(levels.size(), shuntSteps.size());
    for (std::size_t k = 0; k < levels.size(); ++k) {
      squares += std::pow((levels[k].mean - shuntSteps[k]) / levels[k].stdUncertainty, 2) / 180;
    }
  }
  EXPECT_GT(squares, 0.5);
  EXPECT_LT(squares, 1.5);
}

TEST(Levels, AreNotCutByDrift) {
  const Rule rule{.heights = shuntSteps, .hold_s = 2, .settling_s = 0.06, .noise = 1, .drift_per_s = 20};
  const auto levels = levelsOf(made(rule));
  expectHeights(levels, rule, 2);
  EXPECT_NEAR(levels[4].drift_per_s, 20, 2);
}

TEST(Levels, AreNotMadeOfRamps) {
  const Rule rule{.heights = {0, 250, 500, 750, 1000, 500, 0}, .hold_s = 4, .ramp_s = 1.5, .noise = 1};
  expectHeights(levelsOf(made(rule)), rule, 1);
  Rule clean = rule;
  clean.noise = 0;
  // The last sample of a ramp is off by 250/75 and may be one of a hundred of a level.
  expectHeights(levelsOf(made(clean)), clean, 250.0 / 75 / 100);
}

TEST(Levels, SeeAStairOfEqualSteps) {
  const Rule rule{.heights = {0, 100, 200, 300, 400}, .rate = 1000, .settling_s = 0.01, .noise = 5};
  expectHeights(levelsOf(made(rule)), rule, 2);
}

TEST(Levels, WorkWithFewSamplesPerSecond) {
  const Rule rule{.heights = shuntSteps, .hold_s = 10, .rate = 1, .noise = 1};
  expectHeights(levelsOf(made(rule)), rule, 2);
}

TEST(Levels, LeaveSingleSpikesOutAndCountThem) {
  Made recording = made({.heights = {0, 500, 0}, .hold_s = 2, .noise = 1});
  recording.values[150] += 300;
  recording.values[170] -= 90;
  const auto levels = levelsOf(recording);
  ASSERT_EQ(levels.size(), 3u);
  EXPECT_EQ(levels[1].outliers, 2u);
  EXPECT_NEAR(levels[1].mean, 500, 1);
}

TEST(Levels, OfAConstantRecordingAreOne) {
  const auto clean = levelsOf(made({.heights = {4.7}, .hold_s = 10}));
  ASSERT_EQ(clean.size(), 1u);
  EXPECT_EQ(clean[0].mean, 4.7);
  EXPECT_EQ(clean[0].begin_s, 0);
  EXPECT_EQ(clean[0].samples, 500u);
  for (unsigned seed = 1; seed <= 20; ++seed) {
    EXPECT_EQ(levelsOf(made({.heights = {4.7}, .hold_s = 60, .noise = 1}, seed)).size(), 1u) << seed;
  }
  EXPECT_EQ(levelsOf(made({.heights = {4.7}, .hold_s = 60, .noise = 1, .drift_per_s = 0.5})).size(), 1u);
}

TEST(Levels, ShorterThanTheShortestAreDropped) {
  Made recording = made({.heights = {0, 500, 0}, .hold_s = 2, .noise = 1});
  for (int i = 50; i < 60; ++i) recording.values[i] += 500;  // 0.2 s
  EXPECT_EQ(levelsOf(recording).size(), 5u);
  EXPECT_EQ(levelsOf(recording, {.shortest = 0.3_s}).size(), 3u);
}

TEST(Levels, CloserThanTheLeastStepAreOne) {
  const Made recording = made({.heights = {0, 500, 502, 0}, .hold_s = 2, .noise = 0.1});
  EXPECT_EQ(levelsOf(recording).size(), 4u);
  EXPECT_EQ(levelsOf(recording, {.leastStep = 5}).size(), 3u);
}

TEST(Levels, KnowTheResolution) {
  // Derived: equal readings of resolution 0.6 are rectangular within half of it, u = 0.6/sqrt(12).
  const auto levels = levelsOf(made({.heights = {3}}), {.resolution = 0.6});
  ASSERT_EQ(levels.size(), 1u);
  EXPECT_DOUBLE_EQ(levels[0].stdUncertainty, 0.6 / std::sqrt(12.0));
}

TEST(Levels, TurnAroundWithTheSignOfTheValues) {
  Made recording = made({.heights = shuntSteps, .hold_s = 1.5, .settling_s = 0.06, .noise = 3});
  const auto levels = levelsOf(recording);
  for (double& v : recording.values) v = -v;
  const auto turned = levelsOf(recording);
  ASSERT_EQ(levels.size(), turned.size());
  for (std::size_t k = 0; k < levels.size(); ++k) EXPECT_DOUBLE_EQ(levels[k].mean, -turned[k].mean);
}

std::string refusal(const std::vector<double>& time_s, const std::vector<double>& values) {
  const auto levels = core::findLevels(core::TimeAxis(time_s), values);
  return levels ? "found" : levels.error().text();
}

TEST(Levels, NameWhatIsWrongWithARecording) {
  constexpr double nan = std::numeric_limits<double>::quiet_NaN();
  constexpr double infinity = std::numeric_limits<double>::infinity();
  EXPECT_THAT(refusal({0, 1, 2}, {1, 2}), HasSubstr("3 times do not pair with 2 values"));
  EXPECT_THAT(refusal({0, 1}, {1, 2}), HasSubstr("fewer than three samples"));
  EXPECT_THAT(refusal({}, {}), HasSubstr("fewer than three samples"));
  EXPECT_THAT(refusal({1, 1, 1}, {1, 2, 3}), HasSubstr("all times are equal"));
  EXPECT_THAT(refusal({0, 1, 2}, {1, nan, 3}), HasSubstr("fewer than three numbers"));
  EXPECT_THAT(refusal({0, 1, 2}, {nan, nan, nan}), HasSubstr("fewer than three numbers"));
  EXPECT_THAT(refusal({0, 1, 2}, {1, infinity, 3}), HasSubstr("sample 2: the value is not a finite number"));
  EXPECT_THAT(refusal({0, 1, 2}, {1, 2, -infinity}), HasSubstr("sample 3: the value is not a finite number"));
  EXPECT_THAT(refusal({0, 1, 2}, {1, -1e101, 3}), HasSubstr("sample 2: the value is too large"));
}

TEST(Levels, OfAHandfulOfSamplesAreOne) {
  // Nothing to tell a step from noise by.
  EXPECT_EQ(levelsOf({{0, 1, 2}, {1, 2, 3}}).size(), 1u);
  EXPECT_EQ(levelsOf({{0, 1, 2, 3, 4}, {1, 1, 1, 1, 1}}).size(), 1u);
}

TEST(Levels, StopWhenAskedAndTellTheirProgress) {
  const Made recording = made({.heights = shuntSteps});
  std::vector<double> shares;
  ASSERT_TRUE(core::findLevels(core::TimeAxis(recording.time_s), recording.values, {}, {},
                               [&](double share) { shares.push_back(share); }));
  EXPECT_TRUE(std::is_sorted(shares.begin(), shares.end()));
  EXPECT_DOUBLE_EQ(shares.back(), 1);
  std::stop_source source;
  const auto stopped = core::findLevels(core::TimeAxis(recording.time_s), recording.values, {},
                                        source.get_token(), [&](double) { source.request_stop(); });
  ASSERT_FALSE(stopped);
  EXPECT_EQ(stopped.error().what, "cancelled");
}

}  // namespace levels_test
