// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/uncertainty_tables.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "core/report/figures.h"
#include "core/units/language.h"
#include "core/units/notation.h"
#include "core/units/number_list.h"

namespace core {
namespace {

constexpr std::array<Scope, scopeCount> scopes{Scope::Chain, Scope::Strain};

/// Three digits; with an exponent where many zeros would have to be counted.
std::string shortNumber(double value, int digits = 3) {
  const double size = std::abs(value);
  if (value == 0 || (size >= 1e-3 && size < 1e6)) return formatNumber(value, digits);
  const double exponent = std::floor(std::log10(size));
  return formatNumber(value / std::pow(10.0, exponent), digits) + "e" + formatNumber(exponent, 3);
}

/// A difference of the input, as it is written.
std::string differenceText(const Setup& setup, Input input, double base) {
  const InputUnit unit = inputUnit(setup, input);
  if (unit.family == UnitFamily::Temperature) return formatQuantity(base, UnitFamily::Named, "K", 3);
  return formatQuantity(base, unit.family, unit.named, 3);
}

std::string valueText(const Setup& setup, const BudgetInput& entry) {
  const InputUnit unit = inputUnit(setup, entry.input);
  // The resistance of a wire is worked out and has more digits than anyone knows.
  const int digits = entry.input.kind == InputKind::Lead ? 5 : 12;
  return formatQuantity(entry.value, unit.family, unit.named, digits);
}

/// "-0.00301 µm/m per Ω".
std::string sensitivityText(const Setup& setup, Input input, const std::string& scopeUnit, double perBase) {
  const InputUnit unit = inputUnit(setup, input);
  const std::string start = " " + scopeUnit + " per ";
  switch (unit.family) {
    case UnitFamily::Resistance:
      return shortNumber(perBase) + start + "Ω";
    case UnitFamily::Output:
      return shortNumber(perBase * 1e-3) + start + "mV/V";
    case UnitFamily::Voltage:
      return shortNumber(perBase) + start + "V";
    case UnitFamily::Temperature:
      return shortNumber(perBase) + start + "K";
    case UnitFamily::Named:
      return shortNumber(perBase) + start + unit.named;
    default:
      return shortNumber(perBase) + start + "1";
  }
}

/// Steps of `scope` with an uncertainty that is not zero.
std::vector<std::size_t> uncertainSteps(const Budget& budget, Scope scope) {
  std::vector<std::size_t> steps;
  const auto& all = budget.of(scope).steps;
  for (std::size_t step = 0; step < all.size(); ++step)
    if (all[step] && all[step]->standard > 0) steps.push_back(step);
  return steps;
}

bool hasAny(const Budget& budget) {
  return std::any_of(scopes.begin(), scopes.end(), [&](Scope scope) {
    const auto& steps = budget.of(scope).steps;
    return std::any_of(steps.begin(), steps.end(), [](const auto& step) { return bool(step); });
  });
}

/// Inputs of one kind that are told in one row.
using Alike = std::vector<std::size_t>;

/// How several inputs of one kind are called together.
struct Plural {
  InputKind kind;
  std::string_view singular;  ///< what `inputName` puts in front
  std::string_view plural;
  std::string_view all;  ///< to be said, of all that there are; empty: they are counted up too
};
constexpr Plural plurals[] = {
    {InputKind::Arm, "arm ", "arms ", ""},
    {InputKind::Lead, "lead ", "leads ", ""},
    {InputKind::Shunt, "shunt ", "shunts ", sayLater("all shunts")},
    {InputKind::ShuntWires, "wires of shunt ", "wires of shunts ", sayLater("wires of all shunts")},
    {InputKind::ShuntContact, "switch of shunt ", "switches of shunts ", sayLater("switches of all shunts")},
};

std::string nameOf(const Setup& setup, const Budget& budget, const Alike& alike) {
  const InputKind kind = budget.inputs[alike.front()].input.kind;
  const auto all = std::count_if(budget.inputs.begin(), budget.inputs.end(),
                                 [&](const BudgetInput& entry) { return entry.input.kind == kind; });
  const auto* plural = std::find_if(std::begin(plurals), std::end(plurals),
                                    [&](const Plural& words) { return words.kind == kind; });
  const bool isPlural = alike.size() > 1 && plural != std::end(plurals);
  if (isPlural && !plural->all.empty() && alike.size() == static_cast<std::size_t>(all))
    return say(plural->all);
  // Names of another language have another begin and stand one by one.
  const auto isShort = [&](std::size_t k) {
    return inputName(setup, budget.inputs[k].input).starts_with(plural->singular);
  };
  const bool together = isPlural && std::all_of(alike.begin(), alike.end(), isShort);
  std::string names;
  for (const std::size_t k : alike) {
    const std::string name = inputName(setup, budget.inputs[k].input);
    names += (names.empty() ? "" : ", ") + (together ? name.substr(plural->singular.size()) : name);
  }
  return together ? std::string(plural->plural) + names : names;
}

/// Where inputs of this kind begin.
std::size_t firstOfKind(const Budget& budget, InputKind kind) {
  const auto found = std::find_if(budget.inputs.begin(), budget.inputs.end(),
                                  [&](const BudgetInput& entry) { return entry.input.kind == kind; });
  return static_cast<std::size_t>(found - budget.inputs.begin());
}

/// Every input once, those with the same value and the same statement together, kind by kind.
std::vector<Alike> grouped(const Setup& setup, const Budget& budget,
                           const std::vector<std::optional<Error>>& refused, bool used) {
  const auto sameRow = [&](std::size_t a, std::size_t b) {
    const BudgetInput &x = budget.inputs[a], &y = budget.inputs[b];
    return x.input.kind == y.input.kind && x.value == y.value && x.assumed == y.assumed &&
           x.uncertainty == y.uncertainty && refused[a] == refused[b] &&
           (!x.assumed || assumptionFor(setup, x.input).reason == assumptionFor(setup, y.input).reason);
  };
  std::vector<Alike> rows;
  for (std::size_t k = 0; k < budget.inputs.size(); ++k) {
    if ((!hasAny(budget) || isUsed(budget, k)) != used) continue;
    const auto row =
        std::find_if(rows.begin(), rows.end(), [&](const Alike& alike) { return sameRow(alike.front(), k); });
    if (row == rows.end())
      rows.push_back({k});
    else
      row->push_back(k);
  }
  const auto place = [&](const Alike& row) {
    return firstOfKind(budget, budget.inputs[row.front()].input.kind);
  };
  std::stable_sort(rows.begin(), rows.end(),
                   [&](const Alike& a, const Alike& b) { return place(a) < place(b); });
  return rows;
}

std::string originOf(const Setup& setup, const BudgetInput& entry, const std::optional<Error>& refused) {
  if (refused) return say("refused: {1}", {refused->text()});
  if (!entry.assumed) return say("stated");
  return say("assumed: {1}", {assumptionFor(setup, entry.input).reason});
}

/// "No step depends on excitation. The inputs of a group err together: correlation 1 in cable."
std::string inputNote(const Setup& setup, const Budget& budget, const std::vector<Alike>& unused) {
  std::string note;
  for (const Alike& alike : unused) note += (note.empty() ? "" : ", ") + nameOf(setup, budget, alike);
  if (!note.empty()) note = say("No step depends on {1}.", {note});
  std::map<std::string, double> groups;
  for (const CorrelatedPair& pair : correlatedPairs(setup, budget.inputs))
    if (isUsed(budget, pair.i) && isUsed(budget, pair.j))
      groups[budget.inputs[pair.i].uncertainty.group] = pair.coefficient;
  std::string words;
  for (const auto& [name, coefficient] : groups)
    words +=
        (words.empty() ? "" : ", ") + say("{1} in group {2}", {shown(formatNumber(coefficient, 4)), name});
  if (words.empty()) return note;
  return note + (note.empty() ? "" : " ") +
         say("Correlation between any two inputs of a group: {1}.", {words});
}

std::string degreesText(const StepUncertainty& uncertainty) {
  if (!uncertainty.dofUsable) return say("not used");
  return uncertainty.dof ? formatNumber(*uncertainty.dof, 3) : say("infinite");
}

/// "ν_eff = 12.3", "ν_eff infinite", "ν_eff not used".
std::string effectiveText(const StepUncertainty& uncertainty) {
  return (uncertainty.dof ? "ν_eff = " : "ν_eff ") + degreesText(uncertainty);
}

/// "u (chain), µm/m".
TableColumn scoped(const Setup& setup, const std::string& name, Scope scope, bool withUnit) {
  return {name + " (" + scopeName(setup, scope) + ")" +
              (withUnit ? ", " + scopeUnitText(setup, scope) : std::string()),
          true};
}

std::string stepName(const Setup& setup, std::size_t step) {
  const std::string& label = setup.sequence[step].label;
  const std::string number = std::to_string(step + 1);
  return label.empty() ? say("Step {1}", {number}) : say("Step {1} ({2})", {number, label});
}

/// One scope's part of a budget table.
struct ScopeLines {
  Scope scope = Scope::Chain;
  StepUncertainty result;
  std::vector<BudgetLine> lines;
};

std::vector<ScopeLines> scopeLines(const Setup& setup, const Budget& budget, std::size_t step) {
  std::vector<ScopeLines> parts;
  for (const Scope scope : scopes)
    if (const auto& result = budget.of(scope).steps[step])
      parts.push_back({scope, *result, budgetLines(setup, budget, scope, step)});
  return parts;
}

std::string shareText(double share) { return formatFixed(100 * share, 1); }

TableRow inputRow(const Setup& setup, const Budget& budget, const std::vector<ScopeLines>& parts,
                  std::size_t input) {
  TableRow row{{inputName(setup, budget.inputs[input].input)}, {}};
  for (const ScopeLines& part : parts) {
    const BudgetLine& line = part.lines[input];
    const int decimals = decimalsOfUncertainty(part.result.standard) + 1;
    row.cells.push_back(sensitivityText(setup, budget.inputs[input].input, scopeUnitText(setup, part.scope),
                                        line.sensitivity));
    row.cells.push_back(shownNumber(line.contribution, decimals));
    row.cells.push_back(shareText(line.share));
  }
  return row;
}

/// What is below the lines: the inputs left out, and the sum.
void addSums(Table& table, const std::vector<ScopeLines>& parts, const std::vector<std::size_t>& others) {
  TableRow rest{{say("others ({1})", {std::to_string(others.size())})}, {}};
  TableRow standard{{say("combined u")}, {}}, expanded{{say("expanded U")}, {}};
  for (const ScopeLines& part : parts) {
    double share = 0;
    for (const std::size_t k : others) share += part.lines[k].share;
    rest.cells.insert(rest.cells.end(), {"", "", shareText(share)});
    standard.cells.insert(standard.cells.end(),
                          {effectiveText(part.result), shownUncertainty(part.result.standard), "100.0"});
    expanded.cells.insert(expanded.cells.end(), {"k = " + formatNumber(part.result.coverageFactor, 3),
                                                 shownUncertainty(part.result.expanded), ""});
  }
  if (!others.empty()) table.rows.push_back(std::move(rest));
  table.rows.push_back(std::move(standard));
  table.rows.push_back(std::move(expanded));
}

/// A square table, a row and a column a step.
template <class CellOf>
Table matrixTable(std::string caption, const std::vector<std::size_t>& steps, const CellOf& cellOf) {
  Table table{std::move(caption), {{say("Step"), true}}, {}, false, true};
  for (const std::size_t step : steps) table.columns.push_back({std::to_string(step + 1), true});
  for (const std::size_t a : steps) {
    TableRow row{{std::to_string(a + 1)}, {}};
    for (const std::size_t b : steps) row.cells.push_back(cellOf(a, b));
    table.rows.push_back(std::move(row));
  }
  return table;
}

/// Whether correlated inputs keep the degrees of freedom of some step from being used.
bool leavesDegreesUnused(const Budget& budget) {
  return std::any_of(scopes.begin(), scopes.end(), [&](Scope scope) {
    const auto& steps = budget.of(scope).steps;
    return std::any_of(steps.begin(), steps.end(), [](const auto& step) { return step && !step->dofUsable; });
  });
}

double covarianceAt(const ScopeBudget& budget, std::size_t a, std::size_t b) {
  return budget.covariance[a * budget.steps.size() + b];
}

}  // namespace

std::string coverageSentence(const Setup& setup, const Budget& budget) {
  double least = HUGE_VAL, greatest = 0;
  for (const Scope scope : scopes)
    for (const std::size_t step : uncertainSteps(budget, scope)) {
      least = std::min(least, budget.of(scope).steps[step]->coverageFactor);
      greatest = std::max(greatest, budget.of(scope).steps[step]->coverageFactor);
    }
  if (greatest == 0) return {};
  const std::string from = shown(formatNumber(least, 3)), to = shown(formatNumber(greatest, 3));
  const std::string coverage = shown(formatQuantity(setup.decision.coverage, UnitFamily::Percent));
  if (from == to)
    return say("U is the expanded uncertainty: coverage probability {1}, k = {2}.", {coverage, from});
  return say(
      "U is the expanded uncertainty: coverage probability {1}, k = {2} to {3} by the degrees of freedom of "
      "each "
      "step.",
      {coverage, from, to});
}

bool isUsed(const Budget& budget, std::size_t input) {
  for (const Scope scope : scopes)
    for (std::size_t step = 0; step < budget.of(scope).steps.size(); ++step)
      if (budget.sensitivities(scope, step)[input] != 0) return true;
  return false;
}

bool restsOnAssumptions(const Budget& budget) {
  for (std::size_t k = 0; k < budget.inputs.size(); ++k)
    if (budget.inputs[k].assumed && isUsed(budget, k)) return true;
  return false;
}

std::string symbolsText(const Budget& budget) {
  const std::string symbols = say(
      "u is the combined standard uncertainty, ν_eff its effective degrees of freedom, U = k u the expanded "
      "uncertainty.");
  if (!leavesDegreesUnused(budget)) return symbols;
  return symbols + " " +
         say("Degrees of freedom are not used where correlated inputs contribute: k is that of a normal "
             "distribution.");
}

Table inputTable(const Setup& setup, const Budget& budget) {
  const auto refused = inputRefusals(setup, budget.inputs);
  Table table{say("Inputs and what is known of them"),
              {{say("Input"), false, 22},
               {say("Value"), true, 9},
               {say("Uncertainty"), false, 21},
               {"u", true, 10},
               {say("Stated or assumed"), false, 38}},
              {},
              false,
              true,
              inputNote(setup, budget, grouped(setup, budget, refused, false))};
  for (const Alike& alike : grouped(setup, budget, refused, true)) {
    const BudgetInput& entry = budget.inputs[alike.front()];
    const auto& refusal = refused[alike.front()];
    table.rows.push_back({{nameOf(setup, budget, alike), valueText(setup, entry),
                           shown(uncertaintyText(setup, entry.input, entry.uncertainty)),
                           refusal ? std::string() : differenceText(setup, entry.input, entry.standard),
                           originOf(setup, entry, refusal)},
                          {}});
  }
  return table;
}

Table stepUncertaintyTable(const Setup& setup, const Budget& budget) {
  Table table{say("Uncertainty of the steps"), {{say("Step"), true}, {say("Label")}}, {}};
  for (const Scope scope : scopes)
    for (const char* name : {"u", "ν_eff", "k", "U"}) {
      const bool hasUnit = name == std::string_view("u") || name == std::string_view("U");
      table.columns.push_back(scoped(setup, name, scope, hasUnit));
    }
  for (std::size_t step = 0; step < setup.sequence.size(); ++step) {
    TableRow row{{std::to_string(step + 1), setup.sequence[step].label}, {}};
    for (const Scope scope : scopes) {
      if (const auto& result = budget.of(scope).steps[step]) {
        const auto cells = {shownUncertainty(result->standard), degreesText(*result),
                            formatNumber(result->coverageFactor, 3), shownUncertainty(result->expanded)};
        row.cells.insert(row.cells.end(), cells);
      } else {
        row.cells.insert(row.cells.end(), {say("not known"), "", "", say("not known")});
      }
    }
    table.rows.push_back(std::move(row));
  }
  table.note = symbolsText(budget);
  return table;
}

Table budgetTable(const Setup& setup, const Budget& budget, std::size_t step, double leastShare) {
  const std::vector<ScopeLines> parts = scopeLines(setup, budget, step);
  Table table{say("{1}: what its uncertainty is made of", {stepName(setup, step)}),
              {{say("Input")}},
              {},
              false,
              true};
  for (const ScopeLines& part : parts) {
    table.columns.push_back(scoped(setup, say("Sensitivity"), part.scope, false));
    table.columns.push_back(scoped(setup, say("Contribution"), part.scope, true));
    table.columns.push_back({say("Share ({1}), %", {scopeName(setup, part.scope)}), true});
  }
  std::vector<std::size_t> others;
  for (std::size_t k = 0; k < budget.inputs.size(); ++k) {
    const bool counts = std::any_of(parts.begin(), parts.end(), [&](const ScopeLines& part) {
      return std::abs(part.lines[k].share) >= leastShare;
    });
    if (counts)
      table.rows.push_back(inputRow(setup, budget, parts, k));
    else
      others.push_back(k);
  }
  addSums(table, parts, others);
  return table;
}

Table correlationTable(const Setup& setup, const Budget& budget, Scope scope) {
  const ScopeBudget& of = budget.of(scope);
  return matrixTable(
      say("Correlation of the steps ({1})", {scopeName(setup, scope)}), uncertainSteps(budget, scope),
      [&](std::size_t a, std::size_t b) {
        return formatFixed(
            covarianceAt(of, a, b) / std::sqrt(covarianceAt(of, a, a) * covarianceAt(of, b, b)), 2);
      });
}

Table covarianceTable(const Setup& setup, const Budget& budget, Scope scope) {
  const std::string unit = scopeUnitText(setup, scope);
  return matrixTable(say("Covariance of the steps ({1}), ({2})²", {scopeName(setup, scope), unit}),
                     uncertainSteps(budget, scope), [&](std::size_t a, std::size_t b) {
                       return shortNumber(covarianceAt(budget.of(scope), a, b), 4);
                     });
}

std::vector<std::string> missingUncertainties(const Setup& setup, const SetupPrediction& prediction,
                                              const Budget& budget) {
  std::map<std::pair<std::string, std::string>, std::vector<std::size_t>> steps;  // by scope and reason
  const auto note = [&](const std::string& scope, const Error& error, std::size_t step) {
    steps[{scope, error.text()}].push_back(step);
  };
  for (std::size_t step = 0; step < prediction.steps.size(); ++step) {
    if (!prediction.steps[step]) continue;
    const auto& chain = budget.of(Scope::Chain).steps[step];
    const auto& strain = budget.of(Scope::Strain).steps[step];
    if (!chain && !strain && chain.error() == strain.error()) {
      note("", chain.error(), step);
      continue;
    }
    if (!chain) note(scopeName(setup, Scope::Chain), chain.error(), step);
    if (!strain) note(scopeName(setup, Scope::Strain), strain.error(), step);
  }
  std::vector<std::string> sentences;
  for (const auto& [why, those] : steps) {
    const auto& [scope, reason] = why;
    const std::string list = numberList(those);
    if (scope.empty())
      sentences.push_back(sayCount(those.size(), "Step {1} has no uncertainty: {2}",
                                   "Steps {1} have no uncertainty: {2}", {list, reason}));
    else
      sentences.push_back(sayCount(those.size(), "Step {1} has no uncertainty in scope {2}: {3}",
                                   "Steps {1} have no uncertainty in scope {2}: {3}", {list, scope, reason}));
  }
  return sentences;
}

}  // namespace core
