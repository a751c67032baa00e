// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/assess/judging.h"

#include <algorithm>
#include <cmath>

#include "core/units/language.h"
#include "core/units/notation.h"

namespace core {
namespace {

using Shown = std::function<std::string(double)>;

std::string sharedRiskReason(const Decision& rule, const Decided& decided, double limit,
                             const std::string& expanded) {
  const std::string share =
      say("{1} % of the limit", {core::shown(formatNumber(100 * rule.greatestShare, 3))});
  if (decided.outcome == Outcome::CannotTell)
    return say("its U of {1} is more than {2}, too much for the risk to be shared", {expanded, share});
  if (decided.expanded.value_or(0) <= rule.greatestShare * limit)
    return say("its U of {1} is at most {2}, so the risk is shared", {expanded, share});
  return say("its U of {1} is more than {2}, and yet it is beyond the limit with all of it",
             {expanded, share});
}

std::string guardedReason(const Decided& decided, double limit, const Shown& shown) {
  const std::string band = shown(*decided.guardBand);
  if (decided.outcome != Outcome::CannotTell) return say("decided with a guard band of {1}", {band});
  if (*decided.guardBand > limit)
    return say("the guard band of {1} is wider than the limit, so nothing can pass", {band});
  return say("closer to the limit than the guard band of {1}", {band});
}

}  // namespace

const std::optional<Measured>& readingAt(const Check& check, std::size_t step) {
  static const std::optional<Measured> none;
  return step < check.readings.size() ? check.readings[step] : none;
}

bool isZeroStep(const Setup& setup, std::size_t step) { return setup.sequence[step].closed.empty(); }

Reading greatestExpected(const SetupPrediction& prediction) {
  double greatest = 0;
  for (const auto& step : prediction.steps)
    if (step) greatest = std::max(greatest, std::abs(step->reading.base()));
  return Reading(greatest);
}

Reading zeroReturnLimit(const Limits& limits, const SetupPrediction& prediction) {
  return std::max(limits.zeroReturn * greatestExpected(prediction), limits.least);
}

bool limitsUsable(const Limits& limits) {
  const auto usable = [](double value) { return std::isfinite(value) && value >= 0; };
  return usable(limits.relative) && usable(limits.least.base()) && usable(limits.zeroReturn);
}

Reading deviationUncertainty(const Check& check, const std::optional<std::size_t>& zeroStep, std::size_t step,
                             const StepUncertainty& expected) {
  if (zeroStep == step) return Reading(0);
  const auto own = [&](const std::optional<Measured>& measured) {
    return measured && measured->uncertainty ? measured->uncertainty->base() : 0;
  };
  const double zero = zeroStep ? own(readingAt(check, *zeroStep)) : 0;
  return Reading(std::hypot(expected.standard, own(readingAt(check, step)), zero));
}

Verdict verdictOf(Outcome outcome) {
  if (outcome == Outcome::Within) return Verdict::Pass;
  return outcome == Outcome::Beyond ? Verdict::Fail : Verdict::CannotTell;
}

std::string ruleReason(const Decision& rule, const Decided& decided, double limit, const Shown& shown) {
  if (rule.rule == DecisionRule::Simple) return {};
  if (!decided.expanded) return say("its uncertainty is not known");
  const std::string expanded = shown(*decided.expanded);
  switch (rule.rule) {
    case DecisionRule::Simple:
      return {};
    case DecisionRule::SharedRisk:
      return sharedRiskReason(rule, decided, limit, expanded);
    case DecisionRule::Guarded:
      return guardedReason(decided, limit, shown);
    case DecisionRule::Conformity:
      return say("within it with a probability of {1} %, {2} % is asked",
                 {core::shown(formatFixed(100 * *decided.probability, 1)),
                  core::shown(formatNumber(100 * rule.conformity, 4))});
    case DecisionRule::EnNumber:
      return decided.en ? say("E_n = {1} with U = {2}", {core::shown(formatFixed(*decided.en, 2)), expanded})
                        : std::string();
  }
  return {};
}

}  // namespace core
