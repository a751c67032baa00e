// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sequence_pane.h"

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QLineEdit>
#include <QPointer>
#include <QSignalSpy>
#include <QTest>
#include <QToolButton>

#include "tests/support/printing.h"
#include "tests/support/sample_channel.h"
#include "ui/budget_view.h"
#include "ui/check_bar.h"

namespace ui {
namespace {

class Sequence : public testing::Test {
 protected:
  Sequence()
      : session(sample::documentOf({sample::nineStepChannel()})),
        pane(session),
        refused(&pane, &SequencePane::refused) {
    pane.resize(1100, 400);
    pane.show();
    pane.activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&pane));
  }

  QString cell(int row, int column) { return pane.steps().model()->index(row, column).data().toString(); }
  bool set(int row, int column, const QString& text) {
    return pane.steps().model()->setData(pane.steps().model()->index(row, column), text);
  }
  void click(const char* button) { QTest::mouseClick(pane.findChild<QToolButton*>(button), Qt::LeftButton); }
  void pasteAt(int row, int column, const QString& text) {
    QApplication::clipboard()->setText(text);
    pane.steps().setCurrentIndex(pane.steps().model()->index(row, column));
    QTest::keyClick(&pane.steps(), Qt::Key_V, Qt::ControlModifier);
  }

  Session session;
  SequencePane pane;
  QSignalSpy refused;
};

TEST_F(Sequence, ModelsKeepTheRulesOfItemModels) {
  const QAbstractItemModelTester steps(pane.steps().model(),
                                       QAbstractItemModelTester::FailureReportingMode::Fatal);
  const QAbstractItemModelTester shunts(pane.shunts().model(),
                                        QAbstractItemModelTester::FailureReportingMode::Fatal);
  click("addStep");
  click("twoSided");
  session.history().undo();
  session.edit("Remove", core::withChannelRemoved(session.document(), 0));
  EXPECT_EQ(pane.steps().model()->rowCount(), 0);
}

TEST_F(Sequence, ShowsPolarityAsSignAndWord) {
  EXPECT_EQ(cell(1, SequenceModel::PolarityColumn), "+ positive");
  EXPECT_EQ(cell(5, SequenceModel::PolarityColumn), "− negative");
  EXPECT_EQ(cell(0, SequenceModel::PolarityColumn), "none");
}

TEST_F(Sequence, NumbersOfAColumnHaveTheSameDecimals) {
  for (const int row : {0, 1, 3, 7}) {
    EXPECT_EQ(cell(row, SequenceModel::Expected).section('.', 1).size(), 2)
        << cell(row, SequenceModel::Expected);
    EXPECT_EQ(cell(row, SequenceModel::Output).section('.', 1).size(), 5) << cell(row, SequenceModel::Output);
  }
}

TEST_F(Sequence, TypingAHoldThroughTheEditorIsOneUndoStep) {
  pane.steps().setCurrentIndex(pane.steps().model()->index(2, SequenceModel::Hold));
  pane.steps().setFocus();
  QTest::keyClick(&pane.steps(), Qt::Key_Return);
  auto* editor = pane.steps().viewport()->findChild<QLineEdit*>();
  ASSERT_TRUE(editor);
  editor->selectAll();
  QTest::keyClicks(editor, "2,5");
  QTest::keyClick(editor, Qt::Key_Return);
  EXPECT_TRUE(QTest::qWaitFor(
      [&] { return session.channel()->setup.sequence[2].hold == core::Duration(2.5); }, 2000));
  EXPECT_EQ(session.history().count(), 1);
  EXPECT_EQ(session.history().undoText(), "Change hold");
}

TEST_F(Sequence, WhatIsBeingTypedNeverComesToAnotherChannel) {
  core::Document two = session.document();
  core::Channel twin = *session.channel();
  twin.name = "twin";  // as many steps and shunts
  two.channels.push_back(std::make_shared<const core::Channel>(twin));
  session.edit("Add channel", two);
  for (const auto& [table, column] : {std::pair{&pane.steps(), int(SequenceModel::Hold)},
                                      std::pair{&pane.shunts(), int(ShuntModel::Resistance)}}) {
    if (!table->isVisible()) pane.showShunt(1);
    table->setCurrentIndex(table->model()->index(1, column));
    table->setFocus();
    QTest::keyClicks(table, "7");
    const QPointer<QLineEdit> editor = table->viewport()->findChild<QLineEdit*>();
    ASSERT_TRUE(editor);
    session.selectChannel(1);
    EXPECT_TRUE(editor->isHidden());
    EXPECT_TRUE(QTest::qWaitFor([&] { return !editor; }, 2000));
    EXPECT_EQ(session.document(), two);
    session.selectChannel(0);
  }
}

