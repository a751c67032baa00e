// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/wiring/ohm_fit.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace core {
namespace {

constexpr double least_ohm = 1e-3, greatest_ohm = 1e9;

double sumOfSquares(std::span<const OhmResponse> responses, double x, double openBeyond) {
  double sum = 0;
  for (const OhmResponse& response : responses) {
    const double expected = response.at(x);
    double off = std::abs(response.measured - expected) / response.tolerance;
    if (std::isinf(response.measured))
      off = expected >= openBeyond ? 0 : (openBeyond - expected) / response.tolerance;
    off = std::isnan(off) ? greatestDeviation : std::min(off, greatestDeviation);
    sum += off * off;
  }
  return sum;
}

/// Least value of f over log x between `low` and `high`, where it has one minimum.
template <class F>
double goldenSection(F f, double low, double high) {
  const double golden = (std::sqrt(5.0) - 1) / 2;
  double a = std::log(low), b = std::log(high);
  double c = b - golden * (b - a), d = a + golden * (b - a);
  double fc = f(std::exp(c)), fd = f(std::exp(d));
  while (b - a > 1e-10) {
    if (fc < fd) {
      b = d, d = c, fd = fc;
      c = b - golden * (b - a), fc = f(std::exp(c));
    } else {
      a = c, c = d, fc = fd;
      d = a + golden * (b - a), fd = f(std::exp(d));
    }
  }
  return std::exp((a + b) / 2);
}

}  // namespace

double OhmResponse::at(double x) const {
  if (!(probed > shorted)) return shorted;
  if (std::isinf(open)) return shorted + (probed - shorted) * (x / probe);
  const double share = (probed - shorted) / (open - shorted);  // of the way to open
  if (!(share < 1)) return open;
  const double half = probe * (1 - share) / share;
  return shorted + (open - shorted) * (x / (x + half));
}

std::optional<double> OhmResponse::solution() const {
  if (!(probed > shorted) || !std::isfinite(measured) || !(measured > shorted)) return std::nullopt;
  if (std::isinf(open)) return probe * (measured - shorted) / (probed - shorted);
  if (!(measured < open) || !(open > probed)) return std::nullopt;
  const double half = probe * (open - probed) / (probed - shorted);
  return half * (measured - shorted) / (open - measured);
}

std::optional<double> fittedResistance(std::span<const OhmResponse> responses, double openBeyond) {
  const bool seen = std::any_of(responses.begin(), responses.end(), [](const OhmResponse& response) {
    return response.open - response.shorted > response.tolerance;
  });
  if (!seen) return std::nullopt;
  std::vector<double> candidates;
  for (const OhmResponse& response : responses)
    if (const auto x = response.solution(); x && *x > least_ohm && *x < greatest_ohm)
      candidates.push_back(*x);
  if (candidates.empty()) return std::nullopt;
  std::sort(candidates.begin(), candidates.end());
  const auto sum = [&](double x) { return sumOfSquares(responses, x, openBeyond); };
  std::size_t best = 0;
  double bestSum = sum(candidates[0]);
  for (std::size_t k = 1; k < candidates.size(); ++k)
    if (const double next = sum(candidates[k]); next < bestSum) best = k, bestSum = next;
  const double low = best == 0 ? candidates[best] / 2 : candidates[best - 1];
  const double high = best + 1 == candidates.size() ? candidates[best] * 2 : candidates[best + 1];
  const double refined = goldenSection(sum, low, high);
  return sum(refined) <= bestSum ? refined : candidates[best];
}

}  // namespace core
