// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/report_basis.h"

namespace core {

/// All channels and checks of the report, worst first.
Section summarySection(const ReportBasis& basis);

}  // namespace core
