// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/digit_step.h"

#include <algorithm>
#include <charconv>

namespace core {
namespace {

constexpr std::size_t mostDigits = 18;  // what a signed 64-bit integer holds in any case

bool isFigure(char c) { return c >= '0' && c <= '9'; }

/// Where the parts of the number are: [sign, begin) is the sign, [begin, end) digits with at most one mark.
struct NumberPlace {
  std::size_t sign = 0;
  std::size_t begin = 0;
  std::size_t end = 0;
  std::size_t mark;  ///< npos: none
  bool negative = false;
};

/// Bytes of the sign at `at`; minus is a hyphen, U+2212 or a dash U+2010 to U+2015.
std::size_t signLength(std::string_view text, std::size_t at) {
  const std::string_view rest = text.substr(std::min(at, text.size()));
  if (rest.starts_with('-') || rest.starts_with('+')) return 1;
  if (rest.starts_with("\u2212")) return 3;
  return rest.size() > 3 && rest.starts_with("\xE2\x80") && rest[2] >= '\x90' && rest[2] <= '\x95' ? 3 : 0;
}

std::optional<NumberPlace> findNumber(std::string_view text) {
  NumberPlace place{.mark = std::string_view::npos};
  place.sign = std::min(text.find_first_not_of(" \t"), text.size());
  place.begin = place.sign + signLength(text, place.sign);
  place.negative = place.begin > place.sign && text[place.sign] != '+';
  place.end = place.begin;
  for (; place.end < text.size(); ++place.end) {
    const char c = text[place.end];
    if (isFigure(c)) continue;
    // A letter is a mark only between digits, or as in R47; "47k" and "5 mV" end with their digits.
    const bool isMark = std::string_view(".,RrkKMGTL").find(c) != std::string_view::npos &&
                        place.mark == std::string_view::npos;
    const bool point = c == '.' || c == ',';
    const bool digitFollows = place.end + 1 < text.size() && isFigure(text[place.end + 1]);
    if (!isMark || (!digitFollows && !point)) break;
    place.mark = place.end;
  }
  const auto digits = std::count_if(text.begin() + static_cast<std::ptrdiff_t>(place.begin),
                                    text.begin() + static_cast<std::ptrdiff_t>(place.end), isFigure);
  if (digits == 0 || static_cast<std::size_t>(digits) > mostDigits) return std::nullopt;
  return place;
}

long long powerOfTen(int exponent) {
  long long power = 1;
  for (; exponent > 0; --exponent) power *= 10;
  return power;
}

/// The digits of `place` as a whole number, with its sign.
long long wholeNumber(std::string_view text, const NumberPlace& place) {
  long long number = 0;
  for (std::size_t at = place.begin; at < place.end; ++at)
    if (isFigure(text[at])) number = 10 * number + (text[at] - '0');
  return place.negative ? -number : number;
}

/// The digits of a number that has `places` of them behind its mark and at least `least` before it.
std::string spelt(long long magnitude, std::string_view mark, std::size_t places, std::size_t least) {
  std::string digits = std::to_string(magnitude);
  if (digits.size() < places + least) digits.insert(0, places + least - digits.size(), '0');
  if (!mark.empty()) digits.insert(digits.size() - places, mark);
  return digits;
}

}  // namespace

std::optional<int> digitAt(std::string_view text, std::size_t cursor) {
  const auto place = findNumber(text);
  if (!place) return std::nullopt;
  int behind = 0, all = 0;
  for (std::size_t at = place->begin; at < place->end; ++at) {
    if (!isFigure(text[at])) continue;
    ++all;
    if (at >= cursor) ++behind;
  }
  return std::min(behind, all - 1);
}

std::optional<SteppedText> stepped(std::string_view text, int digit, long long steps) {
  const auto place = findNumber(text);
  if (!place || digit < 0 || digit >= static_cast<int>(mostDigits) - 1) return std::nullopt;
  if (steps > 1000 || steps < -1000) return std::nullopt;
  const long long limit = powerOfTen(static_cast<int>(mostDigits));
  const long long weight = powerOfTen(digit);
  if (weight > limit / 1000 && (steps > 9 || steps < -9)) return std::nullopt;
  const long long sum = wholeNumber(text, *place) + steps * weight;
  const long long magnitude = sum < 0 ? -sum : sum;
  if (magnitude >= limit) return std::nullopt;
  const bool marked = place->mark != std::string_view::npos;
  const std::size_t places = marked ? place->end - place->mark - 1 : 0;
  const std::size_t least = marked && place->mark == place->begin ? 0 : 1;
  const std::string number = spelt(magnitude, marked ? text.substr(place->mark, 1) : "", places, least);
  std::string_view sign = text.substr(place->sign, place->begin - place->sign);
  if (sum < 0 && !place->negative) sign = "-";
  if (sum >= 0 && place->negative) sign = "";
  SteppedText result{std::string(text.substr(0, place->sign)).append(sign), 0};
  // From the right end: as many digits as stand behind the stepped one, and the mark when it is among them.
  const std::size_t behind =
      static_cast<std::size_t>(digit) + (marked && places <= static_cast<std::size_t>(digit) ? 1 : 0);
  result.cursor = result.text.size() + (number.size() > behind ? number.size() - behind : 0);
  result.text.append(number).append(text.substr(place->end));
  return result;
}

}  // namespace core
