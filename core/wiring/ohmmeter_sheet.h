// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/wiring/ohmmeter.h"

namespace core {

/// What the ohmmeter is held to.
struct OhmmeterConditions {
  bool instrumentConnected =
      true;  ///< false: unplugged, so that completion arms in it and its input are away
  double relativeError =
      0.002;  ///< of the ohmmeter, half width; common practice for a hand-held one, no source
  Resistance absoluteError{0.1};  ///< of the ohmmeter and its leads, half width
  Resistance openBeyond{20e6};    ///< it shows no reading above this

  friend bool operator==(const OhmmeterConditions&, const OhmmeterConditions&) = default;
};

/// One line of the sheet.
struct OhmExpectation {
  OhmPoint from;
  OhmPoint to;
  std::optional<Resistance> ohm;  ///< none: open, no reading
  Resistance tolerance{0};        ///< half width: k u of arms, leads and shunts, and the ohmmeter's own error
};

/// "all shunts open", "R1 on arm 2: after jumper 1 of 2 (J2-A to J1-C)", "R1 on arm 2 closed".
std::string wiringStateText(const Setup& setup, const WiringState& state);
/// All states in the order of the work: all open, then for each shunt after each jumper, or closed.
std::vector<WiringState> wiringStates(const Setup& setup);
/// The points that there are: terminals and arm ends of the bridge that are different points, then the ends
/// of resistors that have pins.
std::vector<OhmPoint> ohmPoints(const Setup& setup);

/// What must be read between every two of `points` in `state`. Resistors that are not connected count between
/// their own ends. Expected values come from the exact network; tolerances from the same statements of
/// uncertainty as the budget. Fails when the network cannot be solved.
Result<std::vector<OhmExpectation>> ohmExpectations(const Setup& setup, const WiringState& state,
                                                    std::span<const OhmPoint> points,
                                                    const OhmmeterConditions& conditions);

}  // namespace core
