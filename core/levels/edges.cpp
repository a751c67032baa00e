// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/levels/edges.h"

#include <algorithm>
#include <cmath>
#include <queue>
#include <span>

#include "core/levels/statistics.h"

namespace core {
namespace {

constexpr double supposed = 4.5;  ///< standard deviations from which on an edge is looked at
constexpr double sure = 7;        ///< and kept: never by chance, and a level is no better known than this

/// Sets `sizes` to |contrast| without drift at every `stride`th place, from the first that there is.
void takeSizes(const Cells& cells, const Scale& scale, std::size_t stride, std::vector<double>& sizes) {
  const std::size_t window = scale.window;
  sizes.resize((cells.size() - 2 * window) / stride + 1);
  const double* before = cells.sums.data();
  const double* at = before + window;
  const double* after = at + window;
  const double share = 1 / static_cast<double>(window);
  const double drift = scale.drift;
  if (stride == 1) {  // most of the work: a loop of its own, for vector instructions
    for (std::size_t k = 0; k < sizes.size(); ++k)
      sizes[k] = std::abs((after[k] - 2 * at[k] + before[k]) * share - drift);
    return;
  }
  for (std::size_t k = 0, i = 0; k < sizes.size(); ++k, i += stride)
    sizes[k] = std::abs((after[i] - 2 * at[i] + before[i]) * share - drift);
}

/// Where |contrast| is the largest within half a window on either side, and beyond `threshold`. `sizes` is
/// room to work in.
std::vector<std::size_t> peaksOf(const Cells& cells, const Scale& scale, double threshold,
                                 std::vector<double>& sizes) {
  const std::size_t stride = std::max<std::size_t>(1, scale.window / 6);
  takeSizes(cells, scale, stride, sizes);
  const std::size_t count = sizes.size();
  const std::size_t reach = std::max<std::size_t>(1, scale.window / 2 / stride);
  std::vector<std::size_t> peaks;
  for (std::size_t k = 0; k < count; ++k) {
    if (sizes[k] <= threshold) continue;
    const auto isLess = [&](std::size_t i) { return sizes[i] < sizes[k]; };
    const auto isNoMore = [&](std::size_t i) { return sizes[i] <= sizes[k]; };
    bool isPeak = true;
    for (std::size_t d = 1; d <= reach && isPeak; ++d)
      isPeak = (d > k || isLess(k - d)) && (k + d >= count || isNoMore(k + d));
    if (isPeak) peaks.push_back(scale.window + k * stride);
  }
  return peaks;
}

/// `peak` moved to the largest contrast within a stride.
std::size_t refined(const Cells& cells, const Scale& scale, std::size_t peak) {
  const std::size_t stride = scale.window / 6;
  std::size_t best = peak;
  double largest = 0;
  const std::size_t first = std::max(scale.window, peak - std::min(peak, stride));
  const std::size_t last = std::min(cells.size() - scale.window, peak + stride);
  for (std::size_t at = first; at <= last; ++at) {
    const double size = std::abs(contrastAt(cells, at, scale.window) - scale.drift);
    if (size <= largest) continue;
    largest = size;
    best = at;
  }
  return best;
}

/// `candidates` and the peaks of all scales; a longer scale adds only what is not near one that a shorter
/// scale has told.
std::vector<std::size_t> candidatesOf(const Cells& cells, std::span<const Scale> scales, double leastStep,
                                      const LocalNoise& local, const std::stop_token& stop,
                                      std::vector<std::size_t> candidates = {}) {
  std::vector<double> sizes;
  for (const Scale& scale : scales) {
    if (stop.stop_requested()) return {};
    std::vector<std::size_t> added;
    const std::size_t near = scale.window * 6 / 10;
    for (const std::size_t rough :
         peaksOf(cells, scale, std::max(supposed * scale.noise, 0.7 * leastStep), sizes)) {
      const std::size_t peak = refined(cells, scale, rough);
      if (std::abs(contrastAt(cells, peak, scale.window) - scale.drift) < supposed * local.of(scale, peak))
        continue;
      const auto next = std::lower_bound(candidates.begin(), candidates.end(), peak);
      const bool isTold = (next != candidates.end() && *next - peak <= near) ||
                          (next != candidates.begin() && peak - *(next - 1) <= near);
      if (!isTold && (added.empty() || peak > added.back())) added.push_back(peak);
    }
    const auto middle = candidates.insert(candidates.end(), added.begin(), added.end());
    std::inplace_merge(candidates.begin(), middle, candidates.end());
  }
  return candidates;
}

/// Edges linked to their neighbours, so that one can be taken away at no cost.
class Sieve {
 public:
  Sieve(const Cells& cells, const std::vector<Scale>& scales, const LocalNoise& local, double leastStep,
        double usualStep, const std::vector<std::size_t>& candidates)
      : m_cells(cells), m_scales(scales), m_local(local), m_leastStep(leastStep), m_usualStep(usualStep) {
    m_nodes.push_back({{0, 0, 0}, 0, 1, 0});
    for (const std::size_t cell : candidates)
      m_nodes.push_back({{cell, 0, 0}, m_nodes.size() - 1, m_nodes.size() + 1, 0});
    m_nodes.push_back({{cells.size(), 0, 0}, m_nodes.size() - 1, m_nodes.size(), 0});
    for (std::size_t k = 1; k + 1 < m_nodes.size(); ++k) judge(k);
  }

