// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/evaluate/evaluation.h"

namespace core {

/// One step in two checks.
struct StepComparison {
  std::optional<Reading> before;  ///< change from that check's own zero
  std::optional<Reading> after;
  std::optional<Reading> difference;  ///< after less before
  std::optional<Reading> limit;       ///< greatest difference that counts as unchanged
  Verdict verdict = Verdict::NotJudged;
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
};

/// Compares checks `before` and `after` (indices) of `channel`. A step counts as unchanged within the
/// limit that the earlier check was judged by. Steps are compared only where both set-ups close the
/// same shunts; with sequences of different length nothing is judged. The zero itself may move by the
/// zero-return limit. Two checks that agree do not pass while one of them fails: the reason says so.
Comparison compare(const Channel& channel, const ChannelEvaluation& evaluation, std::size_t before,
                   std::size_t after);

}  // namespace core
