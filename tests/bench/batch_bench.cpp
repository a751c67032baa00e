// SPDX-License-Identifier: GPL-3.0-or-later
// What one trial of one step costs in the Monte Carlo: a whole network, `solverLanes` at a time. Target:
// under 15 ns a solve for a three-wire quarter bridge with leads and instrument input.
// tests/bench/peer_network.py solves the same network with NumPy.
#include <benchmark/benchmark.h>

#include <cmath>
#include <vector>

#include "core/circuit/batch_solver.h"
#include "core/circuit/bridge_network.h"

namespace {

using namespace core;

/// 350 ohm arms, 2 ohm leads, 10 Mohm input, and 174.65 kohm over arm 1.
BridgeNetwork networkOf(BridgeType type, bool sixWire) {
  Bridge bridge;
  bridge.type = type;
  bridge.sixWire = sixWire;
  bridge.leads.fill(Resistance(2));
  Instrument instrument;
  instrument.inputResistance = 10.0_Mohm;
  const ShuntBranch shunt{"shunt", Node::Arm1Begin, Node::Arm1End, 174.65_kohm};
  return bridgeNetwork(bridge, instrument, {&shunt, 1});
}

/// Lane 0 has the nominal resistances; in the others they differ by parts in a thousand.
std::vector<double> conductances(const Network& network) {
  std::vector<double> result(network.branches.size() * solverLanes);
  for (std::size_t k = 0; k < result.size(); ++k) {
    const double ohm = network.branches[k / solverLanes].resistance.base();
    result[k] = 1 / (ohm * (1 + 1e-3 * std::sin(static_cast<double>(k * (k % solverLanes)))));
  }
  return result;
}

/// Seconds for one solve of one trial, and the output of the nominal one, to be held against the peer's.
void report(benchmark::State& state, std::size_t solvesPerIteration, double nominalOutput) {
  using benchmark::Counter;
  state.counters["s_per_solve"] =
      Counter(static_cast<double>(solvesPerIteration), Counter::kIsIterationInvariantRate | Counter::kInvert);
  state.counters["nominal_output_V_per_V"] = nominalOutput;
}

void solveBatch(benchmark::State& state, BridgeType type, bool sixWire, bool withInput) {
  const BridgeNetwork bridge = networkOf(type, sixWire);
  auto solver = BatchSolver::prepare(bridge.network, std::vector<bool>(bridge.network.branches.size(), false),
                                     bridge.excitation, bridge.output, bridge.reference);
  if (!solver) return state.SkipWithError(solver.error().text().c_str());
  const std::vector<double> conductance = conductances(bridge.network);
  alignas(64) double ratio[solverLanes], input[solverLanes];
  for (auto _ : state) {
    solver->solve(conductance.data(), ratio, withInput ? input : nullptr);
    benchmark::DoNotOptimize(ratio);
    benchmark::ClobberMemory();
  }
  report(state, solverLanes, ratio[0]);
}
BENCHMARK_CAPTURE(solveBatch, quarterThreeWire, BridgeType::QuarterThreeWire, false, false);
BENCHMARK_CAPTURE(solveBatch, quarterThreeWireWithInputConductance, BridgeType::QuarterThreeWire, false,
                  true);
BENCHMARK_CAPTURE(solveBatch, fullSixWire, BridgeType::FullBending, true, false);

/// The same by the solver for one network at a time.
void solveOneByOne(benchmark::State& state) {
  const BridgeNetwork bridge = networkOf(BridgeType::QuarterThreeWire, false);
  auto solver = Solver::prepare(bridge.network, bridge.excitation);
  if (!solver) return state.SkipWithError(solver.error().text().c_str());
  for (auto _ : state) {
    solver->setResistance(0, bridge.network.branches[0].resistance);
    benchmark::DoNotOptimize(static_cast<bool>(solver->solve()));
  }
  report(state, 1, solver->between(bridge.output));
}
BENCHMARK(solveOneByOne);

}  // namespace

BENCHMARK_MAIN();
