// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/levels/describe.h"

#include <cmath>

#include "core/levels/statistics.h"
#include "core/levels/stretch.h"

namespace core {

std::vector<Level> describeLevels(const TimeAxis& time, std::span<const double> values,
                                  std::span<const SampleSpan> spans, const LevelOptions&) {
  std::vector<Level> levels;
  for (const SampleSpan& span : spans) {
    const Stretch stretch = stretchOf(values, span.begin, span.end);
    Level level;
    level.begin_s = time[span.begin];
    level.end_s = time[span.end - 1];
    level.span = span;
    level.mean = level.robustMean = stretch.mean;
    level.stdUncertainty = uncertaintyAboutTrend(values, stretch);
    level.samples = span.size();
    levels.push_back(level);
  }
  return levels;
}

}  // namespace core
