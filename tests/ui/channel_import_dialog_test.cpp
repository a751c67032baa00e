// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/campaign/import_dialog.h"

#include <gtest/gtest.h>

#include <QClipboard>
#include <QComboBox>
#include <QFile>
#include <QGuiApplication>
#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableWidget>
#include <QTemporaryDir>
#include <QTest>

#include "tests/support/sample_channel.h"
#include "ui/campaign/copies_dialog.h"
#include "ui/fields/count_edit.h"

namespace ui {
namespace {

class Import : public testing::Test {
 protected:
  Import() : session(sample::documentOf({sample::nineStepChannel()})), dialog(session) { dialog.show(); }

  template <class Widget>
  Widget* find(const QString& name) {
    auto* widget = dialog.findChild<Widget*>(name);
    EXPECT_TRUE(widget) << name.toStdString();
    return widget;
  }
  /// As a user does who copied the cells in a spreadsheet.
  void paste(const QString& text) {
    QGuiApplication::clipboard()->setText(text);
    QTest::mouseClick(find<QPushButton>("importPaste"), Qt::LeftButton);
  }
  QPushButton* ok() { return find<QPushButton>("importOk"); }
  QString summary() { return find<QLabel>("importSummary")->text(); }
  QString told(int row, int column) {
    const auto* item = find<QTableWidget>("importRefused")->item(row, column);
    return item ? item->text() : QString();
  }
  bool says(const QString& words) {
    return QTest::qWaitFor([&] { return summary() == words; });
  }

  Session session;
  ImportDialog dialog;
};

TEST_F(Import, AddsTheRowsOfAPastedListInOneUndoStep) {
  paste("name\tgroup\tgauge factor\nTP-02\tleft\t2.1\nTP-03\tright\t2.05\n");
  ASSERT_TRUE(says("2 channels are added.")) << summary().toStdString();
  EXPECT_EQ(find<QTableWidget>("importPreview")->item(1, 0)->text(), "TP-02");
  EXPECT_EQ(ok()->text(), "Add 2 channels");
  QTest::mouseClick(ok(), Qt::LeftButton);
  ASSERT_EQ(session.document().channels.size(), 3U);
  EXPECT_EQ(session.document().channels[1]->name, "TP-02");
  EXPECT_EQ(session.document().channels[2]->group, "right");
  EXPECT_EQ(session.document().channels[2]->setup.bridge.gauge.factor, 2.05);
  EXPECT_EQ(session.document().channels[1]->setup.sequence.size(), 9U) << "a copy of the chosen channel";
  EXPECT_EQ(session.channel()->name, "TP-02");
  session.history().undo();
  EXPECT_EQ(session.document().channels.size(), 1U);
}

TEST_F(Import, NamesTheLineAndTheReasonOfWhatItRefuses) {
  paste("name,gauge factor\nTP-02,2.1\nTP-03,two\n");
  ASSERT_TRUE(says("1 channel is added. 1 row is refused.")) << summary().toStdString();
  EXPECT_TRUE(told(0, 0).contains("line 3")) << told(0, 0).toStdString();
  EXPECT_TRUE(told(0, 1).startsWith("refused: "));
  EXPECT_FALSE(told(0, 2).isEmpty());
}

TEST_F(Import, TheFieldOfAColumnIsChosenByTheUser) {
  paste("place,x\nTP-02,left\nTP-03,right\n");
  auto* first = find<QComboBox>("importField1");
  first->setCurrentIndex(static_cast<int>(core::ListField::Name));
  find<QComboBox>("importField2")->setCurrentIndex(static_cast<int>(core::ListField::Group));
  ASSERT_TRUE(says("2 channels are added.")) << summary().toStdString();
  QTest::mouseClick(ok(), Qt::LeftButton);
  EXPECT_EQ(session.document().channels[1]->group, "left");
}

TEST_F(Import, WithoutANameNothingIsAdded) {
  paste("name,group\nTP-02,left\n");
  ASSERT_TRUE(says("1 channel is added."));
  find<QComboBox>("importField1")->setCurrentIndex(static_cast<int>(core::ListField::Ignored));
  EXPECT_FALSE(ok()->isEnabled());
  ASSERT_TRUE(QTest::qWaitFor([&] { return summary() != "1 channel is added."; }));
  EXPECT_FALSE(ok()->isEnabled());
  EXPECT_TRUE(summary().contains("name")) << summary().toStdString();
}

TEST_F(Import, RefusesAnEmptyClipboardAndAFileThatIsNotThere) {
  QGuiApplication::clipboard()->setText("  ");
  QTest::mouseClick(find<QPushButton>("importPaste"), Qt::LeftButton);
  EXPECT_EQ(summary(), "The clipboard holds no text.");
  dialog.openFile("/no/such/list.csv");
  EXPECT_TRUE(summary().contains("list.csv")) << summary().toStdString();
  EXPECT_FALSE(ok()->isEnabled());
}

TEST_F(Import, AThousandRowsOfAFileAreAdded) {
  QTemporaryDir folder;
  QFile file(folder.filePath("channels.csv"));
  ASSERT_TRUE(file.open(QFile::WriteOnly));
  file.write("name;group\r\n");
  for (int k = 2; k <= 1001; ++k) file.write(QString("TP-%1;wing\r\n").arg(k).toUtf8());
  file.close();
  dialog.openFile(file.fileName());
  ASSERT_TRUE(QTest::qWaitFor([&] { return ok()->isEnabled(); })) << summary().toStdString();
  const QSignalSpy said(&dialog, &ImportDialog::said);
  QTest::mouseClick(ok(), Qt::LeftButton);
  EXPECT_EQ(session.document().channels.size(), 1001U);
  EXPECT_EQ(said.count(), 1);
}

TEST(Copies, GetTheNamesThatFollow) {
  core::Channel third = sample::nineStepChannel();
  third.name = "TP-03";
  Session session(sample::documentOf({third, sample::nineStepChannel()}));
  CopiesDialog dialog(session);
  dialog.show();
  auto* count = dialog.findChild<CountEdit*>("copiesCount");
  count->setFocus();
  count->selectAll();
  QTest::keyClicks(count, "2");
  EXPECT_EQ(dialog.findChild<QLabel*>("copiesNames")->text(), "New channels: TP-04, TP-05");
  QTest::mouseClick(dialog.findChild<QPushButton*>("copiesOk"), Qt::LeftButton);
  ASSERT_EQ(session.document().channels.size(), 4U);
  EXPECT_EQ(session.document().channels[1]->name, "TP-04");
  EXPECT_EQ(session.document().channels[2]->name, "TP-05");
  EXPECT_EQ(session.channel()->name, "TP-04");
  session.history().undo();
  EXPECT_EQ(session.document().channels.size(), 2U);
}

TEST(Copies, ManyAreShownByTheFirstAndTheLast) {
  Session session(sample::documentOf({sample::nineStepChannel()}));
  CopiesDialog dialog(session);
  dialog.findChild<CountEdit*>("copiesCount")->setValue(300);
  EXPECT_EQ(dialog.findChild<QLabel*>("copiesNames")->text(),
            "New channels: TP-02, TP-03, TP-04, TP-05, TP-06, TP-07, …, TP-301");
}

}  // namespace
}  // namespace ui
