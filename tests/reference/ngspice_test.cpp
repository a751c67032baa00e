// SPDX-License-Identifier: GPL-3.0-or-later
// Random networks and random bridges against ngspice, an independent solver (needs the ngspice package).
#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <numeric>
#include <random>
#include <sstream>
#include <string>
#include <vector>

#include "core/plan/spice.h"
#include "tests/support/effects.h"
#include "tests/support/ngspice.h"
#include "tests/support/reached_digits.h"
#include "tests/support/setups.h"

using namespace core;

namespace ngspice_test {

using Random = std::mt19937_64;

double logUniform(Random& random, double low, double high) {
  return std::exp(std::uniform_real_distribution<double>(std::log(low), std::log(high))(random));
}

std::size_t below(Random& random, std::size_t count) {
  return std::uniform_int_distribution<std::size_t>(0, count - 1)(random);
}

std::string text(double value) {
  std::array<char, 40> digits;
  return {
      digits.data(),
      std::to_chars(digits.data(), digits.data() + digits.size(), value, std::chars_format::scientific).ptr};
}

/// A connected graph: a random tree, one link in ten of it zero ohm, and as many chords as it has nodes.
Network randomNetwork(Random& random) {
  const std::size_t count = 4 + below(random, 9);
  Network network;
  for (std::size_t node = 0; node < count; ++node) network.nodes.push_back("n" + std::to_string(node));
  const auto add = [&](std::size_t a, std::size_t b, double ohm) {
    network.branches.push_back({"r" + std::to_string(network.branches.size()), a, b, Resistance(ohm)});
  };
  for (std::size_t node = 1; node < count; ++node)
    // Node 1 is the supply's other side: it must not be joined to node 0 by zero ohm.
    add(node, below(random, node), node > 1 && below(random, 10) == 0 ? 0 : logUniform(random, 0.1, 1e6));
  for (std::size_t chord = 0; chord < count; ++chord) {
    const std::size_t a = below(random, count), b = below(random, count);
    if (a != b) add(a, b, logUniform(random, 0.1, 1e6));
  }
  return network;
}

/// For each branch whether it is an open switch.
using Open = std::vector<bool>;

/// Whether every node still has a way to the supply, nodes 0 and 1.
bool allReached(const Network& network, const Open& open) {
  std::vector<std::size_t> part(network.nodes.size());
  std::iota(part.begin(), part.end(), std::size_t{0});
  const auto join = [&](std::size_t a, std::size_t b) {
    const std::size_t kept = part[a], gone = part[b];
    std::replace(part.begin(), part.end(), gone, kept);
  };
  join(0, 1);
  for (std::size_t k = 0; k < network.branches.size(); ++k)
    if (!open[k]) join(network.branches[k].a, network.branches[k].b);
  return std::all_of(part.begin(), part.end(), [&](std::size_t p) { return p == part[0]; });
}

/// A random third of the resistors are switches; states with each of them open or closed at random, in which
/// no node floats (where that takes more than a hundred draws, all closed).
std::vector<Open> randomStates(const Network& network, std::size_t count, Random& random) {
  const std::size_t branches = network.branches.size();
  std::vector<std::size_t> switches;
  for (std::size_t k = 0; k < branches; ++k)
    if (network.branches[k].resistance.base() > 0 && below(random, 3) == 0) switches.push_back(k);
  std::vector<Open> states;
  while (states.size() < count) {
    Open open(branches, false);
    for (int draw = 0; draw < 100; ++draw) {
      for (const std::size_t k : switches) open[k] = below(random, 2) == 0;
      if (allReached(network, open)) break;
    }
    if (!allReached(network, open)) open.assign(branches, false);
    states.push_back(open);
  }
  return states;
}

/// The same in SPICE, zero ohm as sources of 0 V (the tree has no loops), 1 V from node 0 to node 1; an open
/// switch is not there.
test::Deck deckOf(const Network& network, const Open& open) {
  const auto name = [](NodeIndex node) { return node == 1 ? std::string("0") : "n" + std::to_string(node); };
  test::Deck deck{"random network\nV1 n0 0 1\n", {}};
  for (std::size_t k = 0; k < network.branches.size(); ++k) {
    if (open[k]) continue;
    const Branch& branch = network.branches[k];
    const bool joins = branch.resistance.base() == 0;
    deck.netlist += (joins ? "VJ" : "R") + std::to_string(k) + " " + name(branch.a) + " " + name(branch.b) +
                    " " + text(branch.resistance.base()) + "\n";
  }
  deck.netlist += ".end\n";
  for (NodeIndex node = 0; node < network.nodes.size(); ++node)
    if (node != 1) deck.nodes.push_back(name(node));
  return deck;
}

/// Puts the switches of `solver`, made of `network`, into a state and solves.
void solveState(Solver& solver, const Network& network, const Open& open) {
  for (std::size_t k = 0; k < network.branches.size(); ++k) {
    if (network.branches[k].resistance.base() == 0) continue;
    if (open[k])
      solver.open(k);
    else
      solver.setResistance(k, network.branches[k].resistance);
  }
  const auto solved = solver.solve();
  EXPECT_TRUE(solved) << (solved ? "" : solved.error().text());
}

/// A bridge as it may be installed; leads are zero or from `leastLead` up.
core::Setup randomBridge(BridgeType type, double leastLead, Random& random) {
  core::Setup setup = test::equalArms(type, Resistance(below(random, 2) == 0 ? 120 : 350));
  for (Resistance& arm : setup.bridge.arms) arm = logUniform(random, 0.98, 1.02) * arm;
  for (Lead& lead : setup.bridge.leads)
    lead = Resistance(below(random, 4) == 0 ? 0 : logUniform(random, leastLead, 50));
  setup.bridge.sixWire = below(random, 2) == 0;
  setup.instrument.excitation = Voltage(logUniform(random, 0.5, 15));
  if (below(random, 2) == 0) setup.instrument.inputResistance = Resistance(logUniform(random, 1e4, 1e9));
  setup.sequence.push_back({"zero", {}});
  return setup;
}

/// Four shunts from 1 kohm to 10 Mohm between any two nodes, each with its step, and a step of all.
core::Setup withShuntsAnywhere(core::Setup setup, Random& random) {
  while (setup.shunts.size() < 4) {
    const Node a = allNodes()[below(random, nodeCount)], b = allNodes()[below(random, nodeCount)];
    const auto with = test::withShunt(setup, Resistance(logUniform(random, 1e3, 1e7)), a, b);
    if (potentials(with, with.sequence.size() - 1)) setup = with;  // else across one node, or no such node
  }
  setup.sequence.push_back({"all", {0, 1, 2, 3}});
  return setup;
}

/// As shunts of a plan are: up to 1 Mohm, over each arm and from P+ to S- at the instrument.
core::Setup withUsualShunts(core::Setup setup, Random& random) {
  for (const std::size_t arm : {1, 2, 3, 4})
    setup = test::withShuntOnArm(setup, Resistance(logUniform(random, 1e3, 1e6)), arm);
  return test::withShunt(setup, Resistance(logUniform(random, 1e3, 1e6)), Node::PPlus, Node::SMinus);
}

/// The netlist's name of a node, from its own list "* node NAME: PLACE, PLACE"; empty when it has none.
std::string nameIn(const std::string& netlist, Node node) {
  std::istringstream lines(netlist);
  for (std::string line; std::getline(lines, line);) {
    const std::size_t colon = line.find(": ");
    if (line.rfind("* node ", 0) != 0 || colon == std::string::npos) continue;
    const std::string places = line.substr(colon + 1) + ",";
    if (places.find(" " + std::string(nodeName(node)) + ",") != std::string::npos)
      return line.substr(7, colon - 7);
  }
  return {};
}

/// One step of a bridge for ngspice, by the netlist we export.
struct StepDeck {
  test::Deck deck;
  std::vector<Node> nodes;  ///< of `deck.nodes`, in their order

