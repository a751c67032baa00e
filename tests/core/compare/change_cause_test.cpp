// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/compare/change_cause.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <functional>

#include "core/compare/comparison.h"
#include "tests/core/diagnose/held_check.h"

// A two-wire quarter bridge without leads by the divider that it is, v = R3/(R3+R4) - R2/(R1+R2), shown as
// 4 v / F: nothing of the network solver is in the readings. Pairs by a full solver of their own are in
// tests/diagnosis/change_cause_test.cpp.

namespace core {
namespace {

constexpr double ohm = 350, gaugeFactor = 2;

double parallel(double a, double b) { return a * b / (a + b); }

/// What is really there, and how it is read.
struct Truth {
  double gauge = ohm;
  double leak = HUGE_VAL;  ///< over the gauge, ohm
  double gain = 1;
  double shift = 0;         ///< of all readings
  double limit = HUGE_VAL;  ///< where readings stop
  std::function<double(std::size_t)> more = [](std::size_t) { return 0.0; };
};

/// µm/m shown at a strain (m/m), with a resistor over arm 2 and over arm 1.
double shownAt(const Truth& truth, double strain, double over2 = HUGE_VAL, double over1 = HUGE_VAL) {
  const auto beside = [](double arm, double shunt) { return std::isinf(shunt) ? arm : parallel(arm, shunt); };
  const double arm1 = beside(beside(truth.gauge * (1 + gaugeFactor * strain), truth.leak), over1);
  const double arm2 = beside(ohm, over2);
  const double shown = truth.gain * 1e6 * 4 * (0.5 - arm2 / (arm1 + arm2)) / gaugeFactor + truth.shift;
  return std::clamp(shown, -truth.limit, truth.limit);
}

Setup plan() {
  return test::knownExactly(
      test::nineSteps(test::equalArms(BridgeType::QuarterTwoWire, Resistance(ohm)), 2, 1));
}

Check checkBy(const Truth& truth, const char* name, std::optional<double> u) {
  constexpr std::array<double, 3> resistors{174650, 87150, 58000};
  Check check;
  check.name = name;
  for (std::size_t step = 0; step < 9; ++step) {
    const bool up = step >= 1 && step <= 3, down = step >= 5 && step <= 7;
    const double shown =
        shownAt(truth, 0, up ? resistors[step - 1] : HUGE_VAL, down ? resistors[step - 5] : HUGE_VAL);
    check.readings.emplace_back(
        Measured{Reading(shown + truth.more(step)), u ? std::optional(Reading(*u)) : std::nullopt, {}, {}});
  }
  return check;
}

/// The plan is the nine steps in the order zero, three up, zero, three down, zero.
Channel channelOf(const Truth& before, const Truth& after, std::optional<double> u = 0.2) {
  Channel channel;
  channel.name = "TP-01";
  channel.setup = plan();
  channel.checks = {checkBy(before, "pre-test", u), checkBy(after, "post-test", u)};
  return channel;
}

ChangeCause causeOf(const Channel& channel) { return changeCauseOf(channel, evaluate(channel), 0, 1); }

const Explanation* found(const Diagnosis& diagnosis, CauseKind kind, std::size_t index = 0) {
  for (const Explanation& one : diagnosis.explanations)
    if (one.fault.kind == kind && one.fault.index == index) return &one;
  return nullptr;
}

bool says(const std::string& text, const std::string& words) { return text.find(words) != std::string::npos; }

TEST(ChangeCause, OfNothingIsHealthyAndTheFactorIsOneWithinTheIntervalOfTheGain) {
  const Channel channel = channelOf({}, {});
  const ChangeCause cause = causeOf(channel);
  EXPECT_EQ(cause.diagnosis.result, DiagnosisResult::Healthy) << cause.diagnosis.sentence;
  ASSERT_TRUE(cause.data);
  const Comparison comparison = compare(channel, evaluate(channel), 0, 1);
  EXPECT_EQ(cause.data->before.factor, 1);
  EXPECT_EQ(cause.data->after.factor, 1);
  EXPECT_EQ(cause.data->greatestShare, std::abs(comparison.gain->value) + *comparison.gain->halfWidth90);
  EXPECT_EQ(cause.data->greatestOffset, std::abs(comparison.zero->value) + *comparison.zero->halfWidth90);
}

TEST(ChangeCause, OfAGainThatDriftedCorrectsByOneOverIt) {
  for (const double gain : {0.96, 0.995, 1.02, 1.3}) {
    const ChangeCause cause = causeOf(channelOf({}, {.gain = gain}));
    const Explanation* scale = found(cause.diagnosis, CauseKind::Scale);
    ASSERT_TRUE(scale) << cause.diagnosis.sentence;
    EXPECT_EQ(scale, &cause.diagnosis.explanations.front());
    // Linear, so that the fit is exact but for rounding of nine readings and of the prediction.
    EXPECT_NEAR(scale->fault.size, gain, 1e-9);
    ASSERT_TRUE(cause.data);
    EXPECT_EQ(cause.data->before.factor, 1);
    EXPECT_NEAR(cause.data->after.factor, 1 / gain, 1e-9);
    EXPECT_TRUE(says(scale->title, gain > 1 ? "rose" : "fell")) << scale->title;
    EXPECT_TRUE(says(scale->sizeText, "than they were")) << scale->sizeText;
    EXPECT_TRUE(says(cause.data->sentence, "the responsible person decides")) << cause.data->sentence;
  }
}

TEST(ChangeCause, OfALeakIsTheSensitivityOfTheShuntedGauge) {
  const double leak = 60e3, shunted = parallel(ohm, leak);
  const ChangeCause cause = causeOf(channelOf({}, {.leak = leak}));
  const Explanation* told = found(cause.diagnosis, CauseKind::Leak);
  ASSERT_TRUE(told) << cause.diagnosis.sentence;
  EXPECT_LT(told - cause.diagnosis.explanations.data(), 2);
  // As exact as the chi-square that ends the fit: 1e-3 of its standard uncertainty.
  EXPECT_NEAR(told->fault.size, 1 / leak, 2e-3 * *told->standard);
  // d(R||Rp)/dR = (Rp/(R+Rp))^2 (algebra), and the slope of the divider at R' beside that at R.
  const double ratio = 4 * ohm * ohm / std::pow(shunted + ohm, 2) * std::pow(leak / (ohm + leak), 2);
  // The uncertainty of the size times d factor / d conductance = about R.
  EXPECT_NEAR(told->correction.factor, 1 / ratio, 2e-3 * ohm * *told->standard);
  EXPECT_FALSE(told->correction.legitimate);
  EXPECT_EQ(told->title, "Leak over gauge 1 grew");
  EXPECT_TRUE(says(told->sizeText, "from none to ")) << told->sizeText;
  // Its zero moves by the apparent strain, dR/R = -R/(R + Rp) (M. J. Bower, eq. 47.1), far beyond a margin,
  // and the leak over the opposite completion arm that the steps alone cannot tell is not told first.
  EXPECT_TRUE(says(cause.diagnosis.sentence, "would move the zero by")) << cause.diagnosis.sentence;
}

TEST(ChangeCause, OfALeakThatGrewBeginsFromTheEarlierOne) {
  Channel channel = channelOf({.leak = 120e3}, {.leak = 50e3});
  channel.setup.bridge.leaks[0].across = Resistance(120e3);
  channel.setup = test::knownExactly(channel.setup);
  const Diagnosis told = causeOf(channel).diagnosis;
  const Explanation* leak = found(told, CauseKind::Leak);
  ASSERT_TRUE(leak) << told.sentence;
  EXPECT_NEAR(leak->fault.size, 1 / 50e3 - 1 / 120e3, 2e-3 * *leak->standard);
  EXPECT_TRUE(says(leak->sizeText, "from 120 kΩ to 50")) << leak->sizeText;
}

TEST(ChangeCause, BoundsTheErrorOfUncorrectedDataWheneverItCame) {
  for (const Truth& later :
       {Truth{.leak = 60e3}, Truth{.gain = 1.02}, Truth{.gain = 0.97}, Truth{.gauge = 355}}) {
    const ChangeCause cause = causeOf(channelOf({}, later));
    ASSERT_TRUE(cause.data) << cause.diagnosis.sentence;
    double share = 0, offset = 0;
    const double strain = 1e-6;  // where the bridge's own curvature is nothing
    for (int came = 0; came <= 20; ++came)
      for (int time = 0; time < 20; ++time) {
        const Truth& now = time >= came ? later : Truth{};
        const double zero = shownAt(now, 0);
        offset = std::max(offset, std::abs(zero));
        share = std::max(share, std::abs((shownAt(now, strain) - zero) / (1e6 * strain) - 1));
      }
    EXPECT_GE(cause.data->greatestShare, share - 1e-5)
        << cause.data->sentence;  // curvature of 1e-6 strain, twice
    EXPECT_GE(cause.data->greatestOffset, offset) << cause.data->sentence;
    // And no wider than the interval of the worst cause that is tied with it.
    double widest = 0;
    for (std::size_t k = 0; k < cause.diagnosis.tied; ++k) {
      const Correction& one = cause.diagnosis.explanations[k].correction;
      widest = std::max(widest, std::abs(1 / one.factor - 1) +
                                    1.645 * one.factorStandard.value_or(0) / (one.factor * one.factor));
    }
    EXPECT_LE(cause.data->greatestShare, widest + 1e-6);
  }
}

TEST(ChangeCause, OfAnErrorThatBothChecksShareIsNone) {
  // A gain of 3 % and a gauge off by 1 ohm in both: each check fails, and nothing changed.
  const Truth same{.gauge = 351, .gain = 1.03};
  const ChangeCause cause = causeOf(channelOf(same, same));
  EXPECT_EQ(cause.diagnosis.result, DiagnosisResult::Healthy) << cause.diagnosis.sentence;
  EXPECT_TRUE(says(cause.diagnosis.sentence, "was off already")) << cause.diagnosis.sentence;
  ASSERT_TRUE(cause.data);
  EXPECT_NE(cause.data->before.factor, 1) << "data have the earlier check's fault from the start";
  EXPECT_EQ(cause.data->before.factor, cause.data->after.factor);
}

TEST(ChangeCause, OfWhatIsGoneIsToldAsGoneAndCorrectsTheStart) {
  const ChangeCause cause = causeOf(channelOf({.gain = 1.05}, {}));
  ASSERT_EQ(cause.diagnosis.explanations.front().fault.kind, CauseKind::Scale) << cause.diagnosis.sentence;
  EXPECT_TRUE(says(cause.diagnosis.explanations.front().title, "No longer there in post-test"));
  EXPECT_TRUE(says(cause.diagnosis.sentence, "what was there is gone")) << cause.diagnosis.sentence;
  EXPECT_NEAR(cause.data->before.factor, 1 / 1.05, 1e-9);
  EXPECT_EQ(cause.data->after.factor, 1);
}

TEST(ChangeCause, OfAZeroThatMovedAloneNamesWhatWouldMoveItAsFar) {
  const ChangeCause cause = causeOf(channelOf({}, {.shift = -60}));
  const Explanation& first = cause.diagnosis.explanations.front();
  EXPECT_EQ(first.fault.kind, CauseKind::ZeroShift) << cause.diagnosis.sentence;
  EXPECT_EQ(first.fault.index, 0u);
  EXPECT_NEAR(first.fault.size, -60, 1e-9);
  EXPECT_NEAR(cause.data->after.offset, -60, 1e-9);
  EXPECT_EQ(cause.data->after.factor, 1);
  EXPECT_GE(cause.data->greatestOffset, 60);
  const Explanation* leak = found(cause.diagnosis, CauseKind::Leak);
  ASSERT_TRUE(leak) << cause.diagnosis.sentence;
  // x/(4 + 2x) with x = -R/(R + Rp) shown as -60 µm/m: x = 4v/(1 - 2v) with v = -60e-6 F/4.
  const double v = -60e-6 * gaugeFactor / 4, x = 4 * v / (1 - 2 * v);
  EXPECT_NEAR(1 / leak->fault.size, ohm * (-1 / x - 1), 1e-5 * ohm * (-1 / x));  // secant ends at 1e-6
}

TEST(ChangeCause, OfOneCheckAloneLeavesDataAsTheyAre) {
  const Truth stray{.more = [](std::size_t step) { return step == 3 ? 25.0 : 0.0; }};
  const ChangeCause cause = causeOf(channelOf({}, stray));
  const Explanation* told = found(cause.diagnosis, CauseKind::StrayReading, 3);
  ASSERT_TRUE(told) << cause.diagnosis.sentence;
  EXPECT_TRUE(says(told->title, "In post-test")) << told->title;
  EXPECT_TRUE(says(told->onStrain, "None")) << told->onStrain;
  const ChangeCause clipped = causeOf(channelOf({}, {.limit = 1100}));
  EXPECT_TRUE(found(clipped.diagnosis, CauseKind::Clipping)) << clipped.diagnosis.sentence;
}

TEST(ChangeCause, OfReadingsWithoutUncertaintyIsHeldAgainstTheirOwnScatter) {
  const auto scatter = [](std::size_t step) { return step % 2 == 0 ? 0.4 : -0.4; };
  const ChangeCause cause = causeOf(channelOf({.more = scatter}, {.gain = 1.03, .more = scatter}, {}));
  ASSERT_FALSE(cause.diagnosis.explanations.empty()) << cause.diagnosis.sentence;
  EXPECT_EQ(cause.diagnosis.explanations.front().fault.kind, CauseKind::Scale) << cause.diagnosis.sentence;
  EXPECT_TRUE(says(cause.diagnosis.sentence, "No uncertainty of the readings is stated"));
  const auto other = [&](std::size_t step) { return -scatter(step); };
  const ChangeCause same = causeOf(channelOf({.more = scatter}, {.more = other}, {}));
  EXPECT_EQ(same.diagnosis.result, DiagnosisResult::Healthy) << same.diagnosis.sentence;
}

TEST(ChangeCause, IsDeterministicAndStopsWhenAsked) {
  const Channel channel = channelOf({}, {.leak = 60e3});
  EXPECT_EQ(causeOf(channel).diagnosis.sentence, causeOf(channel).diagnosis.sentence);
  std::stop_source source;
  source.request_stop();
  const ChangeCause cause = changeCauseOf(channel, evaluate(channel), 0, 1, source.get_token());
  EXPECT_EQ(cause.diagnosis.result, DiagnosisResult::NotPossible);
  EXPECT_TRUE(says(cause.diagnosis.sentence, "cancelled"));
  EXPECT_FALSE(cause.data);
}

TEST(ChangeCause, OfWhatCannotBeComparedIsSaid) {
  Channel channel = channelOf({}, {});
  for (std::size_t step = 2; step < 9; ++step) channel.checks[1].readings[step].reset();
  const ChangeCause few = causeOf(channel);
  EXPECT_EQ(few.diagnosis.result, DiagnosisResult::NotPossible);
  EXPECT_TRUE(says(few.diagnosis.sentence, "fewer than three steps")) << few.diagnosis.sentence;
  channel = channelOf({}, {});
  channel.setup.sequence.clear();
  EXPECT_TRUE(says(causeOf(channel).diagnosis.sentence, "no steps"));
  // A missing half still tells what the other half shows.
  channel = channelOf({}, {.gain = 1.05});
  for (const std::size_t step : {5, 6, 7}) channel.checks[1].readings[step].reset();
  EXPECT_TRUE(found(causeOf(channel).diagnosis, CauseKind::Scale));
}

}  // namespace
}  // namespace core
