// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

#include "core/recording/binary/binary_table.h"
#include "core/recording/binary/reader_protocol.h"

namespace core {

/// How the numbers of a variable make columns of a recording.
struct VariableColumns {
  std::size_t variable = 0;
  std::size_t firstColumn = 0;
  std::size_t columns = 1;
  bool interleaved = false;  ///< the numbers of a sample stand together, else those of a column
};

/// Which variables are read and what they give. The table has no `read` yet.
struct ReaderColumns {
  BinaryTable table;
  std::vector<VariableColumns> sources;
};

/// Takes the variables that are as long as the time (one whose name says so, else the longest); a matrix
/// gives a column for each of its channels, "name(1)" and so on. Single numbers called fs, dt and the like
/// give the rate. What is left out is named with its reason; so is what announces more numbers than a file of
/// `fileBytes` can hold.
ReaderColumns columnsOf(const ReaderListing& listing, std::uint64_t fileBytes);

/// Seconds between samples that a number of this name means (fs: 1 / value, dt: value); none when it means
/// something else or the value makes no sense.
std::optional<double> spacingOf(std::string_view name, double value);

}  // namespace core
