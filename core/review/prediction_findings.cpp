// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/document/edits.h"
#include "core/review/reviewed_plan.h"
#include "core/units/language.h"
#include "core/units/notation.h"

namespace core {
namespace {

std::string outputText(double output) { return shown(formatNumber(1e3 * output, 4)) + " mV/V"; }

bool isSaid(const std::vector<Finding>& findings, const std::string& what) {
  return std::any_of(findings.begin(), findings.end(),
                     [&](const Finding& finding) { return finding.what == what; });
}

/// The same reason in many steps is one finding.
void addUnpredictable(std::vector<Finding>& findings, std::optional<std::size_t> step,
                      const std::string& what) {
  if (isSaid(findings, what)) return;
  findings.push_back({FindingKind::CannotPredict,
                      Severity::Fault,
                      step,
                      {},
                      what,
                      say("Nothing can be judged that has no expected reading with its uncertainty."),
                      {}});
}

constexpr std::string_view whyRange =
    sayLater("An amplifier beyond its range shows its end, whatever the bridge does.");

}  // namespace

void findUnpredictable(const ReviewedPlan& plan, std::vector<Finding>& findings) {
  const SetupPrediction& prediction = plan.evaluation.prediction;
  if (!prediction.zero)
    return addUnpredictable(findings, {},
                            say("The bridge cannot be worked out: {1}", {prediction.zero.error().text()}));
  for (std::size_t step = 0; step < prediction.steps.size(); ++step) {
    const auto& uncertainty = plan.evaluation.budget.of(Scope::Chain).steps[step];
    if (!prediction.steps[step])
      addUnpredictable(findings, step,
                       say("It cannot be predicted: {1}", {prediction.steps[step].error().text()}));
    else if (!uncertainty)
      addUnpredictable(findings, step, say("It has no uncertainty: {1}", {uncertainty.error().text()}));
  }
}

void findRangeOverruns(const ReviewedPlan& plan, std::vector<Finding>& findings) {
  const auto& range = plan.setup().instrument.range;
  if (!range) return;
  const double zero = plan.evaluation.prediction.zero->base(), most = range->base();
  const std::string taken = outputText(most);
  if (std::abs(zero) > most) {
    findings.push_back({FindingKind::RangeOverrun,
                        Severity::Fault,
                        {},
                        {},
                        say("With all shunts open the bridge gives {1}, the instrument takes {2}.",
                            {outputText(zero), taken}),
                        say(whyRange),
                        {}});
    return;
  }
  for (const ReviewedLevel& level : plan.levels) {
    const double change = level.prediction.output.base();
    // Balanced in hardware the amplifier sees the change, else the bridge as it is.
    const double greatest = std::abs(zero + change) > std::abs(change) ? zero + change : change;
    if (std::abs(greatest) <= most) continue;
    findings.push_back({FindingKind::RangeOverrun,
                        Severity::Fault,
                        level.step,
                        {},
                        say("The bridge gives {1}, the instrument takes {2}.", {outputText(greatest), taken}),
                        say(whyRange),
                        {withoutLevelMend(level, plan.setup())}});
  }
}

void findBelowUncertainty(const ReviewedPlan& plan, std::vector<Finding>& findings) {
  for (const ReviewedLevel& level : plan.levels) {
    if (!isBelowUncertainty(level)) continue;
    const bool nothing = level.prediction.polarity == Polarity::None;
    const std::string what =
        nothing ? say("Closing {1} changes nothing.", {joinedNames(plan.setup(), level.closed)})
                : say("The expected {1} is no greater than its uncertainty of {2}.",
                      {readingText(plan.setup(), level.prediction.reading.base(), 3),
                       readingText(plan.setup(), *level.expanded, 2)});
    findings.push_back({FindingKind::BelowUncertainty,
                        Severity::Warning,
                        level.step,
                        {},
                        what,
                        say("Such a step cannot tell a sound chain from a dead one."),
                        {withoutLevelMend(level, plan.setup())}});
  }
}

}  // namespace core
