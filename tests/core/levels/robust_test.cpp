// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/levels/robust.h"

#include <gtest/gtest.h>

namespace {

TEST(MedianOf, IsTheMiddleOne) {
  std::vector<double> odd = {5, 1, 3};
  std::vector<double> even = {4, 1, 3, 2};
  EXPECT_EQ(core::medianOf(odd), 3);
  EXPECT_EQ(core::medianOf(even), 2.5);
}

TEST(RobustMeanOf, ValuesThatLieCloseIsTheirMean) {
  // All within 1.5 scales of the median: nothing is moved. Scale 1.4826 * 1.
  const auto robust = core::robustMeanOf({-2, -1, 0, 1, 2.2});
  EXPECT_NEAR(robust.mean, 0.04, 1e-12);
  EXPECT_DOUBLE_EQ(robust.scale, 1.4826);
}

TEST(RobustMeanOf, MostlyEqualValuesIsTheirValue) {
  EXPECT_EQ(core::robustMeanOf({4, 4, 4, 4, 90}).mean, 4);
  EXPECT_EQ(core::robustMeanOf({7}).mean, 7);
}

TEST(RobustMeanOf, IsHardlyMovedByOneWildValue) {
  // One of ten beyond the limit pulls by 1.5 scales over the nine within: 1.5 * 1.4826 * 2.5 / 9.
  EXPECT_NEAR(core::robustMeanOf({1, 2, 3, 4, 5, 6, 7, 8, 9, 1e6}).mean, 5 + 1.5 * 1.4826 * 2.5 / 9, 1e-9);
}

}  // namespace
