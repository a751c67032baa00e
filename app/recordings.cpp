// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/recordings.h"

#include <algorithm>
#include <filesystem>

#include "app/files.h"
#include "app/progress_line.h"
#include "core/recording/reader.h"
#include "core/units/text.h"

namespace app {
namespace {

std::string fileName(const std::string& path) { return std::filesystem::path(path).filename().string(); }

core::Result<core::Recording> readWithProgress(const std::string& path, const core::LayoutChoices& choices) {
  ProgressLine line("reading " + fileName(path));
  return core::readRecording(path, choices, {}, [&](double share) { line.show(share); });
}

std::optional<std::size_t> columnCalled(const core::Recording& recording, const std::string& name) {
  for (std::size_t k = 0; k < recording.columns.size(); ++k)
    if (recording.columns[k].name == name) return k;
  return std::nullopt;
}

core::Error noColumn(const core::Recording& recording, const std::string& name) {
  return {"recording", "there is no column \"" + name + "\"", "There are " + columnNames(recording)};
}

std::string counted(std::size_t count, const std::string& one, const std::string& many) {
  return std::to_string(count) + " " + (count == 1 ? one : many);
}

void noteSkipped(const std::string& path, const core::Recording& recording) {
  if (recording.linesSkipped == 0) return;
  const std::size_t lines = recording.linesRead + recording.linesSkipped;
  std::string text = path + ": " + std::to_string(recording.linesSkipped) + " of " +
                     counted(lines, "line", "lines") +
                     (recording.linesSkipped == 1 ? " was skipped" : " were skipped");
  if (!recording.skipped.empty())
    text += ", first line " + std::to_string(recording.skipped.front().line) + ": " +
            recording.skipped.front().reason;
  text += ".";
  if (10 * recording.linesSkipped > lines)
    text += " That is much: look at that line, whether the columns or the time begin anew there.";
  note(text);
}

void noteMissing(const std::string& path, const core::Recording& recording) {
  if (recording.cellsMissing == 0) return;
  std::string text = path + ": " + counted(recording.cellsMissing, "value is missing", "values are missing");
  if (!recording.missing.empty()) {
    const core::MissingCell& first = recording.missing.front();
    text += ", first in line " + std::to_string(first.line) + ", column \"" +
            recording.columns[first.column].name + "\": " + first.reason;
  }
  note(text + ".");
}

}  // namespace

const char* const readAsHelp =
    "How the file is laid out, where the guess is wrong, in words such as \"separator=semicolon "
    "decimal=comma first-row=12 names=10 units=11 time=1 time-form=ms rate=50 unit.3=kN\"; lines and columns "
    "count from 1";

core::Result<core::LayoutChoices> layoutChoices(const std::string& readAs) {
  auto choices = core::choicesFromText(readAs);
  if (choices) return choices;
  core::Error error = choices.error();
  error.where = error.where.empty() ? "--read-as" : "--read-as, " + error.where;
  return error;
}

core::Result<core::Recording> openRecording(const std::string& path, const core::LayoutChoices& choices) {
  if (auto usable = requireRegularFile(path); !usable) return usable.error();
  auto recording = readWithProgress(path, choices);
  if (!recording) {
    core::Error error = recording.error();
    if (error.mend.find("time column") != std::string::npos)
      error.mend +=
          ". Here: --read-as rate=100 for 100 samples a second, or --read-as time=2 for the column of the "
          "time";
    // The core knows the file by its name alone.
    if (const std::string name = fileName(path); error.where.starts_with(name))
      error.where.replace(0, name.size(), path);
    return error.where.starts_with(path) ? error : inFile(path, std::move(error));
  }
  noteSkipped(path, *recording);
  noteMissing(path, *recording);
  return recording;
}

std::string columnNames(const core::Recording& recording) {
  std::vector<std::string> names;
  for (const core::Column& column : recording.columns) names.push_back(column.name);
  return listed(names);
}

core::Result<std::vector<std::size_t>> columnsNamed(const core::Recording& recording,
                                                    const std::string& name) {
  if (!name.empty()) {
    const auto column = columnCalled(recording, name);
    if (!column) return noColumn(recording, name);
    return std::vector<std::size_t>{*column};
  }
  std::vector<std::size_t> all;
  for (std::size_t k = 0; k < recording.columns.size(); ++k) all.push_back(k);
  return all;
}

core::Result<std::vector<core::ColumnUse>> channelColumns(const core::Document& document,
                                                          const core::Recording& recording,
                                                          const std::string& channel,
                                                          const std::string& column) {
  const auto chosen = channelsNamed(document, channel);
  if (!chosen) return chosen.error();
  if (!column.empty()) {
    const auto named = columnCalled(recording, column);
    if (!named) return noColumn(recording, column);
    return std::vector<core::ColumnUse>{{chosen->front(), *named}};
  }
  std::vector<core::ColumnUse> uses;
  for (const core::ColumnUse& use : core::columnUses(document, recording))
    if (std::find(chosen->begin(), chosen->end(), use.channel) != chosen->end()) uses.push_back(use);
  if (!uses.empty()) return uses;
  if (channel.empty())
    return core::Error{"recording", "no column has the name of a channel",
                       "Name columns after channels, or use --channel with --column or a recording of one "
                       "column; columns are " +
                           columnNames(recording)};
  if (recording.columns.size() == 1) {
    note("the only column, " + core::inQuotes(recording.columns.front().name) + ", is taken for " + channel +
         ".");
    return std::vector<core::ColumnUse>{{chosen->front(), 0}};
  }
  return noColumn(recording, channel);
}

void noteFurtherColumns(const core::Document& document, const core::Recording& recording,
                        const std::vector<core::ColumnUse>& uses) {
  for (const core::ColumnUse& use : uses) {
    const std::string& name = recording.columns[use.column].name;
    for (int number = 2;; ++number) {
      const std::string further = name + " (" + std::to_string(number) + ")";
      if (!columnCalled(recording, further)) break;
      const auto isFurther = [&](const auto& channel) { return channel->name == further; };
      if (std::none_of(document.channels.begin(), document.channels.end(), isFurther))
        note("the recording has a further column \"" + name + "\", numbered \"" + further +
             "\": it was left out, the first was judged.");
    }
  }
}

void addAccount(Json& json, const core::Recording& recording, const core::LayoutChoices& choices) {
  json["read_as"] = core::textOf(choices);
  json["lines_read"] = recording.linesRead;
  json["lines_skipped"] = recording.linesSkipped;
  json["skipped"] = Json::array();
  for (const core::SkippedLine& line : recording.skipped)
    json["skipped"].push_back({{"line", line.line}, {"reason", line.reason}});
  json["cells_missing"] = recording.cellsMissing;
  json["missing"] = Json::array();
  for (const core::MissingCell& cell : recording.missing)
    json["missing"].push_back(
        {{"line", cell.line}, {"column", recording.columns[cell.column].name}, {"reason", cell.reason}});
}

}  // namespace app
