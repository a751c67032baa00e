// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stock/stock_file.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <array>
#include <random>
#include <utility>

using namespace core;
using testing::HasSubstr;
using testing::MatchesRegex;

namespace {

const std::string headings = "id,resistance,tolerance,certificate_value,certificate_expanded,due,note\n";

Stock readWhole(const std::string& text) {
  auto stock = readStockFile(text);
  EXPECT_TRUE(stock) << stock.error().text();
  return stock ? *std::move(stock) : Stock();
}

Error errorOf(const std::string& text) {
  const auto stock = readStockFile(text);
  EXPECT_FALSE(stock) << text;
  return stock ? Error() : stock.error();
}

/// A stock with everything a file can hold, in words and numbers that are hard to write.
Stock fullStock() {
  const Date due = *dateFromText("2027-02-28");
  Stock stock;
  stock.resistors = {{.id = "AF-0104",
                      .nominal = Resistance(59900),
                      .tolerance = 1e-4,
                      .certificate = Certificate{Resistance(59906.125), Resistance(0.6), 2.13},
                      .due = due,
                      .rating = Power(0.25),
                      .fittedIn = "Amplifier 2, slot \"B\"",
                      .note = "=SUM(A1); –60 °C, Ω"},
                     {.id = "AF, 0105;", .nominal = Resistance(1.0 / 3), .tolerance = 1.0 / 7, .note = "'=x"},
                     {.id = "-17",
                      .nominal = Resistance(1e10),
                      .tolerance = 0,
                      .certificate = Certificate{Resistance(0.99e10), Resistance(12345.678), 2},
                      .note = " spaces around "}};
  stock.boxes = {{.id = "AF-D1",
                  .decades = {{Resistance(1e6), 10}, {Resistance(2500), 9}, {Resistance(0.1), 11}},
                  .residual = Resistance(0.052),
                  .tolerance = 2e-4,
                  .due = due,
                  .rating = Power(1),
                  .note = "'"},
                 {.id = "AF-D2", .decades = {{Resistance(123.456789), 1}}, .tolerance = 0.001}};
  return stock;
}

TEST(StockFile, KeepsTheNumberOfACertificate) {
  const auto stock = readStockFile(
      "id,resistance,certificate_value,certificate_expanded,certificate_number\n"
      "AF-1,59k,59.001k,3,\"AFC-2026, 17\"\n");
  ASSERT_TRUE(stock) << stock.error().text();
  EXPECT_EQ(stock->resistors[0].certificate->number, "AFC-2026, 17");
  EXPECT_EQ(*readStockFile(stockFileText(*stock)), *stock);
  EXPECT_FALSE(readStockFile("id,resistance,tolerance,certificate_number\nAF-1,59k,1 %,AFC-1\n"));
}

}  // namespace

TEST(StockFile, ReadsTheTradesNotation) {
  const Stock stock = readWhole(
      "id,resistance,tolerance,due,rating,fitted_in,note\n"
      "AF-0104,59k9,0.01 %,2027-03-01,250 mW,Amplifier 2,first of two\n"
      "AF-0105,174.65 kOhm,100 ppm,,0.5 W,,\n"
      "AF-0106,2M21,±1%,,,,\n"
      "AF-0107,350,0.1%,,,,\n"
      "AF-0108,350 Ω,0.1%,,,,\n");
  ASSERT_EQ(stock.resistors.size(), 5u);
  EXPECT_EQ(stock.resistors[0], (Resistor{.id = "AF-0104",
                                          .nominal = Resistance(59900),
                                          .tolerance = 1e-4,
                                          .due = dateFromText("2027-03-01"),
                                          .rating = Power(0.25),
                                          .fittedIn = "Amplifier 2",
                                          .note = "first of two"}));
  EXPECT_EQ(stock.resistors[1].nominal, Resistance(174650));
  EXPECT_EQ(stock.resistors[1].tolerance, 1e-4);
  EXPECT_EQ(stock.resistors[1].rating, Power(0.5));
  EXPECT_EQ(stock.resistors[2].nominal, Resistance(2.21e6));
  EXPECT_EQ(stock.resistors[3].nominal, stock.resistors[4].nominal);
  EXPECT_TRUE(stock.boxes.empty() && stock.series.empty());
}

