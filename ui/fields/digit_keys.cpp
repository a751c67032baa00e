// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/fields/digit_keys.h"

#include <QKeyEvent>
#include <QLineEdit>

#include "core/units/digit_step.h"
#include "ui/theme.h"

namespace ui {

int stepsOfKey(const QKeyEvent& key) {
  if (key.modifiers() & ~Qt::KeypadModifier) return 0;
  switch (key.key()) {
    case Qt::Key_Up:
      return 1;
    case Qt::Key_Down:
      return -1;
    case Qt::Key_PageUp:
      return 10;
    case Qt::Key_PageDown:
      return -10;
    default:
      return 0;
  }
}

DigitKeys::DigitKeys(QLineEdit* field, FieldEcho* echo, Read read)
    : QObject(field), m_field(field), m_echo(echo), m_read(std::move(read)) {
  field->installEventFilter(this);
}

bool DigitKeys::eventFilter(QObject* watched, QEvent* event) {
  const bool isKey = event->type() == QEvent::KeyPress || event->type() == QEvent::ShortcutOverride;
  if (watched != m_field || !isKey) return QObject::eventFilter(watched, event);
  const int steps = stepsOfKey(*static_cast<QKeyEvent*>(event));
  const bool left = m_leavesPageKeys && (steps > 1 || steps < -1);
  if (steps == 0 || left || m_field->isReadOnly() || m_field->text().trimmed().isEmpty())
    return QObject::eventFilter(watched, event);
  event->accept();
  if (event->type() == QEvent::KeyPress) step(steps);
  return true;
}

int DigitKeys::chosenDigit(const QString& text, const Part& part) const {
  if (text == m_steppedText && m_field->cursorPosition() == m_steppedCursor) return m_digit;
  const QString number = text.mid(part.begin, part.end - part.begin);
  // Chosen text is as if the cursor stood at its end: a field one has just come to is chosen whole.
  const qsizetype cursor = m_field->hasSelectedText() ? m_field->selectionEnd() : m_field->cursorPosition();
  const auto before = number.left(qMax<qsizetype>(0, cursor - part.begin)).toStdString();
  return core::digitAt(number.toStdString(), before.size()).value_or(-1);
}

bool DigitKeys::tryStep(const QString& text, const Part& part, int digit, int steps) {
  const QString number = text.mid(part.begin, part.end - part.begin);
  const auto next = core::stepped(number.toStdString(), digit, steps);
  if (!next) return false;
  const QString whole = text.left(part.begin) + toQString(next->text) + text.mid(part.end);
  const Understood understood = m_read(whole);
  if (!understood.taken) {
    m_echo->say(understood);
    return false;
  }
  const qsizetype cursor = part.begin + toQString(next->text.substr(0, next->cursor)).size();
  m_field->selectAll();
  m_field->insert(whole);  // as if typed, so that the field's own undo knows it
  m_field->setCursorPosition(static_cast<int>(cursor));
  m_steppedText = m_field->text();
  m_steppedCursor = m_field->cursorPosition();
  m_digit = digit;
  return true;
}

bool DigitKeys::step(int steps) {
  const QString text = m_field->text();
  const Understood now = m_read(text);
  if (!now.taken) {
    m_echo->say(now);
    return false;
  }
  const qsizetype cursor = m_field->hasSelectedText() ? m_field->selectionEnd() : m_field->cursorPosition();
  const Part part = m_partAt ? m_partAt(text, cursor) : Part{0, text.size()};
  const int digit = chosenDigit(text, part);
  if (digit < 0) return false;
  // Ten steps that would leave the limits go as far as they can.
  for (int left = steps; left != 0; left += left > 0 ? -1 : 1)
    if (tryStep(text, part, digit, left)) return true;
  return false;
}

}  // namespace ui
