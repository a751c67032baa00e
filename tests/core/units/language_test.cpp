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
  words->dayPattern = "dd.MM.yyyy";
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

/// Polish, which has three forms: one; two to four but not twelve to fourteen; all others. From Unicode CLDR,
/// "Language Plural Rules", from memory.
std::shared_ptr<const Language> polish() {
  auto words = std::make_shared<Language>();
  words->code = "pl";
  words->translateCount = [](std::string_view english, std::size_t n) -> std::string {
    if (english != "{n} steps of {1}") return "";
    const bool isFew = n % 10 >= 2 && n % 10 <= 4 && (n % 100 < 12 || n % 100 > 14);
    return n == 1 ? "{1}: {n} krok" : isFew ? "{1}: {n} kroki" : "{1}: {n} kroków";
  };
  return words;
}

TEST(Language, CountsHaveThePluralFormOfTheLanguage) {
  const auto steps = [](std::size_t n) { return sayCount(n, "{n} step of {1}", "{n} steps of {1}", {"A"}); };
  EXPECT_EQ(steps(0), "0 steps of A");
  EXPECT_EQ(steps(1), "1 step of A");
  EXPECT_EQ(steps(2), "2 steps of A");
  const LanguageScope scope(polish());
  EXPECT_EQ(steps(1), "A: 1 krok");
  EXPECT_EQ(steps(3), "A: 3 kroki");
  EXPECT_EQ(steps(12), "A: 12 kroków");
  EXPECT_EQ(steps(22), "A: 22 kroki");
  EXPECT_EQ(sayCount(1, "{n} step", "{n} steps"), "1 step") << "not translated";
}

TEST(Language, ListsAreJoinedAsTheLanguageDoes) {
  EXPECT_EQ(sayAll({}), "");
  EXPECT_EQ(sayAll({"A"}), "A");
  EXPECT_EQ(sayAll({"A", "B"}), "A and B");
  EXPECT_EQ(sayAll({"A", "B", "C"}), "A, B and C");
  EXPECT_EQ(sayAnyOf({"A", "B", "C"}), "A, B or C");
}

TEST(Language, DaysAreWrittenAsTheLanguageDoes) {
  // DIN 5008: day, month, year, separated by points. ISO 8601 elsewhere.
  EXPECT_EQ(shown(dayOf(2026, 11, 6)), "2026-11-06");
  const LanguageScope scope(german());
  EXPECT_EQ(shown(dayOf(2026, 11, 6)), "06.11.2026");
}

}  // namespace
}  // namespace core
