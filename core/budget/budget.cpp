// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/budget/budget.h"

#include <algorithm>
#include <cmath>

#include "core/circuit/indication.h"
#include "core/units/language.h"

namespace core {
namespace {

using Kind = InputKind;

/// The index of `input` in `inputs`, their count when it is not among them.
std::size_t indexOf(std::span<const BudgetInput> inputs, Input input) {
  const auto found = std::find_if(inputs.begin(), inputs.end(),
                                  [&](const BudgetInput& entry) { return entry.input == input; });
  return static_cast<std::size_t>(found - inputs.begin());
}

/// How many of a scope's units one unit of stimulus is.
double strainUnit(const Bridge& bridge) { return simulatedInUnit(bridge, 1); }

/// Derivatives of one state's output: by input, and by the stimulus.
struct StateDerivatives {
  std::vector<double> byInput;  ///< V/V per base unit
  double slope = 0;             ///< V/V per unit of stimulus
  double byPoisson = 0;         ///< V/V per unit of Poisson's ratio, through the arms' strain
};

/// Sensitivities of all steps, state by state.
class Sensitivities {
 public:
  Sensitivities(const Setup& setup, const std::vector<BudgetInput>& inputs, BridgeCircuit circuit)
      : m_setup(setup), m_inputs(inputs), m_circuit(std::move(circuit)) {
    for (const Dependence& d : m_circuit.network().dependences)
      m_dependenceInput.push_back(indexOf(inputs, d.input));
    for (std::size_t k = 0; k < setup.shunts.size(); ++k)
      m_shuntInput.push_back({indexOf(inputs, {Kind::Shunt, k}), indexOf(inputs, {Kind::ShuntWires, k}),
                              indexOf(inputs, {Kind::ShuntContact, k})});
    for (StateDerivatives* state : {&m_zero, &m_shunted, &m_strained}) state->byInput.resize(inputs.size());
  }

  Result<void> solveZero() { return solve({}, 0, m_zero); }

  /// d value / d input in both scopes, into rows of inputs.
  Result<void> ofStep(std::size_t step, const Prediction& prediction, Output zero, double* chain,
                      double* strain) {
    const Step& planned = m_setup.sequence[step];
    if (planned.closed.empty()) {
      // What a step shares with its zero reading cancels; only what is new since then is left.
      if (m_zeroSeen) addInstrument({Reading(0), perOutput(zero), 0}, m_zero.slope, chain, strain);
      m_zeroSeen = true;
      return {};
    }
    if (auto ok = solve(planned.closed, 0, m_shunted); !ok) return ok;
    if (auto ok = solve({}, prediction.simulated, m_strained); !ok) return ok;
    const auto indication = indicationOf(m_setup.bridge, m_setup.instrument, zero + prediction.output, zero);
    if (!indication) return indication.error();
    const double unit = strainUnit(m_setup.bridge) / m_strained.slope;
    for (std::size_t k = 0; k < m_inputs.size(); ++k) {
      chain[k] = indication->perOutput * m_shunted.byInput[k] + indication->perZero * m_zero.byInput[k];
      strain[k] = unit * (m_shunted.byInput[k] - m_strained.byInput[k]);
    }
    addGauge(prediction.simulated, strain);
    addInstrument(*indication, m_strained.slope, chain, strain);
    return {};
  }

 private:
  Result<void> solve(const std::vector<std::size_t>& closed, Stimulus stimulus, StateDerivatives& state) {
    m_circuit.openAll();
    m_circuit.setStimulus(stimulus);
    for (const std::size_t shunt : closed)
      if (auto ok = m_circuit.close(shunt); !ok) return ok;
    if (auto output = m_circuit.solveOutput(); !output) return output.error();
    state.slope = m_circuit.outputSlope();
    std::fill(state.byInput.begin(), state.byInput.end(), 0.0);
    addNetwork(stimulus, state);
    for (const std::size_t shunt : closed) {
      const double perOhm = m_circuit.sensitivity(m_circuit.network().firstShunt + shunt);
      for (const std::size_t k : m_shuntInput[shunt])
        if (k < m_inputs.size()) state.byInput[k] = perOhm;
    }
    return {};
  }

