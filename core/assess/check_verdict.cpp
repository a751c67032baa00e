// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/assess/check_verdict.h"

#include <algorithm>
#include <cmath>

#include "core/assess/judging.h"
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
  std::string list;
  for (std::size_t k = 0; k < merits.size(); ++k)
    list += (k == 0 ? "" : k + 1 == merits.size() ? " and " : ", ") + text(*merits[k]);
  return list;
}

std::string nameOf(const Merit& merit) { return std::string(meritKindName(merit.kind)); }

/// "hysteresis of 0.80 % is beyond its limit of 0.50 %"
std::string beyondText(const Tally& tally) {
  return listed(tally.failing, [](const Merit& merit) {
    return nameOf(merit) + " of " + shareText(merit) + " is beyond its limit of " + limitText(merit);
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
      std::to_string(tally.failed) + " of " + std::to_string(tally.steps) + " steps out of limits";
  if (isReversed(setup, prediction, steps))
    return count +
           "; every shunted step reads with the opposite polarity. Look for swapped signal wires or shunts "
           "on the neighbouring arm";
  const std::size_t worst = worstStep(steps);
  const std::string named = count + ", worst step " + std::to_string(worst + 1) + ": ";
  const double away = std::abs(steps[worst].deviation->base());
  if (!std::isfinite(away)) return named + "no finite reading";
  const double limit = steps[worst].limit->base();
  return named + formatFixed(away, limit > 0 ? placesBeside(away, limit) : placesOf(away)) + " " +
         readingUnitText(setup.instrument) + " from expected";
}

std::string failReason(const Setup& setup, const SetupPrediction& prediction,
                       const CheckAssessment& assessment, const Tally& tally) {
  std::string text = "Fail: ";
  if (tally.failed > 0) text += failedSteps(setup, prediction, assessment.steps, tally);
  if (tally.failed > 0 && !tally.failing.empty()) text += "; ";
  text += beyondText(tally);
  if (tally.failed == 0)
    text += tally.open + tally.cannotTell == 0
                ? "; all " + std::to_string(tally.steps) + " steps are within limits"
                : "; no step fails";
  text += ".";
  if (tally.cannotTell > 0) text += " Of " + std::to_string(tally.cannotTell) + " more the rule cannot tell.";
  return text;
}

std::string openReason(const Tally& tally) {
  if (tally.open == tally.steps) return "Not judged: no step has a reading that can be judged.";
  std::string text = "Not judged: ";
  if (tally.open > 0)
    text += std::to_string(tally.open) + " of " + std::to_string(tally.steps) + " steps are not judged; " +
            (tally.cannotTell > 0 ? "of the others none fails" : "the others pass");
  if (tally.unknown.empty()) return text + ".";
  if (tally.open > 0) text += "; ";
  text += "there is a limit for " + listed(tally.unknown, nameOf) + ", which cannot be judged. ";
  return text + tally.unknown.front()->reason;
}

std::string untoldReason(const Setup& setup, const Tally& tally) {
  const std::string rule(decisionRuleName(setup.decision.rule));
  if (tally.cannotTell == tally.steps)
    return "Cannot tell: the uncertainty of every step is too large for " + rule + ".";
  const bool isUnknown =
      tally.cannotTell == 0 && std::all_of(tally.untold.begin(), tally.untold.end(),
                                           [](const Merit* merit) { return !merit->decided->expanded; });
  std::string whose = listed(tally.untold, nameOf);
  if (isUnknown)
    return "Cannot tell: the uncertainty of " + whose + " is not known, and " + rule +
           " needs it; all steps pass.";
  if (tally.cannotTell > 0)
    whose = std::to_string(tally.cannotTell) + " of " + std::to_string(tally.steps) + " steps" +
            (whose.empty() ? "" : " and of " + whose);
  return "Cannot tell: the uncertainty of " + whose + " is too large for " + rule + "; " +
         (tally.cannotTell > 0 ? "the others pass." : "all steps pass.");
}

std::string passReason(const Setup& setup, const CheckAssessment& assessment, const Tally& tally) {
  std::string text = "Pass: all " + std::to_string(tally.steps) + " steps within limits";
  if (setup.decision.rule != DecisionRule::Simple)
    text += " by " + std::string(decisionRuleName(setup.decision.rule));
  if (!tally.passing.empty()) text += "; " + listed(tally.passing, nameOf) + " within limits too";
  if (assessment.zeroReturn) {
    const double value = assessment.zeroReturn->base(), limit = assessment.zeroReturnLimit.base();
    text += "; zero returned to " +
            formatFixed(value, limit > 0 ? placesBeside(value, limit) : placesOf(value)) + " " +
            readingUnitText(setup.instrument);
  }
  return text + (assessment.zeroStep ? "." : "; no zero step was read, so readings were taken as shown.");
}

}  // namespace

bool isOppositeSign(Reading change, Reading expected) {
  return change.base() * expected.base() < 0 && std::abs(change / expected) > 0.5;
}

void giveVerdict(const Setup& setup, const SetupPrediction& prediction, CheckAssessment& assessment) {
  const Tally tally = tallyOf(assessment);
  if (tally.steps == 0) {
    assessment.reason = "Not judged: the channel has no steps.";
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
