// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstddef>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/plan/pins.h"
#include "core/plan/setup.h"
#include "core/units/result.h"

namespace core {

/// Where a tip of the ohmmeter is held: a place of the bridge, or an end of a resistor that has a pin.
using OhmPoint = std::variant<Node, ResistorEnd>;

/// "P+", "S-104 end 1", in the present language.
std::string ohmPointName(const OhmPoint& point);

/// How far the wiring has got when an ohmmeter is held to it; excitation off.
struct WiringState {
  std::string shunt;        ///< name of the one shunt that is being laid or closed; empty: none, all open
  std::size_t jumpers = 0;  ///< of it that are in place; all of them, or 0 of none: the shunt is closed

  friend bool operator==(const WiringState&, const WiringState&) = default;
};

/// What an ohmmeter showed.
struct OhmReading {
  WiringState state;
  OhmPoint from;
  OhmPoint to;
  std::optional<Resistance> ohm;  ///< none: no reading, beyond its range (open)

  friend bool operator==(const OhmReading&, const OhmReading&) = default;
};

}  // namespace core
