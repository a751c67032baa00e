// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/csv.h"

#include <gtest/gtest.h>

#include <cmath>
#include <cstdlib>
#include <limits>
#include <map>

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

TEST(ReportCsv, AClosedCheckKeepsWhatItWasJudgedBy) {
  Channel channel = withCheckClosed(channelWith(0, -1001), 0);
  channel.setup.shunts[0].resistance = Resistance(1e6);
  auto closed = row(parsed(reportCsv(documentOf(channel))), 1);
  EXPECT_NEAR(std::strtod(closed["expected_reading"].c_str(), nullptr), -2e6 / 1998, 1e-8);  // derived above
}

}  // namespace
}  // namespace core
