// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/circuit/bridge_circuit.h"

#include <gtest/gtest.h>

#include <cmath>
#include <functional>
#include <random>

#include "tests/support/digits.h"
#include "tests/support/setups.h"

using namespace core;
using enum BridgeType;

namespace {

struct StrainedBridge {
  BridgeType type;
  std::function<double(double x, double nu)> output;  ///< exact, x = F strain
};

// Quarter, half bending, half Poisson and full bending: M. J. Bower, Modern Strain Gage Technology, eq.
// 27.4-27.6 and 27.11. The others derived by putting the arms R (1 + share x) into
// (R1 R3 - R2 R4) / ((R1 + R2)(R3 + R4)).
const StrainedBridge strainedBridges[] = {
    {QuarterTwoWire, [](double x, double) { return x / (4 + 2 * x); }},
    {QuarterThreeWire, [](double x, double) { return x / (4 + 2 * x); }},
    {HalfBending, [](double x, double) { return x / 2; }},
    {HalfPoisson, [](double x, double nu) { return x * (1 + nu) / (4 + 2 * x * (1 - nu)); }},
    {HalfDiagonal, [](double x, double) { return x / (2 + x); }},
    {FullBending, [](double x, double) { return x; }},
    {FullPoissonColumn, [](double x, double nu) { return x * (1 + nu) / (2 + x * (1 - nu)); }},
    {FullPoissonBendingSplit, [](double x, double nu) { return x * (1 + nu) / 2; }},
    {FullPoissonBendingMixed,
     [](double x, double nu) { return 2 * x * (1 + nu) / (4 - x * x * (1 - nu) * (1 - nu)); }},
    {FullTorsion, [](double x, double) { return x; }}};

/// A bridge of `type` with everything off its nominal value that an installation can have off.
Setup installed(BridgeType type, std::mt19937& random) {
  std::uniform_real_distribution<double> off(0.99, 1.01), lead(0, 10);
  Setup setup = test::equalArms(type, 350.0_ohm, 2.05);
  for (Resistance& arm : setup.bridge.arms) arm = off(random) * arm;
  for (Lead& one : setup.bridge.leads) one = Resistance(lead(random));
  setup.bridge.sixWire = random() % 2 == 0;
  setup.instrument.inputResistance = 1.0_Mohm;
  return setup;
}

}  // namespace

TEST(BridgeCircuit, StrainedBridgesFollowTheTextbook) {
  for (const StrainedBridge& bridge : strainedBridges)
    for (const double nu : {0.285, 0.33})
      for (const double strain : {-20e-3, -1e-3, 500e-6, 100e-3}) {
        const core::Setup setup = test::equalArms(bridge.type, 350.0_ohm, 2.1, nu);
        // Potentials carry 1e-16, the smallest output here is 2.6e-4: twelve digits.
        EXPECT_DIGITS(test::outputAt(setup, strain).base(), bridge.output(2.1 * strain, nu), 12)
            << templateOf(bridge.type).key << ", strain " << strain;
      }
}

TEST(BridgeCircuit, TransducerGivesItsRatedOutputAtCapacity) {
  core::Setup setup = test::equalArms(Transducer, 350.0_ohm);
  setup.bridge.rating = {2.0_mV_per_V, 50, "kN"};
  EXPECT_DIGITS(test::outputAt(setup, 1.0).base(), 2e-3, 12);  // by definition of rated output
  EXPECT_DIGITS(test::outputAt(setup, -0.5).base(), -1e-3, 12);
}

TEST(BridgeCircuit, StimulusForIsTheInverseOfTheWholeNetwork) {
  std::mt19937 random(7);
  for (const BridgeTemplate& shape : allTemplates())
    for (const double strain : {-0.05, -1e-3, 0.0, 2e-4, 0.03, 0.1}) {
      const core::Setup setup = installed(shape.type, random);
      auto circuit = BridgeCircuit::make(setup.bridge, setup.instrument, {});
      ASSERT_TRUE(circuit) << circuit.error().text();
      const auto stimulus = circuit->stimulusFor(test::outputAt(setup, strain));
      ASSERT_TRUE(stimulus) << shape.key << ": " << stimulus.error().text();
      // An output right to 4e-16 over a slope of at least 0.4 mV/V a unit (a transducer's 2e-3, less
      // its leads) is a strain right to 1e-12.
      const double slope = isTransducer(setup.bridge) ? 1.5e-3 : 0.4;
      EXPECT_NEAR(*stimulus, strain, 6e-16 / slope) << shape.key;
    }
}

