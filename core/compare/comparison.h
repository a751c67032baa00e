// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/compare/difference.h"
#include "core/evaluate/evaluation.h"

namespace core {

/// One step in two checks.
struct StepComparison {
  std::optional<Reading> before;  ///< change from that check's own zero
  std::optional<Reading> after;
  std::optional<Reading> difference;  ///< after less before
  std::optional<Reading> limit;       ///< greatest difference that counts as unchanged
  Verdict verdict = Verdict::NotJudged;

  std::optional<Reading> expectedBefore;  ///< by the set-up of the earlier check
  std::optional<Reading> expectedAfter;
  /// Of the deviations from expected, in the readings' unit: what differs in the set-ups on purpose is in
  /// both expectations and drops out. Of set-ups that are alike it is `difference`.
  std::optional<Difference> moved;
  std::string reason;  ///< what it comes to, or why the step is not compared
};

/// One thing in which two set-ups differ.
struct SetupDifference {
  std::string what;         ///< "gauge factor"
  std::string before;       ///< "2.08"
  std::string after;        ///< "2.1"
  bool onReadings = false;  ///< expected readings depend on it
};

/// Two checks of one channel side by side.
struct Comparison {
  std::vector<std::string> setupDifferences;  ///< what differs in the two set-ups, in words; listed first
  std::vector<StepComparison> steps;
  std::optional<double> slopeRatio;       ///< after / before
  std::optional<double> slopeRatioError;  ///< standard error, the two fits taken as independent
  std::optional<Reading> zeroShift;       ///< first zero reading after less before, as shown
  std::optional<Reading> zeroShiftLimit;  ///< the zero-return limit of the earlier check
  Verdict verdict = Verdict::NotJudged;   ///< pass: nothing moved beyond its limit and both checks pass
  std::string reason;

  std::vector<SetupDifference> configuration;  ///< what differs in the two set-ups, one by one; listed first
  /// Gain of the later check over that of the earlier one, less one (gain: measured over expected, slope of
  /// the line through all steps together, with the covariance of their difference).
  std::optional<Difference> gain;
  std::optional<Difference> zero;  ///< of the zero readings as shown, readings' unit
  /// Of a chi-square so large over all steps together when nothing changed.
  std::optional<double> jointProbability;
  /// Covariance of the `moved` of all steps, row after row; empty when not known. 0 where a step has none.
  std::vector<double> covariance;
  /// How often both checks would have to be repeated for what cannot be told now to be told; none when
  /// nothing is open or no number of repeats would do (the reason says which).
  std::optional<unsigned> repeats;
  Change change = Change::NotCompared;  ///< the worst of gain, zero and steps
};

/// Compares checks `before` and `after` (indices) of `channel`. A step counts as unchanged within the
/// limit that the earlier check was judged by. Steps are compared only where both set-ups close the
/// same shunts; with sequences of different length nothing is judged. The zero itself may move by the
/// zero-return limit. Two checks that agree do not pass while one of them fails: the reason says so.
Comparison compare(const Channel& channel, const ChannelEvaluation& evaluation, std::size_t before,
                   std::size_t after);

}  // namespace core
