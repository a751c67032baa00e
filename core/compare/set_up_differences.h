// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/plan/setup.h"

namespace core {

/// One thing in which two set-ups differ.
struct SetupDifference {
  std::string what;         ///< "gauge factor"
  std::string before;       ///< "2.08"
  std::string after;        ///< "2.1"
  bool onReadings = false;  ///< expected readings depend on it

  friend bool operator==(const SetupDifference&, const SetupDifference&) = default;
};

/// Everything that differs in two set-ups, thing by thing, in the order of a report: bridge, instrument,
/// shunts, sequence, limits, uncertainties. What is absent in one of them is said to be ("none"). Shunts and
/// steps are told apart by their names and places; a list that differs in many places names them one by one.
std::vector<SetupDifference> setUpDifferences(const Setup& before, const Setup& after);

}  // namespace core
