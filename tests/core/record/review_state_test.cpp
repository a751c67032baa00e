// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/review_state.h"

#include <gtest/gtest.h>

#include <fstream>
#include <iterator>

#include "core/document/json_reader.h"
#include "core/record/fingerprint.h"

using namespace core;

namespace {

/// With a pre-test that has readings and no sign-off yet; the rules are common practice (whoever prepares a
/// record does not accept it), no source.
Document draft() {
  std::ifstream file(std::string(SHUNTWRIGHT_TESTS_DIR) + "/data/version7.bridgecal", std::ios::binary);
  Document document = *readDocument(std::string(std::istreambuf_iterator<char>(file), {}));
  document.signOff = {};
  Channel channel = *document.channels[0];
  for (Remark& remark : channel.checks[0].remarks) remark.settled = true;
  document.channels[0] = std::make_shared<const Channel>(std::move(channel));
  return document;
}

constexpr const char* day = "2031-05-04T10:00:00Z";

Document after(Document document, Stage stage, const std::string& person, const std::string& remark = "") {
  auto next = withStage(std::move(document), stage, person, day, remark);
  EXPECT_TRUE(next) << next.error().text();
  return next ? *std::move(next) : Document{};
}

Document edited(Document document) {
  document.note += "!";
  return document;
}

std::string refusalOf(const Document& document, Stage stage, const std::string& person) {
  const auto may = mayBecome(document, stage, person);
  return may ? "" : may.error().text();
}

TEST(ReviewState, GoesFromDraftToAccepted) {
  EXPECT_EQ(standingOf(draft()).stage, Stage::Draft);
  EXPECT_EQ(standingOf(draft()).sentence, "A draft: not submitted for review.");
  const Document submitted = after(draft(), Stage::Submitted, "A. Finch");
  EXPECT_EQ(standingOf(submitted).sentence, "Submitted for review by A. Finch on 2031-05-04.");
  const Document accepted = after(submitted, Stage::Accepted, "R. Larch");
  const Standing standing = standingOf(accepted);
  EXPECT_EQ(standing.stage, Stage::Accepted);
  EXPECT_FALSE(standing.changedSince);
  EXPECT_EQ(standing.sentence, "Accepted by R. Larch on 2031-05-04.");
  EXPECT_EQ(standing.act->fingerprint, *fingerprintOf(accepted));
  EXPECT_EQ(standingOf(accepted, *fingerprintOf(accepted)).sentence, standing.sentence);
}

TEST(ReviewState, AnAcceptanceDoesNotOutliveAChange) {
  const Document changed =
      edited(after(after(draft(), Stage::Submitted, "A. Finch"), Stage::Accepted, "R. Larch"));
  EXPECT_TRUE(standingOf(changed).changedSince);
  EXPECT_EQ(standingOf(changed).sentence,
            "Accepted by R. Larch on 2031-05-04; changed since: not valid any more.");
  EXPECT_EQ(refusalOf(changed, Stage::Submitted, "A. Finch"), "");
}

TEST(ReviewState, ARemarkIsNoChangeOfWhatWasAccepted) {
  Document document = after(after(draft(), Stage::Submitted, "A. Finch"), Stage::Accepted, "R. Larch");
  Channel channel = *document.channels[0];
  channel.checks[0].remarks.push_back({{}, "R. Larch", day, "well done", false});
  document.channels[0] = std::make_shared<const Channel>(std::move(channel));
  EXPECT_FALSE(standingOf(document).changedSince);
}

TEST(ReviewState, SubmittingClosesWhatHasReadings) {
  Document document = draft();
  Channel channel = *document.channels[0];
  channel.checks[0].closedWith.reset();
  document.channels[0] = std::make_shared<const Channel>(channel);
  const Document submitted = after(document, Stage::Submitted, "A. Finch");
  const auto& checks = submitted.channels[0]->checks;
  ASSERT_TRUE(checks[0].closedWith);
  EXPECT_EQ(*checks[0].closedWith, channel.setup);
  EXPECT_FALSE(checks[1].closedWith) << "it has no reading";
}

TEST(ReviewState, NobodyReviewsTheirOwn) {
  const Document submitted = after(draft(), Stage::Submitted, "A. Finch");
  EXPECT_NE(refusalOf(submitted, Stage::Accepted, "a. finch ").find("cannot review"), std::string::npos);
  EXPECT_NE(refusalOf(submitted, Stage::Returned, "A. Finch").find("cannot review"), std::string::npos);
  EXPECT_EQ(refusalOf(submitted, Stage::Returned, "R. Larch"), "");
  EXPECT_NE(refusalOf(submitted, Stage::Draft, "R. Larch").find("A. Finch submitted it"), std::string::npos);
  EXPECT_EQ(standingOf(after(submitted, Stage::Draft, "A. Finch")).sentence,
            "Withdrawn by A. Finch on 2031-05-04: a draft again.");
}

TEST(ReviewState, RefusesWhatCannotFollowAndSaysWhy) {
  EXPECT_NE(refusalOf(draft(), Stage::Accepted, "R. Larch").find("not submitted"), std::string::npos);
  EXPECT_NE(refusalOf(draft(), Stage::Returned, "R. Larch").find("not submitted"), std::string::npos);
  EXPECT_NE(refusalOf(draft(), Stage::Draft, "R. Larch").find("nothing to withdraw"), std::string::npos);
  EXPECT_NE(refusalOf(draft(), Stage::Submitted, " ").find("nobody is named"), std::string::npos);
  EXPECT_NE(refusalOf(Document{}, Stage::Submitted, "A. Finch").find("no check has a reading"),
            std::string::npos);
  const Document submitted = after(draft(), Stage::Submitted, "A. Finch");
  EXPECT_NE(refusalOf(submitted, Stage::Submitted, "A. Finch").find("submitted already"), std::string::npos);
  EXPECT_NE(refusalOf(edited(submitted), Stage::Accepted, "R. Larch").find("has changed since"),
            std::string::npos);
  const Document accepted = after(submitted, Stage::Accepted, "R. Larch");
  EXPECT_NE(refusalOf(accepted, Stage::Submitted, "A. Finch").find("accepted already"), std::string::npos);
  EXPECT_EQ(refusalOf(accepted, Stage::Returned, "R. Larch"), "") << "an acceptance can be taken back";
}

TEST(ReviewState, AReturnNeedsItsReasonAndAnAcceptanceSettledRemarks) {
  const Document submitted = after(draft(), Stage::Submitted, "A. Finch");
  const auto silent = withStage(submitted, Stage::Returned, "R. Larch", day, "  ");
  ASSERT_FALSE(silent);
  EXPECT_NE(silent.error().what.find("why it is returned"), std::string::npos);
  EXPECT_FALSE(withStage(submitted, Stage::Accepted, "R. Larch", "today", ""));
  const Document returned = after(submitted, Stage::Returned, "R. Larch", "See step 2");
  EXPECT_EQ(standingOf(returned).sentence, "Returned by R. Larch on 2031-05-04: See step 2");
  EXPECT_EQ(refusalOf(returned, Stage::Submitted, "A. Finch"), "");
  Document open = draft();
  Channel channel = *open.channels[0];
  channel.checks[0].remarks[0].settled = false;
  open.channels[0] = std::make_shared<const Channel>(std::move(channel));
  EXPECT_NE(refusalOf(after(open, Stage::Submitted, "A. Finch"), Stage::Accepted, "R. Larch")
                .find("one remark is not settled"),
            std::string::npos);
}

}  // namespace
