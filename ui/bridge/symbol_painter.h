// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPainter>
#include <QPolygonF>

#include "ui/bridge/bridge_picture.h"

namespace ui {

/// Draws the symbols of a circuit by one standard. IEC 60617: resistors are rectangles, an ideal source a
/// circle with its wire going on (voltage) or a bar across it (current). IEEE 315: resistors are zigzags, a
/// voltage source is a battery whose longer plates are on the plus side, a current source a circle with an
/// arrow. Both from memory of the standards.
class SymbolPainter {
 public:
  SymbolPainter(QPainter& painter, Symbols symbols, const QColor& background)
      : m_painter(painter), m_symbols(symbols), m_background(background) {}

  void line(const QPolygonF& route, const QColor& colour, double width);
  /// Drawn one by one: a dashed pen takes several times as long.
  void dashes(const QPolygonF& route, const QColor& colour, double width, double dash, double gap);
  /// `body` as turnedBody gives it; it covers the wire.
  void resistor(const QPolygonF& body, const QColor& colour, double width, bool dashed = false);
  /// A resistor on a carrier, with its grid.
  void gauge(const QPolygonF& body, const QColor& colour, const QColor& fill);
  void voltageSource(QPointF centre, QPointF toPlus, const QColor& colour);
  void currentSource(QPointF centre, QPointF toPlus, const QColor& colour);
  void meter(QPointF centre, const QColor& colour);
  /// The structure: a bar with three slanted strokes, on the end of a wire that runs along `way`.
  void structure(QPointF end, QPointF way, const QColor& colour);
  void dot(QPointF at, const QColor& colour, double radius = 3.2);
  /// A filled head with its tip at `tip`, pointing along the unit vector `way`.
  void arrowHead(QPointF tip, QPointF way, const QColor& colour, double size);

 private:
  void cover(const QPolygonF& body, double margin);
  void circle(QPointF centre, const QColor& colour);

  QPainter& m_painter;
  Symbols m_symbols;
  QColor m_background;
};

}  // namespace ui
