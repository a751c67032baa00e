// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/levels/excursions.h"

#include <algorithm>
#include <cmath>

namespace core {
namespace {

/// The cells from edge `k` to the next and one more on either side, when they are an excursion; none
/// otherwise. `begin`: where the stretch before it begins.
SampleSpan excursionAt(const EdgedCells& edged, const std::vector<Scale>& scales, std::size_t begin,
                       std::size_t k, std::size_t shortest, double leastStep) {
  const Cells& cells = edged.cells;
  const std::vector<Edge>& edges = edged.edges;
  const SampleSpan away{edges[k].cell - 1, edges[k + 1].cell + 1};
  const std::size_t end = k + 2 < edges.size() ? edges[k + 2].cell : cells.size();
  if (edges[k + 1].cell - edges[k].cell >= shortest || edges[k].jump * edges[k + 1].jump >= 0) return {};
  const std::size_t least = std::max(shortest, 4 * away.size());
  if (away.begin < begin + least || away.end + least > end) return {};
  const double before = cells.mean(away.begin - least, away.begin);
  const double after = cells.mean(away.end, away.end + least);
  const bool isSame = std::abs(after - before) < std::max(leastStep, 5 * leastNoise(scales, least));
  return isSame ? away : SampleSpan{};
}

/// Puts the mean of the `beside` cells on either side in place of those of `away`.
void bridge(std::vector<double>& values, SampleSpan away, std::size_t beside) {
  double sum = 0;
  for (std::size_t i = 1; i <= beside; ++i) sum += values[away.begin - i] + values[away.end + i - 1];
  for (std::size_t i = away.begin; i < away.end; ++i) values[i] = sum / static_cast<double>(2 * beside);
}

}  // namespace

EdgedCells withoutExcursions(EdgedCells edged, const std::vector<Scale>& scales, std::size_t shortest,
                             double leastStep) {
  std::vector<SampleSpan> excursions;
  std::vector<Edge> kept;
  for (std::size_t k = 0; k < edged.edges.size(); ++k) {
    std::size_t begin = kept.empty() ? 0 : kept.back().cell;
    if (!excursions.empty()) begin = std::max(begin, excursions.back().end);
    const SampleSpan away =
        k + 1 < edged.edges.size() ? excursionAt(edged, scales, begin, k, shortest, leastStep) : SampleSpan{};
    if (away.size() > 0) {
      excursions.push_back(away);
      ++k;
    } else {
      kept.push_back(edged.edges[k]);
    }
  }
  if (excursions.empty()) return edged;
  std::vector<double>& sums = edged.cells.sums;
  std::vector<double> values(edged.cells.size());
  for (std::size_t i = 0; i < values.size(); ++i) values[i] = edged.cells[i];
  for (const SampleSpan& away : excursions) bridge(values, away, shortest);
  for (std::size_t i = 0; i < values.size(); ++i) sums[i + 1] = sums[i] + values[i];
  return {std::move(edged.cells), std::move(kept)};
}

}  // namespace core
