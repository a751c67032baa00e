// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/printed_file.h"

#include <gtest/gtest.h>
#include <sys/resource.h>

#include <QDir>
#include <QFile>
#include <QPainter>
#include <QPrinter>
#include <csignal>

namespace ui {
namespace {

class PrintedFileTest : public testing::Test {
 protected:
  PrintedFileTest() : m_printer(QPrinter::ScreenResolution) { m_printer.setOutputFileName(path()); }

  QString path() const { return m_folder.filePath("sheet.pdf"); }
  QByteArray bytes() const {
    QFile file(path());
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray("no file");
  }
  void put(const QByteArray& text) const {
    QFile file(path());
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    ASSERT_EQ(file.write(text), text.size());
  }
  void paint() {
    QPainter painter(&m_printer);
    painter.drawText(100, 100, "Sandpiper");
  }
  QStringList names() const { return QDir(m_folder.path()).entryList(QDir::Files | QDir::Hidden); }

  QTemporaryDir m_folder;
  QPrinter m_printer;
};

TEST_F(PrintedFileTest, ReplacesTheOldOneByAWholeOne) {
  put("old");
  PrintedFile file(m_printer);
  paint();
  EXPECT_EQ(bytes(), "old") << "until it is whole";
  const auto done = file.finish();
  ASSERT_TRUE(done) << done.error().text();
  EXPECT_TRUE(bytes().startsWith("%PDF"));
  EXPECT_TRUE(bytes().trimmed().endsWith("%%EOF"));
  EXPECT_EQ(names(), QStringList{"sheet.pdf"});
}

TEST_F(PrintedFileTest, AFullDiskIsToldAndTheOldOneStays) {
  put("old");
  const auto handler = std::signal(SIGXFSZ, SIG_IGN);
  rlimit usual{};
  ::getrlimit(RLIMIT_FSIZE, &usual);
  const rlimit small{100, usual.rlim_max};
  ASSERT_EQ(::setrlimit(RLIMIT_FSIZE, &small), 0);
  core::Result<void> done;
  {
    PrintedFile file(m_printer);
    paint();
    done = file.finish();
  }
  ::setrlimit(RLIMIT_FSIZE, &usual);
  std::signal(SIGXFSZ, handler);
  ASSERT_FALSE(done);
  EXPECT_NE(done.error().what.find("cut short"), std::string::npos) << done.error().what;
  EXPECT_EQ(bytes(), "old");
}

TEST_F(PrintedFileTest, AFolderThatIsGoneIsTold) {
  m_printer.setOutputFileName(m_folder.filePath("gone/sheet.pdf"));
  PrintedFile file(m_printer);
  paint();
  const auto done = file.finish();
  ASSERT_FALSE(done);
  EXPECT_NE(done.error().what.find("there is no folder"), std::string::npos) << done.error().what;
}

TEST_F(PrintedFileTest, WhatIsNotFinishedChangesNothing) {
  put("old");
  {
    PrintedFile file(m_printer);
    paint();
  }
  EXPECT_EQ(bytes(), "old");
  EXPECT_EQ(names(), QStringList{"sheet.pdf"});
}

}  // namespace
}  // namespace ui
