// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/levels/statistics.h"

#include <gtest/gtest.h>

#include <cmath>

namespace {

TEST(WithoutSpikes, KeepsStepsAndDropsSingleSamples) {
  EXPECT_EQ(core::withoutSpikes(std::vector<double>{1, 1, 50, 1, 1, 7, 7, 7}),
            (std::vector<double>{1, 1, 1, 1, 1, 7, 7, 7}));
}

TEST(UncertaintyOfMean, OfAThousandWhiteReadingsAndOfTheirBlocksAgree) {
  // Derived: alternating -1, +1 has no positive correlation, so u = s/sqrt(n) with s^2 = n/(n - 1).
  std::vector<double> few(1000);
  for (std::size_t i = 0; i < few.size(); ++i) few[i] = i % 2 == 0 ? -1 : 1;
  EXPECT_DOUBLE_EQ(core::uncertaintyOfMean(few), std::sqrt(1000.0 / 999.0 / 1000.0));
  EXPECT_EQ(core::uncertaintyOfMean(std::vector<double>{3}), 0);
  EXPECT_EQ(core::uncertaintyOfMean(std::vector<double>(50, 0.1)), 0);
}

}  // namespace
