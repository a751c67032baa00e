// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/plan/prediction.h"

// Questions about shunts, drawn from bridges that are solved. The same seed gives the same questions on every
// machine.

namespace core {

enum class QuestionKind : std::uint8_t {
  Sign,          ///< which way does the output go when the shunt closes
  Arm,           ///< which arm must the shunt lie over for the wanted sign, or for the reading shown
  LargerShunt,   ///< which of two shunts gives the larger reading
  Reading,       ///< what will the reading be, within 5 %
  PlantedFault,  ///< which fault explains the readings
};
inline constexpr std::size_t questionKindCount = 5;

enum class Difficulty : std::uint8_t {
  First,     ///< full and quarter bridges, ideal leads, shunts right across an arm
  Further,   ///< all templates, leads with resistance, shunts at terminals
  Thorough,  ///< unequal arms, reversed wires, leaks, several shunts at once
};
inline constexpr std::size_t difficultyCount = 3;

/// "sign", "arm", "larger_shunt", "reading", "planted_fault"; "first", "further", "thorough".
std::string_view questionKindKey(QuestionKind kind);
std::string_view difficultyKey(Difficulty difficulty);

/// A question with its answer. All texts are plain text, made from the setup.
struct Question {
  QuestionKind kind = QuestionKind::Sign;
  Difficulty difficulty = Difficulty::First;
  Setup setup;           ///< of the picture, without what is asked for
  std::size_t step = 0;  ///< of `setup` that the question is about
  std::string text;
  std::vector<std::string> choices;  ///< none: a number is asked for
  std::size_t right = 0;             ///< index of the right choice
  std::optional<Reading> number;     ///< the right number, in `unit`
  std::string unit;
  Setup explained;  ///< of the picture beside the answer: the shunt or fault in its place
  std::vector<std::string> explanation;  ///< sentences: why, from the solved network
  std::vector<std::string> formula;      ///< lines: the textbook formula with numbers put in
};

inline constexpr double readingTolerance = 0.05;  ///< of the right number, relative

/// Question `index` of the set of `seed`: its kind goes round through `kinds`, which is not empty.
Question questionOf(std::uint64_t seed, std::size_t index, Difficulty difficulty,
                    const std::vector<QuestionKind>& kinds);

/// Whether `choice`, or `number`, is right.
bool isRight(const Question& question, std::size_t choice);
bool isRight(const Question& question, Reading number);

}  // namespace core
