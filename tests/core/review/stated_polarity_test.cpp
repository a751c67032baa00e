// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/review/stated_polarity.h"

#include <gtest/gtest.h>

namespace core {
namespace {

TEST(StatedPolarity, ASignBeforeANumberAtTheStartOrAloneSaysIt) {
  for (const char* text : {"+1", "+ 1", "step +2", "R1 +1000 µm/m", "R1 (+)", "R1 +", "+", "+.5", "+ve",
                           "[+1]", "+R3", "±0, +1"})
    EXPECT_EQ(statedPolarity(text), Polarity::Positive) << text;
  for (const char* text :
       {"-1", "− 1", "-1000 µm/m", "R1 -1000", "shunt (−)", "R1 −", "−2", "-ve side", "-R3"})
    EXPECT_EQ(statedPolarity(text), Polarity::Negative) << text;
}

TEST(StatedPolarity, AHyphenOrPlusInsideOrBetweenWordsIsNoSign) {
  for (const char* text :
       {"TP-01", "R1 on arm 2", "S-104", "R1 + R2", "R1 - first", "10-20", "P+ to S-", "±1", "+-1", "zero",
        "", "2-wire", "332k on arm 1", "LC-1 +/- 5", "a–b", "50k+", "3 x 4"})
    EXPECT_EQ(statedPolarity(text), Polarity::None) << text;
}

TEST(StatedPolarity, WordsSayItWholeAndInAnyCase) {
  for (const char* text :
       {"plus", "Positive 1", "TENSION", "R1, tension", "tensile", "up 3", "Up", "shunt (up)"})
    EXPECT_EQ(statedPolarity(text), Polarity::Positive) << text;
  for (const char* text : {"minus 2", "negative", "Compression: 1000", "compressive", "down", "R1 down"})
    EXPECT_EQ(statedPolarity(text), Polarity::Negative) << text;
  for (const char* text : {"upper skin", "setup", "set-up", "surplus", "tensioner", "downstream", "warm-up"})
    EXPECT_EQ(statedPolarity(text), Polarity::None) << text;
}

TEST(StatedPolarity, AWordBeforeAPlaceNamesThePlace) {
  // A shunt over the gauge that is compressed reads as tension.
  EXPECT_EQ(statedPolarity("R1 on the compression gauge"), Polarity::None);
  EXPECT_EQ(statedPolarity("tension side"), Polarity::None);
  EXPECT_EQ(statedPolarity("+1 on the compression gauge"), Polarity::Positive);
}

TEST(StatedPolarity, TheStrongerWordCountsAndAContradictionSaysNothing) {
  EXPECT_EQ(statedPolarity("+2, coming down"), Polarity::Positive);
  EXPECT_EQ(statedPolarity("negative, up again"), Polarity::Negative);
  EXPECT_EQ(statedPolarity("plus and minus"), Polarity::None);
  EXPECT_EQ(statedPolarity("+1 to -1"), Polarity::None);
  EXPECT_EQ(statedPolarity("up and down"), Polarity::None);
}

TEST(StatesLoad, OnlyWhereAWordForALoadSaysIt) {
  for (const char* text : {"tension", "R1, compression", "tensile 2, up"})
    EXPECT_TRUE(statesLoad(text)) << text;
  for (const char* text : {"+1, tension", "up", "minus", "tension side", "tension and compression", "zero"})
    EXPECT_FALSE(statesLoad(text)) << text;
}

TEST(StatedPolarity, TurningRoundChangesWhatIsWrongAndNothingElse) {
  EXPECT_EQ(withPolarityTurned("+1", Polarity::Positive), "-1");
  EXPECT_EQ(withPolarityTurned("R1 (−)", Polarity::Negative), "R1 (+)");
  EXPECT_EQ(withPolarityTurned("+2, coming down", Polarity::Positive), "-2, coming down");
  EXPECT_EQ(withPolarityTurned("Tension 1, TENSION 2, tension 3", Polarity::Positive),
            "Compression 1, COMPRESSION 2, compression 3");
  EXPECT_EQ(withPolarityTurned("TP-01 minus", Polarity::Negative), "TP-01 plus");
  EXPECT_EQ(withPolarityTurned("TP-01 minus", Polarity::Positive), "TP-01 minus");
}

}  // namespace
}  // namespace core
