// SPDX-License-Identifier: GPL-3.0-or-later
// Bridges that are not connected as their template says. Values are derived by hand beside each check; the
// same networks are run by ngspice in tests/core/plan/hookup_netlist_test.cpp.
#include "core/circuit/hookup.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <map>

#include "core/circuit/hookup_words.h"
#include "tests/support/digits.h"
#include "tests/support/setups.h"

using namespace core;
using enum BridgeType;
using enum LeadRole;
using testing::ElementsAre;

namespace {

constexpr double arm_ohm = 350, shunt_ohm = 59e3;

/// Equal arms without leads, shunts over arm 1 and arm 2.
core::Setup shunted(BridgeType type) {
  core::Setup setup = test::equalArms(type, Resistance(arm_ohm));
  setup = test::withShuntOnArm(setup, Resistance(shunt_ohm), 1);
  return test::withShuntOnArm(setup, Resistance(shunt_ohm), 2);
}

core::Setup with(core::Setup setup, const Hookup& hookup) {
  setup.bridge.hookup = hookup;
  return setup;
}

Hookup broken(LeadRole role) {
  Hookup hookup;
  hookup.broken[static_cast<std::size_t>(role)] = true;
  return hookup;
}

/// Output of `setup` with all shunts open.
Result<Output> zeroOf(const core::Setup& setup) { return predict(setup).zero; }

const Hookup signalReversed{.signalReversed = true};
const Hookup excitationReversed{.excitationReversed = true};
const Hookup bothReversed{.signalReversed = true, .excitationReversed = true};
const Hookup gaugesReversed{.gaugesReversed = true};

/// Every bridge with unequal arms and leads, sense leads where they are offered.
std::vector<core::Setup> installedBridges() {
  std::vector<core::Setup> all;
  for (const BridgeTemplate& shape : allTemplates())
    for (const bool current : {false, true}) {
      core::Setup setup = test::withLeads(shunted(shape.type), 3.0_ohm);
      setup.bridge.arms = {350.4_ohm, 349.1_ohm, 350.0_ohm, 350.9_ohm};
      setup.bridge.sixWire = true;
      setup.instrument.inputResistance = 1.0_Mohm;
      if (current) setup.instrument.current = CurrentSource{};
      all.push_back(setup);
    }
  return all;
}

/// Potentials are right to some 1e-16 and the reference is at least 0.5: outputs to 1e-15.
constexpr double outputRounding = 1e-15;

}  // namespace

TEST(Hookup, ReversedSignalWiresFlipTheOutputExactly) {
  for (const core::Setup& setup : installedBridges()) {
    const auto as = predict(setup), reversed = predict(with(setup, signalReversed));
    EXPECT_EQ(reversed.zero->base(), -as.zero->base());
    for (std::size_t step = 0; step < as.steps.size(); ++step) {
      EXPECT_EQ(reversed.steps[step]->output, -as.steps[step]->output);
      EXPECT_EQ(reversed.steps[step]->reading, -as.steps[step]->reading);
      EXPECT_EQ(static_cast<int>(reversed.steps[step]->polarity),
                -static_cast<int>(as.steps[step]->polarity));
    }
  }
}

TEST(Hookup, ReversedExcitationFlipsTheOutputToo) {
  // Derived: each potential becomes 1 less what it was, so every difference changes its sign, and the
  // reference, which is the source's plus against its minus, does not.
  for (const core::Setup& setup : installedBridges()) {
    const auto as = predict(setup), reversed = predict(with(setup, excitationReversed)),
               twice = predict(with(setup, bothReversed));
    EXPECT_NEAR(reversed.zero->base(), -as.zero->base(), outputRounding);
    EXPECT_NEAR(twice.zero->base(), as.zero->base(), outputRounding);
    for (std::size_t step = 0; step < as.steps.size(); ++step) {
      EXPECT_NEAR(reversed.steps[step]->output.base(), -as.steps[step]->output.base(), 2 * outputRounding);
      EXPECT_NEAR(twice.steps[step]->output.base(), as.steps[step]->output.base(), 2 * outputRounding);
    }
  }
}

