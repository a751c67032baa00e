// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>

#include "app/output.h"
#include "core/report/diagnoses.h"

namespace app {

/// All `tasks`, in their order; tells the progress on standard error when that is a terminal.
std::vector<core::Diagnosis> diagnosesWithProgress(std::span<const core::DiagnosisTask> tasks);

/// Result, evidence and explanations. Arms and steps are counted from 1, shunts go by their name; keys of
/// what a cause does not have are null.
Json diagnosisJson(const core::Setup& setup, const core::Diagnosis& diagnosis);
Json correctionJson(const core::Correction& correction);

/// The likeliest cause in a line, or what the diagnosis came to without one; ends with a line end.
/// `allPass`: all steps of the check do, which it then says.
std::string likeliestCauseText(const core::Diagnosis& diagnosis, bool allPass);
/// The whole in words: the sentence, a table of causes, what follows from the first and from those tied with
/// it.
std::string diagnosisText(const core::Setup& setup, const core::Diagnosis& diagnosis);

}  // namespace app
