// SPDX-License-Identifier: GPL-3.0-or-later
// Faults of bridges that are not connected as their template says.
#include <gtest/gtest.h>

#include <algorithm>

#include "core/diagnose/at_the_plug.h"
#include "core/diagnose/diagnosis.h"
#include "core/diagnose/fault.h"
#include "tests/core/diagnose/held_check.h"
#include "tests/support/digits.h"

using namespace core;
using enum LeadRole;

namespace {

constexpr double arm_ohm = 350, lead_ohm = 5;

core::Setup sixWire(const Hookup& hookup) {
  core::Setup setup =
      test::withLeads(test::equalArms(BridgeType::FullBending, Resistance(arm_ohm)), Resistance(lead_ohm));
  setup.bridge.sixWire = true;
  setup.bridge.hookup = hookup;
  return test::nineSteps(setup, 2, 1);
}

std::vector<Fault> faultsOf(const core::Setup& setup) {
  const test::HeldCheck held(setup, 0.1);
  return possibleFaults(setup, held.ground().points);
}

bool hasFault(const std::vector<Fault>& faults, CauseKind kind, std::size_t index = 0) {
  return std::any_of(faults.begin(), faults.end(),
                     [&](const Fault& fault) { return fault.kind == kind && fault.index == index; });
}

/// Change of output of the second step, with and without the fault.
double changeUnder(const core::Setup& setup, const Fault& fault) {
  const auto predicted = predict(withFault(setup, fault));
  EXPECT_TRUE(predicted.steps[1]);
  return predicted.steps[1]->output.base();
}

Diagnosis diagnosisOf(const core::Setup& setup, const Fault& fault) {
  const SetupPrediction prediction = predict(setup), real = predict(withFault(setup, fault));
  Check check;
  for (const auto& step : real.steps) check.readings.push_back(Measured{step->reading, Reading(0.2), {}, {}});
  return diagnose(setup, prediction, budgetOf(setup, prediction), check);
}

}  // namespace

TEST(HookupFaults, AnOpenSenseLeadBehindExchangedExcitationLeadsTurnsTheSignToo) {
  // Derived: sensed, signal and reference are both turned; at its own terminals the instrument sees the
  // turned signal alone, and Ri/(Ri + 2 RL) of it. Ri is 700 ohm beside the half bridge with 174.65 kohm over
  // one arm, and without shunts the output is zero either way.
  const core::Setup setup = sixWire({.exchanged = {{ExcitationPlus, ExcitationMinus}}});
  const double sensed = predict(setup).steps[1]->output.base();
  const double half = arm_ohm + arm_ohm * 174650 / (arm_ohm + 174650);
  const double input = 2 * arm_ohm * half / (2 * arm_ohm + half);
  // Differences of potentials of 1e-16 at an output of 5e-4: twelve digits, and some for the quotient.
  EXPECT_DIGITS(changeUnder(setup, {CauseKind::OpenSense}) / sensed, -input / (input + 2 * lead_ohm), 10);
}

TEST(HookupFaults, AnOpenSenseLeadIsNoCauseWhereItIsTheWayToAnotherTerminal) {
  EXPECT_TRUE(hasFault(faultsOf(sixWire({})), CauseKind::OpenSense));
  EXPECT_TRUE(hasFault(faultsOf(sixWire({.signalReversed = true})), CauseKind::OpenSense));
  EXPECT_FALSE(
      hasFault(faultsOf(sixWire({.exchanged = {{ExcitationPlus, SensePlus}}})), CauseKind::OpenSense));
}

TEST(HookupFaults, ABrokenLeadHasNoBadContact) {
  core::Setup setup = sixWire({});
  setup.instrument.inputResistance = 1.0_Mohm;
  setup.bridge.sixWire = false;
  const test::HeldCheck held(setup, 0.1);
  setup.bridge.hookup.broken[static_cast<std::size_t>(SignalPlus)] = true;
  const auto faults = possibleFaults(setup, held.ground().points);
  EXPECT_FALSE(hasFault(faults, CauseKind::LeadContact, static_cast<std::size_t>(SignalPlus)));
  EXPECT_TRUE(hasFault(faults, CauseKind::LeadContact, static_cast<std::size_t>(SignalMinus)));
}

TEST(HookupFaults, ShuntsMovedToTheInstrumentFollowTheirLeads) {
  const core::Setup setup = sixWire({.exchanged = {{ExcitationPlus, SignalPlus}}});
  const core::Setup moved = withFault(setup, {CauseKind::ShuntPlace, 0});
  // The shunts over arm 1 end at lead P+, which is at terminal S+ now, and at lead S-.
  const Shunt& overArm1 = moved.shunts.back();
  EXPECT_EQ(overArm1.a, Node::SPlus);
  EXPECT_EQ(overArm1.b, Node::SMinus);
}

TEST(HookupFaults, APlantedFaultIsFoundWithReversedWiresAndGauges) {
  for (const Hookup& hookup :
       {Hookup{.signalReversed = true}, Hookup{.gaugesReversed = true},
        Hookup{.excitationReversed = true, .exchanged = {{SignalPlus, SignalMinus}}}}) {
    const core::Setup setup = test::knownExactly(sixWire(hookup));
    const Fault fault{CauseKind::ShuntValue, 0, 0, 1.02};
    const Diagnosis diagnosis = diagnosisOf(setup, fault);
    ASSERT_FALSE(diagnosis.explanations.empty()) << diagnosis.sentence;
    EXPECT_EQ(diagnosis.explanations[0].fault.kind, CauseKind::ShuntValue) << diagnosis.sentence;
    // The descent stops a millionth of chi-square from the least: far below 1e-4 of this size.
    EXPECT_NEAR(diagnosis.explanations[0].fault.size, 1.02, 1e-4);
  }
}

TEST(HookupFaults, LeadsKeepTheirNamesAtThePlug) {
  Bridge bridge = sixWire({}).bridge;
  bridge.sixWire = false;
  const auto ohm = [&] {
    return resistanceAtPlug(bridge, placesForArm(bridge, 0), true).value_or(Resistance(0)).base();
  };
  // Derived: arm 1 beside the other three, and a lead at either end.
  const double whole = arm_ohm * 3 / 4 + 2 * lead_ohm;
  EXPECT_DIGITS(ohm(), whole, 12);
  bridge.hookup.exchanged = {{ExcitationPlus, SignalPlus}};
  EXPECT_EQ(placesForArm(bridge, 0).words, "lead P+ to lead S-");
  EXPECT_DIGITS(ohm(), whole, 12) << "unplugged, the leads are where they were";
  bridge.hookup = {.touching = {{ExcitationPlus, SignalMinus}}};
  EXPECT_DIGITS(ohm(), 2 * lead_ohm, 12) << "the arm is shorted";
  bridge.hookup = {};
  bridge.hookup.broken[static_cast<std::size_t>(SignalMinus)] = true;
  EXPECT_FALSE(resistanceAtPlug(bridge, placesForArm(bridge, 0), true)) << "nothing joins the two ends";
}
