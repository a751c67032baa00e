// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/outcome/plot_legend.h"

#include <QFontInfo>
#include <QFontMetricsF>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "ui/outcome/plot_marks.h"

namespace ui {
namespace {

constexpr double mark_px = 18, gap_px = 5, between_px = 14;

/// As PlotMarks draws it: rising solid with a filled head, falling dashed with an open one.
void drawStroke(QPainter& painter, const LegendEntry& entry, QPointF middle) {
  const bool falling = entry.mark == LegendMark::FallingStroke;
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(entry.colour, 1.3, falling ? Qt::DashLine : Qt::SolidLine));
  const double up = falling ? -1 : 1;
  const QPointF from = middle + QPointF(-8, 4 * up), to = middle + QPointF(8, -4 * up);
  painter.drawLine(from, to);
  painter.setPen(QPen(entry.colour, 1.3));
  if (!falling) painter.setBrush(entry.colour);
  const QPointF way = to - from;
  paintArrowHead(painter, to, way / std::hypot(way.x(), way.y()), falling);
}

void drawMark(QPainter& painter, const LegendEntry& entry, QPointF middle) {
  const auto line = [&](Qt::PenStyle style) {
    painter.setPen(QPen(entry.colour, 1.8, style));
    painter.drawLine(middle - QPointF(8, 0), middle + QPointF(8, 0));
  };
  painter.setPen(Qt::NoPen);
  painter.setBrush(entry.colour);
  switch (entry.mark) {
    case LegendMark::Line:
      return line(Qt::SolidLine);
    case LegendMark::DashedLine:
      return line(Qt::DashLine);
    case LegendMark::Circle:
      painter.drawEllipse(middle, 4.5, 4.5);
      return;
    case LegendMark::Diamond:
      painter.drawPolygon(QPolygonF({middle + QPointF(0, -5.5), middle + QPointF(5.5, 0),
                                     middle + QPointF(0, 5.5), middle + QPointF(-5.5, 0)}));
      return;
    case LegendMark::HollowSquare:
      painter.setPen(QPen(entry.colour, 2));
      painter.setBrush(Qt::NoBrush);
      painter.drawRect(QRectF(middle - QPointF(4.5, 4.5), QSizeF(9, 9)));
      return;
    case LegendMark::Triangle:
      painter.drawPolygon(
          QPolygonF({middle + QPointF(0, -5.5), middle + QPointF(5.5, 5), middle + QPointF(-5.5, 5)}));
      return;
    case LegendMark::Whisker:
      painter.setPen(QPen(entry.colour, 1.2));
      painter.drawLine(middle - QPointF(0, 5), middle + QPointF(0, 5));
      for (const double end : {-5.0, 5.0})
        painter.drawLine(middle + QPointF(-3, end), middle + QPointF(3, end));
      return;
    case LegendMark::RisingStroke:
    case LegendMark::FallingStroke:
      return drawStroke(painter, entry, middle);
    case LegendMark::CutOff:
      painter.setPen(QPen(entry.colour, 1.4));
      painter.setBrush(Qt::NoBrush);
      return paintCutOff(painter, middle - QPointF(0, 6), true);
    case LegendMark::Area:
      painter.drawRect(QRectF(middle - QPointF(7, 5), QSizeF(14, 10)));
      return;
  }
}

}  // namespace

void PlotLegend::setEntries(QList<LegendEntry> entries) {
  m_entries = std::move(entries);
  arrange();
}

void PlotLegend::setLook(const QFont& font, const QColor& text) {
  m_font = font;
  // In pixels of the plot: on paper a size in points would be that of the paper, however the plot is scaled.
  m_font.setPixelSize(QFontInfo(font).pixelSize());
  m_text = text;
  arrange();
}

void PlotLegend::setRoom(double first, double further, int rows) {
  m_first = first, m_further = further, m_most = rows;
  arrange();
}

double PlotLegend::widthOf(const LegendEntry& entry) const {
  return mark_px + gap_px + QFontMetricsF(m_font).horizontalAdvance(entry.text) + between_px;
}

double PlotLegend::rowHeight() const { return QFontMetricsF(m_font).height() + 2; }

void PlotLegend::arrange() {
  prepareGeometryChange();
  m_rows = {{}};
  double left = m_first;
  for (const LegendEntry& entry : m_entries) {
    const double width = widthOf(entry);
    if (width > left) {
      if (rowCount() == m_most || width > m_further) continue;
      m_rows.append(QList<LegendEntry>());
      left = m_further;
    }
    m_rows.last().append(entry);
    left -= width;
  }
  update();
}

QRectF PlotLegend::boundingRect() const {
  return {0, 0, std::max(m_first, m_further), rowCount() * rowHeight()};
}

/// Rows end at the right, clear of the title.
void PlotLegend::paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*) {
  const QFontMetricsF metrics(m_font);
  painter->setRenderHint(QPainter::Antialiasing);
  painter->setFont(m_font);
  double y = 0;
  for (const QList<LegendEntry>& row : m_rows) {
    double x = boundingRect().right();
    for (const LegendEntry& entry : row) x -= widthOf(entry);
    for (const LegendEntry& entry : row) {
      drawMark(*painter, entry, {x + mark_px / 2, y + metrics.height() / 2});
      painter->setPen(m_text);
      painter->drawText(QPointF(x + mark_px + gap_px, y + metrics.ascent()), entry.text);
      x += widthOf(entry);
    }
    y += rowHeight();
  }
}

}  // namespace ui
