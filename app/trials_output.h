// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/output.h"
#include "core/budget/trials.h"

// Trials of a channel's predictions, beside the linear budget that they validate.

namespace app {

/// Whether there is anything to draw: a step that closes a shunt.
bool hasShuntedStep(const core::Setup& setup);

/// Runs the trials of the channel called `name`; tells the progress on standard error when that is a
/// terminal.
core::Result<core::ChannelTrials> trialsWithProgress(const std::string& name, const core::Setup& setup,
                                                     const core::SetupPrediction& prediction,
                                                     const core::Budget& budget,
                                                     const core::ChannelTrialOptions& options);

Json trialsJson(const core::Setup& setup, const core::Budget& budget,
                const core::ChannelTrialOptions& options, const core::ChannelTrials& trials);
std::string trialsText(const core::Setup& setup, const core::Budget& budget,
                       const core::ChannelTrialOptions& options, const core::ChannelTrials& trials);

}  // namespace app
