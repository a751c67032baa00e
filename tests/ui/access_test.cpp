// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAbstractSlider>
#include <QAbstractSpinBox>
#include <QAccessible>
#include <QApplication>
#include <QButtonGroup>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QTest>
#include <algorithm>

#include "tests/support/practice_questions.h"
#include "tests/support/sample_channel.h"
#include "tests/support/window_walk.h"
#include "ui/bridge/bridge_canvas.h"
#include "ui/bridge_pane.h"
#include "ui/practice/practice_page.h"
#include "ui/present/presentation.h"
#include "ui/state_file.h"
#include "ui/theme.h"

// Whoever works without a mouse or without eyes reaches and is told everything of the pages for teaching.

namespace ui {
namespace {

std::string nameOf(const QWidget* widget) {
  return (widget->objectName().isEmpty() ? QString("a ") + widget->metaObject()->className()
                                         : widget->objectName())
      .toStdString();
}

std::vector<QWidget*> interactiveOf(const QWidget& page) {
  std::vector<QWidget*> found;
  for (QWidget* widget : page.findChildren<QWidget*>())
    if (widget->isVisibleTo(&page) && widget->isEnabledTo(&page) && test::isInteractive(widget))
      found.push_back(widget);
  return found;
}

/// Tab reaches one of an exclusive group, from which the arrows reach the others.
bool isReached(QWidget* widget, const std::vector<QWidget*>& walked) {
  const auto has = [&](QWidget* one) { return std::find(walked.begin(), walked.end(), one) != walked.end(); };
  const auto* button = qobject_cast<const QAbstractButton*>(widget);
  if (!button || !button->group() || !button->group()->exclusive()) return has(widget);
  const auto group = button->group()->buttons();
  return std::any_of(group.begin(), group.end(), has);
}

std::string accessibleName(QWidget* widget) {
  QAccessibleInterface* face = QAccessible::queryAccessibleInterface(widget);
  return face ? face->text(QAccessible::Name).toStdString() : std::string();
}

/// Everything that Tab comes by, in its order, until it is back.
std::vector<QWidget*> walkedByTab(QWidget& page) {
  std::vector<QWidget*> walked;
  // A drawing takes Tab from part to part before it lets it go on.
  constexpr int mostTabs = 400;
  for (int k = 0; k < mostTabs; ++k) {
    QTest::keyClick(QApplication::focusWidget() ? QApplication::focusWidget() : &page, Qt::Key_Tab);
    QWidget* focus = QApplication::focusWidget();
    if (!focus) break;
    if (!walked.empty() && focus == walked.back()) continue;
    if (!walked.empty() && focus == walked.front()) break;
    walked.push_back(focus);
  }
  return walked;
}

void expectAccessible(QWidget& page, const char* what) {
  SCOPED_TRACE(what);
  page.activateWindow();
  ASSERT_TRUE(QTest::qWaitForWindowActive(&page));
  const std::vector<QWidget*> all = interactiveOf(page), walked = walkedByTab(page);
  EXPECT_FALSE(all.empty());
  for (QWidget* widget : all) {
    EXPECT_NE(accessibleName(widget), "") << nameOf(widget) << " has no accessible name";
    if (widget->objectName() == "bridgeMenuButton") continue;  // the menu key opens the same menu
    EXPECT_TRUE(isReached(widget, walked)) << nameOf(widget) << " is not reached by the keyboard";
  }
}

class AccessTest : public testing::Test {
 protected:
  AccessTest() : session(sample::documentOf({sample::withCheckReading(sample::nineStepChannel(), 1.001)})) {
    stateFile("practice").clear();
    session.selectStep(1);
  }

  std::unique_ptr<PracticePage> practice() {
    auto page = std::make_unique<PracticePage>(session);
    page->setSource([](const PracticeSet& set, std::size_t index) {
      core::Question question = test::handMade(kindOf(set, index), index);
      question.given = {{"Bridge", "quarter bridge, three wires"}, {"R1", "175 kΩ over arm 1"}};
      question.readings.columns = {{"Step", true}, {"Expected, µm/m", true}, {"Shown, µm/m", true}};
      question.readings.rows = {{{"1", "0", "0"}, {}}, {{"2", "-998", "-950"}, {}}};
      return question;
    });
    return page;
  }

