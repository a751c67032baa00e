// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/heating.h"

#include <algorithm>
#include <cmath>

#include "core/plan/prediction.h"
#include "core/units/language.h"
#include "core/units/notation.h"

namespace core {
namespace {

std::string kilowatts(double density_W_per_m2) { return shown(formatNumber(density_W_per_m2 / 1e3, 3)); }

/// "2.4 V" or "9.1 mA": what would reach `density` where `present` gives `now`.
std::string excitationFor(const Instrument& instrument, double density, double now) {
  const double factor = std::sqrt(density / now);
  if (!instrument.current) return shown(formatNumber(factor * instrument.excitation.base(), 3)) + " V";
  return shown(formatNumber(1e3 * factor * instrument.current->supplied.base(), 3)) + " mA";
}

}  // namespace

Result<std::vector<ArmHeat>> armHeats(const Setup& setup) {
  std::vector<ArmHeat> heats;
  if (isTransducer(setup.bridge)) return heats;
  auto circuit = BridgeCircuit::make(setup.bridge, setup.instrument, shuntBranches(setup));
  if (!circuit) return circuit.error();
  if (auto solved = circuit->solveOutput(); !solved) return solved.error();
  const auto& current = setup.instrument.current;
  const double excitation_V =
      current ? current->supplied.base() / circuit->inputConductance() : setup.instrument.excitation.base();
  std::array<double, 4> power_W{};
  for (const ArmPiece& piece : circuit->network().pieces) {
    const double across_V = excitation_V * circuit->voltage(piece.branch);
    power_W[piece.arm] += across_V * across_V / (piece.share * setup.bridge.arms[piece.arm].base());
  }
  for (const std::size_t arm : {0, 1, 2, 3}) {
    if (!templateOf(setup.bridge.type).shares[arm].active()) continue;
    ArmHeat& heat = heats.emplace_back(ArmHeat{arm, power_W[arm], {}});
    const auto& area = setup.bridge.gauge.grid.area;
    if (area && area->base() > 0) heat.density_W_per_m2 = heat.power_W / area->base();
  }
  return heats;
}

std::optional<HeatAdvice> heatAdvice(const Setup& setup) {
  const auto heats = armHeats(setup);
  if (!heats || heats->empty()) return std::nullopt;
  const ArmHeat& warmest = *std::max_element(
      heats->begin(), heats->end(), [](const ArmHeat& a, const ArmHeat& b) { return a.power_W < b.power_W; });
  if (!warmest.density_W_per_m2) return std::nullopt;
  const Grid& grid = setup.bridge.gauge.grid;
  const auto [least, most] = usualPowerDensity(grid.heatSink, grid.demand);
  const double now = *warmest.density_W_per_m2;
  HeatAdvice advice;
  advice.verdict = now > most ? HeatVerdict::Above : now < least ? HeatVerdict::Below : HeatVerdict::Within;
  const std::string_view where = advice.verdict == HeatVerdict::Above   ? sayName("above")
                                 : advice.verdict == HeatVerdict::Below ? sayName("below")
                                                                        : sayName("within");
  advice.text =
      say("Arm {1} turns {2} mW into heat, {3} kW/m², {4} the usual {5} to {6} kW/m² (heat sink {7}; {8}). "
          "{9} would reach the upper end. From a handbook: check your gauge's data sheet.",
          {std::to_string(warmest.arm + 1), shown(formatNumber(1e3 * warmest.power_W, 3)), kilowatts(now),
           where, kilowatts(least), kilowatts(most), heatSinkName(grid.heatSink), heatDemandName(grid.demand),
           excitationFor(setup.instrument, most, now)});
  return advice;
}

}  // namespace core
