// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/uncertainty/coverage_interval.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <numeric>
#include <random>
#include <vector>

namespace {

using namespace core;

/// The rules of JCGM 101:2008, 7.7.2, word by word, on sorted values with ranks from 1.
CoverageIntervals byTheBook(std::vector<double> values, double coverage) {
  std::sort(values.begin(), values.end());
  const std::size_t m = values.size(), q = coveredTrials(m, coverage);
  const auto y = [&](std::size_t rank) { return values[rank - 1]; };
  const std::size_t r = (m - q) % 2 == 0 ? (m - q) / 2 : (m - q + 1) / 2;
  CoverageIntervals book{{y(r), y(r + q)}, {y(1), y(1 + q)}, {y(1), y(m)}};
  for (std::size_t rank = 2; rank <= m - q; ++rank) {
    if (y(rank + q) - y(rank) < book.shortest.high - book.shortest.low)
      book.shortest = {y(rank), y(rank + q)};
  }
  return book;
}

std::vector<double> shuffled(std::size_t count, unsigned seed) {
  std::vector<double> values(count);
  std::iota(values.begin(), values.end(), 1.0);
  std::shuffle(values.begin(), values.end(), std::mt19937(seed));
  return values;
}

void expectBook(const std::vector<double>& values, double coverage) {
  const CoverageIntervals book = byTheBook(values, coverage);
  auto reordered = values;
  const CoverageIntervals found = coverageIntervals(reordered, coverage);
  EXPECT_EQ(found.symmetric, book.symmetric);
  EXPECT_EQ(found.shortest, book.shortest);
  EXPECT_EQ(found.all, book.all);
  reordered = values;
  EXPECT_EQ(symmetricInterval(reordered, coverage), book.symmetric);
}

}  // namespace

TEST(CoveredTrials, AreTheShareToTheNearestWhole) {
  // Published: JCGM 101:2008, 7.7.2: q = pM if that is whole, else the integer part of pM + 1/2.
  EXPECT_EQ(coveredTrials(1'000'000, 0.95), 950'000u);
  EXPECT_EQ(coveredTrials(10'240, 0.95), 9'728u);
  EXPECT_EQ(coveredTrials(1001, 0.95), 951u);    // 950.95
  EXPECT_EQ(coveredTrials(1009, 0.95), 959u);    // 958.55
  EXPECT_EQ(coveredTrials(1008, 0.9545), 962u);  // 962.136
  EXPECT_EQ(coveredTrials(10, 0.99), 10u);       // there is no interval
}

TEST(CoverageIntervals, TakeTheRanksOfTheSupplement) {
  // Derived from 7.7.2: of the values 1 to 1000, q = 950 and r = (1000 - 950) / 2 = 25: from the 25th to the
  // 975th.
  auto values = shuffled(1000, 1);
  EXPECT_EQ(symmetricInterval(values, 0.95), (Interval{25, 975}));
  // 1001: q = 951, M - q = 50, r = 25. 1009: q = 959, r = 25. 1010: q = 960 (959.5), r = 25. 1019: q = 968
  // (968.05), M - q = 51 is odd, r = 26.
  values = shuffled(1001, 2);
  EXPECT_EQ(symmetricInterval(values, 0.95), (Interval{25, 976}));
  values = shuffled(1019, 3);
  EXPECT_EQ(symmetricInterval(values, 0.95), (Interval{26, 994}));
}

TEST(CoverageIntervals, ShortestLeansToWhereValuesAreDense) {
  // Derived: the squares of 1 to 1000 are densest at the low end, so that the first 951 are the shortest.
  auto values = shuffled(1000, 4);
  for (double& value : values) value *= value;
  EXPECT_EQ(coverageIntervals(values, 0.95).shortest, (Interval{1, 951.0 * 951.0}));
}

TEST(CoverageIntervals, FollowTheBookForAnySizeShapeAndCoverage) {
  std::mt19937 random(5);
  for (const std::size_t count : {3u, 10u, 100u, 999u, 10'240u, 70'001u}) {
    for (const double coverage : {0.3, 0.5, 0.6827, 0.9, 0.95, 0.9545, 0.99, 0.9973}) {
      if (coveredTrials(count, coverage) == 0 || coveredTrials(count, coverage) == count) continue;
      SCOPED_TRACE(testing::Message() << count << " values, " << coverage);
      std::vector<double> skew(count), steps(count);
      for (double& value : skew) value = std::lognormal_distribution<double>(0, 1)(random);
      for (double& value : steps) value = std::uniform_int_distribution<int>(0, 5)(random);
      expectBook(skew, coverage);
      expectBook(steps, coverage);  // many equal values
    }
  }
}

TEST(CoverageIntervals, FollowTheBookWhereTheSampleOfTheTailsMisleads) {
  // Every 16th value, which is what a sample sees, lies far up; the others are the true lower tail.
  std::vector<double> values(65'536);
  for (std::size_t k = 0; k < values.size(); ++k)
    values[k] = k % 16 == 0 ? 1e6 + static_cast<double>(k) : static_cast<double>(k * 7919 % 65'536);
  for (const double coverage : {0.9, 0.95, 0.99}) {
    expectBook(values, coverage);
    for (double& value : values) value = -value;
    expectBook(values, coverage);
  }
}

TEST(CoverageIntervals, OfEqualValuesHaveNoWidth) {
  std::vector<double> values(20'000, -3.5);
  const auto found = coverageIntervals(values, 0.95);
  EXPECT_EQ(found.symmetric, (Interval{-3.5, -3.5}));
  EXPECT_EQ(found.shortest, (Interval{-3.5, -3.5}));
}
