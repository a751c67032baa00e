// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/budget/trial_model.h"

#include <algorithm>
#include <cmath>

#include "core/circuit/indication.h"

namespace core {
namespace {

using Kind = InputKind;

static_assert(trialLanes == solverLanes);

/// Inputs that the chain does not feel: a shunt's reading is the same whatever the gauges' factor.
bool onlyOfStrain(Kind kind) {
  return kind == Kind::GaugeFactor || kind == Kind::FactorCoefficient || kind == Kind::GaugeTemperature ||
         kind == Kind::PoissonRatio || kind == Kind::RatedOutput;
}

std::vector<bool> openBranches(const BridgeNetwork& network, const std::vector<std::size_t>& closed) {
  std::vector<bool> open(network.network.branches.size(), false);
  std::fill(open.begin() + static_cast<std::ptrdiff_t>(network.firstShunt), open.end(), true);
  for (const std::size_t shunt : closed) open[network.firstShunt + shunt] = false;
  return open;
}

Result<BatchSolver> solverFor(const BridgeNetwork& network, const std::vector<std::size_t>& closed) {
  return BatchSolver::prepare(network.network, openBranches(network, closed), network.excitation,
                              network.output, network.reference);
}

/// d output / d stimulus with all shunts open.
Result<double> slopeAt(BridgeCircuit& circuit, Stimulus stimulus) {
  circuit.openAll();
  circuit.setStimulus(stimulus);
  if (auto solved = circuit.solveOutput(); !solved) return solved.error();
  return circuit.outputSlope();
}

}  // namespace

Result<TrialModelOfChannel> TrialModelOfChannel::make(const Setup& setup, const SetupPrediction& prediction,
                                                      const Budget& budget, Scope scope,
                                                      std::vector<std::size_t> steps) {
  const auto shunts = shuntBranches(setup);
  const BridgeNetwork network = bridgeNetwork(setup.bridge, setup.instrument, shunts);
  auto circuit = BridgeCircuit::make(setup.bridge, setup.instrument, shunts);
  if (!circuit) return circuit.error();
  auto open = solverFor(network, {});
  if (!open) return open.error();

  TrialModelOfChannel model(setup, *std::move(open));
  model.m_scope = scope;
  model.listDrawn(budget, scope, steps.size());
  model.listBranches(budget, network);
  for (std::size_t k = 0; k < steps.size(); ++k) {
    const auto solver = solverFor(network, setup.sequence[steps[k]].closed);
    if (!solver) return solver.error();
    const Stimulus simulated = prediction.steps[steps[k]]->simulated;
    const auto slope = slopeAt(*circuit, simulated);
    if (!slope) return slope.error();
    Row rounding = model.rowOf(budget, {Kind::Rounding, 1}, 0);
    if (rounding.drawn != constant) rounding.drawn += k;  // one of its own for each step
    model.m_steps.push_back({*solver, simulated, *slope, rounding});
  }
  return model;
}

void TrialModelOfChannel::listDrawn(const Budget& budget, Scope scope, std::size_t steps) {
  m_drawnOf.assign(budget.inputs.size(), constant);
  // The steps drawn do not depend on refused inputs, or they would have no budget.
  const auto refused = inputRefusals(m_setup, budget.inputs);
  for (std::size_t k = 0; k < budget.inputs.size(); ++k) {
    const BudgetInput& entry = budget.inputs[k];
    if (refused[k] || !(entry.standard > 0) || (scope == Scope::Chain && onlyOfStrain(entry.input.kind)))
      continue;
    m_drawnOf[k] = m_drawn.size();
    m_drawn.insert(m_drawn.end(), entry.everyStepAnew ? steps : 1, {entry.value, entry.uncertainty});
  }
  for (const CorrelatedPair& pair : correlatedPairs(m_setup, budget.inputs))
    if (m_drawnOf[pair.i] != constant && m_drawnOf[pair.j] != constant)
      m_pairs.push_back({m_drawnOf[pair.i], m_drawnOf[pair.j], pair.coefficient});
  m_gain = rowOf(budget, {Kind::Gain, 0}, 1);
  m_excitationSet = inputValue(m_setup, {Kind::Excitation, 0});
  const bool follows = !m_setup.instrument.ratiometric || m_setup.instrument.unit == ReadingUnit::Millivolt;
  m_excitation =
      follows ? rowOf(budget, {Kind::Excitation, 0}, m_excitationSet) : rowAt(constant, m_excitationSet);
  m_drift = rowOf(budget, {Kind::ZeroDrift, 0}, 0);
  m_zeroRounding = rowOf(budget, {Kind::Rounding, 0}, 0);
  m_factor = rowOf(budget, {Kind::GaugeFactor, 0}, m_setup.bridge.gauge.factor);
  m_coefficient = rowOf(budget, {Kind::FactorCoefficient, 0}, m_setup.bridge.gauge.factorCoefficient);
  m_temperature = rowOf(budget, {Kind::GaugeTemperature, 0}, m_setup.bridge.gauge.installed.base());
  m_poisson = rowOf(budget, {Kind::PoissonRatio, 0}, m_setup.bridge.gauge.poissonRatio);
  m_rated = rowOf(budget, {Kind::RatedOutput, 0}, m_setup.bridge.rating.ratedOutput.base());
}

TrialModelOfChannel::Row TrialModelOfChannel::rowOf(const Budget& budget, Input input,
                                                    double otherwise) const {
  const auto found = std::find_if(budget.inputs.begin(), budget.inputs.end(),
                                  [&](const BudgetInput& entry) { return entry.input == input; });
  if (found == budget.inputs.end()) return rowAt(constant, otherwise);
  return rowAt(m_drawnOf[static_cast<std::size_t>(found - budget.inputs.begin())], found->value);
}

TrialModelOfChannel::Row TrialModelOfChannel::rowAt(std::size_t drawn, double nominal) {
  Row row{drawn, {}};
  row.nominal.fill(nominal);
  return row;
}

void TrialModelOfChannel::listBranches(const Budget& budget, const BridgeNetwork& network) {
  const auto& branches = network.network.branches;
  m_firstShunt = network.firstShunt;
  m_pieces = network.pieces;
  m_conductance.resize(branches.size() * trialLanes);
  m_strained = m_conductance;
  for (BranchIndex k = 0; k < network.firstShunt; ++k)
    if (branches[k].resistance.base() > 0) m_branches.push_back({k, branches[k].resistance.base(), {}});
  for (const Dependence& d : network.dependences) {
    const auto at = std::find_if(m_branches.begin(), m_branches.end(),
                                 [&](const BranchOfTrial& b) { return b.branch == d.branch; });
    if (at == m_branches.end()) continue;
    const Row row = rowOf(budget, d.input, inputValue(m_setup, d.input));
    if (row.drawn != constant) at->factors.push_back({row, d.ohmPerUnit / at->nominal_ohm});
  }
  for (std::size_t k = 0; k < m_setup.shunts.size(); ++k)
    m_shunts.push_back({rowOf(budget, {Kind::Shunt, k}, m_setup.shunts[k].resistance.base()),
                        rowOf(budget, {Kind::ShuntWires, k}, m_setup.shunts[k].wires.base()),
                        rowOf(budget, {Kind::ShuntContact, k}, m_setup.shunts[k].contact.base())});
  for (const std::size_t arm : {0, 1, 2, 3})
    m_arms[arm] = rowOf(budget, {Kind::Arm, arm}, m_setup.bridge.arms[arm].base());
}

void TrialModelOfChannel::setConductances(const double* inputs) {
  for (const BranchOfTrial& branch : m_branches) {
    double* out = &m_conductance[branch.branch * trialLanes];
    std::fill_n(out, trialLanes, branch.nominal_ohm);
    for (const Factor& factor : branch.factors) {
      const double* drawn = factor.row.in(inputs);
      for (std::size_t lane = 0; lane < trialLanes; ++lane)
        out[lane] *= 1 + factor.perUnit * (drawn[lane] - factor.row.nominal[lane]);
    }
    for (std::size_t lane = 0; lane < trialLanes; ++lane) out[lane] = 1 / out[lane];
  }
  for (std::size_t k = 0; k < m_shunts.size(); ++k) {
    double* out = &m_conductance[(m_firstShunt + k) * trialLanes];
    const double *resistor = m_shunts[k][0].in(inputs), *wires = m_shunts[k][1].in(inputs),
                 *contact = m_shunts[k][2].in(inputs);
    for (std::size_t lane = 0; lane < trialLanes; ++lane)
      out[lane] = 1 / (resistor[lane] + wires[lane] + contact[lane]);
  }
}

void TrialModelOfChannel::output(BatchSolver& solver, const double* conductances, Lanes& output) {
  const auto& current = m_setup.instrument.current;
  solver.solve(conductances, output.data(), current ? m_input.data() : nullptr);
  if (!current) return;
  const double nominal_ohm = current->nominal.base();
  for (std::size_t lane = 0; lane < trialLanes; ++lane) output[lane] /= m_input[lane] * nominal_ohm;
}

void TrialModelOfChannel::readingsOf(const StepOfTrial& step, const double* inputs, double* reading) const {
  const double *drift = m_drift.in(inputs), *gain = m_gain.in(inputs), *excitation = m_excitation.in(inputs),
               *rounding = step.rounding.in(inputs), *zeroRounding = m_zeroRounding.in(inputs);
  const double scale = readingOf(m_setup.instrument, Output(1)).base();
  for (std::size_t lane = 0; lane < trialLanes; ++lane)
    reading[lane] = scale * (m_output[lane] + drift[lane] - m_zero[lane]);
  if (m_setup.instrument.linearisation != Linearisation::None)
    for (std::size_t lane = 0; lane < trialLanes; ++lane) {
      const auto shown = indicationOf(m_setup.bridge, m_setup.instrument,
                                      Output(m_output[lane] + drift[lane]), Output(m_zero[lane]));
      reading[lane] = shown ? shown->value.base() : NAN;
    }
  for (std::size_t lane = 0; lane < trialLanes; ++lane)
    reading[lane] = reading[lane] * gain[lane] * (excitation[lane] / m_excitationSet) + rounding[lane] -
                    zeroRounding[lane];
}

/// The output that an instrument without errors would show `reading` for.
void TrialModelOfChannel::seenOutputs(const double* reading, Lanes& seen) const {
  for (std::size_t lane = 0; lane < trialLanes; ++lane) {
    const Output now(m_output[lane]);
    const auto clean = indicationOf(m_setup.bridge, m_setup.instrument, now, Output(m_zero[lane]));
    seen[lane] = clean ? now.base() + (reading[lane] - clean->value.base()) / clean->perOutput : NAN;
  }
}

/// Conductances of the unshunted network with the arms under `stimulus`.
void TrialModelOfChannel::strainArms(const double* inputs, const Lanes& stimulus) {
  const Gauge& gauge = m_setup.bridge.gauge;
  for (const ArmPiece& piece : m_pieces) {
    const StrainShare share = strainShare(m_setup.bridge, piece.arm);
    if (!share.active()) continue;
    double* out = &m_strained[piece.branch * trialLanes];
    const double *arms = m_arms[piece.arm].in(inputs), *poisson = m_poisson.in(inputs),
                 *temperature = m_temperature.in(inputs), *coefficient = m_coefficient.in(inputs),
                 *factor = m_factor.in(inputs), *rated = m_rated.in(inputs);
    for (std::size_t lane = 0; lane < trialLanes; ++lane) {
      const double arm = arms[lane];
      const double felt = share.at(poisson[lane]) * stimulus[lane];
      const double warmer = temperature[lane] - gauge.factorAt.base();
      const double change = isTransducer(m_setup.bridge) ? arm * rated[lane] * felt
                                                         : gauge.nominal.base() * factor[lane] *
                                                               (1 + coefficient[lane] * warmer) * felt;
      out[lane] = 1 / (piece.share * (arm + change));
    }
  }
}

void TrialModelOfChannel::stimulusFor(const StepOfTrial& step, const double* inputs, const Lanes& target,
                                      Lanes& stimulus) {
  Lanes slope, before, here;
  stimulus.fill(step.simulated);
  slope.fill(step.slope);
  before.fill(0);
  // The first guess is off by the inputs' uncertainties, per cents of the stimulus at most; the secant
  // method then takes the error to its own product with the one before: 1e-2, 1e-4, 1e-6, 1e-10, 1e-16.
  constexpr int rounds = 5;
  for (int round = 0; round < rounds; ++round) {
    strainArms(inputs, stimulus);
    output(m_open, m_strained.data(), here);
    for (std::size_t lane = 0; lane < trialLanes; ++lane) {
      const double moved = here[lane] - before[lane];
      // Below the rounding of an output the quotient would be noise; the slope is good enough then.
      if (round > 0 && std::abs(moved) > 1e-12) slope[lane] = moved / m_change[lane];
      m_change[lane] = (target[lane] - here[lane]) / slope[lane];
      before[lane] = here[lane];
      stimulus[lane] += m_change[lane];
    }
  }
  for (std::size_t lane = 0; lane < trialLanes; ++lane)
    if (!(std::abs(m_change[lane]) <= 1e-7 * std::abs(stimulus[lane]) + 1e-12)) stimulus[lane] = NAN;
}

void TrialModelOfChannel::evaluate(const double* inputs, double* values) {
  setConductances(inputs);
  output(m_open, m_conductance.data(), m_zero);
  if (m_scope == Scope::Strain) m_strained = m_conductance;
  const double unit = simulatedInUnit(m_setup.bridge, 1);
  Lanes seen, stimulus;
  for (std::size_t k = 0; k < m_steps.size(); ++k) {
    double* out = values + k * trialLanes;
    output(m_steps[k].solver, m_conductance.data(), m_output);
    readingsOf(m_steps[k], inputs, out);
    if (m_scope == Scope::Chain) continue;
    seenOutputs(out, seen);
    stimulusFor(m_steps[k], inputs, seen, stimulus);
    for (std::size_t lane = 0; lane < trialLanes; ++lane) out[lane] = unit * stimulus[lane];
  }
}

}  // namespace core
