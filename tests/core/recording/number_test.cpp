// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/text/number.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <bit>
#include <charconv>
#include <cmath>
#include <cstdlib>
#include <optional>
#include <random>
#include <string>

namespace {

/// What the fast ways give for a text in a padded buffer, as readers have it; none when they leave it to the
/// exact one.
std::optional<double> fast(const std::string& text, bool isShort) {
  std::string buffer = text + "\n" + std::string(64, '\0');
  double value = 0;
  const char* const begin = buffer.data();
  const char* const behind =
      isShort ? core::scanShortNumber(begin, '.', ',', value) : core::scanNumber(begin, '.', value);
  if (behind != begin + text.size()) return std::nullopt;
  return value;
}

/// All ways to read `text` against the C library, bit for bit.
void expectAsStrtod(const std::string& text) {
  const double expected = std::strtod(text.c_str(), nullptr);
  const auto bits = std::bit_cast<std::uint64_t>(expected);
  for (const bool isShort : {false, true}) {
    const auto value = fast(text, isShort);
    ASSERT_EQ(std::bit_cast<std::uint64_t>(value.value_or(expected)), bits) << text;
  }
  const core::CellNumber number = core::readNumber(text, '.');
  if (!std::isfinite(expected) || (expected != 0 && std::abs(expected) < 0x1p-1022)) return;
  ASSERT_EQ(number.fault, nullptr) << text;
  ASSERT_EQ(std::bit_cast<std::uint64_t>(number.value), bits) << text;
}

std::string digits(std::mt19937_64& random, std::size_t count) {
  std::string text;
  for (std::size_t k = 0; k < count; ++k) text += static_cast<char>('0' + random() % 10);
  return text;
}

TEST(Number, IsTheSameAsTheCLibraryReadsForMillionsOfTexts) {
  std::mt19937_64 random(11);
  std::size_t fastOnes = 0;
  for (int i = 0; i < 2'000'000; ++i) {
    std::string text = random() % 3 == 0 ? "-" : "";
    text += digits(random, random() % 11);
    text += "." + digits(random, 1 + random() % 10);
    if (random() % 8 == 0) text += (random() % 2 ? "e-" : "E") + std::to_string(random() % 30);
    if (random() % 16 == 0) text.insert(text.find('.'), digits(random, 12));
    fastOnes += fast(text, false).has_value();
    expectAsStrtod(text);
    if (HasFatalFailure()) return;
  }
  EXPECT_GT(fastOnes, 1'000'000u);
}

TEST(Number, OfAnyDoubleComesBackFromItsShortestText) {
  std::mt19937_64 random(12);
  for (int i = 0; i < 500'000; ++i) {
    const double value = std::bit_cast<double>(random());
    if (!std::isnormal(value)) continue;
    char text[64];
    *std::to_chars(text, text + 63, value).ptr = '\0';
    const core::CellNumber number = core::readNumber(text, '.');
    ASSERT_EQ(number.fault, nullptr) << text;
    ASSERT_EQ(std::bit_cast<std::uint64_t>(number.value), std::bit_cast<std::uint64_t>(value)) << text;
    expectAsStrtod(text);
    if (HasFatalFailure()) return;
  }
}

// Halfway between two doubles, or as near to it as makes readers fail; numbers of this sort circulate in test
// suites of decimal conversion since V. Paxson, A program for testing IEEE decimal-binary conversion, 1991
// (from memory). The expected value is the C library's.
TEST(Number, IsRightInHardCases) {
  for (const char* text : {"9007199254740993",
                           "9007199254740993.0",
                           "9007199254740992.5",
                           "9007199254740991.5",
                           "0.5000000000000000277",
                           "1.00000000000000011102230246251565",
                           "1.00000000000000011102230246251566",
                           "2.2250738585072014e-308",
                           "1.7976931348623157e308",
                           "8.5e-22",
                           "6.02214076e23",
                           "5e-20",
                           "67e14",
                           "985e15",
                           "7693e-42",
                           "55895e-16",
                           "996622e-44",
                           "7038531e-32",
                           "60419369e-46",
                           "702990899e-20",
                           "6930161142e-48",
                           "25933168707e-13",
                           "123456789012345678",
                           "1234567890123456789",
                           "18446744073709551615",
                           "18446744073709551616",
                           "0.1",
                           "0.3",
                           "123456.7890123456789",
                           "99999999.99999999",
                           "00000000.00000001",
                           "1e22",
                           "1e23",
                           "-0.0",
                           "0.000000000000000000",
                           "12345678.12345678",
                           "9999999999999999999",
                           "3.14159265358979323846264338327950288"}) {
    SCOPED_TRACE(text);
    expectAsStrtod(text);
  }
}

TEST(Number, IsWrittenInManyWays) {
  const std::pair<const char*, double> texts[] = {{".5", 0.5},
                                                  {"5.", 5},
                                                  {"1e-3", 1e-3},
                                                  {"1E+03", 1000},
                                                  {"+2", 2},
                                                  {"-.25", -0.25},
                                                  {"1.5D-3", 1.5e-3},
                                                  {"\xE2\x88\x92"
                                                   "2.5",
                                                   -2.5},
                                                  {"007", 7},
                                                  {"1e3", 1000}};
  for (const auto& [text, value] : texts) {
    const core::CellNumber number = core::readNumber(text, '.');
    EXPECT_EQ(number.fault, nullptr) << text;
    EXPECT_EQ(number.value, value) << text;
  }
  EXPECT_EQ(core::readNumber("1,5E-3", ',').value, 1.5e-3);
  EXPECT_EQ(core::readNumber(",5", ',').value, 0.5);
}

TEST(Number, IsNeverMadeUp) {
  for (const char* text : {"",
                           "-",
                           "+",
                           ".",
                           "1,5",
                           "1 000",
                           "0x10",
                           "1e",
                           "1e+",
                           "++1",
                           "+-1",
                           "--1",
                           "1.2.3",
                           "nan",
                           "inf",
                           "1e400",
                           "1e-400",
                           "12V",
                           "\xE2\x88\x92-1",
                           "1_000"})
    EXPECT_NE(core::readNumber(text, '.').fault, nullptr) << text;
  for (const char* text : {"1,", "1.5", "1,2,3"})
    EXPECT_NE(core::readNumber(text, ',').fault, nullptr) << text;
}

TEST(Number, TakesThousandsSeparatorsThatCanBeNothingElse) {
  const auto value = [](std::string_view cell, char decimal) {
    const core::CellNumber number = core::readNumber(cell, decimal);
    return number.fault ? -1 : number.value;
  };
  EXPECT_EQ(value("1,234.5", '.'), 1234.5);
  EXPECT_EQ(value("1.234,5", ','), 1234.5);
  EXPECT_EQ(value("1 234,5", ','), 1234.5);
  EXPECT_EQ(value("1\xC2\xA0"
                  "234,5",
                  ','),
            1234.5);
  EXPECT_EQ(value("12'345'678.25", '.'), 12345678.25);
  EXPECT_EQ(value("1'234", '.'), 1234);
  EXPECT_EQ(value("-1,234,567", '.'), -1234567);
  for (const std::string_view cell : {"1,234", "1 234", "12,34.5", "1,2345.5", "1,234.", "0,234.5",
                                      "1234,567.5", "1,234 567.5", ",234.5", "1,,234.5"})
    EXPECT_EQ(value(cell, '.'), -1) << cell;
}

// SCPI-99 volume 1, 7.2.1.5: 9.91E37 is not a number, 9.9E37 infinity.
TEST(Number, TakesNoNumberThatStandsForNoneInScpi) {
  for (const std::string_view cell :
       {"9.91e37", "9.91E+37", "-9.91E37", "9.910000000E+37", "+9.9100000000000E+37"})
    EXPECT_STREQ(core::readNumber(cell, '.').fault, "is 'not a number' of SCPI (9.91E37)") << cell;
  for (const std::string_view cell : {"9.9e37", "-9.90000E+37"})
    EXPECT_THAT(core::readNumber(cell, '.').fault, testing::HasSubstr("'infinity' of SCPI")) << cell;
  EXPECT_EQ(core::readNumber("9.92e37", '.').value, 9.92e37);
}

}  // namespace
