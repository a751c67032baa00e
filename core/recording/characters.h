// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <initializer_list>
#include <string>
#include <string_view>

#include "core/units/text.h"

// Characters as recordings use them. None of this depends on the locale.

namespace core {

inline bool isBlank(char c) { return c == ' ' || c == '\t'; }
inline bool isLineEnd(char c) { return c == '\n' || c == '\r'; }

/// Without blanks and line ends at its ends.
inline std::string_view trimmed(std::string_view text) {
  const auto isNothing = [](char c) { return isBlank(c) || isLineEnd(c); };
  while (!text.empty() && isNothing(text.front())) text.remove_prefix(1);
  while (!text.empty() && isNothing(text.back())) text.remove_suffix(1);
  return text;
}

inline bool isOneOf(std::string_view word, std::initializer_list<std::string_view> words) {
  return std::find(words.begin(), words.end(), word) != words.end();
}

}  // namespace core