TEST_F(Sequence, ANodeIsTypedByItsNameLetterByLetterOrRefused) {
  pane.showShunt(0);
  const auto type = [&](const QString& text) {
    pane.shunts().setCurrentIndex(pane.shunts().model()->index(0, ShuntModel::From));
    pane.shunts().setFocus();
    QTest::keyClick(&pane.shunts(), text[0].toLatin1());
    auto* editor = pane.shunts().viewport()->findChild<QComboBox*>("choiceEditor");
    ASSERT_TRUE(editor);
    QTest::keyClicks(editor->lineEdit(), text.mid(1));
    QTest::keyClick(editor->lineEdit(), Qt::Key_Return);
    EXPECT_TRUE(QTest::qWaitFor([&] { return !pane.shunts().viewport()->findChild<QComboBox*>(); }, 2000));
  };
  const auto from = [&] { return session.channel()->setup.shunts[0].a; };
  for (const core::Node node : {core::Node::Arm1Begin, core::Node::Arm4End, core::Node::Arm3End}) {
    type(toQString(core::nodeName(node)));
    EXPECT_EQ(core::nodeName(from()), core::nodeName(node));
  }
  EXPECT_EQ(refused.count(), 0) << (refused.isEmpty() ? "" : refused[0][0].toString().toStdString());
  type("arm 3");  // the beginning of two names is none
  EXPECT_EQ(from(), core::Node::Arm3End);
  ASSERT_EQ(refused.count(), 1);
  EXPECT_TRUE(refused[0][0].toString().contains("no node of this bridge"));
}

TEST_F(Sequence, AStepSettlesBeforeItHolds) {
  ASSERT_EQ(SequenceModel::Settle + 1, SequenceModel::Hold);
  EXPECT_EQ(pane.steps().model()->headerData(SequenceModel::Settle, Qt::Horizontal).toString(),
            "Settle\n[s]");
  EXPECT_TRUE(set(2, SequenceModel::Settle, "250 ms"));
  EXPECT_EQ(session.channel()->setup.sequence[2].settle, core::Duration(0.25));
  EXPECT_EQ(session.history().undoText(), "Change settling");
  EXPECT_EQ(cell(2, SequenceModel::Settle), "0.25");
  EXPECT_TRUE(set(2, SequenceModel::Settle, "0")) << "it may be looked at from the start";
  EXPECT_FALSE(set(2, SequenceModel::Settle, "-1"));
  EXPECT_EQ(refused.count(), 1);
}

/// The nine steps with shunt 0, "up", made of a resistor whose calibration was due on that day.
core::Channel withPartDue(core::Date due) {
  core::Channel channel = sample::nineStepChannel();
  channel.setup.shunts[0].part = {.id = "S-104", .due = due, .rating = {}};
  return channel;
}

TEST_F(Sequence, AnOverdueResistorIsMarkedInWordAndColour) {
  using namespace std::chrono;
  session.editChannel("Part", withPartDue(2026y / May / 1d));
  session.setToday(2026y / May / 1d);
  EXPECT_EQ(cell(1, SequenceModel::Closed), "up") << "it is good on the day itself";
  session.setToday(2026y / May / 2d);
  EXPECT_EQ(cell(1, SequenceModel::Closed), "up (overdue)");
  const QModelIndex closed = pane.steps().model()->index(1, SequenceModel::Closed);
  EXPECT_EQ(closed.data(Qt::ToolTipRole).toString(),
            "S-104 is overdue: its calibration was due on 2026-05-01.");
  EXPECT_TRUE(closed.data(Qt::ForegroundRole).isValid());
  EXPECT_EQ(closed.data(Qt::EditRole).toString(), "up") << "what is edited and copied is the name";
  EXPECT_EQ(cell(2, SequenceModel::Closed), "up (2)");
}

