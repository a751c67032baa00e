// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <QAction>
#include <QLabel>
#include <QPushButton>
#include <QTest>
#include <QToolBar>
#include <QToolButton>

#include "tests/support/printing.h"
#include "tests/support/sample_channel.h"
#include "ui/channel_list.h"
#include "ui/help/next_steps.h"
#include "ui/help/tour.h"
#include "ui/main_window.h"
#include "ui/preferences/preferences.h"
#include "ui/state_file.h"

namespace ui {
namespace {

class TourOfWindow : public testing::Test {
 protected:
  explicit TourOfWindow(core::Document document = {}) : session(std::move(document)), window(session) {
    stateFile().remove("tourSeen");
    window.setDemo([] { return sample::documentOf({sample::nineStepChannel()}); });
    window.resize(1280, 800);
    window.show();
    window.activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
  }
  Tour* begun() {
    window.findChild<QAction*>("tour")->trigger();
    return window.findChild<Tour*>();
  }
  template <class Widget>
  Widget* part(const char* name) {
    return window.findChild<Widget*>(name);
  }

  Session session;
  MainWindow window;
};

TEST_F(TourOfWindow, PointsAtPartsOneAfterTheOther) {
  Tour* tour = begun();
  ASSERT_TRUE(tour);
  EXPECT_GE(tour->count(), 6u);
  EXPECT_LE(tour->count(), 8u);
  for (std::size_t step = 0; step < tour->count(); ++step) {
    tour->goTo(step);
    EXPECT_TRUE(window.rect().contains(tour->geometry())) << step;
    EXPECT_TRUE(part<QWidget>("tourFrame")->isVisible());
    EXPECT_FALSE(part<QLabel>("tourText")->text().isEmpty());
    EXPECT_EQ(tour->accessibleDescription(), part<QLabel>("tourText")->text());
    // The words are not cut off.
    const QLabel* text = part<QLabel>("tourText");
    EXPECT_GE(text->height(), text->heightForWidth(text->width()));
  }
}

TEST_F(TourOfWindow, LeavesTheWindowInUse) {
  Tour* tour = begun();
  ASSERT_TRUE(tour);
  EXPECT_EQ(QApplication::activeModalWidget(), nullptr);
  QTest::mouseClick(part<QToolButton>("addChannel"), Qt::LeftButton);
  EXPECT_EQ(session.document().channels.size(), 1u);
  EXPECT_EQ(tour->step(), 0u);
}

TEST_F(TourOfWindow, EscapeEndsItForGood) {
  EXPECT_FALSE(tourWasSeen());
  ASSERT_TRUE(begun());
  QTest::keyClick(part<QPushButton>("tourNext"), Qt::Key_Escape);
  EXPECT_TRUE(QTest::qWaitFor([&] { return window.findChild<Tour*>() == nullptr; }));
  EXPECT_TRUE(tourWasSeen());
  EXPECT_EQ(part<QWidget>("tourFrame"), nullptr);
}

TEST_F(TourOfWindow, EndsAtItsLastStepAndBySkip) {
  Tour* tour = begun();
  tour->goTo(tour->count() - 1);
  QTest::mouseClick(part<QPushButton>("tourNext"), Qt::LeftButton);
  EXPECT_TRUE(QTest::qWaitFor([&] { return window.findChild<Tour*>() == nullptr; }));
  begun();
  QTest::mouseClick(part<QPushButton>("tourSkip"), Qt::LeftButton);
  EXPECT_TRUE(QTest::qWaitFor([&] { return window.findChild<Tour*>() == nullptr; }));
}

TEST_F(TourOfWindow, FollowsTheSizeOfTheWindow) {
  Tour* tour = begun();
  tour->goTo(tour->count() - 2);
  window.resize(1000, 700);
  QCoreApplication::processEvents();
  EXPECT_TRUE(window.rect().contains(tour->geometry()));
}

TEST_F(TourOfWindow, FollowsAPartThatMovesWithWhatHoldsIt) {
  ASSERT_TRUE(begun());
  const int before = part<QWidget>("tourFrame")->y();
  QToolBar* bar = window.addToolBar("as that of recovered work");
  bar->addAction("one line");
  EXPECT_TRUE(QTest::qWaitFor([&] { return part<QWidget>("tourFrame")->y() > before; }, 3000));
}

TEST_F(TourOfWindow, OffersTheDemo) {
  ASSERT_TRUE(begun());
  auto* offer = part<QPushButton>("tourOffer");
  ASSERT_TRUE(offer->isVisible());
  QTest::mouseClick(offer, Qt::LeftButton);
  EXPECT_EQ(session.document().channels.size(), 1u);
  EXPECT_EQ(window.path(), QString());
}

TEST_F(TourOfWindow, IsNotOfferedWithoutAScreen) {
  window.offerTour();
  QTest::qWait(900);  // longer than the moment after which it would come
  EXPECT_EQ(window.findChild<Tour*>(), nullptr);
}

// ---- empty places --------------------------------------------------------------------------------

using EmptyPlaces = TourOfWindow;

/// Of the next steps within a widget.
QStringList offered(const QWidget* view) {
  QStringList names;
  for (const auto* steps : view->findChildren<NextSteps*>())
    for (const auto* button : steps->findChildren<QPushButton*>())
      if (button->isVisible()) names << button->objectName();
  return names;
}

TEST_F(EmptyPlaces, WithoutAChannelTheViewsOfferToAddOne) {
  for (const char* view : {"channelColumn", "bridgePane", "outcomeView", "sequencePane"})
    EXPECT_TRUE(offered(part<QWidget>(view)).contains("next_channelAdd")) << view;
  for (const char* page : {"prepareWiring", "prepareOhmmeter", "prepareRun", "channelOverview"}) {
    window.findChild<QAction*>(page)->trigger();
    QCoreApplication::processEvents();
    QStringList shown = offered(window.centralWidget());
    shown.removeOne("next_channelAdd");  // that of the list of channels
    EXPECT_TRUE(shown.contains("next_channelAdd")) << page;
  }
}

TEST_F(EmptyPlaces, AButtonDoesTheNextThing) {
  auto* add = part<QWidget>("channelColumn")->findChild<QPushButton*>("next_channelAdd");
  ASSERT_TRUE(add);
  QTest::mouseClick(add, Qt::LeftButton);
  EXPECT_TRUE(QTest::qWaitFor([&] { return session.document().channels.size() == 1; }));
  EXPECT_TRUE(offered(part<QWidget>("channelColumn")).isEmpty());
  EXPECT_TRUE(QTest::qWaitFor(
      [&] { return offered(part<QWidget>("sequencePane")).contains("next_sequenceAddShunt"); }));
}

TEST_F(EmptyPlaces, WhatIsNotMissingIsNotOffered) {
  session.reset(sample::documentOf({sample::withCheckReading(sample::nineStepChannel(), 1)}));
  QCoreApplication::processEvents();
  EXPECT_TRUE(offered(part<QWidget>("sequencePane")).isEmpty());
  EXPECT_TRUE(offered(part<QWidget>("outcomeView")).isEmpty());
  window.findChild<QAction*>("outcomeChange")->trigger();
  QCoreApplication::processEvents();
  EXPECT_TRUE(offered(part<QWidget>("outcomeView")).contains("next_checkAdd"));
}

TEST_F(EmptyPlaces, WhoWantsNoHintsGetsNone) {
  Preferences wanted = preferences();
  wanted.hints = false;
  setPreferences(wanted);
  EXPECT_TRUE(offered(&window).isEmpty());
  wanted.hints = true;
  setPreferences(wanted);
  EXPECT_FALSE(offered(&window).isEmpty());
}

}  // namespace
}  // namespace ui
