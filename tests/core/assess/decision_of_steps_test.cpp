// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <cmath>

#include "core/assess/assessment.h"
#include "tests/support/sample_channel.h"

// How the decision rules of core/uncertainty/decision.h (JCGM 106:2012, ISO 13528) act on the steps of a
// check. The uncertainty of every input but the gain is stated as zero, so that U of a reading is U of the
// gain times the reading, and the expected verdicts can be worked out by hand beside it.

namespace core {
namespace decision_of_steps_test {

/// A check that reads `gain` times what is expected. The gain's standard uncertainty is `u`, k = 2.
Channel checkedWith(DecisionRule rule, double gain, double u) {
  Channel channel = sample::nineStepChannel();
  for (const Input input : inputListOf(channel.setup)) channel.setup.uncertainties.stated[input] = {};
  channel.setup.uncertainties.stated[{InputKind::Gain, 0}] = {.statement = Statement::Standard, .amount = u};
  channel.setup.decision.rule = rule;
  return sample::withCheckReading(channel, gain);
}

CheckAssessment assessed(const Channel& channel) {
  const SetupPrediction prediction = predict(channel.setup);
  return assess(channel.setup, prediction, budgetOf(channel.setup, prediction), channel.checks.back());
}

bool contains(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

// The limit is 1 % of the expected reading everywhere below.

TEST(DecisionOfSteps, SimpleAcceptanceLooksAtTheLimitAlone) {
  EXPECT_EQ(assessed(checkedWith(DecisionRule::Simple, 1.009, 0.004)).verdict, Verdict::Pass);
  EXPECT_EQ(assessed(checkedWith(DecisionRule::Simple, 1.011, 0.004)).verdict, Verdict::Fail);
}

TEST(DecisionOfSteps, AGuardBandLeavesAZoneThatCannotBeTold) {
  // U = 2 x 0.1 % = 0.2 %: within 0.8 % passes, beyond 1.2 % fails.
  EXPECT_EQ(assessed(checkedWith(DecisionRule::Guarded, 1.0079, 0.001)).verdict, Verdict::Pass);
  const CheckAssessment between = assessed(checkedWith(DecisionRule::Guarded, 1.0081, 0.001));
  EXPECT_EQ(between.verdict, Verdict::CannotTell);
  EXPECT_TRUE(contains(between.reason, "guarded acceptance")) << between.reason;
  EXPECT_TRUE(contains(between.reason, "6 of 9 steps")) << between.reason;  // zero steps have no gain in them
  EXPECT_TRUE(contains(between.steps[1].reason, "guard band")) << between.steps[1].reason;
  // U = 1.2 % is wider than the limit, and the reason says so.
  const CheckAssessment hopeless = assessed(checkedWith(DecisionRule::Guarded, 1.0, 0.006));
  EXPECT_TRUE(contains(hopeless.steps[1].reason, "nothing can pass")) << hopeless.steps[1].reason;
  EXPECT_EQ(assessed(checkedWith(DecisionRule::Guarded, 1.0119, 0.001)).verdict, Verdict::CannotTell);
  EXPECT_EQ(assessed(checkedWith(DecisionRule::Guarded, 1.0121, 0.001)).verdict, Verdict::Fail);
}

TEST(DecisionOfSteps, SharedRiskNeedsAnUncertaintyThatIsSmallBesideTheLimit) {
  // A third of 1 % is allowed: U = 0.32 % may decide, 0.36 % may not.
  EXPECT_EQ(assessed(checkedWith(DecisionRule::SharedRisk, 1.0099, 0.0016)).verdict, Verdict::Pass);
  EXPECT_EQ(assessed(checkedWith(DecisionRule::SharedRisk, 1.0101, 0.0016)).verdict, Verdict::Fail);
  const CheckAssessment large = assessed(checkedWith(DecisionRule::SharedRisk, 1.0, 0.0018));
  EXPECT_EQ(large.verdict, Verdict::CannotTell);
  EXPECT_TRUE(contains(large.steps[3].reason, "33.3 %")) << large.steps[3].reason;
  // Beyond the limit by more than its U, no risk is left to be shared.
  const CheckAssessment gross = assessed(checkedWith(DecisionRule::SharedRisk, 1.02, 0.0018));
  EXPECT_EQ(gross.verdict, Verdict::Fail);
  EXPECT_TRUE(contains(gross.steps[3].reason, "with all of it")) << gross.steps[3].reason;
}

TEST(DecisionOfSteps, TheProbabilityOfConformityIsPrinted) {
  // Off by 0.8 % with u = 0.1 %: the limit is two standard uncertainties away, Phi(2) = 97.7 % (table of the
  // normal distribution; the other limit is eighteen away). Off by 0.9 %: Phi(1) = 84.1 %.
  const CheckAssessment likely = assessed(checkedWith(DecisionRule::Conformity, 1.008, 0.001));
  EXPECT_EQ(likely.verdict, Verdict::Pass) << likely.reason;
  EXPECT_TRUE(contains(likely.steps[2].reason, "97.7 %")) << likely.steps[2].reason;
  const CheckAssessment less = assessed(checkedWith(DecisionRule::Conformity, 1.009, 0.001));
  EXPECT_EQ(less.verdict, Verdict::CannotTell);
  EXPECT_TRUE(contains(less.steps[2].reason, "84.1 %")) << less.steps[2].reason;
  EXPECT_EQ(assessed(checkedWith(DecisionRule::Conformity, 1.012, 0.001)).verdict, Verdict::Fail);
}

TEST(DecisionOfSteps, TheEnNumberMeasuresADeviationByItsOwnUncertainty) {
  // 0.3 % off with U = 0.4 %: 0.75; with U = 0.2 %: 1.5, far within the limit of 1 %.
  const CheckAssessment agrees = assessed(checkedWith(DecisionRule::EnNumber, 1.003, 0.002));
  EXPECT_EQ(agrees.verdict, Verdict::Pass) << agrees.reason;
  EXPECT_TRUE(contains(agrees.steps[1].reason, "E_n = 0.75")) << agrees.steps[1].reason;
  const CheckAssessment differs = assessed(checkedWith(DecisionRule::EnNumber, 1.003, 0.001));
  EXPECT_EQ(differs.verdict, Verdict::Fail);
  EXPECT_TRUE(contains(differs.steps[1].reason, "E_n = 1.50")) << differs.steps[1].reason;
}

TEST(DecisionOfSteps, UncertaintiesOfReadingAndZeroCountWhereTheyAreKnown) {
  Channel channel = checkedWith(DecisionRule::Guarded, 1.0, 0.001);
  const double reading = predict(channel.setup).steps[1]->reading.base();
  channel.checks.back().readings[1]->uncertainty = Reading(3);
  channel.checks.back().readings[0]->uncertainty = Reading(4);
  const CheckAssessment check = assessed(channel);
  ASSERT_TRUE(check.steps[1].standard);
  // Derived: the root of the sum of squares of three independent parts.
  EXPECT_NEAR(check.steps[1].standard->base(), std::hypot(0.001 * reading, 3, 4), 1e-9);
  EXPECT_EQ(check.steps[0].standard->base(), 0);  // the zero reference less itself
}

TEST(DecisionOfSteps, OneThatFailsOutweighsOnesThatCannotBeTold) {
  Channel channel = checkedWith(DecisionRule::Guarded, 1.0081, 0.001);
  channel.checks.back().readings[3]->mean += Reading(500);
  const CheckAssessment failing = assessed(channel);
  EXPECT_EQ(failing.verdict, Verdict::Fail);
  EXPECT_TRUE(contains(failing.reason, "Of 5 more the rule cannot tell.")) << failing.reason;
  channel.checks.back().readings[3].reset();
  const CheckAssessment check = assessed(channel);
  EXPECT_EQ(check.verdict, Verdict::NotJudged);
  EXPECT_TRUE(contains(check.reason, "of the others none fails")) << check.reason;
}

TEST(DecisionOfSteps, AStepWithARefusedStatementIsNotJudgedAndTheRestIs) {
  for (const DecisionRule rule : {DecisionRule::Simple, DecisionRule::Guarded}) {
    Channel channel = checkedWith(rule, 1.0, 0.001);
    const std::size_t shunt = channel.setup.sequence[2].closed.front();
    channel.setup.uncertainties.stated[{InputKind::Shunt, shunt}] = {.amount = std::nan("")};
    const CheckAssessment check = assessed(channel);
    EXPECT_EQ(check.steps[2].verdict, Verdict::NotJudged);
    EXPECT_TRUE(contains(check.steps[2].reason, "shunt " + channel.setup.shunts[shunt].name))
        << check.steps[2].reason;
    EXPECT_EQ(check.steps[1].verdict, Verdict::Pass) << check.steps[1].reason;
    EXPECT_EQ(check.steps[3].verdict, Verdict::Pass) << check.steps[3].reason;
    EXPECT_EQ(check.verdict, Verdict::NotJudged);
  }
}

TEST(DecisionOfSteps, ARuleWithAnImpossibleNumberJudgesNothingAndSaysWhich) {
  Channel channel = checkedWith(DecisionRule::Guarded, 1.0, 0.001);
  channel.setup.decision.guardFactor = -1;
  const CheckAssessment check = assessed(channel);
  EXPECT_EQ(check.verdict, Verdict::NotJudged);
  EXPECT_TRUE(contains(check.steps[1].reason, "guard factor")) << check.steps[1].reason;
}

TEST(DecisionOfSteps, AClosedCheckKeepsItsRule) {
  Channel channel = checkedWith(DecisionRule::Guarded, 1.0081, 0.001);
  channel = withCheckClosed(channel, 0);
  channel.setup.decision.rule = DecisionRule::Simple;
  const core::Setup& kept = setupOf(channel, channel.checks[0]);
  EXPECT_EQ(kept.decision.rule, DecisionRule::Guarded);
}

}  // namespace decision_of_steps_test
}  // namespace core
