// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/assess/level_match.h"
#include "core/units/language.h"
#include "core/units/notation.h"

namespace core {
namespace {

constexpr std::size_t mostNamed = 8;

std::string number(double value) { return shown(formatNumber(value, 4)); }

/// "a", "a and b", "a, b and c"; the first eight.
std::string listOf(const std::vector<std::string>& words) {
  std::string text;
  const std::size_t count = std::min(words.size(), mostNamed);
  const bool isCut = words.size() > mostNamed;
  for (std::size_t k = 0; k < count; ++k) {
    if (k > 0) text += k + 1 == count && !isCut ? say(" and ") : ", ";
    text += words[k];
  }
  return isCut ? say("{1} and {2} more", {text, std::to_string(words.size() - count)}) : text;
}

std::string nameAfterNumber(const Setup& setup, std::size_t step) {
  const std::string& label = setup.sequence[step].label;
  return std::to_string(step + 1) + (label.empty() ? "" : " (" + label + ")");
}

std::string stepsText(const Setup& setup, const std::vector<std::size_t>& steps, bool atBegin) {
  std::vector<std::string> words;
  for (const std::size_t step : steps) words.push_back(nameAfterNumber(setup, step));
  const std::string noun = steps.size() == 1 ? atBegin ? say("Step ") : say("step ")
                           : atBegin ? say("Steps ")
                                             : say("steps ");
  return noun + listOf(words);
}

std::string levelText(const Setup& setup, const Level& level) {
  const std::string value = std::isfinite(level.mean)
                                ? number(level.mean) + " " + readingUnitText(setup.instrument)
                                : say("no value");
  return say("from {1} to {2} s ({3})", {number(level.begin_s), number(level.end_s), value});
}

std::string levelsText(const Setup& setup, const std::vector<std::size_t>& indices,
                       std::span<const Level> levels) {
  std::vector<std::string> words;
  for (const std::size_t index : indices) words.push_back(levelText(setup, levels[index]));
  return (indices.size() == 1 ? say("level ") : say("levels ")) + listOf(words);
}

std::string countText(const FoundRun& run, const Setup& setup) {
  const std::size_t steps = setup.sequence.size(), found = run.best.stepsWithLevel();
  const std::string all =
      steps == 1 ? say("The step has a level") : say("All {1} steps have a level", {std::to_string(steps)});
  const bool isPlanned = std::all_of(run.best.remarks.begin(), run.best.remarks.end(),
                                     [](const auto& remark) { return remark.kind == MatchRemarkKind::Off; });
  if (found == steps) return all + (isPlanned ? say(", in the planned order.") : ".");
  return say("{1} of {2} steps have a level.", {std::to_string(found), std::to_string(steps)});
}

/// "-512 and +511 µm/m".
std::string deviationsText(const Setup& setup, const std::vector<double>& deviations) {
  std::vector<std::string> words;
  for (const double deviation : deviations)
    words.push_back((deviation > 0 ? "+" : "") + shown(formatNumber(deviation, 3)));
  return listOf(words) + " " + readingUnitText(setup.instrument);
}

/// Gain and zero where they are not what an instrument in order shows; empty otherwise.
std::string lineText(const RunMatch& run, const Setup& setup, std::span<const Level> levels) {
  double widest = 0;
  for (const auto& level : run.levelOfStep)
    if (level) widest = std::max(widest, std::abs(levels[*level].mean - run.zero));
  std::string text;
  if (std::abs(std::abs(run.gain) - 1) > 0.05)
    text = say("The changes are {1} times what is expected", {number(std::abs(run.gain))});
  if (std::abs(run.zero) > 0.05 * widest && widest > 0) {
    const std::string zero = number(run.zero) + " " + readingUnitText(setup.instrument);
    text += (text.empty() ? say("Zero reads ") : say("; zero reads ")) + zero;
  }
  return text.empty() ? text : text + ".";
}

}  // namespace

std::string stepName(const Setup& setup, std::size_t step) {
  return say("step {1}", {nameAfterNumber(setup, step)});
}

Error noRunError(const Setup& setup, std::span<const Level> levels) {
  std::vector<std::string> found, expected;
  for (const Level& level : levels) found.push_back(levelText(setup, level));
  for (std::size_t step = 0; step < setup.sequence.size(); ++step)
    expected.push_back(nameAfterNumber(setup, step));
  const auto number = [](std::size_t count) { return std::to_string(count); };
  const std::string levelCount =
      levels.size() == 1 ? say("1 level") : say("{1} levels", {number(levels.size())});
  const std::string stepCount =
      expected.size() == 1 ? say("1 step") : say("{1} steps", {number(expected.size())});
  return {"",
          say("the levels do not fit the plan: {1} found, {2}for {3}: {4}",
              {levelCount, (levels.empty() ? "" : listOf(found) + ", "), stepCount, listOf(expected)}),
          say("Look whether the recording is of this plan and channel")};
}

std::string remarkText(const MatchRemark& remark, const Setup& setup, std::span<const Level> levels) {
  const bool isOne = remark.steps.size() == 1, isOneLevel = remark.levels.size() == 1;
  const auto steps = [&](bool atBegin) { return stepsText(setup, remark.steps, atBegin); };
  switch (remark.kind) {
    case MatchRemarkKind::Missing:
      return steps(true) + (isOne ? say(" is missing.") : say(" are missing."));
    case MatchRemarkKind::Extra:
      return say("The {1}{2}", {levelsText(setup, remark.levels, levels),
                                (isOneLevel ? say(" belongs to no step.") : say(" belong to no step."))});
    case MatchRemarkKind::Repeated:
      return steps(true) +
             (isOne ? say(" was done again; the last level is taken, not the ")
                    : say(" were done again; the last levels are taken, not the ")) +
             levelsText(setup, remark.levels, levels) + ".";
    case MatchRemarkKind::Swapped:
      return steps(true) +
             (isOne ? say(" was done in another place than planned, or its shunt is another's.")
                    : say(" were done in another order than planned, or their shunts are exchanged."));
    case MatchRemarkKind::Reversed:
      return say("The whole sequence has the opposite polarity.");
    case MatchRemarkKind::StartsLate:
      return say("The recording begins after {1}; {2}",
                 {stepName(setup, remark.steps.back()),
                  (isOne ? say("it has no level.") : say("{1} have no level.", {steps(false)}))});
    case MatchRemarkKind::EndsEarly:
      return say("The recording ends before {1}; {2}",
                 {stepName(setup, remark.steps.front()),
                  (isOne ? say("it has no level.") : say("{1} have no level.", {steps(false)}))});
    case MatchRemarkKind::Shared:
      return say("{1} are held without a break: each has the {2}.",
                 {steps(true), levelsText(setup, remark.levels, levels)});
    case MatchRemarkKind::Off:
      return steps(true) + (isOne ? say(" is then off by ") : say(" are then off by ")) +
             deviationsText(setup, remark.deviations) + ".";
  }
  return {};
}

std::vector<std::string> matchText(const FoundRun& run, const Setup& setup, std::span<const Level> levels) {
  std::vector<std::string> text{countText(run, setup)};
  for (const MatchRemark& remark : run.best.remarks) text.push_back(remarkText(remark, setup, levels));
  if (const std::string line = lineText(run.best, setup, levels); !line.empty()) text.push_back(line);
  if (run.isAmbiguous())
    text.push_back(run.others.size() == 1
                       ? say("The levels can be read in another way that is about as likely.")
                       : say("The levels can be read in {1} other ways that are about as likely.",
                             {std::to_string(run.others.size())}));
  return text;
}

}  // namespace core
