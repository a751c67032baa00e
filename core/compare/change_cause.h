// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <stop_token>
#include <string>

#include "core/compare/comparison.h"
#include "core/diagnose/diagnosis.h"

namespace core {

/// What a change between two checks means for data taken in between:
/// true strain = factor x (reading - offset), at either end. Uncertainties are those of the change: what all
/// strain has that is measured through this chain comes on top.
struct DataBetween {
  Correction
      before;  ///< with what was wrong in the earlier check already; factor 1, offset 0 when nothing was
  Correction after;
  /// Largest error of data corrected by neither, wherever in between the change came, once and for all: share
  /// of the strain, and readings' unit for what does not grow with it. With the interval of probability 0.90.
  double greatestShare = 0;
  double greatestOffset = 0;
  std::string sentence;  ///< the whole in words, with the warning that belongs to it
};

/// What changed physically between two checks.
struct ChangeCause {
  Diagnosis diagnosis;  ///< of the difference of both checks: the kinds of faults that can come in between
  std::optional<DataBetween> data;  ///< when a cause was found, or when nothing changed
};

/// Diagnoses the difference of checks `before` and `after` (indices): the readings of the later one, held
/// against the set-up and readings of the earlier one, with the covariance of the difference, in which what
/// both share is taken out. When the earlier one fails and the later one passes it is the other way round:
/// what was there is told as gone. A zero that moved beyond its margin while the steps agree is a ZeroShift
/// before step 0. Some milliseconds; cancelled through `stop`: then the result is NotPossible. Never changes
/// a verdict.
ChangeCause changeCauseOf(const Channel& channel, const ChannelEvaluation& evaluation, std::size_t before,
                          std::size_t after, const std::stop_token& stop = {});

}  // namespace core
