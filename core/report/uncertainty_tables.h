// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/budget/budget.h"
#include "core/report/report.h"

namespace core {

// The uncertainty of one set-up in tables. Each `budget` is that of the `setup` beside it.

/// "U is the expanded uncertainty: coverage probability 95.45 %, k = 2." Steps whose degrees of freedom
/// differ give the least and greatest k. Empty when no step has an uncertainty.
std::string coverageSentence(const Setup& setup, const Budget& budget);

/// What u, ν_eff, k and U stand for, and why degrees of freedom are not used, when they are not.
std::string symbolsText(const Budget& budget);

/// Whether some step depends on input `input`.
bool isUsed(const Budget& budget, std::size_t input);
/// Whether some step depends on an input whose uncertainty is assumed.
bool restsOnAssumptions(const Budget& budget);

/// What is stated or assumed about every input, with the reason of an assumption or refusal. Inputs that are
/// alike share a row; the note names those that no step depends on, and how the inputs of a group correlate.
Table inputTable(const Setup& setup, const Budget& budget);

/// Standard uncertainty, degrees of freedom, k and U of every step in both scopes; the note says when degrees
/// of freedom could not be used.
Table stepUncertaintyTable(const Setup& setup, const Budget& budget);

/// What the uncertainty of `step` (from 0) is made of, in every scope in which it has one. Inputs whose share
/// of the variance is below `leastShare` in all of these are summed up as others.
Table budgetTable(const Setup& setup, const Budget& budget, std::size_t step, double leastShare = 0.001);

/// How the errors of the steps that have an uncertainty go together in `scope`: correlation coefficients, to
/// two places, or covariances.
Table correlationTable(const Setup& setup, const Budget& budget, Scope scope);
Table covarianceTable(const Setup& setup, const Budget& budget, Scope scope);

/// Why steps have no uncertainty, a sentence each reason; steps without a prediction are left out.
std::vector<std::string> missingUncertainties(const Setup& setup, const SetupPrediction& prediction,
                                              const Budget& budget);

}  // namespace core
