// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/units/notation.h"
#include "ui/fields/number_edit.h"

namespace ui {

/// `base` as a field shows it, with the user's decimal mark.
QString quantityText(double base, core::UnitFamily family, const QString& unit = {},
                     int significantDigits = 12);
/// A number without unit in at most that many significant digits, with the user's decimal mark.
QString numberText(double value, int significantDigits);
/// The same with a fixed number of places after the mark.
QString fixedNumberText(double value, int decimals);

/// How a field of that kind understands a text: "= 59.9 kΩ = 59 900 Ω", in the unit of the field and in the
/// base unit, or why it does not.
Understood understoodQuantity(const QString& text, core::UnitFamily family, const QString& unit = {});

/// The one field for numbers with units; how it is typed in, stepped and refused tells NumberEdit.
class QuantityEdit : public NumberEdit {
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
  std::optional<double> value() const { return m_value; }

 signals:
  void valueEdited(double base);
  void cleared();

 protected:
  Understood understood(const QString& text) const override;
  void take(const QString& text) override;
  QString shownText() const override;

 private:
  core::Result<double> parsed(const QString& text) const;

  core::UnitFamily m_family;
  QString m_unit;
  std::optional<double> m_value;
  std::optional<double> m_least;
  std::optional<double> m_greatest;
  bool m_inclusive = true;
  bool m_greatestInclusive = true;
  int m_digits = 12;
  bool m_optional = false;
};

}  // namespace ui
