// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/state_file.h"

#include <gtest/gtest.h>
#include <sys/resource.h>
#include <sys/stat.h>

#include <QDir>
#include <QFile>
#include <QRect>
#include <QTemporaryDir>
#include <csignal>

#include "ui/pattern/own_patterns.h"

namespace ui {
namespace {

/// Limits the size of files for its life: the same failure at the same calls as a full disk, and it binds
/// root too.
class SmallFiles {
 public:
  explicit SmallFiles(rlim_t bytes) : m_handler(std::signal(SIGXFSZ, SIG_IGN)) {
    ::getrlimit(RLIMIT_FSIZE, &m_usual);
    const rlimit small{bytes, m_usual.rlim_max};
    EXPECT_EQ(::setrlimit(RLIMIT_FSIZE, &small), 0);
  }
  ~SmallFiles() {
    ::setrlimit(RLIMIT_FSIZE, &m_usual);
    std::signal(SIGXFSZ, m_handler);
  }
  SmallFiles(const SmallFiles&) = delete;
  SmallFiles& operator=(const SmallFiles&) = delete;

 private:
  void (*m_handler)(int);
  rlimit m_usual{};
};

class StateFileTest : public testing::Test {
 protected:
  StateFileTest() : m_before(qgetenv("XDG_STATE_HOME")) {
    qputenv("XDG_STATE_HOME", m_folder.path().toUtf8());
  }
  ~StateFileTest() override { qputenv("XDG_STATE_HOME", m_before); }

  QString path() const { return m_folder.filePath("shuntwright/state.ini"); }
  QByteArray text() const {
    QFile file(path());
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray("no file");
  }
  void put(const QByteArray& bytes) const {
    ASSERT_TRUE(QDir().mkpath(m_folder.filePath("shuntwright")));
    QFile file(path());
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    ASSERT_EQ(file.write(bytes), bytes.size());
  }

  QTemporaryDir m_folder;

