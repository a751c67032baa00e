// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/levels/levels.h"

namespace core {

/// What a judgement of a level needs beside the level.
struct LevelEvidence {
  std::size_t missing = 0;  ///< samples of the span without a number
  bool isConstant = false;  ///< all samples are equal
  double resolution = 0;    ///< of the values; 0: not known
  double scatter = 0;       ///< standard deviation of one sample
  double rounding = 0;      ///< standard deviation of what the resolution leaves in the mean
  double settling = 0;      ///< what a tail at its beginning shifts the mean by; 0: none is to be seen
};

/// Gives `level` its quality and the reason for it: of all that is to be said the gravest, with figures of
/// three digits at most. The limits are common practice, no source: see quality.cpp for what each rests on.
void judge(Level& level, const LevelEvidence& evidence);

}  // namespace core
