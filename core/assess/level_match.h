// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/assess/check.h"
#include "core/levels/levels.h"
#include "core/plan/prediction.h"

// Which found level belongs to which planned step. Levels and steps are aligned as wholes, under a gain and a
// zero that nobody knows yet: what the recording must not decide is that they are right.

namespace core {

/// What the plan says of one step.
struct ExpectedStep {
  double reading = 0;  ///< predicted, in the channel's reading unit
  double hold_s = 0;   ///< how long it is to be held; 0: not said
};

/// The steps of `setup` as predicted. Fails when one cannot be predicted.
Result<std::vector<ExpectedStep>> expectedSteps(const Setup& setup, const SetupPrediction& prediction);

enum class MatchRemarkKind : std::uint8_t {
  Missing,     ///< steps without a level
  Extra,       ///< levels that belong to no step, within the run or next to it
  Repeated,    ///< levels that are a step done again; the one taken is the last
  Swapped,     ///< steps whose levels lie in another order than planned
  Reversed,    ///< the whole run has the opposite polarity: gain < 0
  StartsLate,  ///< the first steps are missing since the recording begins after them
  EndsEarly,   ///< the last steps are missing since the recording ends before them
  Shared,      ///< neighbouring steps that expect the same and are held in one level: each has it
  Off,         ///< of several readings of a run: steps whose level is not at their value in this one
};

/// Something that is not as planned, and the steps and levels it is about.
struct MatchRemark {
  MatchRemarkKind kind;
  std::vector<std::size_t> steps;       ///< indices in the sequence
  std::vector<std::size_t> levels;      ///< indices in the found levels
  std::vector<double> deviations = {};  ///< of Off: level less what the run's line expects, one a step

  friend bool operator==(const MatchRemark&, const MatchRemark&) = default;
};

/// One execution of the sequence as found in the recording: level = zero + gain * predicted reading.
struct RunMatch {
  std::vector<std::optional<std::size_t>> levelOfStep;  ///< one a step
  double gain = 1;                                      ///< 1 where the steps do not differ
  double zero = 0;                   ///< in the reading unit; of a zero that drifts its middle
  double misfit = 0;                 ///< root mean square of the levels about that line, in the reading unit
  std::vector<MatchRemark> remarks;  ///< none but Off: one level a step, in order

  std::size_t stepsWithLevel() const;
};

/// A run, and the other ways to read it that fit about as well. With others it is ambiguous: the user
/// chooses.
struct FoundRun {
  RunMatch best;
  std::vector<RunMatch> others;  ///< the likelier first; at most mostOtherReadings

  bool isAmbiguous() const { return !others.empty(); }
};

constexpr std::size_t mostOtherReadings = 6;

/// All runs of the sequence that a recording holds, in the order of time.
struct LevelMatch {
  std::vector<FoundRun> runs;          ///< empty when the levels do not fit the plan at all
  std::vector<std::size_t> unclaimed;  ///< levels outside all runs
};

/// Aligns `levels` (in order of time) with `steps` by dynamic programming. Pure and deterministic; cost grows
/// with levels x steps.
///
/// What it goes by is the order, and values only up to a gain and a zero that the levels themselves tell (a
/// gain near 1 is thought likelier than one far off, a positive one likelier than a negative). A level that
/// stands where its step is expected in the order keeps that step however far off it reads: a wrong resistor
/// is for the verdict to find. It loses the step only when several neighbours agree on another place. Of a
/// step done again the last level is taken. Steps done in another order go by value, and the reading in the
/// planned order stands among the others. Two ways to read a run are the same when every step gets the same
/// value; otherwise all that are about as likely as the best one are listed, unless more must have gone wrong
/// for them than for the best.
LevelMatch matchLevels(std::span<const ExpectedStep> steps, std::span<const Level> levels);

/// "step 4 (+1000)", its label in brackets where it has one.
std::string stepName(const Setup& setup, std::size_t step);

/// A remark in words: "Step 4 (+1000) is missing." Numbers in the unit of `setup`.
std::string remarkText(const MatchRemark& remark, const Setup& setup, std::span<const Level> levels);

/// What was done with a run in words, a sentence a line: how many levels went to steps, each remark, gain and
/// zero where they are far from 1 and 0, and that a run is ambiguous.
std::vector<std::string> matchText(const FoundRun& run, const Setup& setup, std::span<const Level> levels);

/// Says that the levels do not fit the plan, with the levels found and the steps expected.
Error noRunError(const Setup& setup, std::span<const Level> levels);

/// A level as a reading.
Measured measuredFrom(const Level& level);
/// The readings of a run, one a step, none where the step has no level.
std::vector<std::optional<Measured>> readingsOf(const RunMatch& run, std::span<const Level> levels);

}  // namespace core
