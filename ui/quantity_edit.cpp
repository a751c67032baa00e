// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/quantity_edit.h"

#include <QKeyEvent>
#include <QLocale>

#include "core/units/text.h"
#include "ui/theme.h"

namespace ui {

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

QuantityEdit::QuantityEdit(core::UnitFamily family, QWidget* parent) : QLineEdit(parent), m_family(family) {
  installEventFilter(new FieldUndoFilter(this));
  connect(this, &QLineEdit::editingFinished, this, &QuantityEdit::commit);
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
  if (m_value == base && (m_refused || (hasFocus() && isModified()))) return;
  m_value = base;
  showValue();
}

void QuantityEdit::showValue() {
  const QString shown = m_value ? quantityText(*m_value, m_family, m_unit, m_digits) : QString();
  if (text() != shown) {
    setText(shown);
    if (!hasFocus()) setCursorPosition(0);  // a long number shows its first digits
  }
  setModified(false);
  m_refused = false;
  setToolTip({});
  setStyleSheet({});
}

core::Result<double> QuantityEdit::parsed() const {
  const auto value = core::parseQuantity(text().toStdString(), m_family, m_unit.toStdString());
  if (!value) return value;
  const bool tooSmall = m_least && (m_inclusive ? *value < *m_least : *value <= *m_least);
  const auto limit = [&](double base) { return quantityText(base, m_family, m_unit).toStdString(); };
  if (tooSmall)
    return core::Error{"", core::inQuotes(text().toStdString()) + " is too small",
                       std::string(m_inclusive ? "Enter at least " : "Enter more than ") + limit(*m_least)};
  const bool tooLarge = m_greatest && (m_greatestInclusive ? *value > *m_greatest : *value >= *m_greatest);
  if (tooLarge)
    return core::Error{
        "", core::inQuotes(text().toStdString()) + " is too large",
        std::string(m_greatestInclusive ? "Enter at most " : "Enter less than ") + limit(*m_greatest)};
  return value;
}

void QuantityEdit::commit() {
  if (!isModified()) return;
  if (m_optional && text().trimmed().isEmpty()) {
    m_value.reset();
    showValue();
    emit cleared();
    return;
  }
  const auto value = parsed();
  if (!value) {
    core::Error error = value.error();
    error.where = accessibleName().toStdString();
    refuse(toText(error));
    return;
  }
  m_value = *value;
  showValue();
  emit valueEdited(*value);
}

void QuantityEdit::refuse(const QString& reason) {
  m_refused = true;
  setToolTip(reason.toHtmlEscaped());
  setAccessibleDescription(reason);
  setStyleSheet(QString("QLineEdit { border: 2px solid %1; }").arg(coloursFor(palette()).fail.name()));
  emit refused(reason);
}

void QuantityEdit::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape && (isModified() || m_refused)) {
    showValue();
    return;
  }
  QLineEdit::keyPressEvent(event);
}

}  // namespace ui
