// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/quantity_edit.h"

#include <QLocale>
#include <QRegularExpression>

#include "core/units/text.h"
#include "ui/fields/digit_keys.h"
#include "ui/theme.h"

namespace ui {
namespace {

/// The number in the base unit, its digits in groups of three with thin spaces, which no one takes for a
/// mark.
QString baseText(double base, core::UnitFamily family, const QString& unit) {
  QString text = toQString(core::formatInBaseUnit(base, family, unit.toStdString()));
  const qsizetype begin = text.startsWith('-') ? 1 : 0;
  qsizetype end = begin;
  while (end < text.size() && text[end].isDigit()) ++end;
  const bool point = end < text.size() && text[end] == '.';
  if (point) text.replace(end, 1, QLocale().decimalPoint());
  if (end - begin > 4)
    for (qsizetype at = end - 3; at > begin; at -= 3) text.insert(at, QChar(0x202F));
  return text;
}

/// "1,234" where a comma is for thousands elsewhere in the user's language, and the other way round.
bool hasForeignMark(const QString& text) {
  static const QRegularExpression threePlaces("^[^0-9]*[0-9]{1,3}([.,])[0-9]{3}(?![0-9])");
  const auto match = threePlaces.match(text);
  return match.hasMatch() && match.captured(1) != QLocale().decimalPoint();
}

/// Of "1 min 30 s" the part that the cursor is in; else all of it.
DigitKeys::Part timePart(const QString& text, qsizetype cursor) {
  static const QRegularExpression behindUnit("(h|min)\\s*(?=[0-9])");
  DigitKeys::Part part{0, text.size()};
  for (auto found = behindUnit.globalMatch(text); found.hasNext();) {
    const qsizetype begin = found.next().capturedEnd();
    if (begin <= cursor) part.begin = begin;
  }
  return part;
}

}  // namespace

QString quantityText(double base, core::UnitFamily family, const QString& unit, int significantDigits) {
  QString text = toQString(core::formatQuantity(base, family, unit.toStdString(), significantDigits));
  const QString mark = QLocale().decimalPoint();
  // Only the number's own mark: a unit such as "kp.m" keeps its point.
  const qsizetype point = text.indexOf('.'), space = text.indexOf(' ');
  if (mark != "." && point >= 0 && (space < 0 || point < space)) text.replace(point, 1, mark);
  return text;
}

QString numberText(double value, int significantDigits) {
  return toQString(core::formatNumber(value, significantDigits)).replace('.', QLocale().decimalPoint());
}

QString fixedNumberText(double value, int decimals) {
  return toQString(core::formatFixed(value, decimals)).replace('.', QLocale().decimalPoint());
}

Understood understoodQuantity(const QString& text, core::UnitFamily family, const QString& unit) {
  const auto value = core::parseQuantity(text.toStdString(), family, unit.toStdString());
  if (!value) return {false, toText(value.error())};
  const QString field = quantityText(*value, family, unit), base = baseText(*value, family, unit);
  QString words = field == base ? QString("= %1").arg(field) : QString("= %1 = %2").arg(field, base);
  if (hasForeignMark(text))
    words += ' ' + (text.contains(',') ? QuantityEdit::tr("(the comma is the decimal mark)")
                                       : QuantityEdit::tr("(the point is the decimal mark)"));
  return {true, words};
}

QuantityEdit::QuantityEdit(core::UnitFamily family, QWidget* parent) : NumberEdit(parent), m_family(family) {
  if (family == core::UnitFamily::Duration) digitKeys()->setPartAt(timePart);
}

void QuantityEdit::setLeast(double least, bool inclusive) {
  m_least = least;
  m_inclusive = inclusive;
}

void QuantityEdit::setGreatest(double greatest, bool inclusive) {
  m_greatest = greatest;
  m_greatestInclusive = inclusive;
}

void QuantityEdit::setOptional(const QString& meaning) {
  m_optional = true;
  setPlaceholderText(meaning);
}

void QuantityEdit::setValue(std::optional<double> base) {
  // Neither half-typed nor refused text is lost because another field was changed.
  if (m_value == base && (isRefused() || (hasFocus() && isModified()))) return;
  m_value = base;
  showValue();
}

QString QuantityEdit::shownText() const {
  return m_value ? quantityText(*m_value, m_family, m_unit, m_digits) : QString();
}

core::Result<double> QuantityEdit::parsed(const QString& text) const {
  const auto value = core::parseQuantity(text.toStdString(), m_family, m_unit.toStdString());
  if (!value) return value;
  const auto refusal = [&](const QString& what, const QString& mend, double limit) {
    return core::Error{"", what.arg(toQString(core::inQuotes(text.toStdString()))).toStdString(),
                       mend.arg(quantityText(limit, m_family, m_unit)).toStdString()};
  };
  if (m_least && (m_inclusive ? *value < *m_least : *value <= *m_least))
    return refusal(tr("%1 is too small"), m_inclusive ? tr("Enter at least %1") : tr("Enter more than %1"),
                   *m_least);
  if (m_greatest && (m_greatestInclusive ? *value > *m_greatest : *value >= *m_greatest))
    return refusal(tr("%1 is too large"),
                   m_greatestInclusive ? tr("Enter at most %1") : tr("Enter less than %1"), *m_greatest);
  return value;
}

Understood QuantityEdit::understood(const QString& text) const {
  if (m_optional && text.trimmed().isEmpty()) return {true, QString("= %1").arg(placeholderText())};
  const auto value = parsed(text);
  return value ? understoodQuantity(text, m_family, m_unit) : Understood{false, toText(value.error())};
}

void QuantityEdit::take(const QString& text) {
  if (m_optional && text.trimmed().isEmpty()) {
    m_value.reset();
    showValue();
    emit cleared();
    return;
  }
  const auto value = parsed(text);
  if (!value) return;
  m_value = *value;
  showValue();
  emit valueEdited(*value);
}

}  // namespace ui
