// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/wiring/ohm_network.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

#include "core/circuit/bridge_network.h"
#include "core/units/language.h"
#include "core/wiring/wiring_rules.h"

namespace core {
namespace {

using OhmKind = OhmPart::Kind;

constexpr double open_ohm = std::numeric_limits<double>::infinity();

/// Marks what cannot be reckoned with; it matters only on the way of a measurement.
constexpr double unusable = -1;

double usableOr(double ohm, bool mayBeZero) {
  const bool usable = std::isfinite(ohm) && (mayBeZero ? ohm >= 0 : ohm > 0);
  return usable ? ohm : unusable;
}

std::size_t rootOf(std::vector<std::size_t>& parent, std::size_t node) {
  while (parent[node] != node) node = parent[node] = parent[parent[node]];
  return node;
}

/// node -> the first found of the nodes that it is joined to, or that some resistance connects it to.
std::vector<std::size_t> groupsOf(const OhmNetwork& network, bool joinedOnly) {
  std::vector<std::size_t> group(network.nodes);
  std::iota(group.begin(), group.end(), std::size_t{0});
  for (const OhmBranch& branch : network.branches)
    if (joinedOnly ? branch.ohm == 0 : std::isfinite(branch.ohm))
      group[rootOf(group, branch.a)] = rootOf(group, branch.b);
  for (std::size_t node = 0; node < group.size(); ++node) group[node] = rootOf(group, node);
  return group;
}

/// The bridge as it is when nothing is plugged in: what lies in the instrument is away.
std::pair<Bridge, Instrument> unplugged(Bridge bridge, Instrument instrument) {
  for (const std::size_t arm : {0, 1, 2, 3})
    if (!templateOf(bridge.type).atArticle[arm]) bridge.leaks[arm] = {};
  instrument.balance.kind = BalanceKind::None;
  instrument.inputResistance.reset();
  instrument.grounding = Grounding::Floating;
  return {bridge, instrument};
}

const PartValue* valueOf(const OhmChange& change, OhmKind kind) {
  const auto* value = std::get_if<PartValue>(&change);
  return value && value->part.kind == kind ? value : nullptr;
}

/// Exchanges the ends of two leads at the instrument.
void swapLeads(OhmNetwork& network, const LeadsSwapped& leads) {
  NodeIndex* ends[2] = {nullptr, nullptr};
  for (OhmBranch& branch : network.branches)
    for (const std::size_t k : {0, 1})
      if (branch.part == OhmPart{OhmKind::Lead, static_cast<std::size_t>(k == 0 ? leads.a : leads.b)})
        ends[k] = &branch.a;
  if (ends[0] && ends[1]) std::swap(*ends[0], *ends[1]);
}

/// What the fault says of a value is not uncertain.
void setValue(OhmNetwork& network, const PartValue& value) {
  for (std::size_t k = 0; k < network.branches.size(); ++k) {
    OhmBranch& branch = network.branches[k];
    if (branch.part != value.part) continue;
    branch.ohm = branch.share * value.ohm;
    std::erase_if(network.dependences, [k](const OhmDependence& d) { return d.branch == k; });
  }
}

/// The island that `from` lies on, as the solver takes it: nodes renumbered, branches as in `kept`.
struct Island {
  Network network;
  std::vector<std::size_t> kept;
  std::vector<NodeIndex> number;
};

Island islandOf(const OhmNetwork& network, const std::vector<std::size_t>& group, NodeIndex from) {
  Island island;
  island.number.resize(network.nodes);
  for (NodeIndex node = 0; node < network.nodes; ++node) {
    if (group[node] != group[from]) continue;
    island.number[node] = island.network.nodes.size();
    island.network.nodes.emplace_back();
  }
  for (std::size_t k = 0; k < network.branches.size(); ++k) {
    const OhmBranch& branch = network.branches[k];
    if (!std::isfinite(branch.ohm) || group[branch.a] != group[from]) continue;
    island.kept.push_back(k);
    island.network.branches.push_back(
        {{}, island.number[branch.a], island.number[branch.b], Resistance(branch.ohm)});
  }
  return island;
}

/// Current from a to b through every branch, per ampere that goes in at `from` and out at `to`.
///
/// Of a branch of zero ohm it follows from what else meets at one of its ends (Kirchhoff's first law); zero
/// ohm in a ring, where it is open how the current divides, counts as carrying none.
std::vector<double> currents(const OhmNetwork& network, const Island& island, const Solver& solver,
                             NodeIndex from, NodeIndex to) {
  const double input = solver.inputConductance();
  std::vector<double> current(network.branches.size(), 0);
  std::vector<double> arriving(network.nodes, 0);  // and not led away yet
  arriving[from] += 1;
  arriving[to] -= 1;
  std::vector<std::size_t> open;
  const auto carry = [&](std::size_t branch, double ampere) {
    current[branch] = ampere;
    arriving[network.branches[branch].a] -= ampere;
    arriving[network.branches[branch].b] += ampere;
  };
  for (std::size_t k = 0; k < island.kept.size(); ++k) {
    const Branch& branch = island.network.branches[k];
    if (branch.resistance.base() == 0)
      open.push_back(island.kept[k]);
    else
      carry(island.kept[k], solver.between({branch.a, branch.b}) * solver.conductance(k) / input);
  }
  const auto meeting = [&](NodeIndex node) {
    return std::count_if(open.begin(), open.end(), [&](std::size_t k) {
      return network.branches[k].a == node || network.branches[k].b == node;
    });
  };
  for (std::size_t k = 0; k < open.size();) {
    const OhmBranch& branch = network.branches[open[k]];
    const bool fromA = meeting(branch.a) == 1, fromB = meeting(branch.b) == 1;
    if (!fromA && !fromB) {
      ++k;
      continue;
    }
    carry(open[k], fromA ? arriving[branch.a] : -arriving[branch.b]);
    open.erase(open.begin() + static_cast<std::ptrdiff_t>(k));
    k = 0;
  }
  return current;
}

}  // namespace

Result<OhmModel> OhmModel::make(const Setup& setup, const OhmmeterConditions& conditions) {
  if (auto usable = checkBridge(setup.bridge, setup.instrument); !usable) return usable.error();
  if (auto usable = checkDecision(setup.decision); !usable) return usable.error();
  OhmModel model(setup, conditions);
  model.m_coverageFactor = coverageFactorFor(setup.decision.coverage, std::nullopt);
  model.prepareInputs();
  model.listResistors();
  model.prepareBridge();
  return model;
}

void OhmModel::prepareInputs() {
  const auto inputs = inputsOf(m_setup);
  for (const BudgetInput& input : inputs) {
    m_inputAt[input.input] = m_inputs.size();
    m_inputs.push_back(input.input);
    m_standard.push_back(input.standard);
  }
  m_refusals = inputRefusals(m_setup, inputs);
  m_pairs = correlatedPairs(m_setup, inputs);
}

void OhmModel::listResistors() {
  for (std::size_t shunt = 0; shunt < m_setup.shunts.size(); ++shunt) {
    const std::string& name = resistorName(m_setup.shunts[shunt]);
    if (std::find(m_resistors.begin(), m_resistors.end(), name) != m_resistors.end()) continue;
    m_resistors.push_back(name);
    m_firstShunt.push_back(shunt);
  }
}

void OhmModel::prepareBridge() {
  Bridge bridge = m_setup.bridge;
  Instrument instrument = m_setup.instrument;
  if (!m_conditions.instrumentConnected) std::tie(bridge, instrument) = unplugged(bridge, instrument);
  const BridgeNetwork whole = bridgeNetwork(bridge, instrument, {});
  for (const Branch& branch : whole.network.branches)
    m_bridge.branches.push_back({branch.a, branch.b, branch.resistance.base(), {}, 1});
  for (const Dependence& dependence : whole.dependences) {
    OhmBranch& branch = m_bridge.branches[dependence.branch];
    if (dependence.input.kind == InputKind::Arm)
      branch.part = {OhmKind::Arm, dependence.input.index}, branch.share = dependence.ohmPerUnit;
    if (dependence.input.kind == InputKind::Lead) branch.part = {OhmKind::Lead, dependence.input.index};
    if (dependence.input.kind == InputKind::InputResistance) branch.part = {OhmKind::Input, 0};
    const auto input = m_inputAt.find(dependence.input);
    if (input != m_inputAt.end())
      m_bridge.dependences.push_back({input->second, dependence.branch, dependence.ohmPerUnit});
  }
  for (OhmBranch& branch : m_bridge.branches)
    if (!has(branch.part)) branch.ohm = open_ohm;
  m_firstEnd = whole.network.nodes.size();
  m_bridge.nodes = m_firstEnd + 2 * m_resistors.size();
}

std::size_t OhmModel::resistorOf(const Shunt& shunt) const {
  const auto found = std::find(m_resistors.begin(), m_resistors.end(), resistorName(shunt));
  return static_cast<std::size_t>(found - m_resistors.begin());
}

std::optional<std::size_t> OhmModel::shuntNamed(const std::string& name) const {
  for (std::size_t k = 0; k < m_setup.shunts.size(); ++k)
    if (m_setup.shunts[k].name == name) return k;
  return std::nullopt;
}

bool OhmModel::isAway(const Shunt& shunt) const {
  return !m_conditions.instrumentConnected && isSwitchedInside(m_setup, shunt);
}

bool OhmModel::has(const OhmPart& part) const {
  if (m_conditions.instrumentConnected) return true;
  if (part.kind == OhmKind::Arm) return templateOf(m_setup.bridge.type).atArticle[part.index];
  if (part.kind == OhmKind::Shunt) return !isAway(m_setup.shunts[part.index]);
  return part.kind != OhmKind::Input;
}

bool OhmModel::hasState(const WiringState& state) const {
  if (state.shunt.empty()) return state.jumpers == 0;
  const auto shunt = shuntNamed(state.shunt);
  return shunt && state.jumpers <= m_setup.shunts[*shunt].jumpers.size();
}

std::optional<NodeIndex> OhmModel::nodeOf(const OhmPoint& point) const {
  if (const auto* node = std::get_if<Node>(&point))
    return hasNode(m_setup.bridge, *node) ? std::optional(static_cast<NodeIndex>(*node)) : std::nullopt;
  const auto& end = std::get<ResistorEnd>(point);
  const auto found = std::find(m_resistors.begin(), m_resistors.end(), end.resistor);
  if (found == m_resistors.end() || end.end < 1 || end.end > 2) return std::nullopt;
  return endNode(static_cast<std::size_t>(found - m_resistors.begin()), end.end - std::size_t{1});
}

void OhmModel::addBranch(OhmNetwork& network, OhmBranch branch,
                         std::initializer_list<std::pair<Input, double>> ohmPerUnit) const {
  for (const auto& [input, slope] : ohmPerUnit)
    if (const auto at = m_inputAt.find(input); at != m_inputAt.end())
      network.dependences.push_back({at->second, network.branches.size(), slope});
  network.branches.push_back(branch);
}

void OhmModel::addResistors(OhmNetwork& network, const WiringState& state, const OhmChange& change) const {
  const auto inHand = shuntNamed(state.shunt);
  const auto* swapped = std::get_if<ResistorsSwapped>(&change);
  for (std::size_t place = 0; place < m_resistors.size(); ++place) {
    std::size_t fitted = place;
    if (swapped && place == swapped->a) fitted = swapped->b;
    if (swapped && place == swapped->b) fitted = swapped->a;
    const bool isInHand = inHand && resistorOf(m_setup.shunts[*inHand]) == fitted;
    const std::size_t shunt = isInHand ? *inHand : m_firstShunt[fitted];
    addBranch(network,
              {endNode(place, 0),
               endNode(place, 1),
               usableOr(m_setup.shunts[shunt].resistance.base(), false),
               {OhmKind::Resistor, fitted},
               1},
              {{{InputKind::Shunt, shunt}, 1}});
  }
}

void OhmModel::addClosed(OhmNetwork& network, std::size_t shunt, const Landing& landing) const {
  const Shunt& laid = m_setup.shunts[shunt];
  for (const std::size_t end : {0, 1}) {
    if (!landing[end]) continue;
    addBranch(network,
              {endNode(resistorOf(laid), end),
               static_cast<NodeIndex>(*landing[end]),
               usableOr(0.5 * (laid.wires + laid.contact).base(), true),
               {OhmKind::Shunt, shunt},
               1},
              {{{InputKind::ShuntWires, shunt}, 0.5}, {{InputKind::ShuntContact, shunt}, 0.5}});
  }
}

/// What jumpers join without a resistor between.
void OhmModel::addStraightJoins(OhmNetwork& network, std::size_t shunt, const std::vector<Jumper>& jumpers,
                                std::size_t count) const {
  JumperGroups groups(m_setup);
  for (std::size_t k = 0; k < count; ++k) groups.lay(jumpers[k]);
  for (const auto& points : groups.joinedPoints())
    for (std::size_t k = 1; k < points.size(); ++k)
      addBranch(network, {static_cast<NodeIndex>(points[0]), static_cast<NodeIndex>(points[k]), 0, {}, 1},
                {});
  const std::string& name = resistorName(m_setup.shunts[shunt]);
  const std::size_t resistor = resistorOf(m_setup.shunts[shunt]);
  if (groups.joined(ResistorEnd{name, 1}, ResistorEnd{name, 2}))
    addBranch(network, {endNode(resistor, 0), endNode(resistor, 1), 0, {}, 1}, {});
}

void OhmModel::addLaid(OhmNetwork& network, const WiringState& state, std::size_t shunt,
                       const OhmChange& change) const {
  const Shunt& laid = m_setup.shunts[shunt];
  std::vector<Jumper> jumpers = laid.jumpers;
  const auto* swapped = std::get_if<JumpersSwapped>(&change);
  if (swapped && swapped->shunt == shunt) std::swap(jumpers[swapped->first].to, jumpers[swapped->second].to);
  const bool changed = jumpers != laid.jumpers;
  Landing landing = landingOf(m_setup, laid, jumpers, state.jumpers);
  const bool closed = state.jumpers == jumpers.size();
  if (closed && !changed && !landsAsPlanned(m_setup, laid, landing))
    landing = {laid.a, laid.b};  // the rules tell what is wrong with the jumpers; the sheet tells the plan
  else if (!jumpers.empty() && state.jumpers > 0)
    addStraightJoins(network, shunt, jumpers, state.jumpers);
  if (!jumpers.empty() && state.jumpers == 0) return;  // nothing is laid yet

  if (const auto* places = std::get_if<PlacesSwapped>(&change); places) {
    if (places->a != shunt && places->b != shunt) return addClosed(network, shunt, landing);
    const Shunt& other = m_setup.shunts[places->a == shunt ? places->b : places->a];
    const Node a = pointOf(m_setup.bridge, laid.a);
    for (auto& place : landing)
      if (place) place = pointOf(m_setup.bridge, *place) == a ? other.a : other.b;
  }
  addClosed(network, shunt, landing);
}

/// A shunt that cannot be opened.
void OhmModel::addAlways(OhmNetwork& network, std::size_t shunt) const {
  const Shunt& stuck = m_setup.shunts[shunt];
  const Landing landing = landingOf(m_setup, stuck, stuck.jumpers, stuck.jumpers.size());
  const bool planned = landsAsPlanned(m_setup, stuck, landing);
  addClosed(network, shunt, planned ? landing : Landing{stuck.a, stuck.b});
}

OhmNetwork OhmModel::networkIn(const WiringState& state, const OhmChange& change) const {
  OhmNetwork network = m_bridge;
  addResistors(network, state, change);
  const auto inHand = shuntNamed(state.shunt);
  const PartValue* faulty = valueOf(change, OhmKind::Shunt);
  const bool isFaulty = faulty && faulty->part.index == inHand;
  if (inHand && !isFaulty && !isAway(m_setup.shunts[*inHand])) addLaid(network, state, *inHand, change);
  if (faulty && faulty->ohm == 0 && !isAway(m_setup.shunts[faulty->part.index]))
    addAlways(network, faulty->part.index);
  if (const auto* leads = std::get_if<LeadsSwapped>(&change)) swapLeads(network, *leads);
  if (const auto* shorted = std::get_if<TerminalsShorted>(&change))
    addBranch(network, {static_cast<NodeIndex>(shorted->a), static_cast<NodeIndex>(shorted->b), 0, {}, 1},
              {});
  if (const auto* value = std::get_if<PartValue>(&change); value && !faulty) setValue(network, *value);
  return network;
}

std::vector<LeadRole> OhmModel::leads() const {
  std::vector<LeadRole> roles;
  for (const Wire& wire : wiresOf(m_setup.bridge))
    if (!isBroken(m_setup.bridge, wire.role)) roles.push_back(wire.role);
  return roles;
}

double OhmModel::plannedValue(const OhmPart& part) const {
  switch (part.kind) {
    case OhmKind::Arm:
      return m_setup.bridge.arms[part.index].base();
    case OhmKind::Lead:
      return leadResistance(m_setup.bridge, static_cast<LeadRole>(part.index)).base();
    case OhmKind::Input:
      return m_setup.instrument.inputResistance.value_or(Resistance(open_ohm)).base();
    case OhmKind::Resistor:
      return m_setup.shunts[m_firstShunt[part.index]].resistance.base();
    case OhmKind::Shunt:
    case OhmKind::Other:
      break;
  }
  return 0;
}

Result<OhmValue> OhmModel::between(const OhmNetwork& network, NodeIndex from, NodeIndex to) const {
  const auto islands = groupsOf(network, false);
  if (islands[from] != islands[to]) return OhmValue{open_ohm, 0};
  for (const OhmBranch& branch : network.branches)
    if (branch.ohm < 0 && islands[branch.a] == islands[from])
      return Error{branch.part.kind == OhmKind::Resistor ? m_resistors[branch.part.index]
                                                         : m_setup.shunts[branch.part.index].name,
                   say("a resistance is not a positive finite number"), say("Enter a resistance in ohm")};
  const auto joined = groupsOf(network, true);
  if (joined[from] == joined[to]) return OhmValue{0, 0};

  const Island island = islandOf(network, islands, from);
  auto solver = Solver::prepare(island.network, {island.number[from], island.number[to]});
  if (!solver) return solver.error();
  if (auto solved = solver->solve(); !solved) return solved.error();
  const auto current = currents(network, island, *solver, from, to);
  std::vector<double> slope(m_inputs.size(), 0);  // d resistance / d input, ohm per base unit
  for (const OhmDependence& dependence : network.dependences)
    slope[dependence.input] +=
        dependence.ohmPerUnit * current[dependence.branch] * current[dependence.branch];
  for (std::size_t k = 0; k < slope.size(); ++k)
    if (slope[k] != 0 && m_refusals[k]) return *m_refusals[k];
  return OhmValue{1 / solver->inputConductance(), combinedUncertainty(slope, m_standard, m_pairs)};
}

double OhmModel::toleranceOf(const OhmValue& value) const {
  if (!std::isfinite(value.ohm)) return 0;
  return m_coverageFactor * value.standard + m_conditions.relativeError * value.ohm +
         m_conditions.absoluteError.base();
}

}  // namespace core
