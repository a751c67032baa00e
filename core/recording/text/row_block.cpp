// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/text/row_block.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/recording/clean_text.h"
#include "core/recording/text/cells.h"
#include "core/recording/text/number.h"
#include "core/recording/text/time_cell.h"
#include "core/recording/time_units.h"
#include "core/units/language.h"

namespace core {
namespace {

constexpr double noNumber = std::numeric_limits<double>::quiet_NaN();

/// Reads one piece. The text is followed by a line end and zeros, so that nothing needs to ask whether the
/// end is reached before it looks at a character.
class RowReader {
 public:
  RowReader(const TextPiece& piece, const RowPlan& plan, RowBlock& block)
      : m_text(piece.text()),
        m_plan(plan),
        m_block(block),
        m_begin(piece.buffer.data()),
        m_bareDecimal(plan.decimal) {
    m_widest = plan.uses.size();
    // Between commas a decimal comma stands in quotes.
    if (plan.decimal == plan.separator) m_bareDecimal = '\0';
    findColumns();
  }

  void readAll() {
    const char* const end = m_begin + m_text.size();
    for (const char* line = m_begin; line < end;) line = readLine(line);
  }

  void skip(std::string reason) {
    m_block.otherLines.push_back(m_block.rows);
    m_block.skippedAt.push_back(m_block.rows);
    if (m_block.skipped.size() < greatestSkippedListed)
      m_block.skipped.push_back({m_block.lines, std::move(reason)});
    ++m_block.lines;
  }

 private:
  bool isGap(char c) const { return c == ' ' || (c == '\t' && m_plan.separator != '\t'); }
  const char* behindGap(const char* p) const {
    while (isGap(*p)) ++p;
    return p;
  }
  std::string_view cellAt(const char* begin, const char* end) const {
    return unquoted({begin, static_cast<std::size_t>(end - begin)});
  }
  const char* cellEnd(const char* begin) const {
    return m_begin + endOfCell(m_text, static_cast<std::size_t>(begin - m_begin), m_plan.separator);
  }

  const char* readLine(const char* line);
  const char* readPlainRow(const char* p);
  void findColumns();
  const char* readCells(const char* p, std::size_t& count);
  const char* scanCell(const char* p, double& value) const;
  const char* readValue(const char* p);
  const char* readTime(const char* p);
  const char* readDate(const char* p);
  void endRow(const char* line, const char* end, std::size_t count);
  bool takeTime();
  std::string faultOfRow() const;
  std::string faultOfWidth(const char* line, const char* end) const;

