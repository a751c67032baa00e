// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "ui/bridge/flow_painter.h"

namespace ui {
namespace {

/// Powers of ten below the source's current that are shown; what is less does nothing that could be seen.
constexpr double decades = 6;

/// The arms, leads and shunts on the way of the current through closed shunts.
///
/// From the shunt's end of higher potential it goes up to the source, at each point along what brings most;
/// from the other end down along what takes most.
class ShuntWays {
 public:
  ShuntWays(const BridgePicture& picture, const core::Flow& flow) : m_bridge(picture.bridge), m_flow(flow) {
    if (std::none_of(flow.shunts.begin(), flow.shunts.end(), [](core::Current i) { return i.base() != 0; }))
      return;
    for (const std::size_t arm : {0, 1, 2, 3})
      add(core::armBegin(arm), core::armEnd(arm), flow.arms[arm], &arms[arm]);
    for (const core::Wire& wire : core::wiresOf(m_bridge)) {
      const auto role = static_cast<std::size_t>(wire.role);
      if (flow.leads[role]) add(wire.from, wire.to, *flow.leads[role], &leads[role]);
    }
    for (std::size_t k = 0; k < flow.shunts.size(); ++k) {
      if (flow.shunts[k].base() == 0) continue;
      any = true;
      const auto [a, b] = std::pair(core::pointOf(m_bridge, picture.shunts[k].a),
                                    core::pointOf(m_bridge, picture.shunts[k].b));
      const bool forward = flow.shunts[k].base() > 0;
      walk(forward ? a : b, true);
      walk(forward ? b : a, false);
    }
  }

  std::array<bool, 4> arms{};
  std::array<bool, core::leadRoleCount> leads{};
  bool any = false;

 private:
  struct Edge {
    core::Node from, to;  ///< in the way of the current
    double current_A;
    bool* marked;
  };

  void add(core::Node from, core::Node to, core::Current current, bool* marked) {
    if (current.base() < 0) std::swap(from, to);
    m_edges.push_back(
        {core::pointOf(m_bridge, from), core::pointOf(m_bridge, to), std::abs(current.base()), marked});
  }

  void walk(core::Node at, bool up) {
    const core::Node goal = core::pointOf(
        m_bridge, up != m_bridge.hookup.excitationReversed ? core::Node::PPlus : core::Node::PMinus);
    // As many rounds as there are edges: potentials fall along the way, so no edge comes twice.
    for (std::size_t round = 0; round < m_edges.size() && at != goal; ++round) {
      const Edge* most = nullptr;
      for (const Edge& edge : m_edges)
        if ((up ? edge.to : edge.from) == at && edge.current_A > (most ? most->current_A : 0)) most = &edge;
      if (!most) return;
      *most->marked = true;
      at = up ? most->from : most->to;
    }
  }

  const core::Bridge& m_bridge;
  const core::Flow& m_flow;
  std::vector<Edge> m_edges;
};

class Streams {
 public:
  Streams(const BridgePicture& picture, const core::Flow& flow)
      : m_picture(picture), m_flow(flow), m_ways(picture, flow) {}

  std::vector<Stream> all() {
    const BridgeLayout& layout = m_picture.layout;
    for (const WirePlace& wire : layout.wires) addWire(wire);
    for (const LeadPlace& lead : layout.leads) {
      const auto role = static_cast<std::size_t>(lead.role);
      if (m_flow.leads[role]) add(lead.route, *m_flow.leads[role], m_ways.leads[role]);
    }
    for (const std::size_t arm : {0, 1, 2, 3})
      add({layout.arms[arm].begin, layout.arms[arm].end}, m_flow.arms[arm], m_ways.arms[arm]);
    for (const LeakPlace& leak : layout.leaks)
      add(leak.route, (leak.toStructure ? m_flow.leaksToStructure : m_flow.leaksAcross)[leak.arm], false);
    if (layout.balance) addBalance(*layout.balance);
    for (std::size_t k = 0; k < m_picture.lanes.places.size(); ++k) addShunt(k);
    return std::move(m_streams);
  }

 private:
  void add(QPolygonF route, core::Current current, bool emphasised, bool ofShunt = false) {
    const double share = std::abs(current.base()) / std::abs(m_flow.source.base());
    const double strength = 1 + std::log10(share) / decades;
    if (!(strength > 0) || route.size() < 2) return;
    if (current.base() < 0) std::reverse(route.begin(), route.end());
    m_streams.push_back({std::move(route), std::min(strength, 1.0), ofShunt, emphasised});
  }

  void addWire(const WirePlace& wire) {
    switch (wire.current) {
      case WireCurrent::None:
        return;
      case WireCurrent::Source:
        return add(wire.route, m_flow.source, m_ways.any);
      case WireCurrent::Lead:
        if (m_flow.leads[wire.index]) add(wire.route, *m_flow.leads[wire.index], m_ways.leads[wire.index]);
        return;
      case WireCurrent::Arm:
        return add(wire.route, m_flow.arms[wire.index], m_ways.arms[wire.index]);
      case WireCurrent::Input:
        return add(wire.route, m_flow.input, false);
    }
  }

  /// Over the excitation: from P+ down to the wiper, on to P-, and from the wiper to S+. Between arms 3 and
  /// 4: each arm's part of the track.
  void addBalance(const BalancePlace& place) {
    const auto& [first, second, limiting] = m_flow.balance;
    const QPointF wiper = place.wiper.p2();
    const bool parallel = !place.limiting.isEmpty();
    if (!parallel) {
      if (place.farPart.isEmpty()) add({place.travel.p1(), wiper}, first, false);
      return add({wiper, place.travel.p2()}, second, false);
    }
    if (place.routes.size() < 2) return;
    const QPointF onTrack(place.travel.x1(), wiper.y());
    add({place.routes[0].front(), onTrack}, first, false);
    add({onTrack, place.routes[0].back()}, second, false);
    add(place.routes[1], limiting, false);
  }

  void addShunt(std::size_t k) {
    if (k >= m_flow.shunts.size() || m_flow.shunts[k].base() == 0) return;
    const ShuntPlace& place = m_picture.lanes.places[k];
    QPolygonF route = place.toA;
    for (auto point = place.toB.crbegin(); point != place.toB.crend(); ++point) route << *point;
    add(route, m_flow.shunts[k], true, true);
  }

  const BridgePicture& m_picture;
  const core::Flow& m_flow;
  ShuntWays m_ways;
  std::vector<Stream> m_streams;
};

}  // namespace

std::vector<Stream> streamsOf(const BridgePicture& picture, const core::Flow& flow) {
  return Streams(picture, flow).all();
}

}  // namespace ui
