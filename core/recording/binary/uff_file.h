// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <stop_token>

#include "core/recording/binary/binary_table.h"
#include "core/recording/file_bytes.h"

namespace core {

/// A universal file: each data set 58 with real numbers over time is a column, named by its first id line,
/// and by its node where several share that. Functions over another time than the longest one, over frequency
/// and complex ones are left out by name; data sets of other numbers are counted. The time is even, or a
/// column of its own.
Result<BinaryTable> openUff(const SharedFile& file, const std::stop_token& stop);

}  // namespace core
