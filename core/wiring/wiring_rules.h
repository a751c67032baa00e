// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
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
  NeighbourHazard,  ///< a jumper that slips to the next pin, or a solder bridge, would do harm
};

/// Errors make the wiring wrong; warnings make it easy to get wrong.
enum class WiringSeverity : std::uint8_t { Warning, Error };

struct WiringFault {
  WiringFaultKind kind;
  WiringSeverity severity = WiringSeverity::Error;
  std::optional<std::size_t> shunt;  ///< that it concerns
  std::vector<PinName> pins;         ///< to be marked in the drawing
  std::string what;                  ///< one sentence with the names of pins and places
  std::string mend;                  ///< what to do about it
};

/// Every fault of the channel's pins and of each shunt's jumpers, errors first. Empty means that every shunt
/// lies where the plan says once its jumpers are laid. A shunt without jumpers whose resistor has no pins is
/// switched inside the instrument: nothing is asked of it. Of neighbouring pins what a bridge between them
/// would do is worked out from the network: short of the excitation, short of an arm, a shunt that is always
/// closed.
std::vector<WiringFault> wiringFaults(const Setup& setup);

/// The jumpers that lay `shunt` where the plan says, shortest list first found: each end of its resistor to
/// the first pin of the place. Fails when a place or an end has no pin.
Result<std::vector<Jumper>> jumpersFor(const Setup& setup, std::size_t shunt);

/// Pins for everything the channel needs: the bridge's places that shunts go to, instrument terminals first,
/// on one connector and both ends of every resistor on another. A start that the user renames.
Wiring usualWiring(const Setup& setup);

}  // namespace core
