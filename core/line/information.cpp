// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/line/information.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace core {

Information informationOfChiSquare(double chiSquare, std::size_t parameters, std::size_t points) {
  const auto p = static_cast<double>(parameters);
  return {chiSquare + 2 * p, chiSquare + p * std::log(static_cast<double>(points))};
}

Information informationOfResiduals(double residualSumOfSquares, std::size_t parameters, std::size_t points,
                                   double resolution) {
  const auto n = static_cast<double>(points);
  const auto k = static_cast<double>(parameters) + 1;
  const double variance = std::max(residualSumOfSquares / n, resolution * resolution);
  const double misfit = n * (std::log(variance) + 1 + std::log(2 * std::numbers::pi));
  const double correction =
      n > k + 1 ? 2 * k * (k + 1) / (n - k - 1) : std::numeric_limits<double>::infinity();
  return {misfit + 2 * k + correction, misfit + k * std::log(n)};
}

}  // namespace core
