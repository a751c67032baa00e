// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/fields/number_edit.h"

#include <QFocusEvent>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QPainter>
#include <QTextDocument>
#include <QToolTip>
#include <utility>

#include "ui/as_typed.h"
#include "ui/fields/digit_keys.h"
#include "ui/theme.h"

namespace ui {

bool FieldUndoFilter::eventFilter(QObject* watched, QEvent* event) {
  auto* field = qobject_cast<QLineEdit*>(watched);
  if (event->type() == QEvent::ShortcutOverride && field) {
    auto* key = static_cast<QKeyEvent*>(event);
    const bool undo = key->matches(QKeySequence::Undo) && !field->isUndoAvailable();
    const bool redo = key->matches(QKeySequence::Redo) && !field->isRedoAvailable();
    if (undo || redo) {
      event->ignore();
      return true;
    }
  }
  return QObject::eventFilter(watched, event);
}

NumberEdit::NumberEdit(QWidget* parent) : QLineEdit(parent), m_echo(new FieldEcho(this)) {
  m_keys = new DigitKeys(this, m_echo, [this](const QString& text) { return understood(text); });
  installEventFilter(new FieldUndoFilter(this));
  connect(this, &QLineEdit::textEdited, this, &NumberEdit::follow);
  connect(this, &QLineEdit::editingFinished, this, &NumberEdit::commit);
}

void NumberEdit::follow(const QString& text) {
  if (m_refused) {
    m_refused = m_leftRefused = false;
    setToolTip(m_ownTip);
    update();
  }
  const Understood now = understood(text);
  m_echo->say(now);
  if (now.taken) takeBackRefusal();
}

/// Whoever showed the reason need not show it any longer.
void NumberEdit::takeBackRefusal() {
  if (std::exchange(m_toldRefusal, false)) emit refused({});
}

void NumberEdit::showValue() {
  const QString shown = shownText();
  if (text() != shown) {
    setText(shown);
    if (!hasFocus()) setCursorPosition(0);  // a long number shows its first digits
  }
  setModified(false);
  if (m_refused) setToolTip(m_ownTip);
  m_refused = m_leftRefused = false;
  m_echo->clear();
  update();
  takeBackRefusal();
}

void NumberEdit::giveBack() { showValue(); }

void NumberEdit::commit() {
  if (!isModified()) return;
  const Understood now = understood(text());
  if (now.taken) return take(text());
  refuse(now.words);
}

bool NumberEdit::isReady() {
  if (isTaken()) {
    commit();
    return true;
  }
  setModified(true);
  commit();
  setFocus(Qt::OtherFocusReason);
  selectAll();
  return false;
}

bool numbersReady(const QWidget& form) {
  for (NumberEdit* field : form.findChildren<NumberEdit*>())
    if (field->isVisible() && field->isModified() && !field->isReady()) return false;
  return true;
}

void NumberEdit::refuse(const QString& reason) {
  const QString still = shownText();
  const QString words =
      still.isEmpty() ? tr("%1 Nothing was changed.").arg(reason) : tr("%1 Still %2.").arg(reason, still);
  if (!m_refused) m_ownTip = toolTip();
  m_refused = true;
  setToolTip(asTyped(words));
  m_echo->refuse(words);
  update();
  if (m_echo->isShown()) return;
  tellRefusal(accessibleName().isEmpty() ? words : tr("%1: %2").arg(accessibleName(), words));
}

void NumberEdit::tellRefusal(const QString& words) {
  m_toldRefusal = true;
  emit refused(words);
}

bool NumberEdit::event(QEvent* event) {
  if (event->type() != QEvent::ToolTip) return QLineEdit::event(event);
  const QString keys =
      tr("Up and Down step the digit left of the cursor, Page Up and Page Down by ten. "
         "Escape gives back what was.");
  // The reason of a refusal is escaped already, words of a page may be markup of our own.
  const bool ready = m_refused || Qt::mightBeRichText(toolTip());
  const QString own = ready ? toolTip() : asTyped(toolTip());
  const QString words =
      own.isEmpty() ? asTyped(keys) : QString("<p>%1</p><p>%2</p>").arg(own, keys.toHtmlEscaped());
  QToolTip::showText(static_cast<QHelpEvent*>(event)->globalPos(), words, this);
  return true;
}

/// Leaving once keeps a refused text for mending; whoever leaves it a second time as it is does not want it.
void NumberEdit::focusOutEvent(QFocusEvent* event) {
  QLineEdit::focusOutEvent(event);
  const bool stays =
      event->reason() == Qt::ActiveWindowFocusReason || event->reason() == Qt::PopupFocusReason;
  if (!m_refused || stays) return;
  if (!m_leftRefused) {
    m_leftRefused = true;
    return;
  }
  const QString given = text();
  giveBack();
  tellRefusal(shownText().isEmpty() ? tr("%1 was not taken.").arg(given)
                                    : tr("%1 was not taken: still %2.").arg(given, shownText()));
}

void NumberEdit::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape && (isModified() || m_refused)) return giveBack();
  QLineEdit::keyPressEvent(event);
}

/// A frame and a sign, painted over: a style sheet would give the field another size.
void NumberEdit::paintEvent(QPaintEvent* event) {
  QLineEdit::paintEvent(event);
  if (!m_refused) return;
  QPainter painter(this);
  const QColor fail = coloursFor(palette()).fail;
  painter.setPen(QPen(fail, 2));
  painter.drawRect(rect().adjusted(1, 1, -1, -1));
  const int side = fontMetrics().height();
  const QRect sign(width() - side - 3, (height() - side) / 2, side, side);
  painter.fillRect(sign, fail);
  painter.setPen(coloursFor(palette()).background);
  QFont bold = font();
  bold.setBold(true);
  painter.setFont(bold);
  painter.drawText(sign, Qt::AlignCenter, QStringLiteral("!"));
}

}  // namespace ui
