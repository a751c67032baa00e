// SPDX-License-Identifier: GPL-3.0-or-later
// The examples that a new user opens first: each of them opens, and says what examples/README.md says.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <map>
#include <sstream>

#include "core/compare/comparison.h"
#include "core/document/apply.h"
#include "core/document/json_reader.h"
#include "core/document/json_writer.h"
#include "core/intake/intake.h"
#include "core/plan/settling.h"
#include "core/recording/reader.h"
#include "core/wiring/wiring_rules.h"

namespace core {
namespace {

using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;

const std::filesystem::path folder = std::filesystem::path(SHUNTWRIGHT_SOURCE_DIR) / "examples";

std::string textOf(const std::filesystem::path& path) {
  std::ifstream file(path, std::ios::binary);
  std::ostringstream text;
  text << file.rdbuf();
  return text.str();
}

Document opened(const std::string& name) {
  auto document = readDocument(textOf(folder / name));
  EXPECT_TRUE(document) << name << ": " << document.error().text();
  return document ? *std::move(document) : Document{};
}

std::vector<std::string> documentNames() {
  std::vector<std::string> names;
  for (const auto& entry : std::filesystem::directory_iterator(folder))
    if (entry.path().extension() == ".bridgecal") names.push_back(entry.path().filename().string());
  return names;
}

/// Verdict words of check `check` by channel.
std::map<std::string, std::string> verdicts(const Document& document, std::size_t check) {
  std::map<std::string, std::string> words;
  for (const auto& channel : document.channels)
    words[channel->name] = verdictWord(evaluate(*channel).checks[check].assessment.verdict);
  return words;
}

const Channel& channelOf(const Document& document, const std::string& name) {
  for (const auto& channel : document.channels)
    if (channel->name == name) return *channel;
  ADD_FAILURE() << "no channel " << name;
  return *document.channels.front();
}

TEST(Examples, EveryDocumentOpensAndEveryStepOfItIsPredicted) {
  const auto names = documentNames();
  EXPECT_EQ(names.size(), 4u);
  for (const std::string& name : names) {
    const Document document = opened(name);
    EXPECT_THAT(document.channels, Not(IsEmpty())) << name;
    EXPECT_THAT(document.note, HasSubstr("INVENTED DATA")) << name;
    for (const auto& channel : document.channels) {
      const ChannelEvaluation evaluation = evaluate(*channel);
      EXPECT_TRUE(evaluation.prediction.zero) << name << ", " << channel->name;
      EXPECT_THAT(evaluation.prediction.steps, Not(IsEmpty())) << name << ", " << channel->name;
      for (const auto& step : evaluation.prediction.steps)
        EXPECT_TRUE(step) << name << ", " << channel->name << ": " << step.error().text();
    }
  }
}

TEST(Examples, EveryDocumentIsLaidOutAsSavingWouldLeaveIt) {
  for (const std::string& name : documentNames()) {
    const auto again = writeDocument(opened(name));
    ASSERT_TRUE(again) << name << ": " << again.error().text();
    EXPECT_EQ(*again, textOf(folder / name)) << name;
  }
}

TEST(Examples, TheStockHoldsWhatTheShuntsAreMadeOf) {
  for (const char* name : {"plan.bridgecal", "demo.bridgecal", "load_cell.bridgecal"}) {
    const Document document = opened(name);
    std::vector<std::size_t> all;
    for (const auto& channel : document.channels) {
      all.push_back(all.size());
      for (const Shunt& shunt : channel->setup.shunts)
        EXPECT_TRUE(findResistor(*document.stock, shunt.part.id)) << channel->name << ", " << shunt.name;
    }
    EXPECT_EQ(withStockValues(document, all), document) << name << ": taking them anew changes nothing";
  }
}

TEST(Examples, OneResistorInUseWasOverdueWhenTheChecksWereMade) {
  const Document document = opened("demo.bridgecal");
  for (const auto& channel : document.channels)
    for (const Check& check : channel->checks) {
      const auto day = dateFromText(check.date);
      ASSERT_TRUE(day) << channel->name;
      for (const Shunt& shunt : channel->setup.shunts)
        EXPECT_EQ(isOverdue(shunt.part.due, *day), shunt.part.id == "AF-0152") << shunt.name;
    }
}

TEST(Examples, JumpersLayEveryShuntWhereThePlanSays) {
  const Document document = opened("demo.bridgecal");
  for (const char* name : {"TP-01", "LC-1"}) {
    const core::Setup& setup = channelOf(document, name).setup;
    for (const Shunt& shunt : setup.shunts) EXPECT_EQ(shunt.jumpers.size(), 2u) << shunt.name;
    for (const WiringFault& fault : wiringFaults(setup)) {
      EXPECT_EQ(fault.severity, WiringSeverity::Warning) << fault.what;
      EXPECT_EQ(fault.kind, WiringFaultKind::NeighbourHazard) << fault.what;
      EXPECT_STREQ(name, "LC-1") << fault.what;
    }
  }
}

TEST(Examples, StepsLastAsLongAsFilterAndMainsAsk) {
  const Document document = opened("demo.bridgecal");
  for (const auto& channel : document.channels) {
    const auto least = leastTimes(channel->setup.acquisition);
    ASSERT_TRUE(least) << least.error().text();
    for (const Step& step : channel->setup.sequence) {
      EXPECT_GE(step.settle, least->settle) << channel->name;
      EXPECT_GE(step.hold, least->hold) << channel->name;
    }
  }
}

TEST(Examples, PreTestFailsOnlyWhereTheShuntsAreSwapped) {
  const std::map<std::string, std::string> planted{{"TP-01", "pass"}, {"TP-02", "pass"}, {"TP-11", "pass"},
                                                   {"TP-12", "fail"}, {"TP-21", "pass"}, {"TP-31", "pass"},
                                                   {"LC-1", "pass"}};
  EXPECT_EQ(verdicts(opened("demo.bridgecal"), 0), planted);
}

TEST(Examples, PostTestFailsAlsoWhereMoistureLeaks) {
  const std::map<std::string, std::string> planted{{"TP-01", "pass"}, {"TP-02", "fail"}, {"TP-11", "pass"},
                                                   {"TP-12", "fail"}, {"TP-21", "pass"}, {"TP-31", "pass"},
                                                   {"LC-1", "pass"}};
  EXPECT_EQ(verdicts(opened("demo.bridgecal"), 1), planted);
}

TEST(Examples, SwappedShuntsAreCalledOppositePolarity) {
  const Document document = opened("demo.bridgecal");
  const ChannelEvaluation evaluation = evaluate(channelOf(document, "TP-12"));
  for (const CheckEvaluation& check : evaluation.checks)
    EXPECT_THAT(check.assessment.reason, HasSubstr("opposite polarity"));
}

TEST(Examples, TheLeakMakesZeroRunAwayDownwards) {
  // Derived: across a gauge of 350 ohm with factor 2.07, a leak that falls from 700 kohm to 300 kohm
  // moves the reading from about -350/(700e3 x 2.07) = -242 um/m to -350/(300e3 x 2.07) = -564 um/m.
  // The first and the last level lie in the middle of the first and the last of nine steps.
  const Document document = opened("demo.bridgecal");
  const ChannelEvaluation evaluation = evaluate(channelOf(document, "TP-02"));
  const auto zeroReturn = evaluation.checks[1].assessment.zeroReturn;
  ASSERT_TRUE(zeroReturn);
  const double expected = (-564.0 + 242.0) * 8 / 9;
  EXPECT_NEAR(zeroReturn->base(), expected, 0.05 * std::abs(expected)) << "leads and gain are left out";
}

TEST(Examples, OnlyTheLeakChangedBetweenTheChecks) {
  const Document document = opened("demo.bridgecal");
  for (const auto& channel : document.channels) {
    const Comparison comparison = compare(*channel, evaluate(*channel), 0, 1);
    const bool moved = std::any_of(comparison.steps.begin(), comparison.steps.end(),
                                   [](const auto& step) { return changeOf(step.moved) == Change::Changed; });
    EXPECT_EQ(moved, channel->name == "TP-02") << channel->name << ": " << comparison.reason;
    EXPECT_THAT(comparison.configuration, IsEmpty()) << channel->name;
  }
}

TEST(Examples, TheWronglyWiredChannelDoesNotPassForAgreeingWithItself) {
  const Document document = opened("demo.bridgecal");
  for (const auto& channel : document.channels) {
    const Comparison comparison = compare(*channel, evaluate(*channel), 0, 1);
    const bool sound = channel->name != "TP-02" && channel->name != "TP-12";
    EXPECT_EQ(comparison.verdict, sound ? Verdict::Pass : Verdict::Fail) << comparison.reason;
  }
}

TEST(Examples, ReadingsOfTheDemoAreTheLevelsOfItsRecordings) {
  const Document document = opened("demo.bridgecal");
  for (std::size_t k = 0; k < document.channels.size(); ++k) {
    const Channel& channel = *document.channels[k];
    ASSERT_EQ(channel.checks.size(), 2u) << channel.name;
    for (const Check& check : channel.checks) {
      ASSERT_TRUE(check.recording && check.closedWith) << channel.name;
      const auto recording = readRecording(folder / check.recording->path);
      ASSERT_TRUE(recording) << recording.error().text();
      EXPECT_EQ(check.recording->size_bytes, std::filesystem::file_size(folder / check.recording->path));
      for (const ColumnUse& use : columnUses(document, *recording)) {
        if (use.channel != k) continue;
        const ChannelFind find = findInColumn(document, *recording, use);
        ASSERT_TRUE(find.levels && find.match) << channel.name;
        ASSERT_EQ(find.match->runs.size(), 1u) << channel.name;
        EXPECT_FALSE(find.match->runs[0].isAmbiguous()) << channel.name;
        EXPECT_EQ(recording->columns[use.column].name, check.recording->column);
        // Equal to the last bit: a saved double is the same double when read.
        EXPECT_EQ(check.readings, readingsOf(find.match->runs[0].best, *find.levels))
            << channel.name
            << ": where level finding was changed on purpose, examples/make_examples.py makes the demo anew";
      }
    }
  }
}

}  // namespace
}  // namespace core
