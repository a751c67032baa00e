// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/diagnose/diagnosis.h"
#include "core/diagnose/refit.h"

namespace core {

/// The one step, added to the plan, whose reading would tell the causes `a` and `b` apart best: `a` is held
/// fixed as fitted, `b` refitted to what `a` would show. Tried are every shunt of the plan alone over every
/// arm, and over the instrument's terminals where that is another place, a zero step at the end, and every
/// pair of shunts together. None when no step separates them by three standard uncertainties or more.
std::optional<TellingStep> tellingStep(const DiagnosisGround& ground, const Refit& a, const Refit& b);

}  // namespace core
