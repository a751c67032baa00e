// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/run/run_page.h"

#include <QLabel>
#include <QPushButton>

namespace ui {

void setTypeSize(QWidget* page, double size_pt) {
  for (QWidget* widget : page->findChildren<QWidget*>()) {
    const QVariant scale = widget->property("typeScale");
    if (!scale.isValid()) continue;
    QFont font = widget->font();
    font.setPointSizeF(size_pt * scale.toDouble());
    font.setBold(widget->property("typeBold").toBool());
    if (font != widget->font()) widget->setFont(font);
    // Styles leave large type little room in a button.
    if (qobject_cast<QPushButton*>(widget)) widget->setMinimumHeight(QFontMetrics(font).height() * 8 / 5);
  }
}

QLabel* runLabel(const char* name, double scale, bool bold) {
  auto* label = withType(new QLabel, scale, bold);
  label->setObjectName(name);
  label->setTextFormat(Qt::PlainText);
  label->setWordWrap(true);
  label->setMinimumWidth(60);  // not that of the longest word, which may be a name of any length
  label->setTextInteractionFlags(Qt::TextSelectableByMouse);
  return label;
}

QPushButton* runButton(const char* name, const QString& text, double scale) {
  auto* button = withType(new QPushButton(text), scale);
  button->setObjectName(name);
  button->setAutoDefault(true);  // Return presses it too
  return button;
}

}  // namespace ui
