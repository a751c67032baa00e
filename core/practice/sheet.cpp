// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/practice/sheet.h"

#include <algorithm>

#include "core/practice/question_words.h"
#include "core/units/language.h"

namespace core {
namespace {

constexpr std::string_view indent = "   ";

/// Bytes that only continue a character take no room.
std::size_t widthOf(const std::string& text) {
  return static_cast<std::size_t>(std::count_if(
      text.begin(), text.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; }));
}

std::string padded(const std::string& text, std::size_t width, bool right) {
  const std::string blanks(width - std::min(width, widthOf(text)), ' ');
  return right ? blanks + text : text + blanks;
}

void addTable(std::string& text, const Table& table) {
  std::vector<std::size_t> widths;
  for (std::size_t column = 0; column < table.columns.size(); ++column) {
    std::size_t width = widthOf(table.columns[column].name);
    for (const TableRow& row : table.rows) width = std::max(width, widthOf(row.cells[column]));
    widths.push_back(width);
  }
  const auto addLine = [&](const auto& cell) {
    std::string line;
    for (std::size_t column = 0; column < widths.size(); ++column)
      line += (column > 0 ? "  " : "") + padded(cell(column), widths[column], table.columns[column].numeric);
    line.erase(line.find_last_not_of(' ') + 1);
    text += std::string(indent) + line + "\n";
  };
  addLine([&](std::size_t column) { return table.columns[column].name; });
  for (const TableRow& row : table.rows) addLine([&](std::size_t column) { return row.cells[column]; });
}

void addAnswer(std::string& text, const Question& question) {
  text += say("{1}Right: {2}\n", {indent, answerText(question)});
  for (const std::string& sentence : question.explanation) text += std::string(indent) + sentence + "\n";
  for (const std::string& line : question.formula) text += std::string(indent) + "  " + line + "\n";
}

void addQuestion(std::string& text, const Question& question, std::size_t number, bool answers) {
  text += "\n" + std::to_string(number) + ". " + question.text + "\n";
  for (const Entry& entry : question.given)
    text += std::string(indent) + entry.name + ": " + entry.value + "\n";
  if (!question.readings.rows.empty()) addTable(text, question.readings);
  for (std::size_t k = 0; k < question.choices.size(); ++k)
    text += std::string(indent) + choiceNumber(k) + ") " + question.choices[k] + "\n";
  if (question.choices.empty() && !answers) text += std::string(indent) + "______ " + question.unit + "\n";
  if (answers) addAnswer(text, question);
}

}  // namespace

PracticeSheet practiceSheet(std::uint64_t seed, std::size_t count, Difficulty difficulty,
                            const std::vector<QuestionKind>& kinds) {
  return {seed, difficulty, kinds, questionSet(seed, count, difficulty, kinds)};
}

std::string sheetName(const PracticeSheet& sheet) {
  const std::size_t count = sheet.questions.size();
  std::string text = sayCount(count, "Seed {1}, {n} question, {2}", "Seed {1}, {n} questions, {2}",
                              {std::to_string(sheet.seed), difficultyKey(sheet.difficulty)});
  if (sheet.kinds == allQuestionKinds()) return say("{1}, all kinds", {text});
  for (const QuestionKind kind : sheet.kinds) text += ", " + std::string(questionKindKey(kind));
  return text;
}

std::string choiceNumber(std::size_t choice) { return std::to_string(choice + 1); }

std::string answerText(const Question& question) {
  if (question.number) return say("{1}, within 5 %", {signedReading(question.setup, *question.number)});
  return choiceNumber(question.right) + ") " + question.choices[question.right];
}

std::string sheetText(const PracticeSheet& sheet, bool answers) {
  std::string text =
      say(answers ? sayLater("Shunt practice: answers") : sayLater("Shunt practice: questions")) + "\n" +
      sheetName(sheet) + "\n";
  for (std::size_t k = 0; k < sheet.questions.size(); ++k)
    addQuestion(text, sheet.questions[k], k + 1, answers);
  return text;
}

}  // namespace core
