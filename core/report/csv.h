// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

#include "core/document/document.h"

namespace core {

/// `text` as one cell by RFC 4180: quoted where it has to be.
///
/// Text that a spreadsheet would run (= + - @, tab, carriage return, also after spaces) gets a leading
/// apostrophe, because quotes do not keep a spreadsheet from running it. Not for numbers.
std::string csvText(std::string_view text);

/// The document's steps for a spreadsheet: UTF-8, commas, CRLF, one row a step a check, a header first.
///
/// Channels without a check give their planned steps with verdict "not judged". Numbers have a point and
/// are the shortest that read back as the same double; the unit is in the header or, where channels
/// differ, in the column behind. A cell is empty where there is no value and holds words where the
/// value is no finite number; only the verdict column says pass or fail.
std::string reportCsv(const Document& document);

}  // namespace core
