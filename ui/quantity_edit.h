// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLineEdit>
#include <optional>

#include "core/units/notation.h"

namespace ui {

/// `base` as a field shows it, with the user's decimal mark.
QString quantityText(double base, core::UnitFamily family, const QString& unit = {},
                     int significantDigits = 12);
/// A number without unit in at most that many significant digits, with the user's decimal mark.
QString numberText(double value, int significantDigits);
/// The same with a fixed number of places after the mark.
QString fixedNumberText(double value, int decimals);

/// Passes Ctrl+Z and Ctrl+Y on to the window once the field itself has nothing left to undo.
class FieldUndoFilter : public QObject {
 public:
  using QObject::QObject;
  bool eventFilter(QObject* watched, QEvent* event) override;
};

/// The one field for numbers with units. Text becomes a quantity when the user leaves the field or
/// presses Enter; text that says no quantity stays for mending, marked, with the reason, and nothing
/// is changed. Escape brings the last value back.
class QuantityEdit : public QLineEdit {
  Q_OBJECT

 public:
  explicit QuantityEdit(core::UnitFamily family, QWidget* parent = nullptr);

  /// For UnitFamily::Named: the unit that may follow the number.
  void setUnit(const QString& unit) { m_unit = unit; }
  /// Values must be above (or at least, when `inclusive`) `least`, in the base unit.
  void setLeast(double least, bool inclusive);
  void setGreatest(double greatest, bool inclusive = true);
  /// Shows no more digits than that; what is typed is kept in full.
  void setShownDigits(int significantDigits) { m_digits = significantDigits; }
  /// Allows an empty field, which says `meaning` ("none").
  void setOptional(const QString& meaning);

  /// Shows a value unless the user is in the middle of typing another.
  void setValue(std::optional<double> base);

  /// Takes what was typed, as leaving the field does.
  void commit();
  bool isRefused() const { return m_refused; }

 signals:
  void valueEdited(double base);
  void cleared();
  void refused(const QString& reason);

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  void refuse(const QString& reason);
  void showValue();
  core::Result<double> parsed() const;

  core::UnitFamily m_family;
  QString m_unit;
  std::optional<double> m_value;
  std::optional<double> m_least;
  std::optional<double> m_greatest;
  bool m_inclusive = true;
  bool m_greatestInclusive = true;
  int m_digits = 12;
  bool m_optional = false;
  bool m_refused = false;
};

}  // namespace ui
