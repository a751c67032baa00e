// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "core/recording/recording.h"
#include "core/recording/text/row_block.h"

namespace core {

/// Puts the blocks of a file together in their order.
class RecordingBuilder {
 public:
  /// `rate_Hz` above 0 where the time is the place of the row. `headingLines` stand above the first block.
  RecordingBuilder(const RowPlan& plan, double rate_Hz, std::size_t headingLines);

  /// Appends the rows of `block`, which it may change; `share` of the file, 0 to 1, lies behind its end.
  /// False when there is not memory enough.
  bool add(RowBlock& block, double share);

  /// What has been read: columns without a number are left out. Columns have no units yet. The start is that
  /// of absolute times, in nanoseconds since 1970 or of the day.
  struct Built {
    Recording recording;
    std::vector<std::size_t> columns;  ///< of the file, which those of the recording are
    std::int64_t start_ns = 0;
  };
  Built take();
  std::size_t samples() const { return m_samples; }

 private:
  bool reserve(std::size_t rows, double share);
  bool reserveRoom(std::size_t samples);
  void turnClock(RowBlock& block);
  void dropFallingRows(RowBlock& block);
  void account(const RowBlock& block);
  void takeTimes(Built& built);

  const RowPlan& m_plan;
  double m_rate_Hz;
  Recording m_recording;
  std::size_t m_linesBefore;
  std::size_t m_samples = 0;
  std::size_t m_capacity = 0;
  Samples m_time_s;
  std::vector<Samples> m_columns;
  std::vector<std::size_t> m_skippedAt;  ///< with a rate: samples before each skipped row
  std::optional<double> m_lastTime_s;
  std::int64_t m_days = 0;  ///< midnights passed
  std::optional<double> m_lastClock_s;
  struct ColumnGaps {
    std::size_t count = 0;
    std::vector<MissingCell> first;
  };
  std::vector<ColumnGaps> m_gaps;  ///< one per value column
};

}  // namespace core
