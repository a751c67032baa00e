// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/practice/question.h"

#include <cassert>
#include <cmath>

#include "core/practice/kinds.h"
#include "core/units/key_names.h"

namespace core {
namespace {

constexpr KeyNames<QuestionKind, questionKindCount> kindKeys{
    {"sign", "arm", "larger_shunt", "reading", "planted_fault"}};
constexpr KeyNames<Difficulty, difficultyCount> difficultyKeys{{"first", "further", "thorough"}};

std::optional<Question> drawn(QuestionKind kind, Dice& dice, Difficulty difficulty) {
  switch (kind) {
    case QuestionKind::Sign:
      return signQuestion(dice, difficulty);
    case QuestionKind::Arm:
      return armQuestion(dice, difficulty);
    case QuestionKind::LargerShunt:
      return largerShuntQuestion(dice, difficulty);
    case QuestionKind::Reading:
      return readingQuestion(dice, difficulty);
    case QuestionKind::PlantedFault:
      return plantedFaultQuestion(dice, difficulty);
  }
  return std::nullopt;
}

}  // namespace

std::string_view questionKindKey(QuestionKind kind) { return kindKeys.of(kind); }
std::string_view difficultyKey(Difficulty difficulty) { return difficultyKeys.of(difficulty); }
std::optional<QuestionKind> questionKindFromKey(std::string_view key) { return kindKeys.find(key); }
std::optional<Difficulty> difficultyFromKey(std::string_view key) { return difficultyKeys.find(key); }

const std::vector<QuestionKind>& allQuestionKinds() {
  static const std::vector<QuestionKind> all{QuestionKind::Sign, QuestionKind::Arm, QuestionKind::LargerShunt,
                                             QuestionKind::Reading, QuestionKind::PlantedFault};
  return all;
}

Question questionOf(std::uint64_t seed, std::size_t index, Difficulty difficulty,
                    const std::vector<QuestionKind>& kinds) {
  assert(!kinds.empty());
  const QuestionKind kind = kinds[index % kinds.size()];
  // Of each kind at least one draw in ten makes a question, so this ends soon.
  for (std::uint32_t attempt = 0;; ++attempt) {
    Dice dice(seed, index, kind, difficulty, attempt);
    auto question = drawn(kind, dice, difficulty);
    if (!question) continue;
    question->kind = kind;
    question->difficulty = difficulty;
    return *std::move(question);
  }
}

std::vector<Question> questionSet(std::uint64_t seed, std::size_t count, Difficulty difficulty,
                                  const std::vector<QuestionKind>& kinds) {
  std::vector<Question> questions;
  questions.reserve(count);
  for (std::size_t k = 0; k < count; ++k) questions.push_back(questionOf(seed, k, difficulty, kinds));
  return questions;
}

bool isRight(const Question& question, std::size_t choice) {
  return !question.choices.empty() && choice == question.right;
}

bool isRight(const Question& question, Reading number) {
  if (!question.number) return false;
  return std::abs((number - *question.number).base()) <= readingTolerance * std::abs(question.number->base());
}

}  // namespace core
