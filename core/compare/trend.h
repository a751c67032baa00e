// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/evaluate/evaluation.h"

namespace core {

/// One check of a channel on the way through time.
struct TrendPoint {
  std::size_t check = 0;  ///< index in the channel
  std::optional<Date> day;
  std::optional<double> gain;  ///< measured over expected, slope of the check's agreement
  std::optional<double> gainStandard;
  std::optional<double> zero;  ///< reading of the zero reference, readings' unit
  std::optional<double> zeroStandard;
};

/// Limits of an individuals chart from the mean moving range: centre -+ 2.66 mean moving range, where 2.66 is
/// 3 / 1.128 (NIST/SEMATECH e-Handbook of Statistical Methods 6.3.2.2, from memory).
struct ControlLimits {
  double centre = 0, lower = 0, upper = 0;
};

/// Of values in the order of time; none with fewer than three, or one that is no finite number.
std::optional<ControlLimits> controlLimits(std::span<const double> values);

/// All checks of a channel that have a line, in the order of their days (checks without a day in the order
/// they were made, after those before them). Zeros are those of checks read in the unit of the latest.
struct Trend {
  std::vector<TrendPoint> points;
  std::optional<ControlLimits> gain;  ///< from three points on; few points make wide and uncertain limits
  std::optional<ControlLimits> zero;
  std::vector<std::size_t> beyondGain, beyondZero;  ///< indices of points outside of their limits
  std::string sentence;                             ///< what it comes to, or what is missing
};

Trend trendOf(const Channel& channel, const ChannelEvaluation& evaluation);

}  // namespace core
