// SPDX-License-Identifier: GPL-3.0-or-later
// How long the calculation takes. Targets: the nine-step prediction under 20 us a channel, with its full
// budget under 40 us, a million trials of nine steps under 1 s on two cores. tests/bench/peers.py compares.
#include <benchmark/benchmark.h>

#include "core/budget/trials.h"
#include "core/evaluate/evaluation.h"
#include "core/line/line.h"
#include "core/line/stated_fits.h"
#include "tests/support/sample_channel.h"

namespace {

using namespace core;

Channel checked() {
  Channel channel = sample::nineStepChannel();
  for (std::size_t check : {0, 1}) channel = withCheckClosed(sample::withCheckReading(channel, 1.001), check);
  return channel;
}

void PredictNineStepsThreeWire(benchmark::State& state) {
  const Channel channel = sample::nineStepChannel();
  for (auto _ : state) benchmark::DoNotOptimize(predict(channel.setup));
}
BENCHMARK(PredictNineStepsThreeWire)->Unit(benchmark::kMicrosecond);

void PredictNineStepsWithFullBudget(benchmark::State& state) {
  const Channel channel = sample::nineStepChannel();
  for (auto _ : state) {
    const SetupPrediction prediction = predict(channel.setup);
    benchmark::DoNotOptimize(budgetOf(channel.setup, prediction));
  }
  const Budget budget = budgetOf(channel.setup, predict(channel.setup));
  state.counters["inputs"] = static_cast<double>(budget.inputs.size());
  // For comparison with a peer's: U of the steps +3 and -3 in both scopes.
  state.counters["chain_plus"] = budget.of(Scope::Chain).steps[3]->expanded;
  state.counters["chain_minus"] = budget.of(Scope::Chain).steps[7]->expanded;
  state.counters["strain_plus"] = budget.of(Scope::Strain).steps[3]->expanded;
  state.counters["strain_minus"] = budget.of(Scope::Strain).steps[7]->expanded;
}
BENCHMARK(PredictNineStepsWithFullBudget)->Unit(benchmark::kMicrosecond);

/// Nine steps that all close shunts, so that each trial solves ten networks: them and the zero.
Setup nineShuntedSteps() {
  Setup setup = sample::nineStepChannel().setup;
  setup.instrument.inputResistance = Resistance(10e6);
  setup.sequence.clear();
  for (const std::vector<std::size_t>& closed :
       std::vector<std::vector<std::size_t>>{{0}, {1}, {2}, {3}, {4}, {5}, {0, 2}, {1, 3}, {2, 4}})
    setup.sequence.push_back({"step", closed});
  return setup;
}

void MillionTrialsOfNineSteps(benchmark::State& state) {
  const Setup setup = nineShuntedSteps();
  const SetupPrediction prediction = predict(setup);
  const Budget budget = budgetOf(setup, prediction);
  const auto scope = static_cast<Scope>(state.range(0));
  const auto threads = static_cast<unsigned>(state.range(1));
  for (auto _ : state)
    benchmark::DoNotOptimize(runChannelTrials(setup, prediction, budget,
                                              {.scope = scope, .trials = 1'000'000, .threads = threads}));
}
BENCHMARK(MillionTrialsOfNineSteps)
    ->ArgNames({"scope", "threads"})
    ->ArgsProduct({{0, 1}, {1, 2}})
    ->Unit(benchmark::kMillisecond)
    ->Iterations(3)
    ->UseRealTime();

void EvaluateChannelWithTwoClosedChecks(benchmark::State& state) {
  const Channel channel = checked();
  for (auto _ : state) benchmark::DoNotOptimize(evaluate(channel));
}
BENCHMARK(EvaluateChannelWithTwoClosedChecks)->Unit(benchmark::kMicrosecond);

void FitLine(benchmark::State& state) {
  std::vector<double> x, y;
  for (int k = 0; k < state.range(0); ++k) {
    x.push_back(k);
    y.push_back(1 + 2.0 * k + (k % 3));
  }
  for (auto _ : state) benchmark::DoNotOptimize(fitLine(x, y));
}
BENCHMARK(FitLine)->Arg(9)->Arg(1000)->Unit(benchmark::kMicrosecond);

/// The line of a check: readings that share offset and gain. Target: under 5 us for nine.
void FitCorrelatedLine(benchmark::State& state) {
  const auto m = static_cast<std::size_t>(state.range(0));
  std::vector<double> x(m), y(m), covariance(m * m);
  for (std::size_t i = 0; i < m; ++i) {
    x[i] = static_cast<double>(i);
    y[i] = 1 + 2 * x[i] + static_cast<double>(i % 3);
  }
  for (std::size_t i = 0; i < m; ++i)
    for (std::size_t j = 0; j < m; ++j) covariance[i * m + j] = (i == j ? 1.0 : 0) + 0.5 + 0.01 * x[i] * x[j];
  for (auto _ : state) benchmark::DoNotOptimize(fitCorrelatedLine(x, y, covariance));
}
BENCHMARK(FitCorrelatedLine)->Arg(9)->Arg(200)->Unit(benchmark::kMicrosecond);

}  // namespace

BENCHMARK_MAIN();
