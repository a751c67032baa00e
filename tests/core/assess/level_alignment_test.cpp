// SPDX-License-Identifier: GPL-3.0-or-later
// Independent: every story that a few levels can tell of a few steps is told one after the other, and none is
// cheaper than the path that the alignment finds.
#include "core/assess/level_alignment.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <random>

namespace core {
namespace {

using namespace match_cost;

/// Costs of all ways to lay levels beside steps, each written out as the rules say it, without tables.
class EveryStory {
 public:
  EveryStory(const AlignmentTask& task, const MatchLine& line, bool isSingleRun)
      : m_task(task), m_line(line), m_isSingleRun(isSingleRun) {}

  double cheapest() {
    beforeRun(0, 0, false);
    return m_least;
  }

 private:
  std::size_t steps() const { return m_task.steps(); }
  double fit(std::size_t step, std::size_t level) const { return fitCost(m_task, m_line, step, level); }
  static double cut(std::size_t count) {
    return count == 0 ? 0 : cutOff + cutOffEach * static_cast<double>(count);
  }
  void tell(double cost) { m_least = std::min(m_least, cost); }

  void beforeRun(std::size_t level, double cost, bool hasRun) {
    if (level == m_task.levels()) {
      // A single run that is asked for must be there.
      if (hasRun || !m_isSingleRun) tell(cost);
      return;
    }
    beforeRun(level + 1, cost + outside, hasRun);
    if (hasRun && m_isSingleRun) return;
    const double begin = hasRun ? furtherRun : lineCost(m_task, m_line);
    for (std::size_t step = 0; step < steps(); ++step) enter(step, level, cost + begin + cut(step));
  }

  /// `level` is to be that of `step`, or that of a step exchanged with it.
  void enter(std::size_t step, std::size_t level, double cost) {
    at(step, level, cost + fit(step, level));
    for (std::size_t far = 1; step + far < steps() && level + far < m_task.levels(); ++far) {
      if (m_task.isZero(step) || m_task.isZero(step + far) || m_task.isSame(step, step + far)) continue;
      if (fit(step + far, level) >= fits || fit(step, level + far) >= fits) continue;
      double crossed = swap + fit(step + far, level) + fit(step, level + far);
      for (std::size_t k = 1; k < far; ++k) crossed += fit(step + k, level + k);
      at(step + far, level + far, cost + crossed);
    }
  }

  /// `level` was that of `step`.
  void at(std::size_t step, std::size_t level, double cost) {
    beforeRun(level + 1, cost + cut(steps() - 1 - step), true);
    for (const std::size_t far : {1u, 2u}) {
      if (step + far >= steps() || !m_task.isSame(step, step + far)) continue;
      if (far == 2 && m_task.isSame(step, step + 1)) continue;
      at(step + far, level, cost + (far == 2 ? missingFirst : 0) + sharedUsual);
    }
    if (level + 1 == m_task.levels()) return;
    onward(step, level + 1, cost);
    extra(step, level + 1, cost + extraFirst);
  }

  void extra(std::size_t step, std::size_t level, double cost) {
    if (level + 1 == m_task.levels()) return;  // would be outside instead
    onward(step, level + 1, cost);
    extra(step, level + 1, cost + extraNext);
  }

  void onward(std::size_t step, std::size_t level, double cost) {
    for (std::size_t next = 0; next < steps(); ++next) {
      double way = 0;
      if (next > step + 1) way = missingFirst + missingNext * static_cast<double>(next - step - 2);
      if (next <= step) way = back + backEach * static_cast<double>(step - next);
      enter(next, level, cost + way);
    }
  }

