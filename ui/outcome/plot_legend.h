// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>
#include <QFont>
#include <QGraphicsItem>
#include <QList>
#include <QString>

namespace ui {

enum class LegendMark { Line, DashedLine, Circle, Diamond, HollowSquare, Triangle, Area };

struct LegendEntry {
  LegendMark mark = LegendMark::Line;
  QColor colour;
  QString text;
};

/// A row of marks with their meaning. QLegend would show one mark a bar, and takes rows of its own.
class PlotLegend : public QGraphicsItem {
 public:
  explicit PlotLegend(QGraphicsItem* parent) : QGraphicsItem(parent) {}

  void setEntries(QList<LegendEntry> entries);
  const QList<LegendEntry>& entries() const { return m_entries; }
  void setLook(const QFont& font, const QColor& text);
  double wantedWidth() const;

  QRectF boundingRect() const override;
  void paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*) override;

 private:
  QList<LegendEntry> m_entries;
  QFont m_font;
  QColor m_text;
};

}  // namespace ui
