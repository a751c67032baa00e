// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/line/robust_line.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <limits>

#include "tests/support/digits.h"

namespace {

using testing::HasSubstr;
using Column = std::vector<double>;

TEST(RobustLine, FollowsItsDefinition) {
  // Derived by hand from Siegel's definition (Biometrika 69 (1982) 242) for (0, 0), (1, 1), (2, 4): slopes
  // from the points 1 and 2, 1 and 3, 2 and 3; medians 1.5, 2, 2.5; slope 2. Rests 0, -1, 0: intercept 0.
  // Residuals 0, -1, 0: scale 0.
  const auto line = core::fitRobustLine(Column{0, 1, 2}, Column{0, 1, 4});
  ASSERT_TRUE(line);
  EXPECT_EQ(line->slope, 2);
  EXPECT_EQ(line->intercept, 0);
  EXPECT_EQ(line->scale, 0);
}

TEST(RobustLine, IsNotPulledByAlmostHalfOfThePoints) {
  // Derived: five points on y = 3 - 2 x and four anywhere. Each good point has at least four slopes of -2
  // among eight.
  const Column x{0, 1, 2, 3, 4, 5, 6, 7, 8};
  Column y;
  for (const double v : x) y.push_back(3 - 2 * v);
  y[1] = 1000, y[4] = 500, y[6] = 4e5, y[8] = 77;
  const auto line = core::fitRobustLine(x, y);
  ASSERT_TRUE(line);
  // Four of the eight slopes of a good point are good: the median lies between a good one and its neighbour.
  EXPECT_GT(line->slope, -100);
  EXPECT_LT(line->slope, 100) << "the greatest slope between two of the points is 4e5";
  y[8] = 3 - 2 * 8;
  const auto three = core::fitRobustLine(x, y);
  ASSERT_TRUE(three);
  EXPECT_EQ(three->slope, -2);
  EXPECT_EQ(three->intercept, 3);
  EXPECT_EQ(three->scale, 0);
}

TEST(RobustLine, ScaleIsThatOfTheScatter) {
  // Derived: residuals spread evenly from -1 to 1 have median |r| = 1/2, whatever their order; stepping by 37
  // of 101 leaves hardly any tilt.
  Column x, y;
  for (int k = 0; k < 101; ++k) {
    x.push_back(k);
    y.push_back(7 + 3 * k + (k * 37 % 101 - 50) / 50.0);
  }
  const auto line = core::fitRobustLine(x, y);
  ASSERT_TRUE(line);
  EXPECT_NEAR(line->slope, 3, 0.01);
  EXPECT_NEAR(line->scale, 1.4826 / 2, 0.05);
}

TEST(RobustLine, TakesReadingsAtOneXTogether) {
  const auto line = core::fitRobustLine(Column{0, 0, 1, 1}, Column{0, 2, 3, 5});
  ASSERT_TRUE(line);
  EXPECT_EQ(line->slope, 3);
  EXPECT_EQ(line->intercept, 1);
}

TEST(RobustLine, RefusesWhatFixesNoLine) {
  EXPECT_THAT(core::fitRobustLine(Column{1}, Column{1}).error().what, HasSubstr("at least 2"));
  EXPECT_THAT(core::fitRobustLine(Column{1, 1}, Column{1, 2}).error().what, HasSubstr("all x are equal"));
  EXPECT_EQ(core::fitRobustLine(Column{1, 2}, Column{1, std::nan("")}).error().where, "point 2");
  EXPECT_THAT(core::fitRobustLine(Column{0, 1e-300}, Column{0, 1e300}).error().what,
              HasSubstr("too large or too small"));
  Column many(10'001);
  for (std::size_t i = 0; i < many.size(); ++i) many[i] = static_cast<double>(i);
  EXPECT_THAT(core::fitRobustLine(many, many).error().what, HasSubstr("too long"));
}

}  // namespace
