// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/levels/deviations.h"
#include "core/levels/sample_span.h"

namespace core {

/// `pieces` without the settling and what is not sure to belong to the level at their ends, in cells: at
/// least some three fifths of each are kept.
std::vector<SampleSpan> trimmed(const Cells& cells, const std::vector<Piece>& pieces,
                                const Deviations& deviations, double leastStep);

}  // namespace core
