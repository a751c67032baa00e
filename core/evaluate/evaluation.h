// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/assess/assessment.h"
#include "core/document/document.h"

namespace core {

/// A check with the prediction it is judged by.
struct CheckEvaluation {
  SetupPrediction prediction;
  Budget budget;
  CheckAssessment assessment;
};

/// Everything that can be computed from one channel; kept by the channel's identity.
struct ChannelEvaluation {
  SetupPrediction prediction;           ///< of the channel as it is now
  Budget budget;                        ///< of the same
  std::vector<CheckEvaluation> checks;  ///< in the order of the channel's checks

  /// The channel in a few plain words: "no steps", "not checked", "post-test: fail".
  std::string status;
  Verdict verdict = Verdict::NotJudged;  ///< of the latest check that has one
};

/// Pure; takes some ten microseconds a check.
ChannelEvaluation evaluate(const Channel& channel);

}  // namespace core
