// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/polarity/place_words.h"

#include <gtest/gtest.h>

#include <set>

#include "core/polarity/polarity_map.h"
#include "tests/support/setups.h"

// The words are common practice, no source.

namespace {

using namespace core;

Bridge bridgeOf(BridgeType type) {
  Bridge bridge = test::withLeads(test::equalArms(type, 350.0_ohm), 0.5_ohm).bridge;
  bridge.sixWire = true;
  return bridge;
}

TEST(PlaceWords, FullBridge) {
  const Bridge bridge = bridgeOf(BridgeType::FullBending);
  const auto words = [&](Node a, Node b) {
    EXPECT_EQ(placeWords(bridge, a, b), placeWords(bridge, b, a));
    return placeWords(bridge, a, b);
  };
  EXPECT_EQ(words(Node::Arm2Begin, Node::Arm2End), "over arm 2");
  EXPECT_EQ(words(Node::Arm1End, Node::Arm3Begin), "over arm 2") << "the same points by other names";
  EXPECT_EQ(words(Node::PPlus, Node::SMinus), "over arm 1 from the terminals");
  EXPECT_EQ(words(Node::SPlus, Node::PPlus), "over arm 4 from the terminals");
  EXPECT_EQ(words(Node::Arm1Begin, Node::SMinus), "over arm 1 and lead S-");
  EXPECT_EQ(words(Node::SensePlus, Node::SMinus), "over arm 1 and leads S- and sense+");
  EXPECT_EQ(words(Node::SPlus, Node::SMinus), "over the output");
  EXPECT_EQ(words(Node::Arm4Begin, Node::Arm1End), "over the output at the bridge");
  EXPECT_EQ(words(Node::PPlus, Node::PMinus), "over the excitation");
  EXPECT_EQ(words(Node::Arm1Begin, Node::Arm2End), "over the excitation at the bridge");
  EXPECT_EQ(words(Node::SensePlus, Node::SenseMinus),
            "over the excitation, from terminal sense+ to terminal sense-");
  EXPECT_EQ(words(Node::PPlus, Node::Arm1Begin), "over lead P+");
  EXPECT_EQ(words(Node::PPlus, Node::SensePlus), "over leads P+ and sense+");
  EXPECT_EQ(words(Node::Arm1End, Node::Arm2Begin), "both ends at gauge end of lead S-");
}

TEST(PlaceWords, ThreeWireQuarterBridge) {
  const Bridge bridge = bridgeOf(BridgeType::QuarterThreeWire);
  const auto words = [&](Node a, Node b) { return placeWords(bridge, a, b); };
  EXPECT_EQ(words(Node::Arm1Begin, Node::Arm1End), "over arm 1");
  EXPECT_EQ(words(Node::PPlus, Node::SMinus), "over arm 1 from the terminals");
  EXPECT_EQ(words(Node::Arm2Begin, Node::PMinus), "over arm 2") << "the dummy, at the instrument";
  EXPECT_EQ(words(Node::Arm1End, Node::PMinus), "over arm 2 and lead return");
  EXPECT_EQ(words(Node::SMinus, Node::PMinus), "over arm 2 from the terminals");
  EXPECT_EQ(words(Node::PPlus, Node::SPlus), "over arm 4") << "on the terminals, without a lead";
  EXPECT_EQ(words(Node::SMinus, Node::Arm2Begin), "over leads S- and return");
  EXPECT_EQ(words(Node::Arm1Begin, Node::PMinus),
            "over the excitation, from terminal P- to gauge end of lead P+");
}

TEST(PlaceWords, ExchangedLeadsChangeWhatTheTerminalsReach) {
  // With leads P+ and S+ exchanged, terminal P+ is at corner S+: to S- it lies over the bridge's output, to
  // P- over arm 3.
  Bridge bridge = bridgeOf(BridgeType::FullBending);
  bridge.hookup.exchanged.push_back({LeadRole::ExcitationPlus, LeadRole::SignalPlus});
  EXPECT_EQ(placeWords(bridge, Node::PPlus, Node::PMinus), "over arm 3 from the terminals");
  EXPECT_EQ(placeWords(bridge, Node::SPlus, Node::SMinus), "over arm 1 from the terminals");
  EXPECT_EQ(placeWords(bridge, Node::PPlus, Node::SMinus), "from terminal P+ to terminal S-");
}

TEST(PlaceWords, BrokenLeadIsAPlaceToo) {
  Bridge bridge = bridgeOf(BridgeType::FullBending);
  bridge.hookup.broken[static_cast<std::size_t>(LeadRole::SignalPlus)] = true;
  EXPECT_EQ(placeWords(bridge, Node::SPlus, Node::Arm3End), "over lead S+");
}

TEST(PlaceWords, NoTwoPlacesOfABridgeAreCalledAlike) {
  for (const BridgeTemplate& shape : allTemplates()) {
    const Bridge bridge = bridgeOf(shape.type);
    const std::vector<Node> points = pointsOf(bridge);
    std::set<std::string> words;
    for (std::size_t i = 0; i < points.size(); ++i)
      for (std::size_t j = i + 1; j < points.size(); ++j)
        EXPECT_TRUE(words.insert(placeWords(bridge, points[i], points[j])).second)
            << shape.key << ": " << placeWords(bridge, points[i], points[j]);
    for (const std::size_t arm : {0, 1, 2, 3})
      EXPECT_EQ(words.count("over arm " + std::to_string(arm + 1)), 1u) << shape.key;
  }
}

TEST(EndsAt, ArmsOwnEndsWhereTheyLieRightAcrossIt) {
  const Bridge bridge = bridgeOf(BridgeType::FullBending);
  EXPECT_EQ(endsAt(bridge, Node::Arm3Begin, Node::Arm1End), std::pair(Node::Arm2Begin, Node::Arm2End));
  EXPECT_EQ(endsAt(bridge, Node::Arm1End, Node::Arm3Begin), std::pair(Node::Arm2Begin, Node::Arm2End));
  EXPECT_EQ(endsAt(bridge, Node::PPlus, Node::SMinus), std::pair(Node::PPlus, Node::SMinus));
}

TEST(SpanBetween, CountsArmsBeforeLeads) {
  const Bridge bridge = bridgeOf(BridgeType::FullBending);
  EXPECT_EQ(spanBetween(bridge, Node::PPlus, Node::SMinus),
            (Span{{0}, {LeadRole::ExcitationPlus, LeadRole::SignalMinus}}));
  EXPECT_EQ(spanBetween(bridge, Node::PPlus, Node::SensePlus),
            (Span{{}, {LeadRole::ExcitationPlus, LeadRole::SensePlus}}));
  EXPECT_EQ(spanBetween(bridge, Node::SPlus, Node::SMinus).arms.size(), 2u);
  EXPECT_EQ(spanBetween(bridge, Node::Arm1End, Node::Arm2Begin), Span{});
}

}  // namespace
