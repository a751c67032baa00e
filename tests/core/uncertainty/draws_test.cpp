// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/uncertainty/draws.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

namespace {

using namespace core;

constexpr std::size_t trials = 1'024'000;
const double perRoot = 1 / std::sqrt(static_cast<double>(trials));

Uncertainty standard(double u, std::optional<double> dof = {}) {
  return {.statement = Statement::Standard, .amount = u, .degreesOfFreedom = dof};
}
Uncertainty within(double halfWidth, Distribution distribution) {
  return {.statement = Statement::Tolerance, .amount = halfWidth, .distribution = distribution};
}

using Series = std::vector<double>;

/// All trials of each input.
std::vector<Series> drawn(const std::vector<TrialInput>& inputs,
                          const std::vector<CorrelatedPair>& pairs = {}, std::uint64_t seed = 1,
                          std::size_t count = trials) {
  const auto draws = Draws::of(inputs, pairs, seed);
  if (!draws) throw std::runtime_error(draws.error().text());
  std::vector<Series> series(inputs.size());
  std::vector<double> lanes(inputs.size() * trialLanes);
  for (std::size_t trial = 0; trial < count; trial += trialLanes) {
    draws->draw(trial, lanes);
    for (std::size_t k = 0; k < inputs.size(); ++k)
      series[k].insert(series[k].end(), lanes.begin() + static_cast<std::ptrdiff_t>(k * trialLanes),
                       lanes.begin() + static_cast<std::ptrdiff_t>((k + 1) * trialLanes));
  }
  return series;
}

double meanPower(const Series& series, double about, int power) {
  double sum = 0;
  for (double value : series) sum += std::pow(value - about, power);
  return sum / static_cast<double>(series.size());
}

double correlation(const Series& a, const Series& b) {
  const double meanA = meanPower(a, 0, 1), meanB = meanPower(b, 0, 1);
  double sum = 0;
  for (std::size_t k = 0; k < a.size(); ++k) sum += (a[k] - meanA) * (b[k] - meanB);
  return sum / static_cast<double>(a.size()) / std::sqrt(meanPower(a, meanA, 2) * meanPower(b, meanB, 2));
}

/// Greatest distance between the share of trials below a value and `distribution` (Kolmogorov and Smirnov),
/// times the root of their number: above 1.95 with a probability of 1e-3 (common table, from memory).
template <class Function>
double mismatch(Series series, const Function& distribution) {
  std::sort(series.begin(), series.end());
  double greatest = 0;
  for (std::size_t k = 0; k < series.size(); ++k) {
    const double below = (static_cast<double>(k) + 0.5) / static_cast<double>(series.size());
    greatest = std::max(greatest, std::abs(below - distribution(series[k])));
  }
  return greatest / perRoot;
}

}  // namespace

TEST(Draws, HaveTheSpreadOfTheirDistribution) {
  // Derived, distribution functions of JCGM 101:2008, 6.4, about value 10 with half width or u of 2.
  const auto all = drawn({{10, standard(2)},
                          {10, within(2, Distribution::Rectangular)},
                          {10, within(2, Distribution::Triangular)},
                          {10, within(2, Distribution::Arcsine)},
                          {10, standard(2, 3)}});

  EXPECT_LT(mismatch(all[0], [](double x) { return std::erfc(-(x - 10) / 2 / std::numbers::sqrt2) / 2; }),
            1.95);
  EXPECT_LT(mismatch(all[1], [](double x) { return (x - 8) / 4; }), 1.95);
  EXPECT_LT(mismatch(all[2],
                     [](double x) {
                       const double d = (x - 10) / 2, tail = (1 - std::abs(d)) * (1 - std::abs(d)) / 2;
                       return d < 0 ? tail : 1 - tail;
                     }),
            1.95);
  EXPECT_LT(mismatch(all[3], [](double x) { return 0.5 + std::asin((x - 10) / 2) / std::numbers::pi; }),
            1.95);
  // Student's t with 3 degrees of freedom in closed form: 1/2 + (arctan a + a / (1 + a^2)) / pi, a =
  // t/sqrt 3.
  EXPECT_LT(mismatch(all[4],
                     [](double x) {
                       const double a = (x - 10) / 2 / std::sqrt(3.0);
                       return 0.5 + (std::atan(a) + a / (1 + a * a)) / std::numbers::pi;
                     }),
            1.95);
}

