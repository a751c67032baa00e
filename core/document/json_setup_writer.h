// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

#include "core/document/json_emitter.h"
#include "core/plan/setup.h"

namespace core {

/// The set-up as the member `key`. What is left out when it is not there: leads that the template does not
/// use, range, input resistance, current source, leaks, the area of the grid, identity, sample rate, mains,
/// the part and the jumpers of a shunt.
void writeSetup(JsonEmitter& out, std::string_view key, const Setup& setup);

}  // namespace core
