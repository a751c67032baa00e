// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/outcome/measured_plot.h"

#include <QPen>
#include <QtCharts/QLineSeries>
#include <QtCharts/QScatterSeries>

#include "ui/outcome/plot_legend.h"

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

void MeasuredPlot::showPlot(const CheckPlot& plot, Role role, bool titled, const AxisTicks& x,
                            const AxisTicks& y, std::optional<std::size_t> step) {
  QList<QPointF> inside, outside, open, ring, line;
  QList<PlotHit> hits;
  for (const PlotPoint& point : plot.points) {
    const bool fails = point.verdict == core::Verdict::Fail;
    const bool cannotTell = point.verdict == core::Verdict::CannotTell;
    (fails ? outside : cannotTell ? open : inside).append(point.at);
    if (point.step == step) ring.append(point.at);
    hits.append({point.step, point.at, point.text});
  }
  if (plot.line)
    for (const double at : {x.low, x.high}) line.append({at, plot.line->intercept + plot.line->slope * at});
  m_points->replace(inside);
  m_outside->replace(outside);
  m_open->replace(open);
  m_ring->replace(ring);
  m_line->replace(line);
  m_expected->replace(plot.expected);
  setHits(std::move(hits));
  setCurrentStep(step);
  setTitles(titled ? plot.check : QString(), plot.xTitle, plot.yTitle);
  setTicks(x, y);
  const bool otherRole = m_role != role;
  m_role = role;
  if (otherRole)
    applyColours(coloursFor(palette()));
  else
    showLegend(coloursFor(palette()));
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
  showLegend(colours);
}

void MeasuredPlot::showLegend(const Colours& colours) {
  const LegendMark measured = m_role == Role::Chosen ? LegendMark::Circle : LegendMark::Diamond;
  QList<LegendEntry> entries{{LegendMark::DashedLine, colours.quiet, m_expected->name()},
                             {LegendMark::Line, colours.fitted, m_line->name()},
                             {measured, m_points->color(), m_points->name()},
                             {LegendMark::Triangle, colours.fail, m_outside->name()}};
  // Most rules always can tell; the entry would only take room.
  if (m_open->count() > 0) entries.append({LegendMark::HollowSquare, colours.cannotTell, m_open->name()});
  setLegend(std::move(entries));
}

void addExtent(const CheckPlot& plot, Extent& x, Extent& y) {
  for (const QPointF& at : plot.expected) x.add(at.x()), y.add(at.y());
  for (const PlotPoint& point : plot.points) x.add(point.at.x()), y.add(point.at.y());
}

}  // namespace ui
