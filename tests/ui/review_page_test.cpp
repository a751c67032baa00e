// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/review/review_page.h"

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include "tests/support/printing.h"
#include "tests/support/sample_channel.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr core::Date today{std::chrono::year(2026), std::chrono::May, std::chrono::day(11)};

/// The nine-step plan with nothing to find.
core::Channel sound(const std::string& name = "TP-01") {
  core::Channel channel = sample::nineStepChannel();
  channel.name = name;
  for (core::Step& step : channel.setup.sequence) step.label.clear();
  for (std::size_t k = 0; k < channel.setup.shunts.size(); ++k)
    channel.setup.shunts[k].name = "R" + std::to_string(k + 1);
  return channel;
}

/// Without its last zero (a warning), a label of the wrong sign (a fault), a hold of half a second (a
/// warning).
core::Channel faulty(const std::string& name = "TP-01") {
  core::Channel channel = sound(name);
  channel.setup.sequence.pop_back();
  channel.setup.sequence[2].label = "-2";
  channel.setup.sequence[5].hold = core::Duration(0.5);
  return channel;
}

class Review : public testing::Test {
 protected:
  void open(core::Document document) {
    session = std::make_unique<Session>(std::move(document));
    session->setToday(today);
    page = std::make_unique<ReviewPage>(*session);
    page->resize(980, 270);
    page->show();
    EXPECT_TRUE(QTest::qWaitForWindowExposed(page.get()));
    tester = std::make_unique<QAbstractItemModelTester>(
        page->table().model(), QAbstractItemModelTester::FailureReportingMode::Fatal);
  }
  void open(core::Channel channel) { open(sample::documentOf({std::move(channel)})); }

  template <class Widget>
  Widget* find(const QString& name) {
    auto* widget = page->findChild<Widget*>(name);
    EXPECT_TRUE(widget) << name.toStdString();
    return widget;
  }
  QString said(const char* label) { return find<QLabel>(label)->text(); }
  int rows() { return page->table().model()->rowCount(); }
  QString cell(int row, int column) { return page->table().model()->index(row, column).data().toString(); }
  void choose(int row) {
    page->table().setCurrentIndex(page->table().model()->index(row, ReviewModel::What));
  }
  void click(const QString& name) { QTest::mouseClick(find<QPushButton>(name), Qt::LeftButton); }

  std::unique_ptr<Session> session;
  std::unique_ptr<ReviewPage> page;
  std::unique_ptr<QAbstractItemModelTester> tester;
};

TEST_F(Review, ShowsFindingsWithTheFaultsFirstAndCountsThem) {
  open(faulty());
  ASSERT_EQ(rows(), 3);
  EXPECT_EQ(said("reviewCounts"), "1 fault · 2 warnings · 0 notes");
  EXPECT_EQ(cell(0, ReviewModel::Severity), "◆ fault");
  EXPECT_EQ(cell(0, ReviewModel::Where), "step 3 “-2”");
  EXPECT_EQ(cell(1, ReviewModel::Severity), "▲ warning");
  EXPECT_TRUE(page->table().isColumnHidden(ReviewModel::Channel));
}

TEST_F(Review, SaysInOneSentenceThatNothingIsFound) {
  open(sound());
  EXPECT_EQ(rows(), 0);
  EXPECT_TRUE(find<QLabel>("reviewNothing")->isVisible());
  EXPECT_TRUE(said("reviewNothing").startsWith("Nothing found: "));
  session->reset({});
  EXPECT_TRUE(said("reviewNothing").startsWith("No channel yet"));
  core::Channel empty;
  session->reset(sample::documentOf({empty}));
  EXPECT_TRUE(said("reviewNothing").startsWith("There are no steps yet"));
}

TEST_F(Review, AMendIsOneUndoStepUnderItsOwnName) {
  open(faulty());
  choose(0);
  auto* button = find<QPushButton>("reviewMend0");
  ASSERT_TRUE(button->isVisible());
  EXPECT_EQ(button->text(), "Correct the label");
  click("reviewMend0");
  EXPECT_EQ(session->channel()->setup.sequence[2].label, "+2");
  EXPECT_EQ(session->history().undoText(), "Correct the label");
  EXPECT_EQ(session->history().count(), 1);
  EXPECT_EQ(rows(), 2);
  session->history().undo();
  EXPECT_EQ(rows(), 3);
}

