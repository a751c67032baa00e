// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/recording/found_pane.h"

#include <gtest/gtest.h>

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QSignalSpy>
#include <QTableView>
#include <QTest>

#include "tests/support/printing.h"
#include "tests/support/sample_channel.h"
#include "ui/recording/choice_cell.h"
#include "ui/recording/column_table.h"
#include "ui/recording/find_table.h"

namespace ui {
namespace {

using LevelOfSteps = std::vector<std::optional<std::size_t>>;

/// What a recording of twelve levels might be found to hold for a plan of nine steps; the matches are made
/// up, since the page shows what it is told.
class FoundPaneTest : public testing::Test {
 protected:
  FoundPaneTest() {
    find.use = {0, 0};
    std::vector<core::Level> levels(20);
    for (std::size_t k = 0; k < levels.size(); ++k) {
      levels[k].begin_s = 2 * static_cast<double>(k);
      levels[k].end_s = levels[k].begin_s + 1.5;
      levels[k].mean = 100 * static_cast<double>(k);
      levels[k].stdUncertainty = 0.25;
      levels[k].samples = 1500;
    }
    levels[3].quality = core::LevelQuality::Poor;
    levels[3].reason = "it drifts";
    find.levels = levels;
    pane.resize(900, 500);
    pane.show();
  }

  static core::RunMatch matchFrom(std::size_t first, std::optional<std::size_t> missing = {}) {
    core::RunMatch match;
    for (std::size_t step = 0; step < 9; ++step) {
      match.levelOfStep.emplace_back();
      if (step != missing) match.levelOfStep.back() = first++;
    }
    return match;
  }
  void show(core::LevelMatch match) {
    find.match = std::move(match);
    auto read = std::make_shared<RecordingRead>();
    auto open = std::make_shared<OpenRecording>();
    open->recording.columns = {{"TP-01", "", {}}};
    read->open = open;
    read->finds = {find};
    pane.showRead(document, read, 0);
  }
  QTableView* table(const char* name) { return pane.findChild<QTableView*>(name); }
  QString text(const char* name, int row, int column) {
    return table(name)->model()->index(row, column).data().toString();
  }
  QComboBox* readAs() { return pane.findChild<QComboBox*>("readAs"); }

