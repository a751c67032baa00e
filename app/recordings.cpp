// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/recordings.h"

#include <algorithm>

#include "app/files.h"
#include "app/output.h"
#include "core/assess/match_levels.h"
#include "core/document/edits.h"
#include "core/recording/text/delimited_text.h"

namespace app {
namespace {

std::optional<std::size_t> columnCalled(const core::Recording& recording, const std::string& name) {
  for (std::size_t k = 0; k < recording.columns.size(); ++k)
    if (recording.columns[k].name == name) return k;
  return std::nullopt;
}

core::Error noColumn(const core::Recording& recording, const std::string& name) {
  return {"recording", "there is no column \"" + name + "\"", "There are " + columnNames(recording)};
}

}  // namespace

core::Result<core::Recording> openRecording(const std::string& path) {
  if (auto usable = requireRegularFile(path); !usable) return usable.error();
  auto recording = core::readDelimitedFile(path);
  if (!recording) return core::Error{path, recording.error().what, recording.error().mend};
  if (recording->linesSkipped > 0) {
    std::string text = path + ": " + std::to_string(recording->linesSkipped) + " lines were skipped";
    if (!recording->skipped.empty())
      text += ", first line " + std::to_string(recording->skipped.front().line) + ": " +
              recording->skipped.front().reason;
    note(text + ".");
  }
  return recording;
}

std::string columnNames(const core::Recording& recording) {
  std::vector<std::string> names;
  for (const core::Column& column : recording.columns) names.push_back(column.name);
  return listed(names);
}

core::Result<std::size_t> columnNamed(const core::Recording& recording, const std::string& name) {
  if (name.empty()) {
    if (recording.columns.size() == 1) return std::size_t{0};
    return core::Error{"recording",
                       "it takes the name of a column, there are " + std::to_string(recording.columns.size()),
                       "Add --column with one of " + columnNames(recording)};
  }
  const auto column = columnCalled(recording, name);
  if (!column) return noColumn(recording, name);
  return *column;
}

core::Result<std::vector<ChannelColumn>> channelColumns(const core::Document& document,
                                                        const core::Recording& recording,
                                                        const std::string& channel) {
  const auto chosen = channelsNamed(document, channel);
  if (!chosen) return chosen.error();
  std::vector<ChannelColumn> pairs;
  for (const std::size_t index : *chosen) {
    const auto column = columnCalled(recording, document.channels[index]->name);
    if (column) pairs.push_back({index, *column});
  }
  if (!pairs.empty()) return pairs;
  if (channel.empty())
    return core::Error{
        "recording", "no column has the name of a channel",
        "Name columns after channels, or use --channel with a recording of one column; columns are " +
            columnNames(recording)};
  if (recording.columns.size() == 1) return std::vector<ChannelColumn>{{chosen->front(), 0}};
  return noColumn(recording, channel);
}

void noteFurtherColumns(const core::Document& document, const core::Recording& recording,
                        const std::vector<ChannelColumn>& pairs) {
  for (const ChannelColumn& pair : pairs) {
    const std::string& name = recording.columns[pair.column].name;
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

core::Result<core::Channel> withCheckFrom(const core::Channel& channel, const core::Recording& recording,
                                          std::size_t column, core::Check check) {
  const core::Column& source = recording.columns[column];
  const std::string where = "channel " + channel.name;
  const auto placed = [&](core::Error error) {
    error.where = where + (error.where.empty() ? "" : ", " + error.where);
    return error;
  };
  if (const auto same = core::requireReadingUnit(channel.setup.instrument, source.unit); !same)
    return placed(same.error());
  const auto levels = core::findLevels(recording.time, source.values);
  if (!levels) return placed(levels.error());
  auto readings = core::readingsFromLevels(channel.setup, *levels);
  if (!readings) return placed(readings.error());
  check.readings = *std::move(readings);
  if (check.recording) check.recording->column = source.name;
  core::Channel next = core::withCheckAdded(channel, std::move(check));
  return core::withCheckClosed(std::move(next), channel.checks.size());
}

}  // namespace app
