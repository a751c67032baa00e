// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "core/document/document.h"

namespace core {

/// What the ohmmeter showed between two points in one state, in place of what was there before.
Channel withOhmReading(Channel channel, OhmReading reading);
Channel withoutOhmReading(Channel channel, const WiringState& state, const OhmPoint& from,
                          const OhmPoint& to);
Channel withoutOhmReadings(Channel channel);

}  // namespace core
