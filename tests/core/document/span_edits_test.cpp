// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/document/span_edits.h"

#include <gtest/gtest.h>

#include <random>

#include "core/document/edits.h"
#include "core/document/json_reader.h"
#include "core/document/json_writer.h"
#include "tests/support/sample_channel.h"

namespace core {
namespace {

using Kind = SpanPlace::Kind;

Measured span(double begin_s, double end_s, double mean = 1) {
  return {Reading(mean), Reading(0.1), Duration(begin_s), Duration(end_s), {}};
}

/// Three steps, of which the first two are read at 0-1 and 2-3; other levels at 4-5 and 6-7.
Channel channel() {
  Channel made = sample::nineStepChannel();
  made.setup.sequence.resize(3);
  made = withCheckAdded(made, {});
  made = withReading(made, 0, 0, span(0, 1, 10));
  made = withReading(made, 0, 1, span(2, 3, 20));
  made = withSpanAdded(made, 0, span(6, 7, 60));
  return withSpanAdded(made, 0, span(4, 5, 40));
}

const Check& check(const Channel& channel) { return channel.checks[0]; }

TEST(SpanEdits, ListsSpansInTheOrderOfTimeWhereverTheyAreKept) {
  Channel made = withSpanGivenToStep(channel(), 0, {Kind::Other, 1}, 0);
  // The last level is the first step's now, and what that had is no reading.
  const std::vector<SpanPlace> expected{{Kind::Other, 0}, {Kind::Step, 1}, {Kind::Other, 1}, {Kind::Step, 0}};
  EXPECT_EQ(spansOf(check(made)), expected);
  EXPECT_EQ(spanAt(check(made), {Kind::Other, 0}), span(0, 1, 10));
}

TEST(SpanEdits, ReadingsWithoutASpanAreNone) {
  Channel made = withReading(channel(), 0, 2, Measured{Reading(5), {}, {}, {}, {}});
  EXPECT_EQ(spansOf(check(made)).size(), 4u);
  // It gives way to a span, and is not kept among levels that it never was one of.
  made = withSpanGivenToStep(made, 0, {Kind::Other, 0}, 2);
  EXPECT_EQ(*check(made).readings[2], span(4, 5, 40));
  EXPECT_EQ(check(made).otherLevels, std::vector{span(6, 7, 60)});
}

TEST(SpanEdits, TellsWhatIsTakenByTheSamplesThatAreShared) {
  const Channel made = channel();
  EXPECT_TRUE(isTaken(check(made), 1, 1.5));  // begins at the last sample of the first span
  EXPECT_FALSE(isTaken(check(made), 1.01, 1.99));
  EXPECT_TRUE(isTaken(check(made), 1.5, 2));
  const std::vector<SpanPlace> second{{Kind::Step, 1}};
  EXPECT_FALSE(isTaken(check(made), 1.5, 3.5, second));
}

TEST(SpanEdits, MovingKeepsTheStepAndTheNote) {
  Channel made = channel();
  made.checks[0].readings[1]->note = "redone";
  made = withSpanMoved(made, 0, {Kind::Step, 1}, span(2.5, 3.5, 21));
  EXPECT_EQ(check(made).readings[1]->mean, Reading(21));
  EXPECT_EQ(check(made).readings[1]->begin, Duration(2.5));
  EXPECT_EQ(check(made).readings[1]->note, "redone");
  EXPECT_EQ(check(made).readings[0], check(channel()).readings[0]);
}

TEST(SpanEdits, SplittingLeavesTheLongerPartToTheStep) {
  const Channel shortFirst = withSpanSplit(channel(), 0, {Kind::Step, 1}, span(2, 2.2, 19), span(2.3, 3, 20));
  EXPECT_EQ(*check(shortFirst).readings[1], span(2.3, 3, 20));
  EXPECT_EQ(check(shortFirst).otherLevels[0], span(2, 2.2, 19));
  const Channel longFirst = withSpanSplit(channel(), 0, {Kind::Step, 1}, span(2, 2.8, 19), span(2.9, 3, 20));
  EXPECT_EQ(*check(longFirst).readings[1], span(2, 2.8, 19));
}

TEST(SpanEdits, JoiningKeepsTheStepThatThereIs) {
  const Channel two = withSpansJoined(channel(), 0, {Kind::Step, 0}, {Kind::Step, 1}, span(0, 3, 15));
  EXPECT_EQ(*check(two).readings[0], span(0, 3, 15));
  EXPECT_FALSE(check(two).readings[1]);
  const Channel mixed = withSpansJoined(channel(), 0, {Kind::Step, 1}, {Kind::Other, 0}, span(2, 5, 30));
  EXPECT_EQ(*check(mixed).readings[1], span(2, 5, 30));
  EXPECT_EQ(check(mixed).otherLevels, std::vector{span(6, 7, 60)});
  const Channel others = withSpansJoined(channel(), 0, {Kind::Other, 0}, {Kind::Other, 1}, span(4, 7, 50));
  EXPECT_EQ(check(others).otherLevels, std::vector{span(4, 7, 50)});
}

TEST(SpanEdits, RemovingAndTakingFromAStep) {
  EXPECT_FALSE(check(withSpanRemoved(channel(), 0, {Kind::Step, 0})).readings[0]);
  EXPECT_EQ(check(withSpanRemoved(channel(), 0, {Kind::Other, 0})).otherLevels, std::vector{span(6, 7, 60)});
  const Channel freed = withSpanTakenFromStep(channel(), 0, 0);
  EXPECT_FALSE(check(freed).readings[0]);
  EXPECT_EQ(check(freed).otherLevels[0], span(0, 1, 10));
}

TEST(SpanEdits, MatchingGivesAllSpansAnewAndLosesNone) {
  // Spans in time: 0 (step 1), 1 (step 2), 2 and 3 (no step). Step 2 gets the last, step 3 the first.
  Channel made = withReading(channel(), 0, 0, Measured{Reading(7), {}, {}, {}, {}});  // typed, no span
  made = withSpanAdded(made, 0, span(0, 1, 10));
  const std::vector<std::optional<std::size_t>> given{{}, 3, 0};
  made = withReadingsMatched(made, 0, given);
  EXPECT_EQ(check(made).readings[0]->mean, Reading(7));
  EXPECT_EQ(*check(made).readings[1], span(6, 7, 60));
  EXPECT_EQ(*check(made).readings[2], span(0, 1, 10));
  EXPECT_EQ(check(made).otherLevels, (std::vector{span(2, 3, 20), span(4, 5, 40)}));
}

TEST(SpanEdits, AFoundRecordingIsFoundForAllChecksOfIt) {
  Document document;
  const RecordingReference lost{"gone.csv", 5, std::string(64, 'a'), "TP-01", {}};
  const RecordingReference other{"gone.csv", 5, std::string(64, 'b'), "TP-01", {}};
  for (std::size_t k = 0; k < 2; ++k) {
    Channel made = channel();
    made.checks[0].recording = lost;
    made = withCheckClosed(withCheckAdded(made, {}), 1);
    made.checks[1].recording = k == 0 ? lost : other;
    document = withChannelInserted(document, k, made);
  }
  const Document found = withRecordingFoundAt(document, lost, "here/it_is.csv");
  EXPECT_EQ(found.channels[0]->checks[0].recording->path, "here/it_is.csv");
  EXPECT_EQ(found.channels[0]->checks[1].recording->path, "here/it_is.csv");
  EXPECT_EQ(found.channels[1]->checks[1].recording->path, "gone.csv");  // the same path, another file
  EXPECT_EQ(found.channels[0]->checks[0].recording->sha256, lost.sha256);
}

/// One edit drawn by lot on a check whose spans lie on whole seconds.
Channel editedByLot(Channel made, std::mt19937& random) {
  const auto spans = spansOf(made.checks[0]);
  const auto at = [&](std::size_t k) -> const Measured& { return spanAt(made.checks[0], spans[k]); };
  const std::size_t k = spans.empty() ? 0 : random() % spans.size();
  const double begin_s = static_cast<double>(random() % 100),
               end_s = begin_s + static_cast<double>(random() % 4);
  const std::size_t kind = spans.empty() ? 0 : random() % 7;
  if (kind == 0)
    return isTaken(made.checks[0], begin_s, end_s) ? made : withSpanAdded(made, 0, span(begin_s, end_s));
  if (kind == 1) return withSpanRemoved(made, 0, spans[k]);
  if (kind == 2) return withSpanGivenToStep(made, 0, spans[k], random() % made.setup.sequence.size());
  if (kind == 3 && spans[k].kind == Kind::Step) return withSpanTakenFromStep(made, 0, spans[k].index);
  if (kind == 4 && k + 1 < spans.size())
    return withSpansJoined(made, 0, spans[k], spans[k + 1], span(at(k).begin->base(), at(k + 1).end->base()));
  if (kind == 5 && at(k).end->base() - at(k).begin->base() >= 1)
    return withSpanSplit(made, 0, spans[k], span(at(k).begin->base(), at(k).begin->base()),
                         span(at(k).begin->base() + 1, at(k).end->base()));
  if (kind == 6) {
    const std::vector<SpanPlace> self{spans[k]};
    if (!isTaken(made.checks[0], begin_s, end_s, self))
      return withSpanMoved(made, 0, spans[k], span(begin_s, end_s));
  }
  return made;
}

TEST(SpanEdits, LeaveSpansInOrderApartAndReadableWhateverIsDone) {
  std::mt19937 random(11);
  Channel made = channel();
  for (int edit = 0; edit < 4000; ++edit) {
    made = editedByLot(std::move(made), random);
    const auto spans = spansOf(made.checks[0]);
    for (std::size_t k = 1; k < spans.size(); ++k)
      ASSERT_LT(*spanAt(made.checks[0], spans[k - 1]).end, *spanAt(made.checks[0], spans[k]).begin) << edit;
    for (const SpanPlace place : spans)
      ASSERT_EQ(placeOf(made.checks[0], spanAt(made.checks[0], place)), place);
    if (edit % 100 != 0) continue;
    // The file format asks for other levels in the order of time, and gives back what it was given.
    const Document document = withChannelInserted({}, 0, made);
    const auto text = writeDocument(document);
    ASSERT_TRUE(text) << text.error().text();
    const auto again = readDocument(*text);
    ASSERT_TRUE(again) << again.error().text();
    ASSERT_EQ(*again->channels[0], made);
  }
}

TEST(SpanEdits, EachChangesTheNumberOfSpansByOneAtMost) {
  std::mt19937 random(12);
  Channel made = channel();
  for (int edit = 0; edit < 1000; ++edit) {
    const auto before = static_cast<int>(spansOf(made.checks[0]).size());
    made = editedByLot(std::move(made), random);
    EXPECT_LE(std::abs(static_cast<int>(spansOf(made.checks[0]).size()) - before), 1);
  }
}

}  // namespace
}  // namespace core
