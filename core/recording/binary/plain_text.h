// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/recording/layout.h"

namespace core {

/// `text` of a file made fit for a name or a unit: UTF-8, without control characters, blanks at the ends and
/// what is beyond 200 bytes. Bytes that are no UTF-8 are taken as Latin-1.
std::string plainText(std::string_view text);

/// Without blanks at the ends.
std::string_view trimmed(std::string_view text);

/// Capital letters A to Z made small.
std::string lowerCase(std::string_view text);

/// Gives columns without a name "Column 3" and repeated names a number, so that each is its own.
void makeNamesUnique(std::vector<ColumnHeading>& columns);

}  // namespace core
