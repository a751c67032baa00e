// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/plan/settling.h"
#include "core/plan/setup.h"

namespace core {

/// In which order the levels of one side are taken.
enum class Course : std::uint8_t {
  Rising,            ///< from the smallest to the greatest
  RisingAndFalling,  ///< up and down again: shows hysteresis
  Random,            ///< shuffled, for drift to show as scatter; both sides mixed
};
inline constexpr std::size_t courseCount = 3;

enum class Sides : std::uint8_t { PositiveFirst, NegativeFirst, PositiveOnly, NegativeOnly };
inline constexpr std::size_t sidesCount = 4;

inline constexpr unsigned greatestRepeats = 100;

/// How a sequence is built from levels.
struct Pattern {
  std::string name = "two-sided";
  Course course = Course::Rising;
  Sides sides = Sides::PositiveFirst;
  bool zeroBetweenSteps = false;  ///< a zero step after each level, not only before, between and after sides
  unsigned repeats = 1;    ///< how often the whole is run through, 1 to greatestRepeats; random order: each
                           ///< time in another order
  std::uint32_t seed = 1;  ///< of the random course: the same seed gives the same order everywhere

  friend bool operator==(const Pattern&, const Pattern&) = default;
};

/// Shunts that are closed together for one level, and what it is called.
struct PlannedLevel {
  std::string label;
  std::vector<std::size_t> closed;  ///< indices into the channel's shunts, rising

  friend bool operator==(const PlannedLevel&, const PlannedLevel&) = default;
};

/// The levels of a channel by polarity, each side rising in magnitude.
struct PlannedLevels {
  std::vector<PlannedLevel> positive;
  std::vector<PlannedLevel> negative;
};

/// Each shunt alone; those that cannot be predicted, or do nothing, are left out.
PlannedLevels levelsOfShunts(const Setup& setup);
/// The levels that the present sequence takes, each once with its first label: combinations stay.
PlannedLevels levelsOfSequence(const Setup& setup);

/// The steps: zero first, the sides as the pattern says with a zero between, zero last; up and down takes
/// the greatest level of a side once. Never two zeros in a row. No levels: one zero step.
std::vector<Step> layOut(const Pattern& pattern, const PlannedLevels& levels, Duration settle, Duration hold);

/// The times to lay out with: those of the plan's first step, else what filter and sample rate ask for where
/// they are stated, else those of a new step.
StepTimes timesOf(const Setup& setup);

/// Ready-made patterns, the usual one first.
const std::vector<Pattern>& usualPatterns();

/// Keys in files: "rising", "rising_and_falling", "random"; "positive_first" and so on.
std::string_view courseKey(Course course);
std::optional<Course> courseFromKey(std::string_view key);
std::string_view sidesKey(Sides sides);
std::optional<Sides> sidesFromKey(std::string_view key);

}  // namespace core
