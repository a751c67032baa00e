// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/circuit/bridge_template.h"

#include <gtest/gtest.h>

#include <set>

#include "tests/support/digits.h"

using namespace core;

namespace {

using enum BridgeType;

struct Factor {
  BridgeType type;
  double plain;  ///< N = plain + poisson x nu
  double poisson;
};

// Bridge factors N of the small-strain output N F strain / 4: quarter 1, adjacent half 2, diagonal half
// 2, Poisson half 1 + nu, full bending and torsion 4, full Poisson bridges 2 (1 + nu). M. J. Bower,
// Modern Strain Gage Technology, eq. 27.4-27.6 and 27.11, for quarter, half bending, half Poisson and
// full bending; the others derived as the sum of the arm strains with the arms' signs + - + -.
constexpr Factor factors[] = {{QuarterTwoWire, 1, 0},
                              {QuarterThreeWire, 1, 0},
                              {HalfBending, 2, 0},
                              {HalfPoisson, 1, 1},
                              {HalfDiagonal, 2, 0},
                              {FullBending, 4, 0},
                              {FullPoissonColumn, 2, 2},
                              {FullPoissonBendingSplit, 2, 2},
                              {FullPoissonBendingMixed, 2, 2},
                              {FullTorsion, 4, 0},
                              {Transducer, 4, 0}};
static_assert(std::size(factors) == bridgeTypeCount);

}  // namespace

TEST(BridgeTemplate, BridgeFactorIsThatOfTheTextbook) {
  for (const Factor& expected : factors)
    for (const double nu : {0.0, 0.285, 0.3, 0.5})
      EXPECT_DIGITS(templateOf(expected.type).bridgeFactor(nu), expected.plain + expected.poisson * nu, 15)
          << templateOf(expected.type).key;
}

TEST(BridgeTemplate, StandsInItsPlaceAndIsFoundByItsKey) {
  std::set<std::string_view> keys;
  for (const BridgeTemplate& shape : allTemplates()) {
    EXPECT_EQ(&templateOf(shape.type), &shape) << shape.key;
    EXPECT_EQ(bridgeTypeFromKey(shape.key), shape.type);
    EXPECT_FALSE(std::string_view(shape.name).empty());
    EXPECT_FALSE(std::string_view(shape.about).empty());
    keys.insert(shape.key);
  }
  EXPECT_EQ(keys.size(), bridgeTypeCount);
  EXPECT_FALSE(bridgeTypeFromKey("quarter"));
}

TEST(BridgeTemplate, StrainedArmsAreAtTheArticle) {
  for (const BridgeTemplate& shape : allTemplates())
    for (const std::size_t arm : {0, 1, 2, 3})
      EXPECT_TRUE(shape.atArticle[arm] || !shape.shares[arm].active()) << shape.key << ", arm " << arm + 1;
}

TEST(BridgeTemplate, Gauge1CarriesTheUnitStrain) {
  for (const BridgeTemplate& shape : allTemplates()) EXPECT_EQ(shape.shares[0].at(0.3), 1.0) << shape.key;
}

TEST(BridgeTemplate, EveryArmEndHasAWayToATerminal) {
  // A place that neither a wire nor a join reaches would float in every bridge of the template.
  for (const BridgeTemplate& shape : allTemplates()) {
    std::set<Node> reached = {Node::PPlus, Node::PMinus, Node::SPlus, Node::SMinus};
    for (std::size_t round = 0; round < nodeCount; ++round) {
      for (const Wire& wire : shape.wires)
        if (reached.contains(wire.from) || reached.contains(wire.to)) reached.insert({wire.from, wire.to});
      for (const Join& join : shape.joins)
        if (reached.contains(join.a) || reached.contains(join.b)) reached.insert({join.a, join.b});
    }
    for (const std::size_t arm : {0, 1, 2, 3}) {
      EXPECT_TRUE(reached.contains(armBegin(arm))) << shape.key << ", arm " << arm + 1;
      EXPECT_TRUE(reached.contains(armEnd(arm))) << shape.key << ", arm " << arm + 1;
    }
  }
}
