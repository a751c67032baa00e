// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QLabel>
#include <QLineEdit>
#include <QMenuBar>
#include <QPrinter>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>
#include <QToolButton>
#include <map>

#include "tests/support/printing.h"
#include "tests/support/sample_channel.h"
#include "ui/bridge_view.h"
#include "ui/commands/command_book.h"
#include "ui/commands/command_list.h"
#include "ui/commands/command_model.h"
#include "ui/main_window.h"
#include "ui/state_file.h"

namespace ui {
namespace {

class CommandsShown : public testing::Test {
 protected:
  CommandsShown()
      : forgotten((stateFile().clear(), true)),
        session(sample::documentOf({sample::nineStepChannel()})),
        window(session),
        book(*window.findChild<CommandBook*>()),
        list(book, &window) {
    window.show();
    list.show();
    list.activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&list));
  }
  ~CommandsShown() override { stateFile().clear(); }

  QLineEdit* search() { return list.findChild<QLineEdit*>("commandSearch"); }
  QTableView* table() { return list.findChild<QTableView*>("commandTable"); }
  QLineEdit* keys() { return list.findChild<QLineEdit*>("commandKeys"); }
  QString told() { return list.findChild<QLabel*>("keysTold")->text(); }
  QPushButton* button(const char* name) { return list.findChild<QPushButton*>(name); }
  void find(const QString& words) {
    search()->setFocus();
    search()->clear();
    QTest::keyClicks(search(), words);
  }
  QString cell(int row, int column) { return table()->model()->index(row, column).data().toString(); }
  QString chosen() { return cell(table()->currentIndex().row(), CommandModel::Text); }
  QAction* action(const char* name) { return window.findChild<QAction*>(name); }
  void press(Qt::Key key, Qt::KeyboardModifiers held) {
    keys()->setFocus();
    QTest::keyClick(keys(), key, held);
  }

  bool forgotten;
  Session session;
  MainWindow window;
  CommandBook& book;
  CommandList list;
};

TEST(CommandSearch, FindsWordsInAnyOrderWhateverTheCaseAndWithoutAccents) {
  EXPECT_TRUE(hasAllWords("Recording strip under the Sequence", "seq REC"));
  EXPECT_TRUE(hasAllWords("Prüfung schließen", "schliessen prufung"));
  EXPECT_TRUE(hasAllWords("Deposer", "déposer"));
  EXPECT_FALSE(hasAllWords("Recording strip", "strip wiring"));
  EXPECT_TRUE(hasAllWords("anything", "  "));
}

TEST_F(CommandsShown, EveryEntryOfEveryMenuIsListed) {
  int entries = 0;
  const std::vector<Command> commands = book.commands();
  const std::function<void(QMenu&)> look = [&](QMenu& menu) {
    for (QAction* action : menu.actions()) {
      if (action->menu()) {
        look(*action->menu());
      } else if (!action->isSeparator() && !action->objectName().isEmpty()) {
        ++entries;
        bool listed = false;
        for (const Command& command : commands) listed = listed || command.action == action;
        EXPECT_TRUE(listed) << action->objectName().toStdString();
      }
    }
  };
  for (QAction* top : window.menuBar()->actions()) look(*top->menu());
  EXPECT_GT(entries, 60);
}

TEST_F(CommandsShown, NoTwoThingsHaveOneKeyInTheSamePlace) {
  // Of the window's commands; a place of its own may answer to the same key only while it has the keyboard.
  std::map<QString, QString> holders;
  for (const Command& command : book.commands()) {
    const bool isLetterOfMenu = command.place == "Menus";
    if (!command.hasOwnKeys() && !isLetterOfMenu) continue;
    for (const QKeySequence& key : command.keys) {
      const auto [at, isNew] = holders.emplace(key.toString(), command.text);
      EXPECT_TRUE(isNew) << key.toString().toStdString() << ": " << at->second.toStdString() << ", "
                         << command.text.toStdString();
    }
  }
  EXPECT_GT(holders.size(), 40u);
}

TEST_F(CommandsShown, TypedWordsNarrowTheListArrowsChooseAndReturnRuns) {
  const int all = table()->model()->rowCount();
  find("budget only");
  EXPECT_LT(table()->model()->rowCount(), all);
  EXPECT_EQ(chosen(), "Only Budget");
  find("add");
  const QString first = chosen();
  QTest::keyClick(search(), Qt::Key_Down);
  EXPECT_NE(chosen(), first);
  EXPECT_TRUE(search()->hasFocus());
  QTest::keyClick(search(), Qt::Key_Up);
  EXPECT_EQ(chosen(), first);
  find("duplicate channel");
  ASSERT_EQ(chosen(), "Duplicate channel");
  QTest::keyClick(search(), Qt::Key_Return);
  EXPECT_FALSE(list.isVisible());
  EXPECT_TRUE(QTest::qWaitFor([&] { return session.document().channels.size() == 2; }));
}

