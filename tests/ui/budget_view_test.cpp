// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/budget_view.h"

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QCheckBox>
#include <QClipboard>
#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <QtCharts/QAreaSeries>
#include <QtCharts/QLineSeries>

#include "tests/support/printing.h"
#include "tests/support/sample_channel.h"
#include "ui/budget/budget_words.h"
#include "ui/budget/histogram_plot.h"
#include "ui/budget/share_delegate.h"
#include "ui/budget/trial_words.h"
#include "ui/sheet_view.h"

namespace ui {
namespace {

using core::Input;
using core::InputKind;
using core::Statement;

core::Uncertainty expanded(double share) {
  return {.statement = Statement::Expanded, .amount = share, .relative = true};
}

/// A quarter bridge of 350 ohm, gauge factor 2, without leads: zero, 349.65 kohm and 174.65 kohm across arm
/// 1, zero. Simulated exactly 0, -500, -1000, 0 um/m (derived: 350/350000 and 350/175000 over 2). Nothing is
/// uncertain but the gauge factor, by U = 1 % with k = 2.
core::Channel onlyTheFactorUncertain() {
  using core::Node;
  core::Channel channel;
  channel.name = "TP-01";
  channel.setup.shunts = {{"small", core::Resistance(349650), Node::Arm1Begin, Node::Arm1End},
                          {"large", core::Resistance(174650), Node::Arm1Begin, Node::Arm1End}};
  channel.setup.sequence = {{"zero", {}}, {"small", {0}}, {"large", {1}}, {"zero", {}}};
  for (const Input input : core::inputListOf(channel.setup))
    channel = core::withUncertainty(std::move(channel), input, core::Uncertainty{.amount = 0});
  return core::withUncertainty(std::move(channel), {InputKind::GaugeFactor, 0}, expanded(0.01));
}

core::Channel withoutSteps() {
  core::Channel channel = sample::nineStepChannel();
  channel.setup.sequence.clear();
  return channel;
}

/// The page as a user has it on the screen.
class Budget : public testing::Test {
 protected:
  explicit Budget(core::Channel channel = onlyTheFactorUncertain(), QSize size = {1500, 600})
      : session(sample::documentOf({std::move(channel), sample::nineStepChannel(), withoutSteps()})),
        view(session),
        refused(&view, &BudgetView::refused),
        activated(&view, &BudgetView::inputActivated) {
    session.selectStep(2);
    view.resize(size);
    view.show();
    view.activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&view));
  }

  template <class T>
  T* find(const char* name) {
    T* found = view.findChild<T*>(name);
    EXPECT_TRUE(found) << name;
    return found;
  }
  QString said(const char* label) { return find<QLabel>(label)->accessibleName(); }
  QString cell(int row, int column) { return view.table().model()->index(row, column).data().toString(); }
  /// The row of an input, -1 when it is not there.
  int rowOf(const QString& input) {
    for (int row = 0; row < view.table().model()->rowCount(); ++row)
      if (cell(row, BudgetModel::Name) == input) return row;
    return -1;
  }
  void click(const char* button) { QTest::mouseClick(find<QPushButton>(button), Qt::LeftButton); }
  void sortBy(int column) {
    QHeaderView* header = view.table().horizontalHeader();
    QTest::mouseClick(header->viewport(), Qt::LeftButton, {},
                      {header->sectionViewportPosition(column) + 6, header->height() / 2});
  }
  void chooseStrain() { session.selectScope(core::Scope::Strain); }
  bool waitForResult() {
    return QTest::qWaitFor([&] { return find<QPushButton>("runTrials")->isEnabled() && hasResult(); }, 20000);
  }
  bool hasResult() { return find<HistogramPlot>("histogram")->isVisible() && trials()->isVisible(); }
  QAbstractSeries* series(const QString& name) {
    for (QAbstractSeries* one : find<HistogramPlot>("histogram")->chart()->series())
      if (one->name() == name) return one;
    ADD_FAILURE() << name.toStdString();
    return nullptr;
  }
  QAreaSeries* trials() { return qobject_cast<QAreaSeries*>(series("Trials")); }
  QLineSeries* line(const QString& name) { return qobject_cast<QLineSeries*>(series(name)); }
  QString spoken() { return find<HistogramPlot>("histogram")->accessibleDescription(); }
  void state(Input input, const core::Uncertainty& uncertainty) {
    session.editChannel("State", core::withUncertainty(*session.channel(), input, uncertainty));
  }

