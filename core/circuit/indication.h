// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/circuit/bridge.h"

namespace core {

/// What an instrument shows that was zeroed at one output and now sees another.
struct Indication {
  Reading value;         ///< reading now less reading at zero
  double perOutput = 0;  ///< d value / d output now, in the reading's unit per V/V
  double perZero = 0;    ///< d value / d output at zero
};

/// Strain of gauge 1 in an ideal bridge of this template (equal arms, no leads) that gives `output`, times
/// `gaugeFactor`: the exact inverse of output(x), a quadratic with the arms' strain shares. For a quarter
/// bridge x = 4 v / (1 - 2 v), as Micro-Measurements TN-507 corrects. None when no strain gives it.
std::optional<double> idealResistanceChange(BridgeType type, double poissonRatio, Output output);

/// The indication with the instrument's linearisation, which applies to readings in strain. Poisson's ratio
/// and the bridge are settings of the instrument there, and so exact. Fails when the
/// correction has no answer (the output is beyond what the bridge can give).
Result<Indication> indicationOf(const Bridge& bridge, const Instrument& instrument, Output now, Output zero);

}  // namespace core
