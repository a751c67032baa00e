// SPDX-License-Identifier: GPL-3.0-or-later
#include <QSplitter>

#include "tests/ui/safety_shown.h"
#include "ui/bridge_pane.h"
#include "ui/outcome_view.h"
#include "ui/preferences/preferences.h"
#include "ui/safety/window_place.h"
#include "ui/stock/stock_page.h"

namespace ui {
namespace {

const QRect screen(0, 0, 1280, 800);

TEST(OnScreen, AWindowThatCanBeSeenStaysWhereItIs) {
  for (const QRect& window : {QRect(100, 100, 800, 600), QRect(0, 40, 1280, 760), QRect(900, 300, 800, 600)})
    EXPECT_EQ(onScreen(window, {screen}), window);
}

TEST(OnScreen, AWindowOfAScreenThatIsGoneComesBackWithItsTitleBar) {
  for (const QRect& window :
       {QRect(3000, 100, 800, 600), QRect(-2000, -900, 800, 600), QRect(100, -500, 800, 600),
        QRect(100, 790, 800, 600), QRect(0, 0, 4000, 3000), QRect(-790, 100, 800, 600)}) {
    const QRect shown = onScreen(window, {screen});
    EXPECT_TRUE(screen.contains(shown)) << window.x() << " " << window.y();
    EXPECT_GE(shown.top(), 20) << "room for the title bar";
  }
}

TEST(OnScreen, ItComesToTheNearestScreen) {
  const QRect right(1280, 0, 1920, 1080);
  EXPECT_TRUE(right.contains(onScreen(QRect(4000, 200, 800, 600), {screen, right})));
  EXPECT_EQ(onScreen(QRect(1900, 200, 800, 600), {screen, right}), QRect(1900, 200, 800, 600));
}

class PlaceTest : public SafetyTest {
 protected:
  PlaceTest() {
    core::Channel checked =
        sample::withCheckReading(sample::withCheckReading(sample::nineStepChannel(), 1), 1.02);
    checked.name = "TP-02";
    checked.checks[0].name = "pre-test";
    checked.checks[1].name = "post-test";
    EXPECT_TRUE(
        saveDocument(sample::documentOf({sample::nineStepChannel(), checked}), path("tail.bridgecal")));
  }
};

TEST_F(PlaceTest, TheNextStartGoesOnWhereTheLastEnded) {
  {
    ShownWindow shown;
    ASSERT_TRUE(shown.window.openFile(path("tail.bridgecal")));
    shown.session.selectChannel(1);
    shown.session.selectCheck(0);
    shown.session.selectStep(4);
    shown.window.findChild<OutcomeView*>()->showPage(OutcomeView::Page::Working);
    shown.trigger("viewOutcome");
    shown.window.setGeometry(60, 60, 1000, 700);
    QCoreApplication::processEvents();
    ASSERT_TRUE(shown.window.close());
  }
  Session session;
  MainWindow window(session);
  window.restoreLayout();
  window.show();
  window.openLast();
  EXPECT_EQ(window.path(), path("tail.bridgecal"));
  EXPECT_EQ(session.channel()->name, "TP-02");
  EXPECT_EQ(session.selection().check, 0u);
  EXPECT_EQ(session.selection().step, 4u);
  EXPECT_EQ(window.findChild<OutcomeView*>()->page(), OutcomeView::Page::Working);
  EXPECT_TRUE(window.findChild<OutcomeView*>()->isVisible());
  EXPECT_FALSE(window.findChild<BridgePane*>()->isVisible());
  EXPECT_EQ(window.geometry(), QRect(60, 60, 1000, 700));
  EXPECT_FALSE(window.isWindowModified());
}

TEST_F(PlaceTest, APageInPlaceOfTheViewsComesBackToo) {
  {
    ShownWindow shown;
    ASSERT_TRUE(shown.window.openFile(path("tail.bridgecal")));
    shown.trigger("prepareStock");
    shown.window.close();
  }
  ShownWindow next;
  next.window.openLast();
  EXPECT_TRUE(next.window.findChild<StockPage*>()->isVisible());
}

TEST_F(PlaceTest, SplittersComeBack) {
  QList<int> sizes;
  {
    ShownWindow shown;
    auto* columns = shown.window.findChild<QSplitter*>("columnsSplitter");
    columns->setSizes({500, 700});
    QCoreApplication::processEvents();
    sizes = columns->sizes();
    shown.window.close();
  }
  Session session;
  MainWindow window(session);
  window.restoreLayout();
  window.show();
  QCoreApplication::processEvents();
  const QList<int> now = window.findChild<QSplitter*>("columnsSplitter")->sizes();
  EXPECT_NEAR(now[0], sizes[0], 2);  // shares of a width in whole pixels
}

TEST_F(PlaceTest, NothingIsOpenedForWhoDoesNotWantItNorWhatIsGone) {
  {
    ShownWindow shown;
    ASSERT_TRUE(shown.window.openFile(path("tail.bridgecal")));
    shown.window.close();
  }
  Preferences wanted = preferences();
  wanted.openLast = false;
  setPreferences(wanted);
  {
    ShownWindow next;
    next.window.openLast();
    EXPECT_EQ(next.window.path(), QString());
  }
  wanted.openLast = true;
  setPreferences(wanted);
  ASSERT_TRUE(QFile::remove(path("tail.bridgecal")));
  ShownWindow next;
  next.window.openLast();
  EXPECT_EQ(next.window.path(), QString());
  EXPECT_EQ(next.warned(), QString());
}

TEST_F(PlaceTest, ADocumentThatIsOpenElsewhereIsNotAskedForAtTheStart) {
  ShownWindow first;
  ASSERT_TRUE(first.window.openFile(path("tail.bridgecal")));
  ShownWindow next;
  next.window.openLast();
  EXPECT_EQ(next.window.path(), QString());
}

TEST_F(PlaceTest, TheDemoLeavesNoTrace) {
  {
    ShownWindow shown(oneChannel());
    shown.window.showAsUnsaved("Demo");
    shown.window.setGeometry(5, 45, 900, 700);
    shown.window.close();
  }
  Session session;
  MainWindow window(session);
  window.restoreLayout();
  EXPECT_NE(window.geometry(), QRect(5, 45, 900, 700));
}

TEST_F(PlaceTest, OldestPlacesAreForgotten) {
  for (int k = 0; k < 60; ++k)
    rememberPlace(QString("/plans/%1").arg(k), Place{.channel = "TP", .check = {}, .step = k, .view = {}});
  EXPECT_FALSE(rememberedPlace("/plans/0"));
  ASSERT_TRUE(rememberedPlace("/plans/59"));
  EXPECT_EQ(rememberedPlace("/plans/59")->step, 59);
}

}  // namespace
}  // namespace ui
