// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/text.h"

namespace core {
namespace {

unsigned byteAt(std::string_view text, std::size_t at) { return static_cast<unsigned char>(text[at]); }

bool isContinuation(std::string_view text, std::size_t at) {
  return at < text.size() && (byteAt(text, at) & 0xC0) == 0x80;
}

/// Bytes of the character that starts at `at`, by the table in RFC 3629 section 4; 0 when it is none.
std::size_t characterLength(std::string_view text, std::size_t at) {
  const unsigned lead = byteAt(text, at);
  if (lead < 0x80) return 1;
  if (lead < 0xC2 || lead > 0xF4) return 0;
  const std::size_t length = lead < 0xE0 ? 2 : lead < 0xF0 ? 3 : 4;
  for (std::size_t k = 1; k < length; ++k)
    if (!isContinuation(text, at + k)) return 0;
  const unsigned second = byteAt(text, at + 1);
  if ((lead == 0xE0 && second < 0xA0) || (lead == 0xED && second > 0x9F)) return 0;
  if ((lead == 0xF0 && second < 0x90) || (lead == 0xF4 && second > 0x8F)) return 0;
  return length;
}

}  // namespace

std::string lower(std::string_view text) {
  std::string result(text);
  for (char& c : result)
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  return result;
}

std::string_view beginningOf(std::string_view text, std::size_t mostBytes) {
  if (text.size() <= mostBytes) return text;
  while (mostBytes > 0 && isContinuation(text, mostBytes)) --mostBytes;
  return text.substr(0, mostBytes);
}

std::string inQuotes(std::string_view text, std::size_t longest) {
  if (text.size() <= longest) return "“" + std::string(text) + "”";
  return "“" + std::string(beginningOf(text, longest)) + "…”";
}

std::optional<std::size_t> firstInvalidUtf8(std::string_view text) {
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t length = characterLength(text, at);
    if (length == 0) return at;
    at += length;
  }
  return std::nullopt;
}

}  // namespace core
