// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/binary/columns_to_recording.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <limits>
#include <string_view>

#include "core/recording/missing_cells.h"
#include "core/recording/time_units.h"
#include "core/units/language.h"

namespace core {
namespace {

constexpr double missingNumber = std::numeric_limits<double>::quiet_NaN();
constexpr const char* endsBefore = sayLater("the data end before it").data();

/// Which records are kept; empty while it is all of them, as it nearly always is.
using Kept = std::vector<bool>;

bool isKept(const Kept& kept, std::size_t record) { return kept.empty() || kept[record]; }

void skip(Recording& recording, std::uint64_t record, const char* reason) {
  ++recording.linesSkipped;
  if (recording.skipped.size() < greatestSkippedListed)
    recording.skipped.push_back({static_cast<std::size_t>(record + 1), say(reason)});
}

/// Names the records whose time cannot stand; `times` in any unit.
Kept recordsInTime(const Samples& times, std::size_t records, Recording& recording) {
  Kept kept;
  double last = -std::numeric_limits<double>::infinity();
  for (std::size_t k = 0; k < records; ++k) {
    const char* reason = nullptr;
    if (k >= times.size()) {
      reason = sayLater("the data end before its time").data();
    } else if (!std::isfinite(times[k])) {
      reason = sayLater("its time is not a finite number").data();
    } else if (times[k] < last) {
      reason = sayLater("its time lies before that of the one above").data();
    }
    if (!reason) {
      last = times[k];
      continue;
    }
    if (kept.empty()) kept.assign(records, true);
    kept[k] = false;
    skip(recording, k, reason);
  }
  return kept;
}

/// NaN for every cell of `values` without a number, and its entry.
void markMissing(Samples& values, std::size_t records, std::size_t column, const Kept& kept,
                 Recording& recording) {
  const std::size_t held = values.size();
  values.resize(records, missingNumber);
  std::size_t listed = 0;
  for (std::size_t k = 0; k < records; ++k) {
    if (std::isfinite(values[k])) continue;
    const char* reason = k >= held               ? endsBefore
                         : std::isnan(values[k]) ? sayLater("it is not a number").data()
                                                 : sayLater("it is not a finite number").data();
    values[k] = missingNumber;
    if (!isKept(kept, k)) continue;
    ++recording.cellsMissing;
    if (listed++ < greatestSkippedListed) recording.missing.push_back({k + 1, column, say(reason)});
  }
}

void dropSkipped(Samples& values, const Kept& kept) {
  if (kept.empty()) return;
  std::size_t to = 0;
  for (std::size_t k = 0; k < values.size(); ++k)
    if (kept[k]) values[to++] = values[k];
  values.resize(to);
}

/// Announced records beyond those that are there.
void skipAfterEnd(Recording& recording, std::uint64_t held, std::uint64_t announced) {
  if (announced <= held) return;
  const std::uint64_t listed = std::min<std::uint64_t>(announced, held + greatestSkippedListed);
  for (std::uint64_t k = held; k < listed; ++k) skip(recording, k, endsBefore);
  recording.linesSkipped += static_cast<std::size_t>(announced - listed);
}

TimeAxis evenTime(const BinaryTable& table, const TimeLayout& time, std::size_t records) {
  const bool own = table.spacing_s > 0 && time.rate_Hz == 1 / table.spacing_s;
  return TimeAxis::even(own ? table.start_s : 0, own ? table.spacing_s : 1 / time.rate_Hz, records);
}

std::string sourceOfTime(const BinaryTable& table, const Layout& layout) {
  if (layout.time.column) return "column '" + layout.columns[*layout.time.column].name + "'";
  const bool own = table.spacing_s > 0 && layout.time.rate_Hz == 1 / table.spacing_s;
  return own ? table.rateSource : say("the sample rate that was given");
}

}  // namespace

Result<Recording> recordingOf(const BinaryTable& table, const Layout& layout, ColumnValues values) {
  assert(values.size() == layout.columns.size());
  Recording recording;
  std::size_t held = 0;
  for (const Samples& column : values) held = std::max(held, column.size());
  const std::optional<std::size_t>& timeColumn = layout.time.column;
  Kept kept;
  if (timeColumn) {
    assert(isUnit(layout.time.form));
    for (double& time : values[*timeColumn]) time = inSeconds(time, layout.time.form);
    kept = recordsInTime(values[*timeColumn], held, recording);
  }
  skipAfterEnd(recording, held, table.records);
  const std::size_t count = held - static_cast<std::size_t>(std::count(kept.begin(), kept.end(), false));
  if (count == 0) return Error{"", say("the file holds no samples"), say("Export the recording again")};
  for (std::size_t k = 0; k < values.size(); ++k) {
    if (k == timeColumn) continue;
    if (values[k].empty()) continue;
    markMissing(values[k], held, recording.columns.size(), kept, recording);
    dropSkipped(values[k], kept);
    recording.columns.push_back({layout.columns[k].name, layout.columns[k].unit, std::move(values[k])});
  }
  if (recording.columns.empty()) return Error{"", say("the file holds no values beside the time"), ""};
  keepFirst(recording.missing);
  recording.linesRead = count;
  if (timeColumn) {
    values[*timeColumn].resize(held);
    dropSkipped(values[*timeColumn], kept);
    recording.time = TimeAxis(std::move(values[*timeColumn]));
  } else {
    recording.time = evenTime(table, layout.time, count);
  }
  recording.timeSource = sourceOfTime(table, layout);
  return recording;
}

}  // namespace core
