// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "core/diagnose/fault.h"
#include "tests/diagnosis/channels.h"
#include "tests/diagnosis/plain_bridge.h"

namespace diagnosis {

/// What really happens between a plan and its readings.
struct Truth {
  PlainBridge bridge;
  double gain = 1;                        ///< true over stated
  double excitation = 1;                  ///< true over as set
  double zeroDrift = 0;                   ///< of the instrument after the first reading, V/V
  double setting = 1;                     ///< what a wrong setting of the instrument multiplies readings by
  double unit = 1;                        ///< what the numbers shown were multiplied by afterwards
  bool reversed = false;                  ///< signal wires exchanged
  double offset = 0;                      ///< of all readings, in their unit
  bool balanced = true;                   ///< the unbalance of the bridge was brought to zero beforehand
  std::vector<std::size_t> taken;         ///< the step of the plan that was really taken at each step
  std::vector<double> added;              ///< to each reading, in its unit
  std::optional<double> highest, lowest;  ///< where readings stop
};

/// Nothing wrong and every input at its stated value.
Truth nominalTruth(const core::Setup& setup);
/// The same with every input of the budget drawn from its stated or assumed distribution; correlated ones
/// together. The zero drift is one change after the first reading, as the budget has it.
Truth drawnTruth(const core::Setup& setup, Dice& dice);

/// The readings of all steps. `noise`: one a step, in their unit, or empty. `digit` 0: not rounded.
std::vector<double> readingsOf(const core::Setup& setup, const Truth& truth, const std::vector<double>& noise,
                               double digit);

/// The time of each step's middle, s.
std::vector<double> middles(const core::Setup& setup);

}  // namespace diagnosis
