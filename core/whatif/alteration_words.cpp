// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <array>
#include <cmath>

#include "core/whatif/alteration.h"

namespace core {
namespace {

using enum AlterationKind;

/// What distinguishes one kind from another.
struct Kind {
  std::string_view key;
  std::string_view name;
  std::optional<UnitFamily> family = {};
  std::string_view unit = {};
};

// In the order of AlterationKind.
constexpr std::array<Kind, alterationKindCount> kinds = {{
    {"lead_broken", "A lead broken"},
    {"lead_bypassed", "A lead bypassed"},
    {"leads_touching", "Two leads touching"},
    {"leads_exchanged", "Two leads exchanged"},
    {"lead_contact", "A bad contact", UnitFamily::Resistance},
    {"lead_resistance", "Leads of another resistance", UnitFamily::Resistance},
    {"lead_length", "Leads longer or shorter", UnitFamily::Plain},
    {"lead_warming", "Leads warmer or colder", UnitFamily::Named, "K"},
    {"moisture", "Moisture over a gauge", UnitFamily::Resistance},
    {"moisture_to_structure", "Moisture to the structure", UnitFamily::Resistance},
    {"structure_connected", "The structure connected", {}},
    {"arm_value", "An arm changed", UnitFamily::Resistance},
    {"gauge_warming", "Gauges warmer or colder", UnitFamily::Named, "K"},
    {"sense_at_instrument", "Sense leads not used", {}},
    {"signal_reversed", "Signal wires reversed", {}},
    {"excitation_reversed", "Excitation reversed", {}},
    {"gauges_reversed", "Gauges reversed", {}},
}};

const Kind& kindOf(AlterationKind kind) { return kinds[static_cast<std::size_t>(kind)]; }

std::string leadText(std::size_t role) {
  return std::string(role < leadRoleCount ? leadName(static_cast<LeadRole>(role)) : "?");
}

std::string leadsText(const Alteration& alteration) {
  return "Leads " + leadText(alteration.index) + " and " + leadText(alteration.other);
}

/// "gauge in arm 1", "completion resistor in arm 2".
std::string armText(const Bridge& bridge, std::size_t arm) {
  const std::string name = "arm " + std::to_string(arm + 1);
  if (arm >= 4) return name;
  return (templateOf(bridge.type).atArticle[arm] ? "gauge in " : "completion resistor in ") + name;
}

std::string upperFirst(std::string text) {
  if (!text.empty() && text[0] >= 'a' && text[0] <= 'z') text[0] = static_cast<char>(text[0] - 'a' + 'A');
  return text;
}

std::string structureText(std::size_t grounding) {
  switch (static_cast<Grounding>(grounding)) {
    case Grounding::PMinus:
      return "Structure connected to P-";
    case Grounding::PPlus:
      return "Structure connected to P+";
    default:
      return "Structure connected to nothing";
  }
}

/// The kinds without a value.
std::string plainText(const Setup& setup, const Alteration& alteration) {
  const Hookup& hookup = setup.bridge.hookup;
  switch (alteration.kind) {
    case LeadBroken:
      return "Lead " + leadText(alteration.index) + " broken";
    case LeadBypassed:
      return "Lead " + leadText(alteration.index) + " bypassed";
    case LeadsTouching:
      return leadsText(alteration) + " touching at the gauge";
    case LeadsExchanged:
      return leadsText(alteration) + " exchanged at the instrument";
    case StructureConnected:
      return structureText(alteration.index);
    case SenseAtInstrument:
      return "Excitation sensed at the instrument";
    case SignalReversed:
      return hookup.signalReversed ? "Signal wires put right" : "Signal wires reversed";
    case ExcitationReversed:
      return hookup.excitationReversed ? "Excitation put right" : "Excitation reversed";
    default:
      return hookup.gaugesReversed ? "Gauges put right" : "Gauges reversed";
  }
}

std::string sizeText(const Alteration& alteration, double value) {
  const Kind& kind = kindOf(alteration.kind);
  // What no part has is refused, and the prefixes of parts do not reach it.
  const double size = std::abs(value);
  if (kind.family == UnitFamily::Resistance && (size > 1e12 || (size > 0 && size < 1e-6)))
    return formatNumber(value, 3) + " Ω";
  return formatQuantity(value, *kind.family, kind.unit, 6);
}

std::string warmerText(const Alteration& alteration) {
  return sizeText(alteration, alteration.value < 0 ? -alteration.value : alteration.value) +
         (alteration.value < 0 ? " colder" : " warmer");
}

}  // namespace

std::string_view alterationKindKey(AlterationKind kind) { return kindOf(kind).key; }
std::string_view alterationKindName(AlterationKind kind) { return kindOf(kind).name; }
std::optional<UnitFamily> alterationValueFamily(AlterationKind kind) { return kindOf(kind).family; }
std::string_view alterationValueUnit(AlterationKind kind) { return kindOf(kind).unit; }

std::string alterationText(const Setup& setup, const Alteration& alteration) {
  const auto size = [&] { return sizeText(alteration, alteration.value); };
  const std::size_t place = alteration.index;
  switch (alteration.kind) {
    case LeadContact:
      return "Bad contact of " + size() + " in lead " + leadText(place);
    case LeadResistance:
      return size() + " in each lead";
    case LeadLength:
      return "Leads " + size() + " times as long";
    case LeadWarming:
      return "Leads " + warmerText(alteration);
    case Moisture:
      return "Leak of " + size() + " over the " + armText(setup.bridge, place);
    case MoistureToStructure:
      return "Leak of " + size() + " from the " + armText(setup.bridge, place) + " to the structure";
    case ArmValue:
      return upperFirst(armText(setup.bridge, place)) + " has " + size();
    case GaugeWarming:
      return "Gauges " + warmerText(alteration);
    default:
      return plainText(setup, alteration);
  }
}

std::string alterationName(const Setup& setup, const Alteration& alteration) {
  const std::size_t place = alteration.index;
  switch (alteration.kind) {
    case LeadContact:
      return "Bad contact in lead " + leadText(place);
    case LeadResistance:
      return "Resistance of each lead";
    case LeadLength:
      return "Leads so many times as long";
    case LeadWarming:
      return "Leads warmer by";
    case Moisture:
      return "Leak over the " + armText(setup.bridge, place);
    case MoistureToStructure:
      return "Leak from the " + armText(setup.bridge, place) + " to the structure";
    case ArmValue:
      return upperFirst(armText(setup.bridge, place));
    case GaugeWarming:
      return "Gauges warmer by";
    default:
      return plainText(setup, alteration);
  }
}

}  // namespace core
