// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/clean_text.h"

#include "core/recording/characters.h"
#include "core/units/text.h"

namespace core {
namespace {

/// Bytes of the UTF-8 character that `text` begins with, 0 when it begins with none.
std::size_t firstCharacter(std::string_view text) {
  const auto lead = static_cast<unsigned char>(text.front());
  const std::size_t length = lead < 0x80 ? 1 : lead < 0xE0 ? 2 : lead < 0xF0 ? 3 : 4;
  return length > text.size() || firstInvalidUtf8(text.substr(0, length)) ? 0 : length;
}

/// Below the blank, DEL, and 0x80 to 0x9F, which are C2 80 to C2 9F in UTF-8.
bool isControl(std::string_view character) {
  const auto first = static_cast<unsigned char>(character.front());
  if (character.size() == 1) return first < 0x20 || (first >= 0x7F && first < 0xA0);
  return first == 0xC2 && static_cast<unsigned char>(character[1]) < 0xA0;
}

}  // namespace

std::string cleanText(std::string_view text, std::size_t longest) {
  std::string clean;
  while (!text.empty()) {
    if (clean.size() >= longest) return clean + "...";
    const std::size_t length = firstCharacter(text);
    const std::string_view character = text.substr(0, length == 0 ? 1 : length);
    text.remove_prefix(character.size());
    if (isControl(character)) {
      clean += ' ';
    } else if (length == 0) {
      const auto byte = static_cast<unsigned char>(character.front());
      clean += static_cast<char>(0xC0U | (byte >> 6U));
      clean += static_cast<char>(0x80U | (byte & 0x3FU));
    } else {
      clean += character;
    }
  }
  return clean;
}

std::string cleanName(std::string_view field) {
  return std::string(trimmed(cleanText(trimmed(field.substr(0, field.find('\0'))))));
}

}  // namespace core
