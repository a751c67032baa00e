// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/uncertainty_section.h"

#include <algorithm>

#include "core/report/uncertainty_tables.h"
#include "core/units/language.h"

namespace core {
namespace {

/// More steps would not fit the page's width.
constexpr std::size_t mostStepsOfMatrix = 12;

std::string scopesText(const Setup& setup) {
  if (isTransducer(setup.bridge))
    return say(
        "Scope chain is the uncertainty of the expected reading: arms, leads, shunts and instrument. It "
        "decides "
        "pass or fail. Scope load is the uncertainty of the load that a step simulates, as read: it adds the "
        "rated "
        "output. Neither covers gauge bond or alignment.");
  return say(
      "Scope chain is the uncertainty of the expected reading: arms, leads, shunts and instrument. It "
      "decides pass "
      "or fail. The gauge factor plays no part in it. Scope strain is the uncertainty of the strain that a "
      "step "
      "simulates, as read: it adds gauge factor and temperature. Neither covers gauge bond or alignment.");
}

/// The steps with the greatest positive and the greatest negative expected reading that have an uncertainty.
std::vector<std::size_t> largestSteps(const SetupPrediction& prediction, const Budget& budget) {
  std::optional<std::size_t> positive, negative;
  for (std::size_t step = 0; step < prediction.steps.size(); ++step) {
    const auto& predicted = prediction.steps[step];
    if (!predicted || (!budget.of(Scope::Chain).steps[step] && !budget.of(Scope::Strain).steps[step]))
      continue;
    const Reading reading = predicted->reading;
    if (reading > Reading(0) && (!positive || reading > prediction.steps[*positive]->reading))
      positive = step;
    if (reading < Reading(0) && (!negative || reading < prediction.steps[*negative]->reading))
      negative = step;
  }
  std::vector<std::size_t> steps;
  if (positive) steps.push_back(*positive);
  if (negative) steps.push_back(*negative);
  return steps;
}

void addCorrelation(Section& section, const Setup& setup, const Budget& budget) {
  if (setup.sequence.size() > mostStepsOfMatrix) return;
  Table table = correlationTable(setup, budget, Scope::Chain);
  if (table.rows.size() < 2) return;
  table.note = say("Steps that share inputs err together; whoever combines steps needs these coefficients.");
  section.blocks.push_back(std::move(table));
}

}  // namespace

std::optional<Section> uncertaintySection(const Channel& channel, const ChannelEvaluation& evaluation) {
  const Setup& setup = channel.setup;
  const Budget& budget = evaluation.budget;
  const auto& steps = evaluation.prediction.steps;
  if (std::none_of(steps.begin(), steps.end(), [](const auto& step) { return bool(step); })) return {};
  Section section{say("{1}, uncertainty", {channel.name}), 2, {}};
  section.blocks.push_back(Paragraph{scopesText(setup) + " " + symbolsText(budget), {}});
  for (std::string& missing : missingUncertainties(setup, evaluation.prediction, budget))
    section.blocks.push_back(Caution{std::move(missing)});
  section.blocks.push_back(inputTable(setup, budget));
  for (const std::size_t step : largestSteps(evaluation.prediction, budget))
    section.blocks.push_back(budgetTable(setup, budget, step));
  addCorrelation(section, setup, budget);
  return section;
}

}  // namespace core
