// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/revisions.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <fstream>
#include <functional>
#include <iterator>

#include "core/document/edits.h"
#include "core/document/json_reader.h"
#include "core/document/json_writer.h"
#include "core/record/fingerprint.h"
#include "tests/support/random_document.h"

using namespace core;
using testing::ElementsAre;
using testing::IsEmpty;

namespace {

Document sample() {
  std::ifstream file(std::string(SHUNTWRIGHT_TESTS_DIR) + "/data/version7.bridgecal", std::ios::binary);
  return *readDocument(std::string(std::istreambuf_iterator<char>(file), {}));
}

Document changed(const std::function<void(Channel&)>& change, Document document = sample()) {
  Channel channel = *document.channels[0];
  change(channel);
  document.channels[0] = std::make_shared<const Channel>(std::move(channel));
  return document;
}

/// What is told of a change of the first channel.
std::vector<std::string> told(const std::function<void(Channel&)>& change) {
  return changesBetween(sample(), changed(change));
}

// The expected sentences are the specification; there is no outside source for words.
TEST(ChangesBetween, SaysInWordsWhatWasChanged) {
  EXPECT_THAT(told([](Channel& c) { c.setup.bridge.gauge.factor = 2.1; }),
              ElementsAre("TP-01: gauge factor from 2.05 to 2.1"));
  EXPECT_THAT(told([](Channel& c) { c.setup.bridge.arms[2] = Resistance(351); }),
              ElementsAre("TP-01: arm 3 from 350 Ω to 351 Ω"));
  EXPECT_THAT(told([](Channel& c) { c.setup.shunts[1].resistance = Resistance(59000); }),
              ElementsAre("TP-01: shunt R1 on arm 2 resistance from 174650 Ω to 59000 Ω"));
  EXPECT_THAT(told([](Channel& c) { c.setup.limits.relative = 0.02; }),
              ElementsAre("TP-01: limit relative from 0.01 to 0.02"));
  EXPECT_THAT(told([](Channel& c) { c.setup.sequence[1].hold = Duration(3); }),
              ElementsAre("TP-01: step 2 hold from 2.5 s to 3 s"));
  EXPECT_THAT(told([](Channel& c) { c.checks[0].readings[1]->mean = Reading(-998.5); }),
              ElementsAre("TP-01, check pre-test: reading of step 2 from -1019.75 to -998.5"));
  EXPECT_THAT(told([](Channel& c) {
                c.checks[0].readings[2] = Measured{Reading(4), {}, {}, {}};
              }),
              ElementsAre("TP-01, check pre-test: reading of step 3 entered: 4"));
  EXPECT_THAT(told([](Channel& c) { c.checks[0].readings[0].reset(); }),
              ElementsAre("TP-01, check pre-test: reading of step 1 removed"));
  EXPECT_THAT(told([](Channel& c) { c.checks[0].ambient.air = Temperature(22); }),
              ElementsAre("TP-01, check pre-test: ambient air from 21.5 °C to 22 °C"));
  EXPECT_THAT(told([](Channel& c) { c.checks[0].closedWith.reset(); }),
              ElementsAre("TP-01, check pre-test: opened again"));
  EXPECT_THAT(told([](Channel& c) { c.checks.pop_back(); }), ElementsAre("TP-01, check post-test removed"));
  EXPECT_THAT(told([](Channel& c) { c.group = ""; }), ElementsAre("TP-01: group removed, was “left spar”"));
  EXPECT_THAT(told([](Channel& c) {
                c.setup.uncertainties.stated[{InputKind::Arm, 0}].amount = 0.5;
              }),
              ElementsAre("TP-01: uncertainty of arm 1 amount from 0.35 to 0.5"));
  EXPECT_THAT(told([](Channel& c) { c.name = "TP-02"; }), ElementsAre("TP-01 renamed TP-02"));
}

TEST(ChangesBetween, TellsAStepPutInAsOneStep) {
  const auto lines = told([](Channel& c) {
    c.checks.clear();
    c = withStepInserted(c, 1, Step{"again", {0}, Duration(1), Duration(1)});
  });
  EXPECT_THAT(lines, ElementsAre("TP-01, check pre-test removed", "TP-01, check post-test removed",
                                 "TP-01: step 2 added"));
}

TEST(ChangesBetween, TellsRemarksActsAndChannels) {
  EXPECT_THAT(told([](Channel& c) { c.checks[0].remarks[1].settled = true; }),
              ElementsAre("TP-01, check pre-test: remark of R. Larch settled"));
  EXPECT_THAT(told([](Channel& c) {
                c.checks[0].remarks.push_back({2, "A. Finch", "2024-05-08T10:00:00Z", "Why?", false});
              }),
              ElementsAre("TP-01, check pre-test: remark of A. Finch at step 3 added"));
  EXPECT_THAT(told([](Channel& c) { c.checks[0].remarks.pop_back(); }),
              ElementsAre("TP-01, check pre-test: remark of R. Larch removed"));
  Document document = sample();
  document.title = "Another";
  document.channels.pop_back();
  document.signOff.acts.push_back({Stage::Returned, "R. Larch", "2024-05-08T10:00:00Z", "Once more", ""});
  EXPECT_THAT(changesBetween(sample(), document),
              ElementsAre("title from “Tailplane proof load” to “Another”", "LC-1 removed",
                          "returned by R. Larch: Once more"));
  document = sample();
  Stock stock = *document.stock;
  stock.resistors[0].certificate->value = Resistance(174653);
  stock.resistors.pop_back();
  document.stock = std::make_shared<const Stock>(stock);
  EXPECT_THAT(changesBetween(sample(), document),
              ElementsAre("stock resistor AF-0101 certificate value from 174652.5 Ω to 174653 Ω",
                          "stock resistor AF-0102 removed"));
  document = sample();
  std::swap(document.channels[0], document.channels[1]);
  EXPECT_THAT(changesBetween(sample(), document), ElementsAre("order of channels changed"));
}

TEST(ChangesBetween, JoinsWhatManyChannelsShare) {
  Document before = sample(), after = before;
  before.channels.clear();
  after.channels.clear();
  for (int k = 1; k <= 5; ++k) {
    Channel channel = *sample().channels[0];
    channel.name = "C" + std::to_string(k);
    before.channels.push_back(std::make_shared<const Channel>(channel));
    channel.setup.limits.relative = 0.02;
    after.channels.push_back(std::make_shared<const Channel>(channel));
  }
  EXPECT_THAT(changesBetween(before, after),
              ElementsAre("5 channels (C1, C2, C3, …): limit relative from 0.01 to 0.02"));
}

/// Nothing that a file holds may change unseen: two documents of other content differ in words too.
TEST(ChangesBetween, MissesNothing) {
  for (std::uint64_t seed = 0; seed < 150; ++seed) {
    const Document a = support::randomDocument(seed, support::Numbers::Plausible);
    const Document b = support::randomDocument(seed + 1, support::Numbers::Plausible);
    EXPECT_THAT(changesBetween(a, a), IsEmpty()) << seed;
    const auto back = readDocument(*writeDocument(a));  // other pointers, same content
    EXPECT_THAT(changesBetween(a, *back), IsEmpty()) << seed;
    EXPECT_EQ(changesBetween(a, b).empty(), a == b) << seed;
  }
}

const Saving saving{"R. Larch", "2031-05-04T10:00:00Z", "0.1.0"};

TEST(WithRevision, KeepsWhoChangedWhatWhen) {
  const auto first = withRevision(changed([](Channel&) {}), nullptr, saving);
  ASSERT_TRUE(first) << first.error().text();
  EXPECT_EQ(first->history.size(), 3u);
  const Document before = *first;
  const auto same = withRevision(before, &before, saving);
  EXPECT_EQ(same->history.size(), 3u) << "nothing was changed";
  const Document after = changed([](Channel& c) { c.note = "new"; }, before);
  const auto second = withRevision(after, &before, {"A. Finch", "2031-05-05T10:00:00Z", "0.1.0"});
  ASSERT_EQ(second->history.size(), 4u);
  const Revision& revision = second->history.back();
  EXPECT_EQ(revision.person, "A. Finch");
  EXPECT_EQ(revision.time, "2031-05-05T10:00:00Z");
  EXPECT_THAT(revision.changes, ElementsAre("TP-01: note from “spar cap” to “new”"));
  EXPECT_EQ(revision.fingerprint, *fingerprintOf(*second));
  EXPECT_EQ(brokenRevision(second->history), std::nullopt);
}

TEST(WithRevision, SaysThatAFileWasAlteredBetween) {
  const Document first = *withRevision(sample(), nullptr, saving);
  const Document outside = changed([](Channel& c) { c.note = "outside"; }, first);
  const Document after = changed([](Channel& c) { c.group = "right spar"; }, outside);
  const auto saved = withRevision(after, &outside, saving);
  EXPECT_THAT(saved->history.back().changes,
              ElementsAre("before this, the file was altered without an entry of its history",
                          "TP-01: group from “left spar” to “right spar”"));
  EXPECT_THAT(revisionsAfterAlteration(saved->history), ElementsAre(saved->history.size() - 1));
  EXPECT_THAT(revisionsAfterAlteration(first.history), IsEmpty());
}

TEST(WithRevision, TellsNoMoreThanAFileMayHold) {
  Document before = sample();
  before.history.clear();
  Document after = before;
  Channel channel = *before.channels[0];
  channel.checks.clear();
  for (int k = 0; k < 300; ++k) {
    channel.name = "C" + std::to_string(k);
    channel.note = "";
    before.channels.push_back(std::make_shared<const Channel>(channel));
    channel.note = std::to_string(k) + std::string(1000, 'x');
    after.channels.push_back(std::make_shared<const Channel>(channel));
  }
  const auto saved = withRevision(after, &before, saving);
  ASSERT_TRUE(saved) << saved.error().text();
  const Revision& revision = saved->history.back();
  EXPECT_EQ(revision.changes.size() + revision.more, 300u);
  EXPECT_LE(revision.changes.size(), 40u);
  EXPECT_LT(revision.changes[0].size(), 210u);
  EXPECT_TRUE(writeDocument(*saved)) << writeDocument(*saved).error().text();
}

TEST(WithRevision, BeginsAHistoryAnewThatFillsItsFile) {
  Document document = sample();
  document.history.resize(10'000, document.history[0]);
  const std::string chain = document.history.back().chain;
  const auto saved = withRevision(document, nullptr, saving);
  ASSERT_EQ(saved->history.size(), 1u);
  EXPECT_NE(saved->history[0].changes[0].find("left out were 10000 entries"), std::string::npos);
  EXPECT_NE(saved->history[0].changes[0].find(chain), std::string::npos);
  EXPECT_EQ(brokenRevision(saved->history), std::nullopt);
}

// The chain of the sample file was reckoned by Python's json and hashlib.
TEST(BrokenRevision, TellsAnEntryThatWasAlteredLostOrPutIn) {
  const std::vector<Revision> good = sample().history;
  EXPECT_EQ(brokenRevision(good), std::nullopt);
  EXPECT_EQ(brokenRevision({}), std::nullopt);
  auto altered = good;
  altered[0].person = "somebody else";
  EXPECT_EQ(brokenRevision(altered), 0u);
  altered = good;
  altered[1].more = 2;
  EXPECT_EQ(brokenRevision(altered), 1u);
  altered = {good[1]};
  EXPECT_EQ(brokenRevision(altered), 0u);
  altered = {good[0], good[0], good[1]};
  EXPECT_EQ(brokenRevision(altered), 1u);
}

}  // namespace
