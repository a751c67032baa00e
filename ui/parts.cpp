// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts.h"

#include <QLabel>
#include <QToolButton>

namespace ui {

QLabel* plainLabel(const char* name) {
  auto* label = new QLabel;
  label->setObjectName(name);
  label->setTextFormat(Qt::PlainText);
  label->setWordWrap(true);
  label->setMinimumWidth(60);
  label->setTextInteractionFlags(Qt::TextSelectableByMouse);
  return label;
}

QLabel* embolden(QLabel* label) {
  QFont font = label->font();
  font.setBold(true);
  label->setFont(font);
  return label;
}

void setTextColour(QWidget* label, const QColor& colour) {
  QPalette palette = label->palette();
  if (palette.color(QPalette::WindowText) == colour) return;
  palette.setColor(QPalette::WindowText, colour);
  label->setPalette(palette);
}

QToolButton* toolButton(const QString& name, const QString& text, const QString& tip) {
  auto* button = new QToolButton;
  button->setObjectName(name);
  button->setText(text);
  button->setToolTip(tip);
  return button;
}

}  // namespace ui
