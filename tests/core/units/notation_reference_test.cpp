// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <array>
#include <charconv>
#include <cmath>
#include <cstdint>
#include <fstream>
#include <random>
#include <sstream>
#include <string>
#include <vector>

#include "core/units/notation.h"

using namespace core;

namespace {

using enum UnitFamily;

struct Reading {
  const char* text;
  UnitFamily family;
  double base;
};

void expectTaken(const std::vector<Reading>& readings) {
  for (const auto& [text, family, base] : readings) {
    const auto value = parseQuantity(text, family);
    ASSERT_TRUE(value) << text << ": " << value.error().what;
    EXPECT_EQ(*value, base) << text;  // literals are rounded by the compiler: the nearest double
  }
}

TEST(Notation, ReadsTheLetterCodeOfIec60062) {
  // IEC 60062:2016, table "code for resistance values", as also given by IEC 60062:1992 and BS 1852 (from
  // memory): the letter stands for the decimal mark; R, K, M, G, T for 1, 10^3, 10^6, 10^9, 10^12.
  expectTaken({{"R10", Resistance, 0.1},    {"R332", Resistance, 0.332},  {"1R0", Resistance, 1},
               {"3R32", Resistance, 3.32},  {"5R9", Resistance, 5.9},     {"10R", Resistance, 10},
               {"33R2", Resistance, 33.2},  {"59R0", Resistance, 59},     {"100R", Resistance, 100},
               {"332R", Resistance, 332},   {"1K0", Resistance, 1e3},     {"3K32", Resistance, 3.32e3},
               {"10K", Resistance, 10e3},   {"33K2", Resistance, 33.2e3}, {"332K", Resistance, 332e3},
               {"1M0", Resistance, 1e6},    {"3M32", Resistance, 3.32e6}, {"33M2", Resistance, 33.2e6},
               {"332M", Resistance, 332e6}, {"1G0", Resistance, 1e9},     {"3G32", Resistance, 3.32e9},
               {"1T0", Resistance, 1e12},   {"3T32", Resistance, 3.32e12}});
  // L for 10^-3: common practice on current shunts ("5L0"), no source at hand.
  expectTaken({{"4L7", Resistance, 4.7e-3}, {"L50", Resistance, 0.5e-3}, {"5L", Resistance, 5e-3}});
}

TEST(Notation, RefusesTheToleranceLettersOfIec60062ByTheirValue) {
  // IEC 60062 tolerance letters (from memory): B 0.1, C 0.25, D 0.5, F 1, G 2, J 5, K 10, M 20 percent.
  for (const auto& [text, percent] :
       std::initializer_list<std::pair<const char*, const char*>>{{"4k7F", "± 1 %"},
                                                                  {"4K7J", "± 5 %"},
                                                                  {"R47B", "± 0.1 %"},
                                                                  {"1M0K", "± 10 %"},
                                                                  {"47KM", "± 20 %"},
                                                                  {"330RG", "± 2 %"},
                                                                  {"59k9C", "± 0.25 %"}}) {
    const auto value = parseQuantity(text, Resistance);
    ASSERT_FALSE(value) << text;
    EXPECT_NE(value.error().what.find(percent), std::string::npos) << value.error().what;
    const std::string bare = std::string(text).substr(0, std::string(text).size() - 1);
    EXPECT_NE(value.error().mend.find("Write " + bare + " alone"), std::string::npos) << value.error().mend;
    EXPECT_TRUE(parseQuantity(bare, Resistance)) << bare;
  }
}

TEST(Notation, TakesThePrefixesOfTheSi) {
  // SI Brochure, 9th edition, table 7; NIST SP 811 (2008), table 5.
  expectTaken({{"1 nΩ", Resistance, 1e-9}, {"1 µΩ", Resistance, 1e-6}, {"1 mΩ", Resistance, 1e-3},
               {"1 kΩ", Resistance, 1e3},  {"1 MΩ", Resistance, 1e6},  {"1 GΩ", Resistance, 1e9},
               {"1 TΩ", Resistance, 1e12}, {"1 nV/V", Output, 1e-9},   {"1 µV/V", Output, 1e-6},
               {"1 mV/V", Output, 1e-3},   {"1 nm/m", Strain, 1e-9},   {"1 µm/m", Strain, 1e-6},
               {"1 mm/m", Strain, 1e-3},   {"1 nε", Strain, 1e-9},     {"1 mε", Strain, 1e-3},
               {"1 nV", Voltage, 1e-9},    {"1 µV", Voltage, 1e-6},    {"1 kV", Voltage, 1e3},
               {"1 ns", Duration, 1e-9},   {"1 µs", Duration, 1e-6},   {"1 µm", Length, 1e-6},
               {"1 nm", Length, 1e-9},     {"1 cm", Length, 1e-2},     {"1 km", Length, 1e3},
               {"1 mHz", Frequency, 1e-3}, {"1 kHz", Frequency, 1e3},  {"1 MHz", Frequency, 1e6},
               {"1 GHz", Frequency, 1e9},  {"1 kS/s", Frequency, 1e3}, {"1 MS/s", Frequency, 1e6},
               {"1 nW", Power, 1e-9},      {"1 µW", Power, 1e-6},      {"1 mW", Power, 1e-3},
               {"1 kW", Power, 1e3},       {"1 MW", Power, 1e6},       {"1 µm²", Area, 1e-12}});
}

TEST(Notation, TakesRatiosTimesAndForeignUnitsExactly) {
  expectTaken({
      {"100 ppm", Percent, 1e-4},
      {"1 ‰", Percent, 1e-3},
      {"250 ppm", Strain, 250e-6},
      {"2 ‰", Strain, 2e-3},
      {"5 µin/in", Strain, 5e-6},
      // SI Brochure, table 8: 1 min = 60 s, 1 h = 60 min. 0.1 min in doubles would be 0.1 * 60, here it is
      // exact.
      {"1 h", Duration, 3600},
      {"0.7 min", Duration, 42},
      {"1 min 30 s", Duration, 90},
      {"1 h 30 min", Duration, 5400},
      {"2 h 1 min 0.25 s", Duration, 7260.25},
      {"1min30,5s", Duration, 90.5},
      {"-1 min 30 s", Duration, -90},
      // NIST SP 811, appendix B: 1 in = 25.4 mm, 1 ft = 0.3048 m, 1 yd = 0.9144 m, all exact.
      {"0.1 in", Length, 0.00254},
      {"7 ft", Length, 2.1336},
      {"3 yd", Length, 2.7432},
      {"1 in²", Area, 6.4516e-4},
  });
}

TEST(Notation, TakesCharactersThatLookTheSame) {
  const std::vector<std::string> spaces = {" ",      "\t",     "\u00A0", "\u2000", "\u2002",
                                           "\u2003", "\u2005", "\u2007", "\u2008", "\u2009",
                                           "\u200A", "\u202F", "\u205F", "\u3000"};
  for (const std::string& space : spaces) {
    const auto value = parseQuantity(space + "350" + space + "Ω" + space, Resistance);
    ASSERT_TRUE(value) << space;
    EXPECT_EQ(*value, 350);
  }
  // U+2212 and the hyphens and dashes U+2010 to U+2015, which word processors put in its place.
  for (const char* minus :
       {"-", "\u2212", "\u2010", "\u2011", "\u2012", "\u2013", "\u2014", "\u2015", "\uFE63", "\uFF0D"}) {
    const auto value = parseQuantity(std::string(minus) + "1000 µm/m", Strain);
    ASSERT_TRUE(value) << minus;
    EXPECT_EQ(*value, -1000e-6) << minus;
  }
  EXPECT_EQ(*parseQuantity("1.5e\u22123", Plain), 1.5e-3);
  // Full width, as input methods of East Asia write: the same characters in another width (Unicode block
  // FF00).
  EXPECT_EQ(*parseQuantity("\uFF13\uFF15\uFF10\uFF0E\uFF15", Resistance), 350.5);
  EXPECT_EQ(*parseQuantity("1.5 \uFF05", Percent), 0.015);
  EXPECT_EQ(*parseQuantity("20 \u2103", Temperature), 20);
  EXPECT_EQ(*parseQuantity("5 kOHM", Resistance), 5000);
  EXPECT_EQ(*parseQuantity("5 ohms", Resistance), 5);
  // A mark that nobody sees, as comes along from a web page.
  EXPECT_EQ(*parseQuantity("\u200E350\u200B Ω\uFEFF", Resistance), 350);
}

struct Refusal {
  const char* text;
  UnitFamily family;
  const char* what;
  const char* mend;
};

TEST(Notation, SaysWhatIsWrongAndHowToWriteIt) {
  const std::vector<Refusal> refusals = {
      {"1.234,5", Resistance, "both a point and a comma", "Write 1234.5, with nothing"},
      {"1,234.5", Resistance, "both a point and a comma", "Write 1234.5, with nothing"},
      {"1 234,5", Resistance, "between its digits", "Write 1234.5, with nothing"},
      {"-1 234,5", Strain, "between its digits", "Write -1234.5, with nothing"},
      {"1.234.567", Plain, "more than one decimal mark", "Write 1234567, with nothing"},
      {"1'234", Plain, "between its digits", "Write 1234, with nothing"},
      {"1’234.25", Plain, "between its digits", "Write 1234.25, with nothing"},
      {"1.2.3", Plain, "more than one decimal mark", "Use one decimal mark"},
      {"1 5", Plain, "between its digits", "Use one decimal mark"},
      {"1/2", Plain, "is a fraction", "0.5"},
      {"1 1/2", Length, "is a fraction", "0.5"},
      {"2½", Length, "is a fraction", "0.5"},
      {"½", Length, "is a fraction", "0.5"},
      {"5·10^3", Plain, "is a calculation", "5e3"},
      {"5×10³", Resistance, "is a calculation", "5e3"},
      {"10..20", Plain, "more than one", ""},
      {"10 - 20", Plain, "more than one number", "one number"},
      {"10–20", Plain, "more than one number", "one number"},
      {"1:30", Duration, "has a colon", "1 min 30 s"},
      {"±5", Strain, "plus-minus", "alone"},
      {"350 ± 1", Resistance, "plus-minus", "alone"},
      {"- 5", Plain, "space behind its sign", "-5"},
      {"2 mV/V", Resistance, "has the unit of an output", "Enter a resistance"},
      {"350 Ω", Output, "has the unit of a resistance", "Enter an output"},
      {"1000 µm/m", Resistance, "has the unit of a strain", "Enter a resistance"},
      {"5 V", Duration, "has the unit of a voltage", "Enter a time"},
      {"2 s", Frequency, "has the unit of a time", "Enter a frequency"},
      {"5 %", Voltage, "has the unit of a share", "Enter a voltage"},
      {"100 Hz", Power, "has the unit of a frequency", "Enter a power"},
      {"20 °C", Percent, "has the unit of a temperature", "Enter a share"},
      {"3 mm²", Length, "has the unit of a section", "Enter a length"},
      {"293 K", Temperature, "no temperature in degrees Celsius", "20 °C"},
      {"68 °F", Temperature, "no temperature in degrees Celsius", "20 °C"},
      {"4m7", Resistance, "milliohm or megohm", "4M7"},
      {"5m", Resistance, "milliohm or megohm", "MΩ"},
      {"5 parsec", Length, "no unit that fits", "Enter a length"},
  };
  for (const auto& [text, family, what, mend] : refusals) {
    const auto value = parseQuantity(text, family);
    ASSERT_FALSE(value) << text << " became " << *value;
    EXPECT_NE(value.error().what.find(what), std::string::npos) << text << ": " << value.error().what;
    EXPECT_NE(value.error().mend.find(mend), std::string::npos) << text << ": " << value.error().mend;
  }
}

TEST(Notation, GivesTheSectionsOfThePublishedWireTable) {
  std::ifstream table(SHUNTWRIGHT_TESTS_DIR "/reference/copper_awg.csv");
  std::string line;
  std::getline(table, line);
  int rows = 0;
  while (std::getline(table, line)) {
    std::istringstream cells(line);
    std::string kind, size, diameter, area;
    std::getline(cells, kind, ',');
    std::getline(cells, size, ',');
    std::getline(cells, diameter, ',');
    std::getline(cells, area, ',');
    if (kind != "AWG") continue;
    const auto section = parseQuantity("AWG " + size, Area);
    ASSERT_TRUE(section) << line;
    // The table has five places: half a unit of the last one, and a little for its rounding at a half.
    EXPECT_NEAR(*section * 1e6, std::stod(area), 5.1e-6) << line;
    ++rows;
  }
  EXPECT_GE(rows, 10);
}

/// A decimal number as text, drawn digit by digit, and how it is spelt with a comma.
std::string randomDecimal(std::mt19937_64& random) {
  std::string text = random() % 2 ? "-" : "";
  const auto before = 1 + random() % 9, behind = random() % 9;
  for (auto k = before; k > 0; --k) text += static_cast<char>('0' + random() % 10);
  if (behind > 0) text += '.';
  for (auto k = behind; k > 0; --k) text += static_cast<char>('0' + random() % 10);
  if (random() % 4 == 0) text += "e" + std::to_string(static_cast<int>(random() % 41) - 20);
  return text;
}

TEST(Notation, ReadsNumbersAsTheStandardLibraryDoes) {
  // std::from_chars is the peer: the double nearest to the decimal, [charconv] of the C++ standard.
  std::mt19937_64 random(90210);
  for (int round = 0; round < 200000; ++round) {
    std::string text = randomDecimal(random);
    double peer = 0;
    std::from_chars(text.data(), text.data() + text.size(), peer);
    if (round % 2)
      if (const auto point = text.find('.'); point != std::string::npos) text[point] = ',';
    const auto value = parseQuantity(text, Plain);
    ASSERT_TRUE(value) << text << ": " << value.error().what;
    ASSERT_EQ(*value, peer) << text;
  }
}

TEST(Notation, ComesBackInEveryFamilyWithEitherMark) {
  constexpr std::array families = {Resistance,  Output,  Strain,    Voltage, Duration, Length, Area,
                                   Temperature, Percent, Frequency, Power,   Plain,    Named};
  std::mt19937_64 random(4711);
  for (int round = 0; round < 200000; ++round) {
    const UnitFamily family = families[static_cast<std::size_t>(round) % families.size()];
    const std::string drawn = randomDecimal(random);
    double base = 0;
    std::from_chars(drawn.data(), drawn.data() + drawn.size(), base);
    std::string text = formatQuantity(base, family, "kN", 17);
    if (random() % 2)
      if (const auto point = text.find('.'); point != std::string::npos) text[point] = ',';
    const auto back = parseQuantity(text, family, "kN");
    ASSERT_TRUE(back) << text << ": " << back.error().what;
    ASSERT_EQ(*back, base) << text;
    if (family == Percent) continue;  // its base unit has no name: a number alone is in percent
    const std::string inBase = formatInBaseUnit(base, family, "kN", 17);
    const auto again = parseQuantity(inBase, family, "kN");
    ASSERT_TRUE(again) << inBase;
    ASSERT_EQ(*again, base) << inBase;
  }
}

TEST(Notation, ReadsCountsExactly) {
  EXPECT_EQ(*parseCount("12"), 12U);
  EXPECT_EQ(*parseCount(" 007 "), 7U);
  EXPECT_EQ(*parseCount("1e3"), 1000U);
  EXPECT_EQ(*parseCount("12.0"), 12U);
  EXPECT_EQ(*parseCount("18446744073709551615"), UINT64_MAX);
  for (const char* text :
       {"", "twelve", "-1", "1.5", "18446744073709551616", "1,234.5", "1 000", "12 s", "1/2", "1e30"}) {
    const auto count = parseCount(text);
    ASSERT_FALSE(count) << text << " became " << *count;
    EXPECT_FALSE(count.error().what.empty()) << text;
    EXPECT_FALSE(count.error().mend.empty()) << text;
  }
}

}  // namespace
