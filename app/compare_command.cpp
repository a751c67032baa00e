// SPDX-License-Identifier: GPL-3.0-or-later
#include <CLI/CLI.hpp>
#include <algorithm>
#include <memory>

#include "app/commands.h"
#include "app/decision_output.h"
#include "app/diagnosis_output.h"
#include "app/files.h"
#include "app/output.h"
#include "core/compare/change_cause.h"
#include "core/compare/comparison.h"
#include "core/report/diagnosis_section.h"
#include "core/report/figures.h"
#include "core/report/tables.h"

namespace app {
namespace {

struct CompareOptions {
  std::string file;
  std::string channel;
  std::string checks;
  bool cause = false;
  bool trend = false;
  bool json = false;
};

/// The two checks that --checks names.
struct PairNames {
  std::string before;
  std::string after;
};

struct Pair {
  std::size_t before;
  std::size_t after;
};

core::Result<std::size_t> checkNamed(const core::Channel& channel, const std::string& name) {
  std::vector<std::string> names;
  for (std::size_t k = 0; k < channel.checks.size(); ++k) {
    if (channel.checks[k].name == name) return k;
    names.push_back(channel.checks[k].name);
  }
  if (fullCheckName(name) != name) return checkNamed(channel, fullCheckName(name));
  return core::Error{"channel " + channel.name, "there is no check \"" + name + "\"",
                     names.empty() ? "The channel has no checks" : "There are " + listed(names)};
}

/// What is given to --checks; none when it is empty.
core::Result<std::optional<PairNames>> pairNames(const std::string& given) {
  if (given.empty()) return std::optional<PairNames>();
  const std::size_t comma = given.find(',');
  if (comma == std::string::npos)
    return core::Error{"--checks", "two names are needed, with a comma between",
                       "Write for example --checks pre,post"};
  PairNames names{given.substr(0, comma), given.substr(comma + 1)};
  if (fullCheckName(names.before) == fullCheckName(names.after))
    return core::Error{"--checks", "a check cannot be compared with itself", "Name two different checks"};
  return std::optional(std::move(names));
}

/// The two checks of the channel that are wanted; the first and the last without names.
core::Result<Pair> pairOf(const core::Channel& channel, const std::optional<PairNames>& wanted) {
  if (!wanted) {
    if (channel.checks.size() >= 2) return Pair{0, channel.checks.size() - 1};
    return core::Error{
        "channel " + channel.name,
        "it takes two checks to compare, the channel has " + std::to_string(channel.checks.size()),
        "Add one with \"check --save\" or in the window"};
  }
  const auto before = checkNamed(channel, wanted->before);
  if (!before) return before.error();
  const auto after = checkNamed(channel, wanted->after);
  if (!after) return after.error();
  return Pair{*before, *after};
}

Json checkJson(const core::Channel& channel, const core::ChannelEvaluation& evaluation, std::size_t check) {
  return {{"verdict", core::verdictWord(evaluation.checks[check].assessment.verdict)},
          {"decision", decisionJson(core::setupOf(channel, channel.checks[check]).decision)}};
}

Json differenceJson(const std::optional<core::Difference>& difference) {
  if (!difference) return nullptr;
  return {{"value", jsonNumber(difference->value)},
          {"standard_uncertainty", jsonNumber(difference->standard)},
          {"degrees_of_freedom", jsonNumber(difference->dof)},
          {"expanded_uncertainty", jsonNumber(difference->expanded)},
          {"margin", jsonNumber(difference->margin)},
          {"half_width_90", jsonNumber(difference->halfWidth90)},
          {"half_width_95", jsonNumber(difference->halfWidth95)},
          {"p_different", jsonNumber(difference->pDifferent)},
          {"p_equivalent", jsonNumber(difference->pEquivalent)},
          {"en", jsonNumber(difference->en)},
          {"change", core::changeKey(difference->change)}};
}

Json configurationJson(const core::Comparison& comparison) {
  Json list = Json::array();
  for (const core::SetupDifference& difference : comparison.configuration)
    list.push_back({{"what", difference.what},
                    {"before", difference.before},
                    {"after", difference.after},
                    {"on_readings", difference.onReadings}});
  return list;
}

Json stepsJson(const core::Comparison& comparison) {
  Json list = Json::array();
  for (std::size_t k = 0; k < comparison.steps.size(); ++k) {
    const core::StepComparison& step = comparison.steps[k];
    const core::Change change = core::changeOf(step.moved);
    list.push_back({{"step", k + 1},
                    {"after_step", step.afterStep ? Json(*step.afterStep + 1) : Json(nullptr)},
                    {"before", jsonNumber(baseOf(step.before))},
                    {"after", jsonNumber(baseOf(step.after))},
                    {"difference", jsonNumber(baseOf(step.difference))},
                    {"moved", differenceJson(step.moved)},
                    {"change", core::changeKey(change)},
                    {"verdict", core::verdictWord(core::verdictOf(change))},
                    {"reason", step.reason}});
  }
  return list;
}

/// Row after row; null when it is not known.
Json covarianceJson(const core::Comparison& comparison) {
  if (comparison.covariance.empty()) return nullptr;
  Json rows = Json::array();
  const std::size_t n = comparison.steps.size();
  for (std::size_t i = 0; i < n; ++i) {
    Json row = Json::array();
    for (std::size_t j = 0; j < n; ++j) row.push_back(jsonNumber(comparison.covariance[i * n + j]));
    rows.push_back(std::move(row));
  }
  return rows;
}

Json comparisonJson(const core::Channel& channel, const core::ChannelEvaluation& evaluation, Pair pair,
                    const core::Comparison& comparison) {
  const core::Setup& setup = core::setupOf(channel, channel.checks[pair.before]);
  Json only = Json::array();
  for (const std::size_t step : comparison.onlyAfter) only.push_back(step + 1);
  return {{"channel", channel.name},
          {"before", channel.checks[pair.before].name},
          {"after", channel.checks[pair.after].name},
          {"change", core::changeKey(comparison.change)},
          {"verdict", core::verdictWord(comparison.verdict)},
          {"reason", comparison.reason},
          {"before_check", checkJson(channel, evaluation, pair.before)},
          {"after_check", checkJson(channel, evaluation, pair.after)},
          {"reading_unit", core::readingUnitText(setup.instrument)},
          {"coverage", setup.decision.coverage},
          {"setup_differences", configurationJson(comparison)},
          {"gain", differenceJson(comparison.gain)},
          {"zero", differenceJson(comparison.zero)},
          {"joint_probability", jsonNumber(comparison.jointProbability)},
          {"scatter", jsonNumber(comparison.scatter)},
          {"scatter_degrees_of_freedom", jsonNumber(comparison.scatterDof)},
          {"repeats", comparison.repeats ? Json(*comparison.repeats) : Json(nullptr)},
          {"steps", stepsJson(comparison)},
          {"steps_only_after", std::move(only)},
          {"covariance", covarianceJson(comparison)}};
}

Json dataJson(const std::optional<core::DataBetween>& data) {
  if (!data) return nullptr;
  return {{"before", correctionJson(data->before)},
          {"after", correctionJson(data->after)},
          {"greatest_share", jsonNumber(data->greatestShare)},
          {"greatest_offset", jsonNumber(data->greatestOffset)},
          {"sentence", data->sentence}};
}

std::string causeText(const core::Setup& setup, const core::ChangeCause& cause) {
  std::string text = "What changed: " + diagnosisText(setup, cause.diagnosis);
  if (!cause.diagnosis.explanations.empty()) text += core::suspicionStatement() + "\n";
  if (cause.data) text += "Data taken in between: " + cause.data->sentence + "\n";
  return text;
}

Json limitsJson(const std::optional<core::ControlLimits>& limits) {
  if (!limits) return nullptr;
  return {{"centre", jsonNumber(limits->centre)},
          {"lower", jsonNumber(limits->lower)},
          {"upper", jsonNumber(limits->upper)}};
}

Json trendJson(const core::Channel& channel, const core::Trend& trend) {
  const auto isAmong = [](const std::vector<std::size_t>& list, std::size_t k) {
    return std::find(list.begin(), list.end(), k) != list.end();
  };
  Json points = Json::array();
  for (std::size_t k = 0; k < trend.points.size(); ++k) {
    const core::TrendPoint& point = trend.points[k];
    points.push_back({{"check", channel.checks[point.check].name},
                      {"date", point.day ? Json(core::dateText(*point.day)) : Json(nullptr)},
                      {"gain", jsonNumber(point.gain)},
                      {"gain_standard_uncertainty", jsonNumber(point.gainStandard)},
                      {"zero", jsonNumber(point.zero)},
                      {"zero_standard_uncertainty", jsonNumber(point.zeroStandard)},
                      {"gain_beyond_limits", isAmong(trend.beyondGain, k)},
                      {"zero_beyond_limits", isAmong(trend.beyondZero, k)}});
  }
  return {{"points", std::move(points)},
          {"gain_limits", limitsJson(trend.gain)},
          {"zero_limits", limitsJson(trend.zero)},
          {"sentence", trend.sentence}};
}

std::string comparisonText(const core::Channel& channel, const core::ChannelEvaluation& evaluation, Pair pair,
                           const core::Comparison& comparison) {
  const std::string& before = channel.checks[pair.before].name;
  const std::string& after = channel.checks[pair.after].name;
  std::string text = channel.name + ": " + comparison.reason + "\n";
  if (!comparison.configuration.empty()) text += textOf(core::configurationTable(comparison, before, after));
  for (const std::size_t check : {pair.before, pair.after})
    text += channel.checks[check].name + ": " +
            std::string(core::verdictWord(evaluation.checks[check].assessment.verdict)) + " by " +
            core::decisionText(core::setupOf(channel, channel.checks[check]).decision) + "\n";
  if (comparison.steps.empty()) return text;
  return text + textOf(core::comparisonTable(channel, comparison, pair.before, pair.after)) +
         textOf(core::figuresOf(channel, evaluation, comparison, pair.before, pair.after));
}

int compare(const CompareOptions& options) {
  const auto names = pairNames(options.checks);
  if (!names) return fail(names.error());
  const auto document = openDocument(options.file);
  if (!document) return fail(document.error());
  const auto chosen = channelsNamed(*document, options.channel);
  if (!chosen) return fail(chosen.error());
  Json json{{"channels", Json::array()}};
  std::string text;
  Exit exit = AllPass;
  for (const std::size_t index : *chosen) {
    const core::Channel& channel = *document->channels[index];
    const auto pair = pairOf(channel, *names);
    if (!pair) {
      note(pair.error().text());
      json["channels"].push_back({{"channel", channel.name}, {"error", pair.error().text()}});
      exit = BadInput;
      continue;
    }
    const core::ChannelEvaluation evaluation = core::evaluate(channel);
    const core::Comparison comparison = core::compare(channel, evaluation, pair->before, pair->after);
    if (comparison.verdict != core::Verdict::Pass) exit = std::max(exit, CheckFailed);
    Json one = comparisonJson(channel, evaluation, *pair, comparison);
    text += (text.empty() ? "" : "\n") + comparisonText(channel, evaluation, *pair, comparison);
    if (options.cause) {
      const core::Setup& setup = core::setupOf(channel, channel.checks[pair->before]);
      const core::ChangeCause cause = core::changeCauseOf(channel, evaluation, pair->before, pair->after);
      one["cause"] = diagnosisJson(setup, cause.diagnosis);
      one["data_between"] = dataJson(cause.data);
      text += causeText(setup, cause);
    }
    if (options.trend) {
      const core::Trend trend = core::trendOf(channel, evaluation);
      one["trend"] = trendJson(channel, trend);
      text += textOf(core::trendTable(channel, trend));
    }
    json["channels"].push_back(std::move(one));
  }
  return options.json ? print(json, exit) : print(text, exit);
}

}  // namespace

void addCompare(CLI::App& cli, Run& chosen) {
  auto options = std::make_shared<CompareOptions>();
  CLI::App* command = cli.add_subcommand("compare", "Two checks of each channel side by side");
  command->add_option("FILE", options->file, "A .bridgecal document")->type_name("")->required();
  command->add_option("--channel", options->channel, "Only the channel of this name")->check(faultOfName);
  command
      ->add_option("--checks", options->checks,
                   "Names of the earlier and the later check with a comma between, pre and post\n"
                   "for pre-test and post-test; without it the first and the last check of each channel")
      ->check(faultOfName);
  command->add_flag("--cause", options->cause,
                    "What changed physically, and what it means for data taken in between");
  command->add_flag("--trend", options->trend,
                    "Gain and zero of all checks of each channel with their control limits too");
  command->add_flag("--json", options->json, "JSON instead of tables");
  command->footer(
      "The margins are those of the earlier check: what it was planned with, before the test. What both\n"
      "checks share, such as resistors and gain, is taken out of every uncertainty. The exit status is 0\n"
      "when everything is shown to be within its margin and the checks pass, 1 when something moved or\n"
      "cannot be told, a check fails, or a channel cannot be judged, 2 when a channel lacks the checks.");
  command->callback([options, &chosen] { chosen = [options] { return compare(*options); }; });
}

}  // namespace app