  void addNetwork(Stimulus stimulus, StateDerivatives& state) {
    const auto& dependences = m_circuit.network().dependences;
    for (std::size_t k = 0; k < dependences.size(); ++k) {
      const std::size_t input = m_dependenceInput[k];
      if (input >= m_inputs.size()) continue;
      double ohmPerUnit = dependences[k].ohmPerUnit;
      // A transducer's arms change in proportion to what they are.
      if (dependences[k].input.kind == Kind::Arm && isTransducer(m_setup.bridge))
        ohmPerUnit *= armUnder(m_setup.bridge, dependences[k].input.index, stimulus) /
                      m_setup.bridge.arms[dependences[k].input.index];
      state.byInput[input] += ohmPerUnit * m_circuit.sensitivity(dependences[k].branch);
    }
    state.byPoisson = 0;
    const Gauge& gauge = m_setup.bridge.gauge;
    for (const ArmPiece& piece : m_circuit.network().pieces) {
      const double poisson = strainShare(m_setup.bridge, piece.arm).poisson;
      if (poisson == 0) continue;
      const double ohm = poisson * gaugeFactorOf(gauge) * gauge.nominal.base() * stimulus * piece.share;
      state.byPoisson += ohm * m_circuit.sensitivity(piece.branch);
    }
  }

  void set(double* row, Kind kind, double value) {
    const std::size_t k = indexOf(m_inputs, {kind, 0});
    if (k < m_inputs.size()) row[k] = value;
  }

  /// What the arms feel is factor x strain: the strain that gives one output falls as the factor rises.
  void addGauge(Stimulus simulated, double* strain) {
    const double value = simulatedInUnit(m_setup.bridge, simulated);
    if (isTransducer(m_setup.bridge))
      return set(strain, Kind::RatedOutput, -value / m_setup.bridge.rating.ratedOutput.base());
    const Gauge& gauge = m_setup.bridge.gauge;
    const double perFactor = -value / gaugeFactorOf(gauge);
    const double warmer_K = (gauge.installed - gauge.factorAt).base();
    set(strain, Kind::GaugeFactor, perFactor * (1 + gauge.factorCoefficient * warmer_K));
    set(strain, Kind::FactorCoefficient, perFactor * gauge.factor * warmer_K);
    set(strain, Kind::GaugeTemperature, perFactor * gauge.factor * gauge.factorCoefficient);
    set(strain, Kind::PoissonRatio, -strainUnit(m_setup.bridge) * m_strained.byPoisson / m_strained.slope);
  }

  /// Errors of the instrument move the reading; in strain they count as the strain that would move it so.
  void addInstrument(const Indication& indication, double slope, double* chain, double* strain) {
    const double reading = indication.value.base();
    const Instrument& instrument = m_setup.instrument;
    const bool followsExcitation = !instrument.ratiometric || instrument.unit == ReadingUnit::Millivolt;
    const double perStrain = strainUnit(m_setup.bridge) / (slope * indication.perOutput);
    const auto both = [&](Input input, double value) {
      const std::size_t k = indexOf(m_inputs, input);
      chain[k] = value;
      strain[k] = value * perStrain;
    };
    both({Kind::Gain, 0}, reading);
    if (followsExcitation) both({Kind::Excitation, 0}, reading / inputValue(m_setup, {Kind::Excitation, 0}));
    both({Kind::ZeroDrift, 0}, indication.perOutput);
    both({Kind::Rounding, 0}, -1);
    both({Kind::Rounding, 1}, 1);
  }

  double perOutput(Output zero) const {
    const auto indication = indicationOf(m_setup.bridge, m_setup.instrument, zero, zero);
    return indication ? indication->perOutput : 0;
  }

