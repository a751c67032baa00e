// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numeric>

#include "tests/diagnosis/plant.h"
#include "tests/diagnosis/score.h"

namespace {

using namespace diagnosis;
using core::CauseKind;

/// A check of `channel` without noise, all inputs at their stated values.
core::Check exactCheck(const std::vector<double>& readings) {
  core::Check check;
  for (const double reading : readings)
    check.readings.emplace_back(core::Measured{core::Reading(reading), core::Reading(0), {}, {}});
  return check;
}

void takeMeanOut(std::vector<double>& values) {
  const double mean = std::accumulate(values.begin(), values.end(), 0.0) / static_cast<double>(values.size());
  for (double& value : values) value -= mean;
}

// What the program believes a fault does to the readings, against the same fault put into the plain bridge
// where it would happen. 1e-8 of the greatest reading: both solve their own nodal equations to better than
// 1e-12 of the output, and the differences of outputs lose three digits.
TEST(ChangesUnder, AgreesWithTheFaultPutIntoAPlainBridge) {
  for (std::size_t kind = 0; kind < core::causeKindCount; ++kind) {
    for (std::uint64_t number = 0; number < 60; ++number) {
      const auto simulated = faultyCheck(11, number, static_cast<CauseKind>(kind));
      const DrawnChannel& channel = simulated.channel;
      const core::Fault& fault = *simulated.planted;
      Truth truth = nominalTruth(channel.setup);
      plant(plantingOf(fault, channel, 0), channel, truth);
      auto expected = readingsOf(channel.setup, truth, {}, 0);
      const core::Check check = exactCheck(expected);
      const auto prediction = core::predict(channel.setup);
      const auto points =
          core::checkPoints(channel.setup, prediction, core::budgetOf(channel.setup, prediction), check);

      auto changes = core::changesUnder(channel.setup, check, points, fault);

      ASSERT_TRUE(changes) << changes.error().text();
      ASSERT_EQ(changes->size(), expected.size());
      takeMeanOut(*changes), takeMeanOut(expected);
      double greatest = 0, apart = 0;
      for (std::size_t k = 0; k < expected.size(); ++k) {
        greatest = std::max(greatest, std::abs(expected[k]));
        apart = std::max(apart, std::abs((*changes)[k] - expected[k]));
      }
      EXPECT_LE(apart, 1e-8 * greatest) << nameOf(fault.kind) << " in check " << number << ", "
                                        << core::templateOf(channel.setup.bridge.type).key;
    }
  }
}

}  // namespace
