// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <array>
#include <cmath>
#include <set>
#include <utility>

#include "core/circuit/hookup.h"
#include "core/diagnose/fault.h"

namespace core {
namespace {

/// Collects the faults of one channel.
class Possible {
 public:
  Possible(const Setup& setup, const CheckPoints& points) : m_setup(setup), m_points(points) {}

  std::vector<Fault> all() {
    addSettings();
    addWires();
    addShunts();
    addArms();
    addOrder();
    addReadings();
    return std::move(m_faults);
  }

 private:
  void add(CauseKind kind, std::size_t index = 0, std::size_t other = 0, double size = 1) {
    m_faults.push_back({kind, index, other, size});
  }

  void addSettings() {
    add(CauseKind::Scale);
    const Instrument& instrument = m_setup.instrument;
    if (instrument.unit == ReadingUnit::MicrometrePerMetre) addBridgeFactors();
    for (const double factor : unitFactors()) add(CauseKind::Units, 0, 0, factor);
    add(CauseKind::PolarityReversed);
    add(CauseKind::NoResponse);
  }

  void addBridgeFactors() {
    const double poisson = m_setup.bridge.gauge.poissonRatio, set = m_setup.instrument.bridgeFactor;
    std::set<double> others{1, 2, 4, 1 + poisson, 2 * (1 + poisson)};
    for (const double n : others)
      if (n > 0 && std::abs(n / set - 1) > 1e-6) add(CauseKind::BridgeFactor, 0, 0, n);
  }

  /// What a reading is multiplied with when its unit is taken for another.
  std::vector<double> unitFactors() const {
    std::vector<double> factors{1000, 1e-3, 1e6, 1e-6, 2, 0.5, 4, 0.25};
    const Instrument& instrument = m_setup.instrument;
    const double perMillivoltPerVolt = readingOf(instrument, Output(1e-3)).base();
    const double strain = 4000 / (instrument.gaugeFactor * instrument.bridgeFactor);
    const std::array<double, 3> shown{1, strain, nominalExcitation(instrument).base()};
    for (const double one : shown)
      if (const double factor = one / perMillivoltPerVolt; std::abs(factor - 1) > 1e-6)
        factors.push_back(factor);
    return factors;
  }

  void addWires() {
    if (!wiresOf(m_setup.bridge).empty()) add(CauseKind::Leads, 0, 0, 0);
    for (const Wire& wire : wiresOf(m_setup.bridge))
      if (!isBroken(m_setup.bridge, wire.role))
        add(CauseKind::LeadContact, static_cast<std::size_t>(wire.role), 0, 0);
    if (m_setup.bridge.sixWire && templateOf(m_setup.bridge.type).senseLeads && senseLeadsAreInOrder())
      add(CauseKind::OpenSense);
  }

  /// A sense lead that is exchanged with another is the only way to that one's terminal: without sense leads
  /// it would be another bridge.
  bool senseLeadsAreInOrder() const {
    const Hookup used = hookupInUse(m_setup.bridge);
    const auto isSense = [](LeadRole role) {
      return role == LeadRole::SensePlus || role == LeadRole::SenseMinus;
    };
    const auto namesSense = [&](const LeadPair& pair) { return isSense(pair.a) || isSense(pair.b); };
    return std::none_of(used.exchanged.begin(), used.exchanged.end(), namesSense) &&
           std::none_of(used.touching.begin(), used.touching.end(), namesSense);
  }

  bool isUsed(std::size_t shunt) const {
    return std::any_of(m_points.steps.begin(), m_points.steps.end(), [&](std::size_t step) {
      const auto& closed = m_setup.sequence[step].closed;
      return std::find(closed.begin(), closed.end(), shunt) != closed.end();
    });
  }

  /// The first shunt of each resistor that some step closes.
  std::vector<std::size_t> resistors() const {
    std::vector<std::size_t> first;
    std::set<std::string> seen;
    for (std::size_t k = 0; k < m_setup.shunts.size(); ++k)
      if (isUsed(k) && seen.insert(resistorName(m_setup.shunts[k])).second) first.push_back(k);
    return first;
  }

