// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/assess/assessment.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

#include "tests/support/sample_channel.h"

// Which readings pass follows from the rule stated in core/assess/assessment.h (simple acceptance; common
// practice, no source): the expected verdicts below are that rule applied by hand.

namespace core {
namespace {

using testing::Test;

CheckAssessment assessed(const Channel& channel) {
  const SetupPrediction prediction = predict(channel.setup);
  return assess(channel.setup, prediction, budgetOf(channel.setup, prediction), channel.checks.back());
}

Reading& readingAt(Channel& channel, std::size_t step) { return channel.checks.back().readings[step]->mean; }

bool contains(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

TEST(Assess, ReadingsAsExpectedPassWithAnUnitSlope) {
  const CheckAssessment check = assessed(sample::withCheckReading(sample::nineStepChannel(), 1.0));
  EXPECT_EQ(check.verdict, Verdict::Pass) << check.reason;
  for (const StepAssessment& step : check.steps) EXPECT_EQ(step.verdict, Verdict::Pass) << step.reason;
  ASSERT_TRUE(check.line);
}

TEST(Assess, AnOffsetOfTheInstrumentIsTakenOutByTheFirstZeroStep) {
  const CheckAssessment check = assessed(sample::withCheckReading(sample::nineStepChannel(), 1.0, 137.0));
  EXPECT_EQ(check.verdict, Verdict::Pass) << check.reason;
  EXPECT_EQ(check.zeroStep, 0u);
}

TEST(Assess, TheLimitIsTheLargerOfShareAndLeast) {
  Channel channel = sample::withCheckReading(sample::nineStepChannel(), 1.009);
  EXPECT_EQ(assessed(channel).verdict, Verdict::Pass);  // 0.9 % within 1 %
  channel = sample::withCheckReading(sample::nineStepChannel(), 1.011);
  EXPECT_EQ(assessed(channel).verdict, Verdict::Fail);  // 1.1 % beyond 1 %
  channel.setup.limits.least = Reading(50);             // 1.1 % of 3000 um/m is 33 um/m
  EXPECT_EQ(assessed(channel).verdict, Verdict::Pass);
}

TEST(Assess, OneStepOutFailsTheCheckAndIsNamed) {
  Channel channel = sample::withCheckReading(sample::nineStepChannel(), 1.0);
  readingAt(channel, 6) += Reading(100);
  const CheckAssessment check = assessed(channel);
  EXPECT_EQ(check.verdict, Verdict::Fail);
  EXPECT_EQ(check.steps[6].verdict, Verdict::Fail);
  EXPECT_EQ(check.steps[5].verdict, Verdict::Pass);
  EXPECT_TRUE(contains(check.reason, "1 of 9 steps")) << check.reason;
  EXPECT_TRUE(contains(check.reason, "step 7")) << check.reason;
}

TEST(Assess, AZeroThatDoesNotReturnFails) {
  Channel channel = sample::withCheckReading(sample::nineStepChannel(), 1.0);
  readingAt(channel, 8) += Reading(40);  // limit: 0.5 % of some 3000 um/m is 15 um/m
  const CheckAssessment check = assessed(channel);
  EXPECT_EQ(check.steps[8].verdict, Verdict::Fail);
  ASSERT_TRUE(check.zeroReturn);
  EXPECT_NEAR(check.zeroReturn->base(), 40.0, 1e-9);  // rounding of readings near 40
}

TEST(Assess, AReversedPolarityIsSaidInWords) {
  const CheckAssessment check = assessed(sample::withCheckReading(sample::nineStepChannel(), -1.0));
  EXPECT_EQ(check.verdict, Verdict::Fail);
  EXPECT_TRUE(contains(check.reason, "opposite polarity")) << check.reason;
  EXPECT_TRUE(contains(check.steps[1].reason, "opposite polarity"));
}

TEST(Assess, AMissingReadingLeavesTheCheckUnjudgedUnlessAnotherFails) {
  Channel channel = sample::withCheckReading(sample::nineStepChannel(), 1.0);
  channel.checks[0].readings[4].reset();
  EXPECT_EQ(assessed(channel).verdict, Verdict::NotJudged);
  EXPECT_EQ(assessed(channel).reason, "Not judged: 1 of 9 steps is not judged; the others pass.");
  channel.checks[0].readings[5].reset();
  EXPECT_EQ(assessed(channel).reason, "Not judged: 2 of 9 steps are not judged; the others pass.");
  readingAt(channel, 3) += Reading(500);
  EXPECT_EQ(assessed(channel).verdict, Verdict::Fail);
}

TEST(Assess, WhatIsNotANumberNeverPasses) {
  for (const double bad : {std::nan(""), HUGE_VAL, -HUGE_VAL}) {
    for (std::size_t step = 0; step < 9; ++step) {
      Channel channel = sample::withCheckReading(sample::nineStepChannel(), 1.0);
      readingAt(channel, step) = Reading(bad);
      EXPECT_NE(assessed(channel).verdict, Verdict::Pass) << "step " << step;
    }
  }
  Channel channel = sample::withCheckReading(sample::nineStepChannel(), 1.0);
  channel.setup.limits.relative = std::nan("");
  EXPECT_NE(assessed(channel).verdict, Verdict::Pass);
  channel.setup.limits.relative = -1;
  EXPECT_NE(assessed(channel).verdict, Verdict::Pass);
}

TEST(Assess, OneReadingOrAllEqualReadingsGiveNoLineOrAFlatOne) {
  Channel channel = sample::nineStepChannel();
  channel = withCheckAdded(channel, {});
  channel = withReading(channel, 0, 1, Measured{Reading(1000), {}, {}, {}});
  EXPECT_FALSE(assessed(channel).line);
  EXPECT_EQ(assessed(channel).verdict, Verdict::NotJudged);
  channel = sample::withCheckReading(sample::nineStepChannel(), 0.0, 12.0);
  const CheckAssessment flat = assessed(channel);
  ASSERT_TRUE(flat.line);
  EXPECT_EQ(flat.line->slope, 0.0);
  EXPECT_EQ(flat.verdict, Verdict::Fail);
}

TEST(Assess, AChannelWithoutStepsOrReadingsSaysSo) {
  Channel empty;
  empty = withCheckAdded(empty, {});
  EXPECT_TRUE(contains(assessed(empty).reason, "no steps"));
  Channel channel = withCheckAdded(sample::nineStepChannel(), {});
  EXPECT_TRUE(contains(assessed(channel).reason, "no step has a reading"));
}

TEST(Assess, AFigureOfMeritBeyondItsLimitFailsTheCheckAndIsNamed) {
  // Derived: 9 um/m at the middle step of one side, 20 allowed there, 0.1 % of a span of 5982 is 6.
  Channel channel = sample::withCheckReading(sample::nineStepChannel(), 1.0);
  readingAt(channel, 2) += Reading(9);
  EXPECT_EQ(assessed(channel).verdict, Verdict::Pass);
  channel.setup.limits.linearityFrom = ReferenceLine::EndPoint;
  channel.setup.limits.merits = {{MeritKind::Nonlinearity, 0.001}};
  const CheckAssessment check = assessed(channel);
  EXPECT_EQ(check.verdict, Verdict::Fail);
  EXPECT_EQ(check.reason,
            "Fail: nonlinearity of 0.15 % is beyond its limit of 0.10 %; all 9 steps are within limits.");
  channel.setup.limits.merits[MeritKind::Nonlinearity] = 0.002;
  channel.setup.limits.merits[MeritKind::SpanRatio] = 0.002;
  EXPECT_EQ(assessed(channel).verdict, Verdict::Pass);
  EXPECT_TRUE(contains(assessed(channel).reason, "; nonlinearity and span error within limits too"))
      << assessed(channel).reason;
}

TEST(Assess, StepsAndFiguresThatFailAreBothNamed) {
  Channel channel = sample::withCheckReading(sample::nineStepChannel(), 1.0);
  readingAt(channel, 3) += Reading(100);
  channel.setup.limits.merits = {{MeritKind::SpanRatio, 0.01}};
  // Derived: 100 of 5982 is 1.67 %; the limit of a step near 3000 is 30.
  EXPECT_EQ(assessed(channel).reason,
            "Fail: 1 of 9 steps out of limits, worst step 4: 100 µm/m from expected; span error of 1.7 % is "
            "beyond its limit of 1.0 %.");
}

TEST(Assess, AFigureThatTheRuleCannotTellLeavesTheCheckOpen) {
  Channel channel = sample::withCheckReading(sample::nineStepChannel(), 1.0);
  channel.setup.decision.rule = DecisionRule::Guarded;
  channel.setup.limits.merits = {{MeritKind::Symmetry, 0.0001}};  // below what the shunts are known to
  const CheckAssessment check = assessed(channel);
  EXPECT_EQ(check.verdict, Verdict::CannotTell);
  EXPECT_EQ(check.reason,
            "Cannot tell: the uncertainty of plus/minus asymmetry is too large for guarded acceptance; all "
            "steps pass.");
}

TEST(Assess, ALimitForAFigureThatThePlanCannotGiveLeavesTheCheckUnjudged) {
  Channel channel = sample::withCheckReading(sample::nineStepChannel(), 1.0);
  channel.setup.limits.merits = {{MeritKind::Hysteresis, 0.005}};
  const CheckAssessment check = assessed(channel);
  EXPECT_EQ(check.verdict, Verdict::NotJudged);
  EXPECT_EQ(check.reason,
            "Not judged: there is a limit for hysteresis, which cannot be judged. Hysteresis is not known: "
            "the plan has no steps that come back down.");
}

TEST(Assess, AFigureWithoutALimitChangesNoVerdict) {
  Channel channel = sample::withCheckReading(sample::nineStepChannel(), 1.0);
  for (const std::size_t step : {1, 2, 3})  // 0.9 % apart, steps pass
    readingAt(channel, step) = 1.009 * readingAt(channel, step);
  const CheckAssessment check = assessed(channel);
  EXPECT_EQ(check.verdict, Verdict::Pass);
  EXPECT_TRUE(check.merits[static_cast<std::size_t>(MeritKind::Symmetry)].value);
}

TEST(Assess, SentencesShowTheDigitsThatTheLimitWarrants) {
  Channel channel = sample::withCheckReading(sample::nineStepChannel(), 1.0);
  readingAt(channel, 8) += Reading(0.04472);
  readingAt(channel, 1) += Reading(2.0371);
  const CheckAssessment check = assessed(channel);
  EXPECT_EQ(check.reason, "Pass: all 9 steps within limits; zero returned to 0 µm/m.");
  EXPECT_TRUE(contains(check.steps[1].reason, " 2 µm/m from expected, within the limit of 10 µm/m."))
      << check.steps[1].reason;
  // Near the limit, which is 1 % of the expected reading, as many as tell the side.
  readingAt(channel, 1) = predict(channel.setup).steps[1]->reading * 1.0101;
  EXPECT_TRUE(
      contains(assessed(channel).steps[1].reason, " 10.1 µm/m from expected, beyond the limit of 10.0"))
      << assessed(channel).steps[1].reason;
}

TEST(Assess, TheLineAgainstTheExpectedReadingsTellsScatterFromCurvature) {
  // Readings as expected on a quarter bridge: curved over the simulated values, straight over the expected.
  Channel channel = sample::withCheckReading(sample::nineStepChannel(), 1.0004);
  for (auto& reading : channel.checks[0].readings) reading->uncertainty = Reading(0.5);
  const CheckAssessment check = assessed(channel);
  ASSERT_TRUE(check.agreement && check.agreement->chiSquareProbability);
  EXPECT_NEAR(check.agreement->slope, 1.0004, 1e-9);
  EXPECT_GT(*check.agreement->chiSquareProbability, 0.99);
  ASSERT_TRUE(check.line);
  EXPECT_EQ(check.line->fit, LineFit::Ordinary);
  // Known to no better than the curvature the line is what the uncertainties make it.
  for (auto& reading : channel.checks[0].readings) reading->uncertainty = Reading(20);
  EXPECT_EQ(assessed(channel).line->fit, LineFit::Correlated);
  // A reading far off is scatter that was not stated.
  for (auto& reading : channel.checks[0].readings) reading->uncertainty = Reading(0.5);
  readingAt(channel, 2) += Reading(15);
  EXPECT_LT(*assessed(channel).agreement->chiSquareProbability, 0.05);
}

// York, Evensen, Martinez and Delgado 2004, section V (from memory): with a chi-square per degree of freedom
// above one, uncertainties may be widened by its root.
TEST(Assess, TheGainIsWidenedWhereReadingsScatterMoreThanStatedAndNeverNarrowed) {
  Channel channel = sample::withCheckReading(sample::nineStepChannel(), 1.0004);
  for (auto& reading : channel.checks[0].readings) reading->uncertainty = Reading(0.5);
  const CheckAssessment calm = assessed(channel);
  ASSERT_TRUE(calm.gain && calm.agreement);
  EXPECT_LT(*calm.agreement->chiSquare, 1);  // far below its degrees of freedom
  EXPECT_FALSE(calm.gain->isWidened);
  EXPECT_EQ(calm.gain->standard, calm.agreement->slopeError);
  EXPECT_TRUE(calm.gain->describesReadings);
  readingAt(channel, 2) += Reading(15);
  const CheckAssessment wild = assessed(channel);
  ASSERT_TRUE(wild.gain && wild.agreement);
  EXPECT_EQ(wild.gain->value, wild.agreement->slope);
  EXPECT_TRUE(wild.gain->isWidened);
  const double dof = 7;  // nine readings, two parameters
  EXPECT_DOUBLE_EQ(*wild.gain->standard / *wild.agreement->slopeError,
                   std::sqrt(*wild.agreement->chiSquare / dof));
}

TEST(Assess, AStepThatCannotBePredictedIsNotJudgedAndTheOthersAre) {
  Channel channel = sample::withCheckReading(sample::nineStepChannel(), 1.0);
  channel.setup.shunts[0].resistance = Resistance(0);
  const CheckAssessment check = assessed(channel);
  EXPECT_EQ(check.steps[1].verdict, Verdict::NotJudged);
  EXPECT_EQ(check.steps[2].verdict, Verdict::Pass);
  EXPECT_EQ(check.verdict, Verdict::NotJudged);
}

}  // namespace
}  // namespace core
