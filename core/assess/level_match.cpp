// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/assess/level_match.h"

namespace core {

Result<std::vector<ExpectedStep>> expectedSteps(const Setup& setup, const SetupPrediction& prediction) {
  std::vector<ExpectedStep> steps;
  for (std::size_t k = 0; k < setup.sequence.size(); ++k) {
    const auto& step = prediction.steps[k];
    if (!step) return step.error();
    steps.push_back({step->reading.base(), setup.sequence[k].hold.base()});
  }
  return steps;
}

LevelMatch matchLevels(std::span<const ExpectedStep> steps, std::span<const Level> levels) {
  LevelMatch match;
  if (steps.size() != levels.size()) return match;
  FoundRun run;
  for (std::size_t k = 0; k < steps.size(); ++k) run.best.levelOfStep.push_back(k);
  match.runs.push_back(run);
  return match;
}

std::string remarkText(const MatchRemark&, const Setup&, std::span<const Level>) { return {}; }

std::vector<std::string> matchText(const FoundRun&, const Setup&, std::span<const Level>) { return {}; }

std::vector<std::optional<Measured>> readingsOf(const RunMatch& run, std::span<const Level> levels) {
  std::vector<std::optional<Measured>> readings;
  for (const auto& index : run.levelOfStep) {
    readings.emplace_back();
    if (!index) continue;
    const Level& level = levels[*index];
    readings.back() = Measured{Reading(level.mean), Reading(level.stdUncertainty), Duration(level.begin_s),
                               Duration(level.end_s)};
  }
  return readings;
}

}  // namespace core
