// SPDX-License-Identifier: GPL-3.0-or-later
// What leads do to readings and to shunt steps, connection by connection.
#include <gtest/gtest.h>

#include "tests/support/digits.h"
#include "tests/support/setups.h"

using namespace core;
using enum BridgeType;

namespace {

constexpr Resistance arm{350};
constexpr double ratio = 1e-3;  ///< resistance of one lead over that of an arm

struct Place {
  Node a, b;
};
constexpr Place gauge1{Node::Arm1Begin, Node::Arm1End};
constexpr Place dummy{Node::Arm2Begin, Node::Arm2End};
constexpr Place completion{Node::Arm4Begin, Node::Arm4End};
constexpr Place terminals{Node::PPlus, Node::SMinus};
constexpr Place senseTerminal{Node::SensePlus, Node::SMinus};

core::Setup wired(BridgeType type, bool sixWire, double leadOverArm) {
  core::Setup setup = test::withLeads(test::equalArms(type, arm), leadOverArm * arm);
  setup.bridge.sixWire = sixWire;
  return setup;
}

/// Step of a shunt so weak that only the leads matter, over the step without leads.
double shuntFactor(BridgeType type, bool sixWire, Place place) {
  const auto output = [&](double leads) {
    return test::lastStep(test::withShunt(wired(type, sixWire, leads), 1e5 * arm, place.a, place.b)).output;
  };
  return output(ratio) / output(0);
}

/// Output for a small real strain over that without leads.
double strainFactor(BridgeType type, bool sixWire) {
  const auto output = [&](double leads) {
    const core::Setup setup = wired(type, sixWire, leads);
    return test::outputAt(setup, 1e-6) - test::outputAt(setup, -1e-6);
  };
  return output(ratio) / output(0);
}

/// `factor` is 1 + `slope` r to first order: the rest is some r^2 with small coefficients, below 15 r^2
/// here, plus shunt and strain of 1e-5. A wrong slope would be off by r, seventy times as much.
#define EXPECT_FIRST_ORDER(factor, slope) EXPECT_NEAR(factor, 1 + (slope)*ratio, 15 * ratio * ratio)

}  // namespace

// Attenuation R/(R + RL), one length for three wires, two for two: Micro-Measurements, article on
// leadwire resistance. Dummy shunt directly over the dummy: TN-514. The terminal shunts derived: the
// shunt spans gauge and lead (+r), and its current drops RL I in the wire to S- (+2r).

TEST(Leads, ThreeWireQuarterBridge) {
  EXPECT_FIRST_ORDER(strainFactor(QuarterThreeWire, false), -1);
  EXPECT_FIRST_ORDER(shuntFactor(QuarterThreeWire, false, gauge1), -1);
  EXPECT_FIRST_ORDER(shuntFactor(QuarterThreeWire, false, dummy), -1);
  EXPECT_FIRST_ORDER(shuntFactor(QuarterThreeWire, false, terminals), 3);
  EXPECT_FIRST_ORDER(shuntFactor(QuarterThreeWire, false, completion), 0);
}

TEST(Leads, TwoWireQuarterBridge) {
  EXPECT_FIRST_ORDER(strainFactor(QuarterTwoWire, false), -2);
  EXPECT_FIRST_ORDER(shuntFactor(QuarterTwoWire, false, gauge1), -2);
  EXPECT_FIRST_ORDER(shuntFactor(QuarterTwoWire, false, dummy), 0);
  EXPECT_FIRST_ORDER(shuntFactor(QuarterTwoWire, false, terminals), 2);
  EXPECT_FIRST_ORDER(shuntFactor(QuarterTwoWire, false, completion), 0);
}

TEST(Leads, TwoWireQuarterBridgeLosesTwoLengthsExactly) {
  // Derived: with the dummy not trimmed, both wires lie in arm 1: v = (R1 - R)/(2(R1 + R)) has the slope
  // R / (R1 + R)^2, R1 = R + 2 RL, over 1 / (4 R): (R / (R + RL))^2. Central differences of 1e-6 in
  // strain: truncation 1e-12.
  const double exact = 1 / ((1 + ratio) * (1 + ratio));
  EXPECT_DIGITS(strainFactor(QuarterTwoWire, false), exact, 9);  // outputs of 1e-6 carry 1e-16
}

TEST(Leads, ThreeWireHalfBridge) {
  EXPECT_FIRST_ORDER(strainFactor(HalfBending, false), -1);
  EXPECT_FIRST_ORDER(shuntFactor(HalfBending, false, gauge1), -1);
  EXPECT_FIRST_ORDER(shuntFactor(HalfBending, false, dummy), -1);
  EXPECT_FIRST_ORDER(shuntFactor(HalfBending, false, terminals), 3);
  EXPECT_FIRST_ORDER(shuntFactor(HalfBending, false, completion), 0);
}

TEST(Leads, FourWireFullBridge) {
  EXPECT_FIRST_ORDER(strainFactor(FullBending, false), -2);
  EXPECT_FIRST_ORDER(shuntFactor(FullBending, false, gauge1), -2);
  EXPECT_FIRST_ORDER(shuntFactor(FullBending, false, terminals), 2);
}

TEST(Leads, SixWireFullBridge) {
  EXPECT_FIRST_ORDER(strainFactor(FullBending, true), 0);
  EXPECT_FIRST_ORDER(shuntFactor(FullBending, true, gauge1), 0);
  EXPECT_FIRST_ORDER(shuntFactor(FullBending, true, terminals), 4);
  EXPECT_FIRST_ORDER(shuntFactor(FullBending, true, senseTerminal), 2);
}

TEST(Leads, SimulatedStrainAtTheGaugeIsFreeOfThem) {
  // Derived: a shunt right over the gauge changes the gauge's resistance as strain does, whatever lies
  // around it: -R/(F (R + Rs)).
  for (const BridgeType type : {QuarterTwoWire, QuarterThreeWire}) {
    const auto step =
        test::lastStep(test::withShunt(wired(type, false, 0.02), 87.15_kohm, Node::Arm1Begin, Node::Arm1End));
    EXPECT_DIGITS(step.simulated, -350.0 / (2 * 87500.0), 12);
  }
}

TEST(Leads, SignalLeadsOfAnUnloadedInputDoNotMatter) {
  core::Setup setup = test::equalArms(FullBending, arm);
  setup.bridge.leads[static_cast<std::size_t>(LeadRole::SignalPlus)] = 50.0_ohm;
  setup.bridge.leads[static_cast<std::size_t>(LeadRole::SignalMinus)] = 20.0_ohm;
  EXPECT_DIGITS(test::outputAt(setup, 1e-3).base(), 2e-3, 12);
}
