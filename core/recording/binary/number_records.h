// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <stop_token>
#include <string>
#include <vector>

#include "core/recording/binary/binary_table.h"
#include "core/recording/file_bytes.h"

namespace core {

enum class NumberKind : std::uint8_t { Signed, Unsigned, Float };

/// How a number stands in a file.
struct NumberFormat {
  NumberKind kind = NumberKind::Float;
  std::size_t bytes = 8;  ///< integers 1, 2, 3, 4, 8; Float 4, 8
  bool bigEndian = false;
};

bool isReadable(const NumberFormat& format);

/// One number of each record; it gives column `column` the value (number + shift) scale.
struct RecordField {
  std::size_t offset = 0;  ///< bytes from the beginning of the record
  NumberFormat format;
  std::size_t column = 0;
  double shift = 0;
  double scale = 1;
};

/// Records of one size, one after the other.
struct RecordBlock {
  std::uint64_t offset = 0;     ///< in the file
  std::size_t recordBytes = 0;  ///< above 0, at most greatestRecordBytes
  std::uint64_t records = 0;    ///< announced
  std::vector<RecordField> fields;
};

constexpr std::size_t greatestRecordBytes = 1UL << 20U;

/// How many whole records of `block` the file holds.
std::uint64_t recordsHeld(const RegularFile& file, const RecordBlock& block);

/// The sentence for a file that ends early; empty for a whole one.
std::string doubtWhenCut(const RegularFile& file, const RecordBlock& block);

/// The numbers of the first `records` records of each block, appended to its columns; where the file ends
/// early a column ends early.
Result<ColumnValues> readBlocks(const RegularFile& file, const std::vector<RecordBlock>& blocks,
                                std::size_t columns, std::uint64_t records, const std::stop_token& stop,
                                const Progress& progress);

}  // namespace core
