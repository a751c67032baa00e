// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/quantity.h"

#include <gtest/gtest.h>

#include <string>

#include "core/units/result.h"

using namespace core;

namespace {

template <class A, class B>
concept Addable = requires(A a, B b) {
  a + b;
};
template <class A, class B>
concept Subtractable = requires(A a, B b) {
  a - b;
};
template <class A, class B>
concept Comparable = requires(A a, B b) {
  a < b;
};
template <class A, class B>
concept Multipliable = requires(A a, B b) {
  a* b;
};
template <class A, class B>
concept Divisible = requires(A a, B b) {
  a / b;
};

// What must not compile: kinds that happen to share a dimension stay apart.
static_assert(Addable<Strain, Strain>);
static_assert(!Addable<Strain, Output>);
static_assert(!Addable<Resistance, Voltage>);
static_assert(!Addable<Reading, Output>);
static_assert(!Addable<Resistance, double>);
static_assert(!Subtractable<Output, Strain>);
static_assert(!Comparable<Strain, Output>);
static_assert(Comparable<Strain, Strain>);
static_assert(!Divisible<Voltage, Resistance>);
static_assert(!Divisible<double, Resistance>);
static_assert(Multipliable<double, Resistance>);
static_assert(!Multipliable<Resistance, Resistance>);
static_assert(!std::is_convertible_v<double, Resistance>);
static_assert(!std::is_convertible_v<Resistance, double>);
static_assert(std::is_same_v<decltype(Strain(1) / Strain(2)), double>);

}  // namespace

TEST(Quantity, LiteralsGiveTheDoubleNearestToWhatIsWritten) {
  // The compiler rounds each right-hand literal once; a product in double would be off in the last digit.
  EXPECT_EQ((174.65_kohm).base(), 174650.0);
  EXPECT_EQ((0.3_kohm).base(), 300.0);
  EXPECT_EQ((2.21_Mohm).base(), 2210000.0);
  EXPECT_EQ((350.0_ohm).base(), 350.0);
  EXPECT_EQ((0.1_mV_per_V).base(), 0.0001);
  EXPECT_EQ((1000.0_ustrain).base(), 0.001);
  EXPECT_EQ((0.14_mm2).base(), 0.14e-6);
  EXPECT_EQ((5.0_V).base(), 5.0);
  EXPECT_EQ((2.0_s).base(), 2.0);
  EXPECT_EQ((12.5_m).base(), 12.5);
  EXPECT_EQ((-20.0_degC).base(), -20.0);
}

TEST(Quantity, ComputesWithinItsKind) {
  EXPECT_EQ(350.0_ohm + 1.5_ohm, 351.5_ohm);
  EXPECT_EQ(350.0_ohm - 1.5_ohm, 348.5_ohm);
  EXPECT_EQ(2.0 * 350.0_ohm, 700.0_ohm);
  EXPECT_EQ(350.0_ohm * 2.0, 700.0_ohm);
  EXPECT_EQ(350.0_ohm / 2.0, 175.0_ohm);
  EXPECT_EQ(350.0_ohm / 700.0_ohm, 0.5);
  EXPECT_LT(-1000.0_ustrain, 1000.0_ustrain);
  Strain sum = 1.0_ustrain;
  sum += 2.0_ustrain;
  EXPECT_EQ(sum, 3.0_ustrain);
  sum -= 3.0_ustrain;
  EXPECT_EQ(sum, Strain(0));
}

TEST(Quantity, StartsAtZero) { EXPECT_EQ(Resistance().base(), 0.0); }

TEST(Result, IsAValueOrTheReason) {
  const Result<int> good = 7;
  const Result<int> bad = Error{"arm 2", "the resistance is negative", "Enter a positive resistance"};

  ASSERT_TRUE(good);
  EXPECT_EQ(*good, 7);
  ASSERT_FALSE(bad);
  EXPECT_EQ(bad.error().text(), "arm 2: the resistance is negative. Enter a positive resistance.");
}

TEST(Result, OfVoidIsSuccessUnlessGivenAReason) {
  const Result<void> good;
  const Result<void> bad = Error{"", "the file is empty", ""};

  EXPECT_TRUE(good);
  ASSERT_FALSE(bad);
  EXPECT_EQ(bad.error().text(), "the file is empty.");
}
