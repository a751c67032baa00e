// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/assess/merits.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

#include "core/assess/assessment.h"
#include "core/assess/characteristic.h"
#include "core/assess/half_slopes.h"
#include "core/line/stated_fits.h"
#include "tests/support/digits.h"
#include "tests/support/sample_channel.h"

// Definitions are those of core/assess/merits.h (OIML R 60, ISA-37.1 and IEC 61298-2 as named there); the
// numbers are these definitions applied by hand. Readings are of the order of a thousand, so 1e-9 is above
// their rounding.

namespace core {
namespace merits_test {

using testing::HasSubstr;
using testing::MatchesRegex;

/// What is expected of the sample channel at its nine steps: 0, three up, 0, three down, 0.
struct Sample {
  Channel channel = sample::withCheckReading(sample::nineStepChannel(), 1.0);
  SetupPrediction prediction = predict(channel.setup);

  double expected(std::size_t step) const { return prediction.steps[step]->reading.base(); }
  void add(std::size_t step, double reading) { channel.checks[0].readings[step]->mean += Reading(reading); }
  std::vector<Merit> merits() const {
    return meritsOf(channel.setup, prediction, budgetOf(channel.setup, prediction), channel.checks[0]);
  }
  Merit merit(MeritKind kind) const { return merits().at(static_cast<std::size_t>(kind)); }
  CheckAssessment assessment() const {
    return assess(channel.setup, prediction, budgetOf(channel.setup, prediction), channel.checks[0]);
  }
  double span() const {
    double least = 0, most = 0;
    for (std::size_t step = 0; step < prediction.steps.size(); ++step) {
      least = std::min(least, expected(step));
      most = std::max(most, expected(step));
    }
    return most - least;
  }

