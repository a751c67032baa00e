// SPDX-License-Identifier: GPL-3.0-or-later
// What an ohmmeter reads, and what a bridge between pins does, where leads are not as the template says.
#include <gtest/gtest.h>

#include <cmath>

#include "core/wiring/jumper_hazards.h"
#include "core/wiring/ohm_diagnosis.h"
#include "core/wiring/ohm_network.h"
#include "core/wiring/ohmmeter_sheet.h"
#include "tests/support/digits.h"
#include "tests/support/setups.h"

using namespace core;
using enum LeadRole;

namespace {

constexpr OhmmeterConditions exact{true, 0, Resistance(0), Resistance(1e9)};

core::Setup fullBridge(const Hookup& hookup) {
  core::Setup setup = test::withLeads(test::equalArms(BridgeType::FullBending, 350.0_ohm), 2.0_ohm);
  setup.bridge.hookup = hookup;
  return setup;
}

Hookup broken(LeadRole role) {
  Hookup hookup;
  hookup.broken[static_cast<std::size_t>(role)] = true;
  return hookup;
}

double ohm(const core::Setup& setup, Node from, Node to) {
  const std::vector<OhmPoint> points{from, to};
  const auto result = ohmExpectations(setup, {}, points, exact);
  EXPECT_TRUE(result) << (result ? "" : result.error().text());
  const auto value = result ? result->front().ohm : std::nullopt;
  return value ? value->base() : INFINITY;
}

}  // namespace

TEST(HookupWiring, TheOhmmeterReadsTheBridgeAsItIsConnected) {
  // Derived: over a diagonal 700 and 700 ohm, over an arm 350 and 1050 ohm, and a lead of 2 ohm at either
  // end.
  const double diagonal = 350 + 4, arm = 262.5 + 4;
  EXPECT_DIGITS(ohm(fullBridge({}), Node::PPlus, Node::PMinus), diagonal, 13);
  EXPECT_DIGITS(ohm(fullBridge({.exchanged = {{ExcitationPlus, SignalMinus}}}), Node::PPlus, Node::PMinus),
                arm, 13);
  EXPECT_TRUE(std::isinf(ohm(fullBridge(broken(ExcitationPlus)), Node::PPlus, Node::PMinus)));
  EXPECT_DIGITS(ohm(fullBridge({.touching = {{ExcitationPlus, SignalMinus}}}), Node::PPlus, Node::SMinus), 4,
                13);
  // The source is away, and the ohmmeter knows no sign.
  EXPECT_DIGITS(
      ohm(fullBridge({.signalReversed = true, .excitationReversed = true}), Node::PPlus, Node::PMinus),
      diagonal, 13);
}

TEST(HookupWiring, ABrokenLeadIsNotLookedForAgain) {
  const auto model = OhmModel::make(fullBridge(broken(SignalPlus)), exact);
  ASSERT_TRUE(model);
  EXPECT_EQ(model->leads(), (std::vector{ExcitationPlus, ExcitationMinus, SignalMinus}));
}

TEST(HookupWiring, ReadingsOfABridgeAsItIsConnectedHaveNothingWrong) {
  for (const Hookup& hookup : {broken(SignalPlus), Hookup{.exchanged = {{ExcitationPlus, SignalMinus}}},
                               Hookup{.touching = {{SignalPlus, SignalMinus}}}}) {
    const core::Setup setup = fullBridge(hookup);
    std::vector<OhmReading> readings;
    const auto expected = ohmExpectations(setup, {}, ohmPoints(setup), exact);
    ASSERT_TRUE(expected) << expected.error().text();
    for (const OhmExpectation& e : *expected) readings.push_back({{}, e.from, e.to, e.ohm});
    const auto faults = ohmFaults(setup, readings, exact);
    ASSERT_TRUE(faults) << faults.error().text();
    EXPECT_EQ(faults->front().kind, OhmFaultKind::None) << faults->front().text;
  }
}

TEST(HookupWiring, JoiningTerminalsShortsWhatIsReallyBehindThem) {
  const auto effect = [](const Hookup& hookup, Node a, Node b) {
    return effectOfJoining(fullBridge(hookup).bridge, {{a, b}});
  };
  EXPECT_EQ(effect({}, Node::PPlus, Node::SMinus), "shorts arm 1");
  EXPECT_EQ(effect({.exchanged = {{SignalPlus, SignalMinus}}}, Node::PPlus, Node::SMinus), "shorts arm 4");
  EXPECT_EQ(effect({.touching = {{SignalMinus, SignalPlus}}}, Node::PPlus, Node::SMinus),
            "shorts arms 1 and 4");
}
