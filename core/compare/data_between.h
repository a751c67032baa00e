// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/compare/change_cause.h"
#include "core/compare/change_words.h"
#include "core/compare/comparison.h"

namespace core {

/// Everything that the meaning for data in between is taken from.
struct BetweenBasis {
  const Setup& setup;            ///< that the cause was planted into
  const Comparison& comparison;  ///< of the earlier check with the later one
  const Diagnosis& diagnosis;
  const ChangeWay& way;
  std::optional<double> tellingZero;  ///< see ChangeGround, later less earlier
};

/// What the change means for data taken between both checks; none when something changed and no cause was
/// found, or nothing is known about the gain.
///
/// Of a cause: reading = true / factor + offset. While factor and offset go from those of the earlier check
/// to those of the later one, at once or little by little but never back, the error of uncorrected data stays
/// between those of both ends; the greatest is that of the worse end, of the worst of causes that are tied,
/// with the interval of probability 0.90 about it. Without a cause: factor 1, within the interval that the
/// test for equivalence looks at.
std::optional<DataBetween> dataBetween(const BetweenBasis& basis);

}  // namespace core
