// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/text/cell_kind.h"

#include "core/recording/characters.h"
#include "core/recording/text/number.h"
#include "core/recording/text/stamps.h"

namespace core {
namespace {

/// Words that loggers and spreadsheets write where there is no number.
bool standsForNoNumber(std::string_view cell) {
  if (cell.size() > 12) return false;
  if (cell.find_first_not_of("-*?._=") == std::string_view::npos) return true;
  if (cell.find(".#") != std::string_view::npos) return true;  // 1.#QNAN
  return isOneOf(
      lower(cell),
      {"nan",     "-nan", "+nan",  "inf",        "-inf",     "+inf",     "infinity",  "n/a",      "na",
       "n.a.",    "null", "none",  "nil",        "over",     "ovl",      "ovld",      "ovr",      "ol",
       "+ol",     "-ol",  "-over", "+over",      "under",    "overflow", "underflow", "overload", "overrange",
       "invalid", "err",  "#n/a",  "#nv",        "#value!",  "#div/0!",  "#num!",     "#ref!",    "#wert!",
       "missing", "k.a.", "error", "underrange", "nan(ind)", "-nan(ind)"});
}

bool mayBeStamp(std::string_view cell) {
  if (cell.size() < 4 || cell.size() > 48) return false;
  bool digit = false;
  for (const char c : cell.substr(0, 12)) digit = digit || isDigit(c);
  return digit && (isDigit(cell.front()) || isLetter(cell.front()));
}

}  // namespace

CellKind kindOf(std::string_view cell, char decimal) {
  if (cell.empty()) return CellKind::Empty;
  const char first = cell.front();
  if (isDigit(first) || first == '-' || first == '+' || first == '.' || first == ',' || (first & 0x80) != 0) {
    const CellNumber number = readNumber(cell, decimal);
    if (!number.fault) return CellKind::Number;
    if (number.fault != std::string_view("is not a number")) return CellKind::NoNumber;
  }
  if (standsForNoNumber(cell)) return CellKind::NoNumber;
  if (!mayBeStamp(cell)) return CellKind::Words;
  if (readClock(cell)) return CellKind::Clock;
  if (readWrittenDate(cell)) return CellKind::Date;
  return dateWithin(cell) ? CellKind::DateAndTime : CellKind::Words;
}

void kindsOf(const std::vector<std::string_view>& cells, char decimal, std::vector<CellKind>& kinds) {
  kinds.clear();
  for (const std::string_view cell : cells) kinds.push_back(kindOf(cell, decimal));
}

}  // namespace core
