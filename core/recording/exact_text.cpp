// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/exact_text.h"

#include <array>
#include <charconv>

namespace core {

std::string shortestText(double value) {
  std::array<char, 32> text{};
  const auto end = std::to_chars(text.data(), text.data() + text.size(), value).ptr;
  return {text.data(), end};
}

std::string percentEncoded(std::string_view text, bool (*isPlain)(char)) {
  constexpr std::string_view hex = "0123456789ABCDEF";
  std::string encoded;
  for (const char c : text) {
    const auto byte = static_cast<unsigned char>(c);
    if (isPlain(c))
      encoded += c;
    else
      (encoded += '%') += {hex[byte >> 4U], hex[byte & 0xFU]};
  }
  return encoded;
}

std::optional<std::string> percentDecoded(std::string_view text) {
  std::string decoded;
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (text[i] != '%') {
      decoded += text[i];
      continue;
    }
    unsigned byte = 0;
    const char* const first = text.data() + i + 1;
    if (i + 2 >= text.size() || std::from_chars(first, first + 2, byte, 16).ptr != first + 2)
      return std::nullopt;
    decoded += static_cast<char>(byte);
    i += 2;
  }
  return decoded;
}

}  // namespace core
