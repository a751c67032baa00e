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

constexpr std::size_t mostLines = 5;

/// A difference of an input as it is written, and the base units that one of the written units is.
struct WrittenUnit {
  std::string name;
  double base = 1;
};

WrittenUnit writtenUnit(const Setup& setup, Input input) {
  const InputUnit unit = inputUnit(setup, input);
  switch (unit.family) {
    case UnitFamily::Resistance:
      return {"Ω"};
    case UnitFamily::Output:
      return {"mV/V", 1e-3};
    case UnitFamily::Voltage:
      return {"V"};
    case UnitFamily::Temperature:
      return {"K"};
    case UnitFamily::Named:
      return {unit.named};
    default:
      return {""};
  }
}

/// "(-0.00301 µm/m per Ω) × 19 Ω"
std::string termText(const Setup& setup, Scope scope, const BudgetInput& input, const BudgetLine& line) {
  const WrittenUnit unit = writtenUnit(setup, input.input);
  const std::string scopeUnit = scopeUnitText(setup, scope);
  const std::string slope = shown(formatNumber(std::abs(line.sensitivity) * unit.base, 3)) + " " + scopeUnit;
  return "(" + (unit.name.empty() ? slope : say("{1} per {2}", {slope, unit.name})) + ") × " +
         uncertainty(input.standard / unit.base, unit.name);
}

std::vector<BudgetLine> largestLines(const Setup& setup, const Budget& budget, Scope scope,
                                     std::size_t step) {
  std::vector<BudgetLine> lines = budgetLines(setup, budget, scope, step);
  std::erase_if(lines, [](const BudgetLine& line) { return line.share == 0; });
  std::stable_sort(lines.begin(), lines.end(), [](const BudgetLine& a, const BudgetLine& b) {
    return std::abs(a.share) > std::abs(b.share);
  });
  return lines;
}

std::string capital(std::string text) {
  const bool isWord =
      !text.empty() && !text.substr(1).starts_with('-');  // which "k-Faktor" does not begin with
  if (isWord && text[0] >= 'a' && text[0] <= 'z') text[0] = static_cast<char>(text[0] - 'a' + 'A');
  return text;
}

std::string scopeOf(const Setup& setup, Scope scope) {
  if (scope == Scope::Chain)
    return say("of the expected reading: shunts, arms, leads, instrument. It decides pass or fail");
  return isTransducer(setup.bridge) ? say("of the load that the step simulates, as read")
                                    : say("of the strain that the step simulates, as read: gauge factor and "
                                          "temperature are in it too");
}

void addLines(WorkingPart& part, const WorkingGround& ground, Scope scope) {
  const std::string unit = scopeUnitText(ground.setup, scope);
  const auto lines = largestLines(ground.setup, ground.budget, scope, ground.step);
  const std::size_t told = std::min(mostLines, lines.size());
  for (std::size_t k = 0; k < told; ++k) {
    const BudgetInput& input = ground.budget.inputs[lines[k].input];
    part.lines.push_back({say(input.assumed ? sayLater("{1}, assumed") : sayLater("{1}"),
                              {capital(inputName(ground.setup, input.input))}),
                          "|c| u", termText(ground.setup, scope, input, lines[k]),
                          say("{1}, {2} % of u²", {uncertainty(std::abs(lines[k].contribution), unit),
                                                   shown(formatFixed(100 * lines[k].share, 1))})});
  }
  double rest = 0;
  for (std::size_t k = told; k < lines.size(); ++k) rest += lines[k].share;
  if (told < lines.size())
    part.lines.push_back({say("{1} others", {std::to_string(lines.size() - told)}), "", "",
                          say("{1} % of u²", {shown(formatFixed(100 * rest, 1))})});
}

std::string degreesText(const StepUncertainty& combined) {
  if (!combined.dofUsable) return say("degrees of freedom not used, since inputs are correlated");
  return combined.dof ? say("{1} effective degrees of freedom", {number(std::floor(*combined.dof))})
                      : say("infinite degrees of freedom");
}

void addScope(WorkingPart& part, const WorkingGround& ground, Scope scope) {
  const std::string name = scopeName(ground.setup, scope), unit = scopeUnitText(ground.setup, scope);
  const auto& combined = ground.budget.of(scope).steps[ground.step];
  if (!combined) {
    part.lines.push_back({say("Scope {1}", {name}), "", "", combined.error().text()});
    return;
  }
  if (combined->standard == 0) {
    part.lines.push_back(
        {say("Scope {1}", {name}), "", "", say("u = 0 {1}: no input acts on this step", {unit})});
    return;
  }
  part.lines.push_back({say("Scope {1}", {name}), "", "", scopeOf(ground.setup, scope)});
  addLines(part, ground, scope);
  const bool correlated = !correlatedPairs(ground.setup, ground.budget.inputs).empty();
  part.lines.push_back({say("Combined standard uncertainty, {1}", {name}),
                        correlated ? say("u = √(ΣΣ r cᵢuᵢ cⱼuⱼ)") : say("u = √Σ(c u)²"), "",
                        uncertainty(combined->standard, unit), say("JCGM 100:2008, 5.1 and 5.2")});
  part.lines.push_back(
      {say("Expanded uncertainty, {1}, {2}, {3}",
           {name, plainPercent(ground.setup.decision.coverage, 5), degreesText(*combined)}),
       "U = k u",
       shown(formatFixed(combined->coverageFactor, 2)) + " × " + uncertainty(combined->standard, unit),
       uncertainty(combined->expanded, unit), "JCGM 100:2008, 6.2"});
}

}  // namespace

WorkingPart uncertaintyPart(const WorkingGround& ground) {
  WorkingPart part{say("Its uncertainty"), {}};
  addScope(part, ground, Scope::Chain);
  if (!ground.isZeroStep()) addScope(part, ground, Scope::Strain);
  return part;
}

}  // namespace core
