// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <string_view>
#include <vector>

#include "core/assess/check.h"
#include "core/levels/levels.h"

namespace core {

/// The levels of a recording as readings of the steps of `setup`, in order: level k belongs to step k.
///
/// Level means must be in the channel's reading unit. Nothing is guessed: unless there are exactly as
/// many levels as steps this fails, and the error lists the levels found and the steps expected.
Result<std::vector<std::optional<Measured>>> readingsFromLevels(const Setup& setup,
                                                                std::span<const Level> levels);

/// Refuses a column whose unit is not the one that `instrument` reads in. Spellings count as the same
/// ("um/m", "µε"), other units do not ("mm/m"): nothing is converted. An empty unit says nothing and passes.
Result<void> requireReadingUnit(const Instrument& instrument, std::string_view columnUnit);

}  // namespace core
