// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/compare/comparison.h"
#include "core/compare/trend.h"
#include "core/report/report.h"

namespace core {

/// The plan with its predictions and their expanded uncertainties, each in its scope; the note says k. A step
/// that cannot be predicted says so. `budget` is that of the same set-up and prediction.
Table planTable(const Setup& setup, const SetupPrediction& prediction, const Budget& budget);
/// One row a step: simulated, expected, reading, change, deviation, limit, what the decision rule looks at,
/// verdict.
Table checkTable(const Channel& channel, const ChannelEvaluation& evaluation, std::size_t check);
/// One row a figure of merit that is known or has a limit: value, share of its denominator, limit, verdict.
/// Of the others the note says why they are not known.
Table meritTable(const Channel& channel, const ChannelEvaluation& evaluation, std::size_t check);
/// "Zero shift: zero reading farthest from ...", of each figure that is known.
std::vector<std::string> meritDefinitions(const std::vector<Merit>& merits);
/// One row a step of the earlier check: before, after, what it moved by with U, margin and both
/// probabilities, what it comes to. The note says how to read it.
Table comparisonTable(const Channel& channel, const Comparison& comparison, std::size_t before,
                      std::size_t after);
/// One row a difference of the two set-ups; `before` and `after` name the checks. No rows when they are
/// alike.
Table configurationTable(const Comparison& comparison, const std::string& before, const std::string& after);
/// One row a check with its gain and zero; the note is the trend's sentence.
Table trendTable(const Channel& channel, const Trend& trend);

}  // namespace core
