// SPDX-License-Identifier: GPL-3.0-or-later
// How long the calculation takes. Target for the nine-step prediction: under 20 us a channel.
#include <benchmark/benchmark.h>

#include "core/evaluate/evaluation.h"
#include "core/line/line.h"
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

}  // namespace

BENCHMARK_MAIN();
