// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/intake.h"

#include <algorithm>
#include <cassert>
#include <cmath>

#include "core/assess/reading_unit.h"
#include "core/document/edits.h"
#include "core/units/language.h"
#include "core/units/text.h"

namespace core {
namespace {

std::optional<std::size_t> columnCalled(const Recording& recording, const std::string& name) {
  const auto at = std::find_if(recording.columns.begin(), recording.columns.end(),
                               [&](const Column& column) { return column.name == name; });
  if (at == recording.columns.end()) return std::nullopt;
  return static_cast<std::size_t>(at - recording.columns.begin());
}

Result<LevelMatch> matchOf(const Channel& channel, const Column& column, const std::vector<Level>& levels) {
  if (const auto same = requireReadingUnit(channel.setup.instrument, column.unit); !same) return same.error();
  if (levels.empty())
    return Error{"", say("no level was found in the column {1}", {inQuotes(column.name)}),
                 say("Look whether the recording is of this channel")};
  const auto steps = expectedSteps(channel.setup, predict(channel.setup));
  if (!steps) return steps.error();
  return matchLevels(*steps, levels);
}

/// What is not as planned in a run that was taken, and which it is of several; empty when all is as planned.
std::string wordsOnTaken(const LevelMatch& match, RunChoice choice, const Setup& setup,
                         const std::vector<Level>& levels) {
  std::vector<std::string> sentences = matchText({chosenRun(match, choice), {}}, setup, levels);
  if (match.runs.size() > 1)
    sentences.insert(sentences.begin(),
                     say("Run {1} of the {2} in the recording.",
                         {std::to_string(choice.run + 1), std::to_string(match.runs.size())}));
  const bool isWhole = chosenRun(match, choice).stepsWithLevel() == setup.sequence.size();
  if (sentences.size() == 1 && isWhole) return {};
  std::string words;
  for (const std::string& sentence : sentences) words += (words.empty() ? "" : " ") + sentence;
  return words;
}

}  // namespace

std::vector<ColumnUse> columnUses(const Document& document, const Recording& recording) {
  std::vector<ColumnUse> uses;
  for (std::size_t k = 0; k < document.channels.size(); ++k) {
    const Channel& channel = *document.channels[k];
    auto column = columnCalled(recording, channel.recordingColumn);
    if (!column) column = columnCalled(recording, channel.name);
    if (column) uses.push_back({k, *column});
  }
  return uses;
}

ChannelFind findInColumn(const Document& document, const Recording& recording, ColumnUse use,
                         const std::stop_token& stop, const Progress& progress) {
  const Column& column = recording.columns[use.column];
  ChannelFind find{use, findLevels(recording.time, column.values, {}, stop, progress), LevelMatch{}};
  find.match = find.levels ? matchOf(*document.channels[use.channel], column, *find.levels)
                           : Result<LevelMatch>(find.levels.error());
  return find;
}

const RunMatch& chosenRun(const LevelMatch& match, RunChoice choice) {
  const FoundRun& run = match.runs.at(choice.run);
  return choice.other == 0 ? run.best : run.others.at(choice.other - 1);
}

Channel withCheckTaken(Channel channel, const ChannelFind& find, RunChoice choice, const Recording& recording,
                       Check check) {
  assert(find.levels && find.match);
  const RunMatch& run = chosenRun(*find.match, choice);
  const Column& column = recording.columns[find.use.column];
  check.readings = readingsOf(run, *find.levels);
  if (check.remark.empty()) check.remark = wordsOnTaken(*find.match, choice, channel.setup, *find.levels);
  check.otherLevels.clear();
  for (std::size_t k = 0; k < find.levels->size(); ++k) {
    const bool isReading =
        std::find(run.levelOfStep.begin(), run.levelOfStep.end(), std::optional(k)) != run.levelOfStep.end();
    if (!isReading && std::isfinite((*find.levels)[k].mean))
      check.otherLevels.push_back(measuredFrom((*find.levels)[k]));
  }
  if (check.recording) check.recording->column = column.name;
  channel.recordingColumn = column.name == channel.name ? "" : column.name;
  return withCheckAdded(std::move(channel), std::move(check));
}

}  // namespace core
