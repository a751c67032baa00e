// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/levels/edges.h"

namespace core {

/// A recording and its edges.
struct EdgedCells {
  Cells cells;
  std::vector<Edge> edges;
};

/// `edged` without what leaves a level and comes back to it in less than `shortest` cells, as bursts of
/// interference do: such cells are replaced by the mean of those beside them, their edges taken away. What
/// happens soon after a step, as bounce does, stays.
EdgedCells withoutExcursions(EdgedCells edged, const std::vector<Scale>& scales, std::size_t shortest,
                             double leastStep);

}  // namespace core
