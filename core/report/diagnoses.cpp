// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/diagnoses.h"

#include <algorithm>
#include <atomic>
#include <thread>

#include "core/units/threads.h"

namespace core {

bool callsForDiagnosis(const Check& check, const CheckAssessment& assessment) {
  const bool read =
      std::any_of(check.readings.begin(), check.readings.end(), [](const auto& one) { return one; });
  if (!read) return false;
  if (assessment.verdict != Verdict::Pass) return true;
  return assessment.line && assessment.line->chiSquareProbability < doubtfulProbability &&
         assessment.line->chiSquareProbability.has_value();
}

std::string_view diagnosedChecksStatement() {
  return "Possible causes are looked for in checks that do not pass, and in those whose readings are off "
         "their line by more than their uncertainties explain (probability below 5 %). The others were not "
         "diagnosed.";
}

std::vector<Diagnosis> diagnosesOf(std::span<const DiagnosisTask> tasks, const Progress& progress,
                                   const std::stop_token& stop) {
  std::vector<Diagnosis> diagnoses(tasks.size());
  std::atomic<std::size_t> next{0}, done{0};
  const auto threads = static_cast<unsigned>(
      std::clamp<std::size_t>(tasks.size(), 1, std::max(1U, std::thread::hardware_concurrency())));
  onThreads(threads, [&](unsigned thread) {
    for (std::size_t k = next++; k < tasks.size() && !stop.stop_requested(); k = next++) {
      const DiagnosisTask& task = tasks[k];
      diagnoses[k] = diagnose(*task.setup, *task.prediction, *task.budget, *task.check, stop);
      const std::size_t finished = ++done;
      if (thread == 0 && progress)
        progress(static_cast<double>(finished) / static_cast<double>(tasks.size()));
    }
  });
  if (progress && !tasks.empty() && !stop.stop_requested()) progress(1);  // the others may have been faster
  return diagnoses;
}

CheckDiagnoses diagnosesOf(const Document& document, std::span<const ChannelEvaluation> evaluations,
                           const Progress& progress, const std::stop_token& stop) {
  std::vector<DiagnosisTask> tasks;
  std::vector<std::pair<std::size_t, std::size_t>> places;
  for (std::size_t index = 0; index < document.channels.size(); ++index) {
    const Channel& channel = *document.channels[index];
    for (std::size_t number = 0; number < channel.checks.size(); ++number) {
      const Check& check = channel.checks[number];
      const CheckEvaluation& judged = evaluations[index].checks[number];
      if (!callsForDiagnosis(check, judged.assessment)) continue;
      tasks.push_back({&setupOf(channel, check), &judged.prediction, &judged.budget, &check});
      places.emplace_back(index, number);
    }
  }
  std::vector<Diagnosis> diagnoses = diagnosesOf(tasks, progress, stop);
  CheckDiagnoses all;
  for (std::size_t k = 0; k < places.size(); ++k) all.emplace(places[k], std::move(diagnoses[k]));
  return all;
}

}  // namespace core
