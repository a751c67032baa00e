// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/recording/taking_up.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>

#include "core/document/edits.h"
#include "ui/theme.h"

namespace ui {
namespace {

QString tr(const char* text, const char* comment = nullptr, int n = -1) {
  return QCoreApplication::translate("TakingUp", text, comment, n);
}

QString inWords(const core::Channel& channel, const core::ChannelFind& find) {
  if (!find.match) return toText(find.match.error());
  const std::vector<core::FoundRun>& runs = find.match->runs;
  if (runs.empty())
    return tr("%n level(s), which do not fit the plan", nullptr, static_cast<int>(find.levels->size()));
  if (runs.size() > 1) return tr("%n runs of the sequence", nullptr, static_cast<int>(runs.size()));
  const auto& steps = runs.front().best.levelOfStep;
  const auto given = std::count_if(steps.begin(), steps.end(), [](const auto& level) { return bool(level); });
  QString words = tr("%1 of %2 steps").arg(QString::number(given), QString::number(steps.size()));
  if (runs.front().isAmbiguous()) return tr("%1, but it can be read in more than one way").arg(words);
  for (const core::MatchRemark& remark : runs.front().best.remarks) {
    QString sentence = toQString(core::remarkText(remark, channel.setup, *find.levels));
    if (sentence.endsWith('.')) sentence.chop(1);
    words += ". " + sentence;
  }
  return words;
}

/// The open check of `channel` that was taken from the file `path`, if there is one.
std::optional<std::size_t> earlierCheck(const core::Channel& channel, const std::string& path) {
  for (std::size_t k = channel.checks.size(); k > 0; --k) {
    const core::Check& check = channel.checks[k - 1];
    if (!check.closedWith && check.recording && check.recording->path == path) return k - 1;
  }
  return std::nullopt;
}

core::Channel withFindTaken(const core::Channel& channel, const core::ChannelFind& find,
                            const core::Recording& recording, const core::Check& check) {
  const auto earlier = earlierCheck(channel, check.recording->path);
  core::Channel next = core::withCheckTaken(channel, find, {}, recording, check);
  if (!earlier) return next;
  core::Check& kept = next.checks[*earlier];
  const core::Check& taken = next.checks.back();
  kept.recording = taken.recording;
  kept.readings = taken.readings;
  kept.otherLevels = taken.otherLevels;
  if (kept.remark.empty()) kept.remark = taken.remark;
  next.checks.pop_back();
  return next;
}

}  // namespace

bool isPlain(const core::ChannelFind& find) {
  if (!find.match || find.match->runs.size() != 1) return false;
  const core::FoundRun& run = find.match->runs.front();
  const auto isHarmless = [](const core::MatchRemark& remark) {
    return remark.kind == core::MatchRemarkKind::Extra;
  };
  return !run.isAmbiguous() && std::all_of(run.best.remarks.begin(), run.best.remarks.end(), isHarmless) &&
         std::all_of(run.best.levelOfStep.begin(), run.best.levelOfStep.end(),
                     [](const auto& level) { return bool(level); });
}

QString findsInWords(const core::Document& document, std::span<const core::ChannelFind> finds) {
  QStringList words;
  for (const core::ChannelFind& find : finds) {
    const core::Channel& channel = *document.channels[find.use.channel];
    words << toQString(channel.name) + ": " + inWords(channel, find);
  }
  return words.isEmpty() ? tr("no column belongs to a channel") : words.join("; ");
}

std::optional<core::Document> withFindsTaken(core::Document document, const core::Recording& recording,
                                             std::span<const core::ChannelFind> finds,
                                             const core::Check& check) {
  bool some = false;
  for (const core::ChannelFind& find : finds) {
    if (!isPlain(find)) continue;
    const core::Channel& channel = *document.channels[find.use.channel];
    core::Channel next = withFindTaken(channel, find, recording, check);
    document = core::withChannel(std::move(document), find.use.channel, std::move(next));
    some = true;
  }
  if (!some) return std::nullopt;
  return document;
}

}  // namespace ui