TEST_F(CommandsShown, WhatCannotBeDoneNowSaysWhy) {
  find("undo");
  ASSERT_EQ(cell(0, CommandModel::Text), "Undo");
  EXPECT_FALSE(cell(0, CommandModel::State).isEmpty());
  QTest::keyClick(search(), Qt::Key_Return);
  EXPECT_TRUE(list.isVisible());
  EXPECT_TRUE(told().contains("Nothing was done yet")) << told().toStdString();
  EXPECT_FALSE(button("runCommand")->isEnabled());
}

TEST_F(CommandsShown, AKeyIsRecordedByPressingItActsAndIsThereAtTheNextStart) {
  find("remove channel");
  ASSERT_EQ(chosen(), "Remove channel");
  press(Qt::Key_F9, Qt::ControlModifier);
  EXPECT_EQ(action("channelRemove")->shortcut(), QKeySequence("Ctrl+F9"));
  EXPECT_EQ(stateFile().value("keys/channelRemove").toString(), "Ctrl+F9");
  EXPECT_EQ(keys()->text(), QKeySequence("Ctrl+F9").toString(QKeySequence::NativeText));
  {
    Session other;
    MainWindow next(other);
    EXPECT_EQ(next.findChild<QAction*>("channelRemove")->shortcut(), QKeySequence("Ctrl+F9"));
    EXPECT_TRUE(next.findChild<CommandBook*>()->usualKeys("channelRemove").isEmpty());
  }
  list.close();
  window.activateWindow();
  ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
  QTest::keyClick(&window, Qt::Key_F9, Qt::ControlModifier);
  EXPECT_TRUE(session.document().channels.empty());
}

TEST_F(CommandsShown, AConflictNamesTheOtherCommandWhichLosesTheKeyOnlyWhenItIsTakenOver) {
  find("remove channel");
  press(Qt::Key_D, Qt::ControlModifier);
  EXPECT_TRUE(told().contains("Duplicate channel")) << told().toStdString();
  EXPECT_TRUE(action("channelRemove")->shortcuts().isEmpty());
  EXPECT_EQ(action("channelDuplicate")->shortcut(), QKeySequence("Ctrl+D"));
  QTest::mouseClick(button("takeKeys"), Qt::LeftButton);
  EXPECT_EQ(action("channelRemove")->shortcut(), QKeySequence("Ctrl+D"));
  EXPECT_TRUE(action("channelDuplicate")->shortcuts().isEmpty());

  // The usual keys of the one come back from the other.
  find("duplicate channel");
  QTest::mouseClick(button("usualKeys"), Qt::LeftButton);
  EXPECT_EQ(action("channelDuplicate")->shortcut(), QKeySequence("Ctrl+D"));
  EXPECT_TRUE(action("channelRemove")->shortcuts().isEmpty());
  EXPECT_TRUE(stateFile().allKeys().filter("keys/").isEmpty());
}

TEST_F(CommandsShown, ReturnTakesKeysOverThatWaitForIt) {
  find("remove channel");
  press(Qt::Key_D, Qt::ControlModifier);
  ASSERT_TRUE(button("takeKeys")->isVisible());
  press(Qt::Key_Return, Qt::NoModifier);
  EXPECT_EQ(action("channelRemove")->shortcut(), QKeySequence("Ctrl+D"));
  EXPECT_TRUE(action("channelDuplicate")->shortcuts().isEmpty());
  EXPECT_FALSE(button("takeKeys")->isVisible());
  press(Qt::Key_Return, Qt::NoModifier);  // nothing waits any more
  EXPECT_TRUE(told().contains("for typing")) << told().toStdString();
  QTest::mouseClick(button("usualKeys"), Qt::LeftButton);
  find("duplicate channel");
  QTest::mouseClick(button("usualKeys"), Qt::LeftButton);
}

