// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/recording/findings.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

#include "core/assess/reading_unit.h"
#include "core/intake/beside_others.h"
#include "ui/quantity_edit.h"
#include "ui/recording/taking_up.h"
#include "ui/theme.h"

#include "core/units/language.h"

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

/// "1–3, 5": places counted from 1, in order and each once.
QString rangesText(std::vector<std::size_t> places) {
  std::sort(places.begin(), places.end());
  places.erase(std::unique(places.begin(), places.end()), places.end());
  QStringList ranges;
  for (std::size_t k = 0; k < places.size(); ++k) {
    const std::size_t first = k;
    while (k + 1 < places.size() && places[k + 1] == places[k] + 1) ++k;
    const QString from = QString::number(places[first] + 1), to = QString::number(places[k] + 1);
    ranges << (k == first ? from : from + QStringLiteral("–") + to);
  }
  return ranges.join(", ");
}

bool hasRemark(const core::RunMatch& match, core::MatchRemarkKind kind) {
  return std::any_of(match.remarks.begin(), match.remarks.end(),
                     [&](const core::MatchRemark& remark) { return remark.kind == kind; });
}

/// Some steps: "steps 1, 2, 5 (zero, +1, zero): 3 of 9 steps"; labels only while they are few.
QString someStepsText(const std::vector<std::size_t>& steps, const core::Setup& setup) {
  constexpr std::size_t mostLabels = 3;
  QStringList labels;
  for (const std::size_t step : steps) labels << toQString(setup.sequence[step].label);
  QString text = words(steps.size() == 1 ? "step %1" : "steps %1").arg(rangesText(steps));
  if (steps.size() <= mostLabels && !labels.contains(QString())) text += " (" + labels.join(", ") + ")";
  return words("%1: %2 of %3 steps").arg(text).arg(steps.size()).arg(setup.sequence.size());
}

QString shortReading(const core::RunMatch& match, const core::Setup& setup) {
  std::vector<std::size_t> steps, levels;
  for (std::size_t step = 0; step < match.levelOfStep.size(); ++step) {
    if (!match.levelOfStep[step]) continue;
    steps.push_back(step);
    levels.push_back(*match.levelOfStep[step]);
  }
  if (levels.empty()) return words("no level");
  const bool isReversed = hasRemark(match, core::MatchRemarkKind::Reversed);
  const bool isSwapped = hasRemark(match, core::MatchRemarkKind::Swapped);
  const bool isWhole = steps.size() == match.levelOfStep.size();
  QStringList parts;
  if (isReversed) parts << words("reversed");
  if (isSwapped) parts << words("in another order");
  if (isWhole && parts.isEmpty()) parts << words("as planned");
  if (!isWhole) parts << someStepsText(steps, setup);
  parts << words(levels.size() == 1 ? "level %1" : "levels %1").arg(rangesText(levels));
  return parts.join(", ");
}

/// Root mean square of what the uncertainties of the levels of `match` explain.
double explainedMisfit(const core::RunMatch& match, const std::vector<core::Level>& levels) {
  double squares = 0;
  for (const auto& level : match.levelOfStep)
    if (level) squares += levels[*level].stdUncertainty * levels[*level].stdUncertainty;
  return std::sqrt(squares / static_cast<double>(std::max<std::size_t>(1, countOf(match.levelOfStep))));
}

/// What is said of an ambiguous run that nobody decided about.
QStringList undecidedSentences(const core::FoundRun& run) {
  QStringList sentences{
      words("The levels can be read in %1 ways that are about as likely. Choose above how to read them.")
          .arg(1 + run.others.size())};
  sentences << (countOf(agreedLevels(run)) > 0
                    ? words("Until then the table has only the steps on which all ways agree.")
                    : words("There is no step on which all ways agree."));
  return sentences;
}

}  // namespace

Finding findingOf(std::shared_ptr<const core::ChannelFind> find) {
  Finding finding{.channel = find->use.channel, .column = find->use.column};
  finding.find = std::move(find);
  chooseRun(finding, 0);
  finding.isTicked = isPlain(*finding.find);
  return finding;
}

