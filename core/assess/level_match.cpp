// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/assess/level_match.h"

#include <algorithm>
#include <cmath>

#include "core/assess/run_readings.h"

namespace core {
namespace {

constexpr std::size_t mostCells = 500'000;  // levels x steps, some 150 MB; no recording of a plan comes near
constexpr std::size_t cellsAtOnce = 120'000;  // levels x steps x lines tried

/// Lines by what the whole recording costs with each, the best few.
std::vector<MatchLine> bestLines(const AlignmentTask& task, const std::vector<MatchLine>& lines,
                                 std::size_t most) {
  std::vector<std::pair<double, MatchLine>> ranked;
  for (const MatchLine& line : lines) ranked.push_back({align(task, {&line, 1}).cost, line});
  std::stable_sort(ranked.begin(), ranked.end(),
                   [](const auto& a, const auto& b) { return a.first < b.first; });
  std::vector<MatchLine> best;
  for (const auto& [cost, line] : ranked)
    if (best.size() < most) addLine(task, line, best);
  return best;
}

/// Candidate lines, each fitted to what it aligns; with and without drift.
std::vector<MatchLine> fittedLines(const AlignmentTask& task) {
  const std::size_t cells = task.levels() * task.steps();
  const std::size_t most = std::clamp<std::size_t>(cellsAtOnce / cells, 4, 16);
  std::vector<MatchLine> lines;
  for (const MatchLine& line : candidateLines(task, most)) {
    addLine(task, line, lines);
    for (const AlignedRun& run : align(task, {&line, 1}).runs)
      for (const bool hasDrift : {false, true})
        if (!hasDrift || run.visits.size() >= 5)
          addLine(task, refitted(task, line, run.visits, hasDrift), lines);
  }
  return bestLines(task, lines, std::min<std::size_t>(most, 12));
}

MatchRemark* remarkOf(std::vector<MatchRemark>& remarks, MatchRemarkKind kind) {
  for (MatchRemark& remark : remarks)
    if (remark.kind == kind) return &remark;
  return &remarks.emplace_back(MatchRemark{kind, {}, {}});
}

void addUnique(std::vector<std::size_t>& list, std::size_t value) {
  if (std::find(list.begin(), list.end(), value) == list.end()) list.push_back(value);
}

/// Makes the remarks on one run. Levels are indices in the task; `begin` and `end` bound those that are its.
class Remarks {
 public:
  Remarks(const AlignmentTask& task, const RunReading& reading, std::size_t begin, std::size_t end)
      : m_reading(reading), m_begin(begin), m_end(end), m_levelOfStep(levelOfStep(task, reading.visits)) {}

  std::vector<MatchRemark> all() {
    if (m_reading.line.gain < 0) remarkOf(m_remarks, MatchRemarkKind::Reversed);
    addMissing();
    addSwapped();
    addRepeated();
    addShared();
    addExtra();
    return std::move(m_remarks);
  }

 private:
  void addMissing() {
    const std::size_t steps = m_levelOfStep.size();
    std::size_t first = 0, last = steps;
    while (first < steps && !m_levelOfStep[first]) ++first;
    while (last > first && !m_levelOfStep[last - 1]) --last;
    // With levels before that are nobody's the recording did not begin late.
    const bool isLate = m_reading.visits.front().level == m_begin;
    const bool isEarly = m_reading.visits.back().level + 1 == m_end;
    for (std::size_t step = 0; step < steps; ++step) {
      if (m_levelOfStep[step]) continue;
      MatchRemarkKind kind = MatchRemarkKind::Missing;
      if (step < first && isLate) kind = MatchRemarkKind::StartsLate;
      if (step >= last && isEarly) kind = MatchRemarkKind::EndsEarly;
      remarkOf(m_remarks, kind)->steps.push_back(step);
    }
  }

  void addSwapped() {
    MatchRemark remark{MatchRemarkKind::Swapped, {}, {}};
    for (const Visit& visit : m_reading.visits) {
      if (!visit.isSwapped) continue;
      remark.steps.push_back(visit.step);
      remark.levels.push_back(visit.level);
    }
    std::sort(remark.steps.begin(), remark.steps.end());
    if (!remark.steps.empty()) m_remarks.push_back(std::move(remark));
  }

