// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/envelope.h"

#include <algorithm>
#include <cassert>
#include <limits>

namespace core {
namespace {

constexpr std::size_t shortestBlock = 64;
constexpr std::size_t growth = 8;
constexpr std::size_t longStretch = 64 * shortestBlock;

constexpr Extremes nothing{std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity()};

/// A comparison with NaN is false, so that NaN never gets in.
void take(Extremes& extremes, double value) {
  extremes.least = value < extremes.least ? value : extremes.least;
  extremes.greatest = value > extremes.greatest ? value : extremes.greatest;
}

void take(Extremes& extremes, const Extremes& other) {
  extremes.least = other.least < extremes.least ? other.least : extremes.least;
  extremes.greatest = other.greatest > extremes.greatest ? other.greatest : extremes.greatest;
}

/// Four at a time, so that no comparison waits for the one before.
Extremes ofBlock(std::span<const double> values) {
  Extremes lanes[4] = {nothing, nothing, nothing, nothing};
  std::size_t k = 0;
  for (; k + 4 <= values.size(); k += 4)
    for (std::size_t lane = 0; lane < 4; ++lane) take(lanes[lane], values[k + lane]);
  for (; k < values.size(); ++k) take(lanes[0], values[k]);
  for (std::size_t lane = 1; lane < 4; ++lane) take(lanes[0], lanes[lane]);
  return lanes[0];
}

ExtremeBlocks coarser(const ExtremeBlocks& fine) {
  ExtremeBlocks coarse((fine.size() + growth - 1) / growth, nothing);
  for (std::size_t k = 0; k < fine.size(); ++k) take(coarse[k / growth], fine[k]);
  return coarse;
}

}  // namespace

Extremes joined(Extremes a, Extremes b) {
  if (a.empty()) return b;
  if (b.empty()) return a;
  take(a, b);
  return a;
}

Envelope::Envelope(std::span<const double> values) {
  ExtremeBlocks blocks;
  blocks.reserve((values.size() + shortestBlock - 1) / shortestBlock);
  for (std::size_t k = 0; k < values.size(); k += shortestBlock) {
    if (blocks.size() % 1024 == 0) letSamplesGo();
    blocks.push_back(ofBlock(values.subspan(k, std::min(shortestBlock, values.size() - k))));
  }
  m_scales.push_back(std::move(blocks));
  while (m_scales.back().size() > growth) m_scales.push_back(coarser(m_scales.back()));
}

Extremes Envelope::of(std::span<const double> values, std::size_t begin, std::size_t end) const {
  assert(begin <= end && end <= values.size());
  Extremes found = nothing;
  if (m_scales.empty() || end - begin < 2 * shortestBlock) {
    take(found, ofBlock(values.subspan(begin, end - begin)));
    return found.empty() ? Extremes{} : found;
  }
  // From both ends inwards up to where the next longer blocks begin, then the same with those.
  std::size_t first = (begin + shortestBlock - 1) / shortestBlock, last = end / shortestBlock;
  take(found, ofBlock(values.subspan(begin, first * shortestBlock - begin)));
  take(found, ofBlock(values.subspan(last * shortestBlock, end - last * shortestBlock)));
  for (std::size_t scale = 0; first < last; ++scale) {
    const ExtremeBlocks& blocks = m_scales[scale];
    const bool longest = scale + 1 == m_scales.size();
    for (; first < last && (longest || first % growth != 0); ++first) take(found, blocks[first]);
    for (; first < last && (longest || last % growth != 0); --last) take(found, blocks[last - 1]);
    first /= growth, last /= growth;
  }
  return found.empty() ? Extremes{} : found;
}

Extremes Envelope::drawn(std::span<const double> values, std::size_t begin, std::size_t end) const {
  assert(begin <= end && end <= values.size());
  if (end - begin < longStretch) return of(values, begin, end);
  const std::size_t first = begin / shortestBlock, last = (end + shortestBlock - 1) / shortestBlock;
  return of(values, first * shortestBlock, std::min(values.size(), last * shortestBlock));
}

}  // namespace core
