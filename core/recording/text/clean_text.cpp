// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/text/clean_text.h"

#include <algorithm>

namespace core {

std::size_t sequenceLength(std::string_view text, std::size_t i) {
  const auto byte = [&](std::size_t k) { return static_cast<unsigned char>(text[k]); };
  const unsigned char lead = byte(i);
  const std::size_t length = lead < 0x80   ? 1
                             : lead < 0xC2 ? 0
                             : lead < 0xE0 ? 2
                             : lead < 0xF0 ? 3
                             : lead < 0xF5 ? 4
                                           : 0;
  if (length == 0 || i + length > text.size()) return 0;
  for (std::size_t k = 1; k < length; ++k)
    if ((byte(i + k) & 0xC0) != 0x80) return 0;
  if (lead == 0xE0 && byte(i + 1) < 0xA0) return 0;
  if (lead == 0xED && byte(i + 1) > 0x9F) return 0;
  if (lead == 0xF0 && byte(i + 1) < 0x90) return 0;
  if (lead == 0xF4 && byte(i + 1) > 0x8F) return 0;
  return length;
}

std::string cleanText(std::string_view text, std::size_t longest) {
  std::string clean;
  for (std::size_t i = 0; i < text.size();) {
    if (clean.size() >= longest) return clean + "...";
    const std::size_t length = sequenceLength(text, i);
    const auto byte = static_cast<unsigned char>(text[i]);
    if (length == 0) {
      clean += static_cast<char>(0xC0 | (byte >> 6));
      clean += static_cast<char>(0x80 | (byte & 0x3F));
    } else if (byte < 0x20 || byte == 0x7F) {
      clean += ' ';
    } else {
      clean += text.substr(i, length);
    }
    i += std::max<std::size_t>(length, 1);
  }
  return clean;
}

}  // namespace core
