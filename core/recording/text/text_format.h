// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>
#include <vector>

#include "core/recording/layout.h"

namespace core {

/// How the numbers of a text table are written.
struct TextFormat {
  char separator = ',';  ///< ',', ';', '|', tab, or ' ' for any run of blanks
  char decimal = '.';    ///< '.' or ','; both ',' where cells are quoted: "0,5","1,5"

  friend bool operator==(const TextFormat&, const TextFormat&) = default;
};

struct TableShape {
  TextFormat format;
  std::size_t columns = 0;  ///< 0: no line has a number of its own
};

/// The format in which most of `lines` are rows with numbers, and the number of cells in most of those. Words
/// count against a row, empty cells a little. Where several fit equally, tab, semicolon, bar, comma and
/// blanks are preferred in this order, and the decimal point. A separator earlier in this order that stands
/// in 19 of 20 rows equally often and leaves a number in them is taken even when another one divides them
/// into more numbers; a comma only when it is no decimal sign.
TableShape shapeOf(const std::vector<std::string_view>& lines, const LayoutChoices& choices);

}  // namespace core
