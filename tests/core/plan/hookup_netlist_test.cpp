// SPDX-License-Identifier: GPL-3.0-or-later
// Independent: ngspice (39 in Debian 12) runs the netlists of bridges that are not connected as their
// template says; what they are to give is taken from the netlist's own words.
#include <gtest/gtest.h>

#include <cmath>
#include <map>
#include <sstream>

#include "core/circuit/hookup.h"
#include "core/plan/spice.h"
#include "tests/support/effects.h"
#include "tests/support/ngspice.h"

using namespace core;

namespace {

/// Each way to connect `bridge` otherwise: reversals alone and together, and every lead or pair of leads that
/// it has broken, exchanged or touching, alone and with everything reversed.
std::vector<Hookup> hookupsOf(const Bridge& bridge) {
  std::vector<LeadRole> leads;
  for (const Wire& wire : wiresOf(bridge)) leads.push_back(wire.role);
  std::vector<Hookup> all;
  for (const bool signal : {false, true})
    for (const bool excitation : {false, true})
      for (const bool gauges : {false, true})
        all.push_back({.signalReversed = signal, .excitationReversed = excitation, .gaugesReversed = gauges});
  for (const bool reversed : {false, true}) {
    const Hookup plain{.signalReversed = reversed, .excitationReversed = reversed};
    for (std::size_t i = 0; i < leads.size(); ++i) {
      all.push_back(plain);
      all.back().broken[static_cast<std::size_t>(leads[i])] = true;
      for (std::size_t j = i + 1; j < leads.size(); ++j) {
        all.push_back(plain);
        all.back().exchanged = {{leads[i], leads[j]}};
        all.push_back(plain);
        all.back().touching = {{leads[i], leads[j]}};
      }
    }
  }
  return all;
}

/// "* output = (S- - S+) / (P+ - P-)" and "* node sminus: S-, arm 1 end" of a netlist.
class NetlistWords {
 public:
  explicit NetlistWords(const std::string& netlist) {
    std::istringstream lines(netlist);
    for (std::string line; std::getline(lines, line);) {
      if (line.rfind("* output = ", 0) == 0) readOutput(line);
      if (line.rfind("* node ", 0) != 0) continue;
      const std::size_t colon = line.find(": ");
      const std::string name = line.substr(7, colon - 7);
      if (name != "0") nodes.push_back(name);
      std::istringstream places(line.substr(colon + 2));
      for (std::string place; std::getline(places, place, ',');)
        m_nodes[place.substr(place.find_first_not_of(' '))] = name;
    }
  }

  /// By ngspice's potentials of `nodes`. A division by "(I x nominal resistance), 3.5 V" is one by its volts.
  double output(const std::vector<double>& volts) const {
    const double divisor = m_divisor_V != 0 ? m_divisor_V : at(volts, m_places[2]) - at(volts, m_places[3]);
    return (at(volts, m_places[0]) - at(volts, m_places[1])) / divisor;
  }

  std::vector<std::string> nodes;

 private:
  void readOutput(const std::string& line) {
    std::istringstream words(line);
    std::string star, name, equals, minus, slash;
    words >> star >> name >> equals >> m_places[0] >> minus >> m_places[1] >> slash >> m_places[2] >> minus >>
        m_places[3];
    const std::size_t volts = line.find("), ");
    if (volts != std::string::npos) m_divisor_V = std::stod(line.substr(volts + 3));
    for (std::string& place : m_places) std::erase_if(place, [](char c) { return c == '(' || c == ')'; });
  }

  double at(const std::vector<double>& volts, const std::string& place) const {
    const std::string& name = m_nodes.at(place);
    if (name == "0") return 0;
    return volts[static_cast<std::size_t>(std::find(nodes.begin(), nodes.end(), name) - nodes.begin())];
  }

  std::map<std::string, std::string> m_nodes;  ///< place -> node
  std::array<std::string, 4> m_places;
  double m_divisor_V = 0;
};

/// Steps that can be solved, and those that cannot, whose netlists must be refused.
struct Steps {
  std::vector<test::Deck> decks;
  std::vector<double> outputs;
  std::size_t refused = 0;

