// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/assess/assessment.h"

namespace core {

/// Whether a step reads with the sign opposite to the expected one, and not by a little.
bool isOppositeSign(Reading change, Reading expected);

/// Sets verdict and reason of a check from those of its steps and figures of merit.
void giveVerdict(const Setup& setup, const SetupPrediction& prediction, CheckAssessment& assessment);

}  // namespace core
