// SPDX-License-Identifier: GPL-3.0-or-later
#include <QLocale>
#include <QScrollArea>
#include <QSignalSpy>

#include "tests/ui/safety_shown.h"
#include "ui/access/focus_ring.h"
#include "ui/locale.h"
#include "ui/safety/recovery_bar.h"

namespace ui {
namespace {

class RecoveryTest : public SafetyTest {
 protected:
  static bool offered(const ShownWindow& shown) { return shown.waitUntilShown("recoveryBar"); }
};

TEST_F(RecoveryTest, WithNothingLeftNothingIsShown) {
  ShownWindow shown;
  QSignalSpy settled(shown.find<RecoveryBar>("recoveryBar"), &RecoveryBar::settled);
  shown.window.offerRecovery();
  EXPECT_TRUE(QTest::qWaitFor([&] { return settled.count() == 1; }));
  EXPECT_FALSE(shown.shows("recoveryBar"));
}

TEST_F(RecoveryTest, OffersWithDocumentTimeChannelsAndWhatDiffers) {
  ASSERT_TRUE(saveDocument(oneChannel(), path("tail.bridgecal")));
  leave(oneChannel("TP-77"), path("tail.bridgecal"));
  ShownWindow shown;
  shown.window.offerRecovery();
  ASSERT_TRUE(offered(shown));
  const QString text = shown.text("recoveryText0");
  EXPECT_TRUE(text.contains("tail.bridgecal")) << text.toStdString();
  EXPECT_TRUE(text.contains("1 channel")) << text.toStdString();
  EXPECT_TRUE(text.contains("TP-77")) << text.toStdString();
  EXPECT_TRUE(text.contains(QLocale().toString(QDate::currentDate(), QLocale::ShortFormat)))
      << text.toStdString();
  EXPECT_EQ(QApplication::activeModalWidget(), nullptr) << "it forces nothing";
  EXPECT_EQ(shown.session.document().channels.size(), 0u);
}

TEST_F(RecoveryTest, RecoveredWorkIsOneUndoableUnsavedChangeAndTheFileIsUntouchedUntilSaved) {
  ASSERT_TRUE(saveDocument(oneChannel(), path("tail.bridgecal")));
  const QByteArray before = contentOf(path("tail.bridgecal"));
  leave(oneChannel("TP-77"), path("tail.bridgecal"));
  ShownWindow shown;
  shown.window.offerRecovery();
  ASSERT_TRUE(offered(shown));
  shown.click("recoverWork0");
  EXPECT_EQ(shown.session.channel()->name, "TP-77");
  EXPECT_EQ(shown.window.path(), path("tail.bridgecal"));
  EXPECT_TRUE(shown.window.isWindowModified());
  EXPECT_TRUE(shown.window.windowTitle().contains("[*]"));
  EXPECT_FALSE(shown.shows("recoveryBar"));
  EXPECT_EQ(contentOf(path("tail.bridgecal")), before);
  EXPECT_EQ(keptFiles().size(), 1) << "the copy stays until the work is saved";
  shown.trigger("undo");
  EXPECT_EQ(shown.session.channel()->name, "TP-01") << "the file as it is on the disk";
  EXPECT_FALSE(shown.window.isWindowModified());
  shown.trigger("redo");
  ASSERT_TRUE(shown.window.save());
  const auto saved = openDocument(path("tail.bridgecal"));
  ASSERT_TRUE(saved);
  EXPECT_EQ(saved->channels[0]->name, "TP-77");
  EXPECT_TRUE(QTest::qWaitFor([&] { return keptFiles().isEmpty(); }));
}

TEST_F(RecoveryTest, AnUntitledDocumentComesBackWithoutAName) {
  leave(oneChannel("TP-77"), {}, "Tailplane");
  ShownWindow shown;
  shown.window.offerRecovery();
  ASSERT_TRUE(offered(shown));
  EXPECT_TRUE(shown.text("recoveryText0").contains("Tailplane"));
  shown.click("recoverWork0");
  EXPECT_EQ(shown.session.channel()->name, "TP-77");
  EXPECT_EQ(shown.window.path(), QString());
  EXPECT_TRUE(shown.window.isWindowModified());
}

TEST_F(RecoveryTest, WorkWhoseFileIsGoneComesBackUnderItsName) {
  leave(oneChannel("TP-77"), path("gone.bridgecal"));
  ShownWindow shown;
  shown.window.offerRecovery();
  ASSERT_TRUE(offered(shown));
  EXPECT_TRUE(shown.text("recoveryText0").contains("no longer there"));
  shown.click("recoverWork0");
  EXPECT_TRUE(shown.window.isWindowModified());
  ASSERT_TRUE(shown.window.save());
  EXPECT_TRUE(openDocument(path("gone.bridgecal")));
}

TEST_F(RecoveryTest, WorksBesideADocumentThatTheProgramWasStartedWith) {
  ASSERT_TRUE(saveDocument(oneChannel("OTHER"), path("other.bridgecal")));
  ASSERT_TRUE(saveDocument(oneChannel(), path("tail.bridgecal")));
  leave(oneChannel("TP-77"), path("tail.bridgecal"));
  ShownWindow shown;
  ASSERT_TRUE(shown.window.openFile(path("other.bridgecal")));
  shown.window.offerRecovery();
  ASSERT_TRUE(offered(shown));
  EXPECT_EQ(shown.session.channel()->name, "OTHER");
  shown.click("recoverWork0");
  EXPECT_EQ(shown.session.channel()->name, "TP-77");
}

TEST_F(RecoveryTest, WhatALivingWindowKeepsIsNotOffered) {
  const RecoverySlot living = newRecoverySlot();
  ASSERT_TRUE(writeRecovery(living, {{}, "Mine", QDateTime::currentDateTime()}, oneChannel("TP-50")));
  leave(oneChannel("TP-77"), {}, "Left");
  const auto found = findLeftOvers(recoveryFolder());
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].note.title, "Left");
  EXPECT_TRUE(findLeftOvers(recoveryFolder()).empty()) << "nor what another window offers already";
}

