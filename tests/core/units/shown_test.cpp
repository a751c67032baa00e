// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/shown.h"

#include <gtest/gtest.h>

#include <cmath>

namespace core {
namespace {

TEST(ShownDigits, ALimitHasTwoAndAValueBesideItAsManyAsTellTheSide) {
  EXPECT_EQ(placesOf(15), 0);
  EXPECT_EQ(placesOf(0.5), 2);
  EXPECT_EQ(placesOf(0.0996), 2);
  EXPECT_EQ(placesBeside(0.04472, 15), 0);
  EXPECT_EQ(placesBeside(15.02, 15), 2);
  EXPECT_EQ(placesBeside(-0.4996, 0.5), 4);
  EXPECT_EQ(placesBeside(15, 15), 0);
  EXPECT_EQ(placesBeside(15 * (1 + 1e-15), 15), 9);
  EXPECT_EQ(placesBeside(std::nan(""), 15), 0);
}

// By hand: the first place that rounds to something.
TEST(ShownDigits, PlacesShowOneDigitAtLeast) {
  EXPECT_EQ(placesShowing(2, 0), 0);
  EXPECT_EQ(placesShowing(0.3, 2), 2);
  EXPECT_EQ(placesShowing(-0.0002, 0), 4);
  EXPECT_EQ(placesShowing(0.00096, 0), 3);  // 0.001
  EXPECT_EQ(placesShowing(1e-15, 2), 2);
  EXPECT_EQ(placesShowing(0, 2), 2);
  EXPECT_EQ(placesShowing(std::nan(""), 2), 2);
}

}  // namespace
}  // namespace core
