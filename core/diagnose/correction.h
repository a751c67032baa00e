// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/diagnose/diagnosis.h"
#include "core/diagnose/refit.h"

namespace core {

/// Whether strain data are recorded as if nothing were wrong: the fault is of the check alone. Of a channel
/// that does not respond nothing is recorded, so that there is nothing to correct either.
bool isOfCheckAlone(CauseKind kind);

/// What the readings are multiplied with by a wrong setting: reading over what it should be. 1 for a fault of
/// parts and of single readings, -1 for reversed polarity.
double readingScale(const Setup& setup, const Fault& fault);

/// d reading / d stimulus at no strain with the fault, over that without it: the network solved for strain,
/// all shunts open, and the reading's scale. The healthy instrument and strain of gauge 1 are those entered.
/// None when one of the two bridges cannot be solved.
std::optional<double> strainSensitivityRatio(const Setup& setup, const Fault& fault);

/// By how much the fault moves the reading of the unloaded, unshunted bridge, in the readings' unit; none
/// when it cannot be solved. 0 for faults that are not of the bridge's parts.
std::optional<double> zeroMove(const Setup& setup, const Fault& fault);

/// Standard uncertainty, as a share, of the scale by which the chain turns strain into readings: from arms
/// and leads by differences of the network's slope, and `withInstrument` from gain and excitation as the
/// budget has them at the greatest expected reading. Shunts have no part in it, nor has the gauge factor.
double chainShare(const DiagnosisGround& ground, const Budget& budget, bool withInstrument);

/// Factor and offset by which strain data recorded with the fault would have to be corrected.
///
/// The factor is one over `strainSensitivityRatio`. Its standard uncertainty is made of that of the fitted
/// size, times the derivative of the factor, and of `chainShare`, which every strain has that is measured
/// through this chain. Both are added as independent; as a fitted size leans on the same chain, the sum is on
/// the safe side. A fitted scale holds the instrument's part already.
/// A fault that the strain data do not feel (shunts, order of steps) has factor 1, offset 0, and none of the
/// uncertainties.
Correction correctionOf(const DiagnosisGround& ground, const Budget& budget, const Refit& refit);

/// "Strain reads 0.35 % high", "none: the check alone is affected".
std::string strainWords(const Setup& setup, const Fault& fault, const std::optional<double>& standard,
                        const Correction& correction);

}  // namespace core
