// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/campaign/overview_page.h"

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QClipboard>
#include <QComboBox>
#include <QFile>
#include <QGuiApplication>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QSignalSpy>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>
#include <QToolButton>
#include <algorithm>
#include <cmath>

#include "core/campaign/channel_list.h"
#include "tests/support/sample_channel.h"
#include "ui/campaign/channel_rows.h"
#include "ui/campaign/overview_lines.h"
#include "ui/campaign/overview_words.h"
#include "ui/channel_list.h"
#include "ui/theme.h"

namespace ui {
namespace overview_page_test {

using Column = OverviewColumn;

core::Channel named(core::Channel channel, std::string name, std::string group = {}) {
  channel.name = std::move(name);
  channel.group = std::move(group);
  return channel;
}

/// A check that reads `gain` times what is expected; the limit is 1 % of it, so that 1.001 uses a tenth of
/// the limit, 1.03 three times the limit.
core::Channel reading(double gain, std::string name, std::string group = {}) {
  return named(sample::withCheckReading(sample::nineStepChannel(), gain), std::move(name), std::move(group));
}

core::Document campaign() {
  return sample::documentOf({reading(1.001, "TP-1", "left spar"), reading(1.03, "TP-2", "right spar"),
                             named(sample::nineStepChannel(), "TP-10", "left spar"), reading(1.05, "LC-1")});
}

/// Reads as planned to 0.01 % of the largest reading, and in a second check with a zero that runs away from
/// step to step: by 3 % of it at each.
core::Channel running() {
  core::Channel channel =
      sample::withCheckReading(sample::withCheckReading(sample::nineStepChannel(), 1.0), 1.0);
  double largest = 0, away = 0;
  for (const auto& reading : channel.checks[0].readings)
    largest = std::max(largest, std::abs(reading->mean.base()));
  for (core::Check& check : channel.checks)
    for (auto& reading : check.readings) reading->uncertainty = core::Reading(1e-4 * largest);
  for (auto& reading : channel.checks[1].readings) reading->mean += core::Reading(away -= 0.03 * largest);
  return channel;
}

class Overview : public testing::Test {
 protected:
  Overview() : Overview(campaign()) {}
  explicit Overview(core::Document document) : session(std::move(document)) {
    page.resize(1200, 600);
    page.show();
    page.activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&page));
    session.rows().waitForAll();
    table = find<QTableView>("overviewTable");
  }
  template <class Widget>
  Widget* find(const char* name) {
    auto* widget = page.findChild<Widget*>(name);
    EXPECT_TRUE(widget) << name;
    return widget;
  }
  QString cell(int row, Column column) const {
    return table->model()->index(row, static_cast<int>(column)).data().toString();
  }
  QStringList names() const {
    QStringList names;
    for (int row = 0; row < table->model()->rowCount(); ++row) names << cell(row, Column::Name);
    return names;
  }
  QPoint at(int row, Column column) const {
    return table->visualRect(table->model()->index(row, static_cast<int>(column))).center();
  }
  void click(int row, Column column = Column::Name, Qt::KeyboardModifiers keys = {}) {
    QTest::mouseClick(table->viewport(), Qt::LeftButton, keys, at(row, column));
  }
  void sortBy(Column column) {
    auto* header = table->horizontalHeader();
    const int x = header->sectionViewportPosition(static_cast<int>(column)) + 10;
    QTest::mouseClick(header->viewport(), Qt::LeftButton, {}, QPoint(x, header->height() / 2));
  }
  QString tally() { return find<QLabel>("overviewTally")->text(); }
  std::string chosen() const { return session.channel()->name; }

  Session session;
  OverviewPage page{session};
  QTableView* table = nullptr;
};

