// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLineEdit>

#include "ui/fields/field_echo.h"

namespace ui {

class DigitKeys;

/// Passes Ctrl+Z and Ctrl+Y on to the window once the field itself has nothing left to undo.
class FieldUndoFilter : public QObject {
 public:
  using QObject::QObject;
  bool eventFilter(QObject* watched, QEvent* event) override;
};

/// What all fields for numbers have in common. While one types, a small sheet beside the field says how the
/// text is understood, or why it is not yet. The text counts when the user leaves the field or presses Enter;
/// it is taken as a whole or refused. A refused text stays for mending, framed, with its reason and what
/// still holds in the sheet and in the accessible description, and nothing is changed. Escape brings the last
/// value back; so does leaving the field again with the same refused text. The arrow keys step digits
/// (DigitKeys); the wheel changes nothing.
class NumberEdit : public QLineEdit {
  Q_OBJECT

 public:
  explicit NumberEdit(QWidget* parent = nullptr);

  /// Takes what was typed, as leaving the field does.
  void commit();
  bool isRefused() const { return m_refused; }
  /// Whether the text as it stands would be taken.
  bool isTaken() const { return understood(text()).taken; }
  /// Takes what was typed; when it is refused the field gets the keyboard.
  bool isReady();
  /// The words shown beside the field; empty: none.
  QString echo() const { return m_echo->words(); }

 signals:
  /// Only what the field does not tell beside itself: a refusal while it is not on view, and that a text was
  /// given up. Without a reason: that is out of date.
  void refused(const QString& reason);

 protected:
  /// How a text would be taken.
  virtual Understood understood(const QString& text) const = 0;
  /// Puts a text that is taken where it belongs. The text shown follows by `showValue`.
  virtual void take(const QString& text) = 0;
  /// The last value as text.
  virtual QString shownText() const = 0;

  /// Shows the last value; what was typed and refused is gone.
  void showValue();
  /// As Escape does.
  virtual void giveBack();

  bool event(QEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  DigitKeys* digitKeys() const { return m_keys; }

 private:
  void refuse(const QString& reason);
  void tellRefusal(const QString& words);
  void takeBackRefusal();
  void follow(const QString& text);

  FieldEcho* m_echo;
  DigitKeys* m_keys;
  bool m_refused = false;
  bool m_leftRefused = false;
  bool m_toldRefusal = false;  ///< by the signal, and no text was taken since
  QString m_ownTip;
};

/// Has all fields below `form` that can be seen take what was typed; false when one refuses it, which then
/// has the keyboard.
bool numbersReady(const QWidget& form);

}  // namespace ui
