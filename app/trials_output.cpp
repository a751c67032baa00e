// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/trials_output.h"

#include <algorithm>
#include <cmath>

#include "app/progress_line.h"
#include "core/report/figures.h"
#include "core/units/notation.h"

namespace app {
namespace {

Json intervalJson(core::Interval interval) { return {jsonNumber(interval.low), jsonNumber(interval.high)}; }

core::Interval linearInterval(const core::StepUncertainty& linear) {
  return {linear.value - linear.expanded, linear.value + linear.expanded};
}

core::Validation validationOf(const core::StepUncertainty& linear, const core::TrialOutput& output) {
  return core::validateInterval(linearInterval(linear), output.symmetric, linear.standard,
                                core::validatedDigits);
}

Json validationJson(const core::StepUncertainty& linear, const core::TrialOutput& output) {
  const core::Validation validation = validationOf(linear, output);
  return {{"digits", core::validatedDigits},
          {"tolerance", jsonNumber(validation.tolerance)},
          {"low_difference", jsonNumber(validation.low)},
          {"high_difference", jsonNumber(validation.high)},
          {"passed", validation.passed}};
}

/// "yes", "no", "no, wider": the linear interval holds all of the other, and is on the safe side.
std::string agreementText(const core::StepUncertainty& linear, const core::TrialOutput& output) {
  if (validationOf(linear, output).passed) return "yes";
  const core::Interval wide = linearInterval(linear);
  const bool holds = wide.low <= output.symmetric.low && output.symmetric.high <= wide.high;
  return holds ? "no, wider" : "no";
}

}  // namespace

bool hasShuntedStep(const core::Setup& setup) {
  return std::any_of(setup.sequence.begin(), setup.sequence.end(),
                     [](const core::Step& step) { return !step.closed.empty(); });
}

core::Result<core::ChannelTrials> trialsWithProgress(const std::string& name, const core::Setup& setup,
                                                     const core::SetupPrediction& prediction,
                                                     const core::Budget& budget,
                                                     const core::ChannelTrialOptions& options) {
  ProgressLine line(name + ": trials");
  return core::runChannelTrials(setup, prediction, budget, options, {},
                                [&](double share) { line.show(share); });
}

Json trialsJson(const core::Setup& setup, const core::Budget& budget,
                const core::ChannelTrialOptions& options, const core::ChannelTrials& trials) {
  Json json{{"scope", core::scopeName(setup, options.scope)},
            {"unit", core::scopeUnitText(setup, options.scope)},
            {"seed", options.seed},
            {"trials", trials.result.trials},
            {"settled", trials.result.settled},
            {"coverage", jsonNumber(setup.decision.coverage)},
            {"steps", Json::array()}};
  for (std::size_t k = 0; k < trials.steps.size(); ++k) {
    const core::TrialOutput& output = trials.result.outputs[k];
    const core::StepUncertainty& linear = *budget.of(options.scope).steps[trials.steps[k]];
    json["steps"].push_back({{"step", trials.steps[k] + 1},
                             {"label", setup.sequence[trials.steps[k]].label},
                             {"mean", jsonNumber(output.mean)},
                             {"standard_uncertainty", jsonNumber(output.standardUncertainty)},
                             {"shortest_interval", intervalJson(output.shortest)},
                             {"symmetric_interval", intervalJson(output.symmetric)},
                             {"linear_value", jsonNumber(linear.value)},
                             {"linear_standard_uncertainty", jsonNumber(linear.standard)},
                             {"linear_interval", intervalJson(linearInterval(linear))},
                             {"validation", validationJson(linear, output)}});
  }
  return json;
}

std::string trialsText(const core::Setup& setup, const core::Budget& budget,
                       const core::ChannelTrialOptions& options, const core::ChannelTrials& trials) {
  const std::string unit = core::scopeUnitText(setup, options.scope);
  core::Table table{"",
                    {{"Step", true},
                     {"Mean, " + unit, true},
                     {"u, " + unit, true},
                     {"Shortest interval, " + unit, true},
                     {"Symmetric interval, " + unit, true},
                     {"Linear budget, " + unit, true},
                     {"Agrees"}},
                    {}};
  for (std::size_t k = 0; k < trials.steps.size(); ++k) {
    const core::TrialOutput& output = trials.result.outputs[k];
    const core::StepUncertainty& linear = *budget.of(options.scope).steps[trials.steps[k]];
    const int decimals = core::decimalsOfUncertainty(output.standardUncertainty) + 1;
    const auto interval = [&](core::Interval ends) {
      return core::shownNumber(ends.low, decimals) + " to " + core::shownNumber(ends.high, decimals);
    };
    table.rows.push_back(
        {{std::to_string(trials.steps[k] + 1), core::shownNumber(output.mean, decimals),
          core::shownNumber(output.standardUncertainty, decimals), interval(output.shortest),
          interval(output.symmetric), interval(linearInterval(linear)), agreementText(linear, output)},
         {}});
  }
  table.note = "Intervals cover " + core::formatQuantity(setup.decision.coverage, core::UnitFamily::Percent) +
               ". The linear budget agrees when both ends of its interval are those of the symmetric one to\n"
               "half a unit of the first digit of u (JCGM 101, clause 8).";
  const std::string count = std::to_string(trials.result.trials);
  const std::string settled =
      trials.result.settled ? "" : " They have not settled: the last digits are not to be relied on.";
  return "\n" + count + " trials in scope " + core::scopeName(setup, options.scope) + ", seed " +
         std::to_string(options.seed) + "." + settled + "\n" + textOf(table);
}

}  // namespace app
