// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/text/recording_builder.h"

#include <algorithm>
#include <cmath>
#include <new>

#include "core/recording/missing_cells.h"
#include "core/recording/text/stamps.h"
#include "core/units/language.h"

namespace core {
namespace {

constexpr double day_s = 86'400;

/// Keeps those of `values` that stand at the rising places `kept`.
void keepOnly(std::vector<double>& values, const std::vector<std::size_t>& kept) {
  for (std::size_t i = 0; i < kept.size(); ++i) values[i] = values[kept[i]];
}

void append(Samples& all, const std::vector<double>& block, std::size_t rows) {
  all.insert(all.end(), block.begin(), block.begin() + static_cast<std::ptrdiff_t>(rows));
}

}  // namespace

RecordingBuilder::RecordingBuilder(const RowPlan& plan, double rate_Hz, std::size_t headingLines)
    : m_plan(plan),
      m_rate_Hz(rate_Hz),
      m_linesBefore(headingLines),
      m_columns(plan.values.size()),
      m_gaps(plan.values.size()) {
  m_recording.linesRead = headingLines;
}

/// Room for `rows` more. What is reserved and not used costs little, growing by copies would: so all of it is
/// reserved at once, from the share of the file that has been read. Where that is not to be had, because the
/// beginning misleads, a little more than what is needed may be.
bool RecordingBuilder::reserve(std::size_t rows, double share) {
  const std::size_t wanted = m_samples + rows;
  if (wanted <= m_capacity) return true;
  const double expected = share > 0 ? static_cast<double>(wanted) / share * 1.1 : 0;
  std::size_t room = wanted + wanted / 4;
  if (expected < 1e15) room = std::max(wanted, static_cast<std::size_t>(expected));
  return reserveRoom(room) || reserveRoom(wanted + wanted / 4);
}

bool RecordingBuilder::reserveRoom(std::size_t samples) {
  try {
    if (m_plan.hasTimeColumn) m_time_s.reserve(samples);
    for (auto& column : m_columns) column.reserve(samples);
  } catch (const std::bad_alloc&) {
    return false;
  }
  m_capacity = samples;
  return true;
}

/// A clock that falls by more than half a day has passed midnight.
void RecordingBuilder::turnClock(RowBlock& block) {
  for (std::size_t i = 0; i < block.rows; ++i) {
    const double clock_s = block.time_s[i];
    if (m_lastClock_s && clock_s < *m_lastClock_s - day_s / 2) ++m_days;
    m_lastClock_s = clock_s;
    // Whole nanoseconds, which a double holds for three months, so that 0.02 s stay 0.02 s.
    const double ns = std::round(clock_s * 1e9) + static_cast<double>(m_days * nanosecondsOfDay);
    block.time_s[i] = ns / 1e9;
  }
}

void RecordingBuilder::dropFallingRows(RowBlock& block) {
  if (block.rows == 0) return;
  const auto begin = block.time_s.begin(), end = begin + static_cast<std::ptrdiff_t>(block.rows);
  if (std::is_sorted(begin, end) && *begin >= m_lastTime_s.value_or(*begin)) {
    m_lastTime_s = *(end - 1);
    return;
  }
  std::vector<std::size_t> kept;
  std::vector<SkippedLine> fallen;
  auto last = m_lastTime_s;
  for (std::size_t i = 0; i < block.rows; ++i) {
    if (!last || block.time_s[i] >= *last) {
      last = block.time_s[i];
      kept.push_back(i);
    } else {
      ++m_recording.linesSkipped;
      if (fallen.size() < greatestSkippedListed)
        fallen.push_back({block.lineOf(i), say("its time lies before that of the one above")});
    }
  }
  m_lastTime_s = last;
  if (kept.size() == block.rows) return;
  std::vector<SkippedLine> both;
  std::merge(block.skipped.begin(), block.skipped.end(), fallen.begin(), fallen.end(),
             std::back_inserter(both),
             [](const SkippedLine& a, const SkippedLine& b) { return a.line < b.line; });
  block.skipped = std::move(both);
  std::erase_if(block.missing, [&](const RowBlock::Missing& cell) {
    return !std::binary_search(kept.begin(), kept.end(), cell.row);
  });
  // Lines are asked for by the row's old place, so the account comes before the rows move.
  account(block);
  block.missing.clear();
  block.skipped.clear();
  keepOnly(block.time_s, kept);
  for (auto& column : block.columns) keepOnly(column, kept);
  block.rows = kept.size();
}

/// Takes over what is told of skipped lines and missing cells.
void RecordingBuilder::account(const RowBlock& block) {
  for (const SkippedLine& line : block.skipped) {
    if (m_recording.skipped.size() >= greatestSkippedListed) break;
    m_recording.skipped.push_back({m_linesBefore + line.line + 1, line.reason});
  }
  for (const RowBlock::Missing& cell : block.missing) {
    ColumnGaps& gaps = m_gaps[cell.slot];
    if (++gaps.count > greatestSkippedListed) continue;
    const std::string& name = m_plan.names[m_plan.values[cell.slot]];
    gaps.first.push_back({m_linesBefore + block.lineOf(cell.row) + 1, cell.slot,
                          faultOfNumber(cell.cell, name, m_plan.decimal)});
  }
}

bool RecordingBuilder::add(RowBlock& block, double share) {
  m_recording.linesSkipped += block.skippedAt.size();
  if (m_plan.hasTimeColumn) {
    if (m_plan.form == TimeForm::Clock && !m_plan.hasDateColumn) turnClock(block);
    dropFallingRows(block);
  } else {
    for (const std::size_t rows : block.skippedAt) m_skippedAt.push_back(m_samples + rows);
  }
  account(block);
  if (!reserve(block.rows, share)) return false;
  if (m_plan.hasTimeColumn) append(m_time_s, block.time_s, block.rows);
  for (std::size_t k = 0; k < m_columns.size(); ++k) append(m_columns[k], block.columns[k], block.rows);
  m_samples += block.rows;
  m_linesBefore += block.lines;
  return true;
}

void RecordingBuilder::takeTimes(Built& built) {
  if (!m_plan.hasTimeColumn && m_skippedAt.empty()) {
    built.recording.time = TimeAxis::even(0, 1 / m_rate_Hz, m_samples);
    return;
  }
  if (!m_plan.hasTimeColumn) {
    m_time_s.reserve(m_samples);
    auto skipped = m_skippedAt.begin();
    for (std::size_t k = 0; k < m_samples; ++k) {
      while (skipped != m_skippedAt.end() && *skipped <= k) ++skipped;
      const auto place = static_cast<double>(k) + static_cast<double>(skipped - m_skippedAt.begin());
      m_time_s.push_back(place / m_rate_Hz);
    }
  } else if (isStamped(m_plan) && !m_time_s.empty()) {
    const auto first_ns = static_cast<std::int64_t>(std::llround(m_time_s.front() * 1e9));
    built.start_ns = m_plan.base_ns + first_ns;
    // Times count from the first row that was looked at; mostly that is the first sample.
    if (first_ns != 0)
      for (double& time_s : m_time_s)
        time_s = (std::round(time_s * 1e9) - static_cast<double>(first_ns)) / 1e9;
  }
  built.recording.time = TimeAxis(std::move(m_time_s));
}

RecordingBuilder::Built RecordingBuilder::take() {
  Built built;
  built.recording = std::move(m_recording);
  Recording& recording = built.recording;
  recording.linesRead = m_linesBefore - recording.linesSkipped;
  takeTimes(built);
  for (std::size_t k = 0; k < m_columns.size(); ++k) {
    if (m_gaps[k].count == m_samples) continue;
    const std::size_t column = recording.columns.size();
    recording.cellsMissing += m_gaps[k].count;
    for (MissingCell& cell : m_gaps[k].first) {
      cell.column = column;
      recording.missing.push_back(std::move(cell));
    }
    built.columns.push_back(m_plan.values[k]);
    recording.columns.push_back({m_plan.names[m_plan.values[k]], "", std::move(m_columns[k])});
  }
  keepFirst(recording.missing);
  return built;
}

}  // namespace core
