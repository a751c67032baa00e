// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/levels/deviations.h"

namespace core {

/// What is left of a step some time after it, in cells, as all steps of the recording together show it: they
/// pass the same filter.
struct Settling {
  double last = 0;  ///< the latest time at which something is left for sure; 0: nothing ever
  double left = 0;  ///< share of the step left then
  double time = 0;  ///< time constant from there on

  /// When less than `share` of a step is left.
  double timeTo(double share) const;
};

Settling settlingOf(const Cells& cells, const std::vector<Piece>& pieces, const Deviations& deviations);

/// `pieces` without those that are only a part of a step that takes its time: short beside the levels before
/// and after them, and at the same time after other steps as much of those is still to come.
std::vector<Piece> withoutFragments(const Cells& cells, const std::vector<Piece>& pieces);

}  // namespace core
