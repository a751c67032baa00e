// SPDX-License-Identifier: GPL-3.0-or-later
// What each effect does to a bridge, one at a time and against closed forms. All of them at once are compared
// with ngspice in tests/reference.
#include "core/circuit/effects.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

#include "tests/support/digits.h"
#include "tests/support/setups.h"

using namespace core;
using enum BridgeType;

namespace effects_test {

// Outputs are differences of two potentials, each right to some 1e-16: absolute error of what should be zero.
constexpr double rounding = 5e-16;

double out(const core::Setup& setup, double strain = 0) { return test::outputAt(setup, strain).base(); }

double parallel(double a, double b) { return a * b / (a + b); }

/// (R1 R3 - R2 R4) / ((R1 + R2)(R3 + R4)), Micro-Measurements TN-514 eq. 514.1a.
double bridgeFormula(const std::array<double, 4>& r) {
  return (r[0] * r[2] - r[1] * r[3]) / ((r[0] + r[1]) * (r[2] + r[3]));
}

/// A full bridge of these four arms without leads.
core::Setup bridgeOf(const std::array<double, 4>& ohm) {
  core::Setup setup = test::equalArms(FullBending, 350.0_ohm);
  for (std::size_t arm = 0; arm < 4; ++arm) setup.bridge.arms[arm] = Resistance(ohm[arm]);
  return setup;
}

core::Setup withParallelBalance(core::Setup setup, double potentiometer, double limiting, double wiper) {
  setup.instrument.balance = {BalanceKind::Parallel, Resistance(potentiometer), Resistance(limiting), wiper};
  return setup;
}

core::Setup withSeriesBalance(core::Setup setup, double potentiometer, double wiper) {
  setup.instrument.balance = {BalanceKind::Series, Resistance(potentiometer), Resistance(1), wiper};
  return setup;
}

core::Setup withLeakToStructure(core::Setup setup, std::size_t arm, double ohm, double place) {
  setup.bridge.leaks[arm - 1].toStructure = Resistance(ohm);
  setup.bridge.leaks[arm - 1].place = place;
  return setup;
}

core::Setup grounded(core::Setup setup, Grounding grounding) {
  setup.instrument.grounding = grounding;
  return setup;
}

core::Setup atConstantCurrent(core::Setup setup, Resistance nominal) {
  setup.instrument.current = CurrentSource{10.0_mA, nominal};
  return setup;
}

/// Output of an equal-arm bridge with `shunt` over arm 1 or 3: -R/(4 Rs + 2 R), Micro-Measurements TN-514.
double shuntedDown(double r, double shunt) { return -r / (4 * shunt + 2 * r); }

constexpr std::array<double, 4> unequal = {351, 349.2, 350.7, 348.9};

/// Potential of S+ with a parallel balance: the divider of arms 3 and 4, and the potentiometer as the source
/// it is to the rest by Thevenin: voltage w behind P w (1 - w) and the limiting resistor.
double balancedSPlus(const std::array<double, 4>& r, double potentiometer, double limiting, double w) {
  const double g = 1 / (limiting + potentiometer * w * (1 - w));
  return (1 / r[3] + g * w) / (1 / r[2] + 1 / r[3] + g);
}

TEST(Balance, ParallelIsASourceBehindItsResistor) {
  for (const double wiper : {0.0, 0.2, 0.5, 0.9, 1.0}) {
    const auto setup = withParallelBalance(bridgeOf(unequal), 10e3, 50e3, wiper);
    const double sMinus = unequal[1] / (unequal[0] + unequal[1]);
    EXPECT_NEAR(out(setup), balancedSPlus(unequal, 10e3, 50e3, wiper) - sMinus, rounding) << wiper;
  }
}

TEST(Balance, ParallelBringsABridgeToZeroAtItsWiper) {
  // Derived: arm 1 that makes S- equal to S+, R1 = R2 (1/s - 1).
  for (const double wiper : {0.1, 0.65}) {
    std::array<double, 4> arms = unequal;
    arms[0] = arms[1] * (1 / balancedSPlus(arms, 10e3, 50e3, wiper) - 1);
    EXPECT_GT(std::abs(out(bridgeOf(arms))), 1e-5) << "unbalanced without";
    EXPECT_NEAR(out(withParallelBalance(bridgeOf(arms), 10e3, 50e3, wiper)), 0, rounding) << wiper;
  }
}

TEST(Balance, ParallelInTheMiddleOfAnEqualHalfLeavesTheOtherHalfAlone) {
  // Arms 3 and 4 are equal and the wiper is at their voltage: no current. A quarter bridge reads as without.
  const core::Setup plain = test::equalArms(QuarterThreeWire, 350.0_ohm);
  const core::Setup balanced = withParallelBalance(plain, 10e3, 20e3, 0.5);
  for (const double strain : {-2e-3, 0.0, 5e-3})
    EXPECT_NEAR(out(balanced, strain), out(plain, strain), rounding);
}

TEST(Balance, ParallelTakesSensitivityFromTheArmsThatItLoads) {
  // Derived: S+ of arms 3 and 4 with source resistance R/2 for small strain, loaded by L + P/4: the share
  // Z/(Z + R/2) of their half of the output is left. The other half is not touched.
  const core::Setup setup = withParallelBalance(test::equalArms(FullBending, 350.0_ohm), 10e3, 20e3, 0.5);
  const double z = 20e3 + 10e3 / 4, strain = 1e-3, x = 2e-3;
  // Opposite changes in arms 3 and 4 leave R3 || R4 = R (1 - x^2)/2.
  const double kept = z / (z + 350 * (1 - x * x) / 2);
  EXPECT_DIGITS(out(setup, strain), x / 2 + kept * x / 2, 12);
}

TEST(Balance, SeriesAddsItsPartsToArms3And4) {
  for (const double wiper : {0.0, 0.3, 1.0}) {
    const auto setup = withSeriesBalance(bridgeOf(unequal), 5, wiper);
    const std::array<double, 4> arms = {unequal[0], unequal[1], unequal[2] + 5 * wiper,
                                        unequal[3] + 5 * (1 - wiper)};
    EXPECT_NEAR(out(setup), bridgeFormula(arms), rounding) << wiper;
  }
}

TEST(Balance, SeriesBringsABridgeToZeroAtItsWiper) {
  // Derived: (R3 + w P) / (R3 + R4 + P) = R2 / (R1 + R2), solved for w.
  const auto [r1, r2, r3, r4] = unequal;
  const double p = 8, wiper = (r2 / (r1 + r2) * (r3 + r4 + p) - r3) / p;
  ASSERT_GT(wiper, 0);
  ASSERT_LT(wiper, 1);
  EXPECT_GT(std::abs(out(bridgeOf(unequal))), 1e-4) << "unbalanced without";
  EXPECT_NEAR(out(withSeriesBalance(bridgeOf(unequal), p, wiper)), 0, rounding);
}

TEST(Leak, OverAGaugeIsAShuntOverIt) {
  // Bower, Modern Strain Gage Technology, eq. 47.1: the leak lies over the gauge.
  for (const double leak : {1e5, 1e7, 1e9}) {
    core::Setup setup = test::equalArms(QuarterThreeWire, 350.0_ohm);
    setup.bridge.leaks[0].across = Resistance(leak);
    EXPECT_NEAR(out(setup), shuntedDown(350, leak), rounding) << leak;
  }
  core::Setup third = bridgeOf(unequal);
  third.bridge.leaks[2].across = Resistance(1e5);
  EXPECT_NEAR(out(third), bridgeFormula({unequal[0], unequal[1], parallel(unequal[2], 1e5), unequal[3]}),
              rounding);
}

TEST(Leak, OverAGaugeDoesNotTakeInTheSeriesBalance) {
  // Derived: the potentiometer is in series with the gauge and its leak.
  for (const std::size_t arm : {2, 3}) {
    core::Setup setup = withSeriesBalance(bridgeOf(unequal), 20, 0.25);
    setup.bridge.leaks[arm].across = Resistance(1e4);
    std::array<double, 4> arms = unequal;
    arms[arm] = parallel(arms[arm], 1e4);
    arms[2] += 5, arms[3] += 15;
    EXPECT_NEAR(out(setup), bridgeFormula(arms), rounding) << "arm " << arm + 1;
  }
}

TEST(Leak, AtTheEndOfAGridIsTheLimitOfOneJustBeforeIt) {
  // Also where a series balance follows. Moved by 1e-6 of a grid, the leak's current, at most 1 V / 10 kohm,
  // passes another 350 microohm.
  for (const std::size_t arm : {1, 2, 3, 4})
    for (const double end : {0.0, 1.0}) {
      const core::Setup base = grounded(withSeriesBalance(bridgeOf(unequal), 20, 0.25), Grounding::PMinus);
      const double before = std::abs(end - 1e-6);
      EXPECT_NEAR(out(withLeakToStructure(base, arm, 1e4, end)),
                  out(withLeakToStructure(base, arm, 1e4, before)), 1e-6 * 350 / 1e4)
          << "arm " << arm << ", end " << end;
    }
}

TEST(Leak, OneToAFloatingStructureDoesNothing) {
  // Bower, ch. 47: a leak at one place of a floating part does nothing; no current has a way back.
  for (const std::size_t arm : {1, 2, 3, 4})
    for (const double place : {0.0, 0.3, 1.0})
      EXPECT_NEAR(out(withLeakToStructure(bridgeOf(unequal), arm, 1e5, place)), bridgeFormula(unequal),
                  rounding);
}

TEST(Leak, TwoToAFloatingStructureAreOneResistorOfTheirSum) {
  // Derived: the structure joins them in series, from one place to the other.
  const core::Setup plain = test::equalArms(QuarterTwoWire, 350.0_ohm);
  const auto two = [&](double place1, double place2) {
    return out(withLeakToStructure(withLeakToStructure(plain, 1, 4e4, place1), 2, 6e4, place2));
  };
  EXPECT_NEAR(two(0, 0), shuntedDown(350, 1e5), rounding) << "from P+ to S-: over arm 1";
  EXPECT_NEAR(two(1, 1), -shuntedDown(350, 1e5), rounding) << "from S- to P-: over arm 2";
  EXPECT_NEAR(two(1, 0), 0, rounding) << "both at S-";
  EXPECT_NEAR(two(0, 1), 0, rounding) << "over the supply";
  // From a quarter of grid 1 to S-: over three quarters of it.
  const double arm1 = 350 * 0.25 + parallel(350 * 0.75, 1e5);
  EXPECT_NEAR(two(0.25, 0), bridgeFormula({arm1, 350, 350, 350}), rounding);
  // From half of grid 1 to half of grid 2: three resistors and the leak over the middle one with S- in it.
  // S- divides the middle in halves of equal resistance, so by symmetry nothing moves.
  EXPECT_NEAR(two(0.5, 0.5), 0, rounding);
}

TEST(Leak, ToAGroundedStructureDependsOnItsPlaceAndOnTheGround) {
  const core::Setup plain = test::equalArms(QuarterTwoWire, 350.0_ohm);
  const auto one = [&](std::size_t arm, double place, Grounding grounding) {
    return out(grounded(withLeakToStructure(plain, arm, 1e5, place), grounding));
  };
  // The ends of the arm: a shunt over the arm between the place and the ground, or over the supply.
  EXPECT_NEAR(one(1, 0, Grounding::PMinus), 0, rounding) << "over the supply";
  EXPECT_NEAR(one(1, 1, Grounding::PMinus), -shuntedDown(350, 1e5), rounding) << "over arm 2";
  EXPECT_NEAR(one(1, 1, Grounding::PPlus), shuntedDown(350, 1e5), rounding) << "over arm 1";
  EXPECT_NEAR(one(1, 0, Grounding::PPlus), 0, rounding) << "over nothing";
  EXPECT_NEAR(one(3, 1, Grounding::PMinus), shuntedDown(350, 1e5), rounding) << "over arm 3";
  EXPECT_NEAR(one(4, 0, Grounding::PPlus), -shuntedDown(350, 1e5), rounding) << "over arm 4";
  // Between, to P-: the leak over the lower (2 - p) R, of which S- takes R/((2 - p) R).
  for (const double p : {0.25, 0.5, 0.9}) {
    const double lower = parallel((2 - p) * 350, 1e5);
    const double sMinus = lower / (p * 350 + lower) / (2 - p);
    EXPECT_NEAR(one(1, p, Grounding::PMinus), 0.5 - sMinus, rounding) << p;
    EXPECT_GT(one(1, p, Grounding::PMinus), 0) << "reads upscale, Bower ch. 47";
  }
}

TEST(Leak, SplitsAnArmWithoutChangingItsStrain) {
  // Both pieces of the grid feel the strain: with next to no leakage the bridge is as it was. A leak of
  // 1e12 ohm to ground shifts the output by 350/(4e12).
  const core::Setup plain = test::equalArms(FullPoissonColumn, 350.0_ohm);
  core::Setup split = grounded(plain, Grounding::PMinus);
  for (const std::size_t arm : {1, 2, 3, 4}) split = withLeakToStructure(split, arm, 1e12, 0.2 * double(arm));
  for (const double strain : {-1e-3, 4e-3}) EXPECT_NEAR(out(split, strain), out(plain, strain), 4 * 1e-10);
}

TEST(ConstantCurrent, HalvesTheNonlinearityOfAQuarterBridge) {
  // Derived: with R1 = R (1 + x) the bridge is 2 R (2 + x)/(4 + x), so that Vo = I R x/(4 + x) against
  // V x/(4 + 2 x) at constant voltage. Equal arms have the input resistance R.
  const auto setup = atConstantCurrent(test::equalArms(QuarterThreeWire, 350.0_ohm, 2.1), 350.0_ohm);
  for (const double strain : {-5e-3, 1e-3, 20e-3}) {
    const double x = 2.1 * strain;
    EXPECT_DIGITS(out(setup, strain), x / (4 + x), 12) << strain;
  }
}

TEST(ConstantCurrent, MakesTheDiagonalHalfBridgeLinear) {
  // Derived: R1 = R3 = R (1 + x): input resistance R (2 + x)/2, output of it x/(2 + x).
  const auto setup = atConstantCurrent(test::equalArms(HalfDiagonal, 350.0_ohm), 350.0_ohm);
  for (const double strain : {-5e-3, 1e-3, 20e-3}) EXPECT_DIGITS(out(setup, strain), 2 * strain / 2, 12);
}

TEST(ConstantCurrent, DividesByTheNominalResistanceOfAnyBridge) {
  // Derived: each half carries its share of the current: (R1 R3 - R2 R4) / (R1 + R2 + R3 + R4) / R nominal.
  const auto [r1, r2, r3, r4] = std::array<double, 4>{340, 361, 355, 349};
  const auto setup = atConstantCurrent(bridgeOf({r1, r2, r3, r4}), 352.5_ohm);
  EXPECT_DIGITS(out(setup), (r1 * r3 - r2 * r4) / (r1 + r2 + r3 + r4) / 352.5, 12);
}

TEST(ConstantCurrent, DoesNotFeelTheLeadsOfTheExcitation) {
  // All current passes them, whatever they are. The full bridge at constant voltage loses 2 RL/(R + 2 RL).
  const auto plain = atConstantCurrent(test::equalArms(FullBending, 350.0_ohm), 350.0_ohm);
  core::Setup leads = test::withLeads(plain, 10.0_ohm);
  EXPECT_DIGITS(out(leads, 1e-3), 2e-3, 12);
  leads.bridge.sixWire = true;  // and what it senses is not what it divides by
  EXPECT_DIGITS(out(leads, 1e-3), 2e-3, 12);
}

TEST(ConstantCurrent, KeepsItsDigitsBehindAShortLead) {
  // A micro-ohm in series with 350 ohm: the voltage over it is 3e-9 of the whole.
  const auto setup = test::withLeads(atConstantCurrent(test::equalArms(FullBending, 350.0_ohm), 350.0_ohm),
                                     Resistance(1e-6));
  EXPECT_DIGITS(out(setup, 1e-3), 2e-3, 12);
}

TEST(ConstantCurrent, IsInvertedByTheStrainItTook) {
  const auto setup = atConstantCurrent(test::equalArms(QuarterThreeWire, 350.0_ohm, 2.1), 340.0_ohm);
  auto circuit = BridgeCircuit::make(setup.bridge, setup.instrument, {});
  for (const double strain : {-5e-3, 1e-3}) {
    const double x = 2.1 * strain, output = x / (4 + x) * 350 / 340;
    EXPECT_DIGITS(*circuit->stimulusFor(Output(output)), strain, 12);
  }
}

TEST(LeadWarming, IsAnApparentStrainOnTwoWires) {
  // Two wires lie in arm 1; copper, 0.393 %/K (IEC 60028, from memory). Exact: the bridge formula. To first
  // order 2 RL alpha dT / (R F), Micro-Measurements, article on leadwire resistance.
  core::Setup setup = test::withLeads(test::equalArms(QuarterTwoWire, 120.0_ohm, 2.1), 0.5_ohm);
  const double before = out(setup);
  setup.bridge.leadWarming = 15.0_K;
  const double warm = 2 * 0.5 * 0.00393 * 15;
  EXPECT_NEAR(out(setup) - before,
              bridgeFormula({121 + warm, 120, 120, 120}) - bridgeFormula({121, 120, 120, 120}), 2 * rounding);
  const double apparent = 4 * (out(setup) - before) / 2.1;
  // The next order is (RL + warming) / R, about one part in a hundred.
  EXPECT_NEAR(apparent, warm / (120 * 2.1), 0.02 * apparent);
}

TEST(LeadWarming, CancelsOnThreeWires) {
  core::Setup setup = test::withLeads(test::equalArms(QuarterThreeWire, 120.0_ohm), 5.0_ohm);
  for (const double warmer : {-30.0, 15.0, 60.0}) {
    setup.bridge.leadWarming = Warming(warmer);
    EXPECT_NEAR(out(setup), 0, rounding);
  }
}

TEST(LeadWarming, AddsToTheTemperatureOfACopperWire) {
  // Both ways to say 35 degrees.
  Bridge bridge;
  const auto plus = static_cast<std::size_t>(LeadRole::ExcitationPlus);
  bridge.leads[plus] = CopperWire{10.0_m, 0.14_mm2, Temperature(35)};
  const double said = leadResistance(bridge, LeadRole::ExcitationPlus).base();
  bridge.leads[plus] = CopperWire{10.0_m, 0.14_mm2, Temperature(25)};
  bridge.leadWarming = 10.0_K;
  EXPECT_DIGITS(leadResistance(bridge, LeadRole::ExcitationPlus).base(), said, 13);
}

TEST(GaugeFactor, ChangesWithTemperature) {
  // Linear law; +0.9 % in 100 K for constantan: Bower, ch. 24, table 24.1.
  core::Setup setup = test::equalArms(HalfBending, 350.0_ohm, 2.1);
  setup.bridge.gauge.factorCoefficient = 0.9e-2 / 100;
  setup.bridge.gauge.factorAt = Temperature(24);
  setup.bridge.gauge.installed = Temperature(74);
  EXPECT_DIGITS(gaugeFactorOf(setup.bridge.gauge), 2.1 * 1.0045, 14);
  EXPECT_DIGITS(out(setup, 1e-3), 2.1 * 1.0045 * 1e-3 / 2, 12) << "the output follows";
  EXPECT_DIGITS(armSlope(setup.bridge, 0), 350 * 2.1 * 1.0045, 14);
  setup.bridge.gauge.installed = setup.bridge.gauge.factorAt;
  EXPECT_EQ(gaugeFactorOf(setup.bridge.gauge), 2.1);
}

TEST(GaugeFactor, OfATransducerIsNotAsked) {
  core::Setup setup = test::equalArms(Transducer, 350.0_ohm);
  const double before = out(setup, 1);
  setup.bridge.gauge.factorCoefficient = 1e-3;
  setup.bridge.gauge.installed = Temperature(80);
  EXPECT_EQ(out(setup, 1), before);
}

TEST(Effects, KeysGoThereAndBack) {
  const auto all = [](std::size_t count, auto key, auto fromKey, auto first) {
    for (std::size_t k = 0; k < count; ++k) {
      const auto value = static_cast<decltype(first)>(k);
      EXPECT_EQ(fromKey(key(value)), value) << key(value);
    }
    EXPECT_FALSE(fromKey(""));
    EXPECT_FALSE(fromKey("Parallel"));
  };
  all(groundingCount, groundingKey, groundingFromKey, Grounding::Floating);
  all(balanceKindCount, balanceKindKey, balanceKindFromKey, BalanceKind::None);
  all(linearisationCount, linearisationKey, linearisationFromKey, Linearisation::None);
  EXPECT_EQ(groundingKey(Grounding::PMinus), "P-");
  EXPECT_EQ(balanceKindKey(BalanceKind::Series), "series");
  EXPECT_EQ(linearisationKey(Linearisation::BeforeZero), "before_zero");
}

}  // namespace effects_test
