// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/outcome/shown_outcome.h"

#include <QCoreApplication>
#include <algorithm>

#include "ui/theme.h"

namespace ui {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("ui::ShownOutcome", text); }

}  // namespace

std::vector<std::size_t> ShownOutcome::checks() const {
  if (pair) return {pair->before, pair->after};
  if (check) return {*check};
  return {};
}

ShownOutcome shownOutcome(const Session& session) {
  ShownOutcome shown;
  shown.channel = session.channel();
  if (!shown.channel) return shown;
  shown.evaluation = session.evaluation();
  const Selection& chosen = session.selection();
  shown.check = chosen.check;
  shown.step = chosen.step;
  shown.drawn = session.shownPrediction().zero && !session.shownSetup().sequence.empty();
  if (chosen.check && chosen.compared) {
    const auto [before, after] = std::minmax(*chosen.check, *chosen.compared);
    shown.pair = CheckPair{before, after, core::compare(*shown.channel, *shown.evaluation, before, after)};
  }
  return shown;
}

QString whatIsMissing(const Session& session) {
  if (!session.channel()) return tr("No channel yet. Add a channel to see its outcome here.");
  if (const auto& zero = session.shownPrediction().zero; !zero)
    return tr("Cannot be predicted. %1").arg(toText(zero.error()));
  if (session.shownSetup().sequence.empty())
    return tr("The channel has no steps yet. Add steps to its sequence.");
  const core::Check* check = session.check();
  if (!check && !session.channel()->checks.empty())
    return tr("Plan only: choose a check to see its outcome.");
  if (!check) return tr("No check yet. Add a check and enter its readings; the plan is drawn meanwhile.");
  if (!core::hasReading(*check)) return tr("The check has no readings yet; the plan is drawn meanwhile.");
  return {};
}

}  // namespace ui
