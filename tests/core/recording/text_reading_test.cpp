// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <chrono>
#include <cmath>
#include <filesystem>
#include <fstream>
#include <random>
#include <thread>

#include "core/recording/reader.h"
#include "core/recording/text/delimited_text.h"
#include "tests/support/text_file.h"

namespace text_reading_test {

using core::Recording;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsNan;

Recording mustRead(std::string_view text, const core::TextReading& how = {}) {
  const test::TextFile file(text);
  auto read = core::readText(file.path(), {}, {}, {}, how);
  if (!read) throw std::runtime_error(read.error().text());
  return *std::move(read);
}

std::vector<double> times(const Recording& recording) {
  std::vector<double> list;
  for (std::size_t k = 0; k < recording.time.size(); ++k) list.push_back(recording.time[k]);
  return list;
}

/// All that a recording says, so that two can be compared; NaN is written as such.
std::string told(const Recording& recording) {
  std::string text = recording.timeSource + recording.startedAt;
  const auto add = [&](double value) { text += (std::isnan(value) ? "nan" : std::to_string(value)) + " "; };
  for (const double time : times(recording)) add(time);
  for (const auto& column : recording.columns) {
    text += "\n" + column.name + "|" + column.unit + ": ";
    for (const double value : column.values) add(value);
  }
  text += "\n" + std::to_string(recording.linesRead) + " " + std::to_string(recording.linesSkipped) + " " +
          std::to_string(recording.cellsMissing);
  for (const auto& line : recording.skipped) text += "\n" + std::to_string(line.line) + " " + line.reason;
  for (const auto& cell : recording.missing)
    text += "\n" + std::to_string(cell.line) + "/" + std::to_string(cell.column) + " " + cell.reason;
  return text;
}

TEST(TextReading, KeepsARowWhoseTimeIsGoodAndTellsWhichCellsAreMissing) {
  const Recording rec = mustRead(
      "t [s],a,b,Status\n0,1,2,OK\n1,OVER,3,OK\n2,,nan,bad\n3,N/A,4,OK\n4,#N/A,1e400,OK\n5,6,---,OK\n");
  EXPECT_THAT(times(rec), ElementsAre(0, 1, 3, 5));
  ASSERT_EQ(rec.columns.size(), 2u);  // words are no column
  EXPECT_THAT(rec.columns[0].values, ElementsAre(1, IsNan(), IsNan(), 6));
  EXPECT_THAT(rec.columns[1].values, ElementsAre(2, 3, 4, IsNan()));
  EXPECT_EQ(rec.cellsMissing, 3u);
  ASSERT_EQ(rec.missing.size(), 3u);
  EXPECT_EQ(rec.missing[0].line, 3u);
  EXPECT_EQ(rec.missing[0].column, 0u);
  EXPECT_EQ(rec.missing[0].reason, "'OVER' in 'a' is not a number");
  EXPECT_EQ(rec.missing[2].column, 1u);
  ASSERT_EQ(rec.skipped.size(), 2u);
  EXPECT_EQ(rec.skipped[0].line, 4u);
  EXPECT_EQ(rec.skipped[0].reason, "it has no number in any column");
  EXPECT_EQ(rec.linesRead + rec.linesSkipped, 7u);
}

TEST(TextReading, SkipsRowsWithABadTimeOrAnotherNumberOfCells) {
  const Recording rec =
      mustRead("t [s];a;b\n0;1;2\nx;3;4\n;3;4\n2;3\n3;4;5;6\n4;5;6;;\n# end of run\n5;6;7\n");
  EXPECT_THAT(times(rec), ElementsAre(0, 4, 5));
  ASSERT_EQ(rec.skipped.size(), 5u);
  EXPECT_EQ(rec.skipped[0].reason, "'x' in 't' is not a number");
  EXPECT_EQ(rec.skipped[1].reason, "'' in 't' is empty");
  EXPECT_EQ(rec.skipped[2].reason, "it has 2 of 3 cells");
  EXPECT_EQ(rec.skipped[3].reason, "it has 4 of 3 cells");
  EXPECT_EQ(rec.skipped[4].line, 8u);
}

TEST(TextReading, LeavesOutAColumnWithoutASingleNumber) {
  const Recording rec = mustRead("t [s],a,b\n0,nan,2\n1,,3\n");
  ASSERT_EQ(rec.columns.size(), 1u);
  EXPECT_EQ(rec.columns[0].name, "b");
  EXPECT_EQ(rec.cellsMissing, 0u);
}

TEST(TextReading, KeepsThePlaceInTimeOfASkippedRowWhereARateMakesTheTime) {
  const Recording rec = mustRead("Sample rate: 10 Hz\na;b\n1;2\nOVER;\n\n3;\n");
  EXPECT_THAT(times(rec), ElementsAre(0, 0.2));
  EXPECT_THAT(rec.columns[0].values, ElementsAre(1, 3));
  EXPECT_THAT(rec.columns[1].values, ElementsAre(2, IsNan()));
}

TEST(TextReading, CountsMidnightsOfAClock) {
  const Recording rec = mustRead("Clock;a\n23:00:00;1\n10:00:00;2\n23:30:00;3\n00:30:00;4\n00:00:00;5\n");
  // The fall of half an hour at the end is no midnight: that row is skipped.
  EXPECT_THAT(times(rec), ElementsAre(0, 11 * 3600, 24 * 3600 + 1800, 25 * 3600 + 1800));
  EXPECT_EQ(rec.linesSkipped, 1u);
}

TEST(TextReading, TakesAbsoluteTimesApartExactly) {
  // 0.1 us in 1.8e9 s are beyond a double, whose spacing there is 0.24 us.
  const Recording rec =
      mustRead("Time [s],a\n1778507110.0000001,1\n1778507110.0000003,2\n1778507110.0000004,3\n");
  EXPECT_THAT(times(rec), ElementsAre(0, 2e-7, 3e-7));
}

/// A file with every trouble, long enough for many small pieces.
std::string troubled(const std::string& end) {
  std::mt19937_64 random(3);
  std::string text = "preamble" + end + "Time [s];a;b;word" + end;
  for (int k = 0; k < 1500; ++k) {
    switch (random() % 40) {
      case 0:
        text += "no row at all";
        break;
      case 1:
        break;
      case 2:
        text += std::to_string(k - 5) + ";1;2;w";
        break;
      case 3:
        text += std::to_string(k) + ";OVER;;\"a;b\"";
        break;
      case 4:
        text += std::to_string(k) + ";;" + std::to_string(random() % 1000) + ";w";
        break;
      case 5:
        text += std::string(random() % 4 == 0 ? 140000 : 300, 'x');
        break;
      default:
        text += std::to_string(k) + "." + std::to_string(random() % 100000) + ";" +
                std::to_string(random() % 100000) + "e-3;\"-7.5\";w";
    }
    text += end;
  }
  return text;
}

TEST(TextReading, DoesNotDependOnPiecesAndThreads) {
  for (const std::string end : {"\n", "\r\n", "\r"}) {
    const std::string text = troubled(end);
    const std::string whole = told(mustRead(text, {.pieceBytes = 1UL << 24U, .threads = 1}));
    EXPECT_THAT(whole, HasSubstr("is longer than"));
    EXPECT_THAT(whole, HasSubstr("before that of the one above"));
    for (const std::size_t bytes : {997u, 4096u, 65536u, 300007u})
      for (const unsigned threads : {1u, 3u})
        ASSERT_EQ(told(mustRead(text, {.pieceBytes = bytes, .threads = threads})), whole)
            << bytes << " " << threads;
  }
}

TEST(TextReading, AccountsForEveryLine) {
  const std::string text = troubled("\n");
  const Recording rec = mustRead(text, {.pieceBytes = 5000, .threads = 2});
  EXPECT_EQ(rec.linesRead + rec.linesSkipped,
            static_cast<std::size_t>(std::count(text.begin(), text.end(), '\n')));
}

/// Memory of this process, by a word of proc(5).
std::size_t kilobytesOf(const std::string& wanted) {
  std::ifstream status("/proc/self/status");
  std::size_t kilobytes = 0;
  for (std::string word; status >> word;)
    if (word == wanted) status >> kilobytes;
  return kilobytes;
}

TEST(TextReading, NeedsNoMemoryForALineOfAGigabyte) {
  const test::TextFile file("t,a\n0,1\n");
  constexpr std::uintmax_t gigabyte = 1UL << 30U;
  std::filesystem::resize_file(file.path(), gigabyte);  // a hole of NUL bytes, which takes no space
  std::ofstream(file.path(), std::ios::app) << "\n1,2\n";
  // The first 64 KiB hold NUL bytes: such a file is refused for that. Behind them it is a line like others.
  EXPECT_THAT(core::readText(file.path()).error().text(), HasSubstr("NUL bytes"));
  std::string text = "t [s],a\n";
  for (int k = 0; k < 20000; ++k) text += std::to_string(k) + ",1\n";
  const test::TextFile longer(text);
  std::filesystem::resize_file(longer.path(), gigabyte);
  std::ofstream(longer.path(), std::ios::app) << "\n20001,2\n";
  std::ofstream("/proc/self/clear_refs") << "5";  // the peak counts from here, proc(5)
  const std::size_t before = kilobytesOf("VmRSS:");
  const auto read = core::readText(longer.path());
  ASSERT_TRUE(read) << read.error().text();
  EXPECT_EQ(read->time.size(), 20001u);
  ASSERT_EQ(read->skipped.size(), 1u);
  EXPECT_EQ(read->skipped[0].line, 20002u);
  EXPECT_THAT(read->skipped[0].reason, HasSubstr("is longer than"));
  // Pieces of a megabyte, twice, and the sample of the beginning.
  EXPECT_LT(kilobytesOf("VmHWM:"), before + 64 * 1024);
}

TEST(TextReading, SaysThatItsLinesAreTooLong) {
  for (const char* end : {"", "\n", "\n\n"}) {
    const test::TextFile file(std::string(core::longestLine + 1, '7') + end);
    const auto read = core::readText(file.path());
    ASSERT_FALSE(read);
    EXPECT_THAT(read.error().text(), HasSubstr("its lines are longer than 131072 bytes"));
  }
}

TEST(TextReading, BeginsNothingMoreWhenAskedToEnd) {
  std::string text = "t [s],a,b\n";
  for (int k = 0; k < 600'000; ++k) text += std::to_string(k) + ",1.25,2.5\n";
  const test::TextFile file(text);
  std::stop_source source;
  int after = 0;
  const auto ask = [&](double) {
    if (!source.request_stop()) ++after;
  };
  // Some 140 pieces; each thread may end the one that it has begun.
  const auto read =
      core::readText(file.path(), {}, source.get_token(), ask, {.pieceBytes = 65536, .threads = 2});
  ASSERT_FALSE(read);
  EXPECT_EQ(read.error().what, "cancelled");
  EXPECT_LE(after, 2);
}

/// Bytes that this process has asked the system to read.
std::uint64_t bytesRead() {
  std::ifstream account("/proc/self/io");
  std::string name;
  std::uint64_t count = 0;
  account >> name >> count;
  EXPECT_EQ(name, "rchar:");
  return count;
}

TEST(TextReading, EndsInTheMidstOfALineWithoutAnEnd) {
  const test::TextFile file("t [s],a\n" + std::string(100'000, '1'));
  constexpr std::uint64_t size = 1ULL << 36U;  // 64 GiB of nothing, half a minute to read
  std::filesystem::resize_file(file.path(), size);
  std::jthread asking;
  std::stop_source source;
  asking = std::jthread([&] {
    std::this_thread::sleep_for(std::chrono::milliseconds(50));
    source.request_stop();
  });
  const std::uint64_t before = bytesRead();
  const auto read = core::readText(file.path(), {}, source.get_token());
  ASSERT_FALSE(read);
  EXPECT_EQ(read.error().what, "cancelled");
  EXPECT_LT(bytesRead() - before, size / 2);
}

TEST(TextReading, ReadsWhatIsThereOfAFileThatIsCutOrDeletedMeanwhile) {
  std::string text = "t [s],a\n";
  for (int k = 0; k < 300'000; ++k) text += std::to_string(k) + ",1.25\n";
  for (const bool cut : {true, false}) {
    const test::TextFile file(text);
    bool done = false;
    const auto spoil = [&](double) {
      if (done) return;
      done = true;
      if (cut)
        std::filesystem::resize_file(file.path(), 2'000'003);
      else
        std::filesystem::remove(file.path());
    };
    const auto read = core::readText(file.path(), {}, {}, spoil, {.pieceBytes = 65536, .threads = 2});
    ASSERT_TRUE(read) << read.error().text();
    EXPECT_GT(read->time.size(), 1000u);
    EXPECT_EQ(read->time.size() == 300'000u, !cut);
    EXPECT_EQ(read->linesRead + read->linesSkipped, read->time.size() + 1 + read->linesSkipped);
  }
}

TEST(TextReading, ReadsFourThousandColumnsAndRefusesFive) {
  const auto table = [](std::size_t columns) {
    std::string text = "Time [s]";
    for (std::size_t k = 1; k < columns; ++k) text += ",c" + std::to_string(k);
    for (int row = 0; row < 5; ++row) {
      text += "\n" + std::to_string(row);
      for (std::size_t k = 1; k < columns; ++k) text += ",-1.234567890123456E+00" + std::to_string(k % 10);
    }
    return text + "\n";
  };
  const Recording rec = mustRead(table(4096));
  EXPECT_EQ(rec.columns.size(), 4095u);
  EXPECT_EQ(rec.columns.back().values[0], -1.234567890123456e5);  // column 4095
  const test::TextFile file(table(5000));
  EXPECT_THAT(core::readText(file.path()).error().text(), HasSubstr("more than 4096 columns"));
}

TEST(TextReading, RefusesWhatIsNoRecordingInPlainWords) {
  const std::pair<std::string, const char*> files[] = {
      {"", "the file is empty"},
      {"just words\n", "no line holds only numbers"},
      {std::string("\x7F"
                   "ELF\0\1\2\3",
                   8),
       "NUL bytes"},
      {"t [s],a\n0,nan\n1,nan\n", "no row has a time and a number"},
      {"Time [s]\n0\n1\n", "time column and nothing else"},
      {"a,b\n2,1\n1,2\n", "no column is known to be the time"},
  };
  for (const auto& [text, words] : files) {
    const test::TextFile file(text);
    const auto read = core::readRecording(file.path());
    ASSERT_FALSE(read) << words;
    EXPECT_THAT(read.error().text(), HasSubstr(words));
    EXPECT_THAT(read.error().where, HasSubstr("rec.txt"));
    EXPECT_FALSE(read.error().mend.empty());
  }
}

TEST(TextReading, TakesConstantsAndASingleRow) {
  EXPECT_THAT(mustRead("t [s],a\n0,5\n1,5\n").columns[0].values, ElementsAre(5, 5));
  EXPECT_THAT(mustRead("t [s],a\n7,5\n").columns[0].values, ElementsAre(5));
}

}  // namespace text_reading_test
