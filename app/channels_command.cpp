// SPDX-License-Identifier: GPL-3.0-or-later
#include <CLI/CLI.hpp>
#include <algorithm>
#include <memory>

#include "app/commands.h"
#include "app/files.h"
#include "app/output.h"
#include "app/saving.h"
#include "core/campaign/channel_list.h"
#include "ui/safe_file.h"

namespace app {
namespace {

constexpr qint64 greatestList_bytes = qint64{64} * 1024 * 1024;

struct ChannelsOptions {
  std::string file;
  std::string list;
  std::string map;
  std::string like;
  std::string save;
  std::string exported;
};

core::Result<void> requireUsable(const ChannelsOptions& options) {
  if (options.list.empty() == options.exported.empty())
    return core::Error{"", "one of --import and --export is needed", "Say which list is read or written"};
  if (!options.list.empty() && options.like.empty())
    return core::Error{"--like", "it takes a channel to copy", "Name one of the document"};
  if (!options.list.empty() && options.save.empty())
    return core::Error{"--save", "the document with the channels has no name", "Name the file to be written"};
  if (auto other = requireOther(options.exported, options.file, "document"); !other) return other;
  return requireOther(options.save, options.list, "list");
}

core::Result<core::ListTable> openList(const std::string& path) {
  if (auto usable = requireRegularFile(path); !usable) return usable.error();
  const auto bytes = ui::loadBytes(QString::fromStdString(path), greatestList_bytes);
  if (!bytes) return bytes.error();
  auto table = core::readListTable({bytes->constData(), static_cast<std::size_t>(bytes->size())});
  if (!table) return inFile(path, table.error());
  return table;
}

/// "Channel is the name, Leads, ohm is the lead resistance, Colour is ignored."
std::string mappingLine(const core::ListTable& table, const std::vector<core::ListField>& fields) {
  std::vector<std::string> words;
  for (std::size_t k = 0; k < fields.size(); ++k)
    words.push_back(
        "\"" + table.header[k] + "\" " +
        (fields[k] == core::ListField::Ignored ? "is ignored" : "is the " + core::listFieldName(fields[k])));
  return joined(words, ", ") + ".\n";
}

int import(const ChannelsOptions& options, const core::Document& document) {
  const auto like = channelsNamed(document, options.like);
  if (!like)
    return fail(like.error().where == "--channel"
                    ? core::Error{"--like", like.error().what, like.error().mend}
                    : like.error());
  const auto table = openList(options.list);
  if (!table) return fail(table.error());
  const auto fields = core::fieldsFromText(*table, options.map);
  if (!fields) return fail(inFile("--map", fields.error()));
  if (std::find(fields->begin(), fields->end(), core::ListField::Name) == fields->end())
    return fail({options.list, "no column is the name of the channels",
                 "Say which it is, as in --map name=Channel; columns are " + listed(table->header)});
  const auto result = core::withChannelList(document, *table, *fields, *document.channels[like->front()]);
  if (!result) return fail(inFile(options.list, result.error()));
  for (const std::string& sentence : result->told) note(sentence + ".");
  for (const core::Error& refused : result->refused) note(inFile(options.list, refused).text());
  if (!result->refused.empty()) {
    note("nothing was saved.");
    return BadInput;
  }
  if (const auto saved = saveRevised(options.save, result->document, document, ""); !saved)
    return fail(saved.error());
  return print(mappingLine(*table, *fields) + std::to_string(result->added) +
                   (result->added == 1 ? " channel added." : " channels added.") +
                   "\nSaved: " + options.save + "\n",
               AllPass);
}

int channels(const ChannelsOptions& options) {
  if (const auto usable = requireUsable(options); !usable) return fail(usable.error());
  const auto document = openDocument(options.file);
  if (!document) return fail(document.error());
  if (!options.list.empty()) return import(options, *document);
  std::string text = core::channelListCsv(*document);
  if (options.exported != "-") {
    const auto done =
        ui::saveBytes(QString::fromStdString(options.exported), QByteArray::fromStdString(text));
    return done ? AllPass : fail(done.error());
  }
  std::erase(text, '\r');  // lines of standard output end as those of any other command
  return print(text, AllPass);
}

}  // namespace

void addChannels(CLI::App& cli, Run& chosen) {
  auto options = std::make_shared<ChannelsOptions>();
  CLI::App* command = cli.add_subcommand("channels", "Reads channels from a list, or writes them as one");
  command->add_option("FILE", options->file, "A .bridgecal document")->type_name("")->required();
  command->add_option("--import", options->list, "List of channels, a row each, as a spreadsheet saves it")
      ->type_name("FILE");
  command
      ->add_option("--map", options->map,
                   "What columns are, where their headings do not say it: name=Channel,note=5")
      ->check(faultOfName);
  command->add_option("--like", options->like, "Channel whose set-up the new ones begin with");
  command->add_option("--save", options->save, "Write the document with the channels added")
      ->type_name("FILE");
  command->add_option("--export", options->exported, "Write the channels as a list; - for standard output")
      ->type_name("FILE");
  command->footer(
      "Comma, semicolon or tab between, UTF-8, UTF-16 or Windows-1252. Headings are known in English and\n"
      "German, with units such as \"Leads, ohm\" or \"Länge [mm]\"; numbers may have a comma. Fields for "
      "--map:\n"
      "name, group, note, like, template, gauge_resistance, gauge_factor, lead_resistance, lead_length,\n"
      "lead_section, recording_column, unit, instrument, serial, excitation, limit, ignored.\n"
      "A row that is refused is named with its line and field, and nothing is saved then.");
  command->callback([options, &chosen] { chosen = [options] { return channels(*options); }; });
}

}  // namespace app
