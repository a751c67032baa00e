// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/levels/deviations.h"

#include <algorithm>
#include <cmath>

#include "core/levels/statistics.h"

namespace core {

Deviations::Deviations(const Cells& cells, const std::vector<Piece>& pieces) {
  constexpr std::size_t looks = 4096;
  constexpr double middle = 0.67448975;  ///< half of |N(0, 1)| lies below
  const std::size_t each = std::max<std::size_t>(16, looks / std::max<std::size_t>(1, pieces.size()));
  for (std::size_t window = 1;; window *= 2) {
    std::vector<double> sizes;
    for (const Piece& piece : pieces) {
      const std::size_t first = piece.begin + piece.size() / 2;
      const std::size_t last = piece.end - piece.size() * 3 / 20;
      if (last - first < 4 * window) continue;
      const std::size_t stride = std::max<std::size_t>(1, (last - first - window) / each);
      for (std::size_t at = first; at + window <= last; at += stride) {
        const double centre = static_cast<double>(2 * at + window - 1) / 2;
        sizes.push_back(std::abs(cells.mean(at, at + window) - piece.at(centre)));
      }
    }
    if (sizes.size() < 16) break;
    // Few large ones are as much a part of it as many small ones: a converter that seldom changes its
    // reading.
    m_scales.push_back(
        {window, 0, std::max(quantile(sizes, 0.5) / middle, quantile(sizes, 0.95) / 1.959964)});
  }
}

double Deviations::of(std::size_t window) const {
  if (m_scales.empty()) return 0;
  const Scale& scale = scaleFor(m_scales, window);
  return scale.noise * std::sqrt(static_cast<double>(scale.window) / static_cast<double>(window));
}

}  // namespace core
