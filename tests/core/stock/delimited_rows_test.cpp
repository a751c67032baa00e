// SPDX-License-Identifier: GPL-3.0-or-later
// How much a list may ask for. The limits are those of the header.
#include "core/stock/delimited_rows.h"

#include <gtest/gtest.h>

using namespace core;

namespace {

std::string whatIsWrong(const std::string& text) {
  const auto rows = delimitedRows(text, 10'000);
  return rows ? "taken" : rows.error().where + ": " + rows.error().what;
}

TEST(DelimitedRows, TakeAsManyCellsInARowAsARecordingHasColumnsAndNoMore) {
  const std::string most = "a" + std::string(4'095, ',');
  EXPECT_EQ(whatIsWrong("a,b\n" + most), "taken");
  EXPECT_EQ(whatIsWrong("a,b\n" + most + ","), "line 2: there are more than 4096 cells");
  // What is all separators asks for 32 bytes a byte.
  EXPECT_EQ(whatIsWrong(std::string(4'000'000, ',')), "line 1: there are more than 4096 cells");
}

TEST(DelimitedRows, TakeAMillionCellsAndNoMore) {
  const std::string row = "a" + std::string(3'999, ',') + "\n";
  std::string text;
  for (int k = 0; k < 250; ++k) text += row;
  EXPECT_EQ(whatIsWrong(text), "taken");
  EXPECT_EQ(whatIsWrong(text + "a"), "line 251: there are more than 1000000 cells");
}

}  // namespace