TEST_F(Overview, ShowsTheWorstFirst) {
  const QAbstractItemModelTester tester(table->model(),
                                        QAbstractItemModelTester::FailureReportingMode::Warning);
  // 5 % off is five limits of 1 %, 3 % is three; what was not checked comes before what passes.
  EXPECT_EQ(names(), QStringList({"LC-1", "TP-2", "TP-10", "TP-1"}));
  EXPECT_EQ(cell(0, Column::Verdict), "fail");
  EXPECT_EQ(cell(2, Column::Verdict), "not checked");
  EXPECT_EQ(cell(3, Column::Verdict), "pass");
  EXPECT_TRUE(cell(1, Column::Worst).startsWith("300")) << cell(1, Column::Worst).toStdString();
  EXPECT_EQ(cell(1, Column::Gain), "1.0300");
  EXPECT_EQ(cell(0, Column::Steps), "9");
  EXPECT_EQ(cell(0, Column::Latest), "pre-test (open)");
}

class OverviewOfARunningZero : public Overview {
 protected:
  OverviewOfARunningZero() : Overview(sample::documentOf({running()})) {}
  QColor colour(Column column) const {
    return table->model()->index(0, int(column)).data(Qt::ForegroundRole).value<QBrush>().color();
  }
};

TEST_F(OverviewOfARunningZero, ThatItChangedSaysNothingOfTheGain) {
  const Colours colours = coloursFor(QGuiApplication::palette());
  EXPECT_TRUE(cell(0, Column::Gain).contains("±")) << cell(0, Column::Gain).toStdString();
  EXPECT_EQ(cell(0, Column::Change), "changed");
  EXPECT_EQ(colour(Column::Change), colours.fail);
  EXPECT_TRUE(cell(0, Column::GainChange).contains("±")) << cell(0, Column::GainChange).toStdString();
  EXPECT_EQ(colour(Column::GainChange), colours.cannotTell);
}

TEST_F(Overview, SaysAtTheTopHowManyAreInWhichState) {
  EXPECT_EQ(tally(), "4 channels: 2 fail, 1 not checked, 1 pass");
}

TEST_F(Overview, SortsByAnyColumnAndKeepsTheOrderAmongEquals) {
  sortBy(Column::Name);
  EXPECT_EQ(names(), QStringList({"LC-1", "TP-1", "TP-2", "TP-10"})) << "numbers by their value";
  sortBy(Column::Name);
  EXPECT_EQ(names(), QStringList({"TP-10", "TP-2", "TP-1", "LC-1"}));
  sortBy(Column::Group);
  EXPECT_EQ(names(), QStringList({"TP-10", "TP-1", "TP-2", "LC-1"}))
      << "in a group as sorted before, none last";
}

TEST_F(Overview, FiltersWhileOneTypes) {
  auto* filter = find<QLineEdit>("overviewFilter");
  filter->setFocus();
  QTest::keyClicks(filter, "spar tp-1");
  EXPECT_EQ(names(), QStringList({"TP-10", "TP-1"}));
  EXPECT_TRUE(tally().endsWith("; 2 shown")) << tally().toStdString();
  QTest::mouseClick(find<QToolButton>("overviewClear"), Qt::LeftButton);
  EXPECT_EQ(names().size(), 4);
  EXPECT_FALSE(find<QToolButton>("overviewClear")->isEnabled());
}

TEST_F(Overview, FiltersByQuickChoices) {
  auto* verdict = find<QComboBox>("overviewVerdict");
  verdict->setCurrentIndex(verdict->findText("fail"));
  EXPECT_EQ(names(), QStringList({"LC-1", "TP-2"}));
  verdict->setCurrentIndex(verdict->findText("not checked"));
  EXPECT_EQ(names(), QStringList({"TP-10"}));
  verdict->setCurrentIndex(0);
  auto* group = find<QComboBox>("overviewGroup");
  group->setCurrentIndex(group->findText("left spar"));
  EXPECT_EQ(names(), QStringList({"TP-10", "TP-1"}));
  group->setCurrentIndex(group->findText("without a group"));
  EXPECT_EQ(names(), QStringList({"LC-1"}));
  group->setCurrentIndex(0);
  find<QToolButton>("overviewOpen")->click();
  EXPECT_EQ(names(), QStringList({"LC-1", "TP-2", "TP-1"})) << "those with an open check";
}

