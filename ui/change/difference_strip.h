// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QWidget>
#include <optional>

#include "ui/access/twin.h"
#include "ui/change/change_marks.h"

namespace ui {

/// One step on the strip.
struct StripStep {
  std::size_t step = 0;
  std::optional<core::Difference> moved;  ///< none: not compared
  QString text;                           ///< all of it in words
};

/// How each step changed from one check to another: a mark a step with its intervals over its margin. A step
/// is unchanged when its bar, the interval of probability 0.90, lies inside the band. Steps can be clicked or
/// walked with the arrow keys; the chosen one wears a ring.
class DifferenceStrip : public QWidget, public Twin {
  Q_OBJECT

 public:
  explicit DifferenceStrip(QWidget* parent = nullptr);

  /// `unit` is that of the readings.
  void showSteps(QList<StripStep> steps, const QString& unit, std::optional<std::size_t> chosen);
  const QList<StripStep>& steps() const { return m_steps; }
  TwinTable twin() const override;

  /// Where the mark of the row-th step is on the widget.
  QPointF markAt(qsizetype row) const;
  std::optional<std::size_t> stepAt(QPointF position) const;
  /// Without the ring around the chosen step, which is nobody's business on paper.
  void paintInto(QPainter& painter, const QRectF& target, const Colours& colours) const;

  QSize sizeHint() const override { return {420, 210}; }
  QSize minimumSizeHint() const override { return {160, 150}; }

 signals:
  void stepClicked(std::size_t step);
  void stepWalked(int direction);  ///< -1 the step before, +1 the step after

 protected:
  void paintEvent(QPaintEvent*) override;
  void mousePressEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  bool event(QEvent* event) override;

 private:
  ValueAxis axisIn(const QRectF& room) const;
  double slotOf(const ValueAxis& axis) const;
  double acrossOf(const ValueAxis& axis, qsizetype row) const;
  QList<MarkMeaning> meanings() const;
  Extent extent() const;
  void paint(QPainter& painter, const QRectF& room, const Colours& colours,
             std::optional<std::size_t> chosen) const;
  void paintStep(QPainter& painter, const ValueAxis& axis, qsizetype row, const Colours& colours) const;
  void paintNumbers(QPainter& painter, const ValueAxis& axis, const Colours& colours) const;

  QList<StripStep> m_steps;
  QString m_unit;
  std::optional<std::size_t> m_chosen;
};

}  // namespace ui
