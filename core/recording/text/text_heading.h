// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/recording/layout.h"
#include "core/recording/text/text_table.h"

namespace core {

/// What stands above the numbers of a text table.
struct TextHeading {
  std::size_t lines = 0;                   ///< lines above the first row: preamble, names, units
  std::vector<ColumnHeading> columns;      ///< one per column of the table
  std::optional<double> samplesPerSecond;  ///< from a preamble line such as "Sample rate: 50 Hz"
};

/// Reads the heading above the first row of numbers in `lines`, the beginning of the file.
///
/// Directly above the numbers stands one row of names, in as many cells as there are columns; a leading '#'
/// or '%' is taken off. A unit stands in the name, "Force [kN]" or "Force (kN)", or in a row of its own below
/// the names: one whose first cell is a unit of time, or whose cells are all in brackets. Everything above is
/// preamble. A row that begins with a number (also nan or inf) belongs to the numbers, not to the heading.
TextHeading readHeading(const std::vector<std::string_view>& lines, const TableShape& shape);

/// Which column is the time, and its unit in seconds.
struct TimeColumn {
  std::size_t index = 0;
  double unit_s = 1;
};

/// The first column whose name or unit says time ("time", "t", "Zeit", ...; s, ms, us, min, h). Nothing when
/// none does. A time without unit is taken as seconds; one in an unknown unit is not taken.
std::optional<TimeColumn> namedTimeColumn(const std::vector<ColumnHeading>& columns);

/// Whether a rising column under this heading may be taken for the time: its heading says nothing against it,
/// as the unit of another quantity or the name of a running number would.
bool mayBeTime(const ColumnHeading& heading);

}  // namespace core
