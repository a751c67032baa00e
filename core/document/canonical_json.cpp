// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/document/canonical_json.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <charconv>
#include <cmath>
#include <cstdint>

namespace core {
namespace {

/// A positive number as its digits and the place of its point: 0.digits times ten to `point`.
struct Decimal {
  std::string digits;
  int point = 0;
};

Decimal shortestDecimal(double number) {
  std::array<char, 32> buffer;
  const auto end =
      std::to_chars(buffer.data(), buffer.data() + buffer.size(), number, std::chars_format::scientific);
  const std::string_view text(buffer.data(), static_cast<std::size_t>(end.ptr - buffer.data()));
  const std::size_t mark = text.find('e');
  Decimal decimal;
  for (const char c : text.substr(0, mark))
    if (c != '.') decimal.digits += c;
  // from_chars knows no plus sign.
  const std::size_t begin = text[mark + 1] == '+' ? mark + 2 : mark + 1;
  std::from_chars(text.data() + begin, text.data() + text.size(), decimal.point);
  ++decimal.point;
  return decimal;
}

void appendPositive(std::string& text, double number) {
  const auto [digits, n] = shortestDecimal(number);
  const int k = static_cast<int>(digits.size());
  if (k <= n && n <= 21) {
    text.append(digits).append(static_cast<std::size_t>(n - k), '0');
  } else if (0 < n && n <= 21) {
    const auto whole = static_cast<std::size_t>(n);
    text.append(digits, 0, whole).append(".").append(digits, whole);
  } else if (-6 < n && n <= 0) {
    text.append("0.").append(static_cast<std::size_t>(-n), '0').append(digits);
  } else {
    text += digits[0];
    if (k > 1) text.append(".").append(digits, 1);
    text.append(n > 0 ? "e+" : "e-").append(std::to_string(std::abs(n - 1)));
  }
}

void appendEscaped(std::string& text, char c) {
  constexpr std::string_view named = "\"\\\b\t\n\f\r", letters = "\"\\btnfr";
  if (const std::size_t at = named.find(c); at != named.npos) {
    text.append({'\\', letters[at]});
    return;
  }
  constexpr std::string_view hexadecimal = "0123456789abcdef";
  const auto code = static_cast<unsigned char>(c);
  text.append("\\u00").append({hexadecimal[code >> 4], hexadecimal[code & 15]});
}

void appendObject(std::string& text, const JsonValue::Object& members) {
  std::vector<const JsonMember*> sorted;
  for (const JsonMember& member : members) sorted.push_back(&member);
  std::sort(sorted.begin(), sorted.end(),
            [](const JsonMember* a, const JsonMember* b) { return sortsBefore(a->key, b->key); });
  text += '{';
  for (const JsonMember* member : sorted) {
    if (member != sorted.front()) text += ',';
    appendCanonical(text, std::string_view(member->key));
    text += ':';
    appendCanonical(text, member->value);
  }
  text += '}';
}

void appendArray(std::string& text, const JsonValue::Array& elements) {
  text += '[';
  for (std::size_t k = 0; k < elements.size(); ++k) {
    if (k > 0) text += ',';
    appendCanonical(text, elements[k]);
  }
  text += ']';
}

}  // namespace

void appendCanonical(std::string& text, double number) {
  assert(std::isfinite(number));
  // Whole numbers, of which there are many, without the way through digits.
  constexpr double exact = 1e15;
  if (std::abs(number) < exact && number == std::trunc(number)) {
    text += std::to_string(static_cast<std::int64_t>(number));
    return;
  }
  if (number < 0) text += '-';
  appendPositive(text, std::abs(number));
}

void appendCanonical(std::string& text, std::string_view value) {
  text += '"';
  for (const char c : value) {
    if (c == '"' || c == '\\' || static_cast<unsigned char>(c) < 0x20)
      appendEscaped(text, c);
    else
      text += c;
  }
  text += '"';
}

void appendCanonical(std::string& text, const JsonValue& value) {
  const auto& data = value.data;
  if (const auto* yes = std::get_if<bool>(&data)) {
    text += *yes ? "true" : "false";
  } else if (const auto* whole = std::get_if<std::uint64_t>(&data)) {
    appendCanonical(text, static_cast<double>(*whole));
  } else if (const auto* real = std::get_if<double>(&data)) {
    appendCanonical(text, *real);
  } else if (const auto* string = std::get_if<std::string>(&data)) {
    appendCanonical(text, std::string_view(*string));
  } else if (const auto* array = std::get_if<JsonValue::Array>(&data)) {
    appendArray(text, *array);
  } else if (const auto* object = std::get_if<JsonValue::Object>(&data)) {
    appendObject(text, *object);
  } else {
    text += "null";
  }
}

bool sortsBefore(std::string_view a, std::string_view b) {
  const auto [at, other] = std::mismatch(a.begin(), a.end(), b.begin(), b.end());
  if (at == a.end() || other == b.end()) return at == a.end() && other != b.end();
  const auto x = static_cast<unsigned char>(*at), y = static_cast<unsigned char>(*other);
  // Characters beyond U+FFFF (four bytes, from 0xF0) are two surrogates, which lie before U+E000 (from 0xEE).
  constexpr unsigned char beyondSurrogates = 0xEE, fourBytes = 0xF0;
  const bool turned = (x >= fourBytes) != (y >= fourBytes) && std::min(x, y) >= beyondSurrogates;
  return turned ? y < x : x < y;
}

}  // namespace core
