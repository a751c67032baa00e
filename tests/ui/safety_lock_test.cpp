// SPDX-License-Identifier: GPL-3.0-or-later
#include <sys/wait.h>
#include <unistd.h>

#include <QFileDialog>
#include <QLineEdit>
#include <QSysInfo>

#include "tests/ui/safety_shown.h"
#include "ui/record/saving.h"
#include "ui/safety/document_lock.h"

namespace ui {
namespace {

/// Nobody special for the life of this: root may write everywhere, so as root nothing is read-only.
class Unprivileged {
 public:
  Unprivileged() : m_before(::geteuid()) {
    constexpr uid_t nobody = 65534;
    if (m_before != 0) return;
    EXPECT_EQ(::seteuid(nobody), 0);
  }
  ~Unprivileged() { EXPECT_EQ(::seteuid(m_before), 0); }

 private:
  uid_t m_before;
};

/// The number of a process that has ended.
qint64 endedProcess() {
  const pid_t child = ::fork();
  if (child == 0) ::_exit(0);
  int status = 0;
  ::waitpid(child, &status, 0);
  return child;
}

class LockTest : public SafetyTest {
 protected:
  LockTest() { EXPECT_TRUE(saveDocument(oneChannel(), path("tail.bridgecal"))); }

  QString lockFile(const QString& name = "tail.bridgecal") const { return path("." + name + ".lock"); }
  /// In the words of QLockFile: process, program, host, then of the computer what tells its starts apart.
  void lockedBy(qint64 process, const QString& host, const QString& program = "shuntwright") {
    const QString machine =
        host == QSysInfo::machineHostName() ? QString::fromLatin1(QSysInfo::machineUniqueId()) : "";
    const QString boot =
        host == QSysInfo::machineHostName() ? QString::fromLatin1(QSysInfo::bootUniqueId()) : "";
    put(lockFile(),
        QString("%1\n%2\n%3\n%4\n%5\n").arg(QString::number(process), program, host, machine, boot).toUtf8());
  }
  /// Gives that name to the next file dialog.
  void nameNext(const QString& name) {
    withNext<QFileDialog>([name](QFileDialog& dialog) {
      dialog.findChild<QLineEdit*>("fileNameEdit")->setText(name);
      static_cast<QDialog&>(dialog).accept();
    });
  }
};

TEST_F(LockTest, TheLockFollowsOpenSaveAsNewAndClose) {
  ShownWindow shown;
  ASSERT_TRUE(shown.window.openFile(path("tail.bridgecal")));
  EXPECT_TRUE(QFile::exists(lockFile()));
  EXPECT_EQ(shown.window.windowTitle(), "tail.bridgecal[*] – Shuntwright");
  ASSERT_TRUE(shown.window.saveAs(path("other.bridgecal")));
  EXPECT_FALSE(QFile::exists(lockFile()));
  EXPECT_TRUE(QFile::exists(lockFile("other.bridgecal")));
  shown.trigger("new");
  EXPECT_FALSE(QFile::exists(lockFile("other.bridgecal")));
  ASSERT_TRUE(shown.window.openFile(path("other.bridgecal")));
  EXPECT_TRUE(shown.window.close());
  EXPECT_FALSE(QFile::exists(lockFile("other.bridgecal")));
}

TEST_F(LockTest, WhatCouldNotBeSavedLeavesNoLockBehind) {
  ShownWindow shown;
  ASSERT_TRUE(shown.window.openFile(path("tail.bridgecal")));
  ASSERT_TRUE(QDir(path("")).mkdir("folder.bridgecal"));  // where nothing can be saved to
  EXPECT_FALSE(shown.window.saveAs(path("folder.bridgecal")));
  EXPECT_TRUE(shown.warned().contains("Not saved")) << shown.warned().toStdString();
  EXPECT_FALSE(QFile::exists(lockFile("folder.bridgecal")));
  EXPECT_TRUE(QFile::exists(lockFile()));
}

TEST_F(LockTest, TheSecondIsToldWhoHasItAndReadsOnly) {
  ShownWindow first;
  ASSERT_TRUE(first.window.openFile(path("tail.bridgecal")));
  ShownWindow second;
  QString told;
  answerNext("openReadOnly", &told);
  ASSERT_TRUE(second.window.openFile(path("tail.bridgecal")));
  EXPECT_TRUE(told.contains("tail.bridgecal")) << told.toStdString();
  EXPECT_TRUE(told.contains(QSysInfo::machineHostName())) << told.toStdString();
  EXPECT_TRUE(told.contains(QFileInfo(lockFile()).owner())) << told.toStdString();
  EXPECT_TRUE(told.contains("since")) << told.toStdString();
  EXPECT_TRUE(second.window.windowTitle().contains("read-only"));
  EXPECT_TRUE(second.shows("readOnlyMark"));
  EXPECT_FALSE(first.shows("readOnlyMark"));
}

TEST_F(LockTest, CancelLeavesWhatIsOpen) {
  ShownWindow first;
  ASSERT_TRUE(first.window.openFile(path("tail.bridgecal")));
  ShownWindow second(oneChannel("TP-50"));
  answerNext("Cancel");
  EXPECT_FALSE(second.window.openFile(path("tail.bridgecal")));
  EXPECT_EQ(second.session.channel()->name, "TP-50");
  EXPECT_EQ(second.window.path(), QString());
}

TEST_F(LockTest, AReadOnlyDocumentIsEditedInTheWindowAndSavedUnderAnotherNameWithTheReason) {
  ShownWindow first;
  ASSERT_TRUE(first.window.openFile(path("tail.bridgecal")));
  const QByteArray before = contentOf(path("tail.bridgecal"));
  ShownWindow second;
  answerNext("openReadOnly");
  ASSERT_TRUE(second.window.openFile(path("tail.bridgecal")));
  second.rename("TP-77");
  nameNext(path("mine.bridgecal"));
  second.trigger("save");
  EXPECT_EQ(contentOf(path("tail.bridgecal")), before);
  EXPECT_EQ(second.window.path(), path("mine.bridgecal"));
  EXPECT_FALSE(second.shows("readOnlyMark"));
  EXPECT_FALSE(second.window.windowTitle().contains("read-only"));
  EXPECT_TRUE(QFile::exists(lockFile("mine.bridgecal")));
}

TEST_F(LockTest, TheReasonIsSaidWhenSavingUnderItsNameIsNotPossible) {
  ShownWindow first;
  ASSERT_TRUE(first.window.openFile(path("tail.bridgecal")));
  ShownWindow second;
  answerNext("openReadOnly");
  ASSERT_TRUE(second.window.openFile(path("tail.bridgecal")));
  withNext<QFileDialog>([](QFileDialog& dialog) { dialog.reject(); });
  second.trigger("save");
  EXPECT_TRUE(second.warned().contains("open for writing elsewhere")) << second.warned().toStdString();
  EXPECT_FALSE(second.window.saveAs(path("tail.bridgecal")));
  EXPECT_TRUE(second.warned().contains("Not saved")) << second.warned().toStdString();
}

TEST_F(LockTest, OnceTheOtherHasClosedItSavingUnderItsNameIsPossibleAgain) {
  auto first = std::make_unique<ShownWindow>();
  ASSERT_TRUE(first->window.openFile(path("tail.bridgecal")));
  ShownWindow second;
  answerNext("openReadOnly");
  ASSERT_TRUE(second.window.openFile(path("tail.bridgecal")));
  second.rename("TP-77");
  first->window.close();
  EXPECT_TRUE(second.window.save());
  EXPECT_EQ(openDocument(path("tail.bridgecal"))->channels[0]->name, "TP-77");
  EXPECT_FALSE(second.window.windowTitle().contains("read-only"));
}

TEST_F(LockTest, TheLockOfADeadProcessIsTakenOver) {
  lockedBy(endedProcess(), QSysInfo::machineHostName());
  ShownWindow shown;
  ASSERT_TRUE(shown.window.openFile(path("tail.bridgecal"))) << "without asking";
  EXPECT_FALSE(shown.shows("readOnlyMark"));
}

TEST_F(LockTest, OfAnotherComputerNobodyCanTellSoTakingOverIsAsked) {
  lockedBy(4711, "alder-2");
  ShownWindow shown;
  QString told;
  answerNext("openReadOnly", &told);
  ASSERT_TRUE(shown.window.openFile(path("tail.bridgecal")));
  EXPECT_TRUE(told.contains("alder-2")) << told.toStdString();
  EXPECT_TRUE(shown.shows("readOnlyMark"));
  answerNext("takeLockOver");
  ASSERT_TRUE(shown.window.openFile(path("tail.bridgecal")));
  EXPECT_FALSE(shown.shows("readOnlyMark"));
}

TEST_F(LockTest, TwoNamesOfOneFileAreOneLock) {
  ASSERT_TRUE(QFile::link(path("tail.bridgecal"), path("link.bridgecal")));
  const DocumentLock first = DocumentLock::taken(path("tail.bridgecal"));
  EXPECT_TRUE(first.isHeld());
  EXPECT_TRUE(DocumentLock::taken(path("link.bridgecal")).holder());
}

TEST_F(LockTest, AReadOnlyFileOpensReadOnlyWithItsReason) {
  ASSERT_TRUE(QFile::setPermissions(folder.path(), QFile::Permissions(0x7777)));
  ASSERT_TRUE(QFile::setPermissions(path("tail.bridgecal"), QFile::Permissions(0x4444)));
  const Unprivileged nobody;
  const DocumentLock lock = DocumentLock::taken(path("tail.bridgecal"));
  EXPECT_FALSE(lock.isHeld());
  EXPECT_FALSE(lock.holder());
  EXPECT_EQ(lock.reason(), "You may not write to this file.");
}

TEST_F(LockTest, AReadOnlyFolderOpensReadOnlyWithItsReason) {
  ASSERT_TRUE(QFile::setPermissions(path("tail.bridgecal"), QFile::Permissions(0x6666)));
  ASSERT_TRUE(QFile::setPermissions(folder.path(), QFile::Permissions(0x5555)));
  ShownWindow shown;
  {
    const Unprivileged nobody;
    EXPECT_EQ(DocumentLock::taken(path("tail.bridgecal")).reason(), "You may not write to its folder.");
    ASSERT_TRUE(shown.window.openFile(path("tail.bridgecal")));
    EXPECT_TRUE(shown.shows("readOnlyMark"));
    EXPECT_TRUE(shown.find("readOnlyMark")->toolTip().contains("You may not write to its folder."));
  }
  ASSERT_TRUE(QFile::setPermissions(folder.path(), QFile::Permissions(0x7777)));
}

TEST_F(LockTest, TheHistoryNamesWhomTheLockNames) {
  const QByteArray user = qgetenv("USER");
  qunsetenv("USER");
  ShownWindow shown;
  ASSERT_TRUE(shown.window.openFile(path("tail.bridgecal")));
  const QString owner = QFileInfo(lockFile("tail.bridgecal")).owner();
  ASSERT_FALSE(owner.isEmpty());
  EXPECT_EQ(personName(), owner);
  shown.rename("TP-90");
  ASSERT_TRUE(shown.window.save());
  const auto saved = openDocument(path("tail.bridgecal"));
  ASSERT_TRUE(saved);
  EXPECT_EQ(QString::fromStdString(saved->history.back().person), owner);
  if (!user.isEmpty()) qputenv("USER", user);
}

TEST_F(LockTest, TheQuestionOfUnsavedChangesNamesTheDocument) {
  ShownWindow shown;
  ASSERT_TRUE(shown.window.openFile(path("tail.bridgecal")));
  shown.rename("TP-90");
  QString asked;
  answerNext("Cancel", &asked);
  EXPECT_FALSE(shown.window.close());
  EXPECT_EQ(asked, "tail.bridgecal has changes that are not saved. Save them?");
}

}  // namespace
}  // namespace ui