TEST(StockFile, ReadsCertificates) {
  const Stock stock = readWhole(
      "id,resistance,tolerance,certificate_value,certificate_expanded,certificate_k\n"
      "AF-0104,59k9,0.01 %,59.906 kOhm,0.6 Ohm,2.1\n"
      "AF-0105,100k,,100k,20 ppm,\n");
  ASSERT_EQ(stock.resistors.size(), 2u);
  EXPECT_EQ(stock.resistors[0].certificate, (Certificate{Resistance(59906), Resistance(0.6), 2.1}));
  EXPECT_EQ(stock.resistors[1].certificate, (Certificate{Resistance(100000), Resistance(2), 2}))
      << "a share of the value, and the usual k";
  EXPECT_EQ(stock.resistors[1].tolerance, 0) << "not said";
}

TEST(StockFile, ReadsDecadeBoxes) {
  const Stock stock = readWhole(
      "id;decades;residual;tolerance;resistance\n"
      "AF-D1;10x10k 10x1k 10x100;0,05;0,1 %;\n");
  ASSERT_EQ(stock.boxes.size(), 1u);
  EXPECT_EQ(stock.boxes[0],
            (DecadeBox{.id = "AF-D1",
                       .decades = {{Resistance(10000), 10}, {Resistance(1000), 10}, {Resistance(100), 10}},
                       .residual = Resistance(0.05),
                       .tolerance = 1e-3}));
}

TEST(StockFile, ReadsWhatSpreadsheetsWrite) {
  const Stock expected{.resistors = {{.id = "AF-0104", .nominal = Resistance(59900), .note = "a, \"b\""},
                                     {.id = "AF-0105", .nominal = Resistance(350)}}};
  const std::vector<std::pair<const char*, std::string>> same = {
      {"commas", "id,resistance,tolerance,note\nAF-0104,59k9,0.01%,\"a, \"\"b\"\"\"\nAF-0105,350,0.01%,\n"},
      {"semicolons", "id;resistance;tolerance;note\nAF-0104;59,9 k;0,01%;a, \"b\"\nAF-0105;350;0,01%;\n"},
      {"tabs", "id\tresistance\ttolerance\tnote\nAF-0104\t59k9\t0.01%\ta, \"b\"\nAF-0105\t350\t0.01%\t\n"},
      {"CR LF",
       "id,resistance,tolerance,note\r\nAF-0104,59k9,0.01%,\"a, \"\"b\"\"\"\r\nAF-0105,350,0.01%,\r\n"},
      {"CR", "id,resistance,tolerance,note\rAF-0104,59k9,0.01%,\"a, \"\"b\"\"\"\rAF-0105,350,0.01%,\r"},
      {"mark",
       "\xEF\xBB\xBFid,resistance,tolerance,note\nAF-0104,59k9,0.01%,\"a, \"\"b\"\"\"\nAF-0105,350,0.01%,"},
      {"empty lines",
       "\n\nid,resistance,tolerance,note\n\nAF-0104,59k9,0.01%,\"a, \"\"b\"\"\"\n,,,\nAF-0105,350,0.01%,\n\n "
       ", ,\n"},
      {"other order",
       "Note,Tolerance, ID ,Resistance\n\"a, \"\"b\"\"\",0.01%,AF-0104,59k9\n,0.01%, AF-0105 ,350\n"},
  };
  for (const auto& [how, text] : same) EXPECT_EQ(readWhole(text), expected) << how;
}

