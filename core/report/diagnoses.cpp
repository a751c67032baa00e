// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/diagnoses.h"

#include <algorithm>

#include "core/report/share_out.h"

namespace core {

bool callsForDiagnosis(const Check& check, const CheckAssessment& assessment) {
  const bool read =
      std::any_of(check.readings.begin(), check.readings.end(), [](const auto& one) { return one; });
  if (!read) return false;
  if (assessment.verdict != Verdict::Pass) return true;
  return assessment.line && assessment.line->chiSquareProbability < doubtfulProbability &&
         assessment.line->chiSquareProbability.has_value();
}

std::string diagnosedChecksStatement() {
  return say(
      "Possible causes are looked for in checks that do not pass, and in those whose readings are off their "
      "line "
      "by more than their uncertainties explain (probability below 5 %). The others were not diagnosed.");
}

std::vector<Diagnosis> diagnosesOf(std::span<const DiagnosisTask> tasks, const Progress& progress,
                                   const std::stop_token& stop) {
  std::vector<Diagnosis> diagnoses(tasks.size());
  shareOut(
      tasks.size(),
      [&](std::size_t k) {
        const DiagnosisTask& task = tasks[k];
        diagnoses[k] = diagnose(*task.setup, *task.prediction, *task.budget, *task.check, stop);
      },
      progress, stop);
  return diagnoses;
}

CheckDiagnoses diagnosesOf(const Document& document, std::span<const ChannelEvaluation> evaluations,
                           std::span<const CheckPlace> checks, const Progress& progress,
                           const std::stop_token& stop) {
  std::vector<DiagnosisTask> tasks;
  std::vector<CheckPlace> places;
  for (const auto& [index, number] : checks) {
    const Channel& channel = *document.channels[index];
    const Check& check = channel.checks[number];
    const CheckEvaluation& judged = evaluations[index].checks[number];
    if (!callsForDiagnosis(check, judged.assessment)) continue;
    tasks.push_back({&setupOf(channel, check), &judged.prediction, &judged.budget, &check});
    places.emplace_back(index, number);
  }
  std::vector<Diagnosis> diagnoses = diagnosesOf(tasks, progress, stop);
  CheckDiagnoses all;
  for (std::size_t k = 0; k < places.size(); ++k) all.emplace(places[k], std::move(diagnoses[k]));
  return all;
}

}  // namespace core
