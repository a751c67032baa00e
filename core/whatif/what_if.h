// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/plan/prediction.h"
#include "core/whatif/alteration.h"

// The readings of a plan with and without what is tried out.

namespace core {

/// One step with and without.
struct WhatIfStep {
  Result<Prediction> without = Prediction{};
  Result<Prediction> with = Prediction{};
  /// The reading with it, zeroed before it came: the jump of the zero is in it. None when either is unknown.
  std::optional<Reading> withOldZero;
};

struct WhatIf {
  Setup setup;  ///< with the alterations
  Result<Output> zeroWithout = Output{};
  Result<Output> zeroWith = Output{};
  std::vector<WhatIfStep> steps;
  std::string sentence;  ///< what it does, in words: the largest change of a reading, of the zero, of a sign
};

/// Fails as `altered` does.
Result<WhatIf> whatIf(const Setup& setup, std::span<const Alteration> alterations);

}  // namespace core
