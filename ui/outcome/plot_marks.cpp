// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/outcome/plot_marks.h"

#include <QPainter>
#include <QPainterPath>
#include <QtCharts/QChart>
#include <algorithm>
#include <cmath>
#include <utility>

namespace ui {
namespace {

constexpr double cap_px = 3, headLength_px = 11, headHalf_px = 3.2;
constexpr double cutHalf_px = 4, cutDepth_px = 4, cutOffset_px = 2;

void paintLines(QPainter& painter, const QPolygonF& points, const QRectF& area) {
  for (qsizetype k = 1; k < points.size(); ++k)
    if (const auto line = cutToHeight({points[k - 1], points[k]}, area.top(), area.bottom()))
      painter.drawLine(*line);
}

}  // namespace

/// Much longer than wide: an equal-sided one would be a triangle without direction, like the marks of failed
/// steps.
void paintArrowHead(QPainter& painter, QPointF tip, QPointF along, bool open) {
  const QPointF across(-along.y(), along.x());
  const QPointF back = tip - headLength_px * along;
  const QPointF left = back + headHalf_px * across, right = back - headHalf_px * across;
  if (open)
    painter.drawPolyline(QPolygonF({left, tip, right}));
  else
    painter.drawPolygon(QPolygonF({tip, left, tip - 0.65 * headLength_px * along, right}));
}

void paintCutOff(QPainter& painter, QPointF at, bool up) {
  const double inwards = up ? 1 : -1;
  const QPointF tip = at + QPointF(0, inwards * cutOffset_px);
  for (const QPointF& point : {tip, tip + QPointF(0, inwards * (cutDepth_px - 1))})
    painter.drawPolyline(QPolygonF({point + QPointF(-cutHalf_px, inwards * cutDepth_px), point,
                                    point + QPointF(cutHalf_px, inwards * cutDepth_px)}));
}

std::optional<QLineF> cutToHeight(const QLineF& line, double low, double high) {
  double from = 0, to = 1;
  const double rise = line.dy();
  if (rise == 0 && (line.y1() < low || line.y1() > high)) return std::nullopt;
  if (rise != 0) {
    const double atLow = (low - line.y1()) / rise, atHigh = (high - line.y1()) / rise;
    from = std::max(from, std::min(atLow, atHigh)), to = std::min(to, std::max(atLow, atHigh));
  }
  if (!(from <= to)) return std::nullopt;
  return QLineF(line.pointAt(from), line.pointAt(to));
}

PlotMarks::PlotMarks(QChart* chart) : QGraphicsItem(chart), m_chart(chart) {
  setAcceptedMouseButtons(Qt::NoButton);
}

void PlotMarks::setBands(QList<PlotBand> bands) {
  m_bands = std::move(bands);
  update();
}

void PlotMarks::setWhiskers(QList<PlotWhisker> whiskers) {
  m_whiskers = std::move(whiskers);
  update();
}

void PlotMarks::setStrokes(QList<PlotStroke> strokes) {
  m_strokes = std::move(strokes);
  update();
}

void PlotMarks::setCross(std::optional<QPointF> at) {
  if (m_cross == at) return;
  m_cross = at;
  update();
}

void PlotMarks::setColours(const QColor& whiskers, const QColor& strokes, const QColor& cross) {
  m_whiskerColour = whiskers, m_strokeColour = strokes, m_crossColour = cross;
  update();
}

QRectF PlotMarks::boundingRect() const { return m_chart->rect(); }

QPolygonF PlotMarks::placed(const QList<QPointF>& values) const {
  QPolygonF points;
  for (const QPointF& value : values) points.append(m_chart->mapToPosition(value));
  return points;
}

void PlotMarks::paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*) {
  painter->setRenderHint(QPainter::Antialiasing);
  for (const PlotBand& band : m_bands) paintBand(*painter, band);
  for (const PlotStroke& stroke : m_strokes) paintStroke(*painter, stroke);
  for (const PlotWhisker& whisker : m_whiskers) paintWhisker(*painter, whisker);
  if (m_cross) paintCross(*painter);
  painter->setBrush(Qt::NoBrush);
  for (const CutOff& cut : cutOffs()) {
    painter->setPen(QPen(cut.colour, 1.4));
    paintCutOff(*painter, cut.at, cut.up);
  }
}

