// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/report.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "core/document/edits.h"
#include "core/report/figures.h"
#include "core/report/html.h"
#include "core/report/tables.h"
#include "tests/core/report/words.h"

namespace core {
namespace report_test {

using testing::HasSubstr;
using testing::Not;

Channel checkedChannel() {
  Channel channel;
  channel.name = "TP-01";
  channel.setup.shunts = {{"R1", Resistance(174650), Node::Arm1Begin, Node::Arm1End, Resistance(0)},
                          {"R2", Resistance(349650), Node::Arm1Begin, Node::Arm1End, Resistance(0)}};
  channel.setup.sequence = {{"zero", {}, Duration(2)},
                            {"large", {0}, Duration(2)},
                            {"small", {1}, Duration(2)},
                            {"zero", {}, Duration(2)}};
  channel = withCheckAdded(channel, Check{});
  channel.checks[0].date = "2031-05-04";
  // Derived for 350 ohm and gauge factor 2: linear indications -2e6/1998 and -2e6/3998 um/m.
  const double readings[] = {1, 1 - 2e6 / 1998, 1 - 2e6 / 3998, 1.5};
  for (std::size_t k = 0; k < 4; ++k)
    channel.checks[0].readings[k] = Measured{Reading(readings[k]), {}, {}, {}};
  return channel;
}

Document documentOf(Channel channel) { return withChannelInserted({}, 0, std::move(channel)); }

TEST(Report, SaysHowABridgeIsConnectedThatIsNotAsItsTemplateSays) {
  Channel channel = checkedChannel();
  EXPECT_THAT(Words(reportOf(documentOf(channel))), Not(HasSubstr("Not as the template says")));
  channel.setup.bridge.hookup = {.signalReversed = true,
                                 .exchanged = {{LeadRole::SignalMinus, LeadRole::Return}}};
  const std::string words = Words(reportOf(documentOf(channel)));
  EXPECT_THAT(words,
              HasSubstr("Not as the template says: The signal wires are reversed: the instrument measures "
                        "S- against S+."));
  EXPECT_THAT(words,
              HasSubstr("Not as the template says: Leads S- and return are exchanged at the instrument."));
}

TEST(Report, SummaryAndHeadOfAChannelSayHowItIsConnected) {
  Channel channel = checkedChannel();
  channel.setup.bridge.hookup = {.excitationReversed = true};
  channel.setup.bridge.hookup.broken[static_cast<std::size_t>(LeadRole::SignalMinus)] = true;
  const Report report = reportOf(documentOf(channel));
  const std::string sentences =
      "The excitation is reversed: the source's plus side is on P-. Lead S- is broken.";
  const auto cautions = [](const Section& section) {
    std::string text;
    for (const Block& block : section.blocks)
      if (const auto* caution = std::get_if<Caution>(&block)) text += caution->text + "\n";
    return text;
  };
  const auto section = [&](const std::string& heading) -> const Section& {
    const auto found = std::find_if(report.sections.begin(), report.sections.end(),
                                    [&](const Section& one) { return one.heading == heading; });
    EXPECT_NE(found, report.sections.end()) << heading;
    return *found;
  };
  EXPECT_THAT(cautions(section("Cautions")),
              HasSubstr("Channel TP-01 is not connected as its template says. " + sentences));
  EXPECT_THAT(cautions(section("Channel TP-01")),
              HasSubstr("Not connected as the template says, and predicted and judged so: " + sentences));
}

TEST(Report, ACheckSaysHowTheBridgeWasConnectedThen) {
  Channel channel = checkedChannel();
  channel.setup.bridge.hookup = {.signalReversed = true};
  channel.checks[0].closedWith = std::make_shared<const core::Setup>(channel.setup);
  channel.setup.bridge.hookup = {};
  EXPECT_THAT(Words(reportOf(documentOf(channel))),
              HasSubstr("Not connected as the template says: The signal wires are reversed"));
}

TEST(Report, SaysWhatWasPlannedReadAndJudged) {
  Document document = documentOf(checkedChannel());
  document.title = "Tailplane";
  const std::string words = Words(reportOf(document));
  for (const char* part :
       {"Tailplane", "Channel TP-01", "Quarter bridge, three-wire", "174.65 kΩ", "Pass: all 4 steps",
        "Date: 2031-05-04", "Recording: none", "Deviation, share of expected: 1 %", "Zero return: 0.5 µm/m"})
    EXPECT_THAT(words, HasSubstr(part));
}

TEST(Report, LimitsOfFiguresAreListedThoseThatAreSet) {
  Channel channel = checkedChannel();
  channel.setup.limits.merits = {{MeritKind::Symmetry, 0.01}, {MeritKind::Nonlinearity, 0.0025}};
  channel.setup.limits.linearityFrom = ReferenceLine::Minimax;
  const std::string words = Words(reportOf(documentOf(channel)));
  EXPECT_THAT(words, HasSubstr("Nonlinearity: 0.25 %"));
  EXPECT_THAT(words, HasSubstr("Plus/minus asymmetry: 1 %"));
  EXPECT_THAT(words, HasSubstr("Nonlinearity measured from: the minimax line"));
  EXPECT_THAT(words, Not(HasSubstr("Hysteresis: 0 %")));
}

// A first reading that failed and was redone is in its note: a reviewer must see it.
TEST(Report, PrintsTheNotesOfSteps) {
  Channel channel = checkedChannel();
  channel.checks[0].readings[1]->note = "redone; before: -995 µm/m <b>";
  const Document document = documentOf(channel);
  EXPECT_THAT(std::string(Words(reportOf(document))),
              HasSubstr("Step 2, note: redone; before: -995 µm/m <b>"));
}

TEST(Report, APlanTellsOfOverdueResistorsOnTheDayItIsPrintedAndACheckOnItsOwn) {
  const auto day = [](int year) { return std::chrono::year(year) / 9 / 1; };
  Channel channel = checkedChannel();
  channel.setup.shunts[0].part = {"AF-0104", day(2031), {}};
  const Document document = documentOf(channel);  // checked on 2031-05-04
  EXPECT_THAT(std::string(Words(reportOf(document, day(2030)))), Not(HasSubstr("Overdue for")));
  EXPECT_THAT(std::string(Words(reportOf(document, day(2032)))),
              HasSubstr("Overdue for calibration on 2032-09-01: AF-0104 (shunt R1, due 2031-09-01)."));
  channel.setup.shunts[0].part.due = day(2030);
  EXPECT_THAT(std::string(Words(reportOf(documentOf(channel)))),
              HasSubstr("Overdue for calibration on 2031-05-04"));
  channel.checks[0].date = "2031-02-30";
  EXPECT_THAT(
      std::string(Words(reportOf(documentOf(channel)))),
      HasSubstr("The date “2031-02-30” is no day: what was overdue for calibration then cannot be told."));
}

TEST(Report, CarriesEveryCautionTheScopeAndRoomForSignatures) {
  const std::string words = Words(reportOf({}));
  for (const std::string& caution : cautions()) EXPECT_THAT(words, HasSubstr(caution));
  EXPECT_EQ(cautions().size(), 5U);
  EXPECT_THAT(words, HasSubstr(std::string(chainScopeStatement())));
  for (const char* part : {"Prepared | ", "Reviewed | ", "has no channels"})
    EXPECT_THAT(words, HasSubstr(part));
}

TEST(Report, CautionsStandBeforeTheFirstChannelAndTheScopeAgainAboveTheSignatures) {
  const std::string words = Words(reportOf(documentOf(checkedChannel())));
  const std::string scope(chainScopeStatement());
  const std::size_t channel = words.find("Channel TP-01"), signatures = words.find("Signatures");
  ASSERT_NE(channel, std::string::npos);
  ASSERT_NE(signatures, std::string::npos);
  for (const std::string& caution : cautions()) EXPECT_LT(words.find(caution), channel) << caution;
  EXPECT_LT(words.find(scope), channel);
  EXPECT_GT(words.rfind(scope), signatures);
}

TEST(Report, TheSummarySaysOfEachCheckWhoWhenAndVerdict) {
  Channel channel = checkedChannel();
  channel.checks[0].person = "R. Alder";
  channel = withCheckAdded(channel, Check{});
  const std::string words = Words(reportOf(documentOf(channel)));
  EXPECT_THAT(
      words,
      HasSubstr("TP-01 | pre-test | 2031-05-04 | R. Alder | simple acceptance, U plays no part | pass | "));
  EXPECT_THAT(words,
              HasSubstr("TP-01 | " + channel.checks[1].name +
                        " | not given | not given | simple acceptance, U plays no part | not judged | "));
}

TEST(Report, LeadsHaveATableWithTheirWire) {
  Channel channel = checkedChannel();
  channel.setup.bridge.leads[static_cast<std::size_t>(LeadRole::Return)] =
      CopperWire{Length(6), Area(0.1288e-6), Temperature(20)};
  const Report report = reportOf(documentOf(channel));
  const Table* leads = nullptr;
  for (const Section& section : report.sections)
    for (const Block& block : section.blocks)
      if (const auto* table = std::get_if<Table>(&block); table && table->caption == "Leads") leads = table;
  ASSERT_TRUE(leads);
  const TableRow& last = leads->rows.back();
  EXPECT_EQ(last.cells[0], "return");
  EXPECT_EQ(last.cells[2], "copper, 6 m of 0.1288 mm² at 20 °C");
  EXPECT_EQ(leads->rows.front().cells[2], "resistance given");
}

TEST(Report, ShuntsSayWhichResistorsTheyAreMadeOfAndWhenTheseAreDue) {
  Channel channel = checkedChannel();
  EXPECT_THAT(std::string(Words(reportOf(documentOf(channel)))), Not(HasSubstr("Calibration due")));
  channel.setup.shunts[0].part = {"AF-0101", dateFromText("2027-03-31"), {}};
  const std::string words = Words(reportOf(documentOf(channel)));
  EXPECT_THAT(words, HasSubstr("Own wires | Resistor | Calibration due | \nR1 | 174.65 kΩ | "));
  EXPECT_THAT(words, HasSubstr("0 Ω | AF-0101 | 2027-03-31 | \nR2 | "));
  EXPECT_THAT(words, HasSubstr("0 Ω |  |  | \n")) << "of the other nothing is known";
}

TEST(Report, SaysHowReadingsAreTakenWhereThatIsKnown) {
  Channel channel = checkedChannel();
  EXPECT_THAT(std::string(Words(reportOf(documentOf(channel)))), Not(HasSubstr("Acquisition")));
  channel.setup.instrument.range = 4.0_mV_per_V;
  channel.setup.acquisition = {100.0_Hz, {FilterKind::Bessel, 4, 10.0_Hz, {}}, 60.0_Hz, 1e-3};
  std::string words = Words(reportOf(documentOf(channel)));
  for (const char* part : {"Range: ±4 mV/V", "Sample rate: 100 Hz", "Filter: Bessel of order 4, 10 Hz",
                           "Mains hum averaged out: 60 Hz", "Settled to: 0.1 % of a step"})
    EXPECT_THAT(words, HasSubstr(part));
  channel.setup.acquisition = {{}, {FilterKind::MovingAverage, 2, {}, 0.25_s}, {}, 1e-3};
  words = Words(reportOf(documentOf(channel)));
  for (const char* part :
       {"Sample rate: not given", "Filter: moving average over 0.25 s", "Mains hum averaged out: none"})
    EXPECT_THAT(words, HasSubstr(part));
}

TEST(Report, NamesTheRecordingWithItsHash) {
  Channel channel = checkedChannel();
  channel.checks[0].recording = RecordingReference{"recordings/pre.csv", 1234, std::string(64, 'e'), "TP-01"};
  const std::string words = Words(reportOf(documentOf(channel)));
  for (const std::string& part :
       {std::string("recordings/pre.csv, column TP-01"), std::string("1234 bytes"), std::string(64, 'e')})
    EXPECT_THAT(words, HasSubstr(part));
}

TEST(Report, AReadingThatIsNoNumberIsAFailureInWords) {
  Channel channel = checkedChannel();
  channel.checks[0].readings[1] = Measured{Reading(std::nan("")), {}, {}, {}};
  const std::string words = Words(reportOf(documentOf(channel)));
  EXPECT_THAT(words, HasSubstr("Step 2 fails. The reading is no finite number."));
  EXPECT_THAT(words, HasSubstr("not a number | not a number | not a number"));
  EXPECT_THAT(words, HasSubstr("Left out of the line: step 2: no finite reading"));
  EXPECT_THAT(words, Not(HasSubstr("nan")));
  EXPECT_THAT(words, Not(HasSubstr("Pass: all")));
}

TEST(Report, AnUnsolvableBridgeIsSaidAndNothingPasses) {
  Channel channel = checkedChannel();
  channel.setup.bridge.arms[1] = Resistance(-1);
  const std::string words = Words(reportOf(documentOf(channel)));
  EXPECT_THAT(words, HasSubstr("Cannot be predicted: arm 2"));
  EXPECT_THAT(words, HasSubstr("cannot be predicted | "));
  EXPECT_THAT(words, Not(HasSubstr("| pass |")));
}

TEST(Report, ComparesTheLastTwoChecksAndSaysFirstWhatDiffersInTheSetUp) {
  Channel channel = withCheckClosed(checkedChannel(), 0);
  channel.setup.instrument.excitation = Voltage(2.5);
  channel = withCheckAdded(channel, Check{});
  channel.checks[1].name = "post-test";
  channel.checks[1].readings = channel.checks[0].readings;
  channel.checks[1].readings[1]->mean += Reading(25);
  for (Check& check : channel.checks)
    for (auto& reading : check.readings) reading->uncertainty = Reading(1);
  const Report report = reportOf(documentOf(channel));
  const auto found = std::find_if(report.sections.begin(), report.sections.end(), [](const Section& section) {
    return section.heading == "TP-01, pre-test and post-test compared";
  });
  ASSERT_NE(found, report.sections.end());
  const auto* first = std::get_if<Caution>(&found->blocks[0]);
  ASSERT_TRUE(first);
  EXPECT_EQ(first->text, "The set-ups differ: excitation 5 V before, 2.5 V after.");
  EXPECT_THAT(std::string(Words(report)), HasSubstr("-1001.00 | -976.00 | 25.0 | "));
  EXPECT_THAT(std::string(Words(report)), HasSubstr("Changed: step 2 moved by 25.0"));
}

TEST(Report, TwoExactPointsHaveNoInterceptAndSayWhyTheirFitIsPerfect) {
  Channel channel = checkedChannel();
  channel.checks[0].readings[2].reset();
  channel.checks[0].readings[3].reset();
  const auto valueOf = [&](const std::string& name) {
    for (const Entry& figure : figuresOf(channel, evaluate(channel), 0))
      if (figure.name == name) return figure.value;
    return std::string("no such figure");
  };
  EXPECT_EQ(valueOf("Intercept"), "0 µm/m");  // the change of the zero step is 0 by definition
  EXPECT_EQ(valueOf("R²"), "not known: two points only");
  EXPECT_EQ(valueOf("Residual deviation"), "not known: too few points");
  channel.checks[0].readings[3] = Measured{Reading(1.5), {}, {}, {}};
  // Zeros 0 and 0.5 at x = 0, one point elsewhere: the line runs through their mean.
  EXPECT_EQ(valueOf("Intercept").substr(0, 4), "0.25");
  EXPECT_EQ(valueOf("R²").substr(0, 3), "0.9");
}

TEST(Report, AValueIsShownToTwoDigitsOfItsError) {
  EXPECT_EQ(withError(3, std::sqrt(3.0)), "3.0 ± 1.7");
  EXPECT_EQ(withError(0.99870123, 0.00041), "0.99870 ± 0.00041");
  EXPECT_EQ(withError(123456, 1234), "123456 ± 1234");
  EXPECT_EQ(withError(0.5, std::nullopt), "0.5");
}

TEST(Report, PlacesFollowTheGreatestValue) {
  EXPECT_EQ(decimalsFor(std::vector<double>{-1000, 3}), 2);
  EXPECT_EQ(decimalsFor(std::vector<double>{0.5, std::nan("")}), 6);
  EXPECT_EQ(decimalsFor(std::vector<double>{}), 1);
  EXPECT_EQ(shownNumber(std::nullopt, 2), "");
  EXPECT_EQ(shownNumber(-HUGE_VAL, 2), "infinite");
}

TEST(ReportHtml, ForeignTextIsTextAndNotMarkup) {
  Channel channel = checkedChannel();
  channel.name = "<img src=x>&\"'";
  channel.note = "two\nlines";
  const std::string html = reportHtml(reportOf(documentOf(channel)));
  EXPECT_THAT(html, Not(HasSubstr("<img")));
  EXPECT_THAT(html, HasSubstr("Channel &lt;img src=x&gt;&amp;&quot;&#39;"));
  EXPECT_THAT(html, HasSubstr("two<br>lines"));
}

TEST(ReportHtml, OnlyVerdictsAreEmphasisedNotTheReasonOfEachStep) {
  Channel channel = checkedChannel();
  channel.checks[0].readings[1] = Measured{Reading(-900), {}, {}, {}};
  const std::string html = reportHtml(reportOf(documentOf(channel)));
  EXPECT_THAT(html, HasSubstr("<p class=\"fail\">Fail: "));
  EXPECT_THAT(html, HasSubstr("<p>Step 2 fails. "));
}

TEST(ReportHtml, AHashIsSetSmall) {
  Channel channel = checkedChannel();
  const std::string hash(64, 'e');
  channel.checks[0].recording = RecordingReference{"pre.csv", 1234, hash, "TP-01"};
  EXPECT_THAT(reportHtml(reportOf(documentOf(channel))), HasSubstr("<td class=\"fine\">" + hash));
}

TEST(ReportHtml, PicturesComeWithTheirWords) {
  const auto source = [](const Picture& picture) {
    return PictureSource{picture.kind == Picture::Kind::Bridge ? "bridge.png" : "", 300};
  };
  const std::string html = reportHtml(reportOf(documentOf(checkedChannel())), source);
  EXPECT_THAT(html, HasSubstr("<img src=\"bridge.png\" width=\"300\" alt=\"Bridge of channel TP-01"));
}

}  // namespace report_test
}  // namespace core
