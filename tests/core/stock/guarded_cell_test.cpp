// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include "core/stock/delimited_rows.h"

// What spreadsheets run: a cell that begins with = + - @ (OWASP, CSV Injection; from memory). Which white
// space before it they leave out is their affair.

namespace core {
namespace {

TEST(GuardedCell, AnApostropheStandsBeforeAFormulaAndTheWhiteSpaceBeforeIt) {
  for (const std::string before : {"", " ", "\t", "\r", "\n", " \r\n", "'"})
    for (const std::string sign : {"=", "+", "-", "@"}) {
      std::string cell = guardedCell(before + sign + "1");
      if (cell.starts_with('"')) cell = cell.substr(1, cell.size() - 2);
      EXPECT_EQ(cell, "'" + before + sign + "1");
    }
}

TEST(GuardedCell, ComesBackAsItWas) {
  for (const std::string text : {"=1", " =1", "\n=1", "'=1", "plain", "'plain", "a=1", "5 - 3"}) {
    const auto rows = delimitedRows(guardedCell(text) + ",x\n", 1, ',');
    ASSERT_TRUE(rows) << text;
    EXPECT_EQ(withoutGuard(rows->front().cells.front()), text);
  }
}

}  // namespace
}  // namespace core
