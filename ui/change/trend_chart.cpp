// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/change/trend_chart.h"

#include <QHelpEvent>
#include <QMouseEvent>
#include <QToolTip>
#include <algorithm>
#include <chrono>
#include <cmath>

#include "ui/quantity_edit.h"

namespace ui {
namespace {

constexpr double margin_px = 4;
constexpr double tickSpace_px = 34;
constexpr double reach_px = 12;  ///< of a click
constexpr double endRoom_px = 24;
constexpr double coverage = 2;  ///< error bars, in standard uncertainties

core::Change shapeOf(const TrendMark& mark) {
  return mark.beyond ? core::Change::Changed : core::Change::Unchanged;
}

}  // namespace

TrendChart::TrendChart(const QString& objectName, QWidget* parent) : QWidget(parent) {
  setObjectName(objectName);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
}

void TrendChart::showTrend(const QString& title, QList<TrendMark> marks,
                           std::optional<core::ControlLimits> limits) {
  m_title = title;
  m_marks = std::move(marks);
  m_limits = limits;
  setAccessibleName(title);
  QStringList words;
  for (const TrendMark& mark : m_marks) words << mark.text;
  setAccessibleDescription(words.join(' '));
  update();
}

/// By the days when each check has one of its own, else one beside the other: shares of the width.
QList<double> TrendChart::places() const {
  QList<double> shares;
  const auto dayOf = [](const TrendMark& mark) {
    return static_cast<double>(std::chrono::sys_days(*mark.day).time_since_epoch().count());
  };
  bool byDay = m_marks.size() > 1;
  for (qsizetype k = 0; k < m_marks.size() && byDay; ++k)
    byDay = m_marks[k].day && (k == 0 || dayOf(m_marks[k]) > dayOf(m_marks[k - 1]));
  const auto last = static_cast<double>(std::max<qsizetype>(1, m_marks.size() - 1));
  for (qsizetype k = 0; k < m_marks.size(); ++k)
    shares.append(byDay ? (dayOf(m_marks[k]) - dayOf(m_marks.first())) /
                              (dayOf(m_marks.last()) - dayOf(m_marks.first()))
                        : static_cast<double>(k) / last);
  return shares;
}

QList<MarkMeaning> TrendChart::meanings() const {
  QList<MarkMeaning> found;
  const auto any = [&](const auto& is) { return std::any_of(m_marks.begin(), m_marks.end(), is); };
  if (any([](const TrendMark& mark) { return !mark.beyond; }))
    found.append({MarkMeaning::Kind::Change, tr("check"), core::Change::Unchanged});
  if (any([](const TrendMark& mark) { return mark.beyond; }))
    found.append({MarkMeaning::Kind::Change, tr("beyond limits"), core::Change::Changed});
  if (any([](const TrendMark& mark) { return mark.standard.has_value(); }))
    found.append({MarkMeaning::Kind::Whisker, tr("± 2 u"), {}});
  if (m_limits) {
    found.append({MarkMeaning::Kind::Centre, tr("centre"), {}});
    found.append({MarkMeaning::Kind::Limits, tr("control limits"), {}});
  }
  return found;
}

ValueAxis TrendChart::axisIn(const QRectF& room) const {
  const QFontMetricsF metrics(font());
  const double legend =
      paintMeanings(nullptr, room.adjusted(margin_px, 0, -margin_px, 0), font(), meanings(), {});
  const double top = room.top() + metrics.height() + legend + 8;
  const double bottom = std::max(top + 10, room.bottom() - metrics.height() - 6);
  Extent extent;
  for (const TrendMark& mark : m_marks)
    for (const double side : {-1.0, 1.0})
      extent.add(mark.value + side * coverage * mark.standard.value_or(0));
  if (m_limits)
    for (const double limit : {m_limits->lower, m_limits->upper}) extent.add(limit);
  const AxisTicks ticks =
      niceTicks(extent, std::max(2, static_cast<int>((bottom - top) / tickSpace_px)), 0.04);
  const double left = room.left() + margin_px + labelRoom(metrics, ticks);
  return {QRectF(QPointF(left, top), QPointF(room.right() - margin_px, bottom)), ticks};
}

QPointF TrendChart::placeOf(const ValueAxis& axis, const QList<double>& shares, qsizetype row) const {
  const double width = std::max(1.0, axis.plot.width() - 2 * endRoom_px);
  return {axis.plot.left() + endRoom_px + shares[row] * width, axis.at(m_marks[row].value)};
}

QPointF TrendChart::markAt(qsizetype row) const { return placeOf(axisIn(rect()), places(), row); }

void TrendChart::paintLimits(QPainter& painter, const ValueAxis& axis, const Colours& colours) const {
  if (!m_limits) return;
  const auto line = [&](double value, Qt::PenStyle style) {
    painter.setPen(QPen(colours.fitted, 1.4, style));
    painter.drawLine(QPointF(axis.plot.left(), axis.at(value)), QPointF(axis.plot.right(), axis.at(value)));
  };
  line(m_limits->centre, Qt::SolidLine);
  line(m_limits->lower, Qt::DashLine);
  line(m_limits->upper, Qt::DashLine);
}

void TrendChart::paintMark(QPainter& painter, const ValueAxis& axis, QPointF at, const TrendMark& mark,
                           const Colours& colours) const {
  core::Difference bars;
  bars.value = mark.value;
  if (mark.standard) bars.halfWidth95 = coverage * *mark.standard;
  paintIntervals(painter, axis, at.x(), bars, 1, colours);
  paintChangeMark(painter, at, shapeOf(mark), colours);
  if (mark.compared) paintRing(painter, at, colours);
  if (!mark.beyond) return;
  const QFontMetricsF metrics(painter.font());
  const QString word = tr("beyond");
  const double width = metrics.horizontalAdvance(word) + 2;
  const bool left = at.x() + 12 + width > axis.plot.right();
  painter.setPen(colours.fail);
  painter.drawText(QRectF(left ? at.x() - 12 - width : at.x() + 12, at.y() - metrics.height() / 2, width,
                          metrics.height()),
                   Qt::AlignCenter, word);
}

/// As many days as have room, the first and the last before all others.
void TrendChart::paintDays(QPainter& painter, const ValueAxis& axis, const Colours& colours) const {
  const QFontMetricsF metrics(painter.font());
  const QList<double> shares = places();
  QList<qsizetype> order{m_marks.size() - 1};
  for (qsizetype k = 0; k + 1 < m_marks.size(); ++k) order.append(k);
  QList<QRectF> taken;
  painter.setPen(colours.text);
  for (const qsizetype k : order) {
    const QString& day = m_marks[k].dayText.isEmpty() ? m_marks[k].name : m_marks[k].dayText;
    const QString text = metrics.elidedText(day, Qt::ElideRight, 90);
    const double width = metrics.horizontalAdvance(text) + 8;
    const double middle = placeOf(axis, shares, k).x();
    const double left = std::clamp(middle - width / 2, axis.plot.left() - endRoom_px,
                                   std::max(axis.plot.left() - endRoom_px, axis.plot.right() - width));
    const QRectF label(left, axis.plot.bottom() + 2, width, metrics.height());
    if (std::any_of(taken.begin(), taken.end(), [&](const QRectF& one) { return one.intersects(label); }))
      continue;
    painter.drawText(label, Qt::AlignCenter, text);
    taken.append(label);
  }
}

void TrendChart::paintInto(QPainter& painter, const QRectF& room, const Colours& colours) const {
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setFont(font());
  painter.fillRect(room, colours.background);
  if (m_marks.isEmpty()) return;
  const ValueAxis axis = axisIn(room);
  const double line = QFontMetricsF(font()).height();
  painter.setPen(colours.text);
  painter.drawText(QRectF(room.left() + margin_px, room.top() + 1, room.width() - 2 * margin_px, line),
                   Qt::AlignLeft | Qt::AlignVCenter,
                   QFontMetricsF(font()).elidedText(m_title, Qt::ElideRight, room.width() - 2 * margin_px));
  paintMeanings(&painter, room.adjusted(margin_px, line + 2, -margin_px, 0), font(), meanings(), colours);
  paintValueAxis(painter, axis, colours);
  paintLimits(painter, axis, colours);
  paintDays(painter, axis, colours);
  const QList<double> shares = places();
  painter.setPen(QPen(colours.quiet, 1));
  for (qsizetype k = 1; k < m_marks.size(); ++k)
    painter.drawLine(placeOf(axis, shares, k - 1), placeOf(axis, shares, k));
  for (qsizetype k = 0; k < m_marks.size(); ++k)
    paintMark(painter, axis, placeOf(axis, shares, k), m_marks[k], colours);
}

void TrendChart::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  paintInto(painter, rect(), coloursFor(palette()));
}

