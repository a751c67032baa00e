// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/assess/level_match.h"
#include "core/units/notation.h"

namespace core {
namespace {

constexpr std::size_t mostNamed = 8;

std::string number(double value) { return formatNumber(value, 4); }

/// "a", "a and b", "a, b and c"; the first eight.
std::string listOf(const std::vector<std::string>& words) {
  std::string text;
  const std::size_t count = std::min(words.size(), mostNamed);
  const bool isCut = words.size() > mostNamed;
  for (std::size_t k = 0; k < count; ++k) {
    if (k > 0) text += k + 1 == count && !isCut ? " and " : ", ";
    text += words[k];
  }
  return isCut ? text + " and " + std::to_string(words.size() - count) + " more" : text;
}

std::string nameAfterNumber(const Setup& setup, std::size_t step) {
  const std::string& label = setup.sequence[step].label;
  return std::to_string(step + 1) + (label.empty() ? "" : " (" + label + ")");
}

std::string stepsText(const Setup& setup, const std::vector<std::size_t>& steps, bool atBegin) {
  std::vector<std::string> words;
  for (const std::size_t step : steps) words.push_back(nameAfterNumber(setup, step));
  const std::string noun = steps.size() == 1 ? "tep " : "teps ";
  return (atBegin ? "S" : "s") + noun + listOf(words);
}

std::string levelText(const Setup& setup, const Level& level) {
  const std::string value =
      std::isfinite(level.mean) ? number(level.mean) + " " + readingUnitText(setup.instrument) : "no value";
  return "from " + number(level.begin_s) + " to " + number(level.end_s) + " s (" + value + ")";
}

std::string levelsText(const Setup& setup, const std::vector<std::size_t>& indices,
                       std::span<const Level> levels) {
  std::vector<std::string> words;
  for (const std::size_t index : indices) words.push_back(levelText(setup, levels[index]));
  return (indices.size() == 1 ? "level " : "levels ") + listOf(words);
}

std::string countText(const FoundRun& run, const Setup& setup) {
  const std::size_t steps = setup.sequence.size(), found = run.best.stepsWithLevel();
  const std::string all =
      steps == 1 ? "The step has a level" : "All " + std::to_string(steps) + " steps have a level";
  const bool isPlanned = std::all_of(run.best.remarks.begin(), run.best.remarks.end(),
                                     [](const auto& remark) { return remark.kind == MatchRemarkKind::Off; });
  if (found == steps) return all + (isPlanned ? ", in the planned order." : ".");
  return std::to_string(found) + " of " + std::to_string(steps) + " steps have a level.";
}

/// "-512 and +511 µm/m".
std::string deviationsText(const Setup& setup, const std::vector<double>& deviations) {
  std::vector<std::string> words;
  for (const double deviation : deviations)
    words.push_back((deviation > 0 ? "+" : "") + formatNumber(deviation, 3));
  return listOf(words) + " " + readingUnitText(setup.instrument);
}

/// Gain and zero where they are not what an instrument in order shows; empty otherwise.
std::string lineText(const RunMatch& run, const Setup& setup, std::span<const Level> levels) {
  double widest = 0;
  for (const auto& level : run.levelOfStep)
    if (level) widest = std::max(widest, std::abs(levels[*level].mean - run.zero));
  std::string text;
  if (std::abs(std::abs(run.gain) - 1) > 0.05)
    text = "The changes are " + number(std::abs(run.gain)) + " times what is expected";
  if (std::abs(run.zero) > 0.05 * widest && widest > 0) {
    const std::string zero = number(run.zero) + " " + readingUnitText(setup.instrument);
    text += (text.empty() ? "Zero reads " : "; zero reads ") + zero;
  }
  return text.empty() ? text : text + ".";
}

}  // namespace

std::string stepName(const Setup& setup, std::size_t step) { return "step " + nameAfterNumber(setup, step); }

Error noRunError(const Setup& setup, std::span<const Level> levels) {
  std::vector<std::string> found, expected;
  for (const Level& level : levels) found.push_back(levelText(setup, level));
  for (std::size_t step = 0; step < setup.sequence.size(); ++step)
    expected.push_back(nameAfterNumber(setup, step));
  const auto counted = [](std::size_t count, const std::string& noun) {
    return std::to_string(count) + " " + noun + (count == 1 ? "" : "s");
  };
  return {"",
          "the levels do not fit the plan: " + counted(levels.size(), "level") + " found, " +
              (levels.empty() ? "" : listOf(found) + ", ") + "for " + counted(expected.size(), "step") +
              ": " + listOf(expected),
          "Look whether the recording is of this plan and channel"};
}

std::string remarkText(const MatchRemark& remark, const Setup& setup, std::span<const Level> levels) {
  const bool isOne = remark.steps.size() == 1, isOneLevel = remark.levels.size() == 1;
  const auto steps = [&](bool atBegin) { return stepsText(setup, remark.steps, atBegin); };
  switch (remark.kind) {
    case MatchRemarkKind::Missing:
      return steps(true) + (isOne ? " is missing." : " are missing.");
    case MatchRemarkKind::Extra:
      return "The " + levelsText(setup, remark.levels, levels) +
             (isOneLevel ? " belongs to no step." : " belong to no step.");
    case MatchRemarkKind::Repeated:
      return steps(true) +
             (isOne ? " was done again; the last level is taken, not the "
                    : " were done again; the last levels are taken, not the ") +
             levelsText(setup, remark.levels, levels) + ".";
    case MatchRemarkKind::Swapped:
      return steps(true) + (isOne
                                ? " was done in another place than planned, or its shunt is another's."
                                : " were done in another order than planned, or their shunts are exchanged.");
    case MatchRemarkKind::Reversed:
      return "The whole sequence has the opposite polarity.";
    case MatchRemarkKind::StartsLate:
      return "The recording begins after " + stepName(setup, remark.steps.back()) + "; " +
             (isOne ? "it has no level." : steps(false) + " have no level.");
    case MatchRemarkKind::EndsEarly:
      return "The recording ends before " + stepName(setup, remark.steps.front()) + "; " +
             (isOne ? "it has no level." : steps(false) + " have no level.");
    case MatchRemarkKind::Shared:
      return steps(true) + " are held without a break: each has the " +
             levelsText(setup, remark.levels, levels) + ".";
    case MatchRemarkKind::Off:
      return steps(true) + (isOne ? " is then off by " : " are then off by ") +
             deviationsText(setup, remark.deviations) + ".";
  }
  return {};
}

std::vector<std::string> matchText(const FoundRun& run, const Setup& setup, std::span<const Level> levels) {
  std::vector<std::string> text{countText(run, setup)};
  for (const MatchRemark& remark : run.best.remarks) text.push_back(remarkText(remark, setup, levels));
  if (const std::string line = lineText(run.best, setup, levels); !line.empty()) text.push_back(line);
  if (run.isAmbiguous())
    text.push_back(run.others.size() == 1 ? "The levels can be read in another way that is about as likely."
                                          : "The levels can be read in " + std::to_string(run.others.size()) +
                                                " other ways that are about as likely.");
  return text;
}

}  // namespace core
