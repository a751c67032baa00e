// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/units/result.h"

namespace core {

/// A record: a line, or several where a quoted cell holds line breaks.
struct Row {
  std::size_t line = 1;  ///< on which it begins, from 1
  std::vector<std::string> cells;
};

/// The rows of a text whose cells lie between delimiters (RFC 4180): a quoted cell may hold delimiters, line
/// breaks and doubled quotes. Lines end with LF, CR LF or CR; a byte order mark is skipped, and so is a line
/// whose cells are all empty. Unquoted cells lose the spaces around them.
/// The delimiter, when it is not given, is that of comma, semicolon and tab which stands most often in the
/// first line. Fails, with "line N" as place, for text that is not UTF-8, a control character, text after a
/// closing quote, a quote that never closes, more than `mostRows` rows, and more cells than the constants
/// below say: a byte of text makes a cell of 32 bytes.
Result<std::vector<Row>> delimitedRows(std::string_view text, std::size_t mostRows,
                                       std::optional<char> delimiter = {});

inline constexpr std::size_t mostCellsInRow = 4'096;
inline constexpr std::size_t mostCellsInRows = 1'000'000;  ///< of all rows together

/// `text` as a cell between commas: in quotes where it needs them.
std::string delimitedCell(std::string_view text);

/// The same with an apostrophe before what a spreadsheet would take for a formula: what begins with = + - @.
std::string guardedCell(std::string_view text);
/// The text of such a cell: without that apostrophe.
std::string_view withoutGuard(std::string_view cell);

}  // namespace core
