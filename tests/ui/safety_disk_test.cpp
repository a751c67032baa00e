// SPDX-License-Identifier: GPL-3.0-or-later
#include <QPlainTextEdit>
#include <QScrollArea>
#include <QScrollBar>

#include "tests/ui/safety_shown.h"
#include "ui/safe_file.h"
#include "ui/safety/disk_watch.h"

namespace ui {
namespace {

class DiskTest : public SafetyTest {
 protected:
  DiskTest() {
    EXPECT_TRUE(saveDocument(oneChannel(), path("tail.bridgecal")));
    EXPECT_TRUE(shown.window.openFile(path("tail.bridgecal")));
  }
  /// As editors and synchronising programs do: a new file in the place of the old one.
  void replacedByOthers(const char* channel) {
    ASSERT_TRUE(saveBytes(path("tail.bridgecal"), textOf(oneChannel(channel))));
  }
  /// As long as any notice would take.
  bool staysQuiet() {
    return !QTest::qWaitFor([&] { return shown.shows("diskBar"); }, 700);
  }

  ShownWindow shown;
};

TEST_F(DiskTest, AChangeByOthersIsToldWithoutStoppingTheWork) {
  replacedByOthers("TP-77");
  ASSERT_TRUE(shown.waitUntilShown("diskBar"));
  EXPECT_TRUE(shown.text("diskText").contains("tail.bridgecal"));
  EXPECT_EQ(QApplication::activeModalWidget(), nullptr);
  EXPECT_EQ(shown.session.channel()->name, "TP-01") << "nothing is taken over unasked";
}

TEST_F(DiskTest, TheBarTakesItsRoomFromTheViewsWithoutMakingThemScroll) {
  const QSize size(1280, 760);
  shown.window.resize(size);
  QCoreApplication::processEvents();
  const auto* views = shown.find<QScrollArea>("viewsScroll");
  ASSERT_TRUE(views);
  ASSERT_EQ(views->verticalScrollBar()->maximum(), 0);
  replacedByOthers("TP-77");
  ASSERT_TRUE(shown.waitUntilShown("diskBar"));
  QTest::qWait(30);  // layouts settle from inside outwards
  EXPECT_EQ(shown.window.size(), size);
  EXPECT_EQ(views->verticalScrollBar()->maximum(), 0);
  EXPECT_EQ(views->horizontalScrollBar()->maximum(), 0);
  shown.click("diskKeep");
  EXPECT_FALSE(shown.shows("diskBar"));
}

TEST_F(DiskTest, WhatDiffersIsSaidInWords) {
  replacedByOthers("TP-77");
  ASSERT_TRUE(shown.waitUntilShown("diskBar"));
  shown.click("diskDifferences");
  auto* text = shown.find<QPlainTextEdit>("differencesText");
  ASSERT_TRUE(text);
  EXPECT_TRUE(QTest::qWaitFor([&] { return text->toPlainText().contains("TP-77"); }))
      << text->toPlainText().toStdString();
  text->window()->close();
}

TEST_F(DiskTest, TheOneOnDiskIsLoadedAndUndoBringsMineBack) {
  shown.rename("TP-50");
  replacedByOthers("TP-77");
  ASSERT_TRUE(shown.waitUntilShown("diskBar"));
  shown.click("diskLoad");
  EXPECT_EQ(shown.session.channel()->name, "TP-77");
  EXPECT_FALSE(shown.window.isWindowModified());
  EXPECT_FALSE(shown.shows("diskBar"));
  shown.trigger("undo");
  EXPECT_EQ(shown.session.channel()->name, "TP-50");
  EXPECT_TRUE(shown.window.isWindowModified());
}

TEST_F(DiskTest, MineIsKeptAsUnsavedAndSavedWithoutAskingAgain) {
  replacedByOthers("TP-77");
  ASSERT_TRUE(shown.waitUntilShown("diskBar"));
  shown.click("diskKeep");
  EXPECT_FALSE(shown.shows("diskBar"));
  EXPECT_TRUE(shown.window.isWindowModified()) << "what is on the disk is not what is here";
  ASSERT_TRUE(shown.window.save());
  EXPECT_EQ(openDocument(path("tail.bridgecal"))->channels[0]->name, "TP-01");
}

TEST_F(DiskTest, SavingOverWhatOthersWroteAsksFirst) {
  shown.rename("TP-50");
  replacedByOthers("TP-77");  // and at once, before any notice
  QString told;
  answerNext("Cancel", &told);
  EXPECT_FALSE(shown.window.save());
  EXPECT_TRUE(told.contains("Another program changed tail.bridgecal")) << told.toStdString();
  EXPECT_EQ(openDocument(path("tail.bridgecal"))->channels[0]->name, "TP-77");
  answerNext("saveOver");
  EXPECT_TRUE(shown.window.save());
  EXPECT_EQ(openDocument(path("tail.bridgecal"))->channels[0]->name, "TP-50");
  EXPECT_FALSE(shown.shows("diskBar"));
}

TEST_F(DiskTest, EveryReplacementIsSeen) {
  for (const char* name : {"TP-71", "TP-72", "TP-73"}) {
    replacedByOthers(name);
    ASSERT_TRUE(shown.waitUntilShown("diskBar")) << name;
    shown.click("diskLoad");
    EXPECT_EQ(shown.session.channel()->name, name);
    EXPECT_FALSE(shown.shows("diskBar"));
  }
}

TEST_F(DiskTest, OurOwnSavingAndAMereTouchAreNoChange) {
  shown.rename("TP-50");
  ASSERT_TRUE(shown.window.save());
  EXPECT_TRUE(staysQuiet());
  put(path("tail.bridgecal"), contentOf(path("tail.bridgecal")));
  EXPECT_TRUE(staysQuiet());
}

TEST_F(DiskTest, ADeletedFileIsToldAndMayBeSavedAgain) {
  ASSERT_TRUE(QFile::remove(path("tail.bridgecal")));
  ASSERT_TRUE(shown.waitUntilShown("diskBar"));
  EXPECT_TRUE(shown.text("diskText").contains("no longer there"));
  EXPECT_FALSE(shown.shows("diskLoad"));
  shown.click("diskSave");
  EXPECT_TRUE(openDocument(path("tail.bridgecal")));
  EXPECT_FALSE(shown.shows("diskBar"));
}

TEST_F(DiskTest, ARenamedFileIsToldAndItsReturnTakesTheNoticeAway) {
  ASSERT_TRUE(QFile::rename(path("tail.bridgecal"), path("elsewhere.bridgecal")));
  ASSERT_TRUE(shown.waitUntilShown("diskBar"));
  ASSERT_TRUE(QFile::rename(path("elsewhere.bridgecal"), path("tail.bridgecal")));
  EXPECT_TRUE(QTest::qWaitFor([&] { return !shown.shows("diskBar"); }));
}

TEST_F(DiskTest, AFileThatIsKeptOpenAfterDeletionCountsAsUnsaved) {
  ASSERT_TRUE(QFile::remove(path("tail.bridgecal")));
  ASSERT_TRUE(shown.waitUntilShown("diskBar"));
  shown.click("diskKeep");
  EXPECT_TRUE(shown.window.isWindowModified());
}

TEST_F(DiskTest, ADamagedFileIsNotLoadedAndSaysWhy) {
  put(path("tail.bridgecal"), "no document");
  ASSERT_TRUE(shown.waitUntilShown("diskBar"));
  shown.click("diskLoad");
  EXPECT_TRUE(shown.warned().contains("Not loaded")) << shown.warned().toStdString();
  EXPECT_EQ(shown.session.channel()->name, "TP-01");
  EXPECT_TRUE(shown.shows("diskBar"));
}

TEST_F(DiskTest, WhatNoSystemToldIsSeenWhenTheWindowBecomesActive) {
  DiskWatch watch;
  watch.watch(path("tail.bridgecal"), *sha256OfFile(path("tail.bridgecal")));
  put(path("tail.bridgecal"), textOf(oneChannel("TP-77")));
  EXPECT_EQ(watch.lookNow(), DiskWatch::Standing::Changed);
  watch.accept();
  EXPECT_EQ(watch.lookNow(), DiskWatch::Standing::Known);
  put(path("tail.bridgecal"), textOf(oneChannel("TP-78")));
  EXPECT_EQ(watch.lookNow(), DiskWatch::Standing::Changed) << "the next change is told again";
}

}  // namespace
}  // namespace ui
