// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/assess/assessment.h"

#include <algorithm>
#include <cmath>

#include "core/assess/check_points.h"
#include "core/line/stated_fits.h"
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

/// "Changed by 998 µm/m from zero, 2 µm/m from expected, within the limit of 10 µm/m"
std::string plainReason(const Ground& ground, Reading expected, const StepAssessment& judged) {
  const std::string change = shown(*judged.change, ground.setup);
  const double away = std::abs(judged.deviation->base());
  if (oppositeSign(*judged.change, expected))
    return "Changed by " + change + " from zero where " + shown(expected, ground.setup) +
           " is expected: opposite polarity. Look for swapped signal wires or a shunt on the neighbouring "
           "arm";
  return "Changed by " + change + " from zero, " + shown(Reading(away), ground.setup) + " from expected, " +
         (away <= judged.limit->base() ? "within" : "beyond") + " the limit of " +
         shown(*judged.limit, ground.setup);
}

std::string sharedRiskReason(const Decision& rule, const Decided& decided, Reading limit,
                             const std::string& expanded) {
  const std::string share = formatNumber(100 * rule.greatestShare, 3) + " % of the limit";
  if (decided.outcome == Outcome::CannotTell)
    return "; its U of " + expanded + " is more than " + share + ", too much for the risk to be shared";
  if (*decided.expanded <= rule.greatestShare * limit.base())
    return "; its U of " + expanded + " is at most " + share + ", so the risk is shared";
  return "; its U of " + expanded + " is more than " + share +
         ", and yet it is beyond the limit with all of it";
}

std::string guardedReason(Reading limit, Reading guardBand, bool open, const std::string& band) {
  if (!open) return "; decided with a guard band of " + band;
  if (guardBand > limit)
    return "; the guard band of " + band + " is wider than the limit, so nothing can pass";
  return "; closer to the limit than the guard band of " + band;
}

/// What the rule made of it, with its numbers: "; closer to the limit than the guard band of 3 µm/m".
std::string ruleReason(const Ground& ground, const StepAssessment& judged) {
  const Decision& rule = ground.setup.decision;
  const Decided& decided = *judged.decided;
  const std::string expanded = shown(Reading(decided.expanded.value_or(0)), ground.setup);
  const bool open = decided.outcome == Outcome::CannotTell;
  switch (rule.rule) {
    case DecisionRule::Simple:
      return {};
    case DecisionRule::SharedRisk:
      return sharedRiskReason(rule, decided, *judged.limit, expanded);
    case DecisionRule::Guarded:
      return guardedReason(*judged.limit, Reading(*decided.guardBand), open,
                           shown(Reading(*decided.guardBand), ground.setup));
    case DecisionRule::Conformity:
      return "; within it with a probability of " + formatFixed(100 * *decided.probability, 1) + " %, " +
             formatNumber(100 * rule.conformity, 4) + " % is asked";
    case DecisionRule::EnNumber:
      return decided.en ? "; E_n = " + formatFixed(*decided.en, 2) + " with U = " + expanded : std::string();
  }
  return {};
}

std::string stepReason(const Ground& ground, std::size_t step, Reading expected,
                       const StepAssessment& judged) {
  if (!std::isfinite(judged.deviation->base())) return "The reading is no finite number.";
  if (ground.zeroStep == step) return "Zero reference of this check.";
  return plainReason(ground, expected, judged) + ruleReason(ground, judged) + ".";
}

Reading limitOf(const Ground& ground, std::size_t step, Reading expected) {
  const Limits& limits = ground.setup.limits;
  if (isZeroStep(ground.setup, step)) return ground.zeroLimit;
  return std::max(Reading(limits.relative * std::abs(expected.base())), limits.least);
}

/// Of the expected reading, of this reading and of the zero reading together.
Reading deviationUncertainty(const Ground& ground, std::size_t step, const StepUncertainty& expected) {
  if (ground.zeroStep == step) return Reading(0);
  const auto own = [&](const std::optional<Measured>& measured) {
    return measured && measured->uncertainty ? measured->uncertainty->base() : 0;
  };
  const double zero = ground.zeroStep ? own(readingAt(ground.check, *ground.zeroStep)) : 0;
  return Reading(std::hypot(expected.standard, own(readingAt(ground.check, step)), zero));
}

Verdict verdictOf(Outcome outcome) {
  if (outcome == Outcome::Within) return Verdict::Pass;
  return outcome == Outcome::Beyond ? Verdict::Fail : Verdict::CannotTell;
}

