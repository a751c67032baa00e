// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/budget/inputs.h"
#include "core/plan/prediction.h"
#include "core/uncertainty/propagation.h"

namespace core {

/// What an uncertainty is of. Never mixed, always named.
enum class Scope : std::uint8_t {
  Chain,   ///< the expected reading: leads, arms, shunts, amplifier, excitation. Decides pass or fail
  Strain,  ///< the strain (or load) that the step simulates, as read: adds gauge factor and temperature
};
inline constexpr std::size_t scopeCount = 2;

/// "chain", "strain"; of a transducer the second is "load".
std::string scopeName(const Setup& setup, Scope scope);
/// Unit of a scope's values: that of the readings, or µm/m, or the load unit.
std::string scopeUnitText(const Setup& setup, Scope scope);

/// The uncertainty of one step in one scope.
struct StepUncertainty {
  double value = 0;           ///< of the expected reading, or the simulated value
  double standard = 0;        ///< combined standard uncertainty
  std::optional<double> dof;  ///< effective degrees of freedom, not rounded; none: infinite
  bool dofUsable =
      true;  ///< false when correlated inputs contribute: then k is that of a normal distribution
  double coverageFactor = 2;  ///< k at the decision's coverage and the dof cut down to a whole number
  double expanded = 0;        ///< U = k u
};

/// All steps in one scope.
struct ScopeBudget {
  std::vector<Result<StepUncertainty>>
      steps;  ///< a bad input fails the steps that depend on it, and no others
  std::vector<double>
      sensitivities;  ///< row a step, column an input: d value / d input, in the scope's unit per base unit
  std::vector<double> covariance;  ///< row and column a step; 0 where a step failed
};

/// What every step's uncertainty is made of. Sensitivities are exact derivatives of the whole network.
struct Budget {
  std::vector<BudgetInput> inputs;
  std::array<ScopeBudget, scopeCount> scopes;

  const ScopeBudget& of(Scope scope) const { return scopes[static_cast<std::size_t>(scope)]; }
  std::span<const double> sensitivities(Scope scope, std::size_t step) const {
    return {of(scope).sensitivities.data() + step * inputs.size(), inputs.size()};
  }
};

/// Works out the budget of every step that `prediction` could predict.
///
/// Sensitivities come from the adjoint of the network: each state (zero, shunted, strained to the
/// simulated value) is factored once and solved twice for all inputs together. The simulated value is an
/// implicit function of the inputs; its derivative is (d shunted output - d strained output) / slope.
/// Zeroing takes out what is common to a step and its zero reading.
/// A step fails when it cannot be predicted, or when an input that it depends on has a refused statement
/// or belongs to a group whose correlation cannot exist; the error names the input or group.
Budget budgetOf(const Setup& setup, const SetupPrediction& prediction);

/// One line of a step's budget.
struct BudgetLine {
  std::size_t input = 0;    ///< index in Budget::inputs
  double sensitivity = 0;   ///< scope's unit per base unit of the input
  double contribution = 0;  ///< sensitivity x standard uncertainty, with its sign, in the scope's unit
  double share = 0;  ///< of the combined variance, its part of the correlation terms included; sum is 1
};
/// The lines of `step` in the order of the inputs. Empty when the step has no uncertainty.
std::vector<BudgetLine> budgetLines(const Setup& setup, const Budget& budget, Scope scope, std::size_t step);

/// Why an input's statement, or the correlation of its group, cannot be reckoned with; none for most.
std::vector<std::optional<Error>> inputRefusals(const Setup& setup, std::span<const BudgetInput> inputs);

/// The correlated pairs of `inputs`, from their groups; i < j are indices in `inputs`.
std::vector<CorrelatedPair> correlatedPairs(const Setup& setup, std::span<const BudgetInput> inputs);

}  // namespace core