TEST(Hookup, ReversedWiresDoNotChangeWhatAShuntSimulates) {
  // The gauges' strain passes the same wires as the shunt. Strains are right to 1e-15 over a slope of at
  // least 0.4, loads over a slope of 1.9e-3.
  for (const core::Setup& setup : installedBridges())
    for (const Hookup& hookup : {signalReversed, excitationReversed, bothReversed}) {
      const double rounding = 4 * outputRounding / (isTransducer(setup.bridge) ? 1.9e-3 : 0.4);
      const auto as = predict(setup), reversed = predict(with(setup, hookup));
      for (std::size_t step = 0; step < as.steps.size(); ++step)
        EXPECT_NEAR(reversed.steps[step]->simulated, as.steps[step]->simulated, rounding);
    }
}

TEST(Hookup, ReversedGaugesLeaveTheOutputAndTurnTheSimulatedStrain) {
  // Derived for the quarter bridge with a gauge R (1 - F e): R Rs/(R + Rs) over the gauge is a tension of
  // R/(R + Rs)/F; over arm 2 the output is that of a gauge of R (R + Rs)/Rs, R/Rs/F of compression.
  const core::Setup setup = with(shunted(QuarterTwoWire), gaugesReversed);
  const auto as = predict(shunted(QuarterTwoWire)), reversed = predict(setup);
  for (const std::size_t step : {0, 1}) EXPECT_EQ(reversed.steps[step]->output, as.steps[step]->output);
  EXPECT_DIGITS(reversed.steps[0]->simulated, arm_ohm / (arm_ohm + shunt_ohm) / 2, 11);
  EXPECT_DIGITS(reversed.steps[1]->simulated, -arm_ohm / shunt_ohm / 2, 11);
  // And for the full bridge, whose output is F e: v of the shunt is -R/(4 Rs + 2 R).
  const auto full = predict(with(shunted(FullBending), gaugesReversed));
  EXPECT_DIGITS(full.steps[0]->output.base(), -arm_ohm / (4 * shunt_ohm + 2 * arm_ohm), 11);
  EXPECT_DIGITS(full.steps[0]->simulated, arm_ohm / (4 * shunt_ohm + 2 * arm_ohm) / 2, 11);
}

TEST(Hookup, ReversedGaugesMakeAStrainReadTheOtherWay) {
  for (const core::Setup& setup : installedBridges()) {
    const core::Setup reversed = with(setup, gaugesReversed);
    EXPECT_EQ(test::outputAt(reversed, 1e-3), test::outputAt(setup, -1e-3));
  }
}

TEST(Hookup, ExchangedLeadsOfAFullBridge) {
  const core::Setup setup = test::withLeads(shunted(FullBending), 5.0_ohm);
  const auto as = predict(setup);
  // Equal leads, so which of the two carries which potential is all the same.
  for (const LeadPair pair : {LeadPair{ExcitationPlus, ExcitationMinus}, LeadPair{SignalPlus, SignalMinus}}) {
    const auto exchanged = predict(with(setup, {.exchanged = {pair}}));
    for (const std::size_t step : {0, 1})
      EXPECT_NEAR(exchanged.steps[step]->output.base(), -as.steps[step]->output.base(), 2 * outputRounding);
  }
  const Hookup all{.exchanged = {{ExcitationPlus, ExcitationMinus}, {SignalMinus, SignalPlus}}};
  EXPECT_NEAR(predict(with(setup, all)).steps[0]->output.base(), as.steps[0]->output.base(),
              2 * outputRounding);
}

TEST(Hookup, ExchangedExcitationLeadsBehindSenseLeadsTurnSignalAndReference) {
  // Derived: the sensed voltage is negative then, and so is the signal; their ratio stays.
  core::Setup setup = test::withLeads(shunted(FullBending), 5.0_ohm);
  setup.bridge.sixWire = true;
  const double as = predict(setup).steps[0]->output.base();
  const Hookup excitation{.exchanged = {{ExcitationPlus, ExcitationMinus}}};
  EXPECT_NEAR(predict(with(setup, excitation)).steps[0]->output.base(), as, 2 * outputRounding);
  const Hookup sense{.exchanged = {{SensePlus, SenseMinus}}};
  EXPECT_NEAR(predict(with(setup, sense)).steps[0]->output.base(), -as, 2 * outputRounding);
}

