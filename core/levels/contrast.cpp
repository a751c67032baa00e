// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/levels/contrast.h"

#include <algorithm>
#include <cmath>

#include "core/levels/statistics.h"

namespace core {
namespace {

constexpr std::size_t looks = 2048;           ///< contrasts that a scale is judged by
constexpr double fewestWindows = 20;          ///< one after the other in a recording, else no scatter is told
constexpr double lowerQuartile = 0.31863936;  ///< a quarter of |N(0, 1)| lies below
constexpr double middle = 0.67448975;         ///< half of it
constexpr double upperPart = 0.8416212;       ///< three fifths of it

/// Some contrasts, spread evenly.
std::vector<double> contrastsOver(const Cells& cells, std::size_t window) {
  const std::size_t places = cells.size() - 2 * window + 1;
  const std::size_t count = std::min(places, looks);
  std::vector<double> contrasts(count);
  const double stride = static_cast<double>(places) / static_cast<double>(count);
  for (std::size_t k = 0; k < count; ++k) {
    contrasts[k] =
        contrastAt(cells, window + static_cast<std::size_t>(stride * static_cast<double>(k)), window);
  }
  return contrasts;
}

}  // namespace

std::vector<Scale> scalesOf(const Cells& cells, std::size_t shortest) {
  std::vector<Scale> scales;
  double slope = 0;     // per cell: what drift adds to contrasts, judged where few of them see a step
  bool isClear = true;  // while that is so
  double longRun = 0;   // noise * sqrt(window), the largest so far
  const double longest = static_cast<double>(cells.size()) / fewestWindows;
  for (double w = static_cast<double>(shortest); w <= longest || scales.empty(); w *= 1.32) {
    const auto window = static_cast<std::size_t>(w);
    if (2 * window > cells.size()) break;
    if (!scales.empty() && scales.back().window == window) continue;
    std::vector<double> contrasts = contrastsOver(cells, window);
    if (isClear) slope = quantile(contrasts, 0.5) / w;
    for (double& c : contrasts) c = std::abs(c - slope * w);
    const double noise =
        std::max(quantile(contrasts, 0.25) / lowerQuartile, quantile(contrasts, 0.5) / middle);
    isClear =
        isClear && quantile(contrasts, 0.6) / upperPart < 1.6 * quantile(contrasts, 0.25) / lowerQuartile;
    // Means over longer windows scatter less, but not by more than those of white noise.
    longRun = std::max(longRun, noise * std::sqrt(w));
    scales.push_back(
        {window, slope * static_cast<double>(window), std::max(noise, 0.9 * longRun / std::sqrt(w))});
  }
  return scales;
}

namespace {

/// Some contrasts without drift of windows that lie between two steps.
std::vector<double> contrastsBetween(const Cells& cells, const Scale& scale,
                                     const std::vector<std::size_t>& places) {
  const std::size_t stride = std::max<std::size_t>(1, cells.size() / looks);
  std::vector<double> contrasts;
  std::size_t begin = 0;
  for (std::size_t k = 0; k <= places.size(); ++k) {
    const std::size_t end = k < places.size() ? places[k] : cells.size();
    for (std::size_t at = begin + scale.window; at + scale.window <= end; at += stride)
      contrasts.push_back(std::abs(contrastAt(cells, at, scale.window) - scale.drift));
    begin = end;
  }
  return contrasts;
}

}  // namespace

std::vector<Scale> withoutSteps(const Cells& cells, std::vector<Scale> scales,
                                const std::vector<std::size_t>& places) {
  double longRun = 0;
  double before = 0;  // noise of the scale before
  for (Scale& scale : scales) {
    const double root = std::sqrt(static_cast<double>(scale.window));
    const bool isInTheWay = 20 * scale.window * places.size() > cells.size();
    if (isInTheWay && before > 0) {
      std::vector<double> contrasts = contrastsBetween(cells, scale, places);
      // Where hardly any is left, more noise than over shorter windows is not known of.
      const bool areEnough =
          contrasts.size() * std::max<std::size_t>(1, cells.size() / looks) > 10 * scale.window;
      const double noise =
          areEnough ? std::max(quantile(contrasts, 0.25) / lowerQuartile, quantile(contrasts, 0.5) / middle)
                    : before;
      scale.noise = std::min(scale.noise, std::max({noise, 0.9 * longRun / root, 0.4 * scale.noise}));
    }
    longRun = std::max(longRun, scale.noise * root);
    before = scale.noise;
  }
  return scales;
}

LocalNoise::LocalNoise(const Cells& cells, const std::vector<Scale>& scales)
    : m_shortest(scales.front()), m_stretch(std::max<std::size_t>(96, cells.size() / 512)), m_squares{0.0} {
  constexpr std::size_t each = 48;
  const std::size_t window = m_shortest.window;
  const std::size_t stride = m_stretch / each;
  std::vector<double> sizes;
  for (std::size_t begin = 0; begin < cells.size(); begin += m_stretch) {
    sizes.clear();
    const std::size_t end = std::min(begin + m_stretch, cells.size() - window + 1);
    for (std::size_t at = std::max(begin, window); at < end; at += stride)
      sizes.push_back(std::abs(contrastAt(cells, at, window) - m_shortest.drift));
    const double noise = sizes.size() < each / 2 ? m_shortest.noise : quantile(sizes, 0.5) / middle;
    m_squares.push_back(m_squares.back() + noise * noise);
  }
}

double LocalNoise::of(const Scale& scale, std::size_t at) const {
  const std::size_t first = (at - std::min(at, scale.window)) / m_stretch;
  const std::size_t end = std::min((at + scale.window) / m_stretch + 1, m_squares.size() - 1);
  const double square = (m_squares[end] - m_squares[first]) / static_cast<double>(end - first);
  // Beyond its usual colour more of it is taken to be white.
  const double shorter = static_cast<double>(m_shortest.window) / static_cast<double>(scale.window);
  return std::max(scale.noise, std::sqrt(std::max(0.0, square) * shorter));
}

double leastNoise(const std::vector<Scale>& scales, std::size_t most) {
  const Scale& shortest = scales.front();
  if (most < shortest.window)
    return shortest.noise * std::sqrt(static_cast<double>(shortest.window) / static_cast<double>(most));
  double least = shortest.noise;
  for (const Scale& scale : scales)
    if (scale.window <= most) least = std::min(least, scale.noise);
  return least;
}

const Scale& scaleFor(const std::vector<Scale>& scales, std::size_t most) {
  const auto beyond = std::upper_bound(scales.begin(), scales.end(), most,
                                       [](std::size_t m, const Scale& s) { return m < s.window; });
  return beyond == scales.begin() ? scales.front() : *(beyond - 1);
}

}  // namespace core
