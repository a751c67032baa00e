// SPDX-License-Identifier: GPL-3.0-or-later
// Puts awkward numbers into a document, one place at a time, and does with it all that the program does:
// reads, evaluates, compares, diagnoses, reports, writes.
//
//   numbers_core_driver FILE SEED COUNT FOLDER
//
// COUNT of all pairs of place and number are drawn with SEED, 0 takes all. Each is tried in a process of its
// own. Every tenth workbook stays in FOLDER for whoever can open it. Tells what it tried as one JSON object;
// what went wrong is a line of standard error.
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <nlohmann/json.hpp>
#include <random>
#include <sstream>

#include "core/compare/comparison.h"
#include "core/document/json_reader.h"
#include "core/document/json_writer.h"
#include "core/report/csv.h"
#include "core/report/json.h"
#include "core/report/web_page.h"
#include "core/report/workbook.h"

namespace {

using Json = nlohmann::ordered_json;

/// As they stand in a file. JSON has no NaN; a file has whatever someone put there.
constexpr const char* awkward[] = {"1e308", "-1e308", "5e-324", "0", "-0.0", "1e999", "NaN", "\"12\""};
constexpr const char* hole = "\"@ THE NUMBER @\"";
constexpr unsigned patience_s =
    120;  ///< a sanitized build on a busy core is some hundred times slower than ours

struct Place {
  std::size_t file;  ///< of the documents with one channel each
  Json::json_pointer at;
};

void collect(const Json& json, const Json::json_pointer& at, std::size_t file, std::vector<Place>& places) {
  if (json.is_number()) places.push_back({file, at});
  if (json.is_object())
    for (const auto& [key, value] : json.items()) collect(value, at / key, file, places);
  if (json.is_array())
    for (std::size_t k = 0; k < json.size(); ++k) collect(json[k], at / k, file, places);
}

/// A document for each channel, so that a number is tried beside few others; the places of what they share
/// are in the first alone.
std::vector<Json> apart(const Json& whole, std::vector<Place>& places) {
  std::vector<Json> files;
  for (const Json& channel : whole.at("channels")) {
    Json one = whole;
    one["channels"] = Json::array({channel});
    if (files.empty())
      collect(one, Json::json_pointer(), 0, places);
    else
      collect(channel, Json::json_pointer("/channels/0"), files.size(), places);
    files.push_back(std::move(one));
  }
  return files;
}

std::string variant(Json file, const Json::json_pointer& at, const std::string& number) {
  file[at] = "@ THE NUMBER @";
  std::string text = file.dump();
  return text.replace(text.find(hole), std::string_view(hole).size(), number);
}

bool finite(double value) { return std::isfinite(value); }
bool finite(const core::Reading& value) { return std::isfinite(value.base()); }
template <typename T>
bool finite(const std::optional<T>& value) {
  return !value || finite(*value);
}

bool isBackedBy(const core::Decided& decided) {
  return finite(decided.expanded) && finite(decided.guardBand) && finite(decided.probability) &&
         finite(decided.en);
}

/// What a pass rests on is there and finite.
bool stepIsSound(const core::StepAssessment& step, const core::CheckEvaluation& check, std::size_t k) {
  if (step.verdict != core::Verdict::Pass) return true;
  const auto& budget = check.budget.of(core::Scope::Chain).steps;
  const bool known = k < budget.size() && budget[k];
  return step.change && finite(step.change) && step.deviation && finite(step.deviation) && step.limit &&
         finite(step.limit) && finite(step.standard) && (!step.decided || isBackedBy(*step.decided)) &&
         check.prediction.steps.at(k) && finite(check.prediction.steps[k]->reading) &&
         finite(check.prediction.steps[k]->simulated) && (!known || finite(budget[k]->expanded));
}

bool checkIsSound(const core::CheckEvaluation& check) {
  const core::CheckAssessment& is = check.assessment;
  for (std::size_t k = 0; k < is.steps.size(); ++k)
    if (!stepIsSound(is.steps[k], check, k)) return false;
  for (const core::Merit& merit : is.merits)
    if (merit.verdict == core::Verdict::Pass &&
        !(merit.value && finite(merit.value) && merit.share && finite(merit.share) &&
          finite(merit.denominator) && merit.limit && finite(merit.limit) && finite(merit.standard)))
      return false;
  if (is.verdict != core::Verdict::Pass) return true;
  return finite(is.zeroReturn) && (!is.gain || (finite(is.gain->value) && finite(is.gain->standard)));
}

bool finite(const std::optional<core::Difference>& one) {
  return !one ||
         (finite(one->value) && finite(one->standard) && finite(one->margin) && finite(one->expanded) &&
          finite(one->pDifferent) && finite(one->pEquivalent) && finite(one->en));
}

bool comparisonIsSound(const core::Comparison& comparison) {
  if (comparison.verdict != core::Verdict::Pass) return true;
  return finite(comparison.gain) && finite(comparison.zero) &&
         std::all_of(comparison.steps.begin(), comparison.steps.end(),
                     [](const core::StepComparison& step) { return finite(step.moved); });
}

/// Whether one of the words that C prints for what is no number stands by itself in `text`.
bool saysNoNumber(std::string_view text) {
  for (const std::string_view word : {"nan", "NaN", "inf", "Inf", "infinity"})
    for (std::size_t at = text.find(word); at != text.npos; at = text.find(word, at + 1)) {
      const auto isLetter = [&](std::size_t k) {
        return k < text.size() && (std::isalnum(text[k]) || text[k] & 0x80);
      };
      if (!isLetter(at - 1) && !isLetter(at + word.size())) return true;
    }
  return false;
}

int wrong(const char* what) {
  std::fprintf(stderr, "%s", what);
  std::fflush(stderr);
  return 3;
}

int judge(const core::Document& document) {
  for (const auto& channel : document.channels) {
    const core::ChannelEvaluation evaluation = core::evaluate(*channel);
    for (const core::CheckEvaluation& check : evaluation.checks)
      if (!checkIsSound(check)) return wrong("a pass with no finite number behind it");
    if (channel->checks.size() >= 2 &&
        !comparisonIsSound(core::compare(*channel, evaluation, 0, channel->checks.size() - 1)))
      return wrong("a comparison passes with no finite number behind it");
  }
  return 0;
}

/// Diagnoses too: they are part of the full record.
int report(const core::Document& document, std::size_t nth, const std::string& folder) {
  const core::ReportOrder order;
  const auto json = core::reportJson(document, order);
  if (!json || !Json::accept(*json)) return wrong("no JSON of the report");
  if (saysNoNumber(*json)) return wrong("JSON of the report says what is no number");
  if (saysNoNumber(core::reportCsv(document, order))) return wrong("CSV says what is no number");
  if (nth % 2 == 0 && saysNoNumber(core::reportWebPage(core::reportOf(document, order))))
    return wrong("HTML says what is no number");
  if (nth % 2 == 0) return 0;
  const auto book = core::reportWorkbook(document, order);
  if (!book) return wrong("no workbook");
  if (nth % 10 == 1) std::ofstream(folder + "/" + std::to_string(nth) + ".xlsx", std::ios::binary) << *book;
  return 0;
}

/// 0: refused with words, 1: worked with, 3: wrong.
int tryOut(const std::string& text, std::size_t nth, const std::string& folder) {
  const auto document = core::readDocument(text);
  if (!document) return document.error().what.empty() ? wrong("refused without a word") : 0;
  if (const int bad = judge(*document)) return bad;
  if (const int bad = report(*document, nth, folder)) return bad;
  const auto written = core::writeDocument(*document);
  if (!written) return wrong("what was read cannot be written");
  const auto again = core::readDocument(*written);
  const auto twice = again ? core::writeDocument(*again) : core::Result<std::string>(again.error());
  if (!twice || *twice != *written) return wrong("what was written is not what was read");
  return 1;
}

struct Told {
  int tried = 0, refused = 0, worked = 0, wrong = 0;
};

void tryApart(const std::string& text, const std::string& name, std::size_t nth, const std::string& folder,
              Told& told) {
  std::fflush(nullptr);
  const pid_t child = fork();
  if (child == 0) {
    alarm(patience_s);
    _exit(tryOut(text, nth, folder));
  }
  int status = 0;
  waitpid(child, &status, 0);
  ++told.tried;
  const int code = WIFEXITED(status) ? WEXITSTATUS(status) : 4;
  if (code == 0)
    ++told.refused;
  else if (code == 1)
    ++told.worked;
  else {
    ++told.wrong;
    std::fprintf(stderr, "%s: %s\n",
                 WIFSIGNALED(status) ? ("signal " + std::to_string(WTERMSIG(status))).c_str() : "",
                 name.c_str());
  }
}

std::string textOf(const char* path) {
  std::ostringstream text;
  text << std::ifstream(path, std::ios::binary).rdbuf();
  return text.str();
}

}  // namespace

int main(int argc, char** argv) {
  if (argc != 5) return 2;
  std::vector<Place> places;
  const std::vector<Json> files = apart(Json::parse(textOf(argv[1])), places);
  std::vector<std::pair<std::size_t, const char*>> trials;
  for (std::size_t k = 0; k < places.size(); ++k)
    for (const char* number : awkward) trials.emplace_back(k, number);
  std::shuffle(trials.begin(), trials.end(), std::mt19937(static_cast<unsigned>(std::stoul(argv[2]))));
  if (const std::size_t count = std::stoul(argv[3]); count > 0 && count < trials.size()) trials.resize(count);
  Told told;
  for (std::size_t nth = 0; nth < trials.size(); ++nth) {
    const Place& place = places[trials[nth].first];
    tryApart(
        variant(files[place.file], place.at, trials[nth].second),
        "channel " + std::to_string(place.file + 1) + " " + place.at.to_string() + " = " + trials[nth].second,
        nth, argv[4], told);
  }
  std::cout << Json{{"places", places.size()},
                    {"tried", told.tried},
                    {"refused", told.refused},
                    {"worked", told.worked},
                    {"wrong", told.wrong}}
            << std::endl;
  return told.wrong > 0;
}
