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
            (Instrument{ReadingUnit::MicrometrePerMetre, 2, 1, 1, "kN", 2.5_V, {}, Resistance(1e9)}));
  EXPECT_EQ(spar.setup.shunts,
            (std::vector<Shunt>{{"R1 on arm 1", 174.65_kohm, Node::Arm1Begin, Node::Arm1End, 0.5_ohm},
                                {"R1 on arm 2", 174.65_kohm, Node::SMinus, Node::PMinus, 0.0_ohm}}));
  EXPECT_EQ(spar.setup.sequence, (std::vector<Step>{{"zero", {}, 2.0_s, 0.0_s},
                                                    {"compression", {0}, 2.5_s, 0.0_s},
                                                    {"both", {0, 1}, 2.0_s, 0.0_s}}));
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
  EXPECT_EQ(cell.setup.instrument, (Instrument{ReadingUnit::Scaled, 2, 4, 25, "kN", 5.0_V}));
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

// What versions 1 and 2 took for granted when version 3 came; the same holds of it. A step was held and
// averaged from its begin: with any time to settle a check of an old file would last longer than before.
TEST(ReadDocument, GivesTheSecondVersionWhatItTookForGranted) {
  for (const char* name : {"version1.bridgecal", "version2.bridgecal"}) {
    const auto document = readDocument(fileText(name));
    ASSERT_TRUE(document) << document.error().text();
    EXPECT_EQ(document->stock, noStock());
    const Channel& spar = *document->channels[0];
    for (const auto& channel : document->channels) EXPECT_TRUE(channel->ohmReadings.empty());
    for (const auto& reading : spar.checks[0].readings) {
      if (reading) {
        EXPECT_EQ(reading->note, "");
      }
    }
    for (const core::Setup* setup :
         {&spar.setup, &*spar.checks[0].closedWith, &document->channels[1]->setup}) {
      EXPECT_EQ(setup->instrument.range, std::nullopt);
      EXPECT_EQ(setup->acquisition, (Acquisition{{}, {FilterKind::None, 2, 10.0_Hz, 0.1_s}, 50.0_Hz, 1e-4}));
      EXPECT_TRUE(setup->wiring.pins.empty());
      for (const Shunt& shunt : setup->shunts) {
        EXPECT_EQ(shunt.part, (Part{"", {}, {}}));
        EXPECT_TRUE(shunt.jumpers.empty());
      }
      for (const Step& step : setup->sequence) EXPECT_EQ(step.settle, 0.0_s);
    }
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
                                          {},
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

Date day(int year, unsigned month, unsigned date) {
  return {std::chrono::year(year), std::chrono::month(month), std::chrono::day(date)};
}

// Written by hand when version 3 was fixed; never change it, and never let it stop opening.
TEST(ReadDocument, OpensTheStockOfTheThirdVersionForever) {
  const auto document = readDocument(fileText("version3.bridgecal"));
  ASSERT_TRUE(document) << document.error().text();
  const Resistor measured{"AF-0101",        174.65_kohm, 1e-4, Certificate{174652.5_ohm, 8.75_ohm, 2},
                          day(2027, 3, 31), Power(0.25), "",   "\"new\" in 2025, 175 kΩ"};
  const Resistor plain{"AF-0102", 59.0_kohm, 0.001, {}, {}, {}, "amplifier 3", ""};
  const DecadeBox rated{
      "AF-0301",      {{10.0_kohm, 10}, {1.0_kohm, 9}}, 0.025_ohm, 0.001, day(2024, 2, 29), Power(0.5),
      "no 100 Ω dial"};
  const DecadeBox bare{"AF-0302", {{1.0_kohm, 10}}, 0.0_ohm, 0.01, {}, {}, ""};
  EXPECT_EQ(*document->stock,
            (Stock{{measured, plain}, {rated, bare}, {{ESeries::E96, 10.0_kohm, 1.0_Mohm, 0.001}}}));
}

TEST(ReadDocument, OpensTheWiringOfTheThirdVersionForever) {
  const auto document = readDocument(fileText("version3.bridgecal"));
  ASSERT_TRUE(document) << document.error().text();
  const core::Setup& setup = document->channels[0]->setup;
  EXPECT_EQ(setup.wiring.pins, (std::vector<Pin>{{{"J1", "A"}, Node::Arm1Begin},
                                                 {{"J1", "B"}, {}},
                                                 {{"", "7"}, ResistorEnd{"AF-0101", 1}},
                                                 {{"", "8"}, ResistorEnd{"AF-0101", 2}}}));
  EXPECT_EQ(setup.shunts[0].part, (Part{"AF-0101", day(2027, 3, 31), Power(0.25)}));
  EXPECT_EQ(setup.shunts[0].jumpers,
            (std::vector<Jumper>{{{"", "7"}, {"J1", "A"}}, {{"", "8"}, {"J1", "B"}}}));
  EXPECT_EQ(setup.shunts[1].part, (Part{"AF-0102", {}, {}}));
  EXPECT_TRUE(setup.shunts[1].jumpers.empty());
  const ResistorEnd one{"AF-0101", 1}, two{"AF-0101", 2};
  EXPECT_EQ(document->channels[0]->ohmReadings,
            (std::vector<OhmReading>{{{"", 0}, Node::PPlus, Node::SMinus, 352.5_ohm},
                                     {{"R1 on arm 1", 1}, one, Node::Arm1Begin, 0.125_ohm},
                                     {{"R1 on arm 1", 1}, two, one, {}}}));
  EXPECT_TRUE(document->channels[1]->ohmReadings.empty());
}

TEST(ReadDocument, OpensTheAcquisitionOfTheThirdVersionForever) {
  const auto document = readDocument(fileText("version3.bridgecal"));
  ASSERT_TRUE(document) << document.error().text();
  const Channel& spar = *document->channels[0];
  const core::Setup& setup = spar.setup;
  EXPECT_EQ(setup.acquisition,
            (Acquisition{100.0_Hz, {FilterKind::Bessel, 4, 12.5_Hz, 0.25_s}, 60.0_Hz, 1e-3}));
  EXPECT_EQ(document->channels[1]->setup.acquisition, (Acquisition{{}, {}, {}, 1e-4}));
  EXPECT_EQ(setup.instrument.range, 12.5_mV_per_V);
  EXPECT_EQ(document->channels[1]->setup.instrument.range, std::nullopt);
  EXPECT_EQ(setup.sequence, (std::vector<Step>{{"zero", {}, 2.0_s, 0.0_s},
                                               {"compression", {0}, 2.5_s, 0.75_s},
                                               {"both", {0, 1}, 2.0_s, 0.75_s}}));
  EXPECT_EQ(spar.checks[0].readings[0]->note, "");
  EXPECT_EQ(spar.checks[0].readings[1]->note, "fan on");
  core::Setup frozen = setup;
  frozen.sequence[1].hold = 1.0_s;
  EXPECT_EQ(*spar.checks[0].closedWith, frozen);
}

// What version 3 took for granted when version 4 came; the same holds of earlier ones.
TEST(ReadDocument, GivesTheThirdVersionWhatItTookForGranted) {
  for (const char* name : {"version1.bridgecal", "version2.bridgecal", "version3.bridgecal"}) {
    const auto document = readDocument(fileText(name));
    ASSERT_TRUE(document) << document.error().text();
    for (const auto& channel : document->channels) EXPECT_EQ(channel->recordingColumn, "");
    const core::Check& check = document->channels[0]->checks[0];
    EXPECT_EQ(check.recording->readAs, "");
    EXPECT_TRUE(check.otherLevels.empty());
  }
}

// Written by hand when version 4 was fixed; never change it, and never let it stop opening.
TEST(ReadDocument, OpensTheRecordingsOfTheFourthVersionForever) {
  const auto document = readDocument(fileText("version4.bridgecal"));
  ASSERT_TRUE(document) << document.error().text();
  const Channel& spar = *document->channels[0];
  EXPECT_EQ(spar.recordingColumn, "spar cap");
  EXPECT_EQ(document->channels[1]->recordingColumn, "");
  const core::Check& check = spar.checks[0];
  EXPECT_EQ(check.recording->column, "spar cap");
  EXPECT_EQ(check.recording->readAs, "separator=semicolon decimal=comma");
  EXPECT_EQ(check.otherLevels,
            (std::vector<core::Measured>{{core::Reading(0.25), {}, -0.5_s, 0.25_s},
                                         {core::Reading(-1018.5), core::Reading(0.02), 8.0_s, 8.5_s}}));
}

// What version 4 took for granted when version 5 came; the same holds of earlier ones. With a limit on any
// figure of merit an old check could get another verdict.
TEST(ReadDocument, GivesTheFourthVersionWhatItTookForGranted) {
  for (const char* name :
       {"version1.bridgecal", "version2.bridgecal", "version3.bridgecal", "version4.bridgecal"}) {
    const auto document = readDocument(fileText(name));
    ASSERT_TRUE(document) << document.error().text();
    const Channel& spar = *document->channels[0];
    for (const core::Setup* setup :
         {&spar.setup, &*spar.checks[0].closedWith, &document->channels[1]->setup}) {
      EXPECT_TRUE(setup->limits.merits.empty()) << name;
      EXPECT_EQ(setup->limits.linearityFrom, ReferenceLine::LeastSquares) << name;
    }
  }
}

// Written by hand when version 5 was fixed; never change it, and never let it stop opening.
TEST(ReadDocument, OpensTheLimitsOfTheFifthVersionForever) {
  const auto document = readDocument(fileText("version5.bridgecal"));
  ASSERT_TRUE(document) << document.error().text();
  const Channel& spar = *document->channels[0];
  EXPECT_EQ(spar.setup.limits, (Limits{0.01,
                                       Reading(2),
                                       0.005,
                                       0.01,
                                       0.005,
                                       {{MeritKind::Nonlinearity, 0.0025},
                                        {MeritKind::Hysteresis, 0.002},
                                        {MeritKind::Repeatability, 0.001},
                                        {MeritKind::ZeroShift, 0.004},
                                        {MeritKind::Symmetry, 0.01},
                                        {MeritKind::CombinedError, 0.005},
                                        {MeritKind::SpanRatio, 0.015}},
                                       ReferenceLine::Minimax}));
  EXPECT_EQ(spar.checks[0].closedWith->limits,
            (Limits{0.01,
                    Reading(2),
                    0.005,
                    0.01,
                    0.005,
                    {{MeritKind::Nonlinearity, 0.005}, {MeritKind::SpanRatio, 0.02}},
                    ReferenceLine::EndPoint}));
  EXPECT_EQ(document->channels[1]->setup.limits, (Limits{0.01, Reading(0), 0.005}));
}

// What version 5 took for granted when version 6 came; the same holds of earlier ones.
TEST(ReadDocument, ConnectsBridgesOfTheFifthVersionAsTheirTemplateSays) {
  for (const char* name : {"version1.bridgecal", "version2.bridgecal", "version3.bridgecal",
                           "version4.bridgecal", "version5.bridgecal"}) {
    const auto document = readDocument(fileText(name));
    ASSERT_TRUE(document) << document.error().text();
    const Channel& spar = *document->channels[0];
    for (const core::Setup* setup : {&spar.setup, &*spar.checks[0].closedWith, &document->channels[1]->setup})
      EXPECT_EQ(setup->bridge.hookup, Hookup{}) << name;
  }
}

// Written by hand when version 6 was fixed; never change it, and never let it stop opening.
TEST(ReadDocument, OpensTheHookupsOfTheSixthVersionForever) {
  using enum LeadRole;
  const auto document = readDocument(fileText("version6.bridgecal"));
  ASSERT_TRUE(document) << document.error().text();
  Hookup spar{.signalReversed = true, .gaugesReversed = true};
  spar.broken[static_cast<std::size_t>(SenseMinus)] = true;
  spar.exchanged = {{SignalMinus, Return}, {ExcitationPlus, SignalPlus}};
  spar.touching = {{Return, SignalMinus}};
  EXPECT_EQ(document->channels[0]->setup.bridge.hookup, spar);
  EXPECT_EQ(
      document->channels[0]->checks[0].closedWith->bridge.hookup,
      (Hookup{.excitationReversed = true, .touching = {{SignalMinus, Return}, {ExcitationPlus, SensePlus}}}));
  EXPECT_EQ(document->channels[1]->setup.bridge.hookup,
            (Hookup{.excitationReversed = true,
                    .exchanged = {{ExcitationPlus, ExcitationMinus}, {SensePlus, SenseMinus}}}));
}

// What version 6 took for granted when version 7 came: between two checks as much may change as one reading
// may be off, and zero as much as it may return beside.
TEST(ReadDocument, LetsAsMuchChangeInTheSixthVersionAsAReadingMayBeOff) {
  for (const char* name : {"version1.bridgecal", "version2.bridgecal", "version3.bridgecal",
                           "version4.bridgecal", "version5.bridgecal", "version6.bridgecal"}) {
    std::string text = fileText(name);
    text = damaged(text, "closed_with", "\"relative\": 0.01", "\"relative\": 0.0325");
    text = damaged(text, "closed_with", "\"zero_return\": 0.005", "\"zero_return\": 0.0125");
    const auto document = readDocument(text);
    ASSERT_TRUE(document) << name << document.error().text();
    const Channel& spar = *document->channels[0];
    EXPECT_EQ(spar.setup.limits.change, 0.01) << name;
    EXPECT_EQ(spar.setup.limits.zeroChange, 0.005) << name;
    EXPECT_EQ(spar.checks[0].closedWith->limits.change, 0.0325) << name;
    EXPECT_EQ(spar.checks[0].closedWith->limits.zeroChange, 0.0125) << name;
    EXPECT_EQ(spar.setup.identity, Identity{}) << name;
    EXPECT_EQ(spar.checks[0].ambient, Ambient{}) << name;
    EXPECT_TRUE(spar.checks[0].remarks.empty() && spar.group.empty()) << name;
    EXPECT_TRUE(document->signOff.acts.empty() && document->history.empty()) << name;
  }
}

// Written by hand when version 7 was fixed; never change it, and never let it stop opening.
TEST(ReadDocument, OpensTheRecordOfTheSeventhVersionForever) {
  using std::chrono::year;
  const auto document = readDocument(fileText("version7.bridgecal"));
  ASSERT_TRUE(document) << document.error().text();
  EXPECT_EQ(document->stock->resistors[0].certificate->number, "AFC-2025-017");
  const Channel& spar = *document->channels[0];
  EXPECT_EQ(spar.group, "left spar");
  EXPECT_EQ(spar.setup.identity,
            (Identity{"Bridge amplifier BA-4", "4711 input 1", "AFC-2024-102", year(2027) / 1 / 31}));
  EXPECT_EQ(spar.checks[0].closedWith->identity, (Identity{"Bridge amplifier BA-4", "4711 input 2", "", {}}));
  EXPECT_EQ(spar.setup.shunts[0].part.certificate, "AFC-2025-017");
  EXPECT_EQ(spar.setup.shunts[1].part.certificate, "");
  EXPECT_EQ(spar.setup.limits.change, 0.0075);
  EXPECT_EQ(spar.setup.limits.zeroChange, 0.00375);
  EXPECT_EQ(spar.checks[0].ambient, (Ambient{Temperature(21.5), 0.45}));
  EXPECT_EQ(spar.checks[1].ambient, (Ambient{{}, 0.5}));
  EXPECT_EQ(
      spar.checks[0].remarks,
      (std::vector<Remark>{{1, "R. Larch", "2024-05-07T08:15:00Z", "Was the fan on before?", true},
                           {{}, "R. Larch", "2024-05-07T08:20:30Z", "Name the shift\nand its lead", false}}));
  ASSERT_EQ(document->signOff.acts.size(), 3u);
  EXPECT_EQ(document->signOff.acts[1].stage, Stage::Returned);
  EXPECT_EQ(document->signOff.acts[1].remark, "See the remark at step 2");
  ASSERT_EQ(document->history.size(), 2u);
  EXPECT_EQ(document->history[1].changes.size(), 2u);
  EXPECT_EQ(document->history[1].more, 3u);
  EXPECT_EQ(document->history[1].fingerprint, document->signOff.acts[2].fingerprint);
}

TEST(ReadDocument, OpensWithAWrongFingerprintAndWithNone) {
  const std::string good = fileText("version7.bridgecal");
  const std::size_t at = good.rfind("\"fingerprint\"");
  const std::string other = good.substr(0, at) + "\"fingerprint\": \"" + std::string(64, '0') + "\"\n}\n";
  EXPECT_TRUE(readDocument(other));
  EXPECT_TRUE(readDocument(good.substr(0, good.rfind(',', at)) + "\n}\n"));
}

TEST(ReadDocument, TakesAHookupThatSaysNothing) {
  for (const char* nothing : {"{}", "{\"signal_reversed\": false}", "{\"broken\": [], \"touching\": []}"}) {
    const auto document = readDocument(damaged(
        fileText("version6.bridgecal"), "LC-1",
        "{\"excitation_reversed\": true, \"exchanged\": [[\"P+\", \"P-\"], [\"sense+\", \"sense-\"]]}",
        nothing));
    ASSERT_TRUE(document) << document.error().text();
    EXPECT_EQ(document->channels[1]->setup.bridge.hookup, Hookup{});
  }
}

TEST(ReadDocument, TakesLeadsThatAreExchangedAgainAndAgainUpToALimit) {
  const auto read = [](std::size_t times) {
    std::string list = "[[\"P+\", \"P-\"]";
    for (std::size_t k = 1; k < times; ++k) list += ", [\"P+\", \"P-\"]";
    return readDocument(damaged(fileText("version6.bridgecal"), "LC-1",
                                "[[\"P+\", \"P-\"], [\"sense+\", \"sense-\"]]", list + "]"));
  };
  ASSERT_TRUE(read(100)) << read(100).error().text();
  EXPECT_EQ(read(100)->channels[1]->setup.bridge.hookup.exchanged.size(), 100u);
  ASSERT_FALSE(read(101));
  EXPECT_NE(read(101).error().what.find("there are 101 exchanged pairs, more than 100"), std::string::npos);
}

// Whether a limit makes sense is said by the review; a file with one that does not must open for that.
TEST(ReadDocument, TakesLimitsOfFiguresThatMakeNoSense) {
  for (const auto& [text, value] :
       std::map<std::string, double>{{"-0.002", -0.002}, {"2e6", 2e6}, {"0", 0}}) {
    const auto document = readDocument(
        damaged(fileText("version5.bridgecal"), "", "\"hysteresis\": 0.002", "\"hysteresis\": " + text));
    ASSERT_TRUE(document) << document.error().text();
    EXPECT_EQ(document->channels[0]->setup.limits.merits.at(MeritKind::Hysteresis), value);
  }
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

// Keys of version 3 in older files.
const Damage laterThan2[] = {
    {"", "\"input_resistance_ohm\"", "\"range_V_per_V\": 0.01, \"input_resistance_ohm\"",
     "channels[0].setup.instrument.range_V_per_V", "“range_V_per_V” is not known in a file of version 2",
     "\"range_V_per_V\""},
    {"", "\"contact_ohm\": 0.25", "\"contact_ohm\": 0.25, \"part\": {\"id\": \"\"}",
     "channels[0].setup.shunts[1].part", "“part” is not known", "\"part\""},
    {"", "\"contact_ohm\": 0.125", "\"contact_ohm\": 0.125, \"jumpers\": []",
     "channels[0].setup.shunts[0].jumpers", "“jumpers” is not known", "\"jumpers\""},
    {"", "\"hold_s\": 2.5", "\"hold_s\": 2.5, \"settle_s\": 1", "channels[0].setup.sequence[1].settle_s",
     "“settle_s” is not known", "\"settle_s\""},
    {"", "\"mean\": -1019.75", "\"mean\": -1019.75, \"note\": \"\"", "channels[0].checks[0].readings[1].note",
     "“note” is not known", "-1019.75"},
    {"closed_with", "\"limits\"", "\"pins\": [], \"limits\"", "channels[0].checks[0].closed_with.pins",
     "“pins” is not known", "\"pins\""},
    {"", "\"checks\"", "\"ohm_readings\": [], \"checks\"", "channels[0].ohm_readings",
     "“ohm_readings” is not known", "\"ohm_readings\""},
    {"", "\"channels\"", "\"stock\": {}, \"channels\"", "stock", "“stock” is not known", "\"stock\""},
};

const Damage damagesOfVersion3[] = {
    {"", "\"boxes\"", "\"box\"", "stock.box", "“box” is not known", "\"box\""},
    {"", "\"id\": \"AF-0102\"", "\"id\":  \"AF-0101\"", "stock.resistors[1].id",
     "another part of the stock has the name “AF-0101”", "\"id\":  \"AF"},
    {"", "\"id\": \"AF-0301\"", "\"id\":  \"AF-0102\"", "stock.boxes[0].id",
     "another part of the stock has the name “AF-0102”", "\"id\":  \"AF"},
    {"", "\"id\": \"AF-0102\"", "\"id\": \"\"", "stock.resistors[1]", "it has no id", "\"id\": \"\""},
    {"", "\"nominal_ohm\": 59000, ", "", "stock.resistors[1]", "“nominal_ohm” is missing", "AF-0102"},
    {"", "\"nominal_ohm\": 59000", "\"nominal_ohm\": 0", "stock.resistors[1]", "", "AF-0102"},
    {"", "\"expanded_ohm\": 8.75", "\"expanded_ohm\": 0", "stock.resistors[0]", "", "\"AF-0101\""},
    {"", "\"value_ohm\": 174652.5", "\"value_ohm\": 174.65", "stock.resistors[0]", "", "\"AF-0101\""},
    {"", "\"expanded_ohm\": 8.75, ", "", "stock.resistors[0].certificate", "“expanded_ohm” is missing",
     "\"AF-0101\""},
    {"", "2027-03-31", "2027-02-29", "stock.resistors[0].due", "“2027-02-29” is not a day", "2027-02-29"},
    {"", "2024-02-29", "29.02.2024", "stock.boxes[0].due", "is not a day", "29.02.2024"},
    {"", "\"rating_W\": 0.25", "\"rating_W\": \"0.25\"", "stock.resistors[0].rating_W",
     "a text where a number", "\"0.25\""},
    {"", "\"positions\": 9", "\"positions\": 1001", "stock.boxes[0].decades[1].positions", "more than 1000",
     "1001"},
    {"", "\"positions\": 9", "\"positions\": 0", "stock.boxes[0]", "", "AF-0301"},
    {"", "\"E96\"", "\"E95\"", "stock.series[0].series", "series “E95”", "\"E95\""},
    {"", "\"to_ohm\": 1e+06", "\"to_ohm\": 100", "stock.series[0]", "", "\"E96\""},
    {"", "\"bessel\"", "\"brick_wall\"", "channels[0].setup.acquisition.filter.kind", "filter “brick_wall”",
     "brick_wall"},
    {"", "\"order\": 4", "\"order\": 4.5", "channels[0].setup.acquisition.filter.order", "whole number",
     "4.5"},
    {"", "\"order\": 4", "\"order\": 4294967300", "channels[0].setup.acquisition.filter.order",
     "more than 1000", "4294967300"},
    {"", ", \"window_s\": 0.25", "", "channels[0].setup.acquisition.filter", "“window_s” is missing",
     "bessel"},
    {"", "\"mains_Hz\": 60", "\"mains_Hz\": null", "channels[0].setup.acquisition.mains_Hz",
     "nothing (null) where a number", "bessel"},
    {"", "\"settled_to\": 0.001", "\"settled\": 0.001", "channels[0].setup.acquisition.settled",
     "is not known", "\"settled\""},
    {"", "0.0125", "\"wide\"", "channels[0].setup.instrument.range_V_per_V", "a text where a number", "wide"},
    {"", "\"node\": \"arm 1 begin\"", "\"node\": \"arm 5 begin\"", "channels[0].setup.pins[0].node",
     "no place named “arm 5 begin”", "arm 5 begin"},
    {"", "\"node\": \"arm 1 begin\"", "\"node\": \"P+\", \"end\": 1", "channels[0].setup.pins[0]",
     "a place and to a resistor", "\"end\""},
    {"", "\"end\": 2", "\"end\": 3", "channels[0].setup.pins[3].end", "two ends", "\"end\": 3"},
    {"", ", \"end\": 2", "", "channels[0].setup.pins[3]", "“end” is missing", "\"8\""},
    {"", "\"resistor\": \"AF-0101\", \"end\": 2", "\"end\": 2", "channels[0].setup.pins[3]",
     "“resistor” is missing", "\"8\""},
    {"\"shunts\"", "2027-03-31", "2027-3-31", "channels[0].setup.shunts[0].part.due", "is not a day",
     "2027-3-31"},
    {"\"shunts\"", "{\"id\": \"AF-0102\"}", "{}", "channels[0].setup.shunts[1].part", "“id” is missing",
     "\"part\": {}"},
    {"\"jumpers\"", "\"pin\": \"A\"", "\"pin\": 7", "channels[0].setup.shunts[0].jumpers[0].to.pin",
     "a number where a text", "\"pin\": 7"},
    {"\"jumpers\"", ", \"to\": {\"connector\": \"J1\", \"pin\": \"B\"}", "",
     "channels[0].setup.shunts[0].jumpers[1]", "“to” is missing", "\"jumpers\""},
    {"", ", \"settle_s\": 0.75", "", "channels[0].setup.sequence[1]", "“settle_s” is missing",
     "\"compression\""},
    {"", "\"fan on\"", "1", "channels[0].checks[0].readings[1].note", "a number where a text", "-1019.75"},
    {"ohm_readings", "\"P+\"", "\"Q+\"", "channels[0].ohm_readings[0].from", "no point named “Q+”", "\"Q+\""},
    {"ohm_readings", "AF-0101 end 1", "AF-0101 end 3", "channels[0].ohm_readings[1].from", "no point named",
     "end 3"},
    {"ohm_readings", "\"jumpers\": 1", "\"jumpers\": 21", "channels[0].ohm_readings[1].jumpers",
     "more than 20", "\"jumpers\": 21"},
    {"ohm_readings", "null", "\"open\"", "channels[0].ohm_readings[2].ohm", "a text where a number",
     "\"open\""},
    {"ohm_readings", ", \"ohm\": null", "", "channels[0].ohm_readings[2]", "“ohm” is missing",
     "\"AF-0101 end 2\""},
    {"ohm_readings", "\"to\": \"arm 1 begin\"", "\"to\": \"AF-0101 end 2\"", "channels[0].ohm_readings[2]",
     "two readings between these points", "\"ohm\": null"},
    {"closed_with", "\"bessel\"", "\"box\"", "channels[0].checks[0].closed_with.acquisition.filter.kind",
     "filter “box”", "\"box\""},
};

// Keys of version 4 in older files.
const Damage laterThan3[] = {
    {"", "\"ohm_readings\"", "\"recording_column\": \"\", \"ohm_readings\"", "channels[0].recording_column",
     "“recording_column” is not known in a file of version 3", "\"recording_column\""},
    {"", "\"readings\"", "\"other_levels\": [], \"readings\"", "channels[0].checks[0].other_levels",
     "“other_levels” is not known", "\"other_levels\""},
    {"", "\"column\": \"TP-01\"", "\"column\": \"TP-01\", \"read_as\": \"\"",
     "channels[0].checks[0].recording.read_as", "“read_as” is not known", "\"read_as\""},
};

const Damage damagesOfVersion4[] = {
    {"", "separator=semicolon", "separator=dots", "channels[0].checks[0].recording.read_as", "separator",
     "separator=dots"},
    {"", ", \"begin_s\": -0.5", "", "channels[0].checks[0].other_levels[0]", "does not say where it lies",
     "\"mean\": 0.25"},
    {"", "\"begin_s\": 8,", "\"begin_s\": -8,", "channels[0].checks[0].other_levels[1]",
     "does not lie behind the level above", "\"begin_s\": -8"},
    {"", "\"end_s\": 8.5", "\"end_s\": 7.5", "channels[0].checks[0].other_levels[1]", "ends before it begins",
     "\"end_s\": 7.5"},
    {"other_levels", "\"mean\": 0.25", "\"means\": 0.25", "channels[0].checks[0].other_levels[0].means",
     "is not known", "\"means\""},
    {"", "\"recording_column\": \"spar cap\"", "\"recording_column\": 3", "channels[0].recording_column",
     "a number where a text", "\"recording_column\": 3"},
};

// Keys of version 5 in older files.
const Damage laterThan4[] = {
    {"", "\"zero_return\": 0.005", "\"zero_return\": 0.005, \"merits\": {}",
     "channels[0].setup.limits.merits", "“merits” is not known in a file of version 4", "\"merits\""},
    {"closed_with", "\"zero_return\": 0.005", "\"zero_return\": 0.005, \"linearity_from\": \"minimax\"",
     "channels[0].checks[0].closed_with.limits.linearity_from", "“linearity_from” is not known",
     "\"linearity_from\""},
};

const Damage damagesOfVersion5[] = {
    {"", ", \"linearity_from\": \"minimax\"", "", "channels[0].setup.limits", "“linearity_from” is missing",
     "\"limits\""},
    {"", "\"minimax\"", "\"best\"", "channels[0].setup.limits.linearity_from", "no reference line “best”",
     "\"best\""},
    {"",
     ", \"merits\": {\"nonlinearity\": 0.0025, \"hysteresis\": 0.002, \"repeatability\": 0.001, "
     "\"zero_shift\": 0.004, \"symmetry\": 0.01, \"combined_error\": 0.005, \"span_ratio\": 0.015}",
     "", "channels[0].setup.limits", "“merits” is missing", "\"limits\""},
    {"", "\"merits\": {\"nonlinearity\": 0.0025, ", "\"merits\": {\"linearity\": 0.0025, ",
     "channels[0].setup.limits.merits.linearity", "“linearity” is not known here", "\"linearity\""},
    {"", "\"merits\": {\"nonlinearity\"", "\"merits\": {\"zero_return\": 0.005, \"nonlinearity\"",
     "channels[0].setup.limits.merits.zero_return", "it is the “zero_return” of the limits",
     "{\"zero_return\""},
    {"", "\"symmetry\": 0.01", "\"symmetry\": \"1 %\"", "channels[0].setup.limits.merits.symmetry",
     "a text where a number", "\"1 %\""},
    {"", "\"symmetry\": 0.01", "\"symmetry\": null", "channels[0].setup.limits.merits.symmetry",
     "nothing (null) where a number", "\"symmetry\": null"},
    {"", "\"symmetry\": 0.01", "\"symmetry\": NaN", "channels[0].setup.limits.merits.symmetry",
     "rules of JSON", "NaN"},
    {"", "\"symmetry\": 0.01", "\"symmetry\": 1e999", "channels[0].setup.limits.merits.symmetry",
     "a number is too large", "1e999"},
    {"closed_with", "\"merits\": {\"nonlinearity\": 0.005, \"span_ratio\": 0.02}", "\"merits\": [0.005]",
     "channels[0].checks[0].closed_with.limits.merits", "a list where a group of keys", "[0.005]"},
};

// A key of version 6 in older files.
const Damage laterThan5[] = {
    {"", "\"lead_warming_K\": 12.5,", "\"lead_warming_K\": 12.5, \"hookup\": {},",
     "channels[0].setup.bridge.hookup", "“hookup” is not known in a file of version 5", "\"hookup\""},
    {"closed_with", "\"lead_warming_K\": 12.5,", "\"lead_warming_K\": 12.5, \"hookup\": {},",
     "channels[0].checks[0].closed_with.bridge.hookup", "“hookup” is not known", "\"hookup\""},
};

const Damage damagesOfVersion6[] = {
    {"", "\"signal_reversed\"", "\"signals_reversed\"", "channels[0].setup.bridge.hookup.signals_reversed",
     "“signals_reversed” is not known here", "signals_reversed"},
    {"", "\"signal_reversed\": true", "\"signal_reversed\": 1",
     "channels[0].setup.bridge.hookup.signal_reversed", "a number where true or false", "signal_reversed"},
    {"", "\"signal_reversed\": true", "\"signal_reversed\": true, \"signal_reversed\": true",
     "channels[0].setup.bridge.hookup.signal_reversed", "“signal_reversed” stands here twice",
     "signal_reversed"},
    {"", "[\"sense-\"]", "[\"sense\"]", "channels[0].setup.bridge.hookup.broken[0]", "no lead “sense”",
     "[\"sense\"]"},
    {"", "[\"sense-\"]", "[\"sense-\", \"P+\", \"sense-\"]", "channels[0].setup.bridge.hookup.broken[2]",
     "“sense-” is broken already", "\"broken\""},
    {"", "[\"sense-\"]", "\"sense-\"", "channels[0].setup.bridge.hookup.broken", "a text where a list",
     "\"broken\""},
    {"", "[\"P+\", \"S+\"]", "[\"P+\", \"arm 1 begin\"]", "channels[0].setup.bridge.hookup.exchanged[1][1]",
     "no lead “arm 1 begin”", "\"exchanged\""},
    {"", "[\"P+\", \"S+\"]", "[\"P+\", \"P+\"]", "channels[0].setup.bridge.hookup.exchanged[1]",
     "it names the lead “P+” twice", "\"exchanged\""},
    {"", "[\"P+\", \"S+\"]", "[\"P+\"]", "channels[0].setup.bridge.hookup.exchanged[1]",
     "does not name two leads", "\"exchanged\""},
    {"", "[\"P+\", \"S+\"]", "[\"P+\", \"S+\", \"S-\"]", "channels[0].setup.bridge.hookup.exchanged[1]",
     "does not name two leads", "\"exchanged\""},
    {"", "[\"P+\", \"S+\"]", "3", "channels[0].setup.bridge.hookup.exchanged[1]", "a number where a list",
     "\"exchanged\""},
    {"", "[[\"return\", \"S-\"]]", "[[\"return\", \"S-\"], [\"S-\", \"return\"]]",
     "channels[0].setup.bridge.hookup.touching[1]", "these two leads touch already", "\"touching\""},
    {"", "[[\"return\", \"S-\"]]", "[[\"return\", \"return\"]]",
     "channels[0].setup.bridge.hookup.touching[0]", "it names the lead “return” twice", "\"touching\""},
    {"LC-1", "{\"excitation_reversed\": true, \"exchanged\": [[\"P+\", \"P-\"], [\"sense+\", \"sense-\"]]}",
     "null", "channels[1].setup.bridge.hookup", "nothing (null) where a group of keys", "\"hookup\": null"},
};

// Keys of version 7 in older files.
const Damage laterThan6[] = {
    {"", "\"site\"", "\"history\": [], \"site\"", "history", "“history” is not known in a file of version 6",
     "\"history\""},
    {"", "\"site\"", "\"sign_off\": [], \"site\"", "sign_off", "“sign_off” is not known", "\"sign_off\""},
    {"", "\"site\"", "\"fingerprint\": \"\", \"site\"", "fingerprint", "“fingerprint” is not known",
     "\"fingerprint\""},
    {"", "\"expanded_ohm\"", "\"number\": \"\", \"expanded_ohm\"", "stock.resistors[0].certificate.number",
     "“number” is not known", "\"number\""},
    {"", "\"note\": \"spar cap\"", "\"note\": \"spar cap\", \"group\": \"\"", "channels[0].group",
     "“group” is not known", "\"group\""},
    {"", "\"instrument\"", "\"identity\": {}, \"instrument\"", "channels[0].setup.identity",
     "“identity” is not known", "\"identity\""},
    {"", "\"part\": {", "\"part\": {\"certificate\": \"\", ", "channels[0].setup.shunts[0].part.certificate",
     "“certificate” is not known", "{\"certificate\""},
    {"", "\"zero_return\"", "\"change\": 1, \"zero_return\"", "channels[0].setup.limits.change",
     "“change” is not known", "\"change\""},
    {"closed_with", "\"zero_return\"", "\"zero_change\": 1, \"zero_return\"",
     "channels[0].checks[0].closed_with.limits.zero_change", "“zero_change” is not known", "\"zero_change\""},
    {"pre-test", "\"remark\"", "\"ambient\": {}, \"remark\"", "channels[0].checks[0].ambient",
     "“ambient” is not known", "\"ambient\""},
    {"pre-test", "\"remark\"", "\"remarks\": [], \"remark\"", "channels[0].checks[0].remarks",
     "“remarks” is not known", "\"remarks\""},
};

const Damage damagesOfVersion7[] = {
    {"", "\"change\": 0.0075, ", "", "channels[0].setup.limits", "“change” is missing", "\"limits\""},
    {"", "0.00375", "\"0.375 %\"", "channels[0].setup.limits.zero_change", "a text where a number",
     "0.375 %"},
    {"", "2027-01-31", "2027-02-31", "channels[0].setup.identity.due", "“2027-02-31” is not a day",
     "2027-02-31"},
    {"", "\"serial\"", "\"number\"", "channels[0].setup.identity.number", "“number” is not known here",
     "\"identity\""},
    {"", "\"air_degC\": 21.5", "\"air_degC\": null", "channels[0].checks[0].ambient.air_degC",
     "nothing (null) where a number", "\"air_degC\": null"},
    {"", "{\"step\": 2", "{\"step\": 0", "channels[0].checks[0].remarks[0].step", "counted from 1",
     "{\"step\": 0"},
    {"", "{\"step\": 2", "{\"step\": 1000001", "channels[0].checks[0].remarks[0].step", "more than 1000000",
     "1000001"},
    {"", "\"settled\": true", "\"settled\": 1", "channels[0].checks[0].remarks[0].settled",
     "a number where true or false", "\"settled\": 1"},
    {"", "2024-05-07T08:15:00Z", "2024-05-07T08:15:00", "channels[0].checks[0].remarks[0].time",
     "is not a time", "2024-05-07T08:15:00\""},
    {"", "2024-05-07T08:15:00Z", "2024-05-07T24:15:00Z", "channels[0].checks[0].remarks[0].time",
     "is not a time", "T24:15:00Z"},
    {"", "\"returned\"", "\"sent back\"", "sign_off[1].stage", "no stage “sent back”", "sent back"},
    {"\"history\"", "\"chain\": \"", "\"chain\": \"0", "history[0].chain", "not a SHA-256", "\"chain\": \"0"},
    {"\"history\"", "\"more\": 3", "\"more\": -3", "history[1].more", "whole number", "\"more\""},
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

TEST(ReadDocument, NamesLineAndPathOfEachDamageInTheThirdVersion) {
  expectNamed(fileText("version3.bridgecal"), damagesOfVersion3);
}

TEST(ReadDocument, NamesLineAndPathOfEachDamageInTheFourthVersion) {
  expectNamed(fileText("version4.bridgecal"), damagesOfVersion4);
}

TEST(ReadDocument, NamesLineAndPathOfEachDamageInTheFifthVersion) {
  expectNamed(fileText("version5.bridgecal"), damagesOfVersion5);
}

TEST(ReadDocument, NamesLineAndPathOfEachDamageInTheSixthVersion) {
  expectNamed(fileText("version6.bridgecal"), damagesOfVersion6);
}

TEST(ReadDocument, NamesLineAndPathOfEachDamageInTheSeventhVersion) {
  expectNamed(fileText("version7.bridgecal"), damagesOfVersion7);
}

TEST(ReadDocument, NamesLineAndPathOfKeysThatCameAfterTheSixthVersion) {
  expectNamed(fileText("version6.bridgecal"), laterThan6);
}

TEST(ReadDocument, NamesLineAndPathOfKeysThatCameAfterTheFifthVersion) {
  expectNamed(fileText("version5.bridgecal"), laterThan5);
}

TEST(ReadDocument, NamesLineAndPathOfKeysThatCameAfterTheFourthVersion) {
  expectNamed(fileText("version4.bridgecal"), laterThan4);
}

TEST(ReadDocument, NamesLineAndPathOfKeysThatCameAfterTheThirdVersion) {
  expectNamed(fileText("version3.bridgecal"), laterThan3);
}

TEST(ReadDocument, NamesLineAndPathOfKeysThatCameAfterTheSecondVersion) {
  expectNamed(fileText("version2.bridgecal"), laterThan2);
}

TEST(ReadDocument, NamesTheVersionOfTheFileWhenALaterKeyIsTwoVersionsAhead) {
  const std::string text =
      damaged(fileText("version1.bridgecal"), "", "\"hold_s\": 2.5", "\"hold_s\": 2.5, \"settle_s\": 1");
  EXPECT_NE(readDocument(text).error().what.find("in a file of version 1"), std::string::npos);
}

TEST(ReadDocument, DoesNotLetStepsOfASmallOldFileGrowWithoutBound) {
  // A value comes to each empty step, 2 million may be added in all.
  std::string text =
      "{\"format\": \"shuntwright\", \"version\": 2, \"channels\": [{\"setup\": {\"sequence\": [\n";
  for (int k = 0; k < 2'000'100; ++k) text += "{},\n";
  const auto document = readDocument(text + "{}]}}]}");
  ASSERT_FALSE(document);
  // The 2 000 001st element; the first stands on line 2.
  EXPECT_EQ(document.error().where, "line 2000002, channels[0].setup.sequence[2000000]");
}

TEST(ReadDocument, RefusesMoreOfOneThingThanAFileMayHold) {
  const std::string good = fileText("version3.bridgecal");
  const auto times = [](std::size_t count, const std::string& one) {
    std::string list = "[";
    for (std::size_t k = 0; k < count; ++k) list += (k ? ", " : "") + one;
    return list + "]";
  };
  struct Case {
    const char* anchor;
    std::string from, to, what;
  };
  const std::string pin = "{\"connector\": \"\", \"pin\": \"1\"}";
  const std::string jumper = "{\"from\": " + pin + ", \"to\": " + pin + "}";
  const Case cases[] = {
      {"LC-1", "\"pins\": []", "\"pins\": " + times(201, pin), "there are 201 pins, more than 200"},
      {"LC-1", "\"ohm_readings\": []", "\"ohm_readings\": " + times(10001, "{}"), "10001 ohmmeter readings"},
      {"", "{\"id\": \"AF-0102\"}", "{\"id\": \"\"}, \"jumpers\": " + times(21, jumper), "21 jumpers"},
      {"", "\"decades\": [{\"step_ohm\": 1000, \"positions\": 10}]", "\"decades\": " + times(21, "{}"),
       "21 dials"},
      {"LC-1", "\"shunts\": []", "\"shunts\": " + times(1'001, "{}"),
       "there are 1001 shunts, more than 1000"},
      {"LC-1", "\"sequence\": []", "\"sequence\": " + times(2'001, "{}"),
       "there are 2001 steps, more than 2000"},
      {"LC-1", "\"correlation_groups\": []", "\"correlation_groups\": " + times(1'001, "{}"),
       "there are 1001 groups, more than 1000"},
      {"LC-1", "\"checks\": []", "\"checks\": " + times(1'001, "{}"),
       "there are 1001 checks, more than 1000"},
  };
  for (const Case& c : cases) {
    const auto document = readDocument(damaged(good, c.anchor, c.from, c.to));
    ASSERT_FALSE(document) << c.what;
    EXPECT_NE(document.error().what.find(c.what), std::string::npos) << document.error().text();
  }
  const auto most = readDocument(damaged(good, "LC-1", "\"pins\": []", "\"pins\": " + times(200, pin)));
  ASSERT_TRUE(most) << most.error().text();
  EXPECT_EQ(most->channels[1]->setup.wiring.pins.size(), 200u);
}

// Wiring that makes no sense is shown on its page; a file with it must open for that.
TEST(ReadDocument, OpensWiringThatMakesNoSense) {
  std::string text = fileText("version3.bridgecal");
  text = damaged(text, "", "\"connector\": \"J1\", \"pin\": \"B\"", "\"connector\": \"J1\", \"pin\": \"A\"");
  text = damaged(text, "\"jumpers\"", "\"pin\": \"A\"", "\"pin\": \"Z\"");
  text = damaged(text, "ohm_readings", "\"shunt\": \"R1 on arm 1\"", "\"shunt\": \"gone\"");
  const auto document = readDocument(text);
  ASSERT_TRUE(document) << document.error().text();
  EXPECT_EQ(document->channels[0]->ohmReadings[1].state.shunt, "gone");
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
                           "{\"format\": \"other\", \"version\": 1}", "\xEF\xBB\xBF[]", "\xEF\xBB\xBF 1"})
    EXPECT_NE(what(text).find("not a Shuntwright document"), std::string::npos) << text << ": " << what(text);
  EXPECT_NE(what(std::string("{\0}", 3)).find("line 1: a zero byte"), std::string::npos);
  // It ends the text for the library, which would take what stands behind it for nothing.
  EXPECT_NE(what(fileText("version1.bridgecal") + std::string("\0 signed", 8)).find("a zero byte"),
            std::string::npos);
  EXPECT_NE(what("{\"format\": \"shuntwright\"}").find("which version"), std::string::npos);
  EXPECT_NE(what("{\"format\": \"shuntwright\", \"version\": \"1\"}").find("which version"),
            std::string::npos);
  EXPECT_NE(what("{\"format\": \"shuntwright\", \"version\": 0}").find("which version"), std::string::npos);
  EXPECT_NE(what(fileText("version1.bridgecal") + "{}").find("text after the end"), std::string::npos);
  EXPECT_NE(what("{\"a\": \"\xFF\", \"b\": 1}").find("line 1: the text is not UTF-8"), std::string::npos);
}

TEST(ReadDocument, NamesTheVersionThatANewerFileNeeds) {
  const auto document =
      readDocument("{\"format\": \"shuntwright\", \"version\": 8, \"rooms\": {\"unknown\": []}}");
  ASSERT_FALSE(document);
  EXPECT_NE(document.error().what.find("file version 8"), std::string::npos) << document.error().text();
  EXPECT_NE(document.error().mend.find("reads file version 8"), std::string::npos);
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

TEST(ReadDocument, SurvivesAnyChangedByteOfTheNewestVersion) {
  expectSurvival(fileText("version7.bridgecal"), 1);
}

}  // namespace
