// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QLineEdit>
#include <QSignalSpy>
#include <QTabBar>
#include <QTest>
#include <QToolButton>

#include "core/budget/inputs.h"
#include "tests/support/printing.h"
#include "tests/support/sample_channel.h"
#include "ui/check_bar.h"
#include "ui/sequence_pane.h"
#include "ui/tables/table_tools.h"
#include "ui/theme.h"

namespace ui {
namespace uncertainty_table_test {

using core::Input;
using core::InputKind;
using Column = UncertaintyModel::Column;

class UncertaintyTable : public testing::Test {
 protected:
  UncertaintyTable()
      : session(sample::documentOf({sample::nineStepChannel()})),
        pane(session),
        refused(&pane, &SequencePane::refused) {
    pane.resize(1100, 400);
    pane.show();
    pane.activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&pane));
    for (int tab = 0; tab < pane.count(); ++tab)
      if (pane.tabText(tab) == "Uncertainties")
        QTest::mouseClick(pane.tabBar(), Qt::LeftButton, {}, pane.tabBar()->tabRect(tab).center());
    EXPECT_TRUE(table().isVisible());
  }

  SheetView& table() { return pane.uncertainties(); }
  QAbstractItemModel& model() { return *table().model(); }
  int rowOf(const QString& name) {
    for (int row = 0; row < model().rowCount(); ++row)
      if (cell(row, Column::InputColumn) == name) return row;
    ADD_FAILURE() << "no row is called " << name;
    return 0;
  }
  QString cell(int row, int column) { return model().index(row, column).data().toString(); }
  QString source(int row) { return cell(row, Column::Source); }
  void choose(int row, int column) {
    table().setCurrentIndex(model().index(row, column));
    table().setFocus();
  }
  /// Types into the cell as a user does: the first key opens the editor.
  void type(int row, int column, const QString& text) {
    choose(row, column);
    QTest::keyClicks(&table(), text.left(1));
    auto* editor = table().viewport()->findChild<QLineEdit*>();
    ASSERT_TRUE(editor);
    QTest::keyClicks(editor, text.mid(1));
    QTest::keyClick(editor, Qt::Key_Return);
    EXPECT_TRUE(QTest::qWaitFor([&] { return !table().viewport()->findChild<QLineEdit*>(); }, 2000));
  }
  void pick(int row, int column, const QString& word) {
    choose(row, column);
    QTest::keyClick(&table(), Qt::Key_Return);
    auto* box = table().viewport()->findChild<QComboBox*>();
    ASSERT_TRUE(box);
    ASSERT_GE(box->findText(word), 0) << word;
    box->setCurrentText(word);
    QTest::keyClick(box, Qt::Key_Return);
    EXPECT_TRUE(QTest::qWaitFor([&] { return !table().viewport()->findChild<QComboBox*>(); }, 2000));
  }
  void select(int top, int left, int bottom, int right) {
    choose(top, left);
    table().selectionModel()->select(QItemSelection(model().index(top, left), model().index(bottom, right)),
                                     QItemSelectionModel::ClearAndSelect);
  }
  void pasteAt(int row, int column, const QString& text) {
    QApplication::clipboard()->setText(text);
    choose(row, column);
    QTest::keyClick(&table(), Qt::Key_V, Qt::ControlModifier);
  }
  void click(const char* button) { QTest::mouseClick(pane.findChild<QToolButton*>(button), Qt::LeftButton); }

  const core::Uncertainties& uncertainties() { return session.channel()->setup.uncertainties; }
  bool isStated(Input input) { return uncertainties().stated.contains(input); }
  const core::Uncertainty& stated(Input input) { return uncertainties().stated.at(input); }

  Session session;
  SequencePane pane;
  QSignalSpy refused;
  const Input arm1{InputKind::Arm, 0};
  const Input firstShunt{InputKind::Shunt, 0};
};

