// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/report_basis.h"

namespace core {

/// Indices of the report's channels, those first that a reviewer has to look at.
std::vector<std::size_t> worstFirst(const ReportBasis& basis);

/// All channels and checks of the report, worst first.
Section summarySection(const ReportBasis& basis);

}  // namespace core
