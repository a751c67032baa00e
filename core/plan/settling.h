// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "core/plan/acquisition.h"
#include "core/units/result.h"

namespace core {

/// Time from a step at the input until the output stays within `share` of it, for good. Butterworth and
/// Bessel: from the poles of the analogue filter; moving average: (1 - share) of its window.
/// Fails when the order, cutoff, window or share cannot be.
Result<Duration> settlingTime(const Filter& filter, double share);

/// How long one step must last: first it settles, then it is averaged.
struct StepTimes {
  Duration settle;
  Duration hold;
};

/// The least and the usual times of a step. The hold lasts at least one second (common practice, no source),
/// a whole number of mains periods, and 20 samples (a mean of fewer says little of its scatter; from memory).
/// Fails as `settlingTime` does, and for a sample rate or mains frequency that cannot be.
Result<StepTimes> leastTimes(const Acquisition& acquisition);

}  // namespace core
