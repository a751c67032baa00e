// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/circuit/bridge_network.h"

#include <algorithm>
#include <array>
#include <iterator>

#include "core/units/language.h"

namespace core {
namespace {

NodeIndex index(Node node) { return static_cast<NodeIndex>(node); }

std::string armName(std::size_t arm) { return say("arm {1}", {std::to_string(arm + 1)}); }

/// Puts the parts of a bridge together, one kind after the other.
class Assembly {
 public:
  Assembly(const Bridge& bridge, const Instrument& instrument, BridgeNetwork& result)
      : m_bridge(bridge), m_instrument(instrument), m_result(result) {}

  void addArms() {
    for (const std::size_t arm : {0, 1, 2, 3}) m_armEnd[arm] = index(armEnd(arm));
    if (m_instrument.balance.kind == BalanceKind::Series) {
      m_armEnd[2] = addNode(say("balance end of arm 3"));
      m_armEnd[3] = index(armEnd(3));
      m_arm4Begin = addNode(say("balance end of arm 4"));
    }
    for (const std::size_t arm : {0, 1, 2, 3}) addArm(arm);
    // First pieces are branches 0 to 3; the second pieces of split arms follow.
    for (const std::size_t arm : {0, 1, 2, 3}) addSecondPiece(arm);
  }

  void addLeads() {
    const std::vector<Wire> wires = wiresOf(m_bridge);
    for (const Wire& wire : wires) {
      if (isBroken(m_bridge, wire.role)) continue;
      const auto role = static_cast<std::size_t>(wire.role);
      const Resistance ohm = leadResistance(m_bridge, wire.role);
      const double perKelvin = resistancePerKelvin(m_bridge.leads[role]);
      depend({InputKind::Lead, role}, ohm / resistanceOrOne(m_bridge.leads[role]));
      depend({InputKind::LeadTemperature, 0}, perKelvin);
      addBranch(say("lead {1}", {leadName(wire.role)}), index(wire.from), index(wire.to), ohm);
    }
    for (const Join& join : templateOf(m_bridge.type).joins)
      addBranch("join", index(join.a), index(join.b), Resistance(0));
    for (const LeadPair& pair : m_bridge.hookup.touching) addTouch(wires, pair);
  }

  void addInput() {
    if (!m_instrument.inputResistance) return;
    depend({InputKind::InputResistance, 0}, 1);
    addBranch(say("instrument input"), index(Node::SPlus), index(Node::SMinus),
              *m_instrument.inputResistance);
  }

  void addLeaks() {
    const bool toStructure = std::any_of(m_bridge.leaks.begin(), m_bridge.leaks.end(),
                                         [](const Leak& leak) { return leak.toStructure.has_value(); });
    const NodeIndex structure = toStructure ? addNode("structure") : 0;
    if (toStructure && m_instrument.grounding != Grounding::Floating) {
      const Node ground = m_instrument.grounding == Grounding::PMinus ? Node::PMinus : Node::PPlus;
      addBranch(say("structure to {1}", {nodeName(ground)}), structure, index(ground), Resistance(0));
    }
    for (const std::size_t arm : {0, 1, 2, 3}) {
      if (const auto& across = m_bridge.leaks[arm].across) {
        depend({InputKind::LeakAcross, arm}, 1);
        addBranch(say("leak over {1}", {armName(arm)}), armBeginning(arm), m_armEnd[arm], *across);
      }
      if (const auto& leak = m_bridge.leaks[arm].toStructure) {
        depend({InputKind::LeakToStructure, arm}, 1);
        addBranch(say("leak to structure of {1}", {armName(arm)}), leakingNode(arm), structure, *leak);
      }
    }
  }

  void addBalance() {
    const Balance& balance = m_instrument.balance;
    if (balance.kind == BalanceKind::None) return;
    const double all = balance.potentiometer.base(), w = balance.wiper;
    const auto part = [&](const std::string& name, NodeIndex a, NodeIndex b, double share, double perWiper) {
      depend({InputKind::BalancePotentiometer, 0}, share);
      depend({InputKind::BalanceWiper, 0}, perWiper);
      addBranch(name, a, b, Resistance(share * all));
    };
    if (balance.kind == BalanceKind::Series) {
      part(say("balance potentiometer, part in arm 3"), m_armEnd[2], index(Node::Arm3End), w, all);
      part(say("balance potentiometer, part in arm 4"), index(Node::Arm4Begin), m_arm4Begin, 1 - w, -all);
      return;
    }
    const NodeIndex wiper = addNode(say("balance wiper"));
    part(say("balance potentiometer, part to P+"), index(Node::PPlus), wiper, 1 - w, -all);
    part(say("balance potentiometer, part to P-"), wiper, index(Node::PMinus), w, all);
    depend({InputKind::BalanceLimiting, 0}, 1);
    addBranch(say("balance resistor"), wiper, index(Node::SPlus), balance.limiting);
  }

