// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/pattern.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <utility>

#include "core/plan/prediction.h"
#include "core/uncertainty/random.h"
#include "core/units/key_names.h"
#include "core/units/language.h"

namespace core {
namespace {

constexpr KeyNames<Course, courseCount> courses{{"rising", "rising_and_falling", "random"}};
constexpr KeyNames<Sides, sidesCount> sidesKeys{
    {"positive_first", "negative_first", "positive_only", "negative_only"}};

using Levels = std::vector<PlannedLevel>;

/// Whole numbers below a bound, all equally likely, the same on every machine: the library's distributions
/// are not.
class Draws {
 public:
  Draws(std::uint32_t seed, std::uint32_t repeat) : m_seed(seed), m_repeat(repeat) {}

  std::size_t below(std::uint32_t bound) {
    assert(bound > 0);
    // What lies above the last whole multiple of the bound would favour the small numbers: drawn again.
    const std::uint32_t unfair = (~std::uint32_t{0} - bound + 1) % bound;
    for (;;) {
      const std::uint32_t word = philox({m_count++, m_repeat, 0, 0}, {m_seed, 0})[0];
      if (word >= unfair) return word % bound;
    }
  }

 private:
  std::uint32_t m_seed;
  std::uint32_t m_repeat;
  std::uint32_t m_count = 0;
};

/// R. A. Fisher and F. Yates, in R. Durstenfeld's form, "Algorithm 235: random permutation", Communications
/// of the ACM 7 (1964): every order is equally likely.
Levels shuffled(Levels levels, Draws draws) {
  for (std::size_t left = levels.size(); left > 1; --left)
    std::swap(levels[left - 1], levels[draws.below(static_cast<std::uint32_t>(left))]);
  return levels;
}

/// Up and down again, the greatest once.
Levels upAndDown(const Levels& levels) {
  Levels both = levels;
  if (!levels.empty()) both.insert(both.end(), levels.rbegin() + 1, levels.rend());
  return both;
}

/// The stretches of one run through `levels`, between which a zero belongs.
std::vector<Levels> stretchesOf(const Pattern& pattern, const PlannedLevels& levels, unsigned repeat) {
  std::vector<Levels> stretches;
  const bool positive = pattern.sides != Sides::NegativeOnly;
  const bool negative = pattern.sides != Sides::PositiveOnly;
  if (positive) stretches.push_back(levels.positive);
  if (negative) stretches.push_back(levels.negative);
  if (pattern.sides == Sides::NegativeFirst) std::reverse(stretches.begin(), stretches.end());
  switch (pattern.course) {
    case Course::Rising:
      return stretches;
    case Course::RisingAndFalling:
      for (Levels& side : stretches) side = upAndDown(side);
      return stretches;
    case Course::Random: {
      Levels mixed;
      for (const Levels& side : stretches) mixed.insert(mixed.end(), side.begin(), side.end());
      return {shuffled(std::move(mixed), Draws(pattern.seed, repeat))};
    }
  }
  assert(false);
  return stretches;
}

/// Sorts `candidates`, each the only step of its closed shunts, by what they do.
PlannedLevels sortedLevels(Setup setup, std::vector<Step> candidates) {
  setup.sequence = std::move(candidates);
  const SetupPrediction prediction = predict(setup);
  const auto magnitude = [&](std::size_t k) { return std::abs(prediction.steps[k]->output.base()); };
  std::vector<std::size_t> rising;
  for (std::size_t k = 0; k < setup.sequence.size(); ++k)
    if (prediction.steps[k]) rising.push_back(k);
  std::stable_sort(rising.begin(), rising.end(),
                   [&](std::size_t a, std::size_t b) { return magnitude(a) < magnitude(b); });
  PlannedLevels levels;
  for (const std::size_t k : rising) {
    PlannedLevel level{std::move(setup.sequence[k].label), std::move(setup.sequence[k].closed)};
    const Polarity polarity = prediction.steps[k]->polarity;
    if (polarity == Polarity::Positive)
      levels.positive.push_back(std::move(level));
    else if (polarity == Polarity::Negative)
      levels.negative.push_back(std::move(level));
  }
  return levels;
}

}  // namespace

PlannedLevels levelsOfShunts(const Setup& setup) {
  std::vector<Step> alone;
  for (std::size_t k = 0; k < setup.shunts.size(); ++k)
    alone.push_back({.label = setup.shunts[k].name, .closed = {k}});
  return sortedLevels(setup, std::move(alone));
}

PlannedLevels levelsOfSequence(const Setup& setup) {
  std::vector<Step> taken;
  for (const Step& step : setup.sequence) {
    const bool known = std::any_of(taken.begin(), taken.end(),
                                   [&](const Step& other) { return other.closed == step.closed; });
    if (!step.closed.empty() && !known) taken.push_back(step);
  }
  return sortedLevels(setup, std::move(taken));
}

std::vector<Step> layOut(const Pattern& pattern, const PlannedLevels& levels, Duration settle,
                         Duration hold) {
  assert(pattern.repeats >= 1 && pattern.repeats <= greatestRepeats);
  std::vector<Step> steps;
  const auto add = [&](const PlannedLevel& level) {
    steps.push_back({level.label, level.closed, hold, settle});
  };
  const PlannedLevel zero{"zero", {}};
  const auto addZero = [&] {
    if (steps.empty() || !steps.back().closed.empty()) add(zero);
  };
  addZero();
  for (unsigned repeat = 0; repeat < pattern.repeats; ++repeat)
    for (const Levels& stretch : stretchesOf(pattern, levels, repeat)) {
      for (const PlannedLevel& level : stretch) {
        add(level);
        if (pattern.zeroBetweenSteps) addZero();
      }
      addZero();
    }
  return steps;
}

StepTimes timesOf(const Setup& setup) {
  if (!setup.sequence.empty()) return {setup.sequence.front().settle, setup.sequence.front().hold};
  const Acquisition& acquisition = setup.acquisition;
  if (acquisition.sampleRate || acquisition.filter.kind != FilterKind::None)
    if (const auto asked = leastTimes(acquisition)) return *asked;
  return {Step{}.settle, Step{}.hold};
}

const std::vector<Pattern>& usualPatterns() {
  static const std::vector<Pattern> patterns{
      {.name = say("two-sided")},
      {.name = say("up and down"), .course = Course::RisingAndFalling},
      {.name = say("zero between steps"), .zeroBetweenSteps = true},
      {.name = say("three times"), .repeats = 3},
      {.name = say("positive side only"), .sides = Sides::PositiveOnly},
      {.name = say("negative side only"), .sides = Sides::NegativeOnly},
      {.name = say("random order"), .course = Course::Random},
  };
  return patterns;
}

std::string_view courseKey(Course course) { return courses.of(course); }
std::optional<Course> courseFromKey(std::string_view key) { return courses.find(key); }
std::string_view sidesKey(Sides sides) { return sidesKeys.of(sides); }
std::optional<Sides> sidesFromKey(std::string_view key) { return sidesKeys.find(key); }

}  // namespace core