TEST(Draws, StayWithinTheirLimits) {
  const auto all = drawn({{10, within(2, Distribution::Rectangular)},
                          {10, within(2, Distribution::Triangular)},
                          {10, within(2, Distribution::Arcsine)}});
  for (const Series& series : all) {
    const auto [least, greatest] = std::minmax_element(series.begin(), series.end());
    EXPECT_GE(*least, 8 - 1e-14);  // a few last digits of 10
    EXPECT_LE(*greatest, 12 + 1e-14);
  }
}

TEST(Draws, OfUnequalStatementsHaveTheStatedStandardUncertainty) {
  // Derived: U = 3 with k = 2 is u = 1.5; 5 % of -40 in all is 2; a normal tolerance of 3 with k = 3 is 1.
  // The variance of n draws scatters by sqrt(2 / n) of itself; five times that.
  const auto all = drawn({{0, {.statement = Statement::Expanded, .amount = 3, .coverageFactor = 2}},
                          {-40, {.statement = Statement::Standard, .amount = 0.05, .relative = true}},
                          {0, {.amount = 3, .coverageFactor = 3, .distribution = Distribution::Normal}}});
  const double scatter = 5 * std::numbers::sqrt2 * perRoot;
  EXPECT_NEAR(meanPower(all[0], 0, 2), 2.25, 2.25 * scatter);
  EXPECT_NEAR(meanPower(all[1], -40, 2), 4, 4 * scatter);
  EXPECT_NEAR(meanPower(all[2], 0, 2), 1, scatter);
}

TEST(Draws, WithoutUncertaintyAreTheValue) {
  const auto all = drawn({{7.25, standard(0)}, {1, standard(1)}, {-3, within(0, Distribution::Arcsine)}});
  for (double value : all[0]) ASSERT_EQ(value, 7.25);
  for (double value : all[2]) ASSERT_EQ(value, -3);
}

TEST(Draws, OfOneInputDoNotDependOnTheOthers) {
  const auto before = drawn({{1, standard(1)}, {2, standard(1)}, {3, within(1, Distribution::Triangular)}},
                            {}, 9, trialLanes);
  const auto after =
      drawn({{1, standard(0)}, {2, standard(0)}, {3, within(1, Distribution::Triangular)}, {4, standard(2)}},
            {}, 9, trialLanes);
  EXPECT_EQ(before[2], after[2]);
  EXPECT_NE(before[2], drawn({{1, standard(1)}, {2, standard(1)}, {3, within(1, Distribution::Triangular)}},
                             {}, 10, trialLanes)[2]);
}

TEST(Draws, NormalInputsHaveTheCorrelationAskedFor) {
  // An input of another group, and one of none, in between.
  const std::vector<TrialInput> inputs(6, {0, standard(1)});
  const auto all = drawn(inputs, {{0, 2, 0.9}, {0, 3, 0.5}, {2, 3, 0.3}, {1, 5, -0.7}});
  const std::vector<std::vector<double>> expected = {{1, 0, 0.9, 0.5, 0, 0}, {0, 1, 0, 0, 0, -0.7},
                                                     {0.9, 0, 1, 0.3, 0, 0}, {0.5, 0, 0.3, 1, 0, 0},
                                                     {0, 0, 0, 0, 1, 0},     {0, -0.7, 0, 0, 0, 1}};
  for (std::size_t i = 0; i < 6; ++i) {
    EXPECT_NEAR(meanPower(all[i], 0, 2), 1, 5 * std::numbers::sqrt2 * perRoot);
    for (std::size_t j = 0; j < i; ++j) {
      // Derived: the sample coefficient scatters by (1 - r^2) / sqrt(n); five times that.
      const double r = expected[i][j];
      EXPECT_NEAR(correlation(all[i], all[j]), r, 5 * (1 - r * r) * perRoot) << i << " with " << j;
    }
  }
}

TEST(Draws, OfCorrelatedRectangularInputsComeClose) {
  // Derived: coefficient 6/pi arcsin(r/2) of a normal copula between rectangular inputs (K. Pearson, 1907;
  // from memory).
  const std::vector<TrialInput> inputs(2, {5, within(1, Distribution::Rectangular)});
  const auto all = drawn(inputs, {{0, 1, 0.5}});
  EXPECT_NEAR(correlation(all[0], all[1]), 6 / std::numbers::pi * std::asin(0.25), 5 * perRoot);
  EXPECT_LT(mismatch(all[1], [](double x) { return (x - 4) / 2; }), 1.95);
}