 private:
  QByteArray m_before;
};

TEST_F(StateFileTest, AFullDiskCostsTheNewValueAndNotTheOldOnes) {
  { stateFile().setValue("kept", QString(2000, 'x')); }
  const QByteArray before = text();
  ASSERT_GT(before.size(), 2000);
  // 3,000 bytes wait in a buffer, 30,000 do not.
  for (const int size : {3'000, 30'000}) {
    {
      const SmallFiles limit(1024);
      QSettings state = stateFile();
      state.setValue("new", QString(size, 'y'));
      state.sync();
      EXPECT_EQ(state.status(), QSettings::AccessError);
      state.remove("new");
    }
    EXPECT_EQ(text(), before) << size;
  }
  { stateFile().setValue("later", 1); }
  EXPECT_TRUE(text().contains("later=1"));
  EXPECT_TRUE(text().contains("kept=xxx"));
}

TEST_F(StateFileTest, AnOwnPatternThatCannotBeKeptIsRefused) {
  core::Pattern pattern = core::usualPatterns().front();
  pattern.name = "ours";
  ASSERT_TRUE(saveOwnPattern(pattern));
  pattern.name = "theirs";
  core::Result<void> kept;
  {
    const SmallFiles limit(10);
    kept = saveOwnPattern(pattern);
  }
  ASSERT_FALSE(kept);
  EXPECT_NE(kept.error().what.find("cannot be written"), std::string::npos) << kept.error().text();
  EXPECT_TRUE(text().contains("ours")) << text().toStdString();
  EXPECT_FALSE(text().contains("theirs"));
}

TEST_F(StateFileTest, ReadsAndWritesTheFormOfQSettings) {
  // What QSettings itself writes and reads is the independent side here.
  const QString strange = QString::fromUtf8("Länge; \"a\"\n=µε, @x\\");
  { QSettings(path(), QSettings::IniFormat).setValue("own/strange", strange); }
  {
    QSettings state = stateFile();
    EXPECT_EQ(state.value("own/strange").toString(), strange);
    state.setValue("rect", QRect(1, 2, 3, 4));
    state.setValue("list", QStringList{"a", "b,c", ""});
    state.setValue(QString::fromUtf8("Tische/Größe %"), 2.5);
    state.setValue("yes", true);
  }
  QFile::copy(path(), m_folder.filePath("copy.ini"));  // QSettings keeps files in mind by their names
  const QSettings plain(m_folder.filePath("copy.ini"), QSettings::IniFormat);
  EXPECT_EQ(plain.allKeys().size(), 5) << text().toStdString();
  EXPECT_EQ(plain.value("own/strange").toString(), strange);
  EXPECT_EQ(plain.value("rect").toRect(), QRect(1, 2, 3, 4));
  EXPECT_EQ(plain.value("list").toStringList(), (QStringList{"a", "b,c", ""}));
  EXPECT_EQ(plain.value(QString::fromUtf8("Tische/Größe %")).toDouble(), 2.5);
  EXPECT_TRUE(plain.value("yes").toBool());
}

TEST_F(StateFileTest, WhatAnotherProgramAddedMeanwhileStays) {
  { stateFile().setValue("mine", 1); }
  put("[General]\nmine=1\ntheirs=2\n");
  { stateFile().setValue("again", 3); }
  EXPECT_TRUE(text().contains("theirs=2")) << text().toStdString();
  EXPECT_TRUE(text().contains("again=3"));
}

TEST_F(StateFileTest, ADamagedFileIsNoReasonNotToStart) {
  put("[General]\ngood=1\nbad=\"\\x\n[\n=\n\xFF\xFE\n");
  EXPECT_EQ(stateFile().value("good").toInt(), 1);
  { stateFile().setValue("new", 2); }
  EXPECT_TRUE(text().contains("new=2"));
}

TEST_F(StateFileTest, ADamagedFileIsKeptAsideToldAndWrittenAnewWithWhatCouldBeRead) {
  const QByteArray broken = "[General]\ngood=1\nbad=\"\\x\n[\n=\n\xFF\xFE\n";
  put(broken);
  const DamagedState damaged = setDamagedStateAside();
  ASSERT_EQ(damaged.copies.size(), 1);
  EXPECT_TRUE(damaged.left.isEmpty());
  QFile copy(damaged.copies[0]);
  ASSERT_TRUE(copy.open(QIODevice::ReadOnly));
  EXPECT_EQ(copy.readAll(), broken);
  EXPECT_TRUE(damaged.sentence().contains("state.ini.damaged")) << damaged.sentence().toStdString();
  EXPECT_EQ(stateFile().value("good").toInt(), 1);
  EXPECT_TRUE(setDamagedStateAside().isEmpty()) << "told once";
  put(QByteArray(4, '\0'));
  EXPECT_TRUE(setDamagedStateAside().sentence().contains("state.ini.damaged2")) << "the first copy stays";
}

TEST_F(StateFileTest, AWholeFileIsLeftAlone) {
  EXPECT_TRUE(setDamagedStateAside().isEmpty()) << "no file yet";
  { stateFile().setValue("place", QRect(1, 2, 3, 4)); }
  { stateFile().setValue("word", QString("µ, \"x\"; \n=[")); }
  const QByteArray before = text();
  EXPECT_TRUE(setDamagedStateAside().isEmpty());
  EXPECT_EQ(text(), before);
}

TEST_F(StateFileTest, APipeInItsPlaceIsNotWaitedFor) {
  ASSERT_TRUE(QDir().mkpath(m_folder.filePath("shuntwright")));
  ASSERT_EQ(::mkfifo(QFile::encodeName(path()).constData(), 0600), 0);
  EXPECT_FALSE(stateFile().value("anything").isValid());
  { stateFile().setValue("kept", 1); }
  EXPECT_EQ(stateFile().value("kept").toInt(), 1);
}

}  // namespace
}  // namespace ui
