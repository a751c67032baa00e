// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/report_basis.h"

namespace core {

/// The sections of channel `index` of the document, those that the template has: drawing, set-up and plan in
/// the first; wiring, uncertainty, each check, the last two compared, trend, working.
std::vector<Section> channelSections(const ReportBasis& basis, std::size_t index);

}  // namespace core
