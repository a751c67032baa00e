// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "core/recording/layout.h"

namespace {

using core::choicesFromText;
using core::LayoutChoices;
using core::textOf;
using testing::HasSubstr;

std::string refusal(std::string_view text) {
  const auto choices = choicesFromText(text);
  return choices ? "taken" : choices.error().text();
}

TEST(LayoutChoices, AreWrittenInWords) {
  LayoutChoices choices;
  choices.encoding = core::TextEncoding::Latin1;
  choices.separator = ';';
  choices.decimal = ',';
  choices.firstRow = 12;
  choices.nameLine = 10;
  choices.unitLine = 0;
  choices.timeColumn = 0;
  choices.timeForm = core::TimeForm::Milliseconds;
  choices.dateOrder = core::DateOrder::DayMonthYear;
  choices.units[2] = "kN";
  EXPECT_EQ(textOf(choices),
            "encoding=latin-1 separator=semicolon decimal=comma first-row=12 names=10 units=none time=1 "
            "time-form=ms date-order=dmy unit.3=kN");
  EXPECT_EQ(textOf({}), "");
  EXPECT_TRUE(choicesFromText("  ")->empty());
}

TEST(LayoutChoices, KeepUnitsWithBlanksSignsAndOtherScripts) {
  LayoutChoices choices;
  choices.units = {{0, "N m"}, {1, "% = a lot"}, {2, ""}, {3, "\xC2\xB5m/m\n\x7F"}};
  EXPECT_EQ(textOf(choices).find('\n'), std::string::npos);
  const auto back = choicesFromText(textOf(choices));
  ASSERT_TRUE(back) << back.error().text();
  EXPECT_EQ(*back, choices);
}

/// Any choices that can be made.
LayoutChoices anyChoices(std::mt19937_64& random) {
  const auto below = [&](std::uint64_t n) { return random() % n; };
  LayoutChoices choices;
  if (below(2)) choices.encoding = static_cast<core::TextEncoding>(below(4));
  if (below(2)) choices.separator = ",;\t| "[below(5)];
  if (below(2)) choices.decimal = ".,"[below(2)];
  if (below(2)) choices.firstRow = 1 + below(1U << 20U);
  if (below(2)) choices.nameLine = below(5);
  if (below(2)) choices.unitLine = below(5);
  if (below(2)) choices.timeColumn = below(4096);
  if (below(2)) choices.timeForm = static_cast<core::TimeForm>(below(7));
  if (below(2)) choices.dateOrder = static_cast<core::DateOrder>(below(3));
  if (below(2))
    choices.rate_Hz =
        std::ldexp(1 + static_cast<double>(random() >> 12U) * 0x1p-52, static_cast<int>(below(200)) - 100);
  for (std::uint64_t k = below(4); k > 0; --k) {
    std::string unit;
    for (std::uint64_t i = below(8); i > 0; --i)
      below(4) ? unit += static_cast<char>(below(128)) : unit += "\xC2\xB5";  // MICRO SIGN
    choices.units[below(5000)] = unit;
  }
  return choices;
}

TEST(LayoutChoices, ComeBackExactlyAsTheyWere) {
  std::mt19937_64 random(5);
  for (int i = 0; i < 20000; ++i) {
    const LayoutChoices choices = anyChoices(random);
    const auto back = choicesFromText(textOf(choices));
    ASSERT_TRUE(back) << back.error().text();
    ASSERT_EQ(*back, choices) << textOf(choices);
  }
}

TEST(LayoutChoices, NameTheWordThatIsNotKnownAndWhatMayStandThere) {
  EXPECT_THAT(refusal("sep=comma"), testing::AllOf(HasSubstr("sep=comma"), HasSubstr("separator=")));
  EXPECT_THAT(refusal("separator=dot"),
              testing::AllOf(HasSubstr("separator=dot"), HasSubstr("comma, semicolon, tab, bar, blanks")));
  EXPECT_THAT(refusal("decimal"), HasSubstr("not known"));
  EXPECT_THAT(refusal("time=0"), HasSubstr("count from 1"));
  EXPECT_THAT(refusal("time=none"), HasSubstr("count from 1"));
  EXPECT_THAT(refusal("first-row=-3"), HasSubstr("count from 1"));
  EXPECT_THAT(refusal("rate=0"), HasSubstr("above 0"));
  EXPECT_THAT(refusal("rate=inf"), HasSubstr("above 0"));
  EXPECT_THAT(refusal("rate=5Hz"), HasSubstr("above 0"));
  EXPECT_THAT(refusal("unit.0=kN"), HasSubstr("count from 1"));
  EXPECT_THAT(refusal("unit.1=%4"), HasSubstr("two hexadecimal digits"));
  EXPECT_THAT(refusal("unit.1=%FF"), HasSubstr("UTF-8"));
  EXPECT_THAT(refusal("unit.1=\xB5m/m"), HasSubstr("UTF-8"));
  EXPECT_THAT(refusal("time=1 time=2"), HasSubstr("twice"));
  EXPECT_THAT(refusal("unit.1=N unit.1=N"), HasSubstr("twice"));
}

}  // namespace
