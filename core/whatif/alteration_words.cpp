// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <array>
#include <cmath>

#include "core/circuit/hookup_words.h"
#include "core/units/language.h"
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
    {"lead_broken", sayLater("A lead broken")},
    {"lead_bypassed", sayLater("A lead bypassed")},
    {"leads_touching", sayLater("Two leads touching")},
    {"leads_exchanged", sayLater("Two leads exchanged")},
    {"lead_contact", sayLater("A bad contact"), UnitFamily::Resistance},
    {"lead_resistance", sayLater("Leads of another resistance"), UnitFamily::Resistance},
    {"lead_length", sayLater("Leads longer or shorter"), UnitFamily::Plain},
    {"lead_warming", sayLater("Leads warmer or colder"), UnitFamily::Named, "K"},
    {"moisture", sayLater("Moisture over a gauge"), UnitFamily::Resistance},
    {"moisture_to_structure", sayLater("Moisture to the structure"), UnitFamily::Resistance},
    {"structure_connected", sayLater("The structure connected"), {}},
    {"arm_value", sayLater("An arm changed"), UnitFamily::Resistance},
    {"gauge_warming", sayLater("Gauges warmer or colder"), UnitFamily::Named, "K"},
    {"sense_at_instrument", sayLater("Sense leads not used"), {}},
    {"signal_reversed", sayLater("Signal wires reversed"), {}},
    {"excitation_reversed", sayLater("Excitation reversed"), {}},
    {"gauges_reversed", sayLater("Gauges reversed"), {}},
}};

const Kind& kindOf(AlterationKind kind) { return kinds[static_cast<std::size_t>(kind)]; }

std::string leadText(std::size_t role) {
  return std::string(role < leadRoleCount ? leadWord(static_cast<LeadRole>(role)) : "?");
}

std::string leadsText(const Alteration& alteration) {
  return say("Leads {1} and {2}", {leadText(alteration.index), leadText(alteration.other)});
}

/// "gauge in arm 1", "completion resistor in arm 2".
std::string armText(const Bridge& bridge, std::size_t arm) {
  const std::string name = say("arm {1}", {std::to_string(arm + 1)});
  if (arm >= 4) return name;
  return say(templateOf(bridge.type).atArticle[arm] ? sayLater("gauge in {1}")
                                                    : sayLater("completion resistor in {1}"),
             {name});
}

std::string upperFirst(std::string text) {
  if (!text.empty() && text[0] >= 'a' && text[0] <= 'z') text[0] = static_cast<char>(text[0] - 'a' + 'A');
  return text;
}

std::string structureText(std::size_t grounding) {
  switch (static_cast<Grounding>(grounding)) {
    case Grounding::PMinus:
      return say("Structure connected to P-");
    case Grounding::PPlus:
      return say("Structure connected to P+");
    default:
      return say("Structure connected to nothing");
  }
}

/// The kinds without a value.
std::string plainText(const Setup& setup, const Alteration& alteration) {
  const Hookup& hookup = setup.bridge.hookup;
  switch (alteration.kind) {
    case LeadBroken:
      return say("Lead {1} broken", {leadText(alteration.index)});
    case LeadBypassed:
      return say("Lead {1} bypassed", {leadText(alteration.index)});
    case LeadsTouching:
      return say("{1} touching at the gauge", {leadsText(alteration)});
    case LeadsExchanged:
      return say("{1} exchanged at the instrument", {leadsText(alteration)});
    case StructureConnected:
      return structureText(alteration.index);
    case SenseAtInstrument:
      return say("Excitation sensed at the instrument");
    case SignalReversed:
      return hookup.signalReversed ? say("Signal wires put right") : say("Signal wires reversed");
    case ExcitationReversed:
      return hookup.excitationReversed ? say("Excitation put right") : say("Excitation reversed");
    default:
      return hookup.gaugesReversed ? say("Gauges put right") : say("Gauges reversed");
  }
}

std::string sizeText(const Alteration& alteration, double value) {
  const Kind& kind = kindOf(alteration.kind);
  // What no part has is refused, and the prefixes of parts do not reach it.
  const double size = std::abs(value);
  if (kind.family == UnitFamily::Resistance && (size > 1e12 || (size > 0 && size < 1e-6)))
    return shown(formatNumber(value, 3)) + " Ω";
  return shown(formatQuantity(value, *kind.family, kind.unit, 6));
}

std::string warmerText(const Alteration& alteration) {
  return say(alteration.value < 0 ? sayLater("{1} colder") : sayLater("{1} warmer"),
             {sizeText(alteration, alteration.value < 0 ? -alteration.value : alteration.value)});
}

}  // namespace

std::string_view alterationKindKey(AlterationKind kind) { return kindOf(kind).key; }
std::string_view alterationKindName(AlterationKind kind) { return sayName(kindOf(kind).name); }
std::optional<UnitFamily> alterationValueFamily(AlterationKind kind) { return kindOf(kind).family; }
std::string_view alterationValueUnit(AlterationKind kind) { return kindOf(kind).unit; }

std::string alterationText(const Setup& setup, const Alteration& alteration) {
  const auto size = [&] { return sizeText(alteration, alteration.value); };
  const std::size_t place = alteration.index;
  switch (alteration.kind) {
    case LeadContact:
      return say("Bad contact of {1} in lead {2}", {size(), leadText(place)});
    case LeadResistance:
      return say("{1} in each lead", {size()});
    case LeadLength:
      return say("Leads {1} times as long", {size()});
    case LeadWarming:
      return say("Leads {1}", {warmerText(alteration)});
    case Moisture:
      return say("Leak of {1} over the {2}", {size(), armText(setup.bridge, place)});
    case MoistureToStructure:
      return say("Leak of {1} from the {2} to the structure", {size(), armText(setup.bridge, place)});
    case ArmValue:
      return say("{1} has {2}", {upperFirst(armText(setup.bridge, place)), size()});
    case GaugeWarming:
      return say("Gauges {1}", {warmerText(alteration)});
    default:
      return plainText(setup, alteration);
  }
}

std::string alterationName(const Setup& setup, const Alteration& alteration) {
  const std::size_t place = alteration.index;
  switch (alteration.kind) {
    case LeadContact:
      return say("Bad contact in lead {1}", {leadText(place)});
    case LeadResistance:
      return say("Resistance of each lead");
    case LeadLength:
      return say("Leads so many times as long");
    case LeadWarming:
      return say("Leads warmer by");
    case Moisture:
      return say("Leak over the {1}", {armText(setup.bridge, place)});
    case MoistureToStructure:
      return say("Leak from the {1} to the structure", {armText(setup.bridge, place)});
    case ArmValue:
      return upperFirst(armText(setup.bridge, place));
    case GaugeWarming:
      return say("Gauges warmer by");
    default:
      return plainText(setup, alteration);
  }
}

}  // namespace core
