// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

#include "core/circuit/bridge.h"
#include "core/document/json_emitter.h"
#include "core/document/json_fields.h"

namespace core {

/// How a bridge is connected where that is not as its template says. Only what differs is written, nothing
/// when nothing does. What is of a lead that the bridge has not got stays, like the lead's resistance.
void writeHookup(JsonEmitter& out, std::string_view key, const Hookup& hookup);
Hookup readHookup(const JsonPlace& at);

}  // namespace core
