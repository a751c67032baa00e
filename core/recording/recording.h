// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <string>
#include <vector>

namespace core {

/// One measured quantity of a recording.
struct Column {
  std::string name;            ///< UTF-8, unique in its recording, never empty
  std::string unit;            ///< as the file writes it; empty when it gives none
  std::vector<double> values;  ///< one per sample, finite
};

/// A line of a file that gave no sample, and why.
struct SkippedLine {
  std::size_t line = 0;  ///< counted from 1
  std::string reason;
};

/// Samples over time, all columns as long as `time_s`, and an account of every line of the file:
/// linesRead + linesSkipped is the number of lines in it.
struct Recording {
  std::vector<double> time_s;  ///< finite, never falling
  std::string timeSource;      ///< where the time comes from, in words: "column 'Time'"
  std::vector<Column> columns;
  std::size_t linesRead = 0;         ///< samples, heading and blank lines
  std::size_t linesSkipped = 0;      ///< all of them, also those beyond the end of `skipped`
  std::vector<SkippedLine> skipped;  ///< the first of them, at most greatestSkippedListed
};

constexpr std::size_t greatestSkippedListed = 100;

}  // namespace core
