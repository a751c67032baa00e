// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/outcome/deviation_plot.h"

#include <QPen>
#include <QtCharts/QAreaSeries>
#include <QtCharts/QLineSeries>
#include <QtCharts/QScatterSeries>
#include <QtCharts/QValueAxis>
#include <algorithm>
#include <cmath>

#include "ui/outcome/plot_legend.h"

namespace ui {
DeviationPlot::DeviationPlot(QWidget* parent)
    : PlotFrame(parent),
      m_upper(new QLineSeries),
      m_lower(new QLineSeries),
      m_band(new QAreaSeries(m_upper, m_lower)),
      m_zero(new QLineSeries),
      m_outside(new QScatterSeries),
      m_open(new QScatterSeries),
      m_ring(new QScatterSeries) {
  m_upper->setParent(m_band);
  m_lower->setParent(m_band);
  m_band->setName(tr("Within limits"));
  m_outside->setName(tr("Out of limits"));
  m_outside->setMarkerShape(QScatterSeries::MarkerShapeTriangle);
  m_outside->setMarkerSize(13);
  m_open->setName(tr("Cannot tell"));
  m_open->setMarkerShape(QScatterSeries::MarkerShapeRectangle);
  m_open->setMarkerSize(13);  // wider than a bar, which is drawn over it
  m_ring->setMarkerSize(17);
  for (QAbstractSeries* series :
       std::initializer_list<QAbstractSeries*>{m_band, m_zero, m_outside, m_open, m_ring})
    addPlotSeries(series);
  DeviationPlot::applyColours(coloursFor(palette()));
}

void DeviationPlot::showBars(QList<PlotBar> bars, const QString& xTitle, const QString& yTitle,
                             const AxisTicks& x, std::optional<std::size_t> step) {
  std::stable_sort(bars.begin(), bars.end(), [](const PlotBar& a, const PlotBar& b) { return a.x < b.x; });
  m_shown = std::move(bars);
  m_step = step;
  m_xTicks = x;
  Extent extent;
  extent.add(0);
  for (const PlotBar& bar : m_shown) {
    extent.add(bar.value);
    if (bar.limit) extent.add(*bar.limit), extent.add(-*bar.limit);
  }
  fitPool();
  placeBand(x);
  m_zero->replace(QList<QPointF>{{x.low, 0}, {x.high, 0}});
  showLegend(coloursFor(palette()));
  setCurrentStep(step);
  setTitles(QString(), xTitle, yTitle);
  setTicks(x, niceTicks(extent, uprightIntervals(), 0.06));
}

/// As many series as bars; those left over are hidden, because adding and removing is slow.
void DeviationPlot::fitPool() {
  while (m_pool.size() < m_shown.size()) {
    auto* bar = new QLineSeries;
    addPlotSeries(bar);
    m_pool.append(bar);
  }
  for (qsizetype k = 0; k < m_pool.size(); ++k) m_pool[k]->setVisible(k < m_shown.size());
}

void DeviationPlot::placeBand(const AxisTicks& x) {
  QList<QPointF> upper, lower;
  for (const PlotBar& bar : m_shown) {
    if (!bar.limit) continue;
    if (upper.isEmpty()) upper.append({x.low, *bar.limit});
    upper.append({bar.x, *bar.limit});
  }
  if (!upper.isEmpty()) upper.append({x.high, upper.last().y()});
  for (const QPointF& at : upper) lower.append({at.x(), -at.y()});
  m_upper->replace(upper);
  m_lower->replace(lower);
  m_band->setVisible(!upper.isEmpty());
}

/// Bars of one level together take no more room than there is to the next level.
double DeviationPlot::widestSlot() const {
  const double span = m_xTicks.high - m_xTicks.low;
  const double alike = span / 100;  // levels that were meant to be the same
  double nearest = span;
  qsizetype most = 1;
  for (qsizetype begin = 0; begin < m_shown.size();) {
    qsizetype end = begin + 1;
    while (end < m_shown.size() && m_shown[end].x - m_shown[begin].x <= alike) ++end;
    most = std::max(most, end - begin);
    if (end < m_shown.size()) nearest = std::min(nearest, m_shown[end].x - m_shown[end - 1].x);
    begin = end;
  }
  return 0.8 * nearest / static_cast<double>(most);
}

QList<double> DeviationPlot::sideBySide(double slot) const {
  QList<double> places;
  for (qsizetype begin = 0; begin < m_shown.size();) {
    qsizetype end = begin + 1;
    while (end < m_shown.size() && m_shown[end].x - m_shown[begin].x < slot) ++end;
    double middle = 0;
    for (qsizetype k = begin; k < end; ++k) middle += m_shown[k].x / static_cast<double>(end - begin);
    for (qsizetype k = begin; k < end; ++k)
      places.append(middle +
                    slot * (static_cast<double>(k - begin) - 0.5 * static_cast<double>(end - begin - 1)));
    begin = end;
  }
  return places;
}

void DeviationPlot::arrange() {
  if (m_shown.size() > m_pool.size()) return;
  const Colours colours = coloursFor(palette());
  const double width_px = std::max(20.0, chart()->plotArea().width());
  const double bar_px = std::clamp(width_px / (2.5 * static_cast<double>(m_shown.size() + 1)), 2.0, 7.0);
  const double unitsPerPixel = (m_xTicks.high - m_xTicks.low) / width_px;
  const QList<double> places = sideBySide(std::min(unitsPerPixel * (bar_px + 2), widestSlot()));
  QList<QPointF> outside, open, ring;
  QList<PlotHit> hits;
  for (qsizetype k = 0; k < m_shown.size(); ++k) {
    const PlotBar& bar = m_shown[k];
    const QPointF tip(places[k], bar.value);
    const bool fails = bar.verdict == core::Verdict::Fail;
    const bool cannotTell = bar.verdict == core::Verdict::CannotTell;
    const QColor colour = fails          ? colours.fail
                          : cannotTell   ? colours.cannotTell
                          : bar.compared ? colours.compared
                                         : colours.measured;
    m_pool[k]->setPen(QPen(colour, bar_px, Qt::SolidLine, Qt::FlatCap));
    m_pool[k]->replace(QList<QPointF>{{places[k], 0}, tip});
    if (fails) outside.append(tip);
    if (cannotTell) open.append(tip);
    if (bar.step == m_step) ring.append(tip);
    hits.append({bar.step, tip, bar.text});
    hits.append({bar.step, {places[k], bar.value / 2}, bar.text});
  }
  m_outside->replace(outside);
  m_open->replace(open);
  m_ring->replace(ring);
  setHits(std::move(hits));
}

void DeviationPlot::applyColours(const Colours& colours) {
  PlotFrame::applyColours(colours);
  QColor band = colours.band;
  band.setAlphaF(colours.dark ? 0.22F : 0.18F);
  QColor edge = colours.band;
  edge.setAlphaF(0.8F);
  m_band->setBrush(band);
  m_band->setPen(QPen(edge, 1));
  m_zero->setPen(QPen(colours.text, 1));
  m_outside->setColor(colours.fail);
  m_outside->setBorderColor(colours.background);
  m_open->setColor(colours.background);
  m_open->setPen(QPen(colours.cannotTell, 2));
  m_ring->setColor(Qt::transparent);
  m_ring->setPen(QPen(colours.selected, 2.4));
  showLegend(colours);
  arrange();
}

void DeviationPlot::showLegend(const Colours& colours) {
  const auto some = [&](const auto& what) { return std::any_of(m_shown.begin(), m_shown.end(), what); };
  QList<LegendEntry> entries;
  if (some([](const PlotBar& bar) { return bar.limit.has_value(); }))
    entries.append({LegendMark::Area, m_band->brush().color(), m_band->name()});
  if (some([](const PlotBar& bar) { return bar.verdict == core::Verdict::Fail; }))
    entries.append({LegendMark::Triangle, colours.fail, m_outside->name()});
  if (some([](const PlotBar& bar) { return bar.verdict == core::Verdict::CannotTell; }))
    entries.append({LegendMark::HollowSquare, colours.cannotTell, m_open->name()});
  setLegend(std::move(entries));
}

}  // namespace ui
