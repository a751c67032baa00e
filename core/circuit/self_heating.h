// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

#include "core/units/quantity.h"

namespace core {

/// How well what the gauge is bonded to takes its heat away.
enum class HeatSink : std::uint8_t { Excellent, Good, Fair, Poor, VeryPoor };
inline constexpr std::size_t heatSinkCount = 5;

/// What is asked of the measurement, which decides how warm a gauge may become.
enum class HeatDemand : std::uint8_t {
  StaticHigh,
  StaticModerate,
  StaticLow,
  DynamicHigh,
  DynamicModerate,
  DynamicLow
};
inline constexpr std::size_t heatDemandCount = 6;

/// The grid of the gauges, as far as self-heating goes.
struct Grid {
  std::optional<Area> area = {};  ///< active grid, length x width; none: not known, nothing is said
  HeatSink heatSink = HeatSink::Good;
  HeatDemand demand = HeatDemand::StaticModerate;

  friend bool operator==(const Grid&, const Grid&) = default;
};

/// Usual power density of a grid, W/m^2, from and to.
struct PowerDensityRange {
  double least_W_per_m2 = 0;
  double most_W_per_m2 = 0;
};

/// Handbook values by heat sink and demand (Micro-Measurements Tech Note TN-502, table of power densities,
/// from memory; five of the thirty cells confirmed by a second source). A guide: the gauge's own data
/// sheet, and a test with the excitation turned up until the zero moves, decide.
PowerDensityRange usualPowerDensity(HeatSink heatSink, HeatDemand demand);

/// Greatest excitation of an equal-arm bridge of gauges `gauge` on constant voltage at a power density of
/// `density_W_per_m2`: 2 sqrt(R A P') (TN-502; the gauge sees half of the excitation).
Voltage excitationForDensity(Resistance gauge, Area grid, double density_W_per_m2);

/// Keys in files: "excellent" ... "very_poor"; "static_high" ... "dynamic_low".
std::string_view heatSinkKey(HeatSink heatSink);
std::optional<HeatSink> heatSinkFromKey(std::string_view key);
std::string_view heatDemandKey(HeatDemand demand);
std::optional<HeatDemand> heatDemandFromKey(std::string_view key);
/// For people, with an example: "excellent: heavy aluminium or copper part".
std::string_view heatSinkName(HeatSink heatSink);
/// "static, high accuracy".
std::string_view heatDemandName(HeatDemand demand);

}  // namespace core
