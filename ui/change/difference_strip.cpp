// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/change/difference_strip.h"

#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QToolTip>
#include <algorithm>
#include <cmath>

#include "ui/change/change_words.h"
#include "ui/quantity_edit.h"

namespace ui {
namespace {

constexpr double margin_px = 4;
constexpr double widestSlot_px = 90;
constexpr double tickSpace_px = 34;
constexpr core::Change allChanges[] = {core::Change::Unchanged, core::Change::Harmless, core::Change::Changed,
                                       core::Change::CannotTell, core::Change::NotCompared};

core::Change changeOf(const StripStep& step) {
  return step.moved ? step.moved->change : core::Change::NotCompared;
}

}  // namespace

DifferenceStrip::DifferenceStrip(QWidget* parent) : QWidget(parent) {
  setObjectName("differenceStrip");
  setAccessibleName(tr("Change of each step"));
  setFocusPolicy(Qt::StrongFocus);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

void DifferenceStrip::showSteps(QList<StripStep> steps, const QString& unit,
                                std::optional<std::size_t> chosen) {
  m_steps = std::move(steps);
  m_unit = unit;
  m_chosen = chosen;
  QStringList words;
  for (const StripStep& step : m_steps)
    if (!chosen || step.step == chosen) words << step.text;
  setAccessibleDescription(words.join(' '));
  update();
}

Extent DifferenceStrip::extent() const {
  Extent all;
  all.add(0);
  for (const StripStep& step : m_steps) {
    if (!step.moved) continue;
    const core::Difference& moved = *step.moved;
    const double half = std::max(moved.halfWidth95.value_or(0), moved.halfWidth90.value_or(0));
    for (const double value : {moved.value - half, moved.value + half, moved.margin, -moved.margin})
      all.add(value);
  }
  return all;
}

QList<MarkMeaning> DifferenceStrip::meanings() const {
  QList<MarkMeaning> found;
  const auto any = [&](const auto& is) { return std::any_of(m_steps.begin(), m_steps.end(), is); };
  for (const core::Change change : allChanges)
    if (any([&](const StripStep& step) { return changeOf(step) == change; }))
      found.append({MarkMeaning::Kind::Change, changeWord(change), change});
  if (any([](const StripStep& step) { return step.moved.has_value(); }))
    found.append({MarkMeaning::Kind::Margin, tr("margin"), {}});
  if (any([](const StripStep& step) { return step.moved && step.moved->halfWidth90; })) {
    found.append({MarkMeaning::Kind::Interval, tr("90 %"), {}});
    found.append({MarkMeaning::Kind::Whisker, tr("95 %"), {}});
  }
  return found;
}

ValueAxis DifferenceStrip::axisIn(const QRectF& room) const {
  const QFontMetricsF metrics(font());
  const double legend =
      paintMeanings(nullptr, room.adjusted(margin_px, 0, -margin_px, 0), font(), meanings(), {});
  const double top = room.top() + metrics.height() + legend + 8;
  const double bottom = room.bottom() - metrics.height() - 6;
  const int intervals = std::max(2, static_cast<int>((bottom - top) / tickSpace_px));
  const AxisTicks ticks = niceTicks(extent(), intervals, 0.04);
  const double left = room.left() + margin_px + labelRoom(metrics, ticks);
  return {QRectF(QPointF(left, top), QPointF(room.right() - margin_px, std::max(top + 10, bottom))), ticks};
}

double DifferenceStrip::slotOf(const ValueAxis& axis) const {
  return axis.plot.width() / static_cast<double>(std::max<qsizetype>(1, m_steps.size()));
}

double DifferenceStrip::acrossOf(const ValueAxis& axis, qsizetype row) const {
  return axis.plot.left() + slotOf(axis) * (static_cast<double>(row) + 0.5);
}

QPointF DifferenceStrip::markAt(qsizetype row) const {
  const ValueAxis axis = axisIn(rect());
  const auto& moved = m_steps[row].moved;
  return {acrossOf(axis, row), axis.at(moved ? moved->value : 0)};
}

std::optional<std::size_t> DifferenceStrip::stepAt(QPointF position) const {
  const ValueAxis axis = axisIn(rect());
  const double share = (position.x() - axis.plot.left()) / slotOf(axis);
  const auto row = static_cast<qsizetype>(std::floor(share));
  if (row < 0 || row >= m_steps.size() || position.y() < axis.plot.top()) return std::nullopt;
  return m_steps[row].step;
}

void DifferenceStrip::paintStep(QPainter& painter, const ValueAxis& axis, qsizetype row,
                                const Colours& colours) const {
  const StripStep& step = m_steps[row];
  const double across = acrossOf(axis, row);
  if (!step.moved) return paintChangeMark(painter, {across, axis.at(0)}, core::Change::NotCompared, colours);
  const double half = 0.42 * std::min(slotOf(axis), widestSlot_px);
  const QRectF band(QPointF(across - half, axis.at(step.moved->margin)),
                    QPointF(across + half, axis.at(-step.moved->margin)));
  painter.fillRect(band, marginFill(colours));
  painter.setPen(QPen(colours.band, 1));
  painter.drawLine(band.topLeft(), band.topRight());
  painter.drawLine(band.bottomLeft(), band.bottomRight());
  paintIntervals(painter, axis, across, *step.moved, 1, colours);
  paintChangeMark(painter, {across, axis.at(step.moved->value)}, step.moved->change, colours);
}

/// As many step numbers as have room, the first among them.
void DifferenceStrip::paintNumbers(QPainter& painter, const ValueAxis& axis, const Colours& colours) const {
  const QFontMetricsF metrics(painter.font());
  const double widest = metrics.horizontalAdvance(QString::number(m_steps.size())) + 6;
  const auto every = static_cast<qsizetype>(std::max(1.0, std::ceil(widest / slotOf(axis))));
  painter.setPen(colours.text);
  for (qsizetype row = 0; row < m_steps.size(); row += every)
    painter.drawText(
        QRectF(acrossOf(axis, row) - widest, axis.plot.bottom() + 2, 2 * widest, metrics.height()),
        Qt::AlignCenter, QString::number(m_steps[row].step + 1));
}

void DifferenceStrip::paint(QPainter& painter, const QRectF& room, const Colours& colours,
                            std::optional<std::size_t> chosen) const {
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setFont(font());
  painter.fillRect(room, colours.background);
  if (m_steps.isEmpty()) return;
  const ValueAxis axis = axisIn(room);
  const double line = QFontMetricsF(font()).height();
  painter.setPen(colours.text);
  painter.drawText(QRectF(room.left() + margin_px, room.top() + 1, room.width() - 2 * margin_px, line),
                   Qt::AlignLeft | Qt::AlignVCenter,
                   QFontMetricsF(font()).elidedText(tr("Change of each step, %1").arg(m_unit), Qt::ElideRight,
                                                    room.width() - 2 * margin_px));
  paintMeanings(&painter, room.adjusted(margin_px, line + 2, -margin_px, 0), font(), meanings(), colours);
  painter.setFont(font());
  paintValueAxis(painter, axis, colours);
  paintNumbers(painter, axis, colours);
  for (qsizetype row = 0; row < m_steps.size(); ++row) {
    paintStep(painter, axis, row, colours);
    const auto& moved = m_steps[row].moved;
    if (m_steps[row].step == chosen)
      paintRing(painter, {acrossOf(axis, row), axis.at(moved ? moved->value : 0)}, colours);
  }
}

void DifferenceStrip::paintInto(QPainter& painter, const QRectF& target, const Colours& colours) const {
  paint(painter, target, colours, std::nullopt);
}

void DifferenceStrip::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  const Colours colours = coloursFor(palette());
  paint(painter, rect(), colours, m_chosen);
  if (!hasFocus()) return;
  painter.setPen(QPen(palette().color(QPalette::Highlight), 1));
  painter.setBrush(Qt::NoBrush);
  painter.drawRect(rect().adjusted(0, 0, -1, -1));
}

void DifferenceStrip::mousePressEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton) return QWidget::mousePressEvent(event);
  if (const auto step = stepAt(event->position())) emit stepClicked(*step);
}

void DifferenceStrip::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Left || event->key() == Qt::Key_Right)
    emit stepWalked(event->key() == Qt::Key_Left ? -1 : 1);
  else
    QWidget::keyPressEvent(event);
}

bool DifferenceStrip::event(QEvent* event) {
  if (event->type() != QEvent::ToolTip) return QWidget::event(event);
  const auto* help = static_cast<QHelpEvent*>(event);
  const auto step = stepAt(help->pos());
  const auto found = std::find_if(m_steps.begin(), m_steps.end(),
                                  [&](const StripStep& one) { return step && one.step == *step; });
  if (found == m_steps.end())
    QToolTip::hideText();
  else
    QToolTip::showText(help->globalPos(), "<span>" + found->text.toHtmlEscaped() + "</span>", this);
  return true;
}

TwinTable DifferenceStrip::twin() const {
  TwinTable table{{tr("Step"), tr("Change, %1").arg(m_unit), tr("In words")}, {}};
  for (const StripStep& step : m_steps)
    table.rows << QStringList{QString::number(step.step + 1),
                              step.moved ? numberText(step.moved->value, 6) : QString(), step.text};
  return table;
}

}  // namespace ui
