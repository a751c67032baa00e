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
  std::string text;  ///< "arm 1 is open", "leads P+ and S- are swapped at the instrument", "R1 is about 59.9
                     ///< kΩ instead of 174.65 kΩ"
  std::vector<std::string> alike = {};    ///< faults that would show the same in every one of these readings
  std::optional<Resistance> fitted = {};  ///< of the wrong resistor, the value that fits best
  double misfit = 0;         ///< mean square of (measured - expected) / tolerance, each cut off at 10
  bool explains = false;     ///< every reading lies within its tolerance of it
  std::size_t unknowns = 0;  ///< numbers that were fitted
};

/// `text`, with those that cannot be told from it: "arm 1 is open, or lead P+ is open". At most three of
/// these by name.
std::string ohmFaultText(const OhmFault& fault);

/// The faults that fit `readings` best, best first, "nothing is wrong" among them; at most `most`.
///
/// Single faults only: each arm, lead, resistor, shunt and the instrument's input open or shorted (a shunt:
/// never or always closed), each two terminals shorted, each two leads exchanged at the instrument, each two
/// jumpers of a shunt exchanged, each two resistors and each two shunts in each other's place, each arm, lead
/// and resistor of another value; of exchanged resistors and shunts the first forty. Leads exchanged at the
/// bridge read the same but for the difference of their resistances. A fault that would change none of these
/// readings is left out; faults that would change all of them alike stand together in one entry. An open
/// reading where a resistance is expected, or the other way round, counts as the cut-off.
///
/// Ranked by whether they explain everything ("nothing is wrong" first among those), then by misfit with a
/// penalty for each number fitted (Akaike's criterion for few readings, from memory; a tolerance counts as
/// two standard deviations), the simplest first. Readings in states or between points that the channel does
/// not have are passed over. Fails when no reading can be used, and as `ohmExpectations` does.
Result<std::vector<OhmFault>> ohmFaults(const Setup& setup, std::span<const OhmReading> readings,
                                        const OhmmeterConditions& conditions, std::size_t most = 10);

}  // namespace core
