// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>

#include "core/document/edits.h"
#include "core/plan/prediction.h"
#include "tests/support/two_sided.h"

namespace sample {

/// A three-wire quarter bridge of 350 ohm, gauge factor 2, on 2 ohm leads, with three resistors each
/// over the completion arm (positive) and over the gauge (negative), and the nine-step sequence.
inline core::Channel nineStepChannel() {
  using namespace core;
  Channel channel;
  channel.name = "TP-01";
  for (const LeadRole role : {LeadRole::ExcitationPlus, LeadRole::SignalMinus, LeadRole::Return})
    channel.setup.bridge.leads[static_cast<std::size_t>(role)] = Resistance(2);
  for (const double ohm : {174650.0, 87150.0, 58000.0}) {
    channel = withShuntAdded(channel, {"up", Resistance(ohm), Node::Arm2Begin, Node::Arm2End, Resistance(0)});
    channel =
        withShuntAdded(channel, {"down", Resistance(ohm), Node::Arm1Begin, Node::Arm1End, Resistance(0)});
  }
  return withTwoSidedSequence(channel, Duration(2));
}

/// `channel` with one more check that reads `gain` times what is expected, plus `offset`.
inline core::Channel withCheckReading(core::Channel channel, double gain, double offset = 0) {
  const core::SetupPrediction prediction = core::predict(channel.setup);
  channel = core::withCheckAdded(channel, {});
  for (std::size_t step = 0; step < prediction.steps.size(); ++step) {
    const core::Reading shown(gain * prediction.steps[step]->reading.base() + offset);
    channel = core::withReading(channel, channel.checks.size() - 1, step, core::Measured{shown, {}, {}, {}});
  }
  return channel;
}

inline core::Document documentOf(std::initializer_list<core::Channel> channels) {
  core::Document document;
  for (const core::Channel& channel : channels)
    document = core::withChannelInserted(document, document.channels.size(), channel);
  return document;
}

}  // namespace sample
