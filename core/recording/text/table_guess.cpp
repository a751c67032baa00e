// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/text/table_guess.h"

#include <algorithm>
#include <array>

#include "core/recording/column_heading.h"
#include "core/recording/text/cells.h"
#include "core/recording/text/preamble_rate.h"
#include "core/recording/text/table_heading.h"
#include "core/recording/text/text_format.h"
#include "core/recording/text/text_limits.h"
#include "core/units/language.h"

namespace core {
namespace {

constexpr std::size_t linesScored = 1000;
constexpr std::size_t bytesScored = std::size_t{768} * 1024;

/// Lines that tell how values are written: not more than are needed.
std::vector<std::string_view> scoredLines(const TextSample& sample, std::size_t from, bool all) {
  std::vector<std::string_view> lines;
  std::size_t bytes = 0;
  for (std::size_t k = from; k < sample.lines.size(); ++k) {
    if (!all && (lines.size() >= linesScored || bytes >= bytesScored)) break;
    lines.push_back(sample.lines[k]);
    bytes += sample.lines[k].size();
  }
  lines.insert(lines.end(), sample.farther.begin(), sample.farther.end());
  return lines;
}

/// Whether `cells` are a row of that many columns; empty cells beyond them do not count.
bool isAsWide(const Cells& cells, std::size_t columns) {
  return cells.size() >= columns &&
         std::all_of(cells.begin() + static_cast<std::ptrdiff_t>(columns), cells.end(),
                     [](std::string_view cell) { return cell.empty(); });
}

/// What most cells of each column are.
std::vector<CellKind> columnKinds(const std::vector<Cells>& rows, std::size_t columns, char decimal) {
  std::vector<CellKind> kinds;
  for (std::size_t k = 0; k < columns; ++k) {
    std::array<std::size_t, 7> count{};
    for (const Cells& row : rows) ++count[static_cast<std::size_t>(kindOf(row[k], decimal))];
    const auto of = [&](CellKind kind) { return count[static_cast<std::size_t>(kind)]; };
    CellKind best = of(CellKind::NoNumber) > 0 ? CellKind::NoNumber : CellKind::Empty;
    if (of(CellKind::Words) > 0) best = CellKind::Words;
    std::size_t most = 0;
    for (const CellKind kind : {CellKind::Number, CellKind::Clock, CellKind::Date, CellKind::DateAndTime})
      if (of(kind) > most) most = of(kind), best = kind;
    // A stray date among many words is a word.
    if (isStamp(best) && of(CellKind::Words) > most) best = CellKind::Words;
    kinds.push_back(best);
  }
  return kinds;
}

class TableFinder {
 public:
  TableFinder(const TextSample& sample, const LayoutChoices& choices, const std::string& where)
      : m_sample(sample), m_choices(choices), m_where(where) {}

  Result<TableGuess> find();

 private:
  Result<void> findShape();
  Error nothingToRead() const;
  void collectRows();
  bool isRow(std::size_t line) const;
  bool beginsLikeRow(std::size_t line) const;
  bool isHeadingLike(std::size_t line) const;
  std::size_t findFirstRow() const;
  void preferDecimalComma(const std::vector<std::string_view>& lines, TableShape& shape);
  Cells cellsOf(std::size_t line) const {
    Cells cells;
    splitCells(m_sample.lines[line], m_guess.layout.separator, cells);
    return cells;
  }
  bool isAsWideAsTable(const Cells& cells) const { return isAsWide(cells, m_guess.layout.columns.size()); }
  Error error(std::string what, std::string mend) const {
    return {m_where, std::move(what), std::move(mend)};
  }

