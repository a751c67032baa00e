// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stock/e_series.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <set>

#include "tests/support/csv.h"

using namespace core;

namespace {

/// The table names its source in its last column.
std::map<std::string, std::vector<test::CsvRow>> publishedSeries() {
  std::map<std::string, std::vector<test::CsvRow>> series;
  for (const auto& row : test::readCsv(SHUNTWRIGHT_TESTS_DIR "/reference/e_series.csv"))
    series[row.at("series")].push_back(row);
  return series;
}

constexpr ESeries all[] = {ESeries::E3,  ESeries::E6,  ESeries::E12, ESeries::E24,
                           ESeries::E48, ESeries::E96, ESeries::E192};

/// All values a real test of doubles: the literal is the nearest double to its decimals.
std::vector<double> bases(const std::vector<Resistance>& values) {
  std::vector<double> numbers;
  for (const Resistance value : values) numbers.push_back(value.base());
  return numbers;
}

}  // namespace

TEST(ESeries, HasTheValuesOfTheStandard) {
  // All 381 values of IEC 60063 in one decade, by tests/reference/e_series.csv. Equality: both sides are the
  // double nearest to the same decimal.
  const auto published = publishedSeries();
  std::size_t count = 0;
  for (const ESeries series : all) {
    const auto& rows = published.at(std::string(eSeriesName(series)));
    const auto values = eSeriesValues(series, Resistance(1), Resistance(9.999));
    ASSERT_EQ(values.size(), rows.size()) << eSeriesName(series);
    for (std::size_t k = 0; k < rows.size(); ++k)
      EXPECT_EQ(values[k].base(), test::number(rows[k], "value_1_to_10")) << eSeriesName(series) << " " << k;
    count += rows.size();
  }
  EXPECT_EQ(count, 381u);
  EXPECT_EQ(published.size(), eSeriesCount);
}

TEST(ESeries, HasTheUsualTolerances) {
  // The table's column nominal_tolerance_percent (from memory there); it gives E3 "over 20" and several for
  // E192, of which ours is the widest.
  const auto published = publishedSeries();
  for (const ESeries series : {ESeries::E6, ESeries::E12, ESeries::E24, ESeries::E48, ESeries::E96})
    EXPECT_DOUBLE_EQ(
        100 * usualTolerance(series),
        test::number(published.at(std::string(eSeriesName(series))).front(), "nominal_tolerance_percent"));
  EXPECT_GT(usualTolerance(ESeries::E3), 0.2);
  EXPECT_EQ(usualTolerance(ESeries::E192), 0.005);
}

TEST(ESeries, IncludesBothEndsOverSeveralDecades) {
  // By hand from the E3 values 1.0, 2.2, 4.7.
  EXPECT_EQ(bases(eSeriesValues(ESeries::E3, Resistance(0.22), Resistance(47))),
            (std::vector<double>{0.22, 0.47, 1, 2.2, 4.7, 10, 22, 47}));
  EXPECT_EQ(bases(eSeriesValues(ESeries::E3, Resistance(0.2200001), Resistance(46.9999))),
            (std::vector<double>{0.47, 1, 2.2, 4.7, 10, 22}));
  EXPECT_EQ(bases(eSeriesValues(ESeries::E3, Resistance(1000), Resistance(1000))), std::vector<double>{1000});
  EXPECT_TRUE(eSeriesValues(ESeries::E3, Resistance(5), Resistance(9)).empty());
  EXPECT_TRUE(eSeriesValues(ESeries::E3, Resistance(9), Resistance(5)).empty());
  EXPECT_EQ(eSeriesValues(ESeries::E192, Resistance(1e-9), Resistance(1e20)).size(), 21u * 192 + 1)
      << "from 1 micro-ohm to 1 peta-ohm";
}

TEST(ESeries, EachValueIsTheDoubleNearestToItsDecimal) {
  // The compiler rounds the literals.
  std::set<double> values;
  for (const Resistance value : eSeriesValues(ESeries::E96, Resistance(1e-6), Resistance(1e15)))
    values.insert(value.base());
  for (const double decimal : {1.07e-6, 5.23e-3, 0.243, 1.13, 59.0, 174e3, 9.76e6, 3.57e9, 8.87e14})
    EXPECT_TRUE(values.contains(decimal)) << decimal;
}

TEST(ESeries, CoarserSeriesAreContainedInTheFinerOnes) {
  const auto set = [](ESeries series) {
    return bases(eSeriesValues(series, Resistance(1), Resistance(100)));
  };
  const std::vector<ESeries> old = {ESeries::E3, ESeries::E6, ESeries::E12, ESeries::E24};
  const std::vector<ESeries> fine = {ESeries::E48, ESeries::E96, ESeries::E192};
  for (const auto& family : {old, fine})
    for (std::size_t k = 1; k < family.size(); ++k) {
      const auto coarse = set(family[k - 1]), finer = set(family[k]);
      EXPECT_TRUE(std::includes(finer.begin(), finer.end(), coarse.begin(), coarse.end()));
    }
}

TEST(ESeries, NearestIsByOhmAndTheLowerOneOfTwo) {
  EXPECT_EQ(nearestOfSeries(ESeries::E24, Resistance(11500)), Resistance(11000)) << "11k and 12k lie alike";
  EXPECT_EQ(nearestOfSeries(ESeries::E24, Resistance(11501)), Resistance(12000));
  EXPECT_EQ(nearestOfSeries(ESeries::E3, Resistance(7.3)), Resistance(4.7));
  EXPECT_EQ(nearestOfSeries(ESeries::E3, Resistance(7.4)), Resistance(10)) << "over the decade's end";
  EXPECT_EQ(nearestOfSeries(ESeries::E192, Resistance(919)), Resistance(920)) << "the irregular one";
  EXPECT_EQ(nearestOfSeries(ESeries::E6, Resistance(1e30)), Resistance(1e15)) << "the greatest there is";
}

TEST(ESeries, AreFoundByName) {
  for (const ESeries series : all) EXPECT_EQ(eSeriesFromName(eSeriesName(series)), series);
  EXPECT_FALSE(eSeriesFromName("E13"));
  EXPECT_FALSE(eSeriesFromName(""));
}
