// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/search/shunt_response.h"

#include <gmock/gmock.h>

#include "tests/support/digits.h"
#include "tests/support/setups.h"

using namespace core;
using enum BridgeType;
using testing::HasSubstr;

namespace {

/// The resistance for `level` at the usual place.
double ohmFor(const Setup& setup, double level) {
  const ShuntPlace place = usualPlace(setup.bridge, level > 0 ? Polarity::Positive : Polarity::Negative);
  const auto resistance = resistanceFor(setup, place, level);
  EXPECT_TRUE(resistance) << (resistance ? "" : resistance.error().text());
  return resistance ? resistance->base() : 0;
}

TEST(ResistanceFor, IsTheClosedFormOfEqualArms) {
  // Over the gauge of a quarter bridge R/(F e) - R: Micro-Measurements TN-514 eq. 514.5-514.7 and M. J.
  // Bower, Modern Strain Gage Technology, eq. 29.3. The others derived: any bridge that is linear in strain
  // gives v = N F e / 4, a shunt over one of four equal arms R/(4 R_s + 2 R), so R_s = R/(N F e) - R/2; over
  // the completion arm of a quarter bridge F e/(4 + 2 F e) = R/(4 R_s + 2 R), so R_s = R/(F e).
  const double r = 350, f = 2.1, e = 1500e-6;
  const auto of = [&](BridgeType type) { return test::equalArms(type, Resistance(r), f); };
  // Outputs of 7.5e-4 V/V with roundings of some 1e-16 leave 12 digits.
  EXPECT_DIGITS(ohmFor(of(QuarterThreeWire), -1500), r / (f * e) - r, 11.5);
  EXPECT_DIGITS(ohmFor(of(QuarterThreeWire), 1500), r / (f * e), 11.5);
  EXPECT_DIGITS(ohmFor(of(HalfBending), -1500), r / (2 * f * e) - r / 2, 11.5);
  EXPECT_DIGITS(ohmFor(of(HalfBending), 1500), r / (2 * f * e) - r / 2, 11.5);
  EXPECT_DIGITS(ohmFor(of(FullBending), -1500), r / (4 * f * e) - r / 2, 11.5);
  EXPECT_DIGITS(ohmFor(of(FullTorsion), 1500), r / (4 * f * e) - r / 2, 11.5);
}

TEST(ResistanceFor, OfReversedGaugesIsThatOfTheOtherArm) {
  // Derived as above with a gauge R (1 - F e): over the gauge R/(F e) - R now simulates a tension, over the
  // completion arm R/(F e) a compression. Reversed wires change nothing of it.
  const double r = 350, f = 2.1, e = 1500e-6;
  for (const bool wires : {false, true}) {
    core::Setup setup = test::equalArms(QuarterThreeWire, Resistance(r), f);
    setup.bridge.hookup = {.signalReversed = wires, .gaugesReversed = true};
    EXPECT_EQ(usualPlace(setup.bridge, Polarity::Positive).a, Node::Arm1Begin);
    EXPECT_DIGITS(ohmFor(setup, 1500), r / (f * e) - r, 11.5);
    EXPECT_DIGITS(ohmFor(setup, -1500), r / (f * e), 11.5);
    setup = test::withShuntOnArm(setup, 59.0_kohm, 2);
    EXPECT_EQ(placeInPlan(setup, Polarity::Negative).a, Node::Arm2Begin);
    EXPECT_EQ(placeInPlan(setup, Polarity::Positive).a, Node::Arm1Begin) << "the usual one";
  }
}

TEST(ResistanceFor, OfATransducerFollowsItsRatedOutput) {
  // v = rated output x load / capacity, a shunt gives R/(4 R_s + 2 R) (Interface, shunt calibration, from
  // memory of the form).
  core::Setup setup = test::equalArms(Transducer, Resistance(350));
  setup.bridge.rating = {2.0_mV_per_V, 50, "kN"};
  EXPECT_DIGITS(ohmFor(setup, 25), 350 / (4 * 1e-3) - 175, 11.5);
}

TEST(ResistanceFor, TakesWiresAndContactOff) {
  const core::Setup setup = test::equalArms(QuarterThreeWire, Resistance(350));
  ShuntPlace place = usualPlace(setup.bridge, Polarity::Positive);
  place.wires = Resistance(3), place.contact = Resistance(0.5);
  EXPECT_DIGITS(resistanceFor(setup, place, 1000)->base(), 175000 - 3.5, 11.5);
}

TEST(ResistanceFor, IsTheInverseOfThePredictionInAnyBridge) {
  for (std::size_t type = 0; type < bridgeTypeCount; ++type)
    for (const bool current : {false, true}) {
      core::Setup setup = test::equalArms(static_cast<BridgeType>(type), Resistance(120), 2.1, 0.28);
      setup.bridge.leads.fill(Resistance(4));
      setup.bridge.arms[1] = Resistance(121), setup.bridge.arms[2] = Resistance(119.3);
      setup.bridge.sixWire = templateOf(setup.bridge.type).senseLeads;
      if (current) setup.instrument.current = CurrentSource{10.0_mA, Resistance(120)};
      for (const double level : {-800.0, 5.0, 2000.0}) {
        const double wanted = isTransducer(setup.bridge) ? level / 2500 : level;
        const ShuntPlace place =
            usualPlace(setup.bridge, level > 0 ? Polarity::Positive : Polarity::Negative);
        const auto ohm = resistanceFor(setup, place, wanted);
        ASSERT_TRUE(ohm) << ohm.error().text();
        const core::Setup plan = test::withShunt(setup, *ohm, place.a, place.b);
        // 5 um/m is 2.5e-6 V/V, with roundings of some 1e-16.
        EXPECT_DIGITS(simulatedInUnit(plan.bridge, test::lastStep(plan).simulated), wanted, 9);
      }
    }
}

TEST(ResistanceFor, SaysWhatIsNearestWhenNoResistanceGivesALevel) {
  const core::Setup setup = test::equalArms(FullBending, Resistance(350));
  ShuntPlace place = usualPlace(setup.bridge, Polarity::Positive);
  // A short over one of four equal arms gives 1/2 V/V, F e with N = 4 and F = 2: 250,000 um/m.
  EXPECT_THAT(
      resistanceFor(setup, place, 300000).error().text(),
      HasSubstr("no resistance gives this level at this place, the nearest that it can is 250000 µm/m"));
  EXPECT_THAT(resistanceFor(setup, place, -1000).error().text(), HasSubstr("the other way"));
  EXPECT_THAT(resistanceFor(setup, place, 0).error().text(), HasSubstr("zero needs no shunt"));
  place.wires = Resistance(1e6);
  EXPECT_THAT(resistanceFor(setup, place, 1000).error().text(), HasSubstr("the nearest that it can is"));
}

TEST(ShuntCurve, AgreesWithThePredictionFromTheSmallestToTwiceTheGreatest) {
  for (std::size_t type = 0; type < bridgeTypeCount; ++type)
    for (const bool reading : {false, true}) {
      core::Setup setup = test::equalArms(static_cast<BridgeType>(type), Resistance(350), 2.0, 0.3);
      setup.bridge.leads.fill(Resistance(10));
      setup.bridge.arms[0] = Resistance(352);
      if (!isTransducer(setup.bridge)) setup.instrument.linearisation = Linearisation::BeforeZero;
      const double greatest = isTransducer(setup.bridge) ? -2 : -5000;
      const ShuntPlace place = usualPlace(setup.bridge, Polarity::Negative);
      const auto curve = ShuntCurve::make(
          setup, place, greatest, reading ? ShuntCurve::Measure::Reading : ShuntCurve::Measure::Simulated);
      ASSERT_TRUE(curve) << curve.error().text();
      if (!reading) {
        EXPECT_GT(curve->at(curve->greatestSiemens()), 2 * std::abs(greatest));
      }
      for (double g = 1e-7; g < curve->greatestSiemens(); g *= 1.7) {
        const core::Setup plan = test::withShunt(setup, Resistance(1 / g), place.a, place.b);
        const Prediction step = test::lastStep(plan);
        const double expected =
            std::abs(reading ? step.reading.base() : simulatedInUnit(plan.bridge, step.simulated));
        // 2e-13 of the greatest value, as the header says with roundings of the prediction's own.
        EXPECT_NEAR(curve->at(g), expected, 2e-13 * curve->at(curve->greatestSiemens()));
        EXPECT_NEAR(curve->siemensFor(curve->at(g)) / g, 1, 1e-12);
      }
    }
}

TEST(ShuntCurve, OfAQuarterBridgeHasNothingLeftOver) {
  // dR/(R F) of the gauge is a ratio of two linear functions of the conductance over it, -R G/(1 + R G)/F.
  const core::Setup setup = test::equalArms(QuarterThreeWire, Resistance(350));
  const auto curve = ShuntCurve::make(setup, usualPlace(setup.bridge, Polarity::Negative), -1000,
                                      ShuntCurve::Measure::Simulated);
  ASSERT_TRUE(curve);
  EXPECT_EQ(curve->terms(), 0u);
  EXPECT_DIGITS(curve->at(1 / 174650.0), 1000, 11);  // 350/175000/2; roundings of 1e-15 in 1e-3 V/V
}

}  // namespace