  Session session;
};

TEST_F(AccessTest, AllPagesOfTheBridgeAreReachedAndNamed) {
  BridgePane pane(session);
  pane.resize(1000, 700);
  pane.show();
  using Page = BridgePane::Page;
  const std::pair<Page, const char*> pages[] = {
      {Page::Drawing, "drawing"}, {Page::Polarity, "polarity map"}, {Page::WhatIf, "what if"}};
  for (const auto& [page, name] : pages) {
    pane.showPage(page);
    expectAccessible(pane, name);
  }
}

TEST_F(AccessTest, AllPagesOfThePracticeAreReachedAndNamed) {
  auto page = practice();
  page->resize(980, 690);
  page->show();
  page->setFocus();
  expectAccessible(*page, "start");
  page->findChild<QPushButton*>("practiceBegin")->click();
  expectAccessible(*page, "question");
  QTest::keyClick(page->findChild<QWidget*>("questionPage"), Qt::Key_1);
  page->findChild<QPushButton*>("questionAnswer")->click();
  expectAccessible(*page, "answered question");
  while (!page->run()->isOver()) {
    page->findChild<QPushButton*>("questionNext")->click();
    if (auto* number = page->findChild<QLineEdit*>("questionNumber"); number && number->isVisible())
      number->insert("1");
    QTest::keyClick(page->findChild<QWidget*>("questionPage"), Qt::Key_1);
    page->findChild<QPushButton*>("questionAnswer")->click();
    if (!page->run()->isOver()) QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
  }
  page->findChild<QPushButton*>("questionNext")->click();
  expectAccessible(*page, "summary");
}

TEST_F(AccessTest, ChoicesComeBeforeTheButtonsInTheOrderOfTab) {
  auto page = practice();
  page->resize(980, 690);
  page->show();
  page->activateWindow();
  ASSERT_TRUE(QTest::qWaitForWindowActive(page.get()));
  page->setFocus();
  for (int question = 0; question < 2; ++question) {
    if (question == 0) page->findChild<QPushButton*>("practiceBegin")->click();
    EXPECT_EQ(QApplication::focusWidget()->objectName(), "choice1");
    QStringList walked;
    for (QWidget* widget : walkedByTab(*page)) walked << widget->objectName();
    const auto place = [&](const char* name) { return walked.indexOf(name); };
    EXPECT_GE(place("questionAnswer"), 0);
    EXPECT_EQ(place("questionAnswer"), place("questionLeave") + 1);
    page->setFocus();
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_2);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
  }
}

TEST_F(AccessTest, ThePresentationIsNamedInAllItsViewsAndSaysEachStep) {
  Presentation show(session, Presentation::View::Bridge);
  show.showFullScreen();
  EXPECT_TRUE(show.focusPolicy() & Qt::TabFocus);
  EXPECT_NE(accessibleName(&show), "");
  for (const int view : {1, 2, 3, 4}) {
    QTest::keyClick(&show, static_cast<Qt::Key>(Qt::Key_0 + view));
    for (QWidget* widget : interactiveOf(show))
      EXPECT_NE(accessibleName(widget), "") << nameOf(widget) << " has no accessible name";
  }
  QTest::keyClick(&show, Qt::Key_1);
  EXPECT_FALSE(show.findChild<BridgeCanvas*>()->accessibleDescription().isEmpty());
  QTest::keyClick(&show, Qt::Key_Right);
  EXPECT_TRUE(show.accessibleDescription().contains("Step 3 of"));
}

/// What is not hidden lies within what is seen of `page`, as far as it does not scroll.
void expectNothingCutOff(const QWidget& page, std::initializer_list<const char*> names) {
  for (const char* name : names)
    for (const QWidget* part : page.findChildren<QWidget*>(name)) {
      if (!part->isVisible()) continue;
      const QRect place(part->mapTo(&page, QPoint(0, 0)), part->size());
      EXPECT_TRUE(page.rect().contains(place)) << name;
      EXPECT_GE(part->width(), std::min(part->minimumSizeHint().width(), page.width())) << name;
    }
}

void expectOnlyScrollingDown(const QWidget& page) {
  for (const QScrollArea* area : page.findChildren<QScrollArea*>())
    if (area->isVisible()) {
      EXPECT_EQ(area->horizontalScrollBar()->maximum(), 0) << area->objectName().toStdString();
    }
}

/// 1280 x 800 pixels of a screen at 200 % are 640 x 400: what the window leaves the page is less.
TEST_F(AccessTest, ThePracticeHasRoomAtTwoHundredPercentInBothThemes) {
  const QPalette before = QApplication::palette();
  for (const QPalette& palette : {lightPalette(), darkPalette()}) {
    QApplication::setPalette(palette);
    auto page = practice();
    page->resize(360, 300);
    page->show();
    page->setFocus();
    QTest::qWait(20);
    expectOnlyScrollingDown(*page);
    page->findChild<QPushButton*>("practiceBegin")->click();
    QTest::qWait(20);
    expectOnlyScrollingDown(*page);
    expectNothingCutOff(*page, {"questionHead", "questionTally", "questionLeave", "questionAnswer"});
    EXPECT_EQ(page->width(), 360) << "nothing needs more";
    QTest::keyClick(page->findChild<QWidget*>("questionPage"), Qt::Key_1);
    page->findChild<QPushButton*>("questionAnswer")->click();
    QTest::qWait(20);
    expectOnlyScrollingDown(*page);
    expectNothingCutOff(*page, {"questionLeave", "questionNext"});
    // The verdict has been scrolled to.
    const auto* scroll = page->findChild<QScrollArea*>("questionScroll");
    const auto* verdict = page->findChild<QLabel*>("questionVerdict");
    EXPECT_TRUE(scroll->viewport()->rect().contains(verdict->mapTo(scroll->viewport(), QPoint(0, 0))));
  }
  QApplication::setPalette(before);
}

TEST_F(AccessTest, ThePresentationHasRoomAtTwoHundredPercentInBothThemes) {
  const QPalette before = QApplication::palette();
  for (const QPalette& palette : {lightPalette(), darkPalette()}) {
    QApplication::setPalette(palette);
    Presentation show(session, Presentation::View::Bridge);
    show.resize(640, 400);
    show.show();
    QTest::qWait(20);
    EXPECT_EQ(show.size(), QSize(640, 400)) << "nothing needs more";
    expectNothingCutOff(show, {"presentationStep", "presentationTitle", "presentationSentence",
                               "presentationBridge", "outputBar", "presentationKeys"});
    // Half of the screen is the drawing's.
    EXPECT_GE(show.findChild<BridgeCanvas*>()->height(), 170);
    for (const int view : {2, 3, 4}) {
      QTest::keyClick(&show, static_cast<Qt::Key>(Qt::Key_0 + view));
      QTest::qWait(20);
      EXPECT_LE(show.width(), 640) << view;
      EXPECT_LE(show.height(), 400) << view;
    }
  }
  QApplication::setPalette(before);
}

}  // namespace
}  // namespace ui
