// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/text/encoding.h"

#include <algorithm>

#include "core/units/text.h"

namespace core {
namespace {

bool isUtf8(std::string_view bytes) {
  const auto bad = firstInvalidUtf8(bytes);
  return !bad || (bytes.size() - *bad < 4 && (static_cast<unsigned char>(bytes[*bad]) & 0xC0) == 0xC0);
}

void appendCharacter(char32_t c, std::string& text) {
  const auto byte = [&](char32_t value) { text += static_cast<char>(value); };
  if (c < 0x80) return byte(c);
  if (c < 0x800) {
    byte(0xC0 | (c >> 6));
  } else if (c < 0x10000) {
    byte(0xE0 | (c >> 12));
    byte(0x80 | ((c >> 6) & 0x3F));
  } else {
    byte(0xF0 | (c >> 18));
    byte(0x80 | ((c >> 12) & 0x3F));
    byte(0x80 | ((c >> 6) & 0x3F));
  }
  byte(0x80 | (c & 0x3F));
}

std::size_t appendUtf16(std::string_view bytes, bool littleEndian, std::string& text) {
  const auto unit = [&](std::size_t i) {
    const auto first = static_cast<unsigned char>(bytes[i]),
               second = static_cast<unsigned char>(bytes[i + 1]);
    return static_cast<char32_t>(littleEndian ? first | (second << 8) : (first << 8) | second);
  };
  const auto isHigh = [](char32_t c) { return c >= 0xD800 && c < 0xDC00; };
  const auto isLow = [](char32_t c) { return c >= 0xDC00 && c < 0xE000; };
  std::size_t i = 0;
  while (i + 1 < bytes.size()) {
    char32_t c = unit(i);
    if (isHigh(c) && i + 3 >= bytes.size()) break;
    i += 2;
    if (isHigh(c) && isLow(unit(i))) {
      c = 0x10000 + ((c - 0xD800) << 10) + (unit(i) - 0xDC00);
      i += 2;
    } else if (isHigh(c) || isLow(c)) {
      c = 0xFFFD;
    }
    appendCharacter(c, text);
  }
  return i;
}

}  // namespace

TextEncoding encodingOf(std::string_view bytes) {
  if (bytes.starts_with("\xFF\xFE")) return TextEncoding::Utf16LittleEndian;
  if (bytes.starts_with("\xFE\xFF")) return TextEncoding::Utf16BigEndian;
  std::size_t zeros[2] = {0, 0};
  for (std::size_t i = 0; i < bytes.size(); ++i) zeros[i % 2] += bytes[i] == '\0';
  // Numbers and separators have a zero byte each in UTF-16; names in other scripts may have none.
  const std::size_t half = bytes.size() / 2;
  if (half > 1 && zeros[1] * 10 > half * 6 && zeros[0] * 10 < half) return TextEncoding::Utf16LittleEndian;
  if (half > 1 && zeros[0] * 10 > half * 6 && zeros[1] * 10 < half) return TextEncoding::Utf16BigEndian;
  return isUtf8(bytes) ? TextEncoding::Utf8 : TextEncoding::Latin1;
}

std::size_t byteOrderMark(std::string_view bytes, TextEncoding encoding) {
  switch (encoding) {
    case TextEncoding::Utf8:
      return bytes.starts_with("\xEF\xBB\xBF") ? 3 : 0;
    case TextEncoding::Utf16LittleEndian:
      return bytes.starts_with("\xFF\xFE") ? 2 : 0;
    case TextEncoding::Utf16BigEndian:
      return bytes.starts_with("\xFE\xFF") ? 2 : 0;
    case TextEncoding::Latin1:
      break;
  }
  return 0;
}

std::size_t appendUtf8(std::string_view bytes, TextEncoding encoding, std::string& text) {
  if (isUtf16(encoding)) return appendUtf16(bytes, encoding == TextEncoding::Utf16LittleEndian, text);
  const bool plain = encoding == TextEncoding::Utf8 ||
                     std::all_of(bytes.begin(), bytes.end(), [](char c) { return (c & 0x80) == 0; });
  if (plain) {
    text += bytes;
  } else {
    for (const char c : bytes) appendCharacter(static_cast<unsigned char>(c), text);
  }
  return bytes.size();
}

}  // namespace core
