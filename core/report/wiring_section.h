// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/report_basis.h"

namespace core {

/// Pins and jumpers of channel `index`, what is wrong with them, and what its ohmmeter readings came to.
Section wiringSection(const ReportBasis& basis, std::size_t index);

}  // namespace core
