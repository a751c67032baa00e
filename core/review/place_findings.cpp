// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/circuit/hookup.h"
#include "core/document/edits.h"
#include "core/review/arm_place.h"
#include "core/review/reviewed_plan.h"
#include "core/units/language.h"
#include "core/units/notation.h"

namespace core {
namespace {

constexpr double worthSaying = 0.1;  ///< of the limit; common practice, no source
constexpr double mostUnsaid = 1e-3;  ///< errors above this are said however wide the limit is

/// Times the limit. The prediction reckons with the leads; a resistance of them that is off by a fifth of
/// itself then takes the whole limit. Common practice, no source.
constexpr double muchThroughLeads = 5;

/// From here on an error in a simulated value is worth saying.
double leastError(const Limits& limits) { return std::min(worthSaying * limits.relative, mostUnsaid); }

/// Shunts that are switched to the same two places.
struct PlaceGroup {
  ArmPlace place;
  std::size_t greatest = 0;  ///< the shunt of least resistance: the greatest step
  std::vector<std::size_t> shunts;
};

bool sharesEnds(const Bridge& bridge, const Shunt& a, const Shunt& b) {
  const auto ends = [&](const Shunt& shunt) {
    return std::minmax({pointOf(bridge, shunt.a), pointOf(bridge, shunt.b)});
  };
  return ends(a) == ends(b);
}

/// Those in use that are meant for an arm and do not lie at its own ends.
std::vector<PlaceGroup> misplaced(const Setup& setup) {
  std::vector<PlaceGroup> groups;
  for (std::size_t k = 0; k < setup.shunts.size(); ++k) {
    const auto place = placeOf(setup.bridge, setup.shunts[k]);
    if (!place || place->atOwnEnds || !isUsed(setup, k)) continue;
    const auto same = std::find_if(groups.begin(), groups.end(), [&](const PlaceGroup& group) {
      return sharesEnds(setup.bridge, setup.shunts[group.greatest], setup.shunts[k]);
    });
    if (same == groups.end()) {
      groups.push_back({*place, k, {k}});
      continue;
    }
    same->shunts.push_back(k);
    if (setup.shunts[k].resistance < setup.shunts[same->greatest].resistance) same->greatest = k;
  }
  return groups;
}

/// A shunt closed alone.
struct ShuntEffect {
  Output output;  ///< absolute
  Stimulus simulated = 0;
};

std::optional<ShuntEffect> effectOf(BridgeCircuit& circuit, std::size_t shunt) {
  circuit.setStimulus(0);
  circuit.openAll();
  if (!circuit.close(shunt)) return std::nullopt;
  const auto output = circuit.solveOutput();
  if (!output) return std::nullopt;
  const auto simulated = circuit.stimulusFor(*output);
  if (!simulated) return std::nullopt;
  return ShuntEffect{*output, *simulated};
}

bool isWithinRange(const ReviewedPlan& plan, Output output) {
  const auto& range = plan.setup().instrument.range;
  if (!range) return true;
  const Output change = output - *plan.evaluation.prediction.zero;
  return std::abs(output.base()) <= range->base() && std::abs(change.base()) <= range->base();
}

std::vector<Mend> toOwnEnds(const PlaceGroup& group) {
  const std::string what = group.shunts.size() == 1 ? say("it") : say("them");
  return {{say("Move {1} to the ends of arm {2}", {what, std::to_string(group.place.arm + 1)}),
           [group](Channel channel) {
             for (const std::size_t k : group.shunts) {
               const auto place = placeOf(channel.setup.bridge, channel.setup.shunts[k]);
               if (!place) continue;
               const Shunt moved = atEndsOf(channel.setup.shunts[k], place->arm, place->reversed);
               channel = withShuntAt(std::move(channel), k, moved.a, moved.b);
             }
             return channel;
           }}};
}

void addThroughLeads(const ReviewedPlan& plan, std::vector<Finding>& findings, const PlaceGroup& group,
                     double error, std::vector<Mend> mends) {
  const Setup& setup = plan.setup();
  if (!(std::abs(error) >= leastError(setup.limits))) return;
  const std::string arm = say("arm {1}", {std::to_string(group.place.arm + 1)});
  const auto step = std::find_if(setup.sequence.begin(), setup.sequence.end(), [&](const Step& one) {
    return std::find(one.closed.begin(), one.closed.end(), group.greatest) != one.closed.end();
  });
  const std::string shunt = shuntText(setup, group.greatest), share = percentText(std::abs(error));
  const std::string than = say(error > 0 ? sayLater("{1} more") : sayLater("{1} less"), {share});
  std::string what =
      group.shunts.size() == 1
          ? say("{1} does not lie right across {2}: leads between make it simulate {3} than at the ends of "
                "{2}.",
                {shunt, arm, than})
          : sayCount(
                group.shunts.size() - 1,
                "{1} and {n} other do not lie right across {2}: leads between make it simulate {3} than at "
                "the ends of {2}.",
                "{1} and {n} others do not lie right across {2}: leads between make it simulate {3} than at "
                "the ends of {2}.",
                {shunt, arm, than});
  what.front() = 'S';
  findings.push_back(
      {FindingKind::ShuntThroughLeads,
       std::abs(error) > muchThroughLeads * setup.limits.relative ? Severity::Warning : Severity::Note,
       static_cast<std::size_t>(step - setup.sequence.begin()), group.greatest, what,
       say("The prediction reckons with the leads, so that it is as good as their resistances; a formula "
           "without leads is off by this."),
       std::move(mends)});
}

// The shortcut.

/// What the small-strain shortcut says that a step simulates; none when it says nothing of such a step.
std::optional<Strain> shortcutOf(const Setup& setup, const ReviewedLevel& level, double bridgeFactor) {
  if (level.closed.size() != 1) return std::nullopt;
  const Shunt& shunt = setup.shunts[level.closed.front()];
  if (!placeOf(setup.bridge, shunt)) return std::nullopt;
  const double nominal = setup.bridge.gauge.nominal.base();
  const double strain =
      nominal / (gaugeFactorOf(setup.bridge.gauge) * bridgeFactor * (nominal + resistanceOf(shunt).base()));
  return Strain(level.prediction.simulated < 0 ? -strain : strain);
}

/// The step that the shortcut misses most because of unequal arms or N.
struct WorstShortcut {
  std::size_t step = 0;
  double error = 0;   ///< (shortcut - exact) / exact
  double caused = 0;  ///< the part of it that unequal arms and N make
};

/// The part that comes from arms and N is found by solving the same bridge with nominal arms.
std::optional<WorstShortcut> worstShortcut(const ReviewedPlan& plan, double bridgeFactor) {
  const Setup& setup = plan.setup();
  Bridge nominal = setup.bridge;
  nominal.arms.fill(setup.bridge.gauge.nominal);
  auto circuit = BridgeCircuit::make(nominal, setup.instrument, shuntBranches(setup));
  if (!circuit) return std::nullopt;
  const double ratioOfFactors =
      templateOf(setup.bridge.type).bridgeFactor(setup.bridge.gauge.poissonRatio) / bridgeFactor;
  std::optional<WorstShortcut> worst;
  for (const ReviewedLevel& level : plan.levels) {
    const auto shortcut = shortcutOf(setup, level, bridgeFactor);
    const double exact = level.prediction.simulated;
    if (!shortcut || exact == 0) continue;
    const auto ofNominal = effectOf(*circuit, level.closed.front());
    if (!ofNominal) continue;
    const double caused = ratioOfFactors * ofNominal->simulated / exact - 1;
    if (!worst || std::abs(caused) > std::abs(worst->caused))
      worst = WorstShortcut{level.step, shortcut->base() / exact - 1, caused};
  }
  return worst;
}

/// Where arms and N make a small part of the error, what makes the rest is a finding of its own.
bool isWorthSaying(const Setup& setup, const std::optional<WorstShortcut>& worst) {
  const double least = leastError(setup.limits);
  return worst && std::abs(worst->caused) > least && std::abs(worst->error) > least &&
         3 * std::abs(worst->caused) > std::abs(worst->error);
}

/// N as set, where the readings follow it.
double bridgeFactorOf(const Setup& setup) {
  if (setup.instrument.unit == ReadingUnit::MicrometrePerMetre) return setup.instrument.bridgeFactor;
  return templateOf(setup.bridge.type).bridgeFactor(setup.bridge.gauge.poissonRatio);
}

bool mayMatter(const Setup& setup, double usualFactor, double factor) {
  // An arm that is off by d shows with about twice that in the simulated value; four times leaves no doubt.
  double off = std::abs(factor / usualFactor - 1);
  for (const Resistance arm : setup.bridge.arms)
    off = std::max(off, 4 * std::abs(arm / setup.bridge.gauge.nominal - 1));
  return off > leastError(setup.limits);
}

}  // namespace

void findShuntsThroughLeads(const ReviewedPlan& plan, std::vector<Finding>& findings) {
  const Setup& setup = plan.setup();
  // Which arm a shunt is meant for cannot be told where leads are exchanged, and what a broken or touching
  // lead does is a fault of its own.
  if (!areLeadsInOrder(setup.bridge)) return;
  const auto groups = misplaced(setup);
  if (groups.empty()) return;
  auto branches = shuntBranches(setup);
  const std::size_t firstMoved = branches.size();
  for (const PlaceGroup& group : groups) {
    const Shunt moved = atEndsOf(setup.shunts[group.greatest], group.place.arm, group.place.reversed);
    branches.push_back({moved.name, moved.a, moved.b, resistanceOf(moved)});
  }
  auto circuit = BridgeCircuit::make(setup.bridge, setup.instrument, branches);
  if (!circuit) return;
  for (std::size_t k = 0; k < groups.size(); ++k) {
    const auto present = effectOf(*circuit, groups[k].greatest), own = effectOf(*circuit, firstMoved + k);
    if (!present || !own || own->simulated == 0) continue;
    const bool fits = isWithinRange(plan, own->output) || !isWithinRange(plan, present->output);
    addThroughLeads(plan, findings, groups[k], present->simulated / own->simulated - 1,
                    fits ? toOwnEnds(groups[k]) : std::vector<Mend>{});
  }
}

void findShortcutErrors(const ReviewedPlan& plan, std::vector<Finding>& findings) {
  const Setup& setup = plan.setup();
  if (isTransducer(setup.bridge) || !areLeadsInOrder(setup.bridge)) return;
  const double usual = templateOf(setup.bridge.type).bridgeFactor(setup.bridge.gauge.poissonRatio);
  const double factor = bridgeFactorOf(setup);
  if (!mayMatter(setup, usual, factor)) return;
  const auto worst = worstShortcut(plan, factor);
  if (!isWorthSaying(setup, worst)) return;
  std::vector<Mend> mends;
  if (factor != usual && !isWorthSaying(setup, worstShortcut(plan, usual)))
    mends.push_back(
        {say("Set the bridge factor to {1}", {shown(formatNumber(usual, 4))}), [usual](Channel channel) {
           channel.setup.instrument.bridgeFactor = usual;
           return channel;
         }});
  const std::string cause =
      !mends.empty()
          ? say("N = {1} is set, this bridge has {2}",
                {shown(formatNumber(factor, 4)), shown(formatNumber(usual, 4))})
          : say("the arms are not all {1}",
                {shown(formatQuantity(setup.bridge.gauge.nominal.base(), UnitFamily::Resistance, {}, 6))});
  findings.push_back(
      {FindingKind::ShortcutError,
       mends.empty() ? Severity::Note : Severity::Warning,
       worst->step,
       {},
       say(worst->error > 0 ? sayLater("The shortcut R/(F N (R + Rs)) is {1} high here: {2}.")
                            : sayLater("The shortcut R/(F N (R + Rs)) is {1} low here: {2}."),
           {percentText(std::abs(worst->error)), cause}),
       say("Whoever checks the plan by that formula finds another value than the whole network gives."),
       std::move(mends)});
}

}  // namespace core