TEST_F(CommandsShown, KeysOfPlacesAndLettersForTypingAreNotGivenAway) {
  find("remove channel");
  press(Qt::Key_C, Qt::ControlModifier);
  EXPECT_TRUE(told().contains("fixed")) << told().toStdString();
  EXPECT_FALSE(button("takeKeys")->isVisible());
  press(Qt::Key_K, Qt::NoModifier);
  EXPECT_TRUE(told().contains("typing")) << told().toStdString();
  press(Qt::Key_Plus, Qt::ShiftModifier);
  EXPECT_TRUE(told().contains("typing")) << told().toStdString();
  EXPECT_TRUE(action("channelRemove")->shortcuts().isEmpty());

  find("tables paste");
  ASSERT_EQ(chosen(), "Paste cells");
  EXPECT_FALSE(keys()->isEnabled());
  EXPECT_FALSE(told().isEmpty());
}

TEST_F(CommandsShown, KeysAreClearedAndAllBecomeUsualAgain) {
  find("only bridge");
  QTest::mouseClick(button("clearKeys"), Qt::LeftButton);
  EXPECT_TRUE(action("viewBridge")->shortcuts().isEmpty());
  EXPECT_TRUE(stateFile().contains("keys/viewBridge"));
  find("only outcome");
  press(Qt::Key_F11, Qt::NoModifier);
  EXPECT_EQ(action("viewOutcome")->shortcut(), QKeySequence("F11"));
  QTest::mouseClick(button("allUsualKeys"), Qt::LeftButton);
  EXPECT_EQ(action("viewBridge")->shortcut(), QKeySequence("Alt+1"));
  EXPECT_EQ(action("viewOutcome")->shortcut(), QKeySequence("Alt+3"));
  EXPECT_TRUE(stateFile().allKeys().filter("keys/").isEmpty());
}

TEST_F(CommandsShown, ATipNamesTheKeyThatItsCommandHas) {
  auto* back = window.findChild<QToolButton*>("wiringPageBack");
  if (!back) {
    for (QToolButton* each : window.findChildren<QToolButton*>())
      if (each->toolTip().contains("(Alt+0)")) back = each;
  }
  ASSERT_TRUE(back);
  ASSERT_TRUE(back->toolTip().contains("(Alt+0)"));
  find("all views");
  press(Qt::Key_F12, Qt::NoModifier);
  EXPECT_TRUE(back->toolTip().contains("(F12)")) << back->toolTip().toStdString();
  QTest::mouseClick(button("clearKeys"), Qt::LeftButton);
  EXPECT_FALSE(back->toolTip().contains("(")) << back->toolTip().toStdString();
  QTest::mouseClick(button("usualKeys"), Qt::LeftButton);
  EXPECT_TRUE(back->toolTip().contains("(Alt+0)"));
}

TEST_F(CommandsShown, TheListGoesToTheClipboardAndOntoPaper) {
  QTest::mouseClick(button("copyKeys"), Qt::LeftButton);
  const QString copied = QApplication::clipboard()->text();
  EXPECT_TRUE(copied.contains("Only Bridge\tView\tAlt+1\n")) << copied.left(400).toStdString();
  EXPECT_TRUE(copied.contains("Tables\t"));
  const QTemporaryDir folder;
  QPrinter printer;
  printer.setOutputFormat(QPrinter::PdfFormat);
  printer.setOutputFileName(folder.filePath("keys.pdf"));
  list.printTo(printer);
  QFile pdf(folder.filePath("keys.pdf"));
  ASSERT_TRUE(pdf.open(QIODevice::ReadOnly));
  EXPECT_TRUE(pdf.readAll().startsWith("%PDF"));
}

TEST_F(CommandsShown, InTheDrawingItsOwnKeysGoBeforeTheWindows) {
  list.close();
  window.activateWindow();
  ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
  auto* bridge = window.findChild<BridgeView*>();
  bridge->setFocus();
  ASSERT_EQ(action("channelCopies")->shortcut(), action("bridgeDuplicate")->shortcut());
  const QSignalSpy duplicated(action("bridgeDuplicate"), &QAction::triggered);
  QTest::keyClick(bridge, Qt::Key_D, Qt::ControlModifier | Qt::ShiftModifier);
  EXPECT_EQ(duplicated.count(), 1);
}

TEST(Commands, AreListedByTheirOwnKeys) {
  stateFile().clear();
  Session session;
  MainWindow window(session);
  window.show();
  window.activateWindow();
  ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
  bool shown = false;
  QTimer::singleShot(0, [&] {
    auto* list = qobject_cast<CommandList*>(QApplication::activeModalWidget());
    shown = list != nullptr;
    if (list) QTest::keyClick(list, Qt::Key_Escape);
  });
  QTest::keyClick(&window, Qt::Key_K, Qt::ControlModifier | Qt::ShiftModifier);
  EXPECT_TRUE(shown);
}

}  // namespace
}  // namespace ui
