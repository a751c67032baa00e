// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>

#include "core/document/document.h"

namespace core {

/// Lets everything in `channel` that names shunt `index`, or the resistor it is made of, follow the shunt,
/// which was `before`: states of ohmmeter readings, pins at the ends of the resistor, points of the ohmmeter
/// there.
///
/// Pins of the resistor stay when another shunt is still made of it, and when the new resistor has pins
/// already.
void carryNames(Channel& channel, std::size_t index, const Shunt& before);

}  // namespace core
