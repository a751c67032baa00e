// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/uncertainty/portable.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "tests/support/digits.h"

// Independent: the C library (glibc states below one unit of the last digit for all three). 15 digits are
// the most that EXPECT_DIGITS counts: 4.5 units of the last.

TEST(Portable, LogarithmOverAllMagnitudes) {
  for (double exponent = -1021.9; exponent < 1023.9; exponent += 0.377) {
    const double x = std::exp2(exponent);
    EXPECT_DIGITS(core::portable::log(x), std::log(x), 15) << x;
  }
}

TEST(Portable, LogarithmNearOneKeepsItsDigits) {
  // It goes to zero there; the loss of a subtraction would show.
  for (double d = 1e-15; d < 0.5; d *= 1.3) {
    EXPECT_DIGITS(core::portable::log(1 + d), std::log(1 + d), 15) << d;
    EXPECT_DIGITS(core::portable::log(1 - d), std::log(1 - d), 15) << d;
  }
  EXPECT_EQ(core::portable::log(1), 0);
}

TEST(Portable, Exponential) {
  for (double x = -708; x < 709; x += 0.0917) EXPECT_DIGITS(core::portable::exp(x), std::exp(x), 15) << x;
  EXPECT_EQ(core::portable::exp(0), 1);
}

TEST(Portable, SineOfAQuarterTurnEachWay) {
  for (double x = 1e-9; x <= std::numbers::pi / 2; x = x * 1.01 + 1e-4) {
    EXPECT_DIGITS(core::portable::sine(x), std::sin(x), 15) << x;
    EXPECT_EQ(core::portable::sine(-x), -core::portable::sine(x));
  }
}

TEST(Portable, WholeNumbersUpTo52Bits) {
  EXPECT_EQ(core::portable::wholeNumber(0), 0);
  EXPECT_EQ(core::portable::wholeNumber(2046), 2046);
  EXPECT_EQ(core::portable::wholeNumber((std::uint64_t{1} << 52) - 1), 4503599627370495.0);
}
