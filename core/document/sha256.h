// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

namespace core {

/// SHA-256 of `bytes` (FIPS 180-4) as 64 lower-case hexadecimal digits.
std::string sha256Hex(std::string_view bytes);

/// Whether `text` could be one.
bool isSha256Hex(std::string_view text);

}  // namespace core
