// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <string_view>
#include <vector>

#include "core/budget/budget.h"

// Which errors of a prediction are the same in two checks of one channel, and so drop out of the difference.

namespace core {

/// How long an unknown error of an input stays what it is.
enum class Lasting : std::uint8_t {
  WithThePart,     ///< as long as it is the same part with the same stated value
  WithInstrument,  ///< as long as it is the same instrument with the same settings
  OneCheck,        ///< another one in every check
};

/// What was decided for a kind of input, and why. Common practice, no source.
struct LastingRule {
  InputKind kind;
  Lasting lasting;
  std::string_view reason;
};
const LastingRule& lastingRuleOf(InputKind kind);

/// Two steps that are compared.
struct StepPair {
  std::size_t before = 0, after = 0;
};

/// Covariance of what the errors of all inputs (but rounding, which belongs to single readings) do to the
/// differences of expected readings, later less earlier, of `pairs`; row after row. Scope of the chain.
///
/// An input i that both checks share, with sensitivities s, contributes (s_after - s_before) u_i: nothing
/// where the set-ups are alike. One that they do not share contributes both, independently. Inputs of a
/// correlation group are shared together or not at all: a group of which one member was measured anew is
/// another group. Steps must have an uncertainty in both budgets.
std::vector<double> differenceCovariance(const Setup& before, const Budget& budgetBefore, const Setup& after,
                                         const Budget& budgetAfter, std::span<const StepPair> pairs);

}  // namespace core
