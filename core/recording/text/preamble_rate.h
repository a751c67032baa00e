// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string_view>

namespace core {

/// Samples per second that a line of a preamble tells: "Sample rate: 50 Hz", "Abtastrate;2,5 kHz",
/// "Interval: 0.02 s", "dt = 20 ms", "fs=100". `decimal` is that of the file; "1,000 Hz" in one with points
/// is a thousand. Nothing when the line tells none: a filter's frequency is no sample rate.
std::optional<double> sampleRateIn(std::string_view line, char decimal);

}  // namespace core
