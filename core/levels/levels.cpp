// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/levels/levels.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "core/levels/segmentation.h"
#include "core/levels/statistics.h"
#include "core/levels/steps.h"
#include "core/levels/stretch.h"

namespace core {
namespace {

constexpr std::size_t fewSamples = 10;
constexpr double greatestValue = 1e100;  ///< so that no square overflows

std::optional<Error> faultOfSamples(const TimeAxis& time_s, std::span<const double> values,
                                    double shortest_s) {
  if (time_s.size() != values.size()) {
    return Error{"recording",
                 std::to_string(time_s.size()) + " times do not pair with " + std::to_string(values.size()) +
                     " values",
                 "Give every value its time"};
  }
  if (values.size() < 3) return Error{"recording", "it has fewer than three samples", "Record for longer"};
  for (std::size_t i = 0; i < values.size(); ++i) {
    const std::string where = "sample " + std::to_string(i + 1);
    if (!std::isfinite(values[i])) return Error{where, "the value is not a finite number", "Leave it out"};
    if (std::abs(values[i]) > greatestValue)
      return Error{where, "the value is too large", "Choose another unit"};
    if (!std::isfinite(time_s[i])) return Error{where, "the time is not a finite number", "Leave it out"};
    if (i > 0 && time_s[i] < time_s[i - 1]) return Error{where, "the time runs back", "Sort by time"};
  }
  if (time_s.front() == time_s.back()) {
    return Error{"recording", "all times are equal", "Choose the column that holds the time"};
  }
  if (time_s.back() - time_s.front() < shortest_s) {
    return Error{"recording", "it is shorter than the shortest level",
                 "Record for longer or allow shorter levels"};
  }
  return std::nullopt;
}

/// Samples in `duration_s` at the usual spacing of the samples, at least three.
std::size_t samplesIn(double duration_s, const TimeAxis& time_s) {
  std::vector<double> spacings;
  for (std::size_t i = 1; i < time_s.size(); ++i) {
    if (time_s[i] > time_s[i - 1]) spacings.push_back(time_s[i] - time_s[i - 1]);
  }
  const double count = std::ceil(duration_s / quantile(spacings, 0.5) - 1e-6);
  return static_cast<std::size_t>(std::clamp(count, 3.0, static_cast<double>(time_s.size())));
}

/// The smallest difference between neighbouring samples, when so many differ that it is the resolution of a
/// digitised signal and not a step; 0 when it cannot be told.
double resolutionOf(const std::vector<double>& values) {
  double smallest = 0;
  std::size_t differing = 0;
  for (std::size_t i = 1; i < values.size(); ++i) {
    const double difference = std::abs(values[i] - values[i - 1]);
    if (difference == 0) continue;
    ++differing;
    if (smallest == 0 || difference < smallest) smallest = difference;
  }
  return differing * 20 > values.size() ? smallest : 0;
}

double leastStepOf(const std::vector<double>& values, const LevelOptions& options) {
  if (options.leastStep > 0) return options.leastStep;
  const auto [low, high] = std::minmax_element(values.begin(), values.end());
  return std::max(0.002 * (*high - *low), 1.5 * std::max(options.resolution, resolutionOf(values)));
}

std::vector<double> driftlessContrasts(std::span<const double> values, std::size_t window, double leastStep) {
  std::vector<double> contrasts = contrastsOf(values, window);
  takeDriftOut(contrasts, window, 2 * leastStep);
  return contrasts;
}

/// The last samples of `left`, enough of them to compare it with `right`: a long level stays cheap to join.
Stretch endOf(const std::vector<double>& values, const Stretch& left, const Stretch& right) {
  const std::size_t enough = 4 * (right.end - right.begin);
  return stretchOf(values, std::max(left.begin, left.end - std::min(left.end, enough)), left.end);
}

/// The pieces between the steps that are long enough, without settling, joined where they do not differ.
std::vector<Stretch> heldStretches(const std::vector<double>& values, const std::vector<std::size_t>& changes,
                                   std::size_t shortest, const StepNoise& noise) {
  std::vector<Stretch> held;
  std::size_t begin = 0;
  for (std::size_t k = 0; k <= changes.size(); ++k) {
    const std::size_t end = k < changes.size() ? changes[k] : values.size();
    if (end - begin >= shortest) {
      const Stretch next = withoutSettling(values, stretchOf(values, begin, end), noise);
      const bool joins = !held.empty() && isOneLevel(values, endOf(values, held.back(), next), next, noise);
      joins ? void(held.back().end = next.end) : held.push_back(next);
    }
    begin = end;
  }
  for (Stretch& stretch : held) stretch = stretchOf(values, stretch.begin, stretch.end);
  return held;
}

/// The noise with slow correlation counted in, which shows only within whole stretches: the usual scatter of
/// their means about their trends, if that is the larger one.
StepNoise withSlowNoise(StepNoise noise, const std::vector<double>& values,
                        const std::vector<Stretch>& held) {
  std::vector<double> longRuns;
  for (const Stretch& stretch : held) {
    longRuns.push_back(uncertaintyAboutTrend(values, stretch) * std::sqrt(stretch.size()));
  }
  if (longRuns.empty()) return noise;
  const double longRun = quantile(longRuns, 0.5);
  noise.contrast = std::max(noise.contrast, longRun / std::sqrt(static_cast<double>(noise.window) / 2));
  return noise;
}

bool isOnItsWay(const std::vector<Stretch>& held, std::size_t k, const StepNoise& noise) {
  return (k > 0 && leadsInto(held[k], held[k - 1], noise)) ||
         (k + 1 < held.size() && leadsInto(held[k], held[k + 1], noise));
}

/// The samples of a stretch that are no outliers.
std::vector<double> samplesOf(std::span<const double> values, const Stretch& stretch,
                              const StepNoise& noise) {
  std::vector<double> distances;
  for (std::size_t i = stretch.begin; i < stretch.end; ++i) {
    distances.push_back(std::abs(values[i] - stretch.trendAt(static_cast<double>(i))));
  }
  std::vector<double> sorted = distances;
  const double limit = std::max({6 * 1.4826 * quantile(sorted, 0.5), 3 * noise.longRun(), noise.leastStep});
  std::vector<double> samples;
  for (std::size_t k = 0; k < distances.size(); ++k) {
    if (distances[k] <= limit) samples.push_back(values[stretch.begin + k]);
  }
  return samples;
}

/// The scatter of a handful of samples may be small by chance; the rest of the recording knows better.
double uncertaintyOf(const std::vector<double>& samples, const StepNoise& noise) {
  const double own = uncertaintyOfMean(samples);
  if (samples.size() >= fewSamples || !noise.isMeasured) return own;
  return std::max(own, noise.longRun() / std::sqrt(static_cast<double>(samples.size())));
}

Level levelOf(const TimeAxis& time_s, std::span<const double> values, const Stretch& stretch,
              const StepNoise& noise, double resolution) {
  const std::vector<double> samples = samplesOf(values, stretch, noise);
  Level level;
  level.begin_s = time_s[stretch.begin];
  level.end_s = time_s[stretch.end - 1];
  level.mean = stretchOf(samples, 0, samples.size()).mean;
  level.stdUncertainty = std::hypot(uncertaintyOf(samples, noise), resolution / std::sqrt(12.0));
  level.span = {stretch.begin, stretch.end};
  level.samples = samples.size();
  level.outliers = stretch.end - stretch.begin - samples.size();
  const double duration_s = level.end_s - level.begin_s;
  if (duration_s > 0) level.drift_per_s = stretch.slope * (stretch.size() - 1) / duration_s;
  return level;
}

/// Where the steps are that pay their penalty, given the noise.
std::vector<std::size_t> stepsOf(const std::vector<double>& values, const std::vector<double>& contrasts,
                                 const StepNoise& noise) {
  const double variance = noise.longRun() * noise.longRun();
  const double penalty = 3 * variance * std::log(static_cast<double>(values.size()));
  const Partition partition = optimalPartition(values, stepCandidates(contrasts, noise), penalty);
  return refinedChanges(values, partition.changes, noise.window);
}

}  // namespace

std::string_view qualityWord(LevelQuality quality) {
  constexpr std::string_view words[] = {"good", "fair", "poor"};
  return words[static_cast<std::size_t>(quality)];
}

Result<std::vector<Level>> findLevels(const TimeAxis& time_s, std::span<const double> values,
                                      const LevelOptions& options, const std::stop_token& stop,
                                      const Progress& progress) {
  const auto goesOn = [&](double share) {
    if (progress) progress(share);
    return !stop.stop_requested();
  };
  const double shortest_s = options.shortest.base() > 0 ? options.shortest.base() : 0.3;
  if (auto fault = faultOfSamples(time_s, values, shortest_s)) return *fault;
  if (!goesOn(0.1)) return cancelled();
  const std::size_t shortest = samplesIn(shortest_s, time_s);
  const std::size_t window = std::max<std::size_t>(1, shortest / 2);
  const std::vector<double> smooth = withoutSpikes(values);
  const double leastStep = leastStepOf(smooth, options);
  const std::vector<double> contrasts = driftlessContrasts(smooth, window, leastStep);
  // Judged from the values as they are: taking spikes out makes neighbours alike.
  StepNoise noise = stepNoise(driftlessContrasts(values, window, leastStep), window, leastStep);
  std::vector<Stretch> held;
  for (const double share : {0.2, 0.5}) {
    if (!goesOn(share)) return cancelled();
    held = heldStretches(smooth, stepsOf(smooth, contrasts, noise), shortest, noise);
    noise = withSlowNoise(noise, smooth, held);
  }
  std::vector<Level> levels;
  for (std::size_t k = 0; k < held.size(); ++k) {
    if (!isOnItsWay(held, k, noise)) {
      levels.push_back(levelOf(time_s, values, held[k], noise, options.resolution));
    }
    if (!goesOn(0.7 + 0.3 * static_cast<double>(k + 1) / static_cast<double>(held.size())))
      return cancelled();
  }
  return levels;
}

}  // namespace core
