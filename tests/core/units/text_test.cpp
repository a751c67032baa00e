// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/text.h"

#include <gtest/gtest.h>

#include <string>

using namespace core;

namespace {

TEST(FirstInvalidUtf8, TakesTheBordersOfRfc3629) {
  // RFC 3629 section 4: first and last character of each length and beside the surrogates.
  for (const char* text : {"", "\x7F", "\xC2\x80", "\xDF\xBF", "\xE0\xA0\x80", "\xED\x9F\xBF", "\xEE\x80\x80",
                           "\xEF\xBF\xBF", "\xF0\x90\x80\x80", "\xF4\x8F\xBF\xBF"})
    EXPECT_FALSE(firstInvalidUtf8(text)) << text;
  EXPECT_FALSE(firstInvalidUtf8(std::string(3, '\0')));
}

TEST(FirstInvalidUtf8, FindsWhatRfc3629Forbids) {
  // RFC 3629 sections 3 and 10: stray, overlong, surrogate, too great, cut off.
  for (const char* text :
       {"\x80", "\xC0\x80", "\xC1\xBF", "\xE0\x9F\xBF", "\xED\xA0\x80", "\xF0\x8F\xBF\xBF",
        "\xF4\x90\x80\x80", "\xF5\x80\x80\x80", "\xFF", "\xC2", "\xE2\x82", "\xF0\x90\x80", "\xC2g"})
    EXPECT_EQ(firstInvalidUtf8(std::string("ab") + text), 2u) << text;
}

TEST(BeginningOf, HoldsWholeCharactersAlone) {
  EXPECT_EQ(beginningOf("350 Ω", 6), "350 Ω");
  EXPECT_EQ(beginningOf("350 Ω", 5), "350 ");
  EXPECT_EQ(beginningOf("Ω", 0), "");
}

TEST(Lower, LeavesWhatIsNoLetterOfAscii) { EXPECT_EQ(lower("Z-7 [Ω] Ä"), "z-7 [Ω] Ä"); }

TEST(InQuotes, CutsBetweenCharacters) {
  EXPECT_EQ(inQuotes("350 Ω"), "“350 Ω”");
  EXPECT_EQ(inQuotes("ΩΩΩ", 4), "“ΩΩ…”");
  EXPECT_EQ(inQuotes("ΩΩΩ", 5), "“ΩΩ…”");
  EXPECT_EQ(inQuotes("\x80\x80\x80", 1), "“…”");
}

}  // namespace
