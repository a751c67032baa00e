// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/document/ohm_edits.h"

#include <algorithm>
#include <utility>

namespace core {
namespace {

bool isAt(const OhmReading& reading, const WiringState& state, const OhmPoint& from, const OhmPoint& to) {
  return reading.state == state &&
         ((reading.from == from && reading.to == to) || (reading.from == to && reading.to == from));
}

}  // namespace

Channel withOhmReading(Channel channel, OhmReading reading) {
  for (OhmReading& present : channel.ohmReadings)
    if (isAt(present, reading.state, reading.from, reading.to)) {
      present = std::move(reading);
      return channel;
    }
  channel.ohmReadings.push_back(std::move(reading));
  return channel;
}

Channel withoutOhmReading(Channel channel, const WiringState& state, const OhmPoint& from,
                          const OhmPoint& to) {
  std::erase_if(channel.ohmReadings,
                [&](const OhmReading& reading) { return isAt(reading, state, from, to); });
  return channel;
}

Channel withoutOhmReadings(Channel channel) {
  channel.ohmReadings.clear();
  return channel;
}

}  // namespace core
