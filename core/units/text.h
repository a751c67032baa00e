// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace core {

inline bool isDigit(char c) { return c >= '0' && c <= '9'; }
inline bool isLetter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); }

/// ASCII letters made small; others stay.
std::string lower(std::string_view text);

/// Whole characters at the beginning of `text`, of at most so many bytes.
std::string_view beginningOf(std::string_view text, std::size_t mostBytes);

/// `text` in quotation marks for a message; cut between characters after `longest` bytes, so that a
/// pasted novel does not fill the screen.
std::string inQuotes(std::string_view text, std::size_t longest = 40);

/// Where `text` stops being UTF-8 as RFC 3629 defines it: no overlong forms, no surrogates, nothing
/// above U+10FFFF. None when all of it is.
std::optional<std::size_t> firstInvalidUtf8(std::string_view text);

}  // namespace core
