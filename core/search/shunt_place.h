// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/prediction.h"

namespace core {

/// Where a resistor is switched to for one polarity.
struct ShuntPlace {
  Node a = Node::Arm2Begin;
  Node b = Node::Arm2End;
  Resistance wires{0};    ///< in series with each resistor
  Resistance contact{0};  ///< of the closed switch, in series with each resistor

  friend bool operator==(const ShuntPlace&, const ShuntPlace&) = default;
};

/// Where a shunt usually goes: right over an arm, arm 2 for positive and arm 1 for negative levels, with
/// reversed gauges the other way round. In a quarter bridge these are the completion arm beside the gauge,
/// and the gauge.
ShuntPlace usualPlace(const Bridge& bridge, Polarity polarity);

/// Where the plan's first shunt that simulates levels of that sign is, with its wires and contact; the usual
/// place when it has none.
ShuntPlace placeInPlan(const Setup& setup, Polarity polarity);

/// The wanted resistance for one level at one place: the exact inverse of the network, wires and contact
/// taken off. `level` in the unit of `simulatedUnitText`, with its sign. Fails when no resistance gives that
/// level, and says the nearest that one can.
Result<Resistance> resistanceFor(const Setup& setup, const ShuntPlace& place, double level);

/// The level as people read it: "1000 µm/m", six significant digits.
std::string levelText(const Bridge& bridge, double level);

/// The stimulus that `simulatedInUnit` shows as `level`.
Stimulus stimulusOf(const Bridge& bridge, double level);

}  // namespace core
