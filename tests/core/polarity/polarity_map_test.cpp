// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/polarity/polarity_map.h"

#include <gtest/gtest.h>

#include <set>

#include "tests/support/digits.h"
#include "tests/support/setups.h"

namespace {

using namespace core;

/// Of the cell between two places, by whatever names.
const PolarityCell& between(const Bridge& bridge, const PolarityMap& map, Node a, Node b) {
  const auto placeOf = [&](Node node) {
    const auto found = std::find(map.points.begin(), map.points.end(), pointOf(bridge, node));
    EXPECT_NE(found, map.points.end());
    return static_cast<std::size_t>(found - map.points.begin());
  };
  return map.at(placeOf(a), placeOf(b));
}

const PolarityCell& overArm(const Bridge& bridge, const PolarityMap& map, std::size_t arm) {
  return between(bridge, map, armBegin(arm - 1), armEnd(arm - 1));
}

core::Setup sixWireFullBridge() {
  core::Setup setup = test::withLeads(test::equalArms(BridgeType::FullBending, 350.0_ohm), 0.5_ohm);
  setup.bridge.sixWire = true;
  return setup;
}

TEST(PolarityMap, HoldsEachPairOfPointsOnceInOrder) {
  const auto map = polarityMap(sixWireFullBridge(), 59.0_kohm);
  ASSERT_TRUE(map) << map.error().text();
  ASSERT_EQ(map->points.size(), 10u) << "six terminals and four corners";
  ASSERT_EQ(map->cells.size(), 45u) << "10 x 9 / 2";
  std::size_t next = 0;
  for (std::size_t i = 0; i < 10; ++i)
    for (std::size_t j = i + 1; j < 10; ++j, ++next) {
      EXPECT_EQ(map->cellOf(i, j), next);
      EXPECT_EQ(map->cellOf(j, i), next);
      EXPECT_EQ(map->at(i, j).a, map->points[i]);
      EXPECT_EQ(map->at(i, j).b, map->points[j]);
    }
}

TEST(PolarityMap, ShuntOverAnArmHasTheClosedFormsOutput) {
  // Derived: R with Rs across it beside R is out of balance by R/(4 Rs + 2 R); arms 1 and 3 lower the output,
  // 2 and 4 raise it (TN-514). Full bridge, bending: the output is F x strain, so the strain is output / F.
  const core::Setup setup = test::equalArms(BridgeType::FullBending, 350.0_ohm);
  const auto map = polarityMap(setup, 59.0_kohm);
  ASSERT_TRUE(map) << map.error().text();
  const double size = 350.0 / (4 * 59000.0 + 2 * 350);
  for (const std::size_t arm : {1, 2, 3, 4}) {
    const auto& prediction = overArm(setup.bridge, *map, arm).prediction;
    ASSERT_TRUE(prediction) << prediction.error().text();
    const double sign = arm % 2 == 1 ? -1 : 1;
    // Potentials near 1/2 carry 1e-16, their difference of 1e-3 some 1e-13 of itself.
    EXPECT_DIGITS(prediction->output.base(), sign * size, 12);
    EXPECT_DIGITS(prediction->simulated, sign * size / 2, 12);
    EXPECT_EQ(prediction->polarity, arm % 2 == 1 ? Polarity::Negative : Polarity::Positive);
  }
}

TEST(PolarityMap, NothingOverExcitationAndOutputOfABalancedBridge) {
  // Derived: an ideal source holds the excitation; no current flows between two points of one potential.
  const core::Setup setup = test::equalArms(BridgeType::HalfBending, 350.0_ohm);
  const auto map = polarityMap(setup, 10.0_kohm);
  ASSERT_TRUE(map) << map.error().text();
  for (const auto& [a, b] : {std::pair(Node::PPlus, Node::PMinus), std::pair(Node::SPlus, Node::SMinus)}) {
    const auto& prediction = between(setup.bridge, *map, a, b).prediction;
    ASSERT_TRUE(prediction) << prediction.error().text();
    EXPECT_EQ(prediction->polarity, Polarity::None);
  }
}

TEST(PolarityMap, LeadsMakeTheTerminalsLargerThanTheArm) {
  // 3-wire quarter bridge, leads r = RL/R each: shunt from the terminals reads 1 + 3r, at the gauge 1 - r of
  // the lead-free value to first order (derived; checked with ngspice in tests/reference/bridge_cases.csv).
  const double r = 0.7 / 350;
  const core::Setup setup =
      test::withLeads(test::equalArms(BridgeType::QuarterThreeWire, 350.0_ohm), 0.7_ohm);
  const auto map = polarityMap(setup, 174.65_kohm);
  ASSERT_TRUE(map) << map.error().text();
  const double leadFree = -350.0 / (4 * 174650.0 + 2 * 350);
  const double atGauge = overArm(setup.bridge, *map, 1).prediction->output.base();
  const double fromTerminals =
      between(setup.bridge, *map, Node::PPlus, Node::SMinus).prediction->output.base();
  // Second order: a few r^2.
  EXPECT_NEAR(atGauge / leadFree, 1 - r, 6 * r * r);
  EXPECT_NEAR(fromTerminals / leadFree, 1 + 3 * r, 6 * r * r);
}

TEST(PolarityMap, EachCellIsThePredictionOfThatShuntAlone) {
  // The same network by another way: one shunt, one step.
  core::Setup setup = sixWireFullBridge();
  setup.bridge.arms = {350.4_ohm, 349.7_ohm, 350.1_ohm, 350.9_ohm};
  setup.shunts.push_back({"R9", 10.0_kohm, Node::Arm3Begin, Node::Arm3End});  // stays open
  const auto map = polarityMap(setup, 59.0_kohm);
  ASSERT_TRUE(map) << map.error().text();
  for (const PolarityCell& cell : map->cells) {
    core::Setup alone = setup;
    alone.shunts.clear();
    const Prediction expected = test::lastStep(test::withShunt(alone, 59.0_kohm, cell.a, cell.b));
    ASSERT_TRUE(cell.prediction) << cell.prediction.error().text();
    // Other branches, other order of sums: some roundings of potentials of 1 V, 1e-16 each.
    EXPECT_NEAR(cell.prediction->output.base(), expected.output.base(), 2e-15);
    EXPECT_NEAR(cell.prediction->simulated, expected.simulated, 2e-15);
    EXPECT_NEAR(cell.prediction->reading.base(), expected.reading.base(), 4e6 * 2e-15);
  }
}

TEST(PolarityMap, SwappedWiresTurnTheOutputAndReversedGaugesTheStrain) {
  // By definition: S- against S+ is the negative; so is P- against P+ (the network is linear). Both together
  // cancel. Gauges that feel the opposite leave the output of a resistor as it is and turn the strain.
  core::Setup setup = sixWireFullBridge();
  setup.bridge.arms = {350.4_ohm, 349.7_ohm, 350.1_ohm, 350.9_ohm};
  const auto plain = polarityMap(setup, 59.0_kohm);
  ASSERT_TRUE(plain);
  for (const int swapped : {1, 2, 3, 4}) {
    core::Setup other = setup;
    other.bridge.hookup.signalReversed = swapped == 1 || swapped == 3;
    other.bridge.hookup.excitationReversed = swapped == 2 || swapped == 3;
    other.bridge.hookup.gaugesReversed = swapped == 4;
    const auto map = polarityMap(other, 59.0_kohm);
    ASSERT_TRUE(map) << map.error().text();
    const double output = swapped < 3 ? -1 : 1;
    for (std::size_t k = 0; k < map->cells.size(); ++k) {
      const Prediction& was = *plain->cells[k].prediction;
      const Prediction& is = *map->cells[k].prediction;
      EXPECT_NEAR(is.output.base(), output * was.output.base(), 2e-15) << swapped;  // roundings as above
      // The gauges' own output turns with the wires, so the strain stays; a full bridge, bending, is linear
      // in the strain but for unequal arms of 0.3 %, which the reversal of the gauges shows in second order.
      const double strain = swapped == 4 ? -1 : 1;
      EXPECT_NEAR(is.simulated, strain * was.simulated,
                  2e-15 + 1e-2 * (swapped == 4) * std::abs(was.simulated));
    }
  }
}

TEST(PolarityMap, CellThatCannotBeHasItsReasonAndHidesNoOther) {
  core::Setup setup = sixWireFullBridge();
  setup.bridge.leads[static_cast<std::size_t>(LeadRole::SignalPlus)] = 0.0_ohm;
  const auto map = polarityMap(setup, 59.0_kohm);
  ASSERT_TRUE(map) << map.error().text();
  std::size_t failed = 0;
  for (const PolarityCell& cell : map->cells) failed += !cell.prediction;
  EXPECT_EQ(failed, 1u);
  const auto& cell = between(setup.bridge, *map, Node::SPlus, Node::Arm3End);
  ASSERT_FALSE(cell.prediction);
  EXPECT_EQ(cell.prediction.error().where, "shunt over lead S+");
  EXPECT_NE(cell.prediction.error().what.find("one node"), std::string::npos);
}

TEST(PolarityMap, ShuntWithoutResistanceFailsInEveryCell) {
  for (const double ohm : {0.0, -1.0}) {
    const auto map = polarityMap(sixWireFullBridge(), Resistance(ohm));
    ASSERT_TRUE(map) << map.error().text();
    for (const PolarityCell& cell : map->cells) EXPECT_FALSE(cell.prediction);
  }
}

TEST(PolarityMap, BridgeThatCannotBeSolvedFailsAsAWhole) {
  core::Setup setup = sixWireFullBridge();
  setup.bridge.arms[1] = Resistance(-1);
  const auto map = polarityMap(setup, 59.0_kohm);
  ASSERT_FALSE(map);
  EXPECT_EQ(map.error().where, "arm 2");
}

TEST(PolarityMap, TerminalOfABrokenSenseLeadIsLeftOut) {
  // With constant current the sense pair is not measured; broken, its terminal is in the air.
  core::Setup setup = sixWireFullBridge();
  setup.instrument.current = CurrentSource{Current(10e-3), 350.0_ohm};
  setup.bridge.hookup.broken[static_cast<std::size_t>(LeadRole::SensePlus)] = true;
  const auto map = polarityMap(setup, 59.0_kohm);
  ASSERT_TRUE(map) << map.error().text();
  EXPECT_EQ(std::count(map->points.begin(), map->points.end(), Node::SensePlus), 0);
  ASSERT_EQ(map->points.size(), 9u);
  for (const PolarityCell& cell : map->cells) EXPECT_TRUE(cell.prediction) << cell.prediction.error().text();
}

TEST(PolarityMap, EveryTemplateHasAllItsPoints) {
  for (const BridgeTemplate& shape : allTemplates()) {
    const core::Setup setup = test::withLeads(test::equalArms(shape.type, 350.0_ohm), 0.5_ohm);
    const auto map = polarityMap(setup, 59.0_kohm);
    ASSERT_TRUE(map) << shape.key << ": " << map.error().text();
    // Four terminals, the ends of the eight arms' ends that no join makes one of those.
    std::set<Node> points;
    for (const Node node : allNodes())
      if (hasNode(setup.bridge, node)) points.insert(pointOf(setup.bridge, node));
    EXPECT_EQ(std::set<Node>(map->points.begin(), map->points.end()), points) << shape.key;
  }
}

}  // namespace
