// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/budget/trial_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>

#include "ui/budget/budget_words.h"
#include "ui/quantity_edit.h"
#include "ui/theme.h"

namespace ui {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(ui::TrialWords)
};

/// The numbers of one step with as many places as its uncertainty calls for, one more than that has.
class Shown {
 public:
  explicit Shown(const TrialView& view)
      : m_decimals(std::min(9, twoDigitDecimals(view.linear.standard) + 1)),
        m_unit(toQString(core::scopeUnitText(view.setup, view.scope))) {}

  QString value(double value) const { return fixedNumberText(value, m_decimals) + " " + m_unit; }
  QString uncertainty(double value) const { return twoDigitsText(value) + " " + m_unit; }
  QString interval(core::Interval interval) const {
    return Words::tr("%1 to %2").arg(fixedNumberText(interval.low, m_decimals), value(interval.high));
  }

 private:
  int m_decimals;
  QString m_unit;
};

core::Interval intervalOf(const core::StepUncertainty& linear) {
  return {linear.value - linear.expanded, linear.value + linear.expanded};
}

core::Entry entry(const QString& name, const QString& value) {
  return {name.toStdString(), value.toStdString()};
}

QString countText(const core::TrialResult& result) {
  const QString count = QLocale().toString(static_cast<qulonglong>(result.trials));
  return result.settled ? Words::tr("%1, settled to two digits").arg(count)
                        : Words::tr("%1, not settled to two digits").arg(count);
}

QString withoutResult(const TrialRunner& runner) {
  if (runner.isRunning())
    return Words::tr("At work: drawing all inputs and solving the network for each step.");
  if (runner.isOutdated())
    return Words::tr("The set-up was changed: the trials made before are out of date and were cleared.");
  if (runner.wasCancelled()) return Words::tr("Cancelled: nothing was kept of the run.");
  return Words::tr(
      "No trials yet: only the normal curve of the budget is drawn. One run serves all steps in this scope.");
}

}  // namespace

const core::TrialOutput* outputOf(const core::ChannelTrials& trials, std::size_t step) {
  const auto found = std::find(trials.steps.begin(), trials.steps.end(), step);
  return found == trials.steps.end()
             ? nullptr
             : &trials.result.outputs[static_cast<std::size_t>(found - trials.steps.begin())];
}

QString comparisonSentence(const TrialView& view, const core::TrialOutput& output) {
  const Shown shown(view);
  if (!(view.linear.standard > 0)) return Words::tr("The budget has no uncertainty to compare with.");
  const core::Validation compared = core::validateInterval(intervalOf(view.linear), output.symmetric,
                                                           view.linear.standard, core::validatedDigits);
  const QString ends = Words::tr("its ends differ by %1 and %2")
                           .arg(twoDigitsText(compared.low), shown.uncertainty(compared.high));
  const QString allowed = shown.uncertainty(compared.tolerance);
  if (compared.passed)
    return Words::tr("Linear interval confirmed to one digit of u: %1, at most %2 is allowed.")
        .arg(ends, allowed);
  return Words::tr(
             "Linear interval not confirmed to one digit of u: %1, more than %2. Use the trials' interval.")
      .arg(ends, allowed);
}

QString trialSentence(const TrialRunner& runner, const TrialView& view) {
  if (view.setup.sequence[view.step].closed.empty())
    return Words::tr("A zero step has no trials: what it shares with the zero reading cancels.");
  if (!runner.outcome()) return withoutResult(runner);
  const TrialRunner::Outcome& outcome = *runner.outcome();
  if (!outcome) return Words::tr("No trials: %1").arg(toText(outcome.error()));
  const core::TrialOutput* output = outputOf(*outcome, view.step);
  if (!output) return Words::tr("The trials left this step out.");
  return comparisonSentence(view, *output);
}

std::vector<core::Entry> trialFigures(const core::ChannelTrials& trials, const TrialView& view,
                                      const core::TrialOutput& output) {
  const Shown shown(view);
  const QString coverage = coverageText(view.setup.decision.coverage);
  return {entry(Words::tr("Trials"), countText(trials.result)),
          entry(Words::tr("Mean"), shown.value(output.mean)),
          entry(Words::tr("u of the trials"), Words::tr("%1; budget %2")
                                                  .arg(shown.uncertainty(output.standardUncertainty),
                                                       shown.uncertainty(view.linear.standard))),
          entry(Words::tr("Symmetric, %1").arg(coverage), shown.interval(output.symmetric)),
          entry(Words::tr("Shortest, %1").arg(coverage), shown.interval(output.shortest)),
          entry(Words::tr("Budget, %1").arg(coverage), shown.interval(intervalOf(view.linear)))};
}

}  // namespace ui
