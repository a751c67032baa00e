// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/bridge_case.h"

#include <algorithm>
#include <sstream>
#include <stdexcept>

#include "tests/support/setups.h"

namespace test {
namespace {

using core::Node;

std::vector<std::string> pieces(const std::string& text, char separator) {
  std::vector<std::string> parts;
  std::istringstream stream(text);
  for (std::string part; std::getline(stream, part, separator);) parts.push_back(part);
  return parts;
}

double numberIn(const std::string& text) { return number({{"cell", text}}, "cell"); }

std::vector<Element> elementsIn(const std::string& text) {
  std::vector<Element> elements;
  for (const std::string& part : pieces(text, ';')) {
    const std::size_t arrow = part.find('>'), colon = part.rfind(':');
    if (arrow == std::string::npos || colon == std::string::npos)
      throw std::runtime_error("not a resistor: " + part);
    elements.push_back(
        {part.substr(0, arrow), part.substr(arrow + 1, colon - arrow - 1), numberIn(part.substr(colon + 1))});
  }
  return elements;
}

/// Of "a,b"; two empty names when the cell is empty.
std::pair<std::string, std::string> namesIn(const std::string& text) {
  const auto names = pieces(text, ',');
  if (names.empty()) return {};
  if (names.size() != 2) throw std::runtime_error("not a pair of nodes: " + text);
  return {names[0], names[1]};
}

core::Solver solvedOf(const std::vector<Element>& elements, std::map<std::string, std::size_t>& index,
                      const std::pair<std::string, std::string>& supply) {
  core::Network network;
  const auto node = [&](const std::string& name) {
    const auto [at, isNew] = index.try_emplace(name, network.nodes.size());
    if (isNew) network.nodes.push_back(name);
    return at->second;
  };
  for (const Element& element : elements)
    network.branches.push_back(
        {element.a + ">" + element.b, node(element.a), node(element.b), core::Resistance(element.ohm)});
  auto solver = core::Solver::prepare(network, {index.at(supply.first), index.at(supply.second)});
  if (!solver) throw std::runtime_error(solver.error().text());
  if (const auto solved = solver->solve(); !solved) throw std::runtime_error(solved.error().text());
  return *std::move(solver);
}

using Places = std::map<std::string, Node>;

// The netlists' names of the nodes. TP, TM, TS are the instrument's terminals, g1 to g3 the gauge ends,
// TD the instrument's end of the return wire, SE the sense terminals.
const Places quarterPlaces = {{"TP", Node::PPlus},     {"TM", Node::PMinus},    {"TS", Node::SMinus},
                              {"S+", Node::SPlus},     {"g1", Node::Arm1Begin}, {"g2", Node::Arm1End},
                              {"TD", Node::Arm2Begin}, {"g3", Node::Arm2End}};
const Places cablePlaces = {{"TP", Node::PPlus},      {"TM", Node::PMinus},    {"TS+", Node::SPlus},
                            {"TS-", Node::SMinus},    {"P+", Node::Arm1Begin}, {"S-", Node::Arm1End},
                            {"P-", Node::Arm2End},    {"S+", Node::Arm3End},   {"SE+", Node::SensePlus},
                            {"SE-", Node::SenseMinus}};
const Places barePlaces = {
    {"P+", Node::PPlus}, {"P-", Node::PMinus}, {"S+", Node::SPlus}, {"S-", Node::SMinus}};

struct Shape {
  core::BridgeType type;
  const Places* places;
};

std::optional<Shape> shapeOf(const BridgeCase& row) {
  using enum core::BridgeType;
  static const std::map<std::string, Shape> byScheme = {{"2wire_quarter", {QuarterTwoWire, &quarterPlaces}},
                                                        {"3wire_quarter", {QuarterThreeWire, &quarterPlaces}},
                                                        {"3wire_half", {HalfBending, &quarterPlaces}},
                                                        {"4wire_full", {FullBending, &cablePlaces}},
                                                        {"6wire_full", {FullBending, &cablePlaces}}};
  if (const auto found = byScheme.find(row.text("lead_scheme")); found != byScheme.end())
    return found->second;
  static const std::map<std::string, Shape> byConfiguration = {
      {"quarter", {QuarterThreeWire, &barePlaces}},
      {"quarter_constant_current", {QuarterThreeWire, &barePlaces}},
      {"quarter_with_internal_half_bridge", {QuarterThreeWire, &barePlaces}},
      {"quarter_with_strained_gauge", {QuarterThreeWire, &barePlaces}},
      {"quarter_off_nominal_gauge", {QuarterThreeWire, &barePlaces}},
      {"gauge", {QuarterThreeWire, &barePlaces}},
      {"equal_arm_bridge", {FullBending, &barePlaces}},
      {"equal_arm_bridge_loaded", {FullBending, &barePlaces}},
      {"unbalanced_bridge", {FullBending, &barePlaces}},
      {"full_bridge", {Transducer, &barePlaces}},
      {"full_bridge_with_span_resistors", {FullBending, &cablePlaces}}};
  const std::string& configuration = row.text("configuration");
  if (const auto found = byConfiguration.find(configuration); found != byConfiguration.end())
    return found->second;
  if (const auto type = core::bridgeTypeFromKey(configuration)) return Shape{*type, &barePlaces};
  return std::nullopt;
}

/// The first node of the point that `node` belongs to: through joins and, in a netlist that has none,
/// through the leads.
Node pointOf(const core::Bridge& bridge, bool noLeads, Node node) {
  std::vector<core::Join> joins = core::templateOf(bridge.type).joins;
  if (noLeads)
    for (const core::Wire& wire : core::wiresOf(bridge)) joins.push_back({wire.from, wire.to});
  for (bool changed = true; changed;) {
    changed = false;
    for (const core::Join& join : joins)
      if (node == std::max(join.a, join.b)) node = std::min(join.a, join.b), changed = true;
  }
  return node;
}

/// Gives the resistor of the netlist to the arm, lead or input that lies there.
bool place(core::Setup& setup, const Places& places, const Element& element) {
  core::Bridge& bridge = setup.bridge;
  const bool noLeads = &places == &barePlaces;
  const auto liesBetween = [&](Node a, Node b) {
    const auto pointsOf = [&](Node x, Node y) {
      const Node px = pointOf(bridge, noLeads, x), py = pointOf(bridge, noLeads, y);
      return std::pair(std::min(px, py), std::max(px, py));
    };
    return pointsOf(a, b) == pointsOf(places.at(element.a), places.at(element.b));
  };
  const core::Resistance ohm(element.ohm);
  for (const std::size_t arm : {0, 1, 2, 3})
    if (liesBetween(core::armBegin(arm), core::armEnd(arm))) {
      bridge.arms[arm] = ohm;
      return true;
    }
  for (const core::Wire& wire : core::wiresOf(bridge))
    if (liesBetween(wire.from, wire.to)) {
      bridge.leads[static_cast<std::size_t>(wire.role)] = ohm;
      return true;
    }
  if (!liesBetween(Node::SPlus, Node::SMinus)) return false;
  setup.instrument.inputResistance = ohm;
  return true;
}

}  // namespace

BridgeCase::BridgeCase(CsvRow row) : m_row(std::move(row)) {
  for (const std::string& part : pieces(text("other_inputs"), ';')) {
    const std::size_t equals = part.find('=');
    if (equals != std::string::npos) m_other[part.substr(0, equals)] = part.substr(equals + 1);
  }
}

double BridgeCase::numberOr(const std::string& column, double otherwise) const {
  return has(column) ? number(column) : otherwise;
}

double BridgeCase::otherNumber(const std::string& name) const { return numberIn(other(name)); }

CaseNetwork::CaseNetwork(const BridgeCase& row)
    : elements(elementsIn(row.text("netlist_ohm"))),
      shunts(elementsIn(row.text("shunt_elements_ohm"))),
      m_supply(namesIn(row.text("exc_nodes"))),
      m_output(namesIn(row.text("out_nodes"))),
      m_reference(namesIn(row.text("ref_nodes"))) {}

CaseNetwork::CaseNetwork(std::vector<Element> netlist, std::pair<std::string, std::string> supply)
    : elements(std::move(netlist)), m_supply(std::move(supply)) {}

double CaseNetwork::potential(const std::string& node, bool shunted) const {
  auto all = elements;
  if (shunted) all.insert(all.end(), shunts.begin(), shunts.end());
  std::map<std::string, std::size_t> index;
  const core::Solver solver = solvedOf(all, index, m_supply);
  return solver.potential(index.at(node));
}

double CaseNetwork::output(bool shunted) const {
  const auto between = [&](const std::pair<std::string, std::string>& nodes) {
    return potential(nodes.first, shunted) - potential(nodes.second, shunted);
  };
  return between(m_output) / between(m_reference);
}

double CaseNetwork::supplyCurrent() const {
  double current = 0;
  for (const Element& element : elements) {
    if (element.a != m_supply.first && element.b != m_supply.first) continue;
    const std::string& far = element.a == m_supply.first ? element.b : element.a;
    current += (1 - potential(far)) / element.ohm;
  }
  return current;
}

Element& CaseNetwork::between(const std::string& a, const std::string& b) {
  const auto found = std::find_if(elements.begin(), elements.end(),
                                  [&](const Element& element) { return element.a == a && element.b == b; });
  if (found == elements.end()) throw std::runtime_error("no resistor " + a + ">" + b);
  return *found;
}

std::optional<core::Setup> setupOf(const BridgeCase& row) {
  const auto shape = shapeOf(row);
  if (!shape) return std::nullopt;
  // Where a row gives no resistance it does not matter: outputs are ratios.
  const core::Resistance gauge(row.numberOr("gauge_ohm", 350));
  core::Setup setup =
      equalArms(shape->type, gauge, row.numberOr("gauge_factor", 2), row.numberOr("poisson_ratio", 0.3));
  setup.bridge.sixWire = row.text("lead_scheme") == "6wire_full";
  if (row.hasOther("instrument_gauge_factor"))
    setup.instrument.gaugeFactor = row.otherNumber("instrument_gauge_factor");
  setup.instrument.bridgeFactor = row.numberOr("bridge_factor_N", setup.instrument.bridgeFactor);
  setup.instrument.excitation = core::Voltage(row.numberOr("excitation_V", 5));
  for (const Element& element : elementsIn(row.text("netlist_ohm")))
    if (!place(setup, *shape->places, element))
      throw std::runtime_error("the template has no place for " + element.a + ">" + element.b);
  return setup;
}

std::optional<core::Setup> shuntedSetupOf(const BridgeCase& row) {
  auto setup = setupOf(row);
  if (!setup) return setup;
  const auto shape = shapeOf(row);
  for (const Element& shunt : elementsIn(row.text("shunt_elements_ohm")))
    *setup = withShunt(*std::move(setup), core::Resistance(shunt.ohm), shape->places->at(shunt.a),
                       shape->places->at(shunt.b));
  return setup;
}

}  // namespace test