TEST_F(Sequence, AClosedCheckIsComparedWithTheDayItWasMadeOn) {
  using namespace std::chrono;
  session.setToday(2027y / January / 1d);
  core::Check check;
  check.date = "2026-04-30";
  const core::Channel channel = core::withCheckAdded(withPartDue(2026y / May / 1d), check);
  session.editChannel("Check", core::withCheckClosed(channel, 0));
  session.selectCheck(0);
  EXPECT_EQ(cell(1, SequenceModel::Closed), "up");
  session.selectCheck({});
  EXPECT_EQ(cell(1, SequenceModel::Closed), "up (overdue)");
}

TEST_F(Sequence, RefusesAHoldOfZeroAndAnUnknownShuntWithPlaceAndMend) {
  EXPECT_FALSE(set(2, SequenceModel::Hold, "0"));
  EXPECT_FALSE(set(3, SequenceModel::Closed, "R99"));
  ASSERT_EQ(refused.count(), 2);
  EXPECT_TRUE(refused.at(1).at(0).toString().contains("row 4, column Shunts closed"));
  EXPECT_TRUE(refused.at(1).at(0).toString().contains("Known shunts"));
  EXPECT_EQ(session.history().count(), 0);
}

TEST_F(Sequence, ClosesSeveralShuntsByName) {
  EXPECT_TRUE(set(1, SequenceModel::Closed, "down, up"));
  EXPECT_EQ(session.channel()->setup.sequence[1].closed.size(), 2u);
  EXPECT_TRUE(set(1, SequenceModel::Closed, ""));
  EXPECT_EQ(cell(1, SequenceModel::Closed), "none");
}

TEST_F(Sequence, ChoosingARowChoosesTheStepAndBack) {
  pane.steps().setCurrentIndex(pane.steps().model()->index(6, 0));
  EXPECT_EQ(session.selection().step, 6u);
  session.selectStep(2);
  EXPECT_EQ(pane.steps().currentIndex().row(), 2);
}

TEST_F(Sequence, ReadingsPastedFromASpreadsheetAreJudgedInOneUndoStep) {
  click("addCheck");
  const int before = session.history().count();
  pasteAt(0, SequenceModel::Measured, "0\n1000\n2000\n3000\n0\n-1000\n-2000\n-3000\n0\n");
  EXPECT_EQ(session.history().count(), before + 1);
  EXPECT_EQ(session.check()->readings[3]->mean, core::Reading(3000));
  EXPECT_NE(cell(3, SequenceModel::VerdictColumn), "not judged");
  session.history().undo();
  EXPECT_FALSE(session.check()->readings[3]);
}

TEST_F(Sequence, ABlockThatDoesNotFitOrIsNoNumberChangesNothing) {
  click("addCheck");
  const int before = session.history().count();
  pasteAt(5, SequenceModel::Measured, "1\n2\n3\n4\n5");
  pasteAt(0, SequenceModel::Measured, "1\n2\nabc");
  pasteAt(0, SequenceModel::Expected, "1");
  EXPECT_EQ(session.history().count(), before);
  ASSERT_EQ(refused.count(), 3);
  EXPECT_TRUE(refused.at(0).at(0).toString().contains("5 rows"));
  EXPECT_TRUE(refused.at(1).at(0).toString().contains("row 3"));
}

TEST_F(Sequence, CopiesABlockAsTabSeparatedText) {
  pane.steps().setCurrentIndex(pane.steps().model()->index(0, SequenceModel::Label));
  pane.steps().selectionModel()->select(QItemSelection(pane.steps().model()->index(0, SequenceModel::Label),
                                                       pane.steps().model()->index(1, SequenceModel::Closed)),
                                        QItemSelectionModel::ClearAndSelect);
  QTest::keyClick(&pane.steps(), Qt::Key_C, Qt::ControlModifier);
  EXPECT_EQ(QApplication::clipboard()->text(), "zero\tnone\nup\tup");
}

