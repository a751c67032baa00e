// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/assess/level_alignment.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <limits>

namespace core {
namespace {

constexpr double never = std::numeric_limits<double>::infinity();

using namespace match_cost;

double cut(std::size_t count) { return count == 0 ? 0 : cutOff + cutOffEach * static_cast<double>(count); }

/// Where the cheapest way to a cell comes from.
enum class Way : std::uint8_t { None, Start, Step, Extra, Swap, Shared, SharedStart };

struct Cell {
  double cost = never;
  Way way = Way::None;
  bool isFurther = false;  ///< with Start: another run lies before
  bool fromExtra = false;  ///< the step before has extra levels behind it
  std::uint32_t step = 0;  ///< the step come from; with Swap how far the swapped steps are apart
  std::uint32_t line = 0;  ///< with SharedStart: of the run before

  void offer(const Cell& other) {
    if (other.cost < cost) *this = other;
  }
};

/// What lies before a level that begins a run, or after the last run.
struct Between {
  double cost = never;
  bool isAfterRun = false;  ///< the level before is the last of a run; otherwise it is outside
  bool hasRun = false;
  std::uint32_t line = 0;
  std::uint32_t step = 0;
};

class Aligner {
 public:
  Aligner(const AlignmentTask& task, std::span<const MatchLine> lines, const AlignmentLimits& limits)
      : m_task(task),
        m_lines(lines),
        m_limits(limits),
        m_steps(task.steps()),
        m_begin(limits.beginLevel),
        m_count(std::min(task.levels(), limits.endLevel) - limits.beginLevel) {
    const std::size_t cells = lines.size() * m_count * m_steps;
    m_fit.resize(cells);
    m_enter.resize(cells);
    m_on.resize(cells);
    m_extra.resize(cells);
    m_without.resize(m_count + 1);
    m_with.resize(m_count + 1);
    for (const MatchLine& line : lines) m_lineCosts.push_back(lineCost(task, line));
  }

  Alignment best() {
    fillFits();
    m_without[0].cost = 0;
    for (std::size_t level = 0; level < m_count; ++level) {
      for (std::size_t line = 0; line < m_lines.size(); ++line) take(line, level);
      close(level);
    }
    return traced();
  }

 private:
  std::size_t at(std::size_t line, std::size_t level, std::size_t step) const {
    return (line * m_count + level) * m_steps + step;
  }

  void fillFits() {
    for (std::size_t line = 0; line < m_lines.size(); ++line)
      for (std::size_t level = 0; level < m_count; ++level)
        for (std::size_t step = 0; step < m_steps; ++step)
          m_fit[at(line, level, step)] = fitCost(m_task, m_lines[line], step, m_begin + level);
    if (!m_limits.forbidden) return;
    for (std::size_t line = 0; line < m_lines.size(); ++line)
      m_fit[at(line, m_limits.forbidden->level - m_begin, m_limits.forbidden->step)] = never;
  }

  void take(std::size_t line, std::size_t level) {
    start(line, level);
    if (level > 0) goOn(line, level);
    for (std::size_t step = 0; step < m_steps; ++step) {
      Cell cell = m_enter[at(line, level, step)];
      cell.cost += m_fit[at(line, level, step)];
      m_on[at(line, level, step)].offer(cell);
    }
    swapFrom(line, level);
    share(line, level);
    if (level > 0) skipLevel(line, level);
  }

  void start(std::size_t line, std::size_t level) {
    const double cost = m_without[level].cost + m_lineCosts[line];
    const double further =
        m_limits.isSingleRun ? never : m_with[level].cost + furtherCost(line, m_with[level]);
    const std::size_t last = m_limits.hasFirstStep ? 1 : m_steps;
    for (std::size_t step = 0; step < m_steps; ++step)
      m_enter[at(line, level, step)] = {step < last ? std::min(cost, further) + cut(step) : never, Way::Start,
                                        further < cost};
  }

  /// Of another run behind one; when it goes by the same line that is no second surprise.
  double furtherCost(std::size_t line, const Between& before) const {
    return furtherRun + (line == before.line ? 0 : m_lineCosts[line]);
  }

