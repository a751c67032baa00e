// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/report_template.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/document/edits.h"
#include "core/report/report.h"
#include "tests/core/report/words.h"

namespace core {
namespace {

using testing::HasSubstr;
using testing::Not;

std::string replaced(std::string text, const std::string& from, const std::string& to) {
  const std::size_t at = text.find(from);
  EXPECT_NE(at, std::string::npos) << from;
  return text.replace(at, from.size(), to);
}

TEST(ReportTemplate, ReadyOnesComeBackFromTheirText) {
  ASSERT_EQ(readyTemplates().size(), 4U);
  EXPECT_EQ(readyTemplates().front().parts.size(), reportPartCount);
  for (ReportTemplate one : readyTemplates()) {
    one.language = "de";
    one.localNumbers = one.latestCheckOnly = true;
    one.channels = ReportChannels::NotPassing;
    const auto read = readTemplate(writeTemplate(one));
    ASSERT_TRUE(read) << read.error().text();
    EXPECT_EQ(*read, one);
    EXPECT_FALSE(templatePurpose(one).empty());
  }
}

TEST(ReportTemplate, IsFoundByItsNameWhateverTheCase) {
  ASSERT_TRUE(readyTemplate("bench SHEET"));
  EXPECT_EQ(readyTemplate("bench SHEET")->name, "Bench sheet");
  EXPECT_FALSE(readyTemplate("bench"));
}

TEST(ReportTemplate, KeysOfPartsAreReadBack) {
  for (std::size_t k = 0; k < reportPartCount; ++k) {
    const auto part = static_cast<ReportPart>(k);
    EXPECT_EQ(reportPartFromKey(reportPartKey(part)), part);
    EXPECT_FALSE(reportPartName(part).empty());
  }
}

TEST(ReportTemplate, WhatIsWrongIsNamedWithLineAndField) {
  const std::string good = writeTemplate(readyTemplates().front());
  struct Case {
    const char *from, *to, *where, *what;
  };
  const Case cases[] = {
      {"\"cover\"", "\"covers\"", "line 6, parts[0]", "there is no part “covers”"},
      {"\"contents\"", "\"cover\"", "line 7, parts[1]", "the part “cover” is named twice"},
      {"\"Full record\"", "\"\"", "line 4, name", "the template has no name"},
      {"\"en\"", "\"French\"", "line 28, language", "“French” is no code of a language"},
      {"\"version\": 1", "\"version\": 2", "line 3, version",
       "this version of report templates is not known"},
      {"-template", "", "line 2, format", "it is not a report template"},
      {"\"all\"", "true", "line 26, channels", "a text belongs"},
  };
  for (const Case& one : cases) {
    const auto read = readTemplate(replaced(good, one.from, one.to));
    ASSERT_FALSE(read) << one.to;
    EXPECT_EQ(read.error().where, one.where);
    EXPECT_THAT(read.error().what, HasSubstr(one.what));
  }
  EXPECT_FALSE(readTemplate(replaced(good, "\"local_numbers\"", "\"numbers\"")));
  EXPECT_FALSE(readTemplate("{"));
}

TEST(ReportTemplate, WhatIsLeftOutIsSaidAndNotThere) {
  const Document document = withChannelInserted({}, 0, Channel{});
  ReportOrder order;
  order.content.parts = {ReportPart::Plan};
  const std::string words = Words(reportOf(document, order));
  EXPECT_THAT(words, HasSubstr("Left out of this report: cover, contents, summary,"));
  EXPECT_THAT(words, Not(HasSubstr("Signatures")));
  for (const std::string& caution : cautions()) EXPECT_THAT(words, HasSubstr(caution));
  EXPECT_THAT(std::string(Words(reportOf(document))), HasSubstr("Nothing of the record is left out."));
}

TEST(ReportTemplate, ChannelsThatAreLeftOutAreNamed) {
  Document document;
  for (const char* name : {"TP-01", "TP-02"}) {
    Channel channel;
    channel.name = name;
    document = withChannelInserted(document, document.channels.size(), channel);
  }
  ReportOrder order;
  order.content.channels = ReportChannels::Chosen;
  order.channels = {1};
  const std::string words = Words(reportOf(document, order));
  EXPECT_THAT(words, HasSubstr("Channels left out: TP-01."));
  EXPECT_THAT(words, HasSubstr("Channel TP-02"));
  EXPECT_THAT(words, Not(HasSubstr("Channel TP-01")));
}

// Decimal mark and order of day, month and year as DIN 5008 writes them (from memory).
TEST(ReportTemplate, NumbersAndDaysAreTheReadersOnlyWhenAskedFor) {
  Channel channel;
  channel.setup.shunts = {{"R1", Resistance(174650), Node::Arm1Begin, Node::Arm1End, Resistance(0)}};
  channel.setup.sequence = {{"on", {0}, Duration(2)}};
  const Document document = withChannelInserted({}, 0, channel);
  auto german = std::make_shared<Language>();
  german->code = "de";
  german->decimalMark = ',';
  german->dayPattern = "dd.MM.yyyy";
  ReportOrder order;
  order.language = german;
  order.printed = std::chrono::year(2031) / 5 / 4;
  std::string words = Words(reportOf(document, order));
  EXPECT_THAT(words, HasSubstr("174.65 kΩ"));
  EXPECT_THAT(words, HasSubstr("2031-05-04"));
  order.content.localNumbers = true;
  words = Words(reportOf(document, order));
  EXPECT_THAT(words, HasSubstr("174,65 kΩ"));
  EXPECT_THAT(words, HasSubstr("04.05.2031"));
  EXPECT_THAT(words, Not(HasSubstr("174.65")));
}

}  // namespace
}  // namespace core
