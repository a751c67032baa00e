// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/document/carried_names.h"

#include <algorithm>
#include <string>

namespace core {
namespace {

bool isOf(const Pin& pin, const std::string& resistor) {
  const auto* end = std::get_if<ResistorEnd>(&pin.use);
  return end && end->resistor == resistor;
}

/// Whether the ends of a resistor that was called `from` are now those of `to`.
bool endsFollow(const Setup& setup, const std::string& from, const std::string& to) {
  if (from == to) return false;
  const bool stillUsed = std::any_of(setup.shunts.begin(), setup.shunts.end(),
                                     [&](const Shunt& shunt) { return resistorName(shunt) == from; });
  const bool hasPins = std::any_of(setup.wiring.pins.begin(), setup.wiring.pins.end(),
                                   [&](const Pin& pin) { return isOf(pin, to); });
  return !stillUsed && !hasPins;
}

void renameEnd(OhmPoint& point, const std::string& from, const std::string& to) {
  if (auto* end = std::get_if<ResistorEnd>(&point); end && end->resistor == from) end->resistor = to;
}

}  // namespace

void carryNames(Channel& channel, std::size_t index, const Shunt& before) {
  const Shunt& now = channel.setup.shunts[index];
  for (OhmReading& reading : channel.ohmReadings)
    if (reading.state.shunt == before.name) reading.state.shunt = now.name;
  const std::string &from = resistorName(before), &to = resistorName(now);
  if (!endsFollow(channel.setup, from, to)) return;
  for (Pin& pin : channel.setup.wiring.pins)
    if (isOf(pin, from)) std::get<ResistorEnd>(pin.use).resistor = to;
  for (OhmReading& reading : channel.ohmReadings) {
    renameEnd(reading.from, from, to);
    renameEnd(reading.to, from, to);
  }
}

}  // namespace core
