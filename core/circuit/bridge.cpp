// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/circuit/bridge.h"

#include <algorithm>
#include <cmath>

#include "core/circuit/hookup_words.h"
#include "core/units/language.h"

namespace core {
namespace {

constexpr std::array<std::string_view, readingUnitCount> unitKeys = {"um_per_m", "mV_per_V", "mV", "scaled"};

Result<void> requirePositive(std::string where, double value, std::string_view quantity) {
  if (std::isfinite(value) && value > 0) return {};
  return Error{std::move(where), say("{1} must be a finite number above zero", {quantity}),
               say("Enter the value from the data sheet or a measurement")};
}

Result<void> requireLead(LeadRole role, const Bridge& bridge) {
  const Lead& lead = bridge.leads[static_cast<std::size_t>(role)];
  const std::string where = say("lead {1}", {leadWord(role)});
  if (const auto* wire = std::get_if<CopperWire>(&lead)) {
    if (auto ok = requirePositive(where, wire->length.base(), say("the length")); !ok) return ok;
    if (auto ok = requirePositive(where, wire->section.base(), say("the section")); !ok) return ok;
  }
  const double stated = resistanceOf(lead).base(), ohm = leadResistance(bridge, role).base();
  if (std::isfinite(ohm) && ohm >= 0) return {};
  if (std::isfinite(stated) && stated >= 0)
    return Error{say("leads warmer by"),
                 say("at that temperature lead {1} would have no resistance left", {leadWord(role)}),
                 say("Enter how many kelvin the leads are above the temperature that they are stated for")};
  return Error{where, say("the resistance must be zero or a positive number"),
               say("Enter zero where there is no lead")};
}

Result<void> requireShare(std::string where, double value, std::string_view quantity) {
  if (value >= 0 && value <= 1) return {};
  return Error{std::move(where), say("{1} must lie between 0 and 1", {quantity}),
               say("Enter 0.5 for the middle")};
}

Result<void> requireLeak(const std::string& arm, const Leak& leak) {
  for (const auto& [ohm, name] : {std::pair{leak.across, say("leak over {1}", {arm})},
                                  {leak.toStructure, say("leak to structure of {1}", {arm})}})
    if (ohm)
      if (auto ok = requirePositive(name, ohm->base(), say("the resistance")); !ok) return ok;
  return requireShare(say("leak to structure of {1}", {arm}), leak.place, say("the place along the arm"));
}

Result<void> requireGauge(const Gauge& gauge) {
  if (auto ok = requirePositive(say("gauge"), gauge.nominal.base(), say("the resistance")); !ok) return ok;
  if (auto ok = requirePositive(say("gauge"), gauge.factor, say("the gauge factor")); !ok) return ok;
  if (auto ok = requirePositive(say("gauge"), gaugeFactorOf(gauge),
                                say("the gauge factor at the gauge's temperature"));
      !ok)
    return ok;
  const double nu = gauge.poissonRatio;
  if (nu >= 0 && nu <= 0.5) return {};
  return Error{say("gauge"), say("Poisson's ratio must lie between 0 and 0.5"),
               say("Enter about 0.3 for metals")};
}

Result<void> requireRating(const Rating& rating) {
  if (auto ok = requirePositive(say("rating"), rating.ratedOutput.base(), say("the rated output")); !ok)
    return ok;
  return requirePositive(say("rating"), rating.capacity, say("the capacity"));
}

Result<void> requireBalance(const Balance& balance) {
  if (balance.kind == BalanceKind::None) return {};
  if (auto ok = requirePositive(say("balance"), balance.potentiometer.base(), say("the potentiometer")); !ok)
    return ok;
  if (balance.kind == BalanceKind::Parallel)
    if (auto ok = requirePositive(say("balance"), balance.limiting.base(), say("the resistor to S+")); !ok)
      return ok;
  return requireShare(say("balance"), balance.wiper, say("the wiper's place"));
}

Result<void> requireInstrument(const Instrument& instrument) {
  const std::string where = say("instrument");
  if (auto ok = requirePositive(where, instrument.gaugeFactor, say("the gauge factor set")); !ok) return ok;
  if (auto ok = requirePositive(where, instrument.bridgeFactor, say("the bridge factor set")); !ok) return ok;
  if (const auto& current = instrument.current) {
    if (auto ok = requirePositive(where, current->supplied.base(), say("the current")); !ok) return ok;
    if (auto ok = requirePositive(where, current->nominal.base(), say("the nominal bridge resistance")); !ok)
      return ok;
  } else if (auto ok = requirePositive(where, instrument.excitation.base(), say("the excitation")); !ok) {
    return ok;
  }
  const double scale = instrument.unitsPerMillivoltPerVolt;
  if (!std::isfinite(scale) || scale == 0)
    return Error{where, say("the scale must be a finite number other than zero"),
                 say("Enter units per mV/V")};
  if (instrument.inputResistance)
    if (auto ok = requirePositive(where, instrument.inputResistance->base(), say("the input resistance"));
        !ok)
      return ok;
  return requireBalance(instrument.balance);
}

/// Exchanged or touching leads are two.
Result<void> requirePairs(const std::vector<LeadPair>& pairs, const std::string& what) {
  for (const LeadPair& pair : pairs)
    if (pair.a == pair.b)
      return Error{say("lead {1}", {leadWord(pair.a)}), what, say("Choose another lead as the second one")};
  return {};
}

std::vector<Wire>::iterator wireOf(std::vector<Wire>& wires, LeadRole role) {
  return std::find_if(wires.begin(), wires.end(), [role](const Wire& wire) { return wire.role == role; });
}

}  // namespace

double gaugeFactorOf(const Gauge& gauge) {
  const double warmer_K = (gauge.installed - gauge.factorAt).base();
  return gauge.factor * (1 + gauge.factorCoefficient * warmer_K);
}

std::string readingUnitText(const Instrument& instrument) {
  switch (instrument.unit) {
    case ReadingUnit::MicrometrePerMetre:
      return "µm/m";
    case ReadingUnit::MillivoltPerVolt:
      return "mV/V";
    case ReadingUnit::Millivolt:
      return "mV";
    case ReadingUnit::Scaled:
      return instrument.scaledUnit;
  }
  return {};
}

std::string_view readingUnitKey(ReadingUnit unit) { return unitKeys[static_cast<std::size_t>(unit)]; }

std::optional<ReadingUnit> readingUnitFromKey(std::string_view key) {
  const auto found = std::find(unitKeys.begin(), unitKeys.end(), key);
  if (found == unitKeys.end()) return std::nullopt;
  return static_cast<ReadingUnit>(found - unitKeys.begin());
}

Reading readingOf(const Instrument& instrument, Output change) {
  const double v = change.base();
  switch (instrument.unit) {
    case ReadingUnit::MicrometrePerMetre:
      return Reading(4e6 * v / (instrument.gaugeFactor * instrument.bridgeFactor));
    case ReadingUnit::MillivoltPerVolt:
      return Reading(1e3 * v);
    case ReadingUnit::Millivolt:
      return Reading(1e3 * v * nominalExcitation(instrument).base());
    case ReadingUnit::Scaled:
      return Reading(1e3 * v * instrument.unitsPerMillivoltPerVolt);
  }
  return {};
}

Voltage nominalExcitation(const Instrument& instrument) {
  if (!instrument.current) return instrument.excitation;
  return Voltage(instrument.current->supplied.base() * instrument.current->nominal.base());
}

std::string simulatedUnitText(const Bridge& bridge) {
  return isTransducer(bridge) ? bridge.rating.loadUnit : "µm/m";
}

bool isTransducer(const Bridge& bridge) { return bridge.type == BridgeType::Transducer; }

Resistance leadResistance(const Bridge& bridge, LeadRole role) {
  const Lead& lead = bridge.leads[static_cast<std::size_t>(role)];
  return resistanceOf(lead) + Resistance(resistancePerKelvin(lead) * bridge.leadWarming.base());
}

bool isBroken(const Bridge& bridge, LeadRole role) {
  return bridge.hookup.broken[static_cast<std::size_t>(role)];
}

StrainShare strainShare(const Bridge& bridge, std::size_t arm) {
  const StrainShare share = templateOf(bridge.type).shares[arm];
  return bridge.hookup.gaugesReversed ? StrainShare{-share.plain, -share.poisson} : share;
}

std::vector<Wire> wiresOf(const Bridge& bridge) {
  const BridgeTemplate& shape = templateOf(bridge.type);
  std::vector<Wire> wires = shape.wires;
  if (shape.senseLeads && bridge.sixWire) {
    wires.push_back({LeadRole::SensePlus, Node::SensePlus, Node::Arm1Begin});
    wires.push_back({LeadRole::SenseMinus, Node::SenseMinus, Node::Arm2End});
  }
  for (const LeadPair& pair : bridge.hookup.exchanged) {
    const auto a = wireOf(wires, pair.a), b = wireOf(wires, pair.b);
    if (a != wires.end() && b != wires.end()) std::swap(a->from, b->from);
  }
  return wires;
}

bool hasNode(const Bridge& bridge, Node node) {
  if (node != Node::SensePlus && node != Node::SenseMinus) return true;
  return bridge.sixWire && templateOf(bridge.type).senseLeads;
}

Node pointOf(const Bridge& bridge, Node node) {
  // Joins form short chains, so repeating until nothing changes takes two or three rounds.
  for (bool changed = true; changed;) {
    changed = false;
    for (const Join& join : templateOf(bridge.type).joins) {
      const Node low = std::min(join.a, join.b), high = std::max(join.a, join.b);
      if (node == high) node = low, changed = true;
    }
  }
  return node;
}

std::string pointName(const Bridge& bridge, Node node) {
  const Node point = pointOf(bridge, node);
  if (point < Node::Arm1Begin) return say("terminal {1}", {nodeName(point)});
  for (const Wire& wire : wiresOf(bridge))
    if (pointOf(bridge, wire.to) == point && wire.role != LeadRole::Return)
      return say("gauge end of lead {1}", {leadWord(wire.role)});
  for (const Wire& wire : wiresOf(bridge))
    if (pointOf(bridge, wire.from) == point) return say("instrument end of lead {1}", {leadWord(wire.role)});
  return say(nodeName(point));
}

Result<void> checkBridge(const Bridge& bridge, const Instrument& instrument) {
  for (const std::size_t arm : {0, 1, 2, 3}) {
    const std::string where = say("arm {1}", {std::to_string(arm + 1)});
    if (auto ok = requirePositive(where, bridge.arms[arm].base(), say("the resistance")); !ok) return ok;
    if (auto ok = requireLeak(where, bridge.leaks[arm]); !ok) return ok;
  }
  for (const Wire& wire : wiresOf(bridge))
    if (auto ok = requireLead(wire.role, bridge); !ok) return ok;
  if (auto ok = requirePairs(bridge.hookup.exchanged, say("a lead cannot be exchanged with itself")); !ok)
    return ok;
  if (auto ok = requirePairs(bridge.hookup.touching, say("a lead cannot touch itself")); !ok) return ok;
  if (auto ok = isTransducer(bridge) ? requireRating(bridge.rating) : requireGauge(bridge.gauge); !ok)
    return ok;
  return requireInstrument(instrument);
}

}  // namespace core
