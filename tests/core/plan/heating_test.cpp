// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/heating.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/support/digits.h"
#include "tests/support/effects.h"

using namespace core;
using enum BridgeType;
using testing::HasSubstr;

namespace {

std::vector<ArmHeat> heatsOf(const core::Setup& setup) {
  const auto heats = armHeats(setup);
  EXPECT_TRUE(heats) << (heats ? "" : heats.error().text());
  return heats ? *heats : std::vector<ArmHeat>{};
}

/// A quarter bridge of 350 ohm at `volt`, grid of 4 mm2 on thick steel, static test of moderate accuracy.
core::Setup gaugeAt(double volt) {
  core::Setup setup = test::equalArms(QuarterThreeWire, 350.0_ohm);
  setup.instrument.excitation = Voltage(volt);
  setup.bridge.gauge.grid = {4.0_mm2, HeatSink::Good, HeatDemand::StaticModerate};
  return setup;
}

HeatAdvice adviceOn(const core::Setup& setup) {
  const auto advice = heatAdvice(setup);
  EXPECT_TRUE(advice);
  return advice ? *advice : HeatAdvice{};
}

}  // namespace

TEST(ArmHeats, AreOfTheGaugesAndNoOthers) {
  for (const BridgeTemplate& shape : allTemplates()) {
    const auto heats = heatsOf(test::equalArms(shape.type, 350.0_ohm));
    std::vector<std::size_t> arms, gauges;
    for (const ArmHeat& heat : heats) arms.push_back(heat.arm);
    for (const std::size_t arm : {0, 1, 2, 3})
      if (shape.shares[arm].active() && shape.type != Transducer) gauges.push_back(arm);
    EXPECT_EQ(arms, gauges) << shape.key;
    // TN-502: half of the excitation over each, V^2 / (4 R).
    for (const ArmHeat& heat : heats) EXPECT_DIGITS(heat.power_W, 25.0 / (4 * 350), 14);
  }
}

TEST(ArmHeats, AreLessBehindLeads) {
  // Derived: the current V / (2 R + 2 RL) of a two-wire gauge, squared, times R.
  const auto heats = heatsOf(test::withLeads(test::equalArms(QuarterTwoWire, 350.0_ohm), 10.0_ohm));
  EXPECT_DIGITS(heats.at(0).power_W, 350 * std::pow(5.0 / 720, 2), 14);
}

TEST(ArmHeats, OfUnequalArmsGoWithTheirResistance) {
  // Derived: arms 1 and 2 carry one current, arms 3 and 4 another.
  core::Setup setup = test::equalArms(FullBending, 350.0_ohm);
  setup.bridge.arms = {300.0_ohm, 400.0_ohm, 350.0_ohm, 1.0_kohm};
  const auto heats = heatsOf(setup);
  const double left = std::pow(5.0 / 700, 2), right = std::pow(5.0 / 1350, 2);
  EXPECT_DIGITS(heats.at(0).power_W, 300 * left, 14);
  EXPECT_DIGITS(heats.at(1).power_W, 400 * left, 14);
  EXPECT_DIGITS(heats.at(2).power_W, 350 * right, 14);
  EXPECT_DIGITS(heats.at(3).power_W, 1000 * right, 14);
}

TEST(ArmHeats, AtConstantCurrentGoWithItsSquare) {
  // Derived: equal arms take half of the current each.
  core::Setup setup = test::withLeads(test::equalArms(FullBending, 350.0_ohm), 10.0_ohm);
  setup.instrument.current = CurrentSource{20.0_mA, 700.0_ohm};  // the nominal resistance plays no part
  for (const ArmHeat& heat : heatsOf(setup)) EXPECT_DIGITS(heat.power_W, 350 * 0.01 * 0.01, 13);
}

TEST(ArmHeats, OfAGridThatLeaksAreThoseOfBothItsPieces) {
  // Next to no leakage: the pieces together turn as much into heat as the whole. 1e12 ohm against 350.
  core::Setup setup = test::equalArms(QuarterThreeWire, 350.0_ohm);
  setup.bridge.leaks[0] = {{}, Resistance(1e12), 0.2};
  setup.instrument.grounding = Grounding::PMinus;
  EXPECT_DIGITS(heatsOf(setup).at(0).power_W, 25.0 / (4 * 350), 9);
}

TEST(ArmHeats, AreThoseOfOpenShunts) {
  const core::Setup plain = test::equalArms(FullBending, 350.0_ohm);
  const auto heats = heatsOf(test::withShuntOnArm(plain, 100.0_ohm, 1));
  EXPECT_EQ(heats.at(0).power_W, heatsOf(plain).at(0).power_W);
}

