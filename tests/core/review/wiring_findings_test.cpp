// SPDX-License-Identifier: GPL-3.0-or-later
// Findings about pins, about numbers that cannot be, and about plans that check nothing.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <limits>

#include "core/document/edits.h"
#include "core/review/review.h"
#include "core/wiring/wiring_rules.h"
#include "tests/support/setups.h"
#include "tests/support/two_sided.h"

namespace core {
namespace wiring_findings_test {

using testing::HasSubstr;

constexpr Date today{std::chrono::year(2026), std::chrono::May, std::chrono::day(11)};

std::vector<Finding> found(FindingKind kind, const Channel& channel, const Stock& stock = {}) {
  std::vector<Finding> chosen;
  for (Finding& finding : review(channel, evaluate(channel), stock, today))
    if (finding.kind == kind) chosen.push_back(std::move(finding));
  return chosen;
}

/// One shunt over arm 2 of a full bridge, on pins, its jumpers worked out, and a sequence that closes it.
Channel wired() {
  Channel channel;
  channel.setup = test::withShunt(test::equalArms(BridgeType::FullBending, 350.0_ohm), 100.0_kohm,
                                  Node::Arm2Begin, Node::Arm2End);
  channel.setup.wiring = usualWiring(channel.setup);
  channel.setup.shunts[0].jumpers = *jumpersFor(channel.setup, 0);
  return sample::withTwoSidedSequence(channel, 2.0_s);
}

PinName pinOf(const Channel& channel, Node node) {
  for (const Pin& pin : channel.setup.wiring.pins)
    if (const auto* at = std::get_if<Node>(&pin.use); at && pointOf(channel.setup.bridge, *at) == node)
      return pin.name;
  return {};
}

TEST(WiringFindings, SoundWiringIsNotMentioned) { EXPECT_TRUE(found(FindingKind::Wiring, wired()).empty()); }

TEST(WiringFindings, AJumperThatJoinsPlacesIsAFaultThatWorkingOutMends) {
  Channel channel = wired();
  const auto& places = channel.setup.shunts[0];
  channel.setup.shunts[0].jumpers[0].from = pinOf(channel, pointOf(channel.setup.bridge, places.a));
  channel.setup.shunts[0].jumpers[0].to = pinOf(channel, pointOf(channel.setup.bridge, places.b));
  const auto faults = found(FindingKind::Wiring, channel);
  ASSERT_FALSE(faults.empty());
  EXPECT_EQ(faults[0].severity, Severity::Fault);
  EXPECT_EQ(faults[0].shunt, 0u);
  ASSERT_EQ(faults[0].mends.size(), 1u);
  EXPECT_TRUE(found(FindingKind::Wiring, faults[0].mends[0].apply(channel)).empty());
}

TEST(WiringFindings, AnUnknownPinIsNamed) {
  Channel channel = wired();
  channel.setup.shunts[0].jumpers[1].to = {"J9", "Z"};
  const auto faults = found(FindingKind::Wiring, channel);
  ASSERT_FALSE(faults.empty());
  EXPECT_THAT(faults[0].what, HasSubstr("J9-Z"));
}

TEST(ValueFindings, NumbersThatCannotBeAreFaultsWhereTheyAre) {
  const auto impossible = [](const auto& spoil) {
    Channel channel = wired();
    spoil(channel.setup);
    const auto faults = found(FindingKind::ImpossibleValue, channel);
    return faults.size() == 1 ? faults[0].what : std::to_string(faults.size()) + " findings";
  };
  const double nan = std::numeric_limits<double>::quiet_NaN();
  EXPECT_THAT(impossible([](auto& s) { s.shunts[0].resistance = 0.0_ohm; }), HasSubstr("resistance"));
  EXPECT_THAT(impossible([](auto& s) { s.shunts[0].part.rating = Power(-1); }), HasSubstr("rating"));
  EXPECT_THAT(impossible([](auto& s) { s.shunts[0].wires = -1.0_ohm; }), HasSubstr("wires"));
  EXPECT_THAT(impossible([](auto& s) { s.sequence[1].settle = -1.0_s; }), HasSubstr("settles"));
  EXPECT_THAT(impossible([](auto& s) { s.sequence[1].hold = 0.0_s; }), HasSubstr("held"));
  EXPECT_THAT(impossible([](auto& s) { s.limits.relative = -1; }), HasSubstr("limit"));
  EXPECT_THAT(impossible([nan](auto& s) { s.limits.least = Reading(nan); }), HasSubstr("limit"));
  EXPECT_THAT(impossible([](auto& s) { s.limits.merits[MeritKind::SpanRatio] = -0.01; }),
              HasSubstr("limit of span error"));
  EXPECT_THAT(impossible([nan](auto& s) { s.limits.merits[MeritKind::Symmetry] = nan; }), HasSubstr("limit"));
  EXPECT_EQ(impossible([](auto& s) { s.limits.merits[MeritKind::Symmetry] = 0; }), "0 findings");
  EXPECT_THAT(impossible([](auto& s) { s.instrument.range = Output(0); }), HasSubstr("range"));
  EXPECT_EQ(impossible([](auto&) {}), "0 findings");
}

TEST(PlanFindings, APlanThatClosesNothingIsAFault) {
  Channel empty = wired();
  empty.setup.sequence.clear();
  ASSERT_EQ(found(FindingKind::NothingToClose, empty).size(), 1u);
  EXPECT_EQ(found(FindingKind::NothingToClose, empty)[0].what, "The sequence has no steps.");
  Channel idle = wired();
  idle.setup.sequence.resize(1);
  ASSERT_EQ(found(FindingKind::NothingToClose, idle).size(), 1u);
  EXPECT_TRUE(found(FindingKind::NothingToClose, wired()).empty());
}

TEST(PlanFindings, APartThatTheStockDoesNotHoldIsNoted) {
  Channel channel = wired();
  channel.setup.shunts[0].part.id = "AF-0999";
  Stock stock;
  EXPECT_TRUE(found(FindingKind::PartChanged, channel, stock).empty());  // nobody keeps a stock
  stock.resistors.push_back({.id = "AF-0101", .nominal = 100.0_kohm});
  const auto notes = found(FindingKind::PartChanged, channel, stock);
  ASSERT_EQ(notes.size(), 1u);
  EXPECT_EQ(notes[0].severity, Severity::Note);
}

}  // namespace wiring_findings_test
}  // namespace core
