// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diagnose/refit.h"

namespace core {

/// How ordinary a fault of this kind and size is, 0 to 1: how often it is met, times how usual its size is.
/// Common practice, no source; it decides only between causes that the readings tell apart badly.
double plausibilityOf(const DiagnosisGround& ground, const Fault& fault);

}  // namespace core
