// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <vector>

#include "core/assess/check.h"

namespace core {

/// When each of `steps` was averaged, s from the begin: as recorded when all of them are, else as planned.
/// Each has a reading.
std::vector<double> stepTimes_s(const Setup& setup, const Check& check,
                                const std::vector<std::size_t>& steps);

/// From the middle of the first step of the check to that of the last, as planned; s.
double plannedDuration_s(const Setup& setup);
/// The same of those of its steps that are looked at, by the times above; 0 of none.
double lasted_s(const Setup& setup, const Check& check, const std::vector<std::size_t>& steps);

}  // namespace core