  /// Steps go up and come down again on either side: 0 1 2 3 2 1 0 -1 -2 -3 -2 -1 0, `repeats` times.
  static Sample upAndDown(unsigned repeats = 1) {
    Sample sample;
    const std::vector<Step> plan = sample.channel.setup.sequence;
    std::vector<Step> sequence{plan[0]};
    for (unsigned k = 0; k < repeats; ++k)
      for (const std::size_t step : {1, 2, 3, 2, 1, 0, 5, 6, 7, 6, 5, 0}) sequence.push_back(plan[step]);
    sample.channel.checks.clear();
    sample.channel.setup.sequence = sequence;
    sample.channel = sample::withCheckReading(sample.channel, 1.0);
    sample.prediction = predict(sample.channel.setup);
    return sample;
  }
};

TEST(Merits, ThereAreAllEightInTheirOrderEachWithDefinitionAndSentence) {
  const std::vector<Merit> merits = Sample::upAndDown(2).merits();
  ASSERT_EQ(merits.size(), meritKindCount);
  for (std::size_t k = 0; k < meritKindCount; ++k) {
    EXPECT_EQ(merits[k].kind, static_cast<MeritKind>(k));
    ASSERT_TRUE(merits[k].value) << merits[k].reason;
    EXPECT_NEAR(*merits[k].share, 0, 1e-9) << merits[k].reason;  // readings as expected
    EXPECT_GT(merits[k].denominator, 0);
    EXPECT_THAT(merits[k].definition, HasSubstr(std::string(denominatorName(merits[k].kind))));
    EXPECT_THAT(merits[k].reason, MatchesRegex("[A-Z].*\\."));
  }
}

TEST(Merits, NonlinearityIsThatOfTheReadingsNotThatOfTheBridge) {
  // The quarter bridge is curved by some 0.3 % at these levels; readings as expected show none of it.
  Sample sample;
  EXPECT_NEAR(*sample.merit(MeritKind::Nonlinearity).value, 0, 1e-9);
  sample.channel.setup.limits.linearityFrom = ReferenceLine::EndPoint;
  // Derived: the end points do not move, so the end-point line stays and the deviation is what was added.
  sample.add(2, 12);
  const Merit merit = sample.merit(MeritKind::Nonlinearity);
  EXPECT_NEAR(*merit.value, 12, 1e-9);
  EXPECT_NEAR(merit.denominator, sample.span(), 1e-9);
  EXPECT_NEAR(*merit.share, 12 / sample.span(), 1e-12);
  EXPECT_EQ(merit.step, 2u);
  EXPECT_THAT(merit.definition, HasSubstr("end-point line"));
  EXPECT_THAT(merit.reason, HasSubstr("0.201 % of the measured span at +2008 µm/m (step 3), 12.00 µm/m from "
                                      "the end-point line of measured against expected: no limit is set."));
}

TEST(Merits, NonlinearityTakesTheMeanOfRisingAndFallingCombinedErrorTheReading) {
  Sample sample = Sample::upAndDown();
  sample.channel.setup.limits.linearityFrom = ReferenceLine::EndPoint;
  sample.add(2, 4);
  sample.add(4, 8);
  // Derived: the mean of both is 6 off, the falling reading 8.
  EXPECT_NEAR(*sample.merit(MeritKind::Nonlinearity).value, 6, 1e-9);
  const Merit combined = sample.merit(MeritKind::CombinedError);
  EXPECT_NEAR(*combined.value, 8, 1e-9);
  EXPECT_EQ(combined.step, 4u);
}

TEST(Merits, HysteresisIsFallingLessRisingAtOneLevel) {
  Sample sample = Sample::upAndDown();
  sample.add(1, 1);
  sample.add(5, 3.5);  // 2.5 at the first level of the plus side
  sample.add(8, 2);
  sample.add(10, -4);  // -6 at the second level of the minus side
  const Merit merit = sample.merit(MeritKind::Hysteresis);
  EXPECT_NEAR(*merit.value, -6, 1e-9);
  EXPECT_EQ(merit.step, 10u);
  EXPECT_NEAR(*merit.share, -6 / sample.span(), 1e-12);
  EXPECT_THAT(merit.reason, HasSubstr("falling less rising -6.0 µm/m"));
}

TEST(Merits, HysteresisOfSeveralCyclesIsThatOfTheirMeans) {
  Sample sample = Sample::upAndDown(2);
  sample.add(2, 3);   // rising
  sample.add(16, 5);  // falling, second cycle
  // Derived: mean falling 2.5 less mean rising 1.5.
  EXPECT_NEAR(*sample.merit(MeritKind::Hysteresis).value, 1, 1e-9);
}

TEST(Merits, ZeroReadingsAreNoHysteresis) {
  Sample sample = Sample::upAndDown();
  sample.add(6, 10);
  EXPECT_NEAR(*sample.merit(MeritKind::Hysteresis).value, 0, 1e-9);
  EXPECT_NEAR(*sample.merit(MeritKind::ZeroShift).value, 10, 1e-9);
}

TEST(Merits, AOneWayPlanHasNoHysteresisAndNothingToRepeat) {
  const Sample sample;
  const Merit hysteresis = sample.merit(MeritKind::Hysteresis);
  EXPECT_FALSE(hysteresis.value || hysteresis.share || hysteresis.standard);
  EXPECT_EQ(hysteresis.reason, "Hysteresis is not known: the plan has no steps that come back down.");
  EXPECT_EQ(sample.merit(MeritKind::Repeatability).reason,
            "Repeatability is not known: no level was read twice in the same direction.");
}

TEST(Merits, RepeatabilityIsTheSpreadInOneDirection) {
  Sample sample = Sample::upAndDown(2);
  sample.add(4, 9);   // falling at the second level, first cycle
  sample.add(14, 1);  // rising at the second level, second cycle: another direction
  const Merit merit = sample.merit(MeritKind::Repeatability);
  EXPECT_NEAR(*merit.value, 9, 1e-9);
  EXPECT_THAT(merit.reason, HasSubstr("2 falling readings spread over 9.0 µm/m"));
}

TEST(Merits, ZeroReturnIsTheLastZeroAndZeroShiftTheFarthest) {
  Sample sample;
  sample.add(0, 100);  // the first zero is the reference, whatever it shows
  sample.add(4, 107);
  sample.add(8, 97);
  const Merit back = sample.merit(MeritKind::ZeroReturn);
  EXPECT_NEAR(*back.value, -3, 1e-9);
  EXPECT_NEAR(back.denominator,
              std::abs(sample.expected(7)) > sample.expected(3) ? -sample.expected(7) : sample.expected(3),
              1e-9);
  EXPECT_EQ(back.step, 8u);
  const Merit shift = sample.merit(MeritKind::ZeroShift);
  EXPECT_NEAR(*shift.value, 7, 1e-9);
  EXPECT_EQ(shift.step, 4u);
}

TEST(Merits, SymmetryIsTheDifferenceOfTheHalfSlopes) {
  Sample sample;
  for (const std::size_t step : {1, 2, 3}) sample.add(step, 0.004 * sample.expected(step));
  for (const std::size_t step : {5, 6, 7}) sample.add(step, 0.001 * sample.expected(step));
  const Merit merit = sample.merit(MeritKind::Symmetry);
  // Derived: each half is a line through the zeros, of slope 1.004 and 1.001.
  EXPECT_NEAR(*merit.share, 0.003, 1e-12);
  EXPECT_NEAR(*merit.value, 0.003 * sample.span(), 1e-8);
  EXPECT_THAT(merit.reason, HasSubstr("slope 1.0040 of the positive and 1.0010 of the negative half"));
}

TEST(Merits, SpanRatioIsMeasuredOverExpectedLessOne) {
  Sample sample;
  sample.add(3, 6);
  sample.add(7, -3);
  const Merit merit = sample.merit(MeritKind::SpanRatio);
  EXPECT_NEAR(*merit.value, 9, 1e-9);
  EXPECT_NEAR(*merit.share, 9 / sample.span(), 1e-12);
}

TEST(Merits, AReversedChannelHasASpanRatioOfMinusTwo) {
  Sample sample;
  sample.channel.checks.clear();
  sample.channel = sample::withCheckReading(sample.channel, -1.0);
  EXPECT_NEAR(*sample.merit(MeritKind::SpanRatio).share, -2, 1e-12);
  EXPECT_NEAR(*sample.merit(MeritKind::Nonlinearity).value, 0, 1e-9);
  EXPECT_GT(sample.merit(MeritKind::Nonlinearity).denominator, 0);
}

// Uncertainty

/// The sample whose inputs are all known but for the readings, each of standard uncertainty `u`.
Sample withReadingUncertainty(Sample sample, double u) {
  for (const Input input : inputListOf(sample.channel.setup))
    sample.channel.setup.uncertainties.stated[input] = {};
  for (auto& reading : sample.channel.checks[0].readings) reading->uncertainty = Reading(u);
  return sample;
}

TEST(Merits, UncertaintiesFollowFromTheReadingsByTheLawOfPropagation) {
  Sample sample = withReadingUncertainty(Sample::upAndDown(2), 0.5);
  sample.channel.setup.limits.linearityFrom = ReferenceLine::EndPoint;
  sample.add(2, 12);
  const double span = *sample.merit(MeritKind::SpanRatio).value + sample.span();
  const auto u = [&](MeritKind kind) {
    const Merit merit = sample.merit(kind);
    return *merit.standard * merit.denominator;
  };
  // Derived. Hysteresis: means of two readings each, 0.5 sqrt(1/2 + 1/2). Repeatability, zero shift and
  // return: two readings. Span: the extreme steps, each read twice.
  EXPECT_NEAR(u(MeritKind::Hysteresis), 0.5, 1e-9);
  EXPECT_NEAR(u(MeritKind::Repeatability), 0.5 * std::sqrt(2), 1e-9);
  EXPECT_NEAR(u(MeritKind::ZeroShift), 0.5 * std::sqrt(2), 1e-9);
  EXPECT_NEAR(u(MeritKind::ZeroReturn), 0.5 * std::sqrt(2), 1e-9);
  EXPECT_NEAR(u(MeritKind::SpanRatio), 0.5, 1e-9);
  // Derived. The mean of four readings at x2, less the end-point line there: (1 - t) of one end, t of the
  // other, each the mean of two.
  const double t = (sample.expected(2) - sample.expected(9)) / span;
  EXPECT_NEAR(u(MeritKind::Nonlinearity), 0.5 * std::sqrt(1.0 / 4 + t * t / 2 + (1 - t) * (1 - t) / 2),
              1e-6);  // span off by 1e-9
}

TEST(Merits, WhatStepsHaveInCommonDropsOutOfHysteresisAndSymmetryOfTheGain) {
  // Derived: a gain that is wrong by 1 % moves rising and falling readings alike, and both halves alike; the
  // span it moves by 1 %.
  Sample sample = withReadingUncertainty(Sample::upAndDown(), 0.01);
  sample.channel.setup.uncertainties.stated[{InputKind::Gain, 0}] = {.statement = Statement::Standard,
                                                                     .amount = 0.01};
  EXPECT_NEAR(*sample.merit(MeritKind::SpanRatio).standard, 0.01, 1e-4);
  EXPECT_LT(*sample.merit(MeritKind::Hysteresis).standard, 1e-5);
  EXPECT_LT(*sample.merit(MeritKind::Symmetry).standard, 2e-5);
  EXPECT_LT(*sample.merit(MeritKind::Nonlinearity).standard, 1e-5);
}

TEST(Merits, StatedUncertaintiesAreTheScatterThatTrialsShow) {
  // Outside truth: the standard deviation of the figure over 20,000 draws of the readings. Its own is a
  // share of 1/sqrt(2 x 20,000) = 0.5 %; five of those are allowed. The readings start 30 off at one step,
  // so that the extreme point stays the same.
  Sample sample = withReadingUncertainty(Sample::upAndDown(), 1);
  sample.add(2, 60);
  sample.add(4, 90);
  const std::vector<Merit> stated = sample.merits();
  std::mt19937 generator(11);
  std::normal_distribution<double> normal(0, 1);
  const Budget budget = budgetOf(sample.channel.setup, sample.prediction);
  std::vector<double> sum(meritKindCount), squares(meritKindCount);
  constexpr int draws = 20000;
  for (int k = 0; k < draws; ++k) {
    Check check = sample.channel.checks[0];
    for (auto& reading : check.readings) reading->mean += Reading(normal(generator));
    const auto merits = meritsOf(sample.channel.setup, sample.prediction, budget, check);
    for (std::size_t m = 0; m < meritKindCount; ++m) {
      const double off = merits[m].value.value_or(0) - stated[m].value.value_or(0);
      sum[m] += off;
      squares[m] += off * off;
    }
  }
  for (const MeritKind kind : {MeritKind::Nonlinearity, MeritKind::Hysteresis, MeritKind::ZeroReturn,
                               MeritKind::Symmetry, MeritKind::CombinedError, MeritKind::SpanRatio}) {
    const std::size_t m = static_cast<std::size_t>(kind);
    const double deviation = std::sqrt((squares[m] - sum[m] * sum[m] / draws) / (draws - 1));
    EXPECT_NEAR(deviation / (*stated[m].standard * stated[m].denominator), 1, 0.025) << stated[m].reason;
  }
}

TEST(Merits, ARefusedUncertaintyLeavesTheValueAndJudgesNothing) {
  Sample sample;
  sample.channel.setup.limits.merits = {{MeritKind::SpanRatio, 0.01}};
  const std::size_t shunt = sample.channel.setup.sequence[2].closed.front();
  sample.channel.setup.uncertainties.stated[{InputKind::Shunt, shunt}] = {.amount = std::nan("")};
  const Merit merit = sample.merit(MeritKind::SpanRatio);
  EXPECT_TRUE(merit.value);
  EXPECT_FALSE(merit.standard);
  EXPECT_EQ(merit.verdict, Verdict::NotJudged);
  EXPECT_THAT(merit.reason, HasSubstr("not judged"));
  // Zero return depends on no shunt.
  EXPECT_EQ(sample.merit(MeritKind::ZeroReturn).verdict, Verdict::Pass);
}

// Verdicts

TEST(Merits, AFigureIsJudgedByItsLimitAndItsSentenceSaysSo) {
  Sample sample = Sample::upAndDown();
  sample.channel.setup.limits.merits = {{MeritKind::Hysteresis, 0.005}};
  sample.add(4, 7.2);
  const Merit within = sample.merit(MeritKind::Hysteresis);
  EXPECT_EQ(within.verdict, Verdict::Pass);
  EXPECT_EQ(within.reason,
            "Hysteresis 0.12 % of the measured span at +2008 µm/m (step 5), falling less rising 7.2 µm/m: "
            "within the limit of 0.50 %.");
  sample.add(4, 30);
  EXPECT_EQ(sample.merit(MeritKind::Hysteresis).verdict, Verdict::Fail);
  EXPECT_THAT(sample.merit(MeritKind::Hysteresis).reason, HasSubstr("beyond the limit of 0.50 %"));
}

TEST(Merits, ZeroReturnIsDecidedExactlyAsItsStep) {
  for (const DecisionRule rule : {DecisionRule::Simple, DecisionRule::SharedRisk, DecisionRule::Guarded,
                                  DecisionRule::Conformity, DecisionRule::EnNumber}) {
    for (const double off : {0.0, 0.3, 5.0, 14.0, 14.9, 15.2, 40.0}) {
      Sample sample;
      sample.channel.setup.decision.rule = rule;
      sample.channel.checks[0].readings[0]->uncertainty = Reading(0.4);
      sample.channel.checks[0].readings[8]->uncertainty = Reading(0.3);
      sample.add(8, off);
      const CheckAssessment check = sample.assessment();
      const Merit& merit = check.merits[static_cast<std::size_t>(MeritKind::ZeroReturn)];
      EXPECT_EQ(merit.verdict, check.steps[8].verdict) << off;
      EXPECT_NEAR(*merit.standard * merit.denominator, check.steps[8].standard->base(), 1e-12);
      EXPECT_NEAR(*merit.limit * merit.denominator, check.steps[8].limit->base(), 1e-9);
    }
  }
}

TEST(Merits, TheDecisionRuleHoldsForFiguresToo) {
  Sample sample = withReadingUncertainty(Sample::upAndDown(), 1);
  sample.channel.setup.limits.merits = {{MeritKind::Hysteresis, 10 / sample.span()}};
  sample.channel.setup.decision.rule = DecisionRule::Guarded;
  // Derived: u = sqrt(2), U = 2.83 with k = 2; the limit is 10.
  for (const auto& [off, verdict] : {std::pair{7.1, Verdict::Pass}, std::pair{7.3, Verdict::CannotTell},
                                     std::pair{12.7, Verdict::CannotTell}, std::pair{12.9, Verdict::Fail}}) {
    Sample other = sample;
    other.add(4, off);
    EXPECT_EQ(other.merit(MeritKind::Hysteresis).verdict, verdict) << off;
  }
}

TEST(Merits, AnUncertaintyThatNobodyHasStatedIsNotZero) {
  // Readings typed by hand: hysteresis is a difference in which all that the steps share drops out.
  Sample sample = withReadingUncertainty(Sample::upAndDown(), 0);
  for (auto& reading : sample.channel.checks[0].readings) reading->uncertainty.reset();
  sample.channel.setup.uncertainties.stated[{InputKind::Gain, 0}] = {.statement = Statement::Standard,
                                                                     .amount = 0.001};
  sample.channel.setup.limits.merits = {{MeritKind::Hysteresis, 0.005}, {MeritKind::SpanRatio, 0.01}};
  sample.add(4, 7.2);
  EXPECT_EQ(sample.merit(MeritKind::Hysteresis).verdict, Verdict::Pass);  // simple acceptance needs none
  EXPECT_FALSE(sample.merit(MeritKind::Hysteresis).standard);
  for (const DecisionRule rule :
       {DecisionRule::SharedRisk, DecisionRule::Guarded, DecisionRule::Conformity, DecisionRule::EnNumber}) {
    sample.channel.setup.decision.rule = rule;
    const Merit merit = sample.merit(MeritKind::Hysteresis);
    EXPECT_EQ(merit.verdict, Verdict::CannotTell);
    EXPECT_THAT(merit.reason, HasSubstr("its uncertainty is not known"));
    EXPECT_EQ(sample.merit(MeritKind::SpanRatio).verdict, Verdict::Pass) << "that of the gain is known";
  }
  sample.channel.setup.decision.rule = DecisionRule::Guarded;
  EXPECT_EQ(sample.assessment().reason,
            "Cannot tell: the uncertainty of hysteresis is not known, and guarded acceptance needs it; all "
            "steps pass.");
}

TEST(Merits, ASmallFigureIsNotShownAsNothing) {
  Sample sample = withReadingUncertainty(Sample::upAndDown(), 0);
  sample.channel.setup.limits.merits = {{MeritKind::Hysteresis, 0.005}};
  sample.add(4, 0.01);
  // Derived: 0.01 of a span of 5982 is 0.00017 %; beside a limit of 0.50 % it would be 0.00 %.
  EXPECT_THAT(
      sample.merit(MeritKind::Hysteresis).reason,
      HasSubstr("Hysteresis 0.0002 % of the measured span at +2008 µm/m (step 5), falling less rising "
                "0.01"));
}

TEST(Merits, AnImpossibleLimitJudgesNothing) {
  Sample sample;
  for (const double bad : {-0.1, std::nan(""), HUGE_VAL}) {
    sample.channel.setup.limits.merits = {{MeritKind::SpanRatio, bad}};
    EXPECT_EQ(sample.merit(MeritKind::SpanRatio).verdict, Verdict::NotJudged);
    EXPECT_THAT(sample.merit(MeritKind::SpanRatio).reason, HasSubstr("limit is negative or not a number"));
  }
}

// Readings and steps that are missing

TEST(Merits, AMissingReadingLeavesWhatTheOthersTell) {
  Sample sample = Sample::upAndDown();
  sample.add(5, 3);
  sample.channel.checks[0].readings[2].reset();
  EXPECT_NEAR(*sample.merit(MeritKind::Hysteresis).value, 3, 1e-9);
  // Without its partner the level has no hysteresis.
  sample.channel.checks[0].readings[1].reset();
  EXPECT_NEAR(*sample.merit(MeritKind::Hysteresis).value, 0, 1e-9);
  for (const std::size_t step : {8u, 9u, 7u}) sample.channel.checks[0].readings[step].reset();
  EXPECT_EQ(sample.merit(MeritKind::Hysteresis).reason,
            "Hysteresis is not known: no level was read both on the way up and on the way down.");
}

TEST(Merits, AStepThatCannotBePredictedHasNoPart) {
  Sample sample = Sample::upAndDown();
  sample.channel.setup.shunts[sample.channel.setup.sequence[3].closed.front()].resistance = Resistance(0);
  sample.prediction = predict(sample.channel.setup);
  ASSERT_FALSE(sample.prediction.steps[3]);
  EXPECT_NEAR(*sample.merit(MeritKind::Nonlinearity).value, 0, 1e-9);
  // The step after it is reached from nobody knows where.
  const auto approaches = approachesOf(sample.prediction);
  EXPECT_EQ(approaches[3], Approach::Unknown);
  EXPECT_EQ(approaches[4], Approach::Unknown);
  EXPECT_EQ(approaches[5], Approach::Falling);
}

TEST(Merits, WithoutReadingsEveryFigureSaysWhatItNeeds) {
  Sample sample;
  sample.channel.checks[0].readings.clear();
  for (const Merit& merit : sample.merits()) {
    EXPECT_FALSE(merit.value);
    EXPECT_EQ(merit.verdict, Verdict::NotJudged);
    EXPECT_THAT(merit.reason, HasSubstr(" is not known: "));
  }
}

TEST(Merits, WhatIsNotANumberIsLeftOutAndALastZeroThatIsNoneIsNoReturn) {
  Sample sample;
  sample.channel.checks[0].readings[2]->mean = Reading(std::nan(""));
  sample.channel.checks[0].readings[8]->mean = Reading(HUGE_VAL);
  for (const Merit& merit : sample.merits())
    EXPECT_TRUE(std::isfinite(merit.share.value_or(0))) << merit.reason;
  EXPECT_THAT(sample.merit(MeritKind::ZeroReturn).reason, HasSubstr("no finite number"));
  for (auto& reading : sample.channel.checks[0].readings) reading->mean = Reading(1e308);
  sample.channel.checks[0].readings[3]->mean = Reading(-1e308);
  for (const Merit& merit : sample.merits())
    EXPECT_TRUE(std::isfinite(merit.share.value_or(0))) << merit.reason;
}

TEST(Merits, FlatReadingsHaveNoSpanToTakeAShareOf) {
  Sample sample;
  for (auto& reading : sample.channel.checks[0].readings) reading->mean = Reading(5);
  EXPECT_THAT(sample.merit(MeritKind::Nonlinearity).reason, HasSubstr("both ends of the range are equal"));
  EXPECT_NEAR(*sample.merit(MeritKind::SpanRatio).share, -1, 1e-12);
}

TEST(Merits, WithoutAZeroReadingNothingIsSaidOfZero) {
  Sample sample;
  for (const std::size_t step : {0, 4, 8}) sample.channel.checks[0].readings[step].reset();
  EXPECT_THAT(sample.merit(MeritKind::ZeroReturn).reason, HasSubstr("needs two zero readings"));
  EXPECT_THAT(sample.merit(MeritKind::ZeroShift).reason, HasSubstr("needs two zero readings"));
  EXPECT_TRUE(sample.merit(MeritKind::Nonlinearity).value);
}

// Slopes of the halves

TEST(HalfSlopes, AreThoseOfTheLineWithItsCovarianceAndHaveItsUncertainty) {
  // The line fit is held against ISO/TS 28037 in its own tests; this one is written apart from it.
  Sample sample = withReadingUncertainty(Sample::upAndDown(), 0.7);
  for (const InputKind kind : {InputKind::Gain, InputKind::Excitation})
    sample.channel.setup.uncertainties.stated[{kind, 0}] = {.statement = Statement::Standard,
                                                            .amount = 0.001};
  sample.add(2, 3);
  const CheckPoints points =
      checkPoints(sample.channel.setup, sample.prediction, budgetOf(sample.channel.setup, sample.prediction),
                  sample.channel.checks[0]);
  std::vector<std::size_t> half;
  std::vector<double> x, y, covariance;
  for (std::size_t i = 0; i < points.size(); ++i)
    if (points.expected[i] >= 0) half.push_back(i);
  for (const std::size_t i : half) {
    x.push_back(points.expected[i]);
    y.push_back(points.measured[i]);
    for (const std::size_t j : half) covariance.push_back(points.covariance[i * points.size() + j]);
  }
  const auto line = fitCorrelatedLine(x, y, covariance);
  ASSERT_TRUE(line);
  const SlopeForm form = slopeOver(points, half);
  EXPECT_TRUE(form.hasUsedCovariance);
  double variance = 0;
  for (std::size_t i = 0; i < points.size(); ++i)
    for (std::size_t j = 0; j < points.size(); ++j)
      variance += form.weights[i] * form.weights[j] * points.covariance[i * points.size() + j];
  // The covariance is some ten thousand times worse conditioned than its diagonal.
  EXPECT_NEAR(form.slope, line->slope, 1e-10);
  EXPECT_NEAR(std::sqrt(variance), *line->slopeError, 1e-10);
}

TEST(HalfSlopes, AreOrdinaryWhereTheCovarianceIsSingular) {
  CheckPoints points;
  points.expected = {0, 1, 2};
  points.measured = {0, 1, 5};
  points.steps = {0, 1, 2};
  const std::vector<std::size_t> all{0, 1, 2};
  for (const auto& covariance : {std::vector<double>{}, std::vector<double>(9, 0.0)}) {
    points.covariance = covariance;
    const SlopeForm form = slopeOver(points, all);
    EXPECT_FALSE(form.hasUsedCovariance);
    EXPECT_DIGITS(form.slope, 2.5, 15);  // derived: (5 - 0) / 2
  }
}

// Directions

TEST(Approaches, FollowTheMagnitudeOnEachSide) {
  using enum Approach;
  EXPECT_EQ(approachesOf(Sample::upAndDown().prediction),
            (std::vector<Approach>{Rising, Rising, Rising, Rising, Falling, Falling, Falling, Rising, Rising,
                                   Rising, Falling, Falling, Falling}));
}

TEST(Approaches, AStepHeldAgainIsARepetitionAndTheOtherSideIsReachedFromZero) {
  using enum Approach;
  Sample sample;
  const std::vector<Step> plan = sample.channel.setup.sequence;
  sample.channel.setup.sequence = {plan[2], plan[2], plan[1], plan[5], plan[7], plan[1]};
  EXPECT_EQ(approachesOf(predict(sample.channel.setup)),
            (std::vector<Approach>{Rising, Rising, Falling, Rising, Rising, Rising}));
}

}  // namespace merits_test
}  // namespace core
