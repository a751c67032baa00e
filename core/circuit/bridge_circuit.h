// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <span>
#include <vector>

#include "core/circuit/bridge_network.h"

namespace core {

/// What the gauges of a bridge feel, per unit: strain in m/m, or for a transducer load over capacity.
using Stimulus = double;

/// d resistance of `arm` (from 0) / d stimulus, in ohm; zero for an arm that feels nothing.
double armSlope(const Bridge& bridge, std::size_t arm);
/// Resistance of `arm` (from 0) under `stimulus`: measured value + gauge factor x strain x share x nominal.
/// For a transducer: measured value x (1 +- rated output x load / capacity), so that without leads
/// and with equal arms the output is exactly rated output x load / capacity.
Resistance armUnder(const Bridge& bridge, std::size_t arm, Stimulus stimulus);

/// A bridge ready to be solved for one state after another without allocating.
class BridgeCircuit {
 public:
  /// Fails as `checkBridge` and `Solver::prepare` do. Shunts start open.
  static Result<BridgeCircuit> make(const Bridge& bridge, const Instrument& instrument,
                                    std::span<const ShuntBranch> shunts);

  void setStimulus(Stimulus stimulus);
  /// Closes or opens a shunt. Fails when it lies across one node or its resistance is not above zero.
  Result<void> close(std::size_t shunt);
  void open(std::size_t shunt);
  void openAll();

  /// Output of the present state: V(S+ - S-) over the reference voltage, or over current x nominal
  /// resistance. Fails when a node floats or the reference voltage is zero.
  Result<Output> solveOutput();
  /// d output / d stimulus in the state last solved; prepares `sensitivity`.
  double outputSlope();
  /// Prepares `sensitivity` for the state last solved: one more solve with the factors at hand.
  void solveAdjoint();
  /// d output / d resistance of `branch`, in 1/ohm; valid after `solveAdjoint` and `outputSlope`. Zero for
  /// an open branch and for one that joins two nodes.
  double sensitivity(BranchIndex branch) const;
  /// Potential of a node in V per volt of excitation, in the state last solved.
  double potential(Node node) const { return m_solver.potential(static_cast<NodeIndex>(node)); }
  /// Voltage over a branch in V per volt of excitation, in the state last solved.
  double voltage(BranchIndex branch) const;
  /// Conductance between P+ and P- in S, in the state last solved.
  double inputConductance() const { return m_solver.inputConductance(); }
  bool connected(Node node) const { return m_solver.connected(static_cast<NodeIndex>(node)); }

  /// The stimulus that, with all shunts open, gives `output`: the exact inverse of the whole network,
  /// leads and unequal arms included. Newton's method with the adjoint derivative; the output is a
  /// ratio of low-order polynomials of the strain, so a few steps reach the last digits.
  /// Leaves all shunts open and the stimulus at the answer. Fails when no stimulus gives that
  /// output, and with "the gauges do not act on the output" where what they do is no more than rounding.
  Result<Stimulus> stimulusFor(Output output);

  const BridgeNetwork& network() const { return m_network; }

 private:
  BridgeCircuit(const Bridge& bridge, std::optional<Resistance> nominal, BridgeNetwork network, Solver solver,
                std::span<const ShuntBranch> shunts);

  double admissibleStep(double step) const;
  bool isDead(double slope) const;

  Bridge m_bridge;
  BridgeNetwork m_network;
  Solver m_solver;
  std::vector<ShuntBranch> m_shunts;
  std::optional<Resistance> m_nominal;  ///< of the bridge, as set at a current source
  std::array<double, 4> m_armSlope{};   ///< d arm resistance / d stimulus, ohm
  double m_perRatio = 1;  ///< d output / d (signal over reference voltage), in the state last solved
  double m_perInput = 0;  ///< d output / d input conductance, ohm; not zero at a current source only
  Stimulus m_stimulus = 0;
};

}  // namespace core
