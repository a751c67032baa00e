// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>

#include "tests/diagnosis/truth.h"

namespace diagnosis {

/// A fault with all that it does, so that it can be put into more than one truth.
struct Planting {
  core::Fault fault;
  std::array<double, core::leadRoleCount> leads{};  ///< ohm that each lead has more than entered
  std::optional<double> highest, lowest;            ///< of clipping
};

/// Draws a fault of that kind over the range that such faults have, log-uniform; none when the channel cannot
/// have it. `channel` changes when the mistake is in what was entered (leads left out).
std::optional<Planting> drawFault(core::CauseKind kind, DrawnChannel& channel, Dice& dice);

/// `fault` as the program tells it; `zero` is what the instrument shows at zero.
Planting plantingOf(const core::Fault& fault, const DrawnChannel& channel, double zero);

/// Puts the fault into `truth`, which must not have one yet.
void plant(const Planting& planting, const DrawnChannel& channel, Truth& truth);

}  // namespace diagnosis