TEST(StockFile, NamesLineAndColumnOfWhatItRefuses) {
  const std::string sound = "AF-0104,59k9,0.01 %,,,,\n";
  const std::vector<std::array<std::string, 3>> wrong = {
      {"AF-0105,0,0.01 %,,,,", "line 3, resistance", "short circuit"},
      {"AF-0105,0 ohm,0.01 %,,,,", "line 3, resistance", "short circuit"},
      {"AF-0105,1e12,0.01 %,,,,", "line 3, resistance", "not between"},
      {"AF-0105,1e12 ohm,0.01 %,,,,", "line 3, resistance", "not between"},
      {"AF-0105,-59k9,0.01 %,,,,", "line 3, resistance", "not between"},
      {"AF-0105,59.9 kV,0.01 %,,,,", "line 3, resistance", "59.9 kV"},
      {"AF-0105,59.9 mV/V,0.01 %,,,,", "line 3, resistance", "has the unit of an output"},
      {"AF-0105,nan,0.01 %,,,,", "line 3, resistance", "nan"},
      {"AF-0105,,0.01 %,,,,", "line 3, resistance", "no resistance"},
      {"AF-0105,59 900,0.01 %,,,,", "line 3, resistance", "59 900"},
      {"AF-0105,59k9,0.01,,,,", "line 3, tolerance", "0.01"},
      {"AF-0105,59k9,-1 %,,,,", "line 3, tolerance", "-1 %"},
      {"AF-0105,59k9,1000 %,,,,", "line 3, tolerance", "1000 %"},
      {"AF-0105,59k9,0.01 Ohm,,,,", "line 3, tolerance", "0.01 Ohm"},
      {"AF-0105,59k9,,,,,", "line 3, tolerance", "neither"},
      {"AF-0105,59k9,0.01 %,59.9,0.6,,", "line 3, certificate_value", "far"},
      {"AF-0105,59k9,0.01 %,59k9,,,", "line 3, certificate_expanded", "U"},
      {"AF-0105,59k9,0.01 %,,0.6,,", "line 3, certificate_expanded", "certificate_value"},
      {"AF-0105,59k9,0.01 %,59k9,0.6 V,,", "line 3, certificate_expanded", "0.6 V"},
      {"AF-0105,59k9,0.01 %,,,25.11.2026,", "line 3, due", "25.11.2026"},
      {"AF-0105,59k9,0.01 %,,,2026-02-30,", "line 3, due", "2026-02-30"},
      {",59k9,0.01 %,,,,", "line 3, id", "no id"},
      {"AF-0104,350,0.01 %,,,,", "line 3, id", "line 2 too"},
      {"AF-0105,174,65k,0.01 %,,,,", "line 3", "8 cells under 7 columns"},
      {"AF-0105,59k9", "line 3", "2 cells under 7 columns"},
      {"AF-0105,59k9,0.01 %,,,,\"open", "line 3", "never closes"},
      {"\"AF\"-0105,59k9,0.01 %,,,,", "line 3", "after a closing quotation mark"},
      {"AF-0105,59k9,0.01 %,,,,\xFF", "line 3", "UTF-8"},
      {std::string("AF-0105,59k9,0.01 %,,,,") + '\0', "line 3", "no text"},
      {"AF-0105,59k9,0.01 %,,,,\"one\ntwo\"", "line 3, note", "line break"},
  };
  for (const auto& [line, where, what] : wrong) {
    const Error error = errorOf(headings + sound + line + "\n");
    EXPECT_EQ(error.where, where) << line;
    EXPECT_THAT(error.what, HasSubstr(what)) << line;
    EXPECT_FALSE(error.mend.empty()) << line;
  }
}

TEST(StockFile, NamesWhatIsWrongWithABox) {
  const std::string names = "id,resistance,decades,residual,tolerance,certificate_value,rating,fitted_in\n";
  const std::vector<std::array<std::string, 2>> wrong = {
      {"AF-D1,59k9,10x10k,,0.1%,,,", "line 2, resistance"},
      {"AF-D1,,10x10k 10x1V,,0.1%,,,", "line 2, decades"},
      {"AF-D1,,10x1k 10x10k,,0.1%,,,", "line 2, decades"},
      {"AF-D1,,10k,,0.1%,,,", "line 2, decades"},
      {"AF-D1,,10x10k,-1,0.1%,,,", "line 2, residual"},
      {"AF-D1,,10x10k,,,,,", "line 2, tolerance"},
      {"AF-D1,,10x10k,,0.1%,10k,,", "line 2, certificate_value"},
      {"AF-D1,,10x10k,,0.1%,,,Amplifier 2", "line 2, fitted_in"},
      {"AF-D1,,10x10k,,0.1%,,0.25,", "line 2, rating"},
      {"AF-D1,,10x10k,,0.1%,,5 kHz,", "line 2, rating"},
      {"AF-R1,350,,0.1,0.1%,,,", "line 2, residual"},
      {"AF-R1,350,,,0.1%,,0 W,", "line 2, rating"}};
  for (const auto& [line, where] : wrong) EXPECT_EQ(errorOf(names + line).where, where) << line;
}