TEST(Draws, FullyCorrelatedInputsMoveTogetherToTheLastBit) {
  // Of each distribution two: the same where the coefficient is 1, mirrored where it is -1; also where they
  // depend on a third.
  const std::vector<Uncertainty> kinds = {standard(1), standard(1, 4), within(1, Distribution::Rectangular),
                                          within(1, Distribution::Triangular),
                                          within(1, Distribution::Arcsine)};
  for (const Uncertainty& kind : kinds) {
    for (const double sign : {1.0, -1.0}) {
      const std::vector<TrialInput> inputs = {{0, standard(1)}, {0, kind}, {0, standard(1)}, {0, kind}};
      const auto all = drawn(inputs, {{0, 1, 0.6}, {1, 3, sign}, {0, 3, sign * 0.6}}, 1, 3200);
      for (std::size_t k = 0; k < all[1].size(); ++k) ASSERT_EQ(all[3][k], sign * all[1][k]);
      // Its scatter is still its own: 3200 draws scatter by 2.5 % at most, five times that.
      EXPECT_NEAR(correlation(all[0], all[3]), sign * 0.6, 0.13);
    }
  }
}

TEST(Draws, AcceptCorrelationsAtTheEdgeOfThePossible) {
  // Derived: three equal coefficients of -1/2 make the sum of the three certain: its variance is 3 - 3 = 0.
  const auto all =
      drawn(std::vector<TrialInput>(3, {0, standard(1)}), {{0, 1, -0.5}, {0, 2, -0.5}, {1, 2, -0.5}});
  for (std::size_t k = 0; k < 1000; ++k) EXPECT_NEAR(all[0][k] + all[1][k] + all[2][k], 0, 1e-6);
  // All twenty of one group the same.
  std::vector<CorrelatedPair> pairs;
  for (std::size_t j = 1; j < 20; ++j)
    for (std::size_t i = 0; i < j; ++i) pairs.push_back({i, j, 1});
  const auto same = drawn(std::vector<TrialInput>(20, {0, standard(1)}), pairs, 1, 320);
  for (const Series& series : same) EXPECT_EQ(series, same[0]);
}

TEST(Draws, TakeRoundingAtTheEdgeOfThePossibleForRounding) {
  // Derived: coefficients cos(a_i - a_j) are those of unit vectors in a plane, so that two deviates make up
  // all others: z_k sin(a_1 - a_0) = z_0 sin(a_1 - a_k) + z_1 sin(a_k - a_0). The pivots left over are
  // rounding of either sign, and what is dropped with them is at most their root, 1e-7.
  constexpr std::size_t size = 12;
  const auto angle = [](std::size_t k) { return 0.7 * static_cast<double>(k * k) + 0.3; };
  std::vector<CorrelatedPair> pairs;
  for (std::size_t j = 1; j < size; ++j) {
    for (std::size_t i = 0; i < j; ++i) pairs.push_back({i, j, std::cos(angle(i) - angle(j))});
  }
  const auto all = drawn(std::vector<TrialInput>(size, {0, standard(1)}), pairs, 1, 320);
  for (std::size_t k = 2; k < size; ++k) {
    for (std::size_t trial = 0; trial < 320; ++trial) {
      EXPECT_NEAR(
          all[k][trial] * std::sin(angle(1) - angle(0)),
          all[0][trial] * std::sin(angle(1) - angle(k)) + all[1][trial] * std::sin(angle(k) - angle(0)),
          1e-6);
    }
  }
}

TEST(Draws, RefuseAnImpossibleCorrelation) {
  const std::vector<TrialInput> inputs(3, {0, standard(1)});
  const auto refused =
      Draws::of(inputs, std::vector<CorrelatedPair>{{0, 1, 0.9}, {0, 2, 0.9}, {1, 2, -0.9}}, 1);
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error().where, "correlation");
  EXPECT_FALSE(refused.error().mend.empty());
  EXPECT_FALSE(Draws::of(inputs, std::vector<CorrelatedPair>{{0, 1, 1.01}}, 1));
  EXPECT_FALSE(Draws::of(inputs, std::vector<CorrelatedPair>{{0, 1, std::nan("")}}, 1));
  // Two that are the same cannot differ in what they share with a third.
  EXPECT_FALSE(Draws::of(inputs, std::vector<CorrelatedPair>{{0, 1, 1}, {0, 2, 0.5}, {1, 2, 0.4}}, 1));
}

TEST(Draws, RefuseAnInputByItsNumber) {
  const std::vector<TrialInput> negative = {{0, standard(1)}, {0, standard(-1)}};
  const auto refused = Draws::of(negative, {}, 1);
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error().where, "input 2");
  const std::vector<TrialInput> nowhere = {{std::nan(""), standard(1)}};
  ASSERT_FALSE(Draws::of(nowhere, {}, 1));
  EXPECT_EQ(Draws::of(nowhere, {}, 1).error().where, "input 1");
}
