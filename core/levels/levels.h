// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <span>
#include <stop_token>
#include <string>
#include <vector>

#include "core/levels/sample_span.h"
#include "core/recording/time_axis.h"
#include "core/units/progress.h"
#include "core/units/quantity.h"
#include "core/units/result.h"

namespace core {

/// How far a level may be relied on: Good without reserve; Fair with a reserve that its uncertainty covers;
/// Poor when its mean may be off by more than its uncertainty says.
enum class LevelQuality : std::uint8_t { Good, Fair, Poor };

/// "good", "fair", "poor".
std::string_view qualityWord(LevelQuality quality);

/// A held stretch of a recording, settling left out at both ends. Values are in the unit of the column.
struct Level {
  double begin_s = 0;  ///< time of its first sample
  double end_s = 0;    ///< time of its last sample
  SampleSpan span;
  double mean = 0;        ///< of its samples, outliers left out and mains pick-up taken off
  double robustMean = 0;  ///< Huber's, k = 1.5, scale by the median absolute deviation: one look at `mean`
  /// Standard uncertainty of `mean`, scatter with its autocorrelation (effectiveSamples), resolution and what
  /// few samples leave unknown in it: it is made so that the mean plus and minus 1.96 of it covers the truth
  /// in 95 % of levels, as normal noise has it, in place of the factor sqrt(f/(f-2)) of JCGM 101, 6.4.9.
  double stdUncertainty = 0;
  double effectiveSamples = 1;        ///< as many independent samples would tell as much about the mean
  std::size_t samples = 0;            ///< that `mean` is taken over: outliers and missing values left out
  std::size_t outliers = 0;           ///< samples left out of the mean
  double drift_per_s = 0;             ///< slope of the straight trend within the level
  double driftUncertainty_per_s = 0;  ///< standard uncertainty of that slope
  LevelQuality quality = LevelQuality::Good;
  std::string reason;  ///< why it is not Good, as a sentence without an end; empty when it is
};

struct LevelOptions {
  /// A stretch held less long is no level; 0: found from the recording itself, as usual.
  Duration shortest = 0.0_s;
  double leastStep = 0;   ///< smaller differences are no step; 0: what the noise allows to tell
  double resolution = 0;  ///< of the values; 0: found from them
};

/// Finds the levels of a step recording, in the order of time: findSpans (find_spans.h), then describeLevels
/// (describe.h). A recording without steps is one level. NaN is a missing value.
///
/// Time and memory are linear in the number of samples: work memory is a small part of that of the values.
///
/// Fails, naming the sample counted from 1, on an infinite value and one beyond 1e100; when times and
/// values differ in number; with fewer than three numbers; when all times are equal; with cancelled() soon
/// after `stop` is requested.
Result<std::vector<Level>> findLevels(const TimeAxis& time, std::span<const double> values,
                                      const LevelOptions& options = {}, const std::stop_token& stop = {},
                                      const Progress& progress = {});

}  // namespace core
