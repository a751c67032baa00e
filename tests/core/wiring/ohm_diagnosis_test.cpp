// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/wiring/ohm_diagnosis.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "core/wiring/ohm_fit.h"
#include "core/wiring/ohm_network.h"
#include "core/wiring/wiring_rules.h"
#include "tests/support/digits.h"
#include "tests/support/setups.h"

using namespace core;
using testing::HasSubstr;

namespace {

using Random = std::mt19937_64;

/// A bridge with leads of 2 ohm, 100 kohm for arm 2 and 59.9 kohm for arm 1, both on pins.
core::Setup wired(BridgeType type = BridgeType::FullBending) {
  core::Setup setup = test::withLeads(test::equalArms(type, 350.0_ohm), 2.0_ohm);
  setup = test::withShunt(setup, 100.0_kohm, Node::Arm2Begin, Node::Arm2End);
  setup = test::withShunt(setup, 59.9_kohm, Node::Arm1Begin, Node::Arm1End);
  setup.wiring = usualWiring(setup);
  for (const std::size_t k : {0, 1}) setup.shunts[k].jumpers = *jumpersFor(setup, k);
  return setup;
}

/// What the ohmmeter shows between every two terminals, and the ends of each resistor, of `measured`, in
/// every state.
std::vector<OhmReading> readingsOf(const core::Setup& measured, const OhmmeterConditions& conditions = {}) {
  std::vector<OhmReading> readings;
  const auto points = ohmPoints(measured);
  for (const WiringState& state : wiringStates(measured)) {
    const auto all = ohmExpectations(measured, state, points, conditions);
    EXPECT_TRUE(all) << (all ? "" : all.error().text());
    for (const OhmExpectation& e : *all) readings.push_back({state, e.from, e.to, e.ohm});
  }
  return readings;
}

std::vector<OhmFault> faultsOf(const core::Setup& planned, const std::vector<OhmReading>& readings,
                               const OhmmeterConditions& conditions = {}) {
  const auto faults = ohmFaults(planned, readings, conditions);
  EXPECT_TRUE(faults) << (faults ? "" : faults.error().text());
  return faults && !faults->empty() ? *faults : std::vector<OhmFault>(1);
}

}  // namespace

TEST(OhmDiagnosis, FindsNothingWrongWithTheSheetsOwnValues) {
  const auto setup = wired();
  const auto faults = faultsOf(setup, readingsOf(setup));
  EXPECT_EQ(faults[0].kind, OhmFaultKind::None);
  EXPECT_EQ(faults[0].text, "nothing is wrong");
  EXPECT_TRUE(faults[0].explains);
  EXPECT_EQ(faults[0].misfit, 0);
}

TEST(OhmDiagnosis, FindsAnOpenArmFromTextbookValues) {
  // Derived, four arms of 350 ohm, arm 1 open: P+ to P- 700, S- to P- 350, P+ to S- 1050, S+ to S- 700,
  // P+ to S+ 350.
  const auto setup = test::equalArms(BridgeType::FullBending, 350.0_ohm);
  const std::vector<OhmReading> readings{{{}, Node::PPlus, Node::PMinus, 700.0_ohm},
                                         {{}, Node::SMinus, Node::PMinus, 350.0_ohm},
                                         {{}, Node::PPlus, Node::SMinus, 1050.0_ohm},
                                         {{}, Node::SPlus, Node::SMinus, 700.0_ohm},
                                         {{}, Node::PPlus, Node::SPlus, 350.0_ohm}};
  const auto faults = faultsOf(setup, readings);
  EXPECT_EQ(faults[0].kind, OhmFaultKind::Open);
  EXPECT_EQ(faults[0].text, "arm 1 is open");
  EXPECT_TRUE(faults[0].explains);
  EXPECT_FALSE(faults[1].explains) << faults[1].text;
}

TEST(OhmDiagnosis, BlamesNothingThatLiesInsideAnUnpluggedInstrument) {
  // Derived: gauge of 350 ohm on three leads of 2 ohm each. With the instrument unplugged only the gauge and
  // its leads are there: P+ to S- and P+ to the return 354 ohm, S- to the return 4 ohm. With P- touching the
  // return's terminal, what is open to P- reads as to the return.
  const auto setup = test::withLeads(test::equalArms(BridgeType::QuarterThreeWire, 350.0_ohm), 2.0_ohm);
  const OhmmeterConditions unplugged{.instrumentConnected = false};
  const std::vector<OhmReading> readings{{{}, Node::PMinus, Node::Arm2Begin, 0.0_ohm},
                                         {{}, Node::PPlus, Node::SMinus, 354.0_ohm},
                                         {{}, Node::PPlus, Node::PMinus, 354.0_ohm},
                                         {{}, Node::SMinus, Node::PMinus, 4.0_ohm}};
  const auto faults = faultsOf(setup, readings, unplugged);
  EXPECT_EQ(faults[0].text, "P- and return are shorted at the terminals");
  EXPECT_TRUE(faults[0].explains);
  for (const OhmFault& fault : faults)
    for (const char* inside : {"arm 2", "arm 3", "arm 4", "input"})
      EXPECT_THAT(ohmFaultText(fault), testing::Not(HasSubstr(inside)));
}

