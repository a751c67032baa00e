// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <cmath>
#include <functional>

#include "core/assess/assessment.h"
#include "core/compare/difference.h"
#include "tests/support/sample_channel.h"

// A pass has finite numbers behind it, all of them. No source but this rule: |deviation| <= limit says
// nothing when one of the two, or what they were worked out from, is no number.

namespace core {
namespace {

constexpr double huge = 1e308;  ///< finite; most products with it are not

Channel passingBy(DecisionRule rule) {
  Channel channel = sample::withCheckReading(sample::nineStepChannel(), 1.0);
  channel.setup.decision.rule = rule;
  channel.setup.limits.least = Reading(500);  // wide enough for guard bands and shared risk
  channel.setup.limits.zeroReturn = 0.2;
  channel.setup.limits.merits[MeritKind::SpanRatio] = 0.5;
  for (auto& reading : channel.checks[0].readings) reading->uncertainty = Reading(0.1);
  return channel;
}

Verdict verdictOfCheck(const Channel& channel) {
  const SetupPrediction prediction = predict(channel.setup);
  return assess(channel.setup, prediction, budgetOf(channel.setup, prediction), channel.checks[0]).verdict;
}

struct Place {
  const char* name;
  std::function<void(Channel&, double)> put;
};

Uncertainty stated(double amount) { return {.statement = Statement::Standard, .amount = amount}; }

/// Each input of a verdict.
const std::vector<Place>& inputsOfAVerdict() {
  static const std::vector<Place> places = {
      {"reading", [](Channel& c, double x) { c.checks[0].readings[3]->mean = Reading(x); }},
      {"zero reading", [](Channel& c, double x) { c.checks[0].readings[0]->mean = Reading(x); }},
      {"its uncertainty", [](Channel& c, double x) { c.checks[0].readings[3]->uncertainty = Reading(x); }},
      {"zero's uncertainty", [](Channel& c, double x) { c.checks[0].readings[0]->uncertainty = Reading(x); }},
      {"relative limit", [](Channel& c, double x) { c.setup.limits.relative = x; }},
      {"least limit", [](Channel& c, double x) { c.setup.limits.least = Reading(x); }},
      {"zero return", [](Channel& c, double x) { c.setup.limits.zeroReturn = x; }},
      {"limit of a figure", [](Channel& c, double x) { c.setup.limits.merits[MeritKind::SpanRatio] = x; }},
      {"shunt", [](Channel& c, double x) { c.setup.shunts[0].resistance = Resistance(x); }},
      {"arm", [](Channel& c, double x) { c.setup.bridge.arms[1] = Resistance(x); }},
      {"lead", [](Channel& c, double x) { c.setup.bridge.leads[0] = Resistance(x); }},
      {"gauge factor", [](Channel& c, double x) { c.setup.bridge.gauge.factor = x; }},
      {"gauge resistance", [](Channel& c, double x) { c.setup.bridge.gauge.nominal = Resistance(x); }},
      {"factor set", [](Channel& c, double x) { c.setup.instrument.gaugeFactor = x; }},
      {"bridge factor", [](Channel& c, double x) { c.setup.instrument.bridgeFactor = x; }},
      {"uncertainty of an arm",
       [](Channel& c, double x) {
         c.setup.uncertainties.stated[{InputKind::Arm, 1}] = stated(x);
       }},
      {"uncertainty of the gain",
       [](Channel& c, double x) {
         c.setup.uncertainties.stated[{InputKind::Gain, 0}] = stated(x);
       }},
  };
  return places;
}

class EveryRule : public testing::TestWithParam<DecisionRule> {};

TEST_P(EveryRule, PassesWhatIsFinite) { EXPECT_EQ(verdictOfCheck(passingBy(GetParam())), Verdict::Pass); }

TEST_P(EveryRule, PassesNothingThatHangsOnWhatIsNoFiniteNumber) {
  for (const Place& place : inputsOfAVerdict())
    for (const double bad : {std::nan(""), HUGE_VAL, -HUGE_VAL}) {
      Channel channel = passingBy(GetParam());
      place.put(channel, bad);
      EXPECT_NE(verdictOfCheck(channel), Verdict::Pass) << place.name << " = " << bad;
    }
}

/// Whether the rule looks at that input.
bool playsAPart(const std::string& name, DecisionRule rule) {
  if (rule == DecisionRule::EnNumber) return name.find("limit") == name.npos && name != "zero return";
  return rule != DecisionRule::Simple || name.find("uncertainty") == name.npos;
}

// What goes into a product with another number and makes it overflow.
TEST_P(EveryRule, PassesNothingWhoseProductsOverflow) {
  for (const Place& place : inputsOfAVerdict()) {
    const std::string name = place.name;
    if (name == "least limit" || name == "limit of a figure") continue;  // compared as they are
    if (!playsAPart(name, GetParam())) continue;
    Channel channel = passingBy(GetParam());
    place.put(channel, name == "factor set" || name == "bridge factor" ? 1e-308 : huge);
    EXPECT_NE(verdictOfCheck(channel), Verdict::Pass) << name;
  }
}

INSTANTIATE_TEST_SUITE_P(Decision, EveryRule,
                         testing::Values(DecisionRule::Simple, DecisionRule::SharedRisk,
                                         DecisionRule::Guarded, DecisionRule::Conformity,
                                         DecisionRule::EnNumber));

TEST(DecideNotFinite, ALimitThatOverflowedPermitsNothing) {
  for (const DecisionRule rule :
       {DecisionRule::Simple, DecisionRule::SharedRisk, DecisionRule::Guarded, DecisionRule::Conformity})
    for (const double limit : {HUGE_VAL, std::nan("")})
      EXPECT_EQ(decide({.rule = rule}, 1, limit, 0.1, {}).outcome, core::Outcome::CannotTell);
}

TEST(DecideNotFinite, AnExpandedUncertaintyThatOverflowsIsNotKnown) {
  // 2 x 1.7e308 is beyond the largest double, 1.8e308; any deviation over it would be an E_n of 0.
  const Decided decided = decide({.rule = DecisionRule::EnNumber}, 1000, 1, 1.7e308, {});
  EXPECT_EQ(decided.outcome, core::Outcome::CannotTell);
  EXPECT_FALSE(decided.expanded);
  EXPECT_FALSE(decided.en);
}

TEST(DecideNotFinite, NoMarginIsBeyondAllNumbers) {
  EXPECT_EQ(differenceOf(1, 0.1, {}, HUGE_VAL, 0.95).change, Change::NotCompared);
}

TEST(DecideNotFinite, NoEnOfAnUncertaintyThatIsNothing) {
  // At a coverage this small k is 0, and so is U.
  const Difference difference = differenceOf(1, 0.1, {}, 10, 5e-324);
  EXPECT_EQ(difference.change, Change::Harmless);
  EXPECT_FALSE(difference.en);
}

}  // namespace
}  // namespace core
