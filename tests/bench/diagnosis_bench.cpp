// SPDX-License-Identifier: GPL-3.0-or-later
// How long one full diagnosis takes: nine-step checks of each template, healthy and with a fault. Target:
// under 50 ms; and what may have changed between two checks, target: under 20 ms. A row's time is the mean
// over its checks; `slowest_ms` is the slowest single diagnosis.
#include <benchmark/benchmark.h>

#include <algorithm>
#include <chrono>
#include <string>
#include <utility>
#include <vector>

#include "core/compare/change_cause.h"
#include "core/diagnose/diagnosis.h"
#include "tests/diagnosis/simulated_change.h"
#include "tests/diagnosis/simulated_check.h"

namespace {

using diagnosis::SimulatedCheck;

/// A check with all that the diagnosis is given.
struct Case {
  core::Setup setup;
  core::Check check;
  core::SetupPrediction prediction;
  core::Budget budget;
};

Case caseOf(const SimulatedCheck& simulated) {
  Case result{simulated.channel.setup, simulated.check, core::predict(simulated.channel.setup), {}};
  result.budget = core::budgetOf(result.setup, result.prediction);
  return result;
}

bool fits(const SimulatedCheck& simulated, core::BridgeType type) {
  const core::Setup& setup = simulated.channel.setup;
  return setup.bridge.type == type && setup.sequence.size() == 9;
}

constexpr std::uint64_t seed = 9;

std::vector<Case> healthyCases(core::BridgeType type) {
  std::vector<Case> cases;
  for (std::uint64_t number = 0; cases.size() < 10; ++number)
    if (const auto simulated = diagnosis::healthyCheck(seed, number); fits(simulated, type))
      cases.push_back(caseOf(simulated));
  return cases;
}

/// One of each kind of fault that the template can have.
std::vector<Case> faultyCases(core::BridgeType type) {
  std::vector<Case> cases;
  for (std::size_t kind = 0; kind < core::causeKindCount; ++kind)
    for (std::uint64_t number = 0; number < 400; ++number) {
      const auto simulated = diagnosis::faultyCheck(seed, number, static_cast<core::CauseKind>(kind));
      if (!fits(simulated, type)) continue;
      cases.push_back(caseOf(simulated));
      break;
    }
  return cases;
}

core::Diagnosis diagnosed(const Case& one) {
  return core::diagnose(one.setup, one.prediction, one.budget, one.check);
}

/// A pair of checks with what is known of it already.
struct Pair {
  core::Channel channel;
  core::ChannelEvaluation evaluation;
};

std::vector<Pair> changedPairs() {
  std::vector<Pair> pairs;
  for (std::size_t kind = 0; kind < core::causeKindCount; ++kind) {
    core::Channel channel = diagnosis::changeOf(seed, 0, static_cast<core::CauseKind>(kind)).channel;
    core::ChannelEvaluation evaluation = core::evaluate(channel);
    pairs.push_back({std::move(channel), std::move(evaluation)});
  }
  return pairs;
}

core::ChangeCause diagnosed(const Pair& pair) {
  return core::changeCauseOf(pair.channel, pair.evaluation, 0, 1);
}

template <class One>
void diagnoseAll(benchmark::State& state, const std::vector<One>& cases) {
  using Clock = std::chrono::steady_clock;
  std::vector<double> fastest_ms(cases.size(), 1e9);  // of each check, so that a busy machine counts little
  std::size_t next = 0;
  for (auto _ : state) {
    const auto begin = Clock::now();
    benchmark::DoNotOptimize(diagnosed(cases[next]));
    const double ms = std::chrono::duration<double, std::milli>(Clock::now() - begin).count();
    fastest_ms[next] = std::min(fastest_ms[next], ms);
    next = (next + 1) % cases.size();
  }
  double slowest = 0;
  for (const double ms : fastest_ms)
    if (ms < 1e9) slowest = std::max(slowest, ms);
  state.counters["slowest_ms"] = slowest;
  state.counters["checks"] = static_cast<double>(cases.size());
}

template <class One>
void add(const std::string& name, std::vector<One> cases) {
  const auto run = [cases = std::move(cases)](benchmark::State& state) { diagnoseAll(state, cases); };
  benchmark::RegisterBenchmark(name.c_str(), run)->Unit(benchmark::kMillisecond);
}

void addAll() {
  add("DiagnoseChange", changedPairs());
  for (const core::BridgeTemplate& shape : core::allTemplates()) {
    add("DiagnoseHealthy/" + std::string(shape.key), healthyCases(shape.type));
    add("DiagnoseFaulty/" + std::string(shape.key), faultyCases(shape.type));
  }
}

}  // namespace

int main(int count, char** words) {
  addAll();
  benchmark::Initialize(&count, words);
  benchmark::RunSpecifiedBenchmarks();
  return 0;
}
