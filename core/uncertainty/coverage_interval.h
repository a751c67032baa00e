// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <span>

namespace core {

struct Interval {
  double low = 0, high = 0;

  friend bool operator==(const Interval&, const Interval&) = default;
};

/// How many of `trials` values lie from one end of a coverage interval up to, without, the other: q of JCGM
/// 101:2008, 7.7.2, coverage x trials to the nearest whole number, halves upwards. There is an interval when
/// 0 < q < trials.
std::size_t coveredTrials(std::size_t trials, double coverage);

/// Coverage intervals of a set of values, and its ends.
struct CoverageIntervals {
  Interval symmetric;  ///< as much probability below as above
  Interval shortest;   ///< the shortest with this coverage; the lowest of several
  Interval all;        ///< least and greatest value
};

/// From the order statistics (JCGM 101:2008, 7.7.2). Reorders `values`, which must be finite and have an
/// interval.
CoverageIntervals coverageIntervals(std::span<double> values, double coverage);

/// The symmetric one alone, in a tenth of the time.
Interval symmetricInterval(std::span<double> values, double coverage);

}  // namespace core
