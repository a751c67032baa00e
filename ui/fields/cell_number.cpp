// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/fields/cell_number.h"

#include <QCoreApplication>
#include <QLineEdit>
#include <QRegularExpression>

#include "ui/fields/digit_keys.h"
#include "ui/fields/field_echo.h"
#include "ui/quantity_edit.h"

namespace ui {
namespace {

/// Cells take words too ("open", "none"); only what begins like a number is explained. A plus-minus sign may
/// stand before a tolerance.
Understood understoodInCell(QString text, const CellNumber& number) {
  text = text.trimmed();
  if (text.startsWith(QChar(0xB1))) text = text.mid(1).trimmed();
  // "59.906k ± 0.6" of a certificate: the value.
  if (number.family == core::UnitFamily::Resistance) text = text.section(QChar(0xB1), 0, 0).trimmed();
  if (text.isEmpty()) return {};
  const auto family = number.family == core::UnitFamily::Percent || !text.endsWith('%') ? number.family
                      : number.family == core::UnitFamily::Strain                       ? number.family
                                                                  : core::UnitFamily::Percent;
  const Understood understood = understoodQuantity(text, family, number.unit);
  static const QString beginnings = QStringLiteral("+-−.,0123456789");
  return understood.taken || beginnings.contains(text.front()) ? understood : Understood{};
}

const QRegularExpression& betweenNumbers() {
  static const QRegularExpression between("\\s*[;\\n\\r\\t]\\s*|,\\s+");
  return between;
}

Understood understoodList(const QString& text, const CellNumber& number) {
  QStringList words;
  for (const QString& part : text.split(betweenNumbers())) {
    if (part.trimmed().isEmpty()) continue;
    const Understood one = understoodInCell(part, number);
    if (!one.taken) return one;
    words << one.words.section('=', 1, 1).trimmed();
  }
  if (words.size() <= 1) return {!words.isEmpty(), words.isEmpty() ? QString() : "= " + words.front()};
  constexpr int inFull = 6;
  const qsizetype count = words.size();
  if (count > inFull) words = words.mid(0, inFull) << QStringLiteral("…");
  return {true,
          QCoreApplication::translate("ui::NumberEdit", "%n number(s): %1", nullptr, static_cast<int>(count))
              .arg(words.join("; "))};
}

/// The number of the list that the cursor is in.
DigitKeys::Part listPart(const QString& text, qsizetype cursor) {
  DigitKeys::Part part{0, text.size()};
  for (auto found = betweenNumbers().globalMatch(text); found.hasNext();) {
    const auto match = found.next();
    if (match.capturedEnd() <= cursor) part.begin = match.capturedEnd();
    if (match.capturedStart() < cursor) continue;
    part.end = match.capturedStart();
    break;
  }
  return part;
}

DigitKeys* attachReader(QLineEdit* field, const DigitKeys::Read& read) {
  auto* echo = new FieldEcho(field);
  QObject::connect(field, &QLineEdit::textEdited, echo,
                   [echo, read](const QString& text) { echo->say(read(text)); });
  return new DigitKeys(field, echo, read);
}

}  // namespace

QVariant cellNumber(core::UnitFamily family, const QString& unit) {
  return QVariant::fromValue(CellNumber{family, unit});
}

void attachCellNumber(QLineEdit* editor, const QModelIndex& cell) {
  const QVariant value = cell.data(cellNumberRole);
  if (!value.canConvert<CellNumber>()) return;
  editor->installEventFilter(new FieldUndoFilter(editor));
  attachNumber(editor, [number = value.value<CellNumber>()] { return number; });
}

void attachNumber(QLineEdit* field, const std::function<std::optional<CellNumber>()>& number) {
  attachReader(field, [number](const QString& text) {
    const auto now = number();
    return now ? understoodInCell(text, *now) : Understood{};
  });
}

DigitKeys* attachNumberList(QLineEdit* field, const std::function<std::optional<CellNumber>()>& number) {
  DigitKeys* keys = attachReader(field, [number](const QString& text) {
    const auto now = number();
    return now ? understoodList(text, *now) : Understood{};
  });
  keys->setPartAt(listPart);
  return keys;
}

}  // namespace ui
