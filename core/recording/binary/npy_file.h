// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/recording/binary/binary_table.h"
#include "core/recording/file_bytes.h"

namespace core {

/// A NumPy array: a vector, a matrix (the longer axis is the samples; of a square one the rows), or a vector
/// of named numbers. Integers and floats of either byte order. Objects, texts and complex numbers are never
/// read. Gives no time; see guessTimeColumn.
Result<BinaryTable> openNpy(const SharedFile& file);

}  // namespace core
