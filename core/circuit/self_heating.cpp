// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/circuit/self_heating.h"

#include <array>
#include <cmath>

#include "core/units/key_names.h"
#include "core/units/language.h"

namespace core {
namespace {

constexpr KeyNames<HeatSink, heatSinkCount> sinkKeys{{"excellent", "good", "fair", "poor", "very_poor"}};
constexpr KeyNames<HeatDemand, heatDemandCount> demandKeys{
    {"static_high", "static_moderate", "static_low", "dynamic_high", "dynamic_moderate", "dynamic_low"}};
constexpr KeyNames<HeatSink, heatSinkCount> sinkNames{
    {sayLater("excellent: heavy aluminium or copper part"), sayLater("good: thick steel"),
     sayLater("fair: thin stainless steel or titanium"),
     sayLater("poor: filled plastic such as glass fibre in epoxy"),
     sayLater("very poor: unfilled plastic such as acrylic")}};
constexpr KeyNames<HeatDemand, heatDemandCount> demandNames{
    {sayLater("static, high accuracy"), sayLater("static, moderate accuracy"),
     sayLater("static, low accuracy"), sayLater("dynamic, high accuracy"),
     sayLater("dynamic, moderate accuracy"), sayLater("dynamic, low accuracy")}};

// kW/m^2, rows as HeatSink, columns as HeatDemand.
constexpr std::array<std::array<PowerDensityRange, heatDemandCount>, heatSinkCount> densities_kW_per_m2 = {{
    {{{3.1, 7.75}, {7.75, 15.5}, {15.5, 31}, {7.75, 15.5}, {15.5, 31}, {31, 77.5}}},
    {{{1.55, 3.1}, {3.1, 7.75}, {7.75, 15.5}, {7.75, 15.5}, {15.5, 31}, {31, 77.5}}},
    {{{0.775, 1.55}, {1.55, 3.1}, {3.1, 7.75}, {3.1, 7.75}, {7.75, 15.5}, {15.5, 31}}},
    {{{0.155, 0.31}, {0.31, 0.775}, {0.775, 1.55}, {0.775, 1.55}, {1.55, 3.1}, {3.1, 7.75}}},
    {{{0.0155, 0.031}, {0.031, 0.0775}, {0.0775, 0.155}, {0.0155, 0.0775}, {0.0775, 0.31}, {0.31, 0.775}}},
}};

}  // namespace

PowerDensityRange usualPowerDensity(HeatSink heatSink, HeatDemand demand) {
  const PowerDensityRange kW =
      densities_kW_per_m2[static_cast<std::size_t>(heatSink)][static_cast<std::size_t>(demand)];
  return {1e3 * kW.least_W_per_m2, 1e3 * kW.most_W_per_m2};
}

Voltage excitationForDensity(Resistance gauge, Area grid, double density_W_per_m2) {
  return Voltage(2 * std::sqrt(gauge.base() * grid.base() * density_W_per_m2));
}

std::string_view heatSinkKey(HeatSink heatSink) { return sinkKeys.of(heatSink); }
std::optional<HeatSink> heatSinkFromKey(std::string_view key) { return sinkKeys.find(key); }
std::string_view heatDemandKey(HeatDemand demand) { return demandKeys.of(demand); }
std::optional<HeatDemand> heatDemandFromKey(std::string_view key) { return demandKeys.find(key); }
std::string_view heatSinkName(HeatSink heatSink) { return sayName(sinkNames.of(heatSink)); }
std::string_view heatDemandName(HeatDemand demand) { return sayName(demandNames.of(demand)); }

}  // namespace core
