// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/outcome/page_button.h"

#include <QFontMetrics>
#include <QPainter>

#include "ui/theme.h"

namespace ui {
namespace {

constexpr int line_px = 3;
constexpr int rounding_px = 3;    ///< widths of letters are rounded, in bold otherwise
constexpr int closeFrame_px = 8;  ///< around a name, where there is no room for the frame of the style

QFont inBold(QFont font, bool bold) {
  font.setBold(bold);
  return font;
}

}  // namespace

PageButton::PageButton(const QString& name, const QString& text, const QString& tip) : m_name(text) {
  setObjectName(name);
  setText(text);
  setAccessibleName(text);
  setToolTip(tip);
  setCheckable(true);
  setFocusPolicy(Qt::StrongFocus);
  setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Fixed);
  connect(this, &QToolButton::toggled, this, [this](bool on) {
    setFont(inBold(font(), on));
    fitText();
    updateGeometry();
  });
}

/// With the frame that the style puts round the present text.
QSize PageButton::sizeFor(const QString& shown) const {
  const int present = QFontMetrics(font()).horizontalAdvance(text());
  const int bold = QFontMetrics(inBold(font(), true)).horizontalAdvance(shown);
  return QToolButton::sizeHint() + QSize(bold - present, 0);
}

QSize PageButton::sizeHint() const { return sizeFor(m_name); }

QSize PageButton::minimumSizeHint() const {
  const QString least = isChecked() ? m_name : m_name.left(3) + "…";
  return {QFontMetrics(inBold(font(), true)).horizontalAdvance(least) + closeFrame_px + rounding_px,
          sizeHint().height()};
}

void PageButton::fitText() {
  const QFontMetrics metrics(font());
  const bool whole = width() >= metrics.horizontalAdvance(m_name) + closeFrame_px;
  const QString shown = whole ? m_name : metrics.elidedText(m_name, Qt::ElideRight, width() - closeFrame_px);
  if (shown != text()) setText(shown);
}

void PageButton::resizeEvent(QResizeEvent* event) {
  QToolButton::resizeEvent(event);
  fitText();
}

void PageButton::paintEvent(QPaintEvent* event) {
  QToolButton::paintEvent(event);
  if (!isChecked()) return;
  QPainter painter(this);
  painter.fillRect(QRect(2, height() - line_px - 1, width() - 4, line_px), coloursFor(palette()).selected);
}

}  // namespace ui
