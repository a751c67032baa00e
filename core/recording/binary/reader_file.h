// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <stop_token>

#include "core/recording/binary/binary_table.h"
#include "core/recording/binary/reader_answer.h"
#include "core/recording/file_bytes.h"

namespace core {

/// A MATLAB (FileKind::Mat) or HDF5 file (Hdf5, also MATLAB 7.3), read by the reading process, one process a
/// look and one a reading. Whatever happens to the process is an error that says so. `ask`, when it is given,
/// answers in its place.
Result<BinaryTable> openInReader(const SharedFile& file, FileKind kind, const std::stop_token& stop,
                                 AskReader ask = {});

}  // namespace core
