// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/budget/inputs.h"
#include "core/review/reviewed_plan.h"
#include "core/units/language.h"
#include "core/units/notation.h"

namespace core {
namespace {

/// Numbers that cannot be, out of a file or typed.
class Values {
 public:
  explicit Values(std::vector<Finding>& findings) : m_findings(findings) {}

  void refuse(bool impossible, std::optional<std::size_t> step, std::optional<std::size_t> shunt,
              const std::string& what) {
    if (!impossible) return;
    m_findings.push_back({FindingKind::ImpossibleValue,
                          Severity::Fault,
                          step,
                          shunt,
                          what,
                          say("What is reckoned with it means nothing."),
                          {}});
  }

 private:
  std::vector<Finding>& m_findings;
};

/// Not above zero; true of what is no number too.
bool isNotAbove(double least, double value) { return !(value > least); }
bool isBelow(double least, double value) { return !(value >= least); }

/// What an arm can have. Strain gauges, piezoresistors included, and completion resistors lie between some
/// 30 Ω and 50 kΩ; the range is wider by more than a decade at either end. Below 1 Ω wires and contacts are
/// more than the arm; above 10 MΩ the insulation of a gauge (usually 100 MΩ are asked for) and the input of
/// the instrument are a part of it. Common practice, no source. What is not above zero is refused by the
/// prediction.
constexpr Resistance leastArm(1), greatestArm(10e6);

void findImpossibleArms(const Setup& setup, Values& values) {
  for (std::size_t k = 0; k < setup.bridge.arms.size(); ++k) {
    const Resistance arm = setup.bridge.arms[k];
    const bool isOutside = arm.base() > 0 && (arm < leastArm || arm > greatestArm);
    values.refuse(
        isOutside, {}, {},
        say("Arm {1} has {2}: no arm of a bridge has less than 1 Ω or more than 10 MΩ.",
            {std::to_string(k + 1), shown(formatQuantity(arm.base(), UnitFamily::Resistance, {}, 6))}));
  }
}

/// What a gauge factor can be. Metal foil has about 2 (0.5 to some 6 by its alloy), a semiconductor up to
/// some 200. A setting may carry the bridge factor, 1 to 4, of an instrument that has none to set. From
/// memory, no source. What is not above zero is refused by the prediction.
constexpr double leastFactor = 0.5, greatestFactor = 250, greatestBridgeFactor = 4;

void findImpossibleFactors(const Setup& setup, Values& values) {
  if (isTransducer(setup.bridge)) return;
  const auto isOutside = [](double factor, double least, double greatest) {
    return factor > 0 && !(factor >= least && factor <= greatest);
  };
  const double factor = setup.bridge.gauge.factor, set = setup.instrument.gaugeFactor;
  const auto text = [](double number) { return shown(formatNumber(number, 6)); };
  values.refuse(isOutside(factor, leastFactor, greatestFactor), {}, {},
                say("The gauge factor is {1}: no strain gauge has less than {2} or more than {3}.",
                    {text(factor), text(leastFactor), text(greatestFactor)}));
  const double least = leastFactor / greatestBridgeFactor, greatest = greatestFactor * greatestBridgeFactor;
  values.refuse(
      setup.instrument.unit == ReadingUnit::MicrometrePerMetre && isOutside(set, least, greatest), {}, {},
      say("The gauge factor set at the instrument is {1}: even with a bridge factor in it, no strain "
          "gauge asks for less than {2} or more than {3}.",
          {text(set), text(least), text(greatest)}));
}

void findImpossibleShunts(const Setup& setup, Values& values) {
  for (std::size_t k = 0; k < setup.shunts.size(); ++k) {
    const Shunt& shunt = setup.shunts[k];
    values.refuse(isNotAbove(0, shunt.resistance.base()), {}, k, say("Its resistance is not above 0 Ω."));
    values.refuse(isBelow(0, shunt.wires.base()) || isBelow(0, shunt.contact.base()), {}, k,
                  say("Its wires or its switch have less than 0 Ω."));
    values.refuse(shunt.part.rating && isNotAbove(0, shunt.part.rating->base()), {}, k,
                  say("Its power rating is not above 0 W."));
  }
}

/// A day's work; beyond, somebody has mistaken the unit. Common practice, no source.
constexpr Duration longestTime(8 * 3600);

void findImpossibleTimes(const Setup& setup, Values& values) {
  for (std::size_t k = 0; k < setup.sequence.size(); ++k) {
    const Step& step = setup.sequence[k];
    values.refuse(isNotAbove(0, step.hold.base()), k, {}, say("It is held for no time."));
    values.refuse(isBelow(0, step.settle.base()), k, {}, say("It settles in less than no time."));
    values.refuse(
        step.hold > longestTime, k, {},
        say("It is held for {1}, longer than a day's work of 8 h.", {secondsText(step.hold.base())}));
    values.refuse(step.settle > longestTime, k, {},
                  say("It settles {1}, longer than a day's work of 8 h.", {secondsText(step.settle.base())}));
  }
}

void findImpossibleLimits(const Limits& limits, Values& values) {
  values.refuse(
      isBelow(0, limits.relative) || isBelow(0, limits.least.base()) || isBelow(0, limits.zeroReturn), {}, {},
      say("A limit of the verdict is below zero."));
  values.refuse(
      limits.relative >= 1, {}, {},
      say("The verdict permits {1} of the expected reading: an instrument that shows nothing passes.",
          {percentText(limits.relative)}));
  for (const auto& [kind, share] : limits.merits) {
    values.refuse(isBelow(0, share), {}, {}, say("The limit of {1} is below zero.", {meritKindName(kind)}));
    values.refuse(
        share >= 1, {}, {},
        say("The limit of {1} is {2}: nothing can fail it.", {meritKindName(kind), percentText(share)}));
  }
}

/// Not insulation, temperature coefficients or leads of next to nothing, of which one may know the order
/// alone.
bool mustBeKnown(InputKind kind) {
  switch (kind) {
    case InputKind::Arm:
    case InputKind::Shunt:
    case InputKind::GaugeFactor:
    case InputKind::RatedOutput:
    case InputKind::Gain:
    case InputKind::Excitation:
      return true;
    default:
      return false;
  }
}

void findUnknownInputs(const Setup& setup, Values& values) {
  for (const Input input : inputListOf(setup)) {
    const auto stated = setup.uncertainties.stated.find(input);
    if (stated == setup.uncertainties.stated.end() || !mustBeKnown(input.kind)) continue;
    const Uncertainty& uncertainty = stated->second;
    const double whole = uncertainty.relative ? 1 : std::abs(inputValue(setup, input));
    values.refuse(uncertainty.amount >= whole, {},
                  input.kind == InputKind::Shunt ? std::optional(input.index) : std::nullopt,
                  say("The uncertainty of {1} is as great as its value or greater: {2}.",
                      {inputName(setup, input), uncertaintyText(setup, input, uncertainty)}));
  }
}

}  // namespace

void findImpossibleValues(const ReviewedPlan& plan, std::vector<Finding>& findings) {
  const Setup& setup = plan.setup();
  Values values(findings);
  findImpossibleArms(setup, values);
  findImpossibleFactors(setup, values);
  findImpossibleShunts(setup, values);
  findImpossibleTimes(setup, values);
  findImpossibleLimits(setup.limits, values);
  findUnknownInputs(setup, values);
  values.refuse(setup.instrument.range && isNotAbove(0, setup.instrument.range->base()), {}, {},
                say("The instrument's range is not above 0 mV/V."));
}

void findNothingToClose(const ReviewedPlan& plan, std::vector<Finding>& findings) {
  const auto& sequence = plan.setup().sequence;
  const bool closes =
      std::any_of(sequence.begin(), sequence.end(), [](const Step& step) { return !step.closed.empty(); });
  if (closes) return;
  findings.push_back(
      {FindingKind::NothingToClose,
       Severity::Warning,
       {},
       {},
       sequence.empty() ? say("The sequence has no steps.") : say("No step of the sequence closes a shunt."),
       say("There is nothing to check the channel by."),
       {}});
}

}  // namespace core