  const Setup& m_setup;
  const std::vector<BudgetInput>& m_inputs;
  BridgeCircuit m_circuit;
  std::vector<std::size_t> m_dependenceInput;
  std::vector<std::array<std::size_t, 3>> m_shuntInput;
  StateDerivatives m_zero, m_shunted, m_strained;
  bool m_zeroSeen = false;
};

/// Why an input cannot be reckoned with.
std::optional<Error> refusalOf(const Setup& setup, const BudgetInput& entry) {
  if (auto ok = checkUncertainty(entry.uncertainty, {}); !ok) {
    Error error = ok.error();
    error.where = inputName(setup, entry.input);
    return error;
  }
  if (entry.input.kind == Kind::Lead && entry.value == 0 && entry.standard > 0)
    return Error{inputName(setup, entry.input),
                 say("a lead of zero ohm joins its two ends, so an uncertainty in ohm has nothing to act on"),
                 say("Enter the lead's resistance, or its uncertainty as a share")};
  return std::nullopt;
}

/// Why the correlation of a group of `members` cannot exist: its matrix has the eigenvalues 1 - r and
/// 1 + (n - 1) r.
std::optional<Error> refusalOfGroup(const std::string& name, std::size_t members, double r) {
  if (members < 2) return std::nullopt;
  const double least = -1 / static_cast<double>(members - 1);
  if (r >= least && r <= 1) return std::nullopt;
  return Error{say("group {1}", {name}),
               say("a correlation of {1} between each two of {2} inputs cannot exist",
                   {shown(formatNumber(r, 6)), std::to_string(members)}),
               say("Enter a coefficient from {1} to 1", {shown(formatNumber(least, 4))})};
}

double coefficientOf(const Setup& setup, const std::string& group) {
  const auto found = setup.uncertainties.groups.find(group);
  return found == setup.uncertainties.groups.end() ? 1 : found->second;
}

/// Whether the lead's refusal concerns every step: its sensitivity cannot be known.
bool hidesSensitivity(const BudgetInput& entry) { return entry.input.kind == Kind::Lead && entry.value == 0; }

std::optional<Error> refusalOfStep(std::span<const BudgetInput> inputs,
                                   std::span<const std::optional<Error>> refused,
                                   std::span<const double> sensitivities) {
  for (std::size_t k = 0; k < inputs.size(); ++k)
    if (refused[k] && (sensitivities[k] != 0 || hidesSensitivity(inputs[k]))) return refused[k];
  return std::nullopt;
}

/// Combines the sensitivities of one scope.
class Combination {
 public:
  Combination(const Setup& setup, const Budget& budget)
      : m_setup(setup), m_budget(budget), m_pairs(correlatedPairs(setup, budget.inputs)) {
    for (const BudgetInput& entry : budget.inputs) {
      m_u.push_back(entry.standard);
      m_shared.push_back(entry.everyStepAnew ? 0 : entry.standard);
      m_dof.push_back(entry.uncertainty.degreesOfFreedom);
      m_finite = m_finite || entry.uncertainty.degreesOfFreedom;
    }
  }

  Result<StepUncertainty> ofStep(Scope scope, std::size_t step, double value) const {
    const auto c = m_budget.sensitivities(scope, step);
    StepUncertainty result;
    result.value = value;
    result.standard = combinedUncertainty(c, m_u, m_pairs);
    bool finite = std::isfinite(result.standard);
    for (std::size_t k = 0; k < m_u.size(); ++k) finite = finite && std::isfinite(c[k] * m_u[k]);
    if (!finite)
      return Error{say("step {1}", {std::to_string(step + 1)}), say("its uncertainty is beyond any number"),
                   say("Look for a value of the plan that is far out of range")};
    if (m_finite) addDegreesOfFreedom(c, result);
    result.coverageFactor = coverageFactorFor(m_setup.decision.coverage, result.dof);
    result.expanded = result.coverageFactor * result.standard;
    return result;
  }

