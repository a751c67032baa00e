// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/levels/statistics.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numeric>

namespace core {
namespace {

double meanOf(std::span<const double> values) {
  return std::accumulate(values.begin(), values.end(), 0.0) / static_cast<double>(values.size());
}

std::vector<double> centred(std::span<const double> values) {
  // Twice, since the first mean of large values is rounded.
  std::vector<double> result(values.begin(), values.end());
  for (int pass = 0; pass < 2; ++pass) {
    const double mean = meanOf(result);
    for (double& v : result) v -= mean;
  }
  return result;
}

double laggedSum(const std::vector<double>& values, std::size_t lag) {
  if (lag >= values.size()) return 0;
  return std::inner_product(values.begin(), values.end() - static_cast<std::ptrdiff_t>(lag),
                            values.begin() + static_cast<std::ptrdiff_t>(lag), 0.0);
}

}  // namespace

double quantile(std::vector<double>& values, double q) {
  assert(!values.empty());
  const auto last = static_cast<double>(values.size() - 1);
  const auto at = values.begin() + static_cast<std::ptrdiff_t>(std::lround(q * last));
  std::nth_element(values.begin(), at, values.end());
  return *at;
}

double autocorrelation(std::span<const double> values, std::size_t lag) {
  const std::vector<double> deviations = centred(values);
  const double total = laggedSum(deviations, 0);
  return total > 0 ? laggedSum(deviations, lag) / total : 0;
}

}  // namespace core
