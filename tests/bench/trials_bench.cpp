// SPDX-License-Identifier: GPL-3.0-or-later
// Propagation of distributions, with a model that costs next to nothing: what is left is drawing, sums and
// order. Target: 21 inputs, a million trials, 9 outputs well under 0.5 s on two cores.
#include <benchmark/benchmark.h>

#include "core/uncertainty/monte_carlo.h"

namespace {

using namespace core;

constexpr std::size_t inputs = 21, outputs = 9;

TrialPlan plan(const benchmark::State& state) {
  TrialPlan plan;
  for (std::size_t k = 0; k < inputs; ++k) {
    Uncertainty uncertainty{.amount = 0.01 * static_cast<double>(k + 1)};
    if (k % 2 == 0) uncertainty.statement = Statement::Standard;
    plan.inputs.push_back({1, uncertainty});
  }
  plan.threads = static_cast<unsigned>(state.range(0));
  return plan;
}

/// Sums of five neighbours each.
TrialModel model() {
  return [](const double* x, double* y) {
    for (std::size_t output = 0; output < outputs; ++output) {
      for (std::size_t lane = 0; lane < trialLanes; ++lane) {
        double sum = 0;
        for (std::size_t k = 0; k < 5; ++k) sum += x[(2 * output + k) * trialLanes + lane];
        y[output * trialLanes + lane] = sum;
      }
    }
  };
}

void MillionTrials(benchmark::State& state) {
  TrialPlan million = plan(state);
  million.trials = 1'000'000;
  for (auto _ : state) benchmark::DoNotOptimize(runTrials(million, model, outputs));
}
BENCHMARK(MillionTrials)->ArgName("threads")->Arg(1)->Arg(2)->Unit(benchmark::kMillisecond)->UseRealTime();

void MillionTrialsCorrelated(benchmark::State& state) {
  TrialPlan million = plan(state);
  million.trials = 1'000'000;
  for (std::size_t k = 0; k + 1 < 8; ++k) {
    for (std::size_t j = k + 1; j < 8; ++j) million.pairs.push_back({k, j, 0.5});
  }
  for (auto _ : state) benchmark::DoNotOptimize(runTrials(million, model, outputs));
}
BENCHMARK(MillionTrialsCorrelated)->ArgName("threads")->Arg(2)->Unit(benchmark::kMillisecond)->UseRealTime();

void MillionTrialsOfFewReadings(benchmark::State& state) {
  TrialPlan million = plan(state);
  million.trials = 1'000'000;
  for (std::size_t k = 0; k < inputs; k += 2) million.inputs[k].uncertainty.degreesOfFreedom = 4;
  for (auto _ : state) benchmark::DoNotOptimize(runTrials(million, model, outputs));
}
BENCHMARK(MillionTrialsOfFewReadings)
    ->ArgName("threads")
    ->Arg(2)
    ->Unit(benchmark::kMillisecond)
    ->UseRealTime();

void TrialsUntilSettled(benchmark::State& state) {
  const TrialPlan adaptive = plan(state);
  std::size_t trials = 0;
  for (auto _ : state) trials = runTrials(adaptive, model, outputs)->trials;
  state.counters["trials"] = static_cast<double>(trials);
}
BENCHMARK(TrialsUntilSettled)
    ->ArgName("threads")
    ->Arg(1)
    ->Arg(2)
    ->Unit(benchmark::kMillisecond)
    ->UseRealTime();

}  // namespace

BENCHMARK_MAIN();
