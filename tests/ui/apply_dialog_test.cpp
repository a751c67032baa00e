// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/apply_dialog.h"

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QCheckBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QSignalSpy>
#include <QTableView>
#include <QTest>

#include "tests/support/printing.h"
#include "tests/support/sample_channel.h"

namespace ui {
namespace {

core::Channel named(core::Channel channel, std::string name) {
  channel.name = std::move(name);
  return channel;
}

core::Channel fullBridge(const std::string& name) {
  return named(core::withBridgeType({}, core::BridgeType::FullBending), name);
}

/// TP-01 with a plan, TP-02 of the same template with readings in an open check of another plan, TP-03 of the
/// same template and empty, SG-01 a full bridge.
core::Document fourChannels() {
  core::Channel read = core::withStepMoved(sample::nineStepChannel(), 1, 2);
  return sample::documentOf({named(sample::nineStepChannel(), "TP-01"),
                             named(sample::withCheckReading(read, 1.0), "TP-02"), named({}, "TP-03"),
                             fullBridge("SG-01")});
}

class Apply : public testing::Test {
 protected:
  Apply() : Apply(fourChannels()) {}
  explicit Apply(core::Document document) : session(std::move(document)) { open(); }

  void open() {
    dialog = std::make_unique<ApplyDialog>(session);
    dialog->show();
    dialog->activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(dialog.get()));
    table = find<QTableView>("applyChannels");
  }
  template <class Widget>
  Widget* find(const char* name) {
    auto* widget = dialog->findChild<Widget*>(name);
    EXPECT_TRUE(widget) << name;
    return widget;
  }
  void click(const char* name) {
    auto* button = find<QAbstractButton>(name);
    QTest::mouseClick(button, Qt::LeftButton, Qt::NoModifier, QPoint(8, button->height() / 2));
  }
  QString cell(int row, int column) const { return table->model()->index(row, column).data().toString(); }
  bool ticked(int row) const {
    return table->model()->index(row, 0).data(Qt::CheckStateRole).toInt() == Qt::Checked;
  }
  /// Ticks a row as a user does by keyboard.
  void tick(int row) {
    table->setFocus();
    table->setCurrentIndex(table->model()->index(row, 0));
    QTest::keyClick(table, Qt::Key_Space);
  }
  QString summary() { return find<QLabel>("applySummary")->text(); }
  bool canApply() { return find<QAbstractButton>("applyOk")->isEnabled(); }
  const core::Channel& channel(std::size_t index) const { return *session.document().channels[index]; }

