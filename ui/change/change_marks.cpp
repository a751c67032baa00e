// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/change/change_marks.h"

#include <QFontMetricsF>
#include <QLocale>
#include <algorithm>
#include <cmath>

#include "ui/change/change_words.h"

namespace ui {
namespace {

constexpr double half_px = 4.5;   ///< of a mark
constexpr double ring_px = 9;     ///< radius
constexpr double bar_px = 5;      ///< thickness of the 90 % interval
constexpr double end_px = 4;      ///< half length of a whisker's end
constexpr double gap_px = 6;      ///< between labels and plot
constexpr double sample_px = 18;  ///< of a sign in the legend

QString tickText(const AxisTicks& ticks, double value) {
  const double shown = std::abs(value) < 1e-9 * ticks.step ? 0 : value;  // no "-0"
  return ticks.label(shown).replace('.', QLocale().decimalPoint());
}

void eachTick(const AxisTicks& ticks, const std::function<void(double)>& act) {
  const auto count = static_cast<int>(std::lround((ticks.high - ticks.low) / ticks.step));
  for (int k = 0; k <= count; ++k) act(ticks.low + k * ticks.step);
}

QPointF placed(const ValueAxis& axis, double across, double value) {
  return axis.upright ? QPointF(across, axis.at(value)) : QPointF(axis.at(value), across);
}

void paintSample(QPainter& painter, const MarkMeaning& meaning, const QRectF& room, const Colours& colours) {
  const QPointF middle = room.center();
  const QPointF left(room.left(), middle.y()), right(room.right(), middle.y());
  switch (meaning.kind) {
    case MarkMeaning::Kind::Margin:
      painter.setPen(QPen(colours.band, 1));
      painter.setBrush(marginFill(colours));
      painter.drawRect(room.adjusted(1, 3, -1, -3));
      return;
    case MarkMeaning::Kind::Interval:
      painter.setPen(QPen(colours.text, bar_px, Qt::SolidLine, Qt::FlatCap));
      painter.drawLine(left, right);
      return;
    case MarkMeaning::Kind::Whisker:
      painter.setPen(QPen(colours.text, 1.2));
      painter.drawLine(left, right);
      for (const QPointF& end : {left, right})
        painter.drawLine(end - QPointF(0, end_px), end + QPointF(0, end_px));
      return;
    case MarkMeaning::Kind::Centre:
      painter.setPen(QPen(colours.fitted, 1.4));
      painter.drawLine(left, right);
      return;
    case MarkMeaning::Kind::Limits:
      painter.setPen(QPen(colours.fitted, 1.4, Qt::DashLine));
      painter.drawLine(left, right);
      return;
    case MarkMeaning::Kind::Change:
      paintChangeMark(painter, middle, meaning.change, colours);
  }
}

}  // namespace

double ValueAxis::at(double value) const {
  const double share = std::clamp((value - ticks.low) / (ticks.high - ticks.low), 0.0, 1.0);
  return upright ? plot.bottom() - share * plot.height() : plot.left() + share * plot.width();
}

double labelRoom(const QFontMetricsF& metrics, const AxisTicks& ticks) {
  double widest = 0;
  eachTick(ticks, [&](double value) {
    widest = std::max(widest, metrics.horizontalAdvance(tickText(ticks, value)));
  });
  return widest + gap_px;
}

void paintValueAxis(QPainter& painter, const ValueAxis& axis, const Colours& colours) {
  const QFontMetricsF metrics(painter.font());
  const double height = metrics.height();
  eachTick(axis.ticks, [&](double value) {
    const double at = axis.at(value);
    const bool zero = std::abs(value) < 1e-9 * axis.ticks.step;
    painter.setPen(QPen(zero ? colours.quiet : colours.grid, 1));
    if (axis.upright)
      painter.drawLine(QPointF(axis.plot.left(), at), QPointF(axis.plot.right(), at));
    else
      painter.drawLine(QPointF(at, axis.plot.top()), QPointF(at, axis.plot.bottom()));
    painter.setPen(colours.text);
    const QString text = tickText(axis.ticks, value);
    const double width = metrics.horizontalAdvance(text) + 2;
    const QRectF label = axis.upright
                             ? QRectF(axis.plot.left() - gap_px - width, at - height / 2, width, height)
                             : QRectF(at - width / 2, axis.plot.bottom() + 2, width, height);
    painter.drawText(label, Qt::AlignCenter, text);
  });
}

void paintChangeMark(QPainter& painter, QPointF at, core::Change change, const Colours& colours) {
  const QColor colour = colourOf(colours, change);
  const double h = half_px;
  painter.setPen(QPen(colours.background, 1));
  painter.setBrush(colour);
  switch (change) {
    case core::Change::Unchanged:
      painter.drawEllipse(at, h, h);
      return;
    case core::Change::Harmless:
      painter.drawPolygon(QPolygonF{at + QPointF(0, -h - 1), at + QPointF(h + 1, 0), at + QPointF(0, h + 1),
                                    at + QPointF(-h - 1, 0)});
      return;
    case core::Change::Changed:
      painter.drawPolygon(
          QPolygonF{at + QPointF(0, -h - 1.5), at + QPointF(h + 1, h), at + QPointF(-h - 1, h)});
      return;
    case core::Change::CannotTell:
      painter.setPen(QPen(colour, 2));
      painter.setBrush(colours.background);
      painter.drawRect(QRectF(at - QPointF(h, h), QSizeF(2 * h, 2 * h)));
      return;
    case core::Change::NotCompared:
      painter.setPen(QPen(colour, 2));
      painter.drawLine(at - QPointF(h, 0), at + QPointF(h, 0));
  }
}

void paintIntervals(QPainter& painter, const ValueAxis& axis, double across,
                    const core::Difference& difference, double factor, const Colours& colours) {
  const double value = factor * difference.value;
  const QPointF aside = axis.upright ? QPointF(end_px, 0) : QPointF(0, end_px);
  const auto inside = [&](double v) { return v >= axis.ticks.low && v <= axis.ticks.high; };
  if (difference.halfWidth95) {
    const double half = factor * *difference.halfWidth95;
    painter.setPen(QPen(colours.text, 1.2));
    painter.drawLine(placed(axis, across, value - half), placed(axis, across, value + half));
    for (const double end : {value - half, value + half}) {
      const QPointF at = placed(axis, across, end);
      if (inside(end)) painter.drawLine(at - aside, at + aside);  // one cut off at the edge has no end
    }
  }
  if (!difference.halfWidth90) return;
  const double half = factor * *difference.halfWidth90;
  QColor colour = colourOf(colours, difference.change);
  colour.setAlphaF(0.75F);
  painter.setPen(QPen(colour, bar_px, Qt::SolidLine, Qt::FlatCap));
  painter.drawLine(placed(axis, across, value - half), placed(axis, across, value + half));
}

void paintRing(QPainter& painter, QPointF at, const Colours& colours) {
  painter.setPen(QPen(colours.selected, 2.4));
  painter.setBrush(Qt::NoBrush);
  painter.drawEllipse(at, ring_px, ring_px);
}

double paintMeanings(QPainter* painter, const QRectF& room, const QFont& font,
                     const QList<MarkMeaning>& meanings, const Colours& colours) {
  const QFontMetricsF metrics(font);
  const double line = metrics.height() + 2;
  QPointF at = room.topLeft();
  for (const MarkMeaning& meaning : meanings) {
    const double width = sample_px + 4 + metrics.horizontalAdvance(meaning.text) + 12;
    if (at.x() > room.left() && at.x() + width - 12 > room.right()) at = QPointF(room.left(), at.y() + line);
    if (painter) {
      painter->setFont(font);
      const double sample = meaning.kind == MarkMeaning::Kind::Change ? 12 : sample_px;
      paintSample(*painter, meaning, QRectF(at, QSizeF(sample, line)), colours);
      painter->setPen(colours.text);
      painter->drawText(QRectF(at.x() + sample + 4, at.y(), width, line), Qt::AlignLeft | Qt::AlignVCenter,
                        meaning.text);
    }
    at.rx() += width - (meaning.kind == MarkMeaning::Kind::Change ? sample_px - 12 : 0);
  }
  return at.y() + line - room.top();
}

QColor marginFill(const Colours& colours) {
  QColor fill = colours.band;
  fill.setAlphaF(colours.dark ? 0.3F : 0.2F);
  return fill;
}

}  // namespace ui
