// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/pattern.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <map>
#include <set>

#include "tests/support/setups.h"

namespace {

using namespace core;
using namespace core::literals;
using testing::ElementsAre;

/// Three levels on the positive side, two on the negative one.
const PlannedLevels levels{{{"A", {0}}, {"B", {1}}, {"C", {2}}}, {{"X", {3}}, {"Y", {4}}}};

std::vector<std::string> labels(const std::vector<Step>& steps) {
  std::vector<std::string> names;
  for (const Step& step : steps) names.push_back(step.label == "zero" ? "0" : step.label);
  return names;
}

std::vector<std::string> laidOut(const Pattern& pattern, const PlannedLevels& of = levels) {
  return labels(layOut(pattern, of, 0.5_s, 2.0_s));
}

std::vector<std::string> labels(const std::vector<PlannedLevel>& side) {
  std::vector<std::string> names;
  for (const PlannedLevel& level : side) names.push_back(level.label);
  return names;
}

TEST(Pattern, ZeroUpZeroDownZero) {
  EXPECT_THAT(laidOut({}), ElementsAre("0", "A", "B", "C", "0", "X", "Y", "0"));
  EXPECT_THAT(laidOut({.sides = Sides::NegativeFirst}), ElementsAre("0", "X", "Y", "0", "A", "B", "C", "0"));
}

TEST(Pattern, UpAndDownTakesTheGreatestOnce) {
  EXPECT_THAT(laidOut({.course = Course::RisingAndFalling}),
              ElementsAre("0", "A", "B", "C", "B", "A", "0", "X", "Y", "X", "0"));
}

TEST(Pattern, OneSided) {
  EXPECT_THAT(laidOut({.sides = Sides::PositiveOnly}), ElementsAre("0", "A", "B", "C", "0"));
  EXPECT_THAT(laidOut({.sides = Sides::NegativeOnly}), ElementsAre("0", "X", "Y", "0"));
}

TEST(Pattern, ZeroBetweenSteps) {
  EXPECT_THAT(laidOut({.zeroBetweenSteps = true}),
              ElementsAre("0", "A", "0", "B", "0", "C", "0", "X", "0", "Y", "0"));
}

TEST(Pattern, RepeatsShareTheZeroBetweenThem) {
  EXPECT_THAT(laidOut({.sides = Sides::NegativeOnly, .repeats = 3}),
              ElementsAre("0", "X", "Y", "0", "X", "Y", "0", "X", "Y", "0"));
}

TEST(Pattern, ASideWithoutLevelsAddsNothing) {
  EXPECT_THAT(laidOut({.repeats = 2}, {levels.positive, {}}),
              ElementsAre("0", "A", "B", "C", "0", "A", "B", "C", "0"));
  for (const Course course : {Course::Rising, Course::RisingAndFalling, Course::Random})
    EXPECT_THAT(laidOut({.course = course, .zeroBetweenSteps = true, .repeats = 4}, {}), ElementsAre("0"));
}

TEST(Pattern, EveryStepSettlesAndHolds) {
  for (const Step& step : layOut({}, levels, 0.25_s, 1.5_s)) {
    EXPECT_EQ(step.settle, 0.25_s);
    EXPECT_EQ(step.hold, 1.5_s);
  }
}

TEST(Pattern, EveryStepClosesWhatItsLevelDoes) {
  const PlannedLevels pairs{{{"A", {0}}, {"A and B", {0, 1}}}, {}};
  const auto steps = layOut({}, pairs, 0.5_s, 2.0_s);
  ASSERT_EQ(steps.size(), 4u);
  EXPECT_THAT(steps[0].closed, ElementsAre());
  EXPECT_THAT(steps[2].closed, ElementsAre(0, 1));
}

TEST(Pattern, RandomOrderMixesBothSidesBetweenZeros) {
  const auto names = laidOut({.course = Course::Random});
  ASSERT_EQ(names.size(), 7u);
  EXPECT_EQ(names.front(), "0");
  EXPECT_EQ(names.back(), "0");
  EXPECT_THAT(std::vector<std::string>(names.begin() + 1, names.end() - 1),
              testing::UnorderedElementsAre("A", "B", "C", "X", "Y"));
}

TEST(Pattern, RandomOrderOfOneSideLeavesTheOtherOut) {
  EXPECT_THAT(laidOut({.course = Course::Random, .sides = Sides::NegativeOnly}),
              testing::UnorderedElementsAre("0", "X", "Y", "0"));
}

TEST(Pattern, ASeedGivesTheSameOrderAlwaysAndEachRepeatItsOwn) {
  PlannedLevels many;
  for (std::size_t k = 0; k < 20; ++k) many.positive.push_back({std::to_string(k), {k}});
  const Pattern twice{.course = Course::Random, .repeats = 2, .seed = 7};
  const auto order = laidOut(twice, many);
  EXPECT_EQ(order, laidOut(twice, many));
  EXPECT_NE(order, laidOut({.course = Course::Random, .repeats = 2, .seed = 8}, many));
  ASSERT_EQ(order.size(), 43u);
  EXPECT_NE(std::vector(order.begin() + 1, order.begin() + 21),
            std::vector(order.begin() + 22, order.begin() + 42));
}

// Every order of three is equally likely: of 6000 seeds each has 1000 within five standard deviations,
// sqrt(6000 * 1/6 * 5/6) = 28.9. The seeds are fixed, so this either always holds or never.
TEST(Pattern, RandomOrderFavoursNoOrder) {
  std::map<std::vector<std::string>, int> counts;
  for (std::uint32_t seed = 0; seed < 6000; ++seed)
    ++counts[laidOut({.course = Course::Random, .sides = Sides::PositiveOnly, .seed = seed})];
  EXPECT_EQ(counts.size(), 6u);
  for (const auto& [order, count] : counts) EXPECT_NEAR(count, 1000, 5 * 28.9);
}

/// Equal arms of 350 ohm with shunts over arm 2 (positive), arm 1 (negative), and one from P+ to P-, which
/// moves no output.
core::Setup bridgeWithShunts() {
  core::Setup setup = test::equalArms(BridgeType::QuarterTwoWire, 350.0_ohm);
  for (const double ohm : {35e3, 350e3, 70e3}) setup = test::withShuntOnArm(setup, Resistance(ohm), 2);
  for (const double ohm : {35e3, 70e3}) setup = test::withShuntOnArm(setup, Resistance(ohm), 1);
  return test::withShunt(setup, 10.0_kohm, Node::PPlus, Node::PMinus);
}

TEST(PlannedLevels, ShuntsRiseInMagnitudeOnEachSide) {
  const PlannedLevels found = levelsOfShunts(bridgeWithShunts());
  // A smaller resistor beside an arm does more; a shunt over arm 2 raises the output, over arm 1 lowers it.
  EXPECT_THAT(labels(found.positive), ElementsAre("R2", "R3", "R1"));
  EXPECT_THAT(labels(found.negative), ElementsAre("R5", "R4"));
}

TEST(PlannedLevels, AShuntThatCannotBePredictedIsLeftOut) {
  const core::Setup setup =
      test::withShunt(bridgeWithShunts(), 35.0_kohm, Node::Arm3Begin, Node::Arm3Begin);  // across one node
  const PlannedLevels found = levelsOfShunts(setup);
  EXPECT_EQ(found.positive.size() + found.negative.size(), 5u);
}

TEST(PlannedLevels, OfTheSequenceKeepCombinationsOnce) {
  core::Setup setup = bridgeWithShunts();
  setup.sequence = {{"zero", {}}, {"both", {0, 2}}, {"small", {1}}, {"both again", {0, 2}},
                    {"zero", {}}, {"down", {4}},    {"zero", {}}};
  const PlannedLevels found = levelsOfSequence(setup);
  EXPECT_THAT(labels(found.positive), ElementsAre("small", "both"));
  EXPECT_THAT(labels(found.negative), ElementsAre("down"));
  EXPECT_THAT(found.positive[1].closed, ElementsAre(0, 2));
}

TEST(PlannedLevels, LayingOutTwiceChangesNothing) {
  core::Setup setup = bridgeWithShunts();
  for (const Pattern& pattern : usualPatterns()) {
    setup.sequence = layOut(pattern, levelsOfShunts(bridgeWithShunts()), 0.5_s, 2.0_s);
    const auto once = setup.sequence;
    EXPECT_EQ(layOut(pattern, levelsOfSequence(setup), 0.5_s, 2.0_s), once) << pattern.name;
  }
}

TEST(UsualPatterns, EachHasANameOfItsOwnAndTheTwoSidedOneIsFirst) {
  std::set<std::string> names;
  for (const Pattern& pattern : usualPatterns()) names.insert(pattern.name);
  EXPECT_EQ(names.size(), usualPatterns().size());
  EXPECT_EQ(usualPatterns().front(), Pattern{});
}

TEST(TimesOf, ThoseOfThePlanElseWhatIsAskedForElseThoseOfANewStep) {
  core::Setup setup;
  EXPECT_EQ(timesOf(setup), (StepTimes{Step{}.settle, Step{}.hold}));
  setup.acquisition.sampleRate = 10.0_Hz;
  EXPECT_EQ(timesOf(setup), *leastTimes(setup.acquisition));
  EXPECT_EQ(timesOf(setup).hold, 2.0_s);  // twenty samples
  setup.sequence = {{"zero", {}, 3.0_s, 0.7_s}};
  EXPECT_EQ(timesOf(setup), (StepTimes{0.7_s, 3.0_s}));
}

TEST(PatternKeys, LeadBack) {
  for (const Course course : {Course::Rising, Course::RisingAndFalling, Course::Random})
    EXPECT_EQ(courseFromKey(courseKey(course)), course);
  for (const Sides sides :
       {Sides::PositiveFirst, Sides::NegativeFirst, Sides::PositiveOnly, Sides::NegativeOnly})
    EXPECT_EQ(sidesFromKey(sidesKey(sides)), sides);
  EXPECT_EQ(courseKey(Course::RisingAndFalling), "rising_and_falling");
  EXPECT_EQ(sidesKey(Sides::PositiveOnly), "positive_only");
  EXPECT_FALSE(courseFromKey("falling"));
}

}  // namespace
