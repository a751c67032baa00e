// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <functional>
#include <optional>
#include <stop_token>
#include <vector>

#include "core/uncertainty/coverage_interval.h"
#include "core/uncertainty/draws.h"
#include "core/units/progress.h"
#include "core/units/result.h"

// Propagation of distributions by Monte Carlo, JCGM 101:2008. Knows nothing of bridges.

namespace core {

/// What to draw, and when to stop.
struct TrialPlan {
  std::vector<TrialInput> inputs;
  std::vector<CorrelatedPair> pairs;  ///< between inputs; see `Draws`
  std::uint64_t seed = 0;
  double coverage = 0.95;
  std::optional<std::size_t> trials;       ///< exactly so many; none: until settled (7.9)
  std::size_t greatestTrials = 2'000'000;  ///< gives up settling there and says so
  int significantDigits = 2;               ///< of u that must have settled, 1 to 9
  unsigned threads = 0;                    ///< 0: as many as the machine has; never changes a result
};

/// Works out `trialLanes` trials: inputs[input * trialLanes + lane] to outputs[output * trialLanes + lane].
/// A trial that has no result gives NaN. Owns its scratch; must not allocate.
using TrialModel = std::function<void(const double* inputs, double* outputs)>;
/// Makes a model of its own for each thread; called on the calling thread.
using TrialModelMaker = std::function<TrialModel()>;

/// Trials counted between equal steps from `low` to `high`; those outside are counted at the ends. When all
/// trials gave the same, `low` is `high` and they are counted in the middle.
struct Histogram {
  double low = 0, high = 0;
  std::vector<std::size_t> counts;

  friend bool operator==(const Histogram&, const Histogram&) = default;
};

/// What one output came to.
struct TrialOutput {
  double mean = 0;
  double standardUncertainty = 0;
  Interval symmetric;   ///< as much probability below as above (7.7)
  Interval shortest;    ///< the shortest of all with this coverage; its ends scatter more from run to run
  Histogram histogram;  ///< 80 steps over mean +- 4.5 u, or less where the values reach less far

  friend bool operator==(const TrialOutput&, const TrialOutput&) = default;
};

struct TrialResult {
  std::size_t trials = 0;
  bool settled = false;  ///< whether 7.9 was met for every output; true when a number of trials was asked for
  std::vector<TrialOutput> outputs;

  friend bool operator==(const TrialResult&, const TrialResult&) = default;
};

/// Draws until settled. The result depends on the plan alone, bit for bit, not on threads or time; and not on
/// whether its number of trials was asked for or found.
///
/// Settled (7.9.4): trials are made in blocks of 10 240, or 100 / (1 - coverage) if that is more; after the
/// second block or a later one, the means over the blocks of y, u and both ends of the symmetric interval
/// are known to half the numerical tolerance of u, for every output. All whole blocks up to there count.
/// `greatestTrials` is never exceeded. All values are kept until the end: 8 bytes a trial and output.
///
/// `progress` is told on the calling thread, which works too. Between blocks `stop` is looked at.
/// Fails when cancelled, when `Draws` refuses the inputs, when the coverage is not between 0 and 1, when
/// there are too few trials for an interval, when there is no memory for them (32 GiB at most), or when a
/// block has trials whose result is no finite number (naming how many).
Result<TrialResult> runTrials(const TrialPlan& plan, const TrialModelMaker& model, std::size_t outputs,
                              const std::stop_token& stop = {}, const Progress& progress = {});

/// Numerical tolerance of u rounded to `digits` significant digits: half a unit of the last (7.9.2). Of 0: 0.
double numericalTolerance(double standardUncertainty, int digits);

/// Clause 8: is the interval of the linear budget right to the numerical tolerance at both ends? Both
/// intervals must be of one kind; the trials should have settled to one digit more than is asked here.
struct Validation {
  double tolerance = 0;      ///< delta
  double low = 0, high = 0;  ///< |difference| of the ends
  bool passed = false;
};
Validation validateInterval(Interval linear, Interval trials, double standardUncertainty, int digits);

}  // namespace core
