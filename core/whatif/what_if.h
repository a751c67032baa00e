// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/plan/prediction.h"
#include "core/whatif/alteration.h"

// The readings of a plan with and without what is tried out.

namespace core {

/// When the instrument was zeroed.
enum class Zeroed : std::uint8_t {
  After,   ///< what is tried out was there already: the jump of the zero is balanced away
  Before,  ///< it came later: the jump of the zero is in every reading
};

/// What the instrument would show at one step.
struct StepReading {
  Output output{0};                     ///< of the bridge, absolute
  Reading reading{0};                   ///< of the instrument as it was zeroed
  Polarity polarity = Polarity::None;   ///< sign of the output less that of the zero
  std::optional<Stimulus> simulated{};  ///< as Prediction::simulated; none where no strain gives that output
  /// The output, or its change from zero, is larger than the instrument takes. False when that is not known.
  bool beyondRange = false;
};

/// One step with and without.
struct WhatIfStep {
  Result<StepReading> without = StepReading{};
  Result<StepReading> zeroedAfter = StepReading{};   ///< with what is tried out
  Result<StepReading> zeroedBefore = StepReading{};  ///< the same, zeroed before it came

  const Result<StepReading>& with(Zeroed zeroed) const {
    return zeroed == Zeroed::After ? zeroedAfter : zeroedBefore;
  }
};

struct WhatIf {
  Setup before;
  Setup setup;  ///< with the alterations
  Result<Output> zeroWithout = Output{};
  Result<Output> zeroWith = Output{};
  std::optional<Reading> zeroJump{};  ///< of the reading when it comes; none when it cannot be read
  std::vector<WhatIfStep> steps;
};

/// Fails as `altered` does. A shunt whose ends a fault joins does nothing, and its step reads as the zero.
/// Where the bridge cannot be worked out, with or without, the readings say why.
Result<WhatIf> whatIf(const Setup& setup, std::span<const Alteration> alterations);

/// Places after the point that show the readings of `whatIf` with five significant digits.
int readingPlaces(const WhatIf& whatIf);
/// Readings this close are the same: what they differ by is rounding of the solver, which carries potentials
/// to some 1e-15 of the excitation.
bool sameReading(const WhatIf& whatIf, Reading a, Reading b);
/// How much larger the reading is in size, in per cent of the one without: -2.3 of one that fell from 1000 to
/// 977 as from -1000 to -977; below -100 of one that turned its sign. None where either is unknown or the one
/// without is zero.
std::optional<double> growthPercent(const WhatIf& whatIf, const WhatIfStep& step, Zeroed zeroed);
/// "as before", "none", "reversed, now −", "none instead of +", "now +", "cannot be read", "unknown".
std::string polarityChangeText(const WhatIfStep& step, Zeroed zeroed);

/// What it does, worked out from the numbers: what cannot be read any more and why, the greatest change of a
/// reading, of the zero, signs that turn, what lies beyond the range; or that nothing is seen of it.
std::string whatIfSentence(const WhatIf& whatIf, Zeroed zeroed);
/// What it is worth: to stand with every what-if.
std::string_view whatIfCaution();

}  // namespace core