  const AlignmentTask& m_task;
  MatchLine m_line;
  bool m_isSingleRun;
  double m_least = std::numeric_limits<double>::infinity();
};

struct Small {
  std::vector<ExpectedStep> steps;
  std::vector<Level> levels;
};

/// Values from a few only, so that steps are alike and levels fit them often.
Small smallCase(std::mt19937_64& random, bool isAllDifferent) {
  const double values[] = {0, 100, 200, -100, 300};
  Small small;
  const std::size_t steps = 2 + random() % 3, levels = 1 + random() % 5;
  for (std::size_t k = 0; k < steps; ++k)
    small.steps.push_back({isAllDifferent ? values[k] : values[random() % 4], 0});
  for (std::size_t k = 0; k < levels; ++k) {
    Level level;
    level.begin_s = 3.0 * static_cast<double>(k);
    level.end_s = level.begin_s + 2;
    level.mean = values[random() % 5] + static_cast<double>(random() % 15);
    level.stdUncertainty = 0.5;
    small.levels.push_back(level);
  }
  return small;
}

// Sums of at most twenty costs below 10 in another order: rounding stays below 1e-12.
constexpr double rounding = 1e-12;

TEST(LevelAlignment, NoStoryOfOneRunIsCheaperThanTheOneFound) {
  std::mt19937_64 random(20261126);
  for (int trial = 0; trial < 400; ++trial) {
    const Small small = smallCase(random, false);
    const AlignmentTask task = alignmentTask(small.steps, small.levels);
    for (const MatchLine& line : {MatchLine{1, 0, 0}, MatchLine{-1, 0, 0}}) {
      AlignmentLimits limits;
      limits.isSingleRun = true;
      EXPECT_NEAR(align(task, {&line, 1}, limits).cost, EveryStory(task, line, true).cheapest(), rounding)
          << "trial " << trial << ", gain " << line.gain;
    }
  }
}

TEST(LevelAlignment, NoStoryOfSeveralRunsIsCheaperThanTheOneFound) {
  std::mt19937_64 random(7);
  for (int trial = 0; trial < 400; ++trial) {
    // Steps all different: runs that share a level have a test of their own.
    const Small small = smallCase(random, true);
    const AlignmentTask task = alignmentTask(small.steps, small.levels);
    const MatchLine line{1, 0, 0};
    EXPECT_NEAR(align(task, {&line, 1}).cost, EveryStory(task, line, false).cheapest(), rounding)
        << "trial " << trial;
  }
}

TEST(LevelAlignment, OneWrongLevelIsCheaperThanAMissingStepAndAnExtraLevel) {
  // The rule that a wrong resistor keeps its step rests on this, and that two levels in a row that are each
  // where the other neighbour should be are not two wrong resistors.
  EXPECT_LT(wrongLevel, missingFirst + extraShort);
  EXPECT_LT(wrongLevel, missingFirst + extraFirst);
  EXPECT_GT(2 * wrongLevel, missingFirst + extraFirst);
}

TEST(LevelAlignment, ALineIsFoundAgainFromLevelsOnIt) {
  // Derived: levels made as 30 + 1.2 x - 0.5 t; three or more points not on a plane fix all three.
  std::vector<ExpectedStep> steps;
  std::vector<Level> levels;
  std::vector<Visit> visits;
  for (const double value : {0.0, 100.0, 0.0, -250.0, 0.0, 400.0}) {
    Level level;
    level.begin_s = 10.0 * static_cast<double>(levels.size());
    level.end_s = level.begin_s + 8;
    level.mean = 30 + 1.2 * value - 0.5 * 0.5 * (level.begin_s + level.end_s);
    visits.push_back({steps.size(), levels.size()});
    steps.push_back({value, 8});
    levels.push_back(level);
  }
  const AlignmentTask task = alignmentTask(steps, levels);
  const MatchLine line = refitted(task, {1, 0, 0}, visits, true);
  // The weights change little once the line is right: six rounds leave it right to a few digits.
  EXPECT_NEAR(line.gain, 1.2, 1e-4);
  EXPECT_NEAR(line.drift_per_s, -0.5, 1e-3);
  EXPECT_NEAR(line.zero, 30 - 0.5 * 29, 0.05) << "at the middle of the recording, 29 s";
}

}  // namespace
}  // namespace core
