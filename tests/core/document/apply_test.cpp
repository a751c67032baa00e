// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/document/apply.h"

#include <gtest/gtest.h>

#include <array>

#include "tests/support/sample_channel.h"

namespace core {
namespace {

using Words = std::vector<std::string>;

constexpr ChannelParts plan{.plan = true};
constexpr ChannelParts wiring{.wiring = true};
constexpr ChannelParts instrument{.instrument = true};
constexpr ChannelParts acquisition{.acquisition = true};
constexpr ChannelParts limits{.limits = true};
constexpr ChannelParts uncertainties{.uncertainties = true};

Uncertainty within(double share, std::string group = "") {
  return {Statement::Tolerance, share, true, 2, Distribution::Rectangular, {}, std::move(group)};
}

Channel named(Channel channel, std::string name) {
  channel.name = std::move(name);
  return channel;
}

/// What channel 1 is after it was handed `parts` of channel 0.
Channel handed(const Channel& from, const ChannelParts& parts, const Channel& to) {
  const std::array<std::size_t, 1> second{1};
  const Applied applied = withApplied(sample::documentOf({from, named(to, "TP-31")}), 0, parts, second);
  EXPECT_EQ(applied.refused, Words{});
  return *applied.document.channels[1];
}

/// Why channel 1 was not; the document must then be as it was.
std::string refusal(const Channel& from, const ChannelParts& parts, const Channel& to) {
  const std::array<std::size_t, 1> second{1};
  const Document before = sample::documentOf({from, named(to, "TP-31")});
  const Applied applied = withApplied(before, 0, parts, second);
  EXPECT_EQ(applied.document, before);
  EXPECT_EQ(applied.refusedAt.size(), applied.refused.size());
  for (const std::size_t at : applied.refusedAt) EXPECT_EQ(at, 1u);
  return applied.refused.size() == 1 ? applied.refused[0] : "taken";
}

/// Another channel than the sample in all that stays with a channel: gauges, arms, leads, leaks.
Channel otherInstallation() {
  Channel channel;
  channel.setup.bridge.gauge.factor = 2.1;
  channel.setup.bridge.arms[0] = 351.0_ohm;
  channel.setup.bridge.leads[0] = 7.0_ohm;
  channel.setup.bridge.leaks[0].across = 50.0_Mohm;
  return channel;
}

Channel fullBridge(bool sixWire) {
  Channel channel = withBridgeType({}, BridgeType::FullBending);
  channel.setup.bridge.sixWire = sixWire;
  return channel;
}

TEST(Apply, HandsOverThePlanAndLeavesTheInstallationAlone) {
  Channel from = sample::nineStepChannel();
  from.setup.shunts[0].part.id = "AF-0101";
  from.setup.shunts[0].jumpers = {{{"J1", "A"}, {"J2", "1"}}};
  from.setup.limits.relative = 0.5;
  const Channel to = otherInstallation();
  const Channel after = handed(from, plan, to);
  EXPECT_EQ(after.setup.shunts, from.setup.shunts);
  EXPECT_EQ(after.setup.sequence, from.setup.sequence);
  core::Setup rest = after.setup;
  rest.shunts.clear();
  rest.sequence.clear();
  EXPECT_EQ(rest, to.setup);
}

TEST(Apply, HandsOverOnlyThePartsThatAreChosen) {
  Channel from = sample::nineStepChannel();
  from.setup.acquisition.filter.kind = FilterKind::Bessel;
  from.setup.wiring.pins = {{{"J1", "A"}, Node::PPlus}};
  from.setup.limits.relative = 0.02;
  from.setup.limits.merits = {{MeritKind::Symmetry, 0.01}};
  from.setup.limits.linearityFrom = ReferenceLine::EndPoint;
  from.setup.decision.rule = DecisionRule::Guarded;
  from.setup.instrument.excitation = 1.0_V;
  const Channel to = named(otherInstallation(), "TP-31");
  Channel expected = to;
  EXPECT_EQ(handed(from, {}, to), expected);
  expected.setup.acquisition = from.setup.acquisition;
  EXPECT_EQ(handed(from, acquisition, to), expected);
  expected = to;
  expected.setup.wiring = from.setup.wiring;
  EXPECT_EQ(handed(from, wiring, to), expected);
  expected = to;
  expected.setup.limits = from.setup.limits;
  expected.setup.decision = from.setup.decision;
  EXPECT_EQ(handed(from, limits, to), expected);
  expected = to;
  expected.setup.instrument = from.setup.instrument;
  EXPECT_EQ(handed(from, instrument, to), expected);
}

TEST(Apply, TouchesOnlyTheChosenChannelsAndNeverTheSource) {
  const Channel from = sample::nineStepChannel();
  const Document before =
      sample::documentOf({named({}, "A"), named(from, "B"), named({}, "C"), named({}, "D")});
  const std::array<std::size_t, 2> to{1, 3};
  const Applied after = withApplied(before, 1, plan, to);
  for (const std::size_t k : {0, 1, 2}) EXPECT_EQ(after.document.channels[k], before.channels[k]);
  EXPECT_EQ(after.document.channels[3]->setup.shunts, from.setup.shunts);
  EXPECT_EQ(after.document.channels[3]->name, "D");
}

TEST(Apply, AChannelThatHasAllOfItIsNoChange) {
  const Channel from = sample::nineStepChannel();
  const Document before = sample::documentOf({from, named(from, "TP-31")});
  const std::array<std::size_t, 1> second{1};
  EXPECT_EQ(withApplied(before, 0, plan, second).document, before);
}

TEST(Apply, RefusesAPlanWhosePlacesAChannelLacks) {
  Channel from = fullBridge(true);
  from.setup.shunts = {{"R1", 59.0_kohm, Node::SensePlus, Node::SPlus}};
  EXPECT_EQ(refusal(from, plan, fullBridge(false)), "TP-31: it has no sense leads for shunt “R1”");
  EXPECT_EQ(refusal(from, plan, {}), "TP-31: it has no sense leads for shunt “R1”");
  EXPECT_EQ(handed(from, plan, fullBridge(true)).setup.shunts, from.setup.shunts);
}

TEST(Apply, RefusesAPlanThatWouldShuntOnePoint) {
  // The completion half of a quarter bridge hangs on the terminals, a full bridge has four leads: P+ and the
  // begin of arm 4 are two points there and one here.
  ASSERT_EQ(pointOf(Channel{}.setup.bridge, Node::Arm4End), pointOf(Channel{}.setup.bridge, Node::PPlus));
  Channel from = fullBridge(false);
  from.setup.shunts = {{"R1", 59.0_kohm, Node::PPlus, Node::Arm4End}};
  EXPECT_EQ(refusal(from, plan, {}), "TP-31: both ends of shunt “R1” would be at one point, the terminal P+");
}

TEST(Apply, RefusesPinsAtPlacesThatAChannelLacks) {
  Channel from = fullBridge(true);
  from.setup.wiring.pins = {{{"J1", "E"}, Node::SenseMinus}};
  EXPECT_EQ(refusal(from, wiring, fullBridge(false)), "TP-31: it has no sense leads for pin “J1-E”");
  EXPECT_EQ(handed(from, wiring, fullBridge(true)).setup.wiring, from.setup.wiring);
}

TEST(Apply, OneRefusalDoesNotHinderTheOthers) {
  Channel from = fullBridge(true);
  from.setup.shunts = {{"R1", 59.0_kohm, Node::SensePlus, Node::SPlus}};
  const Document before =
      sample::documentOf({named(from, "A"), named({}, "B"), named(fullBridge(true), "C")});
  const std::array<std::size_t, 2> to{1, 2};
  const Applied after = withApplied(before, 0, plan, to);
  ASSERT_EQ(after.refused.size(), 1u);
  EXPECT_EQ(after.document.channels[1], before.channels[1]);
  EXPECT_EQ(after.document.channels[2]->setup.shunts, from.setup.shunts);
}

TEST(Apply, KeepsReadingsOfOpenChecksWhenTheSameShuntsCloseInTheSameOrder) {
  Channel from = sample::nineStepChannel();
  const Channel to = sample::withCheckReading(from, 1.0);
  from.setup.shunts[0].resistance = 174.7_kohm;  // the same shunt, measured anew
  from.setup.sequence[1].settle = 2.0_s;
  EXPECT_EQ(handed(from, plan, to).checks, to.checks);
}

TEST(Apply, DropsReadingsOfOpenChecksWhenOtherShuntsClose) {
  Channel from = sample::nineStepChannel();
  const Channel open = sample::withCheckReading(from, 1.0);
  const Channel to = sample::withCheckReading(withCheckClosed(open, 0), 1.0);
  from = withStepMoved(from, 1, 2);
  const Channel after = handed(from, plan, to);
  EXPECT_EQ(after.checks[0], to.checks[0]) << "a closed check never changes";
  EXPECT_EQ(after.checks[1].readings, (std::vector<std::optional<Measured>>(9)));
  EXPECT_EQ(droppedReadings(to, after), 9u);
  EXPECT_EQ(droppedReadings(to, to), 0u);
}

TEST(Apply, KeepsOhmmeterReadingsWhereShuntAndJumpersAreTheSame) {
  const Channel from = sample::nineStepChannel();
  Channel to = from;
  const OhmReading open{{}, Node::PPlus, Node::SMinus, 350.0_ohm};
  const OhmReading same{{"up", 0}, Node::PPlus, Node::SMinus, 350.0_ohm};
  const OhmReading gone{{"other", 0}, Node::PPlus, Node::SMinus, 350.0_ohm};
  const OhmReading relaid{{"down", 1}, Node::PPlus, Node::SMinus, 350.0_ohm};
  to.setup.shunts.push_back({"other", 59.0_kohm});
  to.setup.shunts[1].jumpers = {{{"J1", "A"}, {"J2", "1"}}};
  ASSERT_EQ(to.setup.shunts[1].name, "down");
  to.ohmReadings = {open, same, gone, relaid};
  EXPECT_EQ(handed(from, plan, to).ohmReadings, (std::vector<OhmReading>{open, same}));
}

TEST(Apply, WhatIsStatedAboutShuntsGoesWithThePlanAndTheRestWithTheUncertainties) {
  const Input shunt{InputKind::Shunt, 0}, contact{InputKind::ShuntContact, 5}, gain{InputKind::Gain, 0},
      factor{InputKind::GaugeFactor, 0};
  Channel from = sample::nineStepChannel();
  from.setup.uncertainties.stated = {{shunt, within(0.1, "box")}, {gain, within(0.2, "amplifier")}};
  from.setup.uncertainties.groups = {{"box", 0.5}, {"amplifier", 0.6}, {"unused", 0.7}};
  Channel to = from;
  to.setup.uncertainties.stated = {{contact, within(0.3)}, {factor, within(0.4, "lot")}};
  to.setup.uncertainties.groups = {{"lot", 0.9}, {"box", 0.1}};

  const Uncertainties withPlan = handed(from, plan, to).setup.uncertainties;
  EXPECT_EQ(withPlan.stated,
            (std::map<Input, Uncertainty>{{shunt, within(0.1, "box")}, {factor, within(0.4, "lot")}}));
  EXPECT_EQ(withPlan.groups, (std::map<std::string, double>{{"lot", 0.9}, {"box", 0.5}}));

  const Uncertainties without = handed(from, uncertainties, to).setup.uncertainties;
  EXPECT_EQ(without.stated,
            (std::map<Input, Uncertainty>{{contact, within(0.3)}, {gain, within(0.2, "amplifier")}}));
  EXPECT_EQ(without.groups, (std::map<std::string, double>{{"lot", 0.9}, {"box", 0.1}, {"amplifier", 0.6}}));
}

TEST(Apply, AGroupWithoutACoefficientMovesTogetherAfterwardsToo) {
  Channel from = sample::nineStepChannel();
  from.setup.uncertainties.stated = {{{InputKind::Shunt, 0}, within(0.1, "box")}};
  Channel to = from;
  to.setup.uncertainties.groups = {{"box", 0.1}};
  EXPECT_TRUE(handed(from, plan, to).setup.uncertainties.groups.empty());
}

TEST(Apply, TheBridgeFactorGoesAlongOnlyBetweenBridgesThatAskForTheSame) {
  Channel from;
  from.setup.instrument.excitation = 1.0_V;
  from.setup.instrument.bridgeFactor = 3;  // as set, whatever the bridge asks for
  EXPECT_EQ(handed(from, instrument, {}).setup.instrument.bridgeFactor, 3);
  const Channel full = handed(from, instrument, fullBridge(false));
  EXPECT_EQ(full.setup.instrument.bridgeFactor, 4);
  EXPECT_EQ(full.setup.instrument.excitation, 1.0_V);

  Channel steel = withBridgeType({}, BridgeType::HalfPoisson), aluminium = steel;
  aluminium.setup.bridge.gauge.poissonRatio = 0.33;
  aluminium = withBridgeType(aluminium, BridgeType::HalfPoisson);
  EXPECT_DOUBLE_EQ(handed(steel, instrument, aluminium).setup.instrument.bridgeFactor, 1.33);
}

TEST(Apply, ATransducerKeepsItsScale) {
  Channel cell = withBridgeType({}, BridgeType::Transducer);
  cell.setup.instrument.unit = ReadingUnit::Scaled;
  cell.setup.instrument.unitsPerMillivoltPerVolt = 25;
  Channel gauge;
  gauge.setup.instrument.excitation = 2.5_V;
  Instrument expected = cell.setup.instrument;
  expected.excitation = 2.5_V;
  EXPECT_EQ(handed(gauge, instrument, cell).setup.instrument, expected);

  Channel twin = cell;
  twin.setup.instrument.unitsPerMillivoltPerVolt = 24.9;
  EXPECT_EQ(handed(cell, instrument, twin).setup.instrument.unitsPerMillivoltPerVolt, 25);
  twin.setup.bridge.rating.capacity = 20;
  EXPECT_EQ(handed(cell, instrument, twin).setup.instrument.unitsPerMillivoltPerVolt, 24.9);
}

TEST(Apply, RefusesToTurnReadingsIntoAnotherUnit) {
  Channel from = sample::nineStepChannel();
  from.setup.instrument.unit = ReadingUnit::MillivoltPerVolt;
  const Channel open = sample::withCheckReading(sample::nineStepChannel(), 1.0);
  EXPECT_EQ(refusal(from, instrument, open),
            "TP-31: it has readings in µm/m in an open check, and would read in mV/V");
  EXPECT_EQ(handed(from, instrument, withCheckClosed(open, 0)).setup.instrument.unit,
            ReadingUnit::MillivoltPerVolt);
}

TEST(Apply, RefusesToTurnTheLeastLimitIntoAnotherUnit) {
  Channel from;
  from.setup.instrument.unit = ReadingUnit::MillivoltPerVolt;
  Channel to;
  to.setup.limits.least = Reading(2);
  EXPECT_EQ(refusal(from, instrument, to), "TP-31: its least limit would be 2 mV/V where µm/m was meant");
  from.setup.limits.least = Reading(0.5);
  EXPECT_EQ(refusal(from, limits, to), "TP-31: its least limit would be 0.5 µm/m where mV/V was meant");
  const Channel both = handed(from, {.instrument = true, .limits = true}, to);
  EXPECT_EQ(both.setup.limits.least, Reading(0.5));
  from.setup.limits.least = Reading(0);
  EXPECT_EQ(handed(from, limits, to).setup.limits, from.setup.limits);
}

Resistor resistor(const std::string& id, Resistance nominal) {
  Resistor made{id, nominal};
  made.due = Date(std::chrono::year(2027), std::chrono::month(3), std::chrono::day(31));
  made.rating = Power(0.25);
  return made;
}

TEST(Apply, AShuntTakesValueIdentityAndCertificateFromAResistor) {
  Channel channel = sample::nineStepChannel();
  const Input shunt{InputKind::Shunt, 1};
  channel = withUncertainty(channel, shunt, within(0.5, "box"));
  Resistor made = resistor("AF-0101", 59.0_kohm);
  made.certificate = {59003.0_ohm, 2.95_ohm, 2.5};
  const Channel after = withResistor(channel, 1, made);
  EXPECT_EQ(after.setup.shunts[1].resistance, 59003.0_ohm);
  EXPECT_EQ(after.setup.shunts[1].part, (Part{"AF-0101", made.due, made.rating}));
  const Uncertainty& stated = after.setup.uncertainties.stated.at(shunt);
  EXPECT_EQ(stated.statement, Statement::Expanded);
  EXPECT_EQ(stated.amount, 2.95);
  EXPECT_FALSE(stated.relative);
  EXPECT_EQ(stated.coverageFactor, 2.5);
  EXPECT_EQ(stated.group, "");
  // JCGM 100:2008, 4.3.3: u = U/k.
  EXPECT_DOUBLE_EQ(standardUncertainty(stated, 59003), 2.95 / 2.5);
}

TEST(Apply, AResistorWithoutCertificateIsKnownByItsTolerance) {
  Resistor made = resistor("AF-0102", 59.0_kohm);
  made.tolerance = 0.001;
  made.due.reset();
  const Channel after = withResistor(sample::nineStepChannel(), 1, made);
  EXPECT_EQ(after.setup.shunts[1].resistance, 59.0_kohm);
  EXPECT_EQ(after.setup.shunts[1].part, (Part{"AF-0102", {}, made.rating}));
  EXPECT_EQ(after.setup.uncertainties.stated.at({InputKind::Shunt, 1}), within(0.001));
}

TEST(Apply, PinsFollowTheResistorThatAShuntIsMadeOf) {
  Channel channel = sample::nineStepChannel();
  channel.setup.wiring.pins = {{{"J2", "1"}, ResistorEnd{"down", 1}}};
  ASSERT_EQ(channel.setup.shunts[1].name, "down");
  const Channel after = withResistor(channel, 1, resistor("AF-0101", 59.0_kohm));
  EXPECT_EQ(after.setup.wiring.pins[0].use, PinUse(ResistorEnd{"AF-0101", 1}));
}

TEST(Apply, StockValuesReachTheShuntsWhosePartIsInStock) {
  Stock stock;
  stock.resistors = {resistor("AF-0101", 59.0_kohm)};
  stock.resistors[0].certificate = {59003.0_ohm, 2.95_ohm, 2};
  stock.boxes = {{"AF-0301", {{10.0_kohm, 10}}, {}, 0.002, resistor("", {}).due, {}, ""}};
  Channel channel = sample::nineStepChannel();
  channel.setup.shunts[0].part.id = "AF-0101";
  channel.setup.shunts[1].part.id = "AF-0999";
  channel.setup.shunts[2].part.id = "AF-0301";
  const Document before = withStock(sample::documentOf({channel, named(channel, "TP-31")}), stock);
  const std::array<std::size_t, 1> second{1};
  const Document after = withStockValues(before, second);
  EXPECT_EQ(after.channels[0], before.channels[0]);
  const core::Setup& setup = after.channels[1]->setup;
  EXPECT_EQ(setup.shunts[0].resistance, 59003.0_ohm);
  EXPECT_EQ(setup.shunts[0].part, (Part{"AF-0101", stock.resistors[0].due, stock.resistors[0].rating}));
  EXPECT_EQ(setup.shunts[1], channel.setup.shunts[1]) << "the stock does not hold it";
  EXPECT_EQ(setup.shunts[2].resistance, channel.setup.shunts[2].resistance) << "a box is set to a value";
  EXPECT_EQ(setup.shunts[2].part, (Part{"AF-0301", stock.boxes[0].due, {}}));
  EXPECT_EQ(setup.uncertainties.stated.at({InputKind::Shunt, 2}), within(0.002));
  EXPECT_EQ(setup.shunts[3], channel.setup.shunts[3]) << "its part is not said";
  EXPECT_EQ(setup.uncertainties.stated.size(), 2u);
}

TEST(Apply, AnotherStockLeavesTheChannelsAsTheyAre) {
  const Document before = sample::documentOf({sample::nineStepChannel()});
  Stock stock;
  stock.resistors = {resistor("AF-0101", 59.0_kohm)};
  const Document after = withStock(before, stock);
  EXPECT_EQ(*after.stock, stock);
  EXPECT_EQ(after.channels, before.channels);
  EXPECT_EQ(withStock(after, stock), after) << "the same stock is no change";
  EXPECT_EQ(withStock(after, {}), before);
}

}  // namespace
}  // namespace core
