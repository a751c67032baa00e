// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/whatif/what_if.h"

#include <gtest/gtest.h>

#include <cmath>

#include "tests/support/digits.h"
#include "tests/support/sample_channel.h"
#include "tests/support/setups.h"

using namespace core;
using enum AlterationKind;

namespace what_if_test {

constexpr std::size_t role(LeadRole lead) { return static_cast<std::size_t>(lead); }
constexpr std::size_t pPlus = role(LeadRole::ExcitationPlus), sPlus = role(LeadRole::SignalPlus),
                      sMinus = role(LeadRole::SignalMinus), thirdWire = role(LeadRole::Return);

core::Setup nineSteps() { return sample::nineStepChannel().setup; }

WhatIf tryOut(const core::Setup& setup, std::vector<Alteration> alterations) {
  auto result = whatIf(setup, alterations);
  EXPECT_TRUE(result) << (result ? "" : result.error().text());
  return result ? *std::move(result) : WhatIf{};
}

double reading(const WhatIf& what, std::size_t step, Zeroed zeroed = Zeroed::After) {
  const auto& with = what.steps.at(step).with(zeroed);
  EXPECT_TRUE(with) << (with ? "" : with.error().text());
  return with ? with->reading.base() : std::nan("");
}

double without(const WhatIf& what, std::size_t step) { return what.steps.at(step).without->reading.base(); }

bool says(const WhatIf& what, Zeroed zeroed, const std::string& words) {
  return whatIfSentence(what, zeroed).find(words) != std::string::npos;
}

/// A bridge of 350 ohm with a zero step and one shunt that is small beside it.
core::Setup withSmallShunt(BridgeType type, Node a, Node b, bool sixWire = false) {
  core::Setup setup = test::equalArms(type, 350.0_ohm);
  setup.bridge.sixWire = sixWire;
  setup.sequence.push_back({"zero", {}});
  return test::withShunt(setup, 10.0_Mohm, a, b);
}

TEST(WhatIf, WithoutIsWhatThePlanPredicts) {
  const core::Setup setup = nineSteps();
  const SetupPrediction predicted = predict(setup);
  const WhatIf what = tryOut(setup, {});
  EXPECT_EQ(what.zeroWithout->base(), predicted.zero->base());
  for (std::size_t step = 0; step < what.steps.size(); ++step) {
    // The same solver in the same order: the same bits.
    EXPECT_EQ(what.steps[step].without->reading, predicted.steps[step]->reading);
    EXPECT_EQ(what.steps[step].zeroedAfter->reading, predicted.steps[step]->reading);
    EXPECT_EQ(what.steps[step].zeroedBefore->reading, predicted.steps[step]->reading);
    EXPECT_EQ(*what.steps[step].without->simulated, predicted.steps[step]->simulated);
    EXPECT_EQ(what.steps[step].without->polarity, predicted.steps[step]->polarity);
  }
  EXPECT_EQ(what.zeroJump->base(), 0);
}

TEST(WhatIf, ReversedSignalOrExcitationTurnsEverySignAndNothingElse) {
  for (const AlterationKind kind : {SignalReversed, ExcitationReversed}) {
    const WhatIf what = tryOut(nineSteps(), {{kind}});
    for (std::size_t step = 0; step < what.steps.size(); ++step)
      // Two roundings of potentials, of some 1e-16 of the excitation, make 1e-9 µm/m.
      EXPECT_NEAR(reading(what, step), -without(what, step), 1e-9);
    EXPECT_EQ(whatIfSentence(what, Zeroed::After), "All readings turn their sign; the sizes stay.");
    EXPECT_EQ(polarityChangeText(what.steps[1], Zeroed::After), "reversed, now −");
  }
}

TEST(WhatIf, ReversedGaugesAreNotSeenByAShuntCheck) {
  core::Setup setup =
      test::withShuntOnArm(test::equalArms(BridgeType::HalfBending, 350.0_ohm), 174.65_kohm, 1);
  const WhatIf what = tryOut(setup, {{GaugesReversed}});
  EXPECT_EQ(reading(what, 0), without(what, 0));
  // Two gauges in bending: -R/(F (R + 2 Rs)) (TN-514, and algebra), reversed the other way round.
  const double strain = 350 / (2 * (350 + 2 * 174650.0));
  EXPECT_DIGITS(*what.steps[0].without->simulated, -strain, 9);
  EXPECT_DIGITS(*what.steps[0].zeroedAfter->simulated, strain, 9);
  EXPECT_EQ(
      whatIfSentence(what, Zeroed::After),
      "The article's strain then reads with the other sign (simulated 500.5 instead of -500.5 µm/m at step "
      "1 “R1”), which a shunt check does not see. No reading changes and no zero.");
  EXPECT_DIGITS(*what.articleGain, -1, 12);
  EXPECT_EQ(polarityChangeText(what.steps[0], Zeroed::After), "as before, reads the article reversed");
}

TEST(WhatIf, WithoutStepsNothingIsSaidOfReadings) {
  const core::Setup setup =
      test::withLeads(test::equalArms(BridgeType::QuarterThreeWire, 350.0_ohm), 1.0_ohm);
  const WhatIf what = tryOut(setup, {{LeadResistance, 0, 0, 2}});
  EXPECT_TRUE(says(what, Zeroed::After, "The reading with all shunts open does not change."));
  EXPECT_FALSE(says(what, Zeroed::After, "No reading"));
}

TEST(WhatIf, LeadsTakeFromAReadingWhatTheTextbooksSay) {
  // Ratios to the reading without leads, to first order in r = one wire over the arm: attenuation R/(R + RL),
  // a wire for three-wire and half bridges, two for two-wire and full bridges (Micro-Measurements, article on
  // leadwire resistance); shunts at the instrument span gauge and lead and drop their current in the signal
  // lead (algebra).
  struct Row {
    BridgeType type;
    Node a, b;
    bool sixWire;
    double perLead;
  };
  const Row rows[] = {{BridgeType::QuarterThreeWire, Node::Arm1Begin, Node::Arm1End, false, -1},
                      {BridgeType::QuarterTwoWire, Node::Arm1Begin, Node::Arm1End, false, -2},
                      {BridgeType::HalfBending, Node::Arm1Begin, Node::Arm1End, false, -1},
                      {BridgeType::FullBending, Node::Arm1Begin, Node::Arm1End, false, -2},
                      {BridgeType::FullBending, Node::Arm1Begin, Node::Arm1End, true, 0},
                      {BridgeType::QuarterThreeWire, Node::PPlus, Node::SMinus, false, 3},
                      {BridgeType::QuarterTwoWire, Node::PPlus, Node::SMinus, false, 2},
                      {BridgeType::HalfBending, Node::PPlus, Node::SMinus, false, 3},
                      {BridgeType::FullBending, Node::PPlus, Node::SMinus, false, 2},
                      {BridgeType::FullBending, Node::PPlus, Node::SMinus, true, 4},
                      {BridgeType::FullBending, Node::SensePlus, Node::SMinus, true, 2}};
  constexpr double r = 1e-3;
  for (const Row& row : rows) {
    const WhatIf what =
        tryOut(withSmallShunt(row.type, row.a, row.b, row.sixWire), {{LeadResistance, 0, 0, 350 * r}});
    // The second order is some ten r squared at most (1 + 4 r: (2 r) squared and products).
    EXPECT_NEAR(reading(what, 1) / without(what, 1), 1 + row.perLead * r, 12 * r * r)
        << std::string_view(templateOf(row.type).name) << ", " << nodeName(row.a);
  }
}

TEST(WhatIf, ATwoWireLeadThatWarmsShiftsTheZeroAndThreeEqualWiresDoNot) {
  // Apparent strain of a two-wire lead, 2 RL alpha dT / (R F) to first order; three equal wires cancel
  // (derived, common in handbooks). 0.35 ohm, 20 K, alpha 0.00393/K: 78.6 µm/m.
  const core::Setup two =
      test::withLeads(withSmallShunt(BridgeType::QuarterTwoWire, Node::Arm1Begin, Node::Arm1End), 0.35_ohm);
  const WhatIf what = tryOut(two, {{LeadWarming, 0, 0, 20}});
  // Second order: the leads are 0.2 % of the arm, and attenuate by as much twice.
  EXPECT_NEAR(what.zeroJump->base(), 1e6 * 2 * 0.35 * 0.00393 * 20 / (350 * 2), 0.005 * 78.6);
  const core::Setup three =
      test::withLeads(withSmallShunt(BridgeType::QuarterThreeWire, Node::Arm1Begin, Node::Arm1End), 0.35_ohm);
  EXPECT_NEAR(tryOut(three, {{LeadWarming, 0, 0, 20}}).zeroJump->base(), 0, 1e-9);
}

TEST(WhatIf, MoistureReadsAsCompressionOfTheSizeThatHandbooksSay) {
  // -R/(F (R + Ri)) lumped over the gauge: Bower, Modern Strain Gage Technology, eq. 47.1.
  const core::Setup setup = withSmallShunt(BridgeType::QuarterThreeWire, Node::Arm1Begin, Node::Arm1End);
  const WhatIf what = tryOut(setup, {{Moisture, 0, 0, 1e6}});
  const double strain = -1e6 * 350 / (2 * (350 + 1e6));
  // The linear indication of a quarter bridge is off the strain by half of dR/R, 1.75e-4 here (TN-507).
  EXPECT_NEAR(what.zeroJump->base(), strain, 2e-4 * std::abs(strain));
  // Derived, exactly: v = -y/(4 - 2 y) with y = R/(R + Ri), shown as 4 v/F.
  const double y = 350 / (350 + 1e6);
  EXPECT_DIGITS(what.zeroJump->base(), -1e6 * 4 / 2.0 * y / (4 - 2 * y), 9);
  EXPECT_EQ(reading(what, 0), 0) << "zeroed after it came, the zero is a zero";
  EXPECT_DIGITS(reading(what, 0, Zeroed::Before), what.zeroJump->base(), 12);
  // With the old zero every reading has the jump in it.
  EXPECT_NEAR(reading(what, 1, Zeroed::Before) - reading(what, 1), what.zeroJump->base(), 1e-9);
}

TEST(WhatIf, MoistureToTheStructureDependsOnWhatTheStructureIsConnectedTo) {
  // At a floating structure one leak alone does nothing; with structure and excitation grounded the error can
  // be positive (Bower, ch. 47).
  const core::Setup setup = withSmallShunt(BridgeType::QuarterThreeWire, Node::Arm1Begin, Node::Arm1End);
  const WhatIf floating = tryOut(setup, {{MoistureToStructure, 0, 0, 1e6}});
  EXPECT_NEAR(floating.zeroJump->base(), 0, 1e-9);
  EXPECT_TRUE(says(floating, Zeroed::After, "The structure is connected to nothing else"))
      << whatIfSentence(floating, Zeroed::After);
  const WhatIf grounded = tryOut(setup, {{MoistureToStructure, 0, 0, 1e6}, {StructureConnected, 1}});
  // Derived by small currents: the middle of arm 1 is at 3/4, so 0.75/Ri flows to P-; it drops half of R/2 in
  // its way to S-: S- falls by 0.75/Ri x R/4, the output rises by as much; 4 v/F. Second order: R/Ri.
  EXPECT_NEAR(grounded.zeroJump->base(), 1e6 * 4 / 2.0 * 0.75 * 350 / 4 / 1e6, 131 * 1e-3);
  EXPECT_GT(grounded.zeroJump->base(), 0);
}

TEST(WhatIf, WarmGaugesSimulateLessAndReadTheSame) {
  // Gauge factor of constantan, +0.9 % per 100 K (Bower, table 24.1); the strain of a shunt is -R/(F (R +
  // Rs)), so it falls as the gauge factor rises (TN-504, eq. 504.9, from memory).
  core::Setup setup =
      test::withShuntOnArm(test::equalArms(BridgeType::QuarterThreeWire, 350.0_ohm), 174.65_kohm, 1);
  setup.bridge.gauge.factorCoefficient = 0.9e-4;
  const WhatIf what = tryOut(setup, {{GaugeWarming, 0, 0, 50}});
  EXPECT_EQ(reading(what, 0), without(what, 0));
  EXPECT_DIGITS(*what.steps[0].without->simulated, -1e-3, 9);
  EXPECT_DIGITS(*what.steps[0].zeroedAfter->simulated, -1e-3 / 1.0045, 9);
}

TEST(WhatIf, ABrokenReturnWireDrivesTheSignalToTheSupply) {
  // Derived: no current flows in the gauge, S- is at P+: v = 1/2 - 1 for any shunt over the gauge.
  const core::Setup setup = nineSteps();
  const WhatIf what = tryOut(setup, {{LeadBroken, thirdWire}});
  EXPECT_DIGITS(what.zeroWith->base(), -0.5, 14);
  for (const WhatIfStep& step : what.steps) EXPECT_EQ(step.zeroedAfter->polarity, Polarity::None);
  EXPECT_FALSE(what.steps[1].zeroedAfter->simulated) << "no strain of the gauge gives that";
  EXPECT_TRUE(says(what, Zeroed::After, "No step moves the reading any more."));
  EXPECT_TRUE(says(what, Zeroed::After, "far beyond what an instrument for strain gauges takes"));
  EXPECT_EQ(polarityChangeText(what.steps[1], Zeroed::After), "none instead of +");
  // And the other way round without the wire to P+.
  EXPECT_DIGITS(tryOut(setup, {{LeadBroken, pPlus}}).zeroWith->base(), 0.5, 14);
}

TEST(WhatIf, ABrokenSignalLeadFloatsAndSaysSo) {
  const WhatIf what = tryOut(nineSteps(), {{LeadBroken, sMinus}});
  EXPECT_FALSE(what.zeroWith);
  EXPECT_FALSE(what.zeroJump);
  for (const Zeroed zeroed : {Zeroed::After, Zeroed::Before}) {
    for (const WhatIfStep& step : what.steps) EXPECT_FALSE(step.with(zeroed));
    EXPECT_TRUE(says(what, zeroed, "No step can be read any more (")) << whatIfSentence(what, zeroed);
    EXPECT_TRUE(says(what, zeroed, "S-: nothing is connected there")) << whatIfSentence(what, zeroed);
    EXPECT_TRUE(says(what, zeroed, "hangs in the air"));
  }
  EXPECT_EQ(polarityChangeText(what.steps[1], Zeroed::After), "cannot be read");
  EXPECT_FALSE(growthPercent(what, what.steps[1], Zeroed::After));
  // An input that takes a current holds the lead at the other signal: no difference, nothing to read.
  core::Setup loaded = nineSteps();
  loaded.instrument.inputResistance = 10.0_Mohm;
  const WhatIf held = tryOut(loaded, {{LeadBroken, sMinus}});
  EXPECT_NEAR(held.zeroWith->base(), 0, 1e-15);
  EXPECT_NEAR(reading(held, 1), 0, 1e-9);
}

TEST(WhatIf, AShuntThatAFaultShortsDoesNothing) {
  // P+ and S- touching at the gauge: shunts over the gauge lie across one point.
  const WhatIf what = tryOut(nineSteps(), {{LeadsTouching, pPlus, sMinus}});
  EXPECT_EQ(reading(what, 5), 0);
  EXPECT_LT(without(what, 5), 0);
  EXPECT_TRUE(says(what, Zeroed::After, "Steps 6–8 do not move the reading any more."))
      << whatIfSentence(what, Zeroed::After);
}

TEST(WhatIf, LargestChangeAndZeroAreToldWithTheirNumbers) {
  // Derived: arms 1 and 2 of 350 ohm, no leads, F = 2. Arm 3 of 353.5 ohm moves the zero by 1.01/2.01 - 1/2 =
  // 1/402, shown as 2e6/402 = 4975.1 µm/m, and no step, for the other half bridge does not know of it.
  const core::Setup setup =
      test::withShuntOnArm(test::equalArms(BridgeType::QuarterThreeWire, 350.0_ohm), 174.65_kohm, 1);
  const WhatIf zero = tryOut(setup, {{ArmValue, 2, 0, 353.5}});
  EXPECT_EQ(whatIfSentence(zero, Zeroed::After),
            "The zero jumps by +4975.1 µm/m (2.49 mV/V), which zeroing takes away.");
  // A shunt of 1/500: 4 x (-1/1998)/2 = -1001.0 µm/m; with the zero in it 3974.1.
  EXPECT_EQ(whatIfSentence(zero, Zeroed::Before),
            "The zero jumps by +4975.1 µm/m (2.49 mV/V), which is in every reading. Step 1 turns its sign.");
  // Over a gauge of 353.5 ohm, y = 353.5/(353.5 + 174650) = 0.00201996: from 1.01/2.01 ... the change grows
  // by 1 % to first order (TN-514: output step +d of an arm off by d).
  const WhatIf arm = tryOut(setup, {{ArmValue, 0, 0, 353.5}});
  EXPECT_NEAR(*growthPercent(arm, arm.steps[0], Zeroed::After), 1.0, 0.02) << "second order: 1 % of 1 %";
  EXPECT_TRUE(says(arm, Zeroed::After, "Step 1 “R1” changes most: it reads -101"))
      << whatIfSentence(arm, Zeroed::After);
  EXPECT_TRUE(says(arm, Zeroed::After, "instead of -1001.0 µm/m")) << whatIfSentence(arm, Zeroed::After);
}

TEST(WhatIf, OneShareOfAllReadingsIsToldAsSuch) {
  // Two wires for one: r = 2/350 twice, by 1 - 2 r of a full bridge without sense leads, all steps alike.
  core::Setup setup =
      test::withShuntOnArm(test::equalArms(BridgeType::FullBending, 350.0_ohm), 174.65_kohm, 1);
  setup = test::withShuntOnArm(setup, 174.65_kohm, 2);
  const WhatIf what = tryOut(setup, {{LeadResistance, 0, 0, 2}});
  // Cable loss 2 RL/(R + 2 RL) (reproduces figures of Kyowa): 4/354 = 1.13 %.
  EXPECT_TRUE(says(what, Zeroed::After, "All readings are 1.13 % smaller."))
      << whatIfSentence(what, Zeroed::After);
}

TEST(WhatIf, BeyondTheRangeIsToldWhereTheRangeIsKnown) {
  core::Setup setup = nineSteps();
  setup.instrument.range = 3.0_mV_per_V;
  // 5 ohm more in the gauge's arm of 350 + 2 + 2: 3.5 mV/V (derived: 5/357 / 4).
  const WhatIf what = tryOut(setup, {{LeadContact, pPlus, 0, 5}});
  EXPECT_TRUE(what.steps[0].zeroedAfter->beyondRange);
  EXPECT_FALSE(what.steps[0].without->beyondRange);
  EXPECT_TRUE(says(what, Zeroed::After, "beyond the ±3 mV/V that the instrument takes"));
}

TEST(WhatIf, APlanThatCannotBeWorkedOutSaysWhy) {
  core::Setup setup = nineSteps();
  setup.bridge.arms[2] = 0.0_ohm;
  const WhatIf what = tryOut(setup, {{SignalReversed}});
  EXPECT_FALSE(what.zeroWithout);
  EXPECT_TRUE(says(what, Zeroed::After, "The plan cannot be worked out as it is: arm 3"));
  EXPECT_EQ(polarityChangeText(what.steps[1], Zeroed::After), "unknown");
}

TEST(WhatIf, ARefusedAlterationIsPassedOn) {
  const auto result = whatIf(nineSteps(), std::vector{Alteration{LeadBroken, sPlus}});
  ASSERT_FALSE(result);
  EXPECT_EQ(result.error().where, "Lead S+ broken");
}

TEST(WhatIf, ExchangedSignalLeadsReadAsReversedSignalWires) {
  // The same wires, whoever exchanges them.
  core::Setup setup = test::withLeads(
      test::withShuntOnArm(test::equalArms(BridgeType::FullBending, 350.0_ohm), 174.65_kohm, 1), 2.0_ohm);
  const WhatIf leads = tryOut(setup, {{LeadsExchanged, sPlus, sMinus}});
  EXPECT_EQ(polarityChangeText(leads.steps[0], Zeroed::After), "reversed, now +");
  EXPECT_NEAR(reading(leads, 0), reading(tryOut(setup, {{SignalReversed}}), 0), 1e-9);
  EXPECT_NEAR(*growthPercent(leads, leads.steps[0], Zeroed::After), -200, 1e-9);
}

/// A full bridge of 350 ohm with wires of 2 ohm and a shunt from terminal P+ to terminal S-, as an instrument
/// with calibration resistors inside has it.
core::Setup shuntedAtTheInstrument() {
  core::Setup setup = test::withShunt(test::equalArms(BridgeType::FullBending, 350.0_ohm), 100.0_kohm,
                                      Node::PPlus, Node::SMinus);
  return test::withLeads(setup, 2.0_ohm);
}

bool startsWith(const std::string& text, const std::string& start) {
  return text.compare(0, start.size(), start) == 0;
}

TEST(WhatIf, ExchangedLeadsThatOnlyTurnTheArticleAreToldFirst) {
  // Derived: with the signal or the excitation wires exchanged the same terminals lie over an arm of the
  // other half bridge, which moves the other signal by the same amount: the shunt reads as before. What the
  // gauges do does not know of the terminals, and reads with the other sign.
  for (const auto& [a, b] : {std::pair(sPlus, sMinus), std::pair(pPlus, role(LeadRole::ExcitationMinus))}) {
    const WhatIf what = tryOut(shuntedAtTheInstrument(), {{LeadsExchanged, a, b}});
    // Symmetric but for rounding: equal arms and equal wires.
    EXPECT_NEAR(reading(what, 0), without(what, 0), 1e-6 * std::abs(without(what, 0)));
    EXPECT_LT(*what.steps[0].zeroedAfter->simulated * *what.steps[0].without->simulated, 0);
    EXPECT_DIGITS(*what.articleGain, -1, 9);
    for (const Zeroed zeroed : {Zeroed::After, Zeroed::Before}) {
      EXPECT_TRUE(startsWith(whatIfSentence(what, zeroed),
                             "The article's strain then reads with the other sign (simulated "))
          << whatIfSentence(what, zeroed);
      EXPECT_TRUE(says(what, zeroed, "which a shunt check does not see")) << whatIfSentence(what, zeroed);
      EXPECT_EQ(polarityChangeText(what.steps[0], zeroed), "as before, reads the article reversed");
    }
  }
  // Reversed gauges among others are not lost beside them: 2 x 10 ohm of 370 (TN-514: attenuation).
  const WhatIf both = tryOut(shuntedAtTheInstrument(), {{LeadResistance, 0, 0, 10}, {GaugesReversed}});
  EXPECT_DIGITS(*both.articleGain, -354.0 / 370, 9);
  EXPECT_TRUE(startsWith(whatIfSentence(both, Zeroed::After),
                         "The article's strain then reads with the other sign, 4.32 % smaller (simulated "))
      << whatIfSentence(both, Zeroed::After);
}

TEST(WhatIf, AnArticleThatKeepsItsSignWhileTheShuntsTurnIsTold) {
  const WhatIf what = tryOut(shuntedAtTheInstrument(), {{SignalReversed}, {GaugesReversed}});
  EXPECT_DIGITS(*what.articleGain, 1, 12);
  EXPECT_TRUE(says(what, Zeroed::After, "The article's strain then keeps its sign"))
      << whatIfSentence(what, Zeroed::After);
  EXPECT_EQ(polarityChangeText(what.steps[0], Zeroed::After), "reversed, now +, reads the article as before");
  // Where both turn there is nothing more to tell.
  EXPECT_EQ(articleSentence(tryOut(shuntedAtTheInstrument(), {{SignalReversed}}), false), "");
}

TEST(WhatIf, AnArticleThatReadsSmallerThanTheShuntsTellIsTold) {
  // Derived: without leads a contact of 17.5 ohm in P+ leaves 350/367.5 of the excitation. A shunt over P+
  // and S- of the instrument lies over the contact too and reads 1 + 3 r with r = 0.05, to first order.
  core::Setup setup = test::withLeads(shuntedAtTheInstrument(), 0.0_ohm);
  const WhatIf what = tryOut(setup, {{LeadContact, pPlus, 0, 17.5}});
  EXPECT_DIGITS(*what.articleGain, 350 / 367.5, 9);
  EXPECT_TRUE(says(what, Zeroed::After, "The article's strain reads 4.76 % smaller (simulated "))
      << whatIfSentence(what, Zeroed::After);
}

TEST(WhatIf, AlterationsThatCancelAreSaidTo) {
  for (const auto& pair :
       {std::vector<Alteration>{{SignalReversed}, {SignalReversed}},
        std::vector<Alteration>{{LeadsExchanged, sPlus, sMinus}, {LeadsExchanged, sMinus, sPlus}}}) {
    const core::Setup setup = shuntedAtTheInstrument();
    EXPECT_EQ(whatIfSentence(tryOut(setup, pair), Zeroed::After),
              "Together they change nothing: the bridge is as it was.");
  }
  const core::Setup atGauge =
      test::withShuntOnArm(test::equalArms(BridgeType::FullBending, 350.0_ohm), 100.0_kohm, 1);
  EXPECT_TRUE(says(tryOut(atGauge, {{SignalReversed}, {ExcitationReversed}}), Zeroed::After,
                   "Together they change no reading and no zero"));
}

TEST(WhatIf, AZeroThatTheInstrumentCannotTakeComesFirst) {
  core::Setup setup = nineSteps();
  setup.instrument.range = 3.0_mV_per_V;
  // 5 ohm more in the arm of 350 + 2 + 2: 3.5 mV/V, as above.
  const std::string sentence = whatIfSentence(tryOut(setup, {{LeadContact, pPlus, 0, 5}}), Zeroed::After);
  EXPECT_TRUE(startsWith(sentence, "The zero jumps by ")) << sentence;
  EXPECT_NE(sentence.find("; the zero is then beyond the ±3 mV/V that the instrument takes."),
            std::string::npos)
      << sentence;
}

TEST(WhatIf, TheChangeIsToldWithAsManyDigitsAsItsPerCent) {
  // Cable loss 2 RL/(R + 2 RL) as above: 4/354 = 1.13 % of 1000.98/4 µm/m (TN-514, N = 4) is 2.83 µm/m.
  const core::Setup setup =
      test::withShuntOnArm(test::equalArms(BridgeType::FullBending, 350.0_ohm), 174.65_kohm, 1);
  const WhatIf what = tryOut(setup, {{LeadResistance, 0, 0, 2}});
  EXPECT_TRUE(says(what, Zeroed::After, ", 2.83 µm/m higher, 1.13 % smaller in size."))
      << whatIfSentence(what, Zeroed::After);
}

TEST(WhatIf, WhatCannotBeSeenIsNoChange) {
  // A leak of 10 Gohm beside 350 ohm: 3.5e-8 of the arm, and as small a share of a reading.
  const core::Setup setup = withSmallShunt(BridgeType::QuarterThreeWire, Node::Arm1Begin, Node::Arm1End);
  const WhatIf leak = tryOut(setup, {{Moisture, 0, 0, 1e10}});
  const std::string sentence = whatIfSentence(leak, Zeroed::After);
  EXPECT_TRUE(startsWith(sentence, "The zero jumps by ")) << sentence;
  EXPECT_TRUE(says(leak, Zeroed::After, "No visible change of the readings.")) << sentence;
  EXPECT_FALSE(says(leak, Zeroed::After, " instead of "));
  const double change = (leak.steps[1].zeroedAfter->reading - leak.steps[1].without->reading).base();
  EXPECT_EQ(shownDifference(leak, change).value, 0) << change;
  EXPECT_EQ(shownGrowth(leak, leak.steps[1], Zeroed::After)->value, 0);
  EXPECT_FALSE(growthPercent(leak, leak.steps[0], Zeroed::After)) << "a zero has no per cent";
  // Within the uncertainty of the reading nobody sees it either: 0.057 % of a reading that is known to 1 %.
  WhatIf contact = tryOut(setup, {{LeadResistance, 0, 0, 0.2}});
  EXPECT_TRUE(says(contact, Zeroed::After, "instead of")) << whatIfSentence(contact, Zeroed::After);
  contact.uncertainty = {std::nullopt, 0.01 * std::abs(without(contact, 1))};
  EXPECT_TRUE(says(contact, Zeroed::After, "No visible change of the readings: step 2 “R1” changes most, by"))
      << whatIfSentence(contact, Zeroed::After);
}

TEST(WhatIf, RoundingOfTheSolverIsNeverShown) {
  const WhatIf what = tryOut(nineSteps(), {});
  // Potentials carry some 1e-16; times 2e6 µm/m that is 2e-10.
  EXPECT_EQ(withoutRounding(what, 2e-10), 0);
  EXPECT_EQ(withoutRounding(what, -2e-10), 0);
  EXPECT_EQ(withoutRounding(what, 1e-3), 1e-3);
}

TEST(WhatIf, TheGreatestOfThoseThatStillMoveIsOneOfTheOthers) {
  // P- broken: shunts over the half bridge at the instrument's terminals that hang on it do nothing more.
  const WhatIf what = tryOut(nineSteps(), {{LeadsTouching, pPlus, sMinus}});
  ASSERT_TRUE(says(what, Zeroed::After, "do not move the reading any more."));
  EXPECT_TRUE(says(what, Zeroed::After, "Of the others step ")) << whatIfSentence(what, Zeroed::After);
}

}  // namespace what_if_test
