// SPDX-License-Identifier: GPL-3.0-or-later
// Tables of the real window, typed and clicked at.
#include "ui/tables/table_tools.h"

#include <gtest/gtest.h>

#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QDir>
#include <QDropEvent>
#include <QFile>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QMimeData>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>
#include <QUrl>
#include <set>

#include "core/document/wiring_edits.h"
#include "tests/support/printing.h"
#include "tests/support/sample_channel.h"
#include "ui/campaign/import_dialog.h"
#include "ui/document_file.h"
#include "ui/main_window.h"
#include "ui/sequence_pane.h"
#include "ui/sheet_view.h"
#include "ui/stock/resistor_model.h"
#include "ui/tables/match_marks.h"

namespace ui {
namespace {

/// Values that no short decimal gives, so that a digit too few is seen.
core::Document tableDocument() {
  core::Channel first =
      sample::withCheckReading(sample::withCheckReading(sample::nineStepChannel(), 1.0), 1.02);
  first.setup.shunts[0].resistance = core::Resistance(1e6 / 7);
  first.setup.sequence[2].hold = core::Duration(1.0 / 3);
  first.setup.wiring.pins = {{{"J1", "A"}, {}}, {{"J1", "B"}, {}}};
  first.checks.back().remarks.push_back(
      {.step = 1, .person = "Reader", .time = "2026-03-02T10:00:00Z", .text = "the plug of J1 was loose"});
  core::Channel second = sample::nineStepChannel();
  second.note = "kestrel spar";
  core::Document document = sample::documentOf({first, second});
  core::Stock stock;
  const double ohms[] = {59'906, 900, 174'650, 1'000'000, 100'000.0 / 3, 350, 4'700, 10'000};
  for (const double ohm : ohms)
    stock.resistors.push_back({.id = "S-" + std::to_string(101 + stock.resistors.size()),
                               .nominal = core::Resistance(ohm),
                               .tolerance = 1e-3});
  stock.resistors[3].note = "by the kestrel";
  document.stock = std::make_shared<const core::Stock>(stock);
  return document;
}

class Tables : public testing::Test {
 protected:
  Tables() : session(tableDocument()), window(session) {
    window.resize(1400, 900);
    window.show();
    window.activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
  }

  void trigger(const char* action) {
    ASSERT_TRUE(window.findChild<QAction*>(action)) << action;
    window.findChild<QAction*>(action)->trigger();
  }
  template <class Widget>
  Widget* find(const char* name) {
    return window.findChild<Widget*>(name);
  }
  QTableView& table(const char* name) { return *find<QTableView>(name); }
  /// Cells from row and column to row and column.
  void choose(QTableView& view, int row, int column, int lastRow, int lastColumn) {
    view.setFocus();
    view.setCurrentIndex(view.model()->index(row, column));
    view.selectionModel()->select(
        QItemSelection(view.model()->index(row, column), view.model()->index(lastRow, lastColumn)),
        QItemSelectionModel::ClearAndSelect);
  }
  QString text(const QTableView& view, int row, int column) {
    return view.model()->index(row, column).data(Qt::EditRole).toString();
  }
  void paste(QTableView& view, const QString& text) {
    QApplication::clipboard()->setText(text);
    QTest::keyClick(&view, Qt::Key_V, Qt::ControlModifier);
  }
  void clickHeader(QTableView& view, int column) {
    QHeaderView* header = view.horizontalHeader();
    QTest::mouseClick(header->viewport(), Qt::LeftButton, {},
                      {header->sectionViewportPosition(column) + 8, header->height() / 2});
  }
  QStringList shown(const QTableView& view, int column) {
    QStringList texts;
    for (const int row : shownRows(view)) texts << text(view, row, column);
    return texts;
  }
  QString warned() {
    auto* notice = find<QLabel>("noticeText");
    return notice->isVisible() ? notice->text() : QString();
  }
  QString told(const char* label) { return find<QLabel>(label)->text(); }

  Session session;
  MainWindow window;
};

using Step = SequenceModel::Column;

TEST_F(Tables, EveryTableOfTheWindowCopies) {
  std::set<QString> seen;
  const char* const places[] = {"viewAll",        "viewSequence",     "viewOutcome",   "viewBudget",
                                "prepareReview",  "outcomeTablePage", "outcomeChange", "outcomeDiagnosis",
                                "bridgePolarity", "bridgeWhatIf",     "prepareWiring", "prepareOhmmeter",
                                "prepareStock",   "channelOverview",  "recordPage",    "checkWatch"};
  const auto visit = [&] {
    QTest::qWait(20);
    for (auto* view : window.findChildren<QTableView*>()) {
      if (!view->isVisible() || view->model()->rowCount() == 0 || seen.contains(view->objectName())) continue;
      EXPECT_FALSE(view->objectName().isEmpty());
      seen.insert(view->objectName());
      const QModelIndex cell =
          view->model()->index(view->model()->rowCount() - 1, shownColumns(*view).last());
      QApplication::clipboard()->setText("nothing was copied");
      view->setFocus();
      view->selectionModel()->select(cell, QItemSelectionModel::ClearAndSelect);
      view->selectionModel()->setCurrentIndex(cell, QItemSelectionModel::NoUpdate);
      QTest::keyClick(view, Qt::Key_C, Qt::ControlModifier);
      EXPECT_NE(QApplication::clipboard()->text(), "nothing was copied") << view->objectName().toStdString();
      EXPECT_TRUE(QApplication::clipboard()->mimeData()->hasHtml()) << view->objectName().toStdString();
      TableTools::of(*view).copy(CopyPart::All, CopyHeadings::With);
      const CellBlock block = cellsOfTabbedText(QApplication::clipboard()->text());
      ASSERT_EQ(block.size(), shownRows(*view).size() + 1) << view->objectName().toStdString();
      const QVariant full =
          view->model()->index(shownRows(*view).first(), shownColumns(*view).first()).data(Qt::EditRole);
      if (full.isValid() && view->verticalHeader()->isHidden()) {
        EXPECT_EQ(unguardedCell(block[1][0]), full.toString()) << view->objectName().toStdString();
      }
    }
  };
  for (const char* place : places)
    if (auto* action = window.findChild<QAction*>(place)) {
      action->trigger();
      visit();
    }
  trigger("viewAll");
  for (int tab = 0; tab < find<SequencePane>("sequencePane")->count(); ++tab) {
    find<SequencePane>("sequencePane")->setCurrentIndex(tab);
    visit();
  }
  for (const char* name : {"sequenceTable", "shuntTable", "uncertaintyTable", "budgetTable", "reviewTable",
                           "resistorTable", "pinTable", "overviewTable", "recordRemarks", "outcomeTable"})
    EXPECT_TRUE(seen.contains(name)) << name;
}

TEST_F(Tables, WhatIsCopiedGivesTheSameValuesWhenPastedBack) {
  const core::Document before = session.document();
  for (const char* name : {"sequenceTable", "shuntTable"}) {
    QTableView& view = table(name);
    for (int column = 0; column < view.model()->columnCount(); ++column) {
      if (!(view.model()->flags(view.model()->index(0, column)) & Qt::ItemIsEditable)) continue;
      choose(view, 0, column, view.model()->rowCount() - 1, column);
      TableTools::of(view).copy();
      TableTools::of(view).paste();
      EXPECT_EQ(warned(), "");
    }
  }
  EXPECT_EQ(session.document(), before);
}

TEST_F(Tables, HeadingsComeWithAndAreKnownWhenTheyComeBack) {
  QTableView& view = table("sequenceTable");
  choose(view, 1, Step::Settle, 2, Step::Hold);
  TableTools::of(view).copy(CopyPart::Chosen, CopyHeadings::With);
  EXPECT_TRUE(QApplication::clipboard()->text().startsWith("Settle [s]\tHold [s]\n"));
  choose(view, 3, Step::Settle, 3, Step::Settle);
  QTest::keyClick(&view, Qt::Key_V, Qt::ControlModifier);
  EXPECT_EQ(warned(), "");
  EXPECT_EQ(session.channel()->setup.sequence[4].hold, core::Duration(1.0 / 3));
}

TEST_F(Tables, OneValueFillsAndABlockRepeats) {
  QTableView& view = table("sequenceTable");
  choose(view, 0, Step::Hold, 5, Step::Hold);
  const int steps = session.history().index();
  paste(view, "7");
  EXPECT_EQ(session.channel()->setup.sequence[5].hold, core::Duration(7));
  EXPECT_EQ(session.history().index(), steps + 1);
  choose(view, 0, Step::Hold, 5, Step::Hold);
  paste(view, "1\n2\n");
  EXPECT_EQ(session.channel()->setup.sequence[4].hold, core::Duration(1));
  EXPECT_EQ(session.channel()->setup.sequence[5].hold, core::Duration(2));
  session.history().undo();
  EXPECT_EQ(session.channel()->setup.sequence[4].hold, core::Duration(7));
}

TEST_F(Tables, ABadCellOfABlockIsNamedAndNothingIsChanged) {
  QTableView& view = table("sequenceTable");
  const core::Document before = session.document();
  choose(view, 0, Step::Hold, 0, Step::Hold);
  paste(view, "5\n6\nsoon");
  EXPECT_TRUE(warned().contains("row 3")) << warned().toStdString();
  EXPECT_TRUE(warned().contains("Hold")) << warned().toStdString();
  EXPECT_EQ(session.document(), before);
  choose(view, 0, Step::Hold, 0, Step::Hold);
  paste(view, "5\t6");
  EXPECT_TRUE(warned().contains("worked out")) << warned().toStdString();
  EXPECT_EQ(session.document(), before);
}

TEST_F(Tables, CutEmptiesWhatItCopied) {
  QTableView& view = table("sequenceTable");
  choose(view, 0, Step::Label, 1, Step::Label);
  const QString first = text(view, 0, Step::Label);
  QTest::keyClick(&view, Qt::Key_X, Qt::ControlModifier);
  EXPECT_TRUE(QApplication::clipboard()->text().startsWith(first + "\n"));
  EXPECT_EQ(text(view, 0, Step::Label), "");
  EXPECT_EQ(text(view, 1, Step::Label), "");
}

TEST_F(Tables, ControlReturnPutsWhatIsTypedIntoAllChosenCells) {
  QTableView& view = table("sequenceTable");
  for (const bool typed : {true, false}) {
    choose(view, 1, Step::Hold, 4, Step::Hold);
    const int steps = session.history().index();
    QTest::keyClick(&view, Qt::Key_F2);
    auto* editor = view.viewport()->findChild<QLineEdit*>();
    ASSERT_TRUE(editor);
    if (typed) {
      editor->selectAll();
      QTest::keyClicks(editor, "9");
    }
    QTest::keyClick(editor, Qt::Key_Return, Qt::ControlModifier);
    EXPECT_TRUE(QTest::qWaitFor([&] { return session.history().index() == steps + 1; }));
    for (const std::size_t step : {1u, 2u, 3u, 4u})
      EXPECT_EQ(session.channel()->setup.sequence[step].hold, core::Duration(typed ? 9 : 3));
    EXPECT_NE(session.channel()->setup.sequence[5].hold, core::Duration(typed ? 9 : 3));
    // The second time the text is left as it is: F2, Ctrl+Return fills with the current cell.
    choose(view, 1, Step::Hold, 1, Step::Hold);
    paste(view, "3");
  }
}

TEST_F(Tables, FillsDownRightAndInSeries) {
  QTableView& view = table("sequenceTable");
  choose(view, 0, Step::Label, 1, Step::Label);
  paste(view, "S-01\nS-02");
  choose(view, 0, Step::Label, 5, Step::Label);
  trigger("fillSeries");
  EXPECT_EQ(session.channel()->setup.sequence[5].label, "S-06");
  choose(view, 0, Step::Hold, 1, Step::Hold);
  paste(view, "1.1\n1.2");
  choose(view, 0, Step::Hold, 4, Step::Hold);
  const int steps = session.history().index();
  trigger("fillSeries");
  EXPECT_EQ(session.history().index(), steps + 1);
  EXPECT_EQ(session.channel()->setup.sequence[4].hold, core::Duration(1.5));
  choose(view, 0, Step::Hold, 8, Step::Hold);
  trigger("fillDown");
  EXPECT_EQ(session.channel()->setup.sequence[8].hold, core::Duration(1.1));
  choose(view, 2, Step::Settle, 3, Step::Hold);
  trigger("fillRight");
  EXPECT_EQ(session.channel()->setup.sequence[3].hold, session.channel()->setup.sequence[3].settle);
  const core::Document before = session.document();
  choose(view, 0, Step::Settle, 3, Step::Simulated);
  trigger("fillDown");
  EXPECT_TRUE(warned().contains("row 2")) << warned().toStdString();
  EXPECT_EQ(session.document(), before);
}

TEST_F(Tables, SelectsAllAndAColumn) {
  QTableView& view = table("sequenceTable");
  choose(view, 2, Step::Hold, 2, Step::Hold);
  QTest::keyClick(&view, Qt::Key_Space, Qt::ControlModifier);
  EXPECT_EQ(chosenCells(view).size(), 9);
  QTest::keyClick(&view, Qt::Key_A, Qt::ControlModifier);
  EXPECT_EQ(chosenCells(view).size(), 9 * Step::ColumnCount);
}

TEST_F(Tables, AHeaderSortsByValueThenBackwardsThenNot) {
  trigger("prepareStock");
  QTableView& view = table("resistorTable");
  const QStringList natural = shown(view, ResistorModel::Id);
  clickHeader(view, ResistorModel::Value);
  EXPECT_EQ(shown(view, ResistorModel::Id),
            (QStringList{"S-106", "S-102", "S-107", "S-108", "S-105", "S-101", "S-103", "S-104"}));
  // Copied as shown, and Return goes to the row that is shown below.
  choose(view, 5, ResistorModel::Id, 5, ResistorModel::Id);
  view.selectionModel()->select(view.model()->index(1, ResistorModel::Id), QItemSelectionModel::Select);
  TableTools::of(view).copy();
  EXPECT_EQ(QApplication::clipboard()->text(), "S-106\nS-102");
  choose(view, 1, ResistorModel::Id, 1, ResistorModel::Id);
  paste(view, "X-1\nX-2");
  EXPECT_EQ(session.document().stock->resistors[1].id, "X-1");
  EXPECT_EQ(session.document().stock->resistors[6].id, "X-2");
  session.history().undo();
  clickHeader(view, ResistorModel::Value);
  EXPECT_EQ(shown(view, ResistorModel::Id).first(), "S-104");
  clickHeader(view, ResistorModel::Value);
  EXPECT_EQ(shown(view, ResistorModel::Id), natural);
}

TEST_F(Tables, TheSequenceKeepsItsOrderAndSaysWhy) {
  QTableView& view = table("sequenceTable");
  const QStringList before = shown(view, Step::Expected);
  clickHeader(view, Step::Expected);
  EXPECT_EQ(shown(view, Step::Expected), before);
  EXPECT_TRUE(
      view.model()->headerData(Step::Expected, Qt::Horizontal, Qt::ToolTipRole).toString().contains("order"));
}

TEST_F(Tables, RowsThatAreLeftOutAreToldAndNeverTouched) {
  trigger("prepareStock");
  QTableView& view = table("resistorTable");
  choose(view, 0, ResistorModel::Note, 0, ResistorModel::Note);
  QTest::keyClick(&view, Qt::Key_F, Qt::ControlModifier | Qt::ShiftModifier);
  auto* words = find<QLineEdit>("filterWords");
  ASSERT_TRUE(words && words->isVisible());
  words->setText("kΩ");  // a letter that no key of the test has
  EXPECT_EQ(shown(view, ResistorModel::Id), (QStringList{"S-101", "S-103", "S-105", "S-107", "S-108"}));
  EXPECT_EQ(told("filterCount"), "3 of 8 rows are left out.");
  view.selectAll();
  choose(view, 0, ResistorModel::Note, 7, ResistorModel::Note);
  paste(view, "seen");
  EXPECT_EQ(session.document().stock->resistors[0].note, "seen");
  EXPECT_EQ(session.document().stock->resistors[3].note, "by the kestrel");
  TableTools::of(view).copy();
  EXPECT_EQ(QApplication::clipboard()->text(), "seen\nseen\nseen\nseen\nseen");
  choose(view, 7, ResistorModel::Note, 7, ResistorModel::Note);
  paste(view, "a\nb");
  EXPECT_TRUE(warned().contains("filtered out")) << warned().toStdString();
  QTest::keyClick(words, Qt::Key_Escape);
  EXPECT_EQ(shown(view, ResistorModel::Id).size(), 8);
}

TEST_F(Tables, FindsInTheTableAndThenInTheDocument) {
  QTableView& view = table("sequenceTable");
  choose(view, 8, Step::Label, 8, Step::Label);
  paste(view, "kestrel");
  choose(view, 0, Step::Label, 0, Step::Label);  // what is told of the chosen step holds its name, too
  trigger("find");
  auto* words = find<QLineEdit>("findWords");
  ASSERT_TRUE(words && words->isVisible());
  QTest::keyClicks(words, "KESTREL");
  QTest::keyClick(words, Qt::Key_Return);
  EXPECT_EQ(told("findCount"), "1 of 3");
  EXPECT_EQ(view.currentIndex(), view.model()->index(8, Step::Label));
  trigger("findNext");
  EXPECT_TRUE(told("findCount").startsWith("2 of 3: ")) << told("findCount").toStdString();
  EXPECT_EQ(session.selection().channel, 1u) << "the note of the second channel";
  trigger("findNext");
  EXPECT_TRUE(told("findCount").startsWith("3 of 3: resistor S-104"));
  EXPECT_TRUE(table("resistorTable").isVisible());
  EXPECT_EQ(table("resistorTable").currentIndex().row(), 3);
  EXPECT_EQ(MatchMarks::of(table("resistorTable")).count(), 1);
  trigger("findNext");
  EXPECT_FALSE(told("findCount").startsWith("nothing"));
  QTest::keyClick(words, Qt::Key_Escape);
  EXPECT_FALSE(words->isVisible());
}

TEST_F(Tables, FindTellsWhenThereIsNothingAndGoesRound) {
  trigger("find");
  auto* words = find<QLineEdit>("findWords");
  QTest::keyClicks(words, "no such words");
  QTest::keyClick(words, Qt::Key_Return);
  EXPECT_EQ(told("findCount"), "nothing found");
  words->clear();
  QTest::keyClicks(words, "loose");
  QTest::keyClick(words, Qt::Key_Return);
  EXPECT_TRUE(told("findCount").startsWith("1 of 1: TP-01, check")) << told("findCount").toStdString();
  EXPECT_TRUE(table("recordRemarks").isVisible());
  EXPECT_EQ(table("recordRemarks").currentIndex().row(), 0);
}

TEST_F(Tables, AStepIsDraggedByItsNumber) {
  trigger("viewSequence");
  QTableView& view = table("sequenceTable");
  const auto before = session.channel()->setup.sequence;
  QWidget* at = view.viewport();
  const auto middle = [&](int row) {
    return view.visualRect(view.model()->index(row, Step::Number)).center();
  };
  QTest::mousePress(at, Qt::LeftButton, {}, middle(1));
  for (const int row : {2, 3})
    for (const int down : {0, 4}) {
      QMouseEvent move(QEvent::MouseMove, QPointF(middle(row) + QPoint(0, down)),
                       QPointF(at->mapToGlobal(middle(row))), Qt::NoButton, Qt::LeftButton, Qt::NoModifier);
      QApplication::sendEvent(at, &move);
    }
  QTest::mouseRelease(at, Qt::LeftButton, {}, middle(3) + QPoint(0, 4));
  const auto after = session.channel()->setup.sequence;
  EXPECT_EQ(after[3], before[1]);
  EXPECT_EQ(after[1], before[2]);
  session.history().undo();
  EXPECT_EQ(session.channel()->setup.sequence, before);
}

TEST_F(Tables, ColumnsThatAreLeftOutStayLeftOut) {
  trigger("prepareStock");
  QTableView& view = table("resistorTable");
  QTimer::singleShot(0, [&] {
    auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
    ASSERT_TRUE(menu);
    for (QAction* action : menu->actions())
      if (action->text() == "Due") action->trigger();
    menu->close();
  });
  emit view.horizontalHeader()->customContextMenuRequested({20, 5});
  EXPECT_TRUE(view.isColumnHidden(ResistorModel::Due));
  Session again(tableDocument());
  MainWindow other(again);
  other.show();
  other.findChild<QAction*>("prepareStock")->trigger();
  EXPECT_TRUE(other.findChild<QTableView*>("resistorTable")->isColumnHidden(ResistorModel::Due));
}

class Dropping : public Tables {
 protected:
  QString write(const QString& name, const QByteArray& text) {
    QFile file(folder.filePath(name));
    EXPECT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(text);
    return file.fileName();
  }
  /// Over the field of the channel's name, which would take text for itself.
  QWidget& target() { return *find<QLineEdit>("channelName"); }
  QString drag(const QStringList& paths) {
    data.setUrls({});
    QList<QUrl> urls;
    for (const QString& path : paths) urls << QUrl::fromLocalFile(path);
    data.setUrls(urls);
    QDragEnterEvent enter({5, 5}, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(&target(), &enter);
    EXPECT_TRUE(enter.isAccepted());
    auto* hint = find<QLabel>("dropHint");
    EXPECT_TRUE(hint->isVisible());
    return hint->text();
  }
  void drop() {
    QDropEvent event({5, 5}, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(&target(), &event);
    EXPECT_FALSE(find<QLabel>("dropHint")->isVisible());
    QCoreApplication::processEvents();
  }

  QTemporaryDir folder;
  QMimeData data;
};

TEST_F(Dropping, ADocumentIsOpened) {
  const QString path = folder.filePath("other.bridgecal");
  core::Document other = tableDocument();
  other.title = "another";
  ASSERT_TRUE(saveDocument(other, path));
  EXPECT_EQ(drag({path}), "Open the document other.bridgecal");
  drop();
  EXPECT_EQ(session.document().title, "another");
}

TEST_F(Dropping, ListsAreKnownByTheirHeadings) {
  const QString resistors = write("stock.csv", "id,resistance,tolerance\nN-1,350,0.1 %\n");
  const QString channels = write("list.csv", "name,group,gauge_factor\nTP-77,left,2.05\n");
  const QString recording = write("run.csv", "time,TP-01\n0,1\n1,2\n2,3\n");
  EXPECT_EQ(drag({resistors}), "Take resistors into the stock from stock.csv");
  EXPECT_EQ(drag({channels, recording}), "Take resistors into the stock from stock.csv")
      << "the drag goes on";
  QDragLeaveEvent leave;
  QApplication::sendEvent(&target(), &leave);
  EXPECT_EQ(drag({channels, recording}), "Add channels from the list list.csv\nRead the recording run.csv");
  QApplication::sendEvent(&target(), &leave);
  EXPECT_FALSE(find<QLabel>("dropHint")->isVisible());
}

TEST_F(Dropping, WhatIsNoneOfThemIsRefusedByName) {
  const QString picture = write("photo.png", "\x89PNG\r\n\x1a\n");
  const core::Document before = session.document();
  EXPECT_TRUE(drag({picture}).startsWith("Not taken: photo.png."));
  drop();
  EXPECT_TRUE(warned().startsWith("Not taken: photo.png."));
  EXPECT_EQ(session.document(), before);
}

}  // namespace
}  // namespace ui
