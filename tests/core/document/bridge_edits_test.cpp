// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/document/bridge_edits.h"

#include <gtest/gtest.h>

#include "core/circuit/hookup.h"
#include "core/document/edits.h"
#include "core/plan/prediction.h"
#include "tests/support/bridges.h"

namespace core {
namespace {

using sample::channelOf;

/// Four unlike arms, a leak, statements about two of them.
Channel unlikeArms() {
  Channel channel = channelOf(BridgeType::FullBending);
  channel.setup.bridge.arms = {Resistance(351), Resistance(352), Resistance(353), Resistance(354)};
  channel.setup.bridge.leaks[0].across = Resistance(5e6);
  channel.setup.uncertainties.stated[{InputKind::Arm, 0}] = {};
  return channel;
}

TEST(BridgeEdits, FirstShuntSimulatesAboutAThousand) {
  // Derived: R/(Rs F) = 1e-3 with R = 350 ohm and F = 2 gives 175 kohm.
  Channel channel = channelOf(BridgeType::QuarterThreeWire);
  channel = withShuntOverArm(channel, 0);
  EXPECT_DOUBLE_EQ(channel.setup.shunts[0].resistance.base(), 175e3);  // one division of exact numbers
  EXPECT_EQ(channel.setup.shunts[0].a, Node::Arm1Begin);
  EXPECT_EQ(channel.setup.shunts[0].b, Node::Arm1End);
  // The next one is of the plan's last resistor.
  channel.setup.shunts[0].resistance = Resistance(60e3);
  channel = withShuntOverArm(channel, 2);
  EXPECT_EQ(channel.setup.shunts[1].resistance, Resistance(60e3));
  EXPECT_NE(channel.setup.shunts[1].name, channel.setup.shunts[0].name);
}

TEST(BridgeEdits, SenseLeadsComeAsLongAsTheExcitationsAndGoAsAPair) {
  Channel channel = channelOf(BridgeType::FullBending);
  channel = withSenseLeads(channel, true);
  EXPECT_TRUE(channel.setup.bridge.sixWire);
  EXPECT_EQ(resistanceOf(channel.setup.bridge.leads[static_cast<std::size_t>(LeadRole::SenseMinus)]),
            Resistance(2));
  channel = sample::withShunt(channel, "at sense", Node::SensePlus, Node::Arm1End);
  EXPECT_EQ(shuntOnSenseTerminal(channel.setup), 0U);
  channel = withSenseLeads(channel, false);
  EXPECT_FALSE(channel.setup.bridge.sixWire);
  EXPECT_EQ(resistanceOf(channel.setup.bridge.leads[static_cast<std::size_t>(LeadRole::SensePlus)]),
            Resistance(0));
  const Channel quarter = channelOf(BridgeType::QuarterThreeWire);
  EXPECT_EQ(withSenseLeads(quarter, true), quarter);  // has none to offer
  EXPECT_FALSE(shuntOnSenseTerminal(quarter.setup));
}

TEST(BridgeEdits, ExchangedArmsTakeLeaksAndStatementsWithThem) {
  const Channel before = unlikeArms();
  const Channel after = withArmsExchanged(before, 0, 2);
  EXPECT_EQ(after.setup.bridge.arms[0], Resistance(353));
  EXPECT_EQ(after.setup.bridge.arms[2], Resistance(351));
  EXPECT_FALSE(after.setup.bridge.leaks[0].across);
  EXPECT_EQ(after.setup.bridge.leaks[2].across, Resistance(5e6));
  EXPECT_EQ(after.setup.uncertainties.stated.count({InputKind::Arm, 2}), 1U);
  EXPECT_EQ(after.setup.uncertainties.stated.count({InputKind::Arm, 0}), 0U);
  EXPECT_EQ(withArmsExchanged(after, 0, 2), before);
  EXPECT_EQ(withArmsExchanged(before, 1, 1), before);
}

TEST(BridgeEdits, MovedLeakIsAtTheOtherArmAlone) {
  Channel channel = unlikeArms();
  channel.setup.bridge.leaks[0].toStructure = Resistance(2e6);
  channel.setup.bridge.leaks[0].place = 0.25;
  const Channel over = withLeakMoved(channel, false, 0, 3);
  EXPECT_FALSE(over.setup.bridge.leaks[0].across);
  EXPECT_EQ(over.setup.bridge.leaks[0].toStructure, Resistance(2e6));
  EXPECT_EQ(over.setup.bridge.leaks[3].across, Resistance(5e6));
  const Channel structure = withLeakMoved(channel, true, 0, 3);
  EXPECT_EQ(structure.setup.bridge.leaks[3].place, 0.25);
  EXPECT_EQ(structure.setup.bridge.leaks[3].toStructure, Resistance(2e6));
  EXPECT_EQ(structure.setup.bridge.leaks[0].across, Resistance(5e6));
}

TEST(BridgeEdits, ShuntAcrossTerminalsIsUnderTheArmBehindItsLeads) {
  const Bridge bridge = channelOf(BridgeType::FullBending).setup.bridge;
  const auto under = [&](Node a, Node b) { return armUnder(bridge, {"R", Resistance(1e5), a, b, {}}); };
  EXPECT_EQ(under(Node::Arm2Begin, Node::Arm2End), 1U);
  EXPECT_EQ(under(Node::PPlus, Node::SMinus), 0U);     // arm 1 runs from P+ to S-
  EXPECT_EQ(under(Node::SPlus, Node::PMinus), 2U);     // arm 3 runs from P- to S+
  EXPECT_EQ(under(Node::PPlus, Node::Arm4Begin), 3U);  // one lead between
  EXPECT_FALSE(under(Node::SPlus, Node::SMinus));      // over two arms
}

TEST(BridgeEdits, DuplicateTakesTheNextFreeArmAndAUniqueName) {
  Channel channel = channelOf(BridgeType::FullBending);
  channel = sample::withShunt(channel, "R1", Node::Arm1Begin, Node::Arm1End);
  channel.setup.shunts[0].part.id = "S-1";
  for (int copy = 0; copy < 4; ++copy) channel = withShuntsDuplicated(channel, {0});
  const auto& shunts = channel.setup.shunts;
  EXPECT_EQ(shunts[1].a, Node::Arm2Begin);
  EXPECT_EQ(shunts[2].a, Node::Arm3Begin);
  EXPECT_EQ(shunts[3].b, Node::Arm4End);
  EXPECT_EQ(shunts[4].a, Node::Arm1Begin);  // no arm is free any more
  for (std::size_t k = 1; k < shunts.size(); ++k) {
    EXPECT_EQ(shunts[k].part.id, "S-1");
    for (std::size_t other = 0; other < k; ++other) EXPECT_NE(shunts[k].name, shunts[other].name);
  }
}

TEST(BridgeEdits, DuplicateOfWhatLiesOverNoArmStaysThere) {
  Channel channel = channelOf(BridgeType::FullBending);
  channel = sample::withShunt(channel, "R1", Node::SPlus, Node::SMinus);
  channel = withShuntsDuplicated(channel, {0});
  EXPECT_EQ(channel.setup.shunts[1].a, Node::SPlus);
  EXPECT_EQ(channel.setup.shunts[1].b, Node::SMinus);
}

TEST(BridgeEdits, StraightenedIsAsTheTemplateHasIt) {
  Channel channel = unlikeArms();
  channel = sample::withShunt(channel, "R1", Node::SMinus, Node::PPlus);
  channel.setup.bridge.hookup.signalReversed = true;
  channel.setup.bridge.hookup.broken[0] = true;
  const Channel straight = withStraightened(channel, allOf(channel.setup));
  for (const Resistance arm : straight.setup.bridge.arms) EXPECT_EQ(arm, straight.setup.bridge.gauge.nominal);
  EXPECT_TRUE(asTemplateSays(straight.setup.bridge));
  EXPECT_EQ(straight.setup.shunts[0].a, Node::Arm1End);  // each end on the side where it was
  EXPECT_EQ(straight.setup.shunts[0].b, Node::Arm1Begin);
}

TEST(BridgeEdits, StraightenedLeadsGoBackToTheirOwnTerminals) {
  Channel channel = channelOf(BridgeType::FullBending);
  Bridge& bridge = channel.setup.bridge;
  bridge = withExchanged(bridge, {LeadRole::SignalPlus, LeadRole::SignalMinus});
  bridge = withExchanged(bridge, {LeadRole::ExcitationPlus, LeadRole::SignalMinus});
  bridge = withTouching(bridge, {LeadRole::ExcitationPlus, LeadRole::SignalPlus}, true);
  ASSERT_FALSE(asTemplateSays(bridge));
  const Channel one = withStraightened(channel, {.leads = {LeadRole::ExcitationPlus}});
  for (const Wire& wire : wiresOf(one.setup.bridge)) {
    if (wire.role == LeadRole::ExcitationPlus) {
      EXPECT_EQ(wire.from, Node::PPlus);
    }
  }
  EXPECT_TRUE(one.setup.bridge.hookup.touching.empty());
  const Channel all = withStraightened(channel, {.leads = {LeadRole::ExcitationPlus, LeadRole::SignalPlus}});
  EXPECT_TRUE(asTemplateSays(all.setup.bridge));  // of three, the third has only its own place left
}

TEST(BridgeEdits, ExchangeOfTwoArmsChangesTheSignOfTheUnbalance) {
  // Derived: with 351 ohm over 350 ohm one signal corner is at 350/701 or 351/701 of the excitation, the
  // other at 1/2, so that the output is 1/(2 x 701), its sign that of the order.
  Channel channel = channelOf(BridgeType::FullBending);
  channel.setup.bridge.leads = {};
  channel.setup.bridge.arms[0] = Resistance(351);
  const double before = predict(channel.setup).zero->base();
  const double after = predict(withArmsExchanged(channel, 0, 1).setup).zero->base();
  EXPECT_NEAR(std::abs(before), 1.0 / (2 * 701.0), 1e-15);  // a few roundings of numbers near 1e-3
  EXPECT_NEAR(before, -after, 1e-15);
}

}  // namespace
}  // namespace core
