// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>

// Texts that give back exactly what was put into them.

namespace core {

/// The shortest decimal number that is read as `value` again.
std::string shortestText(double value);

/// `text` with %XX for every byte that is not plain; '%' must not be.
std::string percentEncoded(std::string_view text, bool (*isPlain)(char));
/// Nothing where a % is not followed by two hexadecimal digits.
std::optional<std::string> percentDecoded(std::string_view text);

}  // namespace core