TEST(StockFile, NamesWhatIsWrongWithItsHeading) {
  const std::vector<std::array<std::string, 2>> wrong = {
      {"", "line 1"},
      {"\n \n", "line 1"},
      {"\xEF\xBB\xBF", "line 1"},
      {"id,resistance,colour\n", "line 1, column 3"},
      {"id,resistance,\n", "line 1, column 3"},
      {"id,resistance,id\n", "line 1, column 3"},
      {"AF-0104,59k9,0.01 %\n", "line 1, column 1"},
      {"\nid,tolerance\n", "line 2"},
      {"resistance,tolerance\n", "line 1"},
      {"\xFE\xFFi", "line 1"},
  };
  for (const auto& [text, where] : wrong) EXPECT_EQ(errorOf(text).where, where) << text;
  EXPECT_EQ(readWhole("id,resistance\n"), Stock()) << "no rows are no error";
}

TEST(StockFile, CountsLinesInsideQuotesToo) {
  EXPECT_EQ(errorOf(headings + "AF-0104,59k9,0.01 %,,,,\"a\"\n\n\r\nAF-0105,0,0.01 %,,,,\n").where,
            "line 5, resistance");
  EXPECT_EQ(errorOf("\"id\n\",resistance\n").where, "line 1, column 1");
  EXPECT_EQ(errorOf("id,resistance\n\"a\r\nb\",59k9\nAF-0105,\"\n").where, "line 4") << "an open quote";
}

TEST(StockFile, TakesTenThousandRowsAndNoMore) {
  std::string text = "id,resistance,tolerance\n";
  for (int k = 0; k < 10'000; ++k) text += "AF-" + std::to_string(k) + ",59k9,0.01%\n";
  EXPECT_EQ(readWhole(text).resistors.size(), 10'000u);
  EXPECT_EQ(errorOf(text + "AF-X,59k9,0.01%\n").where, "line 10002");
}

TEST(StockFile, IsReadBackAsItWasWritten) {
  const Stock stock = fullStock();
  ASSERT_TRUE(checkStock(stock)) << checkStock(stock).error().text();
  const std::string text = stockFileText(stock);
  EXPECT_EQ(readWhole(text), stock) << text;
  EXPECT_EQ(stockFileText(readWhole(text)), text);
  EXPECT_EQ(readWhole(stockFileText(Stock())), Stock());
}

TEST(StockFile, WritesNoFormulas) {
  const std::string text = stockFileText(fullStock());
  // Cells that a spreadsheet would run begin with = + - or @.
  for (const char* start : {",=", ",+", ",-", ",@", "\n=", "\n+", "\n-", "\n@", ",\"="})
    EXPECT_EQ(text.find(start), std::string::npos) << start;
}

TEST(StockFile, WritesNoSeries) {
  Stock stock = fullStock();
  const std::string text = stockFileText(stock);
  stock.series = {{}};
  EXPECT_EQ(stockFileText(stock), text);
}

TEST(StockFile, AnyDamageIsReadOrRefusedWithItsPlace) {
  const std::string sound = stockFileText(fullStock());
  const std::string pieces[] = {
      "\"",        ",", ";", "\t", "\n", "\r",    "\r\n", "\xEF\xBB\xBF", "\xFF", "é", "Ω",
      "×",         "x", "0", "-",  "e",  "1e999", "%",    "ppm",          "'",    "=", std::string(1, '\0'),
      "9999999999"};
  std::mt19937 random(20261125);
  const auto below = [&](std::size_t count) {
    return std::uniform_int_distribution<std::size_t>(0, count - 1)(random);
  };
  int read = 0, refused = 0;
  for (int round = 0; round < 6'000; ++round) {
    std::string text = sound;
    for (std::size_t changes = 1 + below(4); changes > 0 && !text.empty(); --changes) {
      const std::size_t at = below(text.size()), length = below(4) == 0 ? below(text.size()) : below(3);
      text.replace(at, length, below(2) == 0 ? pieces[below(std::size(pieces))] : std::string());
    }
    const auto stock = readStockFile(text);
    (stock ? read : refused) += 1;
    if (stock) {
      EXPECT_TRUE(checkStock(*stock)) << checkStock(*stock).error().text() << "\n" << text;
      EXPECT_EQ(*readStockFile(stockFileText(*stock)), *stock) << text;
    } else {
      EXPECT_THAT(stock.error().where, MatchesRegex("line [0-9]+(, [a-z_]+( [0-9]+)?)?")) << text;
      EXPECT_FALSE(stock.error().what.empty() || stock.error().mend.empty()) << text;
    }
    if (HasFailure()) break;
  }
  // Both must come about, else the damage was of no use.
  EXPECT_GT(read, 300);
  EXPECT_GT(refused, 300);
}
