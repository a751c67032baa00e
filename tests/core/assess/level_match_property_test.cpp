// SPDX-License-Identifier: GPL-3.0-or-later
// Plans and recordings of them are made up at random, one thing goes wrong in each, and what was done is
// known: the match must say exactly that, or show that it is in doubt. What it may never do is to pair
// otherwise and keep still about it.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>
#include <set>

#include "core/assess/level_match.h"

namespace core {
namespace {

using Random = std::mt19937_64;

double uniform(Random& random, double low, double high) {
  // Not std::uniform_real_distribution: its numbers differ between libraries.
  return low + (high - low) * static_cast<double>(random() >> 11) * 0x1p-53;
}

std::size_t below(Random& random, std::size_t count) { return random() % count; }

double normal(Random& random) {
  double sum = 0;  // twelve uniform numbers: variance 1, no tails that would be another fault
  for (int k = 0; k < 12; ++k) sum += uniform(random, -0.5, 0.5);
  return sum;
}

/// Levels that rise by something between 0.6 and 1.4 of the first.
std::vector<double> heights(Random& random, std::size_t count) {
  std::vector<double> values;
  double height = 0;
  for (std::size_t k = 0; k < count; ++k) values.push_back(height += uniform(random, 0.6, 1.4) * 250);
  return values;
}

/// The four shapes that plans have; up and down again only where wanted.
std::vector<double> randomPlan(Random& random, bool hasUpAndDown) {
  const std::vector<double> up = heights(random, 2 + below(random, 4));
  std::vector<double> plan{0};
  switch (below(random, hasUpAndDown ? 4 : 3)) {
    case 0:  // pulses of one sign
      for (const double height : up) plan.insert(plan.end(), {height, 0});
      break;
    case 1:  // pulses of both signs
      for (const double height : up) plan.insert(plan.end(), {height, 0, -height, 0});
      break;
    case 2:  // up on one side, then on the other
      plan.insert(plan.end(), up.begin(), up.end());
      plan.push_back(0);
      for (const double height : up) plan.push_back(-height);
      plan.push_back(0);
      break;
    default:  // up and down again
      plan.insert(plan.end(), up.begin(), up.end());
      plan.insert(plan.end(), up.rbegin() + 1, up.rend());
      plan.push_back(0);
  }
  return plan;
}

/// What was really done: a step of the plan, or none and the value that was there.
struct Done {
  std::optional<std::size_t> step;
  double value = 0;  ///< as a planned reading
};

enum class Fault { None, WrongValue, Drop, Insert, Repeat, Swap, Reverse, CutFront, CutBack, Runs };

struct Trial {
  Fault fault = Fault::None;
  std::vector<double> plan;
  std::vector<Done> done;
  std::vector<std::size_t> steps;  ///< that the fault is about
  std::size_t runs = 1;
  // The recording:
  std::vector<Level> levels;
  std::vector<std::set<std::size_t>> stepsOfLevel;  ///< all that were held in it

