// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/plan/setup.h"

// One thing about a channel that is tried out.

namespace core {

enum class AlterationKind : std::uint8_t {
  LeadBroken,           ///< `index` its LeadRole
  LeadBypassed,         ///< the lead has no resistance; `index` its LeadRole
  LeadsTouching,        ///< at their gauge ends; `index`, `other` their LeadRoles
  LeadsExchanged,       ///< at the instrument; `index`, `other` their LeadRoles
  LeadContact,          ///< `value` ohm more in lead `index`
  LeadLength,           ///< all leads `value` times as long
  LeadWarming,          ///< all leads `value` K warmer
  Moisture,             ///< a leak of `value` ohm over the gauge in arm `index`
  MoistureToStructure,  ///< a leak of `value` ohm from the middle of the gauge in arm `index` to the
                        ///< structure
  ArmValue,             ///< arm `index` has `value` ohm
  GaugeWarming,         ///< the gauges are `value` K warmer than stated; changes the gauge factor
  SignalReversed,
  ExcitationReversed,
  GaugesReversed,
};
inline constexpr std::size_t alterationKindCount = 14;

/// Keys for programs: "lead_broken", "lead_bypassed", "leads_touching", "leads_exchanged", "lead_contact",
/// "lead_length", "lead_warming", "moisture", "moisture_to_structure", "arm_value", "gauge_warming",
/// "signal_reversed", "excitation_reversed", "gauges_reversed".
std::string_view alterationKindKey(AlterationKind kind);

struct Alteration {
  AlterationKind kind = AlterationKind::LeadBroken;
  std::size_t index = 0;  ///< see AlterationKind; else 0
  std::size_t other = 0;
  double value = 0;  ///< in the unit said there; else 0

  friend bool operator==(const Alteration&, const Alteration&) = default;
};

/// All that make sense for `setup`, one of each place, with a value to start from.
std::vector<Alteration> possibleAlterations(const Setup& setup);
/// "Lead S- broken", "Leak of 10 Mohm over the gauge in arm 1".
std::string alterationText(const Setup& setup, const Alteration& alteration);
/// `setup` with all of `alterations`, one after the other. Fails for one that the bridge cannot have.
Result<Setup> altered(Setup setup, std::span<const Alteration> alterations);

}  // namespace core