  std::vector<Edge> kept(double least = sure) {
    while (!m_queue.empty() && m_queue.top().prominence < least) {
      const Entry entry = m_queue.top();
      m_queue.pop();
      if (entry.version == m_nodes[entry.node].version) takeAway(entry.node);
    }
    std::vector<Edge> edges;
    for (std::size_t k = m_nodes[0].next; k + 1 < m_nodes.size(); k = m_nodes[k].next)
      edges.push_back(m_nodes[k].edge);
    return edges;
  }

 private:
  struct Node {
    Edge edge;
    std::size_t previous;
    std::size_t next;
    std::size_t version;
  };
  struct Entry {
    double prominence;
    std::size_t node;
    std::size_t version;
    bool operator<(const Entry& other) const {
      return prominence > other.prominence || (prominence == other.prominence && node > other.node);
    }
  };

  void judge(std::size_t k) {
    Node& node = m_nodes[k];
    const std::size_t at = node.edge.cell;
    const std::size_t room =
        std::min(at - m_nodes[node.previous].edge.cell, m_nodes[node.next].edge.cell - at);
    node.edge.prominence = 0;
    for (const Scale& scale : m_scales) {
      if (scale.window > room && &scale != &m_scales.front()) break;
      consider(node.edge, scale, std::min(room, scale.window));
    }
    m_queue.push({node.edge.prominence, k, ++node.version});
  }

  /// Windows shorter than the shortest scale's are taken to have white noise.
  void consider(Edge& edge, const Scale& scale, std::size_t window) const {
    const double share = static_cast<double>(window) / static_cast<double>(scale.window);
    const double jump = contrastAt(m_cells, edge.cell, window) - scale.drift * share;
    if (std::abs(jump) < m_leastStep) return;
    const double noise = m_local.of(scale, edge.cell) / std::sqrt(share);
    // Noise need not be the same all the time: an edge that is small beside the others must be all the surer.
    const double demand = std::min(3.0, 1 + 0.01 * m_usualStep / std::abs(jump));
    const double prominence = noise > 0 ? std::abs(jump) / noise / demand : 1e300;
    if (prominence <= edge.prominence) return;
    edge.prominence = prominence;
    edge.jump = jump;
  }

  void takeAway(std::size_t k) {
    const Node& node = m_nodes[k];
    m_nodes[node.previous].next = node.next;
    m_nodes[node.next].previous = node.previous;
    ++m_nodes[k].version;
    if (node.previous > 0) judge(node.previous);
    if (node.next + 1 < m_nodes.size()) judge(node.next);
  }

  const Cells& m_cells;
  const std::vector<Scale>& m_scales;
  const LocalNoise& m_local;
  double m_leastStep;
  double m_usualStep;
  std::vector<Node> m_nodes;
  std::priority_queue<Entry> m_queue;
};

/// Where small edges swarm between few that are many times as large, they are noise that jumps, or a
/// drift through the steps of a converter: the least that is none of them. 0 otherwise.
double leastBesideSwarm(const std::vector<Edge>& edges) {
  constexpr std::size_t swarm = 20;
  std::vector<double> sizes;
  for (const Edge& edge : edges) sizes.push_back(std::abs(edge.jump));
  std::sort(sizes.begin(), sizes.end());
  double least = 0;
  double widest = 4;
  for (std::size_t k = std::max(swarm, sizes.size() * 4 / 5); k < sizes.size(); ++k) {
    const double ratio = sizes[k] / sizes[k - 1];
    if (ratio <= widest || sizes[k] < 3 * sizes[sizes.size() / 2]) continue;
    widest = ratio;
    least = std::sqrt(sizes[k] * sizes[k - 1]);
  }
  return least;
}

std::vector<std::size_t> placesOf(const std::vector<Edge>& edges) {
  std::vector<std::size_t> places;
  for (const Edge& edge : edges) places.push_back(edge.cell);
  return places;
}

double usualStepOf(const std::vector<Edge>& edges, double leastStep) {
  std::vector<double> sizes;
  for (const Edge& edge : edges)
    if (std::abs(edge.jump) >= leastStep) sizes.push_back(std::abs(edge.jump));
  return sizes.empty() ? 0 : quantile(sizes, 0.5);
}

}  // namespace

std::vector<Edge> edgesOf(const Cells& cells, const std::vector<Scale>& scales, double leastStep,
                          const std::stop_token& stop) {
  if (scales.empty()) return {};
  const LocalNoise local(cells, scales);
  std::vector<std::size_t> places = candidatesOf(cells, scales, leastStep, local, stop);
  places = placesOf(Sieve(cells, scales, local, leastStep, 0, places).kept(supposed));
  const std::vector<Scale> clear = withoutSteps(cells, scales, places);
  std::size_t same = 0;
  while (same < scales.size() && clear[same].noise > 0.9 * scales[same].noise) ++same;
  places = candidatesOf(cells, std::span(clear).subspan(same), leastStep, local, stop, std::move(places));
  if (stop.stop_requested()) return {};
  const std::vector<Edge> edges = Sieve(cells, clear, local, leastStep, 0, places).kept();
  const double least = std::max(leastStep, leastBesideSwarm(edges));
  return Sieve(cells, clear, local, least, usualStepOf(edges, least), placesOf(edges)).kept();
}

}  // namespace core
