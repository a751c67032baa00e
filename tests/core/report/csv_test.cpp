// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/csv.h"

#include <gtest/gtest.h>

#include <cmath>
#include <cstdlib>
#include <limits>
#include <map>

#include "core/budget/inputs.h"
#include "core/document/edits.h"

namespace core {
namespace {

using Rows = std::vector<std::vector<std::string>>;

/// RFC 4180, section 2: quoted cells with doubled quotes, lines ended by CRLF.
Rows parsed(const std::string& csv) {
  Rows rows(1);
  std::string cell;
  bool quoted = false;
  for (std::size_t k = 0; k < csv.size(); ++k) {
    const char c = csv[k];
    if (quoted && c == '"' && k + 1 < csv.size() && csv[k + 1] == '"')
      cell += csv[k++];
    else if (c == '"')
      quoted = !quoted;
    else if (!quoted && c == ',')
      rows.back().push_back(std::exchange(cell, {}));
    else if (!quoted && c == '\r' && k + 1 < csv.size() && csv[k + 1] == '\n') {
      rows.back().push_back(std::exchange(cell, {}));
      rows.emplace_back(), ++k;
    } else
      cell += c;
  }
  rows.pop_back();
  return rows;
}

std::map<std::string, std::string> row(const Rows& rows, std::size_t index) {
  std::map<std::string, std::string> cells;
  for (std::size_t k = 0; k < rows[0].size(); ++k) cells[rows[0][k]] = rows[index + 1].at(k);
  return cells;
}

/// A quarter bridge of 350 ohm, gauge factor 2, no leads: zero, then 174.65 kohm across arm 1.
Channel channelWith(std::optional<double> zero, std::optional<double> shunted) {
  Channel channel;
  channel.name = "TP-01";
  channel.setup.shunts = {{"R1", Resistance(174650), Node::Arm1Begin, Node::Arm1End, Resistance(0)}};
  channel.setup.sequence = {{"zero", {}, Duration(2)}, {"closed", {0}, Duration(2)}};
  channel = withCheckAdded(channel, Check{});
  if (zero) channel.checks[0].readings[0] = Measured{Reading(*zero), {}, {}, {}};
  if (shunted) channel.checks[0].readings[1] = Measured{Reading(*shunted), {}, {}, {}};
  return channel;
}

Document documentOf(Channel channel) { return withChannelInserted({}, 0, std::move(channel)); }

TEST(ReportCsv, HasOneRowAStepACheckAndReadsBackWithTheSameNumbers) {
  const double reading = 3.25 - 1001.1 + 1e-11;  // digits that six or twelve places would lose
  const Rows rows = parsed(reportCsv(documentOf(channelWith(3.25, reading))));
  ASSERT_EQ(rows.size(), 3U);
  auto closed = row(rows, 1);
  // Derived: 350 / (350 + 174650) = 1/500, so the strain is -1000 um/m with gauge factor 2; S- moves from
  // 1/2 to 500/999, the output is -1/1998 and the linear indication 4/2 of it.
  EXPECT_NEAR(std::strtod(closed["simulated"].c_str(), nullptr), -1000.0, 1e-8);
  EXPECT_NEAR(std::strtod(closed["output_mV_per_V"].c_str(), nullptr), -1e3 / 1998, 1e-12);
  EXPECT_NEAR(std::strtod(closed["expected_reading"].c_str(), nullptr), -2e6 / 1998, 1e-8);
  EXPECT_EQ(std::strtod(closed["reading"].c_str(), nullptr), reading);
  EXPECT_EQ(std::strtod(closed["change"].c_str(), nullptr), reading - 3.25);
  EXPECT_EQ(closed["simulated_unit"], "µm/m");
  EXPECT_EQ(closed["reading_unit"], "µm/m");
  EXPECT_EQ(closed["polarity"], "negative");
  EXPECT_EQ(closed["closed_shunts"], "R1");
  EXPECT_EQ(closed["verdict"], "pass");
}

TEST(ReportCsv, SaysHowTheBridgeIsConnected) {
  Channel channel = channelWith(1, -1001);
  EXPECT_EQ(row(parsed(reportCsv(documentOf(channel))), 1)["connection"], "");
  channel.setup.bridge.hookup = {.touching = {{LeadRole::SignalMinus, LeadRole::Return}}};
  EXPECT_EQ(row(parsed(reportCsv(documentOf(channel))), 1)["connection"],
            "Leads S- and return touch at their gauge ends.");
}

TEST(ReportCsv, AStepHasItsTimes) {
  Channel channel = channelWith(0, -1001);
  channel.setup.sequence[1].hold = 2.5_s;
  channel.setup.sequence[1].settle = 0.75_s;
  auto closed = row(parsed(reportCsv(documentOf(channel))), 1);
  EXPECT_EQ(closed["hold_s"], "2.5");
  EXPECT_EQ(closed["settle_s"], "0.75");
}

TEST(ReportCsv, NegativeNumbersAreNeverTouched) {
  auto closed = row(parsed(reportCsv(documentOf(channelWith(0, -1001.5)))), 1);
  EXPECT_EQ(closed["reading"], "-1001.5");
}

TEST(ReportCsv, TextThatASpreadsheetWouldRunGetsAnApostrophe) {
  for (const std::string text : {"=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", "  =1", "\n=1"})
    EXPECT_EQ(parsed(csvText(text) + "\r\n")[0][0], "'" + text) << text;
  EXPECT_EQ(csvText("TP-01"), "TP-01");
  EXPECT_EQ(csvText("µm/m"), "µm/m");
  EXPECT_EQ(csvText(std::string("\0=1", 3)), "'=1");
}

TEST(ReportCsv, HostileNamesStayInTheirCell) {
  Channel channel = channelWith(0, -1001);
  channel.name = "=HYPERLINK(\"x\",\"y\")\r\nTP,2";
  channel.setup.sequence[1].label = "a \"b\", c";
  const Rows rows = parsed(reportCsv(documentOf(channel)));
  ASSERT_EQ(rows.size(), 3U);
  for (const auto& cells : rows) EXPECT_EQ(cells.size(), rows[0].size());
  EXPECT_EQ(row(rows, 1)["channel"], "'" + channel.name);
  EXPECT_EQ(row(rows, 1)["label"], channel.setup.sequence[1].label);
}

TEST(ReportCsv, WhatIsNoFiniteNumberIsAWordAndNeverAPass) {
  for (const double bad : {std::nan(""), HUGE_VAL, -HUGE_VAL}) {
    auto closed = row(parsed(reportCsv(documentOf(channelWith(0, bad)))), 1);
    EXPECT_EQ(closed["reading"], std::isnan(bad) ? "not a number" : "infinite");
    EXPECT_EQ(closed["verdict"], "fail");
    EXPECT_NE(closed["reason"].find("no finite number"), std::string::npos) << closed["reason"];
  }
  // A broken zero reading spoils each step that is counted from it.
  const Rows rows = parsed(reportCsv(documentOf(channelWith(std::nan(""), -1001))));
  for (const std::size_t step : {0, 1}) EXPECT_NE(row(rows, step)["verdict"], "pass");
}

TEST(ReportCsv, AMissingReadingIsAnEmptyCellAndNotJudged) {
  auto closed = row(parsed(reportCsv(documentOf(channelWith(0, std::nullopt)))), 1);
  EXPECT_EQ(closed["reading"], "");
  EXPECT_EQ(closed["deviation"], "");
  EXPECT_EQ(closed["verdict"], "not judged");
}

TEST(ReportCsv, AChannelWithoutACheckGivesItsPlan) {
  Channel channel = channelWith({}, {});
  channel.checks.clear();
  const Rows rows = parsed(reportCsv(documentOf(channel)));
  ASSERT_EQ(rows.size(), 3U);
  EXPECT_EQ(row(rows, 1)["check"], "");
  EXPECT_EQ(row(rows, 1)["verdict"], "not judged");
}

TEST(ReportCsv, ColumnsStandInTheOrderOfTheManual) {
  const Rows rows = parsed(reportCsv({}));
  const std::vector<std::string> columns = {"channel",
                                            "check",
                                            "check_date",
                                            "step",
                                            "label",
                                            "closed_shunts",
                                            "hold_s",
                                            "settle_s",
                                            "polarity",
                                            "simulated",
                                            "expanded_uncertainty_strain",
                                            "coverage_factor_strain",
                                            "simulated_unit",
                                            "output_mV_per_V",
                                            "expected_reading",
                                            "expanded_uncertainty_chain",
                                            "coverage_factor_chain",
                                            "coverage_probability",
                                            "reading",
                                            "reading_std_uncertainty",
                                            "change",
                                            "deviation",
                                            "deviation_expanded_uncertainty",
                                            "limit",
                                            "reading_unit",
                                            "decision_rule",
                                            "guard_band",
                                            "conformity_probability",
                                            "en_number",
                                            "verdict",
                                            "reason",
                                            "check_remark",
                                            "check_verdict",
                                            "nonlinearity",
                                            "hysteresis",
                                            "repeatability",
                                            "zero_return",
                                            "zero_shift",
                                            "symmetry",
                                            "combined_error",
                                            "span_ratio",
                                            "line_probability",
                                            "diagnosis",
                                            "likeliest_cause",
                                            "cause_size",
                                            "cause_weight",
                                            "diagnosis_sentence",
                                            "connection",
                                            "compared_with",
                                            "step_moved",
                                            "moved_std_uncertainty",
                                            "moved_margin",
                                            "p_different",
                                            "p_equivalent",
                                            "step_change",
                                            "check_change",
                                            "gain_change",
                                            "gain_p_different",
                                            "gain_p_equivalent",
                                            "resistors",
                                            "certificates",
                                            "calibration_due",
                                            "instrument",
                                            "instrument_serial",
                                            "instrument_certificate",
                                            "instrument_due",
                                            "air_degC",
                                            "relative_humidity",
                                            "fingerprint"};
  ASSERT_EQ(rows.size(), 1U);
  EXPECT_EQ(rows[0], columns);
}

/// The shunt known to 0.1 % (k = 1), the gauge factor to 1 %, all else for certain.
Channel withUncertainties(Channel channel) {
  Uncertainties& known = channel.setup.uncertainties;
  for (const Input input : inputListOf(channel.setup)) known.stated[input] = {Statement::Standard, 0};
  known.stated[{InputKind::Shunt, 0}] = {Statement::Standard, 1e-3, true};
  known.stated[{InputKind::GaugeFactor, 0}] = {Statement::Standard, 0.01, true};
  return channel;
}

TEST(ReportCsv, UncertaintiesHaveTheirScopeCoverageFactorAndProbability) {
  auto closed = row(parsed(reportCsv(documentOf(withUncertainties(channelWith(0, -1001))))), 1);
  const auto value = [&](const char* name) { return std::strtod(closed[name].c_str(), nullptr); };
  // Derived: the indication is -2e6/(2 (2 R/350 + 1)), 2 R/350 + 1 = 999; its derivative by R is
  // 2e6/(350 x 999^2) per ohm, by 174.65 ohm u. The strain is -350/(350 + R)/2: 174.65/175000 of 1000 um/m
  // from the shunt, 1 % from the gauge factor. k = 2 at 95.45 % to six digits (normal distribution).
  const double chain = 174.65 * 2e6 / (350 * 999.0 * 999.0);
  EXPECT_NEAR(value("expanded_uncertainty_chain"), 2 * chain, 1e-5 * chain);
  EXPECT_NEAR(value("expanded_uncertainty_strain"), 2 * std::hypot(0.998, 10), 1e-4);
  EXPECT_NEAR(value("coverage_factor_chain"), 2, 1e-5);
  EXPECT_NEAR(value("coverage_factor_strain"), 2, 1e-5);
  EXPECT_EQ(closed["coverage_probability"], "0.9545");
  EXPECT_NEAR(value("deviation_expanded_uncertainty"), 2 * chain, 1e-5 * chain);
}

TEST(ReportCsv, OnlyTheNumbersThatTheRuleUsesAreGiven) {
  Channel channel = withUncertainties(channelWith(0, -2e6 / 1998 - 1));
  const auto cells = [&](DecisionRule rule) {
    channel.setup.decision.rule = rule;
    return row(parsed(reportCsv(documentOf(channel))), 1);
  };
  auto simple = cells(DecisionRule::Simple);
  EXPECT_EQ(simple["decision_rule"], "simple");
  for (const char* name : {"guard_band", "conformity_probability", "en_number"}) EXPECT_EQ(simple[name], "");
  auto guarded = cells(DecisionRule::Guarded);
  EXPECT_EQ(guarded["decision_rule"], "guarded");
  EXPECT_EQ(guarded["guard_band"], guarded["deviation_expanded_uncertainty"]);  // factor 1
  // A deviation of -1 um/m by U = 2.0 um/m (derived above), and nine standard deviations from the limit.
  EXPECT_NEAR(std::strtod(cells(DecisionRule::EnNumber)["en_number"].c_str(), nullptr), -0.5, 1e-4);
  EXPECT_NEAR(std::strtod(cells(DecisionRule::Conformity)["conformity_probability"].c_str(), nullptr), 1,
              1e-12);
}

TEST(ReportCsv, AStepWithoutUncertaintySaysWhy) {
  Channel channel = withUncertainties(channelWith({}, {}));
  channel.checks.clear();
  channel.setup.uncertainties.stated[{InputKind::GaugeFactor, 0}].amount = -1;
  auto closed = row(parsed(reportCsv(documentOf(channel))), 1);
  EXPECT_EQ(closed["expanded_uncertainty_strain"], "");
  EXPECT_NE(closed["expanded_uncertainty_chain"], "");
  EXPECT_EQ(closed["reason"].find("No uncertainty: gauge factor"), 0U) << closed["reason"];
}

TEST(ReportCsv, AClosedCheckKeepsWhatItWasJudgedBy) {
  Channel channel = withCheckClosed(channelWith(0, -1001), 0);
  channel.setup.shunts[0].resistance = Resistance(1e6);
  auto closed = row(parsed(reportCsv(documentOf(channel))), 1);
  EXPECT_NEAR(std::strtod(closed["expected_reading"].c_str(), nullptr), -2e6 / 1998, 1e-8);  // derived above
}

}  // namespace
}  // namespace core
