// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/figures.h"

#include <algorithm>
#include <cmath>
#include <tuple>

#include "core/compare/comparison_words.h"
#include "core/report/record_words.h"
#include "core/units/language.h"
#include "core/units/notation.h"
#include "core/units/number_list.h"
#include "core/units/shown.h"

namespace core {
namespace {

/// "1.2 µm/m", or a word where there is no number.
std::string withUnit(double value, const std::string& unit) {
  if (!std::isfinite(value)) return shownNumber(value, 0);
  return shown(formatNumber(value, 4)) + " " + unit;
}

std::string percent(double share) { return shown(formatNumber(100 * share, 4)) + " %"; }

/// Without unit where readings are in the unit of what is simulated: the slope is then a plain ratio.
std::string slopeText(const Setup& setup, const Line& line) {
  const std::string reading = readingUnitText(setup.instrument), simulated = simulatedUnitText(setup.bridge);
  const std::string text = shown(withError(line.slope, line.slopeError));
  return reading == simulated ? text : say("{1} {2} per {3}", {text, reading, simulated});
}

const Merit* meritOf(const CheckAssessment& assessment, MeritKind kind) {
  const auto found = std::find_if(assessment.merits.begin(), assessment.merits.end(),
                                  [&](const Merit& merit) { return merit.kind == kind; });
  return found == assessment.merits.end() ? nullptr : &*found;
}

/// "0.4 µm/m, limit 15 µm/m"
std::string zeroReturnText(const Setup& setup, const CheckAssessment& assessment) {
  if (!assessment.zeroReturn) return say("not known: fewer than two zero readings");
  const std::string unit = readingUnitText(setup.instrument);
  const Merit* merit = meritOf(assessment, MeritKind::ZeroReturn);
  const std::string value = merit && merit->value ? shown(valueText(*merit)) + " " + unit
                                                  : withUnit(assessment.zeroReturn->base(), unit);
  // By its E_n it has no limit but its own uncertainty, which stands with the step.
  if (setup.decision.rule == DecisionRule::EnNumber) return value;
  const double limit = assessment.zeroReturnLimit.base();
  return say("{1}, limit {2}", {value, shown(formatFixed(limit, placesOf(limit))) + " " + unit});
}

std::string judgedText(const CheckAssessment& assessment) {
  const auto judged = std::count_if(assessment.steps.begin(), assessment.steps.end(),
                                    [](const auto& step) { return step.verdict != Verdict::NotJudged; });
  const auto open = std::count_if(assessment.steps.begin(), assessment.steps.end(),
                                  [](const auto& step) { return step.verdict == Verdict::CannotTell; });
  const std::string text =
      say("{1} of {2}", {std::to_string(judged), std::to_string(assessment.steps.size())});
  return open == 0 ? text : say("{1}, of {2} the rule cannot tell", {text, std::to_string(open)});
}

/// "step 2: no finite reading", "steps 2 and 5: ..."; empty when every reading is a finite number.
std::string stepsWithoutNumber(const CheckAssessment& assessment) {
  std::vector<std::size_t> steps;
  for (std::size_t k = 0; k < assessment.steps.size(); ++k) {
    const auto& change = assessment.steps[k].change;
    if (change && !std::isfinite(change->base())) steps.push_back(k);
  }
  if (steps.empty()) return {};
  return sayCount(steps.size(), "step {1}: no finite reading", "steps {1}: no finite reading",
                  {numberList(steps)});
}

double greatestChange(const CheckAssessment& assessment) {
  double greatest = 0;
  for (const auto& step : assessment.steps)
    if (step.change && std::isfinite(step.change->base()))
      greatest = std::max(greatest, std::abs(step.change->base()));
  return greatest;
}

/// What is left of an intercept when the line runs through zero exactly: doubles are good to 1.1e-16 of the
/// readings, the change from zero is a difference of two, and no instrument shows twelve digits.
bool isRounding(const Line& line, double greatest) {
  const double rounding = 1e-12 * greatest;
  return std::abs(line.intercept) < rounding && line.interceptError.value_or(0) < rounding;
}

std::string rSquaredText(const Line& line) {
  if (!line.throughZero && line.degreesOfFreedom == 0) return say("not known: two points only");
  return line.rSquared ? shown(formatFixed(*line.rSquared, 7)) : say("not known: all readings alike");
}

/// How the line was fitted, to what, and why no stated uncertainty weighs in it where there are some.
std::string fitText(const CheckAssessment& assessment) {
  const std::string text = say("measured against simulated, {1}", {lineFitName(assessment.line->fit)});
  const bool isStated = assessment.agreement && assessment.agreement->fit != LineFit::Ordinary;
  if (assessment.line->fit != LineFit::Ordinary || !isStated) return text;
  return say("{1}: the bridge's own curvature is larger than the uncertainties", {text});
}

void addLine(std::vector<Entry>& figures, const Setup& setup, const CheckAssessment& assessment) {
  const Result<Line>& line = assessment.line;
  if (!line) {
    figures.push_back(
        {say("Line"), say("measured against simulated, not fitted: {1}", {line.error().text()})});
    return;
  }
  const std::string unit = readingUnitText(setup.instrument);
  const std::string intercept = isRounding(*line, greatestChange(assessment))
                                    ? "0"
                                    : shown(withError(line->intercept, line->interceptError));
  figures.push_back({say("Line"), fitText(assessment)});
  figures.push_back({say("Slope"), slopeText(setup, *line)});
  figures.push_back({say("Intercept"), intercept + " " + unit});
  figures.push_back({say("Residual deviation"), line->residualDeviation
                                                    ? withUnit(*line->residualDeviation, unit)
                                                    : say("not known: too few points")});
  figures.push_back({"R²", rSquaredText(*line)});
}

/// "χ² = 6.1 with 7 degrees of freedom, as the stated uncertainties allow"
std::string scatterText(const Line& agreement) {
  if (!agreement.chiSquare) return say("not compared: a reading has no stated uncertainty");
  if (!agreement.chiSquareProbability) return say("not known: too few points");
  const double probability = *agreement.chiSquareProbability;
  const std::string chiSquare = shown(formatNumber(*agreement.chiSquare, 3));
  const std::string degrees = std::to_string(agreement.degreesOfFreedom);
  if (probability >= 0.05)
    return say("χ² = {1} with {2} degrees of freedom, as the stated uncertainties allow",
               {chiSquare, degrees});
  const std::string text =
      probability < 1e-4 ? say("below {1}", {shown("0.01")}) : shown(formatNumber(100 * probability, 2));
  return say(
      "χ² = {1} with {2} degrees of freedom, probability {3} %: scatter about the line is larger than the "
      "stated "
      "uncertainties",
      {chiSquare, degrees, text});
}

/// "1.0012 ± 0.0004, slope of measured against expected"
std::string gainText(const ChainGain& gain) {
  std::string text =
      say("{1}, slope of measured against expected", {shown(withError(gain.value, gain.standard))});
  if (gain.isWidened) text += "; " + say("widened, the points scatter more than stated");
  if (!gain.describesReadings) text += "; " + say("the line does not describe these readings");
  return text;
}

/// How the readings agree with what was expected, whatever curvature the bridge itself has.
void addAgreement(std::vector<Entry>& figures, const CheckAssessment& assessment) {
  if (!assessment.agreement) return;
  if (assessment.gain) figures.push_back({say("Gain of the chain"), gainText(*assessment.gain)});
  figures.push_back({say("Scatter"), scatterText(*assessment.agreement)});
}

/// "0.025 ± 0.016 %"
std::string shareWithError(const Merit& merit) {
  const bool hasError = merit.standard && *merit.standard > 0;
  return shown(hasError ? withError(100 * *merit.share, 100 * *merit.standard) + " %" : shareText(merit));
}

/// "0.025 ± 0.016 % of the measured span at step 2, limit 0.50 %: pass"
std::string meritText(const Setup& setup, const CheckAssessment& assessment, const Merit& merit) {
  if (!merit.value) return say("not known: {1}", {merit.missing});
  const std::string share = say("{1} of {2}", {shareWithError(merit), denominatorName(merit.kind)});
  const std::string verdict = merit.limit ? ": " + std::string(verdictWord(merit.verdict)) : std::string();
  if (merit.kind == MeritKind::ZeroReturn) return zeroReturnText(setup, assessment) + verdict + "; " + share;
  const std::string step =
      merit.step ? " " + say("at step {1}", {std::to_string(*merit.step + 1)}) : std::string();
  const bool isByUncertainty = setup.decision.rule == DecisionRule::EnNumber && merit.decided;
  const std::string size =
      isByUncertainty && !merit.decided->expanded ? say("not known") : shown(limitText(merit));
  if (!merit.limit) return share + step;
  return share + step + ", " + (isByUncertainty ? say("U {1}", {size}) : say("limit {1}", {size})) + verdict;
}

void addMerits(std::vector<Entry>& figures, const Setup& setup, const CheckAssessment& assessment) {
  for (const Merit& merit : assessment.merits)
    figures.push_back({meritHeading(merit.kind), meritText(setup, assessment, merit)});
}

std::string changeText(const std::optional<Difference>& difference, const std::string& amount,
                       const std::string& margin) {
  if (!difference) return say("not known");
  return say("{1} (margin {2}): {3}", {amount, margin, say(changeName(difference->change))});
}

std::string slopesText(const Setup& setup, const Result<Line>& line) {
  return line ? slopeText(setup, *line) : say("not fitted");
}

}  // namespace

int decimalsFor(std::span<const double> values) {
  double greatest = 0;
  for (const double value : values)
    if (std::isfinite(value)) greatest = std::max(greatest, std::abs(value));
  if (greatest == 0) return 1;
  return static_cast<int>(std::clamp(5 - std::floor(std::log10(greatest)), 0.0, 9.0));
}

std::string shownNumber(const std::optional<double>& value, int decimals) {
  if (!value) return {};
  if (std::isnan(*value)) return say("not a number");
  if (std::isinf(*value)) return say("infinite");
  return std::abs(*value) < 1e12 ? formatFixed(*value, decimals) : formatNumber(*value, 6);
}

int decimalsOfUncertainty(double uncertainty) { return placesOf(uncertainty); }

std::string shownUncertainty(const std::optional<double>& uncertainty) {
  if (!uncertainty || !std::isfinite(*uncertainty)) return shownNumber(uncertainty, 0);
  const double size = std::abs(*uncertainty);
  if (size > 0 && (size < 1e-7 || size >= 1e12)) return formatNumber(*uncertainty, 2);
  return formatFixed(*uncertainty, decimalsOfUncertainty(*uncertainty));
}

std::string withError(double value, const std::optional<double>& error) {
  if (!error || !std::isfinite(*error) || !std::isfinite(value)) return formatNumber(value, 6);
  if (*error < 1e-9 || *error >= 1e9) return formatNumber(value, 6) + " ± " + formatNumber(*error, 2);
  const int decimals = decimalsOfUncertainty(*error);
  return formatFixed(value, decimals) + " ± " + formatFixed(*error, decimals);
}

std::string decisionText(const Decision& decision) {
  const std::string name(decisionRuleName(decision.rule));
  const std::string coverage = percent(decision.coverage);
  switch (decision.rule) {
    case DecisionRule::Simple:
      return say("{1}, U plays no part", {name});
    case DecisionRule::SharedRisk:
      return say("{1}, U at most {2} of the limit, coverage {3}",
                 {name, percent(decision.greatestShare), coverage});
    case DecisionRule::Guarded:
      return say("{1}, guard band {2} × U, coverage {3}",
                 {name, shown(formatNumber(decision.guardFactor, 4)), coverage});
    case DecisionRule::Conformity:
      return say("{1}, {2} passes, {3} fails",
                 {name, percent(decision.conformity), percent(1 - decision.conformity)});
    case DecisionRule::EnNumber:
      return say("{1}, a size up to 1 passes, coverage {2}", {name, coverage});
  }
  return name;
}

std::vector<Entry> figuresOf(const Channel& channel, const ChannelEvaluation& evaluation, std::size_t check) {
  const Setup& setup = setupOf(channel, channel.checks[check]);
  const CheckAssessment& assessment = evaluation.checks[check].assessment;
  std::vector<Entry> figures;
  addLine(figures, setup, assessment);
  if (const std::string steps = stepsWithoutNumber(assessment); !steps.empty())
    figures.push_back({say("Left out of the line"), steps});
  addAgreement(figures, assessment);
  addMerits(figures, setup, assessment);
  figures.push_back({say("Steps judged"), judgedText(assessment)});
  return figures;
}

std::string probabilityText(double probability, bool named) {
  if (probability < 1e-4) return shown(std::string(named ? "p < 0.0001" : "< 0.0001"));
  return (named ? "p = " : "") + shown(formatNumber(probability, 2));
}

std::vector<Entry> comparedFigures(const Channel& channel, const Comparison& comparison, std::size_t before) {
  const std::string unit = " " + readingUnitText(setupOf(channel, channel.checks[before]).instrument);
  const auto& [gain, zero] = std::tie(comparison.gain, comparison.zero);
  std::vector<Entry> figures;
  figures.push_back({say("Change of gain"), changeText(gain, gain ? gainText(*gain) : "",
                                                       gain ? marginText(gain->margin, 100, " %") : "")});
  figures.push_back({say("Change of zero"), changeText(zero, zero ? differenceText(*zero, 1, unit) : "",
                                                       zero ? marginText(zero->margin, 1, unit) : "")});
  if (gain && gain->en)
    figures.push_back({say("E_n of the change of gain"), shown(formatFixed(*gain->en, 2))});
  if (comparison.jointProbability)
    figures.push_back(
        {say("All steps together, if nothing moved"), probabilityText(*comparison.jointProbability, true)});
  if (comparison.repeats)
    figures.push_back({say("Repeats of both checks that would tell"), std::to_string(*comparison.repeats)});
  return figures;
}

std::vector<Entry> figuresOf(const Channel& channel, const ChannelEvaluation& evaluation,
                             const Comparison& comparison, std::size_t before, std::size_t after) {
  const Setup& setup = setupOf(channel, channel.checks[before]);
  const Setup& setupAfter = setupOf(channel, channel.checks[after]);
  const CheckAssessment& first = evaluation.checks[before].assessment;
  const CheckAssessment& second = evaluation.checks[after].assessment;
  const std::string& nameBefore = channel.checks[before].name;
  const std::string& nameAfter = channel.checks[after].name;
  std::vector<Entry> figures = comparedFigures(channel, comparison, before);
  figures.push_back({say("Slope, {1}", {nameBefore}), slopesText(setup, first.line)});
  figures.push_back({say("Slope, {1}", {nameAfter}), slopesText(setupAfter, second.line)});
  figures.push_back({say("Zero return, {1}", {nameBefore}), zeroReturnText(setup, first)});
  figures.push_back({say("Zero return, {1}", {nameAfter}), zeroReturnText(setupAfter, second)});
  return figures;
}

std::string setupDifferenceSentence(const Comparison& comparison) {
  constexpr std::size_t named = 3;
  const auto& all = comparison.configuration;
  if (all.empty()) return say("Both checks were judged by the same set-up.");
  std::string list;
  for (std::size_t k = 0; k < std::min(all.size(), named); ++k)
    list +=
        (k == 0 ? "" : "; ") + say("{1} {2} before, {3} after", {all[k].what, all[k].before, all[k].after});
  if (all.size() <= named) return say("The set-ups differ: {1}.", {list});
  return say("The set-ups differ: {1}; and in {2} more.", {list, std::to_string(all.size() - named)});
}

}  // namespace core