TEST_F(UncertaintyTable, KeepsTheRulesOfItemModels) {
  const QAbstractItemModelTester tester(&model(), QAbstractItemModelTester::FailureReportingMode::Fatal);
  type(rowOf("arm 1"), Column::Amount, "0.1 %");
  session.history().undo();
  pane.addShunt();
  session.edit("Remove", core::withChannelRemoved(session.document(), 0));
  EXPECT_EQ(model().rowCount(), 0);
}

TEST_F(UncertaintyTable, HasARowForEachInputWithItsAssumptionInQuietWords) {
  for (const char* name : {"arm 1", "arm 4", "lead P+", "lead return", "shunt up", "gain of the instrument",
                           "zero drift of the instrument", "gauge factor"}) {
    const int row = rowOf(name);
    EXPECT_TRUE(source(row).startsWith("assumed: ")) << name;
    EXPECT_EQ(model().index(row, Column::Source).data(Qt::ForegroundRole).value<QColor>(),
              coloursFor(QPalette()).quiet);
  }
  EXPECT_EQ(cell(rowOf("arm 1"), Column::Value), "350 Ω");
  EXPECT_EQ(cell(rowOf("arm 1"), Column::DegreesOfFreedom), "∞");
  EXPECT_EQ(session.history().count(), 0);
}

TEST_F(UncertaintyTable, ATypedShareStatesTheRowAsOneUndoStep) {
  const core::Uncertainty assumed = core::assumptionFor(session.channel()->setup, arm1).uncertainty;
  type(rowOf("arm 1"), Column::Amount, "0.02 %");
  ASSERT_TRUE(isStated(arm1));
  EXPECT_TRUE(stated(arm1).relative);
  EXPECT_DOUBLE_EQ(stated(arm1).amount, 2e-4);
  EXPECT_EQ(stated(arm1).statement, assumed.statement) << "the rest comes from the assumption";
  EXPECT_EQ(cell(rowOf("arm 1"), Column::Amount), "0.02 %");
  EXPECT_EQ(source(rowOf("arm 1")), "stated");
  EXPECT_EQ(session.history().count(), 1);
  EXPECT_EQ(session.history().undoText(), "Change uncertainty");
  session.history().undo();
  EXPECT_FALSE(isStated(arm1));
  EXPECT_TRUE(source(rowOf("arm 1")).startsWith("assumed"));
}

TEST_F(UncertaintyTable, ATypedQuantityIsAbsolute) {
  type(rowOf("arm 1"), Column::Amount, "100 mohm");
  EXPECT_FALSE(stated(arm1).relative);
  EXPECT_DOUBLE_EQ(stated(arm1).amount, 0.1);
  type(rowOf("shunt up"), Column::Amount, "12");
  EXPECT_FALSE(stated(firstShunt).relative) << "a number alone is in the unit of the input";
  EXPECT_EQ(cell(rowOf("shunt up"), Column::Amount), "12 Ω");
  type(rowOf("temperature of the gauges"), Column::Amount, "3 K");
  EXPECT_DOUBLE_EQ(stated({InputKind::GaugeTemperature, 0}).amount, 3);
  EXPECT_EQ(refused.count(), 0);
}

TEST_F(UncertaintyTable, StatementDistributionCoverageFactorAndDegreesOfFreedomAreStated) {
  const int row = rowOf("shunt up");
  pick(row, Column::Distribution, "triangular");
  EXPECT_EQ(stated(firstShunt).distribution, core::Distribution::Triangular);
  EXPECT_EQ(cell(row, Column::CoverageFactor), "") << "k plays no part in a triangular tolerance";
  pick(row, Column::StatedAs, "expanded");
  EXPECT_EQ(stated(firstShunt).statement, core::Statement::Expanded);
  EXPECT_EQ(cell(row, Column::Distribution), "normal");
  type(row, Column::CoverageFactor, "2.5");
  EXPECT_DOUBLE_EQ(stated(firstShunt).coverageFactor, 2.5);
  type(row, Column::DegreesOfFreedom, "12");
  EXPECT_DOUBLE_EQ(stated(firstShunt).degreesOfFreedom.value_or(-1), 12);
  EXPECT_EQ(session.history().count(), 4);
  session.history().undo();
  EXPECT_EQ(cell(row, Column::DegreesOfFreedom), "∞");
  session.history().redo();
  type(row, Column::DegreesOfFreedom, "inf");
  EXPECT_FALSE(stated(firstShunt).degreesOfFreedom);
  EXPECT_EQ(refused.count(), 0);
}

