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
  std::vector<WhatIfStep> steps{};
  std::size_t tried = 0;  ///< how many alterations
  /// d output / d strain (or load) of the article with all shunts open, with over without: -1 where the
  /// article reads with the other sign. None where either is not known or the article reads nothing without.
  std::optional<double> articleGain{};
  /// Expanded uncertainty of the expected reading, one a step, in its unit. Not worked out here: whoever has
  /// a budget puts it in, and changes that are lost in it are then said to be so.
  std::vector<std::optional<double>> uncertainty{};
};

/// Fails as `altered` does. A shunt whose ends a fault joins does nothing, and its step reads as the zero.
/// Where the bridge cannot be worked out, with or without, the readings say why.
Result<WhatIf> whatIf(const Setup& setup, std::span<const Alteration> alterations);

/// Places after the point that show the readings of `whatIf` with five significant digits.
int readingPlaces(const WhatIf& whatIf);
/// Readings this close are the same: what they differ by is rounding of the solver, which carries potentials
/// to some 1e-15 of the excitation.
bool sameReading(const WhatIf& whatIf, Reading a, Reading b);
/// `value`, a reading or a difference of readings; 0 where it is rounding of the solver.
double withoutRounding(const WhatIf& whatIf, double value);
/// `value` with two significant digits at least, and 0 where it is less than a millionth of the greatest
/// reading without, which nobody sees: a difference of readings.
struct ShownDifference {
  double value = 0;
  int places = 0;
};
ShownDifference shownDifference(const WhatIf& whatIf, double value);
/// How much larger the reading is in size, in per cent of the one without: -2.3 of one that fell from 1000 to
/// 977 as from -1000 to -977; below -100 of one that turned its sign. None where either is unknown or the one
/// without is less than a millionth of the greatest.
std::optional<double> growthPercent(const WhatIf& whatIf, const WhatIfStep& step, Zeroed zeroed);
/// The same with as many digits as the difference is shown with.
std::optional<ShownDifference> shownGrowth(const WhatIf& whatIf, const WhatIfStep& step, Zeroed zeroed);

/// What becomes of the article's own strain at a step, beside what becomes of its reading.
enum class ArticleSign : std::uint8_t {
  WithReading,  ///< both as they were, or both the other way round; or nothing is known of it
  Alone,        ///< the reading has its sign, the article's strain reads with the other
  Kept,         ///< the reading has turned its sign, the article's strain has not
};
ArticleSign articleSign(const WhatIfStep& step);
/// What the article's strain or load reads, where that is not what becomes of the readings: its sign, or its
/// size by more than 1 %. Empty where the readings tell it. `hidden`: only what the readings do not show at
/// all.
std::string articleSentence(const WhatIf& whatIf, bool hidden);

/// "as before", "none", "reversed, now −", "none instead of +", "now +", "cannot be read", "unknown"; with
/// ", reads the article reversed" or ", reads the article as before" where the article's strain goes another
/// way.
std::string polarityChangeText(const WhatIfStep& step, Zeroed zeroed);

/// What it does, worked out from the numbers: first what the article's strain does that the readings do not
/// show, then a zero that the instrument cannot take; what cannot be read any more and why, the greatest
/// change of a reading, of the zero, signs that turn, what lies beyond the range; or that nothing is seen of
/// it.
std::string whatIfSentence(const WhatIf& whatIf, Zeroed zeroed);
/// What it is worth: to stand with every what-if.
std::string_view whatIfCaution();

}  // namespace core