/// One in the middle of each stretch of `edge` that lies beyond.
void PlotMarks::addCutOffs(QList<CutOff>& found, const QPolygonF& edge, bool up, const QColor& colour) const {
  const QRectF area = m_chart->plotArea();
  const auto isBeyond = [&](const QPointF& point) {
    return (up ? point.y() < area.top() - 0.5 : point.y() > area.bottom() + 0.5) &&
           point.x() >= area.left() - 0.5 && point.x() <= area.right() + 0.5;
  };
  for (qsizetype begin = 0; begin < edge.size(); ++begin) {
    if (!isBeyond(edge[begin])) continue;
    qsizetype end = begin;
    while (end + 1 < edge.size() && isBeyond(edge[end + 1])) ++end;
    const double x = (edge[begin].x() + edge[end].x()) / 2;
    found.append({{std::clamp(x, area.left() + cutHalf_px,
                              std::max(area.left() + cutHalf_px, area.right() - cutHalf_px)),
                   up ? area.top() : area.bottom()},
                  up,
                  colour});
    begin = end;
  }
}

QList<PlotMarks::CutOff> PlotMarks::cutOffs() const {
  QList<CutOff> found;
  for (const PlotBand& band : m_bands) {
    addCutOffs(found, placed(band.upper), true, band.edge);
    addCutOffs(found, placed(band.lower), false, band.edge);
  }
  for (const PlotWhisker& whisker : m_whiskers)
    for (const bool up : {true, false})
      addCutOffs(found, placed({whisker.at + QPointF(0, up ? whisker.half : -whisker.half)}), up,
                 m_whiskerColour);
  return found;
}

void PlotMarks::paintBand(QPainter& painter, const PlotBand& band) const {
  const QRectF area = m_chart->plotArea();
  const QPolygonF upper = placed(band.upper), lower = placed(band.lower);
  QPolygonF outline = upper;
  for (qsizetype k = lower.size(); k-- > 0;) outline.append(lower[k]);
  QPainterPath inside, room;
  inside.addPolygon(outline);
  room.addRect(area);
  painter.fillPath(inside.intersected(room), band.fill);
  painter.setPen(QPen(band.edge, 1, band.edgeStyle));
  paintLines(painter, upper, area);
  paintLines(painter, lower, area);
}

void PlotMarks::paintWhisker(QPainter& painter, const PlotWhisker& whisker) const {
  const QRectF area = m_chart->plotArea();
  const QPointF top = m_chart->mapToPosition(whisker.at + QPointF(0, whisker.half));
  const QPointF bottom = m_chart->mapToPosition(whisker.at - QPointF(0, whisker.half));
  const auto stem = cutToHeight({top, bottom}, area.top(), area.bottom());
  if (!stem) return;
  painter.setPen(QPen(m_whiskerColour, 1.2));
  painter.drawLine(*stem);
  for (const QPointF& end : {top, bottom})
    if (end.y() >= area.top() && end.y() <= area.bottom())
      painter.drawLine(end - QPointF(cap_px, 0), end + QPointF(cap_px, 0));
}

void PlotMarks::paintStroke(QPainter& painter, const PlotStroke& stroke) const {
  const QPolygonF points = placed(stroke.points);
  const QRectF area = m_chart->plotArea();
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(m_strokeColour, 1.3, stroke.falling ? Qt::DashLine : Qt::SolidLine));
  paintLines(painter, points, area);
  painter.setPen(QPen(m_strokeColour, 1.3));
  for (qsizetype k = 1; k < points.size(); ++k) {
    const QPointF way = points[k] - points[k - 1];
    const double length = std::hypot(way.x(), way.y());
    // Beyond the middle in its own direction, so that the way there and the way back have room for both.
    const QPointF tip = points[k - 1] + 0.6 * way + 0.5 * headLength_px * way / length;
    if (length < 1.5 * headLength_px || !area.contains(tip)) continue;
    painter.setBrush(m_strokeColour);
    paintArrowHead(painter, tip, way / length, stroke.falling);
  }
}

void PlotMarks::paintCross(QPainter& painter) const {
  const QRectF area = m_chart->plotArea();
  const QPointF at = m_chart->mapToPosition(*m_cross);
  painter.setPen(QPen(m_crossColour, 1, Qt::DotLine));
  if (at.y() >= area.top() && at.y() <= area.bottom())
    painter.drawLine(QPointF(area.left(), at.y()), QPointF(area.right(), at.y()));
  if (at.x() >= area.left() && at.x() <= area.right())
    painter.drawLine(QPointF(at.x(), area.top()), QPointF(at.x(), area.bottom()));
}

}  // namespace ui
