// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/assess/characteristic.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace core {

double equalWithin(const std::vector<double>& expected) {
  double greatest = 0;
  for (const double value : expected) greatest = std::max(greatest, std::abs(value));
  return 1e-9 * greatest;
}

std::vector<Approach> approachesOf(const SetupPrediction& prediction) {
  std::vector<double> expected;
  for (const auto& step : prediction.steps) expected.push_back(step ? step->reading.base() : 0);
  const double same = equalWithin(expected);
  std::vector<Approach> approaches;
  double before = 0;
  bool isBeforeKnown = true;
  Approach last = Approach::Rising;
  for (std::size_t step = 0; step < expected.size(); ++step) {
    const double magnitude = std::abs(expected[step]);
    const double rest = expected[step] * before < 0 ? 0 : std::abs(before);
    const bool isKnown = bool(prediction.steps[step]);
    if (!isKnown || !isBeforeKnown) {
      last = Approach::Unknown;
    } else if (std::abs(magnitude - rest) > same) {
      last = magnitude > rest ? Approach::Rising : Approach::Falling;
    }
    approaches.push_back(last);
    before = expected[step];
    isBeforeKnown = isKnown;
  }
  return approaches;
}

std::vector<EqualSteps> meanCharacteristic(const CheckPoints& points) {
  std::vector<std::size_t> order(points.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::stable_sort(order.begin(), order.end(),
                   [&](std::size_t a, std::size_t b) { return points.expected[a] < points.expected[b]; });
  const double same = equalWithin(points.expected);
  std::vector<EqualSteps> characteristic;
  for (const std::size_t point : order) {
    if (characteristic.empty() || points.expected[point] - characteristic.back().expected > same)
      characteristic.push_back({points.expected[point], 0, {}});
    characteristic.back().points.push_back(point);
  }
  for (EqualSteps& level : characteristic) {
    std::sort(level.points.begin(), level.points.end());
    for (const std::size_t point : level.points) level.mean += points.measured[point];
    level.mean /= static_cast<double>(level.points.size());
  }
  return characteristic;
}

}  // namespace core
