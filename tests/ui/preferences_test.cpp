// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/preferences/preferences.h"

#include <gtest/gtest.h>

#include <QAction>
#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QMessageBox>
#include <QPushButton>
#include <QRadioButton>
#include <QSignalSpy>
#include <QTest>
#include <QTimer>

#include "tests/support/printing.h"
#include "tests/support/sample_channel.h"
#include "ui/bridge_view.h"
#include "ui/fields/count_edit.h"
#include "ui/main_window.h"
#include "ui/preferences/appearance.h"
#include "ui/preferences/preferences_page.h"
#include "ui/record/saving.h"
#include "ui/sequence_pane.h"
#include "ui/state_file.h"
#include "ui/theme.h"

namespace ui {
namespace {

class PreferencesShown : public testing::Test {
 protected:
  PreferencesShown()
      : forgotten((stateFile().clear(), true)),
        session(sample::documentOf({sample::nineStepChannel()})),
        window(session) {
    window.show();
    window.activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
    QTest::keyClick(&window, Qt::Key_Comma, Qt::ControlModifier);
  }
  ~PreferencesShown() override {
    stateFile().clear();
    emit PreferencesSignal::instance().preferencesChanged();
  }

  template <typename T>
  T* find(const char* name) {
    auto* found = window.findChild<T*>(name);
    EXPECT_TRUE(found && found->isVisible()) << name;
    return found;
  }
  void press(QAbstractButton* button) {
    QTest::mouseClick(button, Qt::LeftButton, {}, {10, button->height() / 2});
  }

