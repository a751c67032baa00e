// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/compare/comparison.h"

#include <gtest/gtest.h>

#include <functional>

#include "tests/support/sample_channel.h"

namespace core {
namespace {

using Words = std::vector<std::string>;

/// A check that was closed, then `change` in the set-up, then a check of that.
Comparison compared(const std::function<void(Setup&)>& change) {
  Channel channel = withCheckClosed(sample::withCheckReading(sample::nineStepChannel(), 1.0), 0);
  change(channel.setup);
  channel = sample::withCheckReading(std::move(channel), 1.0);
  return compare(channel, evaluate(channel), 0, 1);
}

Words differing(const std::function<void(Setup&)>& change) { return compared(change).setupDifferences; }

TEST(Comparison, StepsThatAgreeDoNotPassWhileACheckCannotTell) {
  // The limit is 1 %, the usual uncertainties are some tenths of that: a guard band of fifty U is wider.
  const Comparison comparison = compared([](core::Setup& s) {
    s.decision.rule = DecisionRule::Guarded;
    s.decision.guardFactor = 50;
  });
  EXPECT_EQ(comparison.verdict, Verdict::CannotTell);
  EXPECT_NE(comparison.reason.find("The later check cannot tell."), std::string::npos) << comparison.reason;
}

TEST(Comparison, StepsThatAgreeDoNotPassWhileACheckIsNotJudged) {
  const Comparison comparison = compared([](core::Setup& s) {
    s.uncertainties.stated[{InputKind::Gain, 0}].amount = -1;
  });
  EXPECT_EQ(comparison.verdict, Verdict::CannotTell);
  EXPECT_NE(comparison.reason.find("The later check is not judged."), std::string::npos) << comparison.reason;
}

TEST(Comparison, ListsNoDifferenceBetweenEqualSetUps) {
  EXPECT_EQ(differing([](core::Setup&) {}), Words{});
}

TEST(Comparison, NamesThePartOfTheBridgeThatDiffers) {
  EXPECT_EQ(differing([](core::Setup& s) { s.bridge.gauge.factorCoefficient = 1e-4; }), Words{"gauge"});
  EXPECT_EQ(differing([](core::Setup& s) { s.bridge.gauge.installed = 40.0_degC; }), Words{"gauge"});
  EXPECT_EQ(differing([](core::Setup& s) { s.bridge.gauge.grid.area = 4.0_mm2; }), Words{"gauge"});
  EXPECT_EQ(differing([](core::Setup& s) { s.bridge.leadWarming = 10.0_K; }), Words{"leads"});
  EXPECT_EQ(differing([](core::Setup& s) { s.bridge.leaks[2].across = 100.0_Mohm; }), Words{"leaks"});
  EXPECT_EQ(differing([](core::Setup& s) { s.bridge.leaks[0].place = 0.25; }), Words{"leaks"});
  EXPECT_EQ(differing([](core::Setup& s) { s.bridge.hookup.signalReversed = true; }),
            Words{"how the bridge is connected"});
  EXPECT_EQ(differing([](core::Setup& s) {
              s.bridge.hookup.touching = {{LeadRole::SensePlus, LeadRole::SenseMinus}};
            }),
            Words{})
      << "of leads that the bridge has not got";
}

TEST(Comparison, NamesInstrumentDecisionAndUncertaintiesThatDiffer) {
  EXPECT_EQ(differing([](core::Setup& s) { s.instrument.balance.kind = BalanceKind::Parallel; }),
            Words{"instrument settings"});
  EXPECT_EQ(differing([](core::Setup& s) { s.instrument.ratiometric = false; }),
            Words{"instrument settings"});
  EXPECT_EQ(differing([](core::Setup& s) { s.decision.guardFactor = 2; }), Words{"decision rule"});
  EXPECT_EQ(differing([](core::Setup& s) {
              s.uncertainties.stated[{InputKind::Gain, 0}].amount = 0.01;
            }),
            Words{"stated uncertainties"});
  EXPECT_EQ(differing([](core::Setup& s) { s.uncertainties.groups["cable"] = 0.5; }),
            Words{"stated uncertainties"});
}

TEST(Comparison, NamesAllThatDiffersAtOnce) {
  EXPECT_EQ(differing([](core::Setup& s) {
              s.bridge.leaks[2].across = 100.0_Mohm;
              s.decision.coverage = 0.99;
              s.limits.relative = 0.02;
            }),
            (Words{"leaks", "limits", "decision rule"}));
}

TEST(Comparison, NamesWhatIsPlannedByWhatItMeans) {
  EXPECT_EQ(differing([](core::Setup& s) { s.acquisition.filter.kind = FilterKind::Bessel; }),
            Words{"acquisition"});
  EXPECT_EQ(differing([](core::Setup& s) { s.instrument.range = 10.0_mV_per_V; }),
            Words{"instrument settings"});
  EXPECT_EQ(differing([](core::Setup& s) { s.wiring.pins = {{{"J1", "A"}, Node::PPlus}}; }), Words{"pins"});
  EXPECT_EQ(differing([](core::Setup& s) {
              s.shunts[2].jumpers = {{{"J1", "A"}, {"J2", "B"}}};
            }),
            Words{"jumpers"});
  EXPECT_EQ(differing([](core::Setup& s) { s.shunts[2].part.id = "AF-0101"; }),
            Words{"resistors that shunts are made of"});
  EXPECT_EQ(differing([](core::Setup& s) { s.sequence[2].settle = 3.0_s; }), Words{"settling times"});
  EXPECT_EQ(differing([](core::Setup& s) { s.sequence[2].hold = 3.0_s; }), Words{"sequence"});
}

TEST(Comparison, AnotherResistorOfTheSameValueAndAnotherSettlingTimeLeaveStepsComparable) {
  const Comparison comparison = compared([](core::Setup& s) {
    s.shunts[0].part.id = "AF-0101";
    s.sequence[1].settle = 3.0_s;
  });
  for (const StepComparison& step : comparison.steps) EXPECT_TRUE(step.difference);
}

TEST(Comparison, AShuntWithAnotherContactIsAnotherShunt) {
  const Comparison comparison = compared([](core::Setup& s) { s.shunts[0].contact = 0.5_ohm; });
  EXPECT_EQ(comparison.setupDifferences, Words{"shunts"});
  std::size_t notCompared = 0;
  for (const StepComparison& step : comparison.steps) notCompared += !step.difference;
  EXPECT_EQ(notCompared, 1u) << "the one step that closes it";
}

}  // namespace
}  // namespace core
