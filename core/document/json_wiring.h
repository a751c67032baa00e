// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>
#include <vector>

#include "core/document/json_emitter.h"
#include "core/document/json_fields.h"
#include "core/plan/pins.h"
#include "core/wiring/ohmmeter.h"

// Pins and jumpers of a set-up, and what an ohmmeter showed of a channel. Whether the wiring makes sense is
// not asked here (core/wiring): a pin that is named twice opens, and the Wiring page shows it.

namespace core {

/// The list of pins, a line each: {"connector", "pin"} and what it leads to, "node" or "resistor" and "end";
/// neither for a pin that leads nowhere.
void writePins(JsonEmitter& out, std::string_view key, const Wiring& wiring);
Wiring readPins(const JsonPlace& at);

void writeJumpers(JsonEmitter& out, std::string_view key, const std::vector<Jumper>& jumpers);
std::vector<Jumper> readJumpers(const JsonPlace& at);

/// The list of readings, a line each; "ohm" is null where the meter showed none (open).
void writeOhmReadings(JsonEmitter& out, std::string_view key, const std::vector<OhmReading>& readings);
/// Refuses a second reading between two points in one state.
std::vector<OhmReading> readOhmReadings(const JsonPlace& at);

Node readNode(const JsonPlace& at);

}  // namespace core
