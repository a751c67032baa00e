// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/circuit/bridge_circuit.h"

#include <cmath>

namespace core {
namespace {

/// Of an output: potentials carry some 1e-16 of the excitation each, and leads may halve the reference.
constexpr double outputRounding = 2e-15;

NodeIndex index(Node node) { return static_cast<NodeIndex>(node); }

/// d arm resistance / d stimulus, ohm.
double armSlope(const Bridge& bridge, std::size_t arm) {
  const double share = templateOf(bridge.type).shares[arm].at(bridge.gauge.poissonRatio);
  if (isTransducer(bridge)) return share * bridge.rating.ratedOutput.base() * bridge.arms[arm].base();
  return share * bridge.gauge.factor * bridge.gauge.nominal.base();
}

void addLeads(Network& network, const Bridge& bridge) {
  for (const Wire& wire : wiresOf(bridge)) {
    const Resistance ohm = resistanceOf(bridge.leads[static_cast<std::size_t>(wire.role)]);
    network.branches.push_back(
        {"lead " + std::string(leadName(wire.role)), index(wire.from), index(wire.to), ohm});
  }
  for (const Join& join : templateOf(bridge.type).joins)
    network.branches.push_back({"join", index(join.a), index(join.b), Resistance(0)});
}

}  // namespace

BridgeNetwork bridgeNetwork(const Bridge& bridge, const Instrument& instrument,
                            std::span<const ShuntBranch> shunts) {
  BridgeNetwork result;
  Network& network = result.network;
  network.nodes.reserve(nodeCount);
  network.branches.reserve(24 + shunts.size());
  for (const Node node : allNodes()) network.nodes.emplace_back(nodeName(node));
  for (const std::size_t arm : {0, 1, 2, 3})
    network.branches.push_back(
        {"arm " + std::to_string(arm + 1), index(armBegin(arm)), index(armEnd(arm)), bridge.arms[arm]});
  addLeads(network, bridge);
  if (instrument.inputResistance)
    network.branches.push_back(
        {"instrument input", index(Node::SPlus), index(Node::SMinus), *instrument.inputResistance});
  result.firstShunt = network.branches.size();
  for (const ShuntBranch& shunt : shunts)
    network.branches.push_back({shunt.name, index(shunt.a), index(shunt.b), shunt.resistance});

  result.excitation = {index(Node::PPlus), index(Node::PMinus)};
  result.output = {index(Node::SPlus), index(Node::SMinus)};
  const bool sensed = hasNode(bridge, Node::SensePlus);
  result.reference = sensed ? Port{index(Node::SensePlus), index(Node::SenseMinus)} : result.excitation;
  return result;
}

Resistance armUnder(const Bridge& bridge, std::size_t arm, Stimulus stimulus) {
  return bridge.arms[arm] + Resistance(armSlope(bridge, arm) * stimulus);
}

BridgeCircuit::BridgeCircuit(const Bridge& bridge, BridgeNetwork network, Solver solver,
                             std::span<const ShuntBranch> shunts)
    : m_bridge(bridge),
      m_network(std::move(network)),
      m_solver(std::move(solver)),
      m_shunts(shunts.begin(), shunts.end()) {
  openAll();
}

Result<BridgeCircuit> BridgeCircuit::make(const Bridge& bridge, const Instrument& instrument,
                                          std::span<const ShuntBranch> shunts) {
  if (auto ok = checkBridge(bridge, instrument); !ok) return ok.error();
  BridgeNetwork network = bridgeNetwork(bridge, instrument, shunts);
  // A bad shunt must fail its own steps only: none takes part in the preparation with its value, and one
  // on a sense terminal that is not there must not make that terminal a node, which would float.
  Network open = network.network;
  for (std::size_t k = 0; k < shunts.size(); ++k) {
    Branch& branch = open.branches[network.firstShunt + k];
    branch.resistance = Resistance(1);
    if (!hasNode(bridge, shunts[k].a) || !hasNode(bridge, shunts[k].b))
      branch.a = branch.b = network.excitation.plus;
  }
  auto solver = Solver::prepare(open, network.excitation);
  if (!solver) return solver.error();
  return BridgeCircuit(bridge, std::move(network), *std::move(solver), shunts);
}

void BridgeCircuit::setStimulus(Stimulus stimulus) {
  m_stimulus = stimulus;
  for (const std::size_t arm : {0, 1, 2, 3})
    if (armSlope(m_bridge, arm) != 0) m_solver.setResistance(arm, armUnder(m_bridge, arm, stimulus));
}

Result<void> BridgeCircuit::close(std::size_t shunt) {
  const ShuntBranch& branch = m_shunts[shunt];
  const double ohm = branch.resistance.base();
  if (!std::isfinite(ohm) || ohm <= 0)
    return Error{branch.name, "a shunt must have a finite resistance above zero", "Enter its resistance"};
  for (const Node node : {branch.a, branch.b})
    if (!hasNode(m_bridge, node))
      return Error{branch.name, std::string(nodeName(node)) + " does not exist in this connection",
                   "Move the shunt to another node, or choose the six-wire connection"};
  if (m_solver.joined(index(branch.a), index(branch.b)))
    return Error{branch.name,
                 "both ends are on one node (" + pointName(m_bridge, branch.a) + "), so it does nothing",
                 "Move one end to another node"};
  m_solver.setResistance(m_network.firstShunt + shunt, branch.resistance);
  return {};
}

void BridgeCircuit::open(std::size_t shunt) { m_solver.open(m_network.firstShunt + shunt); }

void BridgeCircuit::openAll() {
  for (std::size_t k = 0; k < m_shunts.size(); ++k) open(k);
}

Result<Output> BridgeCircuit::solveOutput() {
  if (auto solved = m_solver.solve(); !solved) return solved.error();
  const double reference = m_solver.between(m_network.reference);
  // Rounding of potentials of at most 1 V is some 1e-16; a reference that small is no reference.
  if (!(std::abs(reference) > 1e-12))
    return Error{"excitation", "no voltage between the reference terminals", "Check the sense leads"};
  return Output(m_solver.between(m_network.output) / reference);
}

double BridgeCircuit::outputSlope() {
  m_solver.solveAdjoint(m_network.output, m_network.reference);
  double slope = 0;
  for (const std::size_t arm : {0, 1, 2, 3}) {
    const double ohmPerStimulus = armSlope(m_bridge, arm);
    if (ohmPerStimulus == 0) continue;
    const double ohm = armUnder(m_bridge, arm, m_stimulus).base();
    slope += m_solver.sensitivity(arm) * -ohmPerStimulus / (ohm * ohm);  // G = 1/R
  }
  return slope;
}

/// `step`, shortened so that every arm keeps at least a tenth of its present resistance.
double BridgeCircuit::admissibleStep(double step) const {
  for (const std::size_t arm : {0, 1, 2, 3}) {
    const double now = armUnder(m_bridge, arm, m_stimulus).base();
    const double change = armUnder(m_bridge, arm, m_stimulus + step).base() - now;
    if (change < -0.9 * now) step *= -0.9 * now / change;
  }
  return step;
}

Result<Stimulus> BridgeCircuit::stimulusFor(Output output) {
  openAll();
  setStimulus(0);
  // Fifty rounds are a bound, not a plan: a strain of 10 % needs four. Each shortened step takes an arm
  // down to a tenth; after ten the wanted output lies beyond that of a shorted arm.
  int shortened = 0;
  double rounding = 0;  // strain that the roundings of the potentials amount to
  for (int round = 0; round < 50 && shortened < 10; ++round) {
    const auto now = solveOutput();
    if (!now) return now.error();
    const double slope = outputSlope();
    if (!(std::abs(slope) > 0) || !std::isfinite(slope)) break;
    if (round == 0) rounding = outputRounding / std::abs(slope);
    const double wanted = (output - *now).base() / slope;
    const double step = admissibleStep(wanted);
    setStimulus(m_stimulus + step);
    if (step != wanted) {
      ++shortened;
      continue;
    }
    // Quadratic convergence: after a step this small the rest is below the last digit of a double.
    if (std::abs(step) <= 1e-7 * std::abs(m_stimulus) + rounding) return m_stimulus;
  }
  return Error{"simulated strain", "no strain of the gauges gives this output",
               "Check that the arms with gauges take part in the bridge"};
}

}  // namespace core
