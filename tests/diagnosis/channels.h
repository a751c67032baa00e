// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <vector>

#include "core/plan/setup.h"
#include "tests/diagnosis/dice.h"

namespace diagnosis {

/// What one step of the plan is: a zero, or a level of a side.
struct PlannedStep {
  int side = 0;           ///< 1 positive, -1 negative, 0 zero step
  std::size_t level = 0;  ///< from 0, rising
};

/// A channel as a user would enter it, with how it was drawn.
struct DrawnChannel {
  core::Setup setup;
  std::vector<PlannedStep> plan;   ///< of each step of the sequence
  std::vector<std::size_t> armOf;  ///< of each shunt, from 0
  bool atInstrument = false;       ///< shunts are planned over the terminals, not at the gauges
  double noise = 0;                ///< standard deviation of a reading, in its unit
  double digit = 0;                ///< last digit of a reading, in its unit
  double perMicrostrain = 1;  ///< readings' units per µm/m of gauge 1 (of a transducer: of an equal gauge)
  bool twoSided() const;
};

/// Any channel of the kinds that are in use: all templates, 120 to 1000 ohm, short and long leads, one set of
/// resistors for both sides or two, nine steps mostly; stated uncertainties mostly, else assumed ones. The
/// shares are common practice, no source.
DrawnChannel drawChannel(Dice& dice);

}  // namespace diagnosis