TEST(OhmDiagnosis, FindsAShortedArm) {
  // Derived: without arm 1 there are 350 ohm beside 700 between P+ and P-, the same between S+ and S-.
  const auto setup = test::equalArms(BridgeType::FullBending, 350.0_ohm);
  const std::vector<OhmReading> readings{{{}, Node::PPlus, Node::PMinus, Resistance(700.0 / 3)},
                                         {{}, Node::PPlus, Node::SMinus, 0.05_ohm},
                                         {{}, Node::SPlus, Node::SMinus, Resistance(700.0 / 3)}};
  const auto faults = faultsOf(setup, readings);
  EXPECT_EQ(faults[0].kind, OhmFaultKind::Short);
  EXPECT_EQ(faults[0].text, "arm 1 is shorted");
  // Without leads a short at the terminals is the same thing, and said so.
  EXPECT_THAT(faults[0].alike, testing::Contains("P+ and S- are shorted at the terminals"));
  EXPECT_THAT(ohmFaultText(faults[0]), HasSubstr(", or P+ and S- are shorted"));
}

TEST(OhmDiagnosis, FindsSwappedLeads) {
  const auto setup = wired();
  auto readings = readingsOf(setup);
  const auto swapped = [](OhmPoint& point) {  // all leads are alike: the terminals read each other's values
    if (point == OhmPoint(Node::PPlus))
      point = Node::SMinus;
    else if (point == OhmPoint(Node::SMinus))
      point = Node::PPlus;
  };
  for (OhmReading& reading : readings) swapped(reading.from), swapped(reading.to);
  const auto faults = faultsOf(setup, readings);
  EXPECT_EQ(faults[0].kind, OhmFaultKind::SwappedWires);
  EXPECT_EQ(faults[0].text, "leads P+ and S- are swapped at the instrument");
  EXPECT_TRUE(faults[0].explains);
}

TEST(OhmDiagnosis, FindsAResistorOfAnotherValue) {
  const auto setup = wired();
  auto real = setup;
  real.shunts[0].resistance = 10.0_kohm;
  const auto faults = faultsOf(setup, readingsOf(real));
  EXPECT_EQ(faults[0].kind, OhmFaultKind::WrongResistor);
  EXPECT_EQ(faults[0].text, "R1 is about 10 kΩ instead of 100 kΩ");
  ASSERT_TRUE(faults[0].fitted);
  EXPECT_NEAR(faults[0].fitted->base(), 10000, 0.01);  // noise-free: far within the ohmmeter's 0.2 %
  EXPECT_EQ(faults[0].unknowns, 1U);
}

// A value that no reading tells from the planned one would be advice to change what is right.
TEST(OhmDiagnosis, AValueWithinTheTolerancesIsNotWrong) {
  const auto setup = wired();
  auto real = setup;
  real.bridge.arms[0] = 350.2_ohm;  // the ohmmeter tells 0.8 ohm at best
  for (const OhmFault& fault : faultsOf(setup, readingsOf(real)))
    EXPECT_NE(fault.kind, OhmFaultKind::WrongResistor) << fault.text;
}

// A lead of 2 ohm that is shorted may fit a little better than nothing wrong: that is no reason to look for
// it.
TEST(OhmDiagnosis, NothingWrongComesFirstWhereItExplainsEverything) {
  const auto setup = wired();
  auto readings = readingsOf(setup);
  for (OhmReading& reading : readings)
    if (reading.ohm) reading.ohm = 0.9985 * *reading.ohm;  // within the ohmmeter's own 0.2 %
  const auto faults = faultsOf(setup, readings);
  EXPECT_EQ(faults[0].kind, OhmFaultKind::None);
  EXPECT_TRUE(faults[0].explains);
}

TEST(OhmDiagnosis, FindsResistorsFittedInEachOthersPlace) {
  const auto setup = wired();
  auto real = setup;
  std::swap(real.shunts[0].resistance, real.shunts[1].resistance);
  const auto faults = faultsOf(setup, readingsOf(real));
  EXPECT_EQ(faults[0].text, "R1 and R2 are fitted in each other's place");
  EXPECT_TRUE(faults[0].explains);
}

