// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>

#include "ui/practice/practice_set.h"

namespace ui {

/// How often questions of one kind and difficulty were answered, and how often rightly.
struct Tally {
  int asked = 0, right = 0;

  friend bool operator==(const Tally&, const Tally&) = default;
};

/// The set with the greatest share of right answers; of two alike the longer one.
struct BestSet {
  int right = 0, of = 0;
  std::uint64_t seed = 0;

  friend bool operator==(const BestSet&, const BestSet&) = default;
};

inline constexpr int leastOfBest = 5;  ///< questions; all right in a shorter set says little

// The score of this user on this computer, in a file of its own (ui/state_file.h), and the place in a set
// that was left half way. Each call reads or writes the file, which others may do meanwhile. What the file
// says that cannot be is left out.

Tally tallyOf(core::QuestionKind kind, core::Difficulty difficulty);
std::optional<BestSet> bestSet(core::Difficulty difficulty);
/// The greatest number of right answers in a row.
int longestRow();

/// Counts an answer.
void countAnswer(core::QuestionKind kind, core::Difficulty difficulty, bool right);
/// Counts a set that was answered to its end.
void countSet(const PracticeRun& run);
void clearScore();

/// Keeps where `run` stands; one that is over is forgotten.
void keepPlace(const PracticeRun& run);
std::optional<PracticeRun> keptPlace();

}  // namespace ui
