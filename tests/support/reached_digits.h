// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <string>

#include "tests/support/digits.h"

// Checks against what others found, which tell how near they came: the table in tests/README.md is made of
// it.

namespace test {

/// Who says so. With `scale` digits count from there instead of from the value: differences, and values that
/// may be about zero, keep the digits of what they were taken from.
struct Source {
  Source(const char* source) : name(source) {}
  Source(std::string source, double of = 0) : name(std::move(source)), scale(of) {}

  std::string name;
  double scale = 0;
};

/// Digits of a deviation: -log10 of it over the value or the source's scale, from 0 to 15.
inline double digitsOf(const Source& source, double expected, double deviation) {
  const double scale = source.scale > 0 ? source.scale : expected;
  return agreeingDigits(scale + std::abs(deviation), scale);
}

/// Adds a line "source, quantity, digits, asked", between tabs, to the file that the environment names.
/// Without SHUNTWRIGHT_DIGITS nothing is written.
inline void noteDigits(const std::string& source, const std::string& quantity, double digits, double asked) {
  static const char* const name = std::getenv("SHUNTWRIGHT_DIGITS");
  if (!name) return;
  static std::FILE* const file = std::fopen(name, "a");
  ASSERT_TRUE(file) << name;
  std::fprintf(file, "%s\t%s\t%.3f\t%.3f\n", source.c_str(), quantity.c_str(), digits, asked);
  std::fflush(file);
}

inline testing::AssertionResult isReached(const char*, const char*, const char* actualText,
                                          const char* expectedText, const char* toleranceText,
                                          const Source& source, const std::string& quantity, double actual,
                                          double expected, double tolerance) {
  // What a tolerance leaves of a number smaller than itself is no digit: such a check has no line.
  const double asked = digitsOf(source, expected, tolerance);
  if (asked > 0) noteDigits(source.name, quantity, digitsOf(source, expected, actual - expected), asked);
  const auto near = testing::internal::DoubleNearPredFormat(actualText, expectedText, toleranceText, actual,
                                                            expected, tolerance);
  return near ? near
              : testing::AssertionFailure() << near.message() << "\n"
                                            << source.name << ", " << quantity;
}

inline testing::AssertionResult areDigitsReached(const char*, const char*, const char* actualText,
                                                 const char* expectedText, const char* digitsText,
                                                 const Source& source, const std::string& quantity,
                                                 double actual, double expected, double digits) {
  noteDigits(source.name, quantity, agreeingDigits(actual, expected), digits);
  const auto agree = digitsAgree(actualText, expectedText, digitsText, actual, expected, digits);
  return agree ? agree
               : testing::AssertionFailure() << agree.message() << "\n"
                                             << source.name << ", " << quantity;
}

}  // namespace test

/// EXPECT_NEAR to a value of `source`, a line of the table of digits.
#define EXPECT_REACHED(source, quantity, actual, expected, tolerance) \
  EXPECT_PRED_FORMAT5(test::isReached, source, quantity, actual, expected, tolerance)

/// EXPECT_DIGITS of a value of `source`, a line of the table of digits.
#define EXPECT_DIGITS_REACHED(source, quantity, actual, expected, digits) \
  EXPECT_PRED_FORMAT5(test::areDigitsReached, source, quantity, actual, expected, digits)
