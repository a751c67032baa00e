// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/plan/prediction.h"

namespace core {

/// Which step of a later sequence each step of an earlier one is held against.
struct StepPairs {
  std::vector<std::optional<std::size_t>> after;  ///< one a step of the earlier sequence
  std::vector<std::size_t> onlyAfter;             ///< steps of the later one that no step was paired with
};

/// Pairs steps that close shunts which do the same to the bridge, whatever they are called and made of: those
/// at the same place in the sequence first, then in order. At last steps at the same place in the sequence
/// whose shunts are at the same places of the bridge and are expected to read alike within a tenth: another
/// resistor for the same purpose, compared by its deviation from what is expected of it.
StepPairs stepPairs(const Setup& before, const SetupPrediction& predictedBefore, const Setup& after,
                    const SetupPrediction& predictedAfter);

}  // namespace core
