// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

#include "core/circuit/bridge.h"
#include "core/units/result.h"

namespace core {

/// Refuses a column whose unit is not the one that `instrument` reads in. Spellings count as the same
/// ("um/m", "µε"), other units do not ("mm/m"): nothing is converted. An empty unit says nothing and passes.
Result<void> requireReadingUnit(const Instrument& instrument, std::string_view columnUnit);

/// The greatest magnitude that is taken for a reading that is typed, in whatever unit: displays have six to
/// nine digits, and a terapascal in pascals is 1e12. Beyond, somebody has mistyped. From memory, no source.
inline constexpr Reading greatestReading{1e12};
/// Fails on a reading beyond that.
Result<void> checkReading(const Instrument& instrument, Reading reading);

}  // namespace core
