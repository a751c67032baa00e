// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diagnose/diagnosis.h"
#include "core/diagnose/refit.h"

namespace core {

/// Fills the words and the correction of an explanation whose numbers are known: title, size, settings,
/// confirm, onStrain, correction. The factor comes from the network: slope of the output by strain of the
/// healthy channel over that of the channel with the fault, times the scale of the reading; its uncertainty
/// from that of the fault's size and of the chain.
void describe(const DiagnosisGround& ground, const Budget& budget, const Refit& refit,
              Explanation& explanation);

}  // namespace core
