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

}  // namespace
}  // namespace core
