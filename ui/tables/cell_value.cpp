// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/tables/cell_value.h"

#include <QCollator>
#include <QCoreApplication>
#include <QLocale>
#include <QRegularExpression>
#include <algorithm>
#include <array>
#include <cmath>

#include "core/campaign/numbering.h"
#include "core/units/notation.h"
#include "core/units/text.h"
#include "ui/quantity_edit.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr int everyDigit = 17;
constexpr std::size_t farthestName = 1000;  ///< how far apart two names may be to be counted on

/// Units of one kind stand in a column, so the first family that knows the unit orders it well.
constexpr std::array familiesWithUnits = {core::UnitFamily::Resistance,  core::UnitFamily::Output,
                                          core::UnitFamily::Strain,      core::UnitFamily::Voltage,
                                          core::UnitFamily::Power,       core::UnitFamily::Duration,
                                          core::UnitFamily::Frequency,   core::UnitFamily::Area,
                                          core::UnitFamily::Temperature, core::UnitFamily::Length};

bool mayBeNumber(const QString& text) {
  const QChar first = text.isEmpty() ? QChar() : text.front();
  return first.isDigit() || first == '+' || first == '-' || first == QChar(0x2212) || first == '.' ||
         first == ',' || first == QChar(0xB1);
}

/// What fields take as arithmetic, and a day such as 2026-03-02, is no number of a cell.
bool isArithmetic(const QString& text) {
  static const QRegularExpression form(QStringLiteral("[^eE][+\\-\\x{2212}*()]|/\\s*\\d"));
  return text.mid(1).contains(form) || text.contains('(');
}

std::optional<double> quantityIn(const QString& text) {
  if (!mayBeNumber(text) || isArithmetic(text)) return std::nullopt;
  if (const auto number = numberIn(text)) return number;
  QString plain = text;
  if (plain.startsWith(QChar(0xB1))) plain.remove(0, 1);
  if (plain.endsWith("ppm"))
    if (const auto share = numberIn(plain.chopped(3).trimmed())) return *share * 1e-6;
  const std::string bytes = plain.trimmed().toStdString();
  for (const core::UnitFamily family : familiesWithUnits)
    if (const auto value = core::parseQuantity(bytes, family)) return *value;
  return std::nullopt;
}

/// A text that begins with a number: its digits behind the mark, and what comes after the number.
struct NumberWithTail {
  double value = 0;
  int decimals = 0;
  bool hasPlus = false;
  QString tail;
};

std::optional<NumberWithTail> numberWithTail(const QString& text) {
  static const QRegularExpression form(
      QStringLiteral("^\\s*([+\\-\\x{2212}]?)(\\d+(?:[.,](\\d+))?|[.,](\\d+))(\\s*[^\\d\\s].*)?$"),
      QRegularExpression::DotMatchesEverythingOption);
  const auto match = form.match(text);
  if (!match.hasMatch()) return std::nullopt;
  const auto number = numberIn(match.captured(1) + match.captured(2));
  if (!number) return std::nullopt;
  return NumberWithTail{*number, static_cast<int>(match.captured(3).size() + match.captured(4).size()),
                        match.captured(1) == "+", match.captured(5)};
}

QString written(double value, int decimals, const NumberWithTail& like) {
  const double scale = std::pow(10.0, decimals);
  // 0.1 and 0.2 go on to 0.3: the steps are those of the written decimals.
  const double rounded = decimals < 15 ? std::round(value * scale) / scale : value;
  const QString text = numberText(rounded, everyDigit);
  return (like.hasPlus && rounded > 0 ? "+" : "") + text + like.tail;
}

/// Those that stand `from` and more steps behind the first.
QStringList countedOn(const NumberWithTail& first, double step, int decimals, int from, int count) {
  QStringList texts;
  for (int k = from; k < from + count; ++k) texts << written(first.value + k * step, decimals, first);
  return texts;
}

core::Error noSeries(const QString& first, const QString& second) {
  return {"",
          QCoreApplication::translate("ui::CellValue", "no series follows from %1 and %2")
              .arg(toQString(core::inQuotes(first.toStdString())),
                   toQString(core::inQuotes(second.toStdString())))
              .toStdString(),
          QCoreApplication::translate("ui::CellValue",
                                      "Begin with two numbers of one unit, or with two names that end in "
                                      "numbers")
              .toStdString()};
}

/// Every name from `first` on that is as far from the one before as `second` is from `first`.
core::Result<QStringList> namesOn(const QString& first, const QString& second, int count) {
  const core::Document none;
  const std::string from = first.toStdString();
  std::size_t stride = 1, skipped = 0;
  if (!second.isEmpty()) {
    const auto names = core::namesAfter(none, from, farthestName);
    const auto found = std::find(names.begin(), names.end(), second.toStdString());
    if (found == names.end()) return noSeries(first, second);
    stride = skipped = static_cast<std::size_t>(found - names.begin()) + 1;
  }
  const auto names = core::namesAfter(none, from, skipped + stride * static_cast<std::size_t>(count));
  QStringList texts;
  for (int k = 1; k <= count; ++k)
    texts << toQString(names[skipped + stride * static_cast<std::size_t>(k) - 1]);
  return texts;
}

}  // namespace

std::optional<double> numberIn(const QString& text) {
  if (!mayBeNumber(text.trimmed()) || isArithmetic(text.trimmed())) return std::nullopt;
  const auto number = core::parseQuantity(text.trimmed().toStdString(), core::UnitFamily::Plain);
  return number ? std::optional(*number) : std::nullopt;
}

CellKey keyOfCell(const QString& text) {
  const QString plain = text.trimmed();
  if (plain.isEmpty() || plain == QString(QChar(0x2013))) return {};
  if (const auto number = quantityIn(plain)) return {CellKey::Kind::Number, *number, plain};
  return {CellKey::Kind::Text, 0, plain};
}

int compareCells(const CellKey& a, const CellKey& b) {
  if (a.kind != b.kind) return a.kind < b.kind ? -1 : 1;
  if (a.kind == CellKey::Kind::Number) return a.number < b.number ? -1 : a.number > b.number ? 1 : 0;
  static thread_local QCollator collator = [] {
    // Qt has no rules for the C locale.
    QCollator made(QLocale().language() == QLocale::C ? QLocale(QLocale::English) : QLocale());
    made.setNumericMode(true);
    made.setCaseSensitivity(Qt::CaseInsensitive);
    return made;
  }();
  return collator.compare(a.text, b.text);
}

core::Result<QStringList> seriesAfter(const QString& first, const QString& second, int count) {
  const auto a = numberWithTail(first), b = numberWithTail(second);
  if (a && second.isEmpty()) return countedOn(*a, 1, a->decimals, 1, count);
  if (a && b && a->tail.trimmed() == b->tail.trimmed())
    return countedOn(*a, b->value - a->value, std::max(a->decimals, b->decimals), 2, count);
  if (first.isEmpty() || a || b) return noSeries(first, second);
  if (first == second) return QStringList(count, first);
  return namesOn(first, second, count);
}

}  // namespace ui
