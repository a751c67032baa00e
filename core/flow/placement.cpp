// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/flow/placement.h"

#include <algorithm>
#include <array>
#include <numeric>
#include <optional>

namespace core {
namespace {

/// The wires that lead somewhere.
std::vector<Wire> soundWires(const Bridge& bridge) {
  std::vector<Wire> wires = wiresOf(bridge);
  std::erase_if(wires, [&](const Wire& wire) { return isBroken(bridge, wire.role); });
  return wires;
}

/// Which corner each node belongs to, joins and leads followed.
class Corners {
 public:
  Corners(const Bridge& bridge, const std::vector<Wire>& wires) {
    std::iota(m_corner.begin(), m_corner.end(), std::size_t{0});
    for (const Join& join : templateOf(bridge.type).joins) unite(join.a, join.b);
    for (const Wire& wire : wires) unite(wire.from, wire.to);
  }

  std::size_t of(Node node) const { return m_corner[static_cast<std::size_t>(node)]; }
  bool between(Node a, Node b, Node c, Node d) const { return of(a) == of(c) && of(b) == of(d); }
  bool joins(const Shunt& shunt, Node c, Node d) const {
    return between(shunt.a, shunt.b, c, d) || between(shunt.b, shunt.a, c, d);
  }

 private:
  void unite(Node a, Node b) { std::replace(m_corner.begin(), m_corner.end(), of(b), of(a)); }

  std::array<std::size_t, nodeCount> m_corner{};
};

/// The leads on the way from one point to another, through leads and joins alone. There are no loops of them.
class Ways {
 public:
  Ways(const Bridge& bridge, const std::vector<Wire>& wires) : m_bridge(bridge), m_wires(wires) {}

  std::optional<std::vector<LeadRole>> between(Node from, Node to) const {
    std::vector<LeadRole> way;
    if (!walk(pointOf(m_bridge, from), pointOf(m_bridge, to), way)) return std::nullopt;
    return way;
  }

 private:
  bool walk(Node at, Node to, std::vector<LeadRole>& way) const {
    if (at == to) return true;
    for (const Wire& wire : m_wires) {
      if (std::find(way.begin(), way.end(), wire.role) != way.end()) continue;
      const Node from = pointOf(m_bridge, wire.from), end = pointOf(m_bridge, wire.to);
      if (from != at && end != at) continue;
      way.push_back(wire.role);
      if (walk(from == at ? end : from, to, way)) return true;
      way.pop_back();
    }
    return false;
  }

  const Bridge& m_bridge;
  const std::vector<Wire>& m_wires;
};

/// The leads between the shunt's two ends and the two places it belongs to.
std::vector<LeadRole> leadsBetween(const Ways& ways, const Shunt& shunt, Node atA, Node atB) {
  std::vector<LeadRole> leads;
  for (const auto& [end, place] : {std::pair(shunt.a, atA), std::pair(shunt.b, atB)})
    if (const auto way = ways.between(end, place)) leads.insert(leads.end(), way->begin(), way->end());
  std::sort(leads.begin(), leads.end());
  return leads;
}

}  // namespace

ShuntPlacement placementOf(const Bridge& bridge, const Shunt& shunt) {
  using Kind = ShuntPlacement::Kind;
  const std::vector<Wire> wires = soundWires(bridge);
  const Corners corners(bridge, wires);
  const Ways ways(bridge, wires);
  if (corners.of(shunt.a) == corners.of(shunt.b))
    return {Kind::Leads, 0, false, leadsBetween(ways, shunt, shunt.b, shunt.b)};
  for (const std::size_t arm : {0, 1, 2, 3}) {
    const Node begin = armBegin(arm), end = armEnd(arm);
    if (!corners.joins(shunt, begin, end)) continue;
    const bool reversed = !corners.between(shunt.a, shunt.b, begin, end);
    return {Kind::Arm, arm, reversed,
            leadsBetween(ways, shunt, reversed ? end : begin, reversed ? begin : end)};
  }
  const auto across = [&](Kind kind, Node c, Node d) -> ShuntPlacement {
    const bool swapped = !corners.between(shunt.a, shunt.b, c, d);
    return {kind, 0, swapped, leadsBetween(ways, shunt, swapped ? d : c, swapped ? c : d)};
  };
  if (corners.joins(shunt, Node::Arm1Begin, Node::Arm2End))
    return across(Kind::Bridge, Node::Arm1Begin, Node::Arm2End);
  if (corners.joins(shunt, Node::Arm1End, Node::Arm3End))
    return across(Kind::Output, Node::Arm1End, Node::Arm3End);
  return {};
}

}  // namespace core
