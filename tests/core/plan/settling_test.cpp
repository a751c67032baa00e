// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/settling.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <numbers>

namespace {

using namespace core;
using namespace core::literals;

Filter lowPass(FilterKind kind, unsigned order, double cutoff_Hz) {
  return {.kind = kind, .order = order, .cutoff = Frequency(cutoff_Hz)};
}

double settling(const Filter& filter, double share) {
  const auto time = settlingTime(filter, share);
  EXPECT_TRUE(time) << (time ? "" : time.error().text());
  return time ? time->base() : -1;
}

StepTimes times(const Acquisition& acquisition) {
  const auto least = leastTimes(acquisition);
  EXPECT_TRUE(least) << (least ? "" : least.error().text());
  return least ? *least : StepTimes{};
}

// Derived: 1 - y = exp(-2 pi fc t). Both filters of order 1 are that same one. Settling promises 1e-9.
TEST(Settling, FirstOrderFollowsItsExponential) {
  for (const FilterKind kind : {FilterKind::Butterworth, FilterKind::Bessel})
    for (const double share : {0.2, 0.01, 1e-4, 1e-6}) {
      const double expected = std::log(1 / share) / (2 * std::numbers::pi * 10);
      EXPECT_NEAR(settling(lowPass(kind, 1, 10), share), expected, 1e-9 * expected);
    }
}

// Derived: order 2 with poles (-1 +- j)/sqrt 2 overshoots at its first peak, t = pi sqrt 2, by
// exp(-pi) = 4.321 %. A share just above that is reached for good on the way up, before the peak; a share
// just below only after it.
TEST(Settling, AShareJustBelowThePeakWaitsForThePeakToPass) {
  const Filter filter = lowPass(FilterKind::Butterworth, 2, 1 / (2 * std::numbers::pi));
  const double peak = std::numbers::pi * std::numbers::sqrt2;
  const double overshoot = std::exp(-std::numbers::pi);
  EXPECT_LT(settling(filter, overshoot * (1 + 1e-6)), peak - 1);
  EXPECT_GT(settling(filter, overshoot * (1 - 1e-6)), peak);
  // The top of the peak is a parabola: a millionth below it, the time is within sqrt(2e-6) of 1/s or so.
  EXPECT_NEAR(settling(filter, overshoot * (1 - 1e-6)), peak, 5e-3);
}

TEST(Settling, ASmallerShareNeverTakesLess) {
  for (const FilterKind kind : {FilterKind::Butterworth, FilterKind::Bessel})
    for (unsigned order = 1; order <= greatestFilterOrder; ++order) {
      double before = 0;
      for (double share = greatestSettledTo; share >= leastSettledTo; share *= 0.8) {
        const double now = settling(lowPass(kind, order, 10), share);
        EXPECT_GE(now, before) << "order " << order << " to " << share;
        before = now;
      }
    }
}

TEST(Settling, TwiceTheCutoffTakesHalfTheTime) {
  // One division apart: equal to rounding.
  EXPECT_DOUBLE_EQ(settling(lowPass(FilterKind::Bessel, 4, 20), 1e-3),
                   settling(lowPass(FilterKind::Bessel, 4, 10), 1e-3) / 2);
}

// Derived: the mean over a window of a step that happened t ago is t / window.
TEST(Settling, AMovingAverageClimbsAlongItsWindow) {
  EXPECT_DOUBLE_EQ(settling({.kind = FilterKind::MovingAverage, .window = 0.2_s}, 0.05), 0.19);
}

TEST(Settling, WithoutAFilterNothingSettles) { EXPECT_EQ(settling({}, 1e-4), 0); }

TEST(Settling, WhatCannotBeIsNamed) {
  const auto where = [](const Filter& filter, double share = 1e-4) {
    const auto time = settlingTime(filter, share);
    return time ? std::string("accepted") : time.error().where;
  };
  EXPECT_EQ(where(lowPass(FilterKind::Bessel, 0, 10)), "filter order");
  EXPECT_EQ(where(lowPass(FilterKind::Butterworth, 9, 10)), "filter order");
  EXPECT_EQ(where(lowPass(FilterKind::Butterworth, 2, 0)), "filter cutoff");
  EXPECT_EQ(where(lowPass(FilterKind::Bessel, 2, std::numeric_limits<double>::quiet_NaN())), "filter cutoff");
  EXPECT_EQ(where({.kind = FilterKind::MovingAverage, .window = Duration(-1)}), "filter window");
  for (const double share : {0.0, 0.3, -1e-3, 1e-7, std::numeric_limits<double>::quiet_NaN()})
    EXPECT_EQ(where({}, share), "settled to") << share;
}

TEST(StepTimes, AHoldLastsASecondAtLeast) {
  EXPECT_EQ(times({}).hold, 1.0_s);  // 50 periods of 20 ms
  EXPECT_EQ(times({.mains = 60.0_Hz}).hold, 1.0_s);
  EXPECT_EQ(times({.mains = std::nullopt}).hold, 1.0_s);
}

TEST(StepTimes, AHoldIsAWholeNumberOfMainsPeriods) {
  // 16.7 periods of 1/16.7 s would be one second; 17 are the next whole number.
  EXPECT_DOUBLE_EQ(times({.mains = 16.7_Hz}).hold.base(), 17 / 16.7);
  // 20 samples at 15 Hz are 1.333 s: 66.7 periods of 50 Hz, so 67; exactly 80 of 60 Hz.
  EXPECT_DOUBLE_EQ(times({.sampleRate = 15.0_Hz}).hold.base(), 1.34);
  EXPECT_DOUBLE_EQ(times({.sampleRate = 15.0_Hz, .mains = 60.0_Hz}).hold.base(), 80 / 60.0);
}

TEST(StepTimes, AHoldHasTwentySamples) {
  EXPECT_EQ(times({.sampleRate = 1.0_Hz}).hold, 20.0_s);
  EXPECT_EQ(times({.sampleRate = 1000.0_Hz}).hold, 1.0_s);
  // 20 / 7 s = 2.857 s, rounded up to 10 ms where no mains is near.
  EXPECT_DOUBLE_EQ(times({.sampleRate = 7.0_Hz, .mains = std::nullopt}).hold.base(), 2.86);
}

TEST(StepTimes, SettlingIsRoundedUpToTenMilliseconds) {
  // ln(1e4) / (2 pi 10 Hz) = 146.6 ms
  const Acquisition acquisition{.filter = lowPass(FilterKind::Butterworth, 1, 10)};
  EXPECT_DOUBLE_EQ(times(acquisition).settle.base(), 0.15);
}

TEST(StepTimes, TheSwitchFallsBetweenTwoSamples) {
  EXPECT_EQ(times({}).settle, 0.0_s);
  // 146.6 ms and one interval of 10 ms: 156.6 ms.
  const Acquisition acquisition{.sampleRate = 100.0_Hz, .filter = lowPass(FilterKind::Butterworth, 1, 10)};
  EXPECT_DOUBLE_EQ(times(acquisition).settle.base(), 0.16);
}

TEST(StepTimes, WhatCannotBeIsNamed) {
  const auto where = [](const Acquisition& acquisition) {
    const auto least = leastTimes(acquisition);
    return least ? std::string("accepted") : least.error().where;
  };
  EXPECT_EQ(where({.sampleRate = Frequency(0)}), "sample rate");
  EXPECT_EQ(where({.mains = Frequency(-50)}), "mains frequency");
  EXPECT_EQ(where({.settledTo = 0}), "settled to");
  EXPECT_EQ(where({.filter = lowPass(FilterKind::Bessel, 12, 10)}), "filter order");
  EXPECT_EQ(where({.sampleRate = Frequency(1e-4)}), "acquisition");  // 20 samples are 55 hours
  EXPECT_EQ(where({.filter = lowPass(FilterKind::Bessel, 2, 1e-9)}), "acquisition");
}

}  // namespace
