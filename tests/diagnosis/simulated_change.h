// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "core/document/document.h"
#include "tests/diagnosis/simulated_check.h"

namespace diagnosis {

/// A channel with two checks between which one known thing changed, or nothing. All lasting parts have the
/// same errors in both; noise, and what differs from day to day, is drawn anew.
struct SimulatedChange {
  core::Channel channel;
  std::optional<core::Fault> planted;
  DrawnChannel drawn;
};

/// Change number `number` of the set that `seed` names, of a fault with an effect of at least `leastEffect`
/// on a single check (on the difference of two, that is more or less). In every other pair the zero is left
/// alone between the checks, else it is taken anew.
SimulatedChange changeOf(std::uint64_t seed, std::uint64_t number, core::CauseKind kind);
SimulatedChange unchanged(std::uint64_t seed, std::uint64_t number);

/// What became of one pair.
struct ChangeOutcome {
  bool declared = false;
  bool first = false, firstTwo = false;  ///< planted kind, what is told to be tied with the first counted
};
ChangeOutcome outcomeOf(const SimulatedChange& change);

}  // namespace diagnosis
