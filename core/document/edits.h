// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/document/document.h"

// Edits are functions from value to value. Indices count from 0 and must exist. Readings of open
// checks move with their steps; closed checks keep the set-up they were judged by and never change.

namespace core {

/// `document` with channel `index` replaced; the same document when nothing differs.
Document withChannel(Document document, std::size_t index, Channel channel);
/// `channel` put at `index`, its name made unique.
Document withChannelInserted(Document document, std::size_t index, Channel channel);
Document withChannelRemoved(Document document, std::size_t index);
/// `name`, or "name (2)" and so on when another channel than `except` has it.
std::string uniqueChannelName(const Document& document, const std::string& name,
                              std::size_t except = SIZE_MAX);

/// Another template: leads that it lacks become zero, nothing is broken, exchanged or touching there any
/// more, and the instrument's bridge factor follows. Reversals stay. What is stated about uncertainties
/// stays, though it may concern a lead that plays no part now.
Channel withBridgeType(Channel channel, BridgeType type);

/// `shunt` added at the end, its name made unique.
Channel withShuntAdded(Channel channel, Shunt shunt);
/// A shunt's new values; an empty or taken name is made unique. Ohmmeter readings and the pins of its
/// resistor follow its names (carried_names.h).
Channel withShunt(Channel channel, std::size_t index, Shunt shunt);
/// The shunt gone, from the steps too, with what is stated about its uncertainty and what an ohmmeter showed
/// while it was laid. Pins stay where they are.
Channel withShuntRemoved(Channel channel, std::size_t index);
/// The shunt's ends fixed to other nodes.
Channel withShuntAt(Channel channel, std::size_t index, Node a, Node b);

/// Another statement about an input that the channel has; none: back to the usual one of its class.
Channel withUncertainty(Channel channel, Input input, std::optional<Uncertainty> uncertainty);
/// How far the inputs of `group` are correlated; none: they move together (1). What is stated about them
/// stays, and the coefficient stays when the group is empty.
Channel withCorrelation(Channel channel, const std::string& group, std::optional<double> coefficient);

Channel withStep(Channel channel, std::size_t index, Step step);
Channel withStepInserted(Channel channel, std::size_t index, Step step);
Channel withStepRemoved(Channel channel, std::size_t index);
Channel withStepMoved(Channel channel, std::size_t from, std::size_t to);

/// Another sequence. Readings of open checks stay when the same shunts are closed in the same order as
/// before, else they are dropped.
Channel withSequence(Channel channel, std::vector<Step> sequence);
/// Whether `withSequence` would drop a reading.
bool dropsReadings(const Channel& channel, const std::vector<Step>& sequence);

/// What the channel's next check is usually called, in the present language: "pre-test", "post-test", then
/// "check 3" and so on.
std::string usualCheckName(const Channel& channel);
/// An open check without readings at the end, its name made unique.
Channel withCheckAdded(Channel channel, Check check);
Channel withCheckRemoved(Channel channel, std::size_t check);
Channel withReading(Channel channel, std::size_t check, std::size_t step, std::optional<Measured> reading);
/// The check keeps the present set-up from now on.
Channel withCheckClosed(Channel channel, std::size_t check);
/// The check follows the channel again; readings are cut or filled up to the present steps.
Channel withCheckReopened(Channel channel, std::size_t check);

}  // namespace core