  void addRepeated() {
    for (const Visit& visit : m_reading.visits) {
      if (m_levelOfStep[visit.step] == visit.level || isReading(visit.level)) continue;
      MatchRemark* remark = remarkOf(m_remarks, MatchRemarkKind::Repeated);
      addUnique(remark->steps, visit.step);
      addUnique(remark->levels, visit.level);
    }
  }

  void addShared() {
    for (std::size_t step = 0; step < m_levelOfStep.size(); ++step)
      for (std::size_t other = step + 1; other < m_levelOfStep.size(); ++other) {
        if (!m_levelOfStep[step] || m_levelOfStep[step] != m_levelOfStep[other]) continue;
        MatchRemark* remark = remarkOf(m_remarks, MatchRemarkKind::Shared);
        addUnique(remark->steps, step);
        addUnique(remark->steps, other);
        addUnique(remark->levels, *m_levelOfStep[step]);
      }
  }

  void addExtra() {
    for (std::size_t level = m_begin; level < m_end; ++level) {
      const bool isVisited = std::any_of(m_reading.visits.begin(), m_reading.visits.end(),
                                         [&](const Visit& visit) { return visit.level == level; });
      if (!isVisited) remarkOf(m_remarks, MatchRemarkKind::Extra)->levels.push_back(level);
    }
  }

  bool isReading(std::size_t level) const {
    return std::find(m_levelOfStep.begin(), m_levelOfStep.end(), std::optional(level)) != m_levelOfStep.end();
  }