  void add(const core::Setup& setup, std::size_t step) {
    auto circuit = BridgeCircuit::make(setup.bridge, setup.instrument, shuntBranches(setup));
    const bool closed = circuit && closeShunts(*circuit, setup, step);
    const auto output = closed ? circuit->solveOutput() : Result<Output>(Error{});
    const auto netlist = spiceNetlist(setup, step, "hookup");
    EXPECT_EQ(static_cast<bool>(netlist), static_cast<bool>(output));
    if (!netlist || !output) return void(++refused);
    decks.push_back({*netlist, NetlistWords(*netlist).nodes});
    outputs.push_back(output->base());
  }
};

void expectAgreement(const Steps& steps) {
  const auto volts = test::operatingPoints(steps.decks);
  ASSERT_TRUE(volts) << volts.error().text();
  for (std::size_t k = 0; k < steps.decks.size(); ++k)
    // ngspice solves an assembled matrix to a relative 1e-12 or so of the excitation, beside a gmin of
    // 1e-12 S from each node to ground, which over 350 ohm is 4e-10 of the potential, over leaks of
    // megohms less than that of the output.
    EXPECT_NEAR(NetlistWords(steps.decks[k].netlist).output((*volts)[k]), steps.outputs[k],
                1e-9 + 1e-9 * std::abs(steps.outputs[k]))
        << steps.decks[k].netlist;
}

/// What the one row that `.print dc` gives has behind its index and the sweep.
std::vector<double> printed(const std::string& output) {
  std::istringstream lines(output);
  std::vector<double> shown;
  for (std::string line; std::getline(lines, line);) {
    double index = -1, sweep = 0, value = 0;
    std::istringstream words(line);
    if (!(words >> index >> sweep) || index != 0) continue;
    while (words >> value) shown.push_back(value);
  }
  return shown;
}

/// As a user runs it: `.print dc` must name voltages that there are, ground or not, and give them with their
/// sign. Says whether the step could be solved.
bool printsWhatIsPredicted(const core::Setup& setup) {
  const auto netlist = spiceNetlist(setup, 0, "hookup");
  if (!netlist) return false;
  const auto output = test::batchOutput(*netlist);
  if (!output) return ADD_FAILURE() << output.error().text(), true;
  auto circuit = BridgeCircuit::make(setup.bridge, setup.instrument, shuntBranches(setup));
  EXPECT_TRUE(closeShunts(*circuit, setup, 0));
  const double ratio = circuit->solveOutput()->base();
  const std::vector<double> volts = printed(*output);
  const bool sensed = hasNode(setup.bridge, Node::SensePlus);
  EXPECT_EQ(volts.size(), sensed ? 2u : 1u) << *netlist << *output;
  if (volts.empty()) return true;
  // Without leads the sensed excitation is the whole, or what exchanged sense leads make of it: its value is
  // the netlist's own, its sign that of the terminals.
  const double reference = sensed && volts.size() == 2 ? volts[1] : setup.instrument.excitation.base();
  // Six digits are printed of a difference.
  EXPECT_NEAR(volts[0], ratio * reference, 4e-6 * std::abs(ratio * reference) + 1e-9) << *netlist << *output;
  return true;
}

}  // namespace

TEST(HookupNetlist, GivesWhatIsPredictedHoweverTheBridgeIsConnected) {
  Steps steps;
  for (const BridgeTemplate& shape : allTemplates())
    for (const unsigned variant : {0u, 7u, 9u}) {
      core::Setup setup = test::withEffects(shape.type, variant);
      for (const Hookup& hookup : hookupsOf(setup.bridge)) {
        setup.bridge.hookup = hookup;
        for (const std::size_t step : {0, 1}) steps.add(setup, step);
      }
    }
  EXPECT_GT(steps.decks.size(), 5 * steps.refused) << steps.refused;
  expectAgreement(steps);
}

