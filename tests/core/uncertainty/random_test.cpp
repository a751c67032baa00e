// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/uncertainty/random.h"

#include <gtest/gtest.h>

#include <cmath>
#include <vector>

#include "tests/support/digits.h"

namespace random_test {

using namespace core;
using Words = std::array<std::uint32_t, 4>;

std::vector<double> drawnCentred(std::uint64_t seed, std::uint32_t draw, std::size_t count, bool second) {
  std::vector<double> numbers;
  std::array<double, trialLanes> lanes1, lanes2;
  for (std::size_t trial = 0; trial < count; trial += trialLanes) {
    drawCentred(seed, trial, draw, lanes1, lanes2);
    const auto& lanes = second ? lanes2 : lanes1;
    numbers.insert(numbers.end(), lanes.begin(), lanes.end());
  }
  return numbers;
}

double correlation(const std::vector<double>& a, const std::vector<double>& b) {
  double ab = 0, aa = 0, bb = 0;
  for (std::size_t k = 0; k < a.size(); ++k) {
    ab += a[k] * b[k];
    aa += a[k] * a[k];
    bb += b[k] * b[k];
  }
  return ab / std::sqrt(aa * bb);
}

TEST(Philox, GivesTheKnownAnswersOfItsAuthors) {
  // Published: the known answers for philox4x32, 10 rounds, that come with the authors' own code (from
  // memory): all zeros, all ones, digits of pi.
  EXPECT_EQ(philox({0, 0, 0, 0}, {0, 0}), (Words{0x6627e8d5, 0xe169c58d, 0xbc57ac4c, 0x9b00dbd8}));
  EXPECT_EQ(philox({0xffffffff, 0xffffffff, 0xffffffff, 0xffffffff}, {0xffffffff, 0xffffffff}),
            (Words{0x408f276d, 0x41c83b0e, 0xa20bc7c6, 0x6d5451fd}));
  EXPECT_EQ(philox({0x243f6a88, 0x85a308d3, 0x13198a2e, 0x03707344}, {0xa4093822, 0x299f31d0}),
            (Words{0xd16cfe09, 0x94fdcceb, 0x5001e420, 0x24126ea1}));
}

TEST(Uniform, NeverReachesEitherEnd) {
  // Derived: the middles of the first and last of 2^52 intervals.
  EXPECT_EQ(uniformOf(0, 0), 0x1p-53);
  EXPECT_EQ(uniformOf(0xffffffff, 0xffffffff), 1 - 0x1p-53);
  EXPECT_EQ(uniformOf(0x80000000, 0), 0.5 + 0x1p-53);
  EXPECT_EQ(uniformOf(0, 1u << 12), 3 * 0x1p-53);
}

TEST(DrawCentred, HoldsTheWordsOfTheTrialsCounter) {
  // Beyond 2^32, so that both words of trial and seed count.
  const std::uint64_t first = (std::uint64_t{5} << 32) + 64, seed = 0x0123456789abcdef;
  std::array<double, trialLanes> lanes1, lanes2;

  drawCentred(seed, first, 7, lanes1, lanes2);

  for (std::uint32_t lane = 0; lane < trialLanes; ++lane) {
    const Words words = philox({64 + lane, 5, 7, 0}, {0x89abcdef, 0x01234567});
    EXPECT_EQ(lanes1[lane] + 0.5, uniformOf(words[0], words[1]));
    EXPECT_EQ(lanes2[lane] + 0.5, uniformOf(words[2], words[3]));
  }
}

TEST(DrawCentred, FillsTheRangeEvenly) {
  constexpr std::size_t count = 1'024'000, bins = 256;
  std::vector<double> hits(bins, 0);
  for (double q : drawnCentred(1, 0, count, false)) ++hits[static_cast<std::size_t>((q + 0.5) * bins)];
  double chiSquare = 0;
  const double expected = static_cast<double>(count) / bins;
  for (double n : hits) chiSquare += (n - expected) * (n - expected) / expected;
  // Derived: chi-square with 255 degrees of freedom has mean 255 and standard deviation sqrt(510) = 22.6;
  // five of these either way. Numbers that are too even are as wrong as uneven ones.
  EXPECT_NEAR(chiSquare, 255, 5 * 22.6);
}

TEST(DrawCentred, NumbersOfOneTrialOfOtherTrialsAndOtherSeedsAreUnrelated) {
  constexpr std::size_t count = 256'000;
  const auto base = drawnCentred(1, 0, count, false);
  auto shifted = base;
  shifted.erase(shifted.begin());
  shifted.push_back(base.front());
  // Derived: the correlation of unrelated numbers scatters by 1/sqrt(count) = 0.002; five times that.
  EXPECT_NEAR(correlation(base, drawnCentred(1, 0, count, true)), 0, 0.01);
  EXPECT_NEAR(correlation(base, drawnCentred(1, 1, count, false)), 0, 0.01);
  EXPECT_NEAR(correlation(base, drawnCentred(2, 0, count, false)), 0, 0.01);
  EXPECT_NEAR(correlation(base, shifted), 0, 0.01);
}

TEST(NormalQuantile, GivesPublishedValues) {
  // Published: M. Wichura, AS 241 (1988), the three values given to check an implementation (from memory).
  EXPECT_DIGITS(normalQuantile(0.25), -0.6744897501960817, 15);
  EXPECT_DIGITS(normalQuantile(0.001), -3.090232306167814, 15);
  EXPECT_DIGITS(normalQuantile(1e-20), -9.262340089798408, 15);
}

TEST(NormalQuantile, HoldsToTheFarEnds) {
  // Independent: mpmath 1.2.1, 400 bits, root of erfc(-z / sqrt 2) / 2 = p with p as the double it is; SciPy
  // 1.10.1 ndtri agrees to 15 digits. Three formulas meet at p = 0.075 and near 1.4e-11.
  const std::vector<std::pair<double, double>> table = {
      {0.5000001, 2.5066282733116483e-7}, {0.6, 0.253347103135799741},     {0.075, -1.43953147093845593},
      {0.0749, -1.44023826752796366},     {0.025, -1.95996398454005421},   {1e-6, -4.75342430882289896},
      {1.5e-11, -6.64657088747711286},    {1.3e-11, -6.66761145651074083}, {1e-15, -7.94134532617099677},
      {1e-16, -8.22208221613043562},      {1e-100, -21.2734535609653243},  {1e-300, -37.0470962993611992}};
  for (const auto& [p, z] : table) EXPECT_DIGITS(normalQuantile(p), z, 15) << p;
}

TEST(NormalQuantile, IsItsOwnMirror) {
  EXPECT_EQ(normalQuantile(0.5), 0);
  for (std::uint64_t k = 1; k < (std::uint64_t{1} << 52); k *= 3) {
    const double p = static_cast<double>(k) * 0x1p-53;  // 1 - p is exact
    EXPECT_EQ(normalQuantile(1 - p), -normalQuantile(p)) << p;
  }
}

TEST(NormalProbability, GivesPublishedValues) {
  // Published: M. Abramowitz and I. Stegun, Handbook of Mathematical Functions, table 26.1, 15 decimals
  // (from memory).
  EXPECT_NEAR(normalProbability(1), 0.841344746068543, 5e-16);
  EXPECT_NEAR(normalProbability(2), 0.977249868051821, 5e-16);
  EXPECT_NEAR(normalProbability(0.5), 0.691462461274013, 5e-16);
}

TEST(NormalProbability, HoldsToTheFarEnds) {
  // Independent: mpmath 1.2.1, 400 bits, erfc(-z / sqrt 2) / 2. SciPy 1.10.1 ndtr loses two digits in the
  // tails. Three formulas meet at 0.66291 and 5.66.
  const std::vector<std::pair<double, double>> table = {{0.1, 0.539827837277028984},
                                                        {0.66, 0.745373085328663862},
                                                        {0.67, 0.748571104904689898},
                                                        {-1, 0.158655253931457051},
                                                        {-1.959963984540054, 0.0250000000000000109},
                                                        {3, 0.998650101968369905},
                                                        {-5.6, 1.07175902583109293e-8},
                                                        {-5.7, 5.99037140106352819e-9},
                                                        {-8, 6.22096057427178412e-16},
                                                        {-10, 7.61985302416052607e-24},
                                                        {-20, 2.7536241186062337e-89},
                                                        {-37, 5.72557122252457682e-300}};
  for (const auto& [z, p] : table) EXPECT_DIGITS(normalProbability(z), p, 15) << z;
  EXPECT_EQ(normalProbability(0), 0.5);
  EXPECT_EQ(normalProbability(-40), 0);
  EXPECT_EQ(normalProbability(40), 1);
  EXPECT_TRUE(std::isnan(normalProbability(std::nan(""))));
}

TEST(NormalProbability, UndoesTheQuantile) {
  // Derived: a relative error of z moves a small p by z^2 times as much; three last digits of z at p = 1e-16
  // by 68 x 6.7e-16 = 5e-14.
  for (double p = 0.5; p > 1e-16; p *= 0.83)
    EXPECT_DIGITS(normalProbability(normalQuantile(p)), p, 13.3) << p;
}

TEST(Lanes, HaveTheBitsOfTheSingleFunctions) {
  std::array<double, trialLanes> q, z, back;
  for (std::uint64_t block = 0; block < 200; ++block) {
    drawCentred(3, block * trialLanes, 0, q, z);
    // Every other time into the tails, where one draw in 2^30 lies.
    if (block % 2 == 1)
      for (double& each : q) each = std::copysign(0.5 - std::ceil(std::abs(each) * 0x1p23) * 0x1p-53, each);
    z = q;
    normalFromCentred(z);
    back = z;
    centredFromNormal(back);
    for (std::size_t lane = 0; lane < trialLanes; ++lane) {
      EXPECT_EQ(z[lane], normalQuantile(q[lane] + 0.5)) << q[lane];
      const double below = normalProbability(-std::abs(z[lane]));
      // Near the middle the share is found itself, else from the small side, so that half a last digit of 0.5
      // may lie between the two ways.
      EXPECT_NEAR(back[lane], std::copysign(0.5 - below, z[lane]), 0x1p-53);
    }
  }
}

TEST(Lanes, MirroredNumbersStayMirrored) {
  std::array<double, trialLanes> q, mirrored, unused;
  drawCentred(4, 0, 0, q, unused);
  for (std::size_t lane = 0; lane < trialLanes; ++lane) mirrored[lane] = -q[lane];
  for (const auto transform : {normalFromCentred, centredFromNormal}) {
    transform(q);
    transform(mirrored);
    for (std::size_t lane = 0; lane < trialLanes; ++lane) EXPECT_EQ(mirrored[lane], -q[lane]);
  }
}

}  // namespace random_test