  const std::string_view m_text;
  const RowPlan& m_plan;
  RowBlock& m_block;
  const char* const m_begin;
  std::size_t m_widest;
  char m_bareDecimal;              ///< of cells without quotes
  std::vector<double*> m_columns;  ///< of plain rows; empty where there can be none
  // Of the row being read:
  std::size_t m_slot = 0;
  std::size_t m_missingBefore = 0;
  std::string_view m_timeCell, m_dateCell;
  TimeCell m_time;
  std::int64_t m_date_ns = 0;
  const char* m_dateFault = nullptr;
};

const char* RowReader::readLine(const char* line) {
  if (m_block.rows == m_block.time_s.size()) {
    m_block.makeRoom();
    findColumns();
  }
  const char* p = m_columns.empty() ? nullptr : readPlainRow(line);
  if (p) return p + (p[0] == '\r' && p[1] == '\n' ? 2 : 1);
  p = line;
  while (isBlank(*p)) ++p;
  if (isLineEnd(*p)) {
    m_block.otherLines.push_back(m_block.rows);
    ++m_block.lines;
  } else {
    m_slot = 0;
    m_missingBefore = m_block.missing.size();
    std::size_t count = 0;
    p = readCells(line, count);
    endRow(line, p, count);
  }
  return p + (p[0] == '\r' && p[1] == '\n' ? 2 : 1);
}

/// Reads a line that is a plain row: short numbers in every column, nothing else. Returns its end, or null
/// for any other line, of which nothing is told then.
const char* RowReader::readPlainRow(const char* p) {
  const std::size_t row = m_block.rows, last = m_columns.size() - 1;
  for (std::size_t k = 0; k <= last; ++k) {
    const char* const behind = scanShortNumber(p, m_plan.decimal, m_plan.separator, m_columns[k][row]);
    if (behind == p || (*behind == m_plan.separator) != (k < last)) return nullptr;
    p = behind + 1;
  }
  if (m_plan.hasTimeColumn && m_plan.form != TimeForm::Seconds)
    m_block.time_s[row] = inSeconds(m_block.time_s[row], m_plan.form);
  ++m_block.rows;
  ++m_block.lines;
  return p - 1;
}

/// Whether most rows may be plain ones, and then where their columns are.
void RowReader::findColumns() {
  m_columns.clear();
  const bool mayBePlain = !isStamped(m_plan) && m_plan.separator != ' ' &&
                          m_plan.separator != m_plan.decimal && m_plan.uses.size() < 1000 &&
                          std::none_of(m_plan.uses.begin(), m_plan.uses.end(),
                                       [](CellUse use) { return use == CellUse::LeftOut; });
  if (!mayBePlain) return;
  std::size_t slot = 0;
  for (const CellUse use : m_plan.uses)
    m_columns.push_back(use == CellUse::Time ? m_block.time_s.data() : m_block.columns[slot++].data());
}

/// Reads the cells of a line and counts them; of those beyond the widest row only whether they hold anything.
/// Returns the line end.
const char* RowReader::readCells(const char* p, std::size_t& count) {
  while (true) {
    p = behindGap(p);
    if (m_plan.separator == ' ' && isLineEnd(*p)) return p;
    const CellUse use = count < m_widest ? m_plan.uses[count] : CellUse::LeftOut;
    if (use == CellUse::Value) {
      p = readValue(p);
    } else if (use == CellUse::Time) {
      p = readTime(p);
    } else if (use == CellUse::Date) {
      p = readDate(p);
    } else {
      const char* const end = cellEnd(p);
      if (count >= m_widest && cellAt(p, end).empty()) --count;  // empty cells at the end do not count
      p = end;
    }
    ++count;
    if (isLineEnd(*p)) return p;
    ++p;
  }
}

/// The number that all of the cell at `p` is, by the fast way; returns the cell's end, or `p` when that
/// fails.
const char* RowReader::scanCell(const char* p, double& value) const {
  const bool isQuoted = *p == '"';
  const char* const begin = p + isQuoted;
  const char* behind = scanNumber(begin, isQuoted ? m_plan.decimal : m_bareDecimal, value);
  if (behind == begin || (isQuoted && *behind++ != '"')) return p;
  if (m_plan.separator != ' ') behind = behindGap(behind);
  return separates(*behind, m_plan.separator) || isLineEnd(*behind) ? behind : p;
}

const char* RowReader::readValue(const char* p) {
  double& value = m_block.columns[m_slot][m_block.rows];
  const char* behind = scanCell(p, value);
  if (behind == p) {
    behind = cellEnd(p);
    const std::string_view cell = cellAt(p, behind);
    const CellNumber number = readNumber(cell, m_plan.decimal);
    value = number.fault ? noNumber : number.value;
    if (number.fault) m_block.missing.push_back({m_block.rows, m_slot, cell});
  }
  ++m_slot;
  return behind;
}

const char* RowReader::readTime(const char* p) {
  double value = 0;
  const char* behind = isStamped(m_plan) ? p : scanCell(p, value);
  if (behind != p) {
    m_time = {inSeconds(value, m_plan.form), 0, nullptr};
    return behind;
  }
  behind = cellEnd(p);
  m_timeCell = cellAt(p, behind);
  m_time = readTimeCell(m_timeCell, m_plan);
  return behind;
}

const char* RowReader::readDate(const char* p) {
  const char* const behind = cellEnd(p);
  m_dateCell = cellAt(p, behind);
  const auto days = core::readDate(m_dateCell, m_plan.order);
  m_dateFault = days ? nullptr : sayLater("is not a date").data();
  m_date_ns = days.value_or(0) * nanosecondsOfDay;
  return behind;
}

std::string RowReader::faultOfWidth(const char* line, const char* end) const {
  std::vector<std::string_view> cells;
  splitCells({line, static_cast<std::size_t>(end - line)}, m_plan.separator, cells);
  return say("it has {1} of {2} cells", {std::to_string(cells.size()), std::to_string(m_widest)});
}

/// Why a row without any number is skipped.
std::string RowReader::faultOfRow() const {
  const RowBlock::Missing& first = m_block.missing[m_missingBefore];
  if (m_plan.values.size() > 1) return say("it has no number in any column");
  return faultOfNumber(first.cell, m_plan.names[m_plan.values[first.slot]], m_plan.decimal);
}

void RowReader::endRow(const char* line, const char* end, std::size_t count) {
  const auto column = [&](CellUse use) {
    const auto at = std::find(m_plan.uses.begin(), m_plan.uses.end(), use);
    return m_plan.names[static_cast<std::size_t>(at - m_plan.uses.begin())];
  };
  const auto refuse = [&](std::string reason) {
    m_block.missing.resize(m_missingBefore);
    skip(std::move(reason));
  };
  if (static_cast<std::size_t>(end - line) > longestLine)
    return refuse(say("it is longer than {1} bytes", {std::to_string(longestLine)}));
  if (count != m_widest) return refuse(faultOfWidth(line, end));
  if (m_plan.hasTimeColumn) {
    if (m_time.fault) return refuse(faultOfCell(m_timeCell, column(CellUse::Time), m_time.fault));
    if (m_plan.hasDateColumn && m_dateFault)
      return refuse(faultOfCell(m_dateCell, column(CellUse::Date), m_dateFault));
  }
  if (m_block.missing.size() - m_missingBefore == m_plan.values.size()) return refuse(faultOfRow());
  if (m_plan.hasTimeColumn) {
    const std::int64_t ns = m_time.ns + (m_plan.hasDateColumn ? m_date_ns : 0) - m_plan.base_ns;
    m_block.time_s[m_block.rows] =
        isStamped(m_plan) ? static_cast<double>(ns) / static_cast<double>(nanoseconds) : m_time.value_s;
  }
  ++m_block.rows;
  ++m_block.lines;
}

}  // namespace

void RowBlock::clear() {
  rows = lines = 0;
  otherLines.clear();
  skippedAt.clear();
  skipped.clear();
  missing.clear();
}

void RowBlock::makeRoom() {
  const std::size_t room = std::max<std::size_t>(256, rows + rows / 2);
  time_s.resize(room);
  for (auto& column : columns) column.resize(room);
}

std::size_t RowBlock::lineOf(std::size_t row) const {
  const auto behind = std::upper_bound(otherLines.begin(), otherLines.end(), row);
  return row + static_cast<std::size_t>(behind - otherLines.begin());
}

std::string faultOfCell(std::string_view cell, const std::string& column, const char* fault) {
  return say("'{1}' in '{2}' {3}", {cleanText(cell, 40), column, say(fault)});
}

std::string faultOfNumber(std::string_view cell, const std::string& column, char decimal) {
  const CellNumber number = readNumber(cell, decimal);
  return faultOfCell(cell, column, number.fault ? number.fault : sayLater("is not a number").data());
}

void readRows(const TextPiece& piece, const RowPlan& plan, RowBlock& block) {
  block.clear();
  block.columns.resize(plan.values.size());
  RowReader reader(piece, plan, block);
  if (piece.beginsWithLongLine)
    reader.skip(say("it is longer than {1} bytes", {std::to_string(longestLine)}));
  reader.readAll();
}

}  // namespace core
