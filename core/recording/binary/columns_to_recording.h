// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/recording/binary/binary_table.h"
#include "core/recording/recording.h"
#include "core/units/result.h"

namespace core {

/// The recording of a table's columns, with the account of all its records: one whose time is missing, not
/// finite or before the last is skipped; NaN and infinite numbers, and those that the file ends before, are
/// missing cells. `layout` is one that layoutOf gives without an obstacle. Fails when no record is left; the
/// error has no `where`. Linear; the memory is that of `values`.
Result<Recording> recordingOf(const BinaryTable& table, const Layout& layout, ColumnValues values);

}  // namespace core