std::string notJudged(const Error& error) { return "Not judged: " + error.text(); }

StepAssessment assessStep(const Ground& ground, std::size_t step, const Result<Prediction>& prediction,
                          const Result<StepUncertainty>& uncertainty) {
  StepAssessment judged;
  const auto& measured = readingAt(ground.check, step);
  if (!prediction) {
    judged.reason = notJudged(prediction.error());
    return judged;
  }
  if (!measured) {
    judged.reason = "Not judged: no reading.";
    return judged;
  }
  judged.change = measured->mean - ground.zero;
  judged.deviation = *judged.change - prediction->reading;
  judged.limit = limitOf(ground, step, prediction->reading);
  if (!limitsUsable(ground.setup.limits)) {
    judged.reason = "Not judged: a limit is negative or not a number.";
    return judged;
  }
  if (!uncertainty) {
    judged.reason = notJudged(uncertainty.error());
    return judged;
  }
  judged.standard = deviationUncertainty(ground, step, *uncertainty);
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

Result<Line> lineOf(const CheckPoints& points) {
  if (!points.covariance.empty())
    if (auto line = fitCorrelatedLine(points.simulated, points.measured, points.covariance)) return line;
  return fitLine(points.simulated, points.measured);
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
                    open = count(Verdict::NotJudged), cannotTell = count(Verdict::CannotTell);
  if (all == 0) {
    assessment.reason = "Not judged: the channel has no steps.";
  } else if (failed > 0) {
    assessment.verdict = Verdict::Fail;
    assessment.reason = failureReason(setup, prediction, assessment.steps, failed);
    if (cannotTell > 0)
      assessment.reason += " Of " + std::to_string(cannotTell) + " more the rule cannot tell.";
  } else if (open == all) {
    assessment.reason = "Not judged: no step has a reading that can be judged.";
  } else if (open > 0) {
    assessment.reason = "Not judged: " + std::to_string(open) + " of " + std::to_string(all) +
                        " steps are not judged; " +
                        (cannotTell > 0 ? "of the others none fails." : "the others pass.");
  } else if (cannotTell > 0) {
    assessment.verdict = Verdict::CannotTell;
    assessment.reason = "Cannot tell: the uncertainty of " + std::to_string(cannotTell) + " of " +
                        std::to_string(all) + " steps is too large for " +
                        std::string(decisionRuleName(setup.decision.rule)) + "; the others pass.";
    if (cannotTell == all)
      assessment.reason = "Cannot tell: the uncertainty of every step is too large for " +
                          std::string(decisionRuleName(setup.decision.rule)) + ".";
  } else {
    assessment.verdict = Verdict::Pass;
    assessment.reason = "Pass: all " + std::to_string(all) + " steps within limits";
    if (setup.decision.rule != DecisionRule::Simple)
      assessment.reason += " by " + std::string(decisionRuleName(setup.decision.rule));
    if (assessment.zeroReturn)
      assessment.reason += "; zero returned to " + shown(*assessment.zeroReturn, setup);
    assessment.reason +=
        assessment.zeroStep ? "." : "; no zero step was read, so readings were taken as shown.";
  }
}

}  // namespace

CheckAssessment assess(const Setup& setup, const SetupPrediction& prediction, const Budget& budget,
                       const Check& check) {
  CheckAssessment assessment;
  assessment.zeroStep = zeroReference(setup, check);
  const Reading zero = assessment.zeroStep ? readingAt(check, *assessment.zeroStep)->mean : Reading(0);
  assessment.zeroReturnLimit = std::max(setup.limits.zeroReturn * span(prediction), setup.limits.least);
  const Ground ground{setup, check, zero, assessment.zeroStep, assessment.zeroReturnLimit};
  assessment.steps.reserve(setup.sequence.size());
  for (std::size_t step = 0; step < setup.sequence.size(); ++step)
    assessment.steps.push_back(
        assessStep(ground, step, prediction.steps[step], budget.of(Scope::Chain).steps[step]));
  assessment.zeroReturn = zeroReturn(setup, check, assessment.zeroStep);
  assessment.line = lineOf(checkPoints(setup, prediction, budget, check));
  assessment.merits = meritsOf(setup, prediction, budget, check);
  giveVerdict(setup, prediction, assessment);
  return assessment;
}

}  // namespace core
