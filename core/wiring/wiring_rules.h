// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/plan/setup.h"

namespace core {

/// What is wrong with pins or jumpers.
enum class WiringFaultKind : std::uint8_t {
  ExcitationShort,  ///< jumpers join P+ and P-, straight or through other pins
  NodesJoined,      ///< jumpers join two places of the bridge that are not one point
  WrongPlace,       ///< the resistor ends up between other places than the plan says
  HangingEnd,       ///< an end of the resistor that no jumper leads anywhere
  PinUsedTwice,     ///< two functions on one pin
  UnknownPin,       ///< a jumper to a pin that is not in the list
  UnusedPin,        ///< a jumper to a pin that leads nowhere
  MissingPin,       ///< a place or resistor end that the plan needs has no pin
  NeighbourHazard,  ///< a jumper that slips to the next pin, or a solder bridge, would do harm; a warning
};
inline constexpr std::size_t wiringFaultKindCount = 9;

/// "excitation shorted", "places joined", "wrong place", "hanging end", "pin used twice", "unknown pin",
/// "unused pin", "missing pin", "neighbouring pins".
std::string_view wiringFaultName(WiringFaultKind kind);
/// Keys for programs: "excitation_short", "nodes_joined", "wrong_place", "hanging_end", "pin_used_twice",
/// "unknown_pin", "unused_pin", "missing_pin", "neighbour_hazard".
std::string_view wiringFaultKey(WiringFaultKind kind);

/// Errors make the wiring wrong; warnings make it easy to get wrong.
enum class WiringSeverity : std::uint8_t { Warning, Error };

struct WiringFault {
  WiringFaultKind kind = WiringFaultKind::UnknownPin;
  WiringSeverity severity = WiringSeverity::Error;
  std::optional<std::size_t> shunt = {};  ///< that it concerns; none: the pins, or several shunts together
  std::vector<PinName> pins = {};         ///< to be marked in the drawing
  std::string what = {};                  ///< one sentence with the names of pins and places, no full stop
  std::string mend = {};                  ///< what to do about it, no full stop
};

/// "P+", "S-104 end 1", "unused".
std::string pinUseName(const PinUse& use);
/// "J1-C (P+)", with what the list says of the pin; "J9-X (not in the list)".
std::string pinLabel(const Setup& setup, const PinName& name);

/// Whether nothing is to be wired for `shunt`: it has no jumpers, and its resistor has no pins.
bool isSwitchedInside(const Setup& setup, const Shunt& shunt);

/// Every fault of the channel's pins and of the jumpers, errors first. No error means that every shunt lies
/// where the plan says once its jumpers are laid. A shunt that is switched inside the instrument needs none.
///
/// Jumpers are looked at one shunt at a time, then those of all shunts that one step closes together. What
/// they join is followed through pins, other jumpers and joins of the bridge, not through resistors; the
/// excitation counts as shorted also where only leads are left between the joined places and P+ or P-.
///
/// Of two pins that follow each other in a connector a bridge between them is tried with no jumper, with each
/// shunt's jumpers (all of them, and all but one) and with those of each step. What it would do that was not
/// so without it is a NeighbourHazard: a short of the excitation, of the signal, of an arm or of a resistor,
/// a shunt that stays closed when a jumper is pulled. The worst one of each two pins is told.
std::vector<WiringFault> wiringFaults(const Setup& setup);

/// The jumpers that lay `shunt` where the plan says: end 1 of its resistor to the first pin of its place a,
/// end 2 to that of b. Fails when a place or an end has no pin.
Result<std::vector<Jumper>> jumpersFor(const Setup& setup, std::size_t shunt);

/// Pins for everything the channel needs: the bridge's places that shunts go to, instrument terminals first,
/// on connector J1 with an unused pin between each two, and on J2 the first ends of all resistors, an unused
/// pin, the second ends; so that no two neighbours are a hazard. A start that the user renames. Without
/// shunts: the instrument's terminals.
Wiring usualWiring(const Setup& setup);

}  // namespace core
