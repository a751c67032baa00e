// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evaluate/evaluation.h"

#include <algorithm>

#include "core/units/language.h"

namespace core {
namespace {

void summarise(const Channel& channel, ChannelEvaluation& evaluation) {
  if (!evaluation.prediction.zero) {
    evaluation.status = say("cannot be predicted");
    return;
  }
  if (channel.setup.sequence.empty()) {
    evaluation.status = say("no steps");
    return;
  }
  evaluation.status = say("not checked");
  for (std::size_t k = channel.checks.size(); k-- > 0;) {
    if (!hasReading(channel.checks[k])) continue;
    evaluation.verdict = evaluation.checks[k].assessment.verdict;
    evaluation.status = channel.checks[k].name + ": " + std::string(verdictWord(evaluation.verdict));
    return;
  }
}

/// What a check that is closed with `setup` is judged by: taken over where the channel or an earlier check
/// has an equal set-up, since most checks are closed with the set-up that the channel keeps.
CheckEvaluation predictedBy(const Setup& setup, const Channel& channel, const ChannelEvaluation& evaluation) {
  if (setup == channel.setup) return {evaluation.prediction, evaluation.budget, {}};
  for (std::size_t k = evaluation.checks.size(); k-- > 0;)
    if (setup == setupOf(channel, channel.checks[k]))
      return {evaluation.checks[k].prediction, evaluation.checks[k].budget, {}};
  CheckEvaluation predicted;
  predicted.prediction = predict(setup);
  predicted.budget = budgetOf(setup, predicted.prediction);
  return predicted;
}

}  // namespace

ChannelEvaluation evaluate(const Channel& channel) {
  ChannelEvaluation evaluation;
  evaluation.prediction = predict(channel.setup);
  evaluation.budget = budgetOf(channel.setup, evaluation.prediction);
  evaluation.checks.reserve(channel.checks.size());
  for (const Check& check : channel.checks) {
    const Setup& setup = setupOf(channel, check);
    CheckEvaluation judged = predictedBy(setup, channel, evaluation);
    judged.assessment = assess(setup, judged.prediction, judged.budget, check);
    evaluation.checks.push_back(std::move(judged));
  }
  summarise(channel, evaluation);
  return evaluation;
}

}  // namespace core
