// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "core/review/reviewed_plan.h"
#include "core/units/language.h"

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

}  // namespace

void findImpossibleValues(const ReviewedPlan& plan, std::vector<Finding>& findings) {
  const Setup& setup = plan.setup();
  Values values(findings);
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
