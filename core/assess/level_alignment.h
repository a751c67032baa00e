// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <utility>
#include <vector>

#include "core/assess/level_match.h"

// Levels laid beside steps: what it costs, and the cheapest way. A Viterbi path through a chain of steps that
// mostly goes on to the next one, and seldom leaves some out, goes back, or takes a level that is none of
// them.

namespace core {

/// What happened seldom costs much, in units of about one nat. From judgement, and tried on many thousand
/// random plans with one fault each (the tests): only their order matters, and that a wrong level is cheaper
/// than a missing step and an extra level together, while two wrong ones are dearer.
namespace match_cost {
constexpr double wrongLevel = 4.5;  ///< the most that a level's deviation costs
constexpr double missingFirst = 4, missingNext = 1.5;
constexpr double extraFirst = 4, extraShort = 2.5, extraNext = 1.5;  ///< short: under 0.3 of the usual
constexpr double outside = 2.5;                    ///< a level before, between or after runs
constexpr double cutOff = 2.3, cutOffEach = 0.25;  ///< steps before the begin or after the end of a recording
constexpr double furtherRun = 3;
constexpr double back = 3, backEach = 0.3;  ///< a step done again, and for each step further back
constexpr double swap = 3;
constexpr double sharedLong = 0.3, sharedUsual = 1.4;  ///< long: over 1.6 of what a hold usually gives
constexpr double reversed = 2;
constexpr std::size_t farthestSwap = 12;
constexpr double fits = 2;  ///< a level that costs less has the value of its step
}  // namespace match_cost

/// level = zero + drift (time - middle of the recording) + gain * expected.
struct MatchLine {
  double gain = 1;
  double zero = 0;
  double drift_per_s = 0;
};

/// Steps and levels as numbers. Levels all have a finite mean.
struct AlignmentTask {
  std::vector<double> expected;  ///< one a step
  std::vector<double> holds_s;   ///< one a step, 0: not known
  std::vector<double> means;     ///< one a level
  std::vector<double> uncertainties;
  std::vector<double> times_s;  ///< middle of each level, from the middle of the recording
  std::vector<double> lasts_s;  ///< how long each level lasts
  double range = 0;             ///< greatest less least expected
  double least = 0;             ///< the smallest difference of expected values that tells steps apart
  double usualLast_s = 0;       ///< median of `lasts_s`
  double usualShare = 0;        ///< of a hold that a level usually covers; 0: not known

  std::size_t steps() const { return expected.size(); }
  std::size_t levels() const { return means.size(); }
  /// Whether two steps expect the same, so that they cannot be told apart by value.
  bool isSame(std::size_t stepA, std::size_t stepB) const;
  /// Whether a step expects no reading: all shunts open.
  bool isZero(std::size_t step) const;
  /// Standard deviation that a level may have about its step, gain and zero known.
  double tolerance(const MatchLine& line, std::size_t step, std::size_t level) const;
  double residual(const MatchLine& line, std::size_t step, std::size_t level) const;
};

AlignmentTask alignmentTask(std::span<const ExpectedStep> steps, std::span<const Level> levels);

/// A level taken for a step.
struct Visit {
  std::size_t step = 0;
  std::size_t level = 0;
  bool isSwapped = false;  ///< out of the planned order

  friend bool operator==(const Visit&, const Visit&) = default;
};

/// One run: its visits in the order of time. A step that is visited again has the level of its last visit; a
/// level may stand for several steps that expect the same.
struct AlignedRun {
  std::size_t line = 0;  ///< index of its line
  std::vector<Visit> visits;
};

struct Alignment {
  std::vector<AlignedRun> runs;
  double cost = 0;
};

/// Restrictions under which to look for another reading of one run.
struct AlignmentLimits {
  std::size_t beginLevel = 0;                           ///< levels before are not looked at
  std::size_t endLevel = static_cast<std::size_t>(-1);  ///< nor from here on
  bool isSingleRun = false;
  bool hasFirstStep = false;            ///< no run starts late
  bool hasLastStep = false;             ///< no run ends early
  std::optional<Visit> forbidden = {};  ///< this level is not taken for this step
};

/// The cheapest alignment, each run by the line that suits it best. Costs are in units of about one nat:
/// the log-likelihood of what happened. Cost and memory grow with lines x levels x steps.
Alignment align(const AlignmentTask& task, std::span<const MatchLine> lines,
                const AlignmentLimits& limits = {});

/// What a gain says against a line: nothing near 1, more the further from it, more yet below 0.
double lineCost(const AlignmentTask& task, const MatchLine& line);

/// What the deviation of a level from its step costs; bounded, so that a level that is wrong by itself keeps
/// its place in the order: less than a missing step and an extra level together.
double fitCost(const AlignmentTask& task, const MatchLine& line, std::size_t step, std::size_t level);

/// Lines worth trying: those that many steps from level to level agree on.
std::vector<MatchLine> candidateLines(const AlignmentTask& task, std::size_t most);

/// Adds `line` to `lines` when none of them is about the same.
void addLine(const AlignmentTask& task, const MatchLine& line, std::vector<MatchLine>& lines);

/// `line` fitted anew to visits, those that are far off counting little; with a drift when `hasDrift`.
MatchLine refitted(const AlignmentTask& task, MatchLine line, std::span<const Visit> visits, bool hasDrift);

}  // namespace core
