// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace core {

/// `text` as valid UTF-8 on one line: bytes that are not UTF-8 are taken as Latin-1, control characters
/// become blanks, and text of more than `longest` bytes is cut with "...".
std::string cleanText(std::string_view text, std::size_t longest = 200);

/// A name or unit out of a field of a binary file: the same without blanks at the ends, and without what
/// stands behind a NUL, which is left over from before.
std::string cleanName(std::string_view field);

}  // namespace core
