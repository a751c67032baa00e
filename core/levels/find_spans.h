// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <stop_token>
#include <vector>

#include "core/levels/levels.h"

namespace core {

/// The held stretches of a step recording, in order, none overlapping. Each lies within one level: the
/// settling behind the step that leads to it, contact bounce and the guard before the next step are left out.
/// What is too short, or still on its way from one level to another, is no span. Noise (white, red, mains
/// pick-up), spikes, drift and quantisation make no steps.
///
/// Needs what findLevels has checked: at least three numbers, finite or NaN. Empty when stopped.
std::vector<SampleSpan> findSpans(const TimeAxis& time, std::span<const double> values,
                                  const LevelOptions& options = {}, const std::stop_token& stop = {},
                                  const Progress& progress = {});

}  // namespace core
