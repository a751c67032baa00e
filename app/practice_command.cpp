// SPDX-License-Identifier: GPL-3.0-or-later
#include <CLI/CLI.hpp>
#include <QFileInfo>
#include <algorithm>
#include <charconv>
#include <limits>
#include <memory>
#include <optional>

#include "app/commands.h"
#include "app/files.h"
#include "app/offscreen.h"
#include "app/output.h"
#include "core/practice/sheet.h"
#include "core/units/text.h"
#include "ui/practice/practice_pdf.h"
#include "ui/safe_file.h"

namespace app {
namespace {

constexpr std::size_t mostQuestions = 200;

struct PracticeOptions {
  std::string seedText;
  std::uint64_t seed = 1;
  std::size_t count = 10;
  std::string difficulty = "first";
  std::optional<std::string> kinds;  ///< with commas between; none: all
  bool answers = false;
  bool json = false;
  std::string out;  ///< empty: standard output
};

/// Decimal digits and nothing else, so that no two programs read a seed differently.
std::optional<std::uint64_t> seedOf(const std::string& text) {
  std::uint64_t seed = 0;
  const char* end = text.data() + text.size();
  const auto [rest, fault] = std::from_chars(text.data(), end, seed, 10);
  if (fault != std::errc() || rest != end) return std::nullopt;
  return seed;
}

std::string faultOfSeed(const std::string& text) {
  if (seedOf(text)) return {};
  return core::inQuotes(text) + " is no whole number from 0 to " +
         std::to_string(std::numeric_limits<std::uint64_t>::max()) + " in decimal digits";
}

/// The kinds named, with commas between; none when one of them is no kind.
std::vector<core::QuestionKind> kindsIn(const std::string& text) {
  std::vector<core::QuestionKind> kinds;
  for (std::size_t begin = 0; begin <= text.size();) {
    const std::size_t end = std::min(text.find(',', begin), text.size());
    const auto kind = core::questionKindFromKey(text.substr(begin, end - begin));
    if (!kind) return {};
    kinds.push_back(*kind);
    begin = end + 1;
  }
  return kinds;
}

std::string faultOfKinds(const std::string& text) {
  if (!kindsIn(text).empty()) return {};
  std::string keys;
  for (const core::QuestionKind kind : core::allQuestionKinds())
    keys += (keys.empty() ? "" : ", ") + std::string(core::questionKindKey(kind));
  return core::inQuotes(text) + " is no list of kinds; choose from " + keys + ", with commas between";
}

std::vector<core::QuestionKind> kindsOf(const PracticeOptions& options) {
  return options.kinds ? kindsIn(*options.kinds) : core::allQuestionKinds();
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

Json bridgeJson(const core::Bridge& bridge) {
  Json arms = Json::array(), leads = Json::object(), leaks = Json::array();
  for (const core::Resistance arm : bridge.arms) arms.push_back(jsonNumber(arm.base()));
  for (const core::Wire& wire : core::wiresOf(bridge))
    leads[std::string(core::leadName(wire.role))] =
        jsonNumber(core::leadResistance(bridge, wire.role).base());
  for (const core::Leak& leak : bridge.leaks) leaks.push_back(jsonNumber(baseOf(leak.across)));
  return {{"template", core::templateOf(bridge.type).key},
          {"arms_ohm", arms},
          {"leads_ohm", leads},
          {"leaks_ohm", leaks},
          {"six_wire", core::hasNode(bridge, core::Node::SensePlus)},
          {"gauge",
           {{"nominal_ohm", jsonNumber(bridge.gauge.nominal.base())},
            {"factor", jsonNumber(bridge.gauge.factor)},
            {"poisson_ratio", jsonNumber(bridge.gauge.poissonRatio)}}},
          {"hookup",
           {{"signal_reversed", bridge.hookup.signalReversed},
            {"excitation_reversed", bridge.hookup.excitationReversed},
            {"gauges_reversed", bridge.hookup.gaugesReversed}}}};
}

Json instrumentJson(const core::Instrument& instrument) {
  return {{"unit", core::readingUnitText(instrument)},
          {"excitation_V", jsonNumber(instrument.excitation.base())},
          {"gauge_factor", jsonNumber(instrument.gaugeFactor)},
          {"bridge_factor", jsonNumber(instrument.bridgeFactor)},
          {"units_per_mV_per_V", jsonNumber(core::readingOf(instrument, core::Output(1e-3)).base())}};
}

/// Each with the two nodes that it lies between, by their names.
Json questionShuntsJson(const core::Setup& setup) {
  Json shunts = Json::array();
  for (const core::Shunt& shunt : setup.shunts)
    shunts.push_back({{"name", shunt.name},
                      {"ohm", jsonNumber(core::resistanceOf(shunt).base())},
                      {"from", core::nodeName(shunt.a)},
                      {"to", core::nodeName(shunt.b)}});
  return shunts;
}

Json stepsJson(const core::Setup& setup) {
  Json steps = Json::array();
  for (std::size_t k = 0; k < setup.sequence.size(); ++k)
    steps.push_back({{"label", setup.sequence[k].label}, {"closed", closedShunts(setup, k)}});
  return steps;
}

void addAnswer(Json& json, const core::Question& question) {
  json["right"] = question.number ? Json() : Json(question.right + 1);
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
            {"choices", Json::array()},
            {"unit", question.number ? Json(question.unit) : Json()}};
  // A bridge may be connected otherwise in more than one way.
  for (const core::Entry& entry : question.given) json["given"][entry.name].push_back(entry.value);
  for (std::size_t k = 0; k < question.choices.size(); ++k)
    json["choices"].push_back({{"number", k + 1}, {"text", question.choices[k]}});
  json["bridge"] = bridgeJson(question.setup.bridge);
  json["instrument"] = instrumentJson(question.setup.instrument);
  json["shunts"] = questionShuntsJson(question.setup);
  json["steps"] = stepsJson(question.setup);
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

int savedPdf(const PracticeOptions& options, core::Difficulty difficulty,
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

int practice(const PracticeOptions& options) {
  const auto difficulty = core::difficultyFromKey(options.difficulty);
  const std::vector<core::QuestionKind> kinds = kindsOf(options);
  if (!difficulty || kinds.empty()) return BadInput;  // cannot be: the options are checked
  if (!options.out.empty()) return savedPdf(options, *difficulty, kinds);
  const core::PracticeSheet sheet = core::practiceSheet(options.seed, options.count, *difficulty, kinds);
  return options.json ? print(sheetJson(sheet, options.answers), AllPass)
                      : print(core::sheetText(sheet, options.answers), AllPass);
}

}  // namespace

void addPractice(CLI::App& cli, Run& chosen) {
  auto options = std::make_shared<PracticeOptions>();
  CLI::App* command = cli.add_subcommand("practice", "Questions about shunts for a class, and their answers");
  command
      ->add_option(
          "--seed", options->seedText,
          "A whole number from 0 to 2^64-1; the same one gives the same questions anywhere. 1 without "
          "it")
      ->type_name("NUMBER")
      ->check(faultOfSeed);
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
      ->check(faultOfKinds);
  command->add_flag("--answers", options->answers, "What is right and why, for the trainer");
  auto* json = command->add_flag("--json", options->json, "JSON instead of text");
  command->add_option("-o,--out", options->out, "Write the sheet with its drawings; the name ends in .pdf")
      ->type_name("FILE")
      ->check(faultOfName)
      ->excludes(json);
  command->footer(
      "Every question is drawn from a bridge that is solved as a whole. Seed, count, difficulty and kinds\n"
      "stand on both sheets: with them the trainer finds the answers of a class's questions.");
  command->callback([options, &chosen] {
    if (const auto seed = seedOf(options->seedText)) options->seed = *seed;
    chosen = [options] { return practice(*options); };
  });
}

}  // namespace app
