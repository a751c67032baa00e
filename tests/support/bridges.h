// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <utility>

#include "core/document/edits.h"

namespace sample {

using core::Node;

/// A channel of that template with 2 ohm in each of its leads and no shunts.
inline core::Channel channelOf(core::BridgeType type, bool sixWire = false) {
  core::Channel channel;
  channel.setup.bridge.sixWire = sixWire;
  channel = core::withBridgeType(channel, type);
  for (const core::Wire& wire : core::wiresOf(channel.setup.bridge))
    channel.setup.bridge.leads[static_cast<std::size_t>(wire.role)] = core::Resistance(2);
  return channel;
}

inline core::Channel withShunt(core::Channel channel, std::string name, Node a, Node b) {
  return core::withShuntAdded(std::move(channel), {std::move(name), core::Resistance(174650), a, b, {}});
}

/// A full bridge with a shunt over arm 1 and one over arm 2, in steps 2 and 3 of four.
inline core::Document fullBridge() {
  core::Channel channel = channelOf(core::BridgeType::FullBending);
  channel = withShunt(channel, "over arm 1", Node::Arm1Begin, Node::Arm1End);
  channel = withShunt(channel, "over arm 2", Node::Arm2Begin, Node::Arm2End);
  channel.setup.sequence = {{"zero", {}, core::Duration(2)},
                            {"down", {0}, core::Duration(2)},
                            {"up", {1}, core::Duration(2)},
                            {"zero", {}, core::Duration(2)}};
  return core::withChannelInserted({}, 0, channel);
}

}  // namespace sample