TEST_F(UncertaintyTable, AnEditorClosedWithNothingTypedStatesNothing) {
  for (const int column : {Column::Amount, Column::StatedAs, Column::Distribution, Column::Group}) {
    choose(rowOf("arm 1"), column);
    QTest::keyClick(&table(), Qt::Key_Return);
    // The line edit of a cell, or of a box that may be typed into; else the box itself.
    QWidget* editor = table().viewport()->findChild<QLineEdit*>();
    if (!editor) editor = table().viewport()->findChild<QComboBox*>();
    ASSERT_TRUE(editor) << column;
    QTest::keyClick(editor, Qt::Key_Return);
    EXPECT_TRUE(QTest::qWaitFor([&] { return table().currentIndex().row() != rowOf("arm 1"); }, 2000))
        << column;
  }
  EXPECT_TRUE(uncertainties().stated.empty());
  EXPECT_EQ(session.history().count(), 0);
}

TEST_F(UncertaintyTable, EmptyingTheUncertaintyAssumesAgain) {
  type(rowOf("arm 1"), Column::Amount, "0.02 %");
  choose(rowOf("arm 1"), Column::Amount);
  QTest::keyClick(&table(), Qt::Key_Delete);
  EXPECT_FALSE(isStated(arm1));
  type(rowOf("arm 1"), Column::Amount, "0.02 %");
  choose(rowOf("arm 1"), Column::Amount);
  QTest::keyClick(&table(), Qt::Key_F2);
  auto* editor = table().viewport()->findChild<QLineEdit*>();
  ASSERT_TRUE(editor);
  editor->selectAll();
  QTest::keyClick(editor, Qt::Key_Delete);
  QTest::keyClick(editor, Qt::Key_Return);
  EXPECT_TRUE(QTest::qWaitFor([&] { return !isStated(arm1); }, 2000));
  EXPECT_EQ(refused.count(), 0);
}

TEST_F(UncertaintyTable, DeletingAWholeRowAssumesAgainAndEmptiesNothingElse) {
  const Input lead{InputKind::Lead, static_cast<std::size_t>(core::LeadRole::ExcitationPlus)};
  const int row = rowOf("lead P+");
  type(row, Column::Amount, "2 %");
  ASSERT_TRUE(isStated(lead));
  select(row, Column::InputColumn, row, Column::Source);
  QTest::keyClick(&table(), Qt::Key_Delete);
  EXPECT_FALSE(isStated(lead));
  EXPECT_EQ(session.history().count(), 2);
}

TEST_F(UncertaintyTable, TheChosenRowsAreAssumedAgainByAButton) {
  type(rowOf("arm 1"), Column::Amount, "0.02 %");
  type(rowOf("arm 2"), Column::Amount, "0.02 %");
  type(rowOf("shunt up"), Column::Amount, "0.02 %");
  select(rowOf("arm 1"), Column::Amount, rowOf("arm 2"), Column::StatedAs);
  click("assumeAgain");
  EXPECT_FALSE(isStated(arm1));
  EXPECT_TRUE(isStated(firstShunt));
  EXPECT_EQ(session.history().count(), 4);
  EXPECT_EQ(session.history().undoText(), "Assume uncertainty again");
  click("assumeAgain");
  ASSERT_EQ(refused.count(), 1) << "nothing stated is chosen";
  session.history().undo();
  EXPECT_TRUE(isStated(arm1));
}

