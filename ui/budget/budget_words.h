// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "core/budget/budget.h"

namespace ui {

/// Decimals that show two significant digits of an uncertainty (JCGM 100:2008, 7.2.6), 0 to 9.
int twoDigitDecimals(double uncertainty);
/// The uncertainty so: "0.50", "12", "120".
QString twoDigitsText(double uncertainty);
/// "95.45 %".
QString coverageText(double coverage);

/// Header of a column of expanded uncertainties, two lines: "U, chain" and its unit.
QString expandedHeader(const core::Setup& setup, core::Scope scope);
/// What U of a step is of, with k, coverage and degrees of freedom; one sentence.
QString expandedSentence(const core::Setup& setup, core::Scope scope,
                         const core::StepUncertainty& uncertainty);
/// "effective degrees of freedom: 37.2, cut down to 37 for k", "... not used: correlated inputs contribute".
QString degreesOfFreedomText(const core::StepUncertainty& uncertainty);

/// "4, +3": number and name of a step, counted from 0.
QString stepTitle(const core::Setup& setup, std::size_t step);
/// "Step 4, +3: expected 2950.1 µm/m, U = 12 µm/m (k = 2.00, 95.45 %, chain)".
QString budgetHeadline(const core::Setup& setup, core::Scope scope, std::size_t step,
                       const core::StepUncertainty& uncertainty);
/// What a scope's uncertainty is of and what it covers; one sentence.
QString scopeSentence(const core::Setup& setup, core::Scope scope);
/// "Expected reading", "Simulated strain", "Simulated load".
QString scopeQuantity(const core::Setup& setup, core::Scope scope);

/// "0.871 µm/m per Ω": the sensitivity (in the scope's unit per base unit) in the units that input and
/// scope are shown in.
QString sensitivityText(const core::Setup& setup, core::Scope scope, core::Input input, double sensitivity);

}  // namespace ui