TEST(Hookup, ExchangedExcitationAndSignalLead) {
  // Derived: with P+ and S- exchanged the excitation lies over arm 2, and over arms 1, 4, 3 in a row beside
  // it. Terminal S- is behind arm 1 at 2/3, S+ behind arm 4 at 1/3.
  const Hookup hookup{.exchanged = {{ExcitationPlus, SignalMinus}}};
  EXPECT_DIGITS(zeroOf(with(shunted(FullBending), hookup))->base(), -1.0 / 3, 14);
}

TEST(Hookup, ExchangesFollowEachOther) {
  // Derived: P+ to S-, then S- (whose wire is at P+ now) to S+: the lead P+ is at S-, S- at S+, S+ at P+.
  const Hookup ring{.exchanged = {{ExcitationPlus, SignalMinus}, {SignalMinus, SignalPlus}}};
  core::Setup setup = with(shunted(FullBending), ring);
  std::map<LeadRole, Node> from;
  for (const Wire& wire : wiresOf(setup.bridge)) from[wire.role] = wire.from;
  EXPECT_EQ(from[ExcitationPlus], Node::SMinus);
  EXPECT_EQ(from[SignalMinus], Node::SPlus);
  EXPECT_EQ(from[SignalPlus], Node::PPlus);
  EXPECT_EQ(from[ExcitationMinus], Node::PMinus);
  // The excitation lies over arm 3, so 1 V is at the corner S+; from there arms 4, 1, 2 in a row lead to P-:
  // the corner P+, at terminal S-, has 2/3; the corner S-, at terminal S+, has 1/3.
  EXPECT_DIGITS(zeroOf(setup)->base(), 1.0 / 3 - 2.0 / 3, 14);
}

TEST(Hookup, BrokenLeadLetsTheSignalGoToARail) {
  // Derived: without P+ the corner S- hangs on P- through arm 2 and S+ stays in the middle; without P- or the
  // third wire it hangs on P+.
  EXPECT_DIGITS(zeroOf(with(shunted(HalfBending), broken(ExcitationPlus)))->base(), 0.5, 15);
  EXPECT_DIGITS(zeroOf(with(shunted(HalfBending), broken(ExcitationMinus)))->base(), -0.5, 15);
  EXPECT_DIGITS(zeroOf(with(shunted(QuarterThreeWire), broken(ExcitationPlus)))->base(), 0.5, 15);
  EXPECT_DIGITS(zeroOf(with(shunted(QuarterThreeWire), broken(Return)))->base(), -0.5, 15);
  EXPECT_DIGITS(zeroOf(with(shunted(QuarterTwoWire), broken(ExcitationPlus)))->base(), 0.5, 15);
  // A whole bridge without one of its excitation leads lies at the potential of the other: no output.
  EXPECT_EQ(zeroOf(with(shunted(FullBending), broken(ExcitationPlus)))->base(), 0);
  EXPECT_EQ(zeroOf(with(shunted(FullBending), broken(ExcitationMinus)))->base(), 0);
}

TEST(Hookup, AGaugeThatCarriesNoCurrentSimulatesNothing) {
  const auto predicted = predict(with(shunted(HalfBending), broken(ExcitationPlus)));
  ASSERT_TRUE(predicted.zero);
  ASSERT_FALSE(predicted.steps[0]);
  EXPECT_EQ(predicted.steps[0].error().where, "simulated strain");
}

TEST(Hookup, NothingIsMeasuredAtATerminalWithoutAWire) {
  for (const auto& [type, role] : {std::pair{FullBending, SignalPlus},
                                   {FullBending, SignalMinus},
                                   {HalfBending, SignalMinus},
                                   {QuarterThreeWire, SignalMinus}}) {
    const auto zero = zeroOf(with(shunted(type), broken(role)));
    ASSERT_FALSE(zero) << templateOf(type).key;
    EXPECT_EQ(zero.error().where, "terminal " + std::string(leadName(role)));
    EXPECT_EQ(zero.error().mend, "Mend the broken lead");
  }
  // Derived: inside the instrument arm 4 still holds S+ of this one at P+, and S- is in the middle.
  EXPECT_DIGITS(zeroOf(with(shunted(HalfDiagonal), broken(SignalPlus)))->base(), 0.5, 15);
}

