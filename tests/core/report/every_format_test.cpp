// SPDX-License-Identifier: GPL-3.0-or-later
// Every example and many random documents, in every format that programs and spreadsheets read. What is well
// formed is decided by others: nlohmann's parser for RFC 8259, the signature of ECMA-376 packages
// (APPNOTE.TXT of ZIP, 4.3.7).

#include <gtest/gtest.h>

#include <filesystem>
#include <nlohmann/json.hpp>

#include "core/document/json_reader.h"
#include "core/practice/sheet.h"
#include "core/recording/file_bytes.h"
#include "core/report/csv.h"
#include "core/report/json.h"
#include "core/report/web_page.h"
#include "core/report/workbook.h"
#include "tests/support/random_document.h"

namespace core {
namespace {

std::string bytesOfDocument(const std::filesystem::path& path) {
  const auto bytes = readRegularFile(path, 64 << 20);
  EXPECT_TRUE(bytes) << path;
  return bytes ? *bytes : std::string();
}

void isWrittenInEveryFormat(const Document& document) {
  const ReportOrder order;
  const auto json = reportJson(document, order);
  ASSERT_TRUE(json) << json.error().text();
  const auto read = nlohmann::json::parse(*json, nullptr, false);
  ASSERT_FALSE(read.is_discarded());
  EXPECT_EQ(read.at("channels").size(), document.channels.size());
  const auto book = reportWorkbook(document, order);
  ASSERT_TRUE(book) << book.error().text();
  EXPECT_EQ(book->substr(0, 4), "PK\x03\x04");
  const std::string page = reportWebPage(reportOf(document, order));
  EXPECT_NE(page.find("</html>"), std::string::npos);
  EXPECT_FALSE(reportCsv(document, order).empty());
}

TEST(EveryFormat, HoldsEveryExample) {
  int found = 0;
  for (const auto& entry :
       std::filesystem::directory_iterator(std::filesystem::path(SHUNTWRIGHT_SOURCE_DIR) / "examples")) {
    if (entry.path().extension() != ".bridgecal") continue;
    SCOPED_TRACE(entry.path().filename());
    const auto document = readDocument(bytesOfDocument(entry.path()));
    ASSERT_TRUE(document) << document.error().text();
    isWrittenInEveryFormat(*document);
    ++found;
  }
  EXPECT_GT(found, 3);
}

TEST(EveryFormat, HoldsTheNewestVersionWithAllThatADocumentMayHave) {
  const auto document =
      readDocument(bytesOfDocument(std::filesystem::path(SHUNTWRIGHT_TESTS_DIR) / "data/version7.bridgecal"));
  ASSERT_TRUE(document) << document.error().text();
  isWrittenInEveryFormat(*document);
}

TEST(EveryFormat, HoldsRandomDocuments) {
  for (std::uint64_t seed = 1; seed <= 40; ++seed) {
    SCOPED_TRACE(seed);
    isWrittenInEveryFormat(support::randomDocument(seed));
  }
}

TEST(PracticeSheetText, HasEveryQuestionAndItsAnswersOnlyWhenWanted) {
  for (const Difficulty difficulty : {Difficulty::First, Difficulty::Further}) {
    const PracticeSheet sheet = practiceSheet(7, 12, difficulty, allQuestionKinds());
    const std::string asked = sheetText(sheet, false), answered = sheetText(sheet, true);
    ASSERT_EQ(sheet.questions.size(), 12u);
    EXPECT_GT(answered.size(), asked.size());
    for (const Question& question : sheet.questions)
      EXPECT_NE(answered.find(answerText(question)), std::string::npos) << answerText(question);
  }
}

}  // namespace
}  // namespace core
