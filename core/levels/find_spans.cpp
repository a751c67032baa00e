// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/levels/find_spans.h"

namespace core {

std::vector<SampleSpan> findSpans(const TimeAxis& time, std::span<const double> values,
                                  const LevelOptions& options, const std::stop_token& stop,
                                  const Progress& progress) {
  std::vector<SampleSpan> spans;
  const auto levels = findLevels(time, values, options, stop, progress);
  if (levels)
    for (const Level& level : *levels) spans.push_back(level.span);
  return spans;
}

}  // namespace core
