// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <string>

#include "core/plan/setup.h"

namespace core {

/// The network of step `step` of `setup` (counted from 0) as a netlist that any SPICE runs, so that a
/// prediction can be checked with a program that knows nothing of strain gauges.
///
/// Only resistors, one source with the instrument's excitation (V1, or I1 for constant current) and plain
/// numbers in ohm, volt and ampere are used. Zero-ohm leads and joins are merged nodes, so there is no
/// loop of sources; comments list every node's places and every element: leads as warm as they are, pieces
/// of arms that leak to the structure, leaks, the structure's grounding and the balance network, and
/// how the bridge is connected where that is not as its template says. The source's minus side is ground: P-,
/// or P+ with a reversed excitation. Open shunts, and what joined nodes bypass, stand there as comments. A
/// comment says what the output voltage is to be divided by.
/// The analyses are an operating point, which prints the node voltages, and a sweep of the source over
/// its one value, which prints the output voltage as the instrument has it, V(S+) - V(S-) or with reversed
/// signal wires V(S-) - V(S+), and with sense leads the sensed excitation. Where the first node of one is
/// ground, or both are one, a source of unit gain (E1, E2) brings it to a node of its own, so that it is
/// printed with its sign by programs that do not take v(0,x).
///
/// `title` and names from the document stand on comment lines only, cut to one short line of ASCII;
/// anything else in them becomes a question mark. They cannot become elements or commands.
/// Fails when there is no such step, and as the step's prediction does.
Result<std::string> spiceNetlist(const Setup& setup, std::size_t step, const std::string& title);

}  // namespace core
