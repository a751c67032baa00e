// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/safety/safety_frame.h"

#include <QEvent>
#include <QPushButton>

#include "ui/theme.h"

namespace ui {

SafetyFrame::SafetyFrame(const char* name, QWidget* parent) : QFrame(parent) {
  setObjectName(name);
  applyColours();
}

void SafetyFrame::changeEvent(QEvent* event) {
  if (event->type() == QEvent::PaletteChange) applyColours();
  QFrame::changeEvent(event);
}

void SafetyFrame::applyColours() {
  const Colours colours = coloursFor(palette());
  const QString sheet = QString("#%1 { border: 1px solid %2; border-left-width: 6px; background: %3; }")
                            .arg(objectName(), colours.cannotTell.name(), colours.background.name());
  if (sheet != styleSheet()) setStyleSheet(sheet);  // setting it comes back here as a change of palette
}

QPushButton* safetyButton(const QString& name, const QString& text, const QString& tip) {
  auto* button = new QPushButton(text);
  button->setObjectName(name);
  button->setToolTip(tip);
  button->setAutoDefault(false);
  return button;
}

}  // namespace ui
