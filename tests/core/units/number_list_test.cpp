// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/number_list.h"

#include <gtest/gtest.h>

namespace core {
namespace {

TEST(NumberList, CountsFromOneAndJoinsTheLastWithAnd) {
  EXPECT_EQ(numberList({}), "");
  EXPECT_EQ(numberList({1}), "2");
  EXPECT_EQ(numberList({1, 2}), "2 and 3");
  EXPECT_EQ(numberList({0, 1, 4}), "1, 2 and 5");
}

TEST(NumberList, WritesThreeOrMoreThatFollowEachOtherAsARange) {
  EXPECT_EQ(numberList({1, 2, 3}), "2–4");
  EXPECT_EQ(numberList({1, 2, 3, 5, 6, 7}), "2–4 and 6–8");
  EXPECT_EQ(numberList({0, 2, 3, 4, 8, 9}), "1, 3–5, 9 and 10");
}

}  // namespace
}  // namespace core
