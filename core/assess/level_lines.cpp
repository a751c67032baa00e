// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/assess/level_alignment.h"

namespace core {
namespace {

/// Lines that differ less are one.
bool isClose(const AlignmentTask& task, const MatchLine& a, const MatchLine& b) {
  const double duration = task.times_s.back() - task.times_s.front();
  const double scale = std::max(task.least, 1e-300) * std::abs(a.gain);
  return std::abs(a.gain - b.gain) * std::max(task.range, task.least) < 0.02 * scale &&
         std::abs(a.zero - b.zero) < 0.02 * scale &&
         std::abs(a.drift_per_s - b.drift_per_s) * duration < 0.05 * scale;
}

/// A line that one step from level to level would have, in cells of about its own accuracy.
struct Vote {
  long zeroCell = 0;
  long gainCell = 0;  ///< of the logarithm; lines of either sign never share a cell
  std::size_t level = 0;
  MatchLine line;

  bool isSameCell(const Vote& other) const {
    return zeroCell == other.zeroCell && gainCell == other.gainCell &&
           (line.gain < 0) == (other.line.gain < 0);
  }
  friend bool operator<(const Vote& a, const Vote& b) {
    if ((a.line.gain < 0) != (b.line.gain < 0)) return a.line.gain > b.line.gain;
    if (a.gainCell != b.gainCell) return a.gainCell < b.gainCell;
    if (a.zeroCell != b.zeroCell) return a.zeroCell < b.zeroCell;
    return a.level < b.level;
  }
};

/// Pairs of expected values that lie `apart` steps from each other in the plan and differ, each once.
std::vector<std::pair<double, double>> plannedChanges(const AlignmentTask& task, std::size_t apart) {
  std::vector<std::pair<double, double>> changes;
  for (std::size_t k = apart; k < task.steps(); ++k)
    if (!task.isSame(k - apart, k)) changes.push_back({task.expected[k - apart], task.expected[k]});
  std::sort(changes.begin(), changes.end());
  changes.erase(std::unique(changes.begin(), changes.end()), changes.end());
  return changes;
}

/// Cells are half as wide as levels may lie off.
Vote voteOf(const AlignmentTask& task, MatchLine line, std::size_t level) {
  const double width = 0.2 * task.least * std::abs(line.gain);
  return {std::lround(std::clamp(line.zero / width, -1e9, 1e9)),
          std::lround(std::log(std::abs(line.gain)) / 0.06), level, line};
}

void addVotes(const AlignmentTask& task, std::size_t stepsApart, std::size_t levelsApart,
              std::vector<Vote>& votes) {
  const auto changes = plannedChanges(task, stepsApart);
  for (std::size_t level = 0; level + levelsApart < task.levels(); ++level) {
    const double rise = task.means[level + levelsApart] - task.means[level];
    for (const auto& [before, after] : changes) {
      const double gain = rise / (after - before);
      if (std::abs(gain) < 1e-6 || !std::isfinite(gain)) continue;
      votes.push_back(voteOf(task, {gain, task.means[level] - gain * before, 0}, level));
    }
  }
}

/// Neighbours tell most, since little lies between them that can be missing; in a fine staircase only steps
/// further apart tell the gain well.
std::vector<Vote> votes(const AlignmentTask& task) {
  std::vector<Vote> votes;
  addVotes(task, 1, 1, votes);
  addVotes(task, 1, 2, votes);
  if (const std::size_t far = task.steps() / 4; far > 1) addVotes(task, far, far, votes);
  std::sort(votes.begin(), votes.end());
  return votes;
}

struct RatedLine {
  double score = 0;  ///< levels that vote for it, less what its gain costs
  MatchLine line;
};

void addCandidates(const AlignmentTask& task, const std::vector<Vote>& votes, std::vector<RatedLine>& all) {
  for (std::size_t begin = 0; begin < votes.size();) {
    std::size_t end = begin;
    MatchLine sum{0, 0, 0};
    double levels = 0;
    for (; end < votes.size() && votes[end].isSameCell(votes[begin]); ++end) {
      sum.gain += votes[end].line.gain;
      sum.zero += votes[end].line.zero;
      if (end == begin || votes[end].level != votes[end - 1].level) ++levels;
    }
    const auto count = static_cast<double>(end - begin);
    const MatchLine line{sum.gain / count, sum.zero / count, 0};
    all.push_back({levels - 0.5 * lineCost(task, line), line});
    begin = end;
  }
}

/// Lines of gain 1 and -1 through each level and each expected value: where no change tells the gain.
std::vector<Vote> votesOfPlainGain(const AlignmentTask& task) {
  std::vector<double> expected = task.expected;
  std::sort(expected.begin(), expected.end());
  expected.erase(std::unique(expected.begin(), expected.end()), expected.end());
  std::vector<Vote> votes;
  for (std::size_t level = 0; level < task.levels(); ++level)
    for (const double value : expected)
      for (const double gain : {1.0, -1.0}) {
        if (gain < 0 && !(task.range > 0)) continue;
        votes.push_back({0, 0, level, {gain, task.means[level] - gain * value, 0}});
        const double width = 0.2 * task.least;
        if (width > 0)
          votes.back().zeroCell = std::lround(std::clamp(votes.back().line.zero / width, -1e9, 1e9));
        else
          votes.back().zeroCell = static_cast<long>(level);
      }
  std::sort(votes.begin(), votes.end());
  return votes;
}

void keepBest(std::vector<RatedLine>& all, std::size_t most) {
  std::stable_sort(all.begin(), all.end(),
                   [](const RatedLine& a, const RatedLine& b) { return a.score > b.score; });
  if (all.size() > most) all.resize(most);
}

/// All levels in order, one a step: the line through them, however far single ones are off.
std::optional<MatchLine> lineInOrder(const AlignmentTask& task, bool hasDrift) {
  if (task.levels() != task.steps() || !(task.range > 0)) return std::nullopt;
  std::vector<Visit> visits;
  std::vector<double> gains;
  for (std::size_t k = 0; k < task.steps(); ++k) {
    visits.push_back({k, k});
    if (k > 0 && !task.isSame(k - 1, k))
      gains.push_back((task.means[k] - task.means[k - 1]) / (task.expected[k] - task.expected[k - 1]));
  }
  if (gains.empty()) return std::nullopt;
  std::nth_element(gains.begin(), gains.begin() + static_cast<std::ptrdiff_t>(gains.size() / 2), gains.end());
  MatchLine line{gains[gains.size() / 2], 0, 0};
  if (!(std::abs(line.gain) > 1e-6) || !std::isfinite(line.gain)) return std::nullopt;
  std::vector<double> zeros;
  for (std::size_t k = 0; k < task.steps(); ++k)
    zeros.push_back(task.means[k] - line.gain * task.expected[k]);
  std::nth_element(zeros.begin(), zeros.begin() + static_cast<std::ptrdiff_t>(zeros.size() / 2), zeros.end());
  line.zero = zeros[zeros.size() / 2];
  return refitted(task, line, visits, hasDrift);
}

/// Weighted normal equations of zero, gain and drift, solved by elimination; a term that the visits do not
/// tell stays as it is.
struct Fit {
  double a[3][4] = {};