  double between(Scope scope, std::size_t a, std::size_t b) const {
    const auto& u = a == b ? m_u : m_shared;
    return covarianceOf(m_budget.sensitivities(scope, a), m_budget.sensitivities(scope, b), u, m_pairs);
  }

 private:
  void addDegreesOfFreedom(std::span<const double> c, StepUncertainty& result) const {
    const auto contributes = [&](std::size_t k) { return c[k] != 0 && m_u[k] != 0; };
    for (const CorrelatedPair& pair : m_pairs)
      if (contributes(pair.i) && contributes(pair.j)) result.dofUsable = false;
    std::vector<double> contributions(m_u.size());
    bool some = false;
    for (std::size_t k = 0; k < m_u.size(); ++k) {
      contributions[k] = c[k] * m_u[k];
      some = some || (m_dof[k] && contributes(k));
    }
    if (!some) result.dofUsable = true;
    if (some && result.dofUsable) result.dof = effectiveDegreesOfFreedom(contributions, m_dof);
  }

  const Setup& m_setup;
  const Budget& m_budget;
  std::vector<CorrelatedPair> m_pairs;
  std::vector<double> m_u, m_shared;  ///< m_shared: without what is new at every step
  std::vector<std::optional<double>> m_dof;
  bool m_finite = false;
};

double valueOf(const Setup& setup, const Prediction& prediction, Scope scope) {
  return scope == Scope::Chain ? prediction.reading.base()
                               : simulatedInUnit(setup.bridge, prediction.simulated);
}

/// Every step fails for one reason.
void failAll(Budget& budget, const Error& error, std::size_t steps) {
  for (ScopeBudget& scope : budget.scopes) {
    scope.steps.assign(steps, error);
    scope.sensitivities.assign(steps * budget.inputs.size(), 0.0);
    scope.covariance.assign(steps * steps, 0.0);
  }
}

void fillSensitivities(const Setup& setup, const SetupPrediction& prediction, BridgeCircuit circuit,
                       Budget& budget) {
  Sensitivities sensitivities(setup, budget.inputs, std::move(circuit));
  if (auto zero = sensitivities.solveZero(); !zero)
    return failAll(budget, zero.error(), prediction.steps.size());
  const std::size_t inputs = budget.inputs.size();
  auto& chain = budget.scopes[0];
  auto& strain = budget.scopes[1];
  for (std::size_t step = 0; step < prediction.steps.size(); ++step) {
    const auto& predicted = prediction.steps[step];
    const auto solved = predicted ? sensitivities.ofStep(step, *predicted, *prediction.zero,
                                                         &chain.sensitivities[step * inputs],
                                                         &strain.sensitivities[step * inputs])
                                  : Result<void>(predicted.error());
    for (ScopeBudget* scope : {&chain, &strain})
      scope->steps.push_back(solved ? Result<StepUncertainty>(StepUncertainty{}) : solved.error());
  }
}

void combine(const Setup& setup, const SetupPrediction& prediction, Budget& budget) {
  const auto refused = inputRefusals(setup, budget.inputs);
  const Combination combination(setup, budget);
  const std::size_t steps = prediction.steps.size();
  for (const Scope scope : {Scope::Chain, Scope::Strain}) {
    ScopeBudget& result = budget.scopes[static_cast<std::size_t>(scope)];
    for (std::size_t step = 0; step < steps; ++step) {
      if (!result.steps[step]) continue;
      if (auto error = refusalOfStep(budget.inputs, refused, budget.sensitivities(scope, step)))
        result.steps[step] = *std::move(error);
      else
        result.steps[step] = combination.ofStep(scope, step, valueOf(setup, *prediction.steps[step], scope));
    }
    for (std::size_t a = 0; a < steps; ++a)
      for (std::size_t b = 0; b <= a; ++b)
        if (result.steps[a] && result.steps[b])
          result.covariance[a * steps + b] = result.covariance[b * steps + a] =
              combination.between(scope, a, b);
  }
}

}  // namespace

std::string scopeName(const Setup& setup, Scope scope) {
  if (scope == Scope::Chain) return say("chain");
  return isTransducer(setup.bridge) ? say("load") : say("strain");
}

std::string scopeUnitText(const Setup& setup, Scope scope) {
  return scope == Scope::Chain ? readingUnitText(setup.instrument) : simulatedUnitText(setup.bridge);
}

std::vector<std::optional<Error>> inputRefusals(const Setup& setup, std::span<const BudgetInput> inputs) {
  std::vector<std::optional<Error>> result(inputs.size());
  std::map<std::string_view, std::vector<std::size_t>> groups;
  for (std::size_t k = 0; k < inputs.size(); ++k) {
    result[k] = refusalOf(setup, inputs[k]);
    const std::string& group = inputs[k].uncertainty.group;
    if (!group.empty() && inputs[k].standard > 0) groups[group].push_back(k);
  }
  for (const auto& [name, members] : groups) {
    const std::string group(name);
    const auto refused = refusalOfGroup(group, members.size(), coefficientOf(setup, group));
    if (!refused) continue;
    for (const std::size_t k : members)
      if (!result[k]) result[k] = refused;
  }
  return result;
}

std::vector<CorrelatedPair> correlatedPairs(const Setup& setup, std::span<const BudgetInput> inputs) {
  std::vector<CorrelatedPair> pairs;
  for (std::size_t i = 0; i < inputs.size(); ++i) {
    const std::string& group = inputs[i].uncertainty.group;
    if (group.empty() || !(inputs[i].standard > 0)) continue;
    for (std::size_t j = i + 1; j < inputs.size(); ++j)
      if (inputs[j].uncertainty.group == group && inputs[j].standard > 0)
        pairs.push_back({i, j, coefficientOf(setup, group)});
  }
  return pairs;
}

Budget budgetOf(const Setup& setup, const SetupPrediction& prediction) {
  Budget budget;
  budget.inputs = inputsOf(setup);
  const std::size_t steps = prediction.steps.size();
  if (!prediction.zero) {
    failAll(budget, prediction.zero.error(), steps);
    return budget;
  }
  if (auto ok = checkDecision(setup.decision); !ok) {
    failAll(budget, ok.error(), steps);
    return budget;
  }
  auto circuit = BridgeCircuit::make(setup.bridge, setup.instrument, shuntBranches(setup));
  if (!circuit) {
    failAll(budget, circuit.error(), steps);
    return budget;
  }
  for (ScopeBudget& scope : budget.scopes) {
    scope.steps.reserve(steps);
    scope.sensitivities.assign(steps * budget.inputs.size(), 0.0);
    scope.covariance.assign(steps * steps, 0.0);
  }
  fillSensitivities(setup, prediction, *std::move(circuit), budget);
  combine(setup, prediction, budget);
  return budget;
}

std::vector<BudgetLine> budgetLines(const Setup& setup, const Budget& budget, Scope scope, std::size_t step) {
  const auto& result = budget.of(scope).steps[step];
  if (!result) return {};
  const auto c = budget.sensitivities(scope, step);
  std::vector<BudgetLine> lines(budget.inputs.size());
  for (std::size_t k = 0; k < lines.size(); ++k) lines[k] = {k, c[k], c[k] * budget.inputs[k].standard, 0};
  const double variance = result->standard * result->standard;
  if (!(variance > 0)) return lines;
  for (BudgetLine& line : lines) line.share = line.contribution * line.contribution / variance;
  for (const CorrelatedPair& pair : correlatedPairs(setup, budget.inputs)) {
    const double common =
        pair.coefficient * lines[pair.i].contribution * lines[pair.j].contribution / variance;
    lines[pair.i].share += common;
    lines[pair.j].share += common;
  }
  return lines;
}

}  // namespace core
