// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame_style.h"

#include <QPainter>
#include <QStyleOption>

#include "ui/theme.h"

namespace ui {

void FrameStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                               const QWidget* widget) const {
  QProxyStyle::drawPrimitive(element, option, painter, widget);
  const bool round = element == PE_IndicatorRadioButton;
  if ((element != PE_IndicatorCheckBox && !round) || !isDark(option->palette)) return;
  painter->save();
  painter->setRenderHint(QPainter::Antialiasing, round);
  painter->setBrush(Qt::NoBrush);
  painter->setPen(coloursFor(option->palette).quiet);
  const QRect frame = option->rect.adjusted(0, 0, -1, -1);
  round ? painter->drawEllipse(frame) : painter->drawRect(frame);
  painter->restore();
}

}  // namespace ui
