// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <optional>
#include <string>

#include "core/assess/check.h"
#include "core/assess/verdict.h"
#include "core/budget/budget.h"

// What the judging of steps and of figures of merit have in common.

namespace core {

/// The reading of `step`, none where the check has none.
const std::optional<Measured>& readingAt(const Check& check, std::size_t step);

/// Whether all shunts are open at `step`.
bool isZeroStep(const Setup& setup, std::size_t step);

/// Greatest magnitude of all expected readings, whether they were read or not: what zero return is measured
/// by.
Reading greatestExpected(const SetupPrediction& prediction);

/// How far a zero reading may be from the first one: the share of the greatest expected reading, never less
/// than the least limit.
Reading zeroReturnLimit(const Limits& limits, const SetupPrediction& prediction);

/// Whether every limit is a number that is not negative.
bool limitsUsable(const Limits& limits);

/// Standard uncertainty of the change at `step` less the expected one: that of the expected reading (in the
/// scope of the chain), of this reading and of the zero reading together, as far as they are known. 0 of the
/// zero reference itself.
Reading deviationUncertainty(const Check& check, const std::optional<std::size_t>& zeroStep, std::size_t step,
                             const StepUncertainty& expected);

Verdict verdictOf(Outcome outcome);

/// What the rule made of a deviation, with its numbers: "closer to the limit than the guard band of
/// 3 µm/m". Empty of simple acceptance. `shown` writes a number in the unit of the limit.
std::string ruleReason(const Decision& rule, const Decided& decided, double limit,
                       const std::function<std::string(double)>& shown);

}  // namespace core
