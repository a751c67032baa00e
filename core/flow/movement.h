// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/flow/flow.h"
#include "core/plan/prediction.h"

// What a step moves: which signal terminal rises or falls, and why.

namespace core {

/// One half bridge: the two arms that meet at a signal corner.
struct HalfBridge {
  Node signal = Node::SMinus;  ///< SMinus: arms 1 and 2; SPlus: arms 3 and 4
  /// Potential of the instrument's terminal against the source's minus side with all shunts open, V per V.
  double before = 0;
  double after = 0;  ///< the same at the step
};

/// A voltage with all shunts open and at the step.
struct MovedVoltage {
  Voltage before{0};
  Voltage after{0};
};

/// What a step does against all shunts open.
struct Movement {
  std::array<HalfBridge, 2> halves{};  ///< S- first
  MovedVoltage excitation;             ///< between the source's two sides
  MovedVoltage bridge;                 ///< of that, what is left at the bridge: arm 1's begin to arm 2's end
  /// Resistance that each arm acts with at the step over that without shunts: the current that arm and leak
  /// take, over that with the currents of the shunts between its two corners; 1 where nothing changes.
  std::array<double, 4> armRatio{1, 1, 1, 1};
  Output change{0};
  Polarity polarity = Polarity::None;
  std::optional<Stimulus> simulated;  ///< as in Prediction; none where no strain gives the output
};

/// Fails as the step's prediction does. `step` past the end: nothing moves.
Result<Movement> movementAt(const Setup& setup, std::size_t step);

/// Flow and movement from one preparation of the network and two solutions.
struct FlowAndMovement {
  Flow flow;
  Movement movement;  ///< without what is simulated
};
Result<FlowAndMovement> flowAndMovementAt(const Setup& setup, std::size_t step);

/// Why the output goes where it goes, in one sentence worked out from the solved network: "330k lowers arm 2
/// from 350 Ω to 349.63 Ω, so S- falls by 1.32 mV while S+ stays: the output S+ - S- rises by 0.264 mV/V,
/// positive, which simulates tension of gauge 1, 528 µm/m." Says so when nothing moves, both sides move, or a
/// shunt lies over leads too. Potentials are against the source's minus side.
std::string sentenceOf(const Setup& setup, std::size_t step, const Movement& movement);

}  // namespace core