TEST(ArmHeats, HaveADensityWhenTheGridIsKnown) {
  EXPECT_DIGITS(heatsOf(gaugeAt(5)).at(0).density_W_per_m2.value(), 25.0 / (4 * 350) / 4e-6, 13);
  core::Setup setup = gaugeAt(5);
  setup.bridge.gauge.grid.area.reset();
  EXPECT_FALSE(heatsOf(setup).at(0).density_W_per_m2);
  for (const double wrong : {0.0, -1.0}) {
    setup.bridge.gauge.grid.area = Area(wrong);
    EXPECT_FALSE(heatsOf(setup).at(0).density_W_per_m2) << wrong;
  }
}

TEST(ArmHeats, FailAsThePredictionDoes) {
  core::Setup setup = gaugeAt(5);
  setup.bridge.arms[1] = Resistance(-1);
  const auto heats = armHeats(setup);
  ASSERT_FALSE(heats);
  EXPECT_EQ(heats.error().where, "arm 2");
  EXPECT_FALSE(heatAdvice(setup));
}

TEST(HeatAdvice, LiesBelowWithinOrAboveTheHandbook) {
  // Derived: V^2 / (4 R A), against 3.1 to 7.75 kW/m2 (TN-502, from memory): 4.17 V and 6.59 V are the ends.
  EXPECT_EQ(adviceOn(gaugeAt(4.16)).verdict, HeatVerdict::Below);
  EXPECT_EQ(adviceOn(gaugeAt(4.18)).verdict, HeatVerdict::Within);
  EXPECT_EQ(adviceOn(gaugeAt(6.58)).verdict, HeatVerdict::Within);
  EXPECT_EQ(adviceOn(gaugeAt(6.60)).verdict, HeatVerdict::Above);
}

TEST(HeatAdvice, SaysPowerDensityRangeAndWhatWouldReachItsEnd) {
  // Derived: 25 / 1400 W, over 4 mm2; sqrt(7.75 / 4.4643) x 5 V = 6.588 V whatever the excitation is.
  const std::string text = adviceOn(gaugeAt(5)).text;
  EXPECT_THAT(text, HasSubstr("Arm 1 turns 17.9 mW into heat"));
  EXPECT_THAT(text, HasSubstr("4.46 kW/m²"));
  EXPECT_THAT(text, HasSubstr("within the usual 3.1"));
  EXPECT_THAT(text, HasSubstr("to 7.75 kW/m²"));
  EXPECT_THAT(text, HasSubstr("thick steel"));
  EXPECT_THAT(text, HasSubstr("static, moderate accuracy"));
  EXPECT_THAT(text, HasSubstr("6.59 V would reach the upper end"));
  EXPECT_THAT(text, HasSubstr("data sheet"));
  EXPECT_THAT(adviceOn(gaugeAt(2)).text, HasSubstr("below the usual"));
  EXPECT_THAT(adviceOn(gaugeAt(2)).text, HasSubstr("6.59 V"));
  EXPECT_THAT(adviceOn(gaugeAt(10)).text, HasSubstr("above the usual"));
}

TEST(HeatAdvice, NamesACurrentWhereThereIsOne) {
  // Derived: half of 10 mA in 350 ohm is 8.75 mW, 2.19 kW/m2; sqrt(7.75 / 2.1875) x 10 mA = 18.8 mA.
  core::Setup setup = gaugeAt(5);
  setup.instrument.current = CurrentSource{10.0_mA, 350.0_ohm};
  EXPECT_THAT(adviceOn(setup).text, HasSubstr("18.8 mA would reach the upper end"));
  EXPECT_EQ(adviceOn(setup).verdict, HeatVerdict::Below);
}

TEST(HeatAdvice, IsOnTheWarmestGauge) {
  core::Setup setup = gaugeAt(5);
  setup.bridge.type = FullBending;
  setup.bridge.arms[3] = 340.0_ohm;  // its half takes more current, and the larger arm of that more heat
  EXPECT_THAT(adviceOn(setup).text, HasSubstr("Arm 3 turns"));
}

TEST(HeatAdvice, IsSilentWhereNothingIsKnown) {
  core::Setup unknown = gaugeAt(5);
  unknown.bridge.gauge.grid.area.reset();
  EXPECT_FALSE(heatAdvice(unknown)) << "no area";
  core::Setup transducer = gaugeAt(5);
  transducer.bridge.type = Transducer;
  EXPECT_FALSE(heatAdvice(transducer)) << "nobody knows its grids";
}
