// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/diagnose/diagnosis.h"
#include "core/report/report.h"

namespace core {

/// That a diagnosis names suspicions and changes no verdict; beside every one that is shown.
std::string suspicionStatement();

/// What `diagnosis` came to, also where it has no sentence of its own.
std::string diagnosisSentence(const Diagnosis& diagnosis);

/// "ordinary", "uncommon", "rare", "far-fetched".
std::string plausibilityWord(double plausibility);

/// What the evidence for each explanation falls behind the best by; only such differences mean anything.
Information evidenceBehind(const Diagnosis& diagnosis, const Explanation& explanation);

/// "corrected = (0.952 ± 0.003) × (reading − (1.5 ± 0.4) µm/m)"; empty when it would change nothing.
std::string correctionFormula(const Setup& setup, const Correction& correction);
/// Whether data may be corrected, in one or two sentences: what is to be done first, why behind it.
std::string correctionAdvice(const Correction& correction);

/// Whether all steps of a check pass, whatever a diagnosis suspects.
bool allStepsPass(const CheckAssessment& assessment);
/// That the steps do; for behind a suspicion.
std::string withinLimitsStatement();

/// What follows from one explanation, in short lines: size, how much it explains (not `inTable`, where that
/// stands), setting, what would confirm it, what it does to the strain data, correction.
EntryList causeEntries(const Setup& setup, const Explanation& explanation, bool inTable);

/// The likeliest explanations, at most `most` and all that are tied: size, how much each explains, weight.
Table causeTable(const Diagnosis& diagnosis, std::size_t most);

/// The diagnosis of a check as it is printed: sentence; a table of causes when several cannot be told apart;
/// of the likeliest cause, of two when they are tied, what to measure, what it does to the strain data, by
/// what these may be corrected or that they may not; of the others that count a line. `allPass`: all steps
/// do.
std::vector<Block> diagnosisBlocks(const Setup& setup, const Diagnosis& diagnosis, bool allPass);

}  // namespace core
