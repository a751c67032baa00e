// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QWidget>
#include <optional>

#include "core/compare/trend.h"
#include "ui/access/twin.h"
#include "ui/change/change_marks.h"

namespace ui {

/// One check on the way through time.
struct TrendMark {
  std::size_t check = 0;
  std::optional<core::Date> day;
  double value = 0;
  std::optional<double> standard;
  bool beyond = false;    ///< outside of the control limits
  bool compared = false;  ///< one of the pair that is on view
  QString name, dayText;
  QString text;  ///< all of it in words
};

/// A figure of all checks over their days (evenly spaced unless each has a day of its own) with centre and
/// control limits. Points outside of these are triangles with a word beside them; error bars are twice the
/// standard uncertainty.
class TrendChart : public QWidget, public Twin {
  Q_OBJECT

 public:
  explicit TrendChart(const QString& objectName, QWidget* parent = nullptr);

  void showTrend(const QString& title, QList<TrendMark> marks, std::optional<core::ControlLimits> limits);
  const QList<TrendMark>& marks() const { return m_marks; }
  TwinTable twin() const override;
  QPointF markAt(qsizetype row) const;
  void paintInto(QPainter& painter, const QRectF& room, const Colours& colours) const;

  QSize sizeHint() const override { return {380, 190}; }
  QSize minimumSizeHint() const override { return {160, 150}; }

 signals:
  void checkClicked(std::size_t check);

 protected:
  void paintEvent(QPaintEvent*) override;
  void mousePressEvent(QMouseEvent* event) override;
  bool event(QEvent* event) override;

 private:
  ValueAxis axisIn(const QRectF& room) const;
  QList<double> places() const;
  QPointF placeOf(const ValueAxis& axis, const QList<double>& shares, qsizetype row) const;
  QList<MarkMeaning> meanings() const;
  void paintLimits(QPainter& painter, const ValueAxis& axis, const Colours& colours) const;
  void paintMark(QPainter& painter, const ValueAxis& axis, QPointF at, const TrendMark& mark,
                 const Colours& colours) const;
  void paintDays(QPainter& painter, const ValueAxis& axis, const Colours& colours) const;
  std::optional<qsizetype> rowAt(QPointF position) const;

  QString m_title;
  QList<TrendMark> m_marks;
  std::optional<core::ControlLimits> m_limits;
};

}  // namespace ui
