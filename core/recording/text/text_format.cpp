// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/text/text_format.h"

#include <algorithm>
#include <map>

#include "core/recording/text/cell_kind.h"
#include "core/recording/text/cells.h"

namespace core {
namespace {

constexpr TextFormat formats[] = {{'\t', '.'}, {'\t', ','}, {';', '.'}, {';', ','},
                                  {',', '.'},  {' ', '.'},  {' ', ','}, {',', ','}};

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
    // One column is what remains when nothing else fits.
    scoreOfWidth[cells.size()] += likeness(kinds) * (cells.size() > 1 ? 2 : 1);
  }
  ScoredShape best;
  for (const auto& [columns, score] : scoreOfWidth)
    if (score > best.score) best = {{format, columns}, score};
  return best;
}

}  // namespace

TableShape shapeOf(const std::vector<std::string_view>& lines, const LayoutChoices& choices) {
  ScoredShape best;
  for (const TextFormat format : formats) {
    if (choices.separator.value_or(format.separator) != format.separator) continue;
    if (choices.decimal.value_or(format.decimal) != format.decimal) continue;
    const ScoredShape found = scoreOf(lines, format);
    if (found.score > best.score * (1 + 1e-9)) best = found;
  }
  return best.shape;
}

}  // namespace core
