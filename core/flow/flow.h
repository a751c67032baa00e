// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <vector>

#include "core/plan/setup.h"

// What flows in the bridge at one step of the plan, worked out from the whole network.

namespace core {

/// Currents and potentials. Potentials are against the minus side of the excitation.
struct Flow {
  std::vector<std::optional<Voltage>> potentials;  ///< a node of core::Node each; none: nothing connects it
  Voltage excitation{0};                           ///< true voltage between the source's two sides
  Current source{0};                               ///< out of the source's plus side
  std::array<Current, 4> arms{};                   ///< from the arm's begin to its end; of its first piece
  std::array<std::optional<Current>, leadRoleCount>
      leads{};                  ///< from the instrument to the article; none: no such lead, or broken
  std::vector<Current> shunts;  ///< from end a to end b; zero when open
  std::array<Current, 4> leaksAcross{};       ///< from the arm's begin to its end
  std::array<Current, 4> leaksToStructure{};  ///< out of the grid
  Current structure{0};  ///< out of the structure to the side of the excitation that it is connected to
  /// Parallel: from P+ to the wiper, from the wiper to P-, from the wiper to S+. Series: in arm 3, in arm 4,
  /// none; both in their arm's direction.
  std::array<Current, 3> balance{};
  Current input{0};  ///< through the instrument's input, from S+ to S-
};

/// The flow with the shunts of `step` closed; `step` past the end: all shunts open. Fails as the step's
/// prediction does. A lead without resistance has the current that its node's sum leaves over.
Result<Flow> flowAt(const Setup& setup, std::size_t step);

/// The same of a circuit of `setup` that was last solved in that state.
Flow flowOf(const BridgeCircuit& solved, const Setup& setup, std::size_t step);

/// The true voltage between the source's two sides, of a circuit of `instrument` as last solved.
Voltage excitationOf(const BridgeCircuit& solved, const Instrument& instrument);

/// The current of every branch of the network, from its a to its b, at that true excitation; zero in an open
/// shunt.
///
/// Branches outside a spanning tree of least resistance have the current that their voltage drives; those of
/// the tree, all that have no resistance among them, have what is left over by the sum at each node. So a
/// lead of zero ohm has its current, no digits are lost over a short lead, and a wire that ends at nothing
/// has exactly none. In a loop without any resistance nothing is decided by the network; there the branch
/// that comes last carries none.
std::vector<Current> branchCurrents(const BridgeCircuit& solved, const Setup& setup, std::size_t step,
                                    Voltage excitation);

}  // namespace core
