// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

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
  std::vector<double>
      changes;  ///< that the fault makes, all inputs at their stated values, in readings' unit
};

/// The least effect of a planted fault, in standard uncertainties.
inline constexpr double leastEffect = 3;

/// Check number `number` of the set that `seed` names, always the same. Its channel is drawn anew until it
/// can have a fault of that kind with an effect of at least `leastEffect`.
SimulatedCheck faultyCheck(std::uint64_t seed, std::uint64_t number, core::CauseKind kind);
SimulatedCheck healthyCheck(std::uint64_t seed, std::uint64_t number);

/// How far the readings of the planted fault are from those of `told`, at the size of that which is nearest:
/// in standard uncertainties, as `effect`. Below about 1 no one can tell the two apart from this check.
double separation(const SimulatedCheck& simulated, const core::Fault& told);

}  // namespace diagnosis
