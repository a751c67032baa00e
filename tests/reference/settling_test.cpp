// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/settling.h"

#include <gtest/gtest.h>

#include <cmath>

#include "tests/support/csv.h"
#include "tests/support/reached_digits.h"

namespace {

using namespace core;

const std::string table = std::string(SHUNTWRIGHT_TESTS_DIR) + "/reference/settling.csv";

// SciPy's step responses (make_settling.py). Its matrix exponential is good to some 1e-14 of the step, which
// on the flattest crossing of the smallest share, 1e-6, moves the time by some 1e-8 of itself; ours says
// below 1e-9.
TEST(SettlingReference, ButterworthAndBesselSettleAsSciPySays) {
  int butterworth = 0, bessel = 0;
  for (const auto& row : test::readCsv(table)) {
    const auto kind = filterKindFromKey(row.at("kind"));
    ASSERT_TRUE(kind) << row.at("kind");
    ++(*kind == FilterKind::Butterworth ? butterworth : bessel);
    const Filter filter{
        .kind = *kind, .order = static_cast<unsigned>(test::number(row, "order")), .cutoff = Frequency(1)};
    const auto time = settlingTime(filter, test::number(row, "share"));
    ASSERT_TRUE(time) << time.error().text();
    const double expected = test::number(row, "settling_s");
    EXPECT_REACHED("SciPy, step responses", row.at("kind"), time->base(), expected, 1e-8 * expected)
        << row.at("kind") << " of order " << row.at("order") << " to " << row.at("share");
  }
  EXPECT_EQ(butterworth, 8 * 9);
  EXPECT_EQ(bessel, 8 * 9);
}

}  // namespace
