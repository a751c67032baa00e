// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/day_words.h"

#include <gtest/gtest.h>

#include <memory>
#include <string>

#include "core/units/language.h"

namespace core {
namespace {

std::string readAs(std::string_view text) {
  const auto day = dayFromWords(text);
  return !day ? day.error().mend : *day ? dateText(**day) : "none";
}

TEST(DayWords, ADayIsTakenAsFilesHaveIt) {
  EXPECT_EQ(readAs("2026-11-25"), "2026-11-25");
  EXPECT_EQ(readAs("  2024-02-29 "), "2024-02-29");
  EXPECT_EQ(readAs(""), "none");
  EXPECT_EQ(readAs(" \t"), "none");
}

TEST(DayWords, WhatIsNoDayOfTheCalendarIsRefusedWithAnExample) {
  for (const char* text : {"2027-02-29", "2026-13-01", "25.11.2026", "11/25/2026", "today", "2026-11-25x"})
    EXPECT_EQ(readAs(text), "Enter it as in 2026-11-25") << text;
  EXPECT_EQ(dayFromWords("31.02.2026").error().what, "“31.02.2026” is no day");
}

TEST(DayWords, ADayIsTakenAsTheLanguageWritesIt) {
  auto words = std::make_shared<Language>();
  words->dayPattern = "dd.MM.yyyy";
  const LanguageScope scope(words);
  EXPECT_EQ(readAs("25.11.2026"), "2026-11-25");
  EXPECT_EQ(readAs("5.1.2027"), "2027-01-05");
  EXPECT_EQ(readAs("2026-11-25"), "2026-11-25");
  for (const char* text : {"31.02.2026", "25.11.26", "11.25.2026", "25.11.2026.", "25.11.", "-1.1.2026"})
    EXPECT_EQ(readAs(text), "Enter it as in 25.11.2026") << text;
}

}  // namespace
}  // namespace core
