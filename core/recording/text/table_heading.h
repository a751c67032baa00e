// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/recording/layout.h"
#include "core/recording/text/table_guess.h"

namespace core {

/// What stands above the values of a text table.
struct TableHeading {
  std::vector<ColumnHeading>
      columns;               ///< one per column; fewer than the rows' cells where the last are empty
  std::size_t nameLine = 0;  ///< counted from 1; 0: none
  std::size_t unitLine = 0;
  std::optional<double> rate_Hz;  ///< from a line such as "Sample rate: 50 Hz"
  std::vector<std::string> doubts;
};

/// Reads the heading of the table whose first row is `lines[row]`. Names and units stand in lines with as
/// many cells as the table, right above the values, blank lines and rules (-----) between allowed.
TableHeading readTableHeading(const std::vector<std::string_view>& lines, std::size_t row,
                              const TableGuess& table, const LayoutChoices& choices);

/// `line` cut into cells as a heading of `columns` columns: without a comment sign (#, %, //), and where the
/// table's separator does not give that many cells, at other separators. The cells may be more or fewer.
Cells headingCells(std::string_view line, const TableGuess& table, std::size_t columns);

}  // namespace core
