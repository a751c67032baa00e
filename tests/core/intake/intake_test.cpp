// SPDX-License-Identifier: GPL-3.0-or-later
// The recordings are made here: each step is held where its prediction says, so what must be found is known.
#include "core/intake/intake.h"
#include "core/intake/beside_others.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <limits>

#include "tests/support/sample_channel.h"

namespace core {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

constexpr std::size_t samplesPerHold = 200;  // two seconds, 100 samples a second

/// Noise of no more than 0.5 um/m that repeats itself nowhere within a recording.
double noise(std::size_t k) {
  return 0.5 * std::sin(12.9898 * static_cast<double>(k) + static_cast<double>(k * k % 977));
}

/// `values` held after each other.
Column columnOf(const std::string& name, const std::string& unit, const std::vector<double>& values) {
  Column column{name, unit, {}};
  for (const double value : values)
    for (std::size_t k = 0; k < samplesPerHold; ++k)
      column.values.push_back(value + noise(column.values.size()));
  return column;
}

Recording recordingOf(std::vector<Column> columns) {
  Recording recording;
  recording.columns = std::move(columns);
  recording.time = TimeAxis::even(0, 0.01, recording.columns.front().values.size());
  return recording;
}

std::vector<double> predicted(const Channel& channel) {
  std::vector<double> readings;
  for (const auto& step : predict(channel.setup).steps) readings.push_back(step->reading.base());
  return readings;
}

Channel named(std::string name, std::string column = {}) {
  Channel channel = sample::nineStepChannel();
  channel.name = std::move(name);
  channel.recordingColumn = std::move(column);
  return channel;
}

TEST(Intake, ColumnsGoToTheChannelsThatRememberThemOrHaveTheirName) {
  const Document document =
      sample::documentOf({named("A", "Ch 3"), named("B"), named("C"), named("D", "gone")});
  Recording recording;
  for (const char* name : {"B", "A", "Ch 3", "D"}) recording.columns.push_back({name, "", {}});
  // A goes by what it remembers though a column has its name; D's is gone, so its name counts; C has none.
  EXPECT_THAT(columnUses(document, recording),
              ElementsAre(ColumnUse{0, 2}, ColumnUse{1, 0}, ColumnUse{3, 3}));
  EXPECT_THAT(columnUses(document, {}), IsEmpty());
}

/// Three channels of the nine-step plan in the first five steps of it; the last one has the opposite
/// polarity.
TEST(Intake, AChannelThatIsAtOtherStepsThanAllOthersIsTold) {
  const Document document = sample::documentOf({named("A"), named("B"), named("C")});
  std::vector<double> half = predicted(*document.channels[0]);
  half.resize(5);
  std::vector<double> opposite;
  for (const double reading : half) opposite.push_back(-reading);
  const Recording recording = recordingOf(
      {columnOf("A", "um/m", half), columnOf("B", "um/m", half), columnOf("C", "um/m", opposite)});
  std::vector<ChannelFind> finds;
  for (const ColumnUse use : columnUses(document, recording))
    finds.push_back(findInColumn(document, recording, use));
  std::vector<ReadChannel> read;
  for (const ChannelFind& find : finds) {
    ASSERT_TRUE(find.match && !find.match->runs.empty());
    read.push_back({find, {}, document.channels[find.use.channel]->setup});
  }
  // Alone nothing tells: the second half of the sequence is the first one mirrored.
  EXPECT_EQ(finds[2].match->runs[0].best.remarks[0].kind, MatchRemarkKind::StartsLate);
  const std::vector<std::string> sentences = apartFromOthers(read);
  EXPECT_EQ(sentences[0], "");
  EXPECT_EQ(sentences[1], "");
  EXPECT_THAT(sentences[2], HasSubstr("2 other channels of the recording are at step 1 (zero)"));
  EXPECT_THAT(sentences[2], HasSubstr("opposite polarity"));
  EXPECT_THAT(apartFromOthers(std::span(read).subspan(1)), ElementsAre("", ""))
      << "of two neither is the odd one";
}

TEST(Intake, ARecordingOfThePlanBecomesACheckWithAReadingAStep) {
  const Document document = sample::documentOf({named("A")});
  const std::vector<double> readings = predicted(*document.channels[0]);
  const Recording recording = recordingOf({columnOf("A", "um/m", readings)});
  const ChannelFind find = findInColumn(document, recording, {0, 0});
  ASSERT_TRUE(find.levels && find.match);
  ASSERT_THAT(find.match->runs, SizeIs(1));
  EXPECT_THAT(find.match->runs[0].best.remarks, IsEmpty());

  Check check;
  check.name = "pre-test";
  check.recording = RecordingReference{"a.csv", 1, "", "", "rate=100"};
  const Channel channel = withCheckTaken(*document.channels[0], find, {}, recording, check);
  ASSERT_THAT(channel.checks, SizeIs(1));
  const Check& taken = channel.checks[0];
  EXPECT_FALSE(taken.closedWith);
  EXPECT_EQ(taken.recording->column, "A");
  EXPECT_EQ(taken.recording->readAs, "rate=100");
  EXPECT_EQ(channel.recordingColumn, "") << "it has the channel's name";
  EXPECT_THAT(taken.otherLevels, IsEmpty());
  EXPECT_EQ(taken.remark, "") << "all is as planned";
  ASSERT_THAT(taken.readings, SizeIs(9));
  for (std::size_t step = 0; step < 9; ++step) {
    ASSERT_TRUE(taken.readings[step]) << step;
    // 200 values within 0.5 of the truth; their mean is within a tenth of that or the noise above is no
    // noise.
    EXPECT_NEAR(taken.readings[step]->mean.base(), readings[step], 0.1) << step;
    EXPECT_GE(taken.readings[step]->begin->base(), 2.0 * static_cast<double>(step) - 0.01);
    EXPECT_LE(taken.readings[step]->end->base(), 2.0 * static_cast<double>(step) + 2.01);
  }
}

TEST(Intake, ALevelThatIsNoReadingIsKeptAsOne) {
  const Document document = sample::documentOf({named("A")});
  std::vector<double> held = predicted(*document.channels[0]);
  held.insert(held.begin() + 2, 250);
  const Recording recording = recordingOf({columnOf("Input 7", "", held)});
  const ChannelFind find = findInColumn(document, recording, {0, 0});
  ASSERT_TRUE(find.match);
  const Channel channel = withCheckTaken(*document.channels[0], find, {}, recording, {});
  EXPECT_EQ(channel.recordingColumn, "Input 7");
  ASSERT_THAT(channel.checks[0].otherLevels, SizeIs(1));
  EXPECT_NEAR(channel.checks[0].otherLevels[0].mean.base(), 250, 0.1);
  EXPECT_NEAR(channel.checks[0].otherLevels[0].begin->base(), 4, 0.5);
  EXPECT_THAT(channel.checks[0].remark, HasSubstr("belongs to no step."));
  Check remarked;
  remarked.remark = "After the repair.";
  EXPECT_EQ(withCheckTaken(*document.channels[0], find, {}, recording, remarked).checks[0].remark,
            "After the repair.");
}

TEST(Intake, OfSeveralRunsTheChosenOneIsTaken) {
  const Document document = sample::documentOf({named("A")});
  std::vector<double> held = predicted(*document.channels[0]);
  const std::vector<double> once = held;
  for (std::size_t step = 1; step < once.size(); ++step) held.push_back(once[step] + 0.002 * once[step]);
  const Recording recording = recordingOf({columnOf("A", "", held)});
  const ChannelFind find = findInColumn(document, recording, {0, 0});
  ASSERT_TRUE(find.match);
  ASSERT_THAT(find.match->runs, SizeIs(2));
  const Channel channel = withCheckTaken(*document.channels[0], find, {1, 0}, recording, {});
  const auto& readings = channel.checks[0].readings;
  ASSERT_TRUE(readings[1] && readings[3]);
  EXPECT_GT(readings[1]->begin->base(), 17);
  EXPECT_NEAR(readings[3]->mean.base(), 1.002 * once[3], 0.1);
  EXPECT_THAT(channel.checks[0].otherLevels, SizeIs(8)) << "those of the first run, the zero shared";
}

TEST(Intake, AnotherReadingOfARunIsTakenByItsNumber) {
  const Document document = sample::documentOf({named("A")});
  std::vector<double> held = predicted(*document.channels[0]);
  std::swap(held[1], held[3]);
  const Recording recording = recordingOf({columnOf("A", "", held)});
  const ChannelFind find = findInColumn(document, recording, {0, 0});
  ASSERT_TRUE(find.match);
  ASSERT_THAT(find.match->runs, SizeIs(1));
  ASSERT_TRUE(find.match->runs[0].isAmbiguous());
  EXPECT_EQ(chosenRun(*find.match, {0, 0}).levelOfStep[1], 3u);
  EXPECT_EQ(chosenRun(*find.match, {0, 1}).levelOfStep[1], 1u) << "in the planned order";
}

TEST(Intake, AColumnInAnotherUnitIsNotMatchedButItsLevelsAreThere) {
  const Document document = sample::documentOf({named("A")});
  const Recording recording = recordingOf({columnOf("A", "mV/V", predicted(*document.channels[0]))});
  const ChannelFind find = findInColumn(document, recording, {0, 0});
  EXPECT_TRUE(find.levels);
  ASSERT_FALSE(find.match);
  EXPECT_THAT(find.match.error().what, HasSubstr("mV/V"));
}

TEST(Intake, AColumnWithoutNumbersSaysSo) {
  const Document document = sample::documentOf({named("A")});
  Recording recording = recordingOf({columnOf("A", "", {0, 1})});
  for (double& value : recording.columns[0].values) value = std::numeric_limits<double>::quiet_NaN();
  const ChannelFind find = findInColumn(document, recording, {0, 0});
  EXPECT_FALSE(find.levels);
  ASSERT_FALSE(find.match);
  EXPECT_FALSE(find.match.error().what.empty());
}

TEST(Intake, StoppingLeavesNothingHalfDone) {
  const Document document = sample::documentOf({named("A")});
  const Recording recording = recordingOf({columnOf("A", "", predicted(*document.channels[0]))});
  std::stop_source source;
  source.request_stop();
  const ChannelFind find = findInColumn(document, recording, {0, 0}, source.get_token());
  EXPECT_FALSE(find.levels);
  EXPECT_FALSE(find.match);
}

}  // namespace
}  // namespace core
