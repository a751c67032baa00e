// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/wiring/ohmmeter_sheet.h"

namespace core {

enum class OhmFaultKind : std::uint8_t { None, Open, Short, SwappedWires, WrongResistor };

/// A fault that would explain what was measured.
struct OhmFault {
  OhmFaultKind kind = OhmFaultKind::None;
  std::string text;  ///< "arm 1 is open", "P+ and S- are swapped", "R1 is about 59.9 kΩ instead of 174.65 kΩ"
  std::optional<Resistance> fitted = {};  ///< of the wrong resistor, the value that fits best
  double misfit = 0;         ///< mean square of (measured - expected) / tolerance, each cut off at 10
  bool explains = false;     ///< every reading lies within its tolerance of it
  std::size_t unknowns = 0;  ///< numbers that were fitted
};

/// The faults that fit `readings` best, best first, "nothing wrong" among them; at most `most`. Single faults
/// only: each arm, lead, shunt, resistor and the instrument's input open or shorted, each two wires swapped,
/// each resistor (arms, leads, shunts) of another value. Ranked by whether they explain everything, then by
/// misfit with a penalty for each number fitted (Akaike's criterion for few readings, from memory), the
/// simplest first. Readings in states or between points that the channel does not have are passed over.
/// Fails when no reading can be used.
Result<std::vector<OhmFault>> ohmFaults(const Setup& setup, std::span<const OhmReading> readings,
                                        const OhmmeterConditions& conditions, std::size_t most = 10);

}  // namespace core
