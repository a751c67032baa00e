// SPDX-License-Identifier: GPL-3.0-or-later
#include <CLI/CLI.hpp>
#include <algorithm>
#include <charconv>
#include <memory>

#include "app/budget_output.h"
#include "app/commands.h"
#include "app/decision_output.h"
#include "app/files.h"
#include "app/output.h"
#include "app/trials_output.h"
#include "core/circuit/hookup_words.h"
#include "core/report/tables.h"
#include "core/report/uncertainty_tables.h"

namespace app {
namespace {

struct PredictOptions {
  std::string file;
  std::string channel;
  bool budget = false;
  std::string trials;  ///< empty: none
  std::string scope = "chain";
  std::uint64_t seed = 1;
  unsigned threads = 0;
  bool json = false;
};

/// All values are kept until the end: so many take half a gigabyte or so for the steps of a usual channel.
constexpr std::size_t mostTrials = 10'000'000;

/// A channel with what was computed of it.
struct Predicted {
  const core::Channel& channel;
  core::SetupPrediction prediction;
  core::Budget budget;
  std::optional<core::Result<core::ChannelTrials>>
      trials;  ///< when asked for, and there is something to draw
};

/// What --trials and its further options ask for; none without --trials.
core::Result<std::optional<core::ChannelTrialOptions>> trialOptions(const PredictOptions& options) {
  if (options.trials.empty()) return std::optional<core::ChannelTrialOptions>();
  core::ChannelTrialOptions wanted;
  wanted.scope = options.scope == "chain" ? core::Scope::Chain : core::Scope::Strain;
  wanted.seed = options.seed;
  wanted.threads = options.threads;
  if (options.trials == "auto") return std::optional(wanted);
  std::size_t count = 0;
  const char* const end = options.trials.data() + options.trials.size();
  const auto read = std::from_chars(options.trials.data(), end, count);
  if (read.ec != std::errc() || read.ptr != end || count == 0 || count > mostTrials)
    return core::Error{"--trials", "\"" + options.trials + "\" is no number of trials",
                       "Write auto, or a whole number from 1 to " + std::to_string(mostTrials)};
  wanted.trials = count;
  return std::optional(wanted);
}

core::Error inChannel(const core::Channel& channel, core::Error error) {
  error.where = "channel " + channel.name + (error.where.empty() ? "" : ", " + error.where);
  return error;
}

/// Why a channel as a whole cannot be predicted, if so.
std::optional<core::Error> obstacle(const Predicted& predicted) {
  if (predicted.prediction.zero) return std::nullopt;
  return inChannel(predicted.channel, predicted.prediction.zero.error());
}

Predicted predictedChannel(const core::Channel& channel,
                           const std::optional<core::ChannelTrialOptions>& trials) {
  Predicted predicted{channel, core::predict(channel.setup), {}, {}};
  predicted.budget = core::budgetOf(channel.setup, predicted.prediction);
  if (trials && predicted.prediction.zero && hasShuntedStep(channel.setup))
    predicted.trials =
        trialsWithProgress(channel.name, channel.setup, predicted.prediction, predicted.budget, *trials);
  return predicted;
}

Json stepJson(const core::Setup& setup, const Predicted& predicted, std::size_t step) {
  const core::Result<core::Prediction>& prediction = predicted.prediction.steps[step];
  Json json{{"step", step + 1}, {"label", setup.sequence[step].label}, {"closed", closedShunts(setup, step)}};
  if (!prediction) {
    json["error"] = prediction.error().text();
    return json;
  }
  const double simulated = core::simulatedInUnit(setup.bridge, prediction->simulated);
  json["polarity"] = core::polarityWord(prediction->polarity);
  json["output_mV_per_V"] = jsonNumber(prediction->output.base() * 1e3);
  if (core::isTransducer(setup.bridge)) {
    json["simulated_load"] = jsonNumber(simulated);
    json["unit"] = core::simulatedUnitText(setup.bridge);
  } else {
    json["simulated_strain_um_per_m"] = jsonNumber(simulated);
    json["linear_indication_um_per_m"] = jsonNumber(prediction->indicated.base() * 1e6);
    if (prediction->armChange) json["arm_change_um_per_m"] = jsonNumber(prediction->armChange->base() * 1e6);
  }
  json["reading"] = jsonNumber(prediction->reading.base());
  addStepUncertainty(json, setup, predicted.budget, step);
  return json;
}

Json channelJson(const PredictOptions& options, const Predicted& predicted,
                 const std::optional<core::ChannelTrialOptions>& trials) {
  const core::Setup& setup = predicted.channel.setup;
  Json json{{"channel", predicted.channel.name},
            {"bridge", core::templateOf(setup.bridge.type).key},
            {"connection", core::hookupSentences(setup.bridge)},
            {"reading_unit", core::readingUnitText(setup.instrument)}};
  if (const auto error = obstacle(predicted)) {
    json["error"] = error->text();
    return json;
  }
  json["decision"] = decisionJson(setup.decision);
  json["unshunted_output_mV_per_V"] = jsonNumber(predicted.prediction.zero->base() * 1e3);
  json["steps"] = Json::array();
  for (std::size_t step = 0; step < predicted.prediction.steps.size(); ++step)
    json["steps"].push_back(stepJson(setup, predicted, step));
  if (options.budget) json["budget"] = budgetJson(setup, predicted.budget);
  if (predicted.trials)
    json["trials"] = *predicted.trials ? trialsJson(setup, predicted.budget, *trials, **predicted.trials)
                                       : Json{{"error", predicted.trials->error().text()}};
  return json;
}

std::string channelText(const PredictOptions& options, const Predicted& predicted,
                        const std::optional<core::ChannelTrialOptions>& trials) {
  const core::Setup& setup = predicted.channel.setup;
  std::string text = predicted.channel.name + ": " + std::string(core::templateOf(setup.bridge.type).name) +
                     "\n" + connectionLine(setup.bridge);
  if (obstacle(predicted)) return text + "not predicted\n";
  text += textOf(core::planTable(setup, predicted.prediction, predicted.budget));
  for (std::size_t step = 0; step < predicted.prediction.steps.size(); ++step)
    if (const auto& prediction = predicted.prediction.steps[step]; !prediction)
      text += "step " + std::to_string(step + 1) + ": " + prediction.error().text() + "\n";
  for (const std::string& missing : core::missingUncertainties(setup, predicted.prediction, predicted.budget))
    text += missing + "\n";
  if (options.budget) text += budgetText(setup, predicted.budget);
  if (predicted.trials)
    text += *predicted.trials ? trialsText(setup, predicted.budget, *trials, **predicted.trials)
                              : "\nno trials\n";
  return text;
}

bool hasUnpredictedStep(const Predicted& predicted) {
  return std::any_of(predicted.prediction.steps.begin(), predicted.prediction.steps.end(),
                     [](const core::Result<core::Prediction>& step) { return !step; });
}

/// Says what is wrong with the channel as a whole; whether there was anything.
bool complain(const Predicted& predicted) {
  std::optional<core::Error> error = obstacle(predicted);
  if (!error && predicted.trials && !*predicted.trials)
    error = inChannel(predicted.channel, predicted.trials->error());
  if (error) note(error->text());
  return error.has_value();
}

int predict(const PredictOptions& options) {
  const auto trials = trialOptions(options);
  if (!trials) return fail(trials.error());
  const auto document = openDocument(options.file);
  if (!document) return fail(document.error());
  const auto chosen = channelsNamed(*document, options.channel);
  if (!chosen) return fail(chosen.error());
  Json json{{"channels", Json::array()}};
  std::string text;
  Exit exit = AllPass;
  std::size_t steps = 0;
  for (const std::size_t index : *chosen) {
    const Predicted predicted = predictedChannel(*document->channels[index], *trials);
    if (complain(predicted))
      exit = BadInput;
    else if (exit == AllPass && hasUnpredictedStep(predicted))
      exit = CheckFailed;
    noteOverdue(predicted.channel.name, predicted.channel.setup, today());
    steps += predicted.prediction.steps.size();
    if (options.json)
      json["channels"].push_back(channelJson(options, predicted, *trials));
    else
      text += (text.empty() ? "" : "\n") + channelText(options, predicted, *trials);
  }
  if (exit == AllPass && steps == 0)
    return fail({options.file, "there are no steps to predict", "Add steps to a sequence in the window"});
  return options.json ? print(json, exit) : print(text, exit);
}

void addTrialOptions(CLI::App& command, PredictOptions& options) {
  auto* trials = command.add_option(
      "--trials", options.trials,
      "Monte Carlo through the whole network beside the linear budget: a number of trials,\n"
      "or auto for as many as the second digit of every u takes to settle");
  trials->type_name("N|auto")->check([](const std::string& text) {
    return text.empty() ? std::string("write auto or a number of trials") : std::string();
  });
  command.add_option("--scope", options.scope, "What the trials are of; chain without it")
      ->type_name("chain|strain")
      ->check(CLI::IsMember({"chain", "strain", "load"}))
      ->needs(trials);
  command.add_option("--seed", options.seed, "Start of the random numbers; 1 without it")
      ->check([](const std::string& text) {  // a negative one would wrap round unsaid
        return text.find('-') == std::string::npos ? std::string() : "the seed is a whole number from 0 on";
      })
      ->needs(trials);
  command.add_option("--threads", options.threads, "At once; without it as many as the machine has")
      ->check(CLI::Range(1, 1024))
      ->needs(trials);
}

}  // namespace

void addPredict(CLI::App& cli, Run& chosen) {
  auto options = std::make_shared<PredictOptions>();
  CLI::App* command = cli.add_subcommand("predict", "What every step of the plan should show");
  command->add_option("FILE", options->file, "A .bridgecal document")->type_name("")->required();
  command->add_option("--channel", options->channel, "Only the channel of this name")->check(faultOfName);
  command->add_flag("--budget", options->budget, "With the whole uncertainty budget");
  addTrialOptions(*command, *options);
  command->add_flag("--json", options->json, "JSON instead of tables");
  command->footer(
      "U of the expected reading is of the electrical chain, which decides pass or fail. U of the simulated\n"
      "strain (of a transducer: load) adds what only the gauge brings in. Uncertainties that the document\n"
      "does not state are usual tolerances; --budget tells them apart.\n"
      "\n"
      "A step that cannot be predicted, or has no uncertainty, carries its error and does not hide the\n"
      "others. The exit status is 0 when every step is predicted, 1 when some step cannot be, 2 when a\n"
      "channel as a whole cannot be predicted, when its trials cannot be made, or when there is no step at\n"
      "all.");
  command->callback([options, &chosen] { chosen = [options] { return predict(*options); }; });
}

}  // namespace app
