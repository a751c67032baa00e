// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bridge/symbol_painter.h"

#include <algorithm>
#include <cmath>

#include "ui/bridge/bridge_sketch.h"

namespace ui {
namespace {

constexpr double symbolLine = 1.7;

QPointF unitOf(QPointF vector) { return vector / std::hypot(vector.x(), vector.y()); }
QPointF acrossOf(QPointF along) { return {-along.y(), along.x()}; }

/// A body's middle line, and half its width.
struct Axis {
  QPointF begin, end, along, across;
  double length = 0, half = 0;
};

Axis axisOf(const QPolygonF& body) {
  Axis axis;
  axis.begin = (body[0] + body[3]) / 2;
  axis.end = (body[1] + body[2]) / 2;
  axis.along = unitOf(axis.end - axis.begin);
  axis.across = acrossOf(axis.along);
  axis.length = std::hypot(axis.end.x() - axis.begin.x(), axis.end.y() - axis.begin.y());
  axis.half = std::hypot(body[3].x() - body[0].x(), body[3].y() - body[0].y()) / 2;
  return axis;
}

/// Six half waves in the middle of the axis, as wide as the body.
QPolygonF zigzagOf(const Axis& axis) {
  const double step = axis.length / 12;
  QPolygonF zigzag{axis.begin};
  for (int k = 0; k < 6; ++k)
    zigzag << axis.begin + axis.along * (2 * k + 1) * step +
                  axis.across * (k % 2 == 0 ? axis.half : -axis.half);
  return zigzag << axis.end;
}

}  // namespace

void SymbolPainter::line(const QPolygonF& route, const QColor& colour, double width) {
  m_painter.setPen(QPen(colour, width, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
  m_painter.setBrush(Qt::NoBrush);
  m_painter.drawPolyline(route);
}

void SymbolPainter::dashes(const QPolygonF& route, const QColor& colour, double width, double dash,
                           double gap) {
  QList<QLineF> lines;
  for (qsizetype k = 1; k < route.size(); ++k) {
    const QPointF way = route[k] - route[k - 1];
    const double length = std::hypot(way.x(), way.y());
    for (int done = 0; done * (dash + gap) < length; ++done) {
      const double at = done * (dash + gap);
      lines << QLineF(route[k - 1] + way * (at / length),
                      route[k - 1] + way * (std::min(at + dash, length) / length));
    }
  }
  m_painter.setPen(QPen(colour, width, Qt::SolidLine, Qt::FlatCap));
  m_painter.drawLines(lines);
}

void SymbolPainter::cover(const QPolygonF& body, double margin) {
  const Axis axis = axisOf(body);
  m_painter.setPen(QPen(m_background, 2 * margin));
  m_painter.drawLine(axis.begin, axis.end);
}

void SymbolPainter::resistor(const QPolygonF& body, const QColor& colour, double width, bool dashed) {
  const bool zigzag = m_symbols == Symbols::Ieee315;
  if (zigzag) cover(body, 2.5);
  m_painter.setPen(zigzag || !dashed ? QPen(colour, width, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin)
                                     : Qt::NoPen);
  m_painter.setBrush(zigzag ? QBrush(Qt::NoBrush) : QBrush(m_background));
  if (zigzag) return m_painter.drawPolyline(zigzagOf(axisOf(body)));
  m_painter.drawPolygon(body);
  if (dashed) dashes(body, colour, width, 5, 3);
}

void SymbolPainter::gauge(const QPolygonF& body, const QColor& colour, const QColor& fill) {
  const Axis axis = axisOf(body);
  const bool zigzag = m_symbols == Symbols::Ieee315;
  m_painter.setPen(QPen(colour, zigzag ? 1.0 : 2.4, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
  m_painter.setBrush(fill);
  m_painter.drawPolygon(body);
  if (zigzag) {
    Axis inner = axis;
    inner.half -= 3;
    m_painter.setPen(QPen(colour, 2.2, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
    m_painter.setBrush(Qt::NoBrush);
    m_painter.drawPolyline(zigzagOf(inner));
    return;
  }
  // The foil: four strands there and back.
  QPolygonF foil;
  const QPointF low = axis.begin + axis.along * 7, high = axis.end - axis.along * 7;
  for (int k = 0; k < 4; ++k) {
    const QPointF aside = axis.across * (k - 1.5) * axis.half * 0.42;
    foil << (k % 2 == 0 ? low : high) + aside << (k % 2 == 0 ? high : low) + aside;
  }
  line(foil, colour, 1.0);
}

void SymbolPainter::circle(QPointF centre, const QColor& colour) {
  m_painter.setPen(QPen(colour, symbolLine));
  m_painter.setBrush(m_background);
  m_painter.drawEllipse(centre, symbolRadius, symbolRadius);
}

void SymbolPainter::voltageSource(QPointF centre, QPointF toPlus, const QColor& colour) {
  if (m_symbols == Symbols::Iec60617) {
    circle(centre, colour);
    return line({centre - toPlus * symbolRadius, centre + toPlus * symbolRadius}, colour, symbolLine);
  }
  line({centre - toPlus * 9, centre + toPlus * 9}, m_background, 5);
  const QPointF across = acrossOf(toPlus);
  for (int k = 0; k < 4; ++k) {
    const QPointF middle = centre + toPlus * (9 - 6 * k);
    const double half = k % 2 == 0 ? 13 : 7;
    line({middle - across * half, middle + across * half}, colour, k % 2 == 0 ? symbolLine : 2.6);
  }
}

void SymbolPainter::currentSource(QPointF centre, QPointF toPlus, const QColor& colour) {
  circle(centre, colour);
  if (m_symbols == Symbols::Iec60617) {
    const QPointF across = acrossOf(toPlus) * symbolRadius;
    line({centre - across, centre + across}, colour, symbolLine);
    return arrowHead(centre + toPlus * (symbolRadius + 26), toPlus, colour, 10);
  }
  line({centre - toPlus * 9, centre + toPlus * 4}, colour, symbolLine);
  arrowHead(centre + toPlus * 10, toPlus, colour, 9);
}

void SymbolPainter::meter(QPointF centre, const QColor& colour) {
  circle(centre, colour);
  m_painter.setFont(labelFont(LabelRole::Value));
  m_painter.drawText(
      QRectF(centre - QPointF(symbolRadius, symbolRadius), QSizeF(2 * symbolRadius, 2 * symbolRadius)),
      Qt::AlignCenter, QStringLiteral("V"));
}

void SymbolPainter::structure(QPointF end, QPointF way, const QColor& colour) {
  const QPointF across = acrossOf(way);
  line({end - across * 9, end + across * 9}, colour, 2);
  for (const double place : {-7.5, 0.0, 7.5})
    line({end + across * place, end + across * (place - 4.5) + way * 7}, colour, 1.3);
}

void SymbolPainter::dot(QPointF at, const QColor& colour, double radius) {
  m_painter.setPen(Qt::NoPen);
  m_painter.setBrush(colour);
  m_painter.drawEllipse(at, radius, radius);
}

void SymbolPainter::arrowHead(QPointF tip, QPointF way, const QColor& colour, double size) {
  const QPointF across = acrossOf(way) * size * 0.45;
  m_painter.setPen(Qt::NoPen);
  m_painter.setBrush(colour);
  m_painter.drawPolygon(QPolygonF{tip, tip - way * size + across, tip - way * size - across});
}

}  // namespace ui
