// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>

#include "core/assess/check_points.h"
#include "core/diagnose/fault.h"
#include "tests/diagnosis/channels.h"

namespace diagnosis {

/// A check with one known fault, or none.
struct SimulatedCheck {
  DrawnChannel channel;
  core::Check check;
  std::optional<core::Fault> planted;
  /// Of the fault, in standard uncertainties: the changes that it makes with all inputs at their stated
  /// values, an offset left free, over the covariance of the check's points (Mahalanobis).
  double effect = 0;
};

/// The least effect of a planted fault, in standard uncertainties.
inline constexpr double leastEffect = 3;

/// Check number `number` of the set that `seed` names, always the same. Its channel is drawn anew until it
/// can have a fault of that kind with an effect of at least `leastEffect`.
SimulatedCheck faultyCheck(std::uint64_t seed, std::uint64_t number, core::CauseKind kind);
SimulatedCheck healthyCheck(std::uint64_t seed, std::uint64_t number);

}  // namespace diagnosis
