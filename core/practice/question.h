// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/diagnose/fault.h"
#include "core/plan/prediction.h"
#include "core/report/report.h"

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
  First,     ///< full and quarter bridges, ideal leads, shunts right across an arm or over the whole bridge
  Further,   ///< all templates, leads with resistance, shunts at terminals
  Thorough,  ///< unequal arms, reversed wires, leaks, several shunts at once
};
inline constexpr std::size_t difficultyCount = 3;

/// "sign", "arm", "larger_shunt", "reading", "planted_fault"; "first", "further", "thorough".
std::string_view questionKindKey(QuestionKind kind);
std::string_view difficultyKey(Difficulty difficulty);
std::optional<QuestionKind> questionKindFromKey(std::string_view key);
std::optional<Difficulty> difficultyFromKey(std::string_view key);
/// All of them in their order.
const std::vector<QuestionKind>& allQuestionKinds();

/// A question with its answer. All texts are plain text, made from the setup; numbers have a point.
struct Question {
  QuestionKind kind = QuestionKind::Sign;
  Difficulty difficulty = Difficulty::First;
  /// Of the picture, without what is asked for: no shunt where its arm is asked for, no fault where that is.
  /// Until it is answered the picture must show neither potentials and currents nor the output.
  Setup setup;
  std::size_t step = 0;      ///< of `setup`, whose shunts the picture shows closed
  std::vector<Entry> given;  ///< what is known of bridge, leads, shunts, instrument: a name and a value each
  std::string text;          ///< what is asked, with no more than it takes to understand it
  Table readings;            ///< step, expected and shown reading; no rows where no readings are given
  std::vector<std::string> choices;  ///< none: a number is asked for
  std::size_t right = 0;             ///< index of the right choice
  std::optional<Reading> number;     ///< the right number, in `unit`
  std::string unit;                  ///< of `number`; else empty
  /// Of PlantedFault only, a fault for each choice: the right one with its size, the others with the size
  /// that explains the readings best, whatever its size. Scale and BridgeFactor are one family: at most one
  /// of them is among the choices.
  std::vector<Fault> faults;
  Setup explained;                ///< of the picture beside the answer: the shunt or fault in its place
  std::size_t explainedStep = 0;  ///< of `explained`, whose shunts that picture shows closed
  std::vector<std::string> explanation;  ///< sentences: why, from the solved network
  std::vector<std::string> formula;      ///< lines: the textbook formula with numbers put in
};

inline constexpr double readingTolerance = 0.05;  ///< of the right number, relative

/// Question `index` of the set of `seed`: its kind goes round through `kinds`, which is not empty.
Question questionOf(std::uint64_t seed, std::size_t index, Difficulty difficulty,
                    const std::vector<QuestionKind>& kinds);
/// The first `count` questions of that set.
std::vector<Question> questionSet(std::uint64_t seed, std::size_t count, Difficulty difficulty,
                                  const std::vector<QuestionKind>& kinds);

/// Whether `choice`, or `number`, is right. A number within `readingTolerance` of the right one is.
bool isRight(const Question& question, std::size_t choice);
bool isRight(const Question& question, Reading number);

}  // namespace core
