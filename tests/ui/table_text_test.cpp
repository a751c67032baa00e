// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include "tests/support/printing.h"
#include "ui/tables/cell_text.h"
#include "ui/tables/cell_value.h"
#include "ui/tables/document_search.h"

namespace ui {
namespace {

// Quotes as RFC 4180 has them, with tabs for commas; LibreOffice Calc takes part in
// tests/app/spreadsheet_test.py.
TEST(TableText, CellsThatNeedItStandInQuotes) {
  EXPECT_EQ(tabbedText({{"a", "b\tc"}, {"d\ne", "\"f\" g"}, {"5\" plug", ""}}),
            "a\t\"b\tc\"\n\"d\ne\"\t\"\"\"f\"\" g\"\n5\" plug\t");
}

TEST(TableText, WhatIsWrittenIsReadBack) {
  const CellBlock block = {{"a", "", "\"", "\"\"", "x\ty"}, {"two\nlines", "\"q\"", "5\"", " ", "'"}};
  EXPECT_EQ(cellsOfTabbedText(tabbedText(block)), block);
}

TEST(TableText, TakesEveryLineEndingAndNoRowOfTheLastOne) {
  const CellBlock block = {{"a", "b"}, {"c", "d"}};
  EXPECT_EQ(cellsOfTabbedText("a\tb\nc\td\n"), block);
  EXPECT_EQ(cellsOfTabbedText("a\tb\r\nc\td\r\n"), block);
  EXPECT_EQ(cellsOfTabbedText("a\tb\rc\td"), block);
}

TEST(TableText, AQuotationMarkThatIsNotClosedIsALetter) {
  EXPECT_EQ(cellsOfTabbedText("\"a\tb\n\"c\" d\te"), (CellBlock{{"\"a", "b"}, {"\"c\" d", "e"}}));
}

TEST(TableText, HtmlHoldsNothingButText) {
  const QString html = htmlTable({{"<b>", "a & b"}, {"two\nlines", "1.5"}}, true, "en");
  EXPECT_TRUE(html.contains("<th>&lt;b&gt;</th><th>a &amp; b</th>"));
  EXPECT_TRUE(html.contains("<td>two<br>lines</td><td>1.5</td>"));
}

TEST(TableText, WhatASpreadsheetWouldRunIsGuardedAndNumbersAreNot) {
  for (const char* text : {"=1+1", "@home", "+x", "-y", "-1+2", " =1+1", "\n@home", "'=1+1"}) {
    EXPECT_EQ(guardedCell(text), QString("'") + text);
    EXPECT_EQ(unguardedCell(guardedCell(text)), text);
  }
  for (const char* text : {"+1000", "-0.5", "a=b", "", "'quoted", "2026-03-02"})
    EXPECT_EQ(unguardedCell(guardedCell(text)), text);
  EXPECT_EQ(guardedCell("+1000"), "+1000");
  EXPECT_EQ(guardedCell("-0.5"), "-0.5");
}

void expectRising(const QStringList& texts) {
  for (int k = 1; k < texts.size(); ++k)
    EXPECT_LT(compareCells(keyOfCell(texts[k - 1]), keyOfCell(texts[k])), 0)
        << texts[k - 1].toStdString() << " before " << texts[k].toStdString();
}

TEST(CellValue, SortsByValueAndNotByText) {
  expectRising({"-1000", "-5", "0", "9", "10", "1000"});
  expectRising({"900 Ω", "4.7 kΩ", "59.906 kΩ", "1 MΩ"});
  expectRising({"± 50 ppm", "± 0.01 %", "0.1 %", "1 %"});
  expectRising({"500 µV/V", "1.5 mV/V"});
  expectRising({"125 mW", "0.5 W", "1 W"});
  expectRising({"TP-9", "TP-10", "TP-101"});
  expectRising({"2025-12-31", "2026-01-02", "2026-01-10"});
  expectRising({"5", "a name", ""});
  EXPECT_EQ(keyOfCell("–").kind, CellKey::Kind::Empty);
}

QStringList series(const char* first, const char* second, int count) {
  const auto texts = seriesAfter(first, second, count);
  return texts ? *texts : QStringList{"refused"};
}

TEST(CellValue, SeriesGoOnInEqualSteps) {
  EXPECT_EQ(series("1", "2", 3), (QStringList{"3", "4", "5"}));
  EXPECT_EQ(series("0.1", "0.2", 3), (QStringList{"0.3", "0.4", "0.5"}));
  EXPECT_EQ(series("+500", "+1000", 2), (QStringList{"+1500", "+2000"}));
  EXPECT_EQ(series("100", "50", 3), (QStringList{"0", "-50", "-100"}));
  EXPECT_EQ(series("10 kΩ", "20 kΩ", 2), (QStringList{"30 kΩ", "40 kΩ"}));
  EXPECT_EQ(series("2", "", 3), (QStringList{"3", "4", "5"}));
}

TEST(CellValue, NamesCountUp) {
  EXPECT_EQ(series("TP-09", "TP-10", 2), (QStringList{"TP-11", "TP-12"}));
  EXPECT_EQ(series("J2", "J4", 2), (QStringList{"J6", "J8"}));
  EXPECT_EQ(series("S-104", "", 2), (QStringList{"S-105", "S-106"}));
  EXPECT_EQ(series("zero", "zero", 2), (QStringList{"zero", "zero"}));
  EXPECT_EQ(series("up", "down", 2), QStringList{"refused"});
  EXPECT_EQ(series("900 Ω", "1 kΩ", 2), QStringList{"refused"});
}

}  // namespace
}  // namespace ui
