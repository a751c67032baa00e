// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/notation.h"

#include <gtest/gtest.h>

#include <bit>
#include <cmath>
#include <cstdint>
#include <limits>
#include <random>
#include <string>
#include <vector>

using namespace core;

namespace {

using enum UnitFamily;

struct Case {
  std::string text;
  UnitFamily family;
  double base;
};

/// The literals below are rounded by the compiler, so equality means: nearest double to the decimal.
const std::vector<Case> spellings = {
    {"350", Resistance, 350},
    {"350 Ω", Resistance, 350},
    {"350\u2126", Resistance, 350},
    {"350 ohm", Resistance, 350},
    {"120R", Resistance, 120},
    {"174.65k", Resistance, 174650},
    {"174,65 kΩ", Resistance, 174650},
    {"59k9", Resistance, 59900},  // IEC 60062: the letter stands for the decimal mark
    {"59K9", Resistance, 59900},
    {"4R7", Resistance, 4.7},
    {"R47", Resistance, 0.47},
    {"1M", Resistance, 1e6},
    {"2M21", Resistance, 2.21e6},
    {"1.5 MΩ", Resistance, 1.5e6},
    {"2 GΩ", Resistance, 2e9},
    {"500 mΩ", Resistance, 0.5},
    {"1e3", Resistance, 1000},
    {"1.2E-1 kΩ", Resistance, 120},
    {"59k9 Ω", Resistance, 59900},
    {"2", Output, 2e-3},
    {"1,5 mV/V", Output, 1.5e-3},
    {"500 µV/V", Output, 500e-6},
    {"2 V/V", Output, 2},
    {"1 mV / V", Output, 1e-3},
    {"-1000 \u00B5m/m", Strain, -1000e-6},
    {"-1000 \u03BCm/m", Strain, -1000e-6},
    {"\u22121000", Strain, -1000e-6},
    {"+1000 um/m", Strain, 1000e-6},
    {"1000ue", Strain, 1000e-6},
    {"1000 µε", Strain, 1000e-6},
    {"1.2 mm/m", Strain, 1.2e-3},
    {"0.1 %", Strain, 0.1e-2},
    {"5", Voltage, 5},
    {"500 mV", Voltage, 0.5},
    {"2", Duration, 2},
    {"500 ms", Duration, 0.5},
    {"1.5 min", Duration, 90},
    {"12,5", Length, 12.5},
    {"40 mm", Length, 0.04},
    {"3 cm", Length, 0.03},
    {"10 ft", Length, 3.048},  // the foot is 0.3048 m exactly (international yard and pound agreement, 1959)
    {"0.25", Area, 0.25e-6},
    {"0.25 mm²", Area, 0.25e-6},
    {"0.25mm2", Area, 0.25e-6},
    {"20", Temperature, 20},
    {"-5 °C", Temperature, -5},
    {"20C", Temperature, 20},
    {"1", Percent, 0.01},
    {"0.5 %", Percent, 0.005},
    {"2.05", Plain, 2.05},
    {"1e3", Plain, 1000},
    {" \t\u00A07\u202F ", Plain, 7},
    {".5", Plain, 0.5},
    {"-0", Plain, 0},
};

const std::vector<std::pair<std::string, UnitFamily>> refused = {
    {"", Resistance},
    {"   ", Plain},
    {"abc", Plain},
    {"nan", Plain},
    {"inf", Resistance},
    {"-inf", Plain},
    {"0x10", Plain},
    {"1e999", Plain},
    {"-1e999", Resistance},
    {"1e-999", Plain},
    {"1e308 MΩ", Resistance},
    {"1e99999999999", Plain},
    {"350 V", Resistance},
    {"350 Ωx", Resistance},
    {"350 Ω 2", Resistance},
    {"350 350", Resistance},
    {"1,234.5", Resistance},
    {"1.234,5", Resistance},
    {"1.234.567", Resistance},
    {"1,234,567", Resistance},
    {"1 234", Resistance},
    {"1'234", Resistance},
    {"1\u202F234", Plain},
    {"1_000", Plain},
    {"--5", Plain},
    {"+-5", Plain},
    {"5-", Plain},
    {".", Plain},
    {",", Plain},
    {"-", Plain},
    {"e5", Plain},
    {"5e", Plain},
    {"5e+", Plain},
    {"59k9k", Resistance},
    {"5.9k9", Resistance},
    {"4R7R", Resistance},
    {"k47", Resistance},
    {"59k9", Plain},
    {"4R7", Voltage},
    {"5m", Resistance},
    {"1 MV/V", Output},
    {"20 K", Temperature},
    {"68 °F", Temperature},
    {"AWG", Area},
    {"AWG 41", Area},
    {"AWG -1", Area},
    {"AWG 00", Area},
    {"AWG 2x", Area},
    {"26 AWG", Length},
    {"5²", Area},
    {"5 m in", Duration},
    {"5 %", Plain},
    {"–", Resistance},
    {"5\xff", Plain},
    {std::string("5\0", 2), Plain},
};

double randomFinite(std::mt19937_64& random) {
  for (;;) {
    const auto value = std::bit_cast<double>(random());
    if (std::isfinite(value)) return value;
  }
}

TEST(ParseQuantity, TakesTheSpellingsOfTheTrade) {
  for (const Case& c : spellings) {
    const auto value = parseQuantity(c.text, c.family);
    ASSERT_TRUE(value) << c.text << ": " << value.error().what;
    EXPECT_EQ(*value, c.base) << c.text;
    EXPECT_FALSE(std::signbit(*value) && *value == 0) << c.text;
  }
}

TEST(ParseQuantity, RefusesTheWholeTextWhenAnyOfItIsNotUnderstood) {
  for (const auto& [text, family] : refused) {
    const auto value = parseQuantity(text, family);
    ASSERT_FALSE(value) << text << " became " << *value;
    EXPECT_TRUE(value.error().where.empty()) << text;
    EXPECT_FALSE(value.error().what.empty()) << text;
    EXPECT_FALSE(value.error().mend.empty()) << text;
  }
}

TEST(ParseQuantity, SaysHowToMendTwoDecimalMarks) {
  const auto value = parseQuantity("1,234.5", Resistance);
  ASSERT_FALSE(value);
  EXPECT_EQ(value.error().what, "“1,234.5” has both a point and a comma");
  EXPECT_EQ(value.error().mend, "Write 1234.5, with nothing between the thousands");
}

TEST(ParseQuantity, QuotesWithoutTheSpacesAround) {
  EXPECT_EQ(parseQuantity(" 1e400 ", Resistance).error().what, "“1e400” is too large or too small");
  EXPECT_EQ(parseCount(" 99999999999999999999").error().what, "“99999999999999999999” is too large");
}

TEST(ParseQuantity, TakesAWireGaugeAsItsSection) {
  // ASTM B258 table (from memory): AWG 26 has 0.1288 mm2, AWG 10 5.261 mm2, AWG 0 53.5 mm2; the
  // tolerance is half a unit of the last digit given.
  for (const char* text : {"AWG 26", "26 AWG", "AWG26", "awg 26"}) {
    const auto section = parseQuantity(text, Area);
    ASSERT_TRUE(section) << text;
    EXPECT_NEAR(*section * 1e6, 0.1288, 0.00005) << text;
  }
  EXPECT_NEAR(*parseQuantity("10 AWG", Area) * 1e6, 5.261, 0.0005);
  EXPECT_NEAR(*parseQuantity("AWG 0", Area) * 1e6, 53.5, 0.05);
}

TEST(ParseQuantity, TakesANumberWithTheUnitOfItsOwnField) {
  EXPECT_EQ(*parseQuantity("12,5 kN", Named, "kN"), 12.5);
  EXPECT_EQ(*parseQuantity("12.5kN", Named, "kN"), 12.5);
  EXPECT_EQ(*parseQuantity("12.5", Named, "kN"), 12.5);
  EXPECT_EQ(*parseQuantity("3 \u03BCm/m", Named, "\u00B5m/m"), 3);
  EXPECT_EQ(*parseQuantity("7 e3", Named, "e3"), 7);
  EXPECT_EQ(*parseQuantity("7 5", Named, "5"), 7);
  EXPECT_EQ(*parseQuantity("7e3", Named, "e3"), 7000) << "a number alone stays that number";
  EXPECT_FALSE(parseQuantity("12.5 N", Named, "kN"));
  EXPECT_FALSE(parseQuantity("kN", Named, "kN"));
  EXPECT_FALSE(parseQuantity("12.5 kN", Named, ""));
  EXPECT_EQ(parseQuantity("x", Named, "kN").error().mend, "Enter a number such as 12.5 kN");
}

TEST(ParseQuantity, CutsALongTextInItsMessageBetweenCharacters) {
  std::string novel;
  for (int k = 0; k < 100; ++k) novel += "Ω";
  const auto value = parseQuantity(" " + novel, Plain);
  ASSERT_FALSE(value);
  EXPECT_LT(value.error().what.size(), 100u);
  // 40 bytes of quotation would end inside the 20th sign, which is two bytes long.
  EXPECT_NE(value.error().what.find("ΩΩ…”"), std::string::npos) << value.error().what;
}

TEST(FormatQuantity, WritesTheFieldUnitWithThePrefixOfTheTrade) {
  EXPECT_EQ(formatQuantity(174650, Resistance), "174.65 kΩ");
  EXPECT_EQ(formatQuantity(350, Resistance), "350 Ω");
  EXPECT_EQ(formatQuantity(999.5, Resistance), "999.5 Ω");
  EXPECT_EQ(formatQuantity(1000, Resistance), "1 kΩ");
  EXPECT_EQ(formatQuantity(999.9996, Resistance, {}, 6), "1 kΩ");
  EXPECT_EQ(formatQuantity(1e6, Resistance), "1 MΩ");
  EXPECT_EQ(formatQuantity(0.002, Resistance), "0.002 Ω");
  EXPECT_EQ(formatQuantity(-1000e-6, Strain), "-1000 µm/m");
  EXPECT_EQ(formatQuantity(2e-3, Output), "2 mV/V");
  EXPECT_EQ(formatQuantity(0.005, Percent), "0.5 %");
  EXPECT_EQ(formatQuantity(2, Duration), "2 s");
  EXPECT_EQ(formatQuantity(20, Temperature), "20 °C");
  EXPECT_EQ(formatQuantity(0.1288e-6, Area), "0.1288 mm²");
  EXPECT_EQ(formatQuantity(12.5, Length), "12.5 m");
  EXPECT_EQ(formatQuantity(2.05, Plain), "2.05");
  EXPECT_EQ(formatQuantity(-50, Named, "kN"), "-50 kN");
  EXPECT_EQ(formatQuantity(50, Named, ""), "50");
  EXPECT_EQ(formatQuantity(1.0 / 3, Plain), "0.333333333333");
  EXPECT_EQ(formatQuantity(-0.0, Resistance), "0 Ω");
  EXPECT_EQ(formatQuantity(std::numeric_limits<double>::quiet_NaN(), Strain), "–");
  EXPECT_EQ(formatQuantity(-std::numeric_limits<double>::infinity(), Strain), "–");
}

TEST(FormatNumber, IsPlainInTheMiddleAndScientificAtTheEnds) {
  EXPECT_EQ(formatNumber(0, 6), "0");
  EXPECT_EQ(formatNumber(-0.0, 6), "0");
  EXPECT_EQ(formatNumber(1234567, 3), "1230000");
  EXPECT_EQ(formatNumber(-0.00012345, 4), "-0.0001234");  // the double lies below the half
  EXPECT_EQ(formatNumber(1e-7, 6), "0.0000001");
  EXPECT_EQ(formatNumber(1.5e-8, 6), "1.5e-8");
  EXPECT_EQ(formatNumber(123456789012345, 15), "123456789012345");
  EXPECT_EQ(formatNumber(2e15, 6), "2e15");
  EXPECT_EQ(formatNumber(9.9999, 2), "10");
}

TEST(FormatFixed, NeverWritesANegativeZero) {
  EXPECT_EQ(formatFixed(-0.001, 2), "0.00");
  EXPECT_EQ(formatFixed(-0.0, 0), "0");
  EXPECT_EQ(formatFixed(-0.006, 2), "-0.01");
  EXPECT_EQ(formatFixed(1999.999, 1), "2000.0");
  EXPECT_EQ(formatFixed(std::numeric_limits<double>::infinity(), 1), "–");
}

TEST(FormatFixed, IsScientificWhereItsDigitsWouldFillAPage) {
  EXPECT_EQ(formatFixed(999999999999999, 2), "999999999999999.00");
  EXPECT_EQ(formatFixed(-1e15, 2), "-1e15");
  EXPECT_EQ(formatFixed(1.23456789e300, 50), "1.23457e300");
  EXPECT_EQ(formatFixed(-std::numeric_limits<double>::max(), 50), "-1.79769e308");
  EXPECT_EQ(formatFixed(-99999999999999.5, 50).size(), 1u + 14u + 1u + 50u);
}

TEST(FormatQuantity, ComesBackAsTheSameDouble) {
  // Any double has at most 17 significant digits (IEEE 754 binary64), so 17 must always suffice.
  std::mt19937_64 random(20240607);
  for (int round = 0; round < 20000; ++round) {
    const auto family = static_cast<UnitFamily>(round % 11);
    const double base = randomFinite(random);
    const std::string text = formatQuantity(base, family, "kN", 17);
    const auto back = parseQuantity(text, family, "kN");
    ASSERT_TRUE(back) << text << ": " << back.error().what;
    ASSERT_EQ(*back, base) << text;
  }
}

TEST(FormatQuantity, ComesBackFromFifteenDigitsWhenTheValueHasNoMore) {
  std::mt19937_64 random(7);
  std::uniform_int_distribution<std::int64_t> digits(-999'999'999'999'999, 999'999'999'999'999);
  std::uniform_int_distribution<int> exponent(-30, 15);
  for (int round = 0; round < 20000; ++round) {
    const auto family = static_cast<UnitFamily>(round % 11);
    const double base = std::stod(std::to_string(digits(random)) + "e" + std::to_string(exponent(random)));
    const std::string text = formatQuantity(base, family, {}, 15);
    const auto back = parseQuantity(text, family);
    ASSERT_TRUE(back) << text;
    ASSERT_EQ(*back, base) << text;
  }
}

TEST(ParseQuantity, NeverReturnsAnythingButAFiniteNumberForRandomText) {
  std::mt19937_64 random(11);
  const std::vector<std::string> pieces = {"1", "0", "9", ".",   ",", "-",    "+",   "e",
                                           "E", "k", "R", "M",   " ", "Ω",    "µ",   "m",
                                           "V", "/", "%", "AWG", "x", "\xff", "inf", "nan"};
  int taken = 0;
  for (int round = 0; round < 200000; ++round) {
    std::string text;
    for (auto left = random() % 9; left > 0; --left) text += pieces[random() % pieces.size()];
    const auto value = parseQuantity(text, static_cast<UnitFamily>(round % 11), "kN");
    if (!value) continue;
    ++taken;
    ASSERT_TRUE(std::isfinite(*value)) << text;
    ASSERT_TRUE(text.find_first_of("0123456789") != std::string::npos) << text;
  }
  EXPECT_GT(taken, 1000) << "the texts are too wild to test anything";
}

}  // namespace
