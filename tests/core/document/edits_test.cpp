// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/document/edits.h"

#include <gtest/gtest.h>

#include <map>

#include "tests/support/sample_channel.h"
#include "tests/support/two_sided.h"

namespace core {
namespace edits_test {

std::vector<std::string> labels(const Channel& channel) {
  std::vector<std::string> names;
  for (const Step& step : channel.setup.sequence) names.push_back(step.label);
  return names;
}

TEST(Edits, TwoSidedSequenceRisesInMagnitudeOnEachSideAndReturnsToZero) {
  // Larger resistors simulate less, so each side runs from the largest to the smallest.
  const Channel channel = sample::nineStepChannel();
  EXPECT_EQ(labels(channel), (std::vector<std::string>{"zero", "up", "up (2)", "up (3)", "zero", "down",
                                                       "down (2)", "down (3)", "zero"}));
  const SetupPrediction prediction = predict(channel.setup);
  for (const std::size_t step : {1, 2, 3}) EXPECT_EQ(prediction.steps[step]->polarity, Polarity::Positive);
  for (const std::size_t step : {5, 6, 7}) EXPECT_EQ(prediction.steps[step]->polarity, Polarity::Negative);
}

TEST(Edits, TwoSidedSequenceLeavesOutWhatCannotBePredicted) {
  Channel channel = sample::nineStepChannel();
  channel.setup.shunts[0].b = channel.setup.shunts[0].a;  // across one node
  EXPECT_EQ(sample::withTwoSidedSequence(channel, 1.0_s).setup.sequence.size(), 8u);
}

TEST(Edits, TwoSidedSequenceKeepsReadingsWhenItClosesTheSameShuntsAgain) {
  Channel channel = sample::withCheckReading(sample::nineStepChannel(), 1.0);
  const auto readings = channel.checks[0].readings;
  channel = sample::withTwoSidedSequence(channel, 3.0_s);
  EXPECT_EQ(channel.checks[0].readings, readings);
  EXPECT_EQ(channel.setup.sequence[0].hold, 3.0_s);
  channel = sample::withTwoSidedSequence(withShuntRemoved(channel, 0), 3.0_s);
  EXPECT_FALSE(channel.checks[0].readings[0]);
}

TEST(Edits, AnotherSequenceKeepsReadingsOnlyWhileTheSameShuntsCloseInTheSameOrder) {
  const Channel channel = sample::withCheckReading(sample::nineStepChannel(), 1.0);
  std::vector<Step> sequence = channel.setup.sequence;
  for (Step& step : sequence) step.hold = 7.0_s;
  sequence[0].label = "start";
  EXPECT_FALSE(dropsReadings(channel, sequence));
  EXPECT_EQ(withSequence(channel, sequence).checks, channel.checks);
  EXPECT_EQ(withSequence(channel, sequence).setup.sequence, sequence);

  std::swap(sequence[1], sequence[2]);
  EXPECT_TRUE(dropsReadings(channel, sequence));
  const Channel swapped = withSequence(channel, sequence);
  for (const auto& reading : swapped.checks[0].readings) EXPECT_FALSE(reading);
}

TEST(Edits, AnotherSequenceDropsNothingOfClosedChecksOrOfThoseWithoutReadings) {
  const std::vector<Step> sequence(4);
  Channel channel = withCheckAdded(sample::nineStepChannel(), {});
  EXPECT_FALSE(dropsReadings(channel, sequence));
  EXPECT_EQ(withSequence(channel, sequence).checks[0].readings.size(), 4u);
  channel = withCheckClosed(sample::withCheckReading(sample::nineStepChannel(), 1.0), 0);
  EXPECT_FALSE(dropsReadings(channel, sequence));
  EXPECT_EQ(withSequence(channel, sequence).checks, channel.checks);
}

TEST(Edits, ARemovedShuntLeavesEveryStepAndTheOthersKeepTheirs) {
  const Channel before = sample::nineStepChannel();
  const Channel after = withShuntRemoved(before, 1);
  ASSERT_EQ(after.setup.shunts.size(), 5u);
  for (std::size_t step = 0; step < before.setup.sequence.size(); ++step) {
    const auto& was = before.setup.sequence[step].closed;
    const auto& is = after.setup.sequence[step].closed;
    if (was == std::vector<std::size_t>{1}) {
      EXPECT_TRUE(is.empty());
      continue;
    }
    ASSERT_EQ(is.size(), was.size());
    for (std::size_t k = 0; k < is.size(); ++k)
      EXPECT_EQ(after.setup.shunts[is[k]].name, before.setup.shunts[was[k]].name);
  }
}

Uncertainty within(double share, std::string group = "") {
  return {Statement::Tolerance, share, true, 2, Distribution::Rectangular, {}, std::move(group)};
}

TEST(Edits, ARemovedShuntTakesItsStatementsAlongAndTheOthersKeepTheirs) {
  Channel channel = sample::nineStepChannel();
  for (const auto kind : {InputKind::Shunt, InputKind::ShuntWires, InputKind::ShuntContact})
    for (std::size_t shunt = 0; shunt < 3; ++shunt)
      channel = withUncertainty(channel, {kind, shunt}, within(0.1 * static_cast<double>(shunt)));
  channel = withUncertainty(channel, {InputKind::Arm, 1}, within(0.5));
  channel = withUncertainty(channel, {InputKind::Lead, 2}, within(0.6));
  channel = withCheckClosed(withCheckAdded(channel, {}), 0);

  const Channel after = withShuntRemoved(channel, 1);

  std::map<Input, Uncertainty> expected{{{InputKind::Arm, 1}, within(0.5)},
                                        {{InputKind::Lead, 2}, within(0.6)}};
  for (const auto kind : {InputKind::Shunt, InputKind::ShuntWires, InputKind::ShuntContact}) {
    expected[{kind, 0}] = within(0);
    expected[{kind, 1}] = within(0.2);
  }
  EXPECT_EQ(after.setup.uncertainties.stated, expected);
  EXPECT_EQ(after.checks[0].closedWith->uncertainties, channel.setup.uncertainties);
}

/// A channel with two shunts on arms 1 and 2, pins at the ends of the resistor `resistor`, and ohmmeter
/// readings with all open and with the first shunt laid.
Channel wiredChannel(const std::string& resistor) {
  Channel channel;
  channel.setup.shunts = {{"R1 on arm 1", 59.0_kohm, Node::Arm1Begin, Node::Arm1End},
                          {"R1 on arm 2", 59.0_kohm, Node::Arm2Begin, Node::Arm2End}};
  channel.setup.wiring.pins = {{{"J1", "A"}, Node::PPlus},
                               {{"J2", "1"}, ResistorEnd{resistor, 1}},
                               {{"J2", "2"}, ResistorEnd{resistor, 2}}};
  const OhmPoint one = ResistorEnd{resistor, 1};
  channel.ohmReadings = {{{}, Node::PPlus, one, {}}, {{"R1 on arm 1", 1}, one, Node::PPlus, 0.1_ohm}};
  return channel;
}

TEST(Edits, AnotherNameOfAShuntWithoutAPartIsCarriedToItsPinsAndReadings) {
  const Channel before = wiredChannel("R1 on arm 1");
  Shunt renamed = before.setup.shunts[0];
  renamed.name = "big one";
  const Channel after = withShunt(before, 0, renamed);
  EXPECT_EQ(after.setup.wiring, wiredChannel("big one").setup.wiring);
  const OhmPoint one = ResistorEnd{"big one", 1};
  EXPECT_EQ(after.ohmReadings, (std::vector<OhmReading>{{{}, Node::PPlus, one, {}},
                                                        {{"big one", 1}, one, Node::PPlus, 0.1_ohm}}));
}

TEST(Edits, AnotherNameOfAShuntWithAPartIsCarriedToStatesOnly) {
  Channel before = wiredChannel("AF-0101");
  for (Shunt& shunt : before.setup.shunts) shunt.part.id = "AF-0101";
  Shunt renamed = before.setup.shunts[0];
  renamed.name = "big one";
  const Channel after = withShunt(before, 0, renamed);
  EXPECT_EQ(after.setup.wiring, before.setup.wiring);
  EXPECT_EQ(after.ohmReadings[1].state.shunt, "big one");
  EXPECT_EQ(after.ohmReadings[1].from, before.ohmReadings[1].from);
}

TEST(Edits, PinsOfAResistorStayWhileAnotherShuntIsMadeOfIt) {
  Channel channel = wiredChannel("AF-0101");
  for (Shunt& shunt : channel.setup.shunts) shunt.part.id = "AF-0101";
  const Wiring wiring = channel.setup.wiring;
  for (const std::size_t k : {0, 1}) {
    Shunt other = channel.setup.shunts[k];
    other.part.id = "AF-0102";
    channel = withShunt(channel, k, other);
    EXPECT_EQ(channel.setup.wiring, k == 0 ? wiring : wiredChannel("AF-0102").setup.wiring);
  }
}

TEST(Edits, PinsOfAResistorStayWhenTheNewOneHasPinsAlready) {
  Channel channel = wiredChannel("R1 on arm 1");
  channel.setup.wiring.pins.push_back({{"J2", "3"}, ResistorEnd{"AF-0102", 1}});
  const Wiring wiring = channel.setup.wiring;
  Shunt other = channel.setup.shunts[0];
  other.part.id = "AF-0102";
  EXPECT_EQ(withShunt(channel, 0, other).setup.wiring, wiring);
}

TEST(Edits, ARemovedShuntTakesItsOhmmeterReadingsAlong) {
  const Channel before = wiredChannel("R1 on arm 1");
  const Channel after = withShuntRemoved(before, 0);
  EXPECT_EQ(after.ohmReadings, std::vector<OhmReading>{before.ohmReadings[0]});
  EXPECT_EQ(after.setup.wiring, before.setup.wiring) << "the pins are still there";
  EXPECT_EQ(withShuntRemoved(before, 1).ohmReadings, before.ohmReadings);
}

TEST(Edits, AStatedUncertaintyIsReplacedAndTakenBack) {
  const Channel before = sample::nineStepChannel();
  const Input gain{InputKind::Gain, 0}, arm{InputKind::Arm, 2};
  Channel channel = withUncertainty(withUncertainty(before, gain, within(0.1)), arm, within(0.2));
  channel = withUncertainty(channel, gain, within(0.3, "amplifier"));
  EXPECT_EQ(channel.setup.uncertainties.stated,
            (std::map<Input, Uncertainty>{{gain, within(0.3, "amplifier")}, {arm, within(0.2)}}));
  channel = withUncertainty(withUncertainty(channel, gain, std::nullopt), arm, std::nullopt);
  EXPECT_EQ(channel, before);
  EXPECT_EQ(withUncertainty(channel, gain, std::nullopt), before) << "there was nothing to take back";
}

TEST(Edits, ACorrelationIsReplacedAndTakenBackWhileStatementsStay) {
  const Channel before =
      withUncertainty(sample::nineStepChannel(), {InputKind::Shunt, 0}, within(0.1, "box 7"));
  Channel channel = withCorrelation(withCorrelation(before, "box 7", 0.5), "cable", 0.25);
  channel = withCorrelation(channel, "box 7", 0.75);
  EXPECT_EQ(channel.setup.uncertainties.groups,
            (std::map<std::string, double>{{"box 7", 0.75}, {"cable", 0.25}}));
  EXPECT_EQ(channel.setup.uncertainties.stated, before.setup.uncertainties.stated);
  channel = withUncertainty(channel, {InputKind::Shunt, 0}, std::nullopt);
  EXPECT_EQ(channel.setup.uncertainties.groups.at("box 7"), 0.75);
  EXPECT_EQ(withCorrelation(withCorrelation(before, "box 7", 0.5), "box 7", std::nullopt), before);
}

TEST(Edits, AnotherTemplateLeavesStatementsAlone) {
  const Input lead{InputKind::Lead, static_cast<std::size_t>(LeadRole::Return)};
  Channel channel = withUncertainty(sample::nineStepChannel(), lead, within(0.1, "cable"));
  channel = withCorrelation(channel, "cable", 0.5);
  const Uncertainties stated = channel.setup.uncertainties;
  EXPECT_EQ(withBridgeType(channel, BridgeType::FullBending).setup.uncertainties, stated);
}

TEST(Edits, ReadingsOfAnOpenCheckMoveWithTheirSteps) {
  Channel channel = sample::withCheckReading(sample::nineStepChannel(), 1.0);
  const auto reading = channel.checks[0].readings[1];
  channel = withStepMoved(channel, 1, 3);
  EXPECT_EQ(channel.checks[0].readings[3], reading);
  channel = withStepRemoved(channel, 0);
  EXPECT_EQ(channel.checks[0].readings[2], reading);
  channel = withStepInserted(channel, 0, {});
  EXPECT_EQ(channel.checks[0].readings[3], reading);
  EXPECT_FALSE(channel.checks[0].readings[0]);
}

TEST(Edits, AClosedCheckKeepsItsSetUpAndReadings) {
  Channel channel = withCheckClosed(sample::withCheckReading(sample::nineStepChannel(), 1.0), 0);
  const Check closed = channel.checks[0];
  channel = withStepRemoved(channel, 0);
  channel = withShuntRemoved(channel, 0);
  channel = sample::withTwoSidedSequence(channel, 1.0_s);
  channel.setup.bridge.gauge.factor = 2.1;
  EXPECT_EQ(channel.checks[0], closed);
  EXPECT_EQ(setupOf(channel, channel.checks[0]).sequence.size(), 9u);
}

TEST(Edits, AReopenedCheckFollowsTheChannelAgain) {
  Channel channel = withCheckClosed(sample::withCheckReading(sample::nineStepChannel(), 1.0), 0);
  channel = withCheckReopened(withStepRemoved(channel, 8), 0);
  EXPECT_EQ(channel.checks[0].readings.size(), 8u);
  EXPECT_EQ(&setupOf(channel, channel.checks[0]), &channel.setup);
}

TEST(Edits, NamesAreMadeUnique) {
  Document document = sample::documentOf({sample::nineStepChannel(), sample::nineStepChannel()});
  EXPECT_EQ(document.channels[0]->name, "TP-01");
  EXPECT_EQ(document.channels[1]->name, "TP-01 (2)");
  const Channel twice = withCheckAdded(withCheckAdded({}, {}), {});
  EXPECT_EQ(twice.checks[1].name, "pre-test (2)");
  document = withChannelInserted(document, 2, *document.channels[1]);
  EXPECT_EQ(document.channels[2]->name, "TP-01 (3)") << "no number behind a number";
}

TEST(Edits, ChecksAreUsuallyCalledAfterTheTestThenCounted) {
  Channel channel;
  for (const char* name : {"pre-test", "post-test", "check 3"}) {
    EXPECT_EQ(usualCheckName(channel), name);
    channel = withCheckAdded(channel, {});
  }
}

TEST(Edits, ChangingTheTemplateDropsLeadsItLacksAndSetsTheBridgeFactor) {
  Channel channel = sample::nineStepChannel();
  channel.setup.bridge.gauge.poissonRatio = 0.3;
  channel = withBridgeType(channel, BridgeType::HalfPoisson);
  EXPECT_EQ(resistanceOf(channel.setup.bridge.leads[static_cast<std::size_t>(LeadRole::Return)]).base(), 0.0);
  EXPECT_EQ(resistanceOf(channel.setup.bridge.leads[static_cast<std::size_t>(LeadRole::SignalMinus)]).base(),
            2.0);
  // Published: N = 1 + nu for a half bridge with Poisson gauge (M. J. Bower, Modern Strain Gage Technology,
  // eq. 27.6).
  EXPECT_DOUBLE_EQ(channel.setup.instrument.bridgeFactor, 1.3);
}

TEST(Edits, AnotherTemplateKeepsOfTheHookupWhatItHasLeadsFor) {
  using enum LeadRole;
  Channel channel;
  channel.setup.bridge.type = BridgeType::FullBending;
  channel.setup.bridge.sixWire = true;
  Hookup& hookup = channel.setup.bridge.hookup;
  hookup.signalReversed = hookup.gaugesReversed = true;
  for (const LeadRole role : {SignalPlus, SignalMinus, SensePlus})
    hookup.broken[static_cast<std::size_t>(role)] = true;
  hookup.exchanged = {{ExcitationPlus, SignalPlus}, {ExcitationPlus, SignalMinus}};
  hookup.touching = {{ExcitationMinus, SignalMinus}, {SensePlus, SignalMinus}};
  channel = withBridgeType(channel, BridgeType::HalfBending);  // P+, P- and S- alone
  Hookup left{.signalReversed = true, .gaugesReversed = true};
  left.broken[static_cast<std::size_t>(SignalMinus)] = true;
  left.exchanged = {{ExcitationPlus, SignalMinus}};
  left.touching = {{ExcitationMinus, SignalMinus}};
  EXPECT_EQ(channel.setup.bridge.hookup, left);
}

TEST(Edits, AnEqualChannelLeavesTheDocumentAsItIs) {
  const Document document = sample::documentOf({sample::nineStepChannel()});
  EXPECT_EQ(withChannel(document, 0, *document.channels[0]), document);
}

/// Steps of the remarks of the first check; -1: about the check as a whole.
std::vector<int> pinnedSteps(const Channel& channel) {
  std::vector<int> steps;
  for (const Remark& remark : channel.checks[0].remarks)
    steps.push_back(remark.step ? static_cast<int>(*remark.step) : -1);
  return steps;
}

TEST(Remarks, StayWithTheirStepsInAnOpenCheckAndWhereTheyAreInAClosedOne) {
  Channel channel;
  channel.setup.sequence.resize(4);
  channel.checks.push_back({});
  for (std::size_t step = 0; step < 4; ++step) channel.checks[0].remarks.push_back({step, "", "", "", false});
  EXPECT_EQ(pinnedSteps(withStepInserted(channel, 1, {})), (std::vector{0, 2, 3, 4}));
  EXPECT_EQ(pinnedSteps(withStepRemoved(channel, 1)), (std::vector{0, -1, 1, 2}));
  EXPECT_EQ(pinnedSteps(withStepMoved(channel, 0, 2)), (std::vector{2, 0, 1, 3}));
  EXPECT_EQ(pinnedSteps(withStepMoved(channel, 3, 1)), (std::vector{0, 2, 3, 1}));
  const Channel closed = withCheckClosed(channel, 0);
  EXPECT_EQ(pinnedSteps(withStepRemoved(closed, 1)), (std::vector{0, 1, 2, 3}));
}

}  // namespace edits_test
}  // namespace core
