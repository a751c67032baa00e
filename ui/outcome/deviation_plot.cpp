// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/outcome/deviation_plot.h"

#include <QPen>
#include <QtCharts/QLineSeries>
#include <QtCharts/QScatterSeries>
#include <QtCharts/QValueAxis>
#include <algorithm>
#include <cmath>

#include "ui/outcome/plot_legend.h"
#include "ui/outcome/plot_marks.h"

namespace ui {
namespace {

constexpr double seenShare = 1e-3;    ///< of the limits: smaller bars would only show how numbers are rounded
constexpr double room_px = 8;         ///< beside a bar, for the limits behind it
constexpr double longestWhisker = 4;  ///< times the bars: longer ones would leave nothing of these
constexpr double widestBand = 4;      ///< times bars and line, likewise

}  // namespace

DeviationPlot::DeviationPlot(QWidget* parent)
    : PlotFrame(parent),
      m_zero(new QLineSeries),
      m_line(new QLineSeries),
      m_outside(new QScatterSeries),
      m_open(new QScatterSeries),
      m_ring(new QScatterSeries) {
  m_line->setName(tr("Fitted line"));
  m_outside->setName(tr("Out of limits"));
  m_outside->setMarkerShape(QScatterSeries::MarkerShapeTriangle);
  m_outside->setMarkerSize(13);
  m_open->setName(tr("Cannot tell"));
  m_open->setMarkerShape(QScatterSeries::MarkerShapeRectangle);
  m_open->setMarkerSize(13);  // wider than a bar, which is drawn over it
  m_ring->setMarkerSize(17);
  for (QAbstractSeries* series :
       std::initializer_list<QAbstractSeries*>{m_zero, m_line, m_outside, m_open, m_ring})
    addPlotSeries(series);
  DeviationPlot::applyColours(coloursFor(palette()));
}

void DeviationPlot::showBars(BarPicture picture, const AxisTicks& x, std::optional<std::size_t> step) {
  std::stable_sort(picture.bars.begin(), picture.bars.end(),
                   [](const PlotBar& a, const PlotBar& b) { return a.x < b.x; });
  m_shown = std::move(picture);
  m_step = step;
  m_xTicks = x;
  fitPool();
  m_zero->replace(QList<QPointF>{{x.low, 0}, {x.high, 0}});
  m_line->setName(m_shown.lineName);
  m_outside->setName(m_shown.outsideName.isEmpty() ? tr("Out of limits") : m_shown.outsideName);
  m_line->replace(m_shown.lineShown ? m_shown.line : QList<QPointF>());
  setCurrentStep(step);
  setTitles(QString(), m_shown.xTitle, m_shown.yTitle);
  m_yTicks = niceTicks(uprightExtent(), uprightIntervals(), 0.06);
  showLegend(coloursFor(palette()));
  setTicks(x, m_yTicks);
}

/// The bars and the line with what they may be wrong by; the limits too when the user wants these to be seen,
/// or when there would be nothing else. What is much longer than all the rest is cut, with a mark.
Extent DeviationPlot::uprightExtent() const {
  Extent bars, all;
  bars.add(0);
  double greatest = 0, limit = 0;
  for (const PlotBar& bar : m_shown.bars) {
    bars.add(bar.value);
    greatest = std::max(greatest, std::abs(bar.value));
    if (bar.limit) limit = std::max(limit, *bar.limit);
  }
  for (const QPointF& at : m_shown.lineShown ? m_shown.line : QList<QPointF>()) bars.add(at.y());
  for (const PlotBar& bar : m_shown.bars) {
    if (!m_shown.errorBars || !bar.expanded ||
        std::abs(bar.value) + *bar.expanded > longestWhisker * greatest)
      continue;
    bars.add(bar.value + *bar.expanded), bars.add(bar.value - *bar.expanded);
  }
  const double reach = widestBand * std::max(bars.high, -bars.low);
  for (const Extent& band : bandExtents())
    if (std::max(band.high, -band.low) <= reach) bars.add(band.low), bars.add(band.high);
  all = bars;
  all.add(limit), all.add(-limit);
  return m_shown.fit == BarFit::Limits || greatest <= seenShare * limit ? all : bars;
}

/// Of each band about the line, as it is drawn.
QList<Extent> DeviationPlot::bandExtents() const {
  QList<Extent> extents;
  for (const LineBand& band : m_shown.bands) {
    Extent extent;
    const PlotBand shape = bandAbout(band, m_shown.line, coloursFor(palette()));
    for (const QList<QPointF>& edge : {shape.upper, shape.lower})
      for (const QPointF& at : edge) extent.add(at.y());
    if (!extent.empty) extents.append(extent);
  }
  return extents;
}

/// Whether anything is cut by the axis.
bool DeviationPlot::goesBeyond() const {
  const auto isBeyond = [this](double low, double high) {
    return low < m_yTicks.low || high > m_yTicks.high;
  };
  for (const PlotBar& bar : m_shown.bars) {
    const double half = m_shown.errorBars ? bar.expanded.value_or(0) : 0;
    if (isBeyond(bar.value - half, bar.value + half)) return true;
    if (bar.limit && isBeyond(-*bar.limit, *bar.limit)) return true;
  }
  for (const Extent& band : bandExtents())
    if (isBeyond(band.low, band.high)) return true;
  return false;
}

/// As many series as bars; those left over are hidden, because adding and removing is slow.
void DeviationPlot::fitPool() {
  while (m_pool.size() < m_shown.bars.size()) {
    auto* bar = new QLineSeries;
    addPlotSeries(bar);
    m_pool.append(bar);
  }
  for (qsizetype k = 0; k < m_pool.size(); ++k) m_pool[k]->setVisible(k < m_shown.bars.size());
}

/// Each bar has its own: between the steps nothing is judged, and steps of one level may differ in it.
QList<PlotBand> DeviationPlot::limitBands(const Colours& colours) const {
  QList<PlotBand> bands;
  for (qsizetype k = 0; k < std::min(m_shown.bars.size(), m_places.size()); ++k) {
    if (!m_shown.bars[k].limit) continue;
    const double limit = *m_shown.bars[k].limit, from = m_places[k] - m_slot / 2,
                 to = m_places[k] + m_slot / 2;
    PlotBand band{tr("Within limits"),
                  {{from, limit}, {to, limit}},
                  {{from, -limit}, {to, -limit}},
                  colours.band,
                  colours.band,
                  Qt::SolidLine};
    band.fill.setAlphaF(colours.dark ? 0.3F : 0.25F);
    bands.append(std::move(band));
  }
  return bands;
}

void DeviationPlot::showBands(const Colours& colours) {
  QList<PlotBand> shapes = limitBands(colours);
  for (const LineBand& band : m_shown.bands)
    if (!band.halves.isEmpty()) shapes.append(bandAbout(band, m_shown.line, colours));
  behind().setBands(std::move(shapes));
}

/// Bars of one level together take no more room than there is to the next level.
double DeviationPlot::widestSlot() const {
  const double span = m_xTicks.high - m_xTicks.low;
  const double alike = span / 100;  // levels that were meant to be the same
  double nearest = span;
  qsizetype most = 1;
  for (qsizetype begin = 0; begin < m_shown.bars.size();) {
    qsizetype end = begin + 1;
    while (end < m_shown.bars.size() && m_shown.bars[end].x - m_shown.bars[begin].x <= alike) ++end;
    most = std::max(most, end - begin);
    if (end < m_shown.bars.size()) nearest = std::min(nearest, m_shown.bars[end].x - m_shown.bars[end - 1].x);
    begin = end;
  }
  return 0.8 * nearest / static_cast<double>(most);
}

QList<double> DeviationPlot::sideBySide(double slot) const {
  QList<double> places;
  for (qsizetype begin = 0; begin < m_shown.bars.size();) {
    qsizetype end = begin + 1;
    while (end < m_shown.bars.size() && m_shown.bars[end].x - m_shown.bars[begin].x < slot) ++end;
    double middle = 0;
    for (qsizetype k = begin; k < end; ++k) middle += m_shown.bars[k].x / static_cast<double>(end - begin);
    for (qsizetype k = begin; k < end; ++k)
      places.append(middle +
                    slot * (static_cast<double>(k - begin) - 0.5 * static_cast<double>(end - begin - 1)));
    begin = end;
  }
  return places;
}

void DeviationPlot::arrange() {
  if (m_shown.bars.size() > m_pool.size()) return;
  const double width_px = std::max(20.0, chart()->plotArea().width());
  const double bar_px = std::clamp(width_px / (2.5 * static_cast<double>(m_shown.bars.size() + 1)), 2.0, 7.0);
  const double unitsPerPixel = (m_xTicks.high - m_xTicks.low) / width_px;
  m_slot = std::min(unitsPerPixel * (bar_px + room_px), widestSlot());
  m_places = sideBySide(m_slot);
  placeBars(m_places, bar_px);
  placeMarks(m_places);
  showBands(coloursFor(palette()));
}

void DeviationPlot::placeBars(const QList<double>& places, double bar_px) {
  const Colours colours = coloursFor(palette());
  QList<QPointF> outside, open, ring;
  QList<PlotHit> hits;
  for (qsizetype k = 0; k < m_shown.bars.size(); ++k) {
    const PlotBar& bar = m_shown.bars[k];
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
    hits.append({bar.step, tip, bar.text, bar.readout});
    hits.append({bar.step, {places[k], bar.value / 2}, bar.text, bar.readout});
  }
  m_outside->replace(outside);
  m_open->replace(open);
  m_ring->replace(ring);
  setHits(std::move(hits));
}

void DeviationPlot::placeMarks(const QList<double>& places) {
  QList<PlotWhisker> whiskers;
  for (qsizetype k = 0; k < m_shown.bars.size(); ++k) {
    const PlotBar& bar = m_shown.bars[k];
    if (m_shown.errorBars && bar.expanded && *bar.expanded > 0)
      whiskers.append({{places[k], bar.value}, *bar.expanded});
  }
  QList<PlotStroke> strokes;
  for (const PlotBranch& branch : m_shown.branches) {
    PlotStroke stroke{{}, branch.falling};
    for (const std::size_t step : branch.steps)
      for (qsizetype k = 0; k < m_shown.bars.size(); ++k)
        if (m_shown.bars[k].step == step && !m_shown.bars[k].compared)
          stroke.points.append({places[k], m_shown.bars[k].value});
    if (stroke.points.size() > 1) strokes.append(stroke);
  }
  inFront().setWhiskers(std::move(whiskers));
  inFront().setStrokes(std::move(strokes));
}

void DeviationPlot::applyColours(const Colours& colours) {
  PlotFrame::applyColours(colours);
  m_zero->setPen(QPen(colours.text, 1));
  m_line->setPen(QPen(colours.fitted, 1.8));
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
  const QList<PlotBar>& bars = m_shown.bars;
  const auto some = [&](const auto& what) { return std::any_of(bars.begin(), bars.end(), what); };
  QList<LegendEntry> entries;
  const auto add = [&](bool any, LegendMark mark, const QColor& colour, const QString& text) {
    if (any) entries.append({mark, colour, text});
  };
  QColor limits = colours.band;
  limits.setAlphaF(0.5F);
  // A plot that is all within would else look like one without limits.
  const bool beyond = some([&](const PlotBar& bar) { return bar.limit && *bar.limit < m_yTicks.high; });
  QString within = beyond ? tr("Within limits") : tr("Within limits, which lie beyond the axis");
  if (!m_shown.limitsName.isEmpty())
    within = beyond ? m_shown.limitsName : tr("%1, beyond the axis").arg(m_shown.limitsName);
  add(some([](const PlotBar& bar) { return bar.limit.has_value(); }), LegendMark::Area, limits, within);
  add(some([](const PlotBar& bar) { return bar.verdict == core::Verdict::Fail; }), LegendMark::Triangle,
      colours.fail, m_outside->name());
  add(some([](const PlotBar& bar) { return bar.verdict == core::Verdict::CannotTell; }),
      LegendMark::HollowSquare, colours.cannotTell, m_open->name());
  add(goesBeyond(), LegendMark::CutOff, colours.text, tr("Goes on beyond the axis"));
  // What is not told by its look alone comes before the bands, which may find no room.
  add(m_line->count() > 0, LegendMark::Line, colours.fitted, m_line->name());
  for (const LineBand& band : m_shown.bands)
    add(!band.halves.isEmpty(), LegendMark::Area, fillOf(band.kind, colours), band.words);
  add(m_shown.errorBars && some([](const PlotBar& bar) { return bar.expanded.has_value(); }),
      LegendMark::Whisker, colours.text,
      m_shown.whiskerName.isEmpty() ? tr("U of the deviation") : m_shown.whiskerName);
  add(!m_shown.branches.isEmpty(), LegendMark::RisingStroke, colours.quiet, tr("Rising"));
  add(!m_shown.branches.isEmpty(), LegendMark::FallingStroke, colours.quiet, tr("Falling"));
  setLegend(std::move(entries));
}

}  // namespace ui
