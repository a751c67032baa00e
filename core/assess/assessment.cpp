// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/assess/assessment.h"

#include <algorithm>
#include <cmath>

#include "core/assess/check_points.h"
#include "core/assess/check_verdict.h"
#include "core/assess/judging.h"
#include "core/line/stated_fits.h"
#include "core/units/language.h"
#include "core/units/notation.h"
#include "core/units/shown.h"

namespace core {
namespace {

/// `value` with so many places after the point, and its unit.
std::string shown(double value, int places, const Setup& setup) {
  return core::shown(formatFixed(value, places)) + " " + readingUnitText(setup.instrument);
}

/// What is common to all steps of one check.
struct Ground {
  const Setup& setup;
  const Check& check;
  Reading zero;
  std::optional<std::size_t> zeroStep;
  Reading zeroLimit;
};

/// "Changed by 998 µm/m from zero, 2 µm/m from expected, within the limit of 10 µm/m"
std::string plainReason(const Ground& ground, Reading expected, const StepAssessment& judged) {
  const double away = std::abs(judged.deviation->base()), limit = judged.limit->base();
  const int places = limit > 0 ? placesBeside(away, limit) : placesOf(away);
  const auto words = [&](double value) { return shown(value, places, ground.setup); };
  const std::string change = words(judged.change->base());
  if (isOppositeSign(*judged.change, expected))
    return say(
        "Changed by {1} from zero where {2} is expected: opposite polarity. Look for swapped signal wires or "
        "a shunt on the neighbouring arm",
        {change, words(expected.base())});
  return say(away <= limit ? sayLater("Changed by {1} from zero, {2} from expected, within the limit of {3}")
                           : sayLater("Changed by {1} from zero, {2} from expected, beyond the limit of {3}"),
             {change, words(away), words(limit)});
}

std::string stepReason(const Ground& ground, std::size_t step, Reading expected,
                       const StepAssessment& judged) {
  if (!std::isfinite(judged.deviation->base())) return say("The reading is no finite number.");
  if (ground.zeroStep == step) return say("Zero reference of this check.");
  const auto inUnit = [&](double value) { return shown(value, placesOf(value), ground.setup); };
  const std::string plain = plainReason(ground, expected, judged);
  const std::string rule = ruleReason(ground.setup.decision, *judged.decided, judged.limit->base(), inUnit);
  return (rule.empty() ? plain : sayClauses({plain, rule})) + ".";
}

Reading limitOf(const Ground& ground, std::size_t step, Reading expected) {
  const Limits& limits = ground.setup.limits;
  if (isZeroStep(ground.setup, step)) return ground.zeroLimit;
  return std::max(Reading(limits.relative * std::abs(expected.base())), limits.least);
}

std::string notJudged(const Error& error) { return say("Not judged: {1}", {error.text()}); }

StepAssessment assessStep(const Ground& ground, std::size_t step, const Result<Prediction>& prediction,
                          const Result<StepUncertainty>& uncertainty) {
  StepAssessment judged;
  const auto& measured = readingAt(ground.check, step);
  if (!prediction) {
    judged.reason = notJudged(prediction.error());
    return judged;
  }
  if (!measured) {
    judged.reason = say("Not judged: no reading.");
    return judged;
  }
  judged.change = measured->mean - ground.zero;
  judged.deviation = *judged.change - prediction->reading;
  judged.limit = limitOf(ground, step, prediction->reading);
  if (!limitsUsable(ground.setup.limits) || !std::isfinite(judged.limit->base())) {
    judged.reason = say("Not judged: a limit is negative or not a number.");
    return judged;
  }
  if (!uncertainty) {
    judged.reason = notJudged(uncertainty.error());
    return judged;
  }
  judged.standard = deviationUncertainty(ground.check, ground.zeroStep, step, *uncertainty);
  if (!std::isfinite(judged.standard->base())) {
    judged.reason = say("Not judged: its uncertainty is not a number, or too large to reckon with.");
    return judged;
  }
  judged.decided = decide(ground.setup.decision, judged.deviation->base(), judged.limit->base(),
                          judged.standard->base(), uncertainty->dof);
  if (ground.setup.decision.rule == DecisionRule::EnNumber)
    judged.limit = Reading(judged.decided->expanded.value_or(0));
  judged.verdict = verdictOf(judged.decided->outcome);
  judged.reason = stepReason(ground, step, prediction->reading, judged);
  return judged;
}

std::optional<Reading> zeroReturn(const Setup& setup, const Check& check, std::optional<std::size_t> first) {
  if (!first) return std::nullopt;
  for (std::size_t step = setup.sequence.size(); step-- > *first + 1;)
    if (isZeroStep(setup, step) && readingAt(check, step))
      return readingAt(check, step)->mean - readingAt(check, *first)->mean;
  return std::nullopt;
}

/// Of `y` over `x`, with the covariance of the measured changes where that can be had.
Result<Line> lineOf(const CheckPoints& points, const std::vector<double>& x, const std::vector<double>& y) {
  if (!points.covariance.empty())
    if (auto line = fitCorrelatedLine(x, y, points.covariance)) return line;
  return fitLine(x, y);
}

/// Measured changes over simulated values. Stated uncertainties say nothing about a line that even the
/// expected readings leave by more than these: then weights that follow from them would tilt it.
Result<Line> drawnLine(const CheckPoints& points) {
  const auto expected = lineOf(points, points.simulated, points.expected);
  const bool isCurved = expected && expected->chiSquareProbability && *expected->chiSquareProbability < 0.05;
  return isCurved ? fitLine(points.simulated, points.measured)
                  : lineOf(points, points.simulated, points.measured);
}

std::optional<ChainGain> gainOf(const CheckPoints& points, const Result<Line>& agreement) {
  if (!agreement) return std::nullopt;
  ChainGain gain{agreement->slope, agreement->slopeError};
  const double probability = agreement->chiSquareProbability.value_or(1);
  if (!gain.standard || probability >= 0.05) return gain;
  const double widening = std::sqrt(*agreement->chiSquare / agreement->degreesOfFreedom);
  gain.isWidened = widening > 1;
  *gain.standard *= std::max(1.0, widening);
  if (const auto plain = fitLine(points.expected, points.measured); plain && probability < 1e-3)
    gain.describesReadings = std::abs(plain->slope - gain.value) <= *gain.standard;
  return gain;
}

}  // namespace

CheckAssessment assess(const Setup& setup, const SetupPrediction& prediction, const Budget& budget,
                       const Check& check) {
  CheckAssessment assessment;
  assessment.zeroStep = zeroReference(setup, check);
  const Reading zero = assessment.zeroStep ? readingAt(check, *assessment.zeroStep)->mean : Reading(0);
  assessment.zeroReturnLimit = zeroReturnLimit(setup.limits, prediction);
  const Ground ground{setup, check, zero, assessment.zeroStep, assessment.zeroReturnLimit};
  assessment.steps.reserve(setup.sequence.size());
  for (std::size_t step = 0; step < setup.sequence.size(); ++step)
    assessment.steps.push_back(
        assessStep(ground, step, prediction.steps[step], budget.of(Scope::Chain).steps[step]));
  assessment.zeroReturn = zeroReturn(setup, check, assessment.zeroStep);
  const CheckPoints points = checkPoints(setup, prediction, budget, check);
  assessment.line = drawnLine(points);
  assessment.agreement = lineOf(points, points.expected, points.measured);
  assessment.gain = gainOf(points, assessment.agreement);
  assessment.merits = meritsOf(setup, prediction, budget, check, points);
  giveVerdict(setup, prediction, assessment);
  return assessment;
}

}  // namespace core
