// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/document/json_reader.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <fstream>
#include <iterator>
#include <map>
#include <span>
#include <string>

#include "core/document/json_writer.h"
#include "tests/support/random_document.h"

using namespace core;

namespace {

std::string fileText(const std::string& name) {
  std::ifstream file(std::string(SHUNTWRIGHT_TESTS_DIR) + "/data/" + name, std::ios::binary);
  return {std::istreambuf_iterator<char>(file), {}};
}

/// The file with the first `from` after `anchor` replaced.
std::string damaged(std::string text, const std::string& anchor, const std::string& from,
                    const std::string& to) {
  const std::size_t at = text.find(from, text.find(anchor));
  EXPECT_NE(at, text.npos) << "nothing to damage: " << from;
  return text.replace(at, from.size(), to);
}

/// The number of the line on which `part` first stands.
std::size_t lineOf(const std::string& text, const std::string& part) {
  return 1 + std::count(text.begin(), text.begin() + text.find(part), '\n');
}

// Written by hand when version 1 was fixed; never change it, and never let it stop opening.
TEST(ReadDocument, OpensTheFirstVersionForever) {
  const std::string text = fileText("version1.bridgecal");
  const auto document = readDocument(text);
  ASSERT_TRUE(document) << document.error().text();
  EXPECT_EQ(document->title, "Tailplane proof load");
  EXPECT_EQ(document->site, "Alder Fen Test Hall");
  EXPECT_EQ(document->article, "Sandpiper \"S-2\" tailplane");
  EXPECT_EQ(document->note, "first line\nsecond line, 350 Ω, -1000 µm/m");
  ASSERT_EQ(document->channels.size(), 2u);

  const Channel& spar = *document->channels[0];
  EXPECT_EQ(spar.name, "TP-01");
  EXPECT_EQ(spar.note, "spar cap");
  EXPECT_EQ(spar.setup.bridge.type, BridgeType::QuarterThreeWire);
  EXPECT_EQ(spar.setup.bridge.gauge, (Gauge{350.0_ohm, 2.05, 0.3}));
  EXPECT_EQ(spar.setup.bridge.arms[0], 350.2_ohm);
  EXPECT_EQ(spar.setup.bridge.arms[1], 350.0_ohm);
  const CopperWire wire{12.5_m, Area(1.4e-7), 20.0_degC};
  EXPECT_EQ(spar.setup.bridge.leads, (Leads{1.25_ohm, 0.0_ohm, 0.0_ohm, wire, 0.0_ohm, 0.0_ohm, wire}));
  EXPECT_EQ(spar.setup.instrument,
            (Instrument{ReadingUnit::MicrometrePerMetre, 2, 1, 1, "kN", 2.5_V, Resistance(1e9)}));
  EXPECT_EQ(spar.setup.shunts,
            (std::vector<Shunt>{{"R1 on arm 1", 174.65_kohm, Node::Arm1Begin, Node::Arm1End, 0.5_ohm},
                                {"R1 on arm 2", 174.65_kohm, Node::SMinus, Node::PMinus, 0.0_ohm}}));
  EXPECT_EQ(spar.setup.sequence,
            (std::vector<Step>{{"zero", {}, 2.0_s}, {"compression", {0}, 2.5_s}, {"both", {0, 1}, 2.0_s}}));
  EXPECT_EQ(spar.setup.limits, (Limits{0.01, Reading(2), 0.005}));
}

TEST(ReadDocument, OpensTheChecksOfTheFirstVersion) {
  const auto document = readDocument(fileText("version1.bridgecal"));
  ASSERT_TRUE(document) << document.error().text();
  const Channel& spar = *document->channels[0];
  ASSERT_EQ(spar.checks.size(), 2u);
  const Check& before = spar.checks[0];
  EXPECT_EQ(before.name, "pre-test");
  EXPECT_EQ(before.date, "2024-05-06");
  EXPECT_EQ(before.person, "shift A");
  EXPECT_EQ(
      before.recording,
      (RecordingReference{"recordings/pre.csv", UINT64_MAX,
                          "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855", "TP-01"}));
  ASSERT_EQ(before.readings.size(), 3u);
  EXPECT_EQ(before.readings[0], (Measured{Reading(0.1), Reading(0.02), 0.5_s, 2.0_s}));
  EXPECT_EQ(before.readings[1], (Measured{Reading(-1019.75), {}, {}, {}}));
  EXPECT_EQ(before.readings[2], std::nullopt);
  ASSERT_TRUE(before.closedWith);
  core::Setup frozen = spar.setup;
  frozen.sequence[1].hold = 1.0_s;
  EXPECT_EQ(*before.closedWith, frozen);
  EXPECT_EQ(spar.checks[1], (Check{"post-test", "", "", "not yet run", {}, {}, {}}));

  const Channel& cell = *document->channels[1];
  EXPECT_EQ(cell.setup.bridge.type, BridgeType::Transducer);
  EXPECT_EQ(cell.setup.bridge.rating, (Rating{2.0_mV_per_V, 50, "kN"}));
  EXPECT_TRUE(cell.setup.bridge.sixWire);
  EXPECT_EQ(cell.setup.bridge.leads[static_cast<std::size_t>(LeadRole::SensePlus)], Lead(0.4_ohm));
  EXPECT_EQ(cell.setup.instrument, (Instrument{ReadingUnit::Scaled, 2, 4, 25, "kN", 5.0_V, {}}));
}

// What version 1 calculated with although no file said so. The numbers stand here as they were when
// version 2 came: should a default change later, files of version 1 must not.
TEST(ReadDocument, GivesTheFirstVersionWhatItTookForGranted) {
  const auto document = readDocument(fileText("version1.bridgecal"));
  ASSERT_TRUE(document) << document.error().text();
  const Channel& spar = *document->channels[0];
  for (const core::Setup* setup : {&spar.setup, &*spar.checks[0].closedWith, &document->channels[1]->setup}) {
    const Gauge& gauge = setup->bridge.gauge;
    EXPECT_EQ(gauge.factorCoefficient, 0);
    EXPECT_EQ(gauge.factorAt, 23.0_degC);
    EXPECT_EQ(gauge.installed, 23.0_degC);
    EXPECT_EQ(gauge.grid, (Grid{{}, HeatSink::Good, HeatDemand::StaticModerate}));
    EXPECT_EQ(setup->bridge.leadWarming, 0.0_K);
    for (const Leak& leak : setup->bridge.leaks) EXPECT_EQ(leak, (Leak{{}, {}, 0.5}));
    EXPECT_FALSE(setup->instrument.current);
    EXPECT_TRUE(setup->instrument.ratiometric);
    EXPECT_EQ(setup->instrument.linearisation, Linearisation::None);
    EXPECT_EQ(setup->instrument.balance, (Balance{BalanceKind::None, 10.0_kohm, 100.0_kohm, 0.5}));
    EXPECT_EQ(setup->instrument.grounding, Grounding::Floating);
    for (const Shunt& shunt : setup->shunts) EXPECT_EQ(shunt.contact, 0.0_ohm);
    EXPECT_EQ(setup->decision, (Decision{DecisionRule::Simple, 0.9545, 1, 0.95, 1.0 / 3.0}));
    EXPECT_TRUE(setup->uncertainties.stated.empty());
    EXPECT_TRUE(setup->uncertainties.groups.empty());
  }
}

// Written by hand when version 2 was fixed; never change it, and never let it stop opening.
TEST(ReadDocument, OpensTheBridgeAndInstrumentOfTheSecondVersionForever) {
  const auto document = readDocument(fileText("version2.bridgecal"));
  ASSERT_TRUE(document) << document.error().text();
  const core::Setup& setup = document->channels[0]->setup;
  const Grid grid{Area(1.2e-5), HeatSink::Fair, HeatDemand::StaticHigh};
  EXPECT_EQ(setup.bridge.gauge, (Gauge{350.0_ohm, 2.05, 0.3, 1e-4, 24.0_degC, Temperature(-15), grid}));
  EXPECT_EQ(setup.bridge.leadWarming, 12.5_K);
  EXPECT_EQ(
      setup.bridge.leaks,
      (std::array<Leak, 4>{{{50.0_Mohm, 20.0_Mohm, 0.25}, {}, {{}, {}, 0.75}, {{}, Resistance(1e9), 0.5}}}));
  EXPECT_EQ(setup.instrument, (Instrument{ReadingUnit::MicrometrePerMetre,
                                          2,
                                          1,
                                          1,
                                          "kN",
                                          2.5_V,
                                          Resistance(1e9),
                                          {},
                                          false,
                                          Linearisation::BeforeZero,
                                          {BalanceKind::Parallel, 20.0_kohm, 75.0_kohm, 0.625},
                                          Grounding::PMinus}));
  EXPECT_EQ(
      setup.shunts,
      (std::vector<Shunt>{{"R1 on arm 1", 174.65_kohm, Node::Arm1Begin, Node::Arm1End, 0.5_ohm, 0.125_ohm},
                          {"R1 on arm 2", 174.65_kohm, Node::SMinus, Node::PMinus, 0.0_ohm, 0.25_ohm}}));
  EXPECT_EQ(document->channels[1]->setup.instrument.current, (CurrentSource{8.0_mA, 350.5_ohm}));
  EXPECT_EQ(document->channels[1]->setup.bridge.leaks, (std::array<Leak, 4>{}));
}

TEST(ReadDocument, OpensWhatTheSecondVersionSaysOfUncertaintiesForever) {
  const auto document = readDocument(fileText("version2.bridgecal"));
  ASSERT_TRUE(document) << document.error().text();
  const core::Setup& setup = document->channels[0]->setup;
  EXPECT_EQ(setup.decision, (Decision{DecisionRule::Guarded, 0.99, 0.75, 0.9, 0.25}));
  constexpr auto rectangular = Distribution::Rectangular;
  const Uncertainty box{Statement::Expanded, 1e-4, true, 2.5, rectangular, 30, "box 7"};
  const Uncertainty leak{Statement::Standard, 0.2, true, 2, rectangular, {}, ""};
  const Uncertainty contact{Statement::Tolerance, 0.1, false, 3, Distribution::Normal, {}, ""};
  const auto within = [](double amount, bool relative, std::string group = "",
                         Distribution distribution = Distribution::Rectangular) {
    return Uncertainty{Statement::Tolerance, amount, relative, 2, distribution, {}, std::move(group)};
  };
  const std::map<Input, Uncertainty> stated = {
      {{InputKind::Arm, 0}, within(0.35, false, "", Distribution::Triangular)},
      {{InputKind::Arm, 3}, within(0.001, true, "completion")},
      {{InputKind::Lead, static_cast<std::size_t>(LeadRole::Return)},
       {Statement::Standard, 0.02, false, 2, rectangular, {}, "cable"}},
      {{InputKind::LeadTemperature, 0}, within(5, false, "", Distribution::Arcsine)},
      {{InputKind::Shunt, 0}, box},
      {{InputKind::Shunt, 1}, box},
      {{InputKind::ShuntWires, 1}, within(0.05, false)},
      {{InputKind::ShuntContact, 0}, contact},
      {{InputKind::LeakAcross, 0}, leak},
      {{InputKind::LeakToStructure, 3}, leak},
      {{InputKind::GaugeFactor, 0}, within(0.01, true)},
      {{InputKind::Rounding, 0}, within(0.5, false)},
      {{InputKind::Rounding, 1}, within(0.05, false)},
  };
  EXPECT_EQ(setup.uncertainties.stated, stated);
  EXPECT_EQ(setup.uncertainties.groups, (std::map<std::string, double>{{"box 7", 0.8}, {"not used", -0.5}}));
  core::Setup frozen = setup;
  frozen.sequence[1].hold = 1.0_s;
  EXPECT_EQ(*document->channels[0]->checks[0].closedWith, frozen);
}

struct Damage {
  const char* anchor;
  const char* from;
  const char* to;
  const char* path;  ///< expected after the line
  const char* what;  ///< expected in the sentence
  const char* line;  ///< text on the line that must be named
};

const Damage damages[] = {
    {"TP-01", "\"note\"", "\"remark\"", "channels[0].remark", "“remark” is not known",
     "\"remark\": \"spar cap\""},
    {"", "\"site\": \"Alder Fen Test Hall\",", "", "", "“site” is missing", "{"},
    {"", "\"site\"", "\"title\"", "title", "“title” stands here twice", "\"Alder Fen Test Hall\""},
    {"", "2.05", "\"2.05\"", "channels[0].setup.bridge.gauge.factor", "a text where a number", "\"gauge\""},
    {"", "2.05", "null", "channels[0].setup.bridge.gauge.factor", "nothing (null) where a number",
     "\"gauge\""},
    {"", "2.05", "1e999", "channels[0].setup.bridge.gauge.factor", "too large", "\"gauge\""},
    {"", "2.05", "1e-999", "channels[0].setup.bridge.gauge.factor", "too small", "\"gauge\""},
    {"", "2.05", "NaN", "channels[0].setup.bridge.gauge.factor", "rules of JSON", "\"gauge\""},
    {"", "2.05", "0x2", "channels[0].setup.bridge.gauge.factor", "rules of JSON", "\"gauge\""},
    {"", "\"quarter_three_wire\"", "\"quarter\"", "channels[0].setup.bridge.type", "bridge type “quarter”",
     "\"type\""},
    {"", ", 350]", "]", "channels[0].setup.bridge.arms_ohm", "four arms", "\"arms_ohm\""},
    {"", ", 350]", ", 350, 350]", "channels[0].setup.bridge.arms_ohm", "four arms", "\"arms_ohm\""},
    {"", "[350.2, ", "[true, ", "channels[0].setup.bridge.arms_ohm[0]", "a yes or no where a number",
     "\"arms_ohm\""},
    {"", "\"P+\": {\"ohm\": 1.25},", "", "channels[0].setup.bridge.leads", "“P+” is missing", "\"leads\""},
    {"", "\"P+\": {\"ohm\": 1.25}", "\"P+\": {}", "channels[0].setup.bridge.leads.P+",
     "“length_m” is missing", "\"P+\""},
    {"", "{\"ohm\": 1.25}", "{\"ohm\": 1.25, \"length_m\": 2}", "channels[0].setup.bridge.leads.P+",
     "a resistance and a wire", "\"P+\""},
    {"", "\"P+\": {", "\"Q+\": {", "channels[0].setup.bridge.leads.Q+", "“Q+” is not known", "\"Q+\""},
    {"", "\"six_wire\": false", "\"six_wire\": 0", "channels[0].setup.bridge.six_wire",
     "a number where true or false", "\"six_wire\""},
    {"", "\"um_per_m\"", "\"furlong\"", "channels[0].setup.instrument.unit", "unit “furlong”", "\"unit\""},
    {"", "\"S-\", \"to\"", "\"S*\", \"to\"", "channels[0].setup.shunts[1].from", "place named “S*”",
     "\"S*\""},
    {"", "\"name\": \"R1 on arm 2\"", "\"name\": \"R1 on arm 1\"", "channels[0].setup.shunts[1].name",
     "another shunt has the name “R1 on arm 1”", "\"from\": \"S-\""},
    {"", "[\"R1 on arm 1\"]", "[\"R7\"]", "channels[0].setup.sequence[1].closed[0]", "no shunt named “R7”",
     "[\"R7\"]"},
    {"", "[\"R1 on arm 1\"]", "[0]", "channels[0].setup.sequence[1].closed[0]", "a number where a text",
     "\"compression\""},
    {"", "[\"R1 on arm 1\", \"R1 on arm 2\"]", "[\"R1 on arm 1\", \"R1 on arm 1\"]",
     "channels[0].setup.sequence[2].closed", "named twice", "\"both\""},
    {"", "\"hold_s\": 2}", "\"hold_s\": [2]}", "channels[0].setup.sequence[0].hold_s",
     "a list where a number", "\"zero\""},
    {"", "e3b0", "E3B0", "channels[0].checks[0].recording.sha256", "not a SHA-256", "\"sha256\""},
    {"", "18446744073709551615", "-1", "channels[0].checks[0].recording.size_bytes", "whole number",
     "\"size_bytes\""},
    {"", "18446744073709551615", "1.5", "channels[0].checks[0].recording.size_bytes", "whole number",
     "\"size_bytes\""},
    {"", "18446744073709551615", "18446744073709551616", "channels[0].checks[0].recording.size_bytes",
     "whole number", "\"size_bytes\""},
    {"", "{\"mean\": -1019.75},", "null, null,", "channels[0].checks[0].readings", "4 readings for 3 steps",
     "\"readings\""},
    {"", "\"readings\": []", "\"readings\": [null, null, null, null]", "channels[0].checks[1].readings",
     "4 readings for 3 steps", "[null, null, null, null]"},
    {"", "\"mean\": -1019.75", "\"man\": -1019.75", "channels[0].checks[0].readings[1].man",
     "“man” is not known", "\"man\""},
    {"", "\"name\": \"post-test\",", "\"name\": \"pre-test\" ,", "channels[0].checks[1].name",
     "another check has the name", "\"pre-test\" ,"},
    {"", "\"LC-1\",", "\"TP-01\" ,", "channels[1].name", "another channel has the name “TP-01”",
     "\"TP-01\" ,"},
    {"closed_with", "2.05", "\"x\"", "channels[0].checks[0].closed_with.bridge.gauge.factor", "a text where",
     "\"factor\": \"x\""},
    {"", "\"channels\": [", "\"channels\": {}, \"more\": [", "more", "“more” is not known", "\"more\""},
};

// Keys of version 2 do not belong in a file of version 1, where they would be taken for something else or
// quietly replaced.
const Damage laterKeys[] = {
    {"", "\"poisson_ratio\": 0.3", "\"poisson_ratio\": 0.3, \"grid\": {}",
     "channels[0].setup.bridge.gauge.grid", "“grid” is not known in a file of version 1", "\"grid\""},
    {"", "\"six_wire\": false", "\"six_wire\": false, \"leaks\": []", "channels[0].setup.bridge.leaks",
     "“leaks” is not known in a file of version 1", "\"leaks\""},
    {"", "\"excitation_V\"", "\"current_source\": 0, \"excitation_V\"",
     "channels[0].setup.instrument.current_source", "“current_source” is not known", "\"current_source\""},
    {"", "\"wires_ohm\": 0}", "\"wires_ohm\": 0, \"contact_ohm\": 0}",
     "channels[0].setup.shunts[1].contact_ohm", "“contact_ohm” is not known", "\"contact_ohm\""},
    {"closed_with", "\"zero_return\": 0.005}", "\"zero_return\": 0.005}, \"decision\": {}",
     "channels[0].checks[0].closed_with.decision", "“decision” is not known", "\"decision\""},
};

const Damage damagesOfVersion2[] = {
    {"", ", \"installed_degC\": -15", "", "channels[0].setup.bridge.gauge", "“installed_degC” is missing",
     "\"gauge\""},
    {"", "1.2e-05", "\"small\"", "channels[0].setup.bridge.gauge.grid.area_m2", "a text where a number",
     "\"grid\""},
    {"", "\"fair\"", "\"middling\"", "channels[0].setup.bridge.gauge.grid.heat_sink", "heat sink “middling”",
     "\"grid\""},
    {"", "\"static_high\"", "\"high\"", "channels[0].setup.bridge.gauge.grid.demand", "demand “high”",
     "\"grid\""},
    {"", "\"lead_warming_K\": 12.5,", "", "channels[0].setup.bridge", "“lead_warming_K” is missing",
     "\"bridge\""},
    {"", "null,\n", "\n", "channels[0].setup.bridge.leaks", "four arms", "\"leaks\""},
    {"", ", \"place\": 0.25", "", "channels[0].setup.bridge.leaks[0]", "“place” is missing",
     "\"across_ohm\""},
    {"", "\"across_ohm\"", "\"along_ohm\"", "channels[0].setup.bridge.leaks[0].along_ohm", "is not known",
     "\"along_ohm\""},
    {"", "\"ratiometric\": false", "\"ratiometric\": 0", "channels[0].setup.instrument.ratiometric",
     "a number where true or false", "\"ratiometric\""},
    {"", "\"before_zero\"", "\"before\"", "channels[0].setup.instrument.linearisation",
     "linearisation “before”", "\"linearisation\""},
    {"", "\"parallel\"", "\"beside\"", "channels[0].setup.instrument.balance.kind", "balance “beside”",
     "\"balance\""},
    {"", ", \"wiper\": 0.625", "", "channels[0].setup.instrument.balance", "“wiper” is missing",
     "\"balance\""},
    {"", "\"grounding\": \"P-\"", "\"grounding\": \"S-\"", "channels[0].setup.instrument.grounding",
     "grounding “S-”", "\"grounding\""},
    {"", ", \"nominal_ohm\": 350.5", "", "channels[1].setup.instrument.current_source",
     "“nominal_ohm” is missing", "\"current_source\""},
    {"", "\"current_source\": {", "\"current_source\": null, \"x\": {", "channels[1].setup.instrument.x",
     "is not known", "\"x\""},
    {"", ", \"contact_ohm\": 0.125", "", "channels[0].setup.shunts[0]", "“contact_ohm” is missing",
     "\"R1 on arm 1\""},
    {"", "\"guarded\"", "\"guarding\"", "channels[0].setup.decision.rule", "decision rule “guarding”",
     "\"decision\""},
    {"", "\"greatest_share\"", "\"share\"", "channels[0].setup.decision.share", "is not known",
     "\"decision\""},
    {"", "\"of\": \"arm\", \"at\": \"1\"", "\"of\": \"arms\", \"at\": \"1\"",
     "channels[0].setup.uncertainties[0].of", "input “arms”", "\"arms\""},
    {"", "\"of\": \"arm\", \"at\": \"1\"", "\"of\": \"arm\"", "channels[0].setup.uncertainties[0]",
     "“at” is missing", "\"of\": \"arm\","},
    {"", "\"at\": \"4\"", "\"at\": \"5\"", "channels[0].setup.uncertainties[1].at", "no arm “5”", "\"5\""},
    {"", "\"at\": \"4\"", "\"at\": 4", "channels[0].setup.uncertainties[1].at", "a number where a text",
     "\"at\": 4"},
    {"", "\"at\": \"return\"", "\"at\": \"R\"", "channels[0].setup.uncertainties[2].at", "no lead “R”",
     "\"R\""},
    {"", "\"of\": \"lead_temperature\"", "\"of\": \"lead_temperature\", \"at\": \"P+\"",
     "channels[0].setup.uncertainties[3].at", "only one lead_temperature", "\"lead_temperature\""},
    {"", "\"of\": \"shunt\", \"at\": \"R1 on arm 1\"", "\"of\": \"shunt\", \"at\": \"R9\"",
     "channels[0].setup.uncertainties[4].at", "no shunt named “R9”", "\"R9\""},
    {"", "\"of\": \"shunt\", \"at\": \"R1 on arm 2\"", "\"of\": \"shunt\", \"at\":  \"R1 on arm 1\"",
     "channels[0].setup.uncertainties[5]", "stated twice", "\"at\":  \"R1"},
    {"", "\"at\": \"zero\"", "\"at\": \"end\"", "channels[0].setup.uncertainties[11].at", "no reading “end”",
     "\"end\""},
    {"", "\"at\": \"zero\"", "\"at\":  \"step\"", "channels[0].setup.uncertainties[12]", "stated twice",
     "\"at\": \"step\""},
    {"", "\"statement\": \"tolerance\"", "\"statement\": \"guess\"",
     "channels[0].setup.uncertainties[0].statement", "statement “guess”", "\"guess\""},
    {"", "\"triangular\"", "\"square\"", "channels[0].setup.uncertainties[0].distribution",
     "distribution “square”", "\"square\""},
    {"", "\"relative\": false, ", "", "channels[0].setup.uncertainties[0]", "“relative” is missing",
     "\"at\": \"1\""},
    {"", "\"degrees_of_freedom\": 30", "\"degrees_of_freedom\": null",
     "channels[0].setup.uncertainties[4].degrees_of_freedom", "nothing (null)", "null, \"group\""},
    {"", "\"group\": \"box 7\"", "\"groups\": \"box 7\"", "channels[0].setup.uncertainties[4].groups",
     "is not known", "\"groups\""},
    {"", "\"not used\"", "\"box 7\" ", "channels[0].setup.correlation_groups[1].name",
     "another correlation group has the name “box 7”", "\"box 7\" "},
    {"", "\"coefficient\": 0.8", "\"factor\": 0.8", "channels[0].setup.correlation_groups[0].factor",
     "is not known", "\"factor\": 0.8"},
    {"closed_with", "\"at\": \"4\"", "\"at\": \"6\"", "channels[0].checks[0].closed_with.uncertainties[1].at",
     "no arm “6”", "\"6\""},
};

void expectNamed(const std::string& good, std::span<const Damage> all) {
  for (const Damage& d : all) {
    const std::string text = damaged(good, d.anchor, d.from, d.to);
    const auto document = readDocument(text);
    ASSERT_FALSE(document) << d.from << " -> " << d.to;
    const Error& error = document.error();
    std::string where = "line " + std::to_string(lineOf(text, d.line));
    if (*d.path) where += std::string(", ") + d.path;
    EXPECT_EQ(error.where, where) << d.from << " -> " << d.to << ": " << error.text();
    EXPECT_NE(error.what.find(d.what), std::string::npos) << error.text();
    EXPECT_FALSE(error.mend.empty()) << error.text();
  }
}

TEST(ReadDocument, NamesLineAndPathOfEachDamage) { expectNamed(fileText("version1.bridgecal"), damages); }

TEST(ReadDocument, NamesLineAndPathOfKeysThatCameAfterTheFileVersion) {
  expectNamed(fileText("version1.bridgecal"), laterKeys);
}

TEST(ReadDocument, NamesLineAndPathOfEachDamageInTheSecondVersion) {
  expectNamed(fileText("version2.bridgecal"), damagesOfVersion2);
}

TEST(ReadDocument, DoesNotLetASmallOldFileGrowWithoutBound) {
  // 8 values come to each empty set-up, 2 million may be added in all.
  std::string text = "{\"format\": \"shuntwright\", \"version\": 1, \"channels\": [";
  for (int k = 0; k < 260'000; ++k) text += "{\"setup\":{}},\n";
  const auto document = readDocument(text + "{}]}");
  ASSERT_FALSE(document);
  // The 250 001st element, on the line of its number.
  EXPECT_EQ(document.error().where, "line 250001, channels[250000].setup");
  EXPECT_NE(document.error().what.find("too many set-ups"), std::string::npos);
}

TEST(ReadDocument, ListsTheWordsThatMayStandInPlaceOfAnUnknownOne) {
  const std::string text = damaged(fileText("version2.bridgecal"), "", "\"fair\"", "\"middling\"");
  EXPECT_EQ(readDocument(text).error().mend, "Use excellent, good, fair, poor or very_poor");
}

TEST(ReadDocument, SaysThatACutFileEndsTooEarlyAndWhere) {
  const std::string text = fileText("version1.bridgecal");
  const std::size_t last = text.find_last_of('}');
  for (std::size_t length = 1; length <= last; ++length) {
    const std::string cut = text.substr(0, length);
    const auto document = readDocument(cut);
    ASSERT_FALSE(document) << length;
    ASSERT_NE(document.error().what.find("ends too early"), std::string::npos)
        << length << " " << document.error().text() << "\n"
        << cut.substr(std::max<std::size_t>(length, 30) - 30);
    const std::string visible = cut.substr(0, cut.find_last_not_of('\n') + 1);
    const auto line = 1 + std::count(visible.begin(), visible.end(), '\n');
    const std::string where = "line " + std::to_string(line);
    ASSERT_TRUE(document.error().where == where || document.error().where.starts_with(where + ","))
        << document.error().text();
  }
}

TEST(ReadDocument, RefusesWhatIsNoDocument) {
  const auto what = [](const std::string& text) {
    const auto document = readDocument(text);
    return document ? std::string("taken") : document.error().text();
  };
  EXPECT_NE(what("").find("the file: it is empty"), std::string::npos);
  EXPECT_NE(what("").find("the original or a backup"), std::string::npos);  // nothing else is ever written
  EXPECT_NE(what(" \n\t ").find("the file: it is empty"), std::string::npos);
  for (const char* text : {"\x7F"
                           "ELF\x02\x01",
                           "time;TP-01\n0;1\n", "[]", "42", "null", "\"text\"", "{}", "{\"format\": 1}",
                           "{\"format\": \"other\", \"version\": 1}", "\xEF\xBB\xBF[]"})
    EXPECT_NE(what(text).find("not a Shuntwright document"), std::string::npos) << text << ": " << what(text);
  EXPECT_NE(what(std::string("{\0}", 3)).find("rules of JSON"), std::string::npos);
  EXPECT_NE(what("{\"format\": \"shuntwright\"}").find("which version"), std::string::npos);
  EXPECT_NE(what("{\"format\": \"shuntwright\", \"version\": \"1\"}").find("which version"),
            std::string::npos);
  EXPECT_NE(what("{\"format\": \"shuntwright\", \"version\": 0}").find("which version"), std::string::npos);
  EXPECT_NE(what(fileText("version1.bridgecal") + "{}").find("text after the end"), std::string::npos);
  EXPECT_NE(what("{\"a\": \"\xFF\", \"b\": 1}").find("line 1: the text is not UTF-8"), std::string::npos);
}

TEST(ReadDocument, NamesTheVersionThatANewerFileNeeds) {
  const auto document =
      readDocument("{\"format\": \"shuntwright\", \"version\": 7, \"rooms\": {\"unknown\": []}}");
  ASSERT_FALSE(document);
  EXPECT_NE(document.error().what.find("file version 7"), std::string::npos) << document.error().text();
  EXPECT_NE(document.error().mend.find("reads file version 7"), std::string::npos);
}

TEST(ReadDocument, TakesOtherSpellingsOfTheSameJson) {
  std::string text = fileText("version1.bridgecal");
  const auto plain = readDocument(text);
  ASSERT_TRUE(plain);
  text = damaged(text, "", "174650", "1.7465E+5");
  text = damaged(text, "", "\"spar cap\"", "\"sp\\u0061r cap\"");
  std::string windows = "\xEF\xBB\xBF";
  for (const char c : text) windows += c == '\n' ? std::string("\r\n") : std::string(1, c);
  const auto other = readDocument(windows);
  ASSERT_TRUE(other) << other.error().text();
  ASSERT_EQ(other->channels.size(), plain->channels.size());
  for (std::size_t k = 0; k < plain->channels.size(); ++k) {
    const Channel& a = *plain->channels[k];
    const Channel& b = *other->channels[k];
    EXPECT_EQ(a.setup, b.setup);
    EXPECT_EQ(a.note, b.note);
  }
}

TEST(ReadDocument, OpensWhatCannotBeCalculated) {
  const std::string text = damaged(fileText("version1.bridgecal"), "", "[350.2, ", "[0, ");
  const auto document = readDocument(text);
  ASSERT_TRUE(document) << document.error().text();
  EXPECT_FALSE(checkBridge(document->channels[0]->setup.bridge, document->channels[0]->setup.instrument));
}

TEST(ReadDocument, TakesUncertaintiesThatMakeNoSense) {
  std::string text = fileText("version2.bridgecal");
  text = damaged(text, "", "\"amount\": 0.35", "\"amount\": -0.35");
  text = damaged(text, "", "\"coverage_factor\": 2,", "\"coverage_factor\": 0,");
  text = damaged(text, "", "\"coefficient\": 0.8", "\"coefficient\": 3");
  const auto document = readDocument(text);
  ASSERT_TRUE(document) << document.error().text();
  const Uncertainties& read = document->channels[0]->setup.uncertainties;
  EXPECT_FALSE(checkUncertainty(read.stated.at({InputKind::Arm, 0}), "arm 1"));
  EXPECT_EQ(read.groups.at("box 7"), 3);
}

/// Changes each byte of `good` to `tries` others. Under the sanitizers this is a small fuzz run; here it
/// must only end with a document or a reason.
void expectSurvival(const std::string& good, std::size_t tries) {
  constexpr std::array<char, 5> others = {'\0', '"', '}', '9', '\xC3'};
  std::size_t refused = 0;
  for (std::size_t at = 0; at < good.size(); ++at) {
    for (std::size_t k = 0; k < tries; ++k) {
      std::string text = good;
      text[at] = others[(at + k) % others.size()];
      const auto document = readDocument(text);
      if (document) continue;
      ++refused;
      ASSERT_FALSE(document.error().what.empty()) << at;
      ASSERT_FALSE(document.error().where.empty()) << at;
    }
  }
  EXPECT_GT(refused, 2 * good.size() * tries / others.size());
}

TEST(ReadDocument, SurvivesAnyChangedByte) { expectSurvival(fileText("version1.bridgecal"), 5); }

TEST(ReadDocument, SurvivesAnyChangedByteOfTheSecondVersion) {
  expectSurvival(fileText("version2.bridgecal"), 1);
}

}  // namespace
