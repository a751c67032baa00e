// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/report_basis.h"
#include "core/report/workbook_sheet.h"

namespace core {

/// Channel `index` with its checks, charts and comparison from `row` of `sheet` on; returns the row behind
/// it.
std::uint32_t putChannel(WorkbookSheet& sheet, std::uint32_t row, const ReportBasis& basis,
                         std::size_t index);

}  // namespace core