TEST(OhmDiagnosis, FindsSwappedJumpersOnlyWhereTheyCanBeSeen) {
  const auto setup = wired();
  auto real = setup;
  std::swap(real.shunts[0].jumpers[0].to, real.shunts[0].jumpers[1].to);
  const auto faults = faultsOf(setup, readingsOf(real));
  EXPECT_EQ(faults[0].text, "jumpers 1 and 2 of R1 are swapped");
  // With both laid and no reading at the resistor's ends it is the same wiring, so it is no suspect.
  const std::vector<OhmReading> closed{{{"R1", 2}, Node::SMinus, Node::PMinus, 100.0_ohm}};
  for (const OhmFault& fault : faultsOf(setup, closed))
    EXPECT_THAT(fault.text, testing::Not(HasSubstr("jumpers")));
}

TEST(OhmDiagnosis, FindsAShuntThatIsAlwaysClosedOrNever) {
  auto setup = wired();
  setup.shunts[0].resistance = 1.0_kohm;
  auto readings = readingsOf(setup);
  std::vector<OhmReading> stuck, dead;
  for (const OhmReading& reading : readings) {
    if (!std::holds_alternative<Node>(reading.from) || !std::holds_alternative<Node>(reading.to)) continue;
    if (reading.state == WiringState{"R1", 2}) stuck.push_back({{}, reading.from, reading.to, reading.ohm});
    if (reading.state == WiringState{}) dead.push_back({{"R1", 2}, reading.from, reading.to, reading.ohm});
  }
  auto faults = faultsOf(setup, stuck);
  EXPECT_EQ(faults[0].text, "R1 is closed all the time");
  faults = faultsOf(setup, dead);
  EXPECT_THAT(ohmFaultText(faults[0]), HasSubstr("R1 never closes"));
  EXPECT_THAT(ohmFaultText(faults[0]), HasSubstr("R1 is open")) << "the ends of R1 were not measured";
}

TEST(OhmDiagnosis, FindsAnOpenReadingWhereAResistanceIsExpected) {
  const auto setup = test::withLeads(test::equalArms(BridgeType::QuarterThreeWire, 350.0_ohm), 2.0_ohm);
  const OhmmeterConditions unplugged{.instrumentConnected = false};
  const std::vector<OhmReading> readings{{{}, Node::PPlus, Node::SMinus, std::nullopt},
                                         {{}, Node::PPlus, Node::Arm2Begin, 354.0_ohm},
                                         {{}, Node::Arm2Begin, Node::SMinus, std::nullopt}};
  const auto faults = faultsOf(setup, readings, unplugged);
  EXPECT_EQ(faults[0].text, "lead S- is open");
  EXPECT_TRUE(faults[0].explains);
  // Each of the two wrong ones counts the cut-off, 10 tolerances, when nothing is wrong: 2 x 100 / 3.
  for (const OhmFault& fault : faults)
    if (fault.kind == OhmFaultKind::None) {
      EXPECT_DIGITS(fault.misfit, 200.0 / 3, 12);
    }
}

TEST(OhmDiagnosis, PrefersTheSimplestOfWhatExplainsEverything) {
  // One reading that says open: a resistor of any great value would do as well, but nobody asked for one.
  const auto setup = wired();
  const std::vector<OhmReading> readings{{{}, ResistorEnd{"R1", 1}, ResistorEnd{"R1", 2}, std::nullopt}};
  EXPECT_EQ(faultsOf(setup, readings)[0].text, "R1 is open");
}

TEST(OhmDiagnosis, CallsAShortAShortWhereTheOhmmeterTellsNoBetter) {
  // Leads of the ohmmeter that were not taken off add 0.05 ohm: no resistor of 0.05 ohm is wanted.
  const auto setup = wired();
  const std::vector<OhmReading> readings{{{}, ResistorEnd{"R1", 1}, ResistorEnd{"R1", 2}, 0.05_ohm},
                                         {{}, Node::PPlus, Node::PMinus, 354.05_ohm}};
  const auto faults = faultsOf(setup, readings);
  EXPECT_EQ(faults[0].text, "R1 is shorted");
  for (const OhmFault& fault : faults) EXPECT_THAT(fault.text, testing::Not(HasSubstr("R1 is about")));
}