TEST_F(UncertaintyTable, WhatCannotBeIsRefusedAtItsCell) {
  struct Case {
    const char* row;
    int column;
    const char* text;
    const char* says;
  };
  const std::vector<Case> cases = {
      {"arm 1", Column::Amount, "-1 %", "not negative"},
      {"arm 1", Column::Amount, "nan", "not a number"},
      {"arm 1", Column::Amount, "5 V", "the unit of a voltage"},
      {"zero drift of the instrument", Column::Amount, "1 %", "a share of this input"},
      {"arm 1", Column::DegreesOfFreedom, "0", "above zero"},
      {"arm 1", Column::DegreesOfFreedom, "many", "not a number"},
      {"gauge factor", Column::CoverageFactor, "0", "above zero"},
      {"arm 1", Column::CoverageFactor, "3", "plays no part"},
      {"lead P+", Column::Correlation, "1.01", "between -1 and 1"},
      {"lead P+", Column::Correlation, "-1.5", "between -1 and 1"},
      {"lead P+", Column::Correlation, "nan", "not a number"},
      {"arm 1", Column::Correlation, "0.5", "in no group"},
  };
  for (const Case& c : cases) {
    const int before = refused.count();
    type(rowOf(c.row), c.column, c.text);
    ASSERT_EQ(refused.count(), before + 1) << c.row << " " << c.text;
    const QString sentence = refused.last().at(0).toString();
    const QString header = model().headerData(c.column, Qt::Horizontal).toString().replace('\n', ' ');
    EXPECT_TRUE(sentence.contains(c.says)) << sentence;
    EXPECT_TRUE(sentence.startsWith(QString("row %1, column %2:").arg(rowOf(c.row) + 1).arg(header)))
        << sentence;
  }
  pick(rowOf("gauge factor"), Column::Distribution, "rectangular");
  EXPECT_TRUE(refused.last().at(0).toString().contains("counts as normal"));
  EXPECT_EQ(session.history().count(), 0);
}

TEST_F(UncertaintyTable, ThePlaceForValuesAndReasonsIsSaid) {
  for (const int column : {Column::InputColumn, Column::Value, Column::Source}) {
    choose(0, column);
    QTest::keyClick(&table(), Qt::Key_5);
  }
  EXPECT_EQ(refused.count(), 3);
}

TEST_F(UncertaintyTable, TheInputsOfAGroupShareOneCorrelation) {
  const int plus = rowOf("lead P+"), back = rowOf("lead return");
  EXPECT_EQ(cell(plus, Column::Group), "cable");
  EXPECT_EQ(cell(plus, Column::Correlation), "1");
  type(plus, Column::Correlation, "0.5");
  EXPECT_DOUBLE_EQ(uncertainties().groups.at("cable"), 0.5);
  EXPECT_EQ(cell(back, Column::Correlation), "0.5");
  EXPECT_EQ(session.history().undoText(), "Change correlation");
  choose(back, Column::Correlation);
  QTest::keyClick(&table(), Qt::Key_Delete);
  EXPECT_TRUE(uncertainties().groups.empty());
  EXPECT_EQ(cell(plus, Column::Correlation), "1");
  session.history().undo();
  session.history().undo();
  EXPECT_TRUE(uncertainties().groups.empty());
}

TEST_F(UncertaintyTable, AGroupWhoseCorrelationCannotExistIsMarkedInItsRows) {
  // Derived: three inputs may be correlated by -1/2 at the least.
  type(rowOf("lead P+"), Column::Correlation, "-0.9");
  for (const QString name : {"lead P+", "lead S-", "lead return"}) {
    EXPECT_TRUE(source(rowOf(name)).startsWith("refused: group cable")) << source(rowOf(name));
    const QVariant hint = model().index(rowOf(name), Column::Source).data(Qt::ToolTipRole);
    EXPECT_TRUE(hint.toString().contains("-0.5")) << hint.toString();  // how to mend it
  }
  EXPECT_TRUE(source(rowOf("arm 1")).startsWith("assumed"));
  session.history().undo();
  EXPECT_TRUE(source(rowOf("lead P+")).startsWith("assumed"));
}

