// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/units/result.h"

namespace app {

/// Points to lay a line through, with the standard uncertainties that the table states. Of a column that is
/// not there the values are empty.
struct PointTable {
  std::vector<double> x;
  std::vector<double> y;
  std::vector<double> ux;
  std::vector<double> uy;
  std::vector<double> covariances;  ///< of x and y within each point
  std::vector<std::size_t> lines;   ///< of the file, counted from 1, that the points stand in
};

/// Reads points from delimited text: a row of names with x, y and perhaps ux, uy and covxy in any order and
/// case, underscores as one likes and a unit in brackets behind a name; or columns without names in this
/// order.
///
/// No row is skipped: one that is not all numbers fails, naming its line and column. Other columns fail too,
/// since leaving out weights would give another line than was asked for; so do ux without uy, and covxy
/// without both. Errors name the file.
core::Result<PointTable> readPointTable(const std::string& path);

}  // namespace app
