// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <vector>

#include "core/budget/budget.h"
#include "core/circuit/batch_solver.h"
#include "core/uncertainty/monte_carlo.h"

namespace core {

/// Works out all steps of a channel for `trialLanes` sets of inputs at once, through the whole network.
///
/// Resistances follow their inputs exactly: every branch is a product of factors, each linear in one
/// input, and a shunt is a sum. The simulated value is found by the secant method on the network without
/// shunts, from the value and slope at the nominal inputs.
class TrialModelOfChannel {
 public:
  /// For the steps `steps` (indices in the sequence, none a zero step). Fails as the prediction does.
  static Result<TrialModelOfChannel> make(const Setup& setup, const SetupPrediction& prediction,
                                          const Budget& budget, Scope scope, std::vector<std::size_t> steps);

  /// What is to be drawn, in the order that `evaluate` reads.
  const std::vector<TrialInput>& drawn() const { return m_drawn; }
  /// Correlations among `drawn`.
  const std::vector<CorrelatedPair>& pairs() const { return m_pairs; }

  /// inputs[drawn * trialLanes + lane] to values[step * trialLanes + lane], in the scope's unit.
  void evaluate(const double* inputs, double* values);

 private:
  using Lanes = std::array<double, trialLanes>;
  static constexpr std::size_t constant = static_cast<std::size_t>(-1);

  /// An input in this batch: drawn, or the same in all lanes.
  struct Row {
    std::size_t drawn = constant;
    Lanes nominal{};

    const double* in(const double* inputs) const {
      return drawn == constant ? nominal.data() : inputs + drawn * trialLanes;
    }
  };
  static Row rowAt(std::size_t drawn, double nominal);
  /// A factor 1 + perUnit (input - value) of a branch's resistance.
  struct Factor {
    Row row;
    double perUnit = 0;
  };
  struct BranchOfTrial {
    BranchIndex branch = 0;
    double nominal_ohm = 0;
    std::vector<Factor> factors;
  };
  struct StepOfTrial {
    BatchSolver solver;
    Stimulus simulated = 0;
    double slope = 0;  ///< d output / d stimulus at `simulated`, all shunts open
    Row rounding;
  };

  TrialModelOfChannel(const Setup& setup, BatchSolver open) : m_setup(setup), m_open(std::move(open)) {}

  Row rowOf(const Budget& budget, Input input, double otherwise) const;
  void listDrawn(const Budget& budget, Scope scope, std::size_t steps);
  void listBranches(const Budget& budget, const BridgeNetwork& network);
  void setConductances(const double* inputs);
  void output(BatchSolver& solver, const double* conductances, Lanes& output);
  void strainArms(const double* inputs, const Lanes& stimulus);
  void readingsOf(const StepOfTrial& step, const double* inputs, double* reading) const;
  void seenOutputs(const double* reading, Lanes& seen) const;
  void stimulusFor(const StepOfTrial& step, const double* inputs, const Lanes& target, Lanes& stimulus);

  Setup m_setup;
  Scope m_scope = Scope::Chain;
  BatchSolver m_open;  ///< no shunt closed
  std::vector<TrialInput> m_drawn;
  std::vector<CorrelatedPair> m_pairs;
  std::vector<std::size_t> m_drawnOf;  ///< budget input -> drawn, `constant` when it is not drawn
  std::vector<BranchOfTrial> m_branches;
  std::vector<std::array<Row, 3>> m_shunts;  ///< resistor, wires, contact
  std::vector<ArmPiece> m_pieces;
  std::array<Row, 4> m_arms{};
  BranchIndex m_firstShunt = 0;
  std::vector<StepOfTrial> m_steps;
  Row m_gain, m_excitation, m_drift, m_zeroRounding, m_factor, m_coefficient, m_temperature, m_poisson,
      m_rated;
  double m_excitationSet = 1;

  std::vector<double> m_conductance;  ///< branch * lanes, no strain
  std::vector<double> m_strained;     ///< the same with strained arms
  Lanes m_zero{}, m_output{};         ///< unshunted and shunted output
  Lanes m_input{};                    ///< conductance seen by the excitation, S
  Lanes m_change{};                   ///< of the stimulus in the last round
};

}  // namespace core
