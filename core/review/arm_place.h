// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <optional>

#include "core/plan/setup.h"

// Where a shunt lies on the bridge.

namespace core {

/// The arm that a shunt is meant for: the one between the two corners that its ends belong to.
struct ArmPlace {
  std::size_t arm = 0;     ///< from 0
  bool atOwnEnds = false;  ///< right across the arm; else leads lie between
  bool reversed = false;   ///< its end a is at the arm's end
};

/// None for a shunt across a lead, within one corner, or over the excitation or the output. A terminal
/// belongs to its corner, a sense terminal to that of its excitation.
std::optional<ArmPlace> placeOf(const Bridge& bridge, const Shunt& shunt);

/// The arm that shares the signal corner with `arm`: a shunt there has the other polarity.
constexpr std::size_t neighbourOf(std::size_t arm) { return arm ^ 1; }

/// `shunt` moved to the ends of `arm`, as it is otherwise.
Shunt atEndsOf(Shunt shunt, std::size_t arm, bool reversed);

/// `shunt` moved to the neighbouring arm: at a gauge in the way it is fixed now (terminals stay terminals),
/// at an arm inside the instrument right across it. None without a place.
std::optional<Shunt> onNeighbour(const Bridge& bridge, const Shunt& shunt);

}  // namespace core
