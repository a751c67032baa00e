// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/outcome/plot_legend.h"

#include <QFontMetricsF>
#include <QPainter>

namespace ui {
namespace {

constexpr double mark_px = 18, gap_px = 5, between_px = 14;

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
    case LegendMark::Area:
      painter.drawRect(QRectF(middle - QPointF(7, 5), QSizeF(14, 10)));
      return;
  }
}

}  // namespace

void PlotLegend::setEntries(QList<LegendEntry> entries) {
  prepareGeometryChange();
  m_entries = std::move(entries);
}

void PlotLegend::setLook(const QFont& font, const QColor& text) {
  prepareGeometryChange();
  m_font = font;
  m_text = text;
}

double PlotLegend::wantedWidth() const {
  const QFontMetricsF metrics(m_font);
  double width = 0;
  for (const LegendEntry& entry : m_entries)
    width += mark_px + gap_px + metrics.horizontalAdvance(entry.text) + between_px;
  return width;
}

QRectF PlotLegend::boundingRect() const { return {0, 0, wantedWidth(), QFontMetricsF(m_font).height() + 2}; }

void PlotLegend::paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*) {
  const QFontMetricsF metrics(m_font);
  painter->setRenderHint(QPainter::Antialiasing);
  painter->setFont(m_font);
  double x = 0;
  for (const LegendEntry& entry : m_entries) {
    drawMark(*painter, entry, {x + mark_px / 2, metrics.height() / 2});
    painter->setPen(m_text);
    painter->drawText(QPointF(x + mark_px + gap_px, metrics.ascent()), entry.text);
    x += mark_px + gap_px + metrics.horizontalAdvance(entry.text) + between_px;
  }
}

}  // namespace ui
