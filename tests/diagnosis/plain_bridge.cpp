// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/diagnosis/plain_bridge.h"

#include <Eigen/LU>
#include <cassert>

namespace diagnosis {
namespace {

using core::BridgeType;
using core::LeadRole;
using core::Node;

constexpr std::size_t none = pointCount;
using Joined = std::array<std::size_t, pointCount>;

/// The terminals round the bridge; arm k runs from the k-th to the next.
constexpr std::array<LeadRole, 4> roleOfCorner = {LeadRole::ExcitationPlus, LeadRole::SignalMinus,
                                                  LeadRole::ExcitationMinus, LeadRole::SignalPlus};

std::vector<Wired> wires(const PlainBridge& bridge) {
  std::vector<Wired> result;
  for (std::size_t corner = 0; corner < 4; ++corner)
    if (armAtArticle(bridge.type, corner) || armAtArticle(bridge.type, (corner + 3) % 4))
      result.push_back({TerminalPPlus + corner, CornerPPlus + corner,
                        bridge.leads[static_cast<std::size_t>(roleOfCorner[corner])]});
  if (bridge.type == BridgeType::QuarterThreeWire)
    result.push_back(
        {ReturnTerminal, CornerSMinus, bridge.leads[static_cast<std::size_t>(LeadRole::Return)]});
  return result;
}

/// Wires without resistance make one point of two.
Joined joinedPoints(const std::vector<Wired>& leads) {
  Joined joined;
  for (std::size_t point = 0; point < pointCount; ++point) joined[point] = point;
  for (const Wired& lead : leads) {
    if (lead.ohm != 0) continue;
    const std::size_t gone = joined[lead.to], kept = joined[lead.from];
    for (std::size_t& point : joined)
      if (point == gone) point = kept;
  }
  return joined;
}

using Matrix = Eigen::Matrix<long double, Eigen::Dynamic, Eigen::Dynamic, 0, pointCount, pointCount>;
using Vector = Eigen::Matrix<long double, Eigen::Dynamic, 1, 0, pointCount, 1>;

/// Potentials for 1 V at P+ over P-; of a point that nothing touches zero.
class Nodes {
 public:
  explicit Nodes(const Joined& joined) : m_joined(joined) { m_g.setZero(pointCount, pointCount); }

  void add(std::size_t from, std::size_t to, long double siemens) {
    const auto i = row(from), j = row(to);
    m_g(i, i) += siemens, m_g(j, j) += siemens, m_g(i, j) -= siemens, m_g(j, i) -= siemens;
  }

  void solve() {
    Vector known = Vector::Zero(pointCount);
    for (Eigen::Index k = 0; k < static_cast<Eigen::Index>(pointCount); ++k) {
      const bool source = k == row(TerminalPPlus) || k == row(TerminalPMinus);
      if (!source && m_g(k, k) != 0) continue;
      m_g.row(k).setZero();
      m_g(k, k) = 1;
    }
    known(row(TerminalPPlus)) = 1;
    m_volts = m_g.partialPivLu().solve(known);
  }

  long double at(std::size_t point) const { return m_volts(row(point)); }

 private:
  Eigen::Index row(std::size_t point) const { return static_cast<Eigen::Index>(m_joined[point]); }