  Session session;
  std::unique_ptr<ApplyDialog> dialog;
  QTableView* table = nullptr;
};

TEST_F(Apply, StartsWithThePlanOfTheChosenChannelAndNoChannels) {
  EXPECT_EQ(find<QLabel>("applySource")->text(), "TP-01");
  EXPECT_TRUE(find<QCheckBox>("applyPlan")->isChecked());
  for (const char* name :
       {"applyWiring", "applyInstrument", "applyAcquisition", "applyLimits", "applyUncertainties"})
    EXPECT_FALSE(find<QCheckBox>(name)->isChecked()) << name;
  EXPECT_EQ(summary(), "Choose channels.");
  EXPECT_FALSE(canApply());
}

TEST_F(Apply, HandsThePlanToTheTickedChannelsInOneUndoStep) {
  tick(2);
  tick(3);
  EXPECT_EQ(summary(), "2 channels change.");
  click("applyOk");
  EXPECT_FALSE(dialog->isVisible());
  for (const std::size_t k : {2, 3}) EXPECT_EQ(channel(k).setup.shunts, channel(0).setup.shunts);
  EXPECT_EQ(channel(3).setup.bridge.type, core::BridgeType::FullBending);
  ASSERT_EQ(session.history().count(), 1);
  EXPECT_EQ(session.history().undoText(), "Apply plan to 2 channels");
  session.history().undo();
  EXPECT_TRUE(channel(2).setup.shunts.empty());
}

TEST_F(Apply, NamesAllPartsInTheUndoStep) {
  click("applyLimits");
  click("applyAcquisition");
  tick(2);
  click("applyOk");
  EXPECT_EQ(session.history().undoText(), "Apply plan, acquisition and limits to 1 channel");
}

TEST_F(Apply, TellsBeforehandThatReadingsAreDropped) {
  EXPECT_EQ(cell(1, ApplyChannels::Outcome), "changes; 9 readings of open checks are dropped");
  tick(1);
  EXPECT_EQ(summary(), "1 channel changes. 9 readings of open checks are dropped.");
}

TEST_F(Apply, TheSourceCannotBeChosen) {
  EXPECT_EQ(cell(0, ApplyChannels::Outcome), "the parts are from here");
  EXPECT_FALSE(table->model()->index(0, 0).data(Qt::CheckStateRole).isValid());
  click("applyAll");
  EXPECT_FALSE(ticked(0));
  EXPECT_EQ(summary(), "3 channels change. 9 readings of open checks are dropped.");
}

TEST_F(Apply, ChoosesAllShownThoseOfTheSameTemplateOrNone) {
  click("applySameTemplate");
  EXPECT_TRUE(ticked(1) && ticked(2) && !ticked(3));
  click("applyAll");
  EXPECT_TRUE(ticked(1) && ticked(2) && ticked(3));
  click("applyNone");
  EXPECT_TRUE(!ticked(1) && !ticked(2) && !ticked(3));
  find<QLineEdit>("applyFilter")->setFocus();
  QTest::keyClicks(find<QLineEdit>("applyFilter"), "sg-");
  ASSERT_EQ(table->model()->rowCount(), 1);
  EXPECT_EQ(cell(0, ApplyChannels::Name), "SG-01");
  click("applyAll");
  find<QLineEdit>("applyFilter")->clear();
  EXPECT_TRUE(!ticked(1) && !ticked(2) && ticked(3));
}

TEST_F(Apply, SpaceTicksAllSelectedRows) {
  table->setFocus();
  table->setCurrentIndex(table->model()->index(1, 0));
  QTest::keyClick(table, Qt::Key_Down, Qt::ShiftModifier);
  QTest::keyClick(table, Qt::Key_Space);
  EXPECT_TRUE(ticked(1) && ticked(2) && !ticked(3));
  QTest::keyClick(table, Qt::Key_Space);
  EXPECT_TRUE(!ticked(1) && !ticked(2));
}

TEST_F(Apply, ABoxIsTickedByTheMouseToo) {
  const QRect row = table->visualRect(table->model()->index(2, 0));
  QTest::mouseClick(table->viewport(), Qt::LeftButton, Qt::NoModifier,
                    QPoint(row.left() + 12, row.center().y()));
  EXPECT_TRUE(ticked(2));
}

TEST_F(Apply, WithoutAPartThereIsNothingToApply) {
  click("applyPlan");
  tick(2);
  EXPECT_EQ(summary(), "Choose at least one part.");
  EXPECT_FALSE(canApply());
}

TEST_F(Apply, CancelLeavesTheDocumentAlone) {
  const core::Document before = session.document();
  tick(2);
  QTest::keyClick(dialog.get(), Qt::Key_Escape);
  EXPECT_FALSE(dialog->isVisible());
  EXPECT_EQ(session.document(), before);
  EXPECT_EQ(session.history().count(), 0);
}

class ApplySense : public Apply {
 protected:
  static core::Document document() {
    core::Channel from = fullBridge("LC-1");
    from.setup.bridge.sixWire = true;
    from.setup.shunts = {{"R<b>1", core::Resistance(59000), core::Node::SensePlus, core::Node::SPlus}};
    core::Channel six = from;
    six.setup.shunts.clear();
    return sample::documentOf({from, fullBridge("TP-31"), named(six, "LC-2")});
  }
  ApplySense() : Apply(document()) {}
};

TEST_F(ApplySense, SaysWhichChannelIsRefusedAndWhyAndLeavesItAlone) {
  EXPECT_EQ(cell(1, ApplyChannels::Outcome), "refused: it has no sense leads for shunt “R<b>1”");
  click("applyAll");
  EXPECT_EQ(summary(),
            "1 channel changes. 1 is left alone. TP-31: refused: it has no sense leads for shunt “R<b>1”.");
  QSignalSpy refused(dialog.get(), &ApplyDialog::refused);
  const core::Channel before = channel(1);
  click("applyOk");
  EXPECT_EQ(channel(1), before);
  EXPECT_EQ(channel(2).setup.shunts.size(), 1u);
  EXPECT_EQ(session.history().undoText(), "Apply plan to 1 channel");
  ASSERT_EQ(refused.count(), 1);
  EXPECT_EQ(refused[0][0].toString(),
            "1 channel left alone. TP-31: refused: it has no sense leads for shunt “R<b>1”.");
}

TEST_F(ApplySense, NothingCanBeAppliedToRefusedChannelsAlone) {
  tick(1);
  EXPECT_EQ(summary(),
            "0 channels change. 1 is left alone. TP-31: refused: it has no sense leads for shunt “R<b>1”.");
  EXPECT_FALSE(canApply());
}

class ApplyStock : public Apply {
 protected:
  static core::Document document() {
    core::Channel made = sample::nineStepChannel();
    made.setup.shunts[0].part.id = "AF-0101";
    core::Stock stock;
    stock.resistors = {{"AF-0101", core::Resistance(174652)}};
    return core::withStock(sample::documentOf({made, named(made, "TP-02"), named({}, "TP-03")}), stock);
  }
  ApplyStock() : Apply(document()) {}
};

TEST_F(ApplyStock, TakesResistorValuesFromTheStockInTheChosenChannelToo) {
  click("applyStockValues");
  EXPECT_FALSE(find<QCheckBox>("applyPlan")->isEnabled());
  EXPECT_EQ(cell(0, ApplyChannels::Outcome), "changes");
  EXPECT_EQ(cell(2, ApplyChannels::Outcome), "stays as it is");
  click("applyAll");
  EXPECT_EQ(summary(), "2 channels change. 1 stays as it is.");
  click("applyOk");
  for (const std::size_t k : {0, 1})
    EXPECT_EQ(channel(k).setup.shunts[0].resistance, core::Resistance(174652));
  EXPECT_EQ(session.history().undoText(), "Take stock values in 2 channels");
}

TEST_F(ApplyStock, TheSourceIsNoLongerChosenWhenPartsAreHandedOverAfterAll) {
  click("applyStockValues");
  click("applyAll");
  EXPECT_TRUE(ticked(0));
  click("applyParts");
  EXPECT_FALSE(ticked(0));
}

TEST(ApplyChannels, KeepsTheRulesOfAModel) {
  Session session(fourChannels());
  ApplyChannels channels(session);
  const QAbstractItemModelTester tester(&channels, QAbstractItemModelTester::FailureReportingMode::Fatal);
  channels.handOver({.plan = true});
  channels.chooseOnly({0, 1, 2});
  channels.takeStockValues();
  EXPECT_EQ(channels.chosen(), (std::vector<std::size_t>{1, 2}));
}

TEST(ApplyDialogWithoutChannels, SaysSoAndDoesNothing) {
  Session session(core::Document{});
  ApplyDialog dialog(session);
  EXPECT_FALSE(dialog.findChild<QAbstractButton*>("applyOk")->isEnabled());
  EXPECT_EQ(dialog.findChild<QLabel*>("applySummary")->text(),
            "There is no channel yet: add channels first.");
  dialog.findChild<QAbstractButton*>("applyStockValues")->click();
  EXPECT_FALSE(dialog.findChild<QAbstractButton*>("applyOk")->isEnabled());
}

}  // namespace
}  // namespace ui
