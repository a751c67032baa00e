// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/assess/check_verdict.h"

#include <algorithm>
#include <cmath>

#include "core/assess/judging.h"
#include "core/units/language.h"
#include "core/units/notation.h"
#include "core/units/shown.h"

namespace core {
namespace {

/// Steps and figures of merit by verdict. Zero return is not among the figures: its step is counted.
struct Tally {
  std::size_t steps = 0, failed = 0, open = 0, cannotTell = 0;
  std::vector<const Merit*> passing, failing, untold, unknown;

  bool hasFailure() const { return failed > 0 || !failing.empty(); }
  bool hasOpen() const { return open > 0 || !unknown.empty(); }
  bool hasUntold() const { return cannotTell > 0 || !untold.empty(); }
};

Tally tallyOf(const CheckAssessment& assessment) {
  Tally tally;
  tally.steps = assessment.steps.size();
  for (const StepAssessment& step : assessment.steps) {
    if (step.verdict == Verdict::Fail) ++tally.failed;
    if (step.verdict == Verdict::NotJudged) ++tally.open;
    if (step.verdict == Verdict::CannotTell) ++tally.cannotTell;
  }
  for (const Merit& merit : assessment.merits) {
    if (merit.kind == MeritKind::ZeroReturn || !merit.limit) continue;
    auto& list = merit.verdict == Verdict::Pass         ? tally.passing
                 : merit.verdict == Verdict::Fail       ? tally.failing
                 : merit.verdict == Verdict::CannotTell ? tally.untold
                                                        : tally.unknown;
    list.push_back(&merit);
  }
  return tally;
}

/// "hysteresis, span error and zero shift", each as `text` writes it.
template <typename Text>
std::string listed(const std::vector<const Merit*>& merits, Text text) {
  std::vector<std::string> texts;
  for (const Merit* merit : merits) texts.push_back(text(*merit));
  return sayAll(texts);
}

std::string nameOf(const Merit& merit) { return std::string(meritKindName(merit.kind)); }

/// "hysteresis of 0.80 % is beyond its limit of 0.50 %"
std::string beyondText(const Tally& tally) {
  return listed(tally.failing, [](const Merit& merit) {
    return say("{1} of {2} is beyond its limit of {3}", {nameOf(merit), shareText(merit), limitText(merit)});
  });
}

/// The step that failed worst. A reading that is not a number has no size, yet nothing is worse.
std::size_t worstStep(const std::vector<StepAssessment>& steps) {
  std::size_t worst = 0;
  double greatest = -1;
  for (std::size_t step = 0; step < steps.size(); ++step) {
    if (steps[step].verdict != Verdict::Fail) continue;
    const double away = std::abs(steps[step].deviation->base());
    const double badness = std::isfinite(away) ? away : HUGE_VAL;
    if (badness > greatest) greatest = badness, worst = step;
  }
  return worst;
}

/// Whether every step with shunts reads with the opposite sign, and there is one.
bool isReversed(const Setup& setup, const SetupPrediction& prediction,
                const std::vector<StepAssessment>& steps) {
  std::size_t opposite = 0, loaded = 0;
  for (std::size_t step = 0; step < steps.size(); ++step) {
    if (!steps[step].change || !prediction.steps[step]) continue;
    if (!isZeroStep(setup, step)) ++loaded;
    if (isOppositeSign(*steps[step].change, prediction.steps[step]->reading)) ++opposite;
  }
  return opposite > 0 && opposite == loaded;
}

/// "1 of 9 steps out of limits, worst step 7: 100 µm/m from expected"
std::string failedSteps(const Setup& setup, const SetupPrediction& prediction,
                        const std::vector<StepAssessment>& steps, const Tally& tally) {
  const std::string count =
      say("{1} of {2} steps out of limits", {std::to_string(tally.failed), std::to_string(tally.steps)});
  if (isReversed(setup, prediction, steps))
    return say(
        "{1}; every shunted step reads with the opposite polarity. Look for swapped signal wires or shunts "
        "on the neighbouring arm",
        {count});
  const std::size_t worst = worstStep(steps);
  const std::string step = std::to_string(worst + 1);
  const double away = std::abs(steps[worst].deviation->base());
  if (!std::isfinite(away)) return say("{1}, worst step {2}: no finite reading", {count, step});
  const double limit = steps[worst].limit->base();
  return say(
      "{1}, worst step {2}: {3} {4} from expected",
      {count, step, core::shown(formatFixed(away, limit > 0 ? placesBeside(away, limit) : placesOf(away))),
       readingUnitText(setup.instrument)});
}

std::string failReason(const Setup& setup, const SetupPrediction& prediction,
                       const CheckAssessment& assessment, const Tally& tally) {
  std::vector<std::string> clauses;
  if (tally.failed > 0) clauses.push_back(failedSteps(setup, prediction, assessment.steps, tally));
  if (!tally.failing.empty()) clauses.push_back(beyondText(tally));
  if (tally.failed == 0)
    clauses.push_back(
        tally.open + tally.cannotTell == 0
            ? sayCount(tally.steps, "all {n} steps are within limits", "all {n} steps are within limits")
            : say("no step fails"));
  std::string text = say("Fail: {1}.", {sayClauses(clauses)});
  if (tally.cannotTell == 0) return text;
  return text + " " +
         sayCount(tally.cannotTell, "Of {n} more the rule cannot tell.", "Of {n} more the rule cannot tell.");
}

std::string openSteps(const Tally& tally) {
  const std::string steps = std::to_string(tally.steps);
  if (tally.cannotTell > 0)
    return sayCount(tally.open, "{n} of {1} steps is not judged; of the others none fails",
                    "{n} of {1} steps are not judged; of the others none fails", {steps});
  return sayCount(tally.open, "{n} of {1} steps is not judged; the others pass",
                  "{n} of {1} steps are not judged; the others pass", {steps});
}

std::string openReason(const Tally& tally) {
  if (tally.open == tally.steps) return say("Not judged: no step has a reading that can be judged.");
  std::vector<std::string> clauses;
  if (tally.open > 0) clauses.push_back(openSteps(tally));
  if (!tally.unknown.empty())
    clauses.push_back(
        say("there is a limit for {1}, which cannot be judged", {listed(tally.unknown, nameOf)}));
  const std::string text = say("Not judged: {1}.", {sayClauses(clauses)});
  return tally.unknown.empty() ? text : text + " " + tally.unknown.front()->reason;
}

std::string untoldReason(const Setup& setup, const Tally& tally) {
  const std::string rule(decisionRuleName(setup.decision.rule));
  if (tally.cannotTell == tally.steps)
    return say("Cannot tell: the uncertainty of every step is too large for {1}.", {rule});
  const bool isUnknown =
      tally.cannotTell == 0 && std::all_of(tally.untold.begin(), tally.untold.end(),
                                           [](const Merit* merit) { return !merit->decided->expanded; });
  const std::string whose = listed(tally.untold, nameOf);
  if (isUnknown)
    return say("Cannot tell: the uncertainty of {1} is not known, and {2} needs it; all steps pass.",
               {whose, rule});
  if (tally.cannotTell == 0)
    return say("Cannot tell: the uncertainty of {1} is too large for {2}; all steps pass.", {whose, rule});
  const std::string count = std::to_string(tally.cannotTell), all = std::to_string(tally.steps);
  if (whose.empty())
    return say("Cannot tell: the uncertainty of {1} of {2} steps is too large for {3}; the others pass.",
               {count, all, rule});
  return say(
      "Cannot tell: the uncertainty of {1} of {2} steps and of {3} is too large for {4}; the others pass.",
      {count, all, whose, rule});
}

std::string passReason(const Setup& setup, const CheckAssessment& assessment, const Tally& tally) {
  std::vector<std::string> clauses;
  clauses.push_back(setup.decision.rule == DecisionRule::Simple
                        ? sayCount(tally.steps, "all {n} steps within limits", "all {n} steps within limits")
                        : sayCount(tally.steps, "all {n} steps within limits by {1}",
                                   "all {n} steps within limits by {1}",
                                   {decisionRuleName(setup.decision.rule)}));
  if (!tally.passing.empty())
    clauses.push_back(say("{1} within limits too", {listed(tally.passing, nameOf)}));
  if (assessment.zeroReturn) {
    const double value = assessment.zeroReturn->base(), limit = assessment.zeroReturnLimit.base();
    clauses.push_back(
        say("zero returned to {1} {2}",
            {core::shown(formatFixed(value, limit > 0 ? placesBeside(value, limit) : placesOf(value))),
             readingUnitText(setup.instrument)}));
  }
  if (!assessment.zeroStep) clauses.push_back(say("no zero step was read, so readings were taken as shown"));
  return say("Pass: {1}.", {sayClauses(clauses)});
}

}  // namespace

bool isOppositeSign(Reading change, Reading expected) {
  return change.base() * expected.base() < 0 && std::abs(change / expected) > 0.5;
}

void giveVerdict(const Setup& setup, const SetupPrediction& prediction, CheckAssessment& assessment) {
  const Tally tally = tallyOf(assessment);
  if (tally.steps == 0) {
    assessment.reason = say("Not judged: the channel has no steps.");
  } else if (tally.hasFailure()) {
    assessment.verdict = Verdict::Fail;
    assessment.reason = failReason(setup, prediction, assessment, tally);
  } else if (tally.hasOpen()) {
    assessment.reason = openReason(tally);
  } else if (tally.hasUntold()) {
    assessment.verdict = Verdict::CannotTell;
    assessment.reason = untoldReason(setup, tally);
  } else {
    assessment.verdict = Verdict::Pass;
    assessment.reason = passReason(setup, assessment, tally);
  }
}

}  // namespace core
