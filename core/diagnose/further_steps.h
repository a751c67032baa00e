// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "core/diagnose/refit.h"

namespace core {

/// A step that could be added to a plan.
struct FurtherStep {
  std::string text;      ///< "174.65 kΩ across arm 4, terminal P+ to terminal S+"
  std::size_t step = 0;  ///< in FurtherSteps::setup
  /// Shunt of the plan whose resistor is laid to another place, and the shunt that it becomes there.
  std::optional<std::pair<std::size_t, std::size_t>> moved = {};
};

/// A channel whose sequence goes on with the steps that could be added, the easiest to take first. Each is
/// as if taken right after the last step of the plan: none of them lasts.
struct FurtherSteps {
  Setup setup;
  Check check;  ///< with a reading of zero at each of them
  SetupPrediction prediction;
  CheckPoints points;  ///< the points of the plan, then one for each further step; without covariance
  std::vector<FurtherStep> list;
};
FurtherSteps furtherSteps(const DiagnosisGround& ground);

}  // namespace core
