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
  Current input{0};                           ///< through the instrument's input, from S+ to S-
};

/// The flow with the shunts of `step` closed; `step` past the end: all shunts open. A lead without resistance
/// has the current that its node's sum leaves over; where several such meet in a loop it is none.
/// Fails as the step's prediction does.
Result<Flow> flowAt(const Setup& setup, std::size_t step);

}  // namespace core