TEST_F(UncertaintyTable, AChoiceHasRoomForItsWords) {
  for (const int column : {Column::StatedAs, Column::Distribution}) {
    choose(rowOf("arm 1"), column);
    QTest::keyClick(&table(), Qt::Key_Return);
    auto* box = table().viewport()->findChild<QComboBox*>();
    ASSERT_TRUE(box);
    EXPECT_GE(box->width(), box->sizeHint().width());
    EXPECT_LE(box->geometry().right(), table().viewport()->width());
    QTest::keyClick(box, Qt::Key_Escape);
    EXPECT_TRUE(QTest::qWaitFor([&] { return !table().viewport()->findChild<QComboBox*>(); }, 2000));
  }
}

TEST_F(UncertaintyTable, EveryWayIntoACellOfAClosedCheckIsRefusedInWords) {
  session.editChannel("check", core::withCheckClosed(core::withCheckAdded(*session.channel(), {}), 0));
  session.selectCheck(0);
  choose(rowOf("arm 1"), Column::Amount);
  const QPoint at = table().visualRect(table().currentIndex()).center();
  QTest::keyClick(&table(), Qt::Key_F2);
  QTest::keyClick(&table(), Qt::Key_Return);
  QTest::keyClick(&table(), Qt::Key_5);
  QTest::mouseDClick(table().viewport(), Qt::LeftButton, {}, at);
  choose(rowOf("arm 1"), Column::Value);
  QTest::keyClick(&table(), Qt::Key_F2);
  ASSERT_EQ(refused.count(), 5);
  for (const auto& sentence : refused) EXPECT_TRUE(sentence.at(0).toString().contains("closed"));
}

TEST_F(UncertaintyTable, AnInputJoinsAGroupThatIsTypedOrChosen) {
  choose(rowOf("arm 1"), Column::Group);
  QTest::keyClick(&table(), Qt::Key_Return);
  auto* box = table().viewport()->findChild<QComboBox*>();
  ASSERT_TRUE(box);
  EXPECT_GE(box->findText("cable"), 0);
  box->lineEdit()->selectAll();
  QTest::keyClicks(box->lineEdit(), "lot 7");
  QTest::keyClick(box->lineEdit(), Qt::Key_Return);
  EXPECT_TRUE(QTest::qWaitFor([&] { return isStated(arm1); }, 2000));
  EXPECT_EQ(stated(arm1).group, "lot 7");
  pick(rowOf("arm 2"), Column::Group, "lot 7");
  EXPECT_EQ(stated({InputKind::Arm, 1}).group, "lot 7");
  pick(rowOf("arm 2"), Column::Group, "none");
  EXPECT_EQ(stated({InputKind::Arm, 1}).group, "");
}

TEST_F(UncertaintyTable, ABlockFromASpreadsheetIsOneUndoStep) {
  const int row = rowOf("arm 1");
  pasteAt(row, Column::Amount, "0,1 %\texpanded\tnormal\t2\t20\tbox\n0.2 %\ttolerance\tarcsine\t\t\t\n");
  ASSERT_EQ(refused.count(), 0) << refused.last().at(0).toString();
  EXPECT_EQ(session.history().count(), 1);
  EXPECT_EQ(stated(arm1).statement, core::Statement::Expanded);
  EXPECT_DOUBLE_EQ(stated(arm1).degreesOfFreedom.value_or(-1), 20);
  EXPECT_EQ(stated(arm1).group, "box");
  const core::Uncertainty& second = stated({InputKind::Arm, 1});
  EXPECT_EQ(second.distribution, core::Distribution::Arcsine);
  EXPECT_DOUBLE_EQ(second.amount, 2e-3);
  pasteAt(row, Column::Amount, "0.1 %\n-1 %");
  EXPECT_EQ(refused.count(), 1);
  EXPECT_EQ(session.history().count(), 1) << "all of a block or nothing";
}

