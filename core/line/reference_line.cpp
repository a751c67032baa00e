// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/line/reference_line.h"

#include <algorithm>
#include <array>

#include "core/units/language.h"

namespace core {
namespace {

struct Row {
  ReferenceLine line;
  std::string_view key, name;
};

constexpr std::array<Row, referenceLineCount> rows{{
    {ReferenceLine::LeastSquares, "least_squares", sayLater("least-squares line")},
    {ReferenceLine::EndPoint, "end_point", sayLater("end-point line")},
    {ReferenceLine::Minimax, "minimax", sayLater("minimax line")},
    {ReferenceLine::ZeroBasedLeastSquares, "zero_based_least_squares",
     sayLater("line through zero by least squares")},
    {ReferenceLine::ZeroBasedMinimax, "zero_based_minimax", sayLater("minimax line through zero")},
}};

const Row& rowOf(ReferenceLine line) { return rows[static_cast<std::size_t>(line)]; }

}  // namespace

std::string_view referenceLineKey(ReferenceLine line) { return rowOf(line).key; }

std::optional<ReferenceLine> referenceLineFromKey(std::string_view key) {
  const auto found = std::find_if(rows.begin(), rows.end(), [&](const Row& row) { return row.key == key; });
  return found == rows.end() ? std::nullopt : std::optional(found->line);
}

std::string_view referenceLineName(ReferenceLine line) { return sayName(rowOf(line).name); }

}  // namespace core
