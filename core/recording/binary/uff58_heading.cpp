// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/binary/uff58_heading.h"

#include <charconv>
#include <cmath>

#include "core/recording/characters.h"
#include "core/recording/clean_text.h"

namespace core {
namespace {

/// The field at `begin`, as far as the line goes.
std::string_view field(std::string_view line, std::size_t begin, std::size_t width) {
  return begin < line.size() ? trimmed(line.substr(begin, width)) : std::string_view{};
}

template <class Number>
std::optional<Number> integerIn(std::string_view line, std::size_t begin, std::size_t width) {
  std::string_view text = field(line, begin, width);
  if (text.starts_with('+')) text.remove_prefix(1);
  Number number = 0;
  const auto end = std::from_chars(text.data(), text.data() + text.size(), number);
  if (text.empty() || end.ec != std::errc() || end.ptr != text.data() + text.size()) return std::nullopt;
  return number;
}

std::string words(std::string_view text) {
  std::string plain = cleanName(text);
  return lower(plain) == "none" ? std::string{} : plain;
}

/// Of the response: "TAIL:12 +Z"; directions count X Y Z, then the rotations about them.
std::string placeIn(std::string_view line) {
  constexpr std::array<std::string_view, 7> axes = {"", "X", "Y", "Z", "RX", "RY", "RZ"};
  const std::string entity = words(field(line, 31, 10));
  const int node = integerIn<int>(line, 41, 10).value_or(0);
  const int direction = integerIn<int>(line, 51, 4).value_or(0);
  std::string place = entity.empty() ? std::string{} : entity + ":";
  place += std::to_string(node);
  if (direction != 0 && direction >= -6 && direction <= 6)
    place += std::string(direction > 0 ? " +" : " -") +
             std::string(axes[static_cast<std::size_t>(direction > 0 ? direction : -direction)]);
  return place;
}

/// "    58b     2     2          11        4000": byte order, number format (2 is IEEE 754), lines, bytes.
void readForm(std::string_view marker, Uff58Heading& heading) {
  if (marker.size() < 7 || (marker[6] != 'b' && marker[6] != 'B')) return;
  const int order = integerIn<int>(marker, 7, 6).value_or(0);
  const bool ieee = integerIn<int>(marker, 13, 6).value_or(0) == 2;
  const bool usualHeading = integerIn<std::size_t>(marker, 19, 12).value_or(0) == uff58HeadingLines;
  heading.form = Uff58Form::Unreadable;
  if (ieee && usualHeading && order == 1) heading.form = Uff58Form::LittleEndian;
  if (ieee && usualHeading && order == 2) heading.form = Uff58Form::BigEndian;
  heading.binaryBytes = integerIn<std::uint64_t>(marker, 31, 12).value_or(0);
}

}  // namespace

std::optional<double> uffNumber(std::string_view text) {
  char digits[40];
  text = trimmed(text);
  if (text.starts_with('+')) text.remove_prefix(1);
  if (text.empty() || text.size() > sizeof digits) return std::nullopt;
  std::size_t length = 0;
  for (const char c : text) digits[length++] = c == 'D' || c == 'd' ? 'E' : c;
  double number = 0;
  const auto end = std::from_chars(digits, digits + length, number);
  if (end.ptr != digits + length) return std::nullopt;
  // Too small for a double is as good as 0; too large is not a finite number.
  if (end.ec == std::errc::result_out_of_range) {
    const std::string_view all(digits, length);
    const auto exponent = all.find_first_of("eE");
    const bool small = exponent != std::string_view::npos && all.substr(exponent + 1).starts_with('-');
    return small ? 0.0 : HUGE_VAL;
  }
  if (end.ec != std::errc()) return std::nullopt;
  return number;
}

std::optional<Uff58Heading> uff58Heading(std::string_view marker,
                                         const std::array<std::string, uff58HeadingLines>& lines) {
  Uff58Heading heading;
  readForm(marker, heading);
  heading.title = words(lines[0]);
  heading.place = placeIn(lines[5]);
  const std::string& form = lines[6];
  const auto type = integerIn<int>(form, 0, 10);
  const auto count = integerIn<std::uint64_t>(form, 10, 10);
  const auto spacing = integerIn<int>(form, 20, 10);
  if (!type || !count || !spacing) return std::nullopt;
  heading.ordinateType = *type;
  heading.count = *count;
  heading.even = *spacing == 1;
  heading.start = uffNumber(field(form, 30, 13)).value_or(0);
  heading.increment = uffNumber(field(form, 43, 13)).value_or(0);
  heading.abscissaType = integerIn<int>(lines[7], 0, 10).value_or(0);
  heading.abscissaUnit = words(field(lines[7], 47, 20));
  heading.ordinateUnit = words(field(lines[8], 47, 20));
  return heading;
}

}  // namespace core
