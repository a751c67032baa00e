// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/diagnosis/plain_bridge.h"

#include <gtest/gtest.h>

#include <cmath>
#include <set>

#include "core/plan/prediction.h"
#include "tests/diagnosis/truth.h"

namespace {

using namespace diagnosis;

// Derived: 350 / (350 + 174650) = 1/500, so S- moves from 1/2 to 500/999 and the output is -1/1998.
TEST(PlainBridge, ShuntAcrossArm1OfAnIdealBridge) {
  PlainBridge bridge;
  bridge.type = core::BridgeType::FullBending;
  bridge.arms.fill(350);
  const auto ends = armEnds(bridge.type, 0);
  bridge.shunts.push_back({ends[0], ends[1], 174650});

  // An LU of ten rows in extended precision: far better than 1e-16.
  EXPECT_NEAR(static_cast<double>(bridge.output({0})), -1.0 / 1998.0, 1e-16);
  EXPECT_NEAR(static_cast<double>(bridge.output({})), 0, 1e-16);
}

// Derived: with 350 ohm arms on leads of 5 ohm the bridge sees 350/360 of the excitation at its corners, and
// sense leads measure just that.
TEST(PlainBridge, SenseLeadsTakeTheExcitationLeadsOut) {
  PlainBridge bridge;
  bridge.type = core::BridgeType::FullBending;
  bridge.arms = {350, 351, 350, 350};
  // An output of 7e-4 is the difference of two halves with 1e-19 each, before the conditioning: 1e-13.
  const auto without = bridge.output({});
  bridge.leads.fill(5);
  bridge.sensesAtBridge = true;
  EXPECT_NEAR(static_cast<double>(bridge.output({}) / without), 1, 1e-13);
  bridge.sensesAtBridge = false;
  // The bridge is 701 ohm beside 700 ohm.
  const double ohm = 701.0 * 700 / 1401;
  EXPECT_NEAR(static_cast<double>(bridge.output({}) / without), ohm / (ohm + 10), 1e-13);
}

// Two independent sets of nodal equations: the program's elimination and this one. 1e-9 relative is what the
// generator needs; both are better than that by orders, the difference of two outputs loses three digits.
TEST(PlainBridge, AgreesWithThePredictionOfAllTemplates) {
  std::set<core::BridgeType> seen;
  for (std::uint64_t number = 0; number < 600; ++number) {
    Dice dice(1, number);
    const DrawnChannel channel = drawChannel(dice);
    seen.insert(channel.setup.bridge.type);
    const auto prediction = core::predict(channel.setup);
    const auto readings = readingsOf(channel.setup, nominalTruth(channel.setup), {}, 0);
    for (std::size_t step = 0; step < readings.size(); ++step) {
      ASSERT_TRUE(prediction.steps[step]) << prediction.steps[step].error().text();
      const double expected = prediction.steps[step]->reading.base();
      EXPECT_NEAR(readings[step], expected, 1e-9 * std::abs(expected)) << "channel " << number;
    }
  }
  EXPECT_EQ(seen.size(), core::bridgeTypeCount);
}

}  // namespace
