// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/compare/difference.h"
#include "core/compare/set_up_differences.h"
#include "core/evaluate/evaluation.h"

namespace core {

/// One step of the earlier check in two checks.
struct StepComparison {
  std::optional<std::size_t> afterStep;  ///< step of the later check that it is held against
  std::optional<Reading> before;         ///< change from that check's own zero
  std::optional<Reading> after;
  std::optional<Reading> difference;  ///< after less before

  std::optional<Reading> expectedBefore;  ///< by the set-up of the earlier check
  std::optional<Reading> expectedAfter;
  /// Of the deviations from expected, in the readings' unit: what differs in the set-ups on purpose is in
  /// both expectations and drops out. Of set-ups that are alike it is `difference`. Absent when the step is
  /// not compared.
  std::optional<Difference> moved;
  std::string reason;  ///< what it comes to, or why the step is not compared
};

/// Where the scatter of readings is taken from.
enum class ScatterFrom : std::uint8_t {
  Stated,     ///< readings have uncertainties
  Residuals,  ///< no reading has: the residuals of both lines, pooled. They have in them what resistors are
              ///< off, which cancels in differences: a cautious figure
  Nowhere,    ///< no reading has, and there are too few for a residual
};

/// Two checks of one channel side by side.
///
/// All uncertainties are of differences: what is the same in both checks (see core/compare/lasting_errors.h)
/// cancels. All margins are those of the earlier check's set-up: fixed before the test.
struct Comparison {
  std::vector<SetupDifference> configuration;  ///< what differs in the two set-ups, one by one; listed first
  std::vector<StepComparison> steps;           ///< of the earlier check; empty when nothing is compared
  std::vector<std::size_t> onlyAfter;          ///< steps of the later check that the earlier one has not
  /// Gain of the later check over that of the earlier one, less one (gain: measured over expected, slope of
  /// the line through all steps together, with the covariance of their difference, offset free).
  std::optional<Difference> gain;
  /// The steps moved along no line (probability of their chi-square below 0.05): the uncertainty of the gain
  /// is widened by sqrt(chi-square / degrees of freedom), as that of a check is (ChainGain).
  bool gainWidened = false;
  std::optional<Difference> zero;  ///< of the zero readings as shown, readings' unit
  /// Of a chi-square so large over all steps together when nothing but the zero changed. With scatter from
  /// residuals, which have the movement itself in them, the smallest p of a step times the count of steps
  /// (Bonferroni). As long as it is 0.05 or more, no single step counts as changed: of nine one is soon
  /// beyond its own interval by chance.
  std::optional<double> jointProbability;
  /// Covariance of the `moved` of all steps, row after row; empty when not known. 0 where a step has none.
  std::vector<double> covariance;
  ScatterFrom scatterFrom = ScatterFrom::Stated;
  std::optional<double> scatter;  ///< of one reading, when it is from residuals
  std::optional<double> scatterDof;
  /// How often both checks would have to be made for what cannot be told now to be told; none unless
  /// `change` is CannotTell, and when no number of repeats would do (the reason says so).
  std::optional<unsigned> repeats;
  Change change = Change::NotCompared;   ///< the worst of gain, zero and steps
  Verdict verdict = Verdict::NotJudged;  ///< pass: unchanged or harmless, and both checks pass
  std::string reason;                    ///< the whole in words, and what a reviewer must not miss
};

/// Pass of unchanged and harmless, fail of changed.
Verdict verdictOf(Change change);
/// NotCompared without a difference.
Change changeOf(const std::optional<Difference>& difference);

/// Compares checks `before` and `after` (indices) of `channel`; `evaluation` is that of the channel.
///
/// Steps are matched by the shunts that they close. A step counts as unchanged within `limits.change` of its
/// expected reading, never narrower than `limits.least`; a zero step, and the zero as shown, within
/// `limits.zeroChange` of the greatest expected reading. Readings in different units, other bridge templates
/// and set-ups without steps are not compared. Two checks that agree do not pass while one of them fails: the
/// reason says so. Some ten microseconds.
Comparison compare(const Channel& channel, const ChannelEvaluation& evaluation, std::size_t before,
                   std::size_t after);

}  // namespace core
