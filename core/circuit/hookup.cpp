// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/circuit/hookup.h"

#include <algorithm>
#include <utility>

namespace core {
namespace {

/// Lead -> the lead whose terminal it is at.
using Places = std::array<std::size_t, leadRoleCount>;

std::size_t index(LeadRole role) { return static_cast<std::size_t>(role); }

Places placesOf(const std::vector<LeadPair>& exchanged) {
  Places places{};
  for (std::size_t role = 0; role < leadRoleCount; ++role) places[role] = role;
  for (const LeadPair& pair : exchanged) std::swap(places[index(pair.a)], places[index(pair.b)]);
  return places;
}

/// The fewest exchanges that give `places`: a ring of n leads takes n - 1.
std::vector<LeadPair> fewestExchanges(Places places) {
  std::vector<LeadPair> pairs;
  for (std::size_t role = 0; role < leadRoleCount; ++role)
    while (places[role] != role) {
      const std::size_t other = places[role];
      pairs.push_back({static_cast<LeadRole>(role), static_cast<LeadRole>(other)});
      std::swap(places[role], places[other]);
    }
  std::reverse(pairs.begin(), pairs.end());  // what undoes the places, the other way round
  return pairs;
}

bool contains(const std::vector<LeadPair>& pairs, const LeadPair& wanted) {
  return std::any_of(pairs.begin(), pairs.end(),
                     [&](const LeadPair& pair) { return samePair(pair, wanted); });
}

}  // namespace

std::optional<LeadRole> leadFromName(std::string_view name) {
  for (std::size_t role = 0; role < leadRoleCount; ++role)
    if (const auto lead = static_cast<LeadRole>(role); leadName(lead) == name) return lead;
  return std::nullopt;
}

bool hasLead(const Bridge& bridge, LeadRole role) {
  const BridgeTemplate& shape = templateOf(bridge.type);
  if (role == LeadRole::SensePlus || role == LeadRole::SenseMinus) return shape.senseLeads && bridge.sixWire;
  return std::any_of(shape.wires.begin(), shape.wires.end(),
                     [role](const Wire& wire) { return wire.role == role; });
}

bool samePair(const LeadPair& a, const LeadPair& b) {
  return (a.a == b.a && a.b == b.b) || (a.a == b.b && a.b == b.a);
}

Hookup hookupInUse(const Bridge& bridge) {
  const auto counts = [&](const LeadPair& pair) {
    return pair.a != pair.b && hasLead(bridge, pair.a) && hasLead(bridge, pair.b);
  };
  Hookup used = bridge.hookup;
  for (std::size_t role = 0; role < leadRoleCount; ++role)
    used.broken[role] = used.broken[role] && hasLead(bridge, static_cast<LeadRole>(role));
  std::erase_if(used.exchanged, [&](const LeadPair& pair) { return !counts(pair); });
  auto fewest = fewestExchanges(placesOf(used.exchanged));
  if (fewest.size() < used.exchanged.size()) used.exchanged = std::move(fewest);
  used.touching.clear();
  for (const LeadPair& pair : bridge.hookup.touching)
    if (counts(pair) && !contains(used.touching, pair)) used.touching.push_back(pair);
  return used;
}

bool asTemplateSays(const Bridge& bridge) { return hookupInUse(bridge) == Hookup{}; }

bool areLeadsInOrder(const Bridge& bridge) {
  const Hookup used = hookupInUse(bridge);
  return used.broken == Hookup{}.broken && used.exchanged.empty() && used.touching.empty();
}

int outputSign(const Bridge& bridge) {
  return bridge.hookup.signalReversed == bridge.hookup.excitationReversed ? 1 : -1;
}

int gaugeSign(const Bridge& bridge) { return bridge.hookup.gaugesReversed ? -1 : 1; }

Bridge withExchanged(Bridge bridge, const LeadPair& pair) {
  bridge.hookup.exchanged.push_back(pair);
  bridge.hookup.exchanged = hookupInUse(bridge).exchanged;
  return bridge;
}

Bridge withTouching(Bridge bridge, const LeadPair& pair, bool touching) {
  auto& pairs = bridge.hookup.touching;
  std::erase_if(pairs, [&](const LeadPair& other) { return samePair(other, pair); });
  if (touching) pairs.push_back(pair);
  return bridge;
}

}  // namespace core
