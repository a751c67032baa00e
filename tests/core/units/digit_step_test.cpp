// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/digit_step.h"

#include <gtest/gtest.h>

#include <random>
#include <string>

using namespace core;

namespace {

/// `text` has a bar where the cursor stands, and so has the answer; "none" when nothing can be stepped.
std::string steppedAt(std::string text, long long steps) {
  const std::size_t cursor = text.find('|');
  text.erase(cursor, 1);
  const auto digit = digitAt(text, cursor);
  if (!digit) return "none";
  auto next = stepped(text, *digit, steps);
  return next ? next->text.insert(next->cursor, "|") : "none";
}

// All expectations follow from adding in decimal by hand.
TEST(StepOfADigit, IsTheOneLeftOfTheCursor) {
  EXPECT_EQ(steppedAt("3|50 Ω", 1), "4|50 Ω");
  EXPECT_EQ(steppedAt("35|0 Ω", 1), "36|0 Ω");
  EXPECT_EQ(steppedAt("350| Ω", -1), "349| Ω");
  EXPECT_EQ(steppedAt("|350 Ω", 1), "4|50 Ω") << "before the number it is the first digit";
  EXPECT_EQ(steppedAt("350 Ω|", 1), "351| Ω") << "behind it the last one";
  EXPECT_EQ(steppedAt("174.6|5 kΩ", 1), "174.7|5 kΩ");
  EXPECT_EQ(steppedAt("174.|65 kΩ", 1), "175|.65 kΩ") << "right of the mark it is the digit before it";
  EXPECT_EQ(steppedAt("174|.65 kΩ", -1), "173|.65 kΩ");
}

TEST(StepOfADigit, CarriesOverExactly) {
  EXPECT_EQ(steppedAt("0.1|", 2), "0.3|");
  EXPECT_EQ(steppedAt("9.9|", 1), "10.0|");
  EXPECT_EQ(steppedAt("99|9", 1), "100|9");
  EXPECT_EQ(steppedAt("0,09|5 mV/V", 1), "0,10|5 mV/V");
  EXPECT_EQ(steppedAt("1.00|0", -10), "0.90|0");
  EXPECT_EQ(steppedAt("123456789012.3456|", 10), "123456789012.3466|");
}

TEST(StepOfADigit, GoesThroughZeroAndKeepsTheSign) {
  EXPECT_EQ(steppedAt("1|", -1), "0|");
  EXPECT_EQ(steppedAt("0|", -1), "-1|");
  EXPECT_EQ(steppedAt("-1| µm/m", 1), "0| µm/m");
  EXPECT_EQ(steppedAt("-0.1|", 1), "0.0|") << "no negative zero";
  EXPECT_EQ(steppedAt("+5|", 1), "+6|");
  EXPECT_EQ(steppedAt("\u22125|", -1), "\u22126|") << "the typographic minus stays";
  EXPECT_EQ(steppedAt("-1|00", 2), "1|00");
}

TEST(StepOfADigit, TheCursorWaitsBeforeANumberThatGotShorter) {
  const auto down = stepped("100", 2, -1);
  ASSERT_TRUE(down);
  EXPECT_EQ(down->text, "0");
  EXPECT_EQ(down->cursor, 0U);
  EXPECT_EQ(stepped(down->text, 2, 1)->text, "100") << "the same digit brings it back";
}

TEST(StepOfADigit, KeepsLettersOfIec60062ExponentsAndUnits) {
  EXPECT_EQ(steppedAt("4k7|", 1), "4k8|");
  EXPECT_EQ(steppedAt("4k9|", 1), "5k0|");
  EXPECT_EQ(steppedAt("R47|", 1), "R48|");
  EXPECT_EQ(steppedAt("R99|", 1), "1R00|");
  EXPECT_EQ(steppedAt("47k|", 1), "48|k") << "a letter behind the digits is the unit";
  EXPECT_EQ(steppedAt("1.5e-3|", 1), "1.6|e-3");
  EXPECT_EQ(steppedAt("1.5|e-3 V/V", -1), "1.4|e-3 V/V");
  EXPECT_EQ(steppedAt(".5|", 6), "1.1|");
  EXPECT_EQ(steppedAt("5.|", 1), "6|.");
}

TEST(StepOfADigit, LeavesAloneWhatItCannotStep) {
  EXPECT_EQ(steppedAt("|", 1), "none");
  EXPECT_EQ(steppedAt("none|", 1), "none");
  EXPECT_EQ(steppedAt("AWG 26|", 1), "none");
  EXPECT_EQ(steppedAt("1234567890123456789|", 1), "none") << "19 digits";
  EXPECT_EQ(steppedAt("999999999999999999|", 1), "none") << "would need 19";
}

TEST(StepOfADigit, ThereAndBackIsTheSameText) {
  std::mt19937_64 random(3);
  for (int round = 0; round < 100000; ++round) {
    // No zero at the front: "05" comes back as "5".
    std::string text = std::to_string(1 + random() % 999'999'999);
    if (random() % 2) text.insert(1 + random() % text.size(), random() % 2 ? "." : ",");
    if (random() % 2) text.insert(0, "-");
    text += " mV/V";
    const int digit = *digitAt(text, random() % text.size());
    const auto steps = static_cast<long long>(random() % 21) - 10;
    const auto there = stepped(text, digit, steps);
    ASSERT_TRUE(there) << text;
    const auto back = stepped(there->text, digit, -steps);
    ASSERT_TRUE(back) << there->text;
    ASSERT_EQ(back->text, text) << digit << " by " << steps;
  }
}

}  // namespace
