// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/practice/question.h"

// A set of questions on paper: for a class without the answers, for its trainer with them.

namespace core {

/// The questions of a seed, as `questionSet` has them, and by what they are found again.
struct PracticeSheet {
  std::uint64_t seed = 1;
  Difficulty difficulty = Difficulty::First;
  std::vector<QuestionKind> kinds;
  std::vector<Question> questions;  ///< in their order, numbered from 1
};

PracticeSheet practiceSheet(std::uint64_t seed, std::size_t count, Difficulty difficulty,
                            const std::vector<QuestionKind>& kinds);

/// "Seed 7, 10 questions, further, all kinds": what stands on both sheets, and gives the same set anywhere.
std::string sheetName(const PracticeSheet& sheet);
/// "1", "2", ...: choices have numbers, the same ones in text, data, print and window.
std::string choiceNumber(std::size_t choice);
/// "2) It falls: negative", "-739 µm/m, within 5 %".
std::string answerText(const Question& question);

/// Plain text: what is known, question, table and choices of each; with `answers` what is right and why.
std::string sheetText(const PracticeSheet& sheet, bool answers);

}  // namespace core
