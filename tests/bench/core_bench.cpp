// SPDX-License-Identifier: GPL-3.0-or-later
// How long the calculation takes. Target for the nine-step prediction: under 20 us a channel.
#include <benchmark/benchmark.h>

#include "core/document/edits.h"
#include "core/evaluate/evaluation.h"
#include "core/line/line.h"

namespace {

using namespace core;

/// A three-wire quarter bridge of 350 ohm on 2 ohm leads with the usual two-sided nine-step sequence.
Channel nineSteps() {
  Channel channel;
  for (const LeadRole role : {LeadRole::ExcitationPlus, LeadRole::SignalMinus, LeadRole::Return})
    channel.setup.bridge.leads[static_cast<std::size_t>(role)] = 2.0_ohm;
  for (const double kilohm : {174.65, 87.15, 58.0}) {
    const Resistance shunt(kilohm * 1e3);
    channel = withShuntAdded(channel, {"up", shunt, Node::Arm2Begin, Node::Arm2End, Resistance(0)});
    channel = withShuntAdded(channel, {"down", shunt, Node::Arm1Begin, Node::Arm1End, Resistance(0)});
  }
  return withTwoSidedSequence(channel, 2.0_s);
}

Channel checked() {
  Channel channel = nineSteps();
  const SetupPrediction prediction = predict(channel.setup);
  for (int check = 0; check < 2; ++check) {
    channel = withCheckAdded(channel, {});
    for (std::size_t step = 0; step < prediction.steps.size(); ++step)
      channel = withReading(channel, static_cast<std::size_t>(check), step,
                            Measured{prediction.steps[step]->reading, {}, {}, {}});
    channel = withCheckClosed(channel, static_cast<std::size_t>(check));
  }
  return channel;
}

void PredictNineStepsThreeWire(benchmark::State& state) {
  const Channel channel = nineSteps();
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
