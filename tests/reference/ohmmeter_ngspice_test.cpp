// SPDX-License-Identifier: GPL-3.0-or-later
// What an ohmmeter must read against ngspice, an independent solver (needs the ngspice package): every
// template, every two points, all shunts open, half laid and closed, plugged in and unplugged.
#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <numeric>

#include "core/circuit/bridge_network.h"
#include "core/wiring/ohmmeter_sheet.h"
#include "core/wiring/wiring_rules.h"
#include "tests/support/effects.h"
#include "tests/support/ngspice.h"
#include "tests/support/reached_digits.h"

using namespace core;

namespace {

/// From every node to ground, so that islands have a potential.
constexpr double toGround_ohm = 1e15;

std::string text(double value) {
  std::array<char, 40> digits;
  return {
      digits.data(),
      std::to_chars(digits.data(), digits.data() + digits.size(), value, std::chars_format::scientific).ptr};
}

/// A set-up whose shunts are laid with jumpers. The third and the fifth are made of one resistor.
core::Setup wiredSetup(BridgeType type, unsigned variant) {
  core::Setup setup = test::withEffects(type, variant);
  setup.shunts[2].part.id = setup.shunts[4].part.id = "S-104";
  setup.shunts[4].resistance = setup.shunts[2].resistance;
  setup.wiring = usualWiring(setup);
  for (std::size_t k = 0; k < setup.shunts.size(); ++k) setup.shunts[k].jumpers = *jumpersFor(setup, k);
  return setup;
}

/// The same network put together for the test: nodes by number, zero ohm as one node, resistors by ends.
class Circuit {
 public:
  Circuit(const core::Setup& setup, bool connected) : m_setup(setup) {
    Instrument instrument = setup.instrument;
    if (!connected) instrument.balance.kind = BalanceKind::None;
    const BridgeNetwork bridge = bridgeNetwork(setup.bridge, instrument, {});
    m_joined.resize(bridge.network.nodes.size() + 2 * setup.shunts.size());
    m_firstEnd = bridge.network.nodes.size();
    std::iota(m_joined.begin(), m_joined.end(), NodeIndex{0});
    for (const Branch& branch : bridge.network.branches)
      if (connected || !isInside(branch.name)) add(branch.a, branch.b, branch.resistance.base());
    for (std::size_t k = 0; k < setup.shunts.size(); ++k)
      if (resistor(k) == k) add(end(k, 1), end(k, 2), setup.shunts[k].resistance.base());
  }

  /// One jumper each from end 1 to place a and from end 2 to place b, with half of wires and contact each.
  void lay(std::size_t shunt, std::size_t jumpers) {
    const Shunt& laid = m_setup.shunts[shunt];
    const double half = (laid.wires + laid.contact).base() / 2;
    if (jumpers > 0) add(end(shunt, 1), static_cast<NodeIndex>(laid.a), half);
    if (jumpers > 1) add(end(shunt, 2), static_cast<NodeIndex>(laid.b), half);
  }

  NodeIndex node(const OhmPoint& point) const {
    if (const auto* place = std::get_if<Node>(&point)) return static_cast<NodeIndex>(*place);
    const auto& wanted = std::get<ResistorEnd>(point);
    for (std::size_t k = 0; k < m_setup.shunts.size(); ++k)
      if (resistorName(m_setup.shunts[k]) == wanted.resistor) return end(k, wanted.end);
    ADD_FAILURE() << wanted.resistor;
    return 0;
  }

  /// Adds a copy of the circuit to `deck`, with 1 A in at `from` and out at `to`, which is ground: the
  /// voltage is the resistance.
  void addTo(test::Deck& deck, const OhmPoint& from, const OhmPoint& to) const {
    const NodeIndex ground = m_joined[node(to)];
    const std::string copy = "c" + std::to_string(deck.nodes.size());
    const auto name = [&](NodeIndex n) {
      return m_joined[n] == ground ? std::string("0") : copy + "n" + std::to_string(m_joined[n]);
    };
    deck.netlist += "I" + copy + " 0 " + name(node(from)) + " 1\n";
    for (std::size_t k = 0; k < m_branches.size(); ++k)
      deck.netlist += "R" + copy + "b" + std::to_string(k) + " " + name(m_branches[k].a) + " " +
                      name(m_branches[k].b) + " " + text(m_branches[k].resistance.base()) + "\n";
    deck.nodes.push_back(name(node(from)));
  }

  bool sameNode(const OhmPoint& a, const OhmPoint& b) const { return m_joined[node(a)] == m_joined[node(b)]; }

 private:
  bool isInside(const std::string& name) const {
    for (const std::size_t arm : {0, 1, 2, 3})
      if (!templateOf(m_setup.bridge.type).atArticle[arm] &&
          name.find("arm " + std::to_string(arm + 1)) != std::string::npos)
        return true;
    return name == "instrument input" || name.find("structure to") == 0;
  }

  /// First shunt that is made of the same resistor.
  std::size_t resistor(std::size_t shunt) const { return shunt == 4 ? 2 : shunt; }
  NodeIndex end(std::size_t shunt, std::size_t number) const {
    return m_firstEnd + 2 * resistor(shunt) + number - 1;
  }

  void add(NodeIndex a, NodeIndex b, double ohm) {
    if (ohm > 0) return m_branches.push_back({{}, a, b, Resistance(ohm)});
    const NodeIndex kept = m_joined[a], gone = m_joined[b];
    std::replace(m_joined.begin(), m_joined.end(), gone, kept);
  }

