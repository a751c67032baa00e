// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <memory>
#include <regex>
#include <string>

#include "core/document/content.h"
#include "core/document/json_reader.h"
#include "core/document/json_writer.h"
#include "core/units/language.h"
#include "tests/support/random_document.h"

using namespace core;

namespace json_language_test {

/// Says everything in marks that no file has, with another decimal mark and order of the day.
std::shared_ptr<const Language> another() {
  auto words = std::make_shared<Language>();
  words->code = "xx";
  words->decimalMark = ',';
  words->dayPattern = "dd.MM.yyyy";
  words->translate = [](std::string_view english) { return "‹" + std::string(english) + "›"; };
  words->translateCount = [](std::string_view english, std::size_t) {
    return "‹" + std::string(english) + "›";
  };
  return words;
}

/// A file goes from one laboratory to another, and what is signed is signed in every language.
TEST(DocumentLanguage, TheFileIsTheSameInEveryLanguage) {
  std::size_t ends = 0;
  for (std::uint64_t seed = 0; seed < 100; ++seed) {
    const Document document = support::randomDocument(seed);
    const auto english = writeDocument(document);
    ASSERT_TRUE(english) << english.error().text();
    for (std::size_t at = english->find(" end 1\""); at != std::string::npos;
         at = english->find(" end 1\"", at + 1))
      ++ends;
    const auto signedFor = fingerprintOf(document);
    ASSERT_TRUE(signedFor);
    const LanguageScope scope(another());
    const auto other = writeDocument(document);
    ASSERT_TRUE(other) << "seed " << seed << ": " << other.error().text();
    EXPECT_EQ(*other, *english) << "seed " << seed;
    const auto otherSignedFor = fingerprintOf(document);
    ASSERT_TRUE(otherSignedFor);
    EXPECT_EQ(*otherSignedFor, *signedFor) << "seed " << seed;
  }
  EXPECT_GT(ends, 10u) << "the ends of resistors, which sentences name in words";
}

TEST(DocumentLanguage, WhatIsWrongIsSaidWithoutAnEnglishWord) {
  const std::string whole = *writeDocument(support::randomDocument(1));
  const std::string broken = std::regex_replace(whole, std::regex("\"title\": \"[^\n]*"), "\"title\": 5,");
  const LanguageScope scope(another());
  const auto document = readDocument(broken);
  ASSERT_FALSE(document);
  EXPECT_EQ(document.error().what, "‹it is ‹a number› where ‹a text› belongs›") << document.error().text();
}

}  // namespace json_language_test
