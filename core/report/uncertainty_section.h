// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/evaluate/evaluation.h"
#include "core/report/report.h"

namespace core {

/// What the channel's expected readings and simulated values are known to: what the scopes cover, inputs,
/// budgets of the largest positive and the largest negative step, correlation of the steps. None when
/// nothing can be predicted.
std::optional<Section> uncertaintySection(const Channel& channel, const ChannelEvaluation& evaluation);

}  // namespace core
