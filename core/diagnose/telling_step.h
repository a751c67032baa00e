// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/diagnose/diagnosis.h"
#include "core/diagnose/refit.h"

namespace core {

/// The one step, added to the plan, whose reading would tell the causes `a` and `b` apart: `a` is held fixed
/// as fitted, `b` refitted to what `a` would show. Deterministic.
///
/// Tried are a zero step at the end, every shunt of the plan alone once more, every pair of shunts together,
/// every resistor of the plan over every arm, and over each two neighbouring terminals of the instrument that
/// are another place than an arm. Left out are steps beyond the instrument's range or 1.25 times the greatest
/// expected reading of the plan; of many resistors the first eight are tried. A resistor that is laid to
/// another place for the step is laid right: there a fault of the shunts' places is not made again.
///
/// The separation is the root of what the new reading adds to the chi-square of `b` when it is fitted to all
/// readings that `a` would show, linear about its size: with the new reading's own uncertainty (the mean of
/// the readings'), its covariance with the others through shunts, leads, arms, gain and excitation, and the
/// freedom of b's size and offset all in it.
///
/// Of the steps that separate by six standard uncertainties or more the one that is easiest to take, in the
/// order above; else the one that separates best. None when no step reaches three.
std::optional<TellingStep> tellingStep(const DiagnosisGround& ground, const Refit& a, const Refit& b);

}  // namespace core
