// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace test {

/// Leading digits of `actual` that agree with `expected`: -log10 of the relative error, or of |actual|
/// when 0 is expected; from 0 to 15. Anything not finite agrees in no digit.
inline double agreeingDigits(double actual, double expected) {
  if (!std::isfinite(actual) || !std::isfinite(expected)) return 0;
  const double error = expected == 0 ? std::abs(actual) : std::abs(actual - expected) / std::abs(expected);
  if (error == 0) return 15;
  return std::clamp(-std::log10(error), 0.0, 15.0);
}

inline testing::AssertionResult digitsAgree(const char* actualText, const char* expectedText, const char*,
                                            double actual, double expected, double digits) {
  const double agreeing = agreeingDigits(actual, expected);
  if (agreeing >= digits) return testing::AssertionSuccess();
  return testing::AssertionFailure() << actualText << " is " << testing::PrintToString(actual) << ", "
                                     << expectedText << " is " << testing::PrintToString(expected) << ": "
                                     << agreeing << " digits agree, wanted " << digits;
}

}  // namespace test

#define EXPECT_DIGITS(actual, expected, digits) \
  EXPECT_PRED_FORMAT3(test::digitsAgree, actual, expected, digits)
