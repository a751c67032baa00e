// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/commands/key_field.h"

#include <QKeyEvent>

namespace ui {
namespace {

bool isLeft(const QKeyEvent& key) {
  const auto held = key.modifiers() & ~Qt::ShiftModifier;
  return !held && (key.key() == Qt::Key_Tab || key.key() == Qt::Key_Backtab || key.key() == Qt::Key_Escape);
}

/// Shift, Ctrl and their like, which are pressed on the way to a key.
bool isOnTheWay(int key) {
  return key == Qt::Key_Shift || key == Qt::Key_Control || key == Qt::Key_Alt || key == Qt::Key_Meta ||
         key == Qt::Key_AltGr || key == Qt::Key_Super_L || key == Qt::Key_Super_R || key == Qt::Key_unknown ||
         key == Qt::Key_CapsLock || key == Qt::Key_NumLock || key == 0;
}

}  // namespace

KeyField::KeyField(QWidget* parent) : QLineEdit(parent) {
  setReadOnly(true);
  setContextMenuPolicy(Qt::NoContextMenu);
  setAttribute(Qt::WA_InputMethodEnabled, false);  // keys are meant, not letters
}

/// Before the shortcuts of any action.
bool KeyField::event(QEvent* event) {
  if (event->type() == QEvent::ShortcutOverride && !isLeft(*static_cast<QKeyEvent*>(event))) {
    event->accept();
    return true;
  }
  return QLineEdit::event(event);
}

void KeyField::keyPressEvent(QKeyEvent* event) {
  if (isLeft(*event)) return event->ignore();
  event->accept();
  if (isOnTheWay(event->key())) return;
  // Where a key of the keypad is pressed, the one of that name is meant.
  const Qt::KeyboardModifiers held = event->modifiers() & ~(Qt::KeypadModifier | Qt::GroupSwitchModifier);
  emit pressed(QKeySequence(QKeyCombination(held, Qt::Key(event->key()))));
}

}  // namespace ui
