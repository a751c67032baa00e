// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/document/edits.h"

#include <algorithm>
#include <map>
#include <utility>

#include "core/circuit/hookup.h"
#include "core/document/carried_names.h"
#include "core/units/language.h"

namespace core {
namespace {

/// "TP-01 (2)" without its number.
std::string withoutNumber(const std::string& name) {
  const std::size_t open = name.rfind(" (");
  if (open == std::string::npos || name.back() != ')' || open + 3 >= name.size()) return name;
  const bool digits = std::all_of(name.begin() + static_cast<std::ptrdiff_t>(open) + 2, name.end() - 1,
                                  [](char c) { return c >= '0' && c <= '9'; });
  return digits ? name.substr(0, open) : name;
}

/// `wanted`, with another number behind it while `taken` says somebody else has it.
template <class Taken>
std::string numberedUntilFree(const std::string& wanted, const Taken& taken) {
  if (!taken(wanted)) return wanted;
  const std::string name = withoutNumber(wanted);
  for (int number = 2;; ++number) {
    std::string candidate = name + " (" + std::to_string(number) + ")";
    if (!taken(candidate)) return candidate;
  }
}

std::string uniqueShuntName(const std::vector<Shunt>& shunts, const std::string& name, std::size_t except) {
  return numberedUntilFree(name.empty() ? "shunt" : name, [&](const std::string& candidate) {
    for (std::size_t k = 0; k < shunts.size(); ++k)
      if (k != except && shunts[k].name == candidate) return true;
    return false;
  });
}

bool closesTheSame(const std::vector<Step>& a, const std::vector<Step>& b) {
  return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                    [](const Step& x, const Step& y) { return x.closed == y.closed; });
}

/// Applies `change` to the readings of each open check.
template <class Change>
void changeOpenReadings(Channel& channel, const Change& change) {
  for (Check& check : channel.checks) {
    if (check.closedWith) continue;
    check.readings.resize(channel.setup.sequence.size());
    change(check.readings);
  }
}

/// Lets remarks of open checks stay with their steps: `stepNow` gives the new index of a step, none when it
/// is gone. A remark outlives its step, as one about the check.
template <class StepNow>
void moveOpenRemarks(Channel& channel, const StepNow& stepNow) {
  for (Check& check : channel.checks)
    if (!check.closedWith)
      for (Remark& remark : check.remarks)
        if (remark.step) remark.step = stepNow(*remark.step);
}

template <class T>
void moveWithin(std::vector<T>& values, std::size_t from, std::size_t to) {
  T moved = std::move(values[from]);
  values.erase(values.begin() + static_cast<std::ptrdiff_t>(from));
  values.insert(values.begin() + static_cast<std::ptrdiff_t>(to), std::move(moved));
}

bool isOfShunt(const Input& input) {
  return input.kind == InputKind::Shunt || input.kind == InputKind::ShuntWires ||
         input.kind == InputKind::ShuntContact;
}

/// What is stated when shunt `index` is gone: nothing about it, the same about all others.
std::map<Input, Uncertainty> withoutShunt(const std::map<Input, Uncertainty>& stated, std::size_t index) {
  std::map<Input, Uncertainty> kept;
  for (const auto& [input, uncertainty] : stated) {
    const bool ofShunt = isOfShunt(input);
    if (ofShunt && input.index == index) continue;
    kept.emplace(Input{input.kind, input.index - (ofShunt && input.index > index)}, uncertainty);
  }
  return kept;
}

}  // namespace

Document withChannel(Document document, std::size_t index, Channel channel) {
  if (*document.channels[index] == channel) return document;
  document.channels[index] = std::make_shared<const Channel>(std::move(channel));
  return document;
}

Document withChannelInserted(Document document, std::size_t index, Channel channel) {
  channel.name = uniqueChannelName(document, channel.name);
  document.channels.insert(document.channels.begin() + static_cast<std::ptrdiff_t>(index),
                           std::make_shared<const Channel>(std::move(channel)));
  return document;
}

Document withChannelRemoved(Document document, std::size_t index) {
  document.channels.erase(document.channels.begin() + static_cast<std::ptrdiff_t>(index));
  return document;
}

std::string uniqueChannelName(const Document& document, const std::string& name, std::size_t except) {
  return numberedUntilFree(name.empty() ? "channel" : name, [&](const std::string& candidate) {
    for (std::size_t k = 0; k < document.channels.size(); ++k)
      if (k != except && document.channels[k]->name == candidate) return true;
    return false;
  });
}

Channel withBridgeType(Channel channel, BridgeType type) {
  Setup& setup = channel.setup;
  setup.bridge.type = type;
  const BridgeTemplate& shape = templateOf(type);
  if (!shape.senseLeads) setup.bridge.sixWire = false;
  std::array<bool, leadRoleCount> used{};
  for (const Wire& wire : wiresOf(setup.bridge)) used[static_cast<std::size_t>(wire.role)] = true;
  for (std::size_t role = 0; role < leadRoleCount; ++role)
    if (!used[role]) setup.bridge.leads[role] = Resistance(0);
  setup.bridge.hookup = hookupInUse(setup.bridge);
  if (type != BridgeType::Transducer)
    setup.instrument.bridgeFactor = shape.bridgeFactor(setup.bridge.gauge.poissonRatio);
  return channel;
}

Channel withShuntAdded(Channel channel, Shunt shunt) {
  shunt.name = uniqueShuntName(channel.setup.shunts, shunt.name, SIZE_MAX);
  channel.setup.shunts.push_back(std::move(shunt));
  return channel;
}

