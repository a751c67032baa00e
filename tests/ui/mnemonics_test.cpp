// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QAction>
#include <QGroupBox>
#include <QLabel>
#include <QMenu>
#include <QMenuBar>
#include <QTabBar>
#include <QTest>
#include <map>

#include "tests/support/sample_channel.h"
#include "ui/locale.h"
#include "ui/main_window.h"

// What is pressed together with Alt leads to one place, in every language that comes with the program. Where
// two places wait for the same letter, Qt opens neither.

namespace ui {
namespace {

using TakenLetters = std::map<QString, QString>;  ///< "Alt+B", and the texts that it belongs to

QString keysOf(const QKeySequence& keys) { return keys.toString(QKeySequence::PortableText); }

void takeLetter(TakenLetters& letters, const QString& keys, const QString& text, const QString& language) {
  if (keys.isEmpty()) return;
  EXPECT_EQ(letters.count(keys), 0u) << keys.toStdString() << " leads to " << text.toStdString() << " and to "
                                     << letters[keys].toStdString() << " (" << language.toStdString() << ")";
  letters[keys] = text;
}

/// The menus of the bar, and the keys of commands that are letters with Alt.
TakenLetters lettersOfTheBar(const MainWindow& window, const QString& language) {
  TakenLetters letters;
  for (const QAction* menu : window.menuBar()->actions())
    takeLetter(letters, keysOf(QKeySequence::mnemonic(menu->text())), menu->text(), language);
  for (const QAction* action : window.findChildren<QAction*>())
    for (const QKeySequence& keys : action->shortcuts())
      if (const QString text = keysOf(keys); text.size() == 5 && text.startsWith("Alt+"))
        takeLetter(letters, text, action->text(), language);
  return letters;
}

/// Texts of `widget` that wait for a letter.
QStringList lettered(const QWidget& widget) {
  if (const auto* button = qobject_cast<const QAbstractButton*>(&widget)) return {button->text()};
  if (const auto* label = qobject_cast<const QLabel*>(&widget); label && label->buddy())
    return {label->text()};
  if (const auto* box = qobject_cast<const QGroupBox*>(&widget)) return {box->title()};
  QStringList texts;
  if (const auto* tabs = qobject_cast<const QTabBar*>(&widget))
    for (int k = 0; k < tabs->count(); ++k) texts << tabs->tabText(k);
  return texts;
}

void holdMenuAgainstItself(const QMenu& menu, const QString& language) {
  TakenLetters letters;
  for (const QAction* action : menu.actions()) {
    takeLetter(letters, keysOf(QKeySequence::mnemonic(action->text())), action->text(), language);
    if (action->menu()) holdMenuAgainstItself(*action->menu(), language);
  }
}

class Mnemonics : public testing::TestWithParam<const char*> {
 protected:
  Mnemonics() : session(sample::documentOf({sample::nineStepChannel()})), window(session) { window.show(); }

  const QString language = GetParam();
  const SpokenScope words{languageFor(GetParam(), true)};
  Session session;
  MainWindow window;
};

TEST_P(Mnemonics, NothingInTheWindowTakesALetterFromTheMenuBar) {
  // Pages that are not on view now are held against the bar too: some day they are.
  const TakenLetters bar = lettersOfTheBar(window, language);
  EXPECT_EQ(bar.size(), 22u) << "eleven menus, Alt+R and the digits";
  int seen = 0;
  for (const QWidget* widget : window.findChildren<QWidget*>()) {
    if (widget->window() != &window) continue;
    for (const QString& text : lettered(*widget)) {
      const QString keys = keysOf(QKeySequence::mnemonic(text));
      if (keys.isEmpty()) continue;
      ++seen;
      const auto taken = bar.find(keys);
      EXPECT_TRUE(taken == bar.end())
          << keys.toStdString() << " leads to " << text.toStdString() << " ("
          << widget->objectName().toStdString() << ") and to " << taken->second.toStdString();
    }
  }
  EXPECT_GT(seen, 20) << "little was looked at";
}

TEST_P(Mnemonics, NoTwoPlacesOnViewHaveTheSameLetter) {
  for (const char* page :
       {"viewAll", "teachPractice", "prepareRun", "checkWatch", "prepareWiring", "prepareStock",
        "prepareOhmmeter", "recordPage", "channelOverview", "preferences"}) {
    window.findChild<QAction*>(page)->trigger();
    QTest::qWait(10);
    TakenLetters letters = lettersOfTheBar(window, language);
    for (const QWidget* widget : window.findChildren<QWidget*>())
      if (widget->window() == &window && widget->isVisible() && widget->isEnabled())
        for (const QString& text : lettered(*widget))
          takeLetter(letters, keysOf(QKeySequence::mnemonic(text)), text, language + ", " + page);
  }
}

TEST_P(Mnemonics, EntriesOfOneMenuHaveLettersOfTheirOwn) {
  for (const QAction* menu : window.menuBar()->actions()) {
    ASSERT_TRUE(menu->menu());
    holdMenuAgainstItself(*menu->menu(), language);
  }
}

INSTANTIATE_TEST_SUITE_P(Languages, Mnemonics, testing::Values("en", "de"));

}  // namespace
}  // namespace ui
