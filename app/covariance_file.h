// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/units/result.h"

namespace app {

/// Reads a square matrix of `size` rows from a text file, row after row: a line a row, cells between
/// semicolons, tabs, commas or blanks, whichever comes first in this order anywhere in the file; with other
/// separators than commas the decimal mark may be a comma. Lines that begin with # are comments. Errors name
/// the file, the line and the column.
core::Result<std::vector<double>> readCovariance(const std::string& path, std::size_t size);

}  // namespace app
