// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/flow/movement.h"
#include "core/flow/placement.h"

#include <cmath>

namespace core {
namespace {

/// Below this a change of output is rounding, as in a prediction.
constexpr double outputRounding = 1e-14;

double bridgeShare(const BridgeCircuit& solved) {
  return std::abs(solved.potential(Node::Arm1Begin) - solved.potential(Node::Arm2End));
}

/// Current along an arm and the leak over it, per volt of excitation: its voltage over its resistance, so
/// that a leak out of the middle of the grid does not matter.
double armCurrent(const BridgeCircuit& solved, const Bridge& bridge, std::size_t arm) {
  double volts = 0;
  for (const ArmPiece& piece : solved.network().pieces)
    if (piece.arm == arm) volts += solved.voltage(piece.branch);
  double siemens = 1 / bridge.arms[arm].base();
  if (const auto& leak = bridge.leaks[arm].across) siemens += 1 / leak->base();
  return volts * siemens;
}

std::array<double, 4> armRatios(const BridgeCircuit& solved, const Setup& setup, std::size_t step) {
  std::array<double, 4> shunted{};  // current beside each arm, per volt
  for (const std::size_t k : setup.sequence[step].closed) {
    const ShuntPlacement place = placementOf(setup.bridge, setup.shunts[k]);
    if (place.kind != ShuntPlacement::Kind::Arm) continue;
    const BranchIndex branch = solved.network().firstShunt + k;
    const double along = solved.voltage(branch) / resistanceOf(setup.shunts[k]).base();
    shunted[place.arm] += place.reversed ? -along : along;
  }
  std::array<double, 4> ratios{1, 1, 1, 1};
  for (const std::size_t arm : {0, 1, 2, 3}) {
    const double own = armCurrent(solved, setup.bridge, arm);
    // An arm without current acts with no resistance that could be told from another.
    if (shunted[arm] != 0 && own / shunted[arm] > 0) ratios[arm] = own / (own + shunted[arm]);
  }
  return ratios;
}

/// The halves of `circuit` as last solved go to one side of `movement`.
void takeVoltages(const BridgeCircuit& solved, const Instrument& instrument, Movement& movement, bool after) {
  const Voltage excitation = excitationOf(solved, instrument);
  const Voltage bridge = bridgeShare(solved) * excitation;
  (after ? movement.excitation.after : movement.excitation.before) = excitation;
  (after ? movement.bridge.after : movement.bridge.before) = bridge;
  for (HalfBridge& half : movement.halves) (after ? half.after : half.before) = solved.potential(half.signal);
}

Result<FlowAndMovement> solvedFor(BridgeCircuit& circuit, const Setup& setup, std::size_t step) {
  FlowAndMovement result;
  Movement& movement = result.movement;
  movement.halves[0].signal = Node::SMinus;
  movement.halves[1].signal = Node::SPlus;
  const auto zero = circuit.solveOutput();
  if (!zero) return zero.error();
  takeVoltages(circuit, setup.instrument, movement, false);
  const bool closes = step < setup.sequence.size() && !setup.sequence[step].closed.empty();
  if (closes) {
    if (auto closed = closeShunts(circuit, setup, step); !closed) return closed.error();
    const auto now = circuit.solveOutput();
    if (!now) return now.error();
    movement.change = *now - *zero;
    movement.armRatio = armRatios(circuit, setup, step);
  }
  takeVoltages(circuit, setup.instrument, movement, true);
  if (std::abs(movement.change.base()) >= outputRounding)
    movement.polarity = movement.change.base() > 0 ? Polarity::Positive : Polarity::Negative;
  result.flow = flowOf(circuit, setup, step);
  return result;
}

}  // namespace

Result<FlowAndMovement> flowAndMovementAt(const Setup& setup, std::size_t step) {
  auto circuit = BridgeCircuit::make(setup.bridge, setup.instrument, shuntBranches(setup));
  if (!circuit) return circuit.error();
  return solvedFor(*circuit, setup, step);
}

Result<Movement> movementAt(const Setup& setup, std::size_t step) {
  auto circuit = BridgeCircuit::make(setup.bridge, setup.instrument, shuntBranches(setup));
  if (!circuit) return circuit.error();
  auto solved = solvedFor(*circuit, setup, step);
  if (!solved) return solved.error();
  Movement& movement = solved->movement;
  if (movement.polarity == Polarity::None) {
    movement.simulated = 0;
    return movement;
  }
  // The state is still that of the step; its output is wanted of the gauges.
  const auto output = circuit->solveOutput();
  if (!output) return output.error();
  if (const auto simulated = circuit->stimulusFor(*output)) movement.simulated = *simulated;
  return movement;
}

}  // namespace core
