// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/plan/setup.h"
#include "core/units/notation.h"

// One thing about a channel that is tried out.

namespace core {

enum class AlterationKind : std::uint8_t {
  LeadBroken,           ///< `index` its LeadRole
  LeadBypassed,         ///< a wire without resistance from end to end of lead `index`, broken or not
  LeadsTouching,        ///< at their gauge ends; `index`, `other` their LeadRoles
  LeadsExchanged,       ///< at the instrument; `index`, `other` their LeadRoles
  LeadContact,          ///< `value` ohm more in lead `index`
  LeadResistance,       ///< each lead has `value` ohm during the check
  LeadLength,           ///< all leads `value` times as long
  LeadWarming,          ///< all leads `value` K warmer
  Moisture,             ///< one more leak, of `value` ohm, over the gauge in arm `index` (from 0)
  MoistureToStructure,  ///< one more leak, of `value` ohm, from the gauge in arm `index` to the structure:
                        ///< from its middle, or from the place where it leaks already
  StructureConnected,   ///< `index` a Grounding
  ArmValue,             ///< arm `index` (from 0) has `value` ohm
  GaugeWarming,         ///< the gauges are `value` K warmer than stated; changes the gauge factor
  SenseAtInstrument,    ///< the sense leads are not used: the instrument senses at its own terminals
  SignalReversed,       ///< the other way round than now
  ExcitationReversed,   ///< the other way round than now
  GaugesReversed,       ///< the other way round than now
};
inline constexpr std::size_t alterationKindCount = 17;

/// Keys for programs: "lead_broken", "lead_bypassed", "leads_touching", "leads_exchanged", "lead_contact",
/// "lead_resistance", "lead_length", "lead_warming", "moisture", "moisture_to_structure",
/// "structure_connected", "arm_value", "gauge_warming", "sense_at_instrument", "signal_reversed",
/// "excitation_reversed", "gauges_reversed".
std::string_view alterationKindKey(AlterationKind kind);
/// "A lead broken", "Two leads exchanged": the heading of all alterations of the kind.
std::string_view alterationKindName(AlterationKind kind);
/// What kind of number `value` is; none for kinds without a value.
std::optional<UnitFamily> alterationValueFamily(AlterationKind kind);
/// "K" of a family of named units, else empty.
std::string_view alterationValueUnit(AlterationKind kind);

struct Alteration {
  AlterationKind kind = AlterationKind::LeadBroken;
  std::size_t index = 0;  ///< see AlterationKind; else 0
  std::size_t other = 0;
  double value = 0;  ///< in the unit said there; else 0

  friend bool operator==(const Alteration&, const Alteration&) = default;
};

/// All that make sense for `setup`, one of each place, with a value to start from.
std::vector<Alteration> possibleAlterations(const Setup& setup);
/// "Lead S- broken", "Leak of 10 MΩ over the gauge in arm 1"; said of `setup` before it is altered.
std::string alterationText(const Setup& setup, const Alteration& alteration);
/// The same without its value: "Leak over the gauge in arm 1".
std::string alterationName(const Setup& setup, const Alteration& alteration);

/// `setup` with all of `alterations`, one after the other, so that a lead exchanged twice is back where it
/// was. Bad contacts alone come last, as neither length nor warming changes them; a bypass takes those before
/// it away. Fails for the first that the bridge cannot have, or whose value cannot be used, naming it.
Result<Setup> altered(const Setup& setup, std::span<const Alteration> alterations);

/// What became of a list of alterations, some of which may not apply to the channel.
struct TriedOut {
  Setup setup;                                ///< with those that apply
  std::vector<Alteration> applied;            ///< those
  std::vector<std::optional<Error>> refused;  ///< one an alteration given: why it was left out
  std::vector<std::string> texts;             ///< one an alteration given: its words
};

/// `setup` with those of `alterations` that apply, the others left out.
TriedOut triedOut(const Setup& setup, std::span<const Alteration> alterations);

}  // namespace core