TEST_F(UncertaintyTable, ARowIsCopiedToAnother) {
  const int from = rowOf("gauge factor"), to = rowOf("arm 1");
  select(from, Column::Amount, from, Column::Correlation);
  QTest::keyClick(&table(), Qt::Key_C, Qt::ControlModifier);
  choose(to, Column::Amount);
  QTest::keyClick(&table(), Qt::Key_V, Qt::ControlModifier);
  ASSERT_EQ(refused.count(), 0) << refused.last().at(0).toString();
  const Input factor{InputKind::GaugeFactor, 0};
  EXPECT_EQ(stated(arm1), core::assumptionFor(session.channel()->setup, factor).uncertainty);
  EXPECT_FALSE(isStated(factor));
}

TEST_F(UncertaintyTable, AClosedCheckShowsWhatItWasJudgedByAndTakesNoEdits) {
  type(rowOf("arm 1"), Column::Amount, "0.1 %");
  session.editChannel("Check", sample::withCheckReading(*session.channel(), 1.0));
  session.selectCheck(0);
  session.editChannel("Close", core::withCheckClosed(*session.channel(), 0));
  session.selectCheck({});
  type(rowOf("arm 1"), Column::Amount, "0.3 %");
  session.selectCheck(0);
  EXPECT_EQ(cell(rowOf("arm 1"), Column::Amount), "0.1 %");
  const int before = session.history().index();
  choose(rowOf("arm 1"), Column::Amount);
  QTest::keyClick(&table(), Qt::Key_5);
  ASSERT_EQ(refused.count(), 1);
  EXPECT_TRUE(refused.at(0).at(0).toString().contains("closed"));
  QTest::keyClick(&table(), Qt::Key_Delete);
  pasteAt(rowOf("arm 1"), Column::Amount, "1 %");
  click("assumeAgain");
  EXPECT_EQ(refused.count(), 4);
  EXPECT_EQ(session.history().index(), before);
  EXPECT_FALSE(model().setData(model().index(rowOf("arm 1"), Column::Amount), "5 %"));
  session.selectCheck({});
  EXPECT_EQ(cell(rowOf("arm 1"), Column::Amount), "0.3 %");
}

TEST_F(UncertaintyTable, TheRowOfAnInputIsShownWhereItIsAskedFor) {
  const Input step{InputKind::Rounding, 1};
  const int row = rowOf(toQString(core::inputName(session.channel()->setup, step)));
  type(row, Column::Amount, "0.5 um/m");
  EXPECT_DOUBLE_EQ(stated(step).amount, 0.5);
  EXPECT_FALSE(isStated({InputKind::Rounding, 0})) << "the zero reading is rounded on its own";
  pane.setCurrentIndex(0);
  pane.showUncertainty(step);
  EXPECT_EQ(&pane.current(), &table());
  EXPECT_EQ(table().currentIndex(), model().index(row, Column::Amount));
  pane.setCurrentIndex(0);
  pane.showUncertainty({InputKind::PoissonRatio, 0});
  EXPECT_NE(&pane.current(), &table()) << "a quarter bridge has no such input";
}

TEST_F(UncertaintyTable, CopyAndClearOfTheMenuReachIt) {
  type(rowOf("arm 1"), Column::Amount, "0.1 %");
  choose(rowOf("arm 1"), Column::Amount);
  TableTools::of(pane.current()).copy();
  EXPECT_EQ(QApplication::clipboard()->text(), "0.1 %");
  TableTools::of(pane.current()).clear();
  EXPECT_FALSE(isStated(arm1));
}

TEST_F(UncertaintyTable, NoChannelIsSaidInsteadOfCrashing) {
  session.edit("Remove", core::withChannelRemoved(session.document(), 0));
  click("assumeAgain");
  QTest::keyClick(&table(), Qt::Key_Delete);
  EXPECT_EQ(refused.count(), 1);
}

}  // namespace uncertainty_table_test
}  // namespace ui
