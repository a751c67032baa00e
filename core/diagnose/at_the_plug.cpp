// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diagnose/at_the_plug.h"

#include "core/circuit/hookup.h"
#include "core/circuit/hookup_words.h"
#include "core/circuit/network.h"
#include "core/units/language.h"

namespace core {
namespace {

/// A lead that is exchanged keeps its name, and so does the terminal that it is at.
std::string endName(const Bridge& bridge, Node node, bool ofArticle) {
  for (const Wire& wire : ofArticle ? wiresOf(bridge) : templateOf(bridge.type).wires)
    if (pointOf(bridge, wire.from) == pointOf(bridge, node))
      return say(ofArticle ? sayLater("lead {1}") : sayLater("terminal {1}"), {leadWord(wire.role)});
  return say("terminal {1}", {nodeName(pointOf(bridge, node))});
}

OhmPlaces placesBetween(const Bridge& bridge, Node a, Node b, bool ofArticle) {
  return {a, b, say("{1} to {2}", {endName(bridge, a, ofArticle), endName(bridge, b, ofArticle)})};
}

/// The instrument's end of the wire that leads to the point of `node`; `node` itself without one.
Node throughWire(const Bridge& bridge, Node node) {
  for (const Wire& wire : wiresOf(bridge))
    if (wire.role != LeadRole::Return && pointOf(bridge, wire.to) == pointOf(bridge, node)) return wire.from;
  return node;
}

NodeIndex indexOf(const Bridge& bridge, Node node) { return static_cast<NodeIndex>(pointOf(bridge, node)); }

void addArm(const Bridge& bridge, std::size_t arm, Network& network) {
  const NodeIndex begin = indexOf(bridge, armBegin(arm)), end = indexOf(bridge, armEnd(arm));
  network.branches.push_back({"arm", begin, end, bridge.arms[arm]});
  if (const auto& leak = bridge.leaks[arm].across) network.branches.push_back({"leak", begin, end, *leak});
}

void addLeads(const Bridge& bridge, Network& network) {
  std::array<NodeIndex, leadRoleCount> gaugeEnd{};
  for (const Wire& wire : wiresOf(bridge)) {
    gaugeEnd[static_cast<std::size_t>(wire.role)] = indexOf(bridge, wire.to);
    if (!isBroken(bridge, wire.role))
      network.branches.push_back(
          {"lead", indexOf(bridge, wire.from), indexOf(bridge, wire.to), leadResistance(bridge, wire.role)});
  }
  for (const LeadPair& pair : hookupInUse(bridge).touching)
    network.branches.push_back({say("touching leads"), gaugeEnd[static_cast<std::size_t>(pair.a)],
                                gaugeEnd[static_cast<std::size_t>(pair.b)], Resistance(0)});
}

}  // namespace

bool isBeyondPlug(const Bridge& bridge, std::size_t arm) {
  return isTransducer(bridge) || templateOf(bridge.type).atArticle[arm];
}

OhmPlaces placesForLeads(const Bridge& bridge) {
  const std::vector<Wire> wires = wiresOf(bridge);
  for (std::size_t i = 0; i < wires.size(); ++i)
    for (std::size_t j = i + 1; j < wires.size(); ++j)
      if (pointOf(bridge, wires[i].to) == pointOf(bridge, wires[j].to))
        return placesBetween(bridge, wires[i].from, wires[j].from, true);
  return placesForArm(bridge, 0);
}

OhmPlaces placesForArm(const Bridge& bridge, std::size_t arm) {
  const bool beyond = isBeyondPlug(bridge, arm);
  const Node begin = beyond ? throughWire(bridge, armBegin(arm)) : armBegin(arm);
  const Node end = beyond ? throughWire(bridge, armEnd(arm)) : armEnd(arm);
  return placesBetween(bridge, begin, end, beyond);
}

std::optional<Resistance> resistanceAtPlug(const Bridge& bridge, const OhmPlaces& places, bool ofArticle) {
  Network network;
  for (const Node node : allNodes()) network.nodes.emplace_back(nodeName(node));
  for (const std::size_t arm : {0, 1, 2, 3})
    if (isBeyondPlug(bridge, arm) == ofArticle) addArm(bridge, arm, network);
  if (ofArticle) addLeads(bridge, network);
  const Port port{indexOf(bridge, places.a), indexOf(bridge, places.b)};
  auto solver = Solver::prepare(network, port);
  if (!solver) return Resistance(0);  // joined by leads of zero ohm
  if (auto solved = solver->solve(); !solved) return std::nullopt;
  const double conductance = solver->inputConductance();
  if (!(conductance > 0)) return std::nullopt;
  return Resistance(1 / conductance);
}

}  // namespace core
