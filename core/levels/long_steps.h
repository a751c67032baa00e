// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/levels/edges.h"

namespace core {

/// `edges` and those that only the whole stretches on either side tell: in a recording of few cells the noise
/// over windows as long as that cannot be known from contrasts. It is taken from what is left beside the
/// step, as red as its lag-one correlation may be. Longer recordings have windows enough: theirs stay as they
/// are.
std::vector<Edge> withLongSteps(const Cells& cells, const std::vector<Scale>& scales, std::vector<Edge> edges,
                                double leastStep);

}  // namespace core