  Session session;
  BudgetView view;
  QSignalSpy refused, activated;
};

TEST_F(Budget, HeadlineSaysStepValueUncertaintyAndScope) {
  chooseStrain();
  // Derived: -1000 um/m by construction; the strain that gives one output is as uncertain as the factor, 1 %.
  EXPECT_EQ(said("budgetHeadline"),
            "Step 3, large: simulated -1000.0 µm/m, U = 10 µm/m (k = 2.00, 95.45 %, strain)");
  EXPECT_EQ(said("budgetDetails"),
            "Combined standard uncertainty u = 5.0 µm/m; effective degrees of freedom: infinite.");
}

TEST_F(Budget, TheScopeChooserSwitchesValuesHeadersAndSentence) {
  EXPECT_TRUE(said("budgetScopeWords").contains("Decides pass or fail")) << said("budgetScopeWords");
  const int row = rowOf("gauge factor");
  EXPECT_EQ(cell(row, BudgetModel::Contribution), "0");
  find<QComboBox>("budgetScope")->setFocus();
  QTest::keyClick(find<QComboBox>("budgetScope"), Qt::Key_Down);
  EXPECT_EQ(session.selection().scope, core::Scope::Strain);
  EXPECT_TRUE(said("budgetScopeWords").contains("gauge factor and temperature")) << said("budgetScopeWords");
  // Derived: strain = -k / F, so d strain / d F = -(-1000) / 2 um/m; u of the factor is 0.5 % of 2.
  EXPECT_EQ(cell(rowOf("gauge factor"), BudgetModel::Sensitivity), "500 µm/m");
  EXPECT_EQ(cell(rowOf("gauge factor"), BudgetModel::Contribution), "5");
  EXPECT_EQ(cell(rowOf("gauge factor"), BudgetModel::Share), "100.0 %");
  EXPECT_EQ(cell(rowOf("gauge factor"), BudgetModel::Spread), "normal");
  EXPECT_EQ(cell(rowOf("gauge factor"), BudgetModel::Source), "stated");
}

TEST_F(Budget, RowsStandByShareAndCanBeSortedByTheNumbersOfAnotherColumn) {
  session.selectChannel(1);
  session.selectStep(1);
  const auto contributions = [&] {
    std::vector<double> values;
    for (int row = 0; row < view.table().model()->rowCount(); ++row)
      values.push_back(
          view.table().model()->index(row, BudgetModel::Contribution).data(BudgetModel::SortRole).toDouble());
    return values;
  };
  double last = 2;
  for (int row = 0; row < view.table().model()->rowCount(); ++row) {
    const double share =
        view.table().model()->index(row, BudgetModel::Share).data(BudgetModel::ShareRole).toDouble();
    EXPECT_LE(share, last);
    last = share;
  }
  sortBy(BudgetModel::Contribution);
  const std::vector<double> one = contributions();
  EXPECT_LT(one.front() * one.back(), 0) << "both signs, so that texts and numbers differ in order";
  sortBy(BudgetModel::Contribution);
  const std::vector<double> other = contributions();
  EXPECT_NE(one.front(), other.front());
  for (const auto& values : {one, other})
    EXPECT_TRUE(std::is_sorted(values.begin(), values.end()) ||
                std::is_sorted(values.rbegin(), values.rend()));
}

