// SPDX-License-Identifier: GPL-3.0-or-later
// What each recording holds is set here by hand, so the pairing expected is known by construction.
#include "core/assess/level_match.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <limits>

namespace core {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

constexpr std::optional<std::size_t> none;

std::vector<ExpectedStep> stepsOf(const std::vector<double>& readings) {
  std::vector<ExpectedStep> steps;
  for (const double reading : readings) steps.push_back({reading, 2});
  return steps;
}

/// Levels of two seconds, half a second apart.
std::vector<Level> levelsOf(const std::vector<double>& means) {
  std::vector<Level> levels;
  for (const double mean : means) {
    Level level;
    level.begin_s = 2.5 * static_cast<double>(levels.size());
    level.end_s = level.begin_s + 2;
    level.mean = mean;
    level.stdUncertainty = 0.5;
    levels.push_back(level);
  }
  return levels;
}

Setup setupOf(const std::vector<std::string>& labels) {
  Setup setup;
  for (const std::string& label : labels) setup.sequence.push_back({label, {}});
  return setup;
}

/// A plan with labels and a recording of it.
struct Sample {
  std::vector<double> plan;
  std::vector<double> means;
  std::vector<std::string> labels = {};

  LevelMatch match() const { return matchLevels(stepsOf(plan), levelsOf(means)); }
  std::vector<std::string> words(const FoundRun& run) const {
    std::vector<std::string> names = labels;
    names.resize(plan.size());
    return matchText(run, setupOf(names), levelsOf(means));
  }
};

const std::vector<double> bothSides{0, 500, 0, -500, 0, 1000, 0, -1000, 0};
const std::vector<double> upAndDown{0, 200, 400, 600, 800, 600, 400, 200, 0};

TEST(LevelMatch, OneLevelAStepInOrderIsSaidSo) {
  const Sample sample{bothSides, {1, 501, 1, -498, 2, 1002, 0, -999, 1}};
  const LevelMatch match = sample.match();
  ASSERT_THAT(match.runs, SizeIs(1));
  const FoundRun& run = match.runs[0];
  EXPECT_THAT(run.best.levelOfStep, ElementsAre(0, 1, 2, 3, 4, 5, 6, 7, 8));
  EXPECT_THAT(run.best.remarks, IsEmpty());
  EXPECT_FALSE(run.isAmbiguous());
  EXPECT_THAT(match.unclaimed, IsEmpty());
  EXPECT_THAT(sample.words(run), ElementsAre("All 9 steps have a level, in the planned order."));
}

TEST(LevelMatch, GainAndZeroOfTheInstrumentDoNotMatter) {
  std::vector<double> means;
  for (const double reading : bothSides) means.push_back(-3000 + 1.5 * reading);
  const Sample sample{bothSides, means};
  const LevelMatch match = sample.match();
  ASSERT_THAT(match.runs, SizeIs(1));
  EXPECT_THAT(match.runs[0].best.levelOfStep, ElementsAre(0, 1, 2, 3, 4, 5, 6, 7, 8));
  // The levels lie on the line exactly.
  EXPECT_NEAR(match.runs[0].best.gain, 1.5, 1e-6);
  EXPECT_NEAR(match.runs[0].best.zero, -3000, 1e-3);
  EXPECT_NEAR(match.runs[0].best.misfit, 0, 1e-3);
  EXPECT_THAT(sample.words(match.runs[0]),
              ElementsAre("All 9 steps have a level, in the planned order.",
                          "The changes are 1.5 times what is expected; zero reads -3000 µm/m."));
}

TEST(LevelMatch, AWrongResistorKeepsItsStep) {
  for (const double wrong : {350.0, 440.0, 560.0, 700.0}) {
    const LevelMatch match = Sample{bothSides, {1, wrong, 1, -498, 2, 1002, 0, -999, 1}}.match();
    ASSERT_THAT(match.runs, SizeIs(1)) << wrong;
    EXPECT_EQ(match.runs[0].best.levelOfStep[1], 1u) << wrong;
    EXPECT_THAT(match.runs[0].best.remarks, IsEmpty()) << wrong;
    EXPECT_FALSE(match.runs[0].isAmbiguous()) << wrong;
  }
}

TEST(LevelMatch, ADriftingZeroKeepsTheOrder) {
  std::vector<double> means;
  for (const double reading : bothSides) means.push_back(reading - 100 * static_cast<double>(means.size()));
  const LevelMatch match = Sample{bothSides, means}.match();
  ASSERT_THAT(match.runs, SizeIs(1));
  EXPECT_THAT(match.runs[0].best.levelOfStep, ElementsAre(0, 1, 2, 3, 4, 5, 6, 7, 8));
  EXPECT_FALSE(match.runs[0].isAmbiguous());
}

TEST(LevelMatch, AMissingStepIsNamed) {
  const Sample sample{upAndDown, {1, 201, 402, 800, 598, 402, 199, 0}, {"", "", "", "+600"}};
  const LevelMatch match = sample.match();
  ASSERT_THAT(match.runs, SizeIs(1));
  EXPECT_THAT(match.runs[0].best.levelOfStep, ElementsAre(0, 1, 2, none, 3, 4, 5, 6, 7));
  EXPECT_THAT(sample.words(match.runs[0]),
              ElementsAre("8 of 9 steps have a level.", "Step 4 (+600) is missing."));
}

TEST(LevelMatch, ThePulseLeftOutLeavesOneZeroForTwoSteps) {
  Sample sample{bothSides, {1, 501, 1, -498, 2, -999, 1}};
  std::vector<Level> levels = levelsOf(sample.means);
  levels[4].end_s += 3;  // held for two
  const LevelMatch match = matchLevels(stepsOf(sample.plan), levels);
  ASSERT_THAT(match.runs, SizeIs(1));
  EXPECT_THAT(match.runs[0].best.levelOfStep, ElementsAre(0, 1, 2, 3, 4, none, 4, 5, 6));
  EXPECT_FALSE(match.runs[0].isAmbiguous());
  EXPECT_THAT(
      matchText(match.runs[0], setupOf(std::vector<std::string>(9)), levels),
      ElementsAre("8 of 9 steps have a level.", "Step 6 is missing.",
                  "Steps 5 and 7 are held without a break: each has the level from 10 to 15 s (2 µm/m)."));
}

TEST(LevelMatch, ALevelOfNoStepIsNamedByTimeAndValue) {
  const Sample sample{bothSides, {1, 501, 1, 250, -498, 2, 1002, 0, -999, 1}};
  const LevelMatch match = sample.match();
  ASSERT_THAT(match.runs, SizeIs(1));
  EXPECT_THAT(match.runs[0].best.levelOfStep, ElementsAre(0, 1, 2, 4, 5, 6, 7, 8, 9));
  EXPECT_THAT(match.unclaimed, ElementsAre(3));
  EXPECT_THAT(
      sample.words(match.runs[0]),
      ElementsAre("All 9 steps have a level.", "The level from 7.5 to 9.5 s (250 µm/m) belongs to no step."));
}

TEST(LevelMatch, OfStepsDoneAgainTheLastLevelsAreTaken) {
  const Sample sample{{0, 500, 0, 1000, 0}, {0, 500, 1, 501, 0, 1000, 1}};
  const LevelMatch match = sample.match();
  ASSERT_THAT(match.runs, SizeIs(1));
  EXPECT_THAT(match.runs[0].best.levelOfStep, ElementsAre(2, 3, 4, 5, 6));
  EXPECT_THAT(match.unclaimed, IsEmpty());
  EXPECT_THAT(
      sample.words(match.runs[0])[1],
      "Steps 1 and 2 were done again; the last levels are taken, not the levels from 0 to 2 s (0 µm/m) "
      "and from 2.5 to 4.5 s (500 µm/m).");
}

TEST(LevelMatch, ExchangedStepsAreForTheUserToDecide) {
  const Sample sample{bothSides, {0, 500, 1, 1001, 0, -500, 0, -1000, 1}};
  const LevelMatch match = sample.match();
  ASSERT_THAT(match.runs, SizeIs(1));
  const FoundRun& run = match.runs[0];
  EXPECT_THAT(run.best.levelOfStep, ElementsAre(0, 1, 2, 5, 4, 3, 6, 7, 8));
  ASSERT_TRUE(run.isAmbiguous());
  EXPECT_THAT(run.others[0].levelOfStep, ElementsAre(0, 1, 2, 3, 4, 5, 6, 7, 8));
  EXPECT_THAT(sample.words(run)[1],
              "Steps 4 and 6 were done in another order than planned, or their shunts are exchanged.");
  // Derived: 1001 where -500 is planned, and the other way round, about a zero of 0 and a gain of 1.
  ASSERT_THAT(run.others[0].remarks, SizeIs(1));
  EXPECT_EQ(run.others[0].remarks[0].kind, MatchRemarkKind::Off);
  EXPECT_THAT(run.others[0].remarks[0].steps, ElementsAre(3, 5));
  EXPECT_NEAR(run.others[0].remarks[0].deviations.at(0), 1501, 10);
  EXPECT_NEAR(run.others[0].remarks[0].deviations.at(1), -1500, 10);
}

TEST(LevelMatch, NeighboursExchangedAreBothNamed) {
  const Sample sample{{0, 500, 1020, 1530, 0, -510, -1030, -1540, 0},
                      {3, 1023, 503, 1533, 3, -507, -1027, -1537, 3}};
  const LevelMatch match = sample.match();
  ASSERT_THAT(match.runs, SizeIs(1));
  const FoundRun& run = match.runs[0];
  EXPECT_THAT(sample.words(run)[1],
              "Steps 2 and 3 were done in another order than planned, or their shunts are exchanged.");
  ASSERT_THAT(run.others, SizeIs(1));
  // Derived: 520 too much and too little; the planned line lies within a few um/m of the true one.
  const std::string words = sample.words({run.others[0], {}})[1];
  EXPECT_THAT(words, testing::MatchesRegex("Steps 2 and 3 are then off by .5[12].* and -5[12].* µm/m."));
  EXPECT_THAT(sample.words({run.others[0], {}})[0], "All 9 steps have a level, in the planned order.");
}

TEST(LevelMatch, HalvesExchangedAreOppositePolarity) {
  const std::vector<double> plan{0, 507.8, 1021.3, 1531.1, 0, -512.7, -1031.1, -1545.7, 0};
  const LevelMatch match = Sample{plan, {3, -509.7, -1028.1, -1542.7, 3, 510.8, 1024.3, 1534.1, 3}}.match();
  ASSERT_THAT(match.runs, SizeIs(1));
  EXPECT_LT(match.runs[0].best.gain, 0);
  EXPECT_FALSE(match.runs[0].isAmbiguous());
}

TEST(LevelMatch, ARecordingOfHalfThePlanIsNoReversedOne) {
  const std::vector<double> plan{0, 508, 1021, 1531, 0, -513, -1031, -1546, 0};
  const Sample half{plan, {3, 511, 1024, 1534, 3}};
  ASSERT_THAT(half.match().runs, SizeIs(1));
  EXPECT_FALSE(half.match().runs[0].isAmbiguous());
  EXPECT_THAT(half.match().runs[0].best.levelOfStep, ElementsAre(0, 1, 2, 3, 4, none, none, none, none));
}

TEST(LevelMatch, AReversedRunWithNeighboursExchangedHasTwoReadings) {
  const std::vector<double> plan{0, 508, 1021, 1531, 0, -513, -1031, -1546, 0};
  const LevelMatch match = Sample{plan, {3, -1018, -505, -1528, 3, 516, 1034, 1549, 3}}.match();
  ASSERT_THAT(match.runs, SizeIs(1));
  EXPECT_THAT(match.runs[0].best.levelOfStep, ElementsAre(0, 2, 1, 3, 4, 5, 6, 7, 8));
  ASSERT_THAT(match.runs[0].others, SizeIs(1));
  EXPECT_THAT(match.runs[0].others[0].levelOfStep, ElementsAre(0, 1, 2, 3, 4, 5, 6, 7, 8));
}

TEST(LevelMatch, ThreeStepsInAnotherOrder) {
  const LevelMatch match = Sample{{0, 100, 0, 200, 0, 300, 0}, {0, 200, 0, 300, 0, 100, 0}}.match();
  ASSERT_THAT(match.runs, SizeIs(1));
  EXPECT_THAT(match.runs[0].best.levelOfStep, ElementsAre(0, 5, 2, 1, 4, 3, 6));
  ASSERT_TRUE(match.runs[0].isAmbiguous());
}

TEST(LevelMatch, OppositePolarityKeepsTheSteps) {
  const Sample sample{bothSides, {1, -501, 1, 498, 2, -1002, 0, 999, 1}};
  const LevelMatch match = sample.match();
  ASSERT_THAT(match.runs, SizeIs(1));
  EXPECT_THAT(match.runs[0].best.levelOfStep, ElementsAre(0, 1, 2, 3, 4, 5, 6, 7, 8));
  EXPECT_LT(match.runs[0].best.gain, 0);
  EXPECT_FALSE(match.runs[0].isAmbiguous());
  EXPECT_THAT(sample.words(match.runs[0]),
              ElementsAre("All 9 steps have a level.", "The whole sequence has the opposite polarity."));
}

TEST(LevelMatch, AShortSymmetricalPlanLeavesPolarityOrOrderOpen) {
  const LevelMatch match = Sample{{0, 1000, 0, -1000, 0}, {1, -1001, 1, 998, 2}}.match();
  ASSERT_THAT(match.runs, SizeIs(1));
  const FoundRun& run = match.runs[0];
  EXPECT_THAT(run.best.levelOfStep, ElementsAre(0, 1, 2, 3, 4));
  EXPECT_LT(run.best.gain, 0);
  ASSERT_THAT(run.others, SizeIs(1));
  EXPECT_THAT(run.others[0].levelOfStep, ElementsAre(0, 3, 2, 1, 4));
  EXPECT_GT(run.others[0].gain, 0);
}

TEST(LevelMatch, RecordingsThatBeginLateOrEndEarly) {
  const Sample late{bothSides, {-500, 0, 1000, 0, -1000, 0}};
  const LevelMatch begins = late.match();
  ASSERT_THAT(begins.runs, SizeIs(1));
  EXPECT_THAT(begins.runs[0].best.levelOfStep, ElementsAre(none, none, none, 0, 1, 2, 3, 4, 5));
  EXPECT_THAT(late.words(begins.runs[0])[1],
              "The recording begins after step 3; steps 1, 2 and 3 have no level.");
  const Sample early{bothSides, {0, 500, 0, -500, 0, 1000}};
  const LevelMatch ends = early.match();
  ASSERT_THAT(ends.runs, SizeIs(1));
  EXPECT_THAT(ends.runs[0].best.levelOfStep, ElementsAre(0, 1, 2, 3, 4, 5, none, none, none));
  EXPECT_THAT(early.words(ends.runs[0])[1],
              "The recording ends before step 7; steps 7, 8 and 9 have no level.");
}

TEST(LevelMatch, SeveralRunsAreFoundInTheOrderOfTime) {
  std::vector<double> means{1, 501, 1, -498, 2, 1002, 0, -999, 1};
  const std::vector<double> reversed{0, -501, 0, 498, 0, -1002, 0, 999, 1};
  means.insert(means.end(), reversed.begin(), reversed.end());
  const LevelMatch match = Sample{bothSides, means}.match();
  ASSERT_THAT(match.runs, SizeIs(2));
  EXPECT_THAT(match.runs[0].best.levelOfStep, ElementsAre(0, 1, 2, 3, 4, 5, 6, 7, 8));
  EXPECT_GT(match.runs[0].best.gain, 0);
  EXPECT_THAT(match.runs[1].best.levelOfStep, ElementsAre(9, 10, 11, 12, 13, 14, 15, 16, 17));
  EXPECT_LT(match.runs[1].best.gain, 0);
}

TEST(LevelMatch, RunsThatFollowAtOnceShareTheZeroBetweenThem) {
  const LevelMatch match =
      Sample{bothSides, {1, 501, 1, -498, 2, 1002, 0, -999, 1, 501, 1, -498, 2, 1002, 0, -999, 1}}.match();
  ASSERT_THAT(match.runs, SizeIs(2));
  EXPECT_EQ(match.runs[0].best.levelOfStep.back(), 8u);
  EXPECT_EQ(match.runs[1].best.levelOfStep.front(), 8u);
}

TEST(LevelMatch, NothingIsMatchedWhereNothingFits) {
  EXPECT_THAT(Sample({bothSides, {5}}).match().runs, IsEmpty());
  EXPECT_THAT(Sample({bothSides, {5}}).match().unclaimed, ElementsAre(0));
  EXPECT_THAT(Sample({bothSides, {}}).match().runs, IsEmpty());
  EXPECT_THAT(Sample({{}, {1, 2}}).match().runs, IsEmpty());
  EXPECT_THAT(Sample({{}, {1, 2}}).match().unclaimed, ElementsAre(0, 1));
  EXPECT_THAT(Sample({{}, {}}).match().runs, IsEmpty());
}

TEST(LevelMatch, StepsThatAllExpectTheSame) {
  const LevelMatch match = Sample{{0, 0, 0}, {1, 1, 2}}.match();
  ASSERT_THAT(match.runs, SizeIs(1));
  EXPECT_THAT(match.runs[0].best.levelOfStep, ElementsAre(0, 1, 2));
  EXPECT_EQ(match.runs[0].best.gain, 1);
}

TEST(LevelMatch, ASingleStep) {
  EXPECT_THAT(Sample({{100}, {103}}).match().runs.at(0).best.levelOfStep, ElementsAre(0));
  EXPECT_TRUE(Sample({{100}, {103, 50}}).match().runs.at(0).isAmbiguous());
}

TEST(LevelMatch, ALevelWithoutAValueIsNobodys) {
  const double nan = std::numeric_limits<double>::quiet_NaN();
  const LevelMatch match = Sample{{0, 500, 0, 1000, 0}, {0, 500, nan, 1, 1001, 0}}.match();
  ASSERT_THAT(match.runs, SizeIs(1));
  EXPECT_THAT(match.runs[0].best.levelOfStep, ElementsAre(0, 1, 3, 4, 5));
  EXPECT_THAT(match.unclaimed, ElementsAre(2));
}

TEST(LevelMatch, VeryManyLevelsOfAllSizesDoNoHarm) {
  std::vector<double> means;
  for (int k = 0; k < 400; ++k) means.push_back(std::pow(10.0, k % 30) * (k % 3 - 1));
  const LevelMatch match = Sample{bothSides, means}.match();
  for (const FoundRun& run : match.runs) EXPECT_THAT(run.best.levelOfStep, SizeIs(9));
}

TEST(LevelMatch, ReadingsAreTheLevels) {
  const Sample sample{{0, 500, 0}, {1.5, 501}};
  const std::vector<Level> levels = levelsOf(sample.means);
  RunMatch run;
  run.levelOfStep = {0, 1, none};
  const auto readings = readingsOf(run, levels);
  ASSERT_THAT(readings, SizeIs(3));
  EXPECT_EQ(readings[0], (Measured{Reading(1.5), Reading(0.5), Duration(0), Duration(2)}));
  EXPECT_EQ(readings[1], (Measured{Reading(501), Reading(0.5), Duration(2.5), Duration(4.5)}));
  EXPECT_FALSE(readings[2]);
}

TEST(LevelMatch, WhatDoesNotFitListsBothSides) {
  const std::vector<Level> levels = levelsOf({1.5, -998.5});
  const Error error = noRunError(setupOf({"zero", "R1", "zero again"}), levels);
  EXPECT_THAT(error.what, HasSubstr("2 levels found"));
  EXPECT_THAT(error.what, HasSubstr("from 0 to 2 s (1.5 µm/m) and from 2.5 to 4.5 s (-998.5 µm/m)"));
  EXPECT_THAT(error.what, HasSubstr("for 3 steps: 1 (zero), 2 (R1) and 3 (zero again)"));
  EXPECT_THAT(error.mend, testing::Not(IsEmpty()));
}

}  // namespace
}  // namespace core