  core::Document document = sample::documentOf({sample::nineStepChannel()});
  core::ChannelFind find;
  FoundPane pane;
};

TEST_F(FoundPaneTest, AnAmbiguousRunIsNotTakenBeforeTheUserChooses) {
  core::LevelMatch match;
  match.runs.push_back({matchFrom(0, 4), {matchFrom(0, 5)}});
  show(match);
  EXPECT_TRUE(pane.toTake().empty());
  EXPECT_TRUE(text("recordingChannels", 0, ColumnTable::Match).contains("ambiguous, 2 ways"))
      << text("recordingChannels", 0, ColumnTable::Match);
  ASSERT_TRUE(readAs()->isVisible());
  EXPECT_EQ(readAs()->currentIndex(), -1) << "a way to read it is chosen in advance";
  EXPECT_EQ(readAs()->count(), 2);
  // Both ways agree on the first four steps and differ on the fifth.
  EXPECT_TRUE(text("recordingLevels", 3, FindTable::Step).startsWith("4"));
  EXPECT_EQ(text("recordingLevels", 4, FindTable::Step), "no step");

  QSignalSpy decided(&pane, &FoundPane::decided);
  readAs()->setFocus();
  QTest::keyClick(readAs(), Qt::Key_Down);
  QTest::keyClick(readAs(), Qt::Key_Down);
  EXPECT_EQ(readAs()->currentIndex(), 1);
  EXPECT_GE(decided.count(), 1);
  ASSERT_EQ(pane.toTake().size(), 1u);
  EXPECT_EQ(pane.toTake()[0]->reading, 1u);
  EXPECT_TRUE(text("recordingLevels", 4, FindTable::Step).startsWith("5"));
}

TEST_F(FoundPaneTest, AmongManyChannelsThoseNotTickedAreFoundAtOnce) {
  auto* only = pane.findChild<QCheckBox*>("onlyNotTicked");
  EXPECT_FALSE(only->isVisible()) << "there are few channels";
  while (document.channels.size() < 20)
    document = core::withChannelInserted(document, document.channels.size(), sample::nineStepChannel());
  auto read = std::make_shared<RecordingRead>();
  auto open = std::make_shared<OpenRecording>();
  open->recording.columns = {{"TP-01", "", {}}, {"TP-01 (2)", "", {}}};
  read->open = open;
  core::LevelMatch plain, ambiguous;
  plain.runs.push_back({matchFrom(0), {}});
  ambiguous.runs.push_back({matchFrom(0, 4), {matchFrom(0, 5)}});
  find.match = plain;
  read->finds = {find, find};
  read->finds[1].use = {1, 1};
  read->finds[1].match = ambiguous;
  pane.showRead(document, read, 0);
  ASSERT_TRUE(only->isVisible());
  only->click();
  QTableView* channels = table("recordingChannels");
  EXPECT_TRUE(channels->isRowHidden(0)) << "it is ticked";
  EXPECT_FALSE(channels->isRowHidden(1)) << "it can be read in two ways";
  EXPECT_TRUE(channels->isRowHidden(2)) << "the recording has no column of it";
  only->click();
  EXPECT_FALSE(channels->isRowHidden(0));
}

TEST_F(FoundPaneTest, AChannelAtOtherStepsThanTheOthersIsToldAndNotTickedUnasked) {
  while (document.channels.size() < 3)
    document = core::withChannelInserted(document, document.channels.size(), sample::nineStepChannel());
  auto read = std::make_shared<RecordingRead>();
  auto open = std::make_shared<OpenRecording>();
  read->open = open;
  for (const std::size_t first : {0, 0, 4}) {  // the level of the first step
    const std::size_t at = read->finds.size();
    open->recording.columns.push_back({"column " + std::to_string(at), "", {}});
    core::LevelMatch match;
    match.runs.push_back({matchFrom(first), {}});
    read->finds.push_back(find);
    read->finds.back().use = {at, at};
    read->finds.back().match = match;
  }
  pane.showRead(document, read, 2);
  EXPECT_EQ(pane.toTake().size(), 2u);
  const QString words = pane.findChild<QLabel*>("matchWords")->text();
  EXPECT_TRUE(words.contains("2 other channels of the recording are at step 5")) << words.toStdString();
  pane.showRead(document, read, 0);
  EXPECT_FALSE(pane.findChild<QLabel*>("matchWords")->text().contains("other channels"));
}

TEST_F(FoundPaneTest, OneOfSeveralRunsIsChosenInItsRow) {
  core::LevelMatch match;
  match.runs.push_back({matchFrom(0), {}});
  match.runs.push_back({matchFrom(10), {}});
  show(match);
  EXPECT_EQ(text("recordingChannels", 0, ColumnTable::Run), "1 of 2");
  EXPECT_TRUE(pane.toTake().empty()) << "one of several runs is taken unasked";
  QTableView* channels = table("recordingChannels");
  const QModelIndex cell = channels->model()->index(0, ColumnTable::Run);
  QTest::mouseClick(channels->viewport(), Qt::LeftButton, Qt::NoModifier,
                    channels->visualRect(cell).center());
  auto* box = channels->viewport()->findChild<QComboBox*>("runChoice");
  ASSERT_TRUE(box);
  // Levels 11 to 19 of those above: from 20 s to 36 s + 1.5 s.
  EXPECT_EQ(box->itemText(1), "2: 20 s to 37.5 s");
  ASSERT_TRUE(QTest::qWaitFor([&] { return box->view()->isVisible(); }, 5000));
  QTest::keyClick(box->view(), Qt::Key_Down);
  QTest::keyClick(box->view(), Qt::Key_Return);
  EXPECT_EQ(text("recordingChannels", 0, ColumnTable::Run), "2 of 2");
  ASSERT_EQ(pane.toTake().size(), 1u) << "chosen by the user, so ticked";
  EXPECT_EQ(pane.toTake()[0]->run, 1u);
  EXPECT_EQ(text("recordingLevels", 0, FindTable::Step), "no step");
  EXPECT_TRUE(text("recordingLevels", 10, FindTable::Step).startsWith("1"));
}

TEST_F(FoundPaneTest, TheQualityOfALevelIsAWordWithItsReason) {
  core::LevelMatch match;
  match.runs.push_back({matchFrom(0), {}});
  show(match);
  EXPECT_EQ(text("recordingLevels", 0, FindTable::Quality), "good");
  EXPECT_EQ(text("recordingLevels", 3, FindTable::Quality), "poor: it drifts");
}

TEST_F(FoundPaneTest, LevelsThatFitNoPlanCanBeGivenToStepsByHand) {
  show({});
  EXPECT_TRUE(pane.toTake().empty());
  EXPECT_TRUE(text("recordingChannels", 0, ColumnTable::Match).contains("20 levels"))
      << text("recordingChannels", 0, ColumnTable::Match);
  QAbstractItemModel* levels = table("recordingLevels")->model();
  ASSERT_TRUE(levels->setData(levels->index(6, FindTable::Step), 3, choiceRole));
  QAbstractItemModel* channels = table("recordingChannels")->model();
  ASSERT_TRUE(channels->setData(channels->index(0, ColumnTable::Channel), Qt::Checked, Qt::CheckStateRole));
  ASSERT_EQ(pane.toTake().size(), 1u);
  const Finding& finding = *pane.toTake()[0];
  LevelOfSteps expected(9);
  expected[2] = 6;
  EXPECT_EQ(decided(finding).match->runs[0].best.levelOfStep, expected);
}

TEST_F(FoundPaneTest, StepsThatShareALevelAreBothNamed) {
  core::LevelMatch match;
  match.runs.push_back({matchFrom(0), {}});
  match.runs[0].best.levelOfStep[4] = 3;
  show(match);
  const QString steps = text("recordingLevels", 3, FindTable::Step);
  EXPECT_TRUE(steps.startsWith("4") && steps.contains(", 5")) << steps;
}

TEST_F(FoundPaneTest, WhatCannotBeComparedWithThePlanTakesNoSteps) {
  find.match = core::Error{"column \"TP-01\"", "the unit is mV/V", ""};
  auto read = std::make_shared<RecordingRead>();
  auto open = std::make_shared<OpenRecording>();
  open->recording.columns = {{"TP-01", "mV/V", {}}};
  read->open = open;
  read->finds = {find};
  pane.showRead(document, read, 0);
  QAbstractItemModel* levels = table("recordingLevels")->model();
  EXPECT_FALSE(levels->setData(levels->index(6, FindTable::Step), 3, choiceRole));
  EXPECT_TRUE(pane.toTake().empty());
}

TEST_F(FoundPaneTest, TextOfAFileIsNeverMarkup) {
  document = sample::documentOf({sample::nineStepChannel()});
  core::Channel channel = *document.channels[0];
  channel.name = "<img src=x>";
  document = core::withChannel(document, 0, channel);
  core::LevelMatch match;
  match.runs.push_back({matchFrom(0), {}});
  show(match);
  EXPECT_EQ(pane.findChild<QLabel*>("foundTitle")->textFormat(), Qt::PlainText);
  EXPECT_EQ(pane.findChild<QLabel*>("matchWords")->textFormat(), Qt::PlainText);
  const QString tip =
      table("recordingChannels")->model()->index(0, ColumnTable::Channel).data(Qt::ToolTipRole).toString();
  EXPECT_FALSE(tip.contains("<img")) << tip;
}

}  // namespace
}  // namespace ui