TEST_F(Budget, SharesOfAllRowsAreTheWholeVariance) {
  session.selectChannel(1);
  session.selectStep(1);
  double sum = 0;
  for (int row = 0; row < view.table().model()->rowCount(); ++row)
    sum += view.table().model()->index(row, BudgetModel::Share).data(BudgetModel::ShareRole).toDouble();
  EXPECT_NEAR(sum, 1, 1e-9);  // rounding of some forty terms and their pairs
}

TEST_F(Budget, AssumedUncertaintiesAreMarkedWithTheirReason) {
  session.selectChannel(1);
  session.selectStep(1);
  const int row = rowOf("gauge factor");
  EXPECT_EQ(cell(row, BudgetModel::Source), "assumed");
  const QString hint = view.table().model()->index(row, BudgetModel::Source).data(Qt::ToolTipRole).toString();
  EXPECT_TRUE(hint.contains("gauge factors of a lot")) << hint;
}

TEST_F(Budget, TheModelKeepsTheRulesOfItemModels) {
  const QAbstractItemModelTester tester(view.table().model(),
                                        QAbstractItemModelTester::FailureReportingMode::Fatal);
  chooseStrain();
  session.selectChannel(1);
  session.selectStep(4);
  session.selectChannel(2);
  EXPECT_EQ(view.table().model()->rowCount(), 0);
}

TEST_F(Budget, TheStepChooserChoosesTheStepForAllViews) {
  auto* box = find<QComboBox>("budgetStep");
  EXPECT_EQ(box->currentText(), "3, large");
  box->setFocus();
  QTest::keyClick(box, Qt::Key_Up);
  EXPECT_EQ(session.selection().step, 1u);
  QTest::keyClick(find<HistogramPlot>("histogram"), Qt::Key_Right);
  EXPECT_EQ(session.selection().step, 2u);
}

TEST_F(Budget, WhatIsMissingIsSaidInPlaceOfTheTable) {
  state({InputKind::Gain, 0}, {.amount = -1});
  EXPECT_FALSE(view.table().isVisible());
  EXPECT_TRUE(said("budgetMessage").contains("Step 3, large has no uncertainty. gain of the instrument:"))
      << said("budgetMessage");
  session.history().undo();
  EXPECT_TRUE(view.table().isVisible());
  session.selectStep({});
  EXPECT_TRUE(said("budgetMessage").contains("Choose a step"));
  session.selectChannel(2);
  EXPECT_TRUE(said("budgetMessage").contains("no steps yet")) << said("budgetMessage");
  session.reset({});
  EXPECT_TRUE(said("budgetMessage").contains("No channel yet")) << said("budgetMessage");
  EXPECT_FALSE(view.table().isVisible());
}

TEST_F(Budget, AClosedCheckShowsItsOwnBudgetAndTakesNoOther) {
  chooseStrain();
  core::Channel channel = core::withCheckAdded(*session.channel(), {});
  session.editChannel("Close", core::withCheckClosed(std::move(channel), 0));
  session.selectCheck({});
  state({InputKind::GaugeFactor, 0}, expanded(0.02));
  const auto activateFactor = [&] {
    view.table().setCurrentIndex(view.table().model()->index(rowOf("gauge factor"), 0));
    QTest::keyClick(&view.table(), Qt::Key_Return);
  };
  EXPECT_TRUE(said("budgetHeadline").contains("U = 20 µm/m")) << said("budgetHeadline");
  session.selectCheck(0);
  EXPECT_TRUE(said("budgetHeadline").contains("U = 10 µm/m")) << said("budgetHeadline");
  activateFactor();
  EXPECT_EQ(activated.count(), 0);
  ASSERT_EQ(refused.count(), 1);
  EXPECT_TRUE(refused.at(0).at(0).toString().contains("closed"));
}

