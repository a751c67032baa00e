// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "core/stock/stock.h"

namespace core {

/// Reads a list of resistors: text of columns separated by comma, semicolon or tab, first line the names.
///
/// Columns (in any order; id and resistance must be there): id, resistance, tolerance, certificate_value,
/// certificate_expanded, certificate_k, due, rating, fitted_in, note. Resistances take the trade's notation
/// ("59k9", "174.65 kOhm"), shares need a percent sign or ppm, days are ISO 8601. A decade box is a row with
/// `decades`, such as "10x10k 10x1k 10x100", instead of a resistance.
/// All or nothing: the first error names line and column ("line 7, resistance") and how to mend it. Refused
/// are doubles of an id, 0 ohm, values beyond `leastShunt` and `greatestShunt`, a unit that is none of a
/// resistance, unknown columns, text that is not UTF-8, and more than 10,000 rows.
Result<Stock> readStockFile(std::string_view text);
/// What `readStockFile` reads back to the same resistors and boxes; ranges of series are not written.
std::string stockFileText(const Stock& stock);

}  // namespace core
