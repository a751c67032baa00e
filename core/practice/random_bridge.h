// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

#include "core/practice/dice.h"

// Bridges and shunts as people meet them. Internal to core/practice.

namespace core {

/// What a question needs of its bridge beyond its difficulty.
struct BridgeWish {
  bool unequalHalves =
      false;  ///< arms 1 and 2 of another resistance than arms 3 and 4, which are completion resistors
  bool longLeads = false;  ///< where there are leads with resistance
  bool hookup = true;      ///< wires may be reversed
  bool leaks = true;       ///< a gauge may leak
};

/// A bridge of `difficulty` with its instrument, one step without shunts and none with.
Setup randomSetup(Dice& dice, Difficulty difficulty, const BridgeWish& wish = {});

/// A resistor that moves an arm of `arm` by a sane amount: of E24 or E96 or of the trade's calibration
/// values, 100 to 1500 times the arm's resistance.
Resistance randomResistor(Dice& dice, Resistance arm);

/// Adds a shunt named "A", "B", ... in their order and a step that closes it alone.
void addShunt(Setup& setup, Resistance resistor, Node a, Node b);
void addShuntAcross(Setup& setup, Resistance resistor, std::size_t arm);
/// Between the two terminals of the corners that `arm` lies between.
void addShuntAtTerminals(Setup& setup, Resistance resistor, std::size_t arm);
/// Across an arm or, from `Further` on, sometimes between its terminals at the instrument.
void addRandomShunt(Setup& setup, Dice& dice, Difficulty difficulty, Resistance resistor, std::size_t arm);

/// Change of output at `step`; none when the network cannot be solved.
std::optional<Output> changeAt(const Setup& setup, std::size_t step);

/// What the instrument shows at `step`; none when the network cannot be solved.
std::optional<Reading> readingAt(const Setup& setup, std::size_t step);

}  // namespace core
