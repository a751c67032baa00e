// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <string>
#include <vector>

#include "core/plan/prediction.h"

// What a step moves: which signal terminal rises or falls, and why.

namespace core {

/// One half bridge: the two arms that meet at a signal corner.
struct HalfBridge {
  Node signal = Node::SMinus;  ///< SMinus: arms 1 and 2; SPlus: arms 3 and 4
  double before = 0;           ///< potential of the instrument's terminal with all shunts open, V per V
  double after = 0;            ///< the same at the step
};

/// What a step does against all shunts open.
struct Movement {
  std::array<HalfBridge, 2> halves{};  ///< S- first
  /// Resistance that each arm acts with at the step over that without shunts, as the rest of the network
  /// sees it; 1 where nothing changes.
  std::array<double, 4> armRatio{1, 1, 1, 1};
  Output change{0};
  Polarity polarity = Polarity::None;
};

/// Fails as the step's prediction does. `step` past the end: nothing moves.
Result<Movement> movementAt(const Setup& setup, std::size_t step);

/// Why the output goes where it goes, in one sentence worked out from the solved network: "330k lowers arm 2
/// from 350 ohm to 349.63 ohm, so S- rises by 1.32 mV while S+ stays: the output falls by 0.264 mV/V,
/// negative." Says so when nothing moves, both sides move, or a shunt lies over leads too.
std::string sentenceOf(const Setup& setup, std::size_t step, const Movement& movement);

}  // namespace core
