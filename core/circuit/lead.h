// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <string_view>
#include <variant>

#include "core/units/quantity.h"

namespace core {

/// What a wire between the instrument and the gauges is for.
enum class LeadRole : std::uint8_t {
  ExcitationPlus,   ///< P+
  ExcitationMinus,  ///< P-
  SignalPlus,       ///< S+
  SignalMinus,      ///< S-
  SensePlus,        ///< carries no current
  SenseMinus,       ///< carries no current
  Return,           ///< third wire of a quarter bridge: from the gauge to the completion resistor of arm 2
};
inline constexpr std::size_t leadRoleCount = 7;

/// "P+", "P-", "S+", "S-", "sense+", "sense-", "return".
std::string_view leadName(LeadRole role);

/// Diameter of a bare solid conductor of American wire gauge `awg` (0 to 40):
/// 0.127 mm x 92^((36 - n)/39), ASTM B258 (from memory; checked against published tables in the tests).
Area awgSection(int awg);

/// A copper wire given by its size instead of its resistance; one conductor, one way.
///
/// R = 1.7241e-8 ohm m x length / section x (1 + 0.00393/K (T - 20 C)), IEC 60028 values for annealed
/// copper (from memory; checked against published tables). Stranded and tinned wire is higher.
struct CopperWire {
  Length length;
  Area section;
  Temperature temperature{20};

  friend bool operator==(const CopperWire&, const CopperWire&) = default;
};

/// Two different leads.
struct LeadPair {
  LeadRole a = LeadRole::ExcitationPlus;
  LeadRole b = LeadRole::ExcitationMinus;

  friend bool operator==(const LeadPair&, const LeadPair&) = default;
};

/// The resistance of one wire: measured, or worked out from the wire. Zero joins the two ends.
using Lead = std::variant<Resistance, CopperWire>;

Resistance resistanceOf(const CopperWire& wire);
Resistance resistanceOf(const Lead& lead);
/// Resistance change per kelvin, ohm/K: of copper by the coefficient above; a resistance as given counts
/// as given at 20 C.
double resistancePerKelvin(const Lead& lead);

/// One lead for each role; a template uses some of them.
using Leads = std::array<Lead, leadRoleCount>;

}  // namespace core