  std::string text() const {
    std::string words = "plan";
    for (const double value : plan) words += " " + std::to_string(static_cast<int>(std::lround(value)));
    words += "; levels";
    for (const Level& level : levels)
      words += " " + std::to_string(static_cast<int>(std::lround(level.mean))) + "(" +
               std::to_string(static_cast<int>(std::lround(level.end_s - level.begin_s))) + "s)";
    return words;
  }
};

double leastDifference(const std::vector<double>& plan) {
  std::set<double> values(plan.begin(), plan.end());
  double least = 1e300;
  for (auto at = std::next(values.begin()); at != values.end(); ++at)
    least = std::min(least, *at - *std::prev(at));
  return least;
}

void inject(Random& random, Trial& trial) {
  const std::size_t count = trial.plan.size();
  for (std::size_t k = 0; k < count; ++k) trial.done.push_back({k, trial.plan[k]});
  const auto at = [&](std::size_t k) { return trial.done.begin() + static_cast<std::ptrdiff_t>(k); };
  const double least = leastDifference(trial.plan);
  switch (trial.fault) {
    case Fault::None:
    case Fault::Reverse:
      break;
    case Fault::WrongValue: {  // up to 40 % of what tells steps apart
      std::size_t step = below(random, count);
      while (trial.plan[step] == 0) step = below(random, count);
      trial.done[step].value += uniform(random, 0.1, 0.4) * least * (random() % 2 ? 1 : -1);
      trial.steps = {step};
      break;
    }
    case Fault::Drop: {
      const std::size_t step = 1 + below(random, count - 2);
      trial.steps = {step};
      trial.done.erase(at(step));
      break;
    }
    case Fault::Insert: {
      double value = 0;
      const auto isNear = [&](double other) { return std::abs(value - other) < 0.3 * least; };
      do value = uniform(random, -1500, 1500);
      while (std::any_of(trial.plan.begin(), trial.plan.end(), isNear));
      trial.done.insert(at(below(random, count + 1)), {std::nullopt, value});
      break;
    }
    case Fault::Repeat: {
      const std::size_t last = 2 + below(random, count - 3), first = last - 1;
      const std::vector<Done> again(at(first), at(last + 1));
      trial.done.insert(at(last + 1), again.begin(), again.end());
      trial.steps = {first, last};
      break;
    }
    case Fault::Swap: {
      std::size_t a = 0, b = 0;
      while (trial.plan[a] == trial.plan[b] || trial.plan[a] == 0 || trial.plan[b] == 0) {
        a = below(random, count);
        b = below(random, count);
      }
      std::swap(trial.done[a], trial.done[b]);
      trial.steps = {std::min(a, b), std::max(a, b)};
      break;
    }
    case Fault::CutFront: {
      const std::size_t cut = 1 + below(random, count / 2);
      trial.done.erase(trial.done.begin(), at(cut));
      for (std::size_t k = 0; k < cut; ++k) trial.steps.push_back(k);
      break;
    }
    case Fault::CutBack: {
      const std::size_t cut = 1 + below(random, count / 2);
      trial.done.erase(at(count - cut), trial.done.end());
      for (std::size_t k = count - cut; k < count; ++k) trial.steps.push_back(k);
      break;
    }
    case Fault::Runs: {
      const std::vector<Done> once = trial.done;
      trial.runs = 2 + below(random, 2);
      for (std::size_t run = 1; run < trial.runs; ++run)
        trial.done.insert(trial.done.end(), once.begin(), once.end());
      break;
    }
  }
}

/// Holds of the same state after each other are one level, as nothing changes between them.
void record(Random& random, Trial& trial) {
  double gain = uniform(random, 0.9, 1.1);
  if (random() % 8 == 0) gain = uniform(random, 0.4, 2.5);
  if (trial.fault == Fault::Reverse) gain = -gain;
  const double zero = uniform(random, -2000, 2000);
  const double noise = gain * leastDifference(trial.plan) * uniform(random, 0.0005, 0.01);
  double time_s = uniform(random, 0, 3);
  for (std::size_t k = 0; k < trial.done.size(); ++k) {
    const Done& done = trial.done[k];
    const bool isHeldOn = k > 0 && std::abs(done.value - trial.done[k - 1].value) < 1e-9;
    if (!isHeldOn) {
      Level level;
      level.begin_s = time_s;
      level.mean = zero + gain * done.value + noise * normal(random);
      level.stdUncertainty = std::abs(noise);
      trial.levels.push_back(level);
      trial.stepsOfLevel.emplace_back();
    }
    time_s += uniform(random, 3.5, 4.5) + (isHeldOn ? 1 : 0);
    trial.levels.back().end_s = time_s;
    time_s += 1;
    if (done.step) trial.stepsOfLevel.back().insert(*done.step);
  }
}

Trial randomTrial(Fault fault, std::uint64_t seed) {
  Random random(seed * 1000003 + static_cast<std::uint64_t>(fault));
  Trial trial;
  trial.fault = fault;
  // Up and down again, two steps exchanged may lie beside their like and be one hold: another fault.
  trial.plan = randomPlan(random, fault != Fault::Swap);
  inject(random, trial);
  record(random, trial);
  return trial;
}

LevelMatch matchOf(const Trial& trial) {
  std::vector<ExpectedStep> steps;
  for (const double reading : trial.plan) steps.push_back({reading, 4});
  return matchLevels(steps, trial.levels);
}

/// Whether every level of a run was really taken at its step, or at another one that expects the same.
bool isTrue(const Trial& trial, const RunMatch& run) {
  for (std::size_t step = 0; step < trial.plan.size(); ++step) {
    const auto& level = run.levelOfStep[step];
    if (!level) continue;
    const auto& held = trial.stepsOfLevel[*level];
    if (std::none_of(held.begin(), held.end(),
                     [&](std::size_t other) { return trial.plan[other] == trial.plan[step]; }))
      return false;
  }
  return true;
}

const MatchRemark* remarkOf(const RunMatch& run, MatchRemarkKind kind) {
  for (const MatchRemark& remark : run.remarks)
    if (remark.kind == kind) return &remark;
  return nullptr;
}

/// Remarks of other kinds than these.
bool hasOther(const RunMatch& run, std::initializer_list<MatchRemarkKind> kinds) {
  return std::any_of(run.remarks.begin(), run.remarks.end(), [&](const MatchRemark& remark) {
    return std::find(kinds.begin(), kinds.end(), remark.kind) == kinds.end();
  });
}

bool names(const Trial& trial, const RunMatch& run, MatchRemarkKind kind) {
  const MatchRemark* remark = remarkOf(run, kind);
  return remark && remark->steps == trial.steps && !hasOther(run, {kind, MatchRemarkKind::Shared});
}

bool isNamed(const Trial& trial, const RunMatch& run) {
  using enum MatchRemarkKind;
  switch (trial.fault) {
    case Fault::None:
    case Fault::WrongValue:
      return run.remarks.empty();
    case Fault::Drop:
      return names(trial, run, Missing);
    case Fault::Insert: {
      const MatchRemark* remark = remarkOf(run, Extra);
      return remark && remark->levels.size() == 1 && trial.stepsOfLevel[remark->levels[0]].empty() &&
             !hasOther(run, {Extra});
    }
    case Fault::Repeat:
      return remarkOf(run, Repeated) && !hasOther(run, {Repeated});
    case Fault::Swap:
      return names(trial, run, Swapped);
    case Fault::Reverse:
      return remarkOf(run, Reversed) && !hasOther(run, {Reversed});
    case Fault::CutFront:
      return names(trial, run, StartsLate);
    case Fault::CutBack:
      return names(trial, run, EndsEarly);
    case Fault::Runs:
      return run.remarks.empty();
  }
  return false;
}

bool showsTruth(const Trial& trial, const FoundRun& run) {
  return isTrue(trial, run.best) || std::any_of(run.others.begin(), run.others.end(),
                                                [&](const RunMatch& other) { return isTrue(trial, other); });
}

enum class Outcome {
  Told,     ///< every level at its step, and the remark is just what was done
  InDoubt,  ///< the user is asked, and what was done is among the ways to choose from
  NoMatch,  ///< it is said that the levels do not fit the plan
  Wrong,    ///< anything else
};

Outcome outcomeOf(const Trial& trial) {
  const LevelMatch match = matchOf(trial);
  if (match.runs.empty()) return Outcome::NoMatch;
  const auto isAll = [&](const auto& holds) {
    return std::all_of(match.runs.begin(), match.runs.end(), holds);
  };
  if (!isAll([&](const FoundRun& run) { return showsTruth(trial, run); })) return Outcome::Wrong;
  if (!isAll([](const FoundRun& run) { return !run.isAmbiguous(); })) return Outcome::InDoubt;
  const bool isTold =
      match.runs.size() == trial.runs && isAll([&](const FoundRun& run) { return isNamed(trial, run.best); });
  return isTold ? Outcome::Told : Outcome::Wrong;
}

struct Case {
  const char* name;
  Fault fault;
  double greatestDoubt;    ///< share of trials in which it may ask
  double greatestNoMatch;  ///< share of trials in which it may say that nothing fits
};

/// How often asking is bearable is a judgement: never while everything is as planned. A pulse left out at the
/// begin or end is no different from a recording that was cut off there; polarity and order of a symmetrical
/// plan cannot be told apart; with one change left nobody knows the gain.
const Case cases[] = {
    {"nothing", Fault::None, 0, 0},
    {"a wrong value", Fault::WrongValue, 0.02, 0},
    {"a step left out", Fault::Drop, 0.3, 0.01},
    {"a level too many", Fault::Insert, 0.05, 0},
    {"steps done again", Fault::Repeat, 0.02, 0},
    {"steps exchanged", Fault::Swap, 1, 0},
    {"polarity reversed", Fault::Reverse, 0.15, 0},
    {"cut off at the begin", Fault::CutFront, 0.25, 0.02},
    {"cut off at the end", Fault::CutBack, 0.25, 0.02},
    {"several runs", Fault::Runs, 0, 0},
};

TEST(LevelMatchProperties, WhatWentWrongIsToldOrInDoubtAndNeverPassedOver) {
  constexpr int trials = 500;
  for (const Case& one : cases) {
    int inDoubt = 0, noMatch = 0;
    for (int seed = 0; seed < trials; ++seed) {
      const Trial trial = randomTrial(one.fault, static_cast<std::uint64_t>(seed));
      const Outcome outcome = outcomeOf(trial);
      EXPECT_NE(outcome, Outcome::Wrong) << one.name << ", seed " << seed << ": " << trial.text();
      if (outcome == Outcome::InDoubt) ++inDoubt;
      if (outcome == Outcome::NoMatch) ++noMatch;
    }
    EXPECT_LE(inDoubt, one.greatestDoubt * trials) << one.name;
    EXPECT_LE(noMatch, one.greatestNoMatch * trials) << one.name;
  }
}

TEST(LevelMatchProperties, OfStepsExchangedBothReadingsAreShown) {
  for (std::uint64_t seed = 0; seed < 300; ++seed) {
    const Trial trial = randomTrial(Fault::Swap, seed);
    const LevelMatch match = matchOf(trial);
    ASSERT_EQ(match.runs.size(), 1u) << trial.text();
    const FoundRun& run = match.runs.front();
    EXPECT_TRUE(run.isAmbiguous()) << trial.text();
    const auto isPlanned = [&](const RunMatch& reading) {
      for (std::size_t step = 0; step < trial.plan.size(); ++step)
        if (reading.levelOfStep[step] != step) return false;
      return true;
    };
    EXPECT_TRUE(showsTruth(trial, run)) << trial.text();
    EXPECT_TRUE(isPlanned(run.best) || std::any_of(run.others.begin(), run.others.end(), isPlanned))
        << trial.text();
  }
}

TEST(LevelMatchProperties, UnitAndOffsetOfTheRecordingChangeNothing) {
  // Derived: levels a + b x have the same places in the order and the same relative deviations as levels x;
  // with b = 1 the gain is the same too, so that every cost is, but for rounding.
  for (std::uint64_t seed = 0; seed < 200; ++seed) {
    Trial trial = randomTrial(static_cast<Fault>(seed % 10), seed);
    const LevelMatch before = matchOf(trial);
    for (Level& level : trial.levels) level.mean += 4096;  // exact enough: levels are below 10,000
    const LevelMatch after = matchOf(trial);
    ASSERT_EQ(before.runs.size(), after.runs.size()) << trial.text();
    for (std::size_t run = 0; run < before.runs.size(); ++run)
      EXPECT_EQ(before.runs[run].best.levelOfStep, after.runs[run].best.levelOfStep) << trial.text();
  }
}

TEST(LevelMatchProperties, TheSameLevelsAreMatchedTheSameWayAgain) {
  for (std::uint64_t seed = 0; seed < 50; ++seed) {
    const Trial trial = randomTrial(static_cast<Fault>(seed % 10), seed);
    const LevelMatch one = matchOf(trial), other = matchOf(trial);
    ASSERT_EQ(one.runs.size(), other.runs.size());
    for (std::size_t run = 0; run < one.runs.size(); ++run) {
      EXPECT_EQ(one.runs[run].best.levelOfStep, other.runs[run].best.levelOfStep);
      EXPECT_EQ(one.runs[run].best.remarks, other.runs[run].best.remarks);
      EXPECT_EQ(one.runs[run].others.size(), other.runs[run].others.size());
    }
  }
}

}  // namespace
}  // namespace core
