// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/practice/choice_button.h"

#include <QPainter>
#include <QStyle>
#include <QStyleOptionButton>
#include <algorithm>

#include "ui/theme.h"

namespace ui {
namespace {

constexpr int margin = 4, gap = 8;
constexpr int usualWidth = 360;

}  // namespace

ChoiceButton::ChoiceButton(int number, const QString& words, QWidget* parent)
    : QRadioButton(parent), m_number(number), m_words(words) {
  setObjectName("choice" + QString::number(number));
  // An ampersand in foreign text is a letter, not a mnemonic.
  setText(QString(shown()).replace('&', "&&"));
  setAccessibleName(shown());
  QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Minimum);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
}

void ChoiceButton::setMark(Mark mark) {
  m_mark = mark;
  setAccessibleName(shown());
  updateGeometry();
  update();
}

QString ChoiceButton::shown() const {
  const QString words = QString::number(m_number) + " · " + m_words;
  switch (m_mark) {
    case Mark::None:
      return words;
    case Mark::Right:
      return words + "  " + tr("✓ right");
    case Mark::Wrong:
      return words + "  " + tr("✗ wrong");
  }
  return words;
}

QRect ChoiceButton::wordsRect(int width) const {
  const int left = margin + style()->pixelMetric(QStyle::PM_ExclusiveIndicatorWidth) + gap;
  return {left, margin, std::max(20, width - left - margin), QWIDGETSIZE_MAX};
}

int ChoiceButton::heightForWidth(int width) const {
  const QRect words = fontMetrics().boundingRect(wordsRect(width), Qt::TextWordWrap | Qt::AlignLeft, shown());
  return std::max(words.height(), style()->pixelMetric(QStyle::PM_ExclusiveIndicatorHeight)) + 2 * margin;
}

QSize ChoiceButton::sizeHint() const { return {usualWidth, heightForWidth(std::max(width(), 80))}; }

void ChoiceButton::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  QStyleOptionButton option;
  initStyleOption(&option);
  const int side = style()->pixelMetric(QStyle::PM_ExclusiveIndicatorWidth);
  option.rect = QRect(margin, margin + std::max(0, (fontMetrics().height() - side) / 2), side, side);
  style()->drawPrimitive(QStyle::PE_IndicatorRadioButton, &option, &painter, this);
  const Colours colours = coloursFor(palette());
  painter.setPen(m_mark == Mark::Right   ? colours.pass
                 : m_mark == Mark::Wrong ? colours.fail
                                         : palette().color(QPalette::Active, QPalette::WindowText));
  QRect words = wordsRect(width());
  words.setHeight(height() - margin);
  painter.drawText(words, Qt::TextWordWrap | Qt::AlignLeft | Qt::AlignTop, shown());
  if (!hasFocus()) return;
  painter.setPen(QPen(colours.selected, 2));
  painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 3, 3);
}

}  // namespace ui
