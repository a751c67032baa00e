// SPDX-License-Identifier: GPL-3.0-or-later
// What random events found (tests/reliability/monkey_ui_driver.cpp), each by the shortest way there.
#include <gtest/gtest.h>

#include <QAction>
#include <QApplication>
#include <QDialog>
#include <QLabel>
#include <QPushButton>
#include <QTableWidget>
#include <QTest>
#include <QTimer>

#include "core/document/edits.h"
#include "tests/support/sample_channel.h"
#include "ui/main_window.h"
#include "ui/recording/recording_store.h"
#include "ui/sequence_model.h"
#include "ui/strip/strip_view.h"
#include "ui/tables/row_order.h"
#include "ui/tables/table_tools.h"

namespace ui {
namespace {

TEST(FoundByRandom, ATableThatOwnsItsModelGoesWhileAFilterLeavesRowsOut) {
  auto table = std::make_unique<QTableWidget>(3, 1);
  for (int row = 0; row < 3; ++row) table->setItem(row, 0, new QTableWidgetItem(QString::number(row)));
  table->show();
  TableTools::of(*table).rows().setWords("2");
  ASSERT_TRUE(table->isRowHidden(0));

  table.reset();  // the model tells of its end when half of the view is gone
}

TEST(FoundByRandom, AButtonOfTheStripIsLetGoWhenTheRecordingIsGone) {
  Session session(sample::documentOf({sample::nineStepChannel()}));
  RecordingStore store;
  StripView strip(session, store);
  strip.show();

  for (const char* name : {"stripCancel", "stripFind", "stripReadIt"}) {
    auto* button = strip.findChild<QPushButton*>(name);
    ASSERT_TRUE(button) << name;
    button->setDown(true);
    button->click();  // as the space bar does when it comes up, whether the button is still on view or not
  }

  EXPECT_EQ(session.history().count(), 0);
}

TEST(FoundByRandom, AnEditorIsLeftWhenItsCheckIsGone) {
  Session session(sample::documentOf({sample::withCheckReading(sample::nineStepChannel(), 1.0)}));
  SequenceModel model(session);
  const QModelIndex measured = model.index(1, SequenceModel::Measured);
  ASSERT_TRUE(model.flags(measured) & Qt::ItemIsEditable);
  session.editChannel("Remove check", core::withCheckRemoved(*session.channel(), 0));
  QString reason;
  QObject::connect(&model, &EditableTable::refused, [&](const QString& why) { reason = why; });

  EXPECT_FALSE(model.setData(measured, "1000"));

  EXPECT_FALSE(reason.isEmpty());
  EXPECT_TRUE(session.channel()->checks.empty());
}

/// As Ctrl+T has always done it.
TEST(FoundByRandom, APatternIsNotLaidOutForAClosedCheck) {
  core::Channel channel = sample::withCheckReading(sample::nineStepChannel(), 1.0);
  Session session(sample::documentOf({core::withCheckClosed(channel, 0)}));
  ASSERT_TRUE(session.checkIsClosed());
  MainWindow window(session);
  window.show();
  bool asked = false;
  QTimer::singleShot(0, &window, [&] {
    if (auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget()))
      asked = true, dialog->reject();
  });

  window.findChild<QAction*>("sequenceLayOut")->trigger();

  QApplication::processEvents();
  EXPECT_FALSE(asked);
  EXPECT_TRUE(window.findChild<QLabel*>("noticeText")->text().contains("closed"));
}

}  // namespace
}  // namespace ui