TEST_F(RecoveryTest, KeptForLaterIsOfferedAgainAtTheNextStart) {
  leave(oneChannel("TP-77"), {}, "Left");
  {
    ShownWindow shown;
    shown.window.offerRecovery();
    ASSERT_TRUE(offered(shown));
    shown.click("keepWork0");
    EXPECT_FALSE(shown.shows("recoveryBar"));
    EXPECT_EQ(findLeftOvers(recoveryFolder()).size(), 1u) << "another window may offer it from now on";
  }
  ShownWindow next;
  next.window.offerRecovery();
  EXPECT_TRUE(offered(next));
}

TEST_F(RecoveryTest, DiscardingAsksOnce) {
  const QString file = leave(oneChannel("TP-77"), {}, "Left");
  ShownWindow shown;
  shown.window.offerRecovery();
  ASSERT_TRUE(offered(shown));
  answerNext("Cancel");
  shown.click("discardWork0");
  EXPECT_TRUE(QFile::exists(file));
  EXPECT_TRUE(shown.shows("recoveryBar"));
  answerNext("Discard");
  shown.click("discardWork0");
  EXPECT_FALSE(QFile::exists(file));
  EXPECT_FALSE(shown.shows("recoveryBar"));
  EXPECT_TRUE(waitUntilFolderIsEmpty());
}

TEST_F(RecoveryTest, SeveralLeftOversHaveARowEach) {
  leave(oneChannel("TP-77"), {}, "First");
  leave(oneChannel("TP-78"), {}, "Second");
  ShownWindow shown;
  shown.window.offerRecovery();
  ASSERT_TRUE(offered(shown));
  const QString both = shown.text("recoveryText0") + shown.text("recoveryText1");
  EXPECT_TRUE(both.contains("First") && both.contains("Second")) << both.toStdString();
  shown.click("keepWork0");
  EXPECT_TRUE(shown.shows("recoveryText0"));
  EXPECT_FALSE(shown.shows("recoveryText1"));
}

TEST_F(RecoveryTest, ADamagedCopyIsToldAndKept) {
  const QString file = leave(oneChannel("TP-77"), {}, "Left");
  QByteArray bytes = contentOf(file);
  bytes.replace("TP-77", "TP-7x");
  put(file, bytes);
  put(recoveryFolder() + "/nonsense.recovery", "nothing that we wrote");
  put(recoveryFolder() + "/empty.recovery", "");
  ShownWindow shown;
  shown.window.offerRecovery();
  ASSERT_TRUE(offered(shown));
  for (const char* number : {"0", "1", "2"}) {
    EXPECT_TRUE(shown.text(QString("recoveryText") + number).contains("damaged"));
    EXPECT_FALSE(shown.find(QString("recoverWork") + number)->isEnabled());
  }
  EXPECT_TRUE(QFile::exists(file));
}

