// SPDX-License-Identifier: GPL-3.0-or-later
// Proven best sets of resistors of preferred values. Targets on two cores: best 3 of E192 over three decades
// in all 7 parallel combinations and both polarities under 1 s, best 4 of E96 over two decades under 5 s.
// tests/bench/search_peer.py does the first by brute force with NumPy; "--candidates" prints its values.
#include <benchmark/benchmark.h>

#include <cstdio>
#include <cstring>

#include "core/search/resistor_search.h"
#include "core/search/targets.h"
#include "core/stock/e_series.h"

namespace {

using namespace core;

std::vector<Candidate> candidatesOf(ESeries series, double from_ohm, double below_ohm) {
  std::vector<Candidate> candidates;
  for (const Resistance value : eSeriesValues(series, Resistance(from_ohm), Resistance(below_ohm)))
    if (value < Resistance(below_ohm))
      candidates.push_back({.value = value, .tolerance = 1e-3, .once = false});
  return candidates;
}

/// Three-wire quarter bridge of 350 ohm on leads of 2 ohm.
Setup quarterBridge() {
  Setup setup;
  setup.bridge.leads.fill(Resistance(2));
  return setup;
}

struct Task {
  std::vector<Candidate> candidates;
  std::size_t positions = 3;
  std::vector<double> levels;
  bool together = true;
  bool atTolerance = false;
};

void search(benchmark::State& state, const Task& task) {
  const Setup setup = quarterBridge();
  ResistorSearch search;
  search.levels = task.levels;
  search.positive = usualPlace(setup.bridge, Polarity::Positive);
  search.negative = usualPlace(setup.bridge, Polarity::Negative);
  search.positions = task.positions;
  search.together = task.together;
  search.atTolerance = task.atTolerance;
  search.threads = static_cast<unsigned>(state.range(0));
  for (auto _ : state) {
    const auto outcome = searchResistors(setup, search, task.candidates);
    if (!outcome) return state.SkipWithError(outcome.error().text().c_str());
    state.counters["greatest_miss"] = outcome->best.front().greatestMiss;
    state.counters["sets"] = static_cast<double>(outcome->setsInAll);
    state.counters["boxes"] = static_cast<double>(outcome->boxesLookedAt);
  }
  state.counters["candidates"] = static_cast<double>(task.candidates.size());
}

std::vector<Candidate> e192() { return candidatesOf(ESeries::E192, 1e4, 1e7); }
std::vector<Candidate> e96() { return candidatesOf(ESeries::E96, 1e4, 1e6); }

void bestThreeOfE192(benchmark::State& state) {
  search(state, {e192(), 3, equalLevels(1500, 3, true, true)});
}
void bestFourOfE96(benchmark::State& state) { search(state, {e96(), 4, equalLevels(2000, 4, true, true)}); }
void bestFourOfE96AtTolerance(benchmark::State& state) {
  search(state, {e96(), 4, equalLevels(2000, 4, true, true), true, true});
}
void bestFourOfE192(benchmark::State& state) { search(state, {e192(), 4, equalLevels(1500, 3, true, true)}); }
/// So many sets come close to a single level that their bounds tell little.
void oneLevelByThreeOfE192(benchmark::State& state) { search(state, {e192(), 3, {1000}}); }
void sixPositionsOfE96OneAtATime(benchmark::State& state) {
  search(state, {e96(), 6, equalLevels(3000, 3, true, true), false});
}

BENCHMARK(bestThreeOfE192)->Arg(1)->Arg(2)->UseRealTime()->Unit(benchmark::kMillisecond);
BENCHMARK(bestFourOfE96)->Arg(1)->Arg(2)->UseRealTime()->Unit(benchmark::kMillisecond);
BENCHMARK(bestFourOfE96AtTolerance)->Arg(2)->UseRealTime()->Unit(benchmark::kMillisecond);
BENCHMARK(bestFourOfE192)->Arg(2)->UseRealTime()->Unit(benchmark::kMillisecond);
BENCHMARK(oneLevelByThreeOfE192)->Arg(2)->UseRealTime()->Unit(benchmark::kMillisecond);
BENCHMARK(sixPositionsOfE96OneAtATime)->Arg(2)->UseRealTime()->Unit(benchmark::kMillisecond);

}  // namespace

int main(int argc, char** argv) {
  if (argc == 2 && std::strcmp(argv[1], "--candidates") == 0) {
    for (const Candidate& candidate : e192()) std::printf("%.17g\n", candidate.value.base());
    return 0;
  }
  benchmark::Initialize(&argc, argv);
  benchmark::RunSpecifiedBenchmarks();
  benchmark::Shutdown();
  return 0;
}
