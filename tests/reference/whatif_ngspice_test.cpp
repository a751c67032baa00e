// SPDX-License-Identifier: GPL-3.0-or-later
// Readings with what is tried out against ngspice on the exported netlists of the altered set-up (needs the
// ngspice package).
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>
#include <sstream>

#include "core/plan/spice.h"
#include "core/whatif/what_if.h"
#include "tests/support/ngspice.h"
#include "tests/support/reached_digits.h"
#include "tests/support/setups.h"

using namespace core;

namespace whatif_ngspice_test {

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

/// One step for ngspice, and how the instrument reads the node voltages.
struct StepDeck {
  test::Deck deck;
  bool sensed = false, turned = false;

  StepDeck(const core::Setup& setup, const std::string& netlist) {
    deck.netlist = netlist;
    sensed = hasNode(setup.bridge, Node::SensePlus);
    // Reversed, the instrument takes S- against S+, or P- for its plus side: each turns the sign.
    const Hookup& hookup = setup.bridge.hookup;
    turned = hookup.signalReversed != hookup.excitationReversed;
    for (const Node node : {Node::SPlus, Node::SMinus, plus(), minus()}) {
      const std::string name = nameIn(netlist, node);
      if (name != "0" && std::find(deck.nodes.begin(), deck.nodes.end(), name) == deck.nodes.end())
        deck.nodes.push_back(name);
    }
  }

  Node plus() const { return sensed ? Node::SensePlus : Node::PPlus; }
  Node minus() const { return sensed ? Node::SenseMinus : Node::PMinus; }

  double volt(const std::vector<double>& voltages, Node node) const {
    const auto at = std::find(deck.nodes.begin(), deck.nodes.end(), nameIn(deck.netlist, node));
    return at == deck.nodes.end() ? 0 : voltages[static_cast<std::size_t>(at - deck.nodes.begin())];
  }

