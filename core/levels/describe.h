// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <stop_token>
#include <vector>

#include "core/levels/levels.h"

namespace core {

/// What the samples of each of `spans` (in order, not empty, none overlapping, found or drawn by hand) tell:
/// mean, robust mean, drift, uncertainty, quality. The noise is taken to be of one kind all along the
/// recording, so its autocorrelation and mains pick-up are judged from all spans together; its strength is
/// each span's own. A span without a number has NaN for its mean and is Poor. Empty when stopped.
std::vector<Level> describeLevels(const TimeAxis& time, std::span<const double> values,
                                  std::span<const SampleSpan> spans, const LevelOptions& options = {},
                                  const std::stop_token& stop = {});

}  // namespace core