  StepDeck(const core::Setup& setup, std::size_t step) {
    const auto netlist = spiceNetlist(setup, step, "random bridge");
    EXPECT_TRUE(netlist) << netlist.error().text();
    deck.netlist = *netlist;
    for (const Node node : allNodes()) {
      const std::string name = nameIn(*netlist, node);
      if (name.empty() || name == "0") continue;
      nodes.push_back(node);
      deck.nodes.push_back(name);
    }
  }

  double volt(const std::vector<double>& voltages, Node node) const {
    const auto at = std::find(nodes.begin(), nodes.end(), node);
    return at == nodes.end() ? 0 : voltages[static_cast<std::size_t>(at - nodes.begin())];
  }

  /// As the instrument works it out: against what it senses, or against current x nominal resistance.
  double output(const std::vector<double>& voltages, const core::Setup& setup) const {
    const double signal = volt(voltages, Node::SPlus) - volt(voltages, Node::SMinus);
    if (const auto& current = setup.instrument.current)
      return signal / (current->supplied.base() * current->nominal.base());
    const bool sensed = hasNode(setup.bridge, Node::SensePlus);
    const Node plus = sensed ? Node::SensePlus : Node::PPlus;
    const Node minus = sensed ? Node::SenseMinus : Node::PMinus;
    return signal / (volt(voltages, plus) - volt(voltages, minus));
  }
};

/// Runs every step of every setup. All voltages must agree to 1e-9 relative, the output and its change,
/// differences of voltages, to 1e-9 relative and `rounding`. At a current source our voltages are per volt
/// over the bridge; how many volts those are is in the output.
void expectAgreement(const std::vector<core::Setup>& setups, double rounding) {
  const test::Source ofExcitation("ngspice, bridges, of 1 V/V", 1);
  std::vector<StepDeck> steps;
  std::vector<test::Deck> decks;
  for (const core::Setup& setup : setups)
    for (std::size_t step = 0; step < setup.sequence.size(); ++step) {
      steps.emplace_back(setup, step);
      decks.push_back(steps.back().deck);
    }
  const auto voltages = test::operatingPoints(decks);
  ASSERT_TRUE(voltages) << voltages.error().text();

  std::size_t at = 0;
  for (const core::Setup& setup : setups) {
    const auto predicted = predict(setup);
    const double theirZero = steps[at].output((*voltages)[at], setup);
    for (std::size_t step = 0; step < setup.sequence.size(); ++step, ++at) {
      SCOPED_TRACE(decks[at].netlist);
      const auto ours = *potentials(setup, step);
      const double supply = setup.instrument.current ? steps[at].volt((*voltages)[at], Node::PPlus)
                                                     : setup.instrument.excitation.base();
      for (std::size_t i = 0; i < decks[at].nodes.size(); ++i) {
        const double volt = *ours[static_cast<std::size_t>(steps[at].nodes[i])] * supply;
        EXPECT_REACHED("ngspice, bridges", "node voltages", volt, (*voltages)[at][i], 1e-9 * volt)
            << decks[at].nodes[i];
      }
      ASSERT_TRUE(predicted.steps[step]) << predicted.steps[step].error().text();
      const double change = predicted.steps[step]->output.base();
      const double theirs = steps[at].output((*voltages)[at], setup);
      EXPECT_REACHED(ofExcitation, "outputs", predicted.zero->base() + change, theirs,
                     1e-9 * std::abs(theirs) + rounding);
      EXPECT_REACHED(ofExcitation, "output changes", change, theirs - theirZero,
                     1e-9 * std::abs(change) + rounding);
    }
  }
}

TEST(Ngspice, AgreesOnRandomNetworksWithRandomClosedShunts) {
  constexpr std::size_t networkCount = 1000, stateCount = 3;
  Random random(20240817);
  std::vector<Network> networks;
  std::vector<std::vector<Open>> states;
  std::vector<test::Deck> decks;
  for (std::size_t k = 0; k < networkCount; ++k) {
    networks.push_back(randomNetwork(random));
    states.push_back(randomStates(networks.back(), stateCount, random));
    for (const Open& open : states.back()) decks.push_back(deckOf(networks.back(), open));
  }

  const auto voltages = test::operatingPoints(decks);

  ASSERT_TRUE(voltages) << voltages.error().text();
  // 1e-9 relative, of every node down to the smallest voltage. An assembled nodal matrix loses its small
  // conductances beside large ones, up to 1e7 times 1e-16 here; wider spreads are checked against quadruple
  // precision in the tests of Network.
  std::size_t at = 0, openSwitches = 0;
  for (std::size_t k = 0; k < networks.size(); ++k) {
    auto solver = Solver::prepare(networks[k], {0, 1});  // once, for all states
    ASSERT_TRUE(solver) << solver.error().text();
    for (const Open& open : states[k]) {
      openSwitches += static_cast<std::size_t>(std::count(open.begin(), open.end(), true));
      solveState(*solver, networks[k], open);
      for (std::size_t i = 0; i < decks[at].nodes.size(); ++i) {
        const NodeIndex node = i == 0 ? 0 : i + 1;  // node 1 is ground
        const double ours = solver->potential(node);
        EXPECT_REACHED("ngspice, random networks", "node voltages", ours, (*voltages)[at][i],
                       1e-9 * std::abs(ours))
            << "node " << node << "\n"
            << decks[at].netlist;
      }
      ++at;
    }
  }
  EXPECT_GT(openSwitches, networkCount * stateCount) << "more than one a state";
}

// An assembled nodal matrix holds a lead's conductance beside an arm's, so its outputs are good to about
// 2e-16 times arm over lead. That is what each test allows beside 1e-9 of the output.

TEST(Ngspice, AgreesOnExportedBridgesOfAnyKind) {
  Random random(20240818);
  std::vector<core::Setup> setups;
  for (const BridgeTemplate& shape : allTemplates())
    for (int k = 0; k < 6; ++k)
      setups.push_back(withShuntsAnywhere(randomBridge(shape.type, 0.01, random), random));
  expectAgreement(setups, 2e-16 * 350 / 0.01);
}

TEST(Ngspice, AgreesOnTheChangeOfUsualBridges) {
  // Leads from 1 ohm and changes from 350 ohm / (4 x 1 Mohm) = 9e-5: 2e-16 x 350 is below 1e-9 of them.
  Random random(20240819);
  std::vector<core::Setup> setups;
  for (const BridgeTemplate& shape : allTemplates())
    for (int k = 0; k < 4; ++k)
      setups.push_back(withUsualShunts(randomBridge(shape.type, 1, random), random));
  expectAgreement(setups, 0);
}

TEST(Ngspice, AgreesOnExportedBridgesWithAllEffects) {
  // Leads and potentiometers from 0.4 ohm: cold leads, leaks to a floating and a grounded structure, both
  // kinds of balance, constant current, six wires, input resistance, shunts with wires and switches, several
  // closed.
  std::vector<core::Setup> setups;
  for (const BridgeTemplate& shape : allTemplates())
    for (unsigned variant = 0; variant < 16; ++variant)
      setups.push_back(test::withEffects(shape.type, variant));
  expectAgreement(setups, 2e-16 * 350 / 0.4);
}

TEST(Ngspice, AgreesOnTheEndsOfEffects) {
  // A wiper at its stop and a leak at the end of a grid are zero ohm, which no element of a netlist may be.
  std::vector<core::Setup> setups;
  for (const BridgeTemplate& shape : allTemplates())
    for (const double end : {0.0, 1.0})
      for (const Grounding grounding : {Grounding::Floating, Grounding::PMinus, Grounding::PPlus})
        for (const BalanceKind kind : {BalanceKind::Parallel, BalanceKind::Series}) {
          core::Setup setup = test::withEffects(shape.type, 6);
          setup.instrument.grounding = grounding;
          setup.instrument.balance.kind = kind;
          setup.instrument.balance.wiper = end;
          for (Leak& leak : setup.bridge.leaks) leak = {3.0_Mohm, 2.0_Mohm, end};
          setups.push_back(setup);
        }
  expectAgreement(setups, 2e-16 * 350 / 0.4);
}

TEST(Ngspice, RunsAnExportedNetlistAsItStands) {
  // Derived: 350 ohm over 350 ohm leaves 175: S- is at 2/3, the output is 5 V (1/2 - 2/3).
  const auto setup = test::withShuntOnArm(test::equalArms(BridgeType::HalfBending, 350.0_ohm), 350.0_ohm, 1);
  const auto output = test::batchOutput(*spiceNetlist(setup, 0, "TP-11, step 1"));
  ASSERT_TRUE(output) << output.error().text();
  EXPECT_NE(output->find("-8.33333e-01"), std::string::npos) << *output;
}

TEST(Ngspice, TakesNoCommandFromForeignText) {
  // Texts that would be a script, a command, an element, a joined or a split line if they reached SPICE.
  const std::string texts[] = {"*ng_script",
                               "a\n.control\nshell touch harmed\n.endc",
                               "x\r.include /etc/hostname",
                               "+ continued",
                               "ends in \\",
                               "ends in \\\\",
                               "'quote\" {brace} $ ; // Rx 0 1 1",
                               "µε Ω \xff\xfe",
                               std::string("nul\0nul", 7),
                               std::string(5000, 'x')};
  std::vector<test::Deck> decks;
  for (const std::string& foreign : texts) {
    auto setup = test::withShuntOnArm(test::equalArms(BridgeType::HalfBending, 350.0_ohm), 350.0_ohm, 1);
    setup = test::withShuntOnArm(setup, 350.0_ohm, 2);
    for (Shunt& shunt : setup.shunts) shunt.name = foreign;
    for (Step& step : setup.sequence) step.label = foreign;
    decks.push_back({*spiceNetlist(setup, 0, foreign), {"pplus", "sminus", "splus"}});
  }

  const auto voltages = test::operatingPoints(decks);

  ASSERT_TRUE(voltages) << voltages.error().text();
  for (const auto& volts : *voltages) {  // derived as above, for 5 V; printed digits and two roundings
    EXPECT_NEAR(volts[0], 5, 1e-14);
    EXPECT_NEAR(volts[1], 10.0 / 3, 1e-14);
    EXPECT_NEAR(volts[2], 2.5, 1e-14);
  }
}

}  // namespace ngspice_test
