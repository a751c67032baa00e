// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/outcome_view.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QTableView>
#include <QTest>
#include <QTextLayout>
#include <QToolButton>
#include <QtCharts/QLineSeries>
#include <QtCharts/QScatterSeries>
#include <QtCharts/QValueAxis>
#include <algorithm>
#include <cmath>

#include "core/document/edits.h"
#include "core/plan/pattern.h"
#include "tests/support/sample_channel.h"
#include "ui/outcome/deviation_plot.h"
#include "ui/outcome/figure_grid.h"
#include "ui/outcome/measured_plot.h"
#include "ui/outcome/plot_legend.h"
#include "ui/outcome/plot_marks.h"

namespace ui {
namespace {

/// A quarter bridge of 350 ohm, gauge factor 2, without leads: zero, 349.65 kohm and 174.65 kohm across
/// arm 1, zero. Simulated exactly 0, -500, -1000, 0 um/m (derived: 350/350000 and 350/175000 over 2).
core::Channel planned() {
  core::Channel channel;
  channel.name = "TP-01";
  using core::Node;
  channel.setup.shunts = {
      {"small", core::Resistance(349650), Node::Arm1Begin, Node::Arm1End, core::Resistance(0)},
      {"large", core::Resistance(174650), Node::Arm1Begin, Node::Arm1End, core::Resistance(0)}};
  channel.setup.sequence = {{"zero", {}, core::Duration(2)},
                            {"small", {0}, core::Duration(2)},
                            {"large", {1}, core::Duration(2)},
                            {"zero", {}, core::Duration(2)}};
  return channel;
}

core::Channel checkedWith(core::Channel channel, const QString& name, std::vector<double> readings) {
  core::Check check;
  check.name = name.toStdString();
  channel = core::withCheckAdded(std::move(channel), std::move(check));
  for (std::size_t k = 0; k < readings.size(); ++k)
    channel.checks.back().readings[k] = core::Measured{core::Reading(readings[k]), {}, {}, {}};
  return channel;
}

core::Document documentOf(core::Channel channel) {
  return core::withChannelInserted({}, 0, std::move(channel));
}

core::Channel checked() { return checkedWith(planned(), "pre-test", {3, 3 - 500.4, 3 - 1001.5, 4}); }

/// The view as a user has it on the screen.
struct Shown {
  explicit Shown(core::Channel channel, QSize size = {900, 700})
      : session(documentOf(std::move(channel))), view(session) {
    view.resize(size);
    view.show();
    settle();
  }
  void settle() {
    for (int k = 0; k < 3; ++k) QApplication::processEvents();
  }
  template <class T>
  T* find(const char* name) {
    T* found = view.findChild<T*>(name);
    EXPECT_TRUE(found) << name;
    return found;
  }
  MeasuredPlot* measured() { return find<MeasuredPlot>("outcomeMeasured"); }
  MeasuredPlot* after() { return find<MeasuredPlot>("outcomeMeasuredAfter"); }
  DeviationPlot* bars() { return find<DeviationPlot>("outcomeBars"); }
  QString verdict() { return find<QLabel>("outcomeVerdict")->text(); }

