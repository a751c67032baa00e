// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/outcome/measured_plot.h"

#include <QPen>
#include <QtCharts/QLineSeries>
#include <QtCharts/QScatterSeries>
#include <algorithm>

#include "ui/outcome/plot_legend.h"
#include "ui/outcome/plot_marks.h"
#include "ui/quantity_edit.h"

namespace ui {

MeasuredPlot::MeasuredPlot(QWidget* parent)
    : PlotFrame(parent),
      m_expected(new QLineSeries),
      m_line(new QLineSeries),
      m_points(new QScatterSeries),
      m_outside(new QScatterSeries),
      m_open(new QScatterSeries),
      m_ring(new QScatterSeries) {
  m_expected->setName(tr("Expected"));
  m_line->setName(tr("Fitted line"));
  m_points->setName(tr("Measured"));
  m_outside->setName(tr("Out of limits"));
  m_ring->setName(tr("Chosen step"));
  m_outside->setMarkerShape(QScatterSeries::MarkerShapeTriangle);
  m_outside->setMarkerSize(11);
  m_open->setName(tr("Cannot tell"));
  m_open->setMarkerShape(QScatterSeries::MarkerShapeRectangle);
  m_open->setMarkerSize(9);
  m_ring->setMarkerSize(17);
  for (QAbstractSeries* series :
       std::initializer_list<QAbstractSeries*>{m_expected, m_line, m_points, m_outside, m_open, m_ring})
    addPlotSeries(series);
  MeasuredPlot::applyColours(coloursFor(palette()));
}

void MeasuredPlot::showPlot(const CheckPlot& plot, const ChartOptions& options, Role role, bool titled,
                            const AxisTicks& x, const AxisTicks& y, std::optional<std::size_t> step) {
  m_options = options;
  placePoints(plot, step);
  placeLine(plot, x, y);
  placeMarks(plot);
  setTitles(titled ? plot.check : QString(), plot.xTitle, plot.yTitle);
  setTicks(x, y);
  const bool otherRole = m_role != role;
  m_role = role;
  const Colours colours = coloursFor(palette());
  if (otherRole) return applyColours(colours);
  showBands(colours);
  showLegend(colours);
}

void MeasuredPlot::placePoints(const CheckPlot& plot, std::optional<std::size_t> step) {
  QList<QPointF> inside, outside, open, ring;
  QList<PlotHit> hits;
  for (const PlotPoint& point : plot.points) {
    const bool fails = point.verdict == core::Verdict::Fail;
    const bool cannotTell = point.verdict == core::Verdict::CannotTell;
    (fails ? outside : cannotTell ? open : inside).append(point.at);
    if (point.step == step) ring.append(point.at);
    hits.append({point.step, point.at, point.text, point.readout});
  }
  m_points->replace(inside);
  m_outside->replace(outside);
  m_open->replace(open);
  m_ring->replace(ring);
  m_expected->replace(plot.expected);
  setHits(std::move(hits));
  setCurrentStep(step);
}

void MeasuredPlot::placeLine(const CheckPlot& plot, const AxisTicks& x, const AxisTicks& y) {
  QList<QPointF> line;
  m_centre.clear();
  m_bands.clear();
  if (plot.line) {
    const auto at = [&](double place) { return QPointF(place, core::valueAt(*plot.line, place)); };
    const auto seen = cutToHeight({at(x.low), at(x.high)}, y.low, y.high);
    if (seen && m_options.line) line = {seen->p1(), seen->p2()};
    m_centre = {at(x.low), at(x.high)};
    const auto add = [&](LineBand::Kind kind) {
      m_bands.append(lineBand(kind, *plot.line, x.low, x.high, plot.uNew, {plot.unit}));
    };
    if (m_options.prediction) add(LineBand::Kind::Prediction);
    if (m_options.confidence) add(LineBand::Kind::Confidence);
  }
  m_line->replace(line);
}

void MeasuredPlot::placeMarks(const CheckPlot& plot) {
  QList<PlotWhisker> whiskers;
  double greatest = 0;
  for (const PlotPoint& point : plot.points) {
    if (!m_options.errorBars || !point.expanded || *point.expanded <= 0) continue;
    whiskers.append({point.at, *point.expanded});
    greatest = std::max(greatest, *point.expanded);
  }
  m_uncertainty =
      whiskers.isEmpty() ? QString() : tr("U up to ±%1").arg(numberText(greatest, 2) + " " + plot.unit);
  QList<PlotStroke> strokes;
  for (const PlotBranch& branch : m_options.branches ? plot.branches : QList<PlotBranch>()) {
    PlotStroke stroke{{}, branch.falling};
    for (const std::size_t step : branch.steps)
      for (const PlotPoint& point : plot.points)
        if (point.step == step) stroke.points.append(point.at);
    strokes.append(stroke);
  }
  inFront().setWhiskers(std::move(whiskers));
  inFront().setStrokes(std::move(strokes));
}

void MeasuredPlot::showBands(const Colours& colours) {
  QList<PlotBand> shapes;
  for (const LineBand& band : m_bands)
    if (!band.halves.isEmpty()) shapes.append(bandAbout(band, m_centre, colours));
  behind().setBands(std::move(shapes));
}

void MeasuredPlot::applyColours(const Colours& colours) {
  PlotFrame::applyColours(colours);
  const bool chosen = m_role == Role::Chosen;
  m_expected->setPen(QPen(colours.quiet, 1.2, Qt::DashLine));
  m_line->setPen(QPen(colours.fitted, 1.8));
  m_points->setColor(chosen ? colours.measured : colours.compared);
  m_points->setBorderColor(colours.background);
  m_points->setMarkerShape(chosen ? QScatterSeries::MarkerShapeCircle
                                  : QScatterSeries::MarkerShapeRotatedRectangle);
  m_points->setMarkerSize(chosen ? 9 : 11);
  m_outside->setColor(colours.fail);
  m_outside->setBorderColor(colours.background);
  m_open->setColor(colours.background);
  m_open->setPen(QPen(colours.cannotTell, 2));
  m_ring->setColor(Qt::transparent);
  m_ring->setPen(QPen(colours.selected, 2.4));
  showBands(colours);
  showLegend(colours);
}

void MeasuredPlot::showLegend(const Colours& colours) {
  const LegendMark measured = m_role == Role::Chosen ? LegendMark::Circle : LegendMark::Diamond;
  QList<LegendEntry> entries;
  const auto add = [&](bool some, LegendMark mark, const QColor& colour, const QString& text) {
    // An entry for what is not there would only take room.
    if (some) entries.append({mark, colour, text});
  };
  // What would be missed most comes first: where there is no room for all, the last are left out.
  add(m_points->count() > 0, measured, m_points->color(), m_points->name());
  add(m_outside->count() > 0, LegendMark::Triangle, colours.fail, m_outside->name());
  add(m_open->count() > 0, LegendMark::HollowSquare, colours.cannotTell, m_open->name());
  for (const LineBand& band : m_bands)
    add(!band.halves.isEmpty(), LegendMark::Area, fillOf(band.kind, colours), band.words);
  add(true, LegendMark::DashedLine, colours.quiet, m_expected->name());
  add(m_line->count() > 0, LegendMark::Line, colours.fitted, m_line->name());
  add(!m_uncertainty.isEmpty(), LegendMark::Whisker, colours.text, m_uncertainty);
  const QList<PlotStroke>& strokes = marksInFront().strokes();
  add(!strokes.isEmpty(), LegendMark::RisingStroke, colours.quiet, tr("Rising"));
  add(!strokes.isEmpty(), LegendMark::FallingStroke, colours.quiet, tr("Falling"));
  setLegend(std::move(entries));
}

void addExtent(const CheckPlot& plot, Extent& x, Extent& y) {
  for (const QPointF& at : plot.expected) x.add(at.x()), y.add(at.y());
  for (const PlotPoint& point : plot.points) x.add(point.at.x()), y.add(point.at.y());
}

}  // namespace ui
