// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/evaluate/comparison.h"
#include "core/report/report.h"

namespace core {

/// The plan with its predictions and their expanded uncertainties, each in its scope; the note says k. A step
/// that cannot be predicted says so. `budget` is that of the same set-up and prediction.
Table planTable(const Setup& setup, const SetupPrediction& prediction, const Budget& budget);
/// One row a step: simulated, expected, reading, change, deviation, limit, what the decision rule looks at,
/// verdict.
Table checkTable(const Channel& channel, const ChannelEvaluation& evaluation, std::size_t check);
/// One row a figure of merit: value, share of its denominator, limit, verdict, how it is defined or why it is
/// not known. No rows when the check has none.
Table meritTable(const Channel& channel, const ChannelEvaluation& evaluation, std::size_t check);
/// One row a step: before, after, difference, limit, verdict.
Table comparisonTable(const Channel& channel, const Comparison& comparison, std::size_t before,
                      std::size_t after);

}  // namespace core
