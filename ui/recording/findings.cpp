// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/recording/findings.h"

#include <QCoreApplication>
#include <algorithm>

#include "ui/quantity_edit.h"
#include "ui/recording/taking_up.h"
#include "ui/theme.h"

namespace ui {
namespace {

using LevelOfSteps = std::vector<std::optional<std::size_t>>;

QString words(const char* text) { return QCoreApplication::translate("Findings", text); }

const core::RunMatch& readingOf(const core::FoundRun& run, std::size_t reading) {
  return reading == 0 ? run.best : run.others[reading - 1];
}

std::size_t countOf(const LevelOfSteps& levels) {
  return static_cast<std::size_t>(
      std::count_if(levels.begin(), levels.end(), [](const auto& level) { return level.has_value(); }));
}

/// Where all ways to read a run agree.
LevelOfSteps agreedLevels(const core::FoundRun& run) {
  LevelOfSteps agreed = run.best.levelOfStep;
  for (const core::RunMatch& other : run.others)
    for (std::size_t step = 0; step < agreed.size(); ++step)
      if (agreed[step] != other.levelOfStep[step]) agreed[step].reset();
  return agreed;
}

/// "8 of 9 steps have a level"
QString countWords(std::size_t steps, std::size_t all) {
  return steps == all ? words("every step has its level")
                      : words("%1 of %2 steps have a level").arg(steps).arg(all);
}

QStringList remarksOf(const core::RunMatch& match, const Finding& finding, const core::Channel& channel) {
  QStringList remarks;
  for (const core::MatchRemark& remark : match.remarks)
    remarks << toQString(core::remarkText(remark, channel.setup, *finding.find->levels));
  remarks.removeAll(QString());
  return remarks;
}

/// First and last level of a match, counted from 1.
QString levelRange(const core::RunMatch& match) {
  std::optional<std::size_t> first, last;
  for (const auto& level : match.levelOfStep) {
    if (!level) continue;
    first = first ? std::min(*first, *level) : *level;
    last = last ? std::max(*last, *level) : *level;
  }
  if (!first) return words("no level");
  return words("levels %1 to %2").arg(*first + 1).arg(*last + 1);
}

}  // namespace

Finding findingOf(std::shared_ptr<const core::ChannelFind> find) {
  Finding finding{.channel = find->use.channel, .column = find->use.column, .find = std::move(find)};
  chooseRun(finding, 0);
  finding.isTicked = isPlain(*finding.find);
  return finding;
}

void chooseRun(Finding& finding, std::size_t run) {
  finding.run = run;
  finding.byHand.clear();
  finding.reading.reset();
  const core::FoundRun* found = runOf(finding);
  finding.isTicked = found && !found->isAmbiguous();
  if (finding.isTicked) finding.reading = 0;
}

void chooseReading(Finding& finding, std::size_t reading) {
  finding.reading = reading;
  finding.byHand.clear();
  finding.isTicked = true;
}

void giveLevel(Finding& finding, std::size_t level, std::optional<std::size_t> step,
               std::size_t stepsOfPlan) {
  LevelOfSteps levels = levelOfSteps(finding);
  levels.resize(stepsOfPlan);
  for (auto& of : levels)
    if (of == level) of.reset();
  if (step) levels[*step] = level;
  finding.byHand = std::move(levels);
}

const core::FoundRun* runOf(const Finding& finding) {
  if (!finding.find || !finding.find->match || finding.run >= finding.find->match->runs.size())
    return nullptr;
  return &finding.find->match->runs[finding.run];
}

LevelOfSteps levelOfSteps(const Finding& finding) {
  if (!finding.byHand.empty()) return finding.byHand;
  const core::FoundRun* run = runOf(finding);
  if (!run) return {};
  return finding.reading ? readingOf(*run, *finding.reading).levelOfStep : agreedLevels(*run);
}

std::size_t stepsWithLevel(const Finding& finding) { return countOf(levelOfSteps(finding)); }

core::Result<void> requireTakable(const Finding& finding, const core::Channel& channel) {
  if (!finding.column) return core::Error{"", "no column is chosen", ""};
  if (!finding.find) return core::Error{"", "its levels are being looked for", ""};
  if (!finding.find->levels) return finding.find->levels.error();
  if (!finding.find->match) return finding.find->match.error();
  if (!finding.byHand.empty())
    return countOf(finding.byHand) > 0 ? core::Result<void>()
                                       : core::Error{"", "no step has a level", "Give a level to a step"};
  if (!runOf(finding)) return core::noRunError(channel.setup, *finding.find->levels);
  if (!finding.reading)
    return core::Error{"", "the recording can be read in several ways", "Choose below how to read it"};
  return {};
}

core::ChannelFind decided(const Finding& finding) {
  core::ChannelFind find = *finding.find;
  if (finding.byHand.empty()) return find;
  // By hand there may be a run where none was found.
  if (find.match->runs.empty()) find.match->runs.emplace_back();
  core::RunMatch byHand;
  byHand.levelOfStep = finding.byHand;
  find.match->runs[finding.run].best = byHand;
  return find;
}

QString matchWords(const Finding& finding, const core::Channel& channel) {
  if (!finding.column) return words("no column");
  if (!finding.find) return words("looking for levels…");
  if (const auto takable = requireTakable(finding, channel); !takable) {
    const core::FoundRun* run = runOf(finding);
    if (run && finding.byHand.empty())
      return words("ambiguous, %1 ways to read it: choose below").arg(1 + run->others.size());
    return toText(takable.error());
  }
  const std::size_t steps = channel.setup.sequence.size();
  if (!finding.byHand.empty())
    return words("set by hand: %1").arg(countWords(stepsWithLevel(finding), steps));
  const core::RunMatch& match = readingOf(*runOf(finding), *finding.reading);
  QString count = countWords(countOf(match.levelOfStep), steps);
  if (const std::size_t runs = finding.find->match->runs.size(); runs > 1)
    count = words("run %1 of %2: %3").arg(finding.run + 1).arg(runs).arg(count);
  QStringList parts{count};
  parts << remarksOf(match, finding, channel);
  return parts.size() == 1 ? parts.front() : parts.front() + ". " + parts.mid(1).join(" ");
}

QStringList matchSentences(const Finding& finding, const core::Channel& channel) {
  if (!finding.find || !finding.find->levels) return {matchWords(finding, channel)};
  QStringList sentences;
  if (!finding.byHand.empty()) sentences << matchWords(finding, channel) + ".";
  if (const core::FoundRun* run = runOf(finding)) {
    core::FoundRun shown = *run;
    // The words are of the way it is read.
    if (finding.reading && *finding.reading > 0) shown.best = readingOf(*run, *finding.reading);
    for (const std::string& line : core::matchText(shown, channel.setup, *finding.find->levels))
      sentences << toQString(line);
    if (run->isAmbiguous() && !finding.reading && finding.byHand.empty())
      sentences << words("Shown are the steps on which all ways to read it agree.");
  }
  if (sentences.isEmpty()) sentences << matchWords(finding, channel);
  return sentences;
}

QStringList readingWords(const Finding& finding, const core::Channel& channel) {
  QStringList list;
  const core::FoundRun* run = runOf(finding);
  if (!run) return list;
  for (std::size_t k = 0; k <= run->others.size(); ++k) {
    const core::RunMatch& match = readingOf(*run, k);
    QStringList remarks = remarksOf(match, finding, channel);
    if (remarks.isEmpty()) remarks << countWords(countOf(match.levelOfStep), match.levelOfStep.size());
    list << words("%1: %2 (gain %3, misfit %4)")
                .arg(levelRange(match), remarks.join(" "), numberText(match.gain, 4),
                     numberText(match.misfit, 3));
  }
  return list;
}

QStringList runWords(const Finding& finding) {
  QStringList list;
  if (!finding.find || !finding.find->match) return list;
  const auto& levels = *finding.find->levels;
  for (const core::FoundRun& run : finding.find->match->runs) {
    std::optional<double> from, to;
    for (const auto& level : run.best.levelOfStep) {
      if (!level) continue;
      from = from ? std::min(*from, levels[*level].begin_s) : levels[*level].begin_s;
      to = to ? std::max(*to, levels[*level].end_s) : levels[*level].end_s;
    }
    list << words("%1: %2 s to %3 s")
                .arg(QString::number(list.size() + 1), numberText(from.value_or(0), 5),
                     numberText(to.value_or(0), 5));
  }
  return list;
}

}  // namespace ui
