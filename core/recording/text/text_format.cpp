// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/text/text_format.h"

#include <algorithm>
#include <map>
#include <utility>

#include "core/recording/text/cell_kind.h"
#include "core/recording/text/cells.h"

namespace core {
namespace {

constexpr TextFormat formats[] = {{'\t', '.'}, {'\t', ','}, {';', '.'}, {';', ','}, {'|', '.'},
                                  {'|', ','},  {',', '.'},  {' ', '.'}, {' ', ','}, {',', ','}};

/// 0 for a line without a number, up to 1 for one of numbers alone.
double likeness(const std::vector<CellKind>& kinds) {
  double good = 0;
  bool hasNumber = false;
  for (const CellKind kind : kinds) {
    hasNumber = hasNumber || kind == CellKind::Number;
    if (kind == CellKind::Empty || kind == CellKind::NoNumber) good += 0.7;
    if (kind == CellKind::Number || isStamp(kind)) good += 1;
  }
  return hasNumber ? good / static_cast<double>(kinds.size()) : 0;
}

/// How well a line divides into numbers. One column is what remains when nothing else fits.
double scoreOf(const std::vector<CellKind>& kinds) { return likeness(kinds) * (kinds.size() > 1 ? 2 : 1); }

struct ScoredShape {
  TableShape shape;
  double score = 0;
};

ScoredShape scoreOf(const std::vector<std::string_view>& lines, TextFormat format) {
  std::map<std::size_t, double> scoreOfWidth;
  std::vector<std::string_view> cells;
  std::vector<CellKind> kinds;
  for (const std::string_view line : lines) {
    splitCells(line, format.separator, cells);
    if (cells.empty()) continue;
    kindsOf(cells, format.decimal, kinds);
    scoreOfWidth[cells.size()] += scoreOf(kinds);
  }
  ScoredShape best;
  for (const auto& [columns, score] : scoreOfWidth)
    if (score > best.score) best = {{format, columns}, score};
  return best;
}

/// Whether blanks divide `cell` into numbers alone: then they, and not what stands around it, are between
/// cells.
bool isRunOfNumbers(std::string_view cell, char decimal) {
  std::vector<std::string_view> parts;
  splitCells(cell, ' ', parts);
  return parts.size() > 1 && std::all_of(parts.begin(), parts.end(), [&](std::string_view part) {
           return kindOf(part, decimal) == CellKind::Number;
         });
}

/// Counts lines by how many cells they have and keeps what most have.
class WidthCount {
 public:
  void add(std::size_t cells, bool isRow) {
    ++m_lines;
    auto& [lines, rows] = m_ofWidth[cells];
    ++lines;
    rows += isRow;
  }
  /// The width of 19 of 20 lines, when as many of them are rows with numbers; else 0.
  std::size_t regular() const {
    for (const auto& [width, count] : m_ofWidth)
      if (width > 1 && count.first * 20 >= m_lines * 19 && count.second * 20 >= count.first * 19)
        return width;
    return 0;
  }

 private:
  std::size_t m_lines = 0;
  std::map<std::size_t, std::pair<std::size_t, std::size_t>> m_ofWidth;
};

/// The width of the table that `format` makes of the lines that are rows in another format, `rows`: when its
/// separator stands in nearly all of them, equally often.
std::size_t regularWidth(const std::vector<std::string_view>& rows, TextFormat format) {
  WidthCount count;
  std::vector<std::string_view> cells;
  std::vector<CellKind> kinds;
  for (const std::string_view line : rows) {
    splitCells(line, format.separator, cells);
    kindsOf(cells, format.decimal, kinds);
    const bool isRun = std::any_of(cells.begin(), cells.end(), [&](std::string_view cell) {
      return isRunOfNumbers(cell, format.decimal);
    });
    count.add(cells.size(), !isRun && likeness(kinds) > 0);
  }
  return count.regular();
}

/// The lines of `lines` that are rows in `shape`.
std::vector<std::string_view> rowsOf(const std::vector<std::string_view>& lines, const TableShape& shape) {
  std::vector<std::string_view> rows, cells;
  std::vector<CellKind> kinds;
  for (const std::string_view line : lines) {
    splitCells(line, shape.format.separator, cells);
    if (cells.size() != shape.columns) continue;
    kindsOf(cells, shape.format.decimal, kinds);
    if (likeness(kinds) > 0) rows.push_back(line);
  }
  return rows;
}

/// How far a separator goes before others that stand in a line as often every time: a blank stands within
/// dates, and a comma may be a decimal sign.
int rankOf(char separator) {
  switch (separator) {
    case '\t':
      return 4;
    case ';':
    case '|':
      return 3;
    case ',':
      return 2;
    default:
      return 1;
  }
}

bool mayBe(TextFormat format, const LayoutChoices& choices) {
  return choices.separator.value_or(format.separator) == format.separator &&
         choices.decimal.value_or(format.decimal) == format.decimal;
}

/// The shape by a separator of a higher rank than that of `divided` which stands in its rows equally often;
/// of no column when there is none.
TableShape regularShape(const std::vector<std::string_view>& lines, const TableShape& divided,
                        const LayoutChoices& choices) {
  const auto rows = rowsOf(lines, divided);
  ScoredShape best;
  for (const TextFormat format : formats) {
    const int rank = rankOf(format.separator);
    if (!mayBe(format, choices) || rank <= rankOf(divided.format.separator)) continue;
    if (format.separator == ',' && divided.format.decimal == ',') continue;
    const std::size_t width = regularWidth(rows, format);
    const ScoredShape found = {{format, width}, scoreOf(rows, format).score};
    const int before = best.shape.columns > 0 ? rankOf(best.shape.format.separator) : 0;
    if (width > 0 && (rank > before || (rank == before && found.score > best.score))) best = found;
  }
  return best.shape;
}

}  // namespace

TableShape shapeOf(const std::vector<std::string_view>& lines, const LayoutChoices& choices) {
  ScoredShape best;
  for (const TextFormat format : formats) {
    if (!mayBe(format, choices)) continue;
    const ScoredShape found = scoreOf(lines, format);
    if (found.score > best.score * (1 + 1e-9)) best = found;
  }
  // What divides best may divide wrongly: blanks find no empty cells, so that those behind them would take
  // the names of others. A separator that stands in each row equally often is no accident.
  const TableShape regular = regularShape(lines, best.shape, choices);
  return regular.columns > 0 ? regular : best.shape;
}

}  // namespace core
