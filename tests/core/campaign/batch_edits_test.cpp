// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/campaign/batch_edits.h"

#include <gtest/gtest.h>

#include "tests/support/sample_channel.h"

namespace core {
namespace {

using Indices = std::vector<std::size_t>;
using Words = std::vector<std::string>;

/// TP-01 with a check, TP-02 without, TP-03 fed by a current.
Document three() {
  Channel first = sample::withCheckReading(sample::nineStepChannel(), 1.0);
  first.checks[0].name = "pre-test";
  Channel second = sample::nineStepChannel();
  second.name = "TP-02";
  Channel third = second;
  third.name = "TP-03";
  third.setup.instrument.current = CurrentSource{};
  return sample::documentOf({first, second, third});
}

const Setup& setup(const BatchEdit& edit, std::size_t channel) {
  return edit.document.channels[channel]->setup;
}

TEST(BatchValues, AreSetInTheChosenChannelsAlone) {
  const Document before = three();
  ChannelValues values;
  values.group = "left spar";
  values.note = "bonded in May";
  values.relativeLimit = 0.02;
  values.instrumentName = "Alder 24";
  values.instrumentSerial = "0017";
  values.instrumentDue = std::optional(*dateFromText("2032-01-31"));
  const BatchEdit edit = withValuesIn(before, Indices{0, 1}, values);
  EXPECT_EQ(changedCount(edit), 2u);
  EXPECT_EQ(refusals(edit), Words{});
  EXPECT_EQ(edit.document.channels[0]->group, "left spar");
  EXPECT_EQ(edit.document.channels[1]->note, "bonded in May");
  EXPECT_EQ(setup(edit, 1).limits.relative, 0.02);
  EXPECT_EQ(setup(edit, 1).identity.name, "Alder 24");
  EXPECT_EQ(setup(edit, 1).identity.serial, "0017");
  EXPECT_EQ(setup(edit, 1).identity.due, dateFromText("2032-01-31"));
  EXPECT_EQ(edit.document.channels[2], before.channels[2]);
}

TEST(BatchValues, WhatRefusesStaysAndSaysWhy) {
  const Document before = three();
  ChannelValues values;
  values.excitation = 2.5_V;
  const BatchEdit edit = withValuesIn(before, Indices{1, 2}, values);
  EXPECT_EQ(setup(edit, 1).instrument.excitation, 2.5_V);
  EXPECT_EQ(edit.document.channels[2], before.channels[2]);
  EXPECT_EQ(refusals(edit), Words{"TP-03: excitation: it is fed with a constant current"});
  ASSERT_EQ(edit.outcomes.size(), 2u);
  EXPECT_EQ(edit.outcomes[0].sentence, "TP-02: changed");
  EXPECT_TRUE(edit.outcomes[1].refused);
  EXPECT_EQ(edit.outcomes[1].channel, 2u);
}

TEST(BatchValues, WithoutAChangeTheChannelStaysTheSameOne) {
  const Document before = three();
  ChannelValues values;
  values.gaugeFactor = 2.0;
  const BatchEdit edit = withValuesIn(before, Indices{1}, values);
  EXPECT_EQ(edit.document.channels[1], before.channels[1]);
  EXPECT_EQ(edit.outcomes[0].sentence, "TP-02: nothing to change");
}

TEST(BatchValues, AClosedCheckKeepsWhatItWasJudgedBy) {
  const Document closed = withOpenChecksClosed(three(), Indices{0}).document;
  ChannelValues values;
  values.gaugeFactor = 2.1;
  const Channel after = *withValuesIn(closed, Indices{0}, values).document.channels[0];
  EXPECT_EQ(after.setup.bridge.gauge.factor, 2.1);
  EXPECT_EQ(after.checks[0].closedWith->bridge.gauge.factor, 2.0);
}

TEST(BatchValues, TheFactorAsSetFollowsWhereItWasTheSame) {
  Document document = three();
  ChannelValues values;
  values.gaugeFactor = 2.1;
  EXPECT_EQ(setup(withValuesIn(document, Indices{1}, values), 1).instrument.gaugeFactor, 2.1);
  Channel other = *document.channels[1];
  other.setup.instrument.gaugeFactor = 2.5;
  document = withChannel(document, 1, other);
  EXPECT_EQ(setup(withValuesIn(document, Indices{1}, values), 1).instrument.gaugeFactor, 2.5);
}

TEST(BatchValues, ArmsAtTheOldNominalValueFollowMeasuredOnesStay) {
  Document document = three();
  Channel measured = *document.channels[1];
  measured.setup.bridge.arms[2] = 351.2_ohm;
  document = withChannel(document, 1, measured);
  ChannelValues values;
  values.gaugeResistance = 120.0_ohm;
  const core::Setup after = setup(withValuesIn(document, Indices{1}, values), 1);
  EXPECT_EQ(after.bridge.gauge.nominal, 120.0_ohm);
  EXPECT_EQ(after.bridge.arms[0], 120.0_ohm);
  EXPECT_EQ(after.bridge.arms[2], 351.2_ohm);
}

TEST(BatchValues, LeadsInUseTakeTheValue) {
  ChannelValues values;
  values.lead = Lead(Resistance(0.4));
  const Bridge after = setup(withValuesIn(three(), Indices{1}, values), 1).bridge;
  for (const Wire& wire : wiresOf(after))
    EXPECT_EQ(resistanceOf(after.leads[static_cast<std::size_t>(wire.role)]), Resistance(0.4));
  EXPECT_EQ(resistanceOf(after.leads[static_cast<std::size_t>(LeadRole::SensePlus)]), Resistance(0));
}

TEST(BatchValues, NumbersNeverChangeTheirUnitQuietly) {
  ChannelValues values;
  values.unit = UnitSetting{ReadingUnit::MillivoltPerVolt};
  Document document = three();
  EXPECT_EQ(refusals(withValuesIn(document, Indices{0}, values)),
            Words{"TP-01: unit: it has readings in µm/m in an open check, and would read in mV/V"});
  EXPECT_EQ(setup(withValuesIn(document, Indices{1}, values), 1).instrument.unit,
            ReadingUnit::MillivoltPerVolt);
  Channel limited = *document.channels[1];
  limited.setup.limits.least = Reading(2);
  document = withChannel(document, 1, limited);
  EXPECT_EQ(refusals(withValuesIn(document, Indices{1}, values)),
            Words{"TP-02: unit: its least limit would be 2 mV/V where µm/m was meant"});
}

TEST(BatchValues, NumbersThatNoChannelCanHaveAreRefused) {
  const auto refused = [](const ChannelValues& values) {
    return refusals(withValuesIn(three(), Indices{1}, values)).size() == 1;
  };
  EXPECT_TRUE(refused({.gaugeResistance = Resistance(0)}));
  EXPECT_TRUE(refused({.gaugeFactor = -2.0}));
  EXPECT_TRUE(refused({.instrumentGaugeFactor = 0.0}));
  EXPECT_TRUE(refused({.lead = Lead(Resistance(-1))}));
  EXPECT_TRUE(refused({.lead = Lead(CopperWire{Length(2), Area(0)})}));
  EXPECT_TRUE(refused({.excitation = Voltage(0)}));
  EXPECT_TRUE(refused({.relativeLimit = 2.0}));
  EXPECT_TRUE(refused({.changeLimit = -0.01}));
  EXPECT_TRUE(refused({.decision = Decision{.coverage = 2}}));
}

TEST(BatchValues, ATemplateWhereAShuntLosesItsPlaceIsRefused) {
  Channel channel;
  channel.setup.bridge.type = BridgeType::FullBending;
  channel.setup.bridge.sixWire = true;
  channel = withShuntAdded(channel, {"R1", 59.0_kohm, Node::SensePlus, Node::Arm1End});
  ChannelValues values;
  values.type = BridgeType::QuarterTwoWire;
  const BatchEdit edit = withValuesIn(sample::documentOf({channel}), Indices{0}, values);
  ASSERT_EQ(refusals(edit).size(), 1u);
  EXPECT_NE(refusals(edit)[0].find("for shunt “R1”"), std::string::npos) << refusals(edit)[0];
}

TEST(BatchNames, CountWithTheDigitsOfThePattern) {
  const auto edit = withNamesByPattern(three(), Indices{2, 0}, "{group}LS-{nnn}", 7);
  ASSERT_TRUE(edit) << edit.error().text();
  EXPECT_EQ(edit->document.channels[2]->name, "LS-007");
  EXPECT_EQ(edit->document.channels[0]->name, "LS-008");
  EXPECT_EQ(edit->document.channels[1]->name, "TP-02");
  EXPECT_EQ(edit->outcomes[0].sentence, "TP-03 is LS-007 now");
}

TEST(BatchNames, ARenamedChannelIsStillReadFromItsColumn) {
  const auto edit = withNamesByPattern(three(), Indices{0}, "old {name}");
  ASSERT_TRUE(edit);
  EXPECT_EQ(edit->document.channels[0]->name, "old TP-01");
  EXPECT_EQ(edit->document.channels[0]->recordingColumn, "TP-01");
  const auto back = withNamesByPattern(edit->document, Indices{0}, "{column}");
  ASSERT_TRUE(back);
  EXPECT_EQ(*back->document.channels[0], *three().channels[0]);
}

TEST(BatchNames, MayBeExchangedAmongThoseThatAreRenamed) {
  const auto edit = withNamesByPattern(three(), Indices{0, 1}, "TP-0{n}", 2);
  ASSERT_FALSE(edit);  // TP-03 is not among them
  const auto all = withNamesByPattern(three(), Indices{0, 1, 2}, "TP-0{n}", 2);
  ASSERT_TRUE(all) << all.error().text();
  EXPECT_EQ(all->document.channels[0]->name, "TP-02");
}

TEST(BatchNames, WhatCannotBeANameRenamesNothing) {
  const auto error = [](std::string_view pattern) {
    const auto edit = withNamesByPattern(three(), Indices{0, 1}, pattern);
    return edit ? std::string("renamed") : edit.error().what;
  };
  EXPECT_EQ(error("TP"), "its name would be “TP”, which another channel has");
  EXPECT_EQ(error("TP-03"), "its name would be “TP-03”, which another channel has");
  EXPECT_EQ(error("{group}"), "its name would be empty");
  EXPECT_EQ(error("TP-{m}"), "“{m}” means nothing");
  EXPECT_EQ(error("TP-{"), "“{” means nothing");
  EXPECT_EQ(error("TP-{}"), "“{}” means nothing");
}

TEST(BatchChecks, TheCheckOfThatNameIsClosed) {
  const BatchEdit edit = withChecksClosed(three(), Indices{0, 1}, "pre-test");
  EXPECT_TRUE(edit.document.channels[0]->checks[0].closedWith);
  EXPECT_EQ(refusals(edit), Words{"TP-02: it has no check “pre-test”"});
  const BatchEdit again = withChecksClosed(edit.document, Indices{0}, "pre-test");
  EXPECT_EQ(changedCount(again), 0u);
}

TEST(BatchChecks, WithoutAReadingThereIsNothingToClose) {
  const Document document = sample::documentOf({withCheckAdded(sample::nineStepChannel(), {})});
  EXPECT_EQ(refusals(withChecksClosed(document, Indices{0}, "pre-test")),
            Words{"TP-01: check “pre-test” has no reading"});
  EXPECT_EQ(changedCount(withOpenChecksClosed(document, Indices{0})), 0u);
}

TEST(BatchRemoval, TellsWhatWentWithTheChannel) {
  const BatchEdit edit = withChannelsRemoved(three(), Indices{0, 2});
  ASSERT_EQ(edit.document.channels.size(), 1u);
  EXPECT_EQ(edit.document.channels[0]->name, "TP-02");
  EXPECT_EQ(edit.outcomes[0].sentence, "TP-01: removed with its check");
  EXPECT_EQ(edit.outcomes[1].sentence, "TP-03: removed");
}

}  // namespace
}  // namespace core