TEST_F(Budget, ReturnOrADoubleClickAsksForTheInput) {
  const int row = rowOf("shunt large");
  ASSERT_GE(row, 0);
  const QModelIndex index = view.table().model()->index(row, BudgetModel::Value);
  view.table().setCurrentIndex(index);
  QTest::keyClick(&view.table(), Qt::Key_Return);
  ASSERT_EQ(activated.count(), 1);
  EXPECT_EQ(activated.at(0).at(0).value<core::Input>(), (Input{InputKind::Shunt, 1}));
  view.table().scrollTo(index);
  const QPoint at = view.table().visualRect(index).center();
  QTest::mouseClick(view.table().viewport(), Qt::LeftButton, {}, at);
  QTest::mouseDClick(view.table().viewport(), Qt::LeftButton, {}, at);
  EXPECT_EQ(activated.count(), 2);
}

TEST_F(Budget, CellsCanBeCopiedAndTakeNoText) {
  chooseStrain();
  view.table().setCurrentIndex(view.table().model()->index(rowOf("gauge factor"), BudgetModel::Share));
  QTest::keyClick(&view.table(), Qt::Key_C, Qt::ControlModifier);
  EXPECT_EQ(QApplication::clipboard()->text(), "1");
  QTest::keyClick(&view.table(), Qt::Key_V, Qt::ControlModifier);
  QTest::keyClick(&view.table(), Qt::Key_Delete);
  EXPECT_EQ(refused.count(), 2);
  EXPECT_EQ(session.history().count(), 0);
}

TEST_F(Budget, CorrelatedInputsSwitchTheDegreesOfFreedomOffAndSaySo) {
  core::Uncertainty arm = expanded(0.001);
  arm.degreesOfFreedom = 9;
  arm.group = "lot";
  state({InputKind::Arm, 0}, arm);
  EXPECT_TRUE(said("budgetDetails").contains("effective degrees of freedom: 9"))
      << said("budgetDetails").toStdString();
  state({InputKind::Arm, 1}, arm);
  EXPECT_TRUE(said("budgetDetails").contains("degrees of freedom not used: correlated inputs contribute"))
      << said("budgetDetails").toStdString();
}

TEST_F(Budget, ARunDrawsHistogramAndIntervalsAndSaysTheNumbers) {
  chooseStrain();
  EXPECT_FALSE(hasResult());
  EXPECT_TRUE(line("Normal curve of the budget")->isVisible()) << "the budget is drawn before a run";
  EXPECT_TRUE(said("trialSentence").contains("No trials yet"));
  click("runTrials");
  ASSERT_TRUE(waitForResult());
  double sum = 0;
  const QList<QPointF> outline = trials()->upperSeries()->points();
  for (int k = 0; k < outline.size(); k += 2) sum += outline[k].y();
  EXPECT_NEAR(sum, 100, 1e-6);  // all trials are in some bar
  for (const char* name :
       {"Symmetric interval of the trials", "Shortest interval of the trials", "Interval of the budget"}) {
    ASSERT_EQ(line(name)->count(), 4) << name;
    // The strain is -1000/(1 + d) with d normal, u = 0.005: 2 u on either side is -990.1 and -1010.1
    // (derived).
    EXPECT_NEAR(line(name)->at(0).x(), -1010, 0.8) << name;  // scatter of an end is some 0.1 at 1e4 trials
    EXPECT_NEAR(line(name)->at(3).x(), -990, 0.8) << name;
  }
  EXPECT_NE(line("Symmetric interval of the trials")->pen().style(),
            line("Shortest interval of the trials")->pen().style());
  EXPECT_TRUE(said("trialSentence").startsWith("Linear interval ")) << said("trialSentence");
  for (const char* word :
       {"Trials:", "settled", "Mean: -1000", "Symmetric, 95.45 %", "Shortest, 95.45 %", "Budget, 95.45 %"})
    EXPECT_TRUE(spoken().contains(word)) << word << " in " << spoken().toStdString();
}

TEST_F(Budget, OneRunServesAllStepsButZeroSteps) {
  chooseStrain();
  click("runTrials");
  ASSERT_TRUE(waitForResult());
  session.selectStep(1);
  EXPECT_TRUE(hasResult());
  EXPECT_TRUE(spoken().contains("Mean: -500")) << spoken().toStdString();
  session.selectStep(0);
  EXPECT_FALSE(hasResult());
  EXPECT_TRUE(said("trialSentence").contains("zero step")) << said("trialSentence");
}

