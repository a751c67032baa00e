// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/levels/long_steps.h"

#include <algorithm>
#include <cmath>
#include <vector>

#include "core/levels/statistics.h"

namespace core {
namespace {

constexpr std::size_t mostCells = 1000;
constexpr std::size_t fewestCells = 40;
constexpr std::size_t fewestBeside = 10;  ///< cells on either side of a step

/// A stretch cut in two, each with its own mean.
struct Cut {
  std::size_t cell = 0;
  double jump = 0;
  double squares = 0;  ///< by which it lessens those of the stretch about its mean
};

double squaresOf(double jump, std::size_t left, std::size_t right) {
  const auto l = static_cast<double>(left);
  const auto r = static_cast<double>(right);
  return jump * jump * l * r / (l + r);
}

Cut bestCut(const Cells& cells, SampleSpan stretch) {
  Cut best;
  for (std::size_t at = stretch.begin + fewestBeside; at + fewestBeside <= stretch.end; ++at) {
    const double jump = cells.mean(at, stretch.end) - cells.mean(stretch.begin, at);
    const double squares = squaresOf(jump, at - stretch.begin, stretch.end - at);
    if (squares > best.squares) best = {at, jump, squares};
  }
  return best;
}

/// What a straight line lessens the squares of a stretch by.
double squaresOfLine(const Cells& cells, SampleSpan stretch) {
  const double middle = static_cast<double>(stretch.begin + stretch.end - 1) / 2;
  double xx = 0, xy = 0;
  for (std::size_t k = stretch.begin; k < stretch.end; ++k) {
    const double x = static_cast<double>(k) - middle;
    xx += x * x;
    xy += x * cells[k];
  }
  return xy * xy / xx;
}

/// Standard deviation of the sum of many cells of a stretch cut in two, over the root of their number. Red
/// noise of the first order: its lag-one correlation taken one standard deviation above the estimate, which
/// itself is too small by about (1 + 3 r)/n for each of the two means (Kendall 1954).
double longRunNoise(const Cells& cells, SampleSpan stretch, const Cut& cut) {
  const double means[] = {cells.mean(stretch.begin, cut.cell), cells.mean(cut.cell, stretch.end)};
  std::vector<double> rest(stretch.size());
  double squares = 0;
  for (std::size_t k = stretch.begin; k < stretch.end; ++k) {
    const double left = cells[k] - means[k < cut.cell ? 0 : 1];
    rest[k - stretch.begin] = left;
    squares += left * left;
  }
  if (squares <= 0) return 0;
  const auto n = static_cast<double>(stretch.size());
  const double r = std::max(0.0, autocorrelation(rest, 1));
  const double redder = std::min(0.99, r + 2 * (1 + 3 * r) / n + std::sqrt((1 - r * r) / n));
  return std::sqrt(squares / (n - 2) * (1 + redder) / (1 - redder));
}

class LongSteps {
 public:
  LongSteps(const Cells& cells, const std::vector<Scale>& scales, double leastStep)
      : m_cells(cells),
        m_leastStep(leastStep),
        // The largest of as many looks at noise, and a margin.
        m_sure(std::sqrt(2 * std::log(static_cast<double>(cells.size()))) + 2) {
    for (const Scale& scale : scales)
      m_known = std::max(m_known, scale.noise * std::sqrt(static_cast<double>(scale.window) / 2));
  }

  /// Adds the edges within `stretch`, in order.
  void add(SampleSpan stretch, std::vector<Edge>& edges) const {
    if (stretch.size() < fewestCells) return;
    const Cut cut = bestCut(m_cells, stretch);
    const double noise = std::max(m_known, longRunNoise(m_cells, stretch, cut));
    const double prominence = std::sqrt(cut.squares) / noise;
    if (!(prominence > m_sure) || std::abs(cut.jump) < m_leastStep) return;
    // A drift is no step, though one may stand for it.
    if (cut.squares < squaresOfLine(m_cells, stretch) + 9 * noise * noise) return;
    add({stretch.begin, cut.cell}, edges);
    edges.push_back({cut.cell, cut.jump, prominence});
    add({cut.cell, stretch.end}, edges);
  }

 private:
  const Cells& m_cells;
  double m_leastStep;
  double m_sure;
  double m_known = 0;  ///< long-run noise that contrasts have shown
};

}  // namespace

std::vector<Edge> withLongSteps(const Cells& cells, const std::vector<Scale>& scales, std::vector<Edge> edges,
                                double leastStep) {
  if (cells.size() > mostCells) return edges;
  const LongSteps steps(cells, scales, leastStep);
  std::vector<Edge> all;
  std::size_t begin = 0;
  for (const Edge& edge : edges) {
    steps.add({begin, edge.cell}, all);
    all.push_back(edge);
    begin = edge.cell;
  }
  steps.add({begin, cells.size()}, all);
  return all;
}

}  // namespace core
