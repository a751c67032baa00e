// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <optional>
#include <vector>

#include "core/practice/question.h"

namespace ui {

/// Which questions are asked: the same value gives the same ones on every machine.
struct PracticeSet {
  std::uint64_t seed = 1;
  std::size_t count = 10;
  core::Difficulty difficulty = core::Difficulty::First;
  std::vector<core::QuestionKind> kinds;  ///< not empty

  friend bool operator==(const PracticeSet&, const PracticeSet&) = default;
};

inline constexpr std::size_t mostQuestions = 100;  ///< of a set that is answered in one go

/// The kind of question `index`, without drawing it up.
core::QuestionKind kindOf(const PracticeSet& set, std::size_t index);

/// Where the questions come from: core::questionOf, unless a test has its own.
using QuestionSource = std::function<core::Question(const PracticeSet& set, std::size_t index)>;

/// What was answered to one question: a choice or a number.
struct GivenAnswer {
  std::optional<std::size_t> choice = {};
  std::optional<double> number = {};  ///< in the question's unit
  bool right = false;

  friend bool operator==(const GivenAnswer&, const GivenAnswer&) = default;
};

/// One go through a set, or through those of its questions that were wrong before.
struct PracticeRun {
  PracticeSet set;
  std::vector<std::size_t> order;  ///< the questions in the order they are asked, by their index
  std::vector<GivenAnswer> given;  ///< one for each that was answered
  bool isRepeat = false;           ///< its answers are known already, and do not count

  bool isOver() const { return given.size() >= order.size(); }
  std::size_t rightOnes() const;

  friend bool operator==(const PracticeRun&, const PracticeRun&) = default;
};

PracticeRun runOf(PracticeSet set);
/// The questions of `run` that were answered wrong, once more; none where all were right.
std::optional<PracticeRun> repeatOfWrong(const PracticeRun& run);

}  // namespace ui