  const core::Setup& m_setup;
  std::vector<NodeIndex> m_joined;  ///< node -> the node it is one with
  NodeIndex m_firstEnd = 0;
  std::vector<Branch> m_branches;
};

/// Bridge and, of the resistors, the one that is in hand: nothing joins the others to anything. All of them
/// when none is in hand.
std::vector<OhmPoint> pointsIn(const core::Setup& setup, const WiringState& state) {
  std::vector<OhmPoint> points = ohmPoints(setup);
  const auto inHand = std::find_if(setup.shunts.begin(), setup.shunts.end(),
                                   [&](const Shunt& shunt) { return shunt.name == state.shunt; });
  if (inHand == setup.shunts.end()) return points;
  std::erase_if(points, [&](const OhmPoint& point) {
    const auto* end = std::get_if<ResistorEnd>(&point);
    return end && end->resistor != resistorName(*inHand);
  });
  return points;
}

/// What we expect between every two points, and decks with a copy of the circuit for each.
struct Cases {
  std::vector<std::vector<OhmExpectation>> expected;
  std::vector<test::Deck> decks;
  std::size_t pairs = 0, open = 0;

  void add(const core::Setup& setup, const WiringState& state, bool connected) {
    Circuit circuit(setup, connected);
    for (std::size_t k = 0; k < setup.shunts.size(); ++k)
      if (setup.shunts[k].name == state.shunt) circuit.lay(k, state.jumpers);
    const auto points = pointsIn(setup, state);
    // No limit of the ohmmeter's range: what is finite is to be compared.
    const OhmmeterConditions conditions{connected, 0, Resistance(0), Resistance(1e12)};
    const auto ours = ohmExpectations(setup, state, points, conditions);
    ASSERT_TRUE(ours) << ours.error().text();
    ASSERT_EQ(ours->size(), points.size() * (points.size() - 1) / 2);
    startDeck();
    for (const OhmExpectation& expectation : *ours) {
      if (circuit.sameNode(expectation.from, expectation.to)) {
        ASSERT_TRUE(expectation.ohm);
        EXPECT_EQ(expectation.ohm->base(), 0);
        continue;
      }
      if (decks.back().nodes.size() == copies) startDeck();
      expected.back().push_back(expectation);
      circuit.addTo(decks.back(), expectation.from, expectation.to);
      ++pairs;
    }
  }

  void compare() {
    for (test::Deck& deck : decks) deck.netlist += ".end\n";
    const auto voltages = test::operatingPoints(decks);
    ASSERT_TRUE(voltages) << voltages.error().text();
    for (std::size_t k = 0; k < decks.size(); ++k)
      for (std::size_t i = 0; i < expected[k].size(); ++i) compare(expected[k][i], (*voltages)[k][i], k);
  }

 private:
  /// More in one netlist and ngspice gets slow, fewer and starting it does.
  static constexpr std::size_t copies = 16;

  void startDeck() {
    expected.emplace_back();
    decks.push_back({"ohmmeter\n.options rshunt=" + text(toGround_ohm) + "\n", {}});
  }

  void compare(const OhmExpectation& expectation, double theirs, std::size_t deck) {
    SCOPED_TRACE(ohmPointName(expectation.from) + " to " + ohmPointName(expectation.to) + ", deck " +
                 std::to_string(deck));
    if (!expectation.ohm) {
      ++open;
      EXPECT_GT(theirs, 1e12) << "open: all that is left are the resistors to ground";
      return;
    }
    // Their nodal matrix holds 1/0.1 ohm of a jumper beside 1/200 kohm of a resistor, so that 2e-16 of the
    // one is 4e-10 of the other; and each of up to thirty nodes leaks to ground by 1e15 ohm.
    const double ours = expectation.ohm->base();
    EXPECT_REACHED("ngspice, ohmmeter", "resistances", ours, theirs,
                   4e-9 * ours + 30 * ours * ours / toGround_ohm);
  }
};

}  // namespace

TEST(OhmmeterNgspice, AgreesForEveryTemplateAndEveryTwoPoints) {
  Cases cases;
  for (const BridgeTemplate& shape : allTemplates()) {
    // Variant 1: six wires, no leaks, a balance network, which an unplugged instrument takes away.
    const core::Setup setup = wiredSetup(shape.type, 1);
    for (const bool connected : {true, false}) {
      cases.add(setup, {}, connected);
      cases.add(setup, {setup.shunts[static_cast<std::size_t>(shape.type) % 5].name, 1}, connected);
      for (const Shunt& shunt : setup.shunts) cases.add(setup, {shunt.name, 2}, connected);
    }
  }
  cases.compare();
  EXPECT_GT(cases.pairs, bridgeTypeCount * 2 * 7 * 50) << "states of eleven points or more";
  EXPECT_GT(cases.open, 1000U);
}

TEST(OhmmeterNgspice, AgreesWithLeaksAndEitherBalance) {
  Cases cases;
  for (const BridgeTemplate& shape : allTemplates())
    for (const BalanceKind kind : {BalanceKind::Parallel, BalanceKind::Series}) {
      core::Setup setup = wiredSetup(shape.type, 6);  // leaks over and from two arms
      setup.instrument.balance.kind = kind;
      cases.add(setup, {}, true);
      cases.add(setup, {setup.shunts[1].name, 2}, true);
    }
  cases.compare();
}
