// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/language.h"

#include <gtest/gtest.h>

#include <atomic>
#include <chrono>

#include "core/assess/verdict.h"
#include "core/units/threads.h"

namespace core {
namespace {

/// A language with three sentences, in another order of words.
std::shared_ptr<const Language> german() {
  auto words = std::make_shared<Language>();
  words->code = "de";
  words->decimalMark = ',';
  words->dayFirst = true;
  words->translate = [](std::string_view english) -> std::string {
    if (english == "{1} of {2} steps") return "von {2} Stufen {1}";
    if (english == "pass") return "bestanden";
    return std::string(english);
  };
  return words;
}

Date dayOf(int year, unsigned month, unsigned day) {
  return Date{std::chrono::year(year), std::chrono::month(month), std::chrono::day(day)};
}

TEST(Language, SaysEnglishByDefault) {
  EXPECT_EQ(language().code, "en");
  EXPECT_EQ(say("{1} of {2} steps", {"3", "9"}), "3 of 9 steps");
  EXPECT_EQ(say("no placeholder"), "no placeholder");
  EXPECT_EQ(say(""), "");
}

TEST(Language, PutsArgumentsWhereTheTranslationWantsThem) {
  const LanguageScope scope(german());
  EXPECT_EQ(say("{1} of {2} steps", {"3", "9"}), "von 9 Stufen 3");
  EXPECT_EQ(say("a sentence that nobody translated: {1}", {"3"}), "a sentence that nobody translated: 3");
}

TEST(Language, LeavesBracesAloneThatNameNoArgument) {
  EXPECT_EQ(say("{n}, {0}, {3}, {}, {1", {"a", "b"}), "{n}, {0}, {3}, {}, {1");
  EXPECT_EQ(say("{99999999999999999999}{2}{1}", {"a", "b"}), "{99999999999999999999}ba");
  EXPECT_EQ(say("{1} and {1}", {"a"}), "a and a");
}

TEST(Language, ArgumentsAreNoPatterns) { EXPECT_EQ(say("{1} {2}", {"{2}", "{1}"}), "{2} {1}"); }

TEST(Language, ScopesNestAndEnd) {
  EXPECT_EQ(verdictWord(Verdict::Pass), "pass");
  {
    const LanguageScope outer(german());
    EXPECT_EQ(verdictWord(Verdict::Pass), "bestanden");
    {
      const LanguageScope inner(english());
      EXPECT_EQ(verdictWord(Verdict::Pass), "pass");
    }
    EXPECT_EQ(currentLanguage()->code, "de");
  }
  EXPECT_EQ(verdictWord(Verdict::Pass), "pass");
}

TEST(Language, NamesOutliveTheirLanguage) {
  std::string_view name;
  {
    const LanguageScope scope(german());
    name = sayName("pass");
  }
  EXPECT_EQ(name, "bestanden");
}

TEST(Language, NamesOfTablesAreSaidWhereTheyAreRead) {
  static constexpr TableName name = sayLater("pass");
  EXPECT_EQ(std::string_view(name), "pass");
  const LanguageScope scope(german());
  EXPECT_EQ(std::string_view(name), "bestanden");
  EXPECT_EQ(name.english(), "pass");
}

TEST(Language, ThreadsSpeakTheLanguageOfWhomTheyWorkFor) {
  const LanguageScope scope(german());
  std::atomic<int> germanWords = 0;
  onThreads(4, [&](unsigned) {
    if (say("{1} of {2} steps", {"3", "9"}) == "von 9 Stufen 3") ++germanWords;
  });
  // Where the system gives fewer threads, fewer have worked; each of them has said it right.
  EXPECT_GE(germanWords, 1);
  onThreads(1, [&](unsigned) { EXPECT_EQ(language().code, "de"); });
}

TEST(Language, NumbersGetTheDecimalMarkAndNothingElse) {
  EXPECT_EQ(shown("1.25"), "1.25");
  const LanguageScope scope(german());
  EXPECT_EQ(shown("1.25"), "1,25");
  EXPECT_EQ(shown("-0.0591 ± 0.0020 mV/V"), "-0,0591 ± 0,0020 mV/V");
  EXPECT_EQ(shown("350 Ω."), "350 Ω.");
  EXPECT_EQ(shown(".5 and 5."), ".5 and 5.");
  EXPECT_EQ(shown(shown("1.25")), "1,25");
  EXPECT_EQ(shown(std::string()), "");
}

TEST(Language, DaysAreWrittenAsTheLanguageDoes) {
  // DIN 5008: day, month, year, separated by points. ISO 8601 elsewhere.
  EXPECT_EQ(shown(dayOf(2026, 11, 6)), "2026-11-06");
  const LanguageScope scope(german());
  EXPECT_EQ(shown(dayOf(2026, 11, 6)), "06.11.2026");
}

}  // namespace
}  // namespace core
