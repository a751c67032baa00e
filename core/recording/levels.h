// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <span>
#include <stop_token>
#include <vector>

#include "core/units/progress.h"
#include "core/units/quantity.h"
#include "core/units/result.h"

namespace core {

/// A held stretch of a recording, settling left out at both ends.
struct Level {
  double begin_s = 0;  ///< time of its first sample
  double end_s = 0;    ///< time of its last sample
  double mean = 0;     ///< in the unit of the values, outliers left out
  /// Standard uncertainty of `mean` from its scatter, by the effective sample size (uncertaintyOfMean), and
  /// from LevelOptions::resolution; under ten samples not below what the noise of the whole recording
  /// tells. Drift within the level widens it. 0 when all samples are equal and
  /// no resolution is given.
  double stdUncertainty = 0;
  std::size_t samples = 0;   ///< that `mean` is taken over
  std::size_t outliers = 0;  ///< samples left out: beyond six robust standard deviations from the trend
  double drift_per_s = 0;    ///< slope of the straight trend within the level
};

struct LevelOptions {
  Duration shortest = 0.3_s;  ///< a stretch held less long, settling included, is no level
  /// Smaller differences are no step; 0: the larger of 0.2 % of the range of the recording and 1.5 times the
  /// resolution, which is then found from the values when enough of them differ.
  double leastStep = 0;
  double resolution = 0;  ///< of the values; adds resolution / sqrt(12); 0: not known
};

/// Finds the levels of a step recording, in the order of time.
///
/// Steps are sought, without and then with slow noise counted in, by comparing averages over half of
/// `shortest` on either side, with noise judged from the recording itself; which of them count is decided by
/// the exact minimum of squares plus a penalty of 3 s^2 ln n per step, s^2 the long-run variance
/// (segmentation.h). What is too short or still on its way is dropped, settling is trimmed, neighbours that
/// do not differ are joined. Single spikes and slow drift make no levels. A recording without steps is one
/// level.
///
/// It takes the noise to be alike all along the recording, and samples to be about evenly spaced in time.
///
/// Fails, naming the sample counted from 1, on a value or time that is not finite, a value beyond 1e100
/// and time that runs back; when times and values differ in number; with fewer than three samples; when all
/// times are equal; when the recording is shorter than `shortest`; with cancelled() soon after `stop` is
/// requested.
Result<std::vector<Level>> findLevels(std::span<const double> time_s, std::span<const double> values,
                                      const LevelOptions& options = {}, std::stop_token stop = {},
                                      const Progress& progress = {});

}  // namespace core
