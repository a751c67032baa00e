// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diagnose/check_times.h"

#include <algorithm>

namespace core {
namespace {

/// The middle of each step.
std::vector<double> plannedTimes_s(const Setup& setup) {
  std::vector<double> planned;
  double begin = 0;
  for (const Step& step : setup.sequence) {
    planned.push_back(begin + step.settle.base() + step.hold.base() / 2);
    begin += step.settle.base() + step.hold.base();
  }
  return planned;
}

}  // namespace

std::vector<double> stepTimes_s(const Setup& setup, const Check& check,
                                const std::vector<std::size_t>& steps) {
  const std::vector<double> planned = plannedTimes_s(setup);
  const bool recorded = std::all_of(steps.begin(), steps.end(), [&](std::size_t step) {
    return check.readings[step]->begin && check.readings[step]->end;
  });
  std::vector<double> times;
  for (const std::size_t step : steps) {
    const Measured& reading = *check.readings[step];
    times.push_back(recorded ? (reading.begin->base() + reading.end->base()) / 2 : planned[step]);
  }
  return times;
}

double plannedDuration_s(const Setup& setup) {
  if (setup.sequence.empty()) return 0;
  const std::vector<double> planned = plannedTimes_s(setup);
  return planned.back() - planned.front();
}

double lasted_s(const Setup& setup, const Check& check, const std::vector<std::size_t>& steps) {
  const std::vector<double> times = stepTimes_s(setup, check, steps);
  if (times.empty()) return 0;
  const auto [first, last] = std::minmax_element(times.begin(), times.end());
  return *last - *first;
}

}  // namespace core