  const RunReading& m_reading;
  std::size_t m_begin, m_end;
  std::vector<std::optional<std::size_t>> m_levelOfStep;
  std::vector<MatchRemark> m_remarks;
};

/// The levels that a run may be made of: its own and the free ones on both sides.
struct Window {
  std::size_t begin = 0;
  std::size_t end = 0;
};

std::vector<Window> windowsOf(const AlignmentTask& task, const Alignment& alignment) {
  std::vector<Window> windows;
  for (const AlignedRun& run : alignment.runs) {
    std::size_t first = task.levels(), last = 0;
    for (const Visit& visit : run.visits) {
      first = std::min(first, visit.level);
      last = std::max(last, visit.level);
    }
    // Free levels between two runs go to the earlier one, as those behind its last step.
    if (windows.empty()) first = 0;
    if (!windows.empty()) windows.back().end = std::max(windows.back().end, first);
    windows.push_back({first, last + 1});
  }
  if (!windows.empty()) windows.back().end = task.levels();
  return windows;
}

/// A reading in the terms of the caller: `levelIndex` tells which of his levels each of the task's is.
RunMatch runMatch(const AlignmentTask& task, RunReading reading, const Window& window,
                  const std::vector<std::size_t>& levelIndex) {
  RunMatch match;
  reading.line = refitted(task, reading.line, reading.visits, reading.line.drift_per_s != 0);
  match.gain = reading.line.gain;
  match.zero = reading.line.zero;
  match.remarks = Remarks(task, reading, window.begin, window.end).all();
  double squares = 0;
  for (const Visit& visit : reading.visits) {
    const double residual = task.residual(reading.line, visit.step, visit.level);
    squares += residual * residual;
  }
  match.misfit = std::sqrt(squares / static_cast<double>(reading.visits.size()));
  for (const auto& level : levelOfStep(task, reading.visits))
    match.levelOfStep.push_back(level ? std::optional(levelIndex[*level]) : std::nullopt);
  for (MatchRemark& remark : match.remarks)
    for (std::size_t& level : remark.levels) level = levelIndex[level];
  return match;
}

/// Says which steps are off in a reading that is one of several: that is what tells them apart.
void addOff(const AlignmentTask& task, const RunReading& reading, const std::vector<std::size_t>& levelIndex,
            RunMatch& match) {
  MatchRemark remark{MatchRemarkKind::Off, {}, {}};
  const MatchLine line = refitted(task, reading.line, reading.visits, reading.line.drift_per_s != 0);
  const auto levels = levelOfStep(task, reading.visits);
  for (std::size_t step = 0; step < levels.size(); ++step) {
    if (!levels[step] || !isOff(task, line, {step, *levels[step]})) continue;
    remark.steps.push_back(step);
    remark.levels.push_back(levelIndex[*levels[step]]);
    remark.deviations.push_back(task.residual(line, step, *levels[step]));
  }
  if (!remark.steps.empty()) match.remarks.push_back(std::move(remark));
}

FoundRun foundRun(const AlignmentTask& task, const std::vector<MatchLine>& lines, const Window& window,
                  const std::vector<std::size_t>& levelIndex) {
  auto readings = runReadings(task, lines, window.begin, window.end);
  FoundRun run;
  if (readings.empty()) return run;
  RunReading planned = inPlannedOrder(task, readings.front(), window.begin, window.end);
  const auto levels = levelOfStep(task, planned.visits);
  if (std::none_of(readings.begin(), readings.end(),
                   [&](const RunReading& one) { return levelOfStep(task, one.visits) == levels; }))
    readings.insert(readings.begin() + 1, std::move(planned));
  if (readings.size() > 1 + mostOtherReadings) readings.resize(1 + mostOtherReadings);
  for (std::size_t k = 0; k < readings.size(); ++k) {
    RunMatch match = runMatch(task, readings[k], window, levelIndex);
    if (readings.size() > 1) addOff(task, readings[k], levelIndex, match);
    if (k == 0)
      run.best = std::move(match);
    else
      run.others.push_back(std::move(match));
  }
  return run;
}

/// Levels that are in no run and nobody's repeated step.
std::vector<std::size_t> unclaimedBy(const std::vector<FoundRun>& runs, std::size_t count) {
  std::vector<bool> isClaimed(count, false);
  for (const FoundRun& run : runs) {
    for (const auto& level : run.best.levelOfStep)
      if (level) isClaimed[*level] = true;
    for (const MatchRemark& remark : run.best.remarks)
      if (remark.kind == MatchRemarkKind::Repeated)
        for (const std::size_t level : remark.levels) isClaimed[level] = true;
  }
  std::vector<std::size_t> unclaimed;
  for (std::size_t level = 0; level < count; ++level)
    if (!isClaimed[level]) unclaimed.push_back(level);
  return unclaimed;
}

}  // namespace

std::size_t RunMatch::stepsWithLevel() const {
  return static_cast<std::size_t>(std::count_if(levelOfStep.begin(), levelOfStep.end(),
                                                [](const auto& level) { return level.has_value(); }));
}

Result<std::vector<ExpectedStep>> expectedSteps(const Setup& setup, const SetupPrediction& prediction) {
  std::vector<ExpectedStep> steps;
  for (std::size_t k = 0; k < setup.sequence.size(); ++k) {
    const auto& step = prediction.steps[k];
    if (!step) return step.error();
    steps.push_back({step->reading.base(), setup.sequence[k].hold.base()});
  }
  return steps;
}

LevelMatch matchLevels(std::span<const ExpectedStep> steps, std::span<const Level> levels) {
  std::vector<Level> usable;  // those with a value
  std::vector<std::size_t> levelIndex;
  for (std::size_t k = 0; k < levels.size(); ++k)
    if (std::isfinite(levels[k].mean)) {
      usable.push_back(levels[k]);
      levelIndex.push_back(k);
    }
  LevelMatch match;
  if (!steps.empty() && !usable.empty() && steps.size() * usable.size() <= mostCells) {
    const AlignmentTask task = alignmentTask(steps, usable);
    const auto lines = fittedLines(task);
    const Alignment alignment = align(task, lines);
    for (const Window& window : windowsOf(task, alignment)) {
      FoundRun run = foundRun(task, lines, window, levelIndex);
      if (!run.best.levelOfStep.empty()) match.runs.push_back(std::move(run));
    }
  }
  match.unclaimed = unclaimedBy(match.runs, levels.size());
  return match;
}

Measured measuredFrom(const Level& level) {
  return {Reading(level.mean), Reading(level.stdUncertainty), Duration(level.begin_s), Duration(level.end_s)};
}

std::vector<std::optional<Measured>> readingsOf(const RunMatch& run, std::span<const Level> levels) {
  std::vector<std::optional<Measured>> readings;
  for (const auto& index : run.levelOfStep)
    readings.push_back(index ? std::optional(measuredFrom(levels[*index])) : std::nullopt);
  return readings;
}

}  // namespace core