TEST_F(Budget, AnEditClearsTheResultAndUndoBringsItBack) {
  chooseStrain();
  click("runTrials");
  ASSERT_TRUE(waitForResult());
  const QString before = spoken();
  state({InputKind::GaugeFactor, 0}, expanded(0.02));
  EXPECT_FALSE(hasResult());
  EXPECT_TRUE(said("trialSentence").contains("out of date")) << said("trialSentence");
  session.history().undo();
  EXPECT_TRUE(hasResult());
  EXPECT_EQ(spoken(), before);
}

TEST_F(Budget, AnEditThatConcernsNoStepKeepsTheResult) {
  chooseStrain();
  click("runTrials");
  ASSERT_TRUE(waitForResult());
  core::Channel channel = core::withCheckAdded(*session.channel(), {});
  channel.note = "read twice";
  session.editChannel("Note", channel);
  EXPECT_TRUE(hasResult());
}

TEST_F(Budget, LiveTrialsAreReplacedAfterAnEditByThemselves) {
  chooseStrain();
  QTest::mouseClick(find<QCheckBox>("liveTrials"), Qt::LeftButton, {}, {8, 8});
  ASSERT_TRUE(find<QCheckBox>("liveTrials")->isChecked());
  ASSERT_TRUE(waitForResult()) << "live trials need no first click";
  state({InputKind::GaugeFactor, 0}, expanded(0.02));
  EXPECT_FALSE(hasResult());
  ASSERT_TRUE(waitForResult());
  // Derived: now 2 % of 1000 um/m on either side, and the shift of -1000/(1 -+ 0.02).
  EXPECT_NEAR(line("Symmetric interval of the trials")->at(0).x(), -1020, 2);
  QTest::mouseClick(find<QCheckBox>("liveTrials"), Qt::LeftButton, {}, {8, 8});
  state({InputKind::GaugeFactor, 0}, expanded(0.03));
  QTest::qWait(500);  // well over the pause before a live run
  EXPECT_FALSE(hasResult());
}

TEST_F(Budget, ARunCanBeCancelled) {
  chooseStrain();
  click("runTrials");
  click("cancelTrials");
  EXPECT_FALSE(find<QPushButton>("cancelTrials")->isEnabled());
  EXPECT_TRUE(find<QPushButton>("runTrials")->isEnabled());
  EXPECT_TRUE(said("trialSentence").contains("Cancelled")) << said("trialSentence");
  QTest::qWait(300);
  EXPECT_FALSE(hasResult()) << "what ends later is dropped";
}

TEST_F(Budget, AnotherChannelCancelsTheRun) {
  chooseStrain();
  click("runTrials");
  session.selectChannel(1);
  session.selectStep(1);
  EXPECT_FALSE(find<QPushButton>("cancelTrials")->isEnabled());
  QTest::qWait(300);
  EXPECT_FALSE(hasResult());
  EXPECT_TRUE(said("trialSentence").contains("No trials yet")) << said("trialSentence");
}

TEST_F(Budget, ClosingTheWindowDuringARunIsHarmless) {
  auto other = std::make_unique<BudgetView>(session);
  other->show();
  QTest::mouseClick(other->findChild<QPushButton*>("runTrials"), Qt::LeftButton);
  other.reset();
  QTest::qWait(50);
  click("runTrials");
  chooseStrain();
  EXPECT_FALSE(hasResult());
}

TEST_F(Budget, TheSeedDecidesTheTrials) {
  chooseStrain();
  click("runTrials");
  ASSERT_TRUE(waitForResult());
  const QString first = spoken();
  auto* seed = find<QLineEdit>("trialSeed");
  seed->setFocus();
  seed->selectAll();
  QTest::keyClicks(seed, "x");
  EXPECT_TRUE(hasResult()) << "letters are no seed";
  seed->selectAll();
  QTest::keyClicks(seed, "7");
  EXPECT_FALSE(hasResult());
  click("runTrials");
  ASSERT_TRUE(waitForResult());
  const QList<QPointF> seventh = trials()->upperSeries()->points();
  seed->selectAll();
  QTest::keyClicks(seed, "1");
  EXPECT_TRUE(hasResult()) << "the result of that seed is kept";
  EXPECT_EQ(spoken(), first);
  EXPECT_NE(trials()->upperSeries()->points(), seventh);
}

