// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diagnose/correction.h"

#include <gtest/gtest.h>

#include <cmath>

#include "tests/core/diagnose/held_check.h"
#include "tests/support/digits.h"

// Lead attenuation: R/(R + RL) with three wires, twice the lead with two (Micro-Measurements, article on
// leadwire resistance); cable losses of full bridges: Weighing News, "How to avoid load cell cable length
// errors", and Kyowa Americas, note on six-wire transducers. The rest is algebra of the voltage divider
// v = R3/(R3+R4) - R2/(R1+R2), short enough to stand beside each number. Eleven digits are asked for: the
// network carries sixteen, and some are lost in the ratio of two slopes.

namespace core {
namespace {

using test::equalArms;
using test::fitted;
using test::HeldCheck;
using test::knownExactly;
using test::nineSteps;

Setup quarter(BridgeType type) { return nineSteps(equalArms(type, Resistance(350)), 2, 1); }

double factorOf(const Setup& setup, const Fault& fault) {
  const auto ratio = strainSensitivityRatio(setup, fault);
  EXPECT_TRUE(ratio);
  return ratio ? 1 / *ratio : 0;
}

TEST(CorrectionFactor, OfForgottenLeadsOfAThreeWireQuarterBridgeIsThePublishedAttenuation) {
  const core::Setup setup = quarter(BridgeType::QuarterThreeWire);
  EXPECT_DIGITS(factorOf(setup, {CauseKind::Leads, 0, 0, 5}), (350.0 + 5) / 350, 11);
}

TEST(CorrectionFactor, OfForgottenLeadsOfATwoWireQuarterBridgeIsItsSquareOrOnePlusTwoLeadsToFirstOrder) {
  // Both wires lie in arm 1: dv/dR1 = R2/(R1 + R2)^2 = R/(2R + 2RL)^2, against 1/(4R).
  const core::Setup setup = quarter(BridgeType::QuarterTwoWire);
  EXPECT_DIGITS(factorOf(setup, {CauseKind::Leads, 0, 0, 4}), std::pow(354.0 / 350, 2), 11);
  // (R + 2RL)/R leaves (RL/R)^2 = 1e-8 for 0.035 ohm.
  EXPECT_NEAR(factorOf(setup, {CauseKind::Leads, 0, 0, 0.035}), (350 + 2 * 0.035) / 350, 1.01e-8);
}

TEST(CorrectionFactor, OfAFullBridgeCableAgreesWithPublishedLosses) {
  const core::Setup setup = equalArms(BridgeType::FullBending, Resistance(350));
  const auto loss_percent = [&](double lead) {
    return 100 * (1 - 1 / factorOf(setup, {CauseKind::Leads, 0, 0, lead}));
  };
  EXPECT_NEAR(loss_percent(0.1614), 0.09, 0.005);       // Weighing News; half of the last digit printed
  EXPECT_NEAR(loss_percent(4), 2.2, 0.05);              // Kyowa; half of the last digit printed
  EXPECT_DIGITS(loss_percent(4), 100 * 8.0 / 358, 11);  // 2RL/(R + 2RL)
}

TEST(CorrectionFactor, OfAnOpenSenseLeadIsTheLossThatSixWiresWouldHaveTakenOut) {
  core::Setup setup = test::withLeads(equalArms(BridgeType::FullBending, Resistance(350)), Resistance(5));
  setup.bridge.sixWire = true;
  EXPECT_DIGITS(factorOf(setup, {CauseKind::OpenSense}), 360.0 / 350, 11);
}

TEST(CorrectionFactor, OfSettingsIsOneOverTheScaleOfTheReadings) {
  const core::Setup setup = quarter(BridgeType::QuarterThreeWire);  // N = 1 is set
  EXPECT_DIGITS(factorOf(setup, {CauseKind::Scale, 0, 0, 1.035}), 1 / 1.035, 14);
  EXPECT_DIGITS(factorOf(setup, {CauseKind::BridgeFactor, 0, 0, 2}), 2.0, 14);
  EXPECT_DIGITS(factorOf(setup, {CauseKind::Units, 0, 0, 1000}), 1e-3, 14);
  EXPECT_DIGITS(factorOf(setup, {CauseKind::PolarityReversed}), -1.0, 14);
}

TEST(CorrectionFactor, OfALeakIsThatOfTheDividerAndItsZeroMovesByTheApparentStrain) {
  const core::Setup setup = quarter(BridgeType::QuarterTwoWire);
  const double r = 350, leak = 118e3, shunted = r * leak / (r + leak);
  // dR'/dR = (Ri/(R + Ri))^2, and the bridge's own slope is R/(R' + R)^2 instead of 1/(4R).
  const double ratio = 4 * r * r / std::pow(shunted + r, 2) * std::pow(leak / (r + leak), 2);
  const Fault fault{CauseKind::Leak, 0, 0, 1 / leak};
  EXPECT_DIGITS(factorOf(setup, fault), 1 / ratio, 11);
  // dR/R = -R/(R + Ri): M. J. Bower, Modern Strain Gage Technology, eq. 47.1; v = x/(4 + 2x), shown as 4v/F.
  const double x = -r / (r + leak);
  EXPECT_DIGITS(zeroMove(setup, fault).value_or(0), 1e6 * 4 * x / (4 + 2 * x) / 2, 11);
}

TEST(CorrectionFactor, OfAFaultOfTheCheckAloneIsOneAndNothingIsCorrected) {
  const HeldCheck held(quarter(BridgeType::QuarterThreeWire), 0.5);
  for (const CauseKind kind :
       {CauseKind::ShuntPlace, CauseKind::ShuntArm, CauseKind::ShuntValue, CauseKind::ShuntsExchanged,
        CauseKind::StepsExchanged, CauseKind::SidesExchanged, CauseKind::StrayReading}) {
    const Correction correction = correctionOf(held.ground(), held.budget, fitted(kind, 1.01, 0.001));
    EXPECT_EQ(correction.factor, 1.0) << causeKindKey(kind);
    EXPECT_EQ(correction.offset, 0.0);
    EXPECT_FALSE(correction.factorStandard);
    EXPECT_FALSE(correction.legitimate);
    EXPECT_NE(correction.reason.find("Nothing to correct"), std::string::npos);
  }
}

TEST(CorrectionUncertainty, OfAFittedScaleIsThatOfTheScale) {
  const HeldCheck held(knownExactly(quarter(BridgeType::QuarterThreeWire)), 0.5);
  const Correction correction =
      correctionOf(held.ground(), held.budget, fitted(CauseKind::Scale, 1.02, 0.001));
  ASSERT_TRUE(correction.factorStandard);
  EXPECT_DIGITS(*correction.factorStandard, 0.001 / (1.02 * 1.02), 7);  // of a difference over 2e-4
}

TEST(CorrectionUncertainty, OfLeadsAddsThatOfTheGainToThatOfTheFittedLead) {
  core::Setup setup = knownExactly(quarter(BridgeType::QuarterTwoWire));
  setup.uncertainties.stated[{InputKind::Gain, 0}] = {.statement = Statement::Standard, .amount = 0.002};
  const HeldCheck held(setup, 0.5);
  const Correction correction = correctionOf(held.ground(), held.budget, fitted(CauseKind::Leads, 4, 0.1));
  const double factor = std::pow(354.0 / 350, 2), ofLead = 2 * 354.0 / (350 * 350) * 0.1;
  ASSERT_TRUE(correction.factorStandard);
  // The difference over 4e-4 of the lead leaves seven digits.
  EXPECT_DIGITS(*correction.factorStandard, std::hypot(ofLead, 0.002 * factor), 7);
}

TEST(CorrectionUncertainty, OfTheChainComesFromArmsByTheSlopeOfTheBridge) {
  // d ln(R2/(R1+R2)^2): -1/R by arm 1, nothing by arm 2; arms 3 and 4 have no part in it.
  core::Setup setup = knownExactly(quarter(BridgeType::QuarterTwoWire));
  for (const std::size_t arm : {0, 1, 2, 3})
    setup.uncertainties.stated[{InputKind::Arm, arm}] = {.statement = Statement::Standard, .amount = 0.35};
  const HeldCheck held(setup, 0.5);
  // Differences over 2e-3 ohm of slopes of 1e-3 with sixteen digits leave nine.
  EXPECT_DIGITS(chainShare(held.ground(), held.budget, false), 0.001, 8);
}

TEST(Correction, IsLegitimateForElectricalCausesThatStayTheSameOnly) {
  const HeldCheck held(quarter(BridgeType::QuarterThreeWire), 0.5);
  const auto legitimate = [&](const Refit& refit) {
    const Correction correction = correctionOf(held.ground(), held.budget, refit);
    EXPECT_FALSE(correction.reason.empty());
    return correction.legitimate;
  };
  EXPECT_TRUE(legitimate(fitted(CauseKind::Scale, 1.02, 0.001)));
  EXPECT_TRUE(legitimate(fitted(CauseKind::Leads, 2, 0.1)));
  EXPECT_TRUE(legitimate(fitted(CauseKind::PolarityReversed, 1, 0)));
  EXPECT_FALSE(legitimate(fitted(CauseKind::Leak, 1e-5, 1e-6)));
  EXPECT_FALSE(legitimate(fitted(CauseKind::ArmValue, 1.01, 1e-3)));
  EXPECT_FALSE(legitimate(fitted(CauseKind::Clipping, 2500, 1)));
  EXPECT_FALSE(legitimate(fitted(CauseKind::Drift, 0.3, 0.1)));
}

TEST(Correction, OfAZeroShiftIsItsSizeAsOffset) {
  const HeldCheck held(quarter(BridgeType::QuarterThreeWire), 0.5);
  const Correction correction =
      correctionOf(held.ground(), held.budget, fitted(CauseKind::ZeroShift, 12.5, 0.5, 5));
  EXPECT_EQ(correction.factor, 1.0);
  EXPECT_EQ(correction.offset, 12.5);
  EXPECT_EQ(correction.offsetStandard, 0.5);
}

}  // namespace
}  // namespace core
