// SPDX-License-Identifier: GPL-3.0-or-later
// Level finding. Target: 50 million samples a second on one core, 20 ns a sample, whatever their number. Then
// what rounding leaves of a level, asked for at each: it should cost the same however far above the
// resolution the hum is (Bessel functions by their recurrence took ten times as long there), and nothing
// below noise.
#include <benchmark/benchmark.h>

#include <cmath>
#include <numbers>
#include <random>

#include "core/levels/find_spans.h"
#include "core/levels/levels.h"
#include "core/levels/resolution.h"

namespace {

using namespace core;

constexpr double rate = 10'000;

/// Sixty levels with settling, mains pick-up and noise.
std::vector<double> recording(std::size_t samples) {
  constexpr double heights[] = {0, 1, 0, 2, 0, 3, 0, -1, 0, -2, 0, -3};
  std::mt19937_64 random(1);
  std::normal_distribution<double> normal(0, 0.1);
  std::vector<double> noise(1 << 20);
  for (double& v : noise) v = normal(random);
  std::vector<double> values(samples);
  double state = 0;
  for (std::size_t i = 0; i < samples; ++i) {
    state += (heights[i / (samples / 60) % 12] - state) * 1e-3;
    values[i] = state + noise[i * 7 % noise.size()] +
                0.02 * std::sin(2 * std::numbers::pi * 50 * static_cast<double>(i) / rate);
  }
  return values;
}

void report(benchmark::State& state) {
  const auto samples = static_cast<double>(state.range(0)) * static_cast<double>(state.iterations());
  state.counters["samples/s"] = benchmark::Counter(samples, benchmark::Counter::kIsRate);
  state.counters["s/sample"] =
      benchmark::Counter(samples, benchmark::Counter::kIsRate | benchmark::Counter::kInvert);
}

void spans(benchmark::State& state) {
  const auto values = recording(static_cast<std::size_t>(state.range(0)));
  const TimeAxis time = TimeAxis::even(0, 1 / rate, values.size());
  for (auto _ : state) benchmark::DoNotOptimize(findSpans(time, values));
  report(state);
}

void levels(benchmark::State& state) {
  const auto values = recording(static_cast<std::size_t>(state.range(0)));
  const TimeAxis time = TimeAxis::even(0, 1 / rate, values.size());
  for (auto _ : state) benchmark::DoNotOptimize(findLevels(time, values));
  report(state);
}

void rounding(benchmark::State& state, const Dither& dither) {
  double level = 1;
  for (auto _ : state) benchmark::DoNotOptimize(deviationOfRounding(level += 1e-9, dither));
}

BENCHMARK(spans)->Arg(1'000'000)->Arg(10'000'000)->Arg(100'000'000)->Unit(benchmark::kMillisecond);
BENCHMARK(levels)->Arg(1'000'000)->Arg(10'000'000)->Arg(100'000'000)->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(rounding, hum below the resolution, Dither{0, 0, {0.01, 0.02, 0.03}});
BENCHMARK_CAPTURE(rounding, hum above the resolution, Dither{0, 0, {4, 3, 2}});
BENCHMARK_CAPTURE(rounding, noise above the resolution, Dither{3, 0, {4, 3, 2}});

}  // namespace

BENCHMARK_MAIN();
