// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/document/wiring_edits.h"

#include <gtest/gtest.h>

namespace core {
namespace {

Channel wired() {
  Channel channel;
  channel.setup.wiring.pins = {{{"J1", "A"}, Node::PPlus}, {{"J1", "B"}, Node::SMinus}, {{"J1", "C"}, {}}};
  Shunt shunt{.name = "R1", .resistance = Resistance(59'900)};
  shunt.jumpers = {{{"J1", "A"}, {"J2", "1"}}, {{"J2", "2"}, {"J1", "B"}}};
  channel.setup.shunts = {shunt, shunt};
  return channel;
}

std::string order(const Channel& channel) {
  std::string names;
  for (const Pin& pin : channel.setup.wiring.pins) names += pin.name.pin;
  return names;
}

Channel withPin(Channel channel, std::size_t index, Pin pin) {
  std::vector<Pin> pins = channel.setup.wiring.pins;
  pins[index] = std::move(pin);
  return withPins(std::move(channel), std::move(pins));
}

TEST(WiringEdits, JumpersOfEveryShuntFollowARenamedPin) {
  const Channel next = withPin(wired(), 1, {{"J1", "b"}, Node::SMinus});
  for (const Shunt& shunt : next.setup.shunts) {
    EXPECT_EQ(shunt.jumpers[1].to, (PinName{"J1", "b"}));
    EXPECT_EQ(shunt.jumpers[0].from, (PinName{"J1", "A"}));
  }
}

TEST(WiringEdits, JumpersFollowPinsThatSwapTheirNames) {
  auto pins = wired().setup.wiring.pins;
  std::swap(pins[0].name, pins[1].name);
  const Channel next = withPins(wired(), pins);
  EXPECT_EQ(next.setup.shunts[0].jumpers[0].from, (PinName{"J1", "B"})) << "still the pin of P+";
  EXPECT_EQ(next.setup.shunts[0].jumpers[1].to, (PinName{"J1", "A"}));
}

TEST(WiringEdits, JumpersStayAtANameThatTwoPinsHad) {
  Channel channel = wired();
  channel.setup.wiring.pins.push_back({{"J1", "B"}, Node::PMinus});
  for (const std::size_t index : {std::size_t{1}, std::size_t{3}}) {
    const Channel next = withPin(channel, index, {{"J1", "D"}, Node::PMinus});
    EXPECT_EQ(next.setup.shunts[0].jumpers[1].to, (PinName{"J1", "B"}));
  }
}

TEST(WiringEdits, AnotherUseOrOneMorePinLeavesTheJumpers) {
  Channel next = withPin(wired(), 1, {{"J1", "B"}, ResistorEnd{"R1", 2}});
  EXPECT_EQ(next.setup.shunts, wired().setup.shunts);
  EXPECT_EQ(next.setup.wiring.pins[1].use, PinUse(ResistorEnd{"R1", 2}));
  auto pins = next.setup.wiring.pins;
  pins.push_back({{"J1", "D"}, {}});
  next = withPins(next, pins);
  EXPECT_EQ(next.setup.wiring.pins.size(), 4U);
  EXPECT_EQ(next.setup.shunts, wired().setup.shunts);
}

TEST(WiringEdits, ARemovedPinTakesItsJumpersWithIt) {
  const Channel next = withPinRemoved(wired(), 0);
  EXPECT_EQ(order(next), "BC");
  ASSERT_EQ(next.setup.shunts[1].jumpers.size(), 1U);
  EXPECT_EQ(next.setup.shunts[1].jumpers[0].to, (PinName{"J1", "B"}));
}

TEST(WiringEdits, ARemovedPinLeavesTheJumpersToItsNamesake) {
  Channel channel = wired();
  channel.setup.wiring.pins.push_back({{"J1", "A"}, Node::PMinus});
  EXPECT_EQ(withPinRemoved(channel, 3).setup.shunts[0].jumpers.size(), 2U);
}

TEST(WiringEdits, PinsMoveBothWays) {
  EXPECT_EQ(order(withPinMoved(wired(), 0, 2)), "BCA");
  EXPECT_EQ(order(withPinMoved(wired(), 2, 0)), "CAB");
  EXPECT_EQ(order(withPinMoved(wired(), 1, 1)), "ABC");
  EXPECT_EQ(order(withPinInserted(wired(), 1, {{"J1", "X"}, {}})), "AXBC");
  EXPECT_EQ(order(withPinInserted(wired(), 3, {{"J1", "X"}, {}})), "ABCX");
}

}  // namespace
}  // namespace core
