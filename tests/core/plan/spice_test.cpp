// SPDX-License-Identifier: GPL-3.0-or-later
// The text of netlists; what they compute is checked with ngspice in tests/reference.
#include "core/plan/spice.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <sstream>

#include "tests/support/effects.h"

using namespace core;
using testing::HasSubstr;
using testing::Not;

namespace {

std::vector<std::string> linesOf(const std::string& text) {
  std::vector<std::string> lines;
  std::istringstream stream(text);
  for (std::string line; std::getline(stream, line);) lines.push_back(line);
  return lines;
}

core::Setup quarterWithTwoShunts() {
  core::Setup setup = test::withLeads(test::equalArms(BridgeType::QuarterThreeWire, 350.0_ohm), 2.5_ohm);
  setup = test::withShuntOnArm(setup, 174.65_kohm, 1);
  return test::withShunt(setup, 1.0_Mohm, Node::PPlus, Node::SMinus);
}

std::string netlistOf(const core::Setup& setup, std::size_t step, const std::string& title = "TP-01") {
  const auto netlist = spiceNetlist(setup, step, title);
  EXPECT_TRUE(netlist) << (netlist ? "" : netlist.error().text());
  return netlist ? *netlist : "";
}

}  // namespace

TEST(SpiceNetlist, HoldsTheClosedShuntAndShowsTheOpenOneAsAComment) {
  const std::string netlist = netlistOf(quarterWithTwoShunts(), 0);
  EXPECT_THAT(netlist, HasSubstr("* shunt, closed: R1\nR"));
  EXPECT_THAT(netlist, HasSubstr(" arm1begin arm1end 1.7465e+05\n"));
  EXPECT_THAT(netlist, HasSubstr("* shunt, open: R2\n* R"));
}

TEST(SpiceNetlist, WritesPlainNumbersOnly) {
  // In SPICE 1M is a thousandth: scale letters must not occur, exponents must.
  for (const std::string& line : linesOf(netlistOf(quarterWithTwoShunts(), 1))) {
    if (line.empty() || (line[0] != 'R' && line[0] != 'V')) continue;
    std::istringstream words(line);
    std::string name, a, b, value, more;
    words >> name >> a >> b >> value;
    EXPECT_FALSE(words >> more) << line;
    EXPECT_THAT(value, testing::MatchesRegex("[0-9.]+e[+-][0-9]+")) << line;
    EXPECT_THAT(a + b, testing::MatchesRegex("[a-z0-9]+")) << line;
  }
}

TEST(SpiceNetlist, MergesWhatZeroOhmJoins) {
  const std::string netlist =
      netlistOf(test::withShuntOnArm(test::equalArms(BridgeType::FullBending, 350.0_ohm), 59.0_kohm, 1), 0);
  EXPECT_THAT(netlist, HasSubstr("* node sminus: S-, arm 1 end, arm 2 begin\n"));
  EXPECT_THAT(netlist, HasSubstr("* node 0: P-, arm 2 end, arm 3 begin\n"));
  EXPECT_THAT(netlist, HasSubstr(" pplus sminus 3.5e+02\n"));
  EXPECT_THAT(netlist, Not(HasSubstr(" 0e+00\n"))) << "no resistor of zero ohm";
}

TEST(SpiceNetlist, IsATitleThenElementsThenTheEnd) {
  const auto lines = linesOf(netlistOf(quarterWithTwoShunts(), 0, "TP-01, step 1"));
  EXPECT_EQ(lines.front(), "Bridge netlist: TP-01, step 1");
  EXPECT_EQ(lines.back(), ".end");
  EXPECT_EQ(std::count(lines.begin(), lines.end(), ".op"), 1);
  EXPECT_EQ(std::count(lines.begin(), lines.end(), "V1 pplus 0 5e+00"), 1);
  EXPECT_EQ(std::count(lines.begin(), lines.end(), ".print dc v(splus,sminus)"), 1);
}

TEST(SpiceNetlist, PrintsTheSensedVoltageOfSixWires) {
  core::Setup setup = test::withLeads(test::equalArms(BridgeType::FullBending, 350.0_ohm), 2.5_ohm);
  setup.bridge.sixWire = true;
  const std::string netlist = netlistOf(test::withShuntOnArm(setup, 59.0_kohm, 1), 0);
  EXPECT_THAT(netlist, HasSubstr(".print dc v(splus,sminus) v(senseplus,senseminus)\n"));
  EXPECT_THAT(netlist, HasSubstr("* output = (S+ - S-) / (sense+ - sense-)\n"));
}

TEST(SpiceNetlist, DrivesAConstantCurrentIntoPPlus) {
  core::Setup setup = quarterWithTwoShunts();
  setup.instrument.current = CurrentSource{10.0_mA, 350.0_ohm};
  const std::string netlist = netlistOf(setup, 0);
  // A positive current of a SPICE source runs from its first node through the source to its second.
  EXPECT_THAT(netlist, HasSubstr("\nI1 0 pplus 1e-02\n"));
  EXPECT_THAT(netlist, HasSubstr("\n.dc I1 1e-02 1e-02 1e-02\n.print dc v(splus,sminus)\n"));
  EXPECT_THAT(netlist, HasSubstr("* output = (S+ - S-) / (I x nominal resistance), 3.5e+00 V\n"));
  EXPECT_THAT(netlist, Not(HasSubstr("V1")));
}

