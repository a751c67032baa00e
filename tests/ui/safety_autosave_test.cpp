// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/safety/autosave.h"

#include <sys/resource.h>

#include <QFileInfo>
#include <QSignalSpy>
#include <csignal>

#include "tests/ui/safety_shown.h"
#include "ui/preferences/preferences.h"
#include "ui/safety/work_safety.h"

namespace ui {
namespace {

/// No file may grow beyond some bytes, as on a disk that is full; the system says so in the same place.
class NoRoom {
 public:
  NoRoom() {
    m_handler = std::signal(SIGXFSZ, SIG_IGN);
    ::getrlimit(RLIMIT_FSIZE, &m_before);
    rlimit little = m_before;
    little.rlim_cur = 64;
    ::setrlimit(RLIMIT_FSIZE, &little);
  }
  ~NoRoom() {
    ::setrlimit(RLIMIT_FSIZE, &m_before);
    std::signal(SIGXFSZ, m_handler);
  }

 private:
  rlimit m_before{};
  void (*m_handler)(int) = SIG_DFL;
};

constexpr int patience_ms = 30'000;  // the delay, and much else that the machine may have to do

class AutosaveTest : public SafetyTest {
 protected:
  bool waitUntilKept(std::size_t files = 1) {
    return QTest::qWaitFor([&] { return std::size_t(keptFiles().size()) == files; }, patience_ms);
  }
};

TEST_F(AutosaveTest, AChangeIsOnTheDiskWithinFiveSecondsAndTheFileOfTheUserIsAsItWas) {
  ASSERT_TRUE(saveDocument(oneChannel(), path("tail.bridgecal")));
  const QByteArray before = contentOf(path("tail.bridgecal"));
  ShownWindow shown;
  ASSERT_TRUE(shown.window.openFile(path("tail.bridgecal")));
  static_assert(Autosave::delay_ms < 5000);
  shown.rename("TP-77");
  ASSERT_TRUE(waitUntilKept());
  const QString file = keptFiles().first();
  EXPECT_TRUE(QTest::qWaitFor([&] { return contentOf(file).endsWith(textOf(shown.session.document())); }));
  EXPECT_EQ(contentOf(path("tail.bridgecal")), before);
}

TEST_F(AutosaveTest, OnlyTheUserMayReadIt) {
  ShownWindow shown(oneChannel());
  shown.rename("TP-77");
  ASSERT_TRUE(waitUntilKept());
  const auto others = QFile::ReadGroup | QFile::WriteGroup | QFile::ExeGroup | QFile::ReadOther |
                      QFile::WriteOther | QFile::ExeOther;
  EXPECT_FALSE(QFileInfo(keptFiles().first()).permissions() & others);
  EXPECT_FALSE(QFileInfo(recoveryFolder()).permissions() & others);
}

TEST_F(AutosaveTest, SomebodyWhoTypesWithoutAPauseIsKeptSafeToo) {
  ShownWindow shown(oneChannel());
  int count = 0;
  EXPECT_TRUE(QTest::qWaitFor(
      [&] {
        shown.rename(count++ % 2 == 0 ? "TP-77" : "TP-78");
        return !keptFiles().isEmpty();
      },
      patience_ms));
}

TEST_F(AutosaveTest, UndoneBackToTheSavedStateLeavesNothing) {
  ShownWindow shown(oneChannel());
  shown.rename("TP-77");
  ASSERT_TRUE(waitUntilKept());
  shown.trigger("undo");
  EXPECT_TRUE(waitUntilKept(0));
  shown.trigger("redo");
  EXPECT_TRUE(waitUntilKept(1)) << "unsaved again";
}

TEST_F(AutosaveTest, SavedLeavesNothing) {
  ShownWindow shown(oneChannel());
  shown.rename("TP-77");
  ASSERT_TRUE(waitUntilKept());
  ASSERT_TRUE(shown.window.saveAs(path("tail.bridgecal")));
  EXPECT_TRUE(waitUntilKept(0));
  EXPECT_TRUE(waitUntilFolderIsEmpty()) << "its lock is gone too";
}

TEST_F(AutosaveTest, DiscardedOnClosingLeavesNothing) {
  auto shown = std::make_unique<ShownWindow>(oneChannel());
  shown->rename("TP-77");
  ASSERT_TRUE(waitUntilKept());
  answerNext("Discard");
  EXPECT_TRUE(shown->window.close());
  shown.reset();
  EXPECT_EQ(keptFiles(), QStringList());
}

TEST_F(AutosaveTest, EndedFromOutsideTheWorkIsKeptBeforeItsTimeAndTheLockGoes) {
  ASSERT_TRUE(saveDocument(oneChannel(), path("tail.bridgecal")));
  {
    ShownWindow shown;
    ASSERT_TRUE(shown.window.openFile(path("tail.bridgecal")));
    shown.rename("TP-77");
    EXPECT_TRUE(keptFiles().isEmpty());
    QTimer::singleShot(0, qApp, [] { QCoreApplication::exit(143); });
    EXPECT_EQ(QCoreApplication::exec(), 143);
    EXPECT_EQ(keptFiles().size(), 1);
  }
  EXPECT_EQ(keptFiles().size(), 1);
  EXPECT_FALSE(WorkSafety::isHeldElsewhere(path("tail.bridgecal")));
}

TEST_F(AutosaveTest, ClosingThatIsCalledOffKeepsTheWorkSafe) {
  ShownWindow shown(oneChannel());
  shown.rename("TP-77");
  ASSERT_TRUE(waitUntilKept());
  answerNext("Cancel");
  EXPECT_FALSE(shown.window.close());
  EXPECT_EQ(keptFiles().size(), 1);
}

TEST_F(AutosaveTest, WithoutRoomOnTheDiskItIsToldOnceInPlainWords) {
  Session session(oneChannel());
  Autosave autosave(session);
  QSignalSpy failed(&autosave, &Autosave::failed);
  const auto change = [&](const char* name) {
    core::Channel next = *session.channel();
    next.name = name;
    session.editChannel("Rename", std::move(next));
    autosave.flush();
    QCoreApplication::processEvents();
  };
  {
    const NoRoom noRoom;
    change("TP-77");
    EXPECT_TRUE(QTest::qWaitFor([&] { return failed.count() == 1; }));
    change("TP-78");
    change("TP-79");
  }
  ASSERT_EQ(failed.count(), 1) << "told once";
  const QString words = failed.first().first().toString();
  EXPECT_TRUE(words.contains("cannot be kept safe")) << words.toStdString();
  EXPECT_TRUE(words.contains("larger than the system allows")) << words.toStdString();
  EXPECT_FALSE(words.contains("..")) << words.toStdString();
  EXPECT_EQ(keptFiles(), QStringList()) << "no half written copy";
  change("TP-80");
  EXPECT_EQ(keptFiles().size(), 1) << "as soon as there is room again";
  autosave.finish();
}

TEST_F(AutosaveTest, NothingIsKeptForWhoDoesNotWantIt) {
  Preferences wanted = preferences();
  wanted.autosave = false;
  setPreferences(wanted);
  ShownWindow shown(oneChannel());
  shown.rename("TP-77");
  QTest::qWait(Autosave::delay_ms + 500);
  EXPECT_EQ(keptFiles(), QStringList());
  wanted.autosave = true;
  setPreferences(wanted);
  EXPECT_TRUE(waitUntilKept()) << "from then on it is";
}

TEST_F(AutosaveTest, ASessionThatEndsWithoutAskingKeepsTheWork) {
  ShownWindow shown(oneChannel());
  shown.rename("TP-77");
  auto* safety = shown.window.findChild<WorkSafety*>();
  EXPECT_TRUE(safety->mayEndSession(false));
  ASSERT_EQ(keptFiles().size(), 1) << "at once, not after the delay";
  EXPECT_TRUE(contentOf(keptFiles().first()).endsWith(textOf(shown.session.document())));
}

TEST_F(AutosaveTest, LoggingOutAsksAndMayBeCalledOff) {
  ShownWindow shown(oneChannel());
  shown.rename("TP-77");
  auto* safety = shown.window.findChild<WorkSafety*>();
  answerNext("Cancel");
  EXPECT_FALSE(safety->mayEndSession(true));
  answerNext("Discard");
  EXPECT_TRUE(safety->mayEndSession(true));
  EXPECT_TRUE(shown.window.close()) << "what was given up is not asked for again";
  EXPECT_TRUE(waitUntilKept(0));
}

}  // namespace
}  // namespace ui