TEST_F(Sequence, ReturnInAnEditorGoesToTheCellBelow) {
  click("addCheck");
  pane.steps().setCurrentIndex(pane.steps().model()->index(0, SequenceModel::Measured));
  pane.steps().setFocus();
  for (const char* reading : {"1", "2"}) {
    const int row = pane.steps().currentIndex().row();
    QTest::keyClicks(&pane.steps(), reading);
    auto* editor = pane.steps().viewport()->findChild<QLineEdit*>();
    ASSERT_TRUE(editor);
    QTest::keyClick(editor, Qt::Key_Return);
    EXPECT_TRUE(QTest::qWaitFor([&] { return pane.steps().currentIndex().row() == row + 1; }, 2000));
  }
  EXPECT_EQ(session.check()->readings[1]->mean, core::Reading(2));
}

TEST_F(Sequence, TypingWhereNothingCanBeTypedSaysWhy) {
  pane.steps().setCurrentIndex(pane.steps().model()->index(1, SequenceModel::Expected));
  QTest::keyClick(&pane.steps(), Qt::Key_5);
  ASSERT_EQ(refused.count(), 1);
  EXPECT_TRUE(refused.at(0).at(0).toString().contains("worked out"));
}

TEST_F(Sequence, TheChangeIsShownBesideTheReadingItComesFrom) {
  session.editChannel("Check", sample::withCheckReading(sample::nineStepChannel(), 1.0, 100.0));
  session.selectCheck(0);
  const double measured = cell(1, SequenceModel::Measured).toDouble();
  EXPECT_NEAR(cell(1, SequenceModel::Change).toDouble(), measured - 100.0, 0.011);  // two decimals are shown
}

TEST_F(Sequence, AReadingThatNoInstrumentShowsIsRefused) {
  click("addCheck");
  EXPECT_FALSE(set(1, SequenceModel::Measured, "1e300"));
  ASSERT_EQ(refused.count(), 1);
  EXPECT_TRUE(refused.at(0).at(0).toString().contains("1e300 µm/m is more than any instrument shows"))
      << refused.at(0).at(0).toString().toStdString();
  EXPECT_FALSE(core::hasReading(*session.check()));
  EXPECT_TRUE(set(1, SequenceModel::Measured, "-1e12"));
  EXPECT_EQ(session.check()->readings[1]->mean, core::Reading(-1e12));
}

TEST_F(Sequence, AReadingOfAFileIsNeverWiderThanItsColumn) {
  click("addCheck");
  session.editChannel(
      "Read", core::withReading(*session.channel(), 0, 1, core::Measured{core::Reading(1e300), {}, {}, {}}));
  EXPECT_EQ(cell(1, SequenceModel::Measured), "1e300");
}

TEST_F(Sequence, DeleteEmptiesReadings) {
  click("addCheck");
  pasteAt(0, SequenceModel::Measured, "1\n2");
  pane.steps().setCurrentIndex(pane.steps().model()->index(1, SequenceModel::Measured));
  QTest::keyClick(&pane.steps(), Qt::Key_Delete);
  EXPECT_FALSE(session.check()->readings[1]);
  EXPECT_TRUE(session.check()->readings[0]);
}

TEST_F(Sequence, StepsAreAddedMovedAndRemoved) {
  session.selectStep(0);
  click("addStep");
  EXPECT_EQ(session.channel()->setup.sequence.size(), 10u);
  EXPECT_EQ(session.selection().step, 1u);
  session.selectStep(2);
  click("stepUp");
  EXPECT_EQ(session.channel()->setup.sequence[1].label, "up");
  click("removeStep");
  EXPECT_EQ(session.channel()->setup.sequence.size(), 9u);
}

