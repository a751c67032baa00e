// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/compare/difference.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

namespace core {
namespace {

constexpr double coverage = 0.9545;

Change changeAt(double value, double standard, double margin, std::optional<double> dof = {}) {
  return differenceOf(value, standard, dof, margin, coverage).change;
}

// Half widths of a normal distribution: 1.6449 u and 1.9600 u (any table).
TEST(Difference, FourOutcomesFollowFromTwoIntervals) {
  EXPECT_EQ(changeAt(0.1, 0.1, 1), Change::Unchanged);   // 0.1 + 0.164 within 1; 0.1 below 0.196
  EXPECT_EQ(changeAt(0.5, 0.1, 1), Change::Harmless);    // 0.5 + 0.164 within 1; 0.5 above 0.196
  EXPECT_EQ(changeAt(0.9, 0.1, 1), Change::Changed);     // 0.9 + 0.164 not within 1, 0.9 above 0.196
  EXPECT_EQ(changeAt(0.5, 0.4, 1), Change::CannotTell);  // 0.5 + 0.658 not within 1, 0.5 below 0.784
  for (const double value : {0.1, 0.5, 0.9})
    EXPECT_EQ(changeAt(-value, 0.1, 1), changeAt(value, 0.1, 1)) << "the sign makes no difference";
}

TEST(Difference, NotSignificantIsNeverUnchanged) {
  // p of "no difference" is 1, and yet nothing is known: the margin is a tenth of the uncertainty.
  const Difference wide = differenceOf(0, 10.0, {}, 1, coverage);
  EXPECT_EQ(*wide.pDifferent, 1);
  EXPECT_EQ(wide.change, Change::CannotTell);
}

TEST(Difference, ProbabilitiesAndIntervalsAgreeOnBothTests) {
  // TOST rejects at 0.05 exactly when the interval of 0.90 lies inside (Schuirmann 1987, from memory).
  for (int k = -40; k <= 40; ++k)
    for (const double u : {0.05, 0.2, 0.31, 0.6})
      for (const std::optional<double>& dof :
           {std::optional<double>(), std::optional(3.7), std::optional(14.0)}) {
        const Difference d = differenceOf(0.033 * k, u, dof, 1, coverage);
        EXPECT_EQ(*d.pEquivalent < 0.05, std::abs(d.value) + *d.halfWidth90 < 1) << k << " " << u;
        EXPECT_EQ(*d.pDifferent<0.05, std::abs(d.value)> * d.halfWidth95) << k << " " << u;
      }
}

TEST(Difference, FewDegreesOfFreedomMakeBothTestsSlower) {
  EXPECT_EQ(changeAt(0.5, 0.2, 1), Change::Harmless);
  EXPECT_EQ(changeAt(0.5, 0.2, 1, 2.0), Change::CannotTell);  // t(2) at 0.95 is 2.920, at 0.975 4.303
}

TEST(Difference, AnUncertaintyOfZeroIsKnown) {
  EXPECT_EQ(changeAt(0, 0, 0), Change::Unchanged);
  EXPECT_EQ(changeAt(0.5, 0, 1), Change::Harmless);
  EXPECT_EQ(changeAt(1.5, 0, 1), Change::Changed);
}

TEST(Difference, WithoutUncertaintyNothingIsToldAndWithoutANumberNothingIsCompared) {
  EXPECT_EQ(differenceOf(0, {}, {}, 1, coverage).change, Change::CannotTell);
  EXPECT_EQ(changeAt(std::nan(""), 1, 1), Change::NotCompared);
  EXPECT_EQ(changeAt(std::numeric_limits<double>::infinity(), 1, 1), Change::NotCompared);
  EXPECT_EQ(changeAt(0, 1, std::nan("")), Change::NotCompared);
  EXPECT_EQ(changeAt(0, 1, -1), Change::NotCompared);
}

TEST(Difference, EnIsTheValueOverItsExpandedUncertainty) {
  // k = 2 at 95.45 % of a normal distribution (JCGM 100:2008, G.1.3), to the four digits that 95.45 % has.
  const Difference d = differenceOf(-3, 1.0, {}, 10, coverage);
  EXPECT_NEAR(*d.expanded, 2, 1e-4);
  EXPECT_NEAR(*d.en, -1.5, 1e-4);
}

TEST(Repeats, AreTheFirstNumberWithWhichOneTestAnswers) {
  // Derived: value 0, margin 1: sqrt(s2 / n + c) must be below 1 / 1.64485. With s2 = 4 and c = 0.1 that is
  // n > 4 / (0.36961 - 0.1) = 14.84.
  const Difference open = differenceOf(0, std::sqrt(4.1), {}, 1, coverage);
  EXPECT_EQ(repeatsToTell(open, {4, 0.1}), 15u);
}

TEST(Repeats, AreNoneWhenWhatTheyDoNotAverageIsTooLarge) {
  const Difference open = differenceOf(0, std::sqrt(4.5), {}, 1, coverage);
  EXPECT_EQ(repeatsToTell(open, {4, 0.5}), std::nullopt);  // 0.5 is above 0.36961
}

TEST(Repeats, AreNoneWhenNothingIsOpen) {
  EXPECT_EQ(repeatsToTell(differenceOf(0, 0.1, {}, 1, coverage), {0.01, 0}), std::nullopt);
  EXPECT_EQ(repeatsToTell(differenceOf(0, {}, {}, 1, coverage), {1, 0}), std::nullopt);
}

TEST(Repeats, ToldByTheNumberBeforeWouldContradict) {
  for (const double value : {0.0, 0.4, 0.8, 0.97})
    for (const double own : {0.3, 1.0, 5.0}) {
      const Difference open = differenceOf(value, std::sqrt(own + 0.01), {}, 1, coverage);
      if (open.change != Change::CannotTell) continue;
      const auto n = repeatsToTell(open, {own, 0.01});
      ASSERT_TRUE(n) << value << " " << own;
      const auto at = [&](double repeats) {
        return differenceOf(value, std::sqrt(own / repeats + 0.01), {}, 1, coverage).change;
      };
      EXPECT_NE(at(*n), Change::CannotTell);
      EXPECT_EQ(at(*n - 1), Change::CannotTell);
    }
}

}  // namespace
}  // namespace core
