// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "core/recording/layout.h"
#include "core/recording/recording.h"
#include "core/recording/text/pieces.h"

namespace core {

enum class CellUse : std::uint8_t { LeftOut, Value, Time, Date };

/// All that is needed to turn lines into samples.
struct RowPlan {
  char separator = ',';
  char decimal = '.';
  std::vector<CellUse> uses;        ///< one per column of the file
  std::vector<std::string> names;   ///< of all columns, for messages
  std::vector<std::size_t> values;  ///< the columns read as values, rising
  bool hasTimeColumn = false;       ///< else the time is the place of the row
  TimeForm form = TimeForm::Seconds;
  DateOrder order = DateOrder::YearMonthDay;
  bool hasDateColumn = false;
  bool isAbsolute = false;   ///< numbers that count from 1970-01-01 are taken apart exactly
  std::int64_t base_ns = 0;  ///< of absolute times: what is taken off before they become seconds
};

/// Whether the times are made from whole nanoseconds.
inline bool isStamped(const RowPlan& plan) {
  return plan.isAbsolute || plan.form == TimeForm::Clock || plan.form == TimeForm::DateAndTime;
}

/// The samples of a piece, and what became of its other lines. Rows are counted from 0 in the block, lines
/// from 0 in the piece.
struct RowBlock {
  std::size_t rows = 0;
  std::size_t lines = 0;
  // As long as there was room for, of which `rows` hold:
  std::vector<double> time_s;  ///< of a clock without date: seconds since midnight, falling at midnight
  std::vector<std::vector<double>> columns;  ///< one per RowPlan::values
  std::vector<std::size_t> otherLines;       ///< rows before each line that is no row, rising
  std::vector<std::size_t> skippedAt;        ///< rows before each skipped line, rising
  std::vector<SkippedLine> skipped;          ///< the first of them
  struct Missing {
    std::size_t row = 0;
    std::size_t slot = 0;   ///< index in `columns`
    std::string_view cell;  ///< in the piece's text
  };
  std::vector<Missing> missing;  ///< all of them, in order of rows

  void clear();
  /// For at least one row more.
  void makeRoom();
  std::size_t lineOf(std::size_t row) const;
};

/// Why a cell gives no number, as a sentence without full stop: "'OVER' in 'TP-01' is not a number".
std::string faultOfCell(std::string_view cell, const std::string& column, const char* fault);
std::string faultOfNumber(std::string_view cell, const std::string& column, char decimal);

/// Reads the lines of `piece` into `block`.
void readRows(const TextPiece& piece, const RowPlan& plan, RowBlock& block);

}  // namespace core