TEST(BridgeCircuit, OutputThatNoStrainGivesIsAnError) {
  // Derived: x/(4 + 2x) lies below 1/2 for every positive resistance of the gauge, above -1/2 too.
  const core::Setup setup = test::equalArms(QuarterTwoWire, 350.0_ohm);
  for (const double impossible : {0.6, -0.6, 5.0, 0.5}) {
    auto circuit = BridgeCircuit::make(setup.bridge, setup.instrument, {});
    ASSERT_TRUE(circuit);
    const auto stimulus = circuit->stimulusFor(Output(impossible));
    ASSERT_FALSE(stimulus) << impossible << " gave " << *stimulus;
    EXPECT_EQ(stimulus.error().where, "simulated strain");
  }
}

TEST(BridgeCircuit, SlopeIsTheDerivativeOfTheOutput) {
  // Independent: fourth-order differences of the outputs, step 1e-4 in strain. Truncation 1e-16 times
  // the fifth derivative, below 100; rounding 3e-16 / 1e-4.
  std::mt19937 random(11);
  for (const BridgeTemplate& shape : allTemplates()) {
    const core::Setup setup = installed(shape.type, random);
    const double at = 2e-3, h = 1e-4;
    const auto v = [&](double strain) { return test::outputAt(setup, strain).base(); };
    const double slope = (8 * (v(at + h) - v(at - h)) - (v(at + 2 * h) - v(at - 2 * h))) / (12 * h);
    auto circuit = BridgeCircuit::make(setup.bridge, setup.instrument, {});
    ASSERT_TRUE(circuit);
    circuit->setStimulus(at);
    ASSERT_TRUE(circuit->solveOutput());
    EXPECT_NEAR(circuit->outputSlope(), slope, 1e-11) << shape.key;
  }
}

TEST(BridgeCircuit, OpenShuntsChangeNothing) {
  std::mt19937 random(3);
  for (const BridgeTemplate& shape : allTemplates()) {
    const core::Setup setup = installed(shape.type, random);
    const std::vector<ShuntBranch> shunts = {{"R1", Node::Arm1Begin, Node::Arm1End, 59.0_kohm},
                                             {"R2", Node::PPlus, Node::SMinus, 10.0_kohm}};
    auto circuit = BridgeCircuit::make(setup.bridge, setup.instrument, shunts);
    ASSERT_TRUE(circuit);
    const auto before = circuit->solveOutput();
    ASSERT_TRUE(before);
    EXPECT_EQ(*before, test::outputAt(setup, 0)) << shape.key;
    ASSERT_TRUE(circuit->close(0));
    ASSERT_TRUE(circuit->close(1));
    ASSERT_TRUE(circuit->solveOutput());
    circuit->open(1);
    circuit->openAll();
    EXPECT_EQ(*circuit->solveOutput(), *before) << shape.key;
  }
}

TEST(BridgeCircuit, InputResistanceLoadsTheOutput) {
  // Derived: Thevenin source resistance of the bridge R1||R2 + R3||R4, so v falls by Z/(Z + Ro).
  core::Setup setup = test::equalArms(FullBending, 350.0_ohm);
  const double open = test::outputAt(setup, 1e-3).base();
  setup.instrument.inputResistance = 10.0_kohm;
  const double x = 2e-3, ro = 350 * (1 - x * x);  // 350 (1+x)(1-x)/2 twice
  EXPECT_DIGITS(test::outputAt(setup, 1e-3).base() / open, 10e3 / (10e3 + ro), 12);
}

TEST(BridgeCircuit, SixWiresMakeTheLeadsOfTheExcitationHarmless) {
  core::Setup setup = test::withLeads(test::equalArms(FullBending, 350.0_ohm), 5.0_ohm);
  const double bare = 2e-3;
  EXPECT_DIGITS(test::outputAt(setup, 1e-3).base(), bare * 350 / 360, 12);  // Rb/(Rb + 2 RL)
  setup.bridge.sixWire = true;
  EXPECT_DIGITS(test::outputAt(setup, 1e-3).base(), bare, 12);
}
