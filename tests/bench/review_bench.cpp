// SPDX-License-Identifier: GPL-3.0-or-later
// Review of a plan. Target: 1,000 channels of 20 steps under 0.2 s on two cores, given the evaluations.
#include <benchmark/benchmark.h>

#include <thread>

#include "core/document/edits.h"
#include "core/review/review.h"

namespace {

using namespace core;

constexpr std::size_t channelCount = 1000;
constexpr Date today{std::chrono::year(2026), std::chrono::May, std::chrono::day(11)};

/// A three-wire quarter bridge on leads: nine levels each side, up and on to zero; shunts over the gauge at
/// the instrument's terminals, so that there is something to find. Twenty steps with the two zeros.
Channel plan(std::size_t number, bool hasty) {
  Channel channel;
  channel.setup.bridge.arms[0] = Resistance(350 + 0.01 * static_cast<double>(number % 50));
  channel.setup.bridge.leads.fill(Resistance(2));
  channel.setup.bridge.gauge.grid.area = Area(4.5e-6);
  channel.setup.instrument.range = Output(5e-3);
  for (const bool gauge : {false, true})
    for (int level = 1; level <= 9; ++level)
      channel = withShuntAdded(channel, {"R" + std::to_string(level),
                                         Resistance(1.75e6 / level),
                                         gauge ? Node::PPlus : Node::Arm2Begin,
                                         gauge ? Node::SMinus : Node::Arm2End,
                                         {},
                                         {},
                                         {"S-" + std::to_string(level), {}, Power(0.25)}});
  auto& sequence = channel.setup.sequence;
  sequence.push_back({"zero", {}});
  for (std::size_t shunt = 0; shunt < 18; ++shunt) sequence.push_back({"", {shunt}});
  if (hasty) sequence[3].label = "-3", sequence[12].hold = Duration(0.5), sequence[15].closed = {14};
  if (!hasty) sequence.insert(sequence.begin() + 10, Step{"zero", {}});
  if (hasty) sequence.push_back({"zero", {}});
  channel.setup.acquisition.filter = {FilterKind::Bessel, 4, Frequency(10), Duration(0.1)};
  channel.setup.acquisition.sampleRate = Frequency(50);
  return channel;
}

struct Plans {
  std::vector<Channel> channels;
  std::vector<ChannelEvaluation> evaluations;
};

const Plans& plans(bool hasty) {
  static const auto made = [](bool withFaults) {
    Plans all;
    for (std::size_t k = 0; k < channelCount; ++k) {
      all.channels.push_back(plan(k, withFaults));
      all.evaluations.push_back(evaluate(all.channels.back()));
    }
    return all;
  };
  static const Plans sound = made(false), faulty = made(true);
  return hasty ? faulty : sound;
}

std::size_t reviewSome(const Plans& all, std::size_t from, std::size_t to, bool evaluated) {
  std::size_t found = 0;
  for (std::size_t k = from; k < to; ++k) {
    const Channel& channel = all.channels[k];
    found += evaluated ? review(channel, all.evaluations[k], {}, today).size()
                       : review(channel, evaluate(channel), {}, today).size();
  }
  return found;
}

void reviewAll(benchmark::State& state, bool hasty, bool evaluated) {
  const Plans& all = plans(hasty);
  const auto threads = static_cast<std::size_t>(state.range(0));
  std::vector<std::size_t> found(threads);
  for (auto _ : state) {
    std::vector<std::jthread> workers;
    for (std::size_t k = 0; k < threads; ++k)
      workers.emplace_back([&, k] {
        found[k] = reviewSome(all, k * channelCount / threads, (k + 1) * channelCount / threads, evaluated);
      });
  }
  double sum = 0;
  for (const std::size_t count : found) sum += static_cast<double>(count);
  state.counters["findings"] = sum;
  state.counters["steps"] = static_cast<double>(all.channels[0].setup.sequence.size());
}

void ReviewOfSoundPlans(benchmark::State& state) { reviewAll(state, false, true); }
void ReviewOfHastyPlans(benchmark::State& state) { reviewAll(state, true, true); }
void ReviewWithEvaluation(benchmark::State& state) { reviewAll(state, true, false); }
BENCHMARK(ReviewOfSoundPlans)
    ->ArgName("threads")
    ->Arg(1)
    ->Arg(2)
    ->Unit(benchmark::kMillisecond)
    ->UseRealTime();
BENCHMARK(ReviewOfHastyPlans)
    ->ArgName("threads")
    ->Arg(1)
    ->Arg(2)
    ->Unit(benchmark::kMillisecond)
    ->UseRealTime();
BENCHMARK(ReviewWithEvaluation)
    ->ArgName("threads")
    ->Arg(1)
    ->Arg(2)
    ->Unit(benchmark::kMillisecond)
    ->UseRealTime();

}  // namespace

BENCHMARK_MAIN();
