// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/recording_check.h"

#include <QDate>
#include <QDir>
#include <QFileInfo>
#include <algorithm>

#include "core/document/edits.h"
#include "core/intake/beside_others.h"
#include "ui/safe_file.h"

namespace app {
namespace {

/// A channel with a closed check made from its column, or why there is none.
CheckedChannel checkedChannel(const core::Document& document, const core::Recording& recording,
                              core::ColumnUse use, std::optional<core::RunChoice> wanted,
                              const core::Check& check, const core::Progress& progress) {
  const core::Channel& channel = *document.channels[use.channel];
  CheckedChannel checked{use.channel,
                         channel.name,
                         recording.columns[use.column].name,
                         core::findInColumn(document, recording, use, {}, progress),
                         {},
                         channel,
                         {}};
  const auto way = chosenWay(checked.find, channel.setup, wanted);
  if (!way) {
    core::Error error = way.error();
    error.where = "channel " + channel.name + (error.where.empty() ? "" : ", " + error.where);
    checked.channel = error;
    return checked;
  }
  checked.way = *way;
  core::Channel next = core::withCheckTaken(channel, checked.find, *way, recording, check);
  checked.channel = core::withCheckClosed(std::move(next), channel.checks.size());
  checked.evaluation = core::evaluate(*checked.channel);
  return checked;
}

/// What one channel alone cannot tell goes into the remark of its check too.
void tellThoseApart(const core::Document& document, std::vector<CheckedChannel>& checked) {
  std::vector<CheckedChannel*> taken;
  std::vector<core::ReadChannel> read;
  for (CheckedChannel& one : checked)
    if (one.channel && one.way) {
      taken.push_back(&one);
      read.push_back({one.find, *one.way, document.channels[one.index]->setup});
    }
  const std::vector<std::string> sentences = core::apartFromOthers(read);
  for (std::size_t k = 0; k < taken.size(); ++k) {
    if (sentences[k].empty()) continue;
    taken[k]->apart = sentences[k];
    std::string& remark = taken[k]->channel->checks.back().remark;
    remark += (remark.empty() ? "" : " ") + sentences[k];
  }
}

}  // namespace

core::Result<void> requireCheckNamed(const std::string& name, const std::string& date) {
  if (!date.empty() && !QDate::fromString(QString::fromStdString(date), Qt::ISODate).isValid())
    return core::Error{"--date", "\"" + date + "\" is no date", "Write it as 2026-05-11"};
  if (name.empty()) return core::Error{"--as", "the check needs a name", "Use pre, post or a name"};
  return {};
}

core::Result<core::RecordingReference> referenceTo(const std::string& path, const std::string& home,
                                                   const core::LayoutChoices& choices) {
  const QFileInfo recording(QString::fromStdString(path));
  const QDir folder = QFileInfo(QString::fromStdString(home)).absoluteDir();
  const auto hash = ui::sha256OfFile(recording.filePath());
  if (!hash) return hash.error();
  core::RecordingReference reference;
  reference.path = folder.relativeFilePath(recording.absoluteFilePath()).toStdString();
  reference.size_bytes = static_cast<std::uint64_t>(recording.size());
  reference.sha256 = hash->toStdString();
  reference.readAs = core::textOf(choices);
  return reference;
}

std::vector<CheckedChannel> checkedChannels(const core::Document& document, const core::Recording& recording,
                                            const std::vector<core::ColumnUse>& uses,
                                            const MatchWishes& wanted, const core::Check& check,
                                            const core::Progress& progress) {
  std::vector<CheckedChannel> checked;
  const auto count = static_cast<double>(uses.size());
  for (const core::ColumnUse& use : uses) {
    const auto before = static_cast<double>(checked.size());
    checked.push_back(checkedChannel(
        document, recording, use, wanted.of(document.channels[use.channel]->name), check, [&](double share) {
          if (progress) progress((before + share) / count);
        }));
  }
  tellThoseApart(document, checked);
  return checked;
}

std::vector<std::string> withoutColumn(const core::Document& document,
                                       const std::vector<CheckedChannel>& checked) {
  std::vector<std::string> names;
  for (std::size_t k = 0; k < document.channels.size(); ++k)
    if (std::none_of(checked.begin(), checked.end(), [&](const auto& one) { return one.index == k; }))
      names.push_back(document.channels[k]->name);
  return names;
}

}  // namespace app
