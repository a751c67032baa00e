// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/circuit/self_heating.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "tests/support/csv.h"
#include "tests/support/reached_digits.h"

using namespace core;

namespace {

std::string keyed(std::string words) {
  std::replace(words.begin(), words.end(), ' ', '_');
  return words;
}

}  // namespace

TEST(UsualPowerDensity, IsThatOfTheHandbook) {
  // Micro-Measurements TN-502, from memory, with the second source that the table names where it has one.
  std::set<std::pair<HeatSink, HeatDemand>> seen;
  for (const auto& row : test::readCsv(SHUNTWRIGHT_TESTS_DIR "/reference/power_density.csv")) {
    const auto sink = heatSinkFromKey(keyed(row.at("heat_sink")));
    const auto demand = heatDemandFromKey(row.at("test") + "_" + row.at("accuracy"));
    if (!sink || !demand) continue;  // limits per gauge, of another source: no densities
    seen.emplace(*sink, *demand);
    const PowerDensityRange range = usualPowerDensity(*sink, *demand);
    EXPECT_DIGITS_REACHED("Micro-Measurements TN-502", "least power density", range.least_W_per_m2,
                          1e3 * test::number(row, "min_kW_per_m2"), 14);
    EXPECT_DIGITS_REACHED("Micro-Measurements TN-502", "greatest power density", range.most_W_per_m2,
                          1e3 * test::number(row, "max_kW_per_m2"), 14);
    // 1 W/in^2 is 1.5500031 kW/m^2; the table keeps three digits and a five.
    EXPECT_REACHED("Micro-Measurements TN-502", "greatest, per square inch", range.most_W_per_m2,
                   1550.0031 * test::number(row, "max_W_per_in2"), 1e-5 * range.most_W_per_m2);
  }
  EXPECT_EQ(seen.size(), heatSinkCount * heatDemandCount) << "every cell has its row";
}

TEST(UsualPowerDensity, FallsWithTheHeatSinkAndRisesWithWhatIsTolerated) {
  // What a handbook's table must do whatever its figures: common practice, no source.
  for (std::size_t sink = 0; sink < heatSinkCount; ++sink)
    for (std::size_t demand = 0; demand < heatDemandCount; ++demand) {
      const auto at = [](std::size_t s, std::size_t d) {
        return usualPowerDensity(static_cast<HeatSink>(s), static_cast<HeatDemand>(d));
      };
      EXPECT_LT(at(sink, demand).least_W_per_m2, at(sink, demand).most_W_per_m2);
      const double most = at(sink, demand).most_W_per_m2;
      if (sink > 0) {
        EXPECT_LE(most, at(sink - 1, demand).most_W_per_m2);
      }
      if (demand % 3 > 0) {
        EXPECT_GT(most, at(sink, demand - 1).most_W_per_m2);
      }
    }
}

TEST(ExcitationForDensity, PutsHalfOfItselfOverTheGauge) {
  // Derived: (V/2)^2 / R / A is the density.
  const double volt = excitationForDensity(350.0_ohm, 4.0_mm2, 3100).base();
  EXPECT_DIGITS(volt * volt / 4 / 350 / 4e-6, 3100, 14);
}

TEST(HeatNames, GoThereAndBack) {
  std::set<std::string_view> names;
  for (std::size_t k = 0; k < heatSinkCount; ++k) {
    const auto sink = static_cast<HeatSink>(k);
    EXPECT_EQ(heatSinkFromKey(heatSinkKey(sink)), sink);
    names.insert(heatSinkName(sink));
  }
  for (std::size_t k = 0; k < heatDemandCount; ++k) {
    const auto demand = static_cast<HeatDemand>(k);
    EXPECT_EQ(heatDemandFromKey(heatDemandKey(demand)), demand);
    names.insert(heatDemandName(demand));
  }
  EXPECT_EQ(names.size(), heatSinkCount + heatDemandCount);
  EXPECT_FALSE(names.contains(""));
  EXPECT_FALSE(heatSinkFromKey("very poor"));
  EXPECT_FALSE(heatDemandFromKey(""));
}
