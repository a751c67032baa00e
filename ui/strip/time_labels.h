// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <vector>

namespace ui {

/// Marks of a time axis: multiples of `step_s` from first to last.
struct TimeTicks {
  std::vector<double> times_s;
  double step_s = 1;
};

/// Marks at whole parts of a second, second, minute, hour or day, at most `count` (at least 1) intervals
/// between begin_s and end_s.
TimeTicks timeTicks(double begin_s, double end_s, int count);

/// A time in the user's notation, told in steps of `step_s`: "12.35" (seconds), "3:05.2" (minutes), "1:03:05"
/// (hours), as long as `greatest_s`, the longest time beside it, asks for.
QString timeText(double time_s, double step_s, double greatest_s);
/// What timeText counts in: "s", "min:s", "h:min:s".
QString timeUnitText(double greatest_s);

}  // namespace ui
