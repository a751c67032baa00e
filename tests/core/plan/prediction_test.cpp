// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/prediction.h"

#include <gtest/gtest.h>

#include <cmath>
#include <functional>
#include <limits>

#include "tests/support/digits.h"
#include "tests/support/setups.h"

using namespace core;
using enum BridgeType;

namespace prediction_test {

constexpr Resistance arm{350};

/// Strain of gauge 1 that a shunt simulates, for gauge factor 1.
struct SimulatedStrain {
  BridgeType type;
  std::function<double(double r, double rs, double nu)> down;  ///< shunt over arm 1 or 3
  std::function<double(double r, double rs, double nu)> up;    ///< shunt over arm 2 or 4
};

/// x of 2x(1 + nu) / (4 - x^2 (1 - nu)^2) = v, the root that vanishes with v.
double mixedPoisson(double v, double nu) {
  return 4 * v / (1 + nu + std::sqrt((1 + nu) * (1 + nu) + 4 * v * v * (1 - nu) * (1 - nu)));
}

const SimulatedStrain quarter{QuarterThreeWire,
                              [](double r, double rs, double) { return -r / (r + rs); },  // TN-514 eq. 514.5
                              [](double r, double rs, double) { return r / rs; }};
const SimulatedStrain fullBending{FullBending,
                                  [](double r, double rs, double) { return -r / (4 * rs + 2 * r); },
                                  [](double r, double rs, double) { return r / (4 * rs + 2 * r); }};

SimulatedStrain of(BridgeType type, const SimulatedStrain& same) { return {type, same.down, same.up}; }

// Over the gauge of a quarter bridge: Micro-Measurements TN-514 eq. 514.5-514.7 and M. J. Bower, Modern
// Strain Gage Technology, eq. 29.3. The others derived: the output of the strained bridge, exact (see
// the tests of BridgeCircuit), set equal to that of the shunted one, -+ r / (4 rs + 2 r).
const SimulatedStrain simulatedStrains[] = {
    quarter,
    of(QuarterTwoWire, quarter),
    {HalfBending, [](double r, double rs, double) { return -r / (r + 2 * rs); },
     [](double r, double rs, double) { return r / (r + 2 * rs); }},
    {HalfDiagonal, [](double r, double rs, double) { return -2 * r / (4 * rs + 3 * r); },
     [](double r, double rs, double) { return 2 * r / (4 * rs + r); }},
    {HalfPoisson, [](double r, double rs, double nu) { return -r / ((1 + nu) * rs + r); },
     [](double r, double rs, double nu) { return r / ((1 + nu) * rs + nu * r); }},
    fullBending,
    of(FullTorsion, fullBending),
    {FullPoissonColumn,
     [](double r, double rs, double nu) { return -2 * r / (4 * (1 + nu) * rs + (3 + nu) * r); },
     [](double r, double rs, double nu) { return 2 * r / (4 * (1 + nu) * rs + (1 + 3 * nu) * r); }},
    {FullPoissonBendingSplit, [](double r, double rs, double nu) { return -r / ((1 + nu) * (2 * rs + r)); },
     [](double r, double rs, double nu) { return r / ((1 + nu) * (2 * rs + r)); }},
    {FullPoissonBendingMixed,
     [](double r, double rs, double nu) { return mixedPoisson(-r / (4 * rs + 2 * r), nu); },
     [](double r, double rs, double nu) { return mixedPoisson(r / (4 * rs + 2 * r), nu); }}};

core::Setup bending() { return test::equalArms(HalfBending, arm); }

TEST(Predict, ShuntAcrossArm1SimulatesCompression) {
  // Derived: 350 / (350 + 174650) = 1/500, so dR/R = -1/500 and, with gauge factor 2, the strain is
  // -1000 um/m. S- moves from 1/2 to 500/999: the output is -1/1998.
  const auto step =
      test::lastStep(test::withShuntOnArm(test::equalArms(QuarterThreeWire, arm), 174.65_kohm, 1));
  EXPECT_DIGITS(step.output.base(), -1.0 / 1998.0, 12);
  EXPECT_DIGITS(step.simulated, -1000e-6, 12);
  EXPECT_DIGITS(step.indicated.base(), -2.0 / 1998.0, 12);  // 4 v / F
  EXPECT_DIGITS(step.reading.base(), -2e6 / 1998.0, 12);
  EXPECT_EQ(step.polarity, Polarity::Negative);
  ASSERT_TRUE(step.armChange);
  EXPECT_DIGITS(step.armChange->base(), -1000e-6, 14);
}

TEST(Predict, SignsFollowTheShuntedArm) {
  // Micro-Measurements TN-514: a shunt over the gauge in arm 1 or its opposite arm reads as
  // compression, over an adjacent arm as tension; magnitude R / (4 Rs + 2 R).
  for (const BridgeTemplate& shape : allTemplates()) {
    for (const std::size_t shunted : {1, 2, 3, 4}) {
      const auto step =
          test::lastStep(test::withShuntOnArm(test::equalArms(shape.type, arm), 87.15_kohm, shunted));
      const bool down = shunted == 1 || shunted == 3;
      EXPECT_DIGITS(step.output.base(), (down ? -1 : 1) * 350.0 / (4 * 87150.0 + 700), 12)
          << shape.key << ", arm " << shunted;
      EXPECT_EQ(step.polarity, down ? Polarity::Negative : Polarity::Positive);
      EXPECT_EQ(step.simulated < 0, down) << shape.key;
      EXPECT_EQ(polarityWord(step.polarity), down ? "negative" : "positive");
    }
  }
}

TEST(Predict, SimulatedStrainIsThatOfTheClosedForms) {
  for (const SimulatedStrain& form : simulatedStrains) {
    for (const double nu : {0.285, 0.33}) {
      for (const double factor : {2.0, 2.13}) {
        // From a shunt of 100 times the arm down to one that is nearly a short.
        for (const double shunt : {35e3, 1e3, 10.0}) {
          const core::Setup setup = test::equalArms(form.type, arm, factor, nu);
          const auto simulated = [&](std::size_t shunted) {
            return test::lastStep(test::withShuntOnArm(setup, Resistance(shunt), shunted)).simulated;
          };
          SCOPED_TRACE(std::string(templateOf(form.type).key) + ", shunt " + std::to_string(shunt));
          // Outputs from 2.5e-3 carry 1e-16 of potential: twelve digits.
          const double down = form.down(arm.base(), shunt, nu) / factor;
          const double up = form.up(arm.base(), shunt, nu) / factor;
          EXPECT_DIGITS(simulated(1), down, 12);
          EXPECT_DIGITS(simulated(3), down, 12);
          EXPECT_DIGITS(simulated(2), up, 12);
          EXPECT_DIGITS(simulated(4), up, 12);
        }
      }
    }
  }
}

TEST(Predict, AdjacentArmsGiveOppositeOutputsButNotOppositeStrains) {
  // Derived: the output of an equal-arm bridge is exactly antisymmetric, its inverse is not.
  const core::Setup setup = test::equalArms(QuarterThreeWire, arm);
  const auto down = test::lastStep(test::withShuntOnArm(setup, 10.0_kohm, 1));
  const auto up = test::lastStep(test::withShuntOnArm(setup, 10.0_kohm, 2));
  EXPECT_DIGITS(up.output.base(), -down.output.base(), 13);
  EXPECT_GT(up.simulated, -down.simulated * 1.03);  // (r/rs) / (r/(r+rs)) = 1.035
}

TEST(Predict, HalfTheShuntGivesLessThanTwiceTheOutput) {
  for (const BridgeTemplate& shape : allTemplates()) {
    const core::Setup setup = test::equalArms(shape.type, arm);
    const double whole = test::lastStep(test::withShuntOnArm(setup, 20.0_kohm, 1)).output.base();
    const double half = test::lastStep(test::withShuntOnArm(setup, 10.0_kohm, 1)).output.base();
    EXPECT_LT(half, whole) << shape.key;
    EXPECT_GT(half, 2 * whole) << shape.key;  // both negative
  }
}

TEST(Predict, ShuntWiresAddToTheShunt) {
  core::Setup setup = test::withShuntOnArm(bending(), 10.0_kohm, 1);
  setup.shunts[0].wires = 50.0_ohm;
  const auto wired = test::lastStep(setup);
  const auto plain = test::lastStep(test::withShuntOnArm(bending(), 10.05_kohm, 1));
  EXPECT_EQ(wired.output, plain.output);
  EXPECT_EQ(wired.armChange, plain.armChange);
}

TEST(Predict, AClosedSwitchAddsToTheShunt) {
  core::Setup setup = test::withShuntOnArm(bending(), 10.0_kohm, 1);
  setup.shunts[0].wires = 50.0_ohm;
  setup.shunts[0].contact = 0.5_ohm;
  EXPECT_EQ(resistanceOf(setup.shunts[0]), Resistance(10050.5));
  const double r = 350, rs = 10050.5;
  EXPECT_DIGITS(test::lastStep(setup).output.base(), -r / (4 * rs + 2 * r), 12);  // TN-514
  EXPECT_DIGITS(test::lastStep(setup).armChange.value().base() * 2, -r / (r + rs), 12);
}

TEST(Predict, AWarmGaugeOfAnotherFactorTakesLessStrainForTheSameShunt) {
  // Derived: dR/R of the shunt is what it was; the factor that divides it is 1 % larger.
  core::Setup setup = test::withShuntOnArm(test::equalArms(QuarterThreeWire, arm), 59.0_kohm, 1);
  const auto cold = test::lastStep(setup);
  setup.bridge.gauge.factorCoefficient = 1e-4;
  setup.bridge.gauge.installed = setup.bridge.gauge.factorAt + Temperature(100);
  const auto warm = test::lastStep(setup);
  EXPECT_DIGITS(warm.simulated, cold.simulated / 1.01, 12);
  EXPECT_DIGITS(warm.armChange->base(), cold.armChange->base() / 1.01, 12);
  EXPECT_EQ(warm.reading, cold.reading) << "the instrument knows nothing of it";
}

TEST(Predict, ALinearisedReadingIsTheSimulatedStrainOfAnIdealQuarterBridge) {
  // Micro-Measurements TN-507 and TN-514: corrected, the reading is the strain that the shunt simulates.
  for (const auto order : {Linearisation::BeforeZero, Linearisation::AfterZero}) {
    core::Setup setup = test::withShuntOnArm(test::equalArms(QuarterThreeWire, arm), 5.0_kohm, 1);
    setup.instrument.linearisation = order;
    const auto step = test::lastStep(setup);
    EXPECT_DIGITS(step.reading.base(), -1e6 / 2 * 350 / 5350, 12);
    EXPECT_DIGITS(step.indicated.base(), -4.0 / 2 * 350 / (4 * 5000 + 2 * 350), 12) << "this one never is";
  }
}

TEST(Predict, ALinearisationBeyondTheBridgeFailsItsStep) {
  // A shunt of 1 ohm over arm 2 asks the quarter bridge for more than an infinite gauge gives: with the
  // zero at -0.4 by an arm 1 of a tenth, the change is 0.9.
  core::Setup setup = test::withShuntOnArm(test::equalArms(QuarterThreeWire, arm), 1.0_ohm, 2);
  setup.bridge.arms[0] = 35.0_ohm;
  setup.instrument.linearisation = Linearisation::AfterZero;
  const auto predicted = predict(setup);
  ASSERT_TRUE(predicted.zero);
  ASSERT_FALSE(predicted.steps[0]);
  EXPECT_EQ(predicted.steps[0].error().where, "instrument");
}

TEST(Predict, TwoShuntsAtOnceActTogether) {
  // Derived: arms 1 and 3 both R' = R Rs/(R+Rs): v = (R'^2 - R^2) / (R' + R)^2 = (R' - R)/(R' + R).
  core::Setup setup = test::withShuntOnArm(test::withShuntOnArm(bending(), 10.0_kohm, 1), 10.0_kohm, 3);
  setup.sequence.push_back({"both", {0, 1}});
  const double r = 350, shunted = r * 10e3 / (r + 10e3);
  const auto both = test::lastStep(setup);
  EXPECT_DIGITS(both.output.base(), (shunted - r) / (shunted + r), 12);
  EXPECT_FALSE(both.armChange) << "no single arm's change describes two shunts";
}

TEST(Predict, ShuntsOfOneStepDoNotStayForTheNext) {
  core::Setup setup = test::withShuntOnArm(bending(), 10.0_kohm, 1);
  setup.sequence = {{"first", {0}}, {"zero", {}}, {"again", {0}}};
  const auto predicted = predict(setup);
  ASSERT_EQ(predicted.steps.size(), 3u);
  ASSERT_TRUE(predicted.steps[0] && predicted.steps[1] && predicted.steps[2]);
  EXPECT_EQ(predicted.steps[1]->output.base(), 0);
  EXPECT_EQ(predicted.steps[0]->output, predicted.steps[2]->output);
}

TEST(Predict, ChangesAreAgainstTheUnshuntedBridge) {
  // Derived: TN-514 eq. 514.1a with and without the shunt in arm 2 of an unbalanced bridge.
  core::Setup setup = bending();
  setup.bridge.arms = {Resistance(351.2), Resistance(349.5), Resistance(350), Resistance(350.4)};
  setup = test::withShuntOnArm(setup, 87.15_kohm, 2);
  setup.sequence.insert(setup.sequence.begin(), Step{"zero", {}});
  const double r2 = 349.5 * 87150 / (349.5 + 87150);
  const double zero = (351.2 * 350 - 349.5 * 350.4) / ((351.2 + 349.5) * 700.4);
  const double shunted = (351.2 * 350 - r2 * 350.4) / ((351.2 + r2) * 700.4);

  const auto predicted = predict(setup);

  ASSERT_TRUE(predicted.zero);
  EXPECT_NEAR(predicted.zero->base(), zero, 4e-16);  // two potentials near 1/2
  ASSERT_TRUE(predicted.steps[0] && predicted.steps[1]);
  EXPECT_EQ(predicted.steps[0]->output.base(), 0);
  EXPECT_EQ(predicted.steps[0]->polarity, Polarity::None);
  EXPECT_NEAR(predicted.steps[1]->output.base(), shunted - zero, 8e-16);
}

TEST(Predict, ShuntOverTheSupplyShowsNothing) {
  const auto step = test::lastStep(test::withShunt(bending(), 10.0_kohm, Node::PPlus, Node::PMinus));
  EXPECT_EQ(step.polarity, Polarity::None);
  EXPECT_EQ(polarityWord(step.polarity), "none");
  EXPECT_NEAR(step.output.base(), 0, 3e-16);
  EXPECT_NEAR(step.simulated, 0, 1e-15);
}

TEST(Predict, ShuntThatShowsNothingSimulatesNothingInAnyBridge) {
  // With six wires a shunt over an excitation lead changes nothing but roundings. A transducer turns
  // those into 1e-13 of its capacity, because its output is so small.
  for (const BridgeTemplate& shape : allTemplates()) {
    core::Setup setup = test::withLeads(test::equalArms(shape.type, arm), 7.3_ohm);
    setup.bridge.arms = {Resistance(351.2), Resistance(349.5), Resistance(350), Resistance(350.4)};
    setup.bridge.sixWire = true;
    const bool sensed = hasNode(setup.bridge, Node::SensePlus);
    const Node end = sensed ? Node::Arm1Begin : Node::PMinus;
    const auto step = test::lastStep(test::withShunt(setup, 1.5_kohm, Node::PPlus, end));
    EXPECT_EQ(step.polarity, Polarity::None) << shape.key;
    EXPECT_NEAR(step.simulated, 0, isTransducer(setup.bridge) ? 1e-12 : 1e-14) << shape.key;
  }
}

TEST(Predict, ArmChangeNeedsAShuntRightAcrossOneArm) {
  const core::Setup leads = test::withLeads(test::equalArms(QuarterThreeWire, arm), 2.0_ohm);
  EXPECT_TRUE(test::lastStep(test::withShuntOnArm(leads, 10.0_kohm, 1)).armChange);
  EXPECT_TRUE(test::lastStep(test::withShunt(leads, 10.0_kohm, Node::Arm1End, Node::Arm1Begin)).armChange);
  EXPECT_FALSE(test::lastStep(test::withShunt(leads, 10.0_kohm, Node::PPlus, Node::SMinus)).armChange);
}

TEST(Predict, TransducerStepsAreLoads) {
  // Derived: v / rated output x capacity, v = R / (4 Rs + 2 R).
  core::Setup setup = test::equalArms(Transducer, arm);
  setup.bridge.rating = {2.0_mV_per_V, 50, "kN"};
  const auto step = test::lastStep(test::withShuntOnArm(setup, 60.4_kohm, 2));
  const double load = 350.0 / (4 * 60400.0 + 700) / 2e-3 * 50;
  EXPECT_DIGITS(simulatedInUnit(setup.bridge, step.simulated), load, 12);
  EXPECT_EQ(simulatedUnitText(setup.bridge), "kN");
  EXPECT_FALSE(step.armChange);
}

TEST(Predict, StrainsAreShownInMicrometrePerMetre) {
  EXPECT_EQ(simulatedInUnit(bending().bridge, 1e-3), 1000.0);
  EXPECT_EQ(simulatedUnitText(bending().bridge), "µm/m");
}

TEST(Predict, BadShuntFailsItsOwnStepOnly) {
  constexpr double infinity = std::numeric_limits<double>::infinity();
  constexpr double notANumber = std::numeric_limits<double>::quiet_NaN();
  for (const double wrong : {0.0, -59e3, infinity, notANumber}) {
    core::Setup setup = test::withShuntOnArm(bending(), 59.0_kohm, 1);
    setup = test::withShuntOnArm(setup, Resistance(wrong), 2);
    setup.sequence.push_back({"zero", {}});
    const auto predicted = predict(setup);
    EXPECT_TRUE(predicted.zero);
    EXPECT_TRUE(predicted.steps[0]);
    ASSERT_FALSE(predicted.steps[1]) << wrong;
    EXPECT_EQ(predicted.steps[1].error().where, "R2");
    EXPECT_TRUE(predicted.steps[2]);
  }
}

TEST(Predict, ShuntAcrossOneNodeFailsItsOwnStepOnly) {
  // Arm 1's end and arm 2's begin are one point of a half bridge; with no lead the terminal is too.
  for (const Node other : {Node::Arm2Begin, Node::SMinus, Node::Arm1End}) {
    core::Setup setup = test::withShunt(bending(), 59.0_kohm, Node::Arm1End, other);
    setup = test::withShuntOnArm(setup, 59.0_kohm, 1);
    const auto predicted = predict(setup);
    ASSERT_FALSE(predicted.steps[0]) << nodeName(other);
    EXPECT_EQ(predicted.steps[0].error().where, "R1");
    EXPECT_NE(predicted.steps[0].error().what.find("one node"), std::string::npos);
    EXPECT_TRUE(predicted.steps[1]);
  }
}

TEST(Predict, ShuntOverALeadCountsOnceTheLeadHasResistance) {
  const core::Setup setup = test::withLeads(bending(), 2.0_ohm);
  const auto step = test::lastStep(test::withShunt(setup, 59.0_kohm, Node::PPlus, Node::Arm1Begin));
  EXPECT_EQ(step.polarity, Polarity::Negative) << "the lead lies in arm 1 and becomes less, as under a shunt";
}

TEST(Predict, SenseTerminalsNeedTheSixWireConnection) {
  core::Setup setup = test::withLeads(test::equalArms(FullBending, arm), 1.0_ohm);
  setup = test::withShunt(setup, 60.4_kohm, Node::SensePlus, Node::SMinus);
  setup = test::withShuntOnArm(setup, 60.4_kohm, 1);
  const auto fourWires = predict(setup);
  ASSERT_FALSE(fourWires.steps[0]);
  EXPECT_EQ(fourWires.steps[0].error().where, "R1");
  EXPECT_NE(fourWires.steps[0].error().what.find("sense+"), std::string::npos);
  EXPECT_TRUE(fourWires.steps[1]);

  setup.bridge.sixWire = true;
  const auto sixWires = predict(setup);
  EXPECT_TRUE(sixWires.steps[0]);
  EXPECT_TRUE(sixWires.steps[1]);
}

TEST(Predict, BridgeThatCannotBeSolvedFailsEveryStep) {
  core::Setup setup = test::withShuntOnArm(bending(), 59.0_kohm, 1);
  setup.sequence.push_back({"zero", {}});
  setup.bridge.arms[2] = Resistance(0);
  const auto predicted = predict(setup);
  ASSERT_FALSE(predicted.zero);
  ASSERT_EQ(predicted.steps.size(), 2u);
  for (const auto& step : predicted.steps) {
    ASSERT_FALSE(step);
    EXPECT_EQ(step.error(), predicted.zero.error());
    EXPECT_EQ(step.error().where, "arm 3");
  }
}

TEST(Predict, EmptySequenceStillHasItsZero) {
  const auto predicted = predict(bending());
  ASSERT_TRUE(predicted.zero);
  EXPECT_NEAR(predicted.zero->base(), 0, 3e-16);
  EXPECT_TRUE(predicted.steps.empty());
}

TEST(Potentials, AreThoseOfTheStepInVoltPerVolt) {
  core::Setup setup = test::withShuntOnArm(bending(), 350.0_ohm, 1);
  const auto at = [&](std::size_t step, Node node) {
    const auto all = potentials(setup, step);
    EXPECT_TRUE(all);
    return (*all)[static_cast<std::size_t>(node)];
  };
  EXPECT_EQ(at(0, Node::PPlus), 1.0);
  EXPECT_EQ(at(0, Node::PMinus), 0.0);
  EXPECT_DIGITS(at(0, Node::SMinus).value(), 2.0 / 3.0, 14);  // 175 over 350 ohm
  EXPECT_DIGITS(at(0, Node::SPlus).value(), 0.5, 14);
  EXPECT_DIGITS(at(1, Node::SMinus).value(), 0.5, 14) << "past the end: all shunts open";
  EXPECT_FALSE(at(0, Node::SensePlus)) << "no sense leads, so nothing is connected there";
}

TEST(ExcitationOf, AConstantCurrentMakesTheVoltageOfTheBridgeItMeets) {
  // Derived: four equal arms R are 2R beside 2R, so R between P+ and P-: 10 mA x 350 ohm = 3.5 V. With
  // 350 ohm over arm 1 one side is 175 + 350 = 525 ohm: 525 x 700/1225 = 300 ohm, 3 V.
  core::Setup setup = test::withShuntOnArm(bending(), 350.0_ohm, 1);
  setup.instrument.current = CurrentSource{Current(0.01), Resistance(120)};
  EXPECT_DIGITS(excitationOf(setup, 1)->base(), 3.5, 14) << "past the end: all shunts open";
  EXPECT_DIGITS(excitationOf(setup, 0)->base(), 3.0, 14);
}

TEST(ExcitationOf, AConstantVoltageIsAsSetWhateverIsClosed) {
  core::Setup setup = test::withShuntOnArm(bending(), 350.0_ohm, 1);
  setup.instrument.excitation = Voltage(2.5);
  EXPECT_EQ(excitationOf(setup, 0)->base(), 2.5);
  EXPECT_EQ(excitationOf(setup, 1)->base(), 2.5);
  EXPECT_FALSE(excitationOf(test::withShuntOnArm(bending(), Resistance(-1), 1), 0));
}

TEST(Potentials, FailAsTheStepDoes) {
  const core::Setup setup = test::withShuntOnArm(bending(), Resistance(-1), 1);
  EXPECT_FALSE(potentials(setup, 0));
  EXPECT_TRUE(potentials(setup, 1));
}

}  // namespace prediction_test