  Session session;
  OutcomeView view;
};

QXYSeries* series(const PlotFrame* plot, const QString& name) {
  for (QAbstractSeries* one : plot->chart()->series())
    if (one->name() == name) return qobject_cast<QXYSeries*>(one);
  ADD_FAILURE() << "no series " << name.toStdString();
  return nullptr;
}

/// The drawn bars: two-point lines without a name.
QList<QLineSeries*> barsOf(const PlotFrame* plot) {
  QList<QLineSeries*> bars;
  for (QAbstractSeries* one : plot->chart()->series()) {
    auto* line = qobject_cast<QLineSeries*>(one);
    if (line && line->name().isEmpty() && line->isVisible() && line->count() == 2 &&
        line->at(0).x() == line->at(1).x())
      bars.append(line);
  }
  return bars;
}

QList<QPointF> pointsOf(const PlotFrame* plot) {
  QList<QPointF> points;
  for (const QAbstractSeries* one : plot->chart()->series()) {
    const auto* xy = qobject_cast<const QXYSeries*>(one);
    if (xy) points += xy->points();
  }
  return points;
}

void click(PlotFrame* plot, QXYSeries* in, int point) {
  const QPointF at = plot->chart()->mapToScene(plot->chart()->mapToPosition(in->at(point), in));
  QTest::mouseClick(plot->viewport(), Qt::LeftButton, {}, plot->mapFromScene(at));
}

TEST(OutcomeView, DrawsChangeFromZeroAgainstSimulatedStrain) {
  Shown shown(checked());
  const QXYSeries* points = series(shown.measured(), "Measured");
  ASSERT_EQ(points->count(), 4);
  EXPECT_NEAR(points->at(1).x(), -500, 1e-6);  // derived above
  EXPECT_NEAR(points->at(1).y(), -500.4, 1e-9);
  EXPECT_NEAR(points->at(2).x(), -1000, 1e-6);
  EXPECT_EQ(shown.measured()->xAxis()->titleText(), "<span>Simulated strain, µm/m</span>");
  EXPECT_EQ(shown.measured()->yAxis()->titleText(), "<span>Measured change, µm/m</span>");
  // Derived: linear indication -2e6/1998 of the 174.65 kohm shunt; rising x, so it comes first.
  EXPECT_NEAR(series(shown.measured(), "Expected")->at(0).y(), -2e6 / 1998, 1e-6);
  EXPECT_EQ(series(shown.measured(), "Fitted line")->count(), 2);
  EXPECT_TRUE(shown.verdict().startsWith("Pass"));
}

TEST(OutcomeView, BarsAreDeviationsAndTheBandIsTheLimit) {
  Shown shown(checked());
  const auto bars = barsOf(shown.bars());
  ASSERT_EQ(bars.size(), 4);
  EXPECT_NEAR(bars[0]->at(1).y(), -1001.5 + 2e6 / 1998, 1e-6);  // x rising: the large step first
  EXPECT_EQ(shown.bars()->yAxis()->titleText(), "<span>Deviation, µm/m</span>");
  const PlotBand limits = shown.bars()->marksBehind().bands().value(0);
  ASSERT_EQ(limits.name, "Within limits");
  EXPECT_NEAR(limits.upper.at(1).y(), 0.01 * 2e6 / 1998, 1e-6);  // 1 % of expected
  EXPECT_NEAR(limits.lower.at(1).y(), -0.01 * 2e6 / 1998, 1e-6);
  EXPECT_EQ(shown.bars()->xAxis()->min(), shown.measured()->xAxis()->min());
  EXPECT_EQ(shown.bars()->xAxis()->max(), shown.measured()->xAxis()->max());
}

// With a zero between all levels ten bars stand at zero: they must not reach the next level.
TEST(OutcomeView, BarsOfOneLevelStayNearerToItThanToTheNext) {
  core::Channel channel = sample::nineStepChannel();
  channel.setup.sequence =
      core::layOut({.zeroBetweenSteps = true, .repeats = 3}, core::levelsOfShunts(channel.setup),
                   core::Duration(1), core::Duration(1));
  Shown shown(sample::withCheckReading(channel, 1.001));
  const auto bars = barsOf(shown.bars());
  ASSERT_GT(bars.size(), 30);
  for (const QLineSeries* bar : bars) {
    const double x = std::abs(bar->at(0).x());
    EXPECT_TRUE(x < 450 || x > 550) << x;  // levels at zero and about 1000, 2000 and 3000 µm/m
  }
}

TEST(OutcomeView, ResidualsAreFromTheLineAndHaveNoBand) {
  Shown shown(checked());
  shown.find<QComboBox>("outcomeBarKind")->setCurrentIndex(1);
  shown.settle();
  double sum = 0;
  for (const QLineSeries* bar : barsOf(shown.bars())) sum += bar->at(1).y();
  EXPECT_NEAR(sum, 0, 1e-9);  // residuals of a least-squares line with intercept add up to nothing
  EXPECT_EQ(shown.bars()->yAxis()->titleText(), "<span>Residual, µm/m</span>");
  for (const PlotBand& band : shown.bars()->marksBehind().bands()) EXPECT_NE(band.name, "Within limits");
}

TEST(OutcomeView, AClickOnAPointSelectsItsStepAndASelectionRingsThePoint) {
  Shown shown(checked());
  QXYSeries* points = series(shown.measured(), "Measured");
  click(shown.measured(), points, 2);
  EXPECT_EQ(shown.session.selection().step, 2U);
  QXYSeries* ring = series(shown.measured(), "Chosen step");
  ASSERT_EQ(ring->count(), 1);
  EXPECT_EQ(ring->at(0), points->at(2));
  shown.session.selectStep(1);
  EXPECT_EQ(ring->at(0), points->at(1));
}

TEST(OutcomeView, ClicksOnZeroStepsThatLieOnOneAnotherReachEach) {
  Shown shown(checkedWith(planned(), "pre-test", {3, -497, -998, 3}));
  QXYSeries* points = series(shown.measured(), "Measured");
  click(shown.measured(), points, 0);
  const auto first = shown.session.selection().step;
  click(shown.measured(), points, 0);
  EXPECT_EQ(first, 0U);
  EXPECT_EQ(shown.session.selection().step, 3U);
}

TEST(OutcomeView, AClickOnABarSelectsItsStep) {
  Shown shown(checkedWith(planned(), "pre-test", {0, -500, -980, 0}));
  const auto bars = barsOf(shown.bars());
  click(shown.bars(), bars[0], 1);
  EXPECT_EQ(shown.session.selection().step, 2U);
}

TEST(OutcomeView, ArrowKeysWalkTheSteps) {
  Shown shown(checked());
  QTest::keyClick(shown.measured(), Qt::Key_Right);
  EXPECT_EQ(shown.session.selection().step, 0U);
  QTest::keyClick(shown.measured(), Qt::Key_Right);
  EXPECT_EQ(shown.session.selection().step, 1U);
  QTest::keyClick(shown.measured(), Qt::Key_Left);
  QTest::keyClick(shown.measured(), Qt::Key_Left);
  EXPECT_EQ(shown.session.selection().step, 0U);
}

TEST(OutcomeView, AFailedStepHasAnotherShapeAndTheSentenceSaysWhich) {
  Shown shown(checkedWith(planned(), "pre-test", {0, -500, -950, 0}));
  EXPECT_EQ(series(shown.measured(), "Measured")->count(), 3);
  const auto* outside = qobject_cast<QScatterSeries*>(series(shown.measured(), "Out of limits"));
  ASSERT_EQ(outside->count(), 1);
  EXPECT_NEAR(outside->at(0).y(), -950, 1e-9);
  EXPECT_EQ(outside->markerShape(), QScatterSeries::MarkerShapeTriangle);
  EXPECT_TRUE(shown.verdict().startsWith("Fail: 1 of 4")) << shown.verdict().toStdString();
}

/// The large step lies 9 um/m from expected, within its limit of 10 (1 %), nearer to it than any guard band
/// above 1 um/m; the assumed uncertainty of a shunt check is more than that.
core::Channel undecided() {
  core::Channel channel = planned();
  channel.setup.decision.rule = core::DecisionRule::Guarded;
  return checkedWith(channel, "pre-test", {0, -500, -2e6 / 1998 + 9, 0});
}

TEST(OutcomeView, AStepThatCannotBeToldHasAMarkOfItsOwnInBothCharts) {
  Shown shown(undecided());
  const auto& steps = shown.session.evaluation()->checks[0].assessment.steps;
  ASSERT_EQ(steps[2].verdict, core::Verdict::CannotTell);
  const Colours colours = coloursFor(shown.view.palette());
  for (const PlotFrame* plot : std::initializer_list<PlotFrame*>{shown.measured(), shown.bars()}) {
    const auto* open = qobject_cast<QScatterSeries*>(series(plot, "Cannot tell"));
    const auto* outside = qobject_cast<QScatterSeries*>(series(plot, "Out of limits"));
    ASSERT_TRUE(open && outside);
    EXPECT_EQ(open->markerShape(), QScatterSeries::MarkerShapeRectangle);
    EXPECT_NE(open->markerShape(), outside->markerShape());
    EXPECT_EQ(open->borderColor(), colours.cannotTell);
    EXPECT_EQ(open->color(), colours.background);
    const QList<QPointF> marked = open->points();
    EXPECT_TRUE(std::any_of(marked.begin(), marked.end(),
                            [](const QPointF& at) { return std::abs(at.x() + 1000) < 20; }));
    EXPECT_TRUE(plot->accessibleDescription().contains("Cannot tell: step"))
        << plot->accessibleDescription().toStdString();
    const QList<LegendEntry> legend = plot->legendEntries();
    EXPECT_TRUE(std::any_of(legend.begin(), legend.end(), [](const LegendEntry& entry) {
      return entry.mark == LegendMark::HollowSquare && entry.text == "Cannot tell";
    }));
  }
  const QXYSeries* plain = series(shown.measured(), "Measured");
  for (const QPointF& at : plain->points()) EXPECT_GT(at.x(), -900) << "the undecided point is no plain one";
}

TEST(OutcomeView, WithoutSuchAStepTheLegendsDoNotSpeakOfIt) {
  Shown shown(checked());
  for (const PlotFrame* plot : std::initializer_list<PlotFrame*>{shown.measured(), shown.bars()}) {
    EXPECT_EQ(series(plot, "Cannot tell")->count(), 0);
    for (const LegendEntry& entry : plot->legendEntries()) EXPECT_NE(entry.text, "Cannot tell");
    EXPECT_FALSE(plot->accessibleDescription().contains("Cannot tell"));
  }
}

TEST(OutcomeView, TwoChecksStandSideBySideInTheSameAxesWithTheirDifferenceBelow) {
  core::Channel channel = checkedWith(checked(), "post-test", {5, 5 - 500.4, 5 - 1031.5, 6});
  for (core::Check& check : channel.checks)  // or nobody could tell whether anything changed
    for (auto& reading : check.readings) reading->uncertainty = core::Reading(0.5);
  Shown shown(channel);
  shown.session.compareWith(0);
  shown.settle();
  ASSERT_TRUE(shown.after()->isVisible());
  EXPECT_EQ(shown.measured()->title(), "pre-test: pass");
  EXPECT_EQ(shown.after()->title(), "post-test: fail");
  for (const auto axis : {&PlotFrame::xAxis, &PlotFrame::yAxis}) {
    EXPECT_EQ((shown.measured()->*axis)()->min(), (shown.after()->*axis)()->min());
    EXPECT_EQ((shown.measured()->*axis)()->max(), (shown.after()->*axis)()->max());
  }
  const auto* before = qobject_cast<QScatterSeries*>(series(shown.measured(), "Measured"));
  const auto* after = qobject_cast<QScatterSeries*>(series(shown.after(), "Measured"));
  EXPECT_NE(before->markerShape(), after->markerShape());
  EXPECT_NE(before->color(), after->color());
  const auto bars = barsOf(shown.bars());
  ASSERT_EQ(bars.size(), 4);
  EXPECT_NEAR(bars[0]->at(1).y(), -30, 1e-9);
  EXPECT_EQ(shown.bars()->yAxis()->titleText(), "<span>Difference, µm/m</span>");
  EXPECT_TRUE(shown.verdict().startsWith("Changed: ")) << shown.verdict().toStdString();
  EXPECT_TRUE(shown.verdict().contains("tep 3")) << shown.verdict().toStdString();
  const QStringList each = shown.find<QLabel>("outcomeEach")->text().split('\n');
  ASSERT_EQ(each.size(), 2);
  EXPECT_TRUE(each[0].startsWith("pre-test: Pass: ")) << each[0].toStdString();
  EXPECT_TRUE(each[1].startsWith("post-test: Fail: ")) << each[1].toStdString();
  EXPECT_EQ(shown.find<QLabel>("outcomeVerdict")->palette().color(QPalette::WindowText),
            coloursFor(shown.view.palette()).fail);

  shown.session.compareWith(std::nullopt);
  shown.settle();
  EXPECT_FALSE(shown.after()->isVisible());
  EXPECT_FALSE(shown.find<QLabel>("outcomeEach")->isVisible());
  EXPECT_EQ(shown.bars()->yAxis()->titleText(), "<span>Deviation, µm/m</span>");
}

TEST(OutcomeView, ALongVerdictGivesItsRoomToTheCharts) {
  core::Channel channel = core::withCheckClosed(checked(), 0);
  channel.setup.instrument.excitation = core::Voltage(2.5);
  channel = checkedWith(channel, "post-test", {5, 5 - 500.4, 5 - 1031.5, 6});
  for (core::Check& check : channel.checks)
    for (auto& reading : check.readings) reading->uncertainty = core::Reading(0.5);
  Shown shown(channel, {460, 435});  // not low by itself
  shown.session.compareWith(0);
  shown.settle();
  const auto* verdict = shown.find<QLabel>("outcomeVerdict");
  const auto* notice = shown.find<QLabel>("outcomeNotice");
  const auto lines = [](const QLabel* label) {
    return label->heightForWidth(label->width()) / QFontMetrics(label->font()).lineSpacing();
  };
  EXPECT_TRUE(verdict->text().endsWith("…")) << verdict->text().toStdString();
  EXPECT_LE(lines(verdict), 2);
  EXPECT_LE(lines(notice), 2);
  for (const QString& whole : {verdict->accessibleName(), notice->accessibleName()})
    EXPECT_FALSE(whole.isEmpty() || whole.contains("…")) << whole.toStdString();
  EXPECT_TRUE(verdict->toolTip().contains(verdict->accessibleName().toHtmlEscaped()));
  EXPECT_TRUE(notice->toolTip().contains(notice->accessibleName()));
  EXPECT_FALSE(shown.find<QLabel>("outcomeEach")->isVisible());
  EXPECT_GE(shown.measured()->height(), 90);
  EXPECT_GE(shown.bars()->height(), 90);

  // Where there is room for both, all of it is said.
  shown.view.resize(460, 800);
  shown.settle();
  EXPECT_FALSE(verdict->text().contains("…"));
  EXPECT_TRUE(shown.find<QLabel>("outcomeEach")->isVisible());
}

TEST(OutcomeView, EditsAndComparisonsNeverRaiseTheWidthItAsksFor) {
  Shown shown(checkedWith(checked(), "post-test", {5, 5 - 500.4, 5 - 1000.5, 6}), {620, 500});
  shown.session.compareWith(std::nullopt);
  std::vector<int> alone, compared;
  for (int edit = 0; edit < 50; ++edit) {
    const core::Measured typed{core::Reading(-498 - 37.5 * edit), {}, {}, {}};
    shown.session.editChannel("Change reading",
                              core::withReading(*shown.session.channel(), 1, 1 + edit % 2, typed));
    shown.settle();
    // The later plot is not shown, and so not laid out, before the 25th edit.
    if (edit < 24 || edit % 5 != 4) continue;
    shown.session.compareWith(0);
    shown.settle();
    compared.push_back(shown.view.minimumSizeHint().width());
    EXPECT_GT(shown.after()->chart()->plotArea().width(), 100);  // of about 300 px that it has
    EXPECT_LT(shown.after()->width(), 400);
    shown.session.compareWith(std::nullopt);
    shown.settle();
    alone.push_back(shown.view.minimumSizeHint().width());
  }
  for (const int width : alone) EXPECT_EQ(width, alone.front());
  for (const int width : compared) EXPECT_EQ(width, compared.front());
  EXPECT_LE(std::max(alone.front(), compared.front()), 350);  // what a window 900 px wide can give it
  EXPECT_EQ(shown.view.width(), 620);
}

TEST(OutcomeView, AskForLittleWidthWhateverTheirLayoutAndNames) {
  const std::string longName(300, 'W');
  for (const QSize size : {QSize(500, 500), QSize(1700, 900)}) {
    Shown shown(checkedWith(checked(), QString::fromStdString(longName), {5, -495, -1031, 6}), size);
    shown.session.compareWith(0);
    shown.settle();
    EXPECT_LE(shown.view.minimumSizeHint().width(), 480) << size.width();
  }
}

TEST(OutcomeView, DifferentSetUpsAreNamedBeforeTheVerdict) {
  core::Channel channel = core::withCheckClosed(checked(), 0);
  channel.setup.instrument.excitation = core::Voltage(2.5);
  Shown shown(checkedWith(channel, "post-test", {0, -500, -1000, 0}));
  shown.session.compareWith(0);
  auto* notice = shown.find<QLabel>("outcomeNotice");
  EXPECT_TRUE(notice->isVisible());
  EXPECT_EQ(notice->text(), "The set-ups differ: excitation 5 V before, 2.5 V after.");
}

TEST(OutcomeView, HostileNamesAreShownAsTyped) {
  core::Channel channel = planned();
  const QString hostile = "<img src=/dev/zero>&amp;%1";
  channel.setup.instrument.unit = core::ReadingUnit::Scaled;
  channel.setup.instrument.scaledUnit = hostile.toStdString();
  channel.name = hostile.toStdString();
  Shown shown(checkedWith(channel, hostile, {0, -0.25, -0.5, 0}));
  EXPECT_EQ(shown.measured()->yAxis()->titleText(),
            "<span>Measured change, &lt;img src=/dev/zero&gt;&amp;amp;%1</span>");
  for (const QLabel* label : shown.view.findChildren<QLabel*>())
    EXPECT_EQ(label->textFormat(), Qt::PlainText);
  EXPECT_FALSE(shown.view.grab().isNull());
}

TEST(OutcomeView, TheTableTwinHasTheSameStepsAndSelection) {
  Shown shown(checkedWith(planned(), "pre-test", {0, -500, -950, 0}));
  shown.view.showAsTable(true);
  shown.settle();
  auto* table = shown.find<QTableView>("outcomeTable");
  ASSERT_TRUE(table->isVisible());
  const QAbstractItemModel& model = *table->model();
  ASSERT_EQ(model.rowCount(), 4);
  EXPECT_EQ(model.index(2, 8).data().toString(), "fail");
  EXPECT_EQ(model.headerData(4, Qt::Horizontal).toString(), "Reading,\nµm/m");
  table->selectRow(2);
  EXPECT_EQ(shown.session.selection().step, 2U);
  shown.session.selectStep(1);
  ASSERT_EQ(table->selectionModel()->selectedRows().size(), 1);
  EXPECT_EQ(table->selectionModel()->selectedRows()[0].row(), 1);
}

TEST(OutcomeView, SaysWhatIsMissing) {
  Session session;
  OutcomeView view(session);
  auto* verdict = view.findChild<QLabel*>("outcomeVerdict");
  EXPECT_TRUE(verdict->text().startsWith("No channel yet"));
  core::Channel channel;
  session.reset(documentOf(channel));
  EXPECT_TRUE(verdict->text().contains("no steps"));
  session.reset(documentOf(planned()));
  EXPECT_TRUE(verdict->text().startsWith("No check yet"));
  session.reset(documentOf(checkedWith(planned(), "pre-test", {})));
  EXPECT_TRUE(verdict->text().contains("no readings yet"));
  session.selectCheck(std::nullopt);
  EXPECT_EQ(verdict->text(), "Plan only: choose a check to see its outcome.");
  channel = planned();
  channel.setup.bridge.arms[1] = core::Resistance(-1);
  session.reset(documentOf(channel));
  EXPECT_TRUE(verdict->text().startsWith("Cannot be predicted. arm 2")) << verdict->text().toStdString();
}

TEST(OutcomeView, NoReadingWhateverMakesAChartThatCannotBeDrawn) {
  const double nan = std::nan("");
  const std::vector<std::vector<double>> cases = {
      {0}, {5, 5, 5, 5}, {nan, nan, nan, nan}, {0, nan, -1000, 0}, {0, HUGE_VAL, -1e308, 1e308}, {0, 1e-300}};
  for (const auto& readings : cases) {
    Shown shown(checkedWith(planned(), "pre-test", readings));
    for (const PlotFrame* plot : std::initializer_list<PlotFrame*>{shown.measured(), shown.bars()}) {
      EXPECT_LT(plot->yAxis()->min(), plot->yAxis()->max());
      EXPECT_TRUE(std::isfinite(plot->yAxis()->max() - plot->yAxis()->min()));
      EXPECT_LE(plot->yAxis()->tickCount(), 12);
      for (const QPointF& at : pointsOf(plot)) EXPECT_TRUE(std::isfinite(at.x()) && std::isfinite(at.y()));
    }
    EXPECT_FALSE(shown.verdict().startsWith("Pass")) << shown.verdict().toStdString();
    EXPECT_FALSE(shown.view.grab().isNull());
  }
}

TEST(OutcomeView, AnEditKeepsTheSeriesAlive) {
  Shown shown(checked());
  const QList<QAbstractSeries*> before = shown.bars()->chart()->series();
  QXYSeries* points = series(shown.measured(), "Measured");
  core::Channel next =
      core::withReading(*shown.session.channel(), 0, 1, core::Measured{core::Reading(-499), {}, {}, {}});
  shown.session.editChannel("Change reading", next);
  EXPECT_EQ(shown.bars()->chart()->series(), before);
  EXPECT_NEAR(points->at(1).y(), -502, 1e-9);
}

TEST(OutcomeView, ColoursFollowThePalette) {
  Shown shown(checked());
  shown.view.setPalette(darkPalette());
  shown.settle();
  EXPECT_EQ(shown.measured()->chart()->backgroundBrush().color(), darkPalette().color(QPalette::Base));
  EXPECT_EQ(shown.measured()->xAxis()->labelsColor(), darkPalette().color(QPalette::Text));
}

TEST(OutcomeView, AssistiveToolsReadVerdictAndFigures) {
  Shown shown(checked());
  EXPECT_TRUE(shown.view.accessibleDescription().startsWith("Pass"));
  EXPECT_TRUE(shown.view.accessibleDescription().contains("Slope: "));
  EXPECT_FALSE(shown.measured()->accessibleName().isEmpty());
  EXPECT_FALSE(shown.bars()->accessibleName().isEmpty());
}

TEST(OutcomeView, ALineNeverBreaksWithinAUnit) {
  const QString joiner(QChar(0x2060));
  EXPECT_EQ(withWholeUnits("-0.2 µm/m, and/or 1 mV/V"),
            QString("-0.2 µm%1/%1m, and/or 1 mV%1/%1V").arg(joiner));
  Shown shown(checked());
  for (const QLabel* label : shown.find<QWidget>("outcomeFigures")->findChildren<QLabel*>()) {
    QTextLayout layout(label->text(), label->font());
    QTextOption wrap(Qt::AlignLeft);
    wrap.setWrapMode(QTextOption::WordWrap);
    layout.setTextOption(wrap);
    layout.beginLayout();
    // So narrow that a line ends wherever it may.
    for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
      line.setLineWidth(1);
      const int end = line.textStart() + line.textLength();
      const QString before = label->text().left(end).remove(joiner);
      EXPECT_FALSE(before.endsWith("µm/") || before.endsWith("mV/")) << before.toStdString();
    }
    layout.endLayout();
  }
  EXPECT_FALSE(shown.view.accessibleDescription().contains(joiner));
}

TEST(AxisTicks, CoverTheValuesAtRoundSteps) {
  for (const auto& [low, high] :
       {std::pair{0.0, 1.0}, {-1001.0, 998.0}, {5.0, 5.0}, {0.0, 0.0}, {1e-9, 2e-9}}) {
    Extent extent;
    extent.add(low), extent.add(high);
    const AxisTicks ticks = niceTicks(extent, 6);
    EXPECT_LT(ticks.low, ticks.high);
    EXPECT_LE(ticks.low, low);
    EXPECT_GE(ticks.high, high);
    EXPECT_LE((ticks.high - ticks.low) / ticks.step, 6 + 1e-9);
    const double mantissa = ticks.step / std::pow(10, std::floor(std::log10(ticks.step) + 1e-9));
    EXPECT_TRUE(std::abs(mantissa - 1) < 1e-6 || std::abs(mantissa - 2) < 1e-6 ||
                std::abs(mantissa - 5) < 1e-6);
  }
}

}  // namespace
}  // namespace ui