TEST_F(Sequence, AClosedCheckShowsItsOwnStepsAndTakesNoEdits) {
  click("addCheck");
  pasteAt(0, SequenceModel::Measured, "0\n1000\n2000\n3000\n0\n-1000\n-2000\n-3000\n0");
  click("closeCheck");
  EXPECT_TRUE(session.checkIsClosed());
  EXPECT_FALSE(set(0, SequenceModel::Measured, "5"));
  click("removeStep");
  EXPECT_EQ(session.channel()->setup.sequence.size(), 9u);
  EXPECT_EQ(refused.count(), 2);
  pane.addShunt();
  pane.shunts().setCurrentIndex(pane.shunts().model()->index(0, ShuntModel::Resistance));
  click("removeShunt");
  QAbstractItemModel* shunts = pane.shunts().model();
  EXPECT_FALSE(shunts->setData(shunts->index(0, ShuntModel::Resistance), "59k9"));
  EXPECT_EQ(session.channel()->setup.shunts.size(), 6u);
  EXPECT_EQ(refused.count(), 5);
  session.selectCheck({});
  session.selectStep(8);
  click("removeStep");
  EXPECT_EQ(session.channel()->setup.sequence.size(), 8u);
  session.selectCheck(0);
  EXPECT_EQ(pane.steps().model()->rowCount(), 9);
}

TEST_F(Sequence, ShuntsAreEditedInTheirTable) {
  auto* shunts = pane.shunts().model();
  EXPECT_TRUE(shunts->setData(shunts->index(0, ShuntModel::Resistance), "59k9"));
  EXPECT_EQ(session.channel()->setup.shunts[0].resistance, core::Resistance(59900));
  EXPECT_EQ(session.history().undoText(), "Change shunt");
  EXPECT_FALSE(shunts->setData(shunts->index(0, ShuntModel::Resistance), "0"));
  EXPECT_FALSE(shunts->setData(shunts->index(0, ShuntModel::From), "sense+"));
  EXPECT_FALSE(shunts->setData(shunts->index(0, ShuntModel::From), "arm 2 end")) << "both ends on one node";
  EXPECT_TRUE(shunts->setData(shunts->index(0, ShuntModel::From), "S-"));
  ASSERT_EQ(refused.count(), 4);
  EXPECT_EQ(refused.last()[0].toString(), "") << "one was taken, so the reason is out of date";
}

TEST_F(Sequence, AShuntsSwitchHasAResistanceInSeries) {
  auto* shunts = pane.shunts().model();
  EXPECT_EQ(shunts->headerData(ShuntModel::Contact, Qt::Horizontal).toString(), "Switch");
  EXPECT_TRUE(shunts->setData(shunts->index(1, ShuntModel::Contact), "120 mohm"));
  EXPECT_EQ(session.channel()->setup.shunts[1].contact, core::Resistance(0.12));
  EXPECT_EQ(session.history().undoText(), "Change switch of shunt");
  EXPECT_FALSE(shunts->setData(shunts->index(1, ShuntModel::Contact), "-1"));
  ASSERT_EQ(refused.count(), 1);
  EXPECT_TRUE(refused.at(0).at(0).toString().contains("column Switch"));
  session.history().undo();
  EXPECT_EQ(session.channel()->setup.shunts[1].contact, core::Resistance(0));
}

TEST_F(Sequence, ShuntsShowPolarityAsSignAndWordToo) {
  EXPECT_EQ(pane.shunts().model()->index(0, ShuntModel::PolarityColumn).data().toString(), "+ positive");
  EXPECT_EQ(pane.shunts().model()->index(1, ShuntModel::PolarityColumn).data().toString(), "− negative");
}

TEST_F(Sequence, NoChannelIsSaidInsteadOfCrashing) {
  session.edit("Remove", core::withChannelRemoved(session.document(), 0));
  for (const char* button : {"addStep", "removeStep", "stepUp", "twoSided", "addCheck"}) click(button);
  pane.addShunt();
  pane.removeShunt();
  EXPECT_GE(refused.count(), 5);
  EXPECT_EQ(session.history().count(), 1);
}

/// The plan with every uncertainty stated as zero but that of `input`, U with k = 2 as a share.
core::Channel uncertainOnlyIn(core::Channel channel, core::Input input, double share) {
  for (const core::Input each : core::inputListOf(channel.setup))
    channel = core::withUncertainty(std::move(channel), each, core::Uncertainty{.amount = 0});
  return core::withUncertainty(
      std::move(channel), input,
      core::Uncertainty{.statement = core::Statement::Expanded, .amount = share, .relative = true});
}

