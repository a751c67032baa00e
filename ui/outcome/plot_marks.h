// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>
#include <QGraphicsItem>
#include <QList>
#include <QPointF>
#include <QString>
#include <optional>

class QChart;

namespace ui {

/// An area between two edges, in the axes' values, x rising.
struct PlotBand {
  QString name;
  QList<QPointF> upper, lower;
  QColor fill, edge;
  Qt::PenStyle edgeStyle = Qt::SolidLine;
};

/// How far a value may be wrong either way.
struct PlotWhisker {
  QPointF at;
  double half = 0;  ///< at.y() plus and minus that
};

/// A path with its direction: rising solid with filled heads, falling dashed with heads of two lines.
struct PlotStroke {
  QList<QPointF> points;
  bool falling = false;
};

/// What charts have no series for. All is cut at the axes by itself: not every picture format can clip.
class PlotMarks : public QGraphicsItem {
 public:
  explicit PlotMarks(QChart* chart);

  void setBands(QList<PlotBand> bands);
  void setWhiskers(QList<PlotWhisker> whiskers);
  void setStrokes(QList<PlotStroke> strokes);
  /// Lines through `at` across the whole plot.
  void setCross(std::optional<QPointF> at);
  void setColours(const QColor& whiskers, const QColor& strokes, const QColor& cross);
  const QList<PlotBand>& bands() const { return m_bands; }
  const QList<PlotWhisker>& whiskers() const { return m_whiskers; }
  const QList<PlotStroke>& strokes() const { return m_strokes; }
  const std::optional<QPointF>& cross() const { return m_cross; }
  /// Where a band or a whisker is cut off by the upper (`up`) or lower edge of the plot, on that edge, in
  /// pixels: each wears a mark there, so that nobody takes the cut for the end.
  struct CutOff {
    QPointF at;
    bool up = false;
    QColor colour;
  };
  QList<CutOff> cutOffs() const;

  QRectF boundingRect() const override;
  void paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*) override;

 private:
  void addCutOffs(QList<CutOff>& found, const QPolygonF& edge, bool up, const QColor& colour) const;
  QPolygonF placed(const QList<QPointF>& values) const;
  void paintBand(QPainter& painter, const PlotBand& band) const;
  void paintWhisker(QPainter& painter, const PlotWhisker& whisker) const;
  void paintStroke(QPainter& painter, const PlotStroke& stroke) const;
  void paintCross(QPainter& painter) const;

  QChart* m_chart;
  QList<PlotBand> m_bands;
  QList<PlotWhisker> m_whiskers;
  QList<PlotStroke> m_strokes;
  std::optional<QPointF> m_cross;
  QColor m_whiskerColour, m_strokeColour, m_crossColour;
};

/// A head with its tip at `tip` that points along the unit vector `along`; pen and brush are the painter's.
void paintArrowHead(QPainter& painter, QPointF tip, QPointF along, bool open);

/// Two small angles inside of the edge of a plot that point beyond it.
void paintCutOff(QPainter& painter, QPointF at, bool up);

/// The part of the line between two points that lies between `low` and `high`; absent when none does.
std::optional<QLineF> cutToHeight(const QLineF& line, double low, double high);

}  // namespace ui
