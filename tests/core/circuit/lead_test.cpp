// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/circuit/lead.h"

#include <gtest/gtest.h>

#include <cstdlib>
#include <string>

#include "tests/support/csv.h"
#include "tests/support/reached_digits.h"

using namespace core;

namespace {

constexpr Length thousandFeet{304.8};
constexpr Length kilometre{1000};

double copperOhm(const test::CsvRow& row, Length length) {
  return resistanceOf(CopperWire{length, awgSection(std::atoi(row.at("size").c_str()))}).base();
}

}  // namespace

TEST(CopperWire, AgreesWithPublishedWireTables) {
  // HyperPhysics, Common Wire Gauges (ohm per 1000 ft, after Floyd), and the table after Standard
  // Handbook for Electrical Engineers, 14th ed. (ohm per km). Both print three or four digits and use
  // resistivities a little apart: they agree within 0.2 % with each other and with IEC 60028.
  int perThousandFeet = 0, perKilometre = 0;
  for (const auto& row : test::readCsv(SHUNTWRIGHT_TESTS_DIR "/reference/copper_awg.csv")) {
    if (row.at("kind") != "AWG") continue;
    SCOPED_TRACE("AWG " + row.at("size") + ": " + row.at("source"));
    if (!row.at("published_ohm_per_1000ft").empty()) {
      const double published = test::number(row, "published_ohm_per_1000ft");
      EXPECT_REACHED("Published wire tables", "ohm per 1000 ft", copperOhm(row, thousandFeet), published,
                     0.002 * published);
      ++perThousandFeet;
    }
    if (!row.at("published_ohm_per_km").empty()) {
      const double published = test::number(row, "published_ohm_per_km");
      EXPECT_REACHED("Published wire tables", "ohm per km", copperOhm(row, kilometre), published,
                     0.002 * published);
      ++perKilometre;
    }
  }
  EXPECT_EQ(perThousandFeet, 17);
  EXPECT_EQ(perKilometre, 17);
}

TEST(CopperWire, IsThinnerThanTheLimitForStrandedWireOfItsSection) {
  // IEC 60228, class 5, maximum resistance of a plain flexible conductor at 20 C (from memory): a
  // solid copper wire of the nominal section must lie below, by at most the lay and stranding, 15 %.
  int compared = 0;
  for (const auto& row : test::readCsv(SHUNTWRIGHT_TESTS_DIR "/reference/copper_awg.csv")) {
    if (row.at("iec60228_class5_max_ohm_per_km").empty()) continue;
    const double limit = test::number(row, "iec60228_class5_max_ohm_per_km");
    const Area section(1e-6 * test::number(row, "area_mm2"));
    const double ohm = resistanceOf(CopperWire{kilometre, section}).base();
    EXPECT_LT(ohm, limit) << row.at("size");
    EXPECT_GT(ohm, 0.85 * limit) << row.at("size");
    ++compared;
  }
  EXPECT_EQ(compared, 5);
}

TEST(CopperWire, RisesWithTemperature) {
  // Derived: 0.00393 per kelvin from 20 C, so 100 K above adds 39.3 %.
  const CopperWire cold{10.0_m, 0.14_mm2, 20.0_degC};
  const CopperWire warm{10.0_m, 0.14_mm2, 120.0_degC};
  // Formed by three roundings each.
  EXPECT_DIGITS(resistanceOf(warm) / resistanceOf(cold), 1.393, 14);
}

TEST(AwgSection, GrowsByTheRatioOfTheSeries) {
  // Derived from ASTM B258 (from memory): AWG 36 is 5 mil = 0.127 mm, and 39 sizes up (AWG n = -3,
  // "0000") is 92 times as thick, so three sizes change the section by 92^(6/39), about two.
  EXPECT_DIGITS(awgSection(36) / Area(3.14159265358979323846 / 4 * 0.127e-3 * 0.127e-3), 1.0, 14);
  EXPECT_DIGITS(awgSection(20) / awgSection(23), 2.00503151950, 11);
}

TEST(Lead, IsAResistanceOrAWire) {
  EXPECT_EQ(resistanceOf(Lead(1.25_ohm)), 1.25_ohm);
  const CopperWire wire{10.0_m, 0.14_mm2};
  EXPECT_EQ(resistanceOf(Lead(wire)), resistanceOf(wire));
}
