// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "core/units/result.h"

namespace core {

struct JsonMember;

/// JSON as it was written: members in their order, each value with its line for messages.
struct JsonValue {
  using Array = std::vector<JsonValue>;
  using Object = std::vector<JsonMember>;

  std::size_t line = 1;
  /// Whole numbers from 0 to 2^64-1 are kept as such, all others as a double; monostate is null.
  std::variant<std::monostate, bool, std::uint64_t, double, std::string, Array, Object> data;
};

struct JsonMember {
  std::string key;
  JsonValue value;
};

/// Reads JSON (RFC 8259) of unknown origin.
///
/// Takes at most 64 MB of text, 64 levels, strings of 1 MB, 64 members an object, a million numbers
/// and four million values, all counted while reading. Refuses a member named twice, text that is
/// not UTF-8, and a number whose double would be infinite or a zero that was not written.
/// Of an error `where` is "line 17" or "line 17, channels[2].name".
Result<JsonValue> parseJson(std::string_view text);

/// "channels[2].name": the way to a value, for messages.
std::string jsonPath(std::string_view parent, std::string_view key);
std::string jsonPath(std::string_view parent, std::size_t index);

}  // namespace core