TEST_F(Overview, PutsRowsTogetherAndCollapsesThem) {
  auto* grouping = find<QComboBox>("overviewGrouping");
  grouping->setCurrentIndex(grouping->findText("by group"));
  EXPECT_EQ(names(), QStringList({"▾ left spar – 2 channels: 1 not checked, 1 pass", "TP-10", "TP-1",
                                  "▾ right spar – 1 channel: 1 fail", "TP-2",
                                  "▾ without a group – 1 channel: 1 fail", "LC-1"}));
  table->setFocus();
  table->setCurrentIndex(table->model()->index(0, 0));
  QTest::keyClick(table, Qt::Key_Left);
  EXPECT_EQ(names().mid(0, 2), QStringList({"▸ left spar – 2 channels: 1 not checked, 1 pass",
                                            "▾ right spar – 1 channel: 1 fail"}));
  QTest::mouseClick(table->viewport(), Qt::LeftButton, {}, QPoint(8, at(0, Column::Name).y()));
  EXPECT_EQ(names().size(), 7);
}

TEST_F(Overview, ChoosesTheChannelEverywhere) {
  click(2);
  EXPECT_EQ(chosen(), "TP-10");
  session.selectChannel(0);
  EXPECT_EQ(cell(table->currentIndex().row(), Column::Name), "TP-1");
}

TEST_F(Overview, ReturnAndDoubleClickWantTheViews) {
  const QSignalSpy wanted(&page, &OverviewPage::viewsWanted);
  click(1);
  QTest::keyClick(table, Qt::Key_Return);
  EXPECT_EQ(wanted.count(), 1);
  QTest::mouseDClick(table->viewport(), Qt::LeftButton, {}, at(0, Column::Verdict));
  EXPECT_EQ(wanted.count(), 2);
  EXPECT_EQ(chosen(), "LC-1");
}

TEST_F(Overview, EditsTheGroupInPlaceAndUndoesIt) {
  click(0, Column::Group);
  QTest::keyClick(table, Qt::Key_F2);
  auto* editor = table->findChild<QLineEdit*>();
  ASSERT_TRUE(editor);
  QTest::keyClicks(editor, "tail");
  QTest::keyClick(editor, Qt::Key_Return);
  QCoreApplication::processEvents();  // the editor hands its text over with the next event
  EXPECT_EQ(session.document().channels[3]->group, "tail");
  EXPECT_EQ(session.history().undoText(), "Change group");
  EXPECT_GE(find<QComboBox>("overviewGroup")->findText("tail"), 0);
  session.history().undo();
  EXPECT_EQ(session.document().channels[3]->group, "");
}

TEST_F(Overview, KeepsRowsInTheirPlacesWhileACellIsEdited) {
  click(3, Column::Note);
  QTest::keyClick(table, Qt::Key_F2);
  ASSERT_TRUE(table->findChild<QLineEdit*>());
  core::Channel better = *session.document().channels[3];
  better.checks.clear();
  session.edit("Forget checks", core::withChannel(session.document(), 3, better));
  session.rows().waitForAll();
  EXPECT_TRUE(table->findChild<QLineEdit*>()) << "the editor survives";
  QTest::keyClick(table->findChild<QLineEdit*>(), Qt::Key_Escape);
  EXPECT_EQ(names().first(), "TP-2");
}