TEST(SpiceNetlist, DoesNotPrintTheSensedVoltageAtACurrentSource) {
  core::Setup setup = test::withLeads(test::equalArms(BridgeType::FullBending, 350.0_ohm), 2.5_ohm);
  setup.bridge.sixWire = true;
  setup.instrument.current = CurrentSource{};
  const std::string netlist = netlistOf(test::withShuntOnArm(setup, 59.0_kohm, 1), 0);
  EXPECT_THAT(netlist, HasSubstr("\n.print dc v(splus,sminus)\n")) << "it divides by I x nominal";
}

TEST(SpiceNetlist, NamesThePlacesThatLeaksAndBalanceAdd) {
  core::Setup setup = quarterWithTwoShunts();
  setup.bridge.leaks[0] = {20.0_Mohm, 10.0_Mohm, 0.25};
  setup.instrument.balance = {BalanceKind::Parallel, 10.0_kohm, 100.0_kohm, 0.25};
  const std::string netlist = netlistOf(setup, 0);
  EXPECT_THAT(netlist, HasSubstr("* arm 1\nR1 arm1begin gridofarm1 8.75e+01\n"));
  EXPECT_THAT(netlist, HasSubstr(" gridofarm1 arm1end 2.625e+02\n"));
  EXPECT_THAT(netlist, HasSubstr("* leak over arm 1\n"));
  EXPECT_THAT(netlist, HasSubstr(" arm1begin arm1end 2e+07\n"));
  EXPECT_THAT(netlist, HasSubstr("* node structure: structure\n"));
  EXPECT_THAT(netlist, HasSubstr(" gridofarm1 structure 1e+07\n"));
  EXPECT_THAT(netlist, HasSubstr(" pplus balancewiper 7.5e+03\n"));
  EXPECT_THAT(netlist, HasSubstr(" balancewiper 0 2.5e+03\n"));
  EXPECT_THAT(netlist, HasSubstr(" balancewiper splus 1e+05\n"));

  setup.instrument.grounding = Grounding::PMinus;
  EXPECT_THAT(netlistOf(setup, 0), HasSubstr(" gridofarm1 0 1e+07\n")) << "the structure is P-";

  setup.instrument.balance = {BalanceKind::Series, 4.0_ohm, 100.0_kohm, 0.25};
  const std::string series = netlistOf(setup, 0);
  EXPECT_THAT(series, HasSubstr("* arm 3\nR3 0 balanceendofarm3 3.5e+02\n"));
  EXPECT_THAT(series, HasSubstr(" balanceendofarm3 splus 1e+00\n"));
  EXPECT_THAT(series, HasSubstr(" splus balanceendofarm4 3e+00\n"));
}

TEST(SpiceNetlist, HasNodesOfLettersAndDigitsWithAllEffects) {
  for (const BridgeTemplate& shape : allTemplates())
    for (unsigned variant = 0; variant < 16; ++variant)
      for (const std::string& line : linesOf(netlistOf(test::withEffects(shape.type, variant), 1))) {
        if (line[0] != 'R' && line[0] != 'V' && line[0] != 'I') continue;
        EXPECT_THAT(line, testing::MatchesRegex("[RVI][0-9]+ [a-z0-9]+ [a-z0-9]+ [0-9.]+e[+-][0-9]+"));
      }
}

TEST(SpiceNetlist, KeepsForeignTextInItsComments) {
  core::Setup setup = quarterWithTwoShunts();
  const std::string hostile = "x\n.include /etc/passwd\r\n+ 5\\\n\"'{}µ\x01";
  for (Shunt& shunt : setup.shunts) shunt.name = hostile;
  for (Step& step : setup.sequence) step.label = hostile;
  const auto plain = linesOf(netlistOf(quarterWithTwoShunts(), 0));
  const auto lines = linesOf(netlistOf(setup, 0, hostile));
  ASSERT_EQ(lines.size(), plain.size());
  for (std::size_t k = 1; k < lines.size(); ++k)
    EXPECT_TRUE(plain[k][0] == '*' || lines[k] == plain[k]) << lines[k];
  for (const std::string& line : lines)
    for (const char c : line) EXPECT_TRUE(c >= ' ' && c <= '~' && c != '\\') << line;
}

TEST(SpiceNetlist, NeedsAStepAndABridgeThatCanBeSolved) {
  core::Setup setup = quarterWithTwoShunts();
  const auto past = spiceNetlist(setup, 2, "");
  ASSERT_FALSE(past);
  EXPECT_EQ(past.error().where, "step 3");

  setup.shunts[1].resistance = Resistance(-1);
  EXPECT_TRUE(spiceNetlist(setup, 0, "")) << "the bad shunt is open there";
  const auto bad = spiceNetlist(setup, 1, "");
  ASSERT_FALSE(bad);
  EXPECT_EQ(bad.error().where, "R2");

  setup.bridge.arms[0] = Resistance(0);
  const auto broken = spiceNetlist(setup, 0, "");
  ASSERT_FALSE(broken);
  EXPECT_EQ(broken.error().where, "arm 1");
}