 private:
  void addTouch(const std::vector<Wire>& wires, const LeadPair& pair) {
    const auto find = [&](LeadRole role) {
      return std::find_if(wires.begin(), wires.end(), [&](const Wire& wire) { return wire.role == role; });
    };
    const auto a = find(pair.a), b = find(pair.b);
    if (a != wires.end() && b != wires.end())
      addBranch(say("touching leads"), index(a->to), index(b->to), Resistance(0));
  }

  /// A lead of zero ohm stays zero whatever its share.
  static Resistance resistanceOrOne(const Lead& lead) {
    const Resistance ohm = resistanceOf(lead);
    return ohm.base() > 0 ? ohm : Resistance(1);
  }

  NodeIndex addNode(std::string name) {
    m_result.network.nodes.push_back(std::move(name));
    return m_result.network.nodes.size() - 1;
  }

  /// The branch that is added next follows `input`.
  void depend(Input input, double ohmPerUnit) {
    m_result.dependences.push_back({input, m_result.network.branches.size(), ohmPerUnit});
  }

  void addBranch(std::string name, NodeIndex a, NodeIndex b, Resistance resistance) {
    m_result.network.branches.push_back({std::move(name), a, b, resistance});
  }

  bool isSplit(std::size_t arm) const {
    const Leak& leak = m_bridge.leaks[arm];
    return leak.toStructure && leak.place > 0 && leak.place < 1;
  }

  void addPiece(std::size_t arm, NodeIndex a, NodeIndex b, double share) {
    m_result.pieces.push_back({arm, m_result.network.branches.size(), share});
    depend({InputKind::Arm, arm}, share);
    addBranch(armName(arm), a, b, share * m_bridge.arms[arm]);
  }

  /// The grid's own ends: a series balance lies between those of arms 3 and 4.
  NodeIndex armBeginning(std::size_t arm) const {
    return arm == 3 && m_instrument.balance.kind == BalanceKind::Series ? m_arm4Begin : index(armBegin(arm));
  }

  void addArm(std::size_t arm) {
    if (!isSplit(arm)) return addPiece(arm, armBeginning(arm), m_armEnd[arm], 1);
    m_grid[arm] = addNode(say("grid of {1}", {armName(arm)}));
    addPiece(arm, armBeginning(arm), m_grid[arm], m_bridge.leaks[arm].place);
  }

  void addSecondPiece(std::size_t arm) {
    if (isSplit(arm)) addPiece(arm, m_grid[arm], m_armEnd[arm], 1 - m_bridge.leaks[arm].place);
  }

  NodeIndex leakingNode(std::size_t arm) const {
    if (isSplit(arm)) return m_grid[arm];
    return m_bridge.leaks[arm].place > 0 ? m_armEnd[arm] : armBeginning(arm);
  }

  const Bridge& m_bridge;
  const Instrument& m_instrument;
  BridgeNetwork& m_result;
  std::array<NodeIndex, 4> m_armEnd{};
  std::array<NodeIndex, 4> m_grid{};
  NodeIndex m_arm4Begin = 0;
};

}  // namespace

BridgeNetwork bridgeNetwork(const Bridge& bridge, const Instrument& instrument,
                            std::span<const ShuntBranch> shunts) {
  BridgeNetwork result;
  Network& network = result.network;
  network.nodes.reserve(nodeCount + 8);
  network.branches.reserve(24 + shunts.size());
  result.dependences.reserve(24);
  for (const Node node : allNodes()) network.nodes.emplace_back(nodeName(node));
  Assembly assembly(bridge, instrument, result);
  assembly.addArms();
  assembly.addLeads();
  assembly.addInput();
  assembly.addLeaks();
  assembly.addBalance();
  result.firstShunt = network.branches.size();
  for (const ShuntBranch& shunt : shunts)
    network.branches.push_back({shunt.name, index(shunt.a), index(shunt.b), shunt.resistance});

  const auto port = [](Node plus, Node minus, bool reversed) {
    return reversed ? Port{index(minus), index(plus)} : Port{index(plus), index(minus)};
  };
  const Hookup& hookup = bridge.hookup;
  result.excitation = port(Node::PPlus, Node::PMinus, hookup.excitationReversed);
  result.output = port(Node::SPlus, Node::SMinus, hookup.signalReversed);
  const bool sensed = hasNode(bridge, Node::SensePlus) && !instrument.current;
  result.reference =
      sensed ? port(Node::SensePlus, Node::SenseMinus, hookup.excitationReversed) : result.excitation;
  return result;
}

}  // namespace core