TEST_F(Review, OneMendAfterTheOtherLeavesNothing) {
  open(faulty());
  choose(0);
  for (int left = 2; left >= 0; --left) {
    click("reviewMend0");
    ASSERT_EQ(rows(), left);
  }
  EXPECT_TRUE(find<QLabel>("reviewNothing")->isVisible());
}

TEST_F(Review, ChoosingARowChoosesItsStepAndSaysWhy) {
  open(faulty());
  choose(1);
  choose(0);
  EXPECT_EQ(session->selection().step, 2u);
  EXPECT_TRUE(said("reviewWhat").contains("says negative"));
  EXPECT_TRUE(said("reviewWhy").contains("wrong arm"));
  EXPECT_EQ(page->table().currentIndex().row(), 0);
}

TEST_F(Review, OpeningThePageChoosesNoStepByItself) {
  open(faulty());
  EXPECT_FALSE(session->selection().step.has_value());
  session->selectStep(4);
  EXPECT_EQ(session->selection().step, 4u);
  EXPECT_FALSE(said("reviewWhat").isEmpty());  // the first finding is there to be read all the same
}

TEST_F(Review, ActivatingAFindingOfAShuntShowsTheShunt) {
  core::Channel channel = sound();
  channel.setup.shunts[3].part = {
      "S-104", core::Date(today.year() - std::chrono::years(1), today.month(), today.day()), {}};
  open(channel);
  ASSERT_EQ(rows(), 1);
  EXPECT_EQ(cell(0, ReviewModel::Where), "shunt “R4”");
  QSignalSpy shown(page.get(), &ReviewPage::shuntActivated);
  choose(0);
  QTest::keyClick(&page->table(), Qt::Key_Return);
  ASSERT_EQ(shown.count(), 1);
  EXPECT_EQ(shown[0][0].value<std::size_t>(), 3u);
  click("reviewShowShunt");
  EXPECT_EQ(shown.count(), 2);
  EXPECT_FALSE(find<QPushButton>("reviewMend0")->isVisible());  // only a laboratory mends it
}

TEST_F(Review, AnotherDayOrStockIsReviewedAnew) {
  core::Channel channel = sound();
  channel.setup.shunts[3].part = {"S-104", today, {}};
  open(channel);
  EXPECT_EQ(said("reviewCounts"), "0 faults · 0 warnings · 1 note");
  session->setToday(core::Date(today.year(), std::chrono::June, today.day()));
  EXPECT_EQ(said("reviewCounts"), "1 fault · 0 warnings · 0 notes");
  core::Document document = session->document();
  core::Stock stock;
  stock.resistors.push_back({.id = "S-104", .nominal = core::Resistance(1)});
  document.stock = std::make_shared<const core::Stock>(stock);
  session->edit("Change the stock", document);
  EXPECT_EQ(said("reviewCounts"), "1 fault · 1 warning · 0 notes");
}

TEST_F(Review, AllChannelsAreReviewedTogetherAndMendedWhereTheyAre) {
  open(sample::documentOf({sound("TP-01"), faulty("TP-02"), faulty("TP-03")}));
  EXPECT_EQ(rows(), 0);
  find<QComboBox>("reviewScope")->setCurrentIndex(1);
  ASSERT_EQ(rows(), 6);
  EXPECT_FALSE(page->table().isColumnHidden(ReviewModel::Channel));
  EXPECT_EQ(cell(0, ReviewModel::Channel), "TP-02");
  EXPECT_EQ(cell(1, ReviewModel::Channel), "TP-03");
  EXPECT_EQ(cell(1, ReviewModel::Severity), "◆ fault");
  choose(1);
  EXPECT_EQ(session->selection().channel, 2u);
  EXPECT_EQ(session->selection().step, 2u);
  click("reviewMend0");
  EXPECT_EQ(session->document().channels[2]->setup.sequence[2].label, "+2");
  EXPECT_EQ(session->document().channels[1]->setup.sequence[2].label, "-2");
  EXPECT_EQ(rows(), 5);
}

