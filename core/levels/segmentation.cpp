// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/levels/segmentation.h"

#include <algorithm>
#include <cassert>
#include <limits>
#include <numeric>

namespace core {
namespace {

/// Squares about the mean of any stretch, from running sums about the overall mean.
class SquaresAboutMean {
 public:
  explicit SquaresAboutMean(std::span<const double> values)
      : m_sums(values.size() + 1), m_squares(values.size() + 1) {
    const double mean =
        std::accumulate(values.begin(), values.end(), 0.0) / static_cast<double>(values.size());
    for (std::size_t i = 0; i < values.size(); ++i) {
      const double v = values[i] - mean;
      m_sums[i + 1] = m_sums[i] + v;
      m_squares[i + 1] = m_squares[i] + v * v;
    }
  }

  double operator()(std::size_t begin, std::size_t end) const {
    const double sum = m_sums[end] - m_sums[begin];
    const double squares = m_squares[end] - m_squares[begin];
    return std::max(0.0, squares - sum * sum / static_cast<double>(end - begin));
  }

 private:
  std::vector<double> m_sums;
  std::vector<double> m_squares;
};

/// A place where the last segment may begin.
struct Start {
  std::size_t node;       ///< index into the nodes
  std::size_t droppedAt;  ///< from this value on it can no longer be the best
};

}  // namespace

Partition optimalPartition(std::span<const double> values, std::span<const std::size_t> candidates,
                           double penalty, std::size_t shortest) {
  assert(!values.empty() && shortest > 0);
  constexpr double never = std::numeric_limits<double>::infinity();
  constexpr std::size_t kept = std::numeric_limits<std::size_t>::max();
  const SquaresAboutMean cost(values);
  std::vector<std::size_t> nodes{0};
  nodes.insert(nodes.end(), candidates.begin(), candidates.end());
  nodes.push_back(values.size());

  std::vector<double> best(nodes.size(), never);  // objective up to each node, with one penalty too many
  std::vector<std::size_t> before(nodes.size(), 0);
  best[0] = 0;
  std::vector<Start> starts{{0, kept}};
  for (std::size_t t = 1; t < nodes.size(); ++t) {
    std::erase_if(starts, [&](const Start& start) { return start.droppedAt <= nodes[t]; });
    for (const Start& start : starts) {
      if (nodes[t] - nodes[start.node] < shortest) continue;
      const double objective = best[start.node] + cost(nodes[start.node], nodes[t]) + penalty;
      if (objective >= best[t]) continue;
      best[t] = objective;
      before[t] = start.node;
    }
    if (best[t] == never) continue;
    // Once a segment beginning here is long enough, it beats every start that is already worse without it.
    for (Start& start : starts) {
      if (nodes[t] - nodes[start.node] < shortest || start.droppedAt != kept) continue;
      if (best[start.node] + cost(nodes[start.node], nodes[t]) >= best[t])
        start.droppedAt = nodes[t] + shortest;
    }
    starts.push_back({t, kept});
  }

  Partition partition;
  partition.objective = best.back() == never ? cost(0, values.size()) : best.back() - penalty;
  for (std::size_t t = before.back(); t > 0; t = before[t]) partition.changes.push_back(nodes[t]);
  std::reverse(partition.changes.begin(), partition.changes.end());
  return partition;
}

Partition optimalPartition(std::span<const double> values, double penalty, std::size_t shortest) {
  std::vector<std::size_t> all(values.size() - 1);
  std::iota(all.begin(), all.end(), std::size_t{1});
  return optimalPartition(values, all, penalty, shortest);
}

std::vector<std::size_t> refinedChanges(std::span<const double> values, std::vector<std::size_t> changes,
                                        std::size_t reach) {
  if (values.empty()) return changes;
  const SquaresAboutMean cost(values);
  for (std::size_t k = 0; k < changes.size(); ++k) {
    const std::size_t begin = k > 0 ? changes[k - 1] : 0;
    const std::size_t end = k + 1 < changes.size() ? changes[k + 1] : values.size();
    const std::size_t first = std::max(begin + 1, changes[k] - std::min(reach, changes[k]));
    const std::size_t last = std::min(end - 1, changes[k] + reach);
    double least = cost(begin, changes[k]) + cost(changes[k], end);
    for (std::size_t i = first; i <= last; ++i) {
      const double squares = cost(begin, i) + cost(i, end);
      if (squares >= least) continue;
      least = squares;
      changes[k] = i;
    }
  }
  return changes;
}

}  // namespace core
