// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/document/json_reader.h"
#include "core/document/json_writer.h"
#include "core/review/review.h"
#include "tests/support/setups.h"
#include "tests/support/two_sided.h"

namespace core {
namespace value_findings_test {

using testing::ElementsAre;
using testing::IsEmpty;

constexpr Date today{std::chrono::year(2026), std::chrono::May, std::chrono::day(11)};

/// A full bridge with `ohm` in arm 3.
Channel withArm(double ohm) {
  Channel channel;
  channel.setup = test::withShunt(test::equalArms(BridgeType::FullBending, 350.0_ohm), 100.0_kohm,
                                  Node::Arm2Begin, Node::Arm2End);
  channel.setup.bridge.arms[2] = Resistance(ohm);
  return sample::withTwoSidedSequence(channel, 2.0_s);
}

std::vector<std::string> impossible(const Channel& channel) {
  std::vector<std::string> said;
  for (const Finding& finding : review(channel, evaluate(channel), {}, today)) {
    if (finding.kind != FindingKind::ImpossibleValue) continue;
    EXPECT_EQ(finding.severity, Severity::Fault);
    said.push_back(finding.what);
  }
  return said;
}

TEST(ImpossibleArms, AreNamedWithWhatTheyHaveAndMayHave) {
  EXPECT_THAT(impossible(withArm(1e308)),
              ElementsAre("Arm 3 has 1e302 MΩ: no arm of a bridge has less than 1 Ω or more than 10 MΩ."));
  EXPECT_THAT(impossible(withArm(1e-300)),
              ElementsAre("Arm 3 has 1e-300 Ω: no arm of a bridge has less than 1 Ω or more than 10 MΩ."));
}

TEST(ImpossibleArms, BeginBeyondTheRange) {
  for (const double ohm : {1.0, 30.0, 350.0, 50e3, 10e6})
    EXPECT_THAT(impossible(withArm(ohm)), IsEmpty()) << ohm;
  for (const double ohm : {0.99, 10.1e6}) EXPECT_EQ(impossible(withArm(ohm)).size(), 1u) << ohm;
}

Measured readFrom(double begin_s, double end_s) {
  Measured reading;
  reading.mean = Reading(1), reading.begin = Duration(begin_s), reading.end = Duration(end_s);
  return reading;
}

/// With readings of the pre-test from these times, in seconds.
Channel readAt(const std::vector<std::pair<double, double>>& times) {
  Channel channel = withArm(350);
  channel.checks.emplace_back();
  channel.checks[0].name = "Pre-test";
  for (const auto& [begin, end] : times) channel.checks[0].readings.push_back(readFrom(begin, end));
  return channel;
}

std::vector<Finding> overlaps(const Channel& channel) {
  std::vector<Finding> findings = review(channel, evaluate(channel), {}, today);
  std::erase_if(findings, [](const Finding& one) { return one.kind != FindingKind::ImpossibleValue; });
  return findings;
}

TEST(OverlappingReadings, AreNamedOnceForACheck) {
  const auto found = overlaps(readAt({{0, 2}, {3, 5}, {4.5, 6}, {5, 7}}));
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].severity, Severity::Warning);
  EXPECT_EQ(found[0].step, std::size_t{2});
  EXPECT_THAT(found[0].what,
              testing::MatchesRegex("In the check Pre-test, step 2 .* and step 3 .* are read from "
                                    "the same time of the recording\\."));
}

TEST(OverlappingReadings, AreFoundWithALongOneAndALevelOfNoStep) {
  Channel channel = readAt({{0, 2}, {3, 9}});
  channel.checks[0].otherLevels.push_back(readFrom(4, 5));
  const auto found = overlaps(channel);
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].step, std::size_t{1});
}

TEST(OverlappingReadings, OfACheckWithMoreStepsThanThePlanAreOfNoStepOfThePlan) {
  Channel channel = readAt({{0, 2}, {3, 5}, {4, 6}});
  channel.checks[0].closedWith = std::make_shared<const core::Setup>(channel.setup);
  channel.setup.sequence.resize(1);
  for (const bool isClosed : {true, false}) {
    if (!isClosed) channel.checks[0].closedWith.reset();
    const auto found = overlaps(channel);
    ASSERT_EQ(found.size(), 1u);
    EXPECT_FALSE(found[0].step);
    EXPECT_THAT(found[0].what, testing::HasSubstr(isClosed ? "step 2 “" : "step 2 and step 3"));
  }
}

TEST(ReversedReadings, AreNamedAndOverlapNoOther) {
  const auto found = overlaps(readAt({{5, 1}, {2, 4}, {6, 8}}));
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].severity, Severity::Warning);
  EXPECT_EQ(found[0].step, std::size_t{0});
  EXPECT_THAT(found[0].what, testing::MatchesRegex("In the check Pre-test, step 1 .*is read from 5 s to 1 s: "
                                                   "it ends before it begins\\."));
}

TEST(ReversedReadings, HideNoOverlapOfOthers) {
  const auto found = overlaps(readAt({{0, 3}, {2, 1}, {2.5, 4}}));
  ASSERT_EQ(found.size(), 2u);
  EXPECT_THAT(found[0].what, testing::HasSubstr("ends before it begins"));
  EXPECT_THAT(found[1].what, testing::HasSubstr("same time of the recording"));
}

TEST(ReversedReadings, OfOneSampleAreNone) { EXPECT_THAT(overlaps(readAt({{0, 0}, {2, 4}})), IsEmpty()); }

TEST(OverlappingReadings, MayTouchAndComeInAnyOrder) {
  EXPECT_THAT(overlaps(readAt({{4, 6}, {2, 4}, {0, 2}})), IsEmpty());
}

TEST(ImpossibleArms, ComeBackFromAFileAsTheyWere) {
  Document document;
  document.channels.push_back(std::make_shared<const Channel>(withArm(1e308)));
  const auto text = writeDocument(document);
  ASSERT_TRUE(text) << text.error().text();
  const auto read = readDocument(*text);
  ASSERT_TRUE(read) << read.error().text();
  EXPECT_EQ(*read->channels[0], *document.channels[0]);
}

}  // namespace value_findings_test
}  // namespace core
