// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/levels/resolution.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/recording/samples.h"

namespace core {
namespace {

constexpr std::size_t mostSamples = 4096;
constexpr std::size_t run = 64;

/// Some runs of samples out of one span, at most `most` samples.
std::vector<double> someOf(std::span<const double> span, std::size_t most) {
  std::vector<double> some;
  const std::size_t runs = std::max<std::size_t>(1, most / run);
  const std::size_t stride = std::max<std::size_t>(run, span.size() / runs);
  for (std::size_t begin = 0; begin < span.size(); begin += stride) {
    letSamplesGo();
    for (std::size_t k = begin; k < std::min(span.size(), begin + run); ++k) {
      if (!std::isnan(span[k])) some.push_back(span[k]);
    }
  }
  return some;
}

/// Differences between neighbouring ones of the sorted values that are more than rounding apart.
void addGaps(std::vector<double> sorted, std::vector<double>& gaps) {
  std::sort(sorted.begin(), sorted.end());
  for (std::size_t k = 1; k < sorted.size(); ++k) {
    const double gap = sorted[k] - sorted[k - 1];
    if (gap > 1e-13 * std::abs(sorted[k])) gaps.push_back(gap);
  }
}

/// The mean step of gaps that are multiples of about `guess`; 0 when fewer than nine in ten are.
double commonStep(const std::vector<double>& gaps, double guess) {
  double ways = 0, steps = 0, fitting = 0;
  for (const double gap : gaps) {
    const double multiple = std::round(gap / guess);
    if (multiple > 1e6 || std::abs(gap / guess - multiple) > 0.1 + 0.02 * multiple) continue;
    ++fitting;
    ways += gap;
    steps += multiple;
  }
  return fitting >= 0.9 * static_cast<double>(gaps.size()) && steps > 0 ? ways / steps : 0;
}

/// The last decimal place that occurs in `values`; 0 when they have more than twelve, or fewer than none:
/// then whole tens may as well be chance.
double decimalStep(const std::vector<double>& values) {
  double scale = 0.1;
  for (int places = -1; places <= 12; ++places, scale *= 10) {
    const bool fits = std::all_of(values.begin(), values.end(), [&](double v) {
      const double shifted = v * scale;
      return std::abs(shifted - std::round(shifted)) <= 1e-6 + 1e-15 * std::abs(shifted);
    });
    if (fits) return places >= 0 && !values.empty() ? 1 / scale : 0;
  }
  return 0;
}

/// The greatest step that all differences between levels without any noise are multiples of, within the
/// rounding to `decimal`; 0 when no difference is of ten such steps, since then it may be the step of
/// the levels.
double stepBetweenLevels(std::vector<double> values, double decimal) {
  std::vector<double> gaps;
  addGaps(std::move(values), gaps);
  if (gaps.size() < 3 || decimal == 0) return 0;
  const double least = *std::min_element(gaps.begin(), gaps.end());
  const double greatest = *std::max_element(gaps.begin(), gaps.end());
  // Each difference is rounded by up to `decimal`, and so is the one that the step is reckoned from. Steps
  // that such rounding could feign are not looked for.
  for (int parts = 1; parts < 1000 && least / parts > 200 * decimal; ++parts) {
    const double step = greatest / std::round(greatest / (least / parts));
    const bool fits = std::all_of(gaps.begin(), gaps.end(), [&](double gap) {
      return std::abs(gap - step * std::round(gap / step)) <= 2.5 * decimal;
    });
    if (fits) return greatest > 9.5 * step ? step : 0;
  }
  return 0;
}

}  // namespace

double resolutionOf(std::span<const double> values, std::span<const SampleSpan> spans) {
  if (spans.empty()) return 0;
  std::vector<double> gaps;
  std::vector<double> all;
  const std::size_t each = std::max(run, mostSamples / spans.size());
  const std::size_t stride = std::max<std::size_t>(1, spans.size() * run / mostSamples);
  for (std::size_t s = 0; s < spans.size(); s += stride) {
    const std::vector<double> some = someOf(values.subspan(spans[s].begin, spans[s].size()), each);
    all.insert(all.end(), some.begin(), some.end());
    addGaps(some, gaps);
  }
  const double decimal = decimalStep(all);
  if (gaps.empty()) return std::max(decimal, stepBetweenLevels(std::move(all), decimal));
  // Values that hardly ever occur twice are finer than their noise: then rounding does not matter.
  if (2 * gaps.size() > all.size()) return decimal;
  std::sort(gaps.begin(), gaps.end());
  return std::max(decimal, commonStep(gaps, gaps[gaps.size() / 20]));
}

double deviationOfRounding(double resolution, const Dither& dither) {
  // All terms below would change the result by less than 1e-12 of the resolution.
  constexpr double leastShare = 1e-12;
  if (resolution <= 0) return 0;
  if (dither.noise <= 0 && dither.drift <= 0 && dither.hum.empty()) return resolution / std::sqrt(12.0);
  double sum = 0;
  for (int k = 1; k <= 40; ++k) {
    const double turns = 2 * std::numbers::pi * k / resolution;
    double share = std::exp(-turns * turns * dither.noise * dither.noise / 2);
    if (share < leastShare) break;  // and the further ones are less
    if (dither.drift > 0) share *= std::sin(turns * dither.drift / 2) / (turns * dither.drift / 2);
    for (const double amplitude : dither.hum) share *= ::j0(turns * amplitude);
    sum += share * share / (k * k);
  }
  return resolution / std::numbers::pi * std::sqrt(sum / 2);
}

double noiseBeforeRounding(double rounded, double resolution) {
  double low = 0, high = rounded;
  for (int round = 0; round < 50; ++round) {
    const double middle = (low + high) / 2;
    const double left = deviationOfRounding(resolution, {middle, 0, {}});
    const double seen = middle * middle + resolution * resolution / 12 - left * left;
    (seen > rounded * rounded ? high : low) = middle;
  }
  return low;
}

}  // namespace core