TEST(Hookup, NothingIsSensedThroughABrokenSenseLead) {
  core::Setup setup = with(test::withLeads(shunted(FullBending), 5.0_ohm), broken(SenseMinus));
  EXPECT_TRUE(zeroOf(setup)) << "a lead that the bridge has not got plays no part";
  setup.bridge.sixWire = true;
  ASSERT_FALSE(zeroOf(setup));
  EXPECT_EQ(zeroOf(setup).error().where, "terminal sense-");
}

TEST(Hookup, TheInputHoldsATerminalWithoutAWireAtTheOther) {
  core::Setup setup = with(shunted(FullBending), broken(SignalPlus));
  setup.instrument.inputResistance = 10.0_Mohm;
  EXPECT_EQ(zeroOf(setup)->base(), 0) << "no current flows through it";
}

TEST(Hookup, NoCurrentFlowsFromACurrentSourceIntoABrokenLead) {
  core::Setup setup = with(shunted(FullBending), broken(ExcitationPlus));
  setup.instrument.current = CurrentSource{};
  ASSERT_FALSE(zeroOf(setup));
  EXPECT_EQ(zeroOf(setup).error().where, "excitation");
  // Constant voltage would find the lead broken as well.
  EXPECT_EQ(zeroOf(setup).error().mend, "Mend the lead that is broken");
}

TEST(Hookup, TouchingLeadsShortTheArmBetweenThem) {
  // Derived: arm 1 is gone. From the joined corner arm 2 lies beside arms 4 and 3, 2R/3, between two leads r.
  // S+ is in the middle, S- at the joined corner: -1/2 + r/(2 r + 2 R/3).
  const Hookup touching{.touching = {{ExcitationPlus, SignalMinus}}};
  for (const double r : {0.0, 5.0}) {
    const core::Setup setup = with(test::withLeads(shunted(FullBending), Resistance(r)), touching);
    EXPECT_DIGITS(zeroOf(setup)->base(), -0.5 + r / (2 * r + 2 * arm_ohm / 3), 14) << r;
  }
}

TEST(Hookup, TouchingExcitationLeadsLeaveNoSignal) {
  const Hookup touching{.touching = {{ExcitationMinus, ExcitationPlus}}};
  const auto shorted = zeroOf(with(shunted(FullBending), touching));
  ASSERT_FALSE(shorted) << "there is nothing between P+ and P- without leads";
  EXPECT_EQ(shorted.error().where, "excitation");
  EXPECT_EQ(shorted.error().mend, "Part the leads that touch");
  EXPECT_NEAR(zeroOf(with(test::withLeads(shunted(FullBending), 5.0_ohm), touching))->base(), 0,
              outputRounding);
  core::Setup six = test::withLeads(shunted(FullBending), 5.0_ohm);
  six.bridge.sixWire = true;
  const auto sensed = zeroOf(with(six, touching));
  ASSERT_FALSE(sensed) << "the sensed voltage is zero";
  EXPECT_EQ(sensed.error().where, "excitation");
}

TEST(Hookup, TouchingLeadsOfOneTerminalChangeNothing) {
  // P- and sense- end at the same corner.
  core::Setup setup = test::withLeads(shunted(FullBending), 5.0_ohm);
  setup.bridge.sixWire = true;
  const Hookup touching{.touching = {{ExcitationMinus, SenseMinus}}};
  EXPECT_EQ(*zeroOf(with(setup, touching)), *zeroOf(setup));
}

