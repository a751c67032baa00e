// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <functional>
#include <optional>
#include <stop_token>
#include <string>
#include <vector>

#include "core/recording/layout.h"
#include "core/recording/samples.h"
#include "core/units/progress.h"
#include "core/units/result.h"

namespace core {

/// The numbers of each column of a file, the time too, as they stand there. A column may be shorter than the
/// others where the file ends early.
using ColumnValues = std::vector<Samples>;

/// What a binary file says of itself, the same for all kinds.
struct BinaryTable {
  FileKind kind = FileKind::Wav;
  std::vector<ColumnHeading> columns;  ///< names unique, not empty
  std::uint64_t records = 0;           ///< that the file announces, also those it does not hold
  std::optional<std::size_t> timeColumn;
  double start_s = 0;      ///< of the first record, when there is no time column
  double spacing_s = 0;    ///< 0: the file does not say
  std::string rateSource;  ///< where the spacing stands, in words; empty with spacing 0
  std::vector<std::string> doubts;
  std::vector<std::string> leftOut;

  /// All its columns, the first `records` of each.
  using Read = std::function<Result<ColumnValues>(std::uint64_t records, const std::stop_token& stop,
                                                  const Progress& progress)>;
  Read read;
};

/// More columns than this are not read; a damaged header announces millions.
constexpr std::size_t greatestBinaryColumns = 4096;
/// More numbers than this (8 GB) are not read.
constexpr std::uint64_t greatestBinaryCells = 1'000'000'000;

}  // namespace core
