// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/wiring/ohmmeter_sheet.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/wiring/wiring_rules.h"
#include "tests/support/digits.h"
#include "tests/support/setups.h"

using namespace core;

namespace ohmmeter_sheet_test {

constexpr OhmmeterConditions exact{true, 0, Resistance(0), Resistance(1e9)};
constexpr OhmmeterConditions unplugged{false, 0, Resistance(0), Resistance(1e9)};

OhmPoint end1(const char* resistor) { return ResistorEnd{resistor, 1}; }
OhmPoint end2(const char* resistor) { return ResistorEnd{resistor, 2}; }

OhmExpectation expected(const core::Setup& setup, const WiringState& state, const OhmPoint& from,
                        const OhmPoint& to, const OhmmeterConditions& conditions = exact) {
  const std::vector<OhmPoint> points{from, to};
  const auto result = ohmExpectations(setup, state, points, conditions);
  EXPECT_TRUE(result) << (result ? "" : result.error().text());
  return result ? result->front() : OhmExpectation{from, to, {}, {}};
}

double ohm(const core::Setup& setup, const WiringState& state, const OhmPoint& from, const OhmPoint& to,
           const OhmmeterConditions& conditions = exact) {
  const auto value = expected(setup, state, from, to, conditions).ohm;
  return value ? value->base() : INFINITY;
}

/// Four arms of 350 ohm, a resistor of 100 kohm with pins for arm 2, wires 2 ohm, contact 0.1 ohm.
core::Setup wired() {
  core::Setup setup =
      test::withShuntOnArm(test::equalArms(BridgeType::FullBending, 350.0_ohm), 100.0_kohm, 2);
  setup.shunts[0].wires = 2.0_ohm;
  setup.shunts[0].contact = 0.1_ohm;
  setup.wiring = usualWiring(setup);
  setup.shunts[0].jumpers = *jumpersFor(setup, 0);
  return setup;
}

TEST(OhmmeterSheet, ReadsAFullBridgeAsTwoPathsInParallel) {
  const auto setup = wired();
  // Derived: over a diagonal 700 and 700 ohm, over an arm 350 and 1050 ohm in parallel.
  EXPECT_DIGITS(ohm(setup, {}, Node::PPlus, Node::PMinus), 350, 14);
  EXPECT_DIGITS(ohm(setup, {}, Node::SPlus, Node::SMinus), 350, 14);
  EXPECT_DIGITS(ohm(setup, {}, Node::SMinus, Node::PMinus), 262.5, 14);
}

TEST(OhmmeterSheet, TellsThreeWiresFromTheirTerminalsUnplugged) {
  const auto setup = test::withLeads(test::equalArms(BridgeType::QuarterThreeWire, 350.0_ohm), 2.0_ohm);
  // Derived: gauge and two wires in series; the completion resistors are in the instrument.
  EXPECT_DIGITS(ohm(setup, {}, Node::PPlus, Node::SMinus, unplugged), 354, 14);
  EXPECT_DIGITS(ohm(setup, {}, Node::PPlus, Node::Arm2Begin, unplugged), 354, 14);
  EXPECT_DIGITS(ohm(setup, {}, Node::Arm2Begin, Node::SMinus, unplugged), 4, 14);
  EXPECT_DIGITS(ohm(setup, {}, Node::Arm1Begin, Node::Arm1End, unplugged), 350, 14);
  EXPECT_TRUE(std::isinf(ohm(setup, {}, Node::PPlus, Node::SPlus, unplugged)));
  EXPECT_TRUE(std::isinf(ohm(setup, {}, Node::PPlus, Node::PMinus, unplugged)));
  // Plugged in: 354 + 352 on the gauge's side, 700 on the other, in parallel.
  EXPECT_DIGITS(ohm(setup, {}, Node::PPlus, Node::PMinus), 700.0 * 704 / 1404, 14);
}

TEST(OhmmeterSheet, TakesTheInstrumentsInputAwayWhenItIsUnplugged) {
  auto setup = wired();
  setup.instrument.inputResistance = 350.0_ohm;
  setup.instrument.balance.kind = BalanceKind::Parallel;
  EXPECT_DIGITS(ohm(setup, {}, Node::SPlus, Node::SMinus, unplugged), 350, 14);
  setup.instrument.balance.kind = BalanceKind::None;
  EXPECT_DIGITS(ohm(setup, {}, Node::SPlus, Node::SMinus), 175, 14);  // derived: 350 beside 350
}

TEST(OhmmeterSheet, FollowsTheJumpersOneByOne) {
  const auto setup = wired();
  const WiringState open, first{"R1", 1}, closed{"R1", 2};
  const auto a = end1("R1"), b = end2("R1");
  // Nothing laid: the resistor reads its own value, and nothing to the bridge.
  EXPECT_DIGITS(ohm(setup, open, a, b), 100000, 14);
  EXPECT_TRUE(std::isinf(ohm(setup, open, a, Node::SMinus)));
  // End 1 on S-: half of the wires' and the contact's 2.1 ohm, then the bridge.
  EXPECT_DIGITS(ohm(setup, first, a, Node::SMinus), 1.05, 13);
  EXPECT_DIGITS(ohm(setup, first, a, Node::PMinus), 1.05 + 262.5, 13);
  EXPECT_DIGITS(ohm(setup, first, b, Node::PMinus), 100000 + 1.05 + 262.5, 13);
  EXPECT_DIGITS(ohm(setup, first, a, b), 100000, 13);
  EXPECT_DIGITS(ohm(setup, first, Node::SMinus, Node::PMinus), 262.5, 13);
  // Both laid: 100002.1 ohm beside 262.5, and 100000 beside 2.1 + 262.5.
  EXPECT_DIGITS(ohm(setup, closed, Node::SMinus, Node::PMinus), 100002.1 * 262.5 / 100264.6, 13);
  EXPECT_DIGITS(ohm(setup, closed, a, b), 100000 * 264.6 / 100264.6, 13);
}

TEST(OhmmeterSheet, ClosesAShuntInsideTheInstrumentWithoutJumpers) {
  const auto setup = test::withShuntOnArm(test::equalArms(BridgeType::FullBending, 350.0_ohm), 262.5_ohm, 2);
  EXPECT_DIGITS(ohm(setup, {"R1", 0}, Node::SMinus, Node::PMinus), 131.25, 14);
  EXPECT_DIGITS(ohm(setup, {"R1", 0}, Node::SMinus, Node::PMinus, unplugged), 262.5, 14);
}

TEST(OhmmeterSheet, KeepsThePointBehindALeadApart) {
  const auto setup = test::withLeads(test::equalArms(BridgeType::FullBending, 350.0_ohm), 2.0_ohm);
  EXPECT_DIGITS(ohm(setup, {}, Node::PPlus, Node::Arm1Begin), 2, 13);
  EXPECT_DIGITS(ohm(setup, {}, Node::PPlus, Node::PMinus), 354, 14);
  auto sixWire = setup;
  sixWire.bridge.sixWire = true;
  EXPECT_DIGITS(ohm(sixWire, {}, Node::PPlus, Node::SensePlus), 4, 13);
  EXPECT_EQ(ohmPoints(setup).size(), 8U);  // four terminals, four corners
  EXPECT_EQ(ohmPoints(sixWire).size(), 10U);
}

TEST(OhmmeterSheet, ToleranceIsTheNetworksAndTheOhmmetersOwn) {
  auto setup = wired();
  for (const std::size_t arm : {0, 1, 2, 3})
    setup.uncertainties.stated[{InputKind::Arm, arm}] = {.statement = Statement::Standard, .amount = 0.1};
  const OhmmeterConditions conditions{true, 0.002, 0.1_ohm, 20.0_Mohm};
  // Derived: half of the current flows through each arm, so each counts by a quarter: u = 0.1 sqrt(4)/4.
  // k of 95.45 % is 2.000002; the tolerance is good to six digits.
  const auto diagonal = expected(setup, {}, Node::PPlus, Node::PMinus, conditions);
  EXPECT_NEAR(diagonal.tolerance.base(), 2 * 0.05 + 0.7 + 0.1, 1e-6);
  // Over arm 2: three quarters of the current through it, a quarter through the others.
  const auto arm = expected(setup, {}, Node::SMinus, Node::PMinus, conditions);
  EXPECT_NEAR(arm.tolerance.base(), 2 * 0.1 * std::sqrt(81.0 + 3) / 16 + 0.525 + 0.1, 1e-6);
}

TEST(OhmmeterSheet, CorrelatedLeadsAddUp) {
  auto setup = test::withLeads(test::equalArms(BridgeType::QuarterThreeWire, 350.0_ohm), 2.0_ohm);
  setup.uncertainties.stated[{InputKind::LeadTemperature, 0}] = {.statement = Statement::Standard};
  const Uncertainty lead{.statement = Statement::Standard, .amount = 0.1, .group = "cable"};
  for (const LeadRole role : {LeadRole::SignalMinus, LeadRole::Return})
    setup.uncertainties.stated[{InputKind::Lead, static_cast<std::size_t>(role)}] = lead;
  // Derived: both in series, u = 0.1 + 0.1 when they move together (the usual coefficient of a group).
  EXPECT_NEAR(expected(setup, {}, Node::Arm2Begin, Node::SMinus, unplugged).tolerance.base(), 2 * 0.2, 1e-6);
}

TEST(OhmmeterSheet, ContactOfAClosedShuntCountsThoughItsValueIsZero) {
  auto setup = wired();
  setup.shunts[0].wires = setup.shunts[0].contact = Resistance(0);
  setup.shunts[0].resistance = 262.5_ohm;
  for (const std::size_t arm : {0, 1, 2, 3})
    setup.uncertainties.stated[{InputKind::Arm, arm}] = {.statement = Statement::Standard};
  setup.uncertainties.stated[{InputKind::Shunt, 0}] = {.statement = Statement::Standard};
  setup.uncertainties.stated[{InputKind::ShuntContact, 0}] = {.statement = Statement::Standard,
                                                              .amount = 0.4};
  // Derived: half of the current goes through the shunt, so that its resistance counts by a quarter.
  EXPECT_NEAR(expected(setup, {"R1", 2}, Node::SMinus, Node::PMinus).tolerance.base(), 2 * 0.1, 1e-6);
}

TEST(OhmmeterSheet, ReadsNothingBeyondTheRange) {
  auto setup = wired();
  setup.shunts[0].resistance = 25.0_Mohm;
  EXPECT_FALSE(expected(setup, {}, end1("R1"), end2("R1"), OhmmeterConditions{}).ohm);
  EXPECT_TRUE(expected(setup, {"R1", 2}, end1("R1"), end2("R1"), OhmmeterConditions{}).ohm);
}

TEST(OhmmeterSheet, ARefusedStatementIsToldAndNotLeftOut) {
  auto setup = wired();
  setup.uncertainties.stated[{InputKind::Arm, 1}] = {.statement = Statement::Standard, .amount = -1};
  const std::vector<OhmPoint> points{Node::PPlus, Node::PMinus};
  const auto result = ohmExpectations(setup, {}, points, exact);
  ASSERT_FALSE(result);
  EXPECT_NE(result.error().where.find("arm 2"), std::string::npos) << result.error().text();
}

TEST(OhmmeterSheet, TellsWhatCannotBeSolved) {
  const std::vector<OhmPoint> points{Node::PPlus, Node::PMinus}, ends{end1("R1"), end2("R1")};
  auto setup = wired();
  EXPECT_FALSE(ohmExpectations(setup, {"R7", 0}, points, exact));
  EXPECT_FALSE(ohmExpectations(setup, {"R1", 3}, points, exact));
  EXPECT_FALSE(ohmExpectations(setup, {}, std::vector<OhmPoint>{Node::PPlus, Node::SensePlus}, exact));
  setup.shunts[0].resistance = Resistance(-1);
  const auto bad = ohmExpectations(setup, {}, ends, exact);
  ASSERT_FALSE(bad);
  EXPECT_EQ(bad.error().where, "R1");
  EXPECT_TRUE(ohmExpectations(setup, {}, points, exact)) << "a bad resistor that is not laid harms nothing";
  setup.bridge.arms[0] = Resistance(0);
  EXPECT_FALSE(ohmExpectations(setup, {}, points, exact));
}

TEST(OhmmeterSheet, NamesStatesInTheOrderOfTheWork) {
  const auto setup = wired();
  const auto states = wiringStates(setup);
  ASSERT_EQ(states.size(), 3U);
  EXPECT_EQ(wiringStateText(setup, states[0]), "all shunts open");
  EXPECT_EQ(wiringStateText(setup, states[1]), "R1: after jumper 1 of 2 (J2-1 to J1-1)");
  EXPECT_EQ(wiringStateText(setup, states[2]), "R1 closed");
  EXPECT_EQ(ohmPointName(Node::SMinus), "S-");
  EXPECT_EQ(ohmPointName(ResistorEnd{"S-104", 2}), "S-104 end 2");
}

}  // namespace ohmmeter_sheet_test
