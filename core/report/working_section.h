// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/report_basis.h"

namespace core {

/// How the numbers of the largest step of channel `index` come about: of the latest check that has a reading,
/// else of the plan. None where no step is predicted.
std::optional<Section> workingSection(const ReportBasis& basis, std::size_t index);

}  // namespace core