  void addShunts() {
    for (const std::size_t end : {0, 1})
      if (const Fault place{CauseKind::ShuntPlace, end}; movesShunts(place)) m_faults.push_back(place);
    for (const std::size_t corner : {0, 1}) add(CauseKind::ShuntArm, corner);
    addPlaces();
    const std::vector<std::size_t> first = resistors();
    for (std::size_t i = 0; i < first.size(); ++i) {
      add(CauseKind::ShuntValue, first[i]);
      if (first.size() > 1) add(CauseKind::ShuntOpen, first[i], 0);
      for (std::size_t j = 0; j < i; ++j)
        if (m_setup.shunts[first[i]].resistance != m_setup.shunts[first[j]].resistance)
          add(CauseKind::ShuntsExchanged, first[j], first[i]);
    }
  }

  /// Each place that some but not all shunts lie at: a whole place not switched in.
  void addPlaces() {
    std::set<std::pair<Node, Node>> places;
    std::vector<std::size_t> first;
    for (std::size_t k = 0; k < m_setup.shunts.size(); ++k) {
      if (!isUsed(k)) continue;
      const Node a = pointOf(m_setup.bridge, m_setup.shunts[k].a);
      const Node b = pointOf(m_setup.bridge, m_setup.shunts[k].b);
      if (places.insert({std::min(a, b), std::max(a, b)}).second) first.push_back(k);
    }
    if (first.size() > 1)
      for (const std::size_t shunt : first) add(CauseKind::ShuntOpen, shunt, 1);
  }

  bool movesShunts(const Fault& fault) const {
    const Setup moved = withFault(m_setup, fault);
    const auto point = [&](Node node) { return pointOf(m_setup.bridge, node); };
    for (std::size_t k = 0; k < m_setup.shunts.size(); ++k)
      if (point(moved.shunts[k].a) != point(m_setup.shunts[k].a) ||
          point(moved.shunts[k].b) != point(m_setup.shunts[k].b))
        return true;
    return false;
  }

  void addArms() {
    const BridgeTemplate& shape = templateOf(m_setup.bridge.type);
    for (const std::size_t arm : {0, 1, 2, 3}) {
      const bool gauge = shape.atArticle[arm] || isTransducer(m_setup.bridge);
      add(gauge ? CauseKind::ArmValue : CauseKind::CompletionValue, arm);
      if (gauge) add(CauseKind::Leak, arm, 0, 0);
    }
  }

  void addOrder() {
    const std::vector<double>& expected = m_points.expected;
    for (std::size_t i = 0; i < expected.size(); ++i)
      for (std::size_t j = i + 1; j < expected.size(); ++j)
        if (expected[i] != expected[j]) add(CauseKind::StepsExchanged, m_points.steps[i], m_points.steps[j]);
    const auto sign = [&](bool positive) {
      return std::any_of(expected.begin(), expected.end(),
                         [&](double value) { return positive ? value > 0 : value < 0; });
    };
    if (sign(true) && sign(false)) add(CauseKind::SidesExchanged);
  }

  void addReadings() {
    for (std::size_t k = 0; k < m_points.size(); ++k) {
      if (k > 0) add(CauseKind::ZeroShift, m_points.steps[k], 0, 0);
      add(CauseKind::StrayReading, m_points.steps[k], 0, 0);
    }
    add(CauseKind::Drift, 0, 0, 0);
    const auto [least, most] = std::minmax_element(m_points.expected.begin(), m_points.expected.end());
    const double reach = std::max(std::abs(*least), std::abs(*most));
    for (const std::size_t side : {0, 1, 2}) add(CauseKind::Clipping, side, 0, reach);
  }

  const Setup& m_setup;
  const CheckPoints& m_points;
  std::vector<Fault> m_faults;
};

}  // namespace

std::vector<Fault> possibleFaults(const Setup& setup, const CheckPoints& points) {
  return Possible(setup, points).all();
}

}  // namespace core
