// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/budget/trials.h"

#include "core/budget/trial_model.h"
#include "core/units/language.h"

namespace core {
namespace {

/// Steps that can be drawn: predicted, with an uncertainty, and not a zero step.
std::vector<std::size_t> drawableSteps(const Setup& setup, const SetupPrediction& prediction,
                                       const ScopeBudget& budget) {
  std::vector<std::size_t> steps;
  for (std::size_t step = 0; step < prediction.steps.size(); ++step)
    if (prediction.steps[step] && budget.steps[step] && !setup.sequence[step].closed.empty())
      steps.push_back(step);
  return steps;
}

}  // namespace

Result<ChannelTrials> runChannelTrials(const Setup& setup, const SetupPrediction& prediction,
                                       const Budget& budget, const ChannelTrialOptions& options,
                                       const std::stop_token& stop, const Progress& progress) {
  ChannelTrials trials;
  trials.steps = drawableSteps(setup, prediction, budget.of(options.scope));
  if (trials.steps.empty())
    return Error{say("trials"), say("no step has an uncertainty that could be drawn"),
                 say("Add steps that close a shunt, or mend the statement that is refused")};
  const auto model = TrialModelOfChannel::make(setup, prediction, budget, options.scope, trials.steps);
  if (!model) return model.error();

  TrialPlan plan;
  plan.inputs = model->drawn();
  plan.pairs = model->pairs();
  plan.seed = options.seed;
  plan.coverage = setup.decision.coverage;
  plan.trials = options.trials;
  plan.greatestTrials = options.greatestTrials;
  plan.significantDigits = settledDigits;
  plan.threads = options.threads;
  const TrialModelMaker maker = [&model]() -> TrialModel {
    return [own = *model](const double* inputs, double* values) mutable { own.evaluate(inputs, values); };
  };
  auto result = runTrials(plan, maker, trials.steps.size(), stop, progress);
  if (!result) return result.error();
  trials.result = *std::move(result);
  return trials;
}

}  // namespace core
