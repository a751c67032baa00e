// SPDX-License-Identifier: GPL-3.0-or-later
#include <CLI/CLI.hpp>
#include <memory>

#include "app/commands.h"
#include "app/files.h"
#include "app/output.h"
#include "core/plan/prediction.h"
#include "core/report/tables.h"

namespace app {
namespace {

struct Options {
  std::string file;
  std::string channel;
  bool json = false;
};

/// Why a channel as a whole cannot be predicted, if so.
std::optional<core::Error> obstacle(const core::Channel& channel, const core::SetupPrediction& prediction) {
  if (prediction.zero) return std::nullopt;
  core::Error error = prediction.zero.error();
  error.where = "channel " + channel.name + (error.where.empty() ? "" : ", " + error.where);
  return error;
}

Json stepJson(const core::Setup& setup, std::size_t step, const core::Result<core::Prediction>& prediction) {
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
  return json;
}

Json channelJson(const core::Channel& channel, const core::SetupPrediction& prediction) {
  const core::Setup& setup = channel.setup;
  Json json{{"channel", channel.name},
            {"bridge", core::templateOf(setup.bridge.type).key},
            {"reading_unit", core::readingUnitText(setup.instrument)}};
  if (const auto error = obstacle(channel, prediction)) {
    json["error"] = error->text();
    return json;
  }
  json["unshunted_output_mV_per_V"] = jsonNumber(prediction.zero->base() * 1e3);
  json["steps"] = Json::array();
  for (std::size_t step = 0; step < prediction.steps.size(); ++step)
    json["steps"].push_back(stepJson(setup, step, prediction.steps[step]));
  return json;
}

std::string channelText(const core::Channel& channel, const core::SetupPrediction& prediction) {
  std::string text =
      channel.name + ": " + std::string(core::templateOf(channel.setup.bridge.type).name) + "\n";
  if (obstacle(channel, prediction)) return text + "not predicted\n";
  text += textOf(core::planTable(channel.setup, prediction));
  for (std::size_t step = 0; step < prediction.steps.size(); ++step)
    if (!prediction.steps[step])
      text += "step " + std::to_string(step + 1) + ": " + prediction.steps[step].error().text() + "\n";
  return text;
}

int predict(const Options& options) {
  const auto document = openDocument(options.file);
  if (!document) return fail(document.error());
  const auto chosen = channelsNamed(*document, options.channel);
  if (!chosen) return fail(chosen.error());
  Json json{{"channels", Json::array()}};
  std::string text;
  Exit exit = AllPass;
  std::size_t steps = 0;
  for (const std::size_t index : *chosen) {
    const core::Channel& channel = *document->channels[index];
    const core::SetupPrediction prediction = core::predict(channel.setup);
    if (const auto error = obstacle(channel, prediction)) {
      note(error->text());
      exit = BadInput;
    }
    steps += prediction.steps.size();
    json["channels"].push_back(channelJson(channel, prediction));
    text += (text.empty() ? "" : "\n") + channelText(channel, prediction);
  }
  if (exit == AllPass && steps == 0)
    return fail({options.file, "there are no steps to predict", "Add steps to a sequence in the window"});
  return options.json ? print(json, exit) : print(text, exit);
}

}  // namespace

void addPredict(CLI::App& cli, Run& chosen) {
  auto options = std::make_shared<Options>();
  CLI::App* command = cli.add_subcommand("predict", "What every step of the plan should show");
  command->add_option("FILE", options->file, "A .bridgecal document")->type_name("")->required();
  command->add_option("--channel", options->channel, "Only the channel of this name")->check(faultOfName);
  command->add_flag("--json", options->json, "JSON instead of tables");
  command->footer(
      "A step that cannot be predicted carries its error and does not hide the others. The exit status is 2\n"
      "when a channel as a whole cannot be predicted, or when there is no step at all.");
  command->callback([options, &chosen] { chosen = [options] { return predict(*options); }; });
}

}  // namespace app