  /// The cheaper of being at `step` with and without extra levels behind it.
  Cell stand(std::size_t line, std::size_t level, std::size_t step) const {
    const double on = m_on[at(line, level, step)].cost;
    const double extra = m_extra[at(line, level, step)].cost;
    return {std::min(on, extra), Way::Step, false, extra < on, static_cast<std::uint32_t>(step)};
  }

  void goOn(std::size_t line, std::size_t level) {
    Cell skipping;  // steps left out so far
    for (std::size_t step = 1; step < m_steps; ++step) {
      Cell& enter = m_enter[at(line, level, step)];
      enter.offer(stand(line, level - 1, step - 1));
      enter.offer(skipping);
      skipping.cost += missingNext;
      Cell first = stand(line, level - 1, step - 1);
      first.cost += missingFirst;
      skipping.offer(first);
    }
    Cell returning;
    for (std::size_t step = m_steps; step-- > 0;) {
      returning.cost += backEach;
      Cell here = stand(line, level - 1, step);
      here.cost += back;
      returning.offer(here);
      m_enter[at(line, level, step)].offer(returning);
    }
  }

  /// Two steps exchanged, what lies between them in its place.
  void swapFrom(std::size_t line, std::size_t level) {
    fillFitting(line, level);
    std::size_t first = 0;  // of the fitting steps, the first behind `step`
    for (std::size_t step = 0; step + 1 < m_steps; ++step) {
      while (first < m_fitting.size() && m_fitting[first] <= step) ++first;
      for (std::size_t k = first; k < m_fitting.size() && m_fitting[k] <= step + farthestSwap; ++k)
        offerSwap(line, level, step, m_fitting[k] - step);
    }
  }

  /// The steps whose value the level has, in order. Zero steps are left out: nobody exchanges them.
  void fillFitting(std::size_t line, std::size_t level) {
    m_fitting.clear();
    for (std::size_t step = 0; step < m_steps; ++step)
      if (m_fit[at(line, level, step)] < fits && !m_task.isZero(step)) m_fitting.push_back(step);
  }

  void offerSwap(std::size_t line, std::size_t level, std::size_t step, std::size_t far) {
    if (m_task.isZero(step) || level + far >= m_count || m_fit[at(line, level + far, step)] >= fits ||
        m_task.isSame(step, step + far))
      return;
    double cost = m_enter[at(line, level, step)].cost + swap + m_fit[at(line, level + far, step)] +
                  m_fit[at(line, level, step + far)];
    for (std::size_t k = 1; k < far; ++k) cost += m_fit[at(line, level + k, step + k)];
    m_on[at(line, level + far, step + far)].offer(
        {cost, Way::Swap, false, false, static_cast<std::uint32_t>(far)});
  }

  double shared(std::size_t level, std::size_t step) const {
    const double usual = m_task.usualShare * m_task.holds_s[step];
    const bool isLong = usual > 0 && m_task.lasts_s[m_begin + level] > 1.6 * usual;
    return isLong ? sharedLong : sharedUsual;
  }

  /// One level for two steps that expect the same, next to each other or with one left out between them.
  void share(std::size_t line, std::size_t level) {
    const auto offer = [&](std::size_t from, std::size_t step, double cost) {
      const Cell& cell = m_on[at(line, level, from)];
      if (m_task.isSame(from, step))
        m_on[at(line, level, step)].offer({cell.cost + cost + shared(level, step), Way::Shared, false, false,
                                           static_cast<std::uint32_t>(from)});
    };
    for (std::size_t step = 1; step < m_steps; ++step) {
      offer(step - 1, step, 0);
      if (step > 1 && !m_task.isSame(step - 1, step)) offer(step - 2, step, missingFirst);
    }
  }

  void skipLevel(std::size_t line, std::size_t level) {
    const bool isShort = m_task.lasts_s[m_begin + level] < 0.3 * m_task.usualLast_s;
    for (std::size_t step = 0; step < m_steps; ++step) {
      const double first = m_on[at(line, level - 1, step)].cost + (isShort ? extraShort : extraFirst);
      const double next = m_extra[at(line, level - 1, step)].cost + extraNext;
      m_extra[at(line, level, step)] = {std::min(first, next), Way::Extra, false, next < first,
                                        static_cast<std::uint32_t>(step)};
    }
  }

