// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/outcome/outcome_charts.h"

#include <QComboBox>
#include <QGraphicsTextItem>
#include <QLabel>
#include <QLocale>
#include <QRegularExpression>
#include <QtCharts/QLineSeries>
#include <QtCharts/QValueAxis>
#include <cmath>

#include "tests/support/printing.h"
#include "tests/ui/outcome_shown.h"
#include "ui/outcome/line_band.h"
#include "ui/outcome/plot_legend.h"

namespace ui {
namespace {

/// Heights of the drawn bars, x rising: two-point upright lines without a name.
QList<double> heightsOf(const PlotFrame* plot) {
  QList<double> heights;
  for (QAbstractSeries* one : plot->chart()->series()) {
    const auto* line = qobject_cast<QLineSeries*>(one);
    if (line && line->name().isEmpty() && line->isVisible() && line->count() == 2 &&
        line->at(0).x() == line->at(1).x())
      heights.append(line->at(1).y());
  }
  return heights;
}

PlotBand bandOf(const PlotFrame* plot, const QString& name) {
  for (const PlotBand& band : plot->marksBehind().bands())
    if (band.name == name) return band;
  return {};
}

bool legendSays(const PlotFrame* plot, const QString& text) {
  for (const LegendEntry& entry : plot->legendEntries())
    if (entry.text.contains(text)) return true;
  return false;
}

void chooseItem(ShownView& shown, const char* box, int index) {
  auto* combo = shown.find<QComboBox>(box);
  combo->setFocus();
  QTest::keyClick(combo, Qt::Key_Home);
  for (int k = 0; k < index; ++k) QTest::keyClick(combo, Qt::Key_Down);
  shown.settle();
  EXPECT_EQ(combo->currentIndex(), index);
}

const double expectedLarge = -2e6 / 1998;  // linear indication of the 174.65 kohm shunt, derived
const double deviationLarge = -1001.5 - expectedLarge;

TEST(OutcomeCharts, AxesHaveTheDecimalMarkOfTheLanguage) {
  const QLocale before;
  QLocale::setDefault(QLocale(QLocale::German));
  {
    core::Channel channel = twoLevels();
    channel.setup.instrument.unit = core::ReadingUnit::MillivoltPerVolt;  // steps of 0.25 and 0.5 mV/V
    ShownView shown(sample::withCheckReading(channel, 1));
    QStringList numbers;
    for (const QGraphicsItem* item : shown.measured()->scene()->items())
      if (const auto* text = dynamic_cast<const QGraphicsTextItem*>(item)) numbers << text->toPlainText();
    EXPECT_GT(numbers.filter(QRegularExpression("^-?\\d+,\\d+$")).size(), 2) << numbers.join(" ");
    EXPECT_EQ(numbers.filter(QRegularExpression("\\d\\.\\d")).size(), 0) << numbers.join(" ");
  }
  QLocale::setDefault(before);
}

TEST(OutcomeCharts, TheConfidenceBandIsThatOfTheTextbookAboutTheLine) {
  ShownView shown(oneCheck());
  const core::Line& line = *shown.session.evaluation()->checks[0].assessment.line;
  ASSERT_EQ(line.fit, core::LineFit::Ordinary);
  // Textbook formula of simple linear regression, t(0.975, 2 degrees of freedom) = 4.303 from a printed
  // table.
  const double x[] = {0, -500, -1000, 0}, y[] = {0, -500.4, -1001.5, 1};
  double mx = 0, my = 0, sxx = 0, sxy = 0, rss = 0;
  for (int k = 0; k < 4; ++k) mx += x[k] / 4, my += y[k] / 4;
  for (int k = 0; k < 4; ++k) sxx += (x[k] - mx) * (x[k] - mx), sxy += (x[k] - mx) * (y[k] - my);
  for (int k = 0; k < 4; ++k) rss += std::pow(y[k] - my - sxy / sxx * (x[k] - mx), 2);
  const PlotBand band = bandOf(shown.measured(), "Confidence band");
  ASSERT_GT(band.upper.size(), 10);
  for (qsizetype k = 0; k < band.upper.size(); ++k) {
    const double at = band.upper[k].x();
    const double half = 4.303 * std::sqrt(rss / 2) * std::sqrt(0.25 + (at - mx) * (at - mx) / sxx);
    // The table gives four digits of t.
    EXPECT_NEAR((band.upper[k].y() - band.lower[k].y()) / 2, half, 3e-4 * half) << at;
  }
  EXPECT_TRUE(legendSays(shown.measured(), "95 % confidence ±"));
}

TEST(OutcomeCharts, TheAxisOfTheDeviationsTakesTheBandOfTheLineIn) {
  // Deviations of 0.4 and 0.5 on a line through four points, two of them zeros: its 95 % band with t = 4.303
  // is wider than they are.
  ShownView shown(oneCheck());
  const auto axes = shown.bars()->chart()->axes(Qt::Vertical);
  ASSERT_FALSE(axes.isEmpty());
  const auto* axis = qobject_cast<QValueAxis*>(axes.first());
  const PlotBand band = bandOf(shown.bars(), "Confidence band");
  ASSERT_FALSE(band.upper.isEmpty());
  for (const QPointF& at : band.upper) EXPECT_LE(at.y(), axis->max()) << at.x();
  for (const QPointF& at : band.lower) EXPECT_GE(at.y(), axis->min()) << at.x();
}

TEST(OutcomeCharts, WhatTheAxisCutsOffWearsAMarkAndTheLegendSaysSo) {
  ShownView shown(oneCheck());
  const auto limitsOf = [&] {
    QList<PlotBand> limits;
    for (const PlotBand& band : shown.bars()->marksBehind().bands())
      if (band.name == "Within limits") limits.append(band);
    return limits;
  };
  const QList<PlotBand> limits = limitsOf();
  ASSERT_FALSE(limits.isEmpty());
  const auto* axis = qobject_cast<QValueAxis*>(shown.bars()->chart()->axes(Qt::Vertical).first());
  const auto isCut = [&](const PlotBand& band) { return band.upper.first().y() > axis->max(); };
  const auto cut = std::count_if(limits.begin(), limits.end(), isCut);
  ASSERT_GT(cut, 0) << "the limits are wider than the deviations";
  const auto marks = shown.bars()->marksBehind().cutOffs();
  const auto up = std::count_if(marks.begin(), marks.end(), [](const auto& mark) { return mark.up; });
  EXPECT_EQ(up, cut);
  EXPECT_TRUE(legendSays(shown.bars(), "Goes on beyond the axis"));
}

TEST(OutcomeCharts, LineBandsAndErrorBarsAreSwitchedInBothCharts) {
  ShownView shown(oneCheck());
  for (PlotFrame* plot : std::initializer_list<PlotFrame*>{shown.measured(), shown.bars()}) {
    EXPECT_FALSE(bandOf(plot, "Confidence band").upper.isEmpty());
    EXPECT_TRUE(bandOf(plot, "Prediction band").upper.isEmpty());
    EXPECT_FALSE(plot->marksInFront().whiskers().isEmpty());
  }
  for (const char* entry : {"outcomeConfidence", "outcomePrediction", "outcomeErrorBars", "outcomeLine"})
    shown.choose("outcomeShow", entry);
  for (PlotFrame* plot : std::initializer_list<PlotFrame*>{shown.measured(), shown.bars()}) {
    EXPECT_TRUE(bandOf(plot, "Confidence band").upper.isEmpty());
    EXPECT_FALSE(bandOf(plot, "Prediction band").upper.isEmpty());
    EXPECT_TRUE(plot->marksInFront().whiskers().isEmpty());
    EXPECT_FALSE(legendSays(plot, "Fitted line"));
    EXPECT_TRUE(legendSays(plot, "95 % prediction ±"));
  }
}

TEST(OutcomeCharts, ErrorBarsAreTheExpandedUncertaintyOfTheDeviation) {
  ShownView shown(oneCheck());
  const auto& steps = shown.session.evaluation()->checks[0].assessment.steps;
  const QList<PlotWhisker>& whiskers = shown.bars()->marksInFront().whiskers();
  ASSERT_FALSE(whiskers.isEmpty());
  EXPECT_NEAR(whiskers[0].at.y(), deviationLarge, 1e-6);  // x rising: the large step first
  EXPECT_EQ(whiskers[0].half, *steps[2].decided->expanded);
}

TEST(OutcomeCharts, BarsCanBeCountedInPercentOfReadingOfSpanAndInUncertainties) {
  ShownView shown(oneCheck());
  chooseItem(shown, "outcomeBarUnit", 1);
  QList<double> bars = heightsOf(shown.bars());
  ASSERT_EQ(bars.size(), 2);  // a zero step has no percent of nothing
  EXPECT_NEAR(bars[0], 100 * deviationLarge / std::abs(expectedLarge), 1e-9);
  EXPECT_NEAR(bandOf(shown.bars(), "Within limits").upper.at(1).y(), 1, 1e-9);  // the limit is 1 % of reading
  EXPECT_EQ(shown.bars()->yAxis()->titleText(), "<span>Deviation, % of expected reading</span>");

  chooseItem(shown, "outcomeBarUnit", 2);
  bars = heightsOf(shown.bars());
  ASSERT_EQ(bars.size(), 4);
  // The span goes from the large step to zero.
  EXPECT_NEAR(bars[0], 100 * deviationLarge / std::abs(expectedLarge), 1e-9);
  EXPECT_FALSE(bandOf(shown.bars(), "Confidence band").upper.isEmpty());

  chooseItem(shown, "outcomeBarUnit", 3);
  bars = heightsOf(shown.bars());
  const auto& large = shown.session.evaluation()->checks[0].assessment.steps[2];
  ASSERT_FALSE(bars.isEmpty());
  EXPECT_NEAR(bars[0] * large.standard->base(), deviationLarge, 1e-6);
  EXPECT_TRUE(bandOf(shown.bars(), "Within limits").upper.isEmpty());
  EXPECT_EQ(shown.bars()->yAxis()->titleText(), "<span>Deviation, standard uncertainties</span>");
}

/// Zero, up to the large step and down again.
core::Channel upAndDown() {
  core::Channel channel = twoLevels();
  std::vector<core::Step> steps = channel.setup.sequence;
  steps = {steps[0], steps[1], steps[2], steps[1], steps[0]};
  return checkedWith(core::withSequence(channel, steps), "pre-test", {0, -500, -1001, -502, 0});
}

// Between the levels nothing is judged, so that nothing is drawn there.
TEST(OutcomeCharts, EachBarHasItsOwnLimitsAndNothingLiesBetweenThem) {
  ShownView shown(upAndDown());
  QList<PlotBand> limits;
  for (const PlotBand& band : shown.bars()->marksBehind().bands())
    if (band.name == "Within limits") limits.append(band);
  ASSERT_EQ(limits.size(), 5);
  for (const PlotBand& band : limits) {
    EXPECT_EQ(band.upper.first().y(), band.upper.last().y());
    EXPECT_EQ(band.lower.first().y(), -band.upper.first().y());
  }
  for (qsizetype k = 1; k < limits.size(); ++k)
    EXPECT_LE(limits[k - 1].upper.last().x(), limits[k].upper.first().x() + 1e-6);
  // x rising: the large step alone, then both of the small level, with nothing drawn up to those.
  EXPECT_LT(limits[0].upper.last().x(), limits[1].upper.first().x() - 50);
  EXPECT_NE(limits[0].upper.first().y(), limits[1].upper.first().y());
}

TEST(OutcomeCharts, TheBandsGoToBothEndsOfTheLine) {
  const std::vector<double> x{0, 1, 2, 3}, y{0, 1.1, 1.9, 3};
  const core::Result<core::Line> line = core::fitLine(x, y);
  ASSERT_TRUE(line);
  for (const double end : {25.7, 0.1, 1552.19, 3.3e-4, 1023.35, 7.0 / 3}) {
    const LineBand band = lineBand(LineBand::Kind::Confidence, *line, -end / 3, end, 0, {"kN", 1});
    const PlotBand drawn = bandAbout(band, {{-end / 3, 0}, {end, 1}}, coloursFor(lightPalette()));
    EXPECT_EQ(drawn.upper.first().x(), -end / 3);
    EXPECT_EQ(drawn.upper.last().x(), end);
  }
}

TEST(OutcomeCharts, OfResidualsTheResidualIsReadOut) {
  ShownView shown(oneCheck());
  chooseItem(shown, "outcomeBarKind", 1);
  shown.session.selectStep(2);
  shown.settle();
  const QString text = shown.find<QLabel>("outcomeReadout")->accessibleDescription();
  EXPECT_TRUE(text.contains("residual ")) << text.toStdString();
  EXPECT_FALSE(text.contains("deviation ")) << text.toStdString();
}

TEST(OutcomeCharts, StandardisedResidualsAreThoseOfTheLine) {
  ShownView shown(oneCheck());
  chooseItem(shown, "outcomeBarKind", 1);
  chooseItem(shown, "outcomeBarUnit", 3);
  const QList<double> bars = heightsOf(shown.bars());
  const core::Line& line = *shown.session.evaluation()->checks[0].assessment.line;
  ASSERT_EQ(bars.size(), 4);
  ASSERT_EQ(line.standardised.size(), 4U);
  EXPECT_EQ(bars[0], line.standardised[2]);
  EXPECT_EQ(bars[1], line.standardised[1]);
  EXPECT_EQ(shown.bars()->yAxis()->titleText(), "<span>Residual over its standard deviation</span>");
  EXPECT_TRUE(shown.bars()->titleTip().contains("scatter of the residuals"));
}

TEST(OutcomeCharts, TheAxisFollowsTheBarsUnlessTheLimitsAreWantedWhichIsRemembered) {
  const double limit = 0.01 * std::abs(expectedLarge);
  {
    ShownView shown(checkedWith(twoLevels(), "pre-test", {0, -500.3, -1001.2, 0}));
    shown.choose("outcomeShow", "outcomeErrorBars");
    EXPECT_LT(shown.bars()->yAxis()->max(), limit / 2);
    EXPECT_TRUE(legendSays(shown.bars(), "beyond the axis"));
    shown.choose("outcomeShow", "outcomeFitLimits");
    EXPECT_GE(shown.bars()->yAxis()->max(), limit);
    EXPECT_FALSE(legendSays(shown.bars(), "beyond the axis"));
  }
  Session session(sample::documentOf({oneCheck()}));
  const OutcomeView later(session);
  EXPECT_TRUE(later.findChild<QAction*>("outcomeFitLimits")->isChecked());
  EXPECT_FALSE(later.findChild<QAction*>("outcomeErrorBars")->isChecked());
  stateFile().clear();
}

TEST(OutcomeCharts, RisingAndFallingReadingsAreTwoPathsWhereALevelIsReachedBothWays) {
  ShownView shown(upAndDown());
  for (PlotFrame* plot : std::initializer_list<PlotFrame*>{shown.measured(), shown.bars()}) {
    const QList<PlotStroke>& strokes = plot->marksInFront().strokes();
    ASSERT_EQ(strokes.size(), 2);
    EXPECT_FALSE(strokes[0].falling);
    EXPECT_TRUE(strokes[1].falling);
    EXPECT_EQ(strokes[0].points.size(), 3);
    EXPECT_EQ(strokes[1].points.size(), 3);
    EXPECT_TRUE(legendSays(plot, "Rising") && legendSays(plot, "Falling"));
  }
  EXPECT_NEAR(shown.measured()->marksInFront().strokes()[1].points[1].y(), -502, 1e-9);
  shown.choose("outcomeShow", "outcomeBranches");
  EXPECT_TRUE(shown.bars()->marksInFront().strokes().isEmpty());

  ShownView other(oneCheck());  // from zero up and back to zero: nothing to be seen of hysteresis
  EXPECT_TRUE(other.measured()->marksInFront().strokes().isEmpty());
}

TEST(OutcomeCharts, KeysWalkTheReadOutAndTheCrossThroughThePoints) {
  ShownView shown(oneCheck());
  auto* readout = shown.find<QLabel>("outcomeReadout");
  EXPECT_TRUE(readout->text().startsWith("Point at a mark"));
  shown.view.activateWindow();
  shown.measured()->setFocus();
  QTest::keyClick(shown.measured(), Qt::Key_Right);
  QTest::keyClick(shown.measured(), Qt::Key_Right);
  shown.settle();
  const QString text = readout->accessibleDescription();
  EXPECT_TRUE(text.startsWith("Step 2, small: simulated -500")) << text.toStdString();
  EXPECT_TRUE(text.contains("measured -500.4")) << text.toStdString();
  EXPECT_TRUE(text.contains("deviation ") && text.contains(", U ")) << text.toStdString();
  EXPECT_TRUE(text.endsWith("µm/m: pass")) << text.toStdString();
  EXPECT_TRUE(shown.measured()->accessibleDescription().startsWith("Step 2, small"));
  ASSERT_TRUE(shown.measured()->marksInFront().cross());
  EXPECT_NEAR(shown.measured()->marksInFront().cross()->y(), -500.4, 1e-9);
}

TEST(OutcomeCharts, ThePointerReadsAMarkWithoutChoosingItsStep) {
  ShownView shown(oneCheck());
  MeasuredPlot* plot = shown.measured();
  const QPointF scene = plot->chart()->mapToScene(plot->chart()->mapToPosition({-1000, -1001.5}));
  QTest::mouseMove(plot->viewport(), plot->mapFromScene(scene));
  shown.settle();
  EXPECT_TRUE(shown.find<QLabel>("outcomeReadout")->accessibleDescription().startsWith("Step 3, large"));
  ASSERT_TRUE(plot->marksInFront().cross());
  EXPECT_NEAR(plot->marksInFront().cross()->x(), -1000, 1e-6);
  EXPECT_FALSE(shown.session.selection().step);
}

TEST(OutcomeCharts, TheCrossFollowsTheKeysAwayFromThePointer) {
  ShownView shown(oneCheck());
  MeasuredPlot* plot = shown.measured();
  shown.view.activateWindow();
  plot->setFocus();
  const QPointF scene = plot->chart()->mapToScene(plot->chart()->mapToPosition({0, 0}));
  QTest::mouseMove(plot->viewport(), plot->mapFromScene(scene));
  QTest::mouseClick(plot->viewport(), Qt::LeftButton, {}, plot->mapFromScene(scene));
  QTest::keyClick(plot, Qt::Key_Right);
  shown.settle();
  ASSERT_EQ(shown.session.selection().step, 1U);
  ASSERT_TRUE(plot->marksInFront().cross());
  EXPECT_NEAR(plot->marksInFront().cross()->y(), -500.4, 1e-9);
}

TEST(OutcomeCharts, TwoChecksAreReadSideBySideAndTheirDifferenceHasNoStandardUncertainty) {
  ShownView shown(checkedWith(oneCheck(), "post-test", {5, 5 - 500.4, 5 - 1031.5, 6}));
  shown.session.compareWith(0);
  shown.session.selectStep(2);
  shown.settle();
  const QStringList lines = shown.find<QLabel>("outcomeReadout")->accessibleDescription().split('\n');
  ASSERT_EQ(lines.size(), 2);
  EXPECT_TRUE(lines[0].startsWith("pre-test, Step 3") && lines[0].endsWith("pass")) << lines[0].toStdString();
  EXPECT_TRUE(lines[1].startsWith("post-test, Step 3") && lines[1].endsWith("fail"))
      << lines[1].toStdString();
  EXPECT_EQ(shown.find<QComboBox>("outcomeBarUnit")->count(), 3);
  chooseItem(shown, "outcomeBarUnit", 2);
  EXPECT_NEAR(heightsOf(shown.bars()).value(0), -100 * 30 / std::abs(expectedLarge), 1e-9);
  chooseItem(shown, "outcomeBarKind", 0);
  EXPECT_EQ(shown.find<QComboBox>("outcomeBarUnit")->count(), 4);
  EXPECT_EQ(heightsOf(shown.bars()).size(), 8);
}

TEST(OutcomeCharts, TheChartsKeepRoomInALowView) {
  for (const bool pair : {false, true}) {
    ShownView shown(checkedWith(oneCheck(), "post-test", {5, 5 - 500.4, 5 - 1031.5, 6}), {1640, 1000});
    shown.view.resize(490, 380);
    shown.settle();
    if (pair) shown.session.compareWith(0);
    shown.settle();
    EXPECT_GE(shown.measured()->height(), 84);
    EXPECT_GE(shown.bars()->height(), 84);
    EXPECT_LE(shown.view.minimumSizeHint().height(), 380);
    EXPECT_EQ(shown.view.height(), 380);
  }
}

TEST(OutcomeCharts, PlotsSideBySideHaveTheirAxesAtTheSameHeight) {
  // The later check fails, so that its legend has an entry, and maybe a row, more.
  ShownView shown(checkedWith(oneCheck(), "post-test", {5, 5 - 500.4, 5 - 1031.5, 6}), {1200, 900});
  shown.session.compareWith(0);
  shown.settle();
  const auto* after = shown.find<MeasuredPlot>("outcomeMeasuredAfter");
  // Plot areas have whole pixels.
  EXPECT_NEAR(shown.measured()->chart()->plotArea().top(), after->chart()->plotArea().top(), 1);
  EXPECT_NEAR(shown.measured()->chart()->plotArea().bottom(), after->chart()->plotArea().bottom(), 1);
}

TEST(PlotMarks, ALineIsCutAtTheAxes) {
  // Derived by hand: from (0, -1) to (4, 3) the line crosses 0 at x = 1 and 2 at x = 3.
  const auto cut = cutToHeight({0, -1, 4, 3}, 0, 2);
  ASSERT_TRUE(cut);
  EXPECT_EQ(cut->p1(), QPointF(1, 0));
  EXPECT_EQ(cut->p2(), QPointF(3, 2));
  EXPECT_EQ(cutToHeight({0, 1, 4, 1}, 0, 2)->p2(), QPointF(4, 1));
  EXPECT_FALSE(cutToHeight({0, 5, 4, 5}, 0, 2));
  EXPECT_FALSE(cutToHeight({0, 5, 4, 3}, 0, 2));
}

}  // namespace
}  // namespace ui