TEST(Hookup, ShuntOverATouchedArmDoesNothing) {
  const auto predicted = predict(with(shunted(FullBending), {.touching = {{ExcitationPlus, SignalMinus}}}));
  ASSERT_FALSE(predicted.steps[0]);
  EXPECT_NE(predicted.steps[0].error().what.find("both ends are on one node"), std::string::npos);
  EXPECT_EQ(predicted.steps[0].error().mend, "Part the leads that touch");
  // A shunt that its own two ends join stays so when the leads are parted.
  core::Setup own = test::withShunt(shunted(FullBending), 59.0_kohm, Node::PMinus, Node::Arm2End);
  own.bridge.hookup.touching = {{ExcitationPlus, SignalMinus}};
  EXPECT_EQ(predict(own).steps.back().error().mend, "Move one end to another node");
}

namespace {

constexpr std::string_view dead = "the gauges do not act on the output";

/// Every step of `setup` fails because the gauges do nothing, with `mend`; its zero can be worked out.
void expectDead(const core::Setup& setup, std::string_view mend) {
  const auto predicted = predict(setup);
  EXPECT_TRUE(predicted.zero);
  for (const auto& step : predicted.steps) {
    ASSERT_FALSE(step) << step->simulated;
    EXPECT_EQ(step.error().where, "simulated strain");
    EXPECT_EQ(step.error().what, dead);
    EXPECT_EQ(step.error().mend, mend);
  }
}

}  // namespace

TEST(Hookup, NoStrainIsSimulatedWhereTheGaugesDoNotAct) {
  // Derived: without a wire S+ is at the potential of S- through the input, and with S+ on S- or P+ on P-
  // there is no signal: the output is zero whatever the arms are, and a slope other than zero is rounding.
  for (const double r : {0.0, 0.3, 5.0})
    for (const BridgeType type : {FullBending, FullTorsion, Transducer}) {
      core::Setup setup = test::withLeads(shunted(type), Resistance(r));
      setup.bridge.arms = {350.4_ohm, 349.1_ohm, 350.0_ohm, 350.9_ohm};
      setup.instrument.inputResistance = 1.0_Mohm;
      expectDead(with(setup, broken(SignalPlus)), "Mend the lead that is broken");
      expectDead(with(setup, broken(SignalMinus)), "Mend the lead that is broken");
      expectDead(with(setup, {.touching = {{SignalPlus, SignalMinus}}}), "Part the leads that touch");
      if (r > 0)
        expectDead(with(setup, {.touching = {{ExcitationPlus, ExcitationMinus}}}),
                   "Part the leads that touch");
    }
}

TEST(Hookup, AWeakSignalIsStillOne) {
  // Derived: an input of 1 kohm behind leads of 1 Mohm shows a two-thousandth of the signal, and the shunt
  // simulates what it does without them.
  core::Setup setup = shunted(FullBending);
  const auto as = predict(setup);
  setup.bridge.leads[static_cast<std::size_t>(SignalPlus)] = 1.0_Mohm;
  setup.bridge.leads[static_cast<std::size_t>(SignalMinus)] = 1.0_Mohm;
  setup.instrument.inputResistance = 1.0_kohm;
  const auto weak = predict(setup);
  ASSERT_TRUE(weak.steps[0]);
  // The input's current of 1 kohm against 350 ohm moves the corners alike with shunt and with strain but for
  // 350/2e6 of it.
  EXPECT_NEAR(weak.steps[0]->simulated / as.steps[0]->simulated, 1, 2e-4);
}

TEST(CheckBridge, RefusesAPairOfOneLead) {
  for (const bool touching : {false, true}) {
    Bridge bridge;
    (touching ? bridge.hookup.touching : bridge.hookup.exchanged) = {{SignalMinus, SignalMinus}};
    const auto checked = checkBridge(bridge, Instrument{});
    ASSERT_FALSE(checked);
    EXPECT_EQ(checked.error().where, "lead S-");
    EXPECT_NE(checked.error().what.find(touching ? "touch itself" : "exchanged with itself"),
              std::string::npos);
  }
}

