// SPDX-License-Identifier: GPL-3.0-or-later
#include <CLI/CLI.hpp>
#include <QFileInfo>
#include <memory>

#include "app/commands.h"
#include "app/offscreen.h"
#include "app/output.h"
#include "core/practice/sheet.h"
#include "ui/practice/practice_pdf.h"
#include "ui/safe_file.h"

namespace app {
namespace {

constexpr std::size_t mostQuestions = 200;

struct Options {
  std::uint64_t seed = 1;
  std::size_t count = 10;
  std::string difficulty = "first";
  std::vector<std::string> kinds;  ///< none: all
  bool answers = false;
  bool json = false;
  std::string out;  ///< empty: standard output
};

std::vector<core::QuestionKind> kindsOf(const Options& options) {
  if (options.kinds.empty()) return core::allQuestionKinds();
  std::vector<core::QuestionKind> kinds;
  for (const std::string& key : options.kinds)
    if (const auto kind = core::questionKindFromKey(key)) kinds.push_back(*kind);
  return kinds;
}

Json readingsJson(const core::Table& table) {
  Json rows = Json::array();
  for (const core::TableRow& row : table.rows) {
    Json json;
    for (std::size_t k = 0; k < table.columns.size(); ++k) json[table.columns[k].name] = row.cells[k];
    rows.push_back(json);
  }
  return rows;
}

void addAnswer(Json& json, const core::Question& question) {
  json["right"] = question.number ? Json() : Json(core::choiceLetter(question.right));
  json["number"] = question.number ? jsonNumber(question.number->base()) : Json();
  json["explanation"] = question.explanation;
  json["formula"] = question.formula;
}

Json questionJson(const core::Question& question, std::size_t number, bool answers) {
  Json json{{"question", number},
            {"kind", core::questionKindKey(question.kind)},
            {"text", question.text},
            {"given", Json::object()},
            {"readings", readingsJson(question.readings)},
            {"choices", Json::object()},
            {"unit", question.number ? Json(question.unit) : Json()}};
  // A bridge may be connected otherwise in more than one way.
  for (const core::Entry& entry : question.given) json["given"][entry.name].push_back(entry.value);
  for (std::size_t k = 0; k < question.choices.size(); ++k)
    json["choices"][core::choiceLetter(k)] = question.choices[k];
  if (answers) addAnswer(json, question);
  return json;
}

Json sheetJson(const core::PracticeSheet& sheet, bool answers) {
  Json json{{"seed", sheet.seed},
            {"difficulty", core::difficultyKey(sheet.difficulty)},
            {"tolerance", core::readingTolerance},
            {"questions", Json::array()}};
  for (std::size_t k = 0; k < sheet.questions.size(); ++k)
    json["questions"].push_back(questionJson(sheet.questions[k], k + 1, answers));
  return json;
}

int savedPdf(const Options& options, core::Difficulty difficulty,
             const std::vector<core::QuestionKind>& kinds) {
  if (QFileInfo(QString::fromStdString(options.out)).suffix().toLower() != "pdf")
    return fail({options.out, "a sheet cannot be written in this format", "Let the name end in .pdf"});
  return drawnOffscreen([&] {
    const auto pdf = ui::practicePdf(options.seed, options.count, difficulty, kinds, options.answers);
    if (!pdf) return fail(pdf.error());
    const auto done = ui::saveBytes(QString::fromStdString(options.out), *pdf);
    if (!done) return fail(done.error());
    return print(std::string(options.answers ? "Answers: " : "Questions: ") + options.out + "\n", AllPass);
  });
}

int practice(const Options& options) {
  const auto difficulty = core::difficultyFromKey(options.difficulty);
  const std::vector<core::QuestionKind> kinds = kindsOf(options);
  if (!difficulty || kinds.empty()) return BadInput;  // cannot be: the options are checked
  if (!options.out.empty()) return savedPdf(options, *difficulty, kinds);
  const core::PracticeSheet sheet = core::practiceSheet(options.seed, options.count, *difficulty, kinds);
  return options.json ? print(sheetJson(sheet, options.answers), AllPass)
                      : print(core::sheetText(sheet, options.answers), AllPass);
}

std::vector<std::string> kindKeys() {
  std::vector<std::string> keys;
  for (const core::QuestionKind kind : core::allQuestionKinds())
    keys.emplace_back(core::questionKindKey(kind));
  return keys;
}

}  // namespace

void addPractice(CLI::App& cli, Run& chosen) {
  auto options = std::make_shared<Options>();
  CLI::App* command = cli.add_subcommand("practice", "Questions about shunts for a class, and their answers");
  command
      ->add_option("--seed", options->seed,
                   "A whole number from 0; the same one gives the same questions anywhere. 1 without it")
      ->type_name("NUMBER")
      ->check(CLI::NonNegativeNumber);
  command->add_option("--count", options->count, "How many questions; 10 without it")
      ->type_name("NUMBER")
      ->check(CLI::Range(std::size_t{1}, mostQuestions));
  command->add_option("--difficulty", options->difficulty, "first without it")
      ->type_name("first|further|thorough")
      ->check(CLI::IsMember({"first", "further", "thorough"}));
  command
      ->add_option("--kinds", options->kinds,
                   "Kinds in the order they come round, with commas between: sign, arm, larger_shunt,\n"
                   "reading, planted_fault; all without it")
      ->type_name("LIST")
      ->delimiter(',')
      ->check(CLI::IsMember(kindKeys()));
  command->add_flag("--answers", options->answers, "What is right and why, for the trainer");
  auto* json = command->add_flag("--json", options->json, "JSON instead of text");
  command->add_option("-o,--out", options->out, "Write the sheet with its drawings; the name ends in .pdf")
      ->excludes(json);
  command->footer(
      "Every question is drawn from a bridge that is solved as a whole. Seed, count, difficulty and kinds\n"
      "stand on both sheets: with them the trainer finds the answers of a class's questions.");
  command->callback([options, &chosen] { chosen = [options] { return practice(*options); }; });
}

}  // namespace app
