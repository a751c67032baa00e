// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <vector>

namespace ui {

/// An axis from `low` to `high` with a tick at each multiple of `step`.
struct AxisTicks {
  double low = -1;
  double high = 1;
  double step = 1;

  QString labelFormat() const;  ///< for QValueAxis: as many places as the step needs
  QString label(double value) const;
};

/// Grows with the values it is shown; starts empty.
struct Extent {
  double low = 0;
  double high = 0;
  bool empty = true;

  void add(double value);
};

/// Ticks at 1, 2 or 5 times a power of ten, no more than `count` (at least 2) intervals, around the whole of
/// `extent`, with `room` of its length free at both ends. An empty extent, or one with equal ends, is
/// widened.
AxisTicks niceTicks(const Extent& extent, int count, double room = 0.04);

/// The multiples of `step` from `low` to `high`; none where those numbers are so large that neighbours among
/// the multiples are one double.
std::vector<double> multiples(double step, double low, double high);

/// The largest magnitude that is drawn; whatever is beyond is no reading of any instrument.
constexpr double greatestDrawn = 1e100;
bool isDrawable(double value);

}  // namespace ui
