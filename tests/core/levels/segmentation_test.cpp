// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/levels/segmentation.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <random>

#include "core/levels/statistics.h"

namespace {

double squaresAboutMean(const std::vector<double>& y, std::size_t begin, std::size_t end) {
  double sum = 0;
  for (std::size_t i = begin; i < end; ++i) sum += y[i];
  const double mean = sum / static_cast<double>(end - begin);
  double squares = 0;
  for (std::size_t i = begin; i < end; ++i) squares += (y[i] - mean) * (y[i] - mean);
  return squares;
}

/// The least objective over every set of cuts, tried one by one.
double leastByTrial(const std::vector<double>& y, double penalty, std::size_t shortest) {
  double least = std::numeric_limits<double>::infinity();
  for (std::size_t cuts = 0; cuts < (std::size_t{1} << (y.size() - 1)); ++cuts) {
    double objective = 0;
    std::size_t begin = 0;
    bool allowed = true;
    for (std::size_t end = 1; end <= y.size(); ++end) {
      const bool cut = end == y.size() || ((cuts >> (end - 1)) & 1U) != 0;
      if (!cut) continue;
      allowed = allowed && end - begin >= shortest;
      objective += squaresAboutMean(y, begin, end) + (end < y.size() ? penalty : 0);
      begin = end;
    }
    if (allowed) least = std::min(least, objective);
  }
  return least;
}

TEST(OptimalPartition, IsTheBestOfAllCutsTriedOneByOne) {
  std::mt19937 random(7);
  for (int round = 0; round < 60; ++round) {
    std::vector<double> y(12);
    for (double& v : y) v = static_cast<double>(random() % 10);
    const double penalty = 1 + static_cast<double>(random() % 30);
    const std::size_t shortest = 1 + random() % 4;
    const auto partition = core::optimalPartition(y, penalty, shortest);
    EXPECT_NEAR(partition.objective, leastByTrial(y, penalty, shortest), 1e-10) << "round " << round;
  }
}

TEST(OptimalPartition, CutsAtCandidatesOnly) {
  const std::vector<double> y = {0, 0, 0, 9, 9, 9};
  EXPECT_EQ(core::optimalPartition(y, 1.0).changes, (std::vector<std::size_t>{3}));
  const std::vector<std::size_t> candidates = {2, 5};
  EXPECT_EQ(core::optimalPartition(y, candidates, 1.0).changes, candidates);
  EXPECT_TRUE(core::optimalPartition(y, std::vector<std::size_t>{}, 1.0).changes.empty());
}

TEST(OptimalPartition, OfASeriesTooShortToCutIsOneSegment) {
  EXPECT_TRUE(core::optimalPartition(std::vector<double>{4}, 1.0).changes.empty());
  const auto partition = core::optimalPartition(std::vector<double>{0, 9}, 1.0, 5);
  EXPECT_TRUE(partition.changes.empty());
  EXPECT_EQ(partition.objective, 40.5);
}

TEST(RefinedChanges, MoveToTheStep) {
  const std::vector<double> y = {0, 0, 0, 0, 9, 9, 9, 9, 9, 9};
  EXPECT_EQ(core::refinedChanges(y, {6}, 3), (std::vector<std::size_t>{4}));
  EXPECT_EQ(core::refinedChanges(y, {6}, 1), (std::vector<std::size_t>{5}));
}

TEST(WithoutSpikes, KeepsStepsAndDropsSingleSamples) {
  EXPECT_EQ(core::withoutSpikes(std::vector<double>{1, 1, 50, 1, 1, 7, 7, 7}),
            (std::vector<double>{1, 1, 1, 1, 1, 7, 7, 7}));
}

TEST(UncertaintyOfMean, OfAThousandWhiteReadingsAndOfTheirBlocksAgree) {
  // Derived: alternating -1, +1 has no positive correlation, so u = s/sqrt(n) with s^2 = n/(n - 1).
  std::vector<double> few(1000);
  for (std::size_t i = 0; i < few.size(); ++i) few[i] = i % 2 == 0 ? -1 : 1;
  EXPECT_DOUBLE_EQ(core::uncertaintyOfMean(few), std::sqrt(1000.0 / 999.0 / 1000.0));
  EXPECT_EQ(core::uncertaintyOfMean(std::vector<double>{3}), 0);
  EXPECT_EQ(core::uncertaintyOfMean(std::vector<double>(50, 0.1)), 0);
}

}  // namespace
