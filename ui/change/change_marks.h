// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPainter>
#include <QString>

#include "core/compare/difference.h"
#include "ui/outcome/axis_ticks.h"
#include "ui/theme.h"

// What the pictures of a change share: marks, intervals, axes. All draws within any painter, so that a
// picture that leaves the window is drawn by the same hand.

namespace ui {

/// A value axis along one side of `plot`.
struct ValueAxis {
  QRectF plot;
  AxisTicks ticks;
  bool upright = true;

  /// The place of `value` on the axis, kept within the plot.
  double at(double value) const;
};

/// Tick labels in the user's notation beside (upright) or below the plot, and grid lines through it.
void paintValueAxis(QPainter& painter, const ValueAxis& axis, const Colours& colours);
/// Room that the labels of an upright axis need.
double labelRoom(const QFontMetricsF& metrics, const AxisTicks& ticks);

/// The mark of a change, its middle at `at`: filled circle, diamond, triangle, hollow square, dash.
void paintChangeMark(QPainter& painter, QPointF at, core::Change change, const Colours& colours);
/// The interval of probability 0.90 as a bar, that of 0.95 as a whisker with ends, across `at` of the other
/// axis.
void paintIntervals(QPainter& painter, const ValueAxis& axis, double across,
                    const core::Difference& difference, double factor, const Colours& colours);
void paintRing(QPainter& painter, QPointF at, const Colours& colours);

/// One of what a picture's signs mean.
struct MarkMeaning {
  enum class Kind { Margin, Interval, Whisker, Change, Centre, Limits } kind;
  QString text;
  core::Change change = core::Change::NotCompared;
};
/// All of `meanings` from the left in rows of `room`'s width; draws nothing without a painter. Returns the
/// height.
double paintMeanings(QPainter* painter, const QRectF& room, const QFont& font,
                     const QList<MarkMeaning>& meanings, const Colours& colours);

QColor marginFill(const Colours& colours);

}  // namespace ui
