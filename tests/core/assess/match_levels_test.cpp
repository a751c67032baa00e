// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/assess/match_levels.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace core {
namespace {

using testing::HasSubstr;

Setup setupWithSteps(std::vector<std::string> labels) {
  Setup setup;
  for (auto& label : labels) setup.sequence.push_back({std::move(label), {}, Duration(2)});
  return setup;
}

Level level(double begin_s, double mean, double uncertainty = 0.1) {
  Level made;
  made.begin_s = begin_s;
  made.end_s = begin_s + 2;
  made.mean = mean;
  made.stdUncertainty = uncertainty;
  made.samples = 200;
  return made;
}

TEST(MatchLevels, LevelKBelongsToStepKAndKeepsItsPlaceInTheRecording) {
  const std::vector<Level> levels{level(0, 1.5, 0.02), level(2, -998.25, 0.03)};

  const auto readings = readingsFromLevels(setupWithSteps({"zero", "R1"}), levels);

  ASSERT_TRUE(readings) << readings.error().text();
  ASSERT_EQ(readings->size(), 2u);
  EXPECT_EQ((*readings)[0], (Measured{Reading(1.5), Reading(0.02), Duration(0), Duration(2)}));
  EXPECT_EQ((*readings)[1], (Measured{Reading(-998.25), Reading(0.03), Duration(2), Duration(4)}));
}

TEST(MatchLevels, TooFewLevelsNameWhatWasFoundAndWhatWasExpected) {
  const std::vector<Level> levels{level(0, 1.5), level(2, -998.25)};

  const auto readings = readingsFromLevels(setupWithSteps({"zero", "R1", "zero again"}), levels);

  ASSERT_FALSE(readings);
  EXPECT_THAT(readings.error().what, HasSubstr("2 levels where the sequence has 3 steps"));
  EXPECT_THAT(readings.error().what, HasSubstr("1.5 µm/m (0 to 2 s), -998.25 µm/m (2 to 4 s)"));
  EXPECT_THAT(readings.error().what, HasSubstr("1 zero, 2 R1, 3 zero again"));
  EXPECT_FALSE(readings.error().mend.empty());
}

TEST(MatchLevels, TooManyLevelsAreNotCutOff) {
  const std::vector<Level> levels{level(0, 1), level(2, 2), level(4, 3)};

  const auto readings = readingsFromLevels(setupWithSteps({"zero"}), levels);

  ASSERT_FALSE(readings);
  EXPECT_THAT(readings.error().what, HasSubstr("3 levels where the sequence has 1 step;"));
}

TEST(MatchLevels, NoLevelsAtAllSaysNone) {
  const auto readings = readingsFromLevels(setupWithSteps({"zero"}), {});

  ASSERT_FALSE(readings);
  EXPECT_THAT(readings.error().what, HasSubstr("levels found: none;"));
}

TEST(MatchLevels, LongListsAreCutInTheMessage) {
  std::vector<Level> levels;
  for (int k = 0; k < 25; ++k) levels.push_back(level(2 * k, k));

  const auto readings = readingsFromLevels(setupWithSteps({"zero"}), levels);

  ASSERT_FALSE(readings);
  EXPECT_THAT(readings.error().what, HasSubstr("and 5 more"));
}

TEST(MatchLevels, UnitsOfTheSameSizePassWhateverTheirSpelling) {
  Instrument instrument;
  for (const char* spelling : {"", "µm/m", "\u03BCm/m", "um/m"})
    EXPECT_TRUE(requireReadingUnit(instrument, spelling)) << spelling;
  instrument.unit = ReadingUnit::MillivoltPerVolt;
  EXPECT_TRUE(requireReadingUnit(instrument, "mV/V"));
}

TEST(MatchLevels, OtherUnitsAreRefusedAndBothAreNamed) {
  Instrument instrument;
  for (const char* other : {"mm/m", "mV/V", "kN", "5", "um"}) {
    const auto same = requireReadingUnit(instrument, other);
    ASSERT_FALSE(same) << other;
    EXPECT_THAT(same.error().what, HasSubstr(other));
    EXPECT_THAT(same.error().what, HasSubstr("µm/m"));
  }
  instrument.unit = ReadingUnit::Millivolt;
  EXPECT_FALSE(requireReadingUnit(instrument, "mV/V"));
  EXPECT_FALSE(requireReadingUnit(instrument, "V"));
}

TEST(MatchLevels, UnitsOfTheUsersChoiceMustBeTheSameText) {
  Instrument instrument;
  instrument.unit = ReadingUnit::Scaled;
  instrument.scaledUnit = "kN";
  EXPECT_TRUE(requireReadingUnit(instrument, "kN"));
  EXPECT_FALSE(requireReadingUnit(instrument, "N"));
}

}  // namespace
}  // namespace core
