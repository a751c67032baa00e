// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <cstddef>

#include "core/units/notation.h"
#include "core/units/notation_units.h"

// Numbers as text; notation.cpp has the way back.

namespace core {
namespace {

/// A finite number's digits: 0.d1d2d3... times ten to the `exponent`, no trailing zeros; zero has none.
struct Digits {
  bool negative = false;
  std::string digits;
  int exponent = 0;
};

Digits digitsOf(double value, int significantDigits) {
  const auto scientific = [&](auto... precision) {
    std::array<char, 64> buffer;
    const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), std::abs(value),
                                   std::chars_format::scientific, precision...);
    return std::string(buffer.data(), end.ptr);
  };
  const std::string shortest = scientific();
  const auto wanted = static_cast<std::size_t>(std::clamp(significantDigits, 1, 17));
  const bool tooLong = shortest.find('e') > wanted + 1;  // the digits and their point
  const std::string text = tooLong ? scientific(static_cast<int>(wanted) - 1) : shortest;

  Digits result{std::signbit(value), text.substr(0, text.find('e')),
                std::stoi(text.substr(text.find('e') + 1)) + 1};
  std::erase(result.digits, '.');
  result.digits.erase(result.digits.find_last_not_of('0') + 1);
  if (result.digits.empty()) return {};
  return result;
}

std::string decimalText(const Digits& number) {
  if (number.digits.empty()) return "0";
  const auto count = static_cast<int>(number.digits.size());
  std::string text = number.digits;
  if (number.exponent < -6 || number.exponent > 15) {
    if (count > 1) text.insert(1, ".");
    text += "e" + std::to_string(number.exponent - 1);
  } else if (number.exponent <= 0) {
    text = "0." + std::string(static_cast<std::size_t>(-number.exponent), '0') + text;
  } else if (number.exponent < count) {
    text.insert(static_cast<std::size_t>(number.exponent), ".");
  } else {
    text.append(static_cast<std::size_t>(number.exponent - count), '0');
  }
  return (number.negative ? "-" : "") + text;
}

constexpr std::string_view noNumber = "–";
constexpr double leastScientific = 1e15;  ///< no number of use has more digits before its point

}  // namespace

std::string formatQuantity(double base, UnitFamily family, std::string_view namedUnit,
                           int significantDigits) {
  if (!std::isfinite(base)) return std::string(noNumber);
  Digits number = digitsOf(base, significantDigits);
  std::string unit(family == UnitFamily::Named ? namedUnit : notationOf(family).fieldUnit);
  number.exponent -= notationOf(family).fieldExponent;
  if (family == UnitFamily::Resistance && number.exponent > 3) {  // 1000 ohm and more
    const bool mega = number.exponent > 6;
    number.exponent -= mega ? 6 : 3;
    unit = mega ? "MΩ" : "kΩ";
  }
  const std::string text = decimalText(number);
  return unit.empty() ? text : text + " " + unit;
}

std::string formatInBaseUnit(double base, UnitFamily family, std::string_view namedUnit,
                             int significantDigits) {
  if (!std::isfinite(base)) return std::string(noNumber);
  const std::string text = decimalText(digitsOf(base, significantDigits));
  const std::string_view unit = family == UnitFamily::Named ? namedUnit : notationOf(family).baseUnit;
  return unit.empty() ? text : text + " " + std::string(unit);
}

std::string formatNumber(double value, int significantDigits) {
  if (!std::isfinite(value)) return std::string(noNumber);
  return decimalText(digitsOf(value, significantDigits));
}

std::string formatFixed(double value, int decimals) {
  if (!std::isfinite(value)) return std::string(noNumber);
  if (std::abs(value) >= leastScientific) return formatNumber(value, 6);
  std::array<char, 80> buffer;  // a sign, 16 digits before the point, 50 behind it
  const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value,
                                 std::chars_format::fixed, std::clamp(decimals, 0, 50));
  std::string text(buffer.data(), end.ptr);
  if (text[0] == '-' && text.find_first_of("123456789") == std::string::npos) text.erase(0, 1);
  return text;
}

}  // namespace core
