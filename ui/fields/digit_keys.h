// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <functional>
#include <optional>

#include "ui/fields/field_echo.h"

class QKeyEvent;
class QLineEdit;

namespace ui {

/// Up and Down step the digit left of the cursor by one, Page Up and Page Down by ten, exactly in decimal:
/// the unit and the place of the cursor stay, digits carry over. With the cursor at the end it is the last
/// digit shown. A step beyond what the field takes is left undone, and the field says why. The text changes
/// as if it were typed: it counts when the field is left or with Enter, so that a burst of steps is one
/// change, and Escape gives back what was. In an empty field the keys do what they do on the page.
///
/// In the editor of a table's cell it is the same as in a field; the cell is left with Return or Tab. Without
/// an editor the arrows go from cell to cell.
class DigitKeys : public QObject {
 public:
  using Read = std::function<Understood(const QString&)>;
  /// Where in the text the number around the cursor begins and ends, for fields that hold several.
  struct Part {
    qsizetype begin = 0;
    qsizetype end = 0;
  };
  using PartAt = std::function<Part(const QString& text, qsizetype cursor)>;

  /// `read` must take a text for it to be stepped to; `echo` tells when none is left.
  DigitKeys(QLineEdit* field, FieldEcho* echo, Read read);
  /// Page Up and Page Down stay with the page that the field is on.
  void leavePageKeys() { m_leavesPageKeys = true; }
  void setPartAt(PartAt partAt) { m_partAt = std::move(partAt); }

  FieldEcho* echo() const { return m_echo; }

  /// True when the number was changed.
  bool step(int steps);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  bool tryStep(const QString& text, const Part& part, int digit, int steps);
  int chosenDigit(const QString& text, const Part& part) const;

  QLineEdit* m_field;
  FieldEcho* m_echo;
  Read m_read;
  PartAt m_partAt;
  bool m_leavesPageKeys = false;
  // The digit of the last step, as long as nothing else was done: 100 stepped down to 0 goes up to 100 again.
  QString m_steppedText;
  int m_steppedCursor = -1;
  int m_digit = 0;
};

/// Up and down arrow, page up and page down, without modifiers: the steps they stand for; 0 for other keys.
int stepsOfKey(const QKeyEvent& key);

}  // namespace ui
