// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/assess/assessment.h"

#include <algorithm>
#include <cmath>

#include "core/units/notation.h"

namespace core {
namespace {

bool isZeroStep(const Setup& setup, std::size_t step) { return setup.sequence[step].closed.empty(); }

const std::optional<Measured>& readingAt(const Check& check, std::size_t step) {
  static const std::optional<Measured> none;
  return step < check.readings.size() ? check.readings[step] : none;
}

std::string shown(Reading reading, const Setup& setup) {
  return formatNumber(reading.base(), 5) + " " + readingUnitText(setup.instrument);
}

std::optional<std::size_t> zeroReference(const Setup& setup, const Check& check) {
  for (std::size_t step = 0; step < setup.sequence.size(); ++step)
    if (isZeroStep(setup, step) && readingAt(check, step)) return step;
  return std::nullopt;
}

/// Greatest magnitude of all expected readings; what zero return is measured by.
Reading span(const SetupPrediction& prediction) {
  double greatest = 0;
  for (const auto& step : prediction.steps)
    if (step) greatest = std::max(greatest, std::abs(step->reading.base()));
  return Reading(greatest);
}

bool limitsUsable(const Limits& limits) {
  const auto usable = [](double value) { return std::isfinite(value) && value >= 0; };
  return usable(limits.relative) && usable(limits.least.base()) && usable(limits.zeroReturn);
}

bool oppositeSign(Reading change, Reading expected) {
  return change.base() * expected.base() < 0 && std::abs(change / expected) > 0.5;
}

/// What is common to all steps of one check.
struct Ground {
  const Setup& setup;
  const Check& check;
  Reading zero;
  std::optional<std::size_t> zeroStep;
  Reading zeroLimit;
};

std::string stepReason(const Ground& ground, std::size_t step, Reading expected,
                       const StepAssessment& judged) {
  const std::string change = shown(*judged.change, ground.setup);
  const std::string away = shown(Reading(std::abs(judged.deviation->base())), ground.setup);
  const std::string limit = shown(*judged.limit, ground.setup);
  if (!std::isfinite(judged.deviation->base())) return "The reading is no finite number.";
  if (ground.zeroStep == step) return "Zero reference of this check.";
  if (judged.verdict == Verdict::Pass)
    return "Changed by " + change + " from zero, " + away + " from expected, within the limit of " + limit +
           ".";
  if (oppositeSign(*judged.change, expected))
    return "Changed by " + change + " from zero where " + shown(expected, ground.setup) +
           " is expected: opposite polarity. Look for swapped signal wires or a shunt on the neighbouring "
           "arm.";
  return "Changed by " + change + " from zero, " + away + " from expected, beyond the limit of " + limit +
         ".";
}

StepAssessment assessStep(const Ground& ground, std::size_t step, const Result<Prediction>& prediction) {
  StepAssessment judged;
  const auto& measured = readingAt(ground.check, step);
  if (!prediction) {
    judged.reason = "Not judged: " + prediction.error().text();
    return judged;
  }
  if (!measured) {
    judged.reason = "Not judged: no reading.";
    return judged;
  }
  const Limits& limits = ground.setup.limits;
  const Reading expected = prediction->reading;
  judged.change = measured->mean - ground.zero;
  judged.deviation = *judged.change - expected;
  const Reading relative(limits.relative * std::abs(expected.base()));
  judged.limit = isZeroStep(ground.setup, step) ? ground.zeroLimit : std::max(relative, limits.least);
  if (!limitsUsable(limits)) {
    judged.reason = "Not judged: a limit is negative or not a number.";
    return judged;
  }
  const double deviation = judged.deviation->base();
  const bool within = std::isfinite(deviation) && std::abs(deviation) <= judged.limit->base();
  judged.verdict = within ? Verdict::Pass : Verdict::Fail;
  judged.reason = stepReason(ground, step, expected, judged);
  return judged;
}

std::optional<Reading> zeroReturn(const Setup& setup, const Check& check, std::optional<std::size_t> first) {
  if (!first) return std::nullopt;
  for (std::size_t step = setup.sequence.size(); step-- > *first + 1;)
    if (isZeroStep(setup, step) && readingAt(check, step))
      return readingAt(check, step)->mean - readingAt(check, *first)->mean;
  return std::nullopt;
}

Result<Line> lineOf(const Setup& setup, const SetupPrediction& prediction,
                    const CheckAssessment& assessment) {
  std::vector<double> simulated, measured;
  for (std::size_t step = 0; step < assessment.steps.size(); ++step) {
    const auto& change = assessment.steps[step].change;
    if (!prediction.steps[step] || !change || !std::isfinite(change->base())) continue;
    simulated.push_back(simulatedInUnit(setup.bridge, prediction.steps[step]->simulated));
    measured.push_back(change->base());
  }
  return fitLine(simulated, measured);
}

std::string failureReason(const Setup& setup, const SetupPrediction& prediction,
                          const std::vector<StepAssessment>& steps, std::size_t failed) {
  std::size_t worst = 0, opposite = 0, loaded = 0;
  double greatest = -1;
  for (std::size_t step = 0; step < steps.size(); ++step) {
    if (!steps[step].change || !prediction.steps[step]) continue;
    if (!isZeroStep(setup, step)) ++loaded;
    if (oppositeSign(*steps[step].change, prediction.steps[step]->reading)) ++opposite;
    if (steps[step].verdict != Verdict::Fail) continue;
    const double away = std::abs(steps[step].deviation->base());
    // A reading that is not a number has no size, yet nothing is worse.
    const double badness = std::isfinite(away) ? away : HUGE_VAL;
    if (badness > greatest) greatest = badness, worst = step;
  }
  std::string text =
      "Fail: " + std::to_string(failed) + " of " + std::to_string(steps.size()) + " steps out of limits";
  if (opposite > 0 && opposite == loaded)
    return text +
           "; every shunted step reads with the opposite polarity. Look for swapped signal wires or shunts "
           "on "
           "the neighbouring arm.";
  if (!std::isfinite(greatest))
    return text + ", worst step " + std::to_string(worst + 1) + ": no finite reading.";
  return text + ", worst step " + std::to_string(worst + 1) + ": " + shown(Reading(greatest), setup) +
         " from expected.";
}

void giveVerdict(const Setup& setup, const SetupPrediction& prediction, CheckAssessment& assessment) {
  const auto count = [&](Verdict verdict) {
    return static_cast<std::size_t>(std::count_if(assessment.steps.begin(), assessment.steps.end(),
                                                  [&](const auto& step) { return step.verdict == verdict; }));
  };
  const std::size_t all = assessment.steps.size(), failed = count(Verdict::Fail),
                    open = count(Verdict::NotJudged);
  if (all == 0) {
    assessment.reason = "Not judged: the channel has no steps.";
  } else if (failed > 0) {
    assessment.verdict = Verdict::Fail;
    assessment.reason = failureReason(setup, prediction, assessment.steps, failed);
  } else if (open == all) {
    assessment.reason = "Not judged: no step has a reading that can be judged.";
  } else if (open > 0) {
    assessment.reason = "Not judged: " + std::to_string(open) + " of " + std::to_string(all) +
                        " steps are not judged; the others pass.";
  } else {
    assessment.verdict = Verdict::Pass;
    assessment.reason = "Pass: all " + std::to_string(all) + " steps within limits";
    if (assessment.zeroReturn)
      assessment.reason += "; zero returned to " + shown(*assessment.zeroReturn, setup);
    assessment.reason +=
        assessment.zeroStep ? "." : "; no zero step was read, so readings were taken as shown.";
  }
}

}  // namespace

std::string_view verdictWord(Verdict verdict) {
  switch (verdict) {
    case Verdict::Pass:
      return "pass";
    case Verdict::Fail:
      return "fail";
    case Verdict::NotJudged:
      return "not judged";
  }
  return {};
}

CheckAssessment assess(const Setup& setup, const SetupPrediction& prediction, const Check& check) {
  CheckAssessment assessment;
  assessment.zeroStep = zeroReference(setup, check);
  const Reading zero = assessment.zeroStep ? readingAt(check, *assessment.zeroStep)->mean : Reading(0);
  assessment.zeroReturnLimit = std::max(setup.limits.zeroReturn * span(prediction), setup.limits.least);
  const Ground ground{setup, check, zero, assessment.zeroStep, assessment.zeroReturnLimit};
  assessment.steps.reserve(setup.sequence.size());
  for (std::size_t step = 0; step < setup.sequence.size(); ++step)
    assessment.steps.push_back(assessStep(ground, step, prediction.steps[step]));
  assessment.zeroReturn = zeroReturn(setup, check, assessment.zeroStep);
  assessment.line = lineOf(setup, prediction, assessment);
  giveVerdict(setup, prediction, assessment);
  return assessment;
}

}  // namespace core
