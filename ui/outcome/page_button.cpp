// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/outcome/page_button.h"

#include <QFontMetrics>
#include <QPainter>

#include "ui/theme.h"

namespace ui {
namespace {

constexpr int line_px = 3;

QFont inBold(QFont font, bool bold) {
  font.setBold(bold);
  return font;
}

}  // namespace

PageButton::PageButton(const QString& name, const QString& text, const QString& tip) {
  setObjectName(name);
  setText(text);
  setToolTip(tip);
  setCheckable(true);
  setFocusPolicy(Qt::StrongFocus);
  connect(this, &QToolButton::toggled, this, [this](bool on) { setFont(inBold(font(), on)); });
}

QSize PageButton::sizeHint() const {
  const int plain = QFontMetrics(inBold(font(), false)).horizontalAdvance(text());
  const int bold = QFontMetrics(inBold(font(), true)).horizontalAdvance(text());
  return QToolButton::sizeHint() + QSize(isChecked() ? 0 : bold - plain, 0);
}

void PageButton::paintEvent(QPaintEvent* event) {
  QToolButton::paintEvent(event);
  if (!isChecked()) return;
  QPainter painter(this);
  painter.fillRect(QRect(2, height() - line_px - 1, width() - 4, line_px), coloursFor(palette()).selected);
}

}  // namespace ui
