// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/evaluate/comparison.h"
#include "core/report/report.h"

namespace core {

/// Places after the point so that the greatest of `values` shows six significant digits.
int decimalsFor(std::span<const double> values);

/// `value` with `decimals` places; "" when absent, "not a number" or "infinite" when it is that.
std::string shownNumber(const std::optional<double>& value, int decimals);

/// "0.99870 ± 0.00041": the value to two digits of its standard error; without one, to six digits.
std::string withError(double value, const std::optional<double>& error);

/// Figures of one check in words: line, zero return, steps judged.
std::vector<Entry> figuresOf(const Channel& channel, const ChannelEvaluation& evaluation, std::size_t check);

/// Figures of a comparison: slope ratio, zero shift, both slopes, both zero returns.
std::vector<Entry> figuresOf(const Channel& channel, const ChannelEvaluation& evaluation,
                             const Comparison& comparison, std::size_t before, std::size_t after);

/// "The set-ups differ in leads, shunts.", or that they are the same.
std::string setupDifferenceSentence(const Comparison& comparison);

/// "unchanged", "changed", "not compared".
std::string_view comparisonWord(Verdict verdict);

}  // namespace core
