// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/circuit/bridge_circuit.h"

#include <cmath>

#include "core/circuit/hookup.h"
#include "core/circuit/node_words.h"
#include "core/units/language.h"

namespace core {
namespace {

/// Of an output: potentials carry some 1e-16 of the excitation each, and leads may halve the reference.
constexpr double outputRounding = 2e-15;

/// Below this share of what the gauges of such a bridge give where nothing takes part of it, a slope is
/// rounding: potentials carry some 1e-16, and 1 µm/m would be less than that.
constexpr double deadSlope = 1e-9;

NodeIndex index(Node node) { return static_cast<NodeIndex>(node); }

/// What to do about leads that are broken, touching or exchanged; `otherwise` where all are in order.
std::string leadsMend(const Bridge& bridge, const std::string& otherwise) {
  const Hookup hookup = hookupInUse(bridge);
  if (hookup.broken != Hookup{}.broken) return say("Mend the lead that is broken");
  if (!hookup.touching.empty()) return say("Part the leads that touch");
  if (!hookup.exchanged.empty()) return say("Put the exchanged leads where they belong");
  return otherwise;
}

/// Whether the ends of `shunt`, which are on one node, would be on two if no leads touched.
bool joinedByTouching(Bridge bridge, const ShuntBranch& shunt) {
  if (hookupInUse(bridge).touching.empty()) return false;
  bridge.hookup.touching.clear();
  const BridgeNetwork parted = bridgeNetwork(bridge, Instrument{}, {});
  const auto solver = Solver::prepare(parted.network, parted.excitation);
  return solver && !solver->joined(index(shunt.a), index(shunt.b));
}

/// Nothing is to be entered where leads touch that should not.
Error shortedOr(Error error, const Bridge& bridge) {
  if (error.where == say("excitation") && !hookupInUse(bridge).touching.empty())
    error.mend = say("Part the leads that touch");
  return error;
}

/// Numbers that are each usable may have a product that is not.
Result<void> requireSlopes(const Bridge& bridge) {
  for (const std::size_t arm : {0, 1, 2, 3})
    if (!std::isfinite(armSlope(bridge, arm)))
      return Error{say("arm {1}", {std::to_string(arm + 1)}),
                   say("what strain or load does to its resistance is too large to reckon with"),
                   say("Check resistance, gauge factor and rated output")};
  return {};
}

/// A broken lead may leave a terminal that is measured at without any wire.
Result<void> requireConnected(const Solver& solver, const BridgeNetwork& bridge) {
  for (const NodeIndex node :
       {bridge.output.plus, bridge.output.minus, bridge.reference.plus, bridge.reference.minus})
    if (!solver.connected(node))
      return Error{say("terminal {1}", {bridge.network.nodes[node]}),
                   say("nothing is connected there, so the output is undefined"),
                   say("Mend the broken lead")};
  return {};
}

}  // namespace

double armSlope(const Bridge& bridge, std::size_t arm) {
  const double share = strainShare(bridge, arm).at(bridge.gauge.poissonRatio);
  if (isTransducer(bridge)) return share * bridge.rating.ratedOutput.base() * bridge.arms[arm].base();
  return share * gaugeFactorOf(bridge.gauge) * bridge.gauge.nominal.base();
}

Resistance armUnder(const Bridge& bridge, std::size_t arm, Stimulus stimulus) {
  return bridge.arms[arm] + Resistance(armSlope(bridge, arm) * stimulus);
}

BridgeCircuit::BridgeCircuit(const Bridge& bridge, std::optional<Resistance> nominal, BridgeNetwork network,
                             Solver solver, std::span<const ShuntBranch> shunts)
    : m_bridge(bridge),
      m_network(std::move(network)),
      m_solver(std::move(solver)),
      m_shunts(shunts.begin(), shunts.end()),
      m_nominal(nominal) {
  for (const std::size_t arm : {0, 1, 2, 3}) m_armSlope[arm] = armSlope(m_bridge, arm);
  openAll();
}

Result<BridgeCircuit> BridgeCircuit::make(const Bridge& bridge, const Instrument& instrument,
                                          std::span<const ShuntBranch> shunts) {
  if (auto ok = checkBridge(bridge, instrument); !ok) return ok.error();
  if (auto ok = requireSlopes(bridge); !ok) return ok.error();
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
  if (!solver) return shortedOr(solver.error(), bridge);
  if (auto ok = requireConnected(*solver, network); !ok) return ok.error();
  const auto nominal = instrument.current ? std::optional(instrument.current->nominal) : std::nullopt;
  return BridgeCircuit(bridge, nominal, std::move(network), *std::move(solver), shunts);
}

void BridgeCircuit::setStimulus(Stimulus stimulus) {
  m_stimulus = stimulus;
  for (const ArmPiece& piece : m_network.pieces) {
    const double slope = m_armSlope[piece.arm];
    if (slope == 0) continue;
    const Resistance arm = m_bridge.arms[piece.arm] + Resistance(slope * stimulus);
    m_solver.setResistance(piece.branch, piece.share * arm);
  }
}

Result<void> BridgeCircuit::close(std::size_t shunt) {
  const ShuntBranch& branch = m_shunts[shunt];
  const double ohm = branch.resistance.base();
  if (!std::isfinite(ohm) || ohm <= 0 || !std::isfinite(1 / ohm))
    return Error{branch.name, say("a shunt must have a finite resistance above zero"),
                 say("Enter its resistance")};
  for (const Node node : {branch.a, branch.b})
    if (!hasNode(m_bridge, node))
      return Error{branch.name, say("{1} does not exist in this connection", {nodeWords(node)}),
                   say("Move the shunt to another node, or choose the six-wire connection")};
  if (m_solver.joined(index(branch.a), index(branch.b)))
    return Error{branch.name,
                 say("both ends are on one node ({1}), so it does nothing", {pointName(m_bridge, branch.a)}),
                 joinedByTouching(m_bridge, branch) ? say("Part the leads that touch")
                                                    : say("Move one end to another node")};
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
    return Error{say("excitation"), say("no voltage between the reference terminals"),
                 leadsMend(m_bridge, say("Check the sense leads"))};
  const double ratio = m_solver.between(m_network.output) / reference;
  if (!m_nominal) return Output(ratio);
  // At a current source the voltage over P+ and P- is I / G; the instrument divides by I R.
  const double input_S = m_solver.inputConductance();
  if (!(input_S > 0))
    return Error{say("excitation"), say("no current can flow from P+ to P-"),
                 leadsMend(m_bridge, say("Check the leads of the excitation"))};
  m_perRatio = 1 / (input_S * m_nominal->base());
  m_perInput = -ratio * m_perRatio / input_S;
  return Output(ratio * m_perRatio);
}

double BridgeCircuit::voltage(BranchIndex branch) const {
  const Branch& at = m_network.network.branches[branch];
  return m_solver.between({at.a, at.b});
}

void BridgeCircuit::solveAdjoint() { m_solver.solveAdjoint(m_network.output, m_network.reference); }

double BridgeCircuit::sensitivity(BranchIndex branch) const {
  double perSiemens = m_perRatio * m_solver.sensitivity(branch);
  if (m_nominal) perSiemens += m_perInput * m_solver.inputSensitivity(branch);
  const double g = m_solver.conductance(branch);
  return -perSiemens * g * g;  // G = 1/R
}

double BridgeCircuit::outputSlope() {
  solveAdjoint();
  double slope = 0;
  for (const ArmPiece& piece : m_network.pieces)
    if (m_armSlope[piece.arm] != 0) slope += sensitivity(piece.branch) * piece.share * m_armSlope[piece.arm];
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

/// Whether `slope`, an output's by the stimulus, is no more than rounding.
bool BridgeCircuit::isDead(double slope) const {
  double whole = 0;
  for (const std::size_t arm : {0, 1, 2, 3})
    whole += std::abs(m_armSlope[arm] / m_bridge.arms[arm].base()) / 4;
  return !(std::abs(slope) > deadSlope * whole);
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
    if (round == 0 && isDead(slope))
      return Error{say("simulated strain"), say("the gauges do not act on the output"),
                   leadsMend(m_bridge, say("Check that the arms with gauges take part in the bridge"))};
    if (!(std::abs(slope) > 0) || !std::isfinite(slope)) break;
    if (round == 0) rounding = outputRounding / std::abs(slope);
    const double wanted = (output - *now).base() / slope;
    if (!std::isfinite(wanted)) break;
    const double step = admissibleStep(wanted);
    setStimulus(m_stimulus + step);
    if (step != wanted) {
      ++shortened;
      continue;
    }
    // Quadratic convergence: after a step this small the rest is below the last digit of a double.
    if (std::abs(step) <= 1e-7 * std::abs(m_stimulus) + rounding) return m_stimulus;
  }
  return Error{say("simulated strain"), say("no strain of the gauges gives this output"),
               say("Check that the arms with gauges take part in the bridge")};
}

}  // namespace core
