// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/stock/delimited_rows.h"

namespace core {

/// Text as spreadsheets save it, as UTF-8: UTF-8 with or without byte order mark, UTF-16 with one, else
/// Windows-1252. Fails on a workbook, on nothing, and on a byte that Windows-1252 does not have, naming the
/// line.
Result<std::string> listText(std::string_view bytes);

/// Rows cut at that of comma, semicolon and tab that makes most of them as long as the first; one that also
/// stands in units and decimal numbers (the comma) comes last. Fails as delimitedRows does.
struct ListRows {
  char delimiter = ',';
  std::vector<Row> rows;
};
Result<ListRows> listRows(std::string_view text, std::size_t mostRows);

}  // namespace core
