// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>

#include "core/recording/time_axis.h"

namespace core {

/// After how many samples the mains pick-up in `values` repeats itself (50 or 60 Hz, folded where the
/// sampling is slow); 0 when none stands out of what is beside it in the spectrum. The sampling is taken to
/// be even: where it is not, no line is left to be found.
double mainsPeriod(const TimeAxis& time, std::span<const double> values);

}  // namespace core
