// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <vector>

namespace core {

/// Deviates of Student's t distribution (not scaled to unit variance) from standard normal ones: the t that
/// as much probability lies below, an odd function that rises with z. Tabulated once for a number of degrees
/// of freedom, then quick; same bits on every machine. Right to a share of 1e-7 up to |z| = 8.25, beyond
/// which one draw in 1e16 lies and which counts as 8.25; to 5e-9 up to |z| = 4.
class StudentDeviates {
 public:
  /// Degrees of freedom below one count as one, above a million as a million: that is normal to 2e-6 at z
  /// = 2.
  explicit StudentDeviates(double degreesOfFreedom);

  double fromNormal(double z) const {
    const double position = std::min(std::abs(z), end) * cellsPerUnit;
    const auto cell = std::min(static_cast<std::size_t>(position), cells - 1);
    return std::copysign(between(m_nodes[cell], m_nodes[cell + 1], position - static_cast<double>(cell)), z);
  }

 private:
  struct Node {
    double value;
    double rise;  ///< slope times the width of a cell
  };
  static constexpr double cellsPerUnit = 128, end = 8.25;
  static constexpr std::size_t cells = 1056;

  /// The cubic with these values and slopes at its ends; x from 0 to 1.
  static double between(const Node& a, const Node& b, double x) {
    const double y = 1 - x;
    return y * y * (a.value * (1 + 2 * x) + a.rise * x) + x * x * (b.value * (1 + 2 * y) - b.rise * y);
  }

  std::vector<Node> m_nodes;
};

}  // namespace core
