// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/levels/tally.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>
#include <cstdint>
#include <limits>

#include "core/levels/robust.h"

namespace core {
namespace {

constexpr std::size_t mostLooks = 384;    ///< samples that tell the baseline
constexpr std::size_t mostBlocks = 4096;  ///< of a span: enough for every correlation time that matters
constexpr std::size_t chunk = 512;        ///< residuals that are summed up at once
constexpr double farOff = 5;              ///< scales from the baseline: one normal sample in two million
constexpr double nan = std::numeric_limits<double>::quiet_NaN();

struct Look {
  double place;
  double value;
};

/// Samples spread over the span, at uneven distances so that a hum cannot keep step with them.
std::vector<Look> looksAt(std::span<const double> values) {
  std::vector<Look> looks;
  const std::size_t stride = (values.size() + mostLooks - 1) / mostLooks;
  std::uint32_t dice = 1;
  for (std::size_t begin = 0; begin < values.size(); begin += stride) {
    dice = dice * 1664525u + 1013904223u;  // Numerical Recipes' quick generator
    const std::size_t k = begin + (dice >> 8) % stride;
    if (k < values.size() && !std::isnan(values[k])) looks.push_back({static_cast<double>(k), values[k]});
  }
  return looks;
}

/// Medians of place and value.
Look middleOf(std::span<const Look> looks) {
  std::vector<double> places, values;
  for (const Look& look : looks) {
    places.push_back(look.place);
    values.push_back(look.value);
  }
  return {medianOf(places), medianOf(values)};
}

}  // namespace

Baseline baselineOf(std::span<const double> values) {
  std::vector<Look> looks = looksAt(values);
  if (looks.empty() && std::any_of(values.begin(), values.end(), [](double v) { return !std::isnan(v); })) {
    for (std::size_t k = 0; k < values.size(); ++k) {
      if (!std::isnan(values[k])) looks.push_back({static_cast<double>(k), values[k]});
    }
  }
  Baseline baseline{.centre = nan};
  if (looks.empty()) return baseline;
  const std::size_t third = looks.size() / 3;
  if (third >= 3) {
    const Look first = middleOf(std::span(looks).first(third));
    const Look last = middleOf(std::span(looks).last(third));
    baseline.slope = (last.value - first.value) / (last.place - first.place);
  }
  const double middle = static_cast<double>(values.size() - 1) / 2;
  std::vector<double> distances;
  for (const Look& look : looks) distances.push_back(look.value - baseline.slope * (look.place - middle));
  baseline.centre = medianOf(distances);
  for (double& d : distances) d = std::abs(d - baseline.centre);
  baseline.scale = scaleOf(std::move(distances));
  return baseline;
}

double scaleOf(std::vector<double> distances) {
  assert(!distances.empty());
  const double byMedian = 1.4826 * medianOf(distances);
  const auto at = distances.begin() + static_cast<std::ptrdiff_t>(distances.size() * 7 / 8);
  std::nth_element(distances.begin(), at, distances.end());
  return std::max(byMedian, *at / 1.5341);
}

double limitOf(double scale, double resolution) { return farOff * scale + 1.5 * resolution; }

Tally::Tally(std::size_t samples, const Baseline& baseline)
    : m_baseline(baseline),
      m_size(samples),
      m_least(std::numeric_limits<double>::infinity()),
      m_greatest(-std::numeric_limits<double>::infinity()) {
  while ((samples >> m_octave) > mostBlocks) ++m_octave;
  const std::size_t blocks = (samples >> m_octave) + 1;
  m_blockSums.reserve(blocks);
  m_blockCounts.reserve(blocks);
}

void Tally::add(std::span<const double> residuals) {
  if (m_size <= mostBlocks) m_all.insert(m_all.end(), residuals.begin(), residuals.end());
  std::array<double, chunk> kept;
  std::array<double, chunk> counts;
  while (!residuals.empty()) {
    const std::size_t count = std::min(residuals.size(), chunk);
    addSums(residuals.first(count), kept.data(), counts.data());
    addBlocks(std::span(kept).first(count), std::span(counts).first(count));
    residuals = residuals.subspan(count);
  }
}

/// Sums in several lanes, which the compiler makes vectors of; writes what is kept, or 0, and how often.
void Tally::addSums(std::span<const double> residuals, double* kept, double* counts) {
  constexpr std::size_t lanes = 4;
  const double limit = m_baseline.limit;
  const double reach = 1.5 * m_baseline.scale;
  std::array<double, lanes> sum{}, squares{}, winsorised{}, number{}, present{}, within{};
  std::array<double, lanes> least, greatest;
  least.fill(m_least);
  greatest.fill(m_greatest);
  const auto take = [&](std::size_t k, std::size_t lane) {
    const double r = residuals[k];
    const double isThere = r == r ? 1.0 : 0.0;
    const double known = r == r ? r : 0.0;
    const double distance = std::abs(known);
    const double isKept = distance <= limit ? isThere : 0.0;
    const double v = distance <= limit ? known : 0.0;
    const double low = known < -reach ? -reach : known;
    sum[lane] += v;
    squares[lane] += v * v;
    winsorised[lane] += low > reach ? reach : low;
    number[lane] += isKept;
    present[lane] += isThere;
    within[lane] += distance <= reach ? isKept : 0.0;
    // NaN is neither less nor greater.
    least[lane] = r < least[lane] && distance <= limit ? r : least[lane];
    greatest[lane] = r > greatest[lane] && distance <= limit ? r : greatest[lane];
    kept[k] = v;
    counts[k] = isKept;
  };
  const std::size_t whole = residuals.size() / lanes * lanes;
  for (std::size_t k = 0; k < whole; k += lanes) {
    for (std::size_t lane = 0; lane < lanes; ++lane) take(k + lane, lane);
  }
  for (std::size_t k = whole; k < residuals.size(); ++k) take(k, 0);
  for (std::size_t lane = 0; lane < lanes; ++lane) {
    m_sum += sum[lane];
    m_squares += squares[lane];
    m_least = std::min(m_least, least[lane]);
    m_greatest = std::max(m_greatest, greatest[lane]);
    m_winsorised += winsorised[lane];
    m_within += within[lane];
    m_kept += static_cast<std::size_t>(number[lane]);
    m_outliers += static_cast<std::size_t>(present[lane] - number[lane]);
  }
}

void Tally::addBlocks(std::span<const double> kept, std::span<const double> counts) {
  const std::size_t length = std::size_t{1} << m_octave;
  if (length == 1) {
    m_blockSums.insert(m_blockSums.end(), kept.begin(), kept.end());
    m_blockCounts.insert(m_blockCounts.end(), counts.begin(), counts.end());
    m_at += kept.size();
    return;
  }
  for (std::size_t k = 0; k < kept.size();) {
    if (m_at % length == 0) {
      m_blockSums.push_back(0);
      m_blockCounts.push_back(0);
    }
    const std::size_t end = std::min(kept.size(), k + length - m_at % length);
    m_at += end - k;
    double sum = 0, count = 0;
    for (; k < end; ++k) {
      sum += kept[k];
      count += counts[k];
    }
    m_blockSums.back() += sum;
    m_blockCounts.back() += count;
  }
}

double Tally::mean() const { return m_kept > 0 ? m_sum / static_cast<double>(m_kept) : nan; }

double Tally::robustMean() const {
  if (m_all.empty()) return m_within > 0 ? m_winsorised / m_within : 0;
  std::vector<double> numbers;
  for (const double r : m_all) {
    if (!std::isnan(r)) numbers.push_back(r);
  }
  return numbers.empty() ? nan : robustMeanOf(std::move(numbers)).mean;
}

double Tally::meanSquareAboutLine() const {
  if (m_kept < 3) return 0;
  const auto n = static_cast<double>(m_kept);
  return std::max(0.0, m_squares - m_sum * m_sum / n - m_explained) / (n - 2);
}

/// Through the block means, which tell the slope as well as the samples do.
void Tally::fitLine() {
  double n = 0, x = 0, xx = 0, xr = 0;
  const double length = std::ldexp(1.0, static_cast<int>(m_octave));
  const double middle = static_cast<double>(m_size - 1) / 2;
  for (std::size_t k = 0; k < m_blockSums.size(); ++k) {
    const double place = static_cast<double>(k) * length + (length - 1) / 2 - middle;
    n += m_blockCounts[k];
    x += place * m_blockCounts[k];
    xx += place * place * m_blockCounts[k];
    xr += place * m_blockSums[k];
  }
  const double squares = n > 0 ? xx - x * x / n : 0;
  if (!(squares > 0)) return;
  m_slope = (xr - x * m_sum / n) / squares;
  m_explained = m_slope * m_slope * squares;
}

void Tally::fillSections() {
  m_sections.assign(sections, nan);
  const std::size_t blocks = m_blockSums.size();
  for (std::size_t s = 0; s < sections && blocks >= 2 * sections; ++s) {
    double sum = 0, count = 0;
    for (std::size_t k = s * blocks / sections; k < (s + 1) * blocks / sections; ++k) {
      sum += m_blockSums[k];
      count += m_blockCounts[k];
    }
    if (2 * sections * count > static_cast<double>(m_size)) m_sections[s] = sum / count;
  }
}

Contrasts Tally::finish() {
  fitLine();
  fillSections();
  Contrasts contrasts = contrastsOf(std::move(m_blockSums), std::move(m_blockCounts), m_octave);
  m_blockSums = {};
  m_blockCounts = {};
  return contrasts;
}

}  // namespace core
