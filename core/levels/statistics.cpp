// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/levels/statistics.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numeric>

namespace core {
namespace {

constexpr std::size_t greatestBlocks = 1024;

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

/// Means of equal blocks, at most greatestBlocks of them; a short rest is left out.
std::vector<double> blockMeans(std::span<const double> values) {
  const std::size_t length = (values.size() + greatestBlocks - 1) / greatestBlocks;
  std::vector<double> means;
  for (std::size_t begin = 0; begin + length <= values.size(); begin += length) {
    means.push_back(meanOf(values.subspan(begin, length)));
  }
  return means;
}

}  // namespace

double quantile(std::vector<double>& values, double q) {
  assert(!values.empty());
  const auto last = static_cast<double>(values.size() - 1);
  const auto at = values.begin() + static_cast<std::ptrdiff_t>(std::lround(q * last));
  std::nth_element(values.begin(), at, values.end());
  return *at;
}

std::vector<double> withoutSpikes(std::span<const double> values) {
  std::vector<double> result(values.begin(), values.end());
  for (std::size_t i = 1; i + 1 < values.size(); ++i) {
    const auto [low, high] = std::minmax(values[i - 1], values[i + 1]);
    result[i] = std::clamp(values[i], low, high);
  }
  return result;
}

double autocorrelation(std::span<const double> values, std::size_t lag) {
  const std::vector<double> deviations = centred(values);
  const double total = laggedSum(deviations, 0);
  return total > 0 ? laggedSum(deviations, lag) / total : 0;
}

double effectiveSampleSize(std::span<const double> values) {
  const std::vector<double> deviations = centred(values);
  const double total = laggedSum(deviations, 0);
  const auto n = static_cast<double>(values.size());
  double inflation = 1;
  for (std::size_t lag = 1; lag < values.size() && total > 0; ++lag) {
    const double r = laggedSum(deviations, lag) / total;
    if (r <= 0) break;
    inflation += 2 * (1 - static_cast<double>(lag) / n) * r;
  }
  return std::clamp(n / inflation, 1.0, n);
}

double uncertaintyOfMean(std::span<const double> values) {
  if (values.size() < 2) return 0;
  const std::vector<double> blocks = blockMeans(values);
  const std::vector<double> deviations = centred(blocks);
  const double variance = laggedSum(deviations, 0) / static_cast<double>(blocks.size() - 1);
  return std::sqrt(variance / effectiveSampleSize(blocks));
}

}  // namespace core
