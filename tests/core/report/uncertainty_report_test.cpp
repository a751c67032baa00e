// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>

#include "core/budget/budget.h"
#include "core/document/edits.h"
#include "core/report/figures.h"
#include "core/report/html.h"
#include "core/report/tables.h"
#include "core/report/uncertainty_tables.h"
#include "tests/core/report/words.h"

namespace core {
namespace uncertainty_report_test {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::Not;

Document documentOf(Channel channel) { return withChannelInserted({}, 0, std::move(channel)); }

std::string wordsOf(const Channel& channel) { return Words(reportOf(documentOf(channel))); }

Uncertainty standard(double amount) { return {.statement = Statement::Standard, .amount = amount}; }

/// A quarter bridge of 350 ohm, gauge factor 2, no leads; zero, R1 over arm 1, R2 over arm 1, zero. All that
/// is known of the inputs is stated as certain, but
/// - each shunt to 0.1 %,
/// - the instrument's zero to 1e-6 V/V.
///
/// Derived: with R over arm 1 of 350 ohm the output is v = -1 / (2 (2 R/350 + 1)), the linear indication 2 v,
/// so that d indication / d R = 2 / (350 (2 R/350 + 1)^2). For R1 = 174 650 ohm, 2 R/350 + 1 = 999, that is
/// 0.0057257 um/m per ohm, and 174.65 ohm make u = 1.0000 um/m; for R2 = 349 650 ohm, 1999, u = 0.5000 um/m.
/// The zero drift makes 2e6 um/m per V/V x 1e-6 V/V = 2 um/m in every step after the first zero. The strain
/// is -350 / (350 + R) / 2: -1000 and -500 um/m; R1 makes 1000 x 174.65/175000 = 0.998 um/m of it.
Channel budgetedChannel() {
  Channel channel;
  channel.name = "TP-01";
  Setup& setup = channel.setup;
  setup.shunts = {{"R1", Resistance(174650), Node::Arm1Begin, Node::Arm1End, Resistance(0)},
                  {"R2", Resistance(349650), Node::Arm1Begin, Node::Arm1End, Resistance(0)}};
  setup.sequence = {{"zero", {}, Duration(2)},
                    {"large", {0}, Duration(2)},
                    {"small", {1}, Duration(2)},
                    {"zero", {}, Duration(2)}};
  for (const Input input : inputListOf(setup)) setup.uncertainties.stated[input] = standard(0);
  for (const std::size_t shunt : {0, 1}) {
    setup.uncertainties.stated[{InputKind::Shunt, shunt}] = standard(1e-3);
    setup.uncertainties.stated[{InputKind::Shunt, shunt}].relative = true;
  }
  setup.uncertainties.stated[{InputKind::ZeroDrift, 0}] = standard(1e-6);
  return channel;
}

/// The same, with the zero known for certain: u of the large step is that of R1 alone.
Channel shuntAlone() {
  Channel channel = budgetedChannel();
  channel.setup.uncertainties.stated[{InputKind::ZeroDrift, 0}] = standard(0);
  return channel;
}

Channel readAt(Channel channel, double large) {
  channel = withCheckAdded(channel, Check{});
  const double readings[] = {0, large, -2e6 / 3998, 0};
  for (std::size_t k = 0; k < 4; ++k)
    channel.checks[0].readings[k] = Measured{Reading(readings[k]), {}, {}, {}};
  return channel;
}

TEST(UncertaintyReport, AnUncertaintyIsShownToTwoDigitsAndNoMore) {
  EXPECT_EQ(shownUncertainty(1.732), "1.7");
  EXPECT_EQ(shownUncertainty(0.00041), "0.00041");
  EXPECT_EQ(shownUncertainty(0.0996), "0.10");
  EXPECT_EQ(shownUncertainty(0.0994), "0.099");
  EXPECT_EQ(shownUncertainty(9.96), "10");
  EXPECT_EQ(shownUncertainty(123.4), "123");
  EXPECT_EQ(shownUncertainty(0), "0");
  EXPECT_EQ(shownUncertainty(1.24e-9), "1.2e-9");
  EXPECT_EQ(shownUncertainty(std::nullopt), "");
  EXPECT_EQ(shownUncertainty(HUGE_VAL), "infinite");
  EXPECT_EQ(withError(1, 0.0996), "1.00 ± 0.10");
}

TEST(UncertaintyReport, ThePlanGivesUOfBothScopesAndSaysKOnce) {
  Channel channel = shuntAlone();
  channel.setup.uncertainties.stated[{InputKind::GaugeFactor, 0}] = standard(0.02);
  const std::string words = wordsOf(channel);
  EXPECT_THAT(words,
              HasSubstr("Simulated, µm/m | U of simulated (strain), µm/m | Output, mV/V | Expected, µm/m | "
                        "U of expected (chain), µm/m | "));
  // Derived: chain U = 2 x 1.0000; strain: 1 % of 1000 and 0.998 make 10.05, U = 20.1.
  EXPECT_THAT(
      words,
      HasSubstr("2 | large | R1 | 0.5 | 2 | negative | -1000.00 | 20 | -0.500501 | -1001.00 | 2.0 | "));
  const std::string sentence = "U is the expanded uncertainty: coverage probability 95.45 %, k = 2.";
  const std::size_t first = words.find(sentence);
  ASSERT_NE(first, std::string::npos);
  EXPECT_EQ(words.find(sentence, first + 1), std::string::npos);
}

TEST(UncertaintyReport, ATransducersSecondScopeIsLoad) {
  Channel channel;
  channel.setup.bridge.type = BridgeType::Transducer;
  channel.setup.instrument.unit = ReadingUnit::MillivoltPerVolt;
  channel.setup.shunts = {{"R1", Resistance(174650), Node::Arm1Begin, Node::Arm1End, Resistance(0)}};
  channel.setup.sequence = {{"zero", {}, Duration(2)}, {"closed", {0}, Duration(2)}};
  const std::string words = wordsOf(channel);
  EXPECT_THAT(words, HasSubstr("U of simulated (load), kN"));
  EXPECT_THAT(words, HasSubstr("U of expected (chain), mV/V"));
  EXPECT_THAT(words, HasSubstr("Scope load is the uncertainty of the load"));
  EXPECT_THAT(words, Not(HasSubstr("(strain)")));
}

TEST(UncertaintyReport, ABudgetSharesTheVarianceAndSumsUpWhatIsTooSmall) {
  Channel channel = budgetedChannel();
  // Contributes 1001 x 2e-5 = 0.02 um/m, 0.008 % of the variance.
  channel.setup.uncertainties.stated[{InputKind::Gain, 0}] = standard(2e-5);
  const core::Setup& setup = channel.setup;
  const Table table = budgetTable(setup, budgetOf(setup, predict(setup)), 1);
  // Derived: 1.000^2 and 2.000^2 of 5.000, u = 2.236, U = 4.472. In strain R1 makes 0.998, the drift 2 um/m
  // times d strain / d indication, which is 1000/1001^2 x 1000 = 0.998: the same shares.
  ASSERT_EQ(table.rows.size(), 5U);
  using Cells = std::vector<std::string>;
  const auto begin = [](const Cells& cells) { return Cells(cells.begin(), cells.begin() + 4); };
  EXPECT_EQ(begin(table.rows[0].cells), (Cells{"shunt R1", "0.00573 µm/m per Ω", "1.00", "20.0"}));
  EXPECT_EQ(begin(table.rows[1].cells),
            (Cells{"zero drift of the instrument", "2000 µm/m per mV/V", "2.00", "80.0"}));
  EXPECT_THAT(table.rows[2].cells[0], HasSubstr("others ("));
  EXPECT_EQ(table.rows[2].cells[3], "0.0");
  EXPECT_EQ(begin(table.rows[3].cells), (Cells{"combined u", "ν_eff infinite", "2.2", "100.0"}));
  EXPECT_EQ(begin(table.rows[4].cells), (Cells{"expanded U", "k = 2", "4.5", ""}));
  EXPECT_EQ(table.rows[0].cells[6], "20.0");
  EXPECT_EQ(table.rows[1].cells[6], "80.0");
}

TEST(UncertaintyReport, BudgetsAreOfTheLargestStepOfEitherSign) {
  Channel channel = budgetedChannel();
  channel.setup.shunts.push_back({"R3", Resistance(174650), Node::Arm2Begin, Node::Arm2End, Resistance(0)});
  channel.setup.sequence.push_back({"other arm", {2}, Duration(2)});
  const Report report = reportOf(documentOf(channel));
  std::vector<std::string> captions;
  for (const Section& section : report.sections)
    for (const Block& block : section.blocks)
      if (const auto* table = std::get_if<Table>(&block);
          table && table->caption.find("made of") != std::string::npos)
        captions.push_back(table->caption);
  EXPECT_THAT(captions, testing::ElementsAre(HasSubstr("Step 5 (other arm)"), HasSubstr("Step 2 (large)")));
}

TEST(UncertaintyReport, DegreesOfFreedomAndTheirKFollowThePublishedTable) {
  Channel channel = budgetedChannel();
  channel.setup.uncertainties.stated[{InputKind::Shunt, 0}].degreesOfFreedom = 2;
  const std::string words = wordsOf(channel);
  // Derived (Welch-Satterthwaite): u^4 = 25, 1^4/2 from R1: nu = 50. JCGM 100:2008, table G.2: at 95.45 % and
  // 50 degrees of freedom t = 2.05.
  EXPECT_THAT(words, HasSubstr("combined u | ν_eff = 50 | 2.2 | 100.0 | "));
  EXPECT_THAT(words, HasSubstr("expanded U | k = 2.05 | 4.6 | "));
  const Budget budget = budgetOf(channel.setup, predict(channel.setup));
  const Table steps = stepUncertaintyTable(channel.setup, budget);
  const auto begin = [&](std::size_t step) {
    const std::vector<std::string>& cells = steps.rows[step].cells;
    return std::vector<std::string>(cells.begin(), cells.begin() + 6);
  };
  EXPECT_THAT(begin(1), testing::ElementsAre("2", "large", "2.2", "50", "2.05", "4.6"));
  EXPECT_THAT(begin(2), testing::ElementsAre("3", "small", "2.1", "infinite", "2", "4.1"));
  EXPECT_THAT(words, HasSubstr("k = 2 to 2.05 by the degrees of freedom of each step."));
  EXPECT_THAT(words, Not(HasSubstr("not used")));
}

TEST(UncertaintyReport, CorrelatedInputsLeaveDegreesOfFreedomUnused) {
  Channel channel = budgetedChannel();
  channel.setup.uncertainties.stated[{InputKind::Shunt, 0}].degreesOfFreedom = 2;
  for (const Input input : {Input{InputKind::Shunt, 0}, Input{InputKind::ZeroDrift, 0}})
    channel.setup.uncertainties.stated[input].group = "odd pair";
  channel.setup.uncertainties.groups["odd pair"] = 0.5;
  const std::string words = wordsOf(channel);
  // Derived: 1 + 4 + 2 x 0.5 x 1 x 2 = 7, u = 2.6.
  EXPECT_THAT(words, HasSubstr("combined u | ν_eff not used | 2.6 | 100.0 | "));
  EXPECT_THAT(words, HasSubstr("Degrees of freedom are not used where correlated inputs contribute"));
  EXPECT_THAT(words, HasSubstr("Correlation between any two inputs of a group: 0.5 in group odd pair."));
}

TEST(UncertaintyReport, InputsSayWhetherTheyAreStatedOrAssumedAndWhy) {
  Channel channel = budgetedChannel();
  for (const std::size_t arm : {0, 1}) channel.setup.uncertainties.stated.erase({InputKind::Arm, arm});
  const std::string words = wordsOf(channel);
  EXPECT_THAT(words, HasSubstr("shunt R1 | 174.65 kΩ | u = 0.1 % | 175 Ω | stated | "));
  EXPECT_THAT(words, HasSubstr("arm 1 | 350 Ω | ±0.3 %, rectangular | 0.606 Ω | assumed: gauge resistance"));
  // A ratiometric instrument in um/m does not see its excitation; balanced halves do not see arms 3 and 4.
  EXPECT_THAT(words, HasSubstr("No step depends on "));
  const std::string note = words.substr(words.find("No step depends on "), 200);
  EXPECT_THAT(note, HasSubstr("excitation"));
}

TEST(UncertaintyReport, InputsThatAreAlikeShareARow) {
  Channel channel = budgetedChannel();
  for (const std::size_t shunt : {0, 1}) channel.setup.shunts[shunt].wires = Resistance(0.2);
  channel.setup.shunts[1].resistance = channel.setup.shunts[0].resistance;
  const std::string words = wordsOf(channel);
  EXPECT_THAT(words, HasSubstr("all shunts | 174.65 kΩ | "));
  EXPECT_THAT(words, HasSubstr("wires of all shunts | 0.2 Ω | ±10 %, rectangular | 0.0115 Ω | assumed: "));
  EXPECT_THAT(words, HasSubstr("switches of all shunts | 0 Ω | "));
  EXPECT_THAT(words, HasSubstr("arms 1, 2 | 350 Ω | u = 0 Ω | 0 Ω | stated | "));
}

TEST(UncertaintyReport, ABadStatementIsNamedAndTheRestIsShown) {
  Channel channel = budgetedChannel();
  channel.setup.uncertainties.stated[{InputKind::GaugeFactor, 0}] = standard(-1);
  const std::string words = wordsOf(channel);
  EXPECT_THAT(words, HasSubstr("Steps 2 and 3 have no uncertainty in scope strain: gauge factor: "));
  EXPECT_THAT(words, HasSubstr("gauge factor | 2 | u = -1 |  | refused: "));
  EXPECT_THAT(
      words,
      HasSubstr(
          "2 | large | R1 | 0.5 | 2 | negative | -1000.00 | not known | -0.500501 | -1001.00 | 4.5 | "));
}

TEST(UncertaintyReport, CorrelationOfTheStepsIsPrintedForUpToTwelve) {
  Channel channel = budgetedChannel();
  std::string words = wordsOf(channel);
  // Derived: the drift is common, 2 x 2 = 4; u = sqrt(5), sqrt(4.25) and 2. 4/(2.236 x 2.062) = 0.868,
  // 4/(2.236 x 2) = 0.894, 4/(2.062 x 2) = 0.970. The first zero has no uncertainty.
  EXPECT_THAT(words,
              HasSubstr("Step | 2 | 3 | 4 | \n2 | 1.00 | 0.87 | 0.89 | \n3 | 0.87 | 1.00 | 0.97 | \n"));
  for (int k = 0; k < 8; ++k) channel.setup.sequence.push_back({"more", {0}, Duration(2)});
  EXPECT_THAT(wordsOf(channel), HasSubstr("Steps that share inputs err together"));
  channel.setup.sequence.push_back({"thirteenth", {0}, Duration(2)});
  EXPECT_THAT(wordsOf(channel), Not(HasSubstr("Steps that share inputs err together")));
}

TEST(UncertaintyReport, AssumedUncertaintiesAreCautionedAgainst) {
  const std::string caution(assumedUncertaintyStatement());
  EXPECT_THAT(wordsOf(budgetedChannel()), Not(HasSubstr(caution)));
  Channel channel = budgetedChannel();
  channel.setup.uncertainties.stated.erase({InputKind::Gain, 0});
  EXPECT_THAT(wordsOf(channel), HasSubstr(caution));
  // An assumption that no step depends on changes nothing.
  channel = budgetedChannel();
  channel.setup.uncertainties.stated.erase({InputKind::Excitation, 0});
  EXPECT_THAT(wordsOf(channel), Not(HasSubstr(caution)));
  // A check that was closed with assumptions still rests on them.
  channel = budgetedChannel();
  channel.setup.uncertainties.stated.erase({InputKind::Gain, 0});
  channel = withCheckClosed(readAt(channel, -1001), 0);
  channel.setup = budgetedChannel().setup;
  EXPECT_THAT(wordsOf(channel), HasSubstr(caution));
}

TEST(UncertaintyReport, EveryRuleIsPrintedWithItsNumbersWhereVerdictsStand) {
  const std::pair<DecisionRule, std::string> rules[] = {
      {DecisionRule::Simple, "simple acceptance, U plays no part"},
      {DecisionRule::SharedRisk, "shared risk, U at most 25 % of the limit, coverage 99 %"},
      {DecisionRule::Guarded, "guarded acceptance, guard band 0.75 × U, coverage 99 %"},
      {DecisionRule::Conformity, "conformity probability, 90 % passes, 10 % fails"},
      {DecisionRule::EnNumber, "En number, a size up to 1 passes, coverage 99 %"},
  };
  for (const auto& [rule, text] : rules) {
    Channel channel = shuntAlone();
    channel.setup.decision = {rule, 0.99, 0.75, 0.9, 0.25};
    const std::string words = wordsOf(readAt(channel, -1001));
    EXPECT_THAT(words, HasSubstr("TP-01 | pre-test | not given | not given | " + text + " | "));
    EXPECT_THAT(words, HasSubstr("Decision rule: " + text + ".\n"));  // of the plan
    EXPECT_THAT(words, HasSubstr("Decision rule: " + text + "\n"));   // of the check
  }
}

TEST(UncertaintyReport, TheCheckTableHasTheNumbersThatTheRuleLooksAt) {
  // Derived: U = 2.0 um/m, limit 1 % of 1001.0, deviation -1 um/m.
  const double reading = -2e6 / 1998 - 1;
  const std::pair<DecisionRule, std::pair<std::string, std::string>> rules[] = {
      {DecisionRule::Simple, {"Limit, µm/m | Verdict | ", "-1.00 | 10.01 | pass | "}},
      {DecisionRule::Guarded,
       {"Limit, µm/m | U of deviation, µm/m | Verdict | ", "-1.00 | 10.01 | 2.0 | pass | "}},
      // (10.01 - 1)/1 is nine standard deviations.
      {DecisionRule::Conformity,
       {"U of deviation, µm/m | Conformity, % | Verdict | ", "-1.00 | 10.01 | 2.0 | 100.0 | pass | "}},
      // 1/2.0000 of U, and no limit.
      {DecisionRule::EnNumber,
       {"Deviation, µm/m | U of deviation, µm/m | E_n | Verdict | ", "-1.00 | 2.0 | -0.50 | pass | "}},
  };
  for (const auto& [rule, expected] : rules) {
    Channel channel = shuntAlone();
    channel.setup.decision.rule = rule;
    const std::string words = wordsOf(readAt(channel, reading));
    EXPECT_THAT(words, HasSubstr(expected.first));
    EXPECT_THAT(words, HasSubstr(expected.second));
  }
  Channel channel = shuntAlone();
  channel.setup.decision.rule = DecisionRule::Guarded;
  channel.setup.decision.guardFactor = 0.5;
  EXPECT_THAT(wordsOf(readAt(channel, reading)), HasSubstr("-1.00 | 10.01 | 2.0 | 1.0 | pass | "));
}

TEST(UncertaintyReport, CannotTellLooksLikeNeitherPassNorFail) {
  // Derived: limit 10.01 and guard band 2.0 um/m; a deviation of 9 um/m lies between 8.01 and 12.01.
  Channel channel = shuntAlone();
  channel.setup.decision.rule = DecisionRule::Guarded;
  channel = readAt(channel, -2e6 / 1998 - 9);
  const std::string html = reportHtml(reportOf(documentOf(channel)));
  EXPECT_THAT(html, HasSubstr("class=\"untold\">cannot tell</td>"));
  EXPECT_THAT(html, HasSubstr("<p class=\"untold\">Cannot tell: "));
  EXPECT_THAT(html, HasSubstr("<p>Step 2 cannot be decided. "));
  EXPECT_THAT(html, Not(HasSubstr("<p class=\"pass\"")));
  EXPECT_THAT(html, Not(HasSubstr("<p class=\"fail\"")));
}

TEST(UncertaintyReport, EffectsThatAreOffAreNotMentioned) {
  const std::string words = wordsOf(budgetedChannel());
  for (const char* part :
       {"Effects in the circuit", "Leak", "Structure", "Balance", "Linearisation", "ratiometric", "warmer",
        "coefficient: ", "Self-heating", "Grid of a gauge", "Gauge factor at", "Own wires | Switch"})
    EXPECT_THAT(words, Not(HasSubstr(part))) << part;
}

TEST(UncertaintyReport, EffectsThatAreOnAreAllPrinted) {
  Channel channel = budgetedChannel();
  Bridge& bridge = channel.setup.bridge;
  Instrument& instrument = channel.setup.instrument;
  bridge.gauge.factorCoefficient = 1e-4;
  bridge.gauge.installed = Temperature(73);
  bridge.leadWarming = Warming(12);
  bridge.leaks[0].across = Resistance(5e8);
  bridge.leaks[2].toStructure = Resistance(2e8);
  bridge.leaks[2].place = 0.25;
  instrument.grounding = Grounding::PMinus;
  instrument.balance = {BalanceKind::Parallel, Resistance(20000), Resistance(75000), 0.625};
  instrument.current = CurrentSource{Current(0.01), Resistance(350)};
  instrument.ratiometric = false;
  instrument.linearisation = Linearisation::BeforeZero;
  channel.setup.shunts[1].contact = Resistance(0.125);
  const std::string words = wordsOf(channel);
  // Derived: 2 (1 + 1e-4 x 50) = 2.01; 10 mA x 350 ohm = 3.5 V.
  for (const char* part :
       {"Gauge factor of the gauge: 2 at 23 °C", "Its temperature coefficient: 0.01 % per K",
        "Gauge factor at 73 °C: 2.01", "Leads warmer than stated: by 12 K", "Leak over arm 1: 500 MΩ",
        "Leak to structure of arm 3: 200 MΩ at 25 % of the grid", "Structure: connected to P-",
        "Balance: 20 kΩ over the excitation, wiper at 62.5 % from P- through 75 kΩ to S+",
        "Excitation: 10 mA, constant",
        "Constant current: the instrument reckons with 3.5 V from a bridge of 350 Ω",
        "Not ratiometric: an error of the excitation is an error of the reading",
        "Linearisation: of each output, before the zero is subtracted",
        "R2 | 349.65 kΩ | gauge end of lead P+ | gauge end of lead S- | 0 Ω | 0.125 Ω | "})
    EXPECT_THAT(words, HasSubstr(part)) << part;

  instrument.linearisation = Linearisation::AfterZero;
  instrument.grounding = Grounding::Floating;
  instrument.balance = {BalanceKind::Series, Resistance(100), Resistance(75000), 0.5};
  const std::string others = wordsOf(channel);
  for (const char* part : {"Linearisation: of the change from zero", "Structure: floating",
                           "Balance: 100 Ω between arms 3 and 4, wiper to S+, 50 % in arm 3"})
    EXPECT_THAT(others, HasSubstr(part)) << part;
  // Linearisation is of readings in strain.
  instrument.unit = ReadingUnit::MillivoltPerVolt;
  EXPECT_THAT(wordsOf(channel), Not(HasSubstr("Linearisation")));
}

TEST(UncertaintyReport, SelfHeatingStandsBesideTheHandbookAndWarnsAboveIt) {
  Channel channel = budgetedChannel();
  channel.setup.bridge.gauge.grid.area = Area(6e-6);
  // Derived: half of 5 V over 350 ohm is 17.86 mW; by 6 mm^2, 2.98 kW/m^2. The range of a good heat sink and
  // moderate static demand is 3.1 to 7.75 kW/m^2 (Micro-Measurements TN-502, from memory).
  std::string words = wordsOf(channel);
  EXPECT_THAT(words, HasSubstr("Grid of a gauge: 6 mm²"));
  EXPECT_THAT(
      words,
      HasSubstr("Self-heating: Arm 1 turns 17.9 mW into heat, 2.98 kW/m², below the usual 3.1 to 7.75"));
  EXPECT_THAT(words, HasSubstr("check your gauge's data sheet"));
  channel.setup.bridge.gauge.grid.area = Area(1e-6);
  EXPECT_THAT(reportHtml(reportOf(documentOf(channel))),
              HasSubstr("<p class=\"caution\"><b>Caution.</b> Self-heating: "));
}

TEST(UncertaintyReport, ANoteIsTheLastRowOfItsTableSoThatNoPageEndPartsThem) {
  Table table{"", {{"A"}, {"B, mm", true, 30}}, {{{"x", "1"}, {}}}};
  table.note = "B & more";
  const std::string html = reportHtml({"", {{"", 1, {table}}}});
  EXPECT_THAT(html, HasSubstr("<td class=\"note\" colspan=\"2\">B &amp; more</td></tr>\n</tbody></table>"));
  EXPECT_THAT(html, HasSubstr("<th align=\"right\" width=\"30%\">B,<br>mm</th>"));
}

// More than three abreast leave each so little of the page that its words break into letters.
TEST(ReportHtml, NeverMoreThanThreeListsStandSideBySide) {
  const auto abreast = [](std::size_t lists) {
    Section section{"", 1, {}};
    for (std::size_t k = 0; k < lists; ++k) section.blocks.push_back(EntryList{"list", {{"name", "value"}}});
    const std::string html = reportHtml({"", {section}});
    std::vector<int> rows;
    for (std::size_t at = 0; (at = html.find("class=\"side\"", at)) != std::string::npos; ++at) {
      if (html.compare(at - 6, 5, "table") == 0)
        rows.push_back(0);
      else
        ++rows.back();
    }
    return rows;
  };
  EXPECT_THAT(abreast(2), ElementsAre(2));
  EXPECT_THAT(abreast(3), ElementsAre(3));
  EXPECT_THAT(abreast(4), ElementsAre(2, 2));
  EXPECT_THAT(abreast(6), ElementsAre(3, 3));
}

TEST(UncertaintyReport, AWordInTheMiddleOfARowKeepsItsEmphasis) {
  Channel channel = budgetedChannel();
  channel.setup.shunts[0].b = channel.setup.shunts[0].a;  // both ends on one node
  EXPECT_THAT(reportHtml(reportOf(documentOf(channel))),
              HasSubstr("class=\"open\">cannot be predicted</td>"));
}

}  // namespace uncertainty_report_test
}  // namespace core
