// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/levels/steps.h"

#include <algorithm>
#include <cmath>
#include <deque>
#include <numeric>

#include "core/levels/statistics.h"

namespace core {
namespace {

constexpr std::size_t greatestCandidates = 20'000;
constexpr double quartileOfNormal = 0.31863936;  ///< a quarter of |N(0, 1)| lies below

/// For each index the largest |value| from `reach` before to `reach` behind it.
std::vector<double> largestAround(const std::vector<double>& values, std::size_t reach) {
  std::vector<double> largest(values.size());
  std::deque<std::size_t> falling;
  std::size_t entered = 0;
  for (std::size_t i = 0; i < values.size(); ++i) {
    for (; entered < values.size() && entered <= i + reach; ++entered) {
      while (!falling.empty() && std::abs(values[falling.back()]) < std::abs(values[entered]))
        falling.pop_back();
      falling.push_back(entered);
    }
    while (falling.front() + reach < i) falling.pop_front();
    largest[i] = std::abs(values[falling.front()]);
  }
  return largest;
}

}  // namespace

double StepNoise::longRun() const { return contrast * std::sqrt(static_cast<double>(window) / 2); }

std::vector<double> contrastsOf(std::span<const double> values, std::size_t window) {
  std::vector<double> contrasts(values.size(), 0.0);
  if (values.size() < 2 * window) return contrasts;
  const double middle = values[values.size() / 2];
  std::vector<double> sums(values.size() + 1, 0.0);
  for (std::size_t i = 0; i < values.size(); ++i) sums[i + 1] = sums[i] + (values[i] - middle);
  for (std::size_t i = window; i + window <= values.size(); ++i) {
    contrasts[i] = (sums[i + window] - 2 * sums[i] + sums[i - window]) / static_cast<double>(window);
  }
  return contrasts;
}

void takeDriftOut(std::vector<double>& contrasts, std::size_t window, double most) {
  if (contrasts.size() < 2 * window) return;
  const auto first = contrasts.begin() + static_cast<std::ptrdiff_t>(window);
  const auto last = contrasts.end() - static_cast<std::ptrdiff_t>(window) + 1;
  std::vector<double> sorted(first, last);
  const double drift = std::clamp(quantile(sorted, 0.5), -most, most);
  for (auto contrast = first; contrast != last; ++contrast) *contrast -= drift;
}

StepNoise stepNoise(const std::vector<double>& contrasts, std::size_t window, double leastStep) {
  std::vector<double> sizes;
  for (std::size_t i = window; i + window <= contrasts.size(); ++i) sizes.push_back(std::abs(contrasts[i]));
  const double scatter = sizes.empty() ? 0 : quantile(sizes, 0.25) / quartileOfNormal;
  return {window, std::max(scatter, leastStep / 20), leastStep, scatter > leastStep / 20};
}

std::vector<std::size_t> stepCandidates(const std::vector<double>& contrasts, const StepNoise& noise) {
  const double threshold = std::max(2.5 * noise.contrast, noise.leastStep / 2);
  const std::vector<double> largest = largestAround(contrasts, noise.window);
  std::vector<std::size_t> candidates;
  for (std::size_t i = 1; i < contrasts.size(); ++i) {
    if (std::abs(contrasts[i]) <= threshold || std::abs(contrasts[i]) < largest[i]) continue;
    const bool again = !candidates.empty() && i - candidates.back() <= noise.window;
    if (!again) candidates.push_back(i);
  }
  if (candidates.size() <= greatestCandidates) return candidates;
  const auto last = candidates.begin() + greatestCandidates;
  std::nth_element(candidates.begin(), last, candidates.end(), [&](std::size_t a, std::size_t b) {
    return std::abs(contrasts[a]) > std::abs(contrasts[b]);
  });
  candidates.erase(last, candidates.end());
  std::sort(candidates.begin(), candidates.end());
  return candidates;
}

}  // namespace core
