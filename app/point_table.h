// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/units/result.h"

namespace app {

/// Points to lay a line through.
struct PointTable {
  std::vector<double> x;
  std::vector<double> y;
};

/// Reads points from delimited text: a row of names with x and y in any order and case, a unit in brackets
/// behind a name allowed, or two columns without names, x first.
///
/// No row is skipped: one that is not all numbers fails, naming its line. Columns other than x and y fail
/// too, since leaving out weights would give another line than was asked for. Errors name the file.
core::Result<PointTable> readPointTable(const std::string& path);

}  // namespace app
