// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

#include "core/recording/layout.h"

namespace core {

/// The encoding of a text that begins with `bytes`: by its byte order mark; else UTF-16 where every other
/// byte is zero; else UTF-8 when it is that throughout (a character cut at the end allowed), else Latin-1.
TextEncoding encodingOf(std::string_view bytes);

/// Length of the byte order mark of that encoding at the beginning of `bytes`, 0 for none.
std::size_t byteOrderMark(std::string_view bytes, TextEncoding encoding);

inline bool isUtf16(TextEncoding encoding) {
  return encoding == TextEncoding::Utf16LittleEndian || encoding == TextEncoding::Utf16BigEndian;
}

/// Appends `bytes` to `text` as UTF-8 and returns how many were used: all, less the part of a character that
/// is cut at the end. A lone surrogate becomes U+FFFD.
std::size_t appendUtf8(std::string_view bytes, TextEncoding encoding, std::string& text);

}  // namespace core
