// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/assess/merits.h"

#include <algorithm>
#include <cctype>
#include <cmath>

#include "core/assess/judging.h"
#include "core/assess/merit_figures.h"
#include "core/units/language.h"
#include "core/units/notation.h"
#include "core/units/shown.h"

namespace core {
namespace {

bool isOfZero(MeritKind kind) { return kind == MeritKind::ZeroReturn || kind == MeritKind::ZeroShift; }

/// Of sum of w_i y_i; of the readings as shown, whose zero is a reading too. 0 where all that the steps have
/// in common cancels and no reading has an uncertainty of its own.
double standardOf(const CheckPoints& points, std::vector<double> weights) {
  double sum = 0;
  for (const double weight : weights) sum += weight;
  if (points.zero) weights[*points.zero] -= sum;
  double variance = 0, size = 0;
  for (std::size_t i = 0; i < points.size(); ++i) {
    if (weights[i] == 0) continue;
    for (std::size_t j = 0; j < points.size(); ++j) {
      const double term = weights[i] * weights[j] * points.covariance[i * points.size() + j];
      variance += term;
      size += std::abs(term);
    }
  }
  // Terms that cancel leave their rounding, some 1e-15 of them.
  return variance > 1e-13 * size ? std::sqrt(variance) : 0;
}

/// The error of the first step whose uncertainty is refused.
std::string refusal(const MeritGround& ground) {
  for (const std::size_t step : ground.points.steps)
    if (const auto& uncertainty = ground.budget.of(Scope::Chain).steps[step]; !uncertainty)
      return uncertainty.error().text();
  return say("the uncertainty of the readings is not known");
}

/// Standard uncertainty of the figure in the readings' unit, with its degrees of freedom.
Result<StepUncertainty> uncertaintyOf(const MeritGround& ground, MeritKind kind, const MeritFigure& figure) {
  StepUncertainty uncertainty;
  if (!isOfZero(kind)) {
    if (ground.points.covariance.empty()) return Error{"", refusal(ground), ""};
    uncertainty.standard = standardOf(ground.points, figure.weights);
    return uncertainty;
  }
  const auto& step = ground.budget.of(Scope::Chain).steps[*figure.step];
  if (!step) return Error{"", step.error().text(), ""};
  uncertainty.standard = deviationUncertainty(ground.check, ground.zeroStep, *figure.step, *step).base();
  uncertainty.dof = step->dof;
  return uncertainty;
}

/// No reading is exact: an uncertainty of 0 is one that nobody has stated. Zero return is decided as its step
/// is, which takes it for known.
bool isKnown(MeritKind kind, double standard) { return standard > 0 || kind == MeritKind::ZeroReturn; }

/// As a share of `denominator`; none where none is set, or where zero return has no denominator.
std::optional<double> limitFor(const MeritGround& ground, MeritKind kind, double denominator) {
  const Limits& limits = ground.setup.limits;
  if (kind == MeritKind::ZeroReturn && denominator == 0) return std::nullopt;
  if (kind == MeritKind::ZeroReturn) return zeroReturnLimit(limits, ground.prediction).base() / denominator;
  const auto found = limits.merits.find(kind);
  return found == limits.merits.end() ? std::nullopt : std::optional(found->second);
}

std::string nameOf(MeritKind kind) {
  std::string name(meritKindName(kind));
  name[0] = static_cast<char>(std::toupper(static_cast<unsigned char>(name[0])));
  return name;
}

/// "2.0 µm/m", "2.0 µm/m at step 4", "2.0 µm/m at +1000 µm/m (step 4)"
std::string denominatorAtStep(const MeritGround& ground, const MeritFigure& figure, MeritKind kind) {
  std::string denominator(denominatorName(kind));
  if (!figure.step) return denominator;
  const std::string number = std::to_string(*figure.step + 1);
  if (isOfZero(kind)) return say("{1} at step {2}", {denominator, number});
  const double simulated =
      simulatedInUnit(ground.setup.bridge, ground.prediction.steps[*figure.step]->simulated);
  const std::string strain = (simulated > 0 ? "+" : "") + core::shown(formatNumber(simulated, 4)) + " " +
                             simulatedUnitText(ground.setup.bridge);
  return say("{1} at {2} (step {3})", {denominator, strain, number});
}

/// As many places as the limit warrants, else the uncertainty, else two; never more than four without a
/// limit.
int warrantedPlaces(const Merit& merit) {
  if (merit.limit && *merit.limit > 0 && std::isfinite(*merit.limit))
    return placesBeside(100 * *merit.share, 100 * *merit.limit);
  if (!merit.standard || !(*merit.standard > 0)) return 2;
  return std::clamp(placesOf(100 * *merit.standard), 1, 4);
}

/// Places of a share in percent: those that are warranted, and no fewer than show one digit of the share or
/// of its uncertainty, up to six: smaller still is rounding.
int sharePlaces(const Merit& merit) {
  const int places = warrantedPlaces(merit);
  const double size = std::max(std::abs(*merit.share), merit.standard.value_or(0));
  const int showing = placesShowing(100 * size, places);
  return showing <= 6 ? showing : places;
}

/// Places that resolve a reading as finely as the share of `denominator` is shown.
int readingPlaces(const Merit& merit) {
  const double unit = merit.denominator * std::pow(10.0, -2 - sharePlaces(merit));
  return static_cast<int>(std::clamp(std::ceil(-std::log10(unit)), 0.0, 12.0));
}

std::string slopesText(const Merit& merit, const MeritFigure& figure) {
  const int places = sharePlaces(merit) + 2;
  const std::string rising = core::shown(formatFixed(figure.slopes[0], places));
  const std::string falling = core::shown(formatFixed(figure.slopes[1], places));
  if (!(merit.standard && *merit.standard > 0))
    return say("slope {1} of the positive and {2} of the negative half", {rising, falling});
  return say(
      "slope {1} of the positive and {2} of the negative half, standard uncertainty of the difference {3} %",
      {rising, falling, core::shown(formatFixed(100 * *merit.standard, placesOf(100 * *merit.standard)))});
}

std::string factsOf(const MeritGround& ground, const Merit& merit, const MeritFigure& figure) {
  const auto plain = [&](double value) { return core::shown(formatFixed(value, readingPlaces(merit))); };
  const std::string unit = readingUnitText(ground.setup.instrument);
  const std::string value = plain(figure.value) + " " + unit;
  switch (merit.kind) {
    case MeritKind::Nonlinearity:
    case MeritKind::CombinedError:
      return say("{1} from the {2} of measured against expected",
                 {value, referenceLineName(ground.setup.limits.linearityFrom)});
    case MeritKind::Hysteresis:
      return say("falling less rising {1}", {value});
    case MeritKind::Repeatability:
      return say("{1} {2} readings spread over {3}",
                 {std::to_string(figure.repeats), figure.direction, value});
    case MeritKind::ZeroReturn:
      return say("last less first zero reading {1}", {value});
    case MeritKind::ZeroShift:
      return say("{1} from the first zero reading", {value});
    case MeritKind::Symmetry:
      return slopesText(merit, figure);
    case MeritKind::SpanRatio:
      return say("{1} {2} measured, {3} {4} expected",
                 {plain(figure.spans[0]), unit, plain(figure.spans[1]), unit});
  }
  return {};
}

/// "within the limit of 0.50 %; decided with a guard band of 0.04 %"
std::string judgement(const MeritGround& ground, const Merit& merit) {
  if (ground.setup.decision.rule == DecisionRule::EnNumber && !merit.decided->expanded)
    return say("its uncertainty is not known, and without it there is no E_n");
  const bool isWithin = std::abs(*merit.share) <= *merit.limit;
  const auto shown = [](double share) {
    return core::shown(formatFixed(100 * share, placesOf(100 * share))) + " %";
  };
  const std::string limit =
      say(isWithin ? sayLater("within the limit of {1}") : sayLater("beyond the limit of {1}"),
          {limitText(merit)});
  const std::string rule = ruleReason(ground.setup.decision, *merit.decided, *merit.limit, shown);
  return rule.empty() ? limit : sayClauses({limit, rule});
}

/// Decides on a figure that has a limit; in words, or why it is not judged. In the readings' unit, so that
/// zero return has the very limit of its step.
std::string judge(const MeritGround& ground, const Result<StepUncertainty>& uncertainty, Merit& merit) {
  const double limit = merit.kind == MeritKind::ZeroReturn
                           ? zeroReturnLimit(ground.setup.limits, ground.prediction).base()
                           : *merit.limit * merit.denominator;
  if (!(limit >= 0) || !std::isfinite(limit) || !limitsUsable(ground.setup.limits))
    return say("not judged, a limit is negative or not a number");
  if (!uncertainty) return say("not judged, {1}", {uncertainty.error().what});
  const Decision& rule = ground.setup.decision;
  merit.decided =
      decide(rule, *merit.value, limit, merit.standard ? std::optional(uncertainty->standard) : std::nullopt,
             uncertainty->dof);
  for (auto* number : {&merit.decided->expanded, &merit.decided->guardBand})
    if (*number) **number /= merit.denominator;
  if (rule.rule == DecisionRule::EnNumber && merit.decided->expanded) merit.limit = merit.decided->expanded;
  merit.verdict = verdictOf(merit.decided->outcome);
  return judgement(ground, merit);
}

Merit meritOf(const MeritGround& ground, MeritKind kind) {
  MeritFigure figure = figureOf(ground, kind);
  Merit merit;
  merit.kind = kind;
  if (figure.missing.empty() && !std::isfinite(figure.value / figure.denominator))
    figure.missing = say("the readings are too large to reckon with");
  merit.limit = limitFor(ground, kind, figure.missing.empty() ? figure.denominator : 0);
  if (!figure.missing.empty()) {
    merit.missing = std::move(figure.missing);
    merit.reason = say("{1} is not known: {2}.", {nameOf(kind), merit.missing});
    return merit;
  }
  merit.definition = std::move(figure.definition);
  merit.denominator = figure.denominator;
  merit.value = figure.value;
  merit.share = figure.value / figure.denominator;
  merit.step = figure.step;
  const auto uncertainty = uncertaintyOf(ground, kind, figure);
  if (uncertainty && isKnown(kind, uncertainty->standard))
    merit.standard = uncertainty->standard / figure.denominator;
  const std::string outcome = merit.limit ? judge(ground, uncertainty, merit) : say("no limit is set");
  merit.reason = say("{1} {2} of {3}, {4}: {5}.",
                     {nameOf(kind), shareText(merit), denominatorAtStep(ground, figure, kind),
                      factsOf(ground, merit, figure), outcome});
  return merit;
}

}  // namespace

std::vector<Merit> meritsOf(const Setup& setup, const SetupPrediction& prediction, const Budget& budget,
                            const Check& check, const CheckPoints& points) {
  const MeritGround ground{setup, prediction, budget, check, points};
  std::vector<Merit> merits;
  merits.reserve(meritKindCount);
  for (std::size_t kind = 0; kind < meritKindCount; ++kind)
    merits.push_back(meritOf(ground, static_cast<MeritKind>(kind)));
  return merits;
}

std::vector<Merit> meritsOf(const Setup& setup, const SetupPrediction& prediction, const Budget& budget,
                            const Check& check) {
  return meritsOf(setup, prediction, budget, check, checkPoints(setup, prediction, budget, check));
}

std::string_view denominatorName(MeritKind kind) {
  switch (kind) {
    case MeritKind::Nonlinearity:
    case MeritKind::Hysteresis:
    case MeritKind::Repeatability:
    case MeritKind::CombinedError:
      return sayName("the measured span");
    case MeritKind::ZeroReturn:
    case MeritKind::ZeroShift:
      return sayName("the greatest expected reading");
    case MeritKind::Symmetry:
      return sayName("the expected slope");
    case MeritKind::SpanRatio:
      return sayName("the expected span");
  }
  return {};
}

std::string shareText(const Merit& merit) {
  return merit.share ? core::shown(formatFixed(100 * *merit.share, sharePlaces(merit))) + " %"
                     : std::string();
}

std::string valueText(const Merit& merit) {
  return merit.value ? core::shown(formatFixed(*merit.value, readingPlaces(merit))) : std::string();
}

std::string limitText(const Merit& merit) {
  if (!merit.limit) return {};
  const int places = merit.share ? sharePlaces(merit) : placesOf(100 * *merit.limit);
  return core::shown(formatFixed(100 * *merit.limit, places)) + " %";
}

}  // namespace core
