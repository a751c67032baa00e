// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

#include "core/circuit/bridge.h"
#include "core/units/result.h"

namespace core {

/// Refuses a column whose unit is not the one that `instrument` reads in. Spellings count as the same
/// ("um/m", "µε"), other units do not ("mm/m"): nothing is converted. An empty unit says nothing and passes.
Result<void> requireReadingUnit(const Instrument& instrument, std::string_view columnUnit);

}  // namespace core
