// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/document/wiring_edits.h"

#include <algorithm>
#include <cassert>
#include <map>
#include <set>
#include <utility>

namespace core {
namespace {

bool hasPin(const Wiring& wiring, const PinName& name) {
  return std::any_of(wiring.pins.begin(), wiring.pins.end(),
                     [&](const Pin& pin) { return pin.name == name; });
}

auto at(std::vector<Pin>& pins, std::size_t index) {
  return pins.begin() + static_cast<std::ptrdiff_t>(index);
}

}  // namespace

Channel withPinInserted(Channel channel, std::size_t index, Pin pin) {
  auto& pins = channel.setup.wiring.pins;
  pins.insert(at(pins, index), std::move(pin));
  return channel;
}

Channel withPins(Channel channel, std::vector<Pin> pins) {
  assert(pins.size() >= channel.setup.wiring.pins.size());
  const auto before = std::exchange(channel.setup.wiring.pins, std::move(pins));
  const auto& after = channel.setup.wiring.pins;
  std::map<PinName, PinName> renamed;
  std::set<PinName> seen;
  for (std::size_t k = 0; k < before.size(); ++k) {
    const bool first = seen.insert(before[k].name).second;
    if (!first) renamed.erase(before[k].name);
    if (first && after[k].name != before[k].name) renamed.emplace(before[k].name, after[k].name);
  }
  for (Shunt& shunt : channel.setup.shunts)
    for (Jumper& jumper : shunt.jumpers)
      for (PinName* end : {&jumper.from, &jumper.to})
        if (const auto found = renamed.find(*end); found != renamed.end()) *end = found->second;
  return channel;
}

Channel withPinRemoved(Channel channel, std::size_t index) {
  auto& pins = channel.setup.wiring.pins;
  const PinName gone = pins[index].name;
  pins.erase(at(pins, index));
  if (hasPin(channel.setup.wiring, gone)) return channel;
  for (Shunt& shunt : channel.setup.shunts)
    std::erase_if(shunt.jumpers,
                  [&](const Jumper& jumper) { return jumper.from == gone || jumper.to == gone; });
  return channel;
}

Channel withPinMoved(Channel channel, std::size_t from, std::size_t to) {
  auto& pins = channel.setup.wiring.pins;
  if (from < to) std::rotate(at(pins, from), at(pins, from + 1), at(pins, to + 1));
  if (to < from) std::rotate(at(pins, to), at(pins, from), at(pins, from + 1));
  return channel;
}

Channel withWiring(Channel channel, Wiring wiring) {
  channel.setup.wiring = std::move(wiring);
  return channel;
}

Channel withJumpers(Channel channel, std::size_t shunt, std::vector<Jumper> jumpers) {
  channel.setup.shunts[shunt].jumpers = std::move(jumpers);
  return channel;
}

}  // namespace core
