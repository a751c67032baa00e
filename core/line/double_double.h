// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <cmath>
#include <span>

namespace core {

/// A number kept as the unevaluated sum of two doubles, about 32 digits.
///
/// Lines are fitted to few points whose sums cancel (an intercept near zero from readings near a
/// thousand). With this the only rounding left is that of the readings themselves. The range is that
/// of double: scale first when squares could overflow.
/// Source: Dekker, "A floating-point technique for extending the available precision", 1971, with the
/// product error taken by fused multiply-add. Needs strict IEEE arithmetic (no -ffast-math).
class DoubleDouble {
 public:
  constexpr DoubleDouble() = default;
  constexpr DoubleDouble(double value) : m_high(value) {}

  double value() const { return m_high + m_low; }

  friend DoubleDouble operator-(DoubleDouble a) { return {-a.m_high, -a.m_low}; }

  friend DoubleDouble operator+(DoubleDouble a, DoubleDouble b) {
    const DoubleDouble high = exactSum(a.m_high, b.m_high);
    const DoubleDouble low = exactSum(a.m_low, b.m_low);
    const DoubleDouble first = quickSum(high.m_high, high.m_low + low.m_high);
    return quickSum(first.m_high, first.m_low + low.m_low);
  }

  friend DoubleDouble operator-(DoubleDouble a, DoubleDouble b) { return a + (-b); }

  friend DoubleDouble operator*(DoubleDouble a, DoubleDouble b) {
    const double high = a.m_high * b.m_high;
    const double error = std::fma(a.m_high, b.m_high, -high);
    return quickSum(high, error + (a.m_high * b.m_low + a.m_low * b.m_high));
  }

  friend DoubleDouble operator/(DoubleDouble a, DoubleDouble b) {
    const double first = a.m_high / b.m_high;
    const DoubleDouble rest = a - b * first;
    const double second = rest.m_high / b.m_high;
    const DoubleDouble rest2 = rest - b * second;
    return quickSum(first, second) + rest2.m_high / b.m_high;
  }

  DoubleDouble& operator+=(DoubleDouble other) { return *this = *this + other; }

 private:
  constexpr DoubleDouble(double high, double low) : m_high(high), m_low(low) {}

  static DoubleDouble exactSum(double a, double b) {
    const double sum = a + b;
    const double part = sum - a;
    return {sum, (a - (sum - part)) + (b - part)};
  }
  /// As exactSum, for |a| >= |b|.
  static DoubleDouble quickSum(double a, double b) {
    const double sum = a + b;
    return {sum, b - (sum - a)};
  }

  double m_high = 0;
  double m_low = 0;
};

/// The power of two that brings the largest of `values` near 1: scaling by it rounds nothing.
/// 1 when all are zero.
inline double scaleToOne(std::span<const double> values) {
  double largest = 0;
  for (const double v : values) largest = std::max(largest, std::abs(v));
  int exponent = 0;
  std::frexp(largest, &exponent);
  return std::ldexp(1.0, std::clamp(-exponent, -1000, 1000));
}

}  // namespace core
