// SPDX-License-Identifier: GPL-3.0-or-later
#include <CLI/CLI.hpp>
#include <QDate>
#include <QDir>
#include <QFileInfo>
#include <algorithm>
#include <map>
#include <memory>

#include "app/check_output.h"
#include "app/commands.h"
#include "app/files.h"
#include "app/output.h"
#include "app/recordings.h"
#include "core/document/edits.h"
#include "core/document/json_writer.h"
#include "ui/safe_file.h"

namespace app {
namespace {

struct Options {
  std::string file;
  std::string recording;
  std::string name = "pre";
  std::string channel;
  std::string date;
  std::string person;
  std::string save;
  bool json = false;
};

core::Result<void> requireUsable(const Options& options) {
  if (!options.date.empty() &&
      !QDate::fromString(QString::fromStdString(options.date), Qt::ISODate).isValid())
    return core::Error{"--date", "\"" + options.date + "\" is no date", "Write it as 2026-05-11"};
  if (options.name.empty()) return core::Error{"--as", "the check needs a name", "Use pre, post or a name"};
  const QFileInfo out(QString::fromStdString(options.save));
  const QFileInfo recording(QString::fromStdString(options.recording));
  if (!options.save.empty() && out.exists() && out.canonicalFilePath() == recording.canonicalFilePath())
    return core::Error{options.save, "the document would replace the recording", "Save under another name"};
  return {};
}

/// The recording as the document will refer to it: relative to where the document is.
core::Result<core::RecordingReference> referenceTo(const Options& options) {
  const std::string& home = options.save.empty() ? options.file : options.save;
  const QFileInfo recording(QString::fromStdString(options.recording));
  const QDir folder = QFileInfo(QString::fromStdString(home)).absoluteDir();
  const auto hash = ui::sha256OfFile(recording.filePath());
  if (!hash) return hash.error();
  core::RecordingReference reference;
  reference.path = folder.relativeFilePath(recording.absoluteFilePath()).toStdString();
  reference.size_bytes = static_cast<std::uint64_t>(recording.size());
  reference.sha256 = hash->toStdString();
  return reference;
}

/// The channels with their new check, those that could not be checked with the reason.
core::Result<std::vector<CheckedChannel>> checkedChannels(const Options& options,
                                                          const core::Document& document) {
  const auto recording = openRecording(options.recording);
  if (!recording) return recording.error();
  const auto pairs = channelColumns(document, *recording, options.channel);
  if (!pairs) return pairs.error();
  noteFurtherColumns(document, *recording, *pairs);
  const auto reference = referenceTo(options);
  if (!reference) return reference.error();
  core::Check check;
  check.name = fullCheckName(options.name);
  check.date = options.date;
  check.person = options.person;
  check.recording = *reference;
  std::vector<CheckedChannel> checked;
  for (const ChannelColumn& pair : *pairs) {
    const core::Channel& channel = *document.channels[pair.channel];
    checked.push_back({pair.channel,
                       channel.name,
                       recording->columns[pair.column].name,
                       withCheckFrom(channel, *recording, pair.column, check),
                       {}});
    if (const auto& next = checked.back().channel) checked.back().evaluation = core::evaluate(*next);
  }
  return checked;
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

int save(const std::string& path, core::Document document, const std::vector<CheckedChannel>& checked) {
  for (const CheckedChannel& one : checked)
    document = core::withChannel(std::move(document), one.index, *one.channel);
  const auto text = core::writeDocument(document);
  if (!text) return fail(inFile(path, text.error()));
  const auto done = ui::saveBytes(QString::fromStdString(path), QByteArray::fromStdString(*text));
  return done ? AllPass : fail(done.error());
}

/// Says which channels of the document the recording does not have.
std::vector<std::string> unchecked(const core::Document& document,
                                   const std::vector<CheckedChannel>& checked) {
  std::vector<std::string> names;
  for (std::size_t k = 0; k < document.channels.size(); ++k)
    if (std::none_of(checked.begin(), checked.end(), [&](const auto& one) { return one.index == k; }))
      names.push_back(document.channels[k]->name);
  return names;
}

int check(const Options& options) {
  if (const auto usable = requireUsable(options); !usable) return fail(usable.error());
  const auto document = openDocument(options.file);
  if (!document) return fail(document.error());
  const auto checked = checkedChannels(options, *document);
  if (!checked) return fail(checked.error());
  const auto missing = options.channel.empty() ? unchecked(*document, *checked) : std::vector<std::string>{};
  if (!missing.empty()) note("the recording has no column for " + listed(missing) + ", not checked.");
  const core::Date day = core::dateFromText(options.date).value_or(today());
  for (const CheckedChannel& one : *checked)
    if (!one.channel)
      note(one.channel.error().text());
    else
      noteOverdue(one.name, one.channel->setup, day);

  Exit exit = exitOf(*checked);
  bool saved = false;
  if (!options.save.empty() && exit == BadInput) note("nothing was saved.");
  if (!options.save.empty() && exit != BadInput) {
    saved = save(options.save, *document, *checked) == AllPass;
    if (!saved) exit = BadInput;
    if (saved) noteOtherNames(fullCheckName(options.name), *checked);
  }
  if (options.json) return print(checkJson(*checked, missing, saved ? options.save : ""), exit);
  return print(checkText(*checked) + (saved ? "\nSaved: " + options.save + "\n" : ""), exit);
}

}  // namespace

void addCheck(CLI::App& cli, Run& chosen) {
  auto options = std::make_shared<Options>();
  CLI::App* command = cli.add_subcommand("check", "Judges a recording by the plan");
  command->add_option("FILE", options->file, "A .bridgecal document")->type_name("")->required();
  command->add_option("--recording", options->recording, "Recording of the check, a column a channel")
      ->required();
  command->add_option("--as", options->name, "Name of the check: pre, post or any other; pre without it");
  command
      ->add_option("--channel", options->channel,
                   "Only this channel; a recording with a single column may name it as it likes")
      ->check(faultOfName);
  command->add_option("--date", options->date, "Date of the check, as 2026-05-11");
  command->add_option("--person", options->person, "Who ran it");
  command->add_option("--save", options->save,
                      "Write the document with the check added and closed; without it nothing is written");
  command->add_flag("--json", options->json, "JSON instead of tables");
  command->footer(
      "Columns belong to the channels of their name. The levels found are matched with the steps in order;\n"
      "there must be as many. Each channel is judged by the decision rule of its plan. The exit status is 0\n"
      "when all channels pass, 1 when one fails, cannot tell (its uncertainty is too large for the rule) or\n"
      "cannot be judged in full, 2 when one cannot be read from the recording; then nothing is saved.");
  command->callback([options, &chosen] { chosen = [options] { return check(*options); }; });
}

}  // namespace app
