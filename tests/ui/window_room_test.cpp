// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <QAction>
#include <QApplication>
#include <QHeaderView>
#include <QInputMethodEvent>
#include <QLineEdit>
#include <QListView>
#include <QScrollArea>
#include <QScrollBar>
#include <QSplitter>
#include <QTest>
#include <QToolButton>

#include "core/document/edits.h"
#include "tests/support/sample_channel.h"
#include "ui/locale.h"
#include "ui/main_window.h"
#include "ui/search/search_dialog.h"
#include "ui/sequence_model.h"
#include "ui/sequence_pane.h"
#include "ui/sheet_view.h"

// Whatever page is on view, the window stays as large as it was made.

namespace ui {
namespace {

TEST(WindowRoom, PagesGiveTheirRoomBack) {
  Session session(sample::documentOf({sample::nineStepChannel()}));
  MainWindow window(session);
  const QSize size(1280, 780);
  window.resize(size);
  window.show();
  window.activateWindow();
  ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
  ASSERT_EQ(window.size(), size);
  const auto all = window.findChildren<QAction*>();
  const auto press = [&](const char* keys) {
    const QKeySequence wanted(keys);
    for (QAction* action : all)
      if (action->shortcuts().contains(wanted)) {
        action->trigger();
        QTest::qWait(30);  // layouts settle from inside outwards
        EXPECT_EQ(window.size(), size) << "after " << keys;
        const auto* room = window.findChild<QScrollArea*>("viewsScroll");
        EXPECT_EQ(room->horizontalScrollBar()->maximum(), 0) << "after " << keys;
        return;
      }
    ADD_FAILURE() << keys << " does nothing";
  };
  // The whole area, where map and what-if lie side by side with their pictures, and from there to each other
  // page.
  for (const char* keys : {"Alt+1", "Ctrl+7", "Ctrl+8", "Alt+0", "Ctrl+7", "Alt+1", "Alt+0", "Ctrl+Shift+P",
                           "Alt+1", "Ctrl+8", "Ctrl+7", "Ctrl+Shift+P", "Alt+0", "Ctrl+6"})
    press(keys);
}

TEST(WindowRoom, TextOfTwiceTheSizeScrollsAndDoesNotMakeTheWindowWider) {
  Session session(sample::documentOf({sample::nineStepChannel()}));
  MainWindow window(session);
  const QSize size(1280, 780);
  window.resize(size);
  window.show();
  const QFont before = QApplication::font();
  QFont twice = before;
  twice.setPointSizeF(2 * before.pointSizeF());
  QApplication::setFont(twice);
  QTest::qWait(50);
  EXPECT_EQ(window.size(), size);
  EXPECT_LE(window.minimumSizeHint().width(), size.width());
  const auto* sheet = window.findChild<SheetView*>("sequenceTable");
  ASSERT_TRUE(sheet);
  EXPECT_GE(sheet->rowHeight(0), QFontMetrics(sheet->font()).height()) << "rows hold their letters";
  QApplication::setFont(before);
}

TEST(WindowRoom, LargerTextAndBackLeavesTheColumnsAsWideAsTheyWere) {
  Session session(sample::documentOf({sample::nineStepChannel()}));
  MainWindow window(session);
  window.resize(1280, 780);
  window.show();
  QTest::qWait(50);
  const auto* columns = window.findChild<QSplitter*>("columnsSplitter");
  const QList<int> first = columns->sizes();
  const QFont before = QApplication::font();
  QFont larger = before;
  larger.setPointSizeF(2 * before.pointSizeF());
  QApplication::setFont(larger);
  QTest::qWait(50);
  EXPECT_GT(columns->sizes().front(), first.front()) << "larger rows need more room";
  QApplication::setFont(before);
  QTest::qWait(50);
  EXPECT_EQ(columns->sizes(), first);
}

TEST(WindowRoom, ALongNoticeTakesAQuarterOfTheWindowAndScrolls) {
  Session session(sample::documentOf({sample::nineStepChannel()}));
  MainWindow window(session);
  const QSize size(1280, 760);
  window.resize(size);
  window.show();
  window.warn(QString("what went wrong in many words ").repeated(200));
  QTest::qWait(30);
  const auto* notice = window.findChild<QWidget*>("notice");
  const auto* room = window.findChild<QScrollArea*>("noticeScroll");
  ASSERT_TRUE(notice->isVisible() && room);
  EXPECT_LE(notice->height(), size.height() / 4);
  EXPECT_TRUE(window.rect().contains(QRect(notice->mapTo(&window, QPoint()), notice->size())));
  EXPECT_GT(room->verticalScrollBar()->maximum(), 0) << "the rest is scrolled to";
  EXPECT_EQ(window.size(), size);
  EXPECT_LE(window.minimumSizeHint().height(), size.height());
  window.warn("A short one.");
  QTest::qWait(30);
  EXPECT_LT(notice->height(), 60);
  EXPECT_EQ(room->verticalScrollBar()->maximum(), 0);
  QTest::mouseClick(window.findChild<QToolButton*>("closeNotice"), Qt::LeftButton);
  EXPECT_FALSE(notice->isVisible());
}

TEST(WindowRoom, ANoticeLiesOverNothingAndMovesNothing) {
  Session session(sample::documentOf({sample::nineStepChannel()}));
  MainWindow window(session);
  window.resize(1280, 800);
  window.show();
  QTest::qWait(30);
  const auto placeOf = [&](const char* name) {
    const auto* widget = window.findChild<QWidget*>(name);
    return QRect(widget->mapTo(&window, QPoint()), widget->size());
  };
  const QRect views = placeOf("viewsScroll");
  window.warn("Choose an answer first.");
  QTest::qWait(30);
  EXPECT_EQ(placeOf("viewsScroll"), views);
  EXPECT_FALSE(placeOf("notice").intersects(views));
  EXPECT_TRUE(window.rect().contains(placeOf("notice")));
  EXPECT_GE(window.findChild<QWidget*>("noticeText")->height(), QFontMetrics(window.font()).height());
  window.warn(QString("a sentence of more than a line ").repeated(20));
  QTest::qWait(30);
  EXPECT_FALSE(placeOf("notice").intersects(placeOf("viewsScroll"))) << "the views make room";
  window.warn({});
  QTest::qWait(30);
  EXPECT_EQ(placeOf("viewsScroll"), views) << "and have it back";
}

/// For whoever has to find out which column wants more.
std::string widthsOf(const QTableView& table) {
  QString widths = QString("room %1 px, columns").arg(table.viewport()->width());
  for (int column = 0; column < table.model()->columnCount(); ++column)
    if (!table.isColumnHidden(column))
      widths += QString(" %1 %2")
                    .arg(table.model()->headerData(column, Qt::Horizontal).toString().replace('\n', ' '))
                    .arg(table.columnWidth(column));
  return widths.toStdString();
}

TEST(WindowRoom, AllColumnsOfTheSequenceAreOnViewInASmallWindow) {
  core::Channel channel = core::withCheckAdded(sample::nineStepChannel(), {});
  for (core::Step& step : channel.setup.sequence) step.settle = core::Duration(0.5);
  Session session(sample::documentOf({channel}));
  SequencePane pane(session);
  pane.resize(984, 220);  // what the usual layout of a window of 1280 by 800 has for it
  pane.show();
  const auto* table = pane.findChild<SheetView*>("sequenceTable");
  ASSERT_TRUE(table);
  EXPECT_TRUE(QTest::qWaitFor([&] { return table->horizontalScrollBar()->maximum() == 0; }, 2000))
      << widthsOf(*table);
  EXPECT_GT(table->columnWidth(SequenceModel::VerdictColumn),
            table->fontMetrics().horizontalAdvance("not judged"));
}

TEST(WindowRoom, PagesOfTheOutcomeHaveTheirWholeNamesInGerman) {
  const SpokenScope german(languageFor("de", true));
  Session session(sample::documentOf({sample::nineStepChannel()}));
  MainWindow window(session);
  window.resize(1280, 800);
  window.show();
  QTest::qWait(50);
  const auto pages = window.findChild<QWidget*>("outcomePages")->findChildren<QToolButton*>();
  ASSERT_EQ(pages.size(), 6);
  for (const QToolButton* page : pages) EXPECT_EQ(page->text(), page->accessibleName());
}

TEST(WindowRoom, NamesOfAnyLengthAreCutAndTheWholeIsInATip) {
  core::Channel channel = sample::nineStepChannel();
  Session session(sample::documentOf({channel}));
  MainWindow window(session);
  const QSize size(1280, 760);
  window.resize(size);
  window.show();
  const int least = window.minimumSizeHint().width();
  const QString longName(5000, 'W');
  auto* field = window.findChild<QLineEdit*>("channelName");
  field->setFocus();
  field->selectAll();
  QInputMethodEvent typed;
  typed.setCommitString(longName);
  QApplication::sendEvent(field, &typed);
  QTest::keyClick(field, Qt::Key_Return);
  ASSERT_EQ(session.channel()->name, longName.toStdString());
  window.showAsUnsaved(longName);
  QTest::qWait(30);
  EXPECT_EQ(window.size(), size);
  EXPECT_EQ(window.minimumSizeHint().width(), least);
  EXPECT_EQ(window.findChild<QScrollArea*>("viewsScroll")->horizontalScrollBar()->maximum(), 0);
  EXPECT_LT(window.windowTitle().size(), 200);
  EXPECT_TRUE(window.windowTitle().contains("W…W")) << window.windowTitle().toStdString();
  const auto* list = window.findChild<QListView*>("channelList");
  ASSERT_TRUE(list);
  QString tip = list->model()->index(0, 0).data(Qt::ToolTipRole).toString();
  EXPECT_TRUE(tip.remove(QChar(0x200B)).contains(longName));
}

TEST(WindowRoom, TheSearchForResistorsIsAsWideForALongName) {
  core::Channel channel = sample::nineStepChannel();
  channel.name.assign(5000, 'W');
  Session session(sample::documentOf({channel}));
  SearchDialog dialog(session);
  dialog.show();
  QTest::qWait(30);
  EXPECT_LT(dialog.width(), 1300);
}

TEST(WindowRoom, NoHeadingAndNoNumberOfTheSequenceIsCutInGerman) {
  // The words of the window in German, for this thread; its headings are the longest that we have.
  const SpokenScope german(languageFor("de", true));
  Session session(sample::documentOf({sample::nineStepChannel()}));
  MainWindow window(session);
  window.resize(1280, 760);
  window.show();
  QTest::qWait(50);
  for (const char* name : {"sequenceTable", "shuntTable", "uncertaintyTable"}) {
    const auto* table = window.findChild<SheetView*>(name);
    ASSERT_TRUE(table);
    const QAbstractItemModel& model = *table->model();
    for (int column = 0; column < model.columnCount(); ++column) {
      const QString heading = model.headerData(column, Qt::Horizontal).toString();
      for (const QString& line : heading.split('\n'))
        EXPECT_GE(table->columnWidth(column),
                  table->horizontalHeader()->fontMetrics().horizontalAdvance(line))
            << name << ": " << heading.toStdString();
      for (int row = 0; row < model.rowCount(); ++row) {
        const QModelIndex cell = model.index(row, column);
        if (!(cell.data(Qt::TextAlignmentRole).toInt() & Qt::AlignRight)) continue;
        EXPECT_GE(table->columnWidth(column), table->fontMetrics().horizontalAdvance(cell.data().toString()))
            << name << ": " << cell.data().toString().toStdString();
      }
    }
  }
}

TEST(WindowRoom, EscapeLeavesAPage) {
  Session session(sample::documentOf({sample::nineStepChannel()}));
  MainWindow window(session);
  window.show();
  window.findChild<QAction*>("preferences")->trigger();
  auto* bridge = window.findChild<QWidget*>("bridgePane");
  ASSERT_TRUE(bridge);
  EXPECT_FALSE(bridge->isVisible());
  QTest::keyClick(&window, Qt::Key_Escape);
  EXPECT_TRUE(bridge->isVisible());
}

}  // namespace
}  // namespace ui
