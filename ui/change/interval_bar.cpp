// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/change/interval_bar.h"

#include <QPainter>
#include <algorithm>
#include <cmath>

#include "ui/change/change_marks.h"

namespace ui {
namespace {

constexpr double band_px = 26;
constexpr double side_px = 26;  ///< half a label beside the ends
constexpr double tickSpace_px = 70;

}  // namespace

IntervalBar::IntervalBar(const QString& objectName, QWidget* parent) : QWidget(parent) {
  setObjectName(objectName);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

QSize IntervalBar::sizeHint() const { return {300, static_cast<int>(band_px) + fontMetrics().height() + 6}; }

QSize IntervalBar::minimumSizeHint() const { return {140, sizeHint().height()}; }

void IntervalBar::showDifference(const std::optional<core::Difference>& difference, const ShownUnit& in) {
  m_difference = difference;
  m_in = in;
  setAccessibleDescription(difference ? differenceSentence(*difference, in) : tr("Not compared."));
  update();
}

void IntervalBar::paintInto(QPainter& painter, const QRectF& target, const Colours& colours) const {
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setFont(font());
  painter.fillRect(target, colours.background);
  if (!m_difference) {
    painter.setPen(colours.quiet);
    painter.drawText(target, Qt::AlignCenter, tr("not compared"));
    return;
  }
  const core::Difference& shown = *m_difference;
  const double value = m_in.factor * shown.value, margin = m_in.factor * shown.margin;
  const double half = m_in.factor * std::max(shown.halfWidth95.value_or(0), shown.halfWidth90.value_or(0));
  Extent extent;
  for (const double at : {0.0, value - half, value + half, margin, -margin}) extent.add(at);
  const QRectF plot(target.left() + side_px, target.top() + 2, target.width() - 2 * side_px, band_px);
  const int intervals = std::max(2, static_cast<int>(plot.width() / tickSpace_px));
  const ValueAxis axis{plot, niceTicks(extent, intervals, 0.04), false};
  paintValueAxis(painter, axis, colours);
  const double middle = plot.center().y();
  const QRectF band(QPointF(axis.at(-margin), plot.top() + 2), QPointF(axis.at(margin), plot.bottom() - 2));
  painter.fillRect(band, marginFill(colours));
  painter.setPen(QPen(colours.band, 1.2));
  painter.drawLine(band.topLeft(), band.bottomLeft());
  painter.drawLine(band.topRight(), band.bottomRight());
  paintIntervals(painter, axis, middle, shown, m_in.factor, colours);
  paintChangeMark(painter, {axis.at(value), middle}, shown.change, colours);
}

void IntervalBar::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  paintInto(painter, rect(), coloursFor(palette()));
}

TwinTable IntervalBar::twin() const {
  return {{tr("What is shown"), tr("In words")}, {{accessibleName(), accessibleDescription()}}};
}

}  // namespace ui
