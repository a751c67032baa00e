// SPDX-License-Identifier: GPL-3.0-or-later
#include <QLineF>
#include <algorithm>
#include <cmath>
#include <optional>
#include <span>

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

/// Where something joins a wire, and what it takes from it.
struct Joint {
  QPointF at;
  core::Node point;  ///< of the bridge, as core::pointOf
  double leaving_A = 0;
  bool ofShunt = true;
  double along = 0;  ///< way on the route that is looked at
};

/// The way from the beginning of `route` to `point`, which must lie on it.
std::optional<double> wayTo(const QPolygonF& route, QPointF point) {
  constexpr double near = 0.01;
  double way = 0;
  for (qsizetype k = 1; k < route.size(); ++k) {
    const QLineF piece(route[k - 1], route[k]);
    const double to = QLineF(piece.p1(), point).length();
    if (to + QLineF(point, piece.p2()).length() < piece.length() + near) return way + to;
    way += piece.length();
  }
  return std::nullopt;
}

/// What lies between two ways along `route`.
QPolygonF pieceOf(const QPolygonF& route, double from, double to) {
  QPolygonF piece;
  double way = 0;
  for (qsizetype k = 1; k < route.size(); ++k) {
    const QLineF line(route[k - 1], route[k]);
    const double length = line.length(), begin = std::max(from - way, 0.0), end = std::min(to - way, length);
    way += length;
    if (length == 0 || begin >= end) continue;
    if (piece.isEmpty()) piece << (begin == 0 ? line.p1() : line.pointAt(begin / length));
    piece << (end == length ? line.p2() : line.pointAt(end / length));
  }
  return piece;
}

class Streams {
 public:
  Streams(const BridgePicture& picture, const core::Flow& flow)
      : m_picture(picture), m_flow(flow), m_ways(picture, flow), m_wires(core::wiresOf(picture.bridge)) {
    findJoints();
  }

