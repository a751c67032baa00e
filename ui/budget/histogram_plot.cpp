// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/budget/histogram_plot.h"

#include <QGraphicsSimpleTextItem>
#include <QPen>
#include <QtCharts/QAreaSeries>
#include <QtCharts/QLineSeries>
#include <QtCharts/QValueAxis>
#include <algorithm>
#include <cmath>
#include <numbers>

#include "ui/budget/budget_words.h"
#include "ui/outcome/plot_legend.h"
#include "ui/quantity_edit.h"

namespace ui {
namespace {

constexpr double reach = 4;  ///< of the curve, in standard uncertainties
constexpr int curvePoints = 121;
constexpr int usualBars = 80;
constexpr double nameGap_px = 5;
// Brackets stand above the curve, one above the other, as shares of its peak.
constexpr double symmetricLevel = 1.12, shortestLevel = 1.27, linearLevel = 1.42, topLevel = 1.52;

double barWidth(const HistogramContents& contents) {
  if (!contents.trials) return 2 * reach * contents.linear.standard / usualBars;
  const core::Histogram& bars = contents.trials->histogram;
  return (bars.high - bars.low) / static_cast<double>(bars.counts.size());
}

/// Share of the trials in a bar of `width` about x that a normal distribution would put there, in percent.
double normalShare(const core::StepUncertainty& linear, double width, double x) {
  const double z = (x - linear.value) / linear.standard;
  return 100 * width / linear.standard * std::exp(-0.5 * z * z) / std::sqrt(2 * std::numbers::pi);
}

QList<QPointF> curveOf(const HistogramContents& contents, double width) {
  QList<QPointF> points;
  for (int k = 0; k < curvePoints; ++k) {
    const double z = reach * (2.0 * k / (curvePoints - 1) - 1);
    const double x = contents.linear.value + z * contents.linear.standard;
    points.append({x, normalShare(contents.linear, width, x)});
  }
  return points;
}

QList<QPointF> outlineOf(const HistogramContents& contents, double width) {
  QList<QPointF> points;
  if (!contents.trials || contents.count == 0) return points;
  const core::Histogram& bars = contents.trials->histogram;
  for (std::size_t k = 0; k < bars.counts.size(); ++k) {
    const double share = 100 * static_cast<double>(bars.counts[k]) / static_cast<double>(contents.count);
    points.append({bars.low + static_cast<double>(k) * width, share});
    points.append({bars.low + static_cast<double>(k + 1) * width, share});
  }
  return points;
}

}  // namespace

HistogramPlot::HistogramPlot(QWidget* parent)
    : PlotFrame(parent), m_top(new QLineSeries), m_trials(new QAreaSeries(m_top)), m_curve(new QLineSeries) {
  m_top->setParent(m_trials);
  m_trials->setName(tr("Trials"));
  m_curve->setName(tr("Normal curve of the budget"));
  addPlotSeries(m_trials);
  addPlotSeries(m_curve);
  m_linear = makeBracket(tr("Interval of the budget"), tr("budget"));
  m_symmetric = makeBracket(tr("Symmetric interval of the trials"), tr("symmetric"));
  m_shortest = makeBracket(tr("Shortest interval of the trials"), tr("shortest"));
  m_shortest.nameAtLeft = true;
  HistogramPlot::applyColours(coloursFor(palette()));
}

bool HistogramPlot::canShow(const HistogramContents& contents) {
  const bool linear = isDrawable(contents.linear.value) && isDrawable(contents.linear.standard) &&
                      contents.linear.standard > 0;
  return linear && (!contents.trials || contents.trials->histogram.high > contents.trials->histogram.low);
}

HistogramPlot::Bracket HistogramPlot::makeBracket(const QString& seriesName, const QString& shortName) {
  Bracket bracket{new QLineSeries, new QGraphicsSimpleTextItem(shortName, chart())};
  bracket.line->setName(seriesName);
  bracket.name->setZValue(10);
  addPlotSeries(bracket.line);
  return bracket;
}

void HistogramPlot::showContents(const HistogramContents& contents) {
  const double width = barWidth(contents);
  m_top->replace(outlineOf(contents, width));
  m_trials->setVisible(contents.trials.has_value());
  m_curve->replace(curveOf(contents, width));
  m_curve->setVisible(true);

  double peak = normalShare(contents.linear, width, contents.linear.value);
  Extent x;
  x.add(contents.linear.value - reach * contents.linear.standard);
  x.add(contents.linear.value + reach * contents.linear.standard);
  for (const QPointF& point : m_top->points()) x.add(point.x()), peak = std::max(peak, point.y());
  Extent y;
  y.add(0);
  y.add(topLevel * peak);

  const auto& trials = contents.trials;
  const core::StepUncertainty& linear = contents.linear;
  place(m_linear, core::Interval{linear.value - linear.expanded, linear.value + linear.expanded},
        (trials ? linearLevel : symmetricLevel) * peak);
  place(m_symmetric, trials ? std::optional(trials->symmetric) : std::nullopt, symmetricLevel * peak);
  place(m_shortest, trials ? std::optional(trials->shortest) : std::nullopt, shortestLevel * peak);

  QList<PlotHit> hits;
  const int decimals = std::min(9, twoDigitDecimals(linear.standard) + 1);
  for (const Bracket* bracket : {&m_linear, &m_symmetric, &m_shortest})
    for (const QPointF& corner : bracket->line->points())
      hits.append(
          {contents.step, corner,
           bracket->line->name() + ": " + fixedNumberText(corner.x(), decimals) + " " + contents.unit});
  setHits(std::move(hits));
  setCurrentStep(contents.step);
  setTitles(QString(), contents.quantity + ", " + contents.unit, tr("Share of trials in a bar, %"));
  setTicks(niceTicks(x, 6, 0), niceTicks(y, uprightIntervals(), 0));
}

void HistogramPlot::place(Bracket& bracket, const std::optional<core::Interval>& interval, double level) {
  bracket.shown = interval && isDrawable(interval->low) && isDrawable(interval->high);
  bracket.line->setVisible(bracket.shown);
  bracket.line->clear();
  if (!bracket.shown) return;
  bracket.interval = *interval;
  bracket.level = level;
  bracket.line->replace(QList<QPointF>{
      {interval->low, 0}, {interval->low, level}, {interval->high, level}, {interval->high, 0}});
}

/// The names stand outside all brackets, so that none is crossed by a line.
void HistogramPlot::arrange() {
  core::Interval all = m_linear.interval;
  for (const Bracket* bracket : {&m_symmetric, &m_shortest}) {
    if (!bracket->shown) continue;
    all.low = std::min(all.low, bracket->interval.low);
    all.high = std::max(all.high, bracket->interval.high);
  }
  for (const Bracket* bracket : {&m_linear, &m_symmetric, &m_shortest}) {
    if (!bracket->name) continue;  // called while the brackets are being made
    bracket->name->setVisible(bracket->shown);
    if (!bracket->shown) continue;
    const double side = bracket->nameAtLeft ? all.low : all.high;
    const QPointF at = chart()->mapToPosition({side, bracket->level}, m_curve);
    const QRectF box = bracket->name->boundingRect();
    const double left = bracket->nameAtLeft ? at.x() - nameGap_px - box.width() : at.x() + nameGap_px;
    bracket->name->setPos(left, at.y() - box.height() / 2);
  }
}

void HistogramPlot::applyColours(const Colours& colours) {
  PlotFrame::applyColours(colours);
  QColor fill = colours.measured;
  fill.setAlphaF(colours.dark ? 0.45F : 0.35F);
  m_trials->setBrush(fill);
  m_trials->setPen(QPen(colours.measured, 0.8));
  m_curve->setPen(QPen(colours.fitted, 1.8, Qt::DashLine));
  const auto style = [&](const Bracket& bracket, const QColor& colour, Qt::PenStyle line) {
    if (!bracket.line) return;
    bracket.line->setPen(QPen(colour, 1.6, line));
    bracket.name->setBrush(colour);
    bracket.name->setFont(xAxis()->labelsFont());
  };
  style(m_linear, colours.fitted, Qt::DashLine);
  style(m_symmetric, colours.measured, Qt::SolidLine);
  style(m_shortest, colours.selected, Qt::DashDotLine);
  setLegend({{LegendMark::Area, fill, m_trials->name()},
             {LegendMark::DashedLine, colours.fitted, m_curve->name()}});
}

}  // namespace ui
