// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <vector>

#include "core/report/report.h"
#include "ui/budget/trial_runner.h"

namespace ui {

/// One step of what is on view, as the words about its trials need it.
struct TrialView {
  const core::Setup& setup;
  core::Scope scope;
  std::size_t step;
  const core::StepUncertainty& linear;
};

/// The output of `step` in `trials`; none for a zero step and one that has no uncertainty.
const core::TrialOutput* outputOf(const core::ChannelTrials& trials, std::size_t step);

/// What the runner has for this step: nothing yet and why, that it is at work, why it failed, or whether the
/// trials confirm the interval of the budget.
QString trialSentence(const TrialRunner& runner, const TrialView& view);

/// Clause 8 of JCGM 101:2008 in words: whether the interval of the budget is right to two digits of u.
QString comparisonSentence(const TrialView& view, const core::TrialOutput& output);

/// The numbers of the trials, beside those of the budget.
std::vector<core::Entry> trialFigures(const core::ChannelTrials& trials, const TrialView& view,
                                      const core::TrialOutput& output);

}  // namespace ui
