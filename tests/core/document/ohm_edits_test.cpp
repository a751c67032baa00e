// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/document/ohm_edits.h"

#include <gtest/gtest.h>

namespace core {
namespace {

const WiringState open{};
const WiringState laid{"R1", 2};
const ResistorEnd end{"R1", 1};

TEST(OhmEdits, AReadingTakesThePlaceOfTheOneBetweenTheSamePointsInTheSameState) {
  Channel channel = withOhmReading({}, {open, Node::PPlus, Node::SMinus, 350.0_ohm});
  channel = withOhmReading(channel, {open, Node::SMinus, Node::PPlus, 352.0_ohm});
  EXPECT_EQ(channel.ohmReadings, (std::vector<OhmReading>{{open, Node::SMinus, Node::PPlus, 352.0_ohm}}))
      << "it does not matter which tip is held to which point";
}

TEST(OhmEdits, ReadingsInOtherStatesAndBetweenOtherPointsStay) {
  Channel channel = withOhmReading({}, {open, Node::PPlus, Node::SMinus, 350.0_ohm});
  channel = withOhmReading(channel, {laid, Node::PPlus, Node::SMinus, 348.0_ohm});
  channel = withOhmReading(channel, {{"R1", 1}, Node::PPlus, Node::SMinus, 350.0_ohm});
  channel = withOhmReading(channel, {open, Node::PPlus, end, {}});
  ASSERT_EQ(channel.ohmReadings.size(), 4u);
  channel = withoutOhmReading(channel, laid, Node::SMinus, Node::PPlus);
  ASSERT_EQ(channel.ohmReadings.size(), 3u);
  for (const OhmReading& reading : channel.ohmReadings) EXPECT_NE(reading.state, laid);
  EXPECT_EQ(withoutOhmReading(channel, laid, Node::SMinus, Node::PPlus), channel) << "there was none";
}

TEST(OhmEdits, AnOpenIsAReadingToo) {
  const Channel channel = withOhmReading({}, {open, Node::PPlus, end, std::nullopt});
  ASSERT_EQ(channel.ohmReadings.size(), 1u);
  EXPECT_FALSE(channel.ohmReadings[0].ohm);
}

TEST(OhmEdits, AllReadingsCanBeTakenAwayAtOnce) {
  const Channel channel = withOhmReading({}, {laid, Node::PPlus, end, 0.1_ohm});
  EXPECT_EQ(withoutOhmReadings(channel), Channel{});
}

}  // namespace
}  // namespace core