  bool forgotten;
  Session session;
  MainWindow window;
};

TEST(Preferences, AreAsUsualWhenNothingIsRememberedOrNobodyCouldMeanIt) {
  stateFile().clear();
  EXPECT_EQ(preferences(), usualPreferences());
  stateFile().setValue("textPercent", 3000);
  stateFile().setValue("colours", "plaid");
  EXPECT_EQ(preferences(), usualPreferences());
  stateFile().clear();
}

TEST(Preferences, ComeBackAsTheyWereAndTellOfEachChangeOnce) {
  stateFile().clear();
  QSignalSpy changes(&PreferencesSignal::instance(), &PreferencesSignal::preferencesChanged);
  Preferences wanted;
  wanted.language = "de";
  wanted.colours = Preferences::Colours::Dark;
  wanted.textPercent = 130;
  wanted.lessMotion = true;
  wanted.openLast = wanted.notify = wanted.autosave = wanted.hints = false;
  wanted.person = "R. Alder";
  setPreferences(wanted);
  setPreferences(wanted);
  EXPECT_EQ(preferences(), wanted);
  EXPECT_EQ(changes.count(), 1);
  // As the rest of the program reads them.
  EXPECT_EQ(stateFile().value("colours").toString(), "dark");
  EXPECT_FALSE(stateFile().value("autosave", true).toBool());
  EXPECT_EQ(personName(), "R. Alder");
  setPreferences(usualPreferences());
  EXPECT_TRUE(stateFile().allKeys().isEmpty()) << "what is as usual is not remembered";
}

TEST_F(PreferencesShown, EveryControlIsNamedAndDescribed) {
  auto* page = window.findChild<PreferencesPage*>();
  ASSERT_TRUE(page && page->isVisible());
  int controls = 0;
  for (QWidget* widget : page->findChildren<QWidget*>()) {
    if (widget->focusPolicy() == Qt::NoFocus || widget->focusProxy() ||
        widget->objectName().startsWith("qt_"))
      continue;
    if (qobject_cast<QLabel*>(widget)) continue;
    const auto* button = qobject_cast<QAbstractButton*>(widget);
    EXPECT_FALSE(widget->accessibleName().isEmpty() && (!button || button->text().isEmpty()))
        << widget->metaObject()->className() << " " << widget->objectName().toStdString();
    ++controls;
  }
  EXPECT_GE(controls, 14);
}

TEST_F(PreferencesShown, ColoursHoldAtOnceAndAtTheNextStart) {
  press(find<QRadioButton>("coloursDark"));
  EXPECT_TRUE(QTest::qWaitFor([&] { return isDark(window.palette()); }));
  EXPECT_TRUE(window.findChild<QAction*>("viewDark")->isChecked());
  {
    QApplication::setPalette(QPalette());
    Session other;
    const MainWindow next(other);
    EXPECT_TRUE(isDark(QApplication::palette()));
  }
  window.findChild<QAction*>("viewLight")->trigger();
  EXPECT_TRUE(QTest::qWaitFor([&] { return !isDark(window.palette()); }));
  EXPECT_TRUE(find<QRadioButton>("coloursLight")->isChecked()) << "the page follows the menu";
  press(find<QRadioButton>("coloursSystem"));
  EXPECT_FALSE(stateFile().contains("colours"));
}

TEST_F(PreferencesShown, TextOfEveryKindGrowsAndShrinksByKeys) {
  auto* notice = window.findChild<QLabel*>("noticeText");
  auto* small = window.findChild<QLabel*>("outcomeScope");
  const double usual = QFontInfo(notice->font()).pointSizeF();
  const double usualSmall = QFontInfo(small->font()).pointSizeF();
  const QHeaderView* columns = window.findChild<SequencePane*>()->steps().horizontalHeader();
  const int usualColumn = columns->sectionSize(SequenceModel::Measured);
  for (int i = 0; i < 5; ++i) QTest::keyClick(&window, Qt::Key_Plus, Qt::ControlModifier);
  QCoreApplication::processEvents();  // widgets are told of their font by an event
  EXPECT_EQ(preferences().textPercent, 150);
  EXPECT_EQ(find<CountEdit>("preferredTextPercent")->value(), 150);
  // Derived: 150 % of the size; fonts come in whole pixels, so within one of them (0.75 pt at 96 dpi).
  EXPECT_NEAR(QFontInfo(notice->font()).pointSizeF(), 1.5 * usual, 0.75);
  EXPECT_NEAR(QFontInfo(small->font()).pointSizeF(), 1.5 * usualSmall, 0.75);
  // Five steps, each rounded to a pixel: half a pixel each, which the next ones enlarge a little.
  EXPECT_NEAR(columns->sectionSize(SequenceModel::Measured), 1.5 * usualColumn, 4);
  QTest::keyClick(&window, Qt::Key_Minus, Qt::ControlModifier);
  EXPECT_EQ(preferences().textPercent, 140);
  QTest::keyClick(&window, Qt::Key_0, Qt::ControlModifier);
  QCoreApplication::processEvents();
  EXPECT_EQ(preferences().textPercent, 100);
  EXPECT_NEAR(QFontInfo(notice->font()).pointSizeF(), usual, 1e-9);  // the very font that it had
}

TEST_F(PreferencesShown, TextStaysWithinItsLimits) {
  for (int i = 0; i < 15; ++i) QTest::keyClick(&window, Qt::Key_Plus, Qt::ControlModifier);
  EXPECT_EQ(preferences().textPercent, 200);
  for (int i = 0; i < 15; ++i) QTest::keyClick(&window, Qt::Key_Minus, Qt::ControlModifier);
  EXPECT_EQ(preferences().textPercent, 80);
}

TEST_F(PreferencesShown, DotsStandStillWhereLittleIsToMove) {
  auto* bridge = window.findChild<BridgeView*>();
  window.findChild<QAction*>("viewAll")->trigger();
  window.findChild<QAction*>("currentsDots")->trigger();
  session.selectStep(0);
  const auto frame = [&] { return bridge->grab().toImage(); };
  const QImage before = frame();
  EXPECT_TRUE(QTest::qWaitFor([&] { return frame() != before; }, 2000)) << "dots move";
  QTest::keyClick(&window, Qt::Key_Comma, Qt::ControlModifier);
  press(find<QCheckBox>("preferLessMotion"));
  EXPECT_TRUE(preferences().lessMotion);
  window.findChild<QAction*>("viewAll")->trigger();
  QTest::qWait(50);  // for what was still to be painted
  const QImage still = frame();
  QTest::qWait(400);  // ten times the time between two pictures of moving dots
  EXPECT_EQ(frame(), still);
}

TEST_F(PreferencesShown, SymbolsOfTheOpenBridgeFollow) {
  auto* bridge = window.findChild<BridgeView*>();
  press(find<QRadioButton>("preferIeee"));
  EXPECT_EQ(bridge->look().symbols, Symbols::Ieee315);
  EXPECT_TRUE(window.findChild<QAction*>("symbolsIeee")->isChecked());
}

TEST_F(PreferencesShown, ATickIsRememberedAndTheWheelOverItChangesNothing) {
  for (const char* name : {"preferOpenLast", "preferAutosave", "preferNotify", "preferHints"}) {
    auto* box = find<QCheckBox>(name);
    ASSERT_TRUE(box->isChecked()) << name;
    press(box);
    EXPECT_FALSE(box->isChecked()) << name;
  }
  const Preferences now = preferences();
  EXPECT_FALSE(now.openLast || now.autosave || now.notify || now.hints);
  auto* language = find<QComboBox>("preferredLanguage");
  const int before = language->currentIndex();
  find<QLineEdit>("preferredPerson")->setFocus();
  QWheelEvent wheel({5, 5}, language->mapToGlobal(QPoint(5, 5)), {}, {0, -120}, Qt::NoButton, {},
                    Qt::NoScrollPhase, false);
  QApplication::sendEvent(language, &wheel);
  EXPECT_EQ(language->currentIndex(), before);
}

TEST_F(PreferencesShown, TheNameOfWhoWorksHereStandsInWhatIsSaved) {
  auto* person = find<QLineEdit>("preferredPerson");
  person->setFocus();
  QTest::keyClicks(person, "R. Alder");
  QTest::keyClick(person, Qt::Key_Return);
  EXPECT_EQ(savingNow().person, "R. Alder");
}

TEST_F(PreferencesShown, ALanguageIsRememberedForTheNextStart) {
  auto* language = find<QComboBox>("preferredLanguage");
  const int german = language->findData("de");
  ASSERT_GT(german, 0);
  language->setCurrentIndex(german);
  EXPECT_EQ(stateFile().value("language").toString(), "de");
  EXPECT_EQ(language->itemText(german), "Deutsch");
}

TEST_F(PreferencesShown, EverythingIsAsUsualAgainOnlyAfterAsking) {
  press(find<QRadioButton>("coloursDark"));
  press(find<QCheckBox>("preferHints"));
  const auto answer = [](QMessageBox::StandardButton button) {
    QTimer::singleShot(0, [button] {
      auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
      ASSERT_TRUE(box);
      QTest::mouseClick(box->button(button), Qt::LeftButton);
    });
  };
  auto* reset = window.findChild<QPushButton*>("resetPreferences");
  answer(QMessageBox::Cancel);
  reset->click();
  EXPECT_FALSE(preferences().hints);
  answer(QMessageBox::Reset);
  reset->click();
  EXPECT_EQ(preferences(), usualPreferences());
  EXPECT_TRUE(find<QCheckBox>("preferHints")->isChecked());
}

}  // namespace
}  // namespace ui
