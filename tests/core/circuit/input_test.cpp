// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/circuit/input.h"

#include <gtest/gtest.h>

#include <set>

using namespace core;

TEST(InputKind, KeysGoThereAndBack) {
  std::set<std::string_view> keys;
  for (std::size_t k = 0; k < inputKindCount; ++k) {
    const auto kind = static_cast<InputKind>(k);
    keys.insert(inputKindKey(kind));
    EXPECT_EQ(inputKindFromKey(inputKindKey(kind)), kind) << inputKindKey(kind);
  }
  EXPECT_EQ(keys.size(), inputKindCount);
  EXPECT_FALSE(keys.contains(""));
  EXPECT_EQ(inputKindKey(InputKind::Rounding), "rounding") << "the last: none is missing";
  EXPECT_FALSE(inputKindFromKey("arms"));
}
