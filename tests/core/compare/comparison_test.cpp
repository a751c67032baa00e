// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/compare/comparison.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <functional>

#include "core/line/whitening.h"
#include "tests/support/sample_channel.h"

namespace core {
namespace {

using Words = std::vector<std::string>;
using Edit = std::function<void(Setup&)>;

/// A check that was closed, then `change` in the set-up, then a check of that.
Comparison compared(const Edit& change) {
  Channel channel = withCheckClosed(sample::withCheckReading(sample::nineStepChannel(), 1.0), 0);
  change(channel.setup);
  channel = sample::withCheckReading(std::move(channel), 1.0);
  return compare(channel, evaluate(channel), 0, 1);
}

Comparison compared(const Channel& channel) { return compare(channel, evaluate(channel), 0, 1); }

Channel preAndPost(double gainPre, double gainPost, double offset = 0) {
  return sample::withCheckReading(sample::withCheckReading(sample::nineStepChannel(), gainPre), gainPost,
                                  offset);
}

/// `channel`, every reading of both checks with standard uncertainty `u`.
Channel withUncertainty(Channel channel, double u) {
  for (Check& check : channel.checks)
    for (auto& reading : check.readings) reading->uncertainty = Reading(u);
  return channel;
}

Words differing(const Edit& change) {
  Words words;
  for (const SetupDifference& difference : compared(change).configuration)
    words.push_back(difference.what + ": " + difference.before + " / " + difference.after);
  return words;
}

bool says(const Comparison& comparison, const std::string& words) {
  return comparison.reason.find(words) != std::string::npos;
}

TEST(Comparison, EqualChecksAreUnchanged) {
  const Comparison same = compared(preAndPost(1, 1));
  EXPECT_EQ(same.change, Change::Unchanged);
  EXPECT_EQ(same.verdict, Verdict::Pass) << same.reason;
  EXPECT_TRUE(says(same, "Unchanged within 1 %")) << same.reason;
  EXPECT_NEAR(same.gain->value, 0, 1e-12);  // rounding of nine readings
}

TEST(Comparison, AGainThatRoseIsFoundInSizeAndCalledAChange) {
  const Comparison rose = compared(withUncertainty(preAndPost(1, 1.02), 0.5));
  EXPECT_EQ(rose.change, Change::Changed);
  EXPECT_EQ(rose.verdict, Verdict::Fail);
  // Derived: every D is 0.02 of what is expected, whatever the weights. 1e-12 is rounding.
  EXPECT_NEAR(rose.gain->value, 0.02, 1e-12);
  EXPECT_TRUE(says(rose, "Changed by +2.0")) << rose.reason;
  EXPECT_LT(*rose.jointProbability, 1e-9);
}

TEST(Comparison, AGainOfACheckThatWasOffIsARatio) {
  // Derived: 1.05 and 1.0605 are in the ratio 1.01; D is 0.0105 of what is expected.
  const Comparison comparison = compared(withUncertainty(preAndPost(1.05, 1.0605), 0.5));
  EXPECT_NEAR(comparison.gain->value, 0.01, 1e-9)
      << "the gain of the earlier check is fitted to nine readings";
}

TEST(Comparison, AZeroThatMovedIsNamedAndGainAndStepsAreNot) {
  const Comparison far = compared(withUncertainty(preAndPost(1, 1, 25), 0.5));
  EXPECT_EQ(changeOf(far.zero), Change::Changed);
  EXPECT_EQ(far.change, Change::Changed);
  EXPECT_EQ(far.verdict, Verdict::Fail);
  EXPECT_DOUBLE_EQ(far.zero->value, 25);
  // By hand: two readings of 0.5 each.
  EXPECT_DOUBLE_EQ(*far.zero->standard, std::sqrt(0.5));
  EXPECT_EQ(changeOf(far.gain), Change::Unchanged);
  for (const StepComparison& step : far.steps) EXPECT_EQ(changeOf(step.moved), Change::Unchanged);
  EXPECT_TRUE(says(far, "the zero moved by 25.")) << far.reason;
  EXPECT_TRUE(says(far, "Gain and steps are unchanged")) << far.reason;
  // The margin is 0.5 % of some 3000 um/m.
  EXPECT_EQ(compared(withUncertainty(preAndPost(1, 1, 5), 0.5)).change, Change::Harmless);
}

TEST(Comparison, HeadlineAndRowsNeverContradict) {
  for (const double gain : {1.0, 1.003, 1.009, 1.02})
    for (const double offset : {0.0, 5.0, 14.0, 25.0})
      for (const double u : {0.01, 1.0, 5.0, 40.0}) {
        const Comparison c = compared(withUncertainty(preAndPost(1, gain, offset), u));
        std::vector<Change> rows{changeOf(c.gain), changeOf(c.zero)};
        for (const StepComparison& step : c.steps) rows.push_back(changeOf(step.moved));
        const auto has = [&](Change change) {
          return std::find(rows.begin(), rows.end(), change) != rows.end();
        };
        EXPECT_EQ(c.change == Change::Changed, has(Change::Changed)) << c.reason;
        EXPECT_EQ(c.change == Change::Unchanged,
                  !has(Change::Changed) && !has(Change::CannotTell) && !has(Change::Harmless))
            << c.reason;
        EXPECT_EQ(c.reason.starts_with("Cannot tell"), c.change == Change::CannotTell) << c.reason;
        EXPECT_EQ(c.reason.starts_with("Changed"), c.change == Change::Changed) << c.reason;
      }
}

TEST(Comparison, TooWideAnUncertaintyCannotTellAndSaysHowManyRepeatsWould) {
  const Comparison open = compared(withUncertainty(preAndPost(1, 1), 10));
  EXPECT_EQ(open.change, Change::CannotTell);
  EXPECT_EQ(open.verdict, Verdict::CannotTell);
  ASSERT_TRUE(open.repeats);
  EXPECT_TRUE(says(open, std::to_string(*open.repeats) + " repeats of both checks would tell"))
      << open.reason;
  // Averaging that many readings is what repeating does: then it can be told, and with one fewer not.
  const auto repeated = [](unsigned n) {
    return compared(withUncertainty(preAndPost(1, 1), 10 / std::sqrt(n))).change;
  };
  EXPECT_NE(repeated(*open.repeats), Change::CannotTell);
  EXPECT_EQ(repeated(*open.repeats - 1), Change::CannotTell);
}

TEST(Comparison, NoNumberOfRepeatsTellsAgainstAMarginBelowWhatTheyDoNotAverage) {
  const Comparison open = compared([](core::Setup&) {});
  ASSERT_EQ(open.change, Change::Unchanged);
  Channel channel = withUncertainty(preAndPost(1, 1), 1);
  channel.setup.limits.change = 1e-5;
  const Comparison narrow = compared(channel);
  EXPECT_EQ(narrow.change, Change::CannotTell);
  EXPECT_FALSE(narrow.repeats);
  EXPECT_TRUE(says(narrow, "No number of repeats would tell")) << narrow.reason;
}

TEST(Comparison, ReadingsWithoutUncertaintyAreHeldAgainstTheirOwnScatter) {
  Channel channel = preAndPost(1, 1);
  for (std::size_t check : {0, 1})
    for (std::size_t k = 0; k < 9; ++k)
      channel.checks[check].readings[k]->mean += Reading((k + check) % 2 ? 2.0 : -2.0);
  const Comparison comparison = compared(channel);
  EXPECT_EQ(comparison.scatterFrom, ScatterFrom::Residuals);
  EXPECT_EQ(*comparison.scatterDof, 14);  // n1 + n2 - 4
  // Derived: readings alternate by 2 about their line; nine of them less two parameters: 2 sqrt(9 / 7) at
  // most, and the line takes up little of what alternates.
  EXPECT_GT(*comparison.scatter, 2.0);
  EXPECT_LE(*comparison.scatter, 2 * std::sqrt(9.0 / 7));
  EXPECT_TRUE(says(comparison, "14 degrees of freedom")) << comparison.reason;
  ASSERT_TRUE(comparison.zero);
  EXPECT_EQ(*comparison.zero->dof, 14);
}

TEST(Comparison, TheCovarianceIsThatOfTheStepsAndEveryZeroReadingIsInAll) {
  Channel channel = preAndPost(1, 1);
  for (const Input input : inputListOf(channel.setup))
    channel.setup.uncertainties.stated[input] = {.statement = Statement::Standard, .amount = 0};
  const Comparison comparison = compared(withUncertainty(channel, 3));
  // By hand, readings of 3 alone: D of a step has two of its own and two zero readings, 4 x 9; of two steps
  // the zero readings are common, 2 x 9. The zero reference itself has none.
  for (std::size_t j = 0; j < 9; ++j)
    for (std::size_t k = 0; k < 9; ++k) {
      const double expected = j == 0 || k == 0 ? 0 : j == k ? 36 : 18;
      EXPECT_NEAR(comparison.covariance[j * 9 + k], expected, 1e-12);  // sums of squares of 3
    }
}

TEST(Comparison, GainAndJointTestAreLeastSquaresWithTheCovariance) {
  // The same by the covariance of the D without the zero reference, and no offset: then nothing is left free.
  Channel channel = withUncertainty(preAndPost(1, 1), 2);
  for (std::size_t k = 0; k < 9; ++k)
    channel.checks[1].readings[k]->mean += Reading(1.5 * std::sin(3.0 * static_cast<double>(k * k)));
  const Comparison c = compared(channel);
  std::vector<double> d, x, v;
  for (std::size_t j = 1; j < 9; ++j) {
    d.push_back(c.steps[j].moved->value);
    x.push_back(c.steps[j].expectedBefore->base());
    for (std::size_t k = 1; k < 9; ++k) v.push_back(c.covariance[j * 9 + k]);
  }
  const auto whitening = Whitening::ofCovariance(v, 8, "covariance");
  ASSERT_TRUE(whitening);
  const auto wd = whitening->whitened(d), wx = whitening->whitened(x);
  double dd = 0, xd = 0, xx = 0;
  for (std::size_t k = 0; k < 8; ++k) dd += wd[k] * wd[k], xd += wx[k] * wd[k], xx += wx[k] * wx[k];
  const double pre = evaluate(channel).checks[0].assessment.gain->value;
  ASSERT_FALSE(c.gainWidened);
  // Some ten operations each on a covariance of condition 1e3.
  EXPECT_NEAR(c.gain->value, xd / xx / pre, 1e-9);
  EXPECT_NEAR(*c.gain->standard, std::sqrt(1 / xx) / pre, 1e-9);
  // Chi-square of 8 degrees of freedom: exp(-x/2) times the first four terms of exp(x/2).
  const double h = dd / 2;
  EXPECT_NEAR(*c.jointProbability, std::exp(-h) * (1 + h + h * h / 2 + h * h * h / 6), 1e-8);
}

TEST(Comparison, SingleStepsDoNotCountWhileAllTogetherAreAsIfNothingHadChanged) {
  // One of nine is moved by 2.2 of its own uncertainties, others stay: chi-square of 8 is about 5, p 0.8.
  Channel channel = withUncertainty(preAndPost(1, 1), 3);
  channel.setup.limits.change = 0.005;
  channel.checks[1].readings[1]->mean += Reading(2.2 * 6);
  const Comparison comparison = compared(channel);
  const Difference& moved = *comparison.steps[1].moved;
  EXPECT_LT(*moved.pDifferent, 0.05);
  EXPECT_GT(*comparison.jointProbability, 0.05);
  EXPECT_EQ(moved.change, Change::CannotTell);
  EXPECT_NE(comparison.steps[1].reason.find("as if nothing had changed"), std::string::npos);
}

TEST(Comparison, AZeroThatRunsAwayIsNoChangeOfGainKnownToAThousandth) {
  // Drift by 20 a step: +1 to +3 lie at small times and -1 to -3 at large ones, so that it looks like a
  // slope.
  Channel channel = withUncertainty(preAndPost(1, 1), 0.5);
  for (std::size_t k = 0; k < 9; ++k)
    channel.checks[1].readings[k]->mean += Reading(-20.0 * static_cast<double>(k));
  const Comparison drifting = compared(channel);
  EXPECT_TRUE(drifting.gainWidened);
  EXPECT_GT(*drifting.gain->halfWidth95, std::abs(drifting.gain->value));
  EXPECT_EQ(drifting.change, Change::Changed) << "by its steps";
  EXPECT_TRUE(says(drifting, "did not move along a line")) << drifting.reason;
  EXPECT_FALSE(drifting.repeats);
}

TEST(Comparison, StepsThatAgreeDoNotPassWhileACheckCannotTell) {
  // The limit is 1 %, the usual uncertainties are some tenths of that: a guard band of fifty U is wider.
  const Comparison comparison = compared([](core::Setup& s) {
    s.decision.rule = DecisionRule::Guarded;
    s.decision.guardFactor = 50;
  });
  EXPECT_EQ(comparison.verdict, Verdict::CannotTell);
  EXPECT_TRUE(says(comparison, "cannot tell by itself")) << comparison.reason;
}

TEST(Comparison, TwoChecksThatFailAlikeDoNotPass) {
  const Comparison comparison = compared(preAndPost(-1.0, -1.0));
  EXPECT_EQ(comparison.verdict, Verdict::Fail);
  EXPECT_TRUE(says(comparison, "Both checks fail")) << comparison.reason;
}

TEST(Comparison, AStepWithARefusedUncertaintyIsNotTold) {
  const Comparison comparison = compared([](core::Setup& s) {
    s.uncertainties.stated[{InputKind::Gain, 0}].amount = -1;
  });
  EXPECT_EQ(comparison.verdict, Verdict::CannotTell);
  EXPECT_TRUE(says(comparison, "is not judged")) << comparison.reason;
  EXPECT_FALSE(comparison.steps[1].moved->standard);
}

TEST(Comparison, MarginsAreThoseOfTheEarlierCheck) {
  const Comparison comparison = compared([](core::Setup& s) {
    s.limits.change = 0.5;
    s.limits.zeroChange = 0.5;
  });
  EXPECT_EQ(comparison.gain->margin, 0.01);
  EXPECT_NEAR(comparison.steps[1].moved->margin, 0.01 * comparison.steps[1].expectedBefore->base(), 1e-12);
  Channel channel = preAndPost(1, 1);
  channel.setup.limits.least = Reading(17);
  EXPECT_EQ(compared(channel).steps[1].moved->margin, 17);  // 1 % of some 1000 is less
  channel.setup.limits.change = -1;
  EXPECT_EQ(compared(channel).verdict, Verdict::NotJudged);
}

TEST(Comparison, AMissingHalfIsSaidAndTheRestIsCompared) {
  Channel channel = withUncertainty(preAndPost(1, 1), 0.5);
  for (const std::size_t k : {5, 6, 7}) channel.checks[1].readings[k].reset();
  const Comparison comparison = compared(channel);
  EXPECT_EQ(comparison.verdict, Verdict::CannotTell);
  EXPECT_TRUE(says(comparison, "Steps 6–8, all negative ones among them, are not compared"))
      << comparison.reason;
  EXPECT_TRUE(says(comparison, "What can is unchanged")) << comparison.reason;
  EXPECT_EQ(changeOf(comparison.steps[2].moved), Change::Unchanged);
  EXPECT_FALSE(comparison.steps[5].moved);
}

TEST(Comparison, SequencesOfDifferentLengthAreMatchedByWhatTheyClose) {
  Channel channel = withCheckClosed(sample::withCheckReading(sample::nineStepChannel(), 1.0), 0);
  for (int k = 0; k < 3; ++k) channel = withStepRemoved(channel, 1);  // the positive half
  channel = sample::withCheckReading(std::move(channel), 1.0);
  const Comparison comparison = compared(channel);
  EXPECT_EQ(comparison.steps.size(), 9u);
  for (const std::size_t k : {5u, 6u, 7u}) {
    ASSERT_TRUE(comparison.steps[k].afterStep);
    EXPECT_EQ(*comparison.steps[k].afterStep, k - 3);
    EXPECT_EQ(changeOf(comparison.steps[k].moved), Change::Unchanged);
  }
  EXPECT_TRUE(says(comparison, "Steps 2–4, all positive ones among them, are not compared"))
      << comparison.reason;
  EXPECT_EQ(comparison.verdict, Verdict::CannotTell);
}

TEST(Comparison, ShuntsThatChangedPlacesAreComparedWhereTheyAreNow) {
  const Comparison comparison = compared([](core::Setup& s) { std::swap(s.sequence[1], s.sequence[3]); });
  EXPECT_EQ(comparison.steps[1].afterStep, 3u);
  EXPECT_EQ(comparison.steps[3].afterStep, 1u);
  EXPECT_TRUE(says(comparison, "Step 2 is compared with step 4")) << comparison.reason;
  EXPECT_EQ(comparison.change, Change::Unchanged) << comparison.reason;
}

TEST(Comparison, AnotherResistorForTheSamePurposeIsComparedByItsDeviation) {
  // 174.65k becomes 175k: expected readings differ by 0.2 %, what is off them does not.
  const Comparison comparison = compared([](core::Setup& s) { s.shunts[0].resistance = Resistance(175000); });
  const StepComparison& step = comparison.steps[1];
  EXPECT_NEAR(step.moved->value, 0, 1e-9);
  EXPECT_GT(std::abs(step.difference->base()), 1);
  EXPECT_EQ(step.moved->change, Change::Unchanged);
}

TEST(Comparison, AQuiteDifferentShuntIsNotCompared) {
  const Comparison comparison = compared([](core::Setup& s) { s.shunts[0].resistance = Resistance(50000); });
  EXPECT_FALSE(comparison.steps[1].moved);
  EXPECT_TRUE(says(comparison, "Step 2 is not compared")) << comparison.reason;
}

TEST(Comparison, OtherUnitsAndOtherBridgesAreNotCompared) {
  const Comparison unit = compared([](core::Setup& s) { s.instrument.unit = ReadingUnit::MillivoltPerVolt; });
  EXPECT_EQ(unit.verdict, Verdict::NotJudged);
  EXPECT_EQ(unit.change, Change::NotCompared);
  EXPECT_TRUE(says(unit, "different units, µm/m and mV/V")) << unit.reason;
  const Comparison bridge = compared([](core::Setup& s) { s.bridge.type = BridgeType::QuarterTwoWire; });
  EXPECT_TRUE(says(bridge, "the bridges differ")) << bridge.reason;
}

TEST(Comparison, ACheckWithoutZeroReadingHasNoChangesToCompare) {
  Channel channel = preAndPost(1, 1);
  for (const std::size_t k : {0, 4, 8}) channel.checks[1].readings[k].reset();
  const Comparison comparison = compared(channel);
  EXPECT_FALSE(comparison.zero);
  EXPECT_FALSE(comparison.steps[1].moved);
  EXPECT_TRUE(says(comparison, "has no zero reading to count from")) << comparison.reason;
}

TEST(SetUpDifferences, AreNoneBetweenEqualSetUps) {
  EXPECT_EQ(differing([](core::Setup&) {}), Words{});
}

TEST(SetUpDifferences, AreSaidOneByOneWithBothValues) {
  EXPECT_EQ(differing([](core::Setup& s) { s.bridge.gauge.factor = 2.1; }), Words{"gauge factor: 2 / 2.1"});
  EXPECT_EQ(differing([](core::Setup& s) { s.bridge.gauge.installed = 40.0_degC; }).size(), 1u);
  EXPECT_EQ(differing([](core::Setup& s) { s.bridge.leadWarming = 10.0_K; }),
            Words{"leads warmer than stated: 0 K / 10 K"});
  EXPECT_EQ(differing([](core::Setup& s) { s.bridge.leaks[2].across = 100.0_Mohm; }),
            Words{"leak over arm 3: none / 100 MΩ"});
  EXPECT_EQ(differing([](core::Setup& s) { s.bridge.leads[0] = Resistance(2.5); }),
            Words{"lead P+: 2 Ω / 2.5 Ω"});
  EXPECT_EQ(differing([](core::Setup& s) { s.shunts[0].resistance = 60.2_kohm; }).front().substr(0, 25),
            "shunt up: 174.65 kΩ / 60");
  EXPECT_EQ(differing([](core::Setup& s) { s.shunts[2].part.id = "S-107"; }),
            Words{"resistor of shunt up (2): none / S-107"});
  EXPECT_EQ(differing([](core::Setup& s) { s.limits.relative = 0.02; }),
            Words{"limit of a deviation: 1 % / 2 %"});
  EXPECT_EQ(differing([](core::Setup& s) { s.decision.guardFactor = 2; }),
            Words{"guard band in units of U: 1 / 2"});
  EXPECT_EQ(differing([](core::Setup& s) { s.sequence[2].settle = 3.0_s; }),
            Words{"settling of step 3: 0.5 s / 3 s"});
  EXPECT_EQ(differing([](core::Setup& s) { s.identity.serial = "A-12"; }),
            Words{"serial number of the instrument: none / A-12"});
  EXPECT_EQ(differing([](core::Setup& s) { s.uncertainties.groups["cable"] = 0.5; }),
            Words{"correlation of group cable: 1 / 0.5"});
  EXPECT_EQ(differing([](core::Setup& s) { s.wiring.pins = {{{"J1", "A"}, Node::PPlus}}; }).size(), 1u);
}

TEST(SetUpDifferences, OfLeadsThatTheBridgeHasNotGotAreNone) {
  EXPECT_EQ(differing([](core::Setup& s) {
              s.bridge.hookup.touching = {{LeadRole::SensePlus, LeadRole::SenseMinus}};
            }),
            Words{});
  EXPECT_EQ(differing([](core::Setup& s) { s.bridge.hookup.signalReversed = true; }).size(), 1u);
}

TEST(SetUpDifferences, SayWhetherReadingsDependOnThem) {
  const auto depends = [](const Edit& change) { return compared(change).configuration.at(0).onReadings; };
  EXPECT_TRUE(depends([](core::Setup& s) { s.bridge.arms[1] = Resistance(351); }));
  EXPECT_TRUE(depends([](core::Setup& s) { s.instrument.gaugeFactor = 2.1; }));
  EXPECT_FALSE(depends([](core::Setup& s) { s.decision.coverage = 0.99; }));
  EXPECT_FALSE(depends([](core::Setup& s) { s.shunts[0].part.id = "S-107"; }));
  EXPECT_FALSE(depends([](core::Setup& s) { s.bridge.gauge.factor = 2.1; }))
      << "the instrument reckons with its own setting";
}

/// Everything that differs is named: a change anywhere leaves at least one line.
TEST(SetUpDifferences, MissNothing) {
  const std::vector<Edit> changes = {
      [](core::Setup& s) { s.bridge.gauge.factorCoefficient = 1e-4; },
      [](core::Setup& s) { s.bridge.gauge.grid.area = 4.0_mm2; },
      [](core::Setup& s) { s.bridge.leaks[0].place = 0.25; },
      [](core::Setup& s) { s.instrument.balance.kind = BalanceKind::Parallel; },
      [](core::Setup& s) { s.instrument.ratiometric = false; },
      [](core::Setup& s) { s.instrument.range = 10.0_mV_per_V; },
      [](core::Setup& s) { s.acquisition.filter.kind = FilterKind::Bessel; },
      [](core::Setup& s) {
        s.shunts[2].jumpers = {{{"J1", "A"}, {"J2", "B"}}};
      },
      [](core::Setup& s) { s.shunts[2].part.certificate = "C-1"; },
      [](core::Setup& s) { s.shunts.pop_back(), s.sequence[7].closed.clear(); },
      [](core::Setup& s) { s.sequence[2].hold = 3.0_s; },
      [](core::Setup& s) { s.sequence[2].label = "other"; },
      [](core::Setup& s) { s.limits.merits[MeritKind::Hysteresis] = 0.01; },
      [](core::Setup& s) { s.limits.zeroChange = 0.02; },
      [](core::Setup& s) { s.decision.coverage = 0.99; },
      [](core::Setup& s) {
        s.uncertainties.stated[{InputKind::Gain, 0}].amount = 0.01;
      }};
  for (std::size_t k = 0; k < changes.size(); ++k) EXPECT_FALSE(differing(changes[k]).empty()) << k;
}

}  // namespace
}  // namespace core
