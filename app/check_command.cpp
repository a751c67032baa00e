// SPDX-License-Identifier: GPL-3.0-or-later
#include <CLI/CLI.hpp>
#include <algorithm>
#include <map>
#include <memory>

#include "app/check_output.h"
#include "app/commands.h"
#include "app/diagnosis_output.h"
#include "app/files.h"
#include "app/match_output.h"
#include "app/output.h"
#include "app/progress_line.h"
#include "app/recording_check.h"
#include "app/recordings.h"
#include "app/saving.h"
#include "core/document/edits.h"
#include "core/units/text.h"

namespace app {
namespace {

struct CheckOptions {
  std::string file;
  std::string recording;
  std::string name = "pre";
  std::string channel;
  std::string column;
  std::string readAs;
  std::vector<std::string> match;
  std::string date;
  std::string person;
  std::string save;
  bool json = false;
};

core::Result<void> requireUsable(const CheckOptions& options) {
  if (auto named = requireCheckNamed(options.name, options.date); !named) return named;
  if (!options.column.empty() && options.channel.empty())
    return core::Error{"--column", "it names the column of one channel", "Add --channel with that channel"};
  return requireOther(options.save, options.recording, "recording");
}

/// Diagnoses the new checks that call for it.
void diagnoseChecks(std::vector<CheckedChannel>& checked) {
  std::vector<core::DiagnosisTask> tasks;
  std::vector<CheckedChannel*> diagnosed;
  for (CheckedChannel& one : checked) {
    if (!one.channel) continue;
    const core::Check& check = one.channel->checks.back();
    const core::CheckEvaluation& judged = one.evaluation.checks.back();
    if (!core::callsForDiagnosis(check, judged.assessment)) continue;
    tasks.push_back({check.closedWith.get(), &judged.prediction, &judged.budget, &check});
    diagnosed.push_back(&one);
  }
  std::vector<core::Diagnosis> diagnoses = diagnosesWithProgress(tasks);
  for (std::size_t k = 0; k < diagnosed.size(); ++k) diagnosed[k]->diagnosis = std::move(diagnoses[k]);
}

std::vector<CheckedChannel> checkedWithProgress(const core::Document& document,
                                                const core::Recording& recording,
                                                const std::vector<core::ColumnUse>& uses,
                                                const MatchWishes& wanted, const core::Check& check) {
  ProgressLine line("channels");
  return checkedChannels(document, recording, uses, wanted, check, [&](double share) { line.show(share); });
}

/// The channels with their new check, those that could not be checked with the reason.
core::Result<std::vector<CheckedChannel>> judgedChannels(const CheckOptions& options,
                                                         const core::Document& document) {
  const auto choices = layoutChoices(options.readAs);
  if (!choices) return choices.error();
  const auto wanted = matchWishes(options.match, document);
  if (!wanted) return wanted.error();
  const auto recording = openRecording(options.recording, *choices);
  if (!recording) return recording.error();
  const auto uses = channelColumns(document, *recording, options.channel, options.column);
  if (!uses) return uses.error();
  noteFurtherColumns(document, *recording, *uses);
  const auto reference =
      referenceTo(options.recording, options.save.empty() ? options.file : options.save, *choices);
  if (!reference) return reference.error();
  core::Check check;
  check.name = fullCheckName(options.name);
  check.date = options.date;
  check.person = options.person;
  check.recording = *reference;
  std::vector<CheckedChannel> checked = checkedWithProgress(document, *recording, *uses, *wanted, check);
  diagnoseChecks(checked);
  return checked;
}

/// Says what is not as planned in what was taken, or why nothing was.
void noteFindings(const CheckedChannel& one, const core::Setup& planned, core::Date day) {
  if (!one.channel) {
    note(one.channel.error().text());
    return;
  }
  for (const std::string& remark : remarksOf(one.find, *one.way, planned)) note(one.name + ": " + remark);
  if (!one.apart.empty()) note(one.name + ": " + one.apart);
  noteOverdue(one.name, one.channel->setup, day);
}

/// `names` of channels, each with the column that it remembers: TP-01 (column "CH 7").
std::vector<std::string> withColumns(const core::Document& document, std::vector<std::string> names) {
  for (std::string& name : names)
    for (const auto& channel : document.channels)
      if (channel->name == name && !channel->recordingColumn.empty()) {
        name += " (column " + core::inQuotes(channel->recordingColumn) + ")";
        break;
      }
  return names;
}

/// Says where the check could not have its name, since an earlier one has it.
void noteOtherNames(const std::string& wanted, const std::vector<CheckedChannel>& checked) {
  std::map<std::string, std::vector<std::string>> channelsByName;
  for (const CheckedChannel& one : checked)
    channelsByName[one.channel->checks.back().name].push_back(one.name);
  for (const auto& [name, channels] : channelsByName)
    if (name != wanted)
      note("there is already a check \"" + wanted + "\" in " + listed(channels) + ", the new one is \"" +
           name + "\".");
}

/// Saves the document with the checks, and with an entry of its history by who ran them.
int save(const std::string& path, const core::Document& before, const std::vector<CheckedChannel>& checked,
         const CheckOptions& options) {
  core::Document document = before;
  for (const CheckedChannel& one : checked)
    document = core::withChannel(std::move(document), one.index, *one.channel);
  const auto done = saveRevised(path, std::move(document), before, options.person);
  return done ? AllPass : fail(done.error());
}

int check(const CheckOptions& options) {
  if (const auto usable = requireUsable(options); !usable) return fail(usable.error());
  const auto document = openDocument(options.file);
  if (!document) return fail(document.error());
  const auto checked = judgedChannels(options, *document);
  if (!checked) return fail(checked.error());
  const auto missing =
      options.channel.empty() ? withoutColumn(*document, *checked) : std::vector<std::string>{};
  if (!missing.empty())
    note("the recording has no column for " + listed(withColumns(*document, missing)) + ", not checked.");
  const core::Date day = core::dateFromText(options.date).value_or(today());
  for (const CheckedChannel& one : *checked) noteFindings(one, document->channels[one.index]->setup, day);

  Exit exit = exitOf(*checked);
  bool saved = false;
  if (!options.save.empty() && exit == BadInput) note("nothing was saved.");
  if (!options.save.empty() && exit != BadInput) {
    saved = save(options.save, *document, *checked, options) == AllPass;
    if (!saved) exit = BadInput;
    if (saved) noteOtherNames(fullCheckName(options.name), *checked);
  }
  if (options.json) return print(checkJson(*document, *checked, missing, saved ? options.save : ""), exit);
  return print(checkText(*document, *checked) + (saved ? "\nSaved: " + options.save + "\n" : ""), exit);
}

}  // namespace

void addCheck(CLI::App& cli, Run& chosen) {
  auto options = std::make_shared<CheckOptions>();
  CLI::App* command = cli.add_subcommand("check", "Judges a recording by the plan");
  command->add_option("FILE", options->file, "A .bridgecal document")->type_name("")->required();
  command->add_option("--recording", options->recording, "Recording of the check, a column a channel")
      ->type_name("FILE")
      ->required();
  command->add_option("--as", options->name, "Name of the check: pre, post or any other; pre without it");
  command
      ->add_option("--channel", options->channel,
                   "Only this channel; a recording with a single column may name it as it likes")
      ->check(faultOfName);
  command
      ->add_option("--column", options->column,
                   "Column of the channel that --channel names, where it has another name")
      ->check(faultOfName);
  command->add_option("--read-as", options->readAs, readAsHelp);
  command
      ->add_option(
          "--match", options->match,
          "Which run to take when there are several, or which way to match an ambiguous one: 2, 2.1; "
          "for one channel TP-01=2, and so for each")
      ->allow_extra_args(false)
      ->check(faultOfName);
  command->add_option("--date", options->date, "Date of the check, as 2026-05-11");
  command->add_option("--person", options->person, "Who ran it");
  command
      ->add_option("--save", options->save,
                   "Write the document with the check added and closed; without it nothing is written")
      ->type_name("FILE");
  command->add_flag("--json", options->json, "JSON instead of tables");
  command->footer(
      "Columns belong to the channels of their name, or that remember them. The levels found are laid "
      "beside\n"
      "the steps as a whole: steps that are missing or were done again, other levels, another order and\n"
      "opposite polarity are told, and a step without a level is not judged. With several runs in the\n"
      "recording, or several ways to match them that are about as likely, nothing is guessed: the ways are\n"
      "listed for --match.\n"
      "Each channel is judged by the decision rule of its plan. What may be wrong with channels that do not\n"
      "pass, or are off their line by more than their uncertainties explain, is looked for as by diagnose.\n"
      "The exit status is 0 when all channels pass, 1 when one fails, cannot tell (its uncertainty is too\n"
      "large for the rule) or cannot be judged in full, 2 when one cannot be read from the recording or\n"
      "--match is needed; then nothing is saved.\n"
      "Channels that the recording has no column for are named on standard error and in the JSON as\n"
      "channels_without_column; they are not judged and do not count in the exit status, unless no column\n"
      "belongs to any channel.");
  command->callback([options, &chosen] { chosen = [options] { return check(*options); }; });
}

}  // namespace app
