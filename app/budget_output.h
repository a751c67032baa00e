// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/output.h"
#include "core/evaluate/evaluation.h"

// The uncertainty of a channel's predictions as the command line prints it.

namespace app {

/// "" for the chain; "_strain", of a transducer "_load", for the other scope: behind the names of its keys.
std::string keyEnding(const core::Setup& setup, core::Scope scope);

/// Adds U, k and degrees of freedom of one step in both scopes, or why there is none.
void addStepUncertainty(Json& json, const core::Setup& setup, const core::Budget& budget, std::size_t step);

/// The whole budget; of every step and scope one number an input, in the order of "inputs".
Json budgetJson(const core::Setup& setup, const core::Budget& budget);

/// The whole budget in tables: inputs, steps, each step's lines, covariances.
std::string budgetText(const core::Setup& setup, const core::Budget& budget);

}  // namespace app
