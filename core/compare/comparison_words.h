// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/compare/comparison.h"
#include "core/document/document.h"

// What a comparison comes to, in sentences.

namespace core {

/// A difference with its U to two digits of U: "-1.3 ± 0.2 µm/m"; `unit` with its space, `factor` from the
/// difference's unit to it.
std::string differenceText(const Difference& difference, double factor, std::string_view unit);
/// Of the gain, in per cent: "-1.30 % ± 0.20 %".
std::string gainText(const Difference& gain);
/// "15 µm/m", "1 %": a margin, as it is.
std::string marginText(double margin, double factor, std::string_view unit);

/// What it comes to at one step.
std::string stepSentence(const StepComparison& step, const std::string& unit, bool protectedByJoint);

/// The headline of `comparison`, whose numbers and `change` are there, and what a reviewer must not miss.
std::string comparisonSentence(const Channel& channel, const ChannelEvaluation& evaluation,
                               const Comparison& comparison, std::size_t before, std::size_t after);

}  // namespace core
