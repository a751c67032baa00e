// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <span>
#include <vector>

#include "core/circuit/bridge.h"
#include "core/circuit/network.h"

namespace core {

/// A resistor and the two nodes it is switched to.
struct ShuntBranch {
  std::string name;
  Node a = Node::PPlus;
  Node b = Node::SMinus;
  Resistance resistance;  ///< with its own wires
};

/// A bridge as a network of resistors: nodes are those of core::Node in its order; branches are the
/// four arms, the leads in use, joins, the instrument's input, then the shunts in their order.
struct BridgeNetwork {
  Network network;
  Port excitation;             ///< P+ and P- at the instrument
  Port output;                 ///< S+ and S- at the instrument
  Port reference;              ///< sense pair with six wires, else the excitation
  BranchIndex firstShunt = 0;  ///< shunt k is branch firstShunt + k
};

BridgeNetwork bridgeNetwork(const Bridge& bridge, const Instrument& instrument,
                            std::span<const ShuntBranch> shunts);

/// What the gauges of a bridge feel, per unit: strain in m/m, or for a transducer load over capacity.
using Stimulus = double;

/// Resistance of `arm` (from 0) under `stimulus`: measured value + factor x strain x share x nominal.
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

  /// Output of the present state. Fails when a node floats or the reference voltage is zero.
  Result<Output> solveOutput();
  /// d output / d stimulus in the state last solved.
  double outputSlope();
  /// Potential of a node in V per volt of excitation, in the state last solved.
  double potential(Node node) const { return m_solver.potential(static_cast<NodeIndex>(node)); }
  bool connected(Node node) const { return m_solver.connected(static_cast<NodeIndex>(node)); }

  /// The stimulus that, with all shunts open, gives `output`: the exact inverse of the whole network,
  /// leads and unequal arms included. Newton's method with the adjoint derivative; the output is a
  /// ratio of low-order polynomials of the strain, so a few steps reach the last digits.
  /// Leaves all shunts open and the stimulus at the answer. Fails when no stimulus gives that output.
  Result<Stimulus> stimulusFor(Output output);

  const BridgeNetwork& network() const { return m_network; }

 private:
  BridgeCircuit(const Bridge& bridge, BridgeNetwork network, Solver solver,
                std::span<const ShuntBranch> shunts);

  double admissibleStep(double step) const;

  Bridge m_bridge;
  BridgeNetwork m_network;
  Solver m_solver;
  std::vector<ShuntBranch> m_shunts;
  Stimulus m_stimulus = 0;
};

}  // namespace core
