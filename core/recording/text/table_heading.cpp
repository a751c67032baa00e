// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/text/table_heading.h"

#include <algorithm>
#include <utility>

#include "core/recording/clean_text.h"
#include "core/recording/column_heading.h"
#include "core/recording/text/cells.h"
#include "core/recording/text/preamble_rate.h"
#include "core/recording/time_units.h"
#include "core/units/language.h"

namespace core {
namespace {

constexpr std::size_t greatestHeading = 5;  ///< lines that may hold names and units

std::string_view withoutCommentSign(std::string_view line, char separator) {
  // A tab at the beginning may be the end of an empty cell.
  const std::string_view blanks = separator == '\t' ? " " : " \t";
  const auto trim = [&] { line.remove_prefix(std::min(line.find_first_not_of(blanks), line.size())); };
  trim();
  for (const std::string_view sign : {"#", "%", "//", "!", "'", ";"}) {
    if (sign.front() == separator || !line.starts_with(sign)) continue;
    while (line.starts_with(sign)) line.remove_prefix(sign.size());
    trim();
  }
  return line;
}

/// A line of dashes or the like, or of nothing.
bool isRule(std::string_view line) {
  return line.find_first_not_of("-=_+*|#%;, \t") == std::string_view::npos;
}

/// Cells between two blanks or more, or tabs.
Cells atWideGaps(std::string_view line) {
  Cells cells;
  line = trimmed(line);
  std::size_t begin = 0;
  while (begin < line.size()) {
    std::size_t end = begin;
    while (end < line.size() && line[end] != '\t' &&
           !(line[end] == ' ' && end + 1 < line.size() && isBlank(line[end + 1])))
      ++end;
    cells.push_back(unquoted(line.substr(begin, end - begin)));
    begin = end;
    while (begin < line.size() && isBlank(line[begin])) ++begin;
  }
  return cells;
}

/// Cells between blanks, a unit in brackets joined to the word before it: "Time [s] Force [kN]".
Cells withUnitsJoined(std::string_view line) {
  Cells words, cells;
  splitCells(line, ' ', words);
  for (const std::string_view word : words) {
    const bool joins = !cells.empty() && (word.starts_with('[') || word.starts_with('('));
    if (!joins) {
      cells.push_back(word);
      continue;
    }
    const char* const begin = cells.back().data();
    cells.back() = {begin, static_cast<std::size_t>(word.data() + word.size() - begin)};
  }
  return cells;
}

bool isEmptyBeyond(const Cells& cells, std::size_t columns) {
  return std::all_of(cells.begin() + static_cast<std::ptrdiff_t>(std::min(columns, cells.size())),
                     cells.end(), [](std::string_view cell) { return cell.empty(); });
}

bool fits(const Cells& cells, std::size_t columns) {
  return cells.size() >= columns && isEmptyBeyond(cells, columns);
}

/// Where a date and a time of day stand in two columns, blanks between, one name often serves for both.
bool splitNameOfDate(Cells& cells, const TableGuess& table, std::size_t columns) {
  if (cells.size() + 1 != columns) return false;
  for (std::size_t k = 0; k + 1 < columns; ++k) {
    if (table.kinds[k] != CellKind::Date || table.kinds[k + 1] != CellKind::Clock) continue;
    cells.insert(cells.begin() + static_cast<std::ptrdiff_t>(k), "Date");
    return true;
  }
  return false;
}

class HeadingFinder {
 public:
  HeadingFinder(const std::vector<std::string_view>& lines, std::size_t row, const TableGuess& table,
                const LayoutChoices& choices)
      : m_lines(lines),
        m_row(row),
        m_table(table),
        m_choices(choices),
        m_columns(table.layout.columns.size()) {}

  TableHeading find();

 private:
  struct Line {
    std::size_t number = 0;  ///< counted from 1
    Cells cells;
  };
  void collect();
  void findRate();
  void chooseLines();
  void narrow();
  bool mayBeNames(const Line& line) const;
  bool isUnits(const Line& line, bool isAlone) const;
  Cells chosenCells(std::size_t number) const;
  bool isAllWords(const Cells& cells) const;
  void doubtWidth(std::size_t number, std::size_t cells, const std::string& so);
  void doubtWidths();

