// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/shown.h"

#include <algorithm>
#include <cmath>

namespace core {

int placesOf(double yardstick) {
  const double size = std::abs(yardstick);
  if (!std::isfinite(size) || size == 0) return 0;
  const int places = static_cast<int>(std::clamp(1 - std::floor(std::log10(size)), 0.0, 50.0));
  const bool roundsUp = places > 0 && std::round(size * std::pow(10.0, places)) >= 100;
  return roundsUp ? places - 1 : places;
}

int placesBeside(double value, double limit) {
  constexpr int most = 9;
  const double size = std::abs(value);
  int places = placesOf(limit);
  if (!std::isfinite(size) || size == limit) return places;
  for (; places < most; ++places) {
    const double unit = std::pow(10.0, places);
    if (std::round(size * unit) != std::round(limit * unit)) break;
  }
  return places;
}

int placesShowing(double value, int places) {
  constexpr int most = 9;
  if (!std::isfinite(value)) return places;
  for (int more = places; more <= most; ++more)
    if (std::round(std::abs(value) * std::pow(10.0, more)) != 0) return more;
  return places;
}

}  // namespace core
