// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/binary/plain_text.h"

#include <algorithm>
#include <set>

#include "core/units/text.h"

namespace core {
namespace {

constexpr std::size_t longestName = 200;

std::string fromLatin1(std::string_view text) {
  std::string utf8;
  for (const char c : text) {
    const auto byte = static_cast<unsigned char>(c);
    if (byte < 0x80) {
      utf8 += c;
    } else {
      utf8 += static_cast<char>(0xC0U | (byte >> 6U));
      utf8 += static_cast<char>(0x80U | (byte & 0x3FU));
    }
  }
  return utf8;
}

/// Never within a character.
std::string cutAt(std::string text, std::size_t longest) {
  if (text.size() <= longest) return text;
  while (longest > 0 && (static_cast<unsigned char>(text[longest]) & 0xC0U) == 0x80U) --longest;
  text.resize(longest);
  return text;
}

}  // namespace

std::string_view trimmed(std::string_view text) {
  constexpr std::string_view blanks = " \t\r\n\0";
  const auto begin = text.find_first_not_of(blanks);
  if (begin == std::string_view::npos) return {};
  return text.substr(begin, text.find_last_not_of(blanks) - begin + 1);
}

std::string plainText(std::string_view text) {
  // What follows a NUL in a field of fixed width is left over from before.
  text = text.substr(0, std::min(text.find('\0'), std::size_t{4096}));
  std::string clean = firstInvalidUtf8(text) ? fromLatin1(text) : std::string(text);
  // The control characters 0x80 to 0x9F are C2 80 to C2 9F in UTF-8.
  for (std::size_t k = 0; k < clean.size(); ++k) {
    const auto byte = static_cast<unsigned char>(clean[k]);
    if (byte < 0x20 || byte == 0x7F) clean[k] = ' ';
    if (byte == 0xC2 && k + 1 < clean.size() && static_cast<unsigned char>(clean[k + 1]) < 0xA0)
      clean.replace(k, 2, " ");
  }
  return std::string(trimmed(cutAt(std::string(trimmed(clean)), longestName)));
}

std::string lowerCase(std::string_view text) {
  std::string lower(text);
  for (char& c : lower)
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  return lower;
}

void makeNamesUnique(std::vector<ColumnHeading>& columns) {
  std::set<std::string> taken;
  for (std::size_t k = 0; k < columns.size(); ++k) {
    std::string& name = columns[k].name;
    if (name.empty()) name = "Column " + std::to_string(k + 1);
    const std::string given = name;
    for (std::size_t again = 2; !taken.insert(name).second; ++again)
      name = given + " (" + std::to_string(again) + ")";
  }
}

}  // namespace core
