// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string_view>

#include "core/units/date.h"
#include "core/units/result.h"

namespace core {

/// The day that somebody typed: "2026-11-25", or as the present language writes days ("25.11.2026",
/// "5.1.2027"). None when the text is empty. Fails on what is no day of the calendar, and says how to write
/// one.
Result<std::optional<Date>> dayFromWords(std::string_view text);

}  // namespace core