TEST(OhmDiagnosis, PassesOverReadingsThatTheChannelDoesNotHave) {
  const auto setup = wired();
  const OhmReading useless[] = {
      {{"R9", 0}, Node::PPlus, Node::PMinus, 1.0_ohm}, {{"R1", 7}, Node::PPlus, Node::PMinus, 1.0_ohm},
      {{}, Node::SensePlus, Node::PMinus, 1.0_ohm},    {{}, ResistorEnd{"R9", 1}, Node::PMinus, 1.0_ohm},
      {{}, Node::PPlus, Node::PPlus, 1.0_ohm},         {{}, Node::PPlus, Node::PMinus, Resistance(-1)}};
  const auto none = ohmFaults(setup, useless, {});
  ASSERT_FALSE(none);
  EXPECT_EQ(none.error().where, "ohmmeter");
  std::vector<OhmReading> readings(std::begin(useless), std::end(useless));
  readings.push_back({{}, Node::PPlus, Node::PMinus, 354.0_ohm});
  EXPECT_EQ(faultsOf(setup, readings)[0].kind, OhmFaultKind::None);
}

TEST(OhmDiagnosis, GivesAtMostAsManyAsAskedFor) {
  const auto setup = wired();
  EXPECT_EQ(ohmFaults(setup, readingsOf(setup), {}, 3)->size(), 3U);
}

TEST(OhmFit, SolvesEachReadingAndAllTogether) {
  // Derived: x beside 350 ohm reads 350 x / (x + 350), in series with 10 ohm it reads 10 + x.
  const double x = 123.456;
  const OhmResponse beside{0, 350, 175, 350, 350 * x / (x + 350), 0.5};
  const OhmResponse series{10, INFINITY, 360, 350, 10 + x, 0.5};
  EXPECT_DIGITS(*beside.solution(), x, 13);
  EXPECT_DIGITS(*series.solution(), x, 13);
  EXPECT_DIGITS(beside.at(x), beside.measured, 14);
  EXPECT_DIGITS(series.at(x), series.measured, 14);
  const OhmResponse both[] = {beside, series};
  // A sum of squares is flat at its least: its place is known to half of the digits.
  EXPECT_DIGITS(*fittedResistance(both, 2e7), x, 7);
  EXPECT_FALSE(fittedResistance(std::vector<OhmResponse>{{350, 350, 350, 350, 350, 0.5}}, 2e7));
}

TEST(OhmFit, OneWildReadingDoesNotDecide) {
  std::vector<OhmResponse> responses(5, OhmResponse{10, INFINITY, 360, 350, 60, 0.5});
  responses.push_back({10, INFINITY, 360, 350, 5000, 0.5});
  EXPECT_NEAR(*fittedResistance(responses, 2e7), 50, 1e-4);
}

