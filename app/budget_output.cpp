// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/budget_output.h"

#include "core/report/uncertainty_tables.h"

namespace app {
namespace {

constexpr std::array<core::Scope, core::scopeCount> scopes{core::Scope::Chain, core::Scope::Strain};

std::string baseUnitText(const core::Setup& setup, core::Input input) {
  const core::InputUnit unit = core::inputUnit(setup, input);
  switch (unit.family) {
    case core::UnitFamily::Resistance:
      return "Ω";
    case core::UnitFamily::Output:
      return "V/V";
    case core::UnitFamily::Voltage:
      return "V";
    case core::UnitFamily::Temperature:
      return "°C";
    case core::UnitFamily::Named:
      return unit.named;
    default:
      return "1";
  }
}

Json inputJson(const core::Setup& setup, const core::BudgetInput& entry,
               const std::optional<core::Error>& refused) {
  Json json{{"name", core::inputName(setup, entry.input)},
            {"value", jsonNumber(entry.value)},
            {"unit", baseUnitText(setup, entry.input)},
            {"standard_uncertainty", jsonNumber(entry.standard)},
            {"degrees_of_freedom", jsonNumber(entry.uncertainty.degreesOfFreedom)},
            {"statement", core::uncertaintyText(setup, entry.input, entry.uncertainty)},
            {"assumed", entry.assumed}};
  if (entry.assumed) json["reason"] = core::assumptionFor(setup, entry.input).reason;
  if (refused) {
    json["standard_uncertainty"] = nullptr;
    json["error"] = refused->text();
  }
  return json;
}

Json stepJson(const core::Setup& setup, const core::Budget& budget, core::Scope scope, std::size_t step) {
  Json json{{"step", step + 1}};
  const auto& result = budget.of(scope).steps[step];
  if (!result) {
    json["error"] = result.error().text();
    return json;
  }
  json["value"] = jsonNumber(result->value);
  json["standard_uncertainty"] = jsonNumber(result->standard);
  json["effective_degrees_of_freedom"] = jsonNumber(result->dof);
  json["degrees_of_freedom_used"] = result->dofUsable;
  json["coverage_factor"] = jsonNumber(result->coverageFactor);
  json["expanded_uncertainty"] = jsonNumber(result->expanded);
  for (const char* key : {"sensitivities", "contributions", "shares"}) json[key] = Json::array();
  for (const core::BudgetLine& line : core::budgetLines(setup, budget, scope, step)) {
    json["sensitivities"].push_back(jsonNumber(line.sensitivity));
    json["contributions"].push_back(jsonNumber(line.contribution));
    json["shares"].push_back(jsonNumber(line.share));
  }
  return json;
}

Json scopeJson(const core::Setup& setup, const core::Budget& budget, core::Scope scope) {
  Json json{{"scope", core::scopeName(setup, scope)},
            {"unit", core::scopeUnitText(setup, scope)},
            {"steps", Json::array()},
            {"covariance", Json::array()}};
  const std::size_t steps = budget.of(scope).steps.size();
  for (std::size_t step = 0; step < steps; ++step) {
    json["steps"].push_back(stepJson(setup, budget, scope, step));
    Json row = Json::array();
    for (std::size_t other = 0; other < steps; ++other)
      row.push_back(jsonNumber(budget.of(scope).covariance[step * steps + other]));
    json["covariance"].push_back(std::move(row));
  }
  return json;
}

std::string captioned(const core::Table& table) { return "\n" + table.caption + "\n" + textOf(table); }

}  // namespace

std::string keyEnding(const core::Setup& setup, core::Scope scope) {
  return scope == core::Scope::Chain ? "" : "_" + core::scopeName(setup, scope);
}

void addStepUncertainty(Json& json, const core::Setup& setup, const core::Budget& budget, std::size_t step) {
  for (const core::Scope scope : scopes) {
    const std::string ending = keyEnding(setup, scope);
    const auto& result = budget.of(scope).steps[step];
    if (!result) {
      json["expanded_uncertainty" + ending] = nullptr;
      json["uncertainty_error" + ending] = result.error().text();
      continue;
    }
    json["expanded_uncertainty" + ending] = jsonNumber(result->expanded);
    json["coverage_factor" + ending] = jsonNumber(result->coverageFactor);
    json["effective_degrees_of_freedom" + ending] = jsonNumber(result->dof);
  }
}

Json budgetJson(const core::Setup& setup, const core::Budget& budget) {
  Json json{{"inputs", Json::array()}, {"scopes", Json::array()}};
  const auto refused = core::inputRefusals(setup, budget.inputs);
  for (std::size_t k = 0; k < budget.inputs.size(); ++k)
    json["inputs"].push_back(inputJson(setup, budget.inputs[k], refused[k]));
  for (const core::Scope scope : scopes) json["scopes"].push_back(scopeJson(setup, budget, scope));
  return json;
}

std::string budgetText(const core::Setup& setup, const core::Budget& budget) {
  std::string text =
      captioned(core::inputTable(setup, budget)) + captioned(core::stepUncertaintyTable(setup, budget));
  for (std::size_t step = 0; step < setup.sequence.size(); ++step) {
    const auto& chain = budget.of(core::Scope::Chain).steps[step];
    const auto& strain = budget.of(core::Scope::Strain).steps[step];
    if ((chain && chain->standard > 0) || (strain && strain->standard > 0))
      text += captioned(core::budgetTable(setup, budget, step));
  }
  for (const core::Scope scope : scopes) {
    const core::Table covariance = core::covarianceTable(setup, budget, scope);
    if (!covariance.rows.empty()) text += captioned(covariance);
  }
  return text;
}

}  // namespace app