  std::vector<Stream> all() {
    const BridgeLayout& layout = m_picture.layout;
    for (const WirePlace& wire : layout.wires) addWire(wire);
    for (const LeadPlace& lead : layout.leads) addLead(lead);
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

  // ---- leads, whose current is another on each side of what joins them

  void findJoints() {
    const core::Bridge& bridge = m_picture.bridge;
    for (std::size_t k = 0; k < m_flow.shunts.size(); ++k) {
      const double current = m_flow.shunts[k].base();
      if (current == 0) continue;
      const ShuntPlace& place = m_picture.lanes.places[k];
      m_joints.push_back({place.toA.front(), core::pointOf(bridge, m_picture.shunts[k].a), current});
      m_joints.push_back({place.toB.front(), core::pointOf(bridge, m_picture.shunts[k].b), -current});
    }
    const auto& balance = m_picture.layout.balance;
    if (!balance || balance->limiting.isEmpty() || balance->routes.empty()) return;
    const QPolygonF& route = balance->routes[0];
    m_joints.push_back(
        {route.front(), core::pointOf(bridge, core::Node::PPlus), m_flow.balance[0].base(), false});
    m_joints.push_back(
        {route.back(), core::pointOf(bridge, core::Node::PMinus), -m_flow.balance[1].base(), false});
  }

  /// What joins `route` at a point of the bridge, in the order of the route.
  std::vector<Joint> jointsOn(const QPolygonF& route, core::Node node) const {
    std::vector<Joint> found;
    for (Joint joint : m_joints) {
      if (joint.point != core::pointOf(m_picture.bridge, node)) continue;
      const auto way = wayTo(route, joint.at);
      if (!way) continue;
      joint.along = *way;
      found.push_back(joint);
    }
    std::stable_sort(found.begin(), found.end(),
                     [](const Joint& a, const Joint& b) { return a.along < b.along; });
    return found;
  }

  const core::Wire* wireOf(core::LeadRole role) const {
    for (const core::Wire& wire : m_wires)
      if (wire.role == role) return &wire;
    return nullptr;
  }

  static bool isSupply(core::Node terminal) {
    return terminal == core::Node::PPlus || terminal == core::Node::PMinus;
  }
  static bool anyShunt(std::span<const Joint> joints) {
    return std::any_of(joints.begin(), joints.end(), [](const Joint& joint) { return joint.ofShunt; });
  }
  static double sumOf(std::span<const Joint> joints) {
    double sum = 0;
    for (const Joint& joint : joints) sum += joint.leaving_A;
    return sum;
  }

  /// Whether a shunt's current goes on through an arm at the article's end of the lead.
  bool goesOnAt(core::Node corner) const {
    const core::Bridge& bridge = m_picture.bridge;
    const core::Node point = core::pointOf(bridge, corner);
    for (const std::size_t arm : {0, 1, 2, 3})
      if (m_ways.arms[arm] && (core::pointOf(bridge, core::armBegin(arm)) == point ||
                               core::pointOf(bridge, core::armEnd(arm)) == point))
        return true;
    return false;
  }

  /// Whether a shunt is joined to the lead's terminal on a wire inside the instrument.
  bool isShuntedInside(const core::Wire& lead) const {
    const auto& wires = m_picture.layout.wires;
    return std::any_of(wires.begin(), wires.end(), [&](const WirePlace& wire) {
      if (wire.current != WireCurrent::Lead || wire.index != static_cast<std::size_t>(lead.role))
        return false;
      std::vector<Joint> joints = jointsOn(wire.route, lead.from);
      std::erase_if(joints, [&](const Joint& joint) { return joint.at == wire.route.back(); });
      return anyShunt(joints);
    });
  }

  /// Piece by piece from the terminal: what is fixed to the terminal joins before the lead's resistance, what
  /// is fixed to the corner behind it.
  void addLead(const LeadPlace& lead) {
    const auto role = static_cast<std::size_t>(lead.role);
    const core::Wire* wire = wireOf(lead.role);
    if (!m_flow.leads[role] || !wire) return;
    const std::vector<Joint> before = jointsOn(lead.route, wire->from),
                             behind = jointsOn(lead.route, wire->to);
    double current = m_flow.leads[role]->base() + sumOf(before), from = 0;
    const bool inside = isShuntedInside(*wire);
    for (std::size_t k = 0; k < before.size(); ++k) {
      const bool reached = inside || anyShunt(std::span(before).first(k));
      const bool way = isSupply(wire->from) ? m_ways.leads[role] || anyShunt(std::span(before).subspan(k))
                                            : m_ways.leads[role] && reached;
      add(pieceOf(lead.route, from, before[k].along), core::Current(current), way);
      current -= before[k].leaving_A;
      from = before[k].along;
    }
    for (const Joint& joint : behind) {
      add(pieceOf(lead.route, from, joint.along), core::Current(current), m_ways.leads[role]);
      current -= joint.leaving_A;
      from = joint.along;
    }
    const bool way = m_ways.leads[role] && (behind.empty() || goesOnAt(wire->to));
    if (from == 0) return add(lead.route, core::Current(current), way);
    add(pieceOf(lead.route, from, lengthOf(lead.route)), core::Current(current), way);
  }

  /// From the instrument's circuit to a terminal: what joins the lead has come through it as well.
  void addStub(const WirePlace& wire) {
    const auto role = static_cast<core::LeadRole>(wire.index);
    const core::Wire* lead = wireOf(role);
    if (!m_flow.leads[wire.index] || !lead) return;
    std::vector<Joint> beyond;
    for (const LeadPlace& place : m_picture.layout.leads)
      if (place.role == role) beyond = jointsOn(place.route, lead->from);
    double current = m_flow.leads[wire.index]->base() + sumOf(beyond), to = lengthOf(wire.route);
    const bool supply = isSupply(lead->from);
    bool way = supply && (m_ways.leads[wire.index] || anyShunt(beyond));
    std::vector<Joint> joints = jointsOn(wire.route, lead->from);
    std::erase_if(joints, [&](const Joint& joint) { return joint.at == wire.route.back(); });
    // On a signal lead the way ends at the shunt that is joined furthest in.
    std::size_t left = joints.size();
    const bool inside = !supply && m_ways.leads[wire.index];
    for (auto joint = joints.rbegin(); joint != joints.rend(); ++joint, --left) {
      add(pieceOf(wire.route, joint->along, to), core::Current(current),
          way || (inside && anyShunt(std::span(joints).first(left))));
      current += joint->leaving_A;
      way = way || (supply && joint->ofShunt);
      to = joint->along;
    }
    if (to == lengthOf(wire.route)) return add(wire.route, core::Current(current), way);
    add(pieceOf(wire.route, 0, to), core::Current(current), way);
  }

  static double lengthOf(const QPolygonF& route) {
    double length = 0;
    for (qsizetype k = 1; k < route.size(); ++k) length += QLineF(route[k - 1], route[k]).length();
    return length;
  }

  void addWire(const WirePlace& wire) {
    switch (wire.current) {
      case WireCurrent::None:
        return;
      case WireCurrent::Source:
        return add(wire.route, m_flow.source, m_ways.any);
      case WireCurrent::Lead:
        return addStub(wire);
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
  std::vector<core::Wire> m_wires;
  std::vector<Joint> m_joints;
  std::vector<Stream> m_streams;
};

}  // namespace

std::vector<Stream> streamsOf(const BridgePicture& picture, const core::Flow& flow) {
  return Streams(picture, flow).all();
}

}  // namespace ui
