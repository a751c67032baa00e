// SPDX-License-Identifier: GPL-3.0-or-later
#include <CLI/CLI.hpp>
#include <algorithm>
#include <memory>

#include "app/commands.h"
#include "app/decision_output.h"
#include "app/files.h"
#include "app/output.h"
#include "core/evaluate/comparison.h"
#include "core/report/figures.h"
#include "core/report/tables.h"

namespace app {
namespace {

struct Options {
  std::string file;
  std::string channel;
  std::string checks;
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

Json comparisonJson(const core::Channel& channel, const core::ChannelEvaluation& evaluation, Pair pair,
                    const core::Comparison& comparison) {
  const core::Setup& setup = core::setupOf(channel, channel.checks[pair.before]);
  Json json{{"channel", channel.name},
            {"before", channel.checks[pair.before].name},
            {"after", channel.checks[pair.after].name},
            {"verdict", core::verdictWord(comparison.verdict)},
            {"reason", comparison.reason},
            {"before_check", checkJson(channel, evaluation, pair.before)},
            {"after_check", checkJson(channel, evaluation, pair.after)},
            {"reading_unit", core::readingUnitText(setup.instrument)},
            {"setup_differences", comparison.setupDifferences},
            {"slope_ratio", jsonNumber(comparison.slopeRatio)},
            {"slope_ratio_std_error", jsonNumber(comparison.slopeRatioError)},
            {"zero_shift", jsonNumber(baseOf(comparison.zeroShift))}};
  json["steps"] = Json::array();
  for (std::size_t k = 0; k < comparison.steps.size(); ++k) {
    const core::StepComparison& step = comparison.steps[k];
    json["steps"].push_back({{"step", k + 1},
                             {"before", jsonNumber(baseOf(step.before))},
                             {"after", jsonNumber(baseOf(step.after))},
                             {"difference", jsonNumber(baseOf(step.difference))},
                             {"limit", jsonNumber(baseOf(step.limit))},
                             {"verdict", core::verdictWord(step.verdict)}});
  }
  return json;
}

std::string comparisonText(const core::Channel& channel, const core::ChannelEvaluation& evaluation, Pair pair,
                           const core::Comparison& comparison) {
  std::string text = channel.name + ": " + comparison.reason + "\n";
  if (!comparison.setupDifferences.empty()) text += core::setupDifferenceSentence(comparison) + "\n";
  for (const std::size_t check : {pair.before, pair.after})
    text += channel.checks[check].name + ": " +
            std::string(core::verdictWord(evaluation.checks[check].assessment.verdict)) + " by " +
            core::decisionText(core::setupOf(channel, channel.checks[check]).decision) + "\n";
  if (comparison.steps.empty()) return text;
  return text + textOf(core::comparisonTable(channel, comparison, pair.before, pair.after)) +
         textOf(core::figuresOf(channel, evaluation, comparison, pair.before, pair.after));
}

int compare(const Options& options) {
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
    json["channels"].push_back(comparisonJson(channel, evaluation, *pair, comparison));
    text += (text.empty() ? "" : "\n") + comparisonText(channel, evaluation, *pair, comparison);
  }
  return options.json ? print(json, exit) : print(text, exit);
}

}  // namespace

void addCompare(CLI::App& cli, Run& chosen) {
  auto options = std::make_shared<Options>();
  CLI::App* command = cli.add_subcommand("compare", "Two checks of each channel side by side");
  command->add_option("FILE", options->file, "A .bridgecal document")->type_name("")->required();
  command->add_option("--channel", options->channel, "Only the channel of this name")->check(faultOfName);
  command
      ->add_option("--checks", options->checks,
                   "Names of the earlier and the later check with a comma between, pre and post\n"
                   "for pre-test and post-test; without it the first and the last check of each channel")
      ->check(faultOfName);
  command->add_flag("--json", options->json, "JSON instead of tables");
  command->footer(
      "The exit status is 0 when nothing moved beyond its limit and the checks pass, 1 when something\n"
      "moved, a check fails or cannot tell, or a channel cannot be judged, 2 when a channel lacks the\n"
      "checks.");
  command->callback([options, &chosen] { chosen = [options] { return compare(*options); }; });
}

}  // namespace app
