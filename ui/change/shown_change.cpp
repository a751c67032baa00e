// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/change/shown_change.h"

#include <QCoreApplication>
#include <algorithm>

#include "ui/change/change_words.h"

namespace ui {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("ui::ShownChange", text); }

}  // namespace

std::optional<ChangePair> changePairOf(const Session& session) {
  const core::Channel* channel = session.channel();
  if (!channel || channel->checks.size() < 2) return std::nullopt;
  const Selection& chosen = session.selection();
  if (chosen.check && chosen.compared) {
    const auto [before, after] = std::minmax(*chosen.check, *chosen.compared);
    return ChangePair{before, after};
  }
  return ChangePair{channel->checks.size() - 2, channel->checks.size() - 1};
}

QString whatIsMissingToCompare(const Session& session) {
  const core::Channel* channel = session.channel();
  if (!channel) return tr("No channel yet.");
  if (channel->checks.empty())
    return tr("No check yet. It takes two checks of the channel to see what changed.");
  if (channel->checks.size() == 1)
    return tr("Only one check yet. Repeat the sequence as a second check to see what changed.");
  return {};
}

void comparePair(Session& session, ChangePair pair) {
  session.selectCheck(pair.after);
  session.compareWith(pair.before);
}

ShownChange shownChange(std::shared_ptr<const core::Channel> channel,
                        const core::ChannelEvaluation& evaluation, ChangePair pair) {
  ShownChange shown;
  shown.comparison = core::compare(*channel, evaluation, pair.before, pair.after);
  if (channel->checks.size() > 2) shown.trend = core::trendOf(*channel, evaluation);
  shown.pair = pair;
  shown.unit = core::readingUnitText(core::setupOf(*channel, channel->checks[pair.before]).instrument);
  shown.channel = std::move(channel);
  return shown;
}

QString stepName(const core::Setup& setup, std::size_t step) {
  const QString number = QString::number(step + 1);
  if (step >= setup.sequence.size() || setup.sequence[step].label.empty()) return number;
  return number + "  " + toQString(setup.sequence[step].label);
}

QString stepSentence(const ShownChange& shown, std::size_t step) {
  if (step >= shown.comparison.steps.size()) return {};
  const core::StepComparison& one = shown.comparison.steps[step];
  QString words = toQString(one.reason);
  if (words.isEmpty())
    words = one.moved ? differenceSentence(*one.moved, {1, toQString(shown.unit)}) : tr("Not compared.");
  return tr("Step %1: %2").arg(stepName(shown.setupBefore(), step), words);
}

}  // namespace ui
