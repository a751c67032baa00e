// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/flow/flow.h"

#include <algorithm>
#include <numeric>

#include "core/plan/prediction.h"

namespace core {
namespace {

/// The branches that take part: all but the shunts that `step` leaves open, and those within one node.
std::vector<BranchIndex> closedBranches(const BridgeNetwork& bridge, const Setup& setup, std::size_t step) {
  std::vector<BranchIndex> closed(bridge.firstShunt);
  std::iota(closed.begin(), closed.end(), BranchIndex{0});
  if (step < setup.sequence.size())
    for (const std::size_t shunt : setup.sequence[step].closed) closed.push_back(bridge.firstShunt + shunt);
  std::erase_if(closed,
                [&](BranchIndex k) { return bridge.network.branches[k].a == bridge.network.branches[k].b; });
  return closed;
}

/// A spanning tree of least resistance (Kruskal), and the rest, which closes loops.
struct Spanning {
  std::vector<BranchIndex> tree, loops;
};

Spanning spanningOf(const Network& network, std::vector<BranchIndex> closed) {
  std::stable_sort(closed.begin(), closed.end(), [&](BranchIndex a, BranchIndex b) {
    return network.branches[a].resistance < network.branches[b].resistance;
  });
  std::vector<NodeIndex> part(network.nodes.size());
  std::iota(part.begin(), part.end(), NodeIndex{0});
  Spanning spanning;
  for (const BranchIndex k : closed) {
    const NodeIndex kept = part[network.branches[k].a], gone = part[network.branches[k].b];
    (kept == gone ? spanning.loops : spanning.tree).push_back(k);
    if (kept != gone) std::replace(part.begin(), part.end(), gone, kept);
  }
  return spanning;
}

/// Gives every branch of `tree` the current that makes the sum at each node zero. `surplus_A` is what comes
/// into a node by all other ways.
void settleTree(const Network& network, std::vector<BranchIndex> tree, std::vector<double> surplus_A,
                std::vector<Current>& currents) {
  std::vector<int> ends(network.nodes.size(), 0);
  for (const BranchIndex k : tree) ++ends[network.branches[k].a], ++ends[network.branches[k].b];
  while (!tree.empty()) {
    // A tree has a leaf: a node with one branch, which takes all that comes in there.
    const auto leaf = std::find_if(tree.begin(), tree.end(), [&](BranchIndex k) {
      return ends[network.branches[k].a] == 1 || ends[network.branches[k].b] == 1;
    });
    const Branch& branch = network.branches[*leaf];
    const bool fromA = ends[branch.a] == 1;
    const NodeIndex outer = fromA ? branch.a : branch.b, inner = fromA ? branch.b : branch.a;
    const double leaving_A = surplus_A[outer];
    currents[*leaf] = Current(fromA ? leaving_A : 0 - leaving_A);  // never a negative zero
    surplus_A[inner] += leaving_A;
    --ends[outer], --ends[inner];
    tree.erase(leaf);
  }
}

Current sourceCurrent(const BridgeCircuit& solved, const Instrument& instrument, Voltage excitation) {
  if (instrument.current) return instrument.current->supplied;
  return Current(excitation.base() * solved.inputConductance());
}

/// Puts the currents of branches into the places of `flow` that they belong to.
void placeCurrents(const BridgeNetwork& bridge, const std::vector<Current>& currents, Flow& flow) {
  std::copy_n(currents.begin(), 4, flow.arms.begin());
  std::copy(currents.begin() + static_cast<std::ptrdiff_t>(bridge.firstShunt), currents.end(),
            std::back_inserter(flow.shunts));
  std::size_t balance = 0;
  for (const Dependence& depends : bridge.dependences) {
    const auto [kind, index] = depends.input;
    const Current current = currents[depends.branch];
    if (kind == InputKind::Lead) flow.leads[index] = current;
    if (kind == InputKind::LeakAcross) flow.leaksAcross[index] = current;
    if (kind == InputKind::LeakToStructure) flow.leaksToStructure[index] = current;
    if (kind == InputKind::InputResistance) flow.input = current;
    if (kind == InputKind::BalancePotentiometer) flow.balance[balance++] = current;
    if (kind == InputKind::BalanceLimiting) flow.balance[2] = current;
  }
  for (const Current leak : flow.leaksToStructure) flow.structure = flow.structure + leak;
}

}  // namespace

Voltage excitationOf(const BridgeCircuit& solved, const Instrument& instrument) {
  if (!instrument.current) return instrument.excitation;
  return Voltage(instrument.current->supplied.base() / solved.inputConductance());
}

std::vector<Current> branchCurrents(const BridgeCircuit& solved, const Setup& setup, std::size_t step,
                                    Voltage excitation) {
  const BridgeNetwork& bridge = solved.network();
  const Network& network = bridge.network;
  std::vector<Current> currents(network.branches.size());
  std::vector<double> surplus_A(network.nodes.size(), 0);
  const double source_A = sourceCurrent(solved, setup.instrument, excitation).base();
  surplus_A[bridge.excitation.plus] += source_A;
  surplus_A[bridge.excitation.minus] -= source_A;
  const Spanning spanning = spanningOf(network, closedBranches(bridge, setup, step));
  for (const BranchIndex k : spanning.loops) {
    const Branch& branch = network.branches[k];
    if (branch.resistance.base() == 0) continue;
    const double current_A = solved.voltage(k) * excitation.base() / branch.resistance.base();
    currents[k] = Current(current_A);
    surplus_A[branch.a] -= current_A;
    surplus_A[branch.b] += current_A;
  }
  settleTree(network, spanning.tree, std::move(surplus_A), currents);
  return currents;
}

Flow flowOf(const BridgeCircuit& solved, const Setup& setup, std::size_t step) {
  Flow flow;
  flow.excitation = excitationOf(solved, setup.instrument);
  flow.source = sourceCurrent(solved, setup.instrument, flow.excitation);
  flow.potentials.resize(nodeCount);
  for (const Node node : allNodes())
    if (solved.connected(node))
      flow.potentials[static_cast<std::size_t>(node)] = solved.potential(node) * flow.excitation;
  placeCurrents(solved.network(), branchCurrents(solved, setup, step, flow.excitation), flow);
  if (setup.instrument.grounding == Grounding::Floating) flow.structure = Current(0);
  return flow;
}

Result<Flow> flowAt(const Setup& setup, std::size_t step) {
  auto circuit = BridgeCircuit::make(setup.bridge, setup.instrument, shuntBranches(setup));
  if (!circuit) return circuit.error();
  if (auto closed = closeShunts(*circuit, setup, step); !closed) return closed.error();
  if (auto solved = circuit->solveOutput(); !solved) return solved.error();
  return flowOf(*circuit, setup, step);
}

}  // namespace core