  /// The runs that end at `level`, those that begin at the same level as another ends, and the level outside.
  void close(std::size_t level) {
    Between end = ended(level);
    if (!m_limits.isSingleRun && beginShared(level, end)) end = ended(level);
    m_with[level + 1] = end;
    if (m_with[level].cost + outside < end.cost) {
      m_with[level + 1] = m_with[level];
      m_with[level + 1].cost += outside;
      m_with[level + 1].isAfterRun = false;
    }
    m_without[level + 1].cost = m_without[level].cost + outside;
  }

  Between ended(std::size_t level) const {
    Between end;
    for (std::size_t line = 0; line < m_lines.size(); ++line)
      for (std::size_t step = m_limits.hasLastStep ? m_steps - 1 : 0; step < m_steps; ++step) {
        const double cost = m_on[at(line, level, step)].cost + cut(m_steps - 1 - step);
        if (cost < end.cost)
          end = {cost, true, true, static_cast<std::uint32_t>(line), static_cast<std::uint32_t>(step)};
      }
    return end;
  }

  bool beginShared(std::size_t level, const Between& end) {
    if (m_steps < 2 || !m_task.isSame(end.step, 0) || end.step == 0) return false;
    bool any = false;
    for (std::size_t line = 0; line < m_lines.size(); ++line) {
      Cell& first = m_on[at(line, level, 0)];
      const double fit = m_fit[at(line, level, 0)];
      const double cost = end.cost + furtherCost(line, end) + shared(level, 0) + fit;
      any = any || cost < first.cost;
      first.offer({cost, Way::SharedStart, true, false, end.step, end.line});
    }
    return any;
  }

  Alignment traced() const {
    Alignment alignment;
    const double with = m_with[m_count].cost, without = m_without[m_count].cost;
    // One that is asked for is told even where none is likelier.
    const bool hasRun = m_limits.isSingleRun ? with < never : with <= without;
    alignment.cost = hasRun ? with : without;
    std::size_t level = m_count;  // levels still to be explained
    while (hasRun && level > 0) {
      // Outside levels are left behind until a run ends.
      while (level > 0 && !m_with[level].isAfterRun) --level;
      if (level == 0) break;
      if (!traceRuns(alignment, level)) break;
    }
    std::reverse(alignment.runs.begin(), alignment.runs.end());
    return alignment;
  }

  /// The run that ends at level - 1 and those before that share a level with it. True when another run lies
  /// before; `level` is then where to look on.
  bool traceRuns(Alignment& alignment, std::size_t& level) const {
    std::size_t line = m_with[level].line, step = m_with[level].step, now = level - 1;
    bool isExtra = false;
    alignment.runs.push_back({line, {}});
    while (true) {
      AlignedRun& run = alignment.runs.back();
      const Cell& cell = isExtra ? m_extra[at(line, now, step)] : m_on[at(line, now, step)];
      if (!isExtra && cell.way != Way::Swap) run.visits.push_back({step, m_begin + now, false});
      const Cell* entered = &cell;
      if (cell.way == Way::Swap) {
        entered = &m_enter[at(line, now - cell.step, step - cell.step)];
        traceSwap(run, now, step, cell.step);
        now -= cell.step;
      }
      switch (entered->way) {
        case Way::Shared:
          step = entered->step;
          isExtra = false;
          continue;
        case Way::SharedStart:
          std::reverse(run.visits.begin(), run.visits.end());
          line = entered->line;
          step = entered->step;
          alignment.runs.push_back({line, {}});
          continue;
        case Way::Start: {
          std::reverse(run.visits.begin(), run.visits.end());
          level = now;
          return entered->isFurther;
        }
        default:
          isExtra = entered->fromExtra;
          step = entered->step;
          --now;
      }
    }
  }

  void traceSwap(AlignedRun& run, std::size_t now, std::size_t step, std::size_t far) const {
    const std::size_t level = m_begin + now;
    run.visits.push_back({step - far, level, true});
    for (std::size_t k = 1; k < far; ++k) run.visits.push_back({step - k, level - k, false});
    run.visits.push_back({step, level - far, true});
  }

