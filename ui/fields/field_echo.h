// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLabel>
#include <QObject>
#include <QPointer>
#include <QTimer>

class QLineEdit;

namespace ui {

/// How the text of a field is understood, or why it is not.
struct Understood {
  bool taken = false;
  QString words;  ///< "= 59.9 kΩ = 59 900 Ω", or the reason; empty: nothing worth saying
};

/// Words beside a field that take no room in the layout: a small sheet over the window, below the field or
/// where else it covers neither the field nor what has the keyboard. It takes no mouse and no keyboard. A
/// screen reader finds the words in the field's accessible description, shortly after the last key.
class FieldEcho : public QObject {
  Q_OBJECT

 public:
  explicit FieldEcho(QLineEdit* field);
  ~FieldEcho() override;

  /// While typing; empty words show nothing.
  void say(const Understood& understood);
  /// Stays, also when the keyboard has gone elsewhere, until `clear` or another text. Screen readers are told
  /// at once.
  void refuse(const QString& reason);
  void clear();

  QString words() const { return m_words; }
  bool isShown() const { return m_sheet && m_sheet->isVisible(); }

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void show();
  void hide();
  void place();
  void watch(bool on);
  void describe();

  QLineEdit* m_field;
  QPointer<QLabel> m_sheet;
  QList<QPointer<QObject>> m_watched;
  QString m_words;
  QString m_description;  ///< of the field when it says nothing
  bool m_described = false;
  bool m_refused = false;
  QTimer m_pause;
};

}  // namespace ui
