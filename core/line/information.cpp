// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/line/information.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace core {

Information informationOfChiSquare(double chiSquare, std::size_t parameters, std::size_t points) {
  const auto p = static_cast<double>(parameters);
  return {chiSquare + 2 * p, chiSquare + p * std::log(static_cast<double>(points))};
}

Information informationOfResiduals(double residualSumOfSquares, std::size_t parameters, std::size_t points,
                                   double resolution) {
  const auto n = static_cast<double>(points);
  const double k = static_cast<double>(parameters) + 1;
  const double variance = std::max(residualSumOfSquares / n, resolution * resolution);
  const double fit = n * std::log(variance) + n * (1 + std::log(2 * std::numbers::pi));
  const double corrected = n > k + 1 ? 2 * k * (k + 1) / (n - k - 1) : HUGE_VAL;
  return {fit + 2 * k + corrected, fit + k * std::log(n)};
}

}  // namespace core