void tellThoseApart(std::vector<Finding>& findings, const core::Document& document) {
  std::vector<Finding*> matched;
  std::vector<core::ReadChannel> read;
  for (Finding& finding : findings)
    if (finding.reading && runOf(finding)) {
      matched.push_back(&finding);
      read.push_back({*finding.find, {}, document.channels[finding.channel]->setup});
    }
  const std::vector<std::string> sentences = core::apartFromOthers(read);
  for (std::size_t k = 0; k < matched.size(); ++k) {
    matched[k]->apart = sentences[k];
    if (!sentences[k].empty()) matched[k]->isTicked = false;
  }
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
  if (!finding.column) return core::Error{"", core::say("no column is chosen"), ""};
  if (!finding.find) return core::Error{"", core::say("its levels are being looked for"), ""};
  if (!finding.find->levels) return finding.find->levels.error();
  if (!finding.find->match) return finding.find->match.error();
  if (!finding.byHand.empty())
    return countOf(finding.byHand) > 0
               ? core::Result<void>()
               : core::Error{"", core::say("no step has a level"), core::say("Give a level to a step")};
  if (!runOf(finding)) return core::noRunError(channel.setup, *finding.find->levels);
  if (!finding.reading)
    return core::Error{"", core::say("the recording can be read in several ways"),
                       core::say("Choose below how to read it")};
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

namespace {

QString asSentence(QString words) {
  if (!words.isEmpty()) words[0] = words[0].toUpper();
  return words.endsWith('.') ? words : words + ".";
}

QString nearWords(const Finding& finding) {
  return words("column %1 has nearly the channel's name").arg(toQString(finding.nearName));
}

}  // namespace

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
  if (!finding.nearName.empty()) count = nearWords(finding) + ": " + count;
  QStringList parts{count};
  parts << remarksOf(match, finding, channel);
  return parts.size() == 1 ? parts.front() : parts.front() + ". " + parts.mid(1).join(" ");
}

QStringList matchSentences(const Finding& finding, const core::Channel& channel) {
  // What was matched does not hold after a change by hand.
  const core::FoundRun* run = runOf(finding);
  if (!finding.find || !finding.find->levels || !run || !finding.byHand.empty()) {
    return {asSentence(matchWords(finding, channel))};
  }
  if (!finding.reading) return undecidedSentences(*run);
  core::FoundRun shown = *run;
  // The words are of the way it is read.
  shown.best = readingOf(*run, *finding.reading);
  QStringList sentences;
  if (!finding.nearName.empty()) sentences << asSentence(nearWords(finding));
  for (const std::string& line : core::matchText(shown, channel.setup, *finding.find->levels))
    sentences << toQString(line);
  if (!finding.apart.empty() && finding.run == 0) sentences << toQString(finding.apart);
  return sentences;
}

QStringList readingWords(const Finding& finding, const core::Channel& channel) {
  QStringList list;
  const core::FoundRun* run = runOf(finding);
  for (std::size_t k = 0; run && k <= run->others.size(); ++k)
    list << shortReading(readingOf(*run, k), channel.setup);
  return list;
}

QStringList readingSentences(const Finding& finding, const core::Channel& channel) {
  QStringList list;
  const core::FoundRun* run = runOf(finding);
  for (std::size_t k = 0; run && k <= run->others.size(); ++k) {
    const core::RunMatch& match = readingOf(*run, k);
    QStringList sentences = remarksOf(match, finding, channel);
    sentences << words("The gain is %1.").arg(numberText(match.gain, 4));
    // A smaller one is what scatter makes of any match.
    if (match.misfit > 2 * explainedMisfit(match, *finding.find->levels))
      sentences << words("The levels lie %1 %2 off that line.")
                       .arg(numberText(match.misfit, 3),
                            toQString(core::readingUnitText(channel.setup.instrument)));
    list << sentences.join("\n");
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
