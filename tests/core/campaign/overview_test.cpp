// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/campaign/overview.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "tests/support/sample_channel.h"

namespace core {
namespace {

using namespace std::chrono_literals;
using Positions = std::vector<std::size_t>;

constexpr Date today = 2031y / 5 / 4;

OverviewRow rowOf(const Channel& channel) {
  return overviewRow(sample::documentOf({channel}), 0, evaluate(channel), today);
}

std::vector<OverviewRow> rowsOf(const Document& document) {
  std::vector<OverviewRow> rows;
  for (std::size_t k = 0; k < document.channels.size(); ++k)
    rows.push_back(overviewRow(document, k, evaluate(*document.channels[k]), today));
  return rows;
}

Channel named(std::string name, double gain, std::string group = "") {
  Channel channel = sample::withCheckReading(sample::nineStepChannel(), gain);
  channel.name = std::move(name);
  channel.group = std::move(group);
  return channel;
}

Channel unchecked(std::string name) {
  Channel channel = sample::nineStepChannel();
  channel.name = std::move(name);
  return channel;
}

Positions sorted(const Document& document, OverviewOrder order, bool descending = false) {
  const std::vector<OverviewRow> rows = rowsOf(document);
  Positions positions = filteredRows(document, rows, {});
  sortRows(document, rows, order, descending, positions);
  return positions;
}

TEST(OverviewRow, TheWorstStepIsTheOneFarthestBeyondItsLimit) {
  // Derived: all readings are 1.03 times what is expected and the limit is 1 % of that: every step is off by
  // three limits. One reading is moved to 1.05: five limits.
  Channel channel = sample::withCheckReading(sample::nineStepChannel(), 1.03);
  Measured moved = *channel.checks[0].readings[2];
  moved.mean = 1.05 / 1.03 * moved.mean;
  channel = withReading(channel, 0, 2, moved);
  const OverviewRow row = rowOf(channel);
  EXPECT_EQ(row.verdict, Verdict::Fail);
  EXPECT_EQ(row.urgency, 0);
  ASSERT_TRUE(row.worst);
  EXPECT_NEAR(*row.worst, 5, 1e-9);  // a few roundings of 1e-16 over a limit of 1e-2
  EXPECT_EQ(row.worstStep, 2u);
}

TEST(OverviewRow, TheGainIsMeasuredOverExpected) {
  const OverviewRow row = rowOf(sample::withCheckReading(sample::nineStepChannel(), 1.004));
  ASSERT_TRUE(row.gain);
  EXPECT_NEAR(row.gain->value, 1.004, 1e-12);  // points on a line: the fit leaves rounding alone
  EXPECT_EQ(row.verdict, Verdict::Pass);
  EXPECT_EQ(row.urgency, urgencyCount - 1);
  EXPECT_TRUE(row.open);
}

TEST(OverviewRow, TheLatestCheckIsTheLastWithAReading) {
  Channel channel = sample::withCheckReading(sample::nineStepChannel(), 1.0);
  channel.checks[0].name = "before";
  channel.checks[0].date = "2031-05-01";
  channel = withCheckAdded(channel, {});
  const OverviewRow row = rowOf(channel);
  EXPECT_EQ(row.latest, "before");
  EXPECT_EQ(row.check, 0u);
  EXPECT_EQ(row.day, 2031y / 5 / 1);
  EXPECT_FALSE(row.comparedTo);
  EXPECT_EQ(row.change, Change::NotCompared);
}

TEST(OverviewRow, TheChangeIsAgainstTheReadingBefore) {
  // Derived: a gain of 1.03 after one of 1 is a change of 3 %, beyond the margin of 1 %.
  Channel channel = sample::withCheckReading(sample::nineStepChannel(), 1.0);
  channel.checks[0].name = "before";
  channel = withCheckAdded(channel, {});  // without a reading: not compared to
  channel = sample::withCheckReading(channel, 1.03);
  channel.setup.limits.relative = 0.1;
  const OverviewRow row = rowOf(channel);
  EXPECT_EQ(row.comparedTo, 0u);
  EXPECT_EQ(row.check, 2u);
  EXPECT_EQ(row.verdict, Verdict::Pass);
  EXPECT_EQ(row.change, Change::Changed);
  ASSERT_TRUE(row.gainChange);
  EXPECT_NEAR(row.gainChange->value, 0.03, 1e-9);  // of two fits through points on lines
  EXPECT_EQ(urgencyName(row.urgency), "changed");
  EXPECT_NE(row.status.find("changed since before"), std::string::npos) << row.status;
}

TEST(OverviewRow, WhatWasNeverCheckedSaysSo) {
  const OverviewRow row = rowOf(unchecked("TP-01"));
  EXPECT_FALSE(row.check);
  EXPECT_EQ(row.latest, "");
  EXPECT_EQ(row.status, "not checked");
  EXPECT_EQ(urgencyName(row.urgency), "not checked");
  EXPECT_FALSE(row.worst);
  EXPECT_FALSE(row.open);
}

TEST(OverviewRow, RemarksCountUntilTheyAreSettled) {
  Channel channel = sample::withCheckReading(sample::nineStepChannel(), 1.0);
  channel.checks[0].remarks = {{{}, "R. Larch", "2031-05-04T10:00:00Z", "why so late?", false},
                               {2, "R. Larch", "2031-05-04T10:00:00Z", "noisy", true}};
  EXPECT_EQ(rowOf(channel).openRemarks, 1u);
}

TEST(OverviewRow, OverdueIsAResistorOrTheInstrument) {
  Channel channel = sample::nineStepChannel();
  EXPECT_FALSE(rowOf(channel).overdue);
  channel.setup.identity.due = today;
  EXPECT_FALSE(rowOf(channel).overdue);
  channel.setup.identity.due = 2031y / 5 / 3;
  EXPECT_TRUE(rowOf(channel).overdue);
  channel.setup.identity.due.reset();
  channel.setup.shunts[0].part = {"AF-0104", 2031y / 5 / 3};
  EXPECT_TRUE(rowOf(channel).overdue);
}

TEST(OverviewTally, EveryChannelIsInOneState) {
  const Document document =
      sample::documentOf({named("TP-01", 1.0), named("TP-02", 1.5), unchecked("TP-03")});
  const OverviewTally tally = tallyOf(rowsOf(document));
  EXPECT_EQ(tally.channels, 3u);
  EXPECT_EQ(tally.pass, 1u);
  EXPECT_EQ(tally.fail, 1u);
  EXPECT_EQ(tally.notChecked, 1u);
  EXPECT_EQ(tally.pass + tally.fail + tally.cannotTell + tally.notJudged + tally.notChecked, tally.channels);
  EXPECT_EQ(tally.open, 2u);
}

TEST(OverviewOrder, WorstFirstGoesByUrgencyThenByShareOfTheLimit) {
  const Document document =
      sample::documentOf({named("TP-01", 1.002), unchecked("TP-02"), named("TP-03", 1.02),
                          named("TP-04", 1.5), named("TP-05", 1)});
  EXPECT_EQ(sorted(document, OverviewOrder::WorstFirst), (Positions{3, 2, 1, 0, 4}));
}

TEST(OverviewOrder, NumbersWithinNamesCountByTheirSize) {
  EXPECT_TRUE(naturallyBefore("TP-2", "tp-10"));
  EXPECT_FALSE(naturallyBefore("TP-10", "tp-2"));
  EXPECT_TRUE(naturallyBefore("TP-010 b", "TP-10 c"));
  EXPECT_TRUE(naturallyBefore("TP", "TP-1"));
  EXPECT_FALSE(naturallyBefore("TP-01", "TP-1"));
  EXPECT_FALSE(naturallyBefore("TP-1", "TP-01"));
  const Document document = sample::documentOf({unchecked("TP-10"), unchecked("TP-9"), unchecked("LC-1")});
  EXPECT_EQ(sorted(document, OverviewOrder::Name), (Positions{2, 1, 0}));
  EXPECT_EQ(sorted(document, OverviewOrder::Name, true), (Positions{0, 1, 2}));
}

TEST(OverviewOrder, WhatHasNoValueStandsAtTheEndEitherWay) {
  const Document document =
      sample::documentOf({unchecked("TP-01"), named("TP-02", 1.2, "b"), named("TP-03", 1.1, "A")});
  EXPECT_EQ(sorted(document, OverviewOrder::Gain), (Positions{2, 1, 0}));
  EXPECT_EQ(sorted(document, OverviewOrder::Gain, true), (Positions{1, 2, 0}));
  EXPECT_EQ(sorted(document, OverviewOrder::Group), (Positions{2, 1, 0}));
  EXPECT_EQ(sorted(document, OverviewOrder::Group, true), (Positions{1, 2, 0}));
}

TEST(OverviewOrder, EveryOrderKeepsEveryRow) {
  const Document document =
      sample::documentOf({unchecked("TP-01"), named("TP-02", 1.2, "b"), named("TP-03", 1.1, "A")});
  for (int order = 0; order <= static_cast<int>(OverviewOrder::Remarks); ++order) {
    Positions positions = sorted(document, static_cast<OverviewOrder>(order), true);
    std::sort(positions.begin(), positions.end());
    EXPECT_EQ(positions, (Positions{0, 1, 2})) << order;
  }
}

TEST(OverviewFilter, AllWordsMustStandSomewhere) {
  const Document document = sample::documentOf(
      {named("TP-01", 1.0, "Größe links"), named("TP-02", 1.5, "left spar"), unchecked("TP-03")});
  const std::vector<OverviewRow> rows = rowsOf(document);
  const auto found = [&](const std::string& text) {
    return filteredRows(document, rows, OverviewFilter{.text = text});
  };
  EXPECT_EQ(found(""), (Positions{0, 1, 2}));
  EXPECT_EQ(found("tp-0"), (Positions{0, 1, 2}));
  EXPECT_EQ(found("  GRÖSSE  "), (Positions{}));
  EXPECT_EQ(found("GRÖ"), (Positions{0}));
  EXPECT_EQ(found("spar fail"), (Positions{1}));
  EXPECT_EQ(found("quarter not checked"), (Positions{2}));
  EXPECT_EQ(found("spar checked"), (Positions{}));
}

TEST(OverviewFilter, ByVerdictStateAndGroup) {
  const Document document =
      sample::documentOf({named("TP-01", 1.0, "a"), named("TP-02", 1.5), unchecked("TP-03")});
  const std::vector<OverviewRow> rows = rowsOf(document);
  const auto found = [&](const OverviewFilter& filter) { return filteredRows(document, rows, filter); };
  EXPECT_EQ(found({.verdict = Verdict::Fail}), (Positions{1}));
  EXPECT_EQ(found({.verdict = Verdict::NotJudged}),
            (Positions{}));  // what was never checked is another thing
  EXPECT_EQ(found({.change = Change::NotCompared}), (Positions{0, 1, 2}));
  EXPECT_EQ(found({.group = ""}), (Positions{1, 2}));
  EXPECT_EQ(found({.group = "a"}), (Positions{0}));
  EXPECT_EQ(found({.unchecked = true}), (Positions{2}));
  EXPECT_EQ(found({.urgency = 0}), (Positions{1}));
  EXPECT_EQ(found({.open = true}), (Positions{0, 1}));
  EXPECT_EQ(found({.remarks = true}), (Positions{}));
  EXPECT_EQ(found({.overdue = true}), (Positions{}));
}

TEST(ChannelGroups, TheNamelessOneIsTheLast) {
  const Document document = sample::documentOf({named("TP-01", 1), named("TP-02", 1, "rib 10"),
                                                named("TP-03", 1, "rib 9"), named("TP-04", 1, "rib 10")});
  const std::vector<ChannelGroup> groups = groupsOf(document);
  ASSERT_EQ(groups.size(), 3u);
  EXPECT_EQ(groups[0].name, "rib 9");
  EXPECT_EQ(groups[1].name, "rib 10");
  EXPECT_EQ(groups[1].channels, (Positions{1, 3}));
  EXPECT_EQ(groups[2].name, "");
  EXPECT_EQ(groups[2].channels, (Positions{0}));
}

}  // namespace
}  // namespace core
