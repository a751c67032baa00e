// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/report_basis.h"

namespace core {

/// The last two checks of channel `index` against each other, what may have changed and what that means for
/// the data in between. The channel is in `basis.compared`.
Section comparisonSection(const ReportBasis& basis, std::size_t index);

/// Gain and zero of all checks of channel `index` over time; none for fewer than three checks.
std::optional<Section> trendSection(const ReportBasis& basis, std::size_t index);

}  // namespace core