  double output(const std::vector<double>& voltages) const {
    const double ratio = (volt(voltages, Node::SPlus) - volt(voltages, Node::SMinus)) /
                         (volt(voltages, plus()) - volt(voltages, minus()));
    return turned ? -ratio : ratio;
  }
};

/// A zero step, shunts over two arms and one from P+ to S- at the instrument; leads, arms that
/// are not equal, two leaks to the structure.
core::Setup plan(BridgeType type, bool sixWire) {
  core::Setup setup = test::withLeads(test::equalArms(type, 350.0_ohm), 2.0_ohm);
  setup.bridge.sixWire = sixWire;
  setup.bridge.arms = {350.2_ohm, 349.7_ohm, 350.1_ohm, 350.4_ohm};
  setup.bridge.leaks[0].toStructure = 5.0_Mohm;
  setup.bridge.gauge.factorCoefficient = 9e-5;
  setup.sequence.push_back({"zero", {}});
  for (const std::size_t arm : {1, 4}) setup = test::withShuntOnArm(setup, 59.0_kohm, arm);
  return test::withShunt(setup, 174.65_kohm, Node::PPlus, Node::SMinus);
}

struct Case {
  std::string what;
  WhatIf whatIf;
};

/// One after the other, each from what the bridge offers by then.
std::vector<Alteration> severalOf(const core::Setup& setup, std::size_t count, std::mt19937_64& random) {
  std::vector<Alteration> list;
  while (list.size() < count) {
    const auto now = altered(setup, list);
    const std::vector<Alteration> offered = possibleAlterations(now ? *now : setup);
    list.push_back(offered[std::uniform_int_distribution<std::size_t>(0, offered.size() - 1)(random)]);
    if (!altered(setup, list)) list.pop_back();
  }
  return list;
}

Case caseOf(const core::Setup& setup, const std::vector<Alteration>& alterations) {
  Case result{std::string(templateOf(setup.bridge.type).key), {}};
  for (const std::string& text : triedOut(setup, alterations).texts) result.what += "; " + text;
  auto what = whatIf(setup, alterations);
  EXPECT_TRUE(what) << result.what << (what ? "" : what.error().text());
  if (what) result.whatIf = *std::move(what);
  return result;
}

/// What ngspice says of each step of each case; none where there is no netlist.
using Outputs = std::vector<std::vector<std::optional<double>>>;

void runAll(const std::vector<Case>& cases, Outputs& outputs) {
  std::vector<StepDeck> steps;
  std::vector<std::pair<std::size_t, std::size_t>> places;
  for (std::size_t k = 0; k < cases.size(); ++k) {
    const core::Setup& setup = cases[k].whatIf.setup;
    outputs.emplace_back(setup.sequence.size());
    if (!spiceNetlist(setup, 0, "zero")) continue;  // a signal floats: there is nothing to compare
    for (std::size_t step = 0; step < setup.sequence.size(); ++step)
      if (const auto netlist = spiceNetlist(setup, step, "what if")) {
        steps.emplace_back(setup, *netlist);
        places.emplace_back(k, step);
      }
  }
  std::vector<test::Deck> decks;
  for (const StepDeck& step : steps) decks.push_back(step.deck);
  const auto voltages = test::operatingPoints(decks);
  ASSERT_TRUE(voltages) << voltages.error().text();
  for (std::size_t at = 0; at < steps.size(); ++at)
    outputs[places[at].first][places[at].second] = steps[at].output((*voltages)[at]);
}

/// All steps of all cases: outputs, and readings zeroed after and before.
void expectAgreement(const std::vector<Case>& cases, std::size_t leastCompared) {
  Outputs outputs;
  runAll(cases, outputs);
  std::size_t compared = 0;
  for (std::size_t k = 0; k < cases.size(); ++k) {
    SCOPED_TRACE(cases[k].what);
    const WhatIf& what = cases[k].whatIf;
    const double perOutput = readingOf(what.setup.instrument, Output(1)).base();
    const auto zero = outputs[k][0];
    EXPECT_EQ(zero.has_value(), static_cast<bool>(what.zeroWith));
    for (std::size_t step = 0; step < what.steps.size(); ++step) {
      const auto& after = what.steps[step].zeroedAfter;
      const auto& before = what.steps[step].zeroedBefore;
      if (!outputs[k][step] || !zero) {
        // No netlist, because a fault joins both ends of the shunt: it does nothing.
        if (after) {
          EXPECT_EQ(after->reading.base(), 0);
        }
        continue;
      }
      ASSERT_TRUE(after && before);
      ++compared;
      // An assembled nodal matrix holds a lead of 2 ohm beside an arm, a leak of 5 Mohm beside a lead: its
      // outputs are good to some 2e-16 x 350/2, ours to less; ngspice prints all digits. 1e-12 leaves room.
      const double rounding = 1e-12;
      EXPECT_REACHED(test::Source("ngspice, what-if, of 1 V/V", 1), "outputs", after->output.base(),
                     *outputs[k][step], rounding);
      EXPECT_NEAR(after->reading.base(), perOutput * (*outputs[k][step] - *zero),
                  std::abs(perOutput) * 2 * rounding);
      EXPECT_NEAR(before->reading.base(), perOutput * (*outputs[k][step] - what.zeroWithout->base()),
                  std::abs(perOutput) * 2 * rounding);
    }
  }
  EXPECT_GE(compared, leastCompared);
}

TEST(WhatIfNgspice, AgreesOnEveryAlterationOfEveryTemplate) {
  std::vector<Case> cases;
  for (const BridgeTemplate& shape : allTemplates())
    for (const bool sixWire : {false, true}) {
      if (sixWire && !shape.senseLeads) continue;
      const core::Setup setup = plan(shape.type, sixWire);
      for (const Alteration& one : possibleAlterations(setup)) cases.push_back(caseOf(setup, {one}));
    }
  expectAgreement(cases, 2500);
}

TEST(WhatIfNgspice, AgreesOnSeveralAtOnce) {
  std::mt19937_64 random(20261126);
  std::vector<Case> cases;
  for (const BridgeTemplate& shape : allTemplates())
    for (std::size_t k = 0; k < 12; ++k) {
      const core::Setup setup = plan(shape.type, shape.senseLeads && k % 2 == 0);
      cases.push_back(caseOf(setup, severalOf(setup, 2 + k % 3, random)));
    }
  expectAgreement(cases, 300);
}

}  // namespace whatif_ngspice_test
