// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>
#include <QFont>
#include <QGraphicsItem>
#include <QList>
#include <QString>

namespace ui {

enum class LegendMark {
  Line,
  DashedLine,
  Circle,
  Diamond,
  HollowSquare,
  Triangle,
  Area,
  Whisker,
  RisingStroke,
  FallingStroke,
  CutOff
};

struct LegendEntry {
  LegendMark mark = LegendMark::Line;
  QColor colour;
  QString text;
};

/// Rows of marks with their meaning. QLegend would show one mark a bar. The first row has what room the title
/// leaves of it, and entries that find no room in the last row are left out.
class PlotLegend : public QGraphicsItem {
 public:
  explicit PlotLegend(QGraphicsItem* parent) : QGraphicsItem(parent) {}

  void setEntries(QList<LegendEntry> entries);
  const QList<LegendEntry>& entries() const { return m_entries; }
  void setLook(const QFont& font, const QColor& text);
  /// Widths of the first and of all further rows, and how many there may be at most.
  void setRoom(double first, double further, int rows);
  int rowCount() const { return static_cast<int>(m_rows.size()); }
  double rowHeight() const;

  QRectF boundingRect() const override;
  void paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*) override;

 private:
  void arrange();
  double widthOf(const LegendEntry& entry) const;

  QList<LegendEntry> m_entries;
  QList<QList<LegendEntry>> m_rows;  ///< as shown; the first may be empty
  double m_first = 0, m_further = 0;
  int m_most = 1;
  QFont m_font;
  QColor m_text;
};

}  // namespace ui
