// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <span>
#include <stop_token>
#include <utility>
#include <vector>

#include "core/diagnose/diagnosis.h"
#include "core/evaluate/evaluation.h"
#include "core/units/progress.h"

namespace core {

/// Below this probability of its chi-square a line is off by more than its points' uncertainties explain
/// (common practice).
inline constexpr double doubtfulProbability = 0.05;

/// Whether `check` is worth the time of a diagnosis: it has a reading, and does not pass or is off its line
/// by more than the uncertainties explain.
bool callsForDiagnosis(const Check& check, const CheckAssessment& assessment);
/// The same in a sentence, for readers who miss a diagnosis.
std::string diagnosedChecksStatement();

/// What one diagnosis is made of. Never null; all must outlive the diagnosis.
struct DiagnosisTask {
  const Setup* setup;
  const SetupPrediction* prediction;
  const Budget* budget;
  const Check* check;
};

/// All `tasks` on as many threads as the machine has, in their order; the same with any number of threads.
/// `progress` is told on the calling thread. After `stop` what was not done is NotPossible.
std::vector<Diagnosis> diagnosesOf(std::span<const DiagnosisTask> tasks, const Progress& progress = {},
                                   const std::stop_token& stop = {});

/// Index of a channel and of a check in it.
using CheckPlace = std::pair<std::size_t, std::size_t>;
using CheckDiagnoses = std::map<CheckPlace, Diagnosis>;

/// Of those of `checks` that call for one. `evaluations` are of all channels of `document`, in their order.
CheckDiagnoses diagnosesOf(const Document& document, std::span<const ChannelEvaluation> evaluations,
                           std::span<const CheckPlace> checks, const Progress& progress = {},
                           const std::stop_token& stop = {});

}  // namespace core
