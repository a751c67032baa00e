// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <set>

#include "core/report/report_basis.h"

namespace core {

/// Check `number` of channel `index`: who, when, by what and with what it was made, its verdict, and what the
/// template wants of readings, chart, figures, diagnosis and remarks. Definitions of figures that are not
/// among `defined` are told and added to them.
Section checkSection(const ReportBasis& basis, std::size_t index, std::size_t number,
                     std::set<std::string>& defined);

}  // namespace core
