// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/uncertainty/student_deviates.h"

#include <gtest/gtest.h>

#include <numbers>

#include "core/uncertainty/random.h"
#include "tests/support/digits.h"

namespace {

using namespace core;

/// Student's t below which the share p lies.
double quantile(double dof, double p) { return StudentDeviates(dof).fromNormal(normalQuantile(p)); }

}  // namespace

TEST(StudentDeviates, GiveTheTableOfTheGuide) {
  // Published: JCGM 100:2008, table G.2, t for 95 % and 99 % of the distribution, printed to 0.01 (from
  // memory; 2.92 at 16 is used in H.1.6).
  EXPECT_NEAR(quantile(1, 0.975), 12.71, 0.005);
  EXPECT_NEAR(quantile(2, 0.975), 4.30, 0.005);
  EXPECT_NEAR(quantile(10, 0.975), 2.23, 0.005);
  EXPECT_NEAR(quantile(50, 0.975), 2.01, 0.005);
  EXPECT_NEAR(quantile(16, 0.995), 2.92, 0.005);
  EXPECT_NEAR(quantile(4, 0.995), 4.60, 0.005);
}

TEST(StudentDeviates, HoldToNineDigits) {
  // Independent: mpmath 1.2.1, 400 bits, root of the regularised incomplete beta function (SciPy 1.10.1 t.ppf
  // agrees to 8 digits). The header promises 5e-9 up to |z| = 4 and 1e-7 beyond.
  EXPECT_DIGITS(quantile(1, 0.6), 0.3249196962329062, 8.3);
  EXPECT_DIGITS(quantile(1, 0.975), 12.70620473617469, 8.3);
  EXPECT_DIGITS(quantile(1, 0.99865), 235.7836871584992, 8.3);
  EXPECT_DIGITS(quantile(1.5, 0.975), 6.016663104427928, 8.3);
  EXPECT_DIGITS(quantile(2, 0.975), 4.302652729749462, 8.3);
  EXPECT_DIGITS(quantile(2, 1 - 0x1p-30), 23170.47497355201, 7);
  EXPECT_DIGITS(quantile(3, 0.6), 0.2766706623326898, 8.3);
  EXPECT_DIGITS(quantile(7.3, 0.99), 2.963940447583896, 8.3);
  EXPECT_DIGITS(quantile(10, 1 - 0x1p-40), 40.92058256173976, 7);
  EXPECT_DIGITS(quantile(24, 0.9), 1.31783593367315, 8.3);
  EXPECT_DIGITS(quantile(1000, 0.995), 2.580754698065951, 8.3);
  EXPECT_DIGITS(quantile(100000, 0.975), 1.959987707534609, 8.3);
}

TEST(StudentDeviates, OfOneDegreeOfFreedomAreATangent) {
  // Derived: the distribution function is 1/2 + arctan(t) / pi.
  const StudentDeviates deviates(1);
  for (double z = 0.01; z < 8.2; z += 0.0371) {
    const double below = normalProbability(-z);
    EXPECT_DIGITS(deviates.fromNormal(z), 1 / std::tan(std::numbers::pi * below), z < 4 ? 8.3 : 7) << z;
  }
}

TEST(StudentDeviates, AreMirroredAndHaveAnEnd) {
  const StudentDeviates deviates(4.5);
  EXPECT_EQ(deviates.fromNormal(0), 0);
  EXPECT_EQ(deviates.fromNormal(-1.25), -deviates.fromNormal(1.25));
  EXPECT_EQ(deviates.fromNormal(9), deviates.fromNormal(8.25));
  EXPECT_TRUE(std::isfinite(deviates.fromNormal(1e300)));
}

TEST(StudentDeviates, BelowOneDegreeOfFreedomCountAsOne) {
  EXPECT_EQ(quantile(0.25, 0.975), quantile(1, 0.975));
}

TEST(StudentDeviates, OfVeryManyDegreesOfFreedomAreNormal) {
  // Derived: t = z + (z^3 + z) / (4 nu) to first order, 2.4e-6 above z = 1.96 at the million that more count
  // as (Abramowitz and Stegun, 26.7.5).
  EXPECT_NEAR(quantile(1e12, 0.975), 1.959963984540054, 3e-6);
}