TEST(HookupInUse, LeavesOutWhatTheBridgeHasNotGot) {
  Bridge bridge;
  bridge.type = QuarterThreeWire;
  bridge.hookup = broken(SensePlus);
  bridge.hookup.exchanged = {{ExcitationPlus, SignalPlus}, {SignalMinus, Return}};
  bridge.hookup.touching = {{ExcitationMinus, Return}, {ExcitationPlus, Return}};
  Hookup expected;
  expected.exchanged = {{SignalMinus, Return}};
  expected.touching = {{ExcitationPlus, Return}};
  EXPECT_EQ(hookupInUse(bridge), expected);
  EXPECT_FALSE(asTemplateSays(bridge));
  bridge.hookup = broken(SensePlus);
  EXPECT_TRUE(asTemplateSays(bridge));
}

TEST(HookupInUse, SaysTheSameConnectionShortest) {
  Bridge bridge;
  bridge.type = FullBending;
  const LeadPair plus{ExcitationPlus, SignalMinus}, turned{SignalMinus, ExcitationPlus},
      other{SignalPlus, SignalMinus};
  bridge.hookup.exchanged = {plus, turned};
  EXPECT_TRUE(asTemplateSays(bridge)) << "exchanged twice";
  for (const auto& pairs : std::vector<std::vector<LeadPair>>{
           {plus, other, plus}, {plus, other, turned, other}, {plus, plus, other}, {plus, other}}) {
    bridge.hookup.exchanged = pairs;
    const auto long_ = wiresOf(bridge);
    bridge.hookup = hookupInUse(bridge);
    const auto short_ = wiresOf(bridge);
    EXPECT_LE(bridge.hookup.exchanged.size(), 2u);
    for (std::size_t k = 0; k < long_.size(); ++k) EXPECT_EQ(short_[k].from, long_[k].from);
  }
  bridge.hookup = {.touching = {plus, turned, other, {SignalPlus, SignalPlus}}};
  EXPECT_EQ(hookupInUse(bridge).touching, (std::vector{plus, other}));
}

TEST(WithExchanged, ASecondTimeUndoesIt) {
  Bridge bridge;
  bridge.type = FullBending;
  const Bridge once = withExchanged(bridge, {ExcitationPlus, SignalPlus});
  EXPECT_EQ(once.hookup.exchanged, (std::vector<LeadPair>{{ExcitationPlus, SignalPlus}}));
  EXPECT_EQ(withExchanged(once, {SignalPlus, ExcitationPlus}), bridge);
}

TEST(WithTouching, JoinsOnceAndParts) {
  Bridge bridge;
  bridge.type = FullBending;
  const Bridge once = withTouching(bridge, {ExcitationPlus, SignalPlus}, true);
  EXPECT_EQ(withTouching(once, {SignalPlus, ExcitationPlus}, true).hookup.touching.size(), 1u);
  EXPECT_EQ(withTouching(once, {SignalPlus, ExcitationPlus}, false), bridge);
}

TEST(HookupSentences, SayEachThing) {
  Bridge bridge;
  bridge.type = FullBending;
  bridge.sixWire = true;
  EXPECT_TRUE(hookupSentences(bridge).empty());
  bridge.hookup = broken(SenseMinus);
  bridge.hookup.signalReversed = bridge.hookup.excitationReversed = bridge.hookup.gaugesReversed = true;
  bridge.hookup.exchanged = {{ExcitationPlus, SignalMinus}};
  bridge.hookup.touching = {{ExcitationPlus, ExcitationMinus}};
  EXPECT_THAT(
      hookupSentences(bridge),
      ElementsAre("The signal wires are reversed: the instrument measures S- against S+.",
                  "The excitation is reversed: the source's plus side is on P-, and the sense pair with it.",
                  "The gauges are reversed: each feels the opposite of what the template says.",
                  "Lead sense- is broken.", "Leads P+ and S- are exchanged at the instrument.",
                  "Leads P+ and P- touch at their gauge ends."));
  bridge.hookup = {.exchanged = {{ExcitationPlus, SignalMinus}, {SignalMinus, SignalPlus}}};
  EXPECT_THAT(hookupSentences(bridge),
              ElementsAre("At the instrument lead P+ is where S- belongs, S+ where P+ belongs, S- where S+ "
                          "belongs."));
  bridge.type = QuarterTwoWire;
  EXPECT_THAT(hookupSentences(bridge), ElementsAre("Leads P+ and S- are exchanged at the instrument."))
      << "it has no lead S+";
}
