// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "app/output.h"
#include "core/diagnose/diagnosis.h"
#include "core/evaluate/evaluation.h"
#include "core/intake/intake.h"

namespace app {

/// One channel after a recording was laid beside its plan.
struct CheckedChannel {
  std::size_t index;  ///< in the document
  std::string name;
  std::string column;                             ///< of the recording
  core::ChannelFind find;                         ///< what was found in it
  std::optional<core::RunChoice> way;             ///< how it is matched; none: nothing was taken
  core::Result<core::Channel> channel;            ///< with the new check as its last, or why there is none
  core::ChannelEvaluation evaluation;             ///< of `channel`
  std::optional<core::Diagnosis> diagnosis = {};  ///< of the new check, when it calls for one
  std::string apart = {};  ///< that it is at other steps than the other channels; usually empty
};

/// BadInput when a channel could not be checked, CheckFailed when one does not pass, else AllPass.
Exit exitOf(const std::vector<CheckedChannel>& checked);

/// `document` is the one before the check. `missing` are channels that the recording has no column for;
/// `savedAs` is empty when nothing was.
Json checkJson(const core::Document& document, const std::vector<CheckedChannel>& checked,
               const std::vector<std::string>& missing, const std::string& savedAs);
std::string checkText(const core::Document& document, const std::vector<CheckedChannel>& checked);

}  // namespace app
