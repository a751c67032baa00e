// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

#include "core/document/json_text.h"

// JSON Canonicalization Scheme, RFC 8785: one text for all spellings of the same JSON.

namespace core {

/// A finite number as ECMAScript writes it (ECMA-262, Number::toString): shortest digits that read back the
/// same, "1e+21" from there on, "1e-7" below 1e-6, and 0 for -0.
void appendCanonical(std::string& text, double number);
/// In quotes, with the escapes of section 3.2.2.2. `value` is UTF-8.
void appendCanonical(std::string& text, std::string_view value);
void appendCanonical(std::string& text, const JsonValue& value);

/// Whether `a` comes before `b` by UTF-16 code units, which is not the order of UTF-8 bytes.
bool sortsBefore(std::string_view a, std::string_view b);

}  // namespace core
