// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>

#include "core/levels/held.h"

namespace core {

/// `span` of the level of `piece` without the samples at its ends among which some are off by more than
/// `most`, one soon after the other, as a contact makes them that bounces. A twelfth of it at either end at
/// most.
SampleSpan withoutBounce(std::span<const double> values, const Cells& cells, const Piece& piece,
                         SampleSpan span, double most);

}  // namespace core
