// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/text/number.h"

#include <charconv>
#include <cmath>
#include <string>
#include <system_error>

#include "core/recording/characters.h"

namespace core {
namespace {

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
  if (cell.empty()) return {0, "is empty"};
  std::string plain;  // mostly short enough to need no memory
  if (!asPlain(cell, decimal, plain)) return {0, "is not a number"};
  double value = 0;
  const char* const end = plain.data() + plain.size();
  const auto [stopped, error] = std::from_chars(plain.data(), end, value);
  if (error == std::errc::invalid_argument || stopped != end) return {0, "is not a number"};
  if (error == std::errc::result_out_of_range) return {0, "is beyond the range of numbers"};
  if (!std::isfinite(value)) return {0, "is not a finite number"};
  return {value, nullptr};
}

}  // namespace core
