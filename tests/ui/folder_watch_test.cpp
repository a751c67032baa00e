// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/recording/folder_watch.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

namespace {

using ui::FolderWatch;

/// A folder, and a watch on it that takes a file for complete after a fifth of a second.
class FolderWatchTest : public testing::Test {
 protected:
  FolderWatchTest() { m_watch.setRest(std::chrono::milliseconds(200)); }

  QString inFolder(const QString& name) const { return m_folder.filePath(name); }
  void write(const QString& name, const QByteArray& bytes) const {
    QFile file(inFolder(name));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly | QIODevice::Append));
    file.write(bytes);
  }
  /// Until the watch has looked at what is there.
  void letItLook() const { QTest::qWait(1300); }
  QStringList arrivals() const {
    QStringList names;
    for (const auto& one : m_arrived) names << QFileInfo(one[0].toString()).fileName();
    return names;
  }

  QTemporaryDir m_folder;
  FolderWatch m_watch;
  QSignalSpy m_arrived{&m_watch, &FolderWatch::arrived};
  QSignalSpy m_growing{&m_watch, &FolderWatch::growing};
  QSignalSpy m_gone{&m_watch, &FolderWatch::gone};
  QSignalSpy m_failed{&m_watch, &FolderWatch::failed};
};

TEST_F(FolderWatchTest, ReportsANewFileOnceItRests) {
  write("old.csv", "1\n");
  m_watch.watch(m_folder.path());
  letItLook();
  write("new.csv", "1\n");
  ASSERT_TRUE(QTest::qWaitFor([&] { return m_arrived.size() == 1; }, 10'000));
  letItLook();
  EXPECT_EQ(arrivals(), QStringList{"new.csv"}) << "once, and not what was there before";
}

TEST_F(FolderWatchTest, WaitsWhileAFileGrows) {
  m_watch.watch(m_folder.path());
  m_watch.setRest(std::chrono::milliseconds(2500));
  letItLook();
  for (int k = 0; k < 4; ++k) {
    write("slow.csv", "line\n");
    QTest::qWait(800);
    EXPECT_TRUE(m_arrived.isEmpty());
  }
  EXPECT_GE(m_growing.size(), 2);
  EXPECT_TRUE(QTest::qWaitFor([&] { return m_arrived.size() == 1; }, 10'000));
}

TEST_F(FolderWatchTest, ReportsAFileAgainWhenItHasGrown) {
  write("log.csv", "1\n");
  m_watch.watch(inFolder("log.csv"));
  ASSERT_TRUE(QTest::qWaitFor([&] { return m_arrived.size() == 1; }, 10'000)) << "a named file is not old";
  write("log.csv", "2\n");
  EXPECT_TRUE(QTest::qWaitFor([&] { return m_arrived.size() == 2; }, 10'000));
}

TEST_F(FolderWatchTest, IsSilentWhilePausedAndCatchesUp) {
  m_watch.watch(m_folder.path());
  letItLook();
  m_watch.setPaused(true);
  write("while_paused.csv", "1\n");
  letItLook();
  EXPECT_TRUE(m_growing.isEmpty());
  m_watch.setPaused(false);
  EXPECT_TRUE(QTest::qWaitFor([&] { return m_arrived.size() == 1; }, 10'000));
}

TEST_F(FolderWatchTest, PassesOverOtherNamesUnfinishedFilesAndPipes) {
  m_watch.setPattern("*.csv *.txt");
  m_watch.watch(m_folder.path());
  letItLook();
  for (const char* name : {"a.csv", "b.txt", "c.log", ".hidden.csv", "d.csv.part"}) write(name, "1\n");
  ASSERT_EQ(::system(("mkfifo " + inFolder("pipe.csv")).toStdString().c_str()), 0);
  ASSERT_TRUE(QTest::qWaitFor([&] { return m_arrived.size() == 2; }, 10'000));
  letItLook();
  EXPECT_EQ(arrivals(), (QStringList{"a.csv", "b.txt"}));
}

TEST_F(FolderWatchTest, TellsThatAFileIsGoneAndThatTheFolderIs) {
  QDir(m_folder.path()).mkdir("inner");
  m_watch.watch(inFolder("inner"));
  letItLook();
  write("inner/a.csv", "1\n");
  ASSERT_TRUE(QTest::qWaitFor([&] { return m_arrived.size() == 1; }, 10'000));
  QFile::remove(inFolder("inner/a.csv"));
  EXPECT_TRUE(QTest::qWaitFor([&] { return m_gone.size() == 1; }, 10'000));
  QDir(m_folder.path()).rmdir("inner");
  ASSERT_TRUE(QTest::qWaitFor([&] { return m_failed.size() == 1; }, 10'000));
  letItLook();
  EXPECT_EQ(m_failed.size(), 1) << "told once";
  QDir(m_folder.path()).mkdir("inner");
  letItLook();
  write("inner/b.csv", "1\n");
  EXPECT_TRUE(QTest::qWaitFor([&] { return m_arrived.size() == 2; }, 10'000)) << "and goes on";
}

}  // namespace