std::optional<qsizetype> TrendChart::rowAt(QPointF position) const {
  std::optional<qsizetype> nearest;
  double least = reach_px;
  const ValueAxis axis = axisIn(rect());
  const QList<double> shares = places();
  for (qsizetype k = 0; k < m_marks.size(); ++k) {
    const QPointF off = placeOf(axis, shares, k) - position;
    const double distance = std::hypot(off.x(), off.y());
    if (distance <= least) least = distance, nearest = k;
  }
  return nearest;
}

void TrendChart::mousePressEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton) return QWidget::mousePressEvent(event);
  if (const auto row = rowAt(event->position())) emit checkClicked(m_marks[*row].check);
}

bool TrendChart::event(QEvent* event) {
  if (event->type() != QEvent::ToolTip) return QWidget::event(event);
  const auto* help = static_cast<QHelpEvent*>(event);
  if (const auto row = rowAt(help->pos()))
    QToolTip::showText(help->globalPos(), "<span>" + m_marks[*row].text.toHtmlEscaped() + "</span>", this);
  else
    QToolTip::hideText();
  return true;
}

TwinTable TrendChart::twin() const {
  TwinTable table{{tr("Check"), tr("Day"), m_title, tr("In words")}, {}};
  for (const TrendMark& mark : m_marks)
    table.rows << QStringList{mark.name, mark.dayText, numberText(mark.value, 6), mark.text};
  return table;
}

}  // namespace ui
