// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

#include "core/units/quantity.h"

namespace core {

/// Preferred values of IEC 60063.
enum class ESeries : std::uint8_t { E3, E6, E12, E24, E48, E96, E192 };
inline constexpr std::size_t eSeriesCount = 7;

/// "E24".
std::string_view eSeriesName(ESeries series);
std::optional<ESeries> eSeriesFromName(std::string_view name);
/// The usual tolerance of parts of the series, a share: E96 0.01 (from memory, no single source).
double usualTolerance(ESeries series);
/// Significant digits of the series' values: 2 up to E24, 3 from E48 on.
int eSeriesDigits(ESeries series);
/// All values from `from` to `to`, both included when they are of the series, rising. Each is the double
/// nearest to the decimal value. Nothing below 1 µΩ or above 1 PΩ.
std::vector<Resistance> eSeriesValues(ESeries series, Resistance from, Resistance to);
/// The value of the series that differs least from `wanted` (above zero) in ohm; the lower one of two alike.
Resistance nearestOfSeries(ESeries series, Resistance wanted);

}  // namespace core
