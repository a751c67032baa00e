// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/plan/setup.h"
#include "core/report/report.h"

// What questions say of their set-up. Internal to core/practice.

namespace core {

/// "right across arm 2", "from terminal P+ to terminal S-".
std::string placeText(const Bridge& bridge, const Shunt& shunt);
/// "59 kΩ right across arm 2".
std::string shuntText(const Bridge& bridge, const Shunt& shunt);
std::string ohmText(Resistance value);  ///< "59 kΩ", six digits at most

/// Bridge, arms, leads, how it is connected, leaks and each shunt, by its name.
std::vector<Entry> givenOf(const Setup& setup);
/// What the instrument shows and by which settings.
Entry instrumentEntry(const Setup& setup);

/// "+0.123 mV/V": of the output, with its sign.
std::string signedOutput(Output output);
/// "-739 µm/m": four significant digits and the sign.
std::string signedReading(const Setup& setup, Reading reading);
/// Places after the point that a display with five digits has for readings of up to `greatest`.
int displayPlaces(double greatest);

}  // namespace core
