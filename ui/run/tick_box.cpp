// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/run/tick_box.h"

#include <QPainter>

#include "ui/theme.h"

namespace ui {
namespace {

constexpr int gap = 8;
constexpr int margin = 3;

}  // namespace

QSize TickBox::sizeHint() const {
  const QSize words = fontMetrics().size(Qt::TextShowMnemonic, text());
  return {side() + gap + words.width() + 2 * margin, fontMetrics().height() + 2 * margin};
}

void TickBox::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const Colours colours = coloursFor(palette());
  const QRectF box(margin, (height() - side()) / 2.0, side(), side());
  painter.setPen(QPen(hasFocus() ? colours.selected : colours.text, hasFocus() ? 2.5 : 1.3));
  painter.setBrush(colours.background);
  painter.drawRoundedRect(box, 2, 2);
  if (isChecked()) {
    const auto at = [&](double x, double y) {
      return QPointF(box.left() + x * box.width(), box.top() + y * box.height());
    };
    painter.setPen(QPen(colours.text, side() / 7.0, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.drawPolyline(QPolygonF({at(0.22, 0.52), at(0.42, 0.74), at(0.79, 0.27)}));
  }
  painter.setPen(palette().color(isEnabled() ? QPalette::Active : QPalette::Disabled, QPalette::WindowText));
  painter.drawText(rect().adjusted(margin + side() + gap, 0, 0, 0), Qt::AlignVCenter | Qt::TextShowMnemonic,
                   text());
}

}  // namespace ui
