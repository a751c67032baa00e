// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QString>
#include <QtCharts/QChartView>

#include "ui/access/twin.h"
#include "ui/outcome/axis_ticks.h"
#include "ui/theme.h"

class QAbstractSeries;
class QGraphicsSimpleTextItem;
class QValueAxis;

namespace ui {

class PlotLegend;
class PlotMarks;
struct LegendEntry;

/// Foreign text for places that read HTML (titles, series names, tooltips): shown exactly as typed.
QString shownAsTyped(const QString& text);

/// A place that answers to the pointer.
struct PlotHit {
  std::size_t step = 0;
  QPointF at;  ///< in the axes' values
  QString text;
  QString readout = {};  ///< its numbers in one line
};

/// Two axes with titles, the palette's colours, steps that can be clicked or walked with the arrow keys.
/// Series are made once by the derived plots and filled again on each change. The title of the upright
/// axis lies above the axis, where it is read without turning the head and never cut to a stub.
class PlotFrame : public QChartView, public Twin {
  Q_OBJECT

 public:
  explicit PlotFrame(QWidget* parent = nullptr);

  /// Plain text; `title` may be empty.
  void setTitles(const QString& title, const QString& x, const QString& y);
  QString title() const { return m_title; }
  /// What the title of the upright axis means, for the pointer over it.
  void setTitleTip(const QString& tip) { m_titleTip = tip; }
  const QString& titleTip() const { return m_titleTip; }
  void setTicks(const AxisTicks& x, const AxisTicks& y);
  /// How many intervals of an upright axis have room for their labels.
  int uprightIntervals() const;
  QValueAxis* xAxis() const { return m_x; }
  QValueAxis* yAxis() const { return m_y; }
  TwinTable twin() const override;

  const QList<LegendEntry>& legendEntries() const;
  int legendRows() const;
  /// Room for so many rows even when there are fewer: plots side by side share the greatest.
  void keepLegendRows(int rows);
  const PlotMarks& marksBehind() const { return *m_behind; }    ///< behind the series: bands
  const PlotMarks& marksInFront() const { return *m_inFront; }  ///< over the series

  /// Pixels left of the plot area that the labels need; plots below each other share the greatest. Only
  /// known while the plot is visible: a hidden one does not lay itself out.
  int neededLeft() const;
  /// Adds to the left what the labels do not need of `left`, at most a third of the width.
  void setLeft(int left);

  /// Draws the whole plot with its corner at `corner`, as it is on the screen but at any resolution.
  void grabInto(QPainter& painter, QPoint corner);
  /// The same into `target`, in shapes and letters where the painter's device takes these.
  void paintInto(QPainter& painter, const QRectF& target);

  /// The hit under `position`, none when nothing is near; at equal places the one after `current`.
  std::optional<std::size_t> stepAt(QPointF position, std::optional<std::size_t> current) const;
  void setCurrentStep(std::optional<std::size_t> step);

  QSize sizeHint() const override { return {420, 200}; }
  QSize minimumSizeHint() const override { return {140, 84}; }

 signals:
  /// The pointer is at a mark, whose numbers these are; empty: at none.
  void pointed(const QString& readout);
  void stepClicked(std::size_t step);
  void heightChanged();            ///< another number of intervals may have room
  void stepWalked(int direction);  ///< -1 the step before, +1 the step after

 protected:
  void setHits(QList<PlotHit> hits);
  PlotMarks& behind() { return *m_behind; }
  PlotMarks& inFront() { return *m_inFront; }
  /// Shown right of the upright axis's title, and below it where the plot is high enough.
  void setLegend(QList<LegendEntry> entries);
  /// Adds a series that lives as long as the chart.
  void addPlotSeries(QAbstractSeries* series);
  virtual void applyColours(const Colours& colours);
  /// Called when the plot area has another place or size in pixels.
  virtual void arrange() {}

  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;
  bool viewportEvent(QEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  TwinTable lineTable() const;
  void placeCaptions();
  void point(const PlotHit* hit);
  void placeCross();
  const PlotHit* hitAt(QPointF position, std::optional<std::size_t> current) const;

  QValueAxis* m_x;
  QValueAxis* m_y;
  QGraphicsSimpleTextItem* m_titleItem;
  QGraphicsSimpleTextItem* m_yTitleItem;
  PlotLegend* m_legend;
  PlotMarks* m_behind;
  PlotMarks* m_inFront;
  std::optional<QPointF> m_pointedAt;  ///< mark under the pointer
  QString m_title, m_yTitle, m_titleTip;
  int m_keptRows = 1;  ///< of the legend
  std::optional<std::size_t> m_current;
  QList<PlotHit> m_hits;
};

}  // namespace ui