TEST_F(RecoveryTest, WhatTheFileHoldsAlreadyIsNoLeftOver) {
  ASSERT_TRUE(saveDocument(oneChannel(), path("tail.bridgecal")));
  const QString file = leave(oneChannel(), path("tail.bridgecal"));
  EXPECT_TRUE(findLeftOvers(recoveryFolder()).empty());
  EXPECT_FALSE(QFile::exists(file));
}

TEST_F(RecoveryTest, UnsavedWorkInTheWindowIsAskedForBeforeAnotherIsRecovered) {
  leave(oneChannel("TP-77"), {}, "Left");
  ShownWindow shown(oneChannel("TP-50"));
  shown.window.offerRecovery();
  ASSERT_TRUE(offered(shown));
  shown.rename("TP-51");
  answerNext("Cancel");
  shown.click("recoverWork0");
  EXPECT_EQ(shown.session.channel()->name, "TP-51");
  EXPECT_TRUE(shown.shows("recoveryBar"));
}

TEST_F(RecoveryTest, ABrokenOffWritingIsClearedAwayWithTheCopy) {
  const QString file = leave(oneChannel("TP-77"), {}, "Left");
  put(file + ".Xa1b2c", "half a copy");
  ShownWindow shown;
  shown.window.offerRecovery();
  ASSERT_TRUE(offered(shown));
  answerNext("Discard");
  shown.click("discardWork0");
  EXPECT_TRUE(waitUntilFolderIsEmpty());
}

/// What is left is wholly on view: its text has its lines, each button its words.
void expectAllOfTheBarOnView(const ShownWindow& shown) {
  const auto* bar = shown.find("recoveryBar");
  const auto* rows = bar->findChild<QScrollArea*>();
  const int ring = FocusRing::thickness_px;
  const QRect clear = rows->rect().adjusted(ring, ring, -ring, -ring);
  EXPECT_EQ(rows->focusPolicy(), Qt::NoFocus) << "there is nothing to scroll";
  int seen = 0;
  for (const QWidget* one : bar->findChildren<QWidget*>()) {
    const auto* label = qobject_cast<const QLabel*>(one);
    const auto* button = qobject_cast<const QPushButton*>(one);
    if (!label && !button) continue;
    ++seen;
    const std::string name = one->objectName().toStdString();
    EXPECT_EQ(one->visibleRegion().boundingRect(), one->rect()) << name << " is cut";
    if (rows->isAncestorOf(one)) {
      EXPECT_TRUE(clear.contains(QRect(one->mapTo(rows, QPoint()), one->size())))
          << name << " lies under the ring of the rows";
    }
    if (label) {
      EXPECT_GE(label->height(), label->heightForWidth(label->width())) << name;
    } else {
      EXPECT_GE(button->width(), button->sizeHint().width()) << name;
      EXPECT_GE(button->height(), button->sizeHint().height()) << name;
    }
  }
  EXPECT_EQ(seen, 5) << "heading, text and three buttons";
}

class RecoveryRoom : public SafetyTest, public testing::WithParamInterface<std::tuple<const char*, QSize>> {};

TEST_P(RecoveryRoom, NothingOfWhatIsOfferedIsCut) {
  const SpokenScope words(languageFor(std::get<0>(GetParam()), true));
  ASSERT_TRUE(saveDocument(oneChannel(), path("tailplane.bridgecal")));
  core::Document changed = oneChannel("TP-77");
  changed.title = "Tailplane, left";
  changed.site = "Hangar 2";
  leave(changed, path("tailplane.bridgecal"));
  ShownWindow shown;
  shown.window.resize(std::get<1>(GetParam()));
  shown.window.offerRecovery();
  ASSERT_TRUE(shown.waitUntilShown("recoveryBar"));
  QTest::qWait(50);  // layouts settle from inside outwards
  expectAllOfTheBarOnView(shown);
  for (const char* button : {"recoverWork0", "keepWork0", "discardWork0"}) {
    shown.find(button)->setFocus(Qt::TabFocusReason);
    QTest::qWait(20);
    expectAllOfTheBarOnView(shown);
  }
}

INSTANTIATE_TEST_SUITE_P(Sizes, RecoveryRoom,
                         testing::Combine(testing::Values("en", "de"),
                                          testing::Values(QSize(1280, 760), QSize(900, 600))));

}  // namespace
}  // namespace ui