  const std::vector<std::string_view>& m_lines;
  std::size_t m_row;
  const TableGuess& m_table;
  const LayoutChoices& m_choices;
  std::size_t m_columns;
  std::vector<Line> m_above;  ///< nearest to the values first
  Line m_unfit;               ///< of words, right above the values, and not as wide as they
  TableHeading m_heading;
};

bool HeadingFinder::isAllWords(const Cells& cells) const {
  return cells.size() > 1 && std::all_of(cells.begin(), cells.end(), [&](std::string_view cell) {
           const CellKind kind = kindOf(cell, m_table.layout.decimal);
           return kind == CellKind::Words || kind == CellKind::Empty;
         });
}

/// Lines as wide as the table that stand together above the values.
void HeadingFinder::collect() {
  for (std::size_t k = std::min(m_row, m_lines.size()); k > 0 && m_above.size() < greatestHeading; --k) {
    const std::string_view line = m_lines[k - 1];
    if (isRule(line)) continue;
    if (m_columns == 1 && sampleRateIn(line, m_table.layout.decimal)) return;
    Cells cells = headingCells(line, m_table, m_columns);
    if (!fits(cells, m_columns)) {
      if (m_above.empty() && isAllWords(cells)) m_unfit = {k, std::move(cells)};
      return;
    }
    m_above.push_back({k, std::move(cells)});
  }
}

/// What looks like names and has another number of cells than the rows could name the wrong columns.
void HeadingFinder::doubtWidth(std::size_t number, std::size_t cells, const std::string& so) {
  m_heading.doubts.push_back(
      say("Line {1} has {2} cells and the rows of numbers have {3}: {4}",
          {std::to_string(number), std::to_string(cells), std::to_string(m_columns), so}));
}

void HeadingFinder::doubtWidths() {
  if (m_heading.nameLine == 0 && m_unfit.number > 0 && m_choices.nameLine != std::size_t{0})
    doubtWidth(m_unfit.number, m_unfit.cells.size(), say("its words are not taken for names."));
  const std::pair<const char*, std::optional<std::size_t>> lines[] = {{"name", m_choices.nameLine},
                                                                      {"unit", m_choices.unitLine}};
  for (const auto& [what, line] : lines) {
    const Cells cells = chosenCells(line.value_or(0));
    if (line.value_or(0) > 0 && !fits(cells, m_columns))
      doubtWidth(*line, cells.size(), say("a {1} may stand above the wrong column.", {std::string(what)}));
  }
}

void HeadingFinder::findRate() {
  for (std::size_t k = 0; k < std::min(m_row, m_lines.size()) && !m_heading.rate_Hz; ++k)
    m_heading.rate_Hz = sampleRateIn(m_lines[k], m_table.layout.decimal);
}

bool HeadingFinder::mayBeNames(const Line& line) const {
  std::size_t words = 0, filled = 0;
  for (const std::string_view cell : line.cells) {
    const CellKind kind = kindOf(cell, m_table.layout.decimal);
    filled += kind != CellKind::Empty;
    words += kind == CellKind::Words;
    if (kind == CellKind::DateAndTime || kind == CellKind::Date) return false;
  }
  const bool isKey = line.cells.front().ends_with(':') || line.cells.front().ends_with('=');
  const bool isRate = sampleRateIn(m_lines[line.number - 1], m_table.layout.decimal).has_value();
  return words > 0 && !isKey && !isRate && (m_columns < 3 || filled * 2 >= m_columns);
}

bool HeadingFinder::isUnits(const Line& line, bool isAlone) const {
  if (!isUnitRow(line.cells)) return false;
  if (!isAlone) return true;
  const bool bracketed = std::all_of(line.cells.begin(), line.cells.end(), [](std::string_view cell) {
    return cell.empty() || withoutBrackets(cell).size() != cell.size();
  });
  return bracketed || (unitOfTime(line.cells.front()) && timeNameStrength(line.cells.front()) < 3);
}

/// Which of the lines above are names and units. Names stand above their units as a rule, else below.
void HeadingFinder::chooseLines() {
  std::size_t units = m_above.size();
  for (std::size_t k = std::min<std::size_t>(units, 4); k-- > 0;) {
    const bool hasNames =
        k + 1 < m_above.size() && mayBeNames(m_above[k + 1]) && !isUnitRow(m_above[k + 1].cells);
    if (isUnits(m_above[k], !hasNames)) units = k;
  }
  std::vector<std::size_t> order;
  for (std::size_t k = units + 1; k < m_above.size(); ++k) order.push_back(k);
  for (std::size_t k = units; k-- > 0;) order.push_back(k);
  if (units == m_above.size()) {
    std::reverse(order.begin(), order.end());
  } else {
    m_heading.unitLine = m_above[units].number;
  }
  const auto names =
      std::find_if(order.begin(), order.end(), [&](std::size_t k) { return mayBeNames(m_above[k]); });
  if (names != order.end()) m_heading.nameLine = m_above[*names].number;
}

Cells HeadingFinder::chosenCells(std::size_t number) const {
  Cells cells;
  if (number > 0 && number <= m_lines.size()) cells = headingCells(m_lines[number - 1], m_table, m_columns);
  return cells;
}

/// Leaves out columns at the end that have neither a name nor a cell with anything in it.
void HeadingFinder::narrow() {
  auto& columns = m_heading.columns;
  while (columns.size() > 1 && columns.back() == ColumnHeading{} &&
         m_table.kinds[columns.size() - 1] == CellKind::Empty)
    columns.pop_back();
}

TableHeading HeadingFinder::find() {
  collect();
  findRate();
  chooseLines();
  if (m_choices.nameLine) m_heading.nameLine = *m_choices.nameLine;
  if (m_choices.unitLine) m_heading.unitLine = *m_choices.unitLine;
  if (m_heading.nameLine == m_heading.unitLine)
    (m_choices.nameLine ? m_heading.unitLine : m_heading.nameLine) = 0;
  doubtWidths();
  m_heading.columns.resize(m_columns);
  const Cells names = chosenCells(m_heading.nameLine), units = chosenCells(m_heading.unitLine);
  for (std::size_t k = 0; k < std::min(names.size(), m_columns); ++k)
    m_heading.columns[k] = headingOf(names[k]);
  for (std::size_t k = 0; k < std::min(units.size(), m_columns); ++k) {
    const std::string_view unit = withoutBrackets(units[k]);
    if (!unit.empty()) m_heading.columns[k].unit = cleanText(unit);
  }
  narrow();
  return m_heading;
}

}  // namespace

Cells headingCells(std::string_view line, const TableGuess& table, std::size_t columns) {
  const char separator = table.layout.separator;
  line = withoutCommentSign(line, separator);
  Cells cells;
  splitCells(line, separator, cells);
  if (cells.size() == columns + 1 && cells.front().empty()) cells.erase(cells.begin());
  if (fits(cells, columns)) return cells;
  // Trailing columns without a single value may be missing from the names, too.
  std::size_t filled = columns;
  while (filled > 1 && table.kinds[filled - 1] == CellKind::Empty) --filled;
  if (separator != ' ' && cells.size() >= filled && cells.size() < columns) {
    cells.resize(columns);
    return cells;
  }
  Cells best = cells;
  const auto attempt = [&](Cells other) {
    const bool isBetter = !fits(best, columns) && fits(other, columns);
    if (isBetter && columns > 1) best = std::move(other);
  };
  if (separator == ' ') {
    Cells split = cells;
    if (splitNameOfDate(split, table, columns)) attempt(split);
    attempt(withUnitsJoined(line));
    split = withUnitsJoined(line);
    if (splitNameOfDate(split, table, columns)) attempt(split);
  }
  attempt(atWideGaps(line));
  for (const char other : {'\t', ';', ','}) {
    if (other == separator) continue;
    Cells split;
    splitCells(line, other, split);
    attempt(split);
  }
  return best;
}

TableHeading readTableHeading(const std::vector<std::string_view>& lines, std::size_t row,
                              const TableGuess& table, const LayoutChoices& choices) {
  return HeadingFinder(lines, row, table, choices).find();
}

}  // namespace core
