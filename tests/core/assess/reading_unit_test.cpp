// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/assess/reading_unit.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace core {
namespace {

using testing::HasSubstr;

TEST(ReadingUnits, UnitsOfTheSameSizePassWhateverTheirSpelling) {
  Instrument instrument;
  for (const char* spelling : {"", "µm/m", "\u03BCm/m", "um/m"})
    EXPECT_TRUE(requireReadingUnit(instrument, spelling)) << spelling;
  instrument.unit = ReadingUnit::MillivoltPerVolt;
  EXPECT_TRUE(requireReadingUnit(instrument, "mV/V"));
}

TEST(ReadingUnits, OtherUnitsAreRefusedAndBothAreNamed) {
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

TEST(ReadingUnits, UnitsOfTheUsersChoiceMustBeTheSameText) {
  Instrument instrument;
  instrument.unit = ReadingUnit::Scaled;
  instrument.scaledUnit = "kN";
  EXPECT_TRUE(requireReadingUnit(instrument, "kN"));
  EXPECT_FALSE(requireReadingUnit(instrument, "N"));
}

}  // namespace
}  // namespace core
