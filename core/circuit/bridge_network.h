// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <string>
#include <vector>

#include "core/circuit/bridge.h"
#include "core/circuit/input.h"
#include "core/circuit/network.h"

namespace core {

/// A resistor and the two nodes it is switched to.
struct ShuntBranch {
  std::string name;
  Node a = Node::PPlus;
  Node b = Node::SMinus;
  Resistance resistance;  ///< with its own wires and the closed switch
};

/// A branch of an arm; an arm from whose grid a leak goes to the structure is two of them in series.
struct ArmPiece {
  std::size_t arm = 0;
  BranchIndex branch = 0;
  double share = 1;  ///< of the arm's resistance
};

/// How a branch's resistance follows an input of the prediction.
struct Dependence {
  Input input;
  BranchIndex branch = 0;
  double ohmPerUnit = 1;  ///< d resistance / d input, in ohm per base unit of the input
};

/// A bridge as a network of resistors. Nodes are those of core::Node in its order, then the places that
/// leaks and a balance network add. Branches are the four arms (the first piece of each), the leads in use
/// that are not broken, and joins, the instrument's input, leaks, balance, then the shunts in their order.
struct BridgeNetwork {
  Network network;
  Port excitation;             ///< P+ and P- at the instrument, or the other way round
  Port output;                 ///< S+ and S- at the instrument, or the other way round
  Port reference;              ///< sense pair with six wires, else the excitation
  BranchIndex firstShunt = 0;  ///< shunt k is branch firstShunt + k
  std::vector<ArmPiece> pieces;
  std::vector<Dependence> dependences;  ///< of all branches but shunts
};

BridgeNetwork bridgeNetwork(const Bridge& bridge, const Instrument& instrument,
                            std::span<const ShuntBranch> shunts);

}  // namespace core
