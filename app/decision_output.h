// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/output.h"
#include "core/uncertainty/decision.h"

namespace app {

/// The rule by its key in files, the coverage probability, and the number that this rule uses besides.
Json decisionJson(const core::Decision& decision);

/// Adds what decided on a step: "expanded_uncertainty" of its deviation and the numbers of its rule; null
/// where nothing was decided, and no key for a number that the rule does not use.
void addDecided(Json& json, const core::Decision& decision, const std::optional<core::Decided>& decided);

}  // namespace app
