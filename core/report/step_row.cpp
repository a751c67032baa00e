// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/step_row.h"

#include <cmath>

#include "core/units/language.h"

namespace core {
namespace {

std::string closedNames(const Setup& setup, const Step& step) {
  std::string names;
  for (const std::size_t shunt : step.closed) {
    if (!names.empty()) names += ", ";
    names += shunt < setup.shunts.size() ? setup.shunts[shunt].name : say("unknown shunt");
  }
  return names.empty() ? say("none") : names;
}

std::optional<double> base(const std::optional<Reading>& reading) {
  return reading ? std::optional(reading->base()) : std::nullopt;
}

void addUncertainty(StepRow& row, const Budget& budget) {
  if (const auto& chain = budget.of(Scope::Chain).steps[row.step]) {
    row.expandedChain = chain->expanded;
    row.coverageChain = chain->coverageFactor;
  } else {
    row.notBudgeted = chain.error().text();
  }
  if (const auto& strain = budget.of(Scope::Strain).steps[row.step]) {
    row.expandedStrain = strain->expanded;
    row.coverageStrain = strain->coverageFactor;
  } else if (row.notBudgeted.empty()) {
    row.notBudgeted = strain.error().text();
  }
}

void addJudgement(StepRow& row, const StepAssessment& judged) {
  row.change = base(judged.change);
  row.deviation = base(judged.deviation);
  row.limit = base(judged.limit);
  row.decided = judged.decided;
  row.verdict = judged.verdict;
  row.reason = judged.reason;
  if (row.change && !std::isfinite(*row.change)) row.reason = say("The reading is no finite number.");
}

void addReading(StepRow& row, const Check& check) {
  if (row.step >= check.readings.size() || !check.readings[row.step]) return;
  const Measured& measured = *check.readings[row.step];
  row.reading = measured.mean.base();
  row.uncertainty = base(measured.uncertainty);
}

}  // namespace

std::vector<StepRow> plannedRows(const Setup& setup, const SetupPrediction& prediction,
                                 const Budget& budget) {
  std::vector<StepRow> rows(setup.sequence.size());
  for (std::size_t step = 0; step < rows.size(); ++step) {
    StepRow& row = rows[step];
    const Step& planned = setup.sequence[step];
    row.step = step;
    row.label = planned.label;
    row.closed = closedNames(setup, planned);
    row.hold = planned.hold;
    row.settle = planned.settle;
    const Result<Prediction>& predicted = prediction.steps[step];
    if (!predicted) {
      row.reason = say("Cannot be predicted: {1}", {predicted.error().text()});
      continue;
    }
    row.polarity = predicted->polarity;
    row.simulated = simulatedInUnit(setup.bridge, predicted->simulated);
    row.output = predicted->output;
    row.expected = predicted->reading.base();
    addUncertainty(row, budget);
  }
  return rows;
}

std::vector<StepRow> stepRows(const Channel& channel, const ChannelEvaluation& evaluation,
                              std::size_t check) {
  const CheckEvaluation& judged = evaluation.checks[check];
  std::vector<StepRow> rows =
      plannedRows(setupOf(channel, channel.checks[check]), judged.prediction, judged.budget);
  for (StepRow& row : rows) {
    addReading(row, channel.checks[check]);
    addJudgement(row, judged.assessment.steps[row.step]);
    const Result<Line>& line = judged.assessment.line;
    if (line && row.change && row.simulated)
      row.residual = *row.change - (line->intercept + line->slope * *row.simulated);
  }
  return rows;
}

}  // namespace core
