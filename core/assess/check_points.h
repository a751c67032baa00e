// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/assess/check.h"
#include "core/budget/budget.h"

namespace core {

/// The readings of a check beside what was expected, with the covariance of their difference: what the line
/// is fitted to and what explanations are held against. Only steps with a finite reading and a prediction are
/// in.
///
/// Changes are counted from the zero reference, as everywhere, but that reading is a point like any other:
/// its error moves all changes alike and so belongs to an offset that every fit leaves free. Hence no error
/// of the zero reading is in `covariance`, and the zero reference has one of its own.
struct CheckPoints {
  std::vector<std::size_t> steps;   ///< of each point, index in the sequence
  std::vector<double> simulated;    ///< in the unit of simulated values
  std::vector<double> expected;     ///< expected change, in the readings' unit
  std::vector<double> measured;     ///< change from the zero reference; from 0 without one
  std::vector<double> ownVariance;  ///< of each reading by itself: its level and its rounding
  /// Of measured less expected, row after row: what the steps share (shunts, leads, arms, gain, excitation)
  /// in the scope of the chain, and `ownVariance` on the diagonal. Empty when a step's uncertainty is
  /// refused.
  std::vector<double> covariance;
  std::optional<std::size_t> zero;  ///< point that is the zero reference

  std::size_t size() const { return steps.size(); }
};

CheckPoints checkPoints(const Setup& setup, const SetupPrediction& prediction, const Budget& budget,
                        const Check& check);

/// The first zero step of `setup` that has a reading.
std::optional<std::size_t> zeroReference(const Setup& setup, const Check& check);

}  // namespace core
