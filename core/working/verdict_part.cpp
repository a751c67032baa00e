// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/units/language.h"
#include "core/units/notation.h"
#include "core/working/amounts.h"
#include "core/working/parts.h"

namespace core {
namespace {

using namespace amounts;

std::string spreadText(const Setup& setup, double value) {
  return uncertainty(value, readingUnitText(setup.instrument));
}

const Measured* readingAt(const Check& check, std::size_t step) {
  return step < check.readings.size() && check.readings[step] ? &*check.readings[step] : nullptr;
}

/// Readings are subtracted from each other, so all of them have as many places as the greatest.
int placesOf(const WorkingGround& ground, const Check& check, std::optional<std::size_t> zeroStep) {
  double greatest = std::abs(ground.predicted.reading.base());
  for (const auto& step : {std::optional(ground.step), zeroStep})
    if (step) greatest = std::max(greatest, std::abs(readingAt(check, *step)->mean.base()));
  return placesFor(greatest);
}

void addChange(WorkingPart& part, const WorkingGround& ground, const Check& check,
               const CheckAssessment& assessment, const StepAssessment& judged) {
  const auto zeroStep = assessment.zeroStep;
  const int places = placesOf(ground, check, zeroStep);
  const auto text = [&](Reading value) {
    return fixed(value.base(), places, readingUnitText(ground.setup.instrument));
  };
  const Reading reading = readingAt(check, ground.step)->mean;
  const Reading zero = zeroStep ? readingAt(check, *zeroStep)->mean : Reading(0);
  part.lines.push_back(
      zeroStep ? WorkingLine{say("Zero reference, the reading of step {1}", {std::to_string(*zeroStep + 1)}),
                             "m₀", "", text(zero)}
               : WorkingLine{say("Zero reference"), "m₀", "",
                             say("0: no zero step was read, readings are taken as shown")});
  part.lines.push_back({say("Change"), say("y = m − m₀"), text(reading) + " − " + inFormula(text(zero)),
                        text(*judged.change)});
  part.lines.push_back({say("Deviation"), say("d = y − expected"),
                        text(*judged.change) + " − " + inFormula(text(ground.predicted.reading)),
                        text(*judged.deviation)});
}

/// How the limit came about; of E_n there is none.
void addLimit(WorkingPart& part, const WorkingGround& ground, const StepAssessment& judged) {
  const Setup& setup = ground.setup;
  const Limits& limits = setup.limits;
  if (setup.decision.rule == DecisionRule::EnNumber) return;
  double of = std::abs(ground.predicted.reading.base());
  if (ground.isZeroStep())
    for (const auto& step : ground.prediction.steps)
      if (step) of = std::max(of, std::abs(step->reading.base()));
  const bool zero = ground.isZeroStep(), least = limits.least.base() > 0;
  const std::string formula = zero ? say("share × greatest |expected|") : say("share × |expected|");
  const std::string numbers =
      plainPercent(zero ? limits.zeroReturn : limits.relative) + " × " + readingText(setup, of);
  const std::string floor = readingText(setup, limits.least.base());
  part.lines.push_back({zero ? say("Limit of the return to zero") : say("Limit"),
                        say("L = {1}", {(least ? say("max({1}, least)", {formula}) : formula)}),
                        least ? say("max({1}, {2})", {numbers, floor}) : numbers,
                        readingText(setup, judged.limit->base())});
}

void addSpread(WorkingPart& part, const WorkingGround& ground, const Check& check,
               const CheckAssessment& assessment, const StepAssessment& judged) {
  const Setup& setup = ground.setup;
  const auto own = [&](std::optional<std::size_t> step) {
    const Measured* reading = step ? readingAt(check, *step) : nullptr;
    return reading && reading->uncertainty ? reading->uncertainty->base() : 0;
  };
  const auto& expected = ground.budget.of(Scope::Chain).steps[ground.step];
  if (!expected || !judged.standard) return;
  std::string numbers = "√((" + spreadText(setup, expected->standard) + ")²";
  for (const double u : {own(ground.step), own(assessment.zeroStep)})
    numbers += " + (" + spreadText(setup, u) + ")²";
  part.lines.push_back({say("Standard uncertainty of the deviation, chain: expected, reading, zero reading"),
                        say("u(d) = √(u²(expected) + u²(m) + u²(m₀))"), numbers + ")",
                        spreadText(setup, judged.standard->base())});
  if (!judged.decided || !judged.decided->expanded || judged.standard->base() == 0) return;
  const double k = *judged.decided->expanded / judged.standard->base();
  part.lines.push_back(
      {say("Expanded uncertainty of the deviation, {1}", {plainPercent(setup.decision.coverage, 5)}),
       "U = k u(d)", core::shown(formatFixed(k, 2)) + " × " + spreadText(setup, judged.standard->base()),
       spreadText(setup, *judged.decided->expanded)});
}

/// The rule as a formula, and the same with the numbers of this step.
struct RuleText {
  std::string formula, numbers;
};

RuleText ruleText(const Setup& setup, const StepAssessment& judged) {
  const Decision& rule = setup.decision;
  const Decided& decided = *judged.decided;
  const std::string deviation = number(judged.deviation->base(), readingUnitText(setup.instrument), 3);
  const std::string d = "|" + deviation + "|";
  const std::string limit = readingText(setup, judged.limit->base());
  const auto spread = [&](const std::optional<double>& value) {
    return value ? spreadText(setup, *value) : std::string(say("not known"));
  };
  switch (rule.rule) {
    case DecisionRule::Simple:
      return {say("|d| ≤ L passes"), say("{1} against {2}", {d, limit})};
    case DecisionRule::SharedRisk:
      return {say("|d| ≤ L passes if U ≤ {1} of L", {plainPercent(rule.greatestShare)}),
              say("{1} against {2}, U = {3}", {d, limit, spread(decided.expanded)})};
    case DecisionRule::Guarded:
      return {say("|d| ≤ L − g passes, > L + g fails, g = {1} U", {number(rule.guardFactor)}),
              say("{1} against {2}, g = {3}", {d, limit, spread(decided.guardBand)})};
    case DecisionRule::Conformity:
      return {say("P(|true d| ≤ L) ≥ {1} passes, ≤ {2} fails",
                  {plainPercent(rule.conformity, 4), plainPercent(1 - rule.conformity, 4)}),
              decided.probability ? "P = " + core::shown(formatFixed(100 * *decided.probability, 1)) + " %"
                                  : say("P not known")};
    case DecisionRule::EnNumber:
      return {say("|Eₙ| ≤ 1 passes, Eₙ = d / U"),
              readingText(setup, judged.deviation->base()) + " / " + spread(decided.expanded) +
                  (decided.en ? " = " + core::shown(formatFixed(*decided.en, 2)) : "")};
  }
  return {};
}

}  // namespace

WorkingPart verdictPart(const WorkingGround& ground, const Check& check, const CheckAssessment& assessment) {
  WorkingPart part{say("The verdict"), {}};
  const StepAssessment& judged = assessment.steps[ground.step];
  const bool finite = judged.deviation && std::isfinite(judged.deviation->base());
  if (!finite) {
    part.lines.push_back({say("Verdict"), "", "", std::string(verdictWord(judged.verdict))});
    part.lines.push_back({say("In words"), "", "", judged.reason});
    return part;
  }
  if (assessment.zeroStep == ground.step) {
    part.lines.push_back({say("Zero reference, this step's own reading"), "m₀", "",
                          readingText(ground.setup, readingAt(check, ground.step)->mean.base())});
  } else {
    addChange(part, ground, check, assessment, judged);
    if (judged.decided) {
      addLimit(part, ground, judged);
      addSpread(part, ground, check, assessment, judged);
      const RuleText rule = ruleText(ground.setup, judged);
      part.lines.push_back({say("Decision by {1}", {decisionRuleName(ground.setup.decision.rule)}),
                            rule.formula, rule.numbers, std::string(verdictWord(judged.verdict))});
    }
  }
  part.lines.push_back({say("In words"), "", "", judged.reason});
  return part;
}

}  // namespace core
