// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/levels/robust.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace core {

double medianOf(std::vector<double>& values) {
  assert(!values.empty());
  const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
  std::nth_element(values.begin(), middle, values.end());
  if (values.size() % 2 == 1) return *middle;
  return (*middle + *std::max_element(values.begin(), middle)) / 2;
}

RobustMean robustMeanOf(std::vector<double> values) {
  RobustMean robust{.mean = medianOf(values)};
  std::vector<double> distances = values;
  for (double& d : distances) d = std::abs(d - robust.mean);
  robust.scale = 1.4826 * medianOf(distances);
  // Newton's steps: what lies within the reach moves along, the rest pulls at its limits.
  const double reach = 1.5 * robust.scale;
  for (int round = 0; round < 50 && reach > 0; ++round) {
    double pull = 0;
    std::size_t within = 0;
    for (const double v : values) {
      const double distance = v - robust.mean;
      pull += std::clamp(distance, -reach, reach);
      within += std::abs(distance) <= reach;
    }
    const double move = pull / static_cast<double>(std::max<std::size_t>(within, 1));
    robust.mean += std::clamp(move, -reach, reach);
    if (std::abs(move) < 1e-9 * robust.scale) break;
  }
  return robust;
}

}  // namespace core
