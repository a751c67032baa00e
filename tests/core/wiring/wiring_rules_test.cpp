// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/wiring/wiring_rules.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

#include "tests/support/effects.h"
#include "tests/support/setups.h"

using namespace core;
using testing::HasSubstr;

namespace wiring_rules_test {

using Kind = WiringFaultKind;

/// Four arms on leads of 2 ohm; R1 for arm 2, with both ends and the terminals on pins.
core::Setup wired() {
  core::Setup setup = test::withLeads(test::equalArms(BridgeType::FullBending, 350.0_ohm), 2.0_ohm);
  setup = test::withShunt(setup, 100.0_kohm, Node::SMinus, Node::PMinus);
  setup.wiring.pins = {{{"J1", "A"}, Node::PPlus},         {{"J1", "B"}, std::monostate{}},
                       {{"J1", "C"}, Node::PMinus},        {{"J1", "D"}, std::monostate{}},
                       {{"J1", "E"}, Node::SMinus},        {{"J2", "1"}, ResistorEnd{"R1", 1}},
                       {{"J3", "1"}, ResistorEnd{"R1", 2}}};
  setup.shunts[0].jumpers = {{{"J2", "1"}, {"J1", "E"}}, {{"J3", "1"}, {"J1", "C"}}};
  return setup;
}

std::vector<Kind> kinds(const std::vector<WiringFault>& faults) {
  std::vector<Kind> list;
  for (const WiringFault& fault : faults) list.push_back(fault.kind);
  return list;
}

std::string texts(const std::vector<WiringFault>& faults) {
  std::string text;
  for (const WiringFault& fault : faults) text += fault.what + ". " + fault.mend + ".\n";
  return text;
}

/// The faults of `setup`, which must be of these kinds in this order.
std::vector<WiringFault> expectFaults(const core::Setup& setup, const std::vector<Kind>& wanted) {
  auto faults = wiringFaults(setup);
  EXPECT_EQ(kinds(faults), wanted) << texts(faults);
  faults.resize(std::max(faults.size(), wanted.size()));
  return faults;
}

TEST(WiringRules, NothingIsWrongWithAShuntThatLiesAsPlannedEitherWayRound) {
  auto setup = wired();
  expectFaults(setup, {});
  std::swap(setup.shunts[0].jumpers[0].to, setup.shunts[0].jumpers[1].to);
  expectFaults(setup, {});
  for (Jumper& jumper : setup.shunts[0].jumpers) std::swap(jumper.from, jumper.to);
  expectFaults(setup, {});
}

TEST(WiringRules, UsualPinsAndJumpersHaveNoFaultInAnyTemplate) {
  for (const BridgeTemplate& shape : allTemplates())
    for (const unsigned variant : {0U, 1U, 6U}) {
      SCOPED_TRACE(std::string(shape.name));
      core::Setup setup = test::withEffects(shape.type, variant);
      setup.sequence.clear();  // the shunts of a step would clash where they share a place's pin's neighbour
      setup.wiring = usualWiring(setup);
      for (std::size_t k = 0; k < setup.shunts.size(); ++k) {
        const auto jumpers = jumpersFor(setup, k);
        ASSERT_TRUE(jumpers) << jumpers.error().text();
        EXPECT_EQ(jumpers->size(), 2U);
        setup.shunts[k].jumpers = *jumpers;
      }
      expectFaults(setup, {});
    }
}

TEST(WiringRules, AsksNothingOfAShuntInsideTheInstrument) {
  auto setup = wired();
  setup.wiring = {};
  setup.shunts[0].jumpers.clear();
  EXPECT_TRUE(isSwitchedInside(setup, setup.shunts[0]));
  expectFaults(setup, {});
}

TEST(WiringRules, TellsAShortOfTheExcitation) {
  auto setup = wired();
  setup.shunts[0].jumpers.push_back({{"J1", "A"}, {"J1", "C"}});
  const auto faults = expectFaults(setup, {Kind::ExcitationShort});
  EXPECT_THAT(faults[0].what, HasSubstr("P+ and P-"));
  EXPECT_EQ(faults[0].severity, WiringSeverity::Error);
  EXPECT_EQ(faults[0].shunt, 0U);
}

TEST(WiringRules, TellsAShortThroughOtherPinsAndThroughLeads) {
  auto setup = wired();
  setup.shunts[0].jumpers.push_back({{"J1", "A"}, {"J1", "B"}});
  setup.shunts[0].jumpers.push_back({{"J1", "B"}, {"J1", "C"}});
  expectFaults(setup, {Kind::ExcitationShort});

  setup = wired();  // the corner behind the lead of P+
  setup.wiring.pins.push_back({{"J4", "1"}, Node::Arm1Begin});
  setup.shunts[0].jumpers.push_back({{"J4", "1"}, {"J1", "C"}});
  expectFaults(setup, {Kind::ExcitationShort});

  setup = wired();  // P+ on the terminal S-, P- on the corner behind it: only the lead of S- is between
  setup.wiring.pins.push_back({{"J4", "1"}, Node::Arm1End});
  setup.shunts[0].jumpers.push_back({{"J1", "A"}, {"J1", "E"}});
  setup.shunts[0].jumpers.push_back({{"J4", "1"}, {"J1", "C"}});
  const auto faults = wiringFaults(setup);
  EXPECT_EQ(faults[0].kind, Kind::ExcitationShort) << texts(faults);
}

TEST(WiringRules, TellsJoinedPlacesWithWhatItDoes) {
  auto setup = wired();
  setup.shunts[0].jumpers.push_back({{"J1", "A"}, {"J1", "E"}});
  auto faults = expectFaults(setup, {Kind::NodesJoined});
  EXPECT_THAT(faults[0].what, HasSubstr("P+ and S-, which shorts arm 1"));
  // A lead alone between them: no arm is shorted.
  setup = wired();
  setup.wiring.pins.push_back({{"J4", "1"}, Node::Arm1End});
  setup.shunts[0].jumpers.push_back({{"J4", "1"}, {"J1", "E"}});
  faults = expectFaults(setup, {Kind::NodesJoined});
  EXPECT_THAT(faults[0].what, HasSubstr("bridges a lead"));
}

TEST(WiringRules, TellsAJumperToTheWrongPlace) {
  auto setup = wired();
  setup.shunts[0].jumpers[1].to = {"J1", "A"};
  const auto faults = expectFaults(setup, {Kind::WrongPlace});
  EXPECT_THAT(faults[0].what, HasSubstr("between S- and P+; the plan wants it between S- and P-"));
  EXPECT_THAT(faults[0].what, HasSubstr("J1-A (P+)"));
  EXPECT_THAT(faults[0].mend, HasSubstr("J3-1 (R1 end 2) to J1-C (P-)"));
}

TEST(WiringRules, APlaceBehindALeadIsAnotherPlace) {
  auto setup = wired();
  setup.wiring.pins.push_back({{"J4", "1"}, Node::Arm1End});
  setup.shunts[0].jumpers[0].to = {"J4", "1"};
  expectFaults(setup, {Kind::WrongPlace});
  setup.shunts[0].a = Node::Arm2Begin;  // the same point as the end of arm 1, joined without a lead
  expectFaults(setup, {});
}

TEST(WiringRules, TellsAShuntThatHangsOnOneEnd) {
  auto setup = wired();
  setup.shunts[0].jumpers.pop_back();
  auto faults = expectFaults(setup, {Kind::HangingEnd});
  EXPECT_THAT(faults[0].what, HasSubstr("R1 end 2 (J3-1)"));
  EXPECT_THAT(faults[0].what, HasSubstr("hangs on one end"));
  setup.shunts[0].jumpers.clear();  // its resistor has pins, so it is to be wired
  expectFaults(setup, {Kind::HangingEnd, Kind::HangingEnd});
}

TEST(WiringRules, TellsAPinWithTwoFunctions) {
  auto setup = wired();
  setup.wiring.pins.push_back({{"J1", "E"}, Node::SPlus});
  auto faults = wiringFaults(setup);
  ASSERT_FALSE(faults.empty());
  EXPECT_EQ(faults[0].kind, Kind::PinUsedTwice) << texts(faults);
  EXPECT_EQ(faults[0].severity, WiringSeverity::Error);
  EXPECT_THAT(faults[0].what, HasSubstr("J1-E stands in the list twice, as S- and as S+"));
  setup.wiring.pins.back().use = Node::SMinus;
  faults = expectFaults(setup, {Kind::PinUsedTwice});
  EXPECT_EQ(faults[0].severity, WiringSeverity::Warning);
}

TEST(WiringRules, TellsPinsThatAreNotThereOrLeadNowhere) {
  auto setup = wired();
  setup.shunts[0].jumpers[1].to = {"J9", "X"};
  auto faults = expectFaults(setup, {Kind::UnknownPin, Kind::HangingEnd});
  EXPECT_THAT(faults[0].what, HasSubstr("R1: jumper 2 goes to pin J9-X, which is not in the list"));
  setup.shunts[0].jumpers[1].to = {"J1", "B"};
  faults = expectFaults(setup, {Kind::UnusedPin, Kind::HangingEnd});
  EXPECT_THAT(faults[0].what, HasSubstr("J1-B, which leads nowhere"));
  setup.wiring.pins[1].name = {"J4", "1"};  // with a second jumper it is a tie point
  setup.wiring.pins.insert(setup.wiring.pins.begin() + 1, Pin{{"J1", "B"}, std::monostate{}});
  setup.shunts[0].jumpers[1].to = {"J4", "1"};
  setup.shunts[0].jumpers.push_back({{"J4", "1"}, {"J1", "C"}});
  expectFaults(setup, {});
  setup.shunts[0].jumpers.push_back({{"J1", "C"}, {"J1", "C"}});
  expectFaults(setup, {Kind::UnusedPin});
}

TEST(WiringRules, ASensePinLeadsNowhereWithoutSenseLeads) {
  auto setup = wired();
  setup.wiring.pins.push_back({{"J4", "1"}, Node::SensePlus});
  setup.shunts[0].jumpers[1].to = {"J4", "1"};
  expectFaults(setup, {Kind::UnusedPin, Kind::HangingEnd});
  setup.bridge.sixWire = true;
  expectFaults(setup, {Kind::WrongPlace});
}

TEST(WiringRules, TellsPlacesAndEndsWithoutAPin) {
  auto setup = wired();
  setup.wiring.pins.erase(setup.wiring.pins.begin() + 2);  // P-
  const auto faults = expectFaults(setup, {Kind::UnknownPin, Kind::MissingPin});
  EXPECT_EQ(faults[1].what, "R1: P- has no pin");
  EXPECT_FALSE(jumpersFor(setup, 0));
  setup = wired();
  setup.wiring.pins.pop_back();  // end 2
  EXPECT_EQ(jumpersFor(setup, 0).error().what, "R1 end 2 has no pin");
}

TEST(WiringRules, TellsJumpersThatClashInOneStep) {
  auto setup = wired();
  setup.shunts[0].part.id = "S-104";
  setup.shunts.push_back(setup.shunts[0]);  // the same resistor over arm 1
  setup.shunts[1].name = "R2";
  setup.shunts[1].a = Node::PPlus;
  setup.shunts[1].b = Node::SMinus;
  setup.wiring.pins[5].use = ResistorEnd{"S-104", 1};
  setup.wiring.pins[6].use = ResistorEnd{"S-104", 2};
  setup.shunts[1].jumpers = {{{"J2", "1"}, {"J1", "A"}}, {{"J3", "1"}, {"J1", "E"}}};
  expectFaults(setup, {});
  setup.sequence.push_back({"both", {0, 1}});
  const auto faults = expectFaults(setup, {Kind::ExcitationShort});
  EXPECT_FALSE(faults[0].shunt);
  EXPECT_THAT(faults[0].what, HasSubstr("Laid together, the jumpers of R1 and R2 short the excitation"));
}

TEST(WiringRules, WarnsOfNeighboursThatWouldShortTheExcitationOrAnArm) {
  auto setup = wired();
  setup.wiring.pins.erase(setup.wiring.pins.begin() + 1);  // what kept P+ and P- apart
  auto faults = expectFaults(setup, {Kind::NeighbourHazard});
  EXPECT_EQ(faults[0].severity, WiringSeverity::Warning);
  EXPECT_THAT(faults[0].what, HasSubstr("J1-A (P+) and J1-C (P-) would short the excitation"));
  EXPECT_EQ(faults[0].pins, (std::vector<PinName>{{"J1", "A"}, {"J1", "C"}}));
  setup = wired();
  setup.wiring.pins.erase(setup.wiring.pins.begin() + 3);
  faults = expectFaults(setup, {Kind::NeighbourHazard});
  EXPECT_THAT(faults[0].what, HasSubstr("J1-C (P-) and J1-E (S-) would short arm 2"));
}

TEST(WiringRules, WarnsOfNeighboursThatMatterOnlyWhenAShuntIsLaid) {
  auto setup = wired();
  setup.wiring.pins[1].use = ResistorEnd{"R1", 2};  // next to P+ and P-; laid to P-
  setup.wiring.pins.pop_back();
  setup.shunts[0].jumpers[1].from = {"J1", "B"};
  auto faults = expectFaults(setup, {Kind::NeighbourHazard, Kind::NeighbourHazard});
  EXPECT_THAT(faults[0].what, HasSubstr("J1-A (P+) and J1-B (R1 end 2) would short the excitation while R1"));
  // Bridged to the pin that it is laid to anyway, the shunt stays closed without that jumper.
  EXPECT_THAT(faults[1].what, HasSubstr("would keep R1 closed when jumper 2 of it is pulled"));
}

TEST(WiringRules, WarnsOfBothEndsOfAResistorSideBySide) {
  auto setup = wired();
  setup.wiring.pins[6].name = {"J2", "2"};
  setup.shunts[0].jumpers[1].from = {"J2", "2"};
  const auto faults = expectFaults(setup, {Kind::NeighbourHazard});
  EXPECT_THAT(faults[0].what, HasSubstr("would short arm 2 while R1 is laid"));
}

TEST(WiringRules, UsualWiringWithoutShuntsIsTheTerminals) {
  const auto setup = test::equalArms(BridgeType::FullBending, 350.0_ohm);
  std::vector<PinUse> uses;
  for (const Pin& pin : usualWiring(setup).pins)
    if (pin.use != PinUse(std::monostate{})) uses.push_back(pin.use);
  EXPECT_EQ(uses, (std::vector<PinUse>{Node::PPlus, Node::PMinus, Node::SPlus, Node::SMinus}));
}

TEST(WiringRules, EveryFaultHasANameAndAKeyOfItsOwn) {
  std::vector<std::string_view> words;
  for (std::size_t k = 0; k < wiringFaultKindCount; ++k) {
    words.push_back(wiringFaultName(static_cast<Kind>(k)));
    words.push_back(wiringFaultKey(static_cast<Kind>(k)));
    EXPECT_FALSE(words.back().empty());
  }
  std::sort(words.begin(), words.end());
  EXPECT_EQ(std::adjacent_find(words.begin(), words.end()), words.end());
}

}  // namespace wiring_rules_test