class LowBudget : public Budget {
 protected:
  LowBudget() : Budget(onlyTheFactorUncertain(), {1000, 280}) {}
};

TEST_F(LowBudget, OnALowPageTableAndTrialsTakeTurns) {
  chooseStrain();
  auto* parts = find<QTabBar>("budgetParts");
  EXPECT_TRUE(parts->isVisible());
  EXPECT_TRUE(view.table().isVisible());
  EXPECT_FALSE(find<HistogramPlot>("histogram")->isVisible());
  QTest::mouseClick(parts, Qt::LeftButton, {}, parts->tabRect(1).center());
  EXPECT_FALSE(view.table().isVisible());
  EXPECT_TRUE(find<HistogramPlot>("histogram")->isVisible());
  view.resize(1500, 280);
  EXPECT_FALSE(parts->isVisible());
  EXPECT_TRUE(view.table().isVisible());
  EXPECT_TRUE(find<HistogramPlot>("histogram")->isVisible());
}

TEST(BudgetWords, UncertaintiesHaveTwoSignificantDigits) {
  // Derived by rounding; JCGM 100:2008, 7.2.6 asks for at most two.
  EXPECT_EQ(twoDigitsText(0.5), "0.50");
  EXPECT_EQ(twoDigitsText(12.3), "12");
  EXPECT_EQ(twoDigitsText(123.4), "120");
  EXPECT_EQ(twoDigitsText(9.97), "10");
  EXPECT_EQ(twoDigitsText(0.0997), "0.10");
  EXPECT_EQ(twoDigitsText(99.6), "100");
  EXPECT_EQ(twoDigitsText(0.0999), "0.10");
  EXPECT_EQ(twoDigitsText(0), "0");
}

TEST(BudgetWords, TheComparisonOfIntervalsFollowsTheirDifferenceAndTheTolerance) {
  const core::Channel channel = onlyTheFactorUncertain();
  core::StepUncertainty linear;
  linear.standard = 1.0;
  linear.expanded = 2.0;
  const TrialView view{channel.setup, core::Scope::Strain, 2, linear};
  core::TrialOutput output;
  // JCGM 101:2008, 7.9.2: to one digit u = 1.0 is 1 x 10^0, so the tolerance is half of 1.
  output.symmetric = {-2.4, 2.1};
  EXPECT_EQ(
      comparisonSentence(view, output),
      "Linear interval confirmed to one digit of u: its ends differ by 0.40 and 0.10 µm/m, at most 0.50 "
      "µm/m is allowed.");
  output.symmetric = {-2.6, 2.1};
  EXPECT_EQ(
      comparisonSentence(view, output),
      "Linear interval not confirmed to one digit of u: its ends differ by 0.60 and 0.10 µm/m, more than "
      "0.50 µm/m. Use the trials' interval.");
}

TEST(ShareDelegate, BarsHaveOneZeroAndOneScale) {
  const QRectF area(100, 0, 120, 10);
  EXPECT_EQ(ShareDelegate::barIn(area, 0.5, 0, 1), QRectF(100, 0, 60, 10));
  // With the lowest share at -20 %, zero lies a sixth of the way from the left.
  EXPECT_EQ(ShareDelegate::barIn(area, 0.5, -0.2, 1), QRectF(120, 0, 50, 10));
  EXPECT_EQ(ShareDelegate::barIn(area, -0.2, -0.2, 1), QRectF(100, 0, 20, 10));
  EXPECT_TRUE(ShareDelegate::barIn(area, 1e-4, 0, 1).isEmpty());
}

}  // namespace
}  // namespace ui