Channel withShunt(Channel channel, std::size_t index, Shunt shunt) {
  shunt.name = uniqueShuntName(channel.setup.shunts, shunt.name, index);
  const Shunt before = std::exchange(channel.setup.shunts[index], std::move(shunt));
  carryNames(channel, index, before);
  return channel;
}

Channel withShuntRemoved(Channel channel, std::size_t index) {
  std::erase_if(channel.ohmReadings, [&](const OhmReading& reading) {
    return reading.state.shunt == channel.setup.shunts[index].name;
  });
  channel.setup.shunts.erase(channel.setup.shunts.begin() + static_cast<std::ptrdiff_t>(index));
  for (Step& step : channel.setup.sequence) {
    std::erase(step.closed, index);
    for (std::size_t& closed : step.closed)
      if (closed > index) --closed;
  }
  channel.setup.uncertainties.stated = withoutShunt(channel.setup.uncertainties.stated, index);
  return channel;
}

Channel withShuntAt(Channel channel, std::size_t index, Node a, Node b) {
  channel.setup.shunts[index].a = a;
  channel.setup.shunts[index].b = b;
  return channel;
}

Channel withUncertainty(Channel channel, Input input, std::optional<Uncertainty> uncertainty) {
  auto& stated = channel.setup.uncertainties.stated;
  if (uncertainty)
    stated.insert_or_assign(input, *std::move(uncertainty));
  else
    stated.erase(input);
  return channel;
}

Channel withCorrelation(Channel channel, const std::string& group, std::optional<double> coefficient) {
  auto& groups = channel.setup.uncertainties.groups;
  if (coefficient)
    groups.insert_or_assign(group, *coefficient);
  else
    groups.erase(group);
  return channel;
}

Channel withStep(Channel channel, std::size_t index, Step step) {
  std::sort(step.closed.begin(), step.closed.end());
  step.closed.erase(std::unique(step.closed.begin(), step.closed.end()), step.closed.end());
  channel.setup.sequence[index] = std::move(step);
  return channel;
}

Channel withStepInserted(Channel channel, std::size_t index, Step step) {
  const auto at = static_cast<std::ptrdiff_t>(index);
  changeOpenReadings(channel, [&](auto& readings) { readings.insert(readings.begin() + at, std::nullopt); });
  moveOpenRemarks(channel, [&](std::size_t old) { return std::optional(old + (old >= index)); });
  channel.setup.sequence.insert(channel.setup.sequence.begin() + at, std::move(step));
  return channel;
}

Channel withStepRemoved(Channel channel, std::size_t index) {
  const auto at = static_cast<std::ptrdiff_t>(index);
  changeOpenReadings(channel, [&](auto& readings) { readings.erase(readings.begin() + at); });
  moveOpenRemarks(channel, [&](std::size_t step) {
    return step == index ? std::nullopt : std::optional(step - (step > index));
  });
  channel.setup.sequence.erase(channel.setup.sequence.begin() + at);
  return channel;
}

Channel withStepMoved(Channel channel, std::size_t from, std::size_t to) {
  changeOpenReadings(channel, [&](auto& readings) { moveWithin(readings, from, to); });
  moveOpenRemarks(channel, [&](std::size_t step) {
    if (step == from) return std::optional(to);
    const bool closesUp = from < step && step <= to, makesRoom = to <= step && step < from;
    return std::optional(step + makesRoom - closesUp);
  });
  moveWithin(channel.setup.sequence, from, to);
  return channel;
}

Channel withSequence(Channel channel, std::vector<Step> sequence) {
  const bool same = closesTheSame(channel.setup.sequence, sequence);
  channel.setup.sequence = std::move(sequence);
  for (Check& check : channel.checks)
    if (!check.closedWith && !same) check.readings.assign(channel.setup.sequence.size(), std::nullopt);
  return channel;
}

bool dropsReadings(const Channel& channel, const std::vector<Step>& sequence) {
  if (closesTheSame(channel.setup.sequence, sequence)) return false;
  return std::any_of(channel.checks.begin(), channel.checks.end(), [](const Check& check) {
    return !check.closedWith && std::any_of(check.readings.begin(), check.readings.end(),
                                            [](const auto& reading) { return reading.has_value(); });
  });
}

std::string usualCheckName(const Channel& channel) {
  switch (channel.checks.size()) {
    case 0:
      return say("pre-test");
    case 1:
      return say("post-test");
    default:
      return say("check {1}", {std::to_string(channel.checks.size() + 1)});
  }
}

Channel withCheckAdded(Channel channel, Check check) {
  check.name = numberedUntilFree(check.name.empty() ? "check" : check.name, [&](const std::string& name) {
    return std::any_of(channel.checks.begin(), channel.checks.end(),
                       [&](const Check& c) { return c.name == name; });
  });
  check.readings.resize(channel.setup.sequence.size());
  channel.checks.push_back(std::move(check));
  return channel;
}

Channel withCheckRemoved(Channel channel, std::size_t check) {
  channel.checks.erase(channel.checks.begin() + static_cast<std::ptrdiff_t>(check));
  return channel;
}

Channel withReading(Channel channel, std::size_t check, std::size_t step, std::optional<Measured> reading) {
  auto& readings = channel.checks[check].readings;
  readings.resize(std::max(readings.size(), step + 1));
  readings[step] = std::move(reading);
  return channel;
}

Channel withCheckClosed(Channel channel, std::size_t check) {
  channel.checks[check].closedWith = std::make_shared<const Setup>(channel.setup);
  channel.checks[check].readings.resize(channel.setup.sequence.size());
  return channel;
}

Channel withCheckReopened(Channel channel, std::size_t check) {
  channel.checks[check].closedWith.reset();
  channel.checks[check].readings.resize(channel.setup.sequence.size());
  return channel;
}

}  // namespace core
