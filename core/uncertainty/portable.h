// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <bit>
#include <cstdint>

// Elementary functions built from + - x / and bits alone, so that every machine and library gives the same
// bits; the standard library's differ in their last digits. Plain enough for a compiler to work out many at
// once. Made for finite arguments in the stated range; accuracy is about one unit of the last digit.

namespace core::portable {

// ln 2 in two parts, the first with so few digits that its product with an exponent is exact
// (W. J. Cody and W. Waite, Software Manual for the Elementary Functions, 1980; from memory).
inline constexpr double ln2High = 0x1.62e42feep-1;
inline constexpr double ln2Low = 0x1.a39ef35793c76p-33;

/// A whole number below 2^52 as a double. Written with bits because older vector units cannot convert.
inline double wholeNumber(std::uint64_t n) {
  return std::bit_cast<double>(n | 0x4330'0000'0000'0000U) - 0x1p52;
}

/// 1 - x^2/3! + x^4/5! ..., so that sin(x) = x times this; |x| <= pi/2.
inline double sine(double x) {
  const double s = x * x;
  double sum = 1;
  for (int k = 22; k >= 2; k -= 2) sum = 1 - sum * s * (1.0 / (k * (k + 1)));
  return x * sum;
}

/// Natural logarithm of a normal number above zero: ln(2^e m) = e ln 2 + 2 artanh((m - 1) / (m + 1)), with m
/// between the square roots of 1/2 and 2. Taken as a series of artanh, whose 12th term is below 1e-18.
inline double log(double x) {
  constexpr std::uint64_t rootHalf = 0x3fe6'a09e'667f'3bcdU;
  const std::uint64_t shifted = std::bit_cast<std::uint64_t>(x) - rootHalf + (std::uint64_t{1023} << 52);
  const double exponent = wholeNumber(shifted >> 52) - 1023;
  const double m = std::bit_cast<double>((shifted & 0x000f'ffff'ffff'ffffU) + rootHalf);
  const double t = (m - 1) / (m + 1);
  const double s = t * t;
  double sum = 1.0 / 23;
  for (int k = 21; k >= 3; k -= 2) sum = sum * s + 1.0 / k;
  return exponent * ln2High + (exponent * ln2Low + 2 * t * s * sum) + 2 * t;
}

/// e to the power x for -708 <= x <= 709: 2^n e^r with |r| <= ln 2 / 2, e^r by its series to r^13 / 13!.
inline double exp(double x) {
  constexpr double toWhole = 0x1.8p52;  // adding it leaves the nearest whole number in the last bits
  const double shifted = x * (1 / (ln2High + ln2Low)) + toWhole;
  const double n = shifted - toWhole;
  const double r = (x - n * ln2High) - n * ln2Low;
  double sum = 1;
  for (int k = 13; k >= 1; --k) sum = 1 + sum * r * (1.0 / k);
  const std::uint64_t power = (std::bit_cast<std::uint64_t>(shifted) + 1023) << 52;
  return sum * std::bit_cast<double>(power);
}

}  // namespace core::portable
