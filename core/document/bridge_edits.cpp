// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/document/bridge_edits.h"

#include <algorithm>
#include <array>
#include <string>
#include <utility>

#include "core/circuit/hookup.h"
#include "core/document/edits.h"

namespace core {
namespace {

constexpr double firstStrain = 1e-3;    ///< 1000 um/m
constexpr double firstOutput = 0.5e-3;  ///< V/V; R/(4 Rs) for one arm

void exchangeStatements(Uncertainties& uncertainties, InputKind kind, std::size_t a, std::size_t b) {
  const auto take = [&](std::size_t index) {
    auto node = uncertainties.stated.extract({kind, index});
    return node.empty() ? std::optional<Uncertainty>() : std::optional(std::move(node.mapped()));
  };
  auto ofA = take(a), ofB = take(b);
  if (ofA) uncertainties.stated[{kind, b}] = *std::move(ofA);
  if (ofB) uncertainties.stated[{kind, a}] = *std::move(ofB);
}

bool isBetween(const Bridge& bridge, const Shunt& shunt, std::size_t arm) {
  const Node a = pointOf(bridge, shunt.a), b = pointOf(bridge, shunt.b);
  const Node begin = pointOf(bridge, armBegin(arm)), end = pointOf(bridge, armEnd(arm));
  return (a == begin && b == end) || (a == end && b == begin);
}

/// The point at the other end of the lead that is fixed to the terminal `node`, else its own.
Node throughLead(const Bridge& bridge, Node node) {
  const Node point = pointOf(bridge, node);
  for (const Wire& wire : wiresOf(bridge))
    if (pointOf(bridge, wire.from) == point) return pointOf(bridge, wire.to);
  return point;
}

/// How far a node is from an arm's end: 0 there, 1 at the far end of its lead, else more.
int distance(const Bridge& bridge, Node node, Node end) {
  const Node wanted = pointOf(bridge, end);
  if (pointOf(bridge, node) == wanted) return 0;
  return throughLead(bridge, node) == wanted ? 1 : 3;
}

/// An arm and the nodes of a shunt across it that keep a and b on the side where they are.
struct Across {
  std::size_t arm = 0;
  bool turned = false;  ///< a at the arm's end
  int distance = 0;
};

Across nearestArm(const Bridge& bridge, const Shunt& shunt) {
  Across nearest{0, false, 100};
  for (std::size_t arm = 0; arm < 4; ++arm)
    for (const bool turned : {false, true}) {
      const Node a = turned ? armEnd(arm) : armBegin(arm), b = turned ? armBegin(arm) : armEnd(arm);
      const int far = distance(bridge, shunt.a, a) + distance(bridge, shunt.b, b);
      if (far < nearest.distance) nearest = {arm, turned, far};
    }
  return nearest;
}

bool isTaken(const Setup& setup, const std::string& resistor, std::size_t arm) {
  return std::any_of(setup.shunts.begin(), setup.shunts.end(), [&](const Shunt& other) {
    return resistorName(other) == resistor && armUnder(setup.bridge, other) == arm;
  });
}

/// `shunt` as it would lie at the next arm that is free for it; as it lies, where none is.
Shunt atNextArm(const Setup& setup, Shunt shunt) {
  const auto under = armUnder(setup.bridge, shunt);
  if (!under) return shunt;
  for (std::size_t step = 1; step < 4; ++step) {
    const std::size_t arm = (*under + step) % 4;
    if (isTaken(setup, resistorName(shunt), arm)) continue;
    shunt.a = armBegin(arm);
    shunt.b = armEnd(arm);
    shunt.jumpers.clear();
    break;
  }
  return shunt;
}

/// The lead that is fixed to the terminal where `role` belongs.
LeadRole leadAtTerminalOf(const Bridge& bridge, LeadRole role) {
  Bridge plain = bridge;
  plain.hookup = {};
  for (const Wire& own : wiresOf(plain))
    if (own.role == role)
      for (const Wire& wire : wiresOf(bridge))
        if (wire.from == own.from) return wire.role;
  return role;
}

void straightenLead(Bridge& bridge, LeadRole role) {
  const LeadRole other = leadAtTerminalOf(bridge, role);
  if (other != role) bridge = withExchanged(std::move(bridge), {role, other});
  bridge.hookup.broken[static_cast<std::size_t>(role)] = false;
  std::erase_if(bridge.hookup.touching,
                [&](const LeadPair& pair) { return pair.a == role || pair.b == role; });
}

}  // namespace

Resistance firstShunt(const Setup& setup, std::size_t arm) {
  if (!setup.shunts.empty()) return setup.shunts.back().resistance;
  const Bridge& bridge = setup.bridge;
  const double change = isTransducer(bridge) ? 4 * firstOutput : gaugeFactorOf(bridge.gauge) * firstStrain;
  return bridge.arms[arm] / change;
}

Channel withShuntOverArm(Channel channel, std::size_t arm) {
  Shunt shunt;
  shunt.name = "R" + std::to_string(channel.setup.shunts.size() + 1);
  shunt.resistance = firstShunt(channel.setup, arm);
  shunt.a = armBegin(arm);
  shunt.b = armEnd(arm);
  return withShuntAdded(std::move(channel), std::move(shunt));
}

Channel withSenseLeads(Channel channel, bool sixWire) {
  Bridge& bridge = channel.setup.bridge;
  if (!templateOf(bridge.type).senseLeads || bridge.sixWire == sixWire) return channel;
  bridge.sixWire = sixWire;
  const auto lead = [&](LeadRole role) -> Lead& { return bridge.leads[static_cast<std::size_t>(role)]; };
  lead(LeadRole::SensePlus) = sixWire ? lead(LeadRole::ExcitationPlus) : Lead(Resistance(0));
  lead(LeadRole::SenseMinus) = sixWire ? lead(LeadRole::ExcitationMinus) : Lead(Resistance(0));
  return channel;
}

std::optional<std::size_t> shuntOnSenseTerminal(const Setup& setup) {
  const auto isSense = [](Node node) { return node == Node::SensePlus || node == Node::SenseMinus; };
  for (std::size_t k = 0; k < setup.shunts.size(); ++k)
    if (isSense(setup.shunts[k].a) || isSense(setup.shunts[k].b)) return k;
  return std::nullopt;
}

Channel withArmsExchanged(Channel channel, std::size_t a, std::size_t b) {
  if (a == b) return channel;
  Bridge& bridge = channel.setup.bridge;
  std::swap(bridge.arms[a], bridge.arms[b]);
  std::swap(bridge.leaks[a], bridge.leaks[b]);
  for (const InputKind kind : {InputKind::Arm, InputKind::LeakAcross, InputKind::LeakToStructure})
    exchangeStatements(channel.setup.uncertainties, kind, a, b);
  return channel;
}

Channel withLeakMoved(Channel channel, bool toStructure, std::size_t from, std::size_t to) {
  if (from == to) return channel;
  Leak &leak = channel.setup.bridge.leaks[from], &there = channel.setup.bridge.leaks[to];
  const InputKind kind = toStructure ? InputKind::LeakToStructure : InputKind::LeakAcross;
  channel.setup.uncertainties.stated.erase({kind, to});
  exchangeStatements(channel.setup.uncertainties, kind, from, to);
  if (toStructure) {
    there.toStructure = std::exchange(leak.toStructure, std::nullopt);
    there.place = std::exchange(leak.place, Leak{}.place);
  } else {
    there.across = std::exchange(leak.across, std::nullopt);
  }
  return channel;
}

std::optional<std::size_t> armUnder(const Bridge& bridge, const Shunt& shunt) {
  for (std::size_t arm = 0; arm < 4; ++arm)
    if (isBetween(bridge, shunt, arm)) return arm;
  const Across nearest = nearestArm(bridge, shunt);
  return nearest.distance <= 2 ? std::optional(nearest.arm) : std::nullopt;
}

Channel withShuntsDuplicated(Channel channel, const std::vector<std::size_t>& shunts) {
  for (const std::size_t index : shunts) {
    Shunt copy = atNextArm(channel.setup, channel.setup.shunts[index]);
    channel = withShuntAdded(std::move(channel), std::move(copy));
  }
  return channel;
}

Straighten allOf(const Setup& setup) {
  Straighten all;
  all.arms = {0, 1, 2, 3};
  for (std::size_t k = 0; k < setup.shunts.size(); ++k) all.shunts.push_back(k);
  all.hookup = true;
  return all;
}

Channel withStraightened(Channel channel, const Straighten& what) {
  if (what.hookup) channel.setup.bridge.hookup = {};
  for (const LeadRole role : what.leads) straightenLead(channel.setup.bridge, role);
  for (const std::size_t arm : what.arms) channel.setup.bridge.arms[arm] = channel.setup.bridge.gauge.nominal;
  for (const std::size_t index : what.shunts) {
    const Across to = nearestArm(channel.setup.bridge, channel.setup.shunts[index]);
    const Node begin = armBegin(to.arm), end = armEnd(to.arm);
    channel = withShuntAt(std::move(channel), index, to.turned ? end : begin, to.turned ? begin : end);
  }
  return channel;
}

}  // namespace core
