// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/circuit/lead.h"

#include <cmath>
#include <numbers>

namespace core {
namespace {

constexpr double coefficient_per_K = 0.00393;  // of copper, related to 20 C

double resistanceAt20_ohm(const CopperWire& wire) {
  constexpr double resistivity_ohm_m = 1.7241e-8;
  return resistivity_ohm_m * wire.length.base() / wire.section.base();
}

}  // namespace

std::string_view leadName(LeadRole role) {
  constexpr std::array<std::string_view, leadRoleCount> names = {"P+",     "P-",     "S+",    "S-",
                                                                 "sense+", "sense-", "return"};
  return names[static_cast<std::size_t>(role)];
}

Area awgSection(int awg) {
  const double diameter_m = 0.127e-3 * std::pow(92.0, (36.0 - awg) / 39.0);
  return Area(std::numbers::pi / 4 * diameter_m * diameter_m);
}

Resistance resistanceOf(const CopperWire& wire) {
  return Resistance(resistanceAt20_ohm(wire) * (1 + coefficient_per_K * (wire.temperature.base() - 20)));
}

Resistance resistanceOf(const Lead& lead) {
  if (const auto* wire = std::get_if<CopperWire>(&lead)) return resistanceOf(*wire);
  return std::get<Resistance>(lead);
}

double resistancePerKelvin(const Lead& lead) {
  if (const auto* wire = std::get_if<CopperWire>(&lead)) return coefficient_per_K * resistanceAt20_ohm(*wire);
  return coefficient_per_K * std::get<Resistance>(lead).base();
}

}  // namespace core
