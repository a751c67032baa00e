// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/text/number.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <iterator>
#include <string>
#include <system_error>

#include "core/recording/characters.h"
#include "core/units/language.h"

namespace core {
namespace {

/// Whether `cell`, without its sign, is digits in groups of three with `mark` (one character, of one to three
/// bytes) between, and behind them at most `decimal` and digits. Puts it without the marks into `plain`.
bool isGrouped(std::string_view cell, std::string_view mark, char decimal, std::string& plain) {
  plain.clear();
  if (cell.starts_with('-') || cell.starts_with('+')) {
    if (cell.front() == '-') plain = '-';
    cell.remove_prefix(1);
  }
  const auto digits = [&] {
    std::size_t count = 0;
    for (; !cell.empty() && isDigit(cell.front()); ++count, cell.remove_prefix(1)) plain += cell.front();
    return count;
  };
  if (cell.starts_with('0')) return false;
  const std::size_t first = digits();
  if (first < 1 || first > 3) return false;
  std::size_t groups = 0;
  for (; cell.starts_with(mark); ++groups) {
    cell.remove_prefix(mark.size());
    if (digits() != 3) return false;
  }
  const bool hasFraction = !cell.empty() && cell.front() == decimal;
  if (hasFraction) {
    plain += '.';
    cell.remove_prefix(1);
    if (digits() == 0) return false;
  }
  // One comma or point alone may be the decimal sign, and one blank may part two numbers.
  const bool isPlain = mark == "'" || mark == "\xE2\x80\x99" || groups > 1 || hasFraction;
  return groups > 0 && cell.empty() && isPlain;
}

/// A number with thousands separators that can be nothing else: point, comma, apostrophe, blank, or the
/// no-break and thin blanks of UTF-8.
bool isGrouped(std::string_view cell, char decimal, std::string& plain) {
  constexpr std::string_view marks[] = {
      ",", ".", "'", "\xE2\x80\x99", " ", "\xC2\xA0", "\xE2\x80\xAF", "\xE2\x80\x89"};
  const std::size_t sign = cell.starts_with('-') || cell.starts_with('+') ? 1 : 0;
  std::size_t first = sign;
  while (first < cell.size() && first <= sign + 3 && isDigit(cell[first])) ++first;
  const std::string_view behind = cell.substr(first);
  return std::any_of(std::begin(marks), std::end(marks), [&](std::string_view mark) {
    return behind.starts_with(mark) && mark.front() != decimal && isGrouped(cell, mark, decimal, plain);
  });
}

/// `cell` as std::from_chars takes it; false when it cannot be a number.
bool asPlain(std::string_view cell, char decimal, std::string& plain) {
  constexpr std::string_view minus = "\xE2\x88\x92";
  const bool negative = cell.starts_with(minus) || cell.starts_with('-');
  if (cell.starts_with(minus)) {
    cell.remove_prefix(minus.size());
  } else if (negative || cell.starts_with('+')) {
    cell.remove_prefix(1);
  }
  if (cell.empty() || cell.front() == '+' || cell.front() == '-') return false;
  if (negative) plain = '-';
  for (std::size_t i = 0; i < cell.size(); ++i) {
    char c = cell[i];
    const bool mark = c == '.' || c == ',';
    if (mark && c != decimal) return false;
    // A decimal comma needs a digit on its right, or "1," in "1, 2" would count.
    if (c == ',' && (i + 1 >= cell.size() || !isDigit(cell[i + 1]))) return false;
    if (mark) c = '.';
    if ((c == 'd' || c == 'D') && i > 0 && (isDigit(cell[i - 1]) || cell[i - 1] == decimal)) c = 'e';
    plain += c;
  }
  return true;
}

}  // namespace

CellNumber readNumber(std::string_view cell, char decimal) {
  if (cell.empty()) return {0, sayLater("is empty").data()};
  std::string plain;  // mostly short enough to need no memory
  if (!isGrouped(cell, decimal, plain)) {
    plain.clear();
    if (!asPlain(cell, decimal, plain)) return {0, sayLater("is not a number").data()};
  }
  double value = 0;
  const char* const end = plain.data() + plain.size();
  const auto [stopped, error] = std::from_chars(plain.data(), end, value);
  if (error == std::errc::invalid_argument || stopped != end) return {0, sayLater("is not a number").data()};
  if (error == std::errc::result_out_of_range) return {0, sayLater("is beyond the range of numbers").data()};
  if (!std::isfinite(value)) return {0, sayLater("is not a finite number").data()};
  // SCPI-99 volume 1, 7.2.1.5: numbers that instruments send in place of what is none.
  if (std::abs(value) == 9.91e37) return {0, sayLater("is 'not a number' of SCPI (9.91E37)").data()};
  if (std::abs(value) == 9.9e37)
    return {0, sayLater("is 'infinity' of SCPI (9.9E37), mostly an overload").data()};
  return {value, nullptr};
}

}  // namespace core
