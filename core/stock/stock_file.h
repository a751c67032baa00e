// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "core/stock/stock.h"

namespace core {

/// Reads a list of resistors: text of columns separated by comma, semicolon or tab, first line the names.
///
/// Columns, in any order; id and resistance (or decades) must be there:
///   id, fitted_in, note            text
///   resistance, certificate_value  the trade's notation: "59k9", "174.65 kOhm"; without unit in ohm
///   certificate_expanded           U as a resistance, or as a share of the certificate's value
///   certificate_number             text
///   certificate_k                  2 when it is empty, the usual one (common practice)
///   tolerance                      a share with percent sign or ppm; may be empty beside a certificate
///   due                            day of the next calibration, ISO 8601
///   rating                         with its unit: "250 mW", "0.5 W"
///   decades                        makes the row a decade box: "10x10k 10x1k 10x100" instead of a resistance
///   residual                       of a decade box with all dials at 0; empty: 0
/// All or nothing: the first error names line and column ("line 7, resistance") and how to mend it. Refused
/// are doubles of an id, 0 ohm, values beyond `leastShunt` and `greatestShunt`, a unit that is none of a
/// resistance, unknown columns, text that is not UTF-8, and more than 10,000 rows.
/// An apostrophe before = + - @ at the begin of a text is taken off; `stockFileText` puts it there, so that
/// no spreadsheet takes the text for a formula.
Result<Stock> readStockFile(std::string_view text);
/// What `readStockFile` reads back to the same resistors and boxes; ranges of series are not written.
std::string stockFileText(const Stock& stock);

}  // namespace core
