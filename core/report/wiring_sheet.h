// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/report.h"
#include "core/wiring/ohmmeter_sheet.h"

namespace core {

/// A pair of points that the ohmmeter sheet lists in `state`: with nothing laid each two terminals and both
/// ends of each resistor that has pins; else each two of the shunt's places and its resistor's ends, and the
/// two diagonals of the bridge. Points that are one place are left out.
struct OhmPair {
  OhmPoint from;
  OhmPoint to;
};
std::vector<OhmPair> ohmPairs(const Setup& setup, const WiringState& state);

/// What somebody with wires in his hands has to know, before anything else.
std::vector<std::string> wiringCautions();

/// How the bridge is connected where that is not as its template says, and that the values are those of that
/// connection; else empty.
std::string connectionText(const Bridge& bridge);
/// A sentence for each lead that is broken and each two that touch.
std::vector<std::string> leadFaults(const Bridge& bridge);

/// Whether the instrument is connected, and how good the ohmmeter is.
std::string ohmConditionsText(const OhmmeterConditions& conditions);

/// "☐", to be ticked by hand.
std::string_view tickBox();

/// Faults of pins and jumpers in words, errors first.
Table wiringFaultTable(const Setup& setup);
/// The pins in the order they lie in, with what each leads to and a box to tick.
Table pinTable(const Setup& setup);
/// The jumpers of each shunt with its polarity and place, a row a jumper, with boxes to tick when it is laid
/// and when it is taken out again.
Table jumperTable(const Setup& setup);
/// What the ohmmeter must read in one state, what it did read, and a box to tick. Fails as
/// `ohmExpectations` does.
Result<Table> ohmTable(const Channel& channel, const WiringState& state,
                       const OhmmeterConditions& conditions);
/// The faults that fit the channel's readings best; no rows without a reading that can be used.
Table ohmFaultTable(const Channel& channel, const OhmmeterConditions& conditions, std::size_t most = 5);

/// The wiring and ohmmeter sheets of channel `index` of `document`, to be printed and taken to the article:
/// cautions, faults, drawing of the bridge, pins, jumpers, readings state by state.
Report wiringSheet(const Document& document, std::size_t index, const OhmmeterConditions& conditions);

}  // namespace core