namespace {

/// Everything that the diagnosis may find, one of it at random.
OhmChange randomChange(const OhmModel& model, Random& random) {
  const auto below = [&](std::size_t count) {
    return std::uniform_int_distribution<std::size_t>(0, count - 1)(random);
  };
  const auto leads = model.leads();
  const OhmPart parts[] = {{OhmPart::Kind::Arm, below(4)},
                           {OhmPart::Kind::Lead, static_cast<std::size_t>(leads[below(leads.size())])},
                           {OhmPart::Kind::Resistor, below(2)}};
  const OhmPart part = parts[below(3)];
  switch (below(6)) {
    case 0:
      return PartValue{part, INFINITY};
    case 1:
      return PartValue{part, 0};
    case 2: {
      const double factor =
          std::exp(std::uniform_real_distribution<double>(std::log(1.2), std::log(8))(random));
      return PartValue{part, model.plannedValue(part) * (below(2) == 0 ? factor : 1 / factor)};
    }
    case 3: {
      const std::size_t first = below(leads.size() - 1);
      return LeadsSwapped{leads[first], leads[first + 1 + below(leads.size() - first - 1)]};
    }
    case 4:
      return below(2) == 0 ? OhmChange(JumpersSwapped{below(2), 0, 1}) : OhmChange(ResistorsSwapped{0, 1});
    default:
      return PartValue{{OhmPart::Kind::Shunt, below(2)}, below(2) == 0 ? 0 : INFINITY};
  }
}

/// Terminals and ends of resistors: what is within reach.
std::vector<OhmPoint> reachable(const core::Setup& setup) {
  auto points = ohmPoints(setup);
  std::erase_if(points, [](const OhmPoint& point) {
    const auto* node = std::get_if<Node>(&point);
    return node && *node >= Node::Arm1Begin && *node != Node::Arm2Begin;  // the return wire's terminal
  });
  return points;
}

/// Readings between every two of these in every state, off by up to `noise` of their tolerance; empty when
/// none of them is more than two tolerances from what the plan expects.
std::vector<OhmReading> measuredWith(const OhmModel& model, const OhmChange& change, double noise,
                                     Random random) {
  std::vector<OhmReading> readings;
  bool visible = false;
  const auto points = reachable(model.setup());
  std::uniform_real_distribution<double> off(-noise, noise);
  for (const WiringState& state : wiringStates(model.setup())) {
    const OhmNetwork plan = model.networkIn(state), real = model.networkIn(state, change);
    for (std::size_t i = 0; i < points.size(); ++i)
      for (std::size_t j = i + 1; j < points.size(); ++j) {
        const auto value = model.between(real, *model.nodeOf(points[i]), *model.nodeOf(points[j]));
        const auto planned = model.between(plan, *model.nodeOf(points[i]), *model.nodeOf(points[j]));
        const double tolerance = model.toleranceOf(*value);
        const bool open = value->ohm > model.conditions().openBeyond.base();
        const double shown = std::max(0.0, value->ohm + (noise > 0 ? off(random) * tolerance : 0));
        readings.push_back(
            {state, points[i], points[j], open ? std::nullopt : std::optional(Resistance(shown))});
        visible = visible || std::isinf(value->ohm) != std::isinf(planned->ohm) ||
                  std::abs(value->ohm - planned->ohm) > 2 * tolerance;
      }
  }
  return visible ? readings : std::vector<OhmReading>{};
}

/// "R1 is about": what a fault says without the number that was fitted.
std::string withoutNumber(const std::string& text) { return text.substr(0, text.find(" is about")); }

std::vector<std::string> namesOf(const OhmFault& fault) {
  std::vector<std::string> names{withoutNumber(fault.text)};
  for (const std::string& other : fault.alike) names.push_back(withoutNumber(other));
  return names;
}

core::Setup randomSetup(BridgeType type, Random& random) {
  core::Setup setup = wired(type);
  const auto between = [&](double low, double high) {
    return Resistance(std::uniform_real_distribution<double>(low, high)(random));
  };
  for (Resistance& arm : setup.bridge.arms) arm = between(340, 360);
  for (Lead& lead : setup.bridge.leads) lead = between(1, 12);
  for (Shunt& shunt : setup.shunts) shunt.resistance = between(1e3, 2e5);
  setup.bridge.sixWire = random() % 2 == 0;
  return setup;
}

}  // namespace

// Every single fault, in every template, must be ranked first, or one that shows the same at every reading:
// without noise that is a misfit of nothing. With noise within 0.9 tolerances two faults that lie closer than
// that may change places; it must be rare.
TEST(OhmDiagnosis, RanksTheInjectedFaultFirst) {
  Random random(20251125);
  std::size_t visible = 0, sameWithNoise = 0;
  for (int k = 0; k < 110; ++k) {
    const core::Setup setup = randomSetup(static_cast<BridgeType>(k % bridgeTypeCount), random);
    const OhmmeterConditions conditions{.instrumentConnected = k % 3 != 0};
    const auto model = OhmModel::make(setup, conditions);
    ASSERT_TRUE(model) << model.error().text();
    const OhmChange change = randomChange(*model, random);
    const auto exact = measuredWith(*model, change, 0, random);
    if (exact.empty()) continue;
    ++visible;
    const auto best = faultsOf(setup, exact, conditions);
    SCOPED_TRACE("case " + std::to_string(k) + ", " + std::string(templateOf(setup.bridge.type).name) +
                 ", change " + std::to_string(change.index()) + ": " + ohmFaultText(best[0]));
    EXPECT_LT(best[0].misfit, 1e-8) << "0.01 % of a tolerance";
    EXPECT_NE(best[0].kind, OhmFaultKind::None);
    const auto* value = std::get_if<PartValue>(&change);
    if (value && best[0].fitted && std::isfinite(value->ohm) && value->ohm > 0 && best[0].alike.empty()) {
      EXPECT_NEAR(best[0].fitted->base() / value->ohm, 1, 0.002) << "the ohmmeter's own share";
    }

    const auto noisy = faultsOf(setup, measuredWith(*model, change, 0.9, random), conditions);
    EXPECT_TRUE(noisy[0].explains) << noisy[0].text;
    const auto names = namesOf(best[0]);
    const bool same = std::find(names.begin(), names.end(), withoutNumber(noisy[0].text)) != names.end();
    sameWithNoise += same;
  }
  EXPECT_GT(visible, 70U);
  EXPECT_GE(sameWithNoise, visible * 97 / 100) << "of " << visible;
}
