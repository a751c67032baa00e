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

Channel usual() { return withArm(350); }

TEST(ImpossibleFactors, AreBeyondWhatGaugesHave) {
  const auto with = [](double factor, double set) {
    Channel channel = usual();
    channel.setup.bridge.gauge.factor = factor;
    channel.setup.instrument.gaugeFactor = set;
    return channel;
  };
  for (const double factor : {0.5, 2.05, 4.0, 175.0, 250.0})
    EXPECT_THAT(impossible(with(factor, factor)), IsEmpty()) << factor;
  EXPECT_THAT(impossible(with(500, 2)),
              ElementsAre("The gauge factor is 500: no strain gauge has less than 0.5 or more than 250."));
  EXPECT_EQ(impossible(with(0.49, 2)).size(), 1u);
  // 2 of the gauge in an instrument that takes every bridge for a full one, and 200 times 4 the other way.
  EXPECT_THAT(impossible(with(2, 0.5)), IsEmpty());
  EXPECT_THAT(impossible(with(200, 800)), IsEmpty());
  EXPECT_THAT(
      impossible(with(2, 2000)),
      ElementsAre("The gauge factor set at the instrument is 2000: even with a bridge factor in it, no "
                  "strain gauge asks for less than 0.125 or more than 1000."));
  Channel output = with(2, 2000);
  output.setup.instrument.unit = ReadingUnit::MillivoltPerVolt;
  EXPECT_THAT(impossible(output), IsEmpty()) << "the setting is not used";
  Channel transducer = with(500, 2000);
  transducer.setup.bridge.type = BridgeType::Transducer;
  transducer.setup.bridge.rating = {Output(2e-3), 50, "kN"};
  EXPECT_THAT(impossible(transducer), IsEmpty()) << "a transducer has no gauge factor";
}

TEST(ImpossibleTimes, AreLongerThanADaysWork) {
  Channel channel = usual();
  channel.setup.sequence[1].hold = Duration(8 * 3600), channel.setup.sequence[1].settle = Duration(8 * 3600);
  EXPECT_THAT(impossible(channel), IsEmpty());
  channel.setup.sequence[1].hold = Duration(1e12), channel.setup.sequence[2].settle = Duration(28801);
  EXPECT_THAT(impossible(channel),
              ElementsAre("It is held for 1000000000000 s, longer than a day's work of 8 h.",
                          "It settles 28800 s, longer than a day's work of 8 h."));
}

TEST(ImpossibleLimits, AreThoseThatNothingFails) {
  Channel channel = usual();
  channel.setup.limits.relative = 0.99;
  channel.setup.limits.merits[MeritKind::Nonlinearity] = 0.99;
  EXPECT_THAT(impossible(channel), IsEmpty());
  channel.setup.limits.relative = 1e7;
  channel.setup.limits.merits[MeritKind::Nonlinearity] = 1;
  EXPECT_THAT(impossible(channel), ElementsAre("The verdict permits 1000000000 % of the expected reading: an "
                                               "instrument that shows nothing passes.",
                                               "The limit of nonlinearity is 100 %: nothing can fail it."));
}

TEST(ImpossibleUncertainties, AreAsGreatAsTheValue) {
  const auto stated = [](Input input, double amount, bool relative) {
    Channel channel = usual();
    channel.setup.uncertainties.stated[input] = {
        .statement = Statement::Tolerance, .amount = amount, .relative = relative};
    return channel;
  };
  const Input arm{InputKind::Arm, 1}, shunt{InputKind::Shunt, 0}, contact{InputKind::ShuntContact, 0};
  EXPECT_THAT(impossible(stated(arm, 0.99, true)), IsEmpty());
  EXPECT_THAT(impossible(stated(arm, 349, false)), IsEmpty());
  EXPECT_THAT(
      impossible(stated(arm, 350, false)),
      ElementsAre("The uncertainty of arm 2 is as great as its value or greater: ±350 Ω, rectangular."));
  EXPECT_THAT(impossible(stated(arm, 1e7, true)),
              ElementsAre("The uncertainty of arm 2 is as great as its value or greater: ±1000000000 %, "
                          "rectangular."));
  EXPECT_EQ(impossible(stated(shunt, 1, true)).size(), 1u);
  EXPECT_THAT(impossible(stated(contact, 0.05, false)), IsEmpty()) << "nobody knows a contact better";
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
