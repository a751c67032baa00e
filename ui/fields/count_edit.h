// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>

#include "core/units/result.h"
#include "ui/fields/number_edit.h"

class QAction;

namespace ui {

/// The one field for counts: whole numbers from 0 on, exactly, up to 2^64 - 1. Typing, steps, refusing as in
/// NumberEdit; for the mouse it has a minus and a plus.
class CountEdit : public NumberEdit {
  Q_OBJECT

 public:
  explicit CountEdit(QWidget* parent = nullptr);

  void setRange(quint64 least, quint64 greatest);
  quint64 least() const { return m_least; }
  quint64 greatest() const { return m_greatest; }
  /// The least value says this word instead of its digits, and an empty field means it.
  void setLeastWord(const QString& word);
  /// What is counted, behind the number: "%". It may be typed too.
  void setUnit(const QString& unit);
  /// How much a click on minus or plus changes.
  void setMouseStep(quint64 step) { m_mouseStep = step; }
  /// Takes a number when the field is left or by Enter only, not while it is typed.
  void setWaitsForEnter(bool waits) { m_waits = waits; }

  quint64 count() const { return m_count; }
  int value() const { return static_cast<int>(m_count); }
  /// Kept within the range. Tells `valueChanged` when it is another number.
  void setValue(quint64 value);

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

 signals:
  /// By the user or by setValue. While typing too, as soon as the text is a number of the range.
  void valueChanged(quint64 value);

 protected:
  Understood understood(const QString& text) const override;
  void take(const QString& text) override;
  QString shownText() const override;
  void giveBack() override;
  void focusInEvent(QFocusEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  core::Result<std::uint64_t> parsed(const QString& text) const;
  QString textOf(quint64 count) const;
  void tell(quint64 value);
  void stepByMouse(bool up);
  void drawSigns();

  quint64 m_least = 0;
  quint64 m_greatest = 99;
  quint64 m_count = 0;
  quint64 m_before = 0;  ///< when the keyboard came
  quint64 m_mouseStep = 1;
  QString m_leastWord;
  QString m_unit;
  QAction* m_fewer;
  QAction* m_more;
  bool m_waits = false;
};

}  // namespace ui
