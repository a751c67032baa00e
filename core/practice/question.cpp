// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/practice/question.h"

#include <cmath>

#include "core/units/key_names.h"

namespace core {
namespace {

constexpr KeyNames<QuestionKind, questionKindCount> kindKeys{
    {"sign", "arm", "larger_shunt", "reading", "planted_fault"}};
constexpr KeyNames<Difficulty, difficultyCount> difficultyKeys{{"first", "further", "thorough"}};

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

Question questionOf(std::uint64_t, std::size_t, Difficulty, const std::vector<QuestionKind>&) { return {}; }

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
