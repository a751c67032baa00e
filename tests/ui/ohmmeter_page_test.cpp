// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/wiring/ohmmeter_page.h"

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QSignalSpy>
#include <QTest>
#include <QToolButton>

#include "core/document/ohm_edits.h"
#include "tests/support/printing.h"
#include "tests/support/sample_channel.h"
#include "ui/quantity_edit.h"

namespace ui {
namespace {

using core::Node;
using Column = OhmModel::Column;

/// A full bridge of four arms of 350 ohm on leads of zero ohm, one shunt of 100 kohm over arm 1 that is
/// switched inside the instrument.
core::Channel fullBridge() {
  core::Channel channel = core::withBridgeType({}, core::BridgeType::FullBending);
  channel.name = "TP-21";
  channel.setup.bridge.leads.fill(core::Resistance(0));
  channel.setup.instrument.inputResistance.reset();
  return core::withShuntAdded(
      channel, {"R1", core::Resistance(100'000), Node::Arm1Begin, Node::Arm1End, core::Resistance(0)});
}

class OhmmeterPageTest : public testing::Test {
 protected:
  OhmmeterPageTest()
      : session(sample::documentOf({fullBridge()})), page(session), refused(&page, &OhmmeterPage::refused) {
    page.resize(980, 690);
    page.show();
    page.activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&page));
    choose("ohmFilter", 1);
  }

  void settle() {
    ASSERT_TRUE(QTest::qWaitFor([&] { return !page.isWorking(); }, 20'000));
  }
  QAbstractItemModel& model() { return *page.table().model(); }
  QString cell(int row, int column, int role = Qt::DisplayRole) {
    return model().index(row, column).data(role).toString();
  }
  int rowOf(const QString& a, const QString& b) {
    for (int row = 0; row < model().rowCount(); ++row)
      if ((cell(row, Column::From) == a && cell(row, Column::To) == b) ||
          (cell(row, Column::From) == b && cell(row, Column::To) == a))
        return row;
    ADD_FAILURE() << "no row between " << a.toStdString() << " and " << b.toStdString();
    return 0;
  }
  double expected(const QString& a, const QString& b) {
    const QString text = cell(rowOf(a, b), Column::Expected, Qt::EditRole);
    const auto ohm = core::parseQuantity(text.toStdString(), core::UnitFamily::Resistance);
    EXPECT_TRUE(ohm) << text.toStdString();
    return ohm ? *ohm : 0;
  }
  void type(int row, const QString& text) {
    page.table().setCurrentIndex(model().index(row, Column::MeasuredColumn));
    page.table().setFocus();
    QTest::keyClicks(&page.table(), text.left(1));
    auto* editor = page.table().viewport()->findChild<QLineEdit*>();
    ASSERT_TRUE(editor);
    QTest::keyClicks(editor, text.mid(1));
    QTest::keyClick(editor, Qt::Key_Return);
    EXPECT_TRUE(QTest::qWaitFor([&] { return !page.table().viewport()->findChild<QLineEdit*>(); }, 2000));
    settle();
  }
  void chooseState(int row) {
    page.findChild<QListWidget*>("ohmStates")->setCurrentRow(row);
    settle();
  }
  void choose(const char* box, int row) {
    auto* found = page.findChild<QComboBox*>(box);
    found->setCurrentIndex(row);
    emit found->activated(row);
    settle();
  }
  const std::vector<core::OhmReading>& readings() { return session.channel()->ohmReadings; }
  QString diagnosis() { return page.findChild<QLabel*>("ohmDiagnosis")->text(); }
  QString bestFault() { return page.faults().model()->index(0, OhmFaultModel::Fault).data().toString(); }

  Session session;
  OhmmeterPage page;
  QSignalSpy refused;
};

TEST_F(OhmmeterPageTest, TablesKeepTheRulesOfItemModels) {
  const QAbstractItemModelTester rows(&model(), QAbstractItemModelTester::FailureReportingMode::Fatal);
  const QAbstractItemModelTester faults(page.faults().model(),
                                        QAbstractItemModelTester::FailureReportingMode::Fatal);
  type(0, "350");
  chooseState(1);
  session.history().undo();
  session.edit("Remove", core::withChannelRemoved(session.document(), 0));
  settle();
  EXPECT_EQ(model().rowCount(), 0);
  EXPECT_TRUE(page.findChild<QLabel*>("ohmMessage")->isVisible());
}

TEST_F(OhmmeterPageTest, SaysWhatMustBeReadBetweenTheTerminals) {
  ASSERT_EQ(model().rowCount(), 6) << "four terminals make six pairs";
  // Derived: opposite corners of four equal arms are joined by two strings of 2 R in parallel, so R; adjacent
  // ones by R beside 3 R, so 3/4 R. 15 digits are compared.
  EXPECT_NEAR(expected("P+", "P-"), 350.0, 1e-9);
  EXPECT_NEAR(expected("S+", "S-"), 350.0, 1e-9);
  for (const char* p : {"P+", "P-"})
    for (const char* s : {"S+", "S-"}) EXPECT_NEAR(expected(p, s), 262.5, 1e-9) << p << s;
}

TEST_F(OhmmeterPageTest, AClosedShuntChangesWhatMustBeRead) {
  ASSERT_EQ(page.findChild<QListWidget*>("ohmStates")->count(), 2);
  chooseState(1);
  // Derived: arm 1 becomes a = 350 beside 100000, 348.7793 ohm; P+ to S- is a beside the other three arms,
  // a 1050 / (a + 1050) = 261.8127 ohm.
  const double arm = 350.0 * 100'000 / 100'350, wanted = arm * 1050 / (arm + 1050);
  EXPECT_NEAR(expected("P+", "S-"), wanted, 1e-9);
}

TEST_F(OhmmeterPageTest, AReadingIsOneUndoStepAndIsJudged) {
  const int row = rowOf("P+", "P-");
  type(row, "350.1");
  ASSERT_EQ(readings().size(), 1U);
  EXPECT_EQ(readings()[0].ohm, core::Resistance(350.1));
  EXPECT_EQ(session.history().undoText(), "Enter ohmmeter reading");
  EXPECT_EQ(session.history().count(), 1);
  EXPECT_EQ(cell(row, Column::Deviation), "+0.1 Ω");
  EXPECT_EQ(cell(row, Column::Fits), "fits");
  type(row, "0k42");  // IEC 60062
  EXPECT_EQ(readings()[0].ohm, core::Resistance(420));
  EXPECT_EQ(cell(row, Column::Fits), "does not fit");
  session.history().undo();
  settle();
  EXPECT_EQ(cell(row, Column::Fits), "fits");
}

TEST_F(OhmmeterPageTest, OpenIsTypedInManyWords) {
  const int row = rowOf("P+", "P-");
  for (const char* word : {"open", "OL", "ol", "∞", "inf"}) {
    SCOPED_TRACE(word);
    QApplication::clipboard()->setText(QString::fromUtf8(word));
    page.table().setCurrentIndex(model().index(row, Column::MeasuredColumn));
    page.table().setFocus();
    QTest::keyClick(&page.table(), Qt::Key_V, Qt::ControlModifier);
    ASSERT_EQ(readings().size(), 1U);
    EXPECT_FALSE(readings()[0].ohm);
    EXPECT_EQ(cell(row, Column::MeasuredColumn), "open");
    EXPECT_EQ(cell(row, Column::Fits), "does not fit");
    EXPECT_EQ(cell(row, Column::Deviation), "–");
    QTest::keyClick(&page.table(), Qt::Key_Delete);
    EXPECT_TRUE(readings().empty());
  }
  EXPECT_EQ(refused.count(), 0);
}

TEST_F(OhmmeterPageTest, ABlockOfReadingsIsPastedAsOneStep) {
  QApplication::clipboard()->setText("350\n262.5\n262.5\n262.5\n262.5\nOL\n");
  page.table().setCurrentIndex(model().index(0, Column::MeasuredColumn));
  page.table().setFocus();
  QTest::keyClick(&page.table(), Qt::Key_V, Qt::ControlModifier);
  EXPECT_EQ(readings().size(), 6U);
  EXPECT_EQ(session.history().count(), 1);
  EXPECT_EQ(session.history().undoText(), "Paste");
}

TEST_F(OhmmeterPageTest, WhatNoOhmmeterShowsIsRefused) {
  for (const char* text : {"-5", "5 V", "many", "nan"}) {
    const int before = refused.count();
    type(0, text);
    EXPECT_EQ(refused.count(), before + 1) << text;
  }
  page.table().setCurrentIndex(model().index(0, Column::Expected));
  QTest::keyClick(&page.table(), Qt::Key_5);
  EXPECT_EQ(refused.count(), 5);
  EXPECT_TRUE(readings().empty());
}

TEST_F(OhmmeterPageTest, ReadingsBelongToTheirState) {
  type(rowOf("P+", "S-"), "262.5");
  chooseState(1);
  EXPECT_EQ(cell(rowOf("P+", "S-"), Column::MeasuredColumn), "");
  type(rowOf("P+", "S-"), "261.8");
  EXPECT_EQ(readings().size(), 2U);
  auto* states = page.findChild<QListWidget*>("ohmStates");
  for (const int row : {0, 1}) EXPECT_TRUE(states->item(row)->text().endsWith("(1 reading)"));
  chooseState(0);
  EXPECT_EQ(cell(rowOf("P+", "S-"), Column::MeasuredColumn), "262.5 Ω");
  QTest::mouseClick(page.findChild<QToolButton*>("clearOhmReadings"), Qt::LeftButton);
  EXPECT_TRUE(readings().empty());
  EXPECT_EQ(session.history().undoText(), "Clear ohmmeter readings");
}

TEST_F(OhmmeterPageTest, AStepShowsTheStateOfItsShunt) {
  core::Channel channel = *session.channel();
  channel.setup.sequence = {{"zero", {}}, {"closed", {0}}};
  session.editChannel("steps", channel);
  auto* states = page.findChild<QListWidget*>("ohmStates");
  session.selectStep(1);
  EXPECT_EQ(states->currentRow(), 1);
  session.selectStep(0);
  EXPECT_EQ(states->currentRow(), 0);
  settle();
}

TEST_F(OhmmeterPageTest, SoundReadingsAreCalledSound) {
  for (const auto& [a, b, ohm] : std::vector<std::tuple<const char*, const char*, const char*>>{
           {"P+", "P-", "350.1"}, {"S+", "S-", "349.9"}, {"P+", "S-", "262.4"}, {"P-", "S-", "262.6"}})
    type(rowOf(a, b), ohm);
  EXPECT_TRUE(bestFault().contains("nothing")) << bestFault().toStdString();
  EXPECT_TRUE(diagnosis().startsWith("4 readings. Fits best: nothing")) << diagnosis().toStdString();
  EXPECT_EQ(page.faults().model()->index(0, OhmFaultModel::Explains).data().toString(), "yes");
}

TEST_F(OhmmeterPageTest, AnOpenArmIsFound) {
  // Derived: with arm 1 (P+ to S-) away the rest is a string S- 350 P- 350 S+ 350 P+.
  for (const auto& [a, b, ohm] : std::vector<std::tuple<const char*, const char*, const char*>>{
           {"P+", "P-", "700"}, {"S+", "S-", "700"}, {"P+", "S-", "1050"}, {"P-", "S-", "350"}})
    type(rowOf(a, b), ohm);
  EXPECT_TRUE(bestFault().contains("arm 1 is open")) << bestFault().toStdString();
  EXPECT_TRUE(diagnosis().contains("arm 1 is open")) << diagnosis().toStdString();
}

TEST_F(OhmmeterPageTest, ConditionsChangeWhatFits) {
  const int row = rowOf("P+", "P-");
  type(row, "352");
  EXPECT_EQ(cell(row, Column::Fits), "does not fit");
  auto* error = page.findChild<QuantityEdit*>("ohmAbsoluteError");
  error->selectAll();
  QTest::keyClicks(error, "5");
  QTest::keyClick(error, Qt::Key_Return);
  settle();
  EXPECT_EQ(page.conditions().absoluteError, core::Resistance(5));
  EXPECT_EQ(cell(row, Column::Fits), "fits");
  EXPECT_EQ(session.history().count(), 1) << "the ohmmeter is no part of the document";
}

TEST_F(OhmmeterPageTest, AnUnpluggedInstrumentLeavesItsInputOut) {
  core::Channel channel = *session.channel();
  channel.setup.instrument.inputResistance = core::Resistance(1000);
  session.editChannel("input", channel);
  settle();
  // Derived: 350 ohm beside the input's 1000 ohm.
  EXPECT_NEAR(expected("S+", "S-"), 350.0 * 1000 / 1350, 1e-9);
  choose("ohmInstrument", 1);
  EXPECT_NEAR(expected("S+", "S-"), 350.0, 1e-9);
}

TEST_F(OhmmeterPageTest, AllPointsAreMoreThanTerminals) {
  core::Channel channel = *session.channel();
  channel.setup.bridge.leads.fill(core::Resistance(2));
  session.editChannel("leads", channel);
  settle();
  ASSERT_EQ(model().rowCount(), 6);
  choose("ohmFilter", 2);
  EXPECT_GT(model().rowCount(), 6);
  // Derived: P+ to the gauge end of its lead is the lead alone, for nothing else joins the two.
  EXPECT_NEAR(expected("P+", "arm 1 begin"), 2.0, 1e-9);
}

TEST_F(OhmmeterPageTest, TellsToSwitchTheExcitationOff) {
  EXPECT_TRUE(page.findChild<QLabel*>("ohmCaution")->isVisible());
  EXPECT_TRUE(page.findChild<QLabel*>("ohmCaution")->text().contains("excitation off"));
  EXPECT_TRUE(diagnosis().startsWith("No readings yet"));
}

TEST_F(OhmmeterPageTest, ABridgeThatCannotBeSolvedSaysWhy) {
  core::Channel channel = *session.channel();
  channel.setup.bridge.arms[1] = core::Resistance(-350);
  session.editChannel("wrong", channel);
  settle();
  EXPECT_TRUE(page.findChild<QLabel*>("ohmRowMessage")->isVisible());
  EXPECT_TRUE(page.findChild<QLabel*>("ohmRowMessage")->text().contains("arm 2"));
  session.history().undo();
  settle();
  EXPECT_EQ(model().rowCount(), 6);
  EXPECT_TRUE(page.table().isVisible());
}

}  // namespace
}  // namespace ui
