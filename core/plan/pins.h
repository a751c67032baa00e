// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <compare>
#include <cstdint>
#include <string>
#include <variant>
#include <vector>

#include "core/circuit/node.h"

namespace core {

/// A pin as the user calls it: connector "J1", pin "C".
struct PinName {
  std::string connector;
  std::string pin;

  friend auto operator<=>(const PinName&, const PinName&) = default;
};

/// One end of a calibration resistor that is brought out to a pin. Shunts that are made of the same resistor
/// share its two ends.
struct ResistorEnd {
  std::string resistor;  ///< see core::resistorName
  std::uint8_t end = 1;  ///< 1 or 2

  friend auto operator<=>(const ResistorEnd&, const ResistorEnd&) = default;
};

/// What a pin is connected to inside: nothing, a place of the bridge, or the end of a resistor.
using PinUse = std::variant<std::monostate, Node, ResistorEnd>;

struct Pin {
  PinName name;
  PinUse use;

  friend bool operator==(const Pin&, const Pin&) = default;
};

/// A wire or plug that joins two pins.
struct Jumper {
  PinName from;
  PinName to;

  friend bool operator==(const Jumper&, const Jumper&) = default;
};

/// The pins of a channel in the order they lie in: two of one connector that follow each other are
/// neighbours.
struct Wiring {
  std::vector<Pin> pins;

  friend bool operator==(const Wiring&, const Wiring&) = default;
};

/// "J1-C"; the pin alone when the connector has no name.
std::string pinText(const PinName& name);

}  // namespace core
