// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "core/recording/samples.h"
#include "core/recording/time_axis.h"

namespace core {

/// One measured quantity of a recording.
struct Column {
  std::string name;  ///< UTF-8, unique in its recording, never empty
  std::string unit;  ///< as the file writes it; empty when it gives none
  Samples values;    ///< one per sample; finite, or NaN where the file has no number
};

/// A line of a file that gave no sample, and why.
struct SkippedLine {
  std::size_t line = 0;  ///< counted from 1; of a file without lines the number of the record
  std::string reason;    ///< a sentence behind "line 3:", without capital and full stop
};

/// A cell that gave no number in a line that was read; its value is NaN.
struct MissingCell {
  std::size_t line = 0;    ///< counted from 1, as above
  std::size_t column = 0;  ///< index in Recording::columns
  std::string reason;      ///< as above
};

/// Samples over time, all columns as long as `time`, and an account of every line of the file:
/// linesRead + linesSkipped is the number of lines in it (of records, where a file has no lines).
struct Recording {
  TimeAxis time;
  std::string timeSource;  ///< where the time comes from, in words: "column 'Time'"
  std::string startedAt;   ///< ISO 8601 date and time of the first sample; empty when the file does not say
  std::vector<Column> columns;
  std::size_t linesRead = 0;         ///< samples, heading and blank lines
  std::size_t linesSkipped = 0;      ///< all of them, also those beyond the end of `skipped`
  std::vector<SkippedLine> skipped;  ///< the first of them in order, at most greatestSkippedListed
  std::size_t cellsMissing = 0;      ///< all of them
  std::vector<MissingCell> missing;  ///< the first of them in order, at most greatestSkippedListed
};

constexpr std::size_t greatestSkippedListed = 100;

}  // namespace core
