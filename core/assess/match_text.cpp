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
  if (words.size() <= mostNamed) return sayAll(words);
  std::string text = words.front();
  for (std::size_t k = 1; k < mostNamed; ++k) text = say("{1}, {2}", {text, words[k]});
  return sayCount(words.size() - mostNamed, "{1} and {n} more", "{1} and {n} more", {text});
}

std::string nameAfterNumber(const Setup& setup, std::size_t step) {
  const std::string& label = setup.sequence[step].label;
  return std::to_string(step + 1) + (label.empty() ? "" : " (" + label + ")");
}

/// "2 (A), 3 and 5"
std::string numbersText(const Setup& setup, const std::vector<std::size_t>& steps) {
  std::vector<std::string> words;
  for (const std::size_t step : steps) words.push_back(nameAfterNumber(setup, step));
  return listOf(words);
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
  return listOf(words);
}

std::string countText(const FoundRun& run, const Setup& setup) {
  const std::size_t steps = setup.sequence.size(), found = run.best.stepsWithLevel();
  const bool isPlanned = std::all_of(run.best.remarks.begin(), run.best.remarks.end(),
                                     [](const auto& remark) { return remark.kind == MatchRemarkKind::Off; });
  if (found == steps && isPlanned)
    return sayCount(steps, "The step has a level, in the planned order.",
                    "All {n} steps have a level, in the planned order.");
  if (found == steps) return sayCount(steps, "The step has a level.", "All {n} steps have a level.");
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
  const bool isGainOff = std::abs(std::abs(run.gain) - 1) > 0.05;
  const bool isZeroOff = std::abs(run.zero) > 0.05 * widest && widest > 0;
  const std::string gain = number(std::abs(run.gain));
  const std::string zero = number(run.zero) + " " + readingUnitText(setup.instrument);
  if (isGainOff && isZeroOff)
    return say("The changes are {1} times what is expected; zero reads {2}.", {gain, zero});
  if (isGainOff) return say("The changes are {1} times what is expected.", {gain});
  return isZeroOff ? say("Zero reads {1}.", {zero}) : std::string();
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
  const std::string levelCount = sayCount(levels.size(), "{n} level", "{n} levels");
  const std::string stepCount = sayCount(expected.size(), "{n} step", "{n} steps");
  return {"",
          levels.empty() ? say("the levels do not fit the plan: {1} found, for {2}: {3}",
                               {levelCount, stepCount, listOf(expected)})
                         : say("the levels do not fit the plan: {1} found, {2}, for {3}: {4}",
                               {levelCount, listOf(found), stepCount, listOf(expected)}),
          say("Look whether the recording is of this plan and channel")};
}

std::string remarkText(const MatchRemark& remark, const Setup& setup, std::span<const Level> levels) {
  const std::size_t count = remark.steps.size();
  const std::string steps = numbersText(setup, remark.steps), of = levelsText(setup, remark.levels, levels);
  switch (remark.kind) {
    case MatchRemarkKind::Missing:
      return sayCount(count, "Step {1} is missing.", "Steps {1} are missing.", {steps});
    case MatchRemarkKind::Extra:
      return sayCount(remark.levels.size(), "The level {1} belongs to no step.",
                      "The levels {1} belong to no step.", {of});
    case MatchRemarkKind::Repeated:
      return sayCount(count, "Step {1} was done again; the last level is taken, not {2}.",
                      "Steps {1} were done again; the last levels are taken, not {2}.",
                      {steps, sayCount(remark.levels.size(), "the level {1}", "the levels {1}", {of})});
    case MatchRemarkKind::Swapped:
      return sayCount(count, "Step {1} was done in another place than planned, or its shunt is another's.",
                      "Steps {1} were done in another order than planned, or their shunts are exchanged.",
                      {steps});
    case MatchRemarkKind::Reversed:
      return say("The whole sequence has the opposite polarity.");
    case MatchRemarkKind::StartsLate:
      return sayCount(count, "The recording begins after {1}; it has no level.",
                      "The recording begins after {1}; steps {2} have no level.",
                      {stepName(setup, remark.steps.back()), steps});
    case MatchRemarkKind::EndsEarly:
      return sayCount(count, "The recording ends before {1}; it has no level.",
                      "The recording ends before {1}; steps {2} have no level.",
                      {stepName(setup, remark.steps.front()), steps});
    case MatchRemarkKind::Shared:
      return say("Steps {1} are held without a break: each has the level {2}.", {steps, of});
    case MatchRemarkKind::Off:
      return sayCount(count, "Step {1} is then off by {2}.", "Steps {1} are then off by {2}.",
                      {steps, deviationsText(setup, remark.deviations)});
  }
  return {};
}

std::vector<std::string> matchText(const FoundRun& run, const Setup& setup, std::span<const Level> levels) {
  std::vector<std::string> text{countText(run, setup)};
  for (const MatchRemark& remark : run.best.remarks) text.push_back(remarkText(remark, setup, levels));
  if (const std::string line = lineText(run.best, setup, levels); !line.empty()) text.push_back(line);
  if (run.isAmbiguous())
    text.push_back(sayCount(run.others.size(),
                            "The levels can be read in another way that is about as likely.",
                            "The levels can be read in {n} other ways that are about as likely."));
  return text;
}

}  // namespace core
