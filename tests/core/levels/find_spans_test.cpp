// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/levels/find_spans.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <numbers>

#include "tests/support/normal.h"

namespace {

using core::SampleSpan;
using core::TimeAxis;
using test::Normal;

/// Steps whose place is known, in units of the smallest; what is added to them is each test's own.
struct Steps {
  std::vector<double> heights = {0, 1, 0, 2, 0, -1, 0, -2, 0};
  std::vector<std::size_t> counts = std::vector<std::size_t>(9, 600);
  double rate = 500;
  std::vector<double> values = {};

  std::size_t begin(std::size_t level) const {
    std::size_t sum = 0;
    for (std::size_t k = 0; k < level; ++k) sum += counts[k];
    return sum;
  }
  void make() {
    values.clear();
    for (std::size_t k = 0; k < heights.size(); ++k) values.insert(values.end(), counts[k], heights[k]);
  }
  void addNoise(Normal& random, double sigma) {
    for (double& v : values) v += sigma * random();
  }
  std::vector<SampleSpan> found() const {
    return core::findSpans(TimeAxis::even(0, 1 / rate, values.size()), values);
  }
};

/// One span inside each level that covers at least half of it: the rule by which the program is scored.
void expectFound(const Steps& steps) {
  const auto spans = steps.found();
  ASSERT_EQ(spans.size(), steps.heights.size());
  for (std::size_t k = 0; k < spans.size(); ++k) {
    SCOPED_TRACE("level " + std::to_string(k));
    EXPECT_GE(spans[k].begin, steps.begin(k));
    EXPECT_LE(spans[k].end, steps.begin(k + 1));
    EXPECT_GE(2 * spans[k].size(), steps.counts[k]);
  }
}

TEST(FindSpans, TellStepsOfOneAndAHalfStandardDeviationsWhenHeldLongEnough) {
  Normal random(1);
  for (int round = 0; round < 10; ++round) {
    Steps steps{.counts = std::vector<std::size_t>(9, 2000)};
    steps.make();
    steps.addNoise(random, 1 / 1.5);
    expectFound(steps);
  }
}

TEST(FindSpans, StandRedNoise) {
  Normal random(2);
  for (int round = 0; round < 10; ++round) {
    Steps steps{.counts = std::vector<std::size_t>(9, 8000)};
    steps.make();
    double red = 0;
    for (double& v : steps.values) {
      red = 0.98 * red + std::sqrt(1 - 0.98 * 0.98) * 0.1 * random();
      v += red;
    }
    expectFound(steps);
  }
}

TEST(FindSpans, StandPickUpLargerThanTheSteps) {
  Normal random(3);
  for (const double mains_Hz : {50.0, 60.0, 50.0 / 3}) {
    SCOPED_TRACE(mains_Hz);
    Steps steps{.counts = std::vector<std::size_t>(9, 1500)};
    steps.make();
    for (std::size_t i = 0; i < steps.values.size(); ++i)
      steps.values[i] +=
          3 * std::sin(2 * std::numbers::pi * mains_Hz * static_cast<double>(i) / steps.rate + 1);
    steps.addNoise(random, 0.05);
    expectFound(steps);
  }
}

TEST(FindSpans, StandDriftOfSeveralSteps) {
  Normal random(4);
  for (const double drift : {-4.0, 4.0}) {
    Steps steps;
    steps.make();
    for (std::size_t i = 0; i < steps.values.size(); ++i)
      steps.values[i] += drift * static_cast<double>(i) / static_cast<double>(steps.values.size());
    steps.addNoise(random, 0.03);
    expectFound(steps);
  }
}

TEST(FindSpans, LeaveSettlingOut) {
  // A lag of 40 samples in levels of 600: what is left of a step of 2 at the begin of a span is under 3 % of
  // the smallest step, so that its mean is off by less than a third of a per cent.
  Normal random(5);
  Steps steps;
  steps.make();
  double state = 0;
  for (double& v : steps.values) v = state += (v - state) / 40;
  steps.addNoise(random, 0.02);
  expectFound(steps);
  for (const SampleSpan& span : steps.found()) {
    if (span.begin == 0) continue;
    std::size_t level = 0;
    while (steps.begin(level + 1) <= span.begin) ++level;
    EXPECT_GE(span.begin, steps.begin(level) + 160);  // 2 exp(-160/40) = 0.037, the mean of the rest 0.004
  }
}

TEST(FindSpans, LeaveBounceOut) {
  Normal random(6);
  Steps steps;
  steps.make();
  for (std::size_t k = 1; k < steps.heights.size(); ++k) {
    for (std::size_t i = 1; i < 20; ++i)  // 40 ms
      if (random.uniform() < 0.5) steps.values[steps.begin(k) + i] = steps.heights[k - 1];
  }
  steps.addNoise(random, 0.03);
  expectFound(steps);
}

TEST(FindSpans, StandSpikes) {
  Normal random(7);
  Steps steps;
  steps.make();
  steps.addNoise(random, 0.05);
  for (double& v : steps.values)
    if (random.uniform() < 0.01) v += random.uniform() < 0.5 ? 100 : -100;
  expectFound(steps);
}

TEST(FindSpans, GoOnAcrossBurstsOfInterference) {
  Normal random(15);
  Steps steps{.counts = std::vector<std::size_t>(9, 3000)};
  steps.make();
  steps.addNoise(random, 0.05);
  for (std::size_t k = 0; k < 9; ++k) {
    for (const std::size_t at : {700, 1600, 1750}) {
      const double size = 20 * random.uniform() - 10;
      for (std::size_t i = 0; i < 6; ++i) steps.values[steps.begin(k) + at + i] += size;
    }
  }
  expectFound(steps);
}

TEST(FindSpans, ShowLevelsOfVeryDifferentLength) {
  Normal random(8);
  Steps steps{.heights = {0, 1, 0, 2, 0, -1, 0}, .counts = {6000, 40, 3000, 40, 60, 9000, 40}, .rate = 100};
  steps.make();
  steps.addNoise(random, 0.05);
  expectFound(steps);
}

TEST(FindSpans, StandCoarseConverters) {
  Normal random(9);
  Steps steps;
  steps.make();
  steps.addNoise(random, 0.25);
  for (double& v : steps.values) v = std::round(2 * v) / 2;
  expectFound(steps);
}

TEST(FindSpans, GoOnAcrossMissingValues) {
  constexpr double nan = std::numeric_limits<double>::quiet_NaN();
  Normal random(10);
  Steps steps;
  steps.make();
  steps.addNoise(random, 0.05);
  for (std::size_t k = 0; k < 9; ++k)
    for (std::size_t i = 200; i < 300; ++i) steps.values[steps.begin(k) + i] = nan;
  for (double& v : steps.values)
    if (random.uniform() < 0.02) v = nan;
  expectFound(steps);
}

TEST(FindSpans, AreOneWithoutSteps) {
  Normal random(11);
  for (int round = 0; round < 20; ++round) {
    Steps steps{.heights = {3}, .counts = {20'000}};
    steps.make();
    double red = 0;
    for (std::size_t i = 0; i < steps.values.size(); ++i) {
      red = (round % 2 == 0 ? 0.0 : 0.95) * red + random();
      steps.values[i] += red + 5 * static_cast<double>(i) / 20'000;
    }
    EXPECT_EQ(steps.found().size(), 1u) << round;
  }
}

TEST(FindSpans, TellLongStepsOfFewSamples) {
  // A step of 4 standard deviations amid 100 samples is 20 of those of the difference of the means.
  Normal random(13);
  for (int round = 0; round < 50; ++round) {
    SCOPED_TRACE(round);
    Steps steps{.heights = {0, 4}, .counts = {40, 60}, .rate = 1};
    steps.make();
    steps.addNoise(random, 1);
    const auto spans = steps.found();
    ASSERT_EQ(spans.size(), 2u);
    // The likeliest place is off by more than two samples only when three of noise are beyond 2 on average.
    EXPECT_LE(spans[0].end, 43u);
    EXPECT_GE(spans[1].begin, 37u);
  }
}

TEST(FindSpans, AreOneInFewSamplesOfRedNoiseOrDrift) {
  Normal random(14);
  int cut = 0;
  for (int round = 0; round < 600; ++round) {
    Steps steps{.heights = {0}, .counts = {100}, .rate = 1};
    steps.make();
    const double colour = 0.3 * (round % 4);
    const double drift = round % 3 == 0 ? 4 : 0;
    double red = 0;
    for (std::size_t i = 0; i < 100; ++i) {
      red = colour * red + random();
      steps.values[i] += red + drift * static_cast<double>(i) / 100;
    }
    cut += steps.found().size() > 1 ? 1 : 0;
  }
  EXPECT_LE(cut, 6);  // a hundredth: our own demand
}

TEST(FindSpans, AreTheSameInCellsOfManySamples) {
  // 2 million samples, 15 to a cell: nothing changes but the grid that spans lie on.
  Normal random(12);
  Steps steps{.counts = std::vector<std::size_t>(9, 230'000), .rate = 10'000};
  steps.make();
  steps.addNoise(random, 0.2);
  expectFound(steps);
}

TEST(FindSpans, AreNoneWhenStopped) {
  Steps steps;
  steps.make();
  std::stop_source source;
  source.request_stop();
  const auto time = TimeAxis::even(0, 1 / steps.rate, steps.values.size());
  EXPECT_TRUE(core::findSpans(time, steps.values, {}, source.get_token()).empty());
}

}  // namespace
