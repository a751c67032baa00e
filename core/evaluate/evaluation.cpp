// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evaluate/evaluation.h"

#include <algorithm>

#include "core/units/language.h"

namespace core {
namespace {

bool hasReading(const Check& check) {
  return std::any_of(check.readings.begin(), check.readings.end(),
                     [](const auto& reading) { return bool(reading); });
}

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

}  // namespace

ChannelEvaluation evaluate(const Channel& channel) {
  ChannelEvaluation evaluation;
  evaluation.prediction = predict(channel.setup);
  evaluation.budget = budgetOf(channel.setup, evaluation.prediction);
  evaluation.checks.reserve(channel.checks.size());
  for (const Check& check : channel.checks) {
    const Setup& setup = setupOf(channel, check);
    SetupPrediction prediction = check.closedWith ? predict(setup) : evaluation.prediction;
    Budget budget = check.closedWith ? budgetOf(setup, prediction) : evaluation.budget;
    CheckAssessment assessment = assess(setup, prediction, budget, check);
    evaluation.checks.push_back({std::move(prediction), std::move(budget), std::move(assessment)});
  }
  summarise(channel, evaluation);
  return evaluation;
}

}  // namespace core