  const AlignmentTask& m_task;
  std::span<const MatchLine> m_lines;
  AlignmentLimits m_limits;
  std::size_t m_steps, m_begin, m_count;
  std::vector<double> m_lineCosts;
  std::vector<double> m_fit;
  std::vector<Cell> m_enter;        // at a level and a step, the level not yet counted
  std::vector<Cell> m_on, m_extra;  // after a level: it belongs to the step, or to none behind the step
  std::vector<Between> m_without;   // before a level: no run yet
  std::vector<Between> m_with;      // before a level: between runs or after them
  std::vector<std::size_t> m_fitting;
};

double median(std::vector<double> values) {
  if (values.empty()) return 0;
  const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
  std::nth_element(values.begin(), middle, values.end());
  return *middle;
}

/// The smallest difference of expected values that is no rounding, but at least a fiftieth of their range.
double leastDifference(std::vector<double> expected, double range) {
  std::sort(expected.begin(), expected.end());
  double least = range;
  for (std::size_t k = 1; k < expected.size(); ++k) {
    const double difference = expected[k] - expected[k - 1];
    if (difference > 0.002 * range) least = std::min(least, difference);
  }
  return std::max(least, 0.02 * range);
}

}  // namespace

bool AlignmentTask::isSame(std::size_t stepA, std::size_t stepB) const {
  return std::abs(expected[stepA] - expected[stepB]) <= 0.1 * least;
}

bool AlignmentTask::isZero(std::size_t step) const { return std::abs(expected[step]) <= 0.1 * least; }

double AlignmentTask::tolerance(const MatchLine& line, std::size_t step, std::size_t level) const {
  const double ofStep = std::abs(line.gain) * (0.08 * least + 0.01 * std::abs(expected[step]));
  return std::sqrt(uncertainties[level] * uncertainties[level] + ofStep * ofStep);
}

double AlignmentTask::residual(const MatchLine& line, std::size_t step, std::size_t level) const {
  return means[level] - line.zero - line.drift_per_s * times_s[level] - line.gain * expected[step];
}

AlignmentTask alignmentTask(std::span<const ExpectedStep> steps, std::span<const Level> levels) {
  AlignmentTask task;
  std::vector<double> holds;
  for (const ExpectedStep& step : steps) {
    task.expected.push_back(step.reading);
    task.holds_s.push_back(step.hold_s);
    if (step.hold_s > 0) holds.push_back(step.hold_s);
  }
  const double middle = levels.empty() ? 0 : 0.5 * (levels.front().begin_s + levels.back().end_s);
  for (const Level& level : levels) {
    task.means.push_back(level.mean);
    task.uncertainties.push_back(std::isfinite(level.stdUncertainty) ? level.stdUncertainty : 0);
    task.times_s.push_back(0.5 * (level.begin_s + level.end_s) - middle);
    task.lasts_s.push_back(level.end_s - level.begin_s);
  }
  if (!steps.empty()) {
    const auto [low, high] = std::minmax_element(task.expected.begin(), task.expected.end());
    task.range = *high - *low;
    task.least = leastDifference(task.expected, task.range);
  }
  task.usualLast_s = median(task.lasts_s);
  if (const double hold = median(holds); hold > 0) task.usualShare = task.usualLast_s / hold;
  return task;
}

double lineCost(const AlignmentTask& task, const MatchLine& line) {
  const double far = std::abs(std::log(std::abs(line.gain)));
  double cost = std::min(5.0, 8 * std::max(0.0, far - 0.05)) + (line.gain < 0 ? reversed : 0);
  if (line.drift_per_s != 0 && !task.times_s.empty()) {
    const double drifted = std::abs(line.drift_per_s) * (task.times_s.back() - task.times_s.front());
    cost += std::min(3.0, 1 + drifted / (std::abs(line.gain) * task.least));
  }
  return cost;
}

double fitCost(const AlignmentTask& task, const MatchLine& line, std::size_t step, std::size_t level) {
  const double tolerance = task.tolerance(line, step, level);
  const double residual = task.residual(line, step, level);
  if (!(tolerance > 0)) return residual == 0 ? 0 : wrongLevel;
  const double squares = residual * residual / (2 * tolerance * tolerance);
  if (squares > 40 * wrongLevel) return wrongLevel;  // to the last digit, and most are
  return wrongLevel * -std::expm1(-squares / wrongLevel);
}

Alignment align(const AlignmentTask& task, std::span<const MatchLine> lines, const AlignmentLimits& limits) {
  if (task.steps() == 0 || lines.empty() || limits.beginLevel >= std::min(task.levels(), limits.endLevel))
    return {};
  return Aligner(task, lines, limits).best();
}

}  // namespace core
