// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "core/review/reviewed_plan.h"
#include "core/units/language.h"
#include "core/units/notation.h"

namespace core {
namespace {

/// Numbers that the window refuses, but that a file may bring.
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

}  // namespace

void findImpossibleValues(const ReviewedPlan& plan, std::vector<Finding>& findings) {
  const Setup& setup = plan.setup();
  Values values(findings);
  findImpossibleArms(setup, values);
  for (std::size_t k = 0; k < setup.shunts.size(); ++k) {
    const Shunt& shunt = setup.shunts[k];
    values.refuse(isNotAbove(0, shunt.resistance.base()), {}, k, say("Its resistance is not above 0 Ω."));
    values.refuse(isBelow(0, shunt.wires.base()) || isBelow(0, shunt.contact.base()), {}, k,
                  say("Its wires or its switch have less than 0 Ω."));
    values.refuse(shunt.part.rating && isNotAbove(0, shunt.part.rating->base()), {}, k,
                  say("Its power rating is not above 0 W."));
  }
  for (std::size_t k = 0; k < setup.sequence.size(); ++k) {
    values.refuse(isNotAbove(0, setup.sequence[k].hold.base()), k, {}, say("It is held for no time."));
    values.refuse(isBelow(0, setup.sequence[k].settle.base()), k, {},
                  say("It settles in less than no time."));
  }
  const Limits& limits = setup.limits;
  values.refuse(
      isBelow(0, limits.relative) || isBelow(0, limits.least.base()) || isBelow(0, limits.zeroReturn), {}, {},
      say("A limit of the verdict is below zero."));
  for (const auto& [kind, share] : limits.merits)
    values.refuse(isBelow(0, share), {}, {}, say("The limit of {1} is below zero.", {meritKindName(kind)}));
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
