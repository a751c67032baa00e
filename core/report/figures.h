// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/compare/comparison.h"
#include "core/report/report.h"

namespace core {

/// Places after the point so that the greatest of `values` shows six significant digits.
int decimalsFor(std::span<const double> values);

/// `value` with `decimals` places; "" when absent, "not a number" or "infinite" when it is that.
std::string shownNumber(const std::optional<double>& value, int decimals);

/// Places after the point that give an uncertainty two significant digits, and no more than it needs: 1 of
/// 1.7, 5 of 0.00041, 2 of 0.0996 (which is 0.10), none of 123.
int decimalsOfUncertainty(double uncertainty);

/// An uncertainty to two significant digits: "1.7", "0.10", "123", "0"; "" when absent, a word when it is no
/// finite number.
std::string shownUncertainty(const std::optional<double>& uncertainty);

/// "0.99870 ± 0.00041": the value to two digits of its standard error; without one, to six digits.
std::string withError(double value, const std::optional<double>& error);

/// The decision rule with the numbers it uses: "guarded acceptance, guard band 1 × U, coverage 95.45 %".
std::string decisionText(const Decision& decision);

/// Figures of one check in words: the line, the gain of the chain and its scatter, every figure of
/// merit with uncertainty, limit and verdict, steps judged.
std::vector<Entry> figuresOf(const Channel& channel, const ChannelEvaluation& evaluation, std::size_t check);

/// A probability to two digits, "< 0.0001" when it is less; with its letter: "p = 0.92", "p < 0.0001".
std::string probabilityText(double probability, bool named = false);

/// Figures of a comparison: change of gain and zero with margin and result, E_n, all steps together, repeats.
std::vector<Entry> comparedFigures(const Channel& channel, const Comparison& comparison, std::size_t before);
/// The same, then both slopes and both zero returns.
std::vector<Entry> figuresOf(const Channel& channel, const ChannelEvaluation& evaluation,
                             const Comparison& comparison, std::size_t before, std::size_t after);

/// "The set-ups differ: gauge factor 2.08 before, 2.1 after; ...; and in 4 more.", the first three by name,
/// or that they are the same.
std::string setupDifferenceSentence(const Comparison& comparison);

}  // namespace core