TEST_F(Overview, CopiesChosenRowsForSpreadsheets) {
  core::Channel note = *session.document().channels[1];
  note.note = "=1+1";
  session.edit("note", core::withChannel(session.document(), 1, note));
  session.rows().waitForAll();
  click(0);
  click(1, Column::Name, Qt::ShiftModifier);
  QTest::keySequence(table, QKeySequence::Copy);
  const QStringList lines = QGuiApplication::clipboard()->text().trimmed().split('\n');
  ASSERT_EQ(lines.size(), 3);
  EXPECT_TRUE(lines[0].startsWith("Channel\tGroup\tVerdict\tWorst step\tGain"));
  const QStringList cells = lines[2].split('\t');
  EXPECT_EQ(cells[0], "TP-2");
  // 3 % off a limit of 1 %; nine digits are copied, of readings that are exact to about fifteen.
  EXPECT_NEAR(cells[static_cast<int>(Column::Worst)].toDouble(), 3, 1e-6);
  EXPECT_EQ(cells[static_cast<int>(Column::Note)], "'=1+1") << "no formula";
}

TEST_F(Overview, KeepsTheChoiceWhenRowsMove) {
  click(0);
  click(3, Column::Name, Qt::ControlModifier);
  sortBy(Column::Name);
  EXPECT_EQ(page.chosenChannels(), (std::vector<std::size_t>{0, 3}));
  EXPECT_TRUE(tally().contains("2 chosen"));
}

TEST_F(Overview, WritesTheRowsAsCsv) {
  QTemporaryDir folder;
  sortBy(Column::Name);
  ASSERT_TRUE(page.exportTo(folder.filePath("list.csv")));
  QFile file(folder.filePath("list.csv"));
  ASSERT_TRUE(file.open(QFile::ReadOnly));
  const QList<QByteArray> lines = file.readAll().split('\n');
  ASSERT_EQ(lines.size(), 6) << "header, four channels, an end";
  EXPECT_TRUE(
      lines[0].startsWith("\xEF\xBB\xBF"
                          "Channel,Group,"));
  EXPECT_TRUE(lines[2].startsWith("TP-1,left spar,pass,"));
}

TEST_F(Overview, WritesAListThatCanBeImportedAgain) {
  QTemporaryDir folder;
  ASSERT_TRUE(page.exportChannelsTo(folder.filePath("list.csv")));
  QFile file(folder.filePath("list.csv"));
  ASSERT_TRUE(file.open(QFile::ReadOnly));
  const auto table = core::readListTable(file.readAll().toStdString());
  ASSERT_TRUE(table);
  const auto again = core::withChannelList({}, *table, core::guessedFields(*table), {});
  ASSERT_TRUE(again);
  ASSERT_EQ(again->added, 4U);
  EXPECT_EQ(again->document.channels[2]->name, "TP-10");
  EXPECT_EQ(again->document.channels[2]->group, "left spar");
  EXPECT_FALSE(page.exportChannelsTo(folder.filePath("no/such/folder/list.csv")));
}

TEST_F(Overview, WorksNothingOutWhileItIsHidden) {
  page.hide();
  core::Channel other = *session.document().channels[0];
  other.checks.clear();
  session.edit("Forget", core::withChannel(session.document(), 0, other));
  EXPECT_EQ(session.rows().waiting(), 0U);
  EXPECT_FALSE(session.rows().isCurrent(0));
  page.show();
  session.rows().waitForAll();
  EXPECT_TRUE(session.rows().isCurrent(0));
  EXPECT_EQ(cell(2, Column::Verdict), "not checked");
}

TEST_F(Overview, AnEditWorksOutOneChannelAlone) {
  core::Channel other = *session.document().channels[0];
  other.note = "seen";
  session.edit("Note", core::withChannel(session.document(), 0, other));
  EXPECT_EQ(session.rows().waiting(), 1U);
  ASSERT_TRUE(session.rows().row(0)) << "what it was stays on view";
  session.rows().waitForAll();
  EXPECT_TRUE(session.rows().isCurrent(0));
}

TEST_F(Overview, AnotherDayWorksAllOutAnew) {
  session.setToday({std::chrono::year(2031), std::chrono::month(1), std::chrono::day(1)});
  EXPECT_EQ(session.rows().waiting(), 4U);
}

