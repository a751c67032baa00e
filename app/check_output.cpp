// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/check_output.h"

#include <algorithm>

#include "app/decision_output.h"
#include "app/diagnosis_output.h"
#include "app/files.h"
#include "app/match_output.h"
#include "core/circuit/hookup_words.h"
#include "core/report/diagnosis_section.h"
#include "core/report/figures.h"
#include "core/report/tables.h"

namespace app {
namespace {

const core::CheckEvaluation& latest(const CheckedChannel& checked) {
  return checked.evaluation.checks.back();
}

std::optional<double> expectedOf(const core::Result<core::Prediction>& prediction) {
  return prediction ? std::optional(prediction->reading.base()) : std::nullopt;
}

Json stepJson(const core::Setup& setup, const core::Check& check, const core::CheckEvaluation& evaluation,
              std::size_t step) {
  const core::StepAssessment& judged = evaluation.assessment.steps[step];
  Json json{{"step", step + 1}, {"label", setup.sequence[step].label}};
  if (const auto& measured = check.readings[step]) {
    json["measured"] = jsonNumber(measured->mean.base());
    json["std_uncertainty"] = jsonNumber(baseOf(measured->uncertainty));
    json["begin_s"] = jsonNumber(baseOf(measured->begin));
    json["end_s"] = jsonNumber(baseOf(measured->end));
  }
  json["change"] = jsonNumber(baseOf(judged.change));
  json["expected"] = jsonNumber(expectedOf(evaluation.prediction.steps[step]));
  json["deviation"] = jsonNumber(baseOf(judged.deviation));
  json["deviation_std_uncertainty"] = jsonNumber(baseOf(judged.standard));
  addDecided(json, setup.decision, judged.decided);
  json["limit"] = jsonNumber(baseOf(judged.limit));
  json["verdict"] = core::verdictWord(judged.verdict);
  json["reason"] = judged.reason;
  return json;
}

Json meritJson(const core::Setup& setup, const core::Merit& merit) {
  Json json{{"figure", core::meritKindKey(merit.kind)},
            {"value", jsonNumber(merit.value)},
            {"share", jsonNumber(merit.share)},
            {"share_std_uncertainty", jsonNumber(merit.standard)},
            {"denominator", merit.denominator > 0 ? jsonNumber(merit.denominator) : Json(nullptr)},
            {"definition", merit.definition},
            {"step", merit.step ? Json(*merit.step + 1) : Json(nullptr)}};
  addDecided(json, setup.decision, merit.decided);
  json["limit"] = jsonNumber(merit.limit);
  json["verdict"] = core::verdictWord(merit.verdict);
  json["reason"] = merit.reason;
  return json;
}

void addLine(Json& json, const core::Result<core::Line>& line) {
  if (!line) return;
  json["slope"] = jsonNumber(line->slope);
  json["slope_std_error"] = jsonNumber(line->slopeError);
  json["intercept"] = jsonNumber(line->intercept);
  json["intercept_std_error"] = jsonNumber(line->interceptError);
  json["line_fit"] = core::lineFitName(line->fit);
  json["line_chi2"] = jsonNumber(line->chiSquare);
  json["line_dof"] = line->degreesOfFreedom;
  json["line_probability"] = jsonNumber(line->chiSquareProbability);
}

Json channelJson(const CheckedChannel& checked, const core::Setup& planned) {
  Json json{{"channel", checked.name}, {"column", checked.column}};
  if (!checked.channel) {
    json["error"] = checked.channel.error().text();
    json["match"] = matchJson(checked.find, checked.way, planned);
    return json;
  }
  const core::Check& check = checked.channel->checks.back();
  const core::Setup& setup = *check.closedWith;
  const core::CheckAssessment& assessment = latest(checked).assessment;
  json["check"] = check.name;
  json["connection"] = core::hookupSentences(setup.bridge);
  json["verdict"] = core::verdictWord(assessment.verdict);
  json["reason"] = assessment.reason;
  json["decision"] = decisionJson(setup.decision);
  json["reading_unit"] = core::readingUnitText(setup.instrument);
  json["zero_return"] = jsonNumber(baseOf(assessment.zeroReturn));
  json["zero_return_limit"] = jsonNumber(assessment.zeroReturnLimit.base());
  addLine(json, assessment.line);
  if (const auto& gain = assessment.gain) {  // measured over expected; the line above is over simulated
    json["gain"] = jsonNumber(gain->value);
    json["gain_std_uncertainty"] = jsonNumber(gain->standard);
  }
  json["steps"] = Json::array();
  for (std::size_t step = 0; step < setup.sequence.size(); ++step)
    json["steps"].push_back(stepJson(setup, check, latest(checked), step));
  json["merits"] = Json::array();
  for (const core::Merit& merit : assessment.merits) json["merits"].push_back(meritJson(setup, merit));
  json["diagnosis"] = checked.diagnosis ? diagnosisJson(setup, *checked.diagnosis) : Json(nullptr);
  json["match"] = matchJson(checked.find, checked.way, setup);
  return json;
}

/// The ways to match, for the user to choose; with the channel's name where there are several.
std::string waysText(const CheckedChannel& checked, const core::Setup& planned, bool isOnly) {
  std::string text;
  const bool hasBlank = checked.name.find(' ') != std::string::npos;
  for (const MatchWay& way : waysOf(checked.find, planned)) {
    const std::string word = isOnly ? way.name : checked.name + "=" + way.name;
    text +=
        "  --match " + (hasBlank && !isOnly ? '"' + word + '"' : word) + ": " + joined(way.words, " ") + "\n";
  }
  return text;
}

std::string channelText(const CheckedChannel& checked, const core::Setup& planned, bool isOnly) {
  if (!checked.channel) return checked.name + ": not checked\n" + waysText(checked, planned, isOnly);
  const core::Channel& channel = *checked.channel;
  const std::size_t last = channel.checks.size() - 1;
  return channel.name + ", " + channel.checks[last].name + ": " + latest(checked).assessment.reason + "\n" +
         connectionLine(core::setupOf(channel, channel.checks[last]).bridge) +
         joined(wordsOf(checked.find, *checked.way, planned), " ") + "\n" +
         (checked.apart.empty() ? "" : checked.apart + "\n") +
         "Decision rule: " + core::decisionText(core::setupOf(channel, channel.checks[last]).decision) +
         "\n" + textOf(core::checkTable(channel, checked.evaluation, last)) +
         textOf(core::figuresOf(channel, checked.evaluation, last)) +
         (checked.diagnosis
              ? likeliestCauseText(*checked.diagnosis, core::allStepsPass(latest(checked).assessment))
              : "");
}

}  // namespace

Exit exitOf(const std::vector<CheckedChannel>& checked) {
  Exit exit = AllPass;
  for (const CheckedChannel& one : checked) {
    if (!one.channel)
      exit = BadInput;
    else if (latest(one).assessment.verdict != core::Verdict::Pass)
      exit = std::max(exit, CheckFailed);
  }
  return exit;
}

Json checkJson(const core::Document& document, const std::vector<CheckedChannel>& checked,
               const std::vector<std::string>& missing, const std::string& savedAs) {
  Json json{{"channels", Json::array()}, {"channels_without_column", missing}};
  for (const CheckedChannel& one : checked)
    json["channels"].push_back(channelJson(one, document.channels[one.index]->setup));
  if (!savedAs.empty()) json["saved"] = savedAs;
  return json;
}

std::string checkText(const core::Document& document, const std::vector<CheckedChannel>& checked) {
  std::string text;
  for (const CheckedChannel& one : checked)
    text += (text.empty() ? "" : "\n") +
            channelText(one, document.channels[one.index]->setup, checked.size() == 1);
  return text;
}

}  // namespace app
