// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stock/stock_text.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <charconv>

#include "core/units/language.h"
#include "core/units/notation.h"
#include "core/units/text.h"

namespace core {
namespace {

constexpr std::string_view dialsMend =
    sayLater("Write positions times step of each dial, such as 10x10k 10x1k 10x100");

std::string_view trimmed(std::string_view text) {
  const std::size_t first = text.find_first_not_of(' ');
  return first == text.npos ? std::string_view() : text.substr(first, text.find_last_not_of(' ') - first + 1);
}

/// One spelling of the sign between positions and step.
std::string withPlainSigns(std::string_view text) {
  std::string plain(text);
  for (std::size_t at = plain.find("×"); at != plain.npos; at = plain.find("×"))
    plain.replace(at, std::string_view("×").size(), "x");
  std::replace(plain.begin(), plain.end(), '*', 'x');
  std::replace(plain.begin(), plain.end(), 'X', 'x');
  return plain;
}

Result<Decade> decadeFromText(std::string_view word) {
  const Error fault{"", say("{1} is no dial", {inQuotes(word)}), say(dialsMend)};
  const std::size_t sign = word.find('x');
  if (sign == word.npos) return fault;
  Decade decade;
  const auto read = std::from_chars(word.data(), word.data() + sign, decade.positions);
  if (sign == 0 || read.ec != std::errc{} || read.ptr != word.data() + sign) return fault;
  const auto step = parseQuantity(word.substr(sign + 1), UnitFamily::Resistance);
  if (!step) return fault;
  decade.step = Resistance(*step);
  return decade;
}

}  // namespace

std::string letterCode(Resistance value, int digits) {
  assert(value > Resistance(0) && digits >= 1 && digits <= 17);
  std::array<char, 32> buffer;
  const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value.base(),
                                 std::chars_format::scientific, digits - 1);
  std::string code(buffer.data(), end.ptr);
  const int exponent = std::stoi(code.substr(code.find('e') + 1));
  code.erase(code.find('e'));
  std::erase(code, '.');

  constexpr std::string_view letters = "RkMG";
  const int group = std::clamp(exponent / 3, 0, 3);
  const int before = exponent - 3 * group + 1;  // digits before the letter
  if (before <= 0) return "R" + std::string(static_cast<std::size_t>(-before), '0') + code;
  const auto at = static_cast<std::size_t>(before);
  if (code.size() < at) code.append(at - code.size(), '0');
  return code.insert(at, 1, letters[static_cast<std::size_t>(group)]);
}

std::string decadesText(const std::vector<Decade>& decades) {
  std::string text;
  for (const Decade& decade : decades) {
    std::string step = formatQuantity(decade.step.base(), UnitFamily::Resistance, {}, 17);
    std::erase(step, ' ');
    step.erase(step.find("Ω"));
    text += (text.empty() ? "" : " ") + std::to_string(decade.positions) + "x" + step;
  }
  return text;
}

Result<std::vector<Decade>> decadesFromText(std::string_view text) {
  std::vector<Decade> decades;
  const std::string plain = withPlainSigns(text);
  for (std::string_view rest = trimmed(plain); !rest.empty();) {
    const std::size_t end = std::min(rest.find(' '), rest.size());
    const auto decade = decadeFromText(rest.substr(0, end));
    if (!decade) return decade.error();
    decades.push_back(*decade);
    rest = trimmed(rest.substr(end));
  }
  if (decades.empty()) return Error{"", say("there are no dials"), say(dialsMend)};
  return decades;
}

Result<double> shareFromText(std::string_view text) {
  constexpr std::string_view mend =
      sayLater("Write it with a percent sign or ppm, such as 0.01 % or 100 ppm");
  std::string_view number = trimmed(text);
  if (number.starts_with("±")) number.remove_prefix(std::string_view("±").size());
  if (number.ends_with("ppm")) {
    const auto millionths = parseQuantity(number.substr(0, number.size() - 3), UnitFamily::Plain);
    if (millionths) return *millionths / 1e6;
  } else if (number.ends_with("%")) {
    const auto share = parseQuantity(number, UnitFamily::Percent);
    if (share) return *share;
  }
  return Error{"", say("{1} is no share", {inQuotes(text)}), say(mend)};
}

}  // namespace core
