// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

#include "core/units/quantity.h"

// What makes a real bridge differ from the circuit on paper; each is off until it is given a value.

namespace core {

/// Insulation that leaks at one arm. The structure is one node; it is connected to the excitation as
/// `Grounding` says.
struct Leak {
  std::optional<Resistance> across = {};       ///< lumped over the whole gauge
  std::optional<Resistance> toStructure = {};  ///< from one place of the grid to the structure
  double place = 0.5;                          ///< of that place along the arm, 0 at its begin, 1 at its end

  friend bool operator==(const Leak&, const Leak&) = default;
};

/// What the structure is connected to, for leaks to it.
enum class Grounding : std::uint8_t { Floating, PMinus, PPlus };
inline constexpr std::size_t groundingCount = 3;

enum class BalanceKind : std::uint8_t {
  None,
  Parallel,  ///< a potentiometer over the excitation, its wiper through a resistor to S+
  Series,    ///< a potentiometer between arms 3 and 4, its wiper is S+
};
inline constexpr std::size_t balanceKindCount = 3;

/// The network that brings an unbalanced bridge to zero.
struct Balance {
  BalanceKind kind = BalanceKind::None;
  Resistance potentiometer{10000};
  Resistance limiting{100000};  ///< from the wiper to S+; parallel only
  double wiper = 0.5;           ///< parallel: 0 at P-, 1 at P+; series: share of the potentiometer in arm 3

  friend bool operator==(const Balance&, const Balance&) = default;
};

/// Constant current instead of constant voltage. The instrument takes current x nominal resistance for
/// the excitation when it works out mV/V; the unbalance of the bridge then changes the true voltage.
struct CurrentSource {
  Current supplied{0.01};
  Resistance nominal{350};  ///< of the bridge between P+ and P-, as set

  friend bool operator==(const CurrentSource&, const CurrentSource&) = default;
};

/// Whether the instrument corrects a strain for the nonlinearity of the bridge, and whether before or
/// after it subtracts the zero. The order matters with an initial unbalance.
enum class Linearisation : std::uint8_t {
  None,
  BeforeZero,  ///< each output is corrected, then the zero is subtracted
  AfterZero,   ///< the change from zero is corrected as if it had started from balance
};
inline constexpr std::size_t linearisationCount = 3;

/// Keys in files: "floating", "P-", "P+"; "none", "parallel", "series"; "none", "before_zero", "after_zero".
std::string_view groundingKey(Grounding grounding);
std::optional<Grounding> groundingFromKey(std::string_view key);
std::string_view balanceKindKey(BalanceKind kind);
std::optional<BalanceKind> balanceKindFromKey(std::string_view key);
std::string_view linearisationKey(Linearisation linearisation);
std::optional<Linearisation> linearisationFromKey(std::string_view key);

}  // namespace core
