// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/levels/cells.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <numeric>

namespace {

using core::Cells;
using core::SampleSpan;

TEST(Cells, AreMeansOfRunsOfSamples) {
  std::vector<double> values(103);
  std::iota(values.begin(), values.end(), 1000.0);
  const Cells cells = core::cellsOf(values, 10);
  ASSERT_EQ(cells.size(), 10u);
  EXPECT_DOUBLE_EQ(cells.origin + cells[0], 1004.5);
  EXPECT_DOUBLE_EQ(cells.origin + cells[9], 1096);  // 1090 to 1102: the rest belongs to the last one
  EXPECT_DOUBLE_EQ(cells.mean(0, 2), 9.5);
  EXPECT_EQ(cells.samplesOf(2, 4), (SampleSpan{20, 40}));
  EXPECT_EQ(cells.samplesOf(9, 10), (SampleSpan{90, 103}));
}

TEST(Cells, OfOneSampleAreTheSamples) {
  const std::vector<double> values = {1, 1, 1, 7, 7, 7, 7};
  const Cells cells = core::cellsOf(values, 1);
  ASSERT_EQ(cells.size(), 7u);
  for (std::size_t k = 0; k < 7; ++k) EXPECT_EQ(cells.origin + cells[k], values[k]);
}

TEST(Cells, LeaveMissingValuesOut) {
  constexpr double nan = std::numeric_limits<double>::quiet_NaN();
  std::vector<double> values(40, 2.0);
  for (std::size_t i = 12; i < 27; ++i) values[i] = nan;
  const Cells cells = core::cellsOf(values, 10);
  // Samples 10 to 19 have two numbers, 20 to 29 three: neither is a cell.
  ASSERT_EQ(cells.size(), 2u);
  EXPECT_EQ(cells.samplesOf(0, 1), (SampleSpan{0, 10}));
  EXPECT_EQ(cells.samplesOf(1, 2), (SampleSpan{30, 40}));
  EXPECT_EQ(core::cellsOf(std::vector<double>(40, nan), 10).size(), 0u);
}

TEST(Cells, ForgetWhatSticksOutForOneOrTwoSamples) {
  std::vector<double> values(50, 3.0);
  values[10] = 500;
  values[20] = values[21] = -500;
  const Cells cells = core::cellsOf(values, 1);
  for (std::size_t k = 0; k < cells.size(); ++k) EXPECT_EQ(cells.origin + cells[k], 3) << k;
  EXPECT_EQ(core::despiked(std::vector<double>{1, 1, 50, 1, 1, 7, 7, 7}),
            (std::vector<double>{1, 1, 1, 1, 1, 7, 7, 7}));
}

TEST(Cells, GrowWithTheRecordingUpToAMillion) {
  EXPECT_EQ(core::usualCellLength(100'000), 1u);
  EXPECT_EQ(core::usualCellLength(2'000'000), 8u);
  EXPECT_EQ(core::usualCellLength(100'000'000), 96u);
}

TEST(SmoothedCells, LoseWhatRepeatsAndKeepTheirMean) {
  std::vector<double> values(400);
  for (std::size_t i = 0; i < values.size(); ++i) values[i] = 5 + (i % 8 < 4 ? 1 : -1);
  const Cells cells = core::smoothed(core::cellsOf(values, 1), 8);
  // Rounding of running sums of 400 numbers of size 6.
  for (std::size_t k = 0; k < cells.size(); ++k) EXPECT_NEAR(cells.origin + cells[k], 5, 1e-11);
}

}  // namespace
