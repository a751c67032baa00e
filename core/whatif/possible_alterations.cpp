// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/whatif/alteration.h"

namespace core {
namespace {

using enum AlterationKind;

/// The one of 1, 2, 5, 10, 20, ... that lies nearest, by ratio.
double roundValue(double value) {
  const double decade = std::pow(10.0, std::floor(std::log10(value))), lead = value / decade;
  return decade * (lead < std::sqrt(2.0) ? 1 : lead < std::sqrt(10.0) ? 2 : lead < std::sqrt(50.0) ? 5 : 10);
}

/// Collects what may be tried out on one channel. Values to start from are such that the effect can be seen
/// in a table of readings and still is one that happens.
class Possible {
 public:
  explicit Possible(const Setup& setup) : m_setup(setup), m_bridge(setup.bridge), m_wires(wiresOf(m_bridge)) {
    std::sort(m_wires.begin(), m_wires.end(), [](const Wire& a, const Wire& b) { return a.role < b.role; });
  }

  std::vector<Alteration> all() {
    addLeads();
    addPairs();
    addAllLeads();
    addInsulation();
    addArms();
    addTurns();
    return std::move(m_list);
  }

 private:
  void add(AlterationKind kind, std::size_t index = 0, std::size_t other = 0, double value = 0) {
    m_list.push_back({kind, index, other, value});
  }

  static std::size_t roleOf(const Wire& wire) { return static_cast<std::size_t>(wire.role); }
  bool hasResistance(const Wire& wire) const { return resistanceOf(m_bridge.leads[roleOf(wire)]).base() > 0; }
  /// Of a usual arm; 350 where the bridge has none that can be used.
  double armOhm() const {
    const double ohm = m_bridge.arms[0].base();
    return std::isfinite(ohm) && ohm > 0 ? ohm : 350;
  }

  void addLeads() {
    for (const Wire& wire : m_wires)
      if (!isBroken(m_bridge, wire.role)) add(LeadBroken, roleOf(wire));
    for (const Wire& wire : m_wires)
      if (isBroken(m_bridge, wire.role) || hasResistance(wire)) add(LeadBypassed, roleOf(wire));
  }

  bool touch(const Wire& a, const Wire& b) const {
    const auto& touching = m_bridge.hookup.touching;
    return std::any_of(touching.begin(), touching.end(), [&](const LeadPair& pair) {
      return (pair.a == a.role && pair.b == b.role) || (pair.a == b.role && pair.b == a.role);
    });
  }

  template <class Take>
  void eachPair(Take take) const {
    for (std::size_t i = 0; i < m_wires.size(); ++i)
      for (std::size_t j = i + 1; j < m_wires.size(); ++j) take(m_wires[i], m_wires[j]);
  }

  void addPairs() {
    eachPair([this](const Wire& a, const Wire& b) {
      const bool onePoint = pointOf(m_bridge, a.to) == pointOf(m_bridge, b.to);
      if (!onePoint && !touch(a, b)) add(LeadsTouching, roleOf(a), roleOf(b));
    });
    eachPair([this](const Wire& a, const Wire& b) { add(LeadsExchanged, roleOf(a), roleOf(b)); });
    for (const Wire& wire : m_wires)
      if (!isBroken(m_bridge, wire.role)) add(LeadContact, roleOf(wire), 0, roundValue(armOhm() / 100));
  }

  void addAllLeads() {
    double sum = 0;
    for (const Wire& wire : m_wires) sum += leadResistance(m_bridge, wire.role).base();
    const bool any = sum > 0 && std::isfinite(sum);
    const double mean = any ? sum / static_cast<double>(m_wires.size()) : 0;
    add(LeadResistance, 0, 0, any ? roundValue(2 * mean) : 1);
    if (!any) return;
    add(LeadLength, 0, 0, 2);
    add(LeadWarming, 0, 0, 20);
  }

  void addInsulation() {
    const BridgeTemplate& shape = templateOf(m_bridge.type);
    // 25 000 times the arm reads as some 20 µm/m of compression at a gauge factor of 2.
    const double leak = roundValue(25000 * armOhm());
    for (const AlterationKind kind : {Moisture, MoistureToStructure})
      for (const std::size_t arm : {0, 1, 2, 3})
        if (shape.atArticle[arm]) add(kind, arm, 0, leak);
    const auto& leaks = m_bridge.leaks;
    if (std::none_of(leaks.begin(), leaks.end(), [](const Leak& one) { return one.toStructure.has_value(); }))
      return;
    for (std::size_t grounding = 0; grounding < groundingCount; ++grounding)
      if (static_cast<Grounding>(grounding) != m_setup.instrument.grounding)
        add(StructureConnected, grounding);
  }

  void addArms() {
    for (const std::size_t arm : {0, 1, 2, 3}) {
      const double ohm = m_bridge.arms[arm].base();
      if (std::isfinite(ohm) && ohm > 0) add(ArmValue, arm, 0, std::round(ohm * 10.1 * 1e3) / 1e4);
    }
    if (!isTransducer(m_bridge) && m_bridge.gauge.factorCoefficient != 0) add(GaugeWarming, 0, 0, 50);
  }

  void addTurns() {
    if (hasNode(m_bridge, Node::SensePlus)) add(SenseAtInstrument);
    add(SignalReversed);
    add(ExcitationReversed);
    add(GaugesReversed);
  }

  const Setup& m_setup;
  const Bridge& m_bridge;
  std::vector<Wire> m_wires;
  std::vector<Alteration> m_list;
};

}  // namespace

std::vector<Alteration> possibleAlterations(const Setup& setup) { return Possible(setup).all(); }

}  // namespace core