TEST_F(Review, APlanUnderAClosedCheckIsNotChanged) {
  core::Channel channel = core::withCheckClosed(core::withCheckAdded(faulty(), {}), 0);
  open(channel);
  ASSERT_TRUE(session->checkIsClosed());
  QSignalSpy refused(page.get(), &ReviewPage::refused);
  choose(0);
  click("reviewMend0");
  EXPECT_EQ(refused.count(), 1);
  EXPECT_EQ(session->history().count(), 0);
}

TEST_F(Review, NamesFromFilesAreShownAsTheyAre) {
  core::Channel channel = faulty();
  channel.setup.sequence[2].label = "<b>-2</b> -2 &amp;";
  open(channel);
  EXPECT_EQ(cell(0, ReviewModel::Where), "step 3 “<b>-2</b> -2 &amp;”");
  EXPECT_EQ(find<QLabel>("reviewWhat")->textFormat(), Qt::PlainText);
  const QString tip = page->table().model()->index(0, 0).data(Qt::ToolTipRole).toString();
  EXPECT_TRUE(tip.contains("&lt;b&gt;"));
}

TEST_F(Review, WorksByKeyboard) {
  open(faulty());
  page->table().setFocus();
  choose(0);
  QTest::keyClick(&page->table(), Qt::Key_Down);
  EXPECT_EQ(page->table().currentIndex().row(), 1);
  QTest::keyClick(&page->table(), Qt::Key_Up);
  find<QPushButton>("reviewMend0")->setFocus();
  QTest::keyClick(find<QPushButton>("reviewMend0"), Qt::Key_Space);
  EXPECT_EQ(rows(), 2);
}

TEST_F(Review, AfterAMendTheKeyboardIsOnTheTableSoThatASecondPressMendsNothing) {
  open(faulty());
  page->activateWindow();
  ASSERT_TRUE(QTest::qWaitForWindowActive(page.get()));
  choose(0);
  for (const Qt::Key key : {Qt::Key_Space, Qt::Key_Return}) {
    find<QPushButton>("reviewMend0")->setFocus();
    QTest::keyClick(page->focusWidget(), Qt::Key_Space);
    ASSERT_EQ(rows(), 2);
    ASSERT_TRUE(find<QPushButton>("reviewMend0")->isVisible());  // that of the next finding
    EXPECT_EQ(QApplication::focusWidget(), &page->table());
    QTest::keyClick(QApplication::focusWidget(), key);
    EXPECT_EQ(rows(), 2);
    EXPECT_EQ(session->history().count(), 1);
    session->history().undo();
    choose(0);
  }
}

TEST_F(Review, SeveritiesHaveColoursThatReadOnBothBackgrounds) {
  open(faulty());
  for (const QPalette& palette : {lightPalette(), darkPalette()}) {
    page->setPalette(palette);
    const auto colour = page->table().model()->index(0, 0).data(Qt::ForegroundRole).value<QColor>();
    EXPECT_EQ(colour, coloursFor(palette).fail);
  }
}

TEST_F(Review, AThousandChannelsDoNotHoldUpTheWindow) {
  core::Document document;
  for (int k = 0; k < 1000; ++k)
    document.channels.push_back(std::make_shared<const core::Channel>(faulty("CH-" + std::to_string(k))));
  open(document);
  // The choice returns before the work is done, which goes on in slices between events.
  find<QComboBox>("reviewScope")->setCurrentIndex(1);
  EXPECT_LT(rows(), 3000);
  EXPECT_TRUE(said("reviewCounts").contains(" of 1000 channels"));
  EXPECT_TRUE(QTest::qWaitFor([&] { return rows() == 3000; }, 20000));
  EXPECT_EQ(said("reviewCounts"), "1000 faults · 2000 warnings · 0 notes");
}

}  // namespace
}  // namespace ui
