// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cmath>
#include <numbers>
#include <random>

namespace test {

/// Normal numbers by Box and Muller: those of the standard library may differ from one to the next.
class Normal {
 public:
  explicit Normal(unsigned seed) : m_random(seed) {}
  double operator()() {
    const double u = (m_random() + 1.0) / 4294967297.0;
    return std::sqrt(-2 * std::log(u)) * std::cos(2 * std::numbers::pi * uniform());
  }
  /// 0 to 1, 1 left out.
  double uniform() { return m_random() / 4294967296.0; }

 private:
  std::mt19937 m_random;
};

}  // namespace test