  const TextSample& m_sample;
  const LayoutChoices& m_choices;
  const std::string& m_where;
  TableGuess m_guess;
};

/// Two whole numbers between commas may be one number with a decimal comma: "1,532" under one name, in a file
/// that tells its sample rate.
void TableFinder::preferDecimalComma(const std::vector<std::string_view>& lines, TableShape& shape) {
  if (shape.columns != 2 || shape.format.separator != ',' || m_choices.separator || m_choices.decimal) return;
  std::size_t rows = 0, leadingZeros = 0;
  bool underOneName = false, rate = false;
  Cells cells;
  for (const std::string_view line : lines) {
    const bool isNumber =
        kindOf(trimmed(line), ',') == CellKind::Number && line.find('.') == std::string_view::npos;
    if (isNumber && line.find(',') != std::string_view::npos) {
      ++rows;
      splitCells(line, ',', cells);
      leadingZeros += cells[1].size() > 1 && cells[1].front() == '0';
    } else if (rows == 0 && !trimmed(line).empty()) {
      rate = rate || sampleRateIn(line, ',');
      underOneName = line.find(',') == std::string_view::npos;
    }
    if (!isNumber && rows > 0 && !trimmed(line).empty()) return;
  }
  if (!rate || rows == 0 || (!underOneName && leadingZeros == 0)) return;
  shape = {{';', ','}, 1};
  m_guess.doubts.push_back(say("\"1,5\" is taken for one number with a decimal comma, not for two columns."));
}

/// Why there is no table at all.
Error TableFinder::nothingToRead() const {
  const auto& lines = m_sample.lines;
  const auto isBlankLine = [](std::string_view line) { return trimmed(line).empty(); };
  if (lines.empty())
    return error(say("the file is empty"), say("Choose a text file with columns of numbers"));
  if (std::all_of(lines.begin(), lines.end(), isBlankLine) &&
      std::any_of(lines.begin(), lines.end(), isLeftOut))
    return error(say("its lines are longer than {1} bytes", {std::to_string(longestLine)}),
                 say("Choose a text file with columns of numbers"));
  if (std::all_of(lines.begin(), lines.end(), isBlankLine))
    return error(say("the file holds nothing but blank lines"),
                 say("Choose a text file with columns of numbers"));
  const auto last = std::find_if_not(lines.rbegin(), lines.rend(), isBlankLine);
  Cells cells;
  for (const char separator : {'\t', ';', '|', ','}) {
    splitCells(*last, separator, cells);
    const auto isTime = [](std::string_view cell) { return timeNameStrength(headingOf(cell).name) > 1; };
    if (cells.size() > 1 && (m_sample.isWhole && std::any_of(cells.begin(), cells.end(), isTime)))
      return error(say("there is a heading and no row of numbers below it"),
                   say("Check whether the export ended early, or choose another file"));
  }
  return error(say("no line holds only numbers"), say("Choose a text file with columns of numbers"));
}

Result<void> TableFinder::findShape() {
  const std::size_t from = m_choices.firstRow ? *m_choices.firstRow - 1 : 0;
  auto lines = scoredLines(m_sample, from, false);
  TableShape shape = shapeOf(lines, m_choices);
  if (shape.columns == 0) {
    auto all = scoredLines(m_sample, from, true);
    if (all.size() > lines.size()) shape = shapeOf(lines = std::move(all), m_choices);
  }
  if (shape.columns == 0) return nothingToRead();
  if (shape.columns > greatestColumns + 1)
    return error(say("the table has more than {1} columns", {std::to_string(greatestColumns)}),
                 say("Export fewer channels at a time"));
  preferDecimalComma(lines, shape);
  m_guess.layout.separator = shape.format.separator;
  m_guess.layout.decimal = shape.format.decimal;
  m_guess.layout.columns.resize(shape.columns);
  return {};
}

void TableFinder::collectRows() {
  const std::size_t from = m_choices.firstRow ? *m_choices.firstRow - 1 : 0;
  const std::size_t columns = m_guess.layout.columns.size();
  Cells cells;
  std::vector<CellKind> kinds;
  for (const std::string_view line : scoredLines(m_sample, from, false)) {
    splitCells(line, m_guess.layout.separator, cells);
    if (cells.size() < columns || !isAsWide(cells, columns)) continue;
    cells.resize(columns);
    kindsOf(cells, m_guess.layout.decimal, kinds);
    if (std::find(kinds.begin(), kinds.end(), CellKind::Number) == kinds.end()) continue;
    m_guess.rows.push_back(cells);
  }
}

/// A row as the others: numbers or nothing where they have numbers, at least one number.
bool TableFinder::isRow(std::size_t line) const {
  const Cells cells = cellsOf(line);
  if (!isAsWideAsTable(cells)) return false;
  bool hasNumber = false;
  for (std::size_t k = 0; k < m_guess.kinds.size(); ++k) {
    const CellKind kind = kindOf(cells[k], m_guess.layout.decimal), usual = m_guess.kinds[k];
    hasNumber = hasNumber || kind == CellKind::Number;
    if (usual == CellKind::Number && (kind == CellKind::Words || isStamp(kind))) return false;
    if (isStamp(usual) && kind == CellKind::Words) return false;
  }
  return hasNumber;
}

/// As wide as the table and with a number or a time in its first column: a row even if other cells are bad.
bool TableFinder::beginsLikeRow(std::size_t line) const {
  const Cells cells = cellsOf(line);
  if (!isAsWideAsTable(cells)) return false;
  const CellKind kind = kindOf(cells.front(), m_guess.layout.decimal), usual = m_guess.kinds.front();
  if (kind == CellKind::NoNumber) return isLetter(cells.front().back()) && cells.front().size() < 5;
  return kind == usual && (usual == CellKind::Number || isStamp(usual));
}

bool TableFinder::isHeadingLike(std::size_t line) const {
  const Cells cells = cellsOf(line);
  return cells.size() > 1 && isAsWideAsTable(cells) &&
         std::all_of(cells.begin(), cells.end(), [&](std::string_view cell) {
           return kindOf(cell, m_guess.layout.decimal) == CellKind::Words;
         });
}

/// Index of the first line with values. A few rows that look like values may belong to the preamble, when a
/// row of names comes after them.
std::size_t TableFinder::findFirstRow() const {
  const std::size_t lines = m_sample.lines.size();
  std::size_t row = 0;
  while (row < lines && !isRow(row)) ++row;
  std::size_t rows = 0;
  for (std::size_t line = row; line < std::min(lines, row + 40) && rows <= 3; ++line) {
    if (isRow(line)) ++rows;
    if (!isHeadingLike(line)) continue;
    std::size_t next = line + 1;
    while (next < lines && next < line + 10 && !isRow(next)) ++next;
    if (next < lines && isRow(next)) row = next;
  }
  while (row > 0 && row < lines && beginsLikeRow(row - 1)) --row;
  return row;
}

Result<TableGuess> TableFinder::find() {
  m_guess.layout.encoding = m_sample.encoding;
  if (const auto found = findShape(); !found) return found.error();
  collectRows();
  const auto setKinds = [&] {
    m_guess.kinds = columnKinds(m_guess.rows, m_guess.layout.columns.size(), m_guess.layout.decimal);
  };
  setKinds();
  const std::size_t row = m_choices.firstRow ? *m_choices.firstRow - 1 : findFirstRow();
  m_guess.layout.firstRow = row + 1;

  TableHeading heading = readTableHeading(m_sample.lines, row, m_guess, m_choices);
  m_guess.layout.columns = std::move(heading.columns);
  m_guess.layout.nameLine = heading.nameLine;
  m_guess.layout.unitLine = heading.unitLine;
  m_guess.rate_Hz = heading.rate_Hz;
  m_guess.doubts.insert(m_guess.doubts.end(), heading.doubts.begin(), heading.doubts.end());
  m_guess.kinds.resize(m_guess.layout.columns.size());
  for (Cells& cells : m_guess.rows) cells.resize(m_guess.layout.columns.size());
  if (m_guess.layout.columns.size() > greatestColumns)
    return error(say("the table has more than {1} columns", {std::to_string(greatestColumns)}),
                 say("Export fewer channels at a time"));
  return std::move(m_guess);
}

}  // namespace

Result<TableGuess> guessTable(const TextSample& sample, const LayoutChoices& choices,
                              const std::string& where) {
  return TableFinder(sample, choices, where).find();
}

}  // namespace core
