// SPDX-License-Identifier: GPL-3.0-or-later
#include <CLI/CLI.hpp>
#include <algorithm>
#include <memory>

#include "app/commands.h"
#include "app/diagnosis_output.h"
#include "app/files.h"
#include "app/output.h"
#include "core/evaluate/evaluation.h"
#include "core/report/diagnosis_section.h"

namespace app {
namespace {

struct DiagnoseOptions {
  std::string file;
  std::string channel;
  std::string check;
  bool json = false;
};

/// A check to be diagnosed, with what it is judged by.
struct ChosenCheck {
  const core::Channel* channel;
  const core::Check* check;
  core::SetupPrediction prediction;
  core::Budget budget;

  const core::Setup& setup() const { return core::setupOf(*channel, *check); }
};

const core::Check* checkOf(const core::Channel& channel, const std::string& name) {
  if (name.empty()) return channel.checks.empty() ? nullptr : &channel.checks.back();
  for (const std::string& wanted : {name, fullCheckName(name)})
    for (const core::Check& check : channel.checks)
      if (check.name == wanted) return &check;
  return nullptr;
}

core::Error noCheck(const core::Channel& channel, const std::string& name) {
  const std::string where = "channel " + channel.name;
  if (channel.checks.empty())
    return {where, "it has no check", "Add one with \"check --save\" or in the window"};
  std::vector<std::string> names;
  for (const core::Check& check : channel.checks) names.push_back(check.name);
  return {where, "there is no check \"" + name + "\"", "There are " + listed(names)};
}

/// The check of each channel at `indices` that has it. Fails when none has, and when the one channel that was
/// asked for has not; else channels without it are named on standard error.
core::Result<std::vector<ChosenCheck>> chosenChecks(const core::Document& document,
                                                    const std::vector<std::size_t>& indices,
                                                    const DiagnoseOptions& options) {
  std::vector<ChosenCheck> chosen;
  std::vector<std::string> without;
  for (const std::size_t index : indices) {
    const core::Channel& channel = *document.channels[index];
    const core::Check* check = checkOf(channel, options.check);
    if (!check) {
      if (!options.channel.empty()) return noCheck(channel, options.check);
      without.push_back(channel.name);
      continue;
    }
    const core::Setup& setup = core::setupOf(channel, *check);
    core::SetupPrediction prediction = core::predict(setup);
    core::Budget budget = core::budgetOf(setup, prediction);
    chosen.push_back({&channel, check, std::move(prediction), std::move(budget)});
  }
  const std::string name = options.check.empty() ? "check" : "check \"" + options.check + "\"";
  if (chosen.empty())
    return core::Error{options.file, "no channel has a " + name,
                       options.check.empty() ? "Add one with \"check --save\" or in the window"
                                             : "Leave --check out for the latest check of each channel"};
  if (!without.empty()) note("there is no " + name + " in " + listed(without) + ", not diagnosed.");
  return chosen;
}

/// BadInput when one could not be diagnosed, CheckFailed when something is wrong with one, else AllPass.
Exit exitOf(const std::vector<core::Diagnosis>& diagnoses) {
  Exit exit = AllPass;
  for (const core::Diagnosis& diagnosis : diagnoses) {
    if (diagnosis.result == core::DiagnosisResult::NotPossible)
      exit = BadInput;
    else if (diagnosis.result != core::DiagnosisResult::Healthy)
      exit = std::max(exit, CheckFailed);
  }
  return exit;
}

Json resultJson(const ChosenCheck& chosen, const core::Diagnosis& diagnosis) {
  Json json{{"channel", chosen.channel->name},
            {"check", chosen.check->name},
            {"reading_unit", core::readingUnitText(chosen.setup().instrument)}};
  json.update(diagnosisJson(chosen.setup(), diagnosis));
  return json;
}

int diagnose(const DiagnoseOptions& options) {
  const auto document = openDocument(options.file);
  if (!document) return fail(document.error());
  const auto indices = channelsNamed(*document, options.channel);
  if (!indices) return fail(indices.error());
  const auto chosen = chosenChecks(*document, *indices, options);
  if (!chosen) return fail(chosen.error());
  std::vector<core::DiagnosisTask> tasks;
  for (const ChosenCheck& one : *chosen)
    tasks.push_back({&one.setup(), &one.prediction, &one.budget, one.check});
  const std::vector<core::Diagnosis> diagnoses = diagnosesWithProgress(tasks);
  Json json{{"channels", Json::array()}};
  std::string text;
  for (std::size_t k = 0; k < diagnoses.size(); ++k) {
    const ChosenCheck& one = (*chosen)[k];
    const std::string name = one.channel->name + ", " + one.check->name + ": ";
    if (diagnoses[k].result == core::DiagnosisResult::NotPossible)
      note(name + core::diagnosisSentence(diagnoses[k]));
    if (options.json)
      json["channels"].push_back(resultJson(one, diagnoses[k]));
    else
      text += (text.empty() ? "" : "\n") + name + diagnosisText(one.setup(), diagnoses[k]);
  }
  if (options.json) return print(json, exitOf(diagnoses));
  return print(text + "\n" + std::string(core::suspicionStatement()) + "\n", exitOf(diagnoses));
}

}  // namespace

void addDiagnose(CLI::App& cli, Run& chosen) {
  auto options = std::make_shared<DiagnoseOptions>();
  CLI::App* command = cli.add_subcommand("diagnose", "What may be wrong with channels that were checked");
  command->add_option("FILE", options->file, "A .bridgecal document with checks")->type_name("")->required();
  command->add_option("--channel", options->channel, "Only the channel of this name")->check(faultOfName);
  command
      ->add_option("--check", options->check,
                   "Name of the check, pre and post for pre-test and post-test; the latest of each channel\n"
                   "without it")
      ->check(faultOfName);
  command->add_flag("--json", options->json, "JSON instead of tables");
  command->footer(
      "Possible faults are put into the network of the channel one by one, fitted to the readings and "
      "ranked\n"
      "by how well they explain them and how ordinary they are. A cause is a suspicion until the "
      "measurement\n"
      "that would confirm it has been made; it changes no verdict.\n"
      "\n"
      "Channels without the check are named on standard error and do not count, unless none has it. The "
      "exit\n"
      "status is 0 when nothing calls for a cause, 1 when a cause is found, several cannot be told apart or\n"
      "none fits, 2 when a check has too few readings or no uncertainty, or there is no such check.");
  command->callback([options, &chosen] { chosen = [options] { return diagnose(*options); }; });
}

}  // namespace app
