// SPDX-License-Identifier: GPL-3.0-or-later
// Currents of every branch against ngspice (needs the ngspice package) and against Kirchhoff and Ohm.
#include "core/flow/flow.h"

#include <gtest/gtest.h>

#include <array>
#include <charconv>
#include <map>
#include <sstream>

#include "core/plan/prediction.h"
#include "tests/support/digits.h"
#include "tests/support/effects.h"
#include "tests/support/ngspice.h"

using namespace core;

namespace {

constexpr unsigned variants = 8;  // of test::withEffects: every effect on and off, every kind of balance

std::string text(double value) {
  std::array<char, 40> digits;
  return {
      digits.data(),
      std::to_chars(digits.data(), digits.data() + digits.size(), value, std::chars_format::scientific).ptr};
}

std::string deviceOf(const Branch& branch, BranchIndex k) {
  return (branch.resistance.base() == 0 ? "vj" : "r") + std::to_string(k);
}

bool isOpen(const BridgeNetwork& bridge, const Setup& setup, std::size_t step, BranchIndex k) {
  if (k < bridge.firstShunt) return false;
  const auto& closed = setup.sequence[step].closed;
  return std::find(closed.begin(), closed.end(), k - bridge.firstShunt) == closed.end();
}

/// The network as a deck that prints the current of each branch; zero ohm is a source of 0 V.
std::string deckOf(const BridgeNetwork& bridge, const Setup& setup, std::size_t step) {
  const auto node = [&](NodeIndex n) { return n == bridge.excitation.minus ? "0" : "n" + std::to_string(n); };
  const std::string plus = node(bridge.excitation.plus);
  const auto& current = setup.instrument.current;
  std::string deck = "currents of a bridge\n";
  deck += current ? "i1 0 " + plus + " " + text(current->supplied.base())
                  : "v1 " + plus + " 0 " + text(setup.instrument.excitation.base());
  std::string prints;
  for (BranchIndex k = 0; k < bridge.network.branches.size(); ++k) {
    const Branch& branch = bridge.network.branches[k];
    if (branch.a == branch.b || isOpen(bridge, setup, step, k)) continue;
    const std::string device = deviceOf(branch, k);
    deck +=
        "\n" + device + " " + node(branch.a) + " " + node(branch.b) + " " + text(branch.resistance.base());
    prints += "print " + (device[0] == 'v' ? "i(" + device + ")" : "@" + device + "[i]") + "\n";
  }
  return deck + "\n.control\nset numdgt=17\nop\n" + prints + "quit\n.endc\n.end\n";
}

/// Device -> current in A, as ngspice prints them: "@r1[i] = 7.1e-03", "i(vj20) = 1e-3".
std::map<std::string, double> currentsOf(const std::string& output) {
  std::map<std::string, double> currents;
  std::istringstream lines(output);
  lines.imbue(std::locale::classic());
  for (std::string name, equals; lines >> name;) {
    const bool resistor = name.starts_with("@r"), source = name.starts_with("i(vj");
    if (!resistor && !source) continue;
    double value = 0;
    if (!(lines >> equals >> value) || equals != "=") break;
    currents[resistor ? name.substr(1, name.find('[') - 1) : name.substr(2, name.find(')') - 2)] = value;
  }
  return currents;
}

struct Solved {
  BridgeCircuit circuit;
  std::vector<Current> currents;
};

Solved solvedAt(const Setup& setup, std::size_t step) {
  auto circuit = BridgeCircuit::make(setup.bridge, setup.instrument, shuntBranches(setup));
  EXPECT_TRUE(circuit && closeShunts(*circuit, setup, step) && circuit->solveOutput());
  std::vector<Current> currents =
      branchCurrents(*circuit, setup, step, excitationOf(*circuit, setup.instrument));
  return {*std::move(circuit), std::move(currents)};
}

/// Hookups that leave the bridge solvable, one a variant.
Setup hookedUp(Setup setup, unsigned variant) {
  Hookup& hookup = setup.bridge.hookup;
  hookup.signalReversed = variant % 2 == 1;
  hookup.excitationReversed = variant % 3 == 1;
  if (variant % 4 == 2) hookup.exchanged = {{LeadRole::ExcitationPlus, LeadRole::SignalMinus}};
  if (variant % 4 == 3) hookup.touching = {{LeadRole::ExcitationPlus, LeadRole::SignalMinus}};
  if (variant % 5 == 4) hookup.broken[static_cast<std::size_t>(LeadRole::SignalMinus)] = true;
  return setup;
}

void expectAsNgspice(const Setup& setup, std::size_t step) {
  const Solved solved = solvedAt(setup, step);
  const BridgeNetwork& bridge = solved.circuit.network();
  const auto output = test::batchOutput(deckOf(bridge, setup, step));
  ASSERT_TRUE(output) << output.error().text();
  const auto expected = currentsOf(*output);
  std::size_t compared = 0;
  for (BranchIndex k = 0; k < bridge.network.branches.size(); ++k) {
    const Branch& branch = bridge.network.branches[k];
    const double current_A = solved.currents[k].base();
    if (branch.a == branch.b || isOpen(bridge, setup, step, k)) {
      EXPECT_EQ(current_A, 0) << branch.name;
      continue;
    }
    const auto found = expected.find(deviceOf(branch, k));
    ASSERT_NE(found, expected.end()) << branch.name << "\n" << *output;
    // ngspice takes a current from the difference of two potentials of some 5 V, each right to about 1e-15 V
    // after elimination; over the shortest lead here (0.4 ohm) that is 1e-14 A. Its gmin of 1e-12 S may add
    // 5e-12 A to a node.
    EXPECT_NEAR(current_A, found->second, 1e-11 + 1e-9 * std::abs(current_A)) << branch.name;
    ++compared;
  }
  EXPECT_EQ(compared, expected.size());
}

TEST(Flow, EveryBranchCarriesWhatNgspiceSays) {
  for (const BridgeTemplate& shape : allTemplates())
    for (unsigned variant = 0; variant < variants; ++variant) {
      SCOPED_TRACE(std::string(shape.key) + ", variant " + std::to_string(variant));
      const core::Setup setup = test::withEffects(shape.type, variant);
      expectAsNgspice(setup, variant % setup.sequence.size());
    }
}

TEST(Flow, LeadsWithoutResistanceCarryWhatNgspiceSaysOfSourcesOfZeroVolts) {
  for (const BridgeTemplate& shape : allTemplates())
    for (unsigned variant = 0; variant < 4; ++variant) {
      SCOPED_TRACE(std::string(shape.key) + ", variant " + std::to_string(variant));
      core::Setup setup = test::withEffects(shape.type, variant);
      setup.bridge.leads.fill(Resistance(0));
      setup.sequence.back().closed = {0, 3};
      expectAsNgspice(setup, setup.sequence.size() - 1);
    }
}

TEST(Flow, OtherHookupsCarryWhatNgspiceSays) {
  for (const BridgeType type : {BridgeType::QuarterThreeWire, BridgeType::FullBending})
    for (unsigned variant = 1; variant < variants; ++variant) {
      SCOPED_TRACE(std::string(templateOf(type).key) + ", variant " + std::to_string(variant));
      // The shunt over arm 2: touching leads short arm 1, and what lies over it.
      expectAsNgspice(hookedUp(test::withEffects(type, variant), variant), 2);
    }
}

TEST(Flow, WhatComesIntoANodeLeavesIt) {
  for (const BridgeTemplate& shape : allTemplates())
    for (unsigned variant = 0; variant < variants; ++variant) {
      const core::Setup setup = test::withEffects(shape.type, variant);
      for (std::size_t step = 0; step < setup.sequence.size(); ++step) {
        const Solved solved = solvedAt(setup, step);
        const BridgeNetwork& bridge = solved.circuit.network();
        const auto flow = flowAt(setup, step);
        ASSERT_TRUE(flow) << flow.error().text();
        std::vector<double> sum_A(bridge.network.nodes.size(), 0);
        sum_A[bridge.excitation.plus] += flow->source.base();
        sum_A[bridge.excitation.minus] -= flow->source.base();
        for (BranchIndex k = 0; k < bridge.network.branches.size(); ++k) {
          sum_A[bridge.network.branches[k].a] -= solved.currents[k].base();
          sum_A[bridge.network.branches[k].b] += solved.currents[k].base();
        }
        // Sums of some ten currents of up to 15 mA: roundings of 2e-18 A each.
        for (NodeIndex node = 0; node < sum_A.size(); ++node)
          EXPECT_NEAR(sum_A[node], 0, 1e-15) << shape.key << ", " << bridge.network.nodes[node];
      }
    }
}

TEST(Flow, CurrentsOfAnIdealFullBridgeAreThoseOfOhmsLaw) {
  // Derived: 5 V over two halves of 700 ohm each; a shunt over arm 1 makes that half
  // 350 + 350 || 174650 ohm, and has the voltage over arm 1 over its own resistance.
  core::Setup setup =
      test::withShuntOnArm(test::equalArms(BridgeType::FullBending, Resistance(350)), Resistance(174650), 1);
  setup.bridge.sixWire = true;
  const double both = 350.0 * 174650 / (350 + 174650), half_A = 5 / (350 + both);

  const auto flow = flowAt(setup, 0);

  ASSERT_TRUE(flow) << flow.error().text();
  EXPECT_DIGITS(flow->excitation.base(), 5, 15);
  EXPECT_DIGITS(flow->source.base(), half_A + 5.0 / 700, 13);
  EXPECT_DIGITS(flow->arms[1].base(), half_A, 13);
  EXPECT_DIGITS(flow->arms[0].base(), half_A * both / 350, 13);
  EXPECT_DIGITS(flow->shunts[0].base(), half_A * both / 174650, 10);
  // Arms 3 and 4 are defined from P- to P+, against the current.
  EXPECT_DIGITS(flow->arms[2].base(), -5.0 / 700, 13);
  EXPECT_DIGITS(flow->arms[3].base(), -5.0 / 700, 13);
  const auto lead = [&](LeadRole role) { return *flow->leads[static_cast<std::size_t>(role)]; };
  EXPECT_DIGITS(lead(LeadRole::ExcitationPlus).base(), half_A + 5.0 / 700, 13);
  EXPECT_DIGITS(lead(LeadRole::ExcitationMinus).base(), -(half_A + 5.0 / 700), 13);
  for (const LeadRole role :
       {LeadRole::SignalPlus, LeadRole::SignalMinus, LeadRole::SensePlus, LeadRole::SenseMinus})
    EXPECT_EQ(lead(role).base(), 0) << leadName(role);
  EXPECT_FALSE(flow->leads[static_cast<std::size_t>(LeadRole::Return)]);
  EXPECT_DIGITS(flow->potentials[static_cast<std::size_t>(Node::Arm1End)]->base(), 350 * half_A, 13);
}

TEST(Flow, AnInputTakesItsCurrentThroughTheSignalLeads) {
  core::Setup setup =
      test::withLeads(test::equalArms(BridgeType::FullBending, Resistance(350)), Resistance(2));
  setup.instrument.inputResistance = Resistance(1e6);
  setup = test::withShuntOnArm(setup, Resistance(1000), 2);

  const auto flow = flowAt(setup, 0);

  ASSERT_TRUE(flow) << flow.error().text();
  const auto lead = [&](LeadRole role) { return flow->leads[static_cast<std::size_t>(role)]->base(); };
  // A shunt over arm 2 lowers S-: the current comes from the article in S+ and goes back in S-.
  EXPECT_GT(flow->input.base(), 0);
  EXPECT_EQ(lead(LeadRole::SignalPlus), -flow->input.base());
  EXPECT_EQ(lead(LeadRole::SignalMinus), flow->input.base());
  const auto volts = [&](Node node) { return flow->potentials[static_cast<std::size_t>(node)]->base(); };
  // Ohm's law over the input; potentials of some 2 V are right to 1e-15 of their difference of 0.3 V.
  EXPECT_DIGITS(flow->input.base(), (volts(Node::SPlus) - volts(Node::SMinus)) / 1e6, 12);
}

TEST(Flow, LeaksGoToTheGroundedSideOfTheExcitation) {
  core::Setup setup = test::equalArms(BridgeType::QuarterThreeWire, Resistance(350));
  setup.bridge.leaks[0].toStructure = Resistance(1e6);
  setup.bridge.leaks[0].place = 0.5;
  setup.instrument.grounding = Grounding::PMinus;

  const auto flow = flowAt(setup, setup.sequence.size());

  ASSERT_TRUE(flow) << flow.error().text();
  // Derived, Thevenin: the middle of gauge 1 is at 3.75 V behind 175 || 525 ohm.
  const double leak_A = 3.75 / (1e6 + 175.0 * 525 / 700);
  EXPECT_DIGITS(flow->leaksToStructure[0].base(), leak_A, 12);
  EXPECT_EQ(flow->structure.base(), flow->leaksToStructure[0].base());
}

TEST(Flow, ABrokenLeadHasNoCurrentAndSaysSo) {
  core::Setup setup =
      test::withLeads(test::equalArms(BridgeType::FullBending, Resistance(350)), Resistance(2));
  setup.bridge.sixWire = true;
  setup.instrument.inputResistance = Resistance(1e6);
  setup.bridge.hookup.broken[static_cast<std::size_t>(LeadRole::SignalPlus)] = true;

  const auto flow = flowAt(setup, setup.sequence.size());

  ASSERT_TRUE(flow) << flow.error().text();
  EXPECT_FALSE(flow->leads[static_cast<std::size_t>(LeadRole::SignalPlus)]);
  EXPECT_TRUE(flow->leads[static_cast<std::size_t>(LeadRole::SignalMinus)]);
}

TEST(Flow, InALoopWithoutResistanceTheLastBranchCarriesNone) {
  // Both touches join the same two leads: nothing decides how they share, so the second has none.
  core::Setup setup = test::equalArms(BridgeType::FullBending, Resistance(350));
  setup.bridge.hookup.touching.assign(2, {LeadRole::ExcitationPlus, LeadRole::SignalMinus});
  const Solved solved = solvedAt(setup, setup.sequence.size());
  std::vector<double> touches;
  for (BranchIndex k = 0; k < solved.currents.size(); ++k)
    if (solved.circuit.network().network.branches[k].name == "touching leads")
      touches.push_back(std::abs(solved.currents[k].base()));
  ASSERT_EQ(touches.size(), 2u);
  EXPECT_DIGITS(touches[0], 5.0 / 350, 13);  // arm 1 is shorted: arm 2 is all that its half has
  EXPECT_EQ(touches[1], 0);
}

TEST(Flow, FailsAsTheStepDoes) {
  core::Setup setup =
      test::withShuntOnArm(test::equalArms(BridgeType::FullBending, Resistance(350)), Resistance(0), 1);
  EXPECT_FALSE(flowAt(setup, 0));
  EXPECT_TRUE(flowAt(setup, 1));
}

}  // namespace