TEST(HookupNetlist, GivesWhatIsPredictedWithoutLeads) {
  // Without leads terminals become one node with ground, or with each other.
  Steps steps;
  for (const BridgeTemplate& shape : allTemplates()) {
    core::Setup setup = test::withShuntOnArm(test::equalArms(shape.type, 350.0_ohm), 59.0_kohm, 3);
    setup.bridge.sixWire = true;
    for (const Hookup& hookup : hookupsOf(setup.bridge)) {
      setup.bridge.hookup = hookup;
      steps.add(setup, 0);
    }
  }
  EXPECT_GT(steps.decks.size(), steps.refused) << steps.refused;
  expectAgreement(steps);
}

TEST(HookupNetlist, PrintsTheSignalInABatchJob) {
  for (const BridgeType type :
       {BridgeType::QuarterThreeWire, BridgeType::HalfBending, BridgeType::FullBending})
    for (const bool sixWire : {false, true}) {
      if (sixWire && !templateOf(type).senseLeads) continue;
      core::Setup setup = test::withShuntOnArm(test::equalArms(type, 350.0_ohm), 59.0_kohm, 3);
      setup.bridge.sixWire = sixWire;
      std::size_t run = 0;
      for (const Hookup& hookup : hookupsOf(setup.bridge)) {
        setup.bridge.hookup = hookup;
        run += printsWhatIsPredicted(setup);
      }
      EXPECT_GT(run, 10u);
    }
}

TEST(HookupNetlist, ExchangedSenseLeadsPrintTheSensedExcitationWithItsSign) {
  core::Setup setup = test::withShuntOnArm(test::equalArms(BridgeType::FullBending, 350.0_ohm), 59.0_kohm, 3);
  setup.bridge.sixWire = true;
  setup.bridge.hookup.exchanged = {{LeadRole::SensePlus, LeadRole::SenseMinus}};
  const auto output = test::batchOutput(*spiceNetlist(setup, 0, "hookup"));
  const std::vector<double> volts = printed(*output);
  ASSERT_EQ(volts.size(), 2u) << *output;
  // S+ falls as R3 does: R3'/(R3' + R4) - 1/2 of 5 V, R3' = 350 x 59000/59350 (the divider's law); the sense
  // leads see all of the 5 V, the other way round. Six digits are printed.
  const double r3 = 350.0 * 59000 / 59350;
  EXPECT_NEAR(volts[0], 5 * (r3 / (r3 + 350) - 0.5), 1e-7);
  EXPECT_NEAR(volts[1], -5, 1e-5);
}

TEST(HookupNetlist, CutsNoSentenceOfItsOwn) {
  core::Setup setup = test::withShuntOnArm(test::equalArms(BridgeType::FullBending, 350.0_ohm), 59.0_kohm, 3);
  setup.bridge.sixWire = true;
  setup.bridge.hookup.excitationReversed = true;
  EXPECT_NE(spiceNetlist(setup, 0, "hookup")->find("is on P-, and the sense pair with it.\n"),
            std::string::npos);
}

TEST(HookupNetlist, SaysHowTheBridgeIsConnected) {
  core::Setup setup = test::withShuntOnArm(test::equalArms(BridgeType::FullBending, 350.0_ohm), 59.0_kohm, 3);
  setup.bridge.hookup = {.signalReversed = true, .excitationReversed = true};
  const std::string netlist = *spiceNetlist(setup, 0, "hookup");
  for (const char* line : {"\n* The signal wires are reversed: the instrument measures S- against S+.\n",
                           "\n* The excitation is reversed: the source's plus side is on P-.\n",
                           "\n* output = (S- - S+) / (P- - P+)\n", "\n* node 0: P+, arm 1 begin, arm 4 end\n",
                           "\nV1 pminus 0 5e+00\n", "\n.print dc v(sminus,splus)\n"})
    EXPECT_NE(netlist.find(line), std::string::npos) << line << netlist;
}
