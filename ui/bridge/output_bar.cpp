// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bridge/output_bar.h"

#include <QEvent>
#include <QFontMetricsF>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "ui/bridge/bridge_state.h"
#include "ui/quantity_edit.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr int usualHeight = 34;
constexpr double margin = 8, gap = 12;
constexpr double barHeight = 11, tickHeight = 4;
constexpr double roomPerTick = 58;

/// 1, 2 or 5 times a power of ten, not below `value`; 1 mV/V of nothing.
double roundAbove(double value) {
  if (!(value > 0)) return 1e-3;
  const double power = std::pow(10.0, std::floor(std::log10(value)));
  for (const double digit : {1.0, 2.0, 5.0})
    // The plan's own largest step may come back a rounding above itself.
    if (value <= digit * power * (1 + 1e-9)) return digit * power;
  return 10 * power;
}

/// Ticks on each side of zero: of a scale of 5 five, of the others four; half or one where there is no room.
int ticksFor(double scale, double halfWidth) {
  const double digit = scale / std::pow(10.0, std::floor(std::log10(scale * (1 + 1e-9))));
  for (const int ticks : {std::lround(digit) == 5 ? 5 : 4, std::lround(digit) == 5 ? 1 : 2})
    if (halfWidth / ticks >= roomPerTick) return ticks;
  return 1;
}

QString signedNumber(double value) {
  const QString text = numberText(value, 3).replace('-', QChar(0x2212));
  return value > 0 ? '+' + text : text;
}

QFont smallFont(QFont font) {
  font.setPixelSize(std::max(10, QFontMetrics(font).height() * 10 / 17));
  return font;
}

}  // namespace

OutputBar::OutputBar(QWidget* parent) : QWidget(parent) {
  setObjectName("outputBar");
  setAccessibleName(tr("Output"));
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  show({}, core::Polarity::None, core::Output(0));
}

void OutputBar::show(std::optional<core::Output> output, core::Polarity polarity, core::Output largest) {
  const double needed =
      roundAbove(std::max(std::abs(largest.base()), output ? std::abs(output->base()) : 0.0));
  m_scale = largest == m_largest ? std::max(m_scale, needed) : needed;
  if (largest.base() == 0 && !output) m_scale = needed;
  m_output = output;
  m_polarity = polarity;
  m_largest = largest;
  if (!output)
    m_text = tr("output not known");
  else if (polarity == core::Polarity::None)
    m_text = tr("change 0 mV/V");
  else
    m_text = (polarity == core::Polarity::Positive ? tr("change %1, positive") : tr("change %1, negative"))
                 .arg(outputText(*output));
  setAccessibleDescription(m_text);
  update();
}

QSize OutputBar::sizeHint() const { return {320, std::max(usualHeight, QFontMetrics(font()).height() + 14)}; }
QSize OutputBar::minimumSizeHint() const { return {280, sizeHint().height()}; }

/// Of the longest text there usually is, so that the bar does not move with the digits.
double OutputBar::textWidth() const {
  QFont bold = font();
  bold.setBold(true);
  const QFontMetricsF metrics(bold);
  const double usual = metrics.horizontalAdvance(tr("change −0.0000 mV/V, negative"));
  return std::min(std::max(usual, metrics.horizontalAdvance(m_text)),
                  std::max(0.6 * width(), width() - 110.0));
}

QRectF OutputBar::track() const {
  const double left = margin + textWidth() + gap + 14, right = width() - margin - 14;
  const double all = barHeight + tickHeight + QFontMetricsF(smallFont(font())).height();
  return {left, (height() - all) / 2, std::max(20.0, right - left), barHeight};
}

void OutputBar::paintScale(QPainter& painter, const QRectF& track, const Colours& colours) const {
  painter.setPen(QPen(colours.quiet, 1));
  painter.setBrush(Qt::NoBrush);
  painter.drawRect(track);
  const QFont small = smallFont(font());
  painter.setFont(small);
  const double textHeight = QFontMetricsF(small).height(), half = track.width() / 2;
  const int ticks = ticksFor(m_scale, half);
  for (int k = -ticks; k <= ticks; ++k) {
    const double x = track.center().x() + half * k / ticks;
    painter.drawLine(QPointF(x, track.bottom()), QPointF(x, track.bottom() + tickHeight));
    const QString number = k == 0 ? QStringLiteral("0") : signedNumber(1e3 * m_scale * k / ticks);
    // The last is as far from the edge as its text is wide, so the unit stands behind it where there is room.
    const QRectF box(x - roomPerTick / 2, track.bottom() + tickHeight, roomPerTick, textHeight);
    const QRectF inside = box.translated(std::min(0.0, width() - box.right()), 0);
    painter.drawText(inside, Qt::AlignHCenter | Qt::AlignTop | Qt::TextDontClip, number);
  }
  const QRectF ends(track.left() - 16, track.top() - 3, track.width() + 32, track.height() + 6);
  painter.setFont(font());
  painter.drawText(ends, Qt::AlignLeft | Qt::AlignVCenter, QStringLiteral("−"));
  painter.drawText(ends, Qt::AlignRight | Qt::AlignVCenter, QStringLiteral("+"));
}

void OutputBar::paintOutput(QPainter& painter, const QRectF& track, const Colours& colours) const {
  const double middle = track.center().x();
  if (m_output && m_polarity != core::Polarity::None) {
    const double reach = track.width() / 2 * std::clamp(m_output->base() / m_scale, -1.0, 1.0);
    // Never so short that its side cannot be seen.
    const double shown = std::copysign(std::max(2.0, std::abs(reach)), reach);
    const QRectF bar(QPointF(middle, track.top()), QPointF(middle + shown, track.bottom()));
    painter.fillRect(bar.normalized(), colourOf(colours, m_polarity));
  }
  painter.setPen(QPen(colours.text, 2));
  painter.drawLine(QPointF(middle, track.top() - 3), QPointF(middle, track.bottom() + 1));
}

void OutputBar::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  const Colours colours = coloursFor(palette());
  painter.fillRect(rect(), colours.background);
  const QRectF bar = track();
  paintScale(painter, bar, colours);
  paintOutput(painter, bar, colours);
  QFont bold = font();
  bold.setBold(true);
  painter.setFont(bold);
  painter.setPen(m_output && m_polarity != core::Polarity::None ? colourOf(colours, m_polarity)
                                                                : colours.quiet);
  const QRectF box(margin, 0, textWidth(), height());
  painter.drawText(
      box, Qt::AlignLeft | Qt::AlignVCenter | Qt::TextSingleLine,
      painter.fontMetrics().elidedText(m_text, Qt::ElideRight, static_cast<int>(box.width()) + 1));
}

void OutputBar::changeEvent(QEvent* event) {
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) {
    updateGeometry();
    update();
  }
  QWidget::changeEvent(event);
}

TwinTable OutputBar::twin() const {
  return {{tr("What is shown"), tr("Its value")},
          {{tr("Output"), m_text}, {tr("Ends of the scale"), "± " + outputText(scale())}}};
}

}  // namespace ui