  Joined m_joined;
  Matrix m_g;
  Vector m_volts;
};

}  // namespace

bool armAtArticle(BridgeType type, std::size_t arm) {
  switch (type) {
    case BridgeType::QuarterTwoWire:
    case BridgeType::QuarterThreeWire:
      return arm == 0;
    case BridgeType::HalfBending:
    case BridgeType::HalfPoisson:
      return arm < 2;
    case BridgeType::HalfDiagonal:
      return arm % 2 == 0;
    default:
      return true;
  }
}

std::array<std::size_t, 2> armEnds(BridgeType type, std::size_t arm) {
  const std::size_t first = armAtArticle(type, arm) ? CornerPPlus : TerminalPPlus;
  if (type == BridgeType::QuarterThreeWire && arm == 1) return {ReturnTerminal, TerminalPMinus};
  return {first + arm, first + (arm + 1) % 4};
}

std::size_t pointOf(BridgeType type, Node node) {
  switch (node) {
    case Node::PPlus:
      return TerminalPPlus;
    case Node::PMinus:
      return TerminalPMinus;
    case Node::SPlus:
      return TerminalSPlus;
    case Node::SMinus:
      return TerminalSMinus;
    case Node::SensePlus:
    case Node::SenseMinus:
      return none;  // no shunt is ever put there
    default:
      break;
  }
  const std::size_t end = static_cast<std::size_t>(node) - static_cast<std::size_t>(Node::Arm1Begin);
  return armEnds(type, end / 2)[end % 2];
}

std::vector<LeadRole> rolesOf(BridgeType type) {
  std::vector<LeadRole> roles;
  for (std::size_t corner = 0; corner < 4; ++corner)
    if (armAtArticle(type, corner) || armAtArticle(type, (corner + 3) % 4))
      roles.push_back(roleOfCorner[corner]);
  if (type == BridgeType::QuarterThreeWire) roles.push_back(LeadRole::Return);
  return roles;
}

long double PlainBridge::output(const std::vector<std::size_t>& closed) const {
  const std::vector<Wired> leadWires = wires(*this);
  Nodes nodes(joinedPoints(leadWires));
  for (const Wired& lead : leadWires)
    if (lead.ohm != 0) nodes.add(lead.from, lead.to, 1 / lead.ohm);
  for (std::size_t arm = 0; arm < 4; ++arm) {
    const auto ends = armEnds(type, arm);
    nodes.add(ends[0], ends[1], 1 / arms[arm] + leaks[arm]);
  }
  nodes.add(TerminalSPlus, TerminalSMinus, input);
  for (const std::size_t k : closed) nodes.add(shunts[k].from, shunts[k].to, 1 / shunts[k].ohm);
  nodes.solve();
  const long double sensed =
      sensesAtBridge ? nodes.at(CornerPPlus) - nodes.at(CornerPMinus) : static_cast<long double>(1);
  return (nodes.at(TerminalSPlus) - nodes.at(TerminalSMinus)) / sensed;
}

PlainBridge plainBridge(const core::Setup& setup) {
  PlainBridge plain;
  plain.type = setup.bridge.type;
  for (std::size_t arm = 0; arm < 4; ++arm) plain.arms[arm] = setup.bridge.arms[arm].base();
  for (std::size_t role = 0; role < core::leadRoleCount; ++role) {
    const auto* ohm = std::get_if<core::Resistance>(&setup.bridge.leads[role]);
    assert(ohm && "leads are given by their resistance here");
    plain.leads[role] = ohm->base();
  }
  for (const core::Shunt& shunt : setup.shunts)
    plain.shunts.push_back(
        {pointOf(plain.type, shunt.a), pointOf(plain.type, shunt.b),
         static_cast<long double>(shunt.resistance.base()) + shunt.wires.base() + shunt.contact.base()});
  if (setup.instrument.inputResistance)
    plain.input = 1 / static_cast<long double>(setup.instrument.inputResistance->base());
  plain.sensesAtBridge = setup.bridge.sixWire;
  return plain;
}

long double shownFor(const core::Instrument& instrument, long double change) {
  switch (instrument.unit) {
    case core::ReadingUnit::MicrometrePerMetre:
      return 4e6L * change / (static_cast<long double>(instrument.gaugeFactor) * instrument.bridgeFactor);
    case core::ReadingUnit::MillivoltPerVolt:
      return 1e3L * change;
    case core::ReadingUnit::Millivolt:
      return 1e3L * change * instrument.excitation.base();
    case core::ReadingUnit::Scaled:
      return 1e3L * change * instrument.unitsPerMillivoltPerVolt;
  }
  return 0;
}

}  // namespace diagnosis
