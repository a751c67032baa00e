// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace core {

/// Length of the UTF-8 sequence at `i`, 0 when the bytes there are none.
std::size_t sequenceLength(std::string_view text, std::size_t i);

/// `text` as valid UTF-8 on one line: bytes that are not UTF-8 are taken as Latin-1, control characters
/// become blanks, and text of more than `longest` bytes is cut with "...".
std::string cleanText(std::string_view text, std::size_t longest = 200);

}  // namespace core
