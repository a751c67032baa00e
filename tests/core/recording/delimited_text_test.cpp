// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/text/delimited_text.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/stat.h>

#include <clocale>
#include <fstream>

#include "tests/support/german_locale.h"
#include "tests/support/text_file.h"

namespace {

using core::Recording;
using testing::ElementsAre;
using testing::HasSubstr;

std::vector<double> times(const Recording& recording) {
  std::vector<double> list;
  for (std::size_t k = 0; k < recording.time.size(); ++k) list.push_back(recording.time[k]);
  return list;
}

core::Result<Recording> read(std::string_view text, std::string_view choices = "") {
  const test::TextFile file(text);
  const auto chosen = core::choicesFromText(choices);
  if (!chosen) return chosen.error();
  return core::readText(file.path(), *chosen);
}

Recording mustRead(std::string_view text, std::string_view choices = "") {
  const auto recording = read(text, choices);
  if (!recording) throw std::runtime_error(recording.error().text());
  for (const auto& column : recording->columns) EXPECT_EQ(column.values.size(), recording->time.size());
  return *recording;
}

std::string refusal(std::string_view text, std::string_view choices = "") {
  const auto recording = read(text, choices);
  return recording ? "read" : recording.error().text();
}

TEST(DelimitedText, ReadsCommasWithPoint) {
  const Recording rec = mustRead("Time [s],TP-01 (um/m)\n0.0,1.5\n0.1,-2e3\n");
  EXPECT_THAT(times(rec), ElementsAre(0.0, 0.1));
  ASSERT_EQ(rec.columns.size(), 1u);
  EXPECT_EQ(rec.columns[0].name, "TP-01");
  EXPECT_EQ(rec.columns[0].unit, "um/m");
  EXPECT_THAT(rec.columns[0].values, ElementsAre(1.5, -2000.0));
  EXPECT_EQ(rec.timeSource, "column 'Time'");
}

TEST(DelimitedText, ReadsSemicolonsTabsAndBlanksWithPointOrComma) {
  const std::pair<char, std::string_view> files[] = {
      {';', "t;a;b\n0;1.5;2\n0.5;-1;3\n"},        {';', "Zeit;a;b\n0;1,5;2\n0,5;-1;3\n"},
      {'\t', "t\ta\tb\n0\t1.5\t2\n0.5\t-1\t3\n"}, {'\t', "t\ta\tb\n0\t1,5\t2\n0,5\t-1\t3\n"},
      {' ', "t a b\n  0   1.5 2\n  0.5  -1 3\n"}, {' ', "t a b\n  0   1,5 2\n  0,5  -1 3 \n"},
      {',', "t, a, b\n0, 1.5, 2\n0.5, -1, 3\n"}};
  for (const auto& [separator, text] : files) {
    SCOPED_TRACE(std::string(text));
    const Recording rec = mustRead(text);
    EXPECT_THAT(times(rec), ElementsAre(0.0, 0.5));
    ASSERT_EQ(rec.columns.size(), 2u);
    EXPECT_THAT(rec.columns[0].values, ElementsAre(1.5, -1.0));
    EXPECT_THAT(rec.columns[1].values, ElementsAre(2.0, 3.0));
    EXPECT_EQ(rec.linesSkipped, 0u);
  }
}

TEST(DelimitedText, ReadsEveryLineEndAndAByteOrderMark) {
  for (const std::string end : {"\n", "\r", "\r\n"}) {
    const Recording rec = mustRead("\xEF\xBB\xBFt,a" + end + "0,1" + end + end + "1,2" + end);
    EXPECT_EQ(rec.timeSource, "column 't'");
    EXPECT_THAT(rec.columns[0].values, ElementsAre(1.0, 2.0));
    EXPECT_EQ(rec.linesRead, 4u);
  }
  EXPECT_THAT(times(mustRead("t,a\n0,1\n1,2")), ElementsAre(0.0, 1.0));
}

TEST(DelimitedText, ReadsPreambleNamesAndARowOfUnits) {
  const Recording rec = mustRead(
      "Alder Fen Test Hall (invented)\nOperator;nobody\n\n\"Zeit\";\"Holm; oben\";Kraft\ns;\xC2\xB5m/m;kN\n"
      "0,00;1,0;2\n0,02;1,5;3\n");
  ASSERT_EQ(rec.columns.size(), 2u);
  EXPECT_EQ(rec.columns[0].name, "Holm; oben");
  EXPECT_EQ(rec.columns[0].unit, "\xC2\xB5m/m");
  EXPECT_EQ(rec.columns[1].unit, "kN");
  EXPECT_THAT(times(rec), ElementsAre(0.0, 0.02));
  EXPECT_EQ(rec.linesRead, 7u);
}

TEST(DelimitedText, ReadsACommentedHeading) {
  const Recording rec = mustRead("# made by rule\n# t, strain [um/m]\n0,1\n1,2\n");
  EXPECT_EQ(rec.columns[0].name, "strain");
  EXPECT_EQ(rec.columns[0].unit, "um/m");
}

TEST(DelimitedText, TurnsTimeUnitsIntoSeconds) {
  EXPECT_THAT(times(mustRead("Time (ms),a\n0,1\n250,2\n")), ElementsAre(0.0, 0.25));
  EXPECT_THAT(times(mustRead("time_ms,a\n0,1\n250,2\n")), ElementsAre(0.0, 0.25));
  EXPECT_THAT(times(mustRead("Elapsed time,a\nmin,V\n0,1\n2,2\n")), ElementsAre(0.0, 120.0));
}

TEST(DelimitedText, FindsATimeColumnThatIsNotTheFirst) {
  const Recording rec = mustRead("a,Time [s],b\n7,0,8\n6,1,9\n");
  EXPECT_THAT(times(rec), ElementsAre(0.0, 1.0));
  ASSERT_EQ(rec.columns.size(), 2u);
  EXPECT_EQ(rec.columns[1].name, "b");
}

TEST(DelimitedText, TakesARisingFirstColumnForTheTime) {
  EXPECT_THAT(times(mustRead("0,5\n1,6\n2.5,5\n")), ElementsAre(0.0, 1.0, 2.5));
  EXPECT_EQ(mustRead("0,5\n1,6\n").columns[0].name, "Column 2");
}

TEST(DelimitedText, AsksForATimeColumnRatherThanGuessing) {
  EXPECT_THAT(refusal("a,b\n1,5\n1,6\n0,7\n"), HasSubstr("name the column 'Time [s]'"));
  EXPECT_THAT(refusal("Force [kN],b\n1,5\n2,6\n"), HasSubstr("no column is known to be the time"));
  EXPECT_THAT(refusal("Sample,b\n1,5\n2,6\n"), HasSubstr("no column is known to be the time"));
  EXPECT_THAT(refusal("Time [fortnight],b\n1,5\n2,6\n"), HasSubstr("no column is known to be the time"));
}

TEST(DelimitedText, MakesTimeFromASampleRateAndKeepsThePlaceOfBadRows) {
  const Recording rec = mustRead("Sample rate: 50 Hz\nstrain\n1.5\nnan\n2.5\n");
  EXPECT_THAT(times(rec), ElementsAre(0.0, 0.04));
  EXPECT_THAT(rec.columns[0].values, ElementsAre(1.5, 2.5));
  EXPECT_THAT(times(mustRead("Abtastrate;0,5 kHz\na;b\n7;1,5\n6;2\n")), ElementsAre(0.0, 0.002));
}

TEST(DelimitedText, SkipsCountsAndNamesBadRowsAndNeverMakesThemZero) {
  const Recording rec = mustRead(
      "t,a\n0,1\n1,nan\n2,inf\n3,1e400\n4,1e-400\n5,\n6,x\n7,1,2\n8\n9,0x10\n10,1 000\n11,++1\n12,2\n");
  EXPECT_THAT(times(rec), ElementsAre(0.0, 12.0));
  EXPECT_THAT(rec.columns[0].values, ElementsAre(1.0, 2.0));
  EXPECT_EQ(rec.linesSkipped, 11u);
  EXPECT_EQ(rec.linesRead, 3u);
  ASSERT_EQ(rec.skipped.size(), 11u);
  EXPECT_EQ(rec.skipped[0].line, 3u);
  EXPECT_EQ(rec.skipped[0].reason, "'nan' in 'a' is not a finite number");
  EXPECT_EQ(rec.skipped[2].reason, "'1e400' in 'a' is beyond the range of numbers");
  EXPECT_EQ(rec.skipped[6].reason, "it has 3 of 2 cells");
}

TEST(DelimitedText, SkipsRowsWhoseTimeRunsBackAndTakesEqualTimes) {
  const Recording rec = mustRead("t,a\n0,1\n2,2\n1,3\n2,4\n3,5\n");
  EXPECT_THAT(times(rec), ElementsAre(0.0, 2.0, 2.0, 3.0));
  EXPECT_THAT(rec.columns[0].values, ElementsAre(1.0, 2.0, 4.0, 5.0));
  ASSERT_EQ(rec.skipped.size(), 1u);
  EXPECT_EQ(rec.skipped[0].line, 4u);
  EXPECT_THAT(rec.skipped[0].reason, HasSubstr("time"));
}

TEST(DelimitedText, SkipsTimesThatOverflowInSeconds) {
  const Recording rec = mustRead("t [h],a\n0,1\n1e307,2\n1,3\n");
  EXPECT_THAT(times(rec), ElementsAre(0.0, 3600.0));
  EXPECT_EQ(rec.linesSkipped, 1u);
  EXPECT_THAT(refusal("t [h],a\n1e307,2\n"), HasSubstr("no row has a time and a number"));
}

TEST(DelimitedText, AccountsForEveryLineButListsOnlyTheFirstHundred) {
  std::string text = "t,a\n0,1\n";
  for (int i = 0; i < 250; ++i) text += "bad\n";
  text += "1,2\n";
  const Recording rec = mustRead(text);
  EXPECT_EQ(rec.linesSkipped, 250u);
  EXPECT_EQ(rec.skipped.size(), 100u);
  EXPECT_EQ(rec.linesRead + rec.linesSkipped, 253u);
}

TEST(DelimitedText, ABadFirstRowIsNoHeading) {
  const Recording rec = mustRead("0,nan\n1,2\n2,3\n");
  EXPECT_EQ(rec.linesSkipped, 1u);
  EXPECT_EQ(rec.columns[0].name, "Column 2");
}

TEST(DelimitedText, KeepsNamesApartAndClean) {
  const Recording rec = mustRead("t,a,a,,\xB5\x01m\n0,1,2,3,4\n1,1,2,3,4\n");
  EXPECT_EQ(rec.columns[0].name, "a");
  EXPECT_EQ(rec.columns[1].name, "a (2)");
  EXPECT_EQ(rec.columns[2].name, "Column 4");
  EXPECT_EQ(rec.columns[3].name, "\xC2\xB5 m");
}

TEST(DelimitedText, RefusesWhatIsNoTextWithNumbers) {
  EXPECT_THAT(refusal(std::string_view("t,a\n0,\0001\n", 9)), HasSubstr("NUL bytes"));
  EXPECT_THAT(refusal(""), HasSubstr("the file is empty"));
  EXPECT_THAT(refusal("only words\nand more\n"), HasSubstr("no line holds only numbers"));
  EXPECT_THAT(refusal("t\n0\n1\n"), HasSubstr("time column and nothing else"));
}

TEST(DelimitedText, SkipsALineBeyondTheLongestAndRefusesTooManyColumns) {
  const std::string longLine(core::longestLine + 1, '1');
  const Recording rec = mustRead("t,a\n0,1\n" + longLine + "\n1,2\n");
  EXPECT_EQ(rec.linesSkipped, 1u);
  EXPECT_THAT(rec.skipped[0].reason, HasSubstr("longer than"));
  std::string wide = "0";
  for (std::size_t k = 0; k < core::greatestColumns; ++k) wide += ",1";
  EXPECT_THAT(refusal(wide + "\n" + wide + "\n"), HasSubstr("more than 4096 columns"));
}

TEST(DelimitedText, DoesNotDependOnTheLocale) {
  const test::GermanLocale german;
  ASSERT_TRUE(german.active()) << "localedef is missing: apt-get install locales";
  ASSERT_EQ(std::string(std::localeconv()->decimal_point), ",");
  const Recording rec = mustRead("t,a\n0.5,1.5\n1.5,2.5\n");
  EXPECT_THAT(rec.columns[0].values, ElementsAre(1.5, 2.5));
}

std::string manyLines(int count) {
  std::string text = "t,a\n";
  for (int i = 0; i < count; ++i) text += std::to_string(i) + ",1.25\n";
  return text;
}

TEST(DelimitedText, TellsItsProgressRising) {
  const test::TextFile file(manyLines(20000));
  for (const unsigned threads : {1u, 2u}) {
    std::vector<double> shares;
    ASSERT_TRUE(core::readText(file.path(), {}, {}, [&](double s) { shares.push_back(s); },
                               {.pieceBytes = 4096, .threads = threads}));
    // Of two threads only the caller's tells, and the other one may be quick enough to leave it little.
    ASSERT_GT(shares.size(), threads == 1 ? 3u : 0u);
    EXPECT_TRUE(std::is_sorted(shares.begin(), shares.end()));
    EXPECT_EQ(shares.back(), 1);
  }
}

TEST(DelimitedText, StopsWhenAsked) {
  std::stop_source source;
  const auto stopAtFirstReport = [&](double) { source.request_stop(); };
  // So long that the second thread cannot be through before the first one has told and stopped.
  const test::TextFile file(manyLines(400000));
  const auto result = core::readText(file.path(), {}, source.get_token(), stopAtFirstReport,
                                     {.pieceBytes = 4096, .threads = 2});
  ASSERT_FALSE(result);
  EXPECT_EQ(result.error().what, "cancelled");
}

class DelimitedFile : public testing::Test {
 protected:
  void SetUp() override {
    const auto* info = testing::UnitTest::GetInstance()->current_test_info();
    folder = std::filesystem::path(testing::TempDir()) / (std::string("recording_") + info->name());
    std::filesystem::remove_all(folder);
    std::filesystem::create_directories(folder);
  }
  void TearDown() override { std::filesystem::remove_all(folder); }
  std::filesystem::path folder;
};

TEST_F(DelimitedFile, IsReadFromDisk) {
  std::ofstream(folder / "rec.csv") << "t,a\n0,1\n1,2\n";
  const auto rec = core::readText(folder / "rec.csv");
  ASSERT_TRUE(rec) << rec.error().text();
  EXPECT_EQ(rec->time.size(), 2u);
}

TEST_F(DelimitedFile, NamesTheFileAndTheCauseWhenItIsMissing) {
  const auto error = core::readText(folder / "gone.csv").error();
  EXPECT_EQ(error.where, "gone.csv");
  EXPECT_THAT(error.what, HasSubstr("No such file"));
  EXPECT_FALSE(error.mend.empty());
}

TEST_F(DelimitedFile, ThatIsAFolderPipeOrDeviceIsRefusedAtOnce) {
  EXPECT_THAT(core::readText(folder).error().what, HasSubstr("folder"));
  ASSERT_EQ(::mkfifo((folder / "pipe").c_str(), 0600), 0);
  EXPECT_THAT(core::readText(folder / "pipe").error().what, HasSubstr("pipe or device"));
  EXPECT_THAT(core::readText("/dev/zero").error().what, HasSubstr("pipe or device"));
}

}  // namespace
