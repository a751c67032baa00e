// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <array>
#include <cmath>

#include "core/plan/heating.h"
#include "core/review/reviewed_plan.h"
#include "core/units/language.h"
#include "core/units/notation.h"
#include "core/units/text.h"

namespace core {
namespace {

// Common practice, no source: a precision resistor moves with its own heat long before it is in danger.
constexpr double quietShare = 0.1;   ///< of the rating
constexpr double loadedShare = 0.5;  ///< of the rating; what an overloaded one is brought back to
constexpr double usual_W = 0.1;      ///< what any small resistor stands, where no rating is known

/// Settings that supplies offer, falling: V, or mA of a current source.
constexpr std::array settings = {10.0, 7.5, 5.0, 4.0, 3.0, 2.5, 2.0, 1.5, 1.0, 0.75, 0.5, 0.25, 0.1};

std::string wattsText(double watts) {
  return watts < 1 ? shown(formatNumber(1e3 * watts, 3)) + " mW" : shown(formatNumber(watts, 3)) + " W";
}

/// Brings the excitation down to `share` of what it is, or a little less. None below the least setting.
std::vector<Mend> lowerExcitation(const Instrument& instrument, double share) {
  const bool current = instrument.current.has_value();
  const double now = current ? 1e3 * instrument.current->supplied.base() : instrument.excitation.base();
  const auto setting =
      std::find_if(settings.begin(), settings.end(), [&](double one) { return one <= share * now; });
  if (setting == settings.end()) return {};
  return {{say("Lower the excitation to {1}", {shown(formatNumber(*setting, 3)) + (current ? " mA" : " V")}),
           [value = *setting](Channel channel) {
             Instrument& changed = channel.setup.instrument;
             if (changed.current)
               changed.current->supplied = Current(1e-3 * value);
             else
               changed.excitation = Voltage(value);
             return channel;
           }}};
}

/// The greatest heat in one resistor, and where.
struct ShuntHeat {
  std::size_t shunt = 0;  ///< of those that are made of it
  double power_W = 0;
  std::size_t step = 0;
};

/// Of every resistor that the plan closes, where it is greatest.
std::vector<ShuntHeat> shuntHeats(const ReviewedPlan& plan, BridgeCircuit& circuit) {
  const Setup& setup = plan.setup();
  std::vector<ShuntHeat> heats;
  for (const ReviewedLevel& level : plan.levels) {
    if (!closeShunts(circuit, setup, level.step) || !circuit.solveOutput()) continue;
    for (const std::size_t k : level.closed) {
      const double power_W = shuntPower_W(circuit, setup, k);
      const auto same = std::find_if(heats.begin(), heats.end(), [&](const ShuntHeat& heat) {
        return resistorName(setup.shunts[heat.shunt]) == resistorName(setup.shunts[k]);
      });
      if (same == heats.end())
        heats.push_back({k, power_W, level.step});
      else if (power_W > same->power_W)
        *same = {k, power_W, level.step};
    }
  }
  return heats;
}

void addShuntHeat(const ReviewedPlan& plan, std::vector<Finding>& findings, const ShuntHeat& heat) {
  const auto rating = ratingOf(plan.setup(), heat.shunt);
  const double most_W = rating ? quietShare * rating->base() : usual_W;
  if (!(heat.power_W > most_W)) return;
  const bool over = rating && heat.power_W > rating->base();
  const Severity severity = over ? Severity::Fault : rating ? Severity::Note : Severity::Warning;
  const std::string power = wattsText(heat.power_W), name = inQuotes(plan.setup().shunts[heat.shunt].name);
  const std::string what =
      rating
          ? say("{1} turn into heat in {2}, rated {3}.", {power, name, wattsText(rating->base())})
          : say("{1} turn into heat in {2}; its rating is not known, 100 mW are usual for small resistors.",
                {power, name});
  const std::string why = over ? say("It changes for good, or burns.")
                               : say("A precision resistor that is warm has another value.");
  const double allowed_W = over ? loadedShare * rating->base() : most_W;
  findings.push_back({FindingKind::ShuntPower, severity, heat.step, heat.shunt, what, why,
                      lowerExcitation(plan.setup().instrument, std::sqrt(allowed_W / heat.power_W))});
}

void findGridHeat(const ReviewedPlan& plan, std::vector<Finding>& findings) {
  const Grid& grid = plan.setup().bridge.gauge.grid;
  if (!grid.area) return;
  const auto heats = armHeats(plan.setup());
  if (!heats || heats->empty()) return;
  const ArmHeat& warmest = *std::max_element(
      heats->begin(), heats->end(), [](const ArmHeat& a, const ArmHeat& b) { return a.power_W < b.power_W; });
  if (!warmest.density_W_per_m2) return;
  const double now = *warmest.density_W_per_m2;
  const double most = usualPowerDensity(grid.heatSink, grid.demand).most_W_per_m2;
  if (!(now > most)) return;
  findings.push_back(
      {FindingKind::PowerDensity,
       Severity::Warning,
       {},
       {},
       say("The grid in arm {1} turns {2} into heat, {3} kW/m²; the usual range ends at {4} kW/m² (heat sink "
           "{5}; {6}).",
           {std::to_string(warmest.arm + 1), wattsText(warmest.power_W), shown(formatNumber(now / 1e3, 3)),
            shown(formatNumber(most / 1e3, 3)), heatSinkName(grid.heatSink), heatDemandName(grid.demand)}),
       say("A gauge that is too warm drifts. The range is a handbook's: its data sheet decides."),
       lowerExcitation(plan.setup().instrument, std::sqrt(most / now))});
}

}  // namespace

void findHeat(const ReviewedPlan& plan, std::vector<Finding>& findings) {
  const Setup& setup = plan.setup();
  if (!plan.levels.empty()) {
    auto circuit = BridgeCircuit::make(setup.bridge, setup.instrument, shuntBranches(setup));
    if (circuit) {
      for (const ShuntHeat& heat : shuntHeats(plan, *circuit)) addShuntHeat(plan, findings, heat);
    }
  }
  findGridHeat(plan, findings);
}

}  // namespace core
