// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/search/targets.h"

#include <gmock/gmock.h>

using namespace core;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

namespace {

std::string refusal(std::string_view text) {
  const auto levels = levelsFromText(text, Bridge{});
  EXPECT_FALSE(levels);
  return levels ? std::string() : levels.error().text();
}

TEST(Targets, AreEquallySpacedUpToTheGreatest) {
  EXPECT_THAT(equalLevels(1500, 3, true, true), ElementsAre(500, 1000, 1500, -500, -1000, -1500));
  EXPECT_THAT(equalLevels(1500, 2, false, true), ElementsAre(-750, -1500));
  EXPECT_THAT(equalLevels(1500, 0, true, true), IsEmpty());
}

TEST(Targets, AreSharesOfARange) {
  EXPECT_THAT(levelsByShare(2000, {0.5, 0.25, 1}, true, false), ElementsAre(500, 1000, 2000));
}

TEST(Targets, AreReadInTheTradesNotation) {
  EXPECT_THAT(*levelsFromText("500, 1000; -1000 µm/m", Bridge{}), ElementsAre(500, 1000, -1000));
  EXPECT_THAT(*levelsFromText(" 500; 1000;-1000 ", Bridge{}), ElementsAre(500, 1000, -1000));
  EXPECT_THAT(*levelsFromText("0,5; 1,25;", Bridge{}), ElementsAre(0.5, 1.25));
  EXPECT_THAT(*levelsFromText("500, 1000,", Bridge{}), ElementsAre(500, 1000));
  EXPECT_THAT(*levelsFromText("500,1000,-1000", Bridge{}), ElementsAre(500, 1000, -1000));
  EXPECT_THAT(*levelsFromText("500,-500", Bridge{}), ElementsAre(500, -500));
  EXPECT_THAT(*levelsFromText("0,5;1", Bridge{}), ElementsAre(0.5, 1));
  Bridge transducer;
  transducer.type = BridgeType::Transducer;
  transducer.rating.loadUnit = "kN";
  EXPECT_THAT(*levelsFromText("12.5 kN; -5", transducer), ElementsAre(12.5, -5));
}

TEST(Targets, AreRefusedWithTheWordAtFault) {
  EXPECT_THAT(refusal("500; ten"), HasSubstr("ten"));
  EXPECT_THAT(refusal("500; 0"), HasSubstr("zero"));
  EXPECT_THAT(refusal("500; 1.5e309"), HasSubstr("too large"));  // a strain that a double holds, 1e6 times
  EXPECT_THAT(refusal("500; 500"), HasSubstr("twice"));
  EXPECT_THAT(refusal(""), HasSubstr("levels"));
  EXPECT_THAT(refusal("500,1000"), HasSubstr("as one number and as two"));
  EXPECT_THAT(refusal("0,5"), HasSubstr("as one number and as two"));
  EXPECT_THAT(refusal("500,ten"), HasSubstr("ten"));
  EXPECT_THAT(refusal("1;;2"), HasSubstr("levels"));
}

}  // namespace