TEST_F(Overview, NothingOfAnotherDocumentIsShown) {
  session.reset(sample::documentOf({named({}, "A"), named({}, "B"), named({}, "C"), named({}, "D")}));
  EXPECT_FALSE(session.rows().row(0));
  session.rows().waitForAll();
  EXPECT_EQ(cell(0, Column::Verdict), "not checked");
}

TEST(OverviewWords, AShareCloseToTheLimitIsNotRoundedToIt) {
  core::OverviewRow row;
  row.worst = 0.9996;
  const OverviewItem item{std::make_shared<const core::Channel>(), &row};
  EXPECT_EQ(overviewText(item, Column::Worst), "99.96\u00a0%");
  row.worst = 0.0123;
  EXPECT_EQ(overviewText(item, Column::Worst), "1.2\u00a0%");
}

TEST(OverviewWords, NumbersInNamesSortByTheirValue) {
  EXPECT_LT(naturalKey("TP-2"), naturalKey("tp-10"));
  EXPECT_LT(naturalKey("TP-9b"), naturalKey("TP-10a"));
}

TEST(ChannelListFilter, LeavesOutWhatLacksTheText) {
  core::Document document;
  for (int k = 1; k <= 40; ++k)
    document = core::withChannelInserted(document, document.channels.size(),
                                         named({}, "TP-" + std::to_string(k), k > 30 ? "tail" : "wing"));
  Session session(document);
  ChannelList list(session);
  list.show();
  auto* filter = list.findChild<QLineEdit*>("channelFilter");
  auto* view = list.findChild<QListView*>("channelList");
  ASSERT_TRUE(filter->isVisible());
  QTest::keyClicks(filter, "tail");
  EXPECT_EQ(view->model()->rowCount(), 10);
  QTest::keyClick(filter, Qt::Key_Return);
  EXPECT_EQ(session.channel()->name, "TP-31") << "Return goes on to the list";
  QTest::keyClick(filter, Qt::Key_Escape);
  EXPECT_EQ(view->model()->rowCount(), 40);
  EXPECT_EQ(view->currentIndex().data().toString(), "TP-31");
}

TEST(ChannelListFilter, IsNotThereForFewChannels) {
  Session session(campaign());
  ChannelList list(session);
  list.show();
  EXPECT_FALSE(list.findChild<QLineEdit*>("channelFilter")->isVisible());
}

TEST(ChannelListFilter, AChosenChannelHasTheSameWordsAsBefore) {
  core::Channel changed = reading(1.001, "TP-1");
  changed = sample::withCheckReading(std::move(changed), 1.2);
  changed.checks.back().name = "again";
  Session session(sample::documentOf({changed, reading(1.001, "TP-2")}));
  ChannelList list(session);
  list.show();
  const auto* model = list.findChild<QListView*>("channelList")->model();
  const auto status = [&] {
    model->index(0, 0).data(ChannelListModel::StatusRole);  // is wanted from now on
    session.rows().waitForAll();
    return model->index(0, 0).data(ChannelListModel::StatusRole).toString();
  };
  session.selectChannel(1);
  const QString before = status();
  ASSERT_TRUE(before.contains("changed since")) << before.toStdString();
  session.selectChannel(0);
  EXPECT_EQ(status(), before);
}

TEST(ChannelListFilter, ShowsTheStatusOnceItIsKnown) {
  Session session(campaign());
  ChannelList list(session);
  list.resize(200, 400);
  list.show();
  auto* view = list.findChild<QListView*>("channelList");
  EXPECT_TRUE(QTest::qWaitForWindowExposed(&list));
  const auto status = [&](int row) {
    return view->model()->index(row, 0).data(ChannelListModel::StatusRole).toString();
  };
  EXPECT_FALSE(status(0).isEmpty()) << "the chosen channel is known at once";
  EXPECT_TRUE(QTest::qWaitFor([&] { return !status(2).isEmpty(); }));
  EXPECT_EQ(status(2), "not checked");
}

}  // namespace overview_page_test
}  // namespace ui
