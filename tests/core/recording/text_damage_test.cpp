// SPDX-License-Identifier: GPL-3.0-or-later
// Whatever is done to a text, reading it ends in an error or in a sound recording that accounts for every
// line.
#include <gtest/gtest.h>

#include <cmath>
#include <random>
#include <string>

#include "core/recording/binary/binary_files.h"
#include "core/recording/clean_text.h"
#include "core/recording/reader.h"
#include "core/units/text.h"
#include "tests/support/text_file.h"

namespace text_damage_test {

using core::Recording;

/// CR, LF and CRLF each end a line; what stands behind the last one is a line as well.
std::size_t linesIn(std::string_view text) {
  std::size_t lines = 0;
  bool isOpen = false;
  for (std::size_t at = 0; at < text.size(); ++at) {
    isOpen = text[at] != '\n' && text[at] != '\r';
    const bool isHalf = text[at] == '\r' && at + 1 < text.size() && text[at + 1] == '\n';
    if (!isOpen && !isHalf) ++lines;
  }
  return lines + (isOpen ? 1 : 0);
}

void expectSound(const Recording& recording) {
  ASSERT_GT(recording.time.size(), 0u);
  for (std::size_t k = 0; k < recording.time.size(); ++k) {
    ASSERT_TRUE(std::isfinite(recording.time[k]));
    if (k > 0) {
      ASSERT_GE(recording.time[k], recording.time[k - 1]);
    }
  }
  std::size_t missing = 0;
  for (const core::Column& column : recording.columns) {
    ASSERT_EQ(column.values.size(), recording.time.size());
    EXPECT_FALSE(column.name.empty());
    EXPECT_FALSE(core::firstInvalidUtf8(column.name + column.unit));
    for (const double value : column.values) {
      EXPECT_FALSE(std::isinf(value));
      missing += std::isnan(value) ? 1 : 0;
    }
  }
  EXPECT_EQ(missing, recording.cellsMissing);
  EXPECT_EQ(recording.missing.size(), std::min(recording.cellsMissing, core::greatestSkippedListed));
  EXPECT_EQ(recording.skipped.size(), std::min(recording.linesSkipped, core::greatestSkippedListed));
}

/// Reads what became of a text; whether it could be read.
bool readDamaged(const std::string& text) {
  const test::TextFile file(text);
  const auto preview = core::lookAt(file.path());
  const auto recording = core::readRecording(file.path());
  if (!recording) {
    EXPECT_FALSE(recording.error().what.empty());
    EXPECT_FALSE(core::firstInvalidUtf8(recording.error().text()));
    return false;
  }
  EXPECT_TRUE(preview) << "read, but not looked at";
  expectSound(*recording);
  // What begins with a byte order mark of UTF-16 has other line ends.
  const bool isWide = text.starts_with("\xFF\xFE") || text.starts_with("\xFE\xFF");
  if (!isWide && !core::binaryKindOf(text.substr(0, core::binaryKindBytes))) {
    EXPECT_EQ(recording->linesRead + recording->linesSkipped, linesIn(text));
  }
  return true;
}

/// Recordings of five kinds, with words, gaps and a preamble among them.
std::vector<std::string> wholeTexts() {
  std::vector<std::string> texts = {"Alder Fen Test Hall\nSample rate: 50 Hz\nTP-01 [um/m],TP-02 [um/m]\n",
                                    "Zeit [s];Kraft [kN];Weg [mm]\r\n", "Time (ms)\tA\tB\tStatus\n",
                                    "date,clock,a\n", "  t   a   b\n"};
  for (int k = 0; k < 60; ++k) {
    const std::string n = std::to_string(k), two = (k < 10 ? "0" : "") + n;
    texts[0] += n + ".5," + std::to_string(k * k) + "\n";
    texts[1] += n + ",25;" + std::to_string(k % 7) + ",5;-" + n + "\r\n";
    texts[2] += std::to_string(20 * k) + "\t" + (k % 9 == 4 ? "OVER" : n) + "\t1e-" + n + "\tOK\n";
    texts[3] += "2026-05-11,13:45:" + two + "," + n + "\n";
    texts[4] += "  " + n + "   1.5e3  \"" + n + "\"\n";
  }
  return texts;
}

/// Bytes changed, put in, taken out, parts doubled, the end cut off.
std::string damaged(std::string text, std::mt19937& lot) {
  const auto upTo = [&](std::size_t n) { return static_cast<std::size_t>(lot() % n); };
  constexpr std::string_view telling("\n\r,;\t \".-+eE0:/[]()#%\xC2\xB5\xFF\x80\0", 27);
  for (std::size_t edits = 1 + upTo(6); edits > 0 && !text.empty(); --edits) {
    // Half of them in the heading, which decides most.
    const std::size_t at = upTo(upTo(2) == 0 ? text.size() : std::min<std::size_t>(text.size(), 80));
    switch (upTo(6)) {
      case 0:
        text[at] = static_cast<char>(lot());
        break;
      case 1:
        text[at] = telling[upTo(telling.size())];
        break;
      case 2:
        text.insert(at, 1 + upTo(3), telling[upTo(telling.size())]);
        break;
      case 3:
        text.erase(at, 1 + upTo(30));
        break;
      case 4:
        text.insert(upTo(text.size()), text.substr(at, 1 + upTo(60)));
        break;
      default:
        if (upTo(4) == 0) text.resize(at);
        break;
    }
  }
  return text;
}

TEST(TextDamage, EndsInAnErrorOrAccountsForEveryLine) {
  constexpr int filesEach = 400;
  constexpr std::uint32_t fixedStart = 20260513;
  std::mt19937 lot(fixedStart);
  int read = 0;
  for (const std::string& whole : wholeTexts()) {
    EXPECT_TRUE(readDamaged(whole));
    for (int k = 0; k < filesEach; ++k) {
      SCOPED_TRACE(k);
      read += readDamaged(damaged(whole, lot)) ? 1 : 0;
    }
  }
  // Damage of a few bytes mostly leaves rows that can be read: otherwise this would test errors alone.
  EXPECT_GT(read, filesEach);
}

TEST(TextDamage, CutAtEveryLength) {
  for (const std::string& whole : wholeTexts())
    for (std::size_t length = 0; length < std::min<std::size_t>(whole.size(), 200); ++length)
      readDamaged(whole.substr(0, length));
}

TEST(CleanText, IsUtf8OnOneLine) {
  EXPECT_EQ(core::cleanText("a\tb\r\n\x7F"), "a b   ");
  EXPECT_EQ(core::cleanText("\xB5m \xC2\xB5m"), "\xC2\xB5m \xC2\xB5m");  // Latin-1 beside UTF-8
  EXPECT_EQ(core::cleanText("a\xC2\x85z\x85"), "a z ");                  // next line, a control character
  EXPECT_EQ(core::cleanText("\xED\xA0\x80"), "\xC3\xAD\xC2\xA0 ");       // no surrogates: RFC 3629 section 3
  EXPECT_EQ(core::cleanText("abcdef", 4), "abcd...");
  EXPECT_EQ(core::cleanName(std::string_view(" TP-01 \0left over", 17)), "TP-01");
}

}  // namespace text_damage_test
