// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/campaign/numbering.h"

#include <gtest/gtest.h>

#include "tests/support/sample_channel.h"

namespace core {
namespace {

using Names = std::vector<std::string>;

Document with(std::initializer_list<std::string> names) {
  Document document;
  for (const std::string& name : names) {
    Channel channel;
    channel.name = name;
    document.channels.push_back(std::make_shared<const Channel>(channel));
  }
  return document;
}

PinName pin(std::string connector, std::string name) { return {std::move(connector), std::move(name)}; }

/// The first copy of a channel called TP-09 with these pins.
std::vector<Pin> pinsOfCopy(std::vector<Pin> pins) {
  Channel channel;
  channel.name = "TP-09";
  channel.setup.wiring.pins = std::move(pins);
  return withChannelCopies(sample::documentOf({channel}), 0, 1).channels[1]->setup.wiring.pins;
}

TEST(NamesAfter, TheLastNumberCountsUpWithItsDigits) {
  const Document document = with({"TP-09"});
  EXPECT_EQ(namesAfter(document, "TP-09", 2), (Names{"TP-10", "TP-11"}));
  EXPECT_EQ(namesAfter(document, "LC-1", 2), (Names{"LC-2", "LC-3"}));
  EXPECT_EQ(namesAfter(document, "A2 left 08 mm", 3),
            (Names{"A2 left 09 mm", "A2 left 10 mm", "A2 left 11 mm"}));
  EXPECT_EQ(namesAfter(document, "TP-99", 1), (Names{"TP-100"}));
}

TEST(NamesAfter, ANameWithoutANumberGetsOne) {
  EXPECT_EQ(namesAfter(with({}), "spar", 2), (Names{"spar-2", "spar-3"}));
  EXPECT_EQ(namesAfter(with({}), "", 1), (Names{"-2"}));
}

TEST(NamesAfter, NamesThatAreTakenArePassedOver) {
  EXPECT_EQ(namesAfter(with({"TP-1", "TP-2", "TP-4"}), "TP-1", 3), (Names{"TP-3", "TP-5", "TP-6"}));
}

TEST(NamesAfter, ANumberOfManyDigitsStaysExact) {
  // 2^64 and more: only the last digits count, none is lost before them.
  EXPECT_EQ(namesAfter(with({}), "SN99990000000000000000199", 1), (Names{"SN99990000000000000000200"}));
}

TEST(ChannelCopies, StandBehindTheirOriginalWithoutItsChecks) {
  Channel channel = sample::withCheckReading(sample::nineStepChannel(), 1.0);
  channel.group = "left spar";
  channel.note = "on the web";
  Channel other;
  other.name = "TP-03";
  const Document document = withChannelCopies(sample::documentOf({channel, other}), 0, 2);
  ASSERT_EQ(document.channels.size(), 4u);
  EXPECT_EQ(document.channels[1]->name, "TP-02");
  EXPECT_EQ(document.channels[2]->name, "TP-04");
  EXPECT_EQ(document.channels[3]->name, "TP-03");
  EXPECT_EQ(document.channels[1]->setup, channel.setup);
  EXPECT_TRUE(document.channels[1]->checks.empty());
  EXPECT_EQ(document.channels[1]->group, "left spar");
  EXPECT_EQ(document.channels[1]->note, "on the web");
  EXPECT_EQ(document.channels[0]->checks.size(), 1u);
}

TEST(ChannelCopies, ARecordingColumnCountsUpWithTheName) {
  Channel channel;
  channel.name = "TP-09";
  channel.recordingColumn = "AI 009";
  const Document document = withChannelCopies(sample::documentOf({channel}), 0, 2);
  EXPECT_EQ(document.channels[1]->recordingColumn, "AI 010");
  EXPECT_EQ(document.channels[2]->recordingColumn, "AI 011");
}

TEST(ChannelCopies, AColumnThatDoesNotCountIsNotSharedByTwoChannels) {
  Channel channel;
  channel.name = "TP-09";
  channel.recordingColumn = "AI 4";
  EXPECT_EQ(withChannelCopies(sample::documentOf({channel}), 0, 1).channels[1]->recordingColumn, "");
}

TEST(ChannelCopies, ConnectorsCountUpAndJumpersFollow) {
  Channel channel;
  channel.name = "TP-09";
  channel.setup.wiring.pins = {{pin("J9", "A"), Node::Arm1Begin}, {pin("J9", "9"), Node::Arm1End}};
  channel.setup.shunts.push_back({"R1", 59.0_kohm, Node::Arm1Begin, Node::Arm1End});
  channel.setup.shunts[0].jumpers = {{pin("J9", "A"), pin("J9", "9")}};
  const core::Setup setup = withChannelCopies(sample::documentOf({channel}), 0, 1).channels[1]->setup;
  EXPECT_EQ(setup.wiring.pins[0].name, pin("J10", "A"));
  EXPECT_EQ(setup.wiring.pins[1].name, pin("J10", "9"));
  EXPECT_EQ(setup.shunts[0].jumpers[0], (Jumper{pin("J10", "A"), pin("J10", "9")}));
}

TEST(ChannelCopies, PinsCountUpWhereAllEndWithTheNumber) {
  const auto pins = pinsOfCopy({{pin("X", "A9"), {}}, {pin("X", "B9"), {}}});
  EXPECT_EQ(pins[0].name, pin("X", "A10"));
  EXPECT_EQ(pins[1].name, pin("X", "B10"));
  // 8 and 9 are pins of one plug and no number of the channel.
  EXPECT_EQ(pinsOfCopy({{pin("X", "8"), {}}, {pin("X", "9"), {}}})[1].name, pin("X", "9"));
}

TEST(ChannelCopies, AConnectorNeverCountsUpIntoOneThatStays) {
  const auto pins = pinsOfCopy({{pin("J9", "A"), {}}, {pin("J10", "A"), {}}});
  EXPECT_EQ(pins[0].name, pin("J9", "A"));
  EXPECT_EQ(pins[1].name, pin("J10", "A"));
}

}  // namespace
}  // namespace core
