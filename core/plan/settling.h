// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "core/plan/acquisition.h"
#include "core/units/result.h"

namespace core {

/// Orders that `settlingTime` knows.
inline constexpr unsigned greatestFilterOrder = 8;
/// Shares that a level may be settled to.
inline constexpr double leastSettledTo = 1e-6;
inline constexpr double greatestSettledTo = 0.2;

/// Time from a step at the input until the output stays within `share` of it, for good; relative error below
/// 1e-9. Butterworth and Bessel: from the poles of the analogue filter, the cutoff being where the gain is
/// 1/sqrt(2) for both; moving average: (1 - share) of its window; no filter: zero.
/// Fails when the order, cutoff, window or share cannot be.
Result<Duration> settlingTime(const Filter& filter, double share);

/// How long one step must last: first it settles, then it is averaged.
struct StepTimes {
  Duration settle;
  Duration hold;

  friend bool operator==(const StepTimes&, const StepTimes&) = default;
};

/// The least and the usual times of a step.
///
/// Settle: the filter's settling time and one sample interval more, since the switch falls between two
/// samples; rounded up to 10 ms. The hold lasts at least one second (common practice, no source), a whole
/// number of mains periods, or of 10 ms without mains, and 20 samples (a mean of fewer says little of its
/// scatter; from memory).
/// Fails as `settlingTime` does, and for a sample rate or mains frequency that cannot be, and when a step
/// would last longer than a day.
Result<StepTimes> leastTimes(const Acquisition& acquisition);

}  // namespace core
