// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <compare>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string_view>

namespace core {

/// The kinds of numbers that a prediction depends on and that are never known exactly.
enum class InputKind : std::uint8_t {
  Arm,                   ///< resistance of an arm as installed; index 0 to 3
  Lead,                  ///< resistance of a wire; index is its LeadRole
  LeadTemperature,       ///< all leads warmer than stated, K
  Shunt,                 ///< resistance of the resistor itself; index in the channel's shunts
  ShuntWires,            ///< of the same, its two wires
  ShuntContact,          ///< of the same, the closed switch
  LeakAcross,            ///< index is the arm
  LeakToStructure,       ///< index is the arm
  BalancePotentiometer,  ///< ohm
  BalanceLimiting,       ///< ohm
  BalanceWiper,          ///< share, 0 to 1
  InputResistance,       ///< of the instrument
  GaugeFactor,           ///< of the gauges at the temperature it is stated for
  FactorCoefficient,     ///< of the gauge factor with temperature, 1/K
  GaugeTemperature,      ///< degree Celsius
  PoissonRatio,
  RatedOutput,  ///< of a transducer, V/V
  Gain,         ///< of the instrument; true value over shown, 1
  Excitation,   ///< V, or A of a current source
  ZeroDrift,    ///< change of the instrument's zero since the zero was read, V/V
  Rounding,     ///< of a reading to the instrument's digit, in the reading's unit; index 0 at zero, 1 at the
                ///< step
};
inline constexpr std::size_t inputKindCount = 21;

/// Keys in files: "arm", "lead", "lead_temperature", "shunt", ...
std::string_view inputKindKey(InputKind kind);
std::optional<InputKind> inputKindFromKey(std::string_view key);

/// One number that a prediction depends on.
struct Input {
  InputKind kind = InputKind::Arm;
  std::size_t index = 0;  ///< which one of its kind, zero where there is one only

  friend auto operator<=>(const Input&, const Input&) = default;
};

}  // namespace core
