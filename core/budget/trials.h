// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/budget/budget.h"
#include "core/uncertainty/monte_carlo.h"

namespace core {

/// Significant digits of u to which trials settle, and to which the linear interval is then compared with
/// theirs: one less, so that what is left of the trials' scatter is small beside the tolerance (JCGM
/// 101:2008, 8.2 asks for a fifth of it).
inline constexpr int settledDigits = 2;
inline constexpr int validatedDigits = settledDigits - 1;

/// What to draw for a channel.
struct ChannelTrialOptions {
  Scope scope = Scope::Chain;
  std::uint64_t seed = 1;
  std::optional<std::size_t> trials;  ///< none: until settled
  std::size_t greatestTrials = 2'000'000;
  unsigned threads = 0;
};

/// What the trials of a channel came to.
struct ChannelTrials {
  TrialResult result;
  std::vector<std::size_t> steps;  ///< output k of `result` is step steps[k]; zero steps have none
};

/// Draws all inputs of `budget` and solves the whole network for every step of every trial, nothing
/// linearised: the expected reading, or the simulated value by the network's inverse.
/// Steps that have no uncertainty in the budget are left out. Fails as `runTrials` does, and when no step
/// is left.
Result<ChannelTrials> runChannelTrials(const Setup& setup, const SetupPrediction& prediction,
                                       const Budget& budget, const ChannelTrialOptions& options,
                                       const std::stop_token& stop = {}, const Progress& progress = {});

}  // namespace core
