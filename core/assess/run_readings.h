// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <vector>

#include "core/assess/level_alignment.h"

namespace core {

/// A way to read one run of the sequence, and what it costs in the units of `align`.
struct RunReading {
  MatchLine line;
  std::vector<Visit> visits;
  double cost = 0;
};

/// The cheapest way to read levels `begin` to `end` - 1 as one run, and those that cost little more and give
/// some step another value without more having gone wrong, the cheaper first. Empty when there is none.
std::vector<RunReading> runReadings(const AlignmentTask& task, std::span<const MatchLine> lines,
                                    std::size_t begin, std::size_t end);

/// `reading` with the steps that are out of order put into the planned order: as if resistors had been
/// exchanged and not steps. Where there is a level for each step the whole is put into the order of the plan,
/// unless more than half of the steps would be off then though none was exchanged.
RunReading inPlannedOrder(const AlignmentTask& task, RunReading reading, std::size_t begin, std::size_t end);

/// Whether the level of `visit` is not at the value of its step.
bool isOff(const AlignmentTask& task, const MatchLine& line, const Visit& visit);

/// The level of each step: that of its last visit.
std::vector<std::optional<std::size_t>> levelOfStep(const AlignmentTask& task, std::span<const Visit> visits);

}  // namespace core
