// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <utility>

#include "core/diagnose/fault.h"

namespace core {
namespace {

/// Lengthens all leads in proportion; leads that are not entered become alike.
void addToLeads(Bridge& bridge, Resistance each) {
  const std::vector<Wire> wires = wiresOf(bridge);
  double sum = 0;
  for (const Wire& wire : wires) sum += leadResistance(bridge, wire.role).base();
  const double mean = wires.empty() ? 0 : sum / static_cast<double>(wires.size());
  for (const Wire& wire : wires) {
    const double now = leadResistance(bridge, wire.role).base();
    const double more = mean > 0 ? each.base() * now / mean : each.base();
    bridge.leads[static_cast<std::size_t>(wire.role)] = Resistance(std::max(0.0, now + more));
  }
  bridge.leadWarming = {};
}

void addToLead(Bridge& bridge, std::size_t role, Resistance more) {
  // Entered as warm as they are, so that the contact alone is not warmed.
  for (const Wire& wire : wiresOf(bridge))
    bridge.leads[static_cast<std::size_t>(wire.role)] = leadResistance(bridge, wire.role);
  bridge.leadWarming = {};
  bridge.leads[role] = resistanceOf(bridge.leads[role]) + more;
}

/// A shunt that is never closed conducts nothing.
void openShunts(Setup& setup, std::size_t which, bool wholePlace) {
  constexpr double open_ohm = 1e18;
  const std::string name = resistorName(setup.shunts[which]);
  const auto placeOf = [&](const Shunt& shunt) {
    const Node a = pointOf(setup.bridge, shunt.a), b = pointOf(setup.bridge, shunt.b);
    return std::pair(std::min(a, b), std::max(a, b));
  };
  const auto place = placeOf(setup.shunts[which]);
  for (Shunt& shunt : setup.shunts)
    if (wholePlace ? placeOf(shunt) == place : resistorName(shunt) == name)
      shunt.resistance = Resistance(open_ohm);
}

/// Where the wire that ends at the same point begins, or ends; `node` itself without one.
Node otherEnd(const Bridge& bridge, Node node, bool toInstrument) {
  const Node point = pointOf(bridge, node);
  for (const Wire& wire : wiresOf(bridge)) {
    if (wire.role == LeadRole::Return || wire.role == LeadRole::SensePlus ||
        wire.role == LeadRole::SenseMinus)
      continue;
    const Node here = toInstrument ? wire.to : wire.from;
    if (pointOf(bridge, here) == point) return toInstrument ? wire.from : wire.to;
  }
  return node;
}

void moveShunts(Setup& setup, bool toInstrument) {
  for (Shunt& shunt : setup.shunts) {
    shunt.a = otherEnd(setup.bridge, shunt.a, toInstrument);
    shunt.b = otherEnd(setup.bridge, shunt.b, toInstrument);
  }
}

/// Turns each shunt about the signal corner (or the excitation corner) that both arms share: arm 1 goes to 2
/// and 3 to 4, or arm 1 to 4 and 2 to 3.
Node mirrored(Node node, bool aboutSignal) {
  const auto swapped = [node](Node a, Node b) { return node == a ? b : node == b ? a : node; };
  if (node == Node::PPlus || node == Node::PMinus)
    return aboutSignal ? swapped(Node::PPlus, Node::PMinus) : node;
  if (node == Node::SPlus || node == Node::SMinus)
    return aboutSignal ? node : swapped(Node::SPlus, Node::SMinus);
  if (node < Node::Arm1Begin) return node;
  const auto place = static_cast<std::size_t>(node) - static_cast<std::size_t>(Node::Arm1Begin);
  const std::size_t arm = place / 2;
  const bool begin = place % 2 == 0;
  const std::size_t other = aboutSignal ? arm ^ 1U : 3 - arm;
  return begin ? armEnd(other) : armBegin(other);
}

void mirrorShunts(Setup& setup, bool aboutSignal) {
  for (Shunt& shunt : setup.shunts) {
    shunt.a = mirrored(shunt.a, aboutSignal);
    shunt.b = mirrored(shunt.b, aboutSignal);
  }
}

void scaleResistor(Setup& setup, std::size_t which, double factor) {
  const std::string name = resistorName(setup.shunts[which]);
  for (Shunt& shunt : setup.shunts)
    if (resistorName(shunt) == name) shunt.resistance = Resistance(shunt.resistance.base() * factor);
}

void exchangeResistors(Setup& setup, std::size_t which, std::size_t other) {
  const std::string name = resistorName(setup.shunts[which]), otherName = resistorName(setup.shunts[other]);
  const Resistance value = setup.shunts[which].resistance, otherValue = setup.shunts[other].resistance;
  for (Shunt& shunt : setup.shunts) {
    const std::string& own = resistorName(shunt);
    if (own == name)
      shunt.resistance = otherValue;
    else if (own == otherName)
      shunt.resistance = value;
  }
}

void addLeak(Bridge& bridge, std::size_t arm, double conductance_S) {
  std::optional<Resistance>& leak = bridge.leaks[arm].across;
  const double sum = conductance_S + (leak ? 1 / leak->base() : 0.0);
  if (sum > 0)
    leak = Resistance(1 / sum);
  else
    leak.reset();
}

}  // namespace

Setup withFault(Setup setup, const Fault& fault) {
  switch (fault.kind) {
    case CauseKind::Leads:
      addToLeads(setup.bridge, Resistance(fault.size));
      break;
    case CauseKind::LeadContact:
      addToLead(setup.bridge, fault.index, Resistance(fault.size));
      break;
    case CauseKind::ShuntOpen:
      openShunts(setup, fault.index, fault.other == 1);
      break;
    case CauseKind::ShuntPlace:
      moveShunts(setup, fault.index == 0);
      break;
    case CauseKind::ShuntArm:
      mirrorShunts(setup, fault.index == 0);
      break;
    case CauseKind::ShuntValue:
      scaleResistor(setup, fault.index, fault.size);
      break;
    case CauseKind::ShuntsExchanged:
      exchangeResistors(setup, fault.index, fault.other);
      break;
    case CauseKind::CompletionValue:
    case CauseKind::ArmValue:
      setup.bridge.arms[fault.index] = Resistance(setup.bridge.arms[fault.index].base() * fault.size);
      break;
    case CauseKind::Leak:
      addLeak(setup.bridge, fault.index, fault.size);
      break;
    case CauseKind::OpenSense:
      setup.bridge.sixWire = false;
      break;
    default:  // faults of settings, of the order of steps and of readings leave the parts as they are
      break;
  }
  return setup;
}

}  // namespace core