TEST_F(Sequence, ExpandedUncertaintyFollowsTheChosenScopeAndSaysWhatItIsOf) {
  // Derived: the instrument is set to a factor that the reading is divided by, whatever the gauges have, so
  // the reading does not depend on theirs; the strain falls as it rises, so 1 % of it is 1 % of the strain.
  session.editChannel("State", uncertainOnlyIn(*session.channel(), {core::InputKind::GaugeFactor, 0}, 0.01));
  const auto header = [&] {
    return pane.steps().model()->headerData(SequenceModel::Expanded, Qt::Horizontal).toString();
  };
  EXPECT_EQ(header(), "U, chain\n[µm/m]");
  EXPECT_EQ(cell(1, SequenceModel::Expanded), "0");
  session.selectScope(core::Scope::Strain);
  EXPECT_EQ(header(), "U, strain\n[µm/m]");
  const double simulated = cell(1, SequenceModel::Simulated).toDouble();
  // Two digits are shown, so half a unit of the second may be missing: 5 % of the least such number.
  EXPECT_NEAR(cell(1, SequenceModel::Expanded).toDouble(), 0.01 * simulated, 0.0005 * simulated);
  const QString hint =
      pane.steps().model()->index(1, SequenceModel::Expanded).data(Qt::ToolTipRole).toString();
  EXPECT_TRUE(hint.contains("Simulated strain") && hint.contains("k = 2.00") && hint.contains("95.45 %") &&
              hint.contains("degrees of freedom: infinite"))
      << hint;
}

TEST_F(Sequence, ExpandedUncertaintyOfATransducerIsOfItsLoad) {
  core::Channel channel = core::withBridgeType(*session.channel(), core::BridgeType::Transducer);
  channel.setup.bridge.rating.loadUnit = "N";
  session.editChannel("Transducer", channel);
  session.selectScope(core::Scope::Strain);
  EXPECT_EQ(pane.steps().model()->headerData(SequenceModel::Expanded, Qt::Horizontal).toString(),
            "U, load\n[N]");
}

TEST_F(Sequence, AnUncertaintyThatCannotBeKnownIsADashWithItsReason) {
  core::Channel channel = *session.channel();
  channel =
      core::withUncertainty(std::move(channel), {core::InputKind::Gain, 0}, core::Uncertainty{.amount = -1});
  session.editChannel("State", channel);
  EXPECT_EQ(cell(1, SequenceModel::Expanded), "–");
  EXPECT_NE(cell(1, SequenceModel::Expected), "–") << "the reading is known all the same";
  const QString hint =
      pane.steps().model()->index(1, SequenceModel::Expanded).data(Qt::ToolTipRole).toString();
  EXPECT_TRUE(hint.contains("gain of the instrument")) << hint;
}

TEST_F(Sequence, AStepThatTheRuleCannotDecideSaysSo) {
  core::Channel channel = sample::withCheckReading(sample::nineStepChannel(), 1.0);
  channel.setup.decision.rule = core::DecisionRule::SharedRisk;
  channel.setup.decision.greatestShare = 1e-9;  // any uncertainty is too large
  session.editChannel("Check", channel);
  session.selectCheck(0);
  EXPECT_EQ(cell(1, SequenceModel::VerdictColumn), "cannot tell");
}

TEST_F(Sequence, ReturnOnALineOfTheBudgetOpensThatInputsUncertainty) {
  session.selectStep(1);
  pane.showBudget();
  SheetView& lines = pane.budget().table();
  ASSERT_TRUE(lines.isVisible());
  const QString input = lines.model()->index(0, BudgetModel::Name).data().toString();
  lines.setCurrentIndex(lines.model()->index(0, BudgetModel::Share));
  QTest::keyClick(&lines, Qt::Key_Return);
  EXPECT_TRUE(pane.uncertainties().isVisible());
  EXPECT_EQ(pane.uncertainties().currentIndex().siblingAtColumn(0).data().toString().toLower(),
            input.toLower());
}

TEST_F(Sequence, AnEmptyCheckListOffersThePlanOnly) {
  EXPECT_EQ(pane.findChild<QComboBox*>("checkBox")->currentText(), "plan only");
  click("addCheck");
  EXPECT_EQ(pane.findChild<QComboBox*>("checkBox")->currentText(), "pre-test");
}

}  // namespace
}  // namespace ui
