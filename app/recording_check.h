// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "app/check_output.h"
#include "app/match_output.h"
#include "core/document/document.h"
#include "core/intake/intake.h"
#include "core/recording/layout.h"
#include "core/recording/recording.h"

// The channels of a document judged by the columns of a recording.

namespace app {

/// Refuses a check without a name or with a day that is none.
core::Result<void> requireCheckNamed(const std::string& name, const std::string& date);

/// The recording at `path` as the document at `home` will refer to it: relative to where the document is.
core::Result<core::RecordingReference> referenceTo(const std::string& path, const std::string& home,
                                                   const core::LayoutChoices& choices);

/// The channels of `uses` with `check` taken from their columns and closed, those that could not be checked
/// with the reason. Nothing is diagnosed.
std::vector<CheckedChannel> checkedChannels(const core::Document& document, const core::Recording& recording,
                                            const std::vector<core::ColumnUse>& uses,
                                            const MatchWishes& wanted, const core::Check& check,
                                            const core::Progress& progress = {});

/// Names of the channels of the document that the recording does not have.
std::vector<std::string> withoutColumn(const core::Document& document,
                                       const std::vector<CheckedChannel>& checked);

}  // namespace app