  void add(double weight, double x, double t, double y) {
    const double row[3] = {1, x, t};
    for (int i = 0; i < 3; ++i) {
      for (int j = 0; j < 3; ++j) a[i][j] += weight * row[i] * row[j];
      a[i][3] += weight * row[i] * y;
    }
  }
  /// Changes of zero, gain and drift; 0 for those left out or not to be told.
  void solve(bool hasGain, bool hasDrift, double (&change)[3]) {
    const bool used[3] = {true, hasGain, hasDrift};
    double scale[3] = {a[0][0], a[1][1], a[2][2]};
    bool isSolved[3] = {};
    for (int i = 0; i < 3; ++i) {
      if (!used[i] || !(a[i][i] > 1e-9 * scale[i])) continue;
      isSolved[i] = true;
      for (int r = 0; r < 3; ++r) {
        if (r == i) continue;
        const double factor = a[r][i] / a[i][i];
        for (int c = 0; c < 4; ++c) a[r][c] -= factor * a[i][c];
      }
    }
    for (int i = 0; i < 3; ++i) change[i] = isSolved[i] ? a[i][3] / a[i][i] : 0;
  }
};

/// The step that expects what comes nearest to each level, whatever the order.
std::vector<Visit> nearestSteps(const AlignmentTask& task, const std::vector<std::size_t>& stepsByValue,
                                const MatchLine& line) {
  std::vector<Visit> visits;
  for (std::size_t level = 0; level < task.levels(); ++level) {
    const double value = (task.means[level] - line.zero) / line.gain;
    const auto above =
        std::lower_bound(stepsByValue.begin(), stepsByValue.end(), value,
                         [&](std::size_t step, double wanted) { return task.expected[step] < wanted; });
    std::size_t step = above == stepsByValue.end() ? stepsByValue.back() : *above;
    if (above != stepsByValue.begin() &&
        std::abs(task.expected[*std::prev(above)] - value) < std::abs(task.expected[step] - value))
      step = *std::prev(above);
    visits.push_back({step, level});
  }
  return visits;
}

/// Fits `line` to the steps nearest to the levels, again and again, and says how well it does.
RatedLine settled(const AlignmentTask& task, const std::vector<std::size_t>& stepsByValue, MatchLine line) {
  for (int round = 0; round < 3; ++round)
    line = refitted(task, line, nearestSteps(task, stepsByValue, line), false);
  double cost = lineCost(task, line);
  for (const Visit& visit : nearestSteps(task, stepsByValue, line))
    cost += fitCost(task, line, visit.step, visit.level);
  return {-cost, line};
}

}  // namespace

void addLine(const AlignmentTask& task, const MatchLine& line, std::vector<MatchLine>& lines) {
  if (std::none_of(lines.begin(), lines.end(),
                   [&](const MatchLine& other) { return isClose(task, line, other); }))
    lines.push_back(line);
}

MatchLine refitted(const AlignmentTask& task, MatchLine line, std::span<const Visit> visits, bool hasDrift) {
  const double duration = task.times_s.empty() ? 0 : task.times_s.back() - task.times_s.front();
  for (int round = 0; round < 6; ++round) {
    Fit fit;
    for (const Visit& visit : visits) {
      const double tolerance = task.tolerance(line, visit.step, visit.level);
      const double y = task.residual(line, visit.step, visit.level);
      const double ratio = tolerance > 0 ? y / tolerance : 0;
      const double weight = 1 / (1 + 0.25 * ratio * ratio);
      fit.add(weight, task.range > 0 ? task.expected[visit.step] / task.range : 0,
              duration > 0 ? task.times_s[visit.level] / duration : 0, y);
    }
    double change[3] = {};
    fit.solve(task.range > 0, hasDrift && duration > 0, change);
    const double gain = line.gain + (task.range > 0 ? change[1] / task.range : 0);
    // A fit that turns or flattens the line follows levels that are wrong, not the line.
    if (!std::isfinite(gain) || gain * line.gain <= 0 || std::abs(gain / line.gain) < 0.2) return line;
    line.gain = gain;
    line.zero += change[0];
    if (hasDrift && duration > 0) line.drift_per_s += change[2] / duration;
  }
  return line;
}

std::vector<MatchLine> candidateLines(const AlignmentTask& task, std::size_t most) {
  std::vector<RatedLine> changing, plain;
  if (task.range > 0) addCandidates(task, votes(task), changing);
  addCandidates(task, votesOfPlainGain(task), plain);
  keepBest(changing, 4 * most);
  keepBest(plain, std::max<std::size_t>(most, 2));
  std::vector<std::size_t> stepsByValue(task.steps());
  for (std::size_t step = 0; step < task.steps(); ++step) stepsByValue[step] = step;
  std::sort(stepsByValue.begin(), stepsByValue.end(),
            [&](std::size_t a, std::size_t b) { return task.expected[a] < task.expected[b]; });
  for (std::vector<RatedLine>* candidates : {&changing, &plain})
    for (RatedLine& candidate : *candidates) candidate = settled(task, stepsByValue, candidate.line);
  keepBest(changing, 4 * most);
  keepBest(plain, std::max<std::size_t>(most / 2, 2));
  std::vector<MatchLine> lines;
  for (const bool hasDrift : {false, true})
    if (const auto line = lineInOrder(task, hasDrift)) lines.push_back(*line);
  const std::size_t inOrder = lines.size();
  for (const RatedLine& candidate : changing)
    if (lines.size() < inOrder + most) addLine(task, candidate.line, lines);
  for (const RatedLine& candidate : plain) addLine(task, candidate.line, lines);
  return lines;
}

}  // namespace core
