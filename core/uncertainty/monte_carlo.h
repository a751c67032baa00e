// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <functional>
#include <optional>
#include <span>
#include <stop_token>
#include <string>
#include <vector>

#include "core/uncertainty/propagation.h"
#include "core/uncertainty/uncertainty.h"
#include "core/units/progress.h"
#include "core/units/result.h"

// Propagation of distributions by Monte Carlo, JCGM 101:2008. Knows nothing of bridges.

namespace core {

/// Trials that are worked out side by side, so that a model's loops become vector instructions.
inline constexpr std::size_t trialLanes = 32;

/// One input as it is drawn.
struct TrialInput {
  double value = 0;
  Uncertainty uncertainty;
};

/// What to draw, and when to stop.
struct TrialPlan {
  std::vector<TrialInput> inputs;
  std::vector<CorrelatedPair> pairs;  ///< between inputs; must be a possible correlation
  std::uint64_t seed = 0;
  double coverage = 0.95;
  std::optional<std::size_t> trials;       ///< exactly so many; none: until settled (7.9)
  std::size_t greatestTrials = 2'000'000;  ///< gives up settling there and says so
  int significantDigits = 2;               ///< of u that must have settled
  unsigned threads = 0;                    ///< 0: as many as the machine has; never changes a result
};

/// Works out `trialLanes` trials: inputs[input * trialLanes + lane] to outputs[output * trialLanes + lane].
/// A trial that has no result gives NaN. Owns its scratch; must not allocate.
using TrialModel = std::function<void(const double* inputs, double* outputs)>;
/// Makes a model of its own for each thread.
using TrialModelMaker = std::function<TrialModel()>;

struct Interval {
  double low = 0, high = 0;
};

/// Trials counted between equal steps from `low` to `high`; those outside are counted at the ends.
struct Histogram {
  double low = 0, high = 0;
  std::vector<std::size_t> counts;
};

/// What one output came to.
struct TrialOutput {
  double mean = 0;
  double standardUncertainty = 0;
  Interval symmetric;  ///< as much probability below as above (7.7)
  Interval shortest;   ///< the shortest of all with this coverage
  Histogram histogram;
};

struct TrialResult {
  std::size_t trials = 0;
  bool settled = false;  ///< whether 7.9 was met for every output; true when a number of trials was asked for
  std::vector<TrialOutput> outputs;
};

/// Draws until settled. The result depends on the plan alone, bit for bit, not on threads or time.
///
/// Normal inputs with finite degrees of freedom are drawn from Student's t scaled by their standard
/// uncertainty (JCGM 101, 6.4.9). Inputs in `pairs` are correlated by a normal copula: exact for normal
/// inputs and for coefficients of 0 and 1, close otherwise.
/// Fails when cancelled, when an uncertainty is refused by `checkUncertainty`, when the correlation cannot
/// exist, or when trials have no result (naming how many).
Result<TrialResult> runTrials(const TrialPlan& plan, const TrialModelMaker& model, std::size_t outputs,
                              const std::stop_token& stop = {}, const Progress& progress = {});

/// Numerical tolerance of u kept to `digits` significant digits: half a unit of the last (7.9.2).
double numericalTolerance(double standardUncertainty, int digits);

/// Clause 8: is the interval of the linear budget right to the numerical tolerance at both ends?
struct Validation {
  double tolerance = 0;      ///< delta
  double low = 0, high = 0;  ///< |difference| of the ends
  bool passed = false;
};
Validation validateInterval(Interval linear, Interval trials, double standardUncertainty, int digits);

}  // namespace core
