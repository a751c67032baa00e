// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/recording/reader.h"
#include "tests/support/text_file.h"

namespace text_preview_test {

using core::ColumnHeading;
using core::Preview;
using core::RowRole;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

core::LayoutChoices chosen(std::string_view words) {
  auto choices = core::choicesFromText(words);
  if (!choices) throw std::runtime_error(choices.error().text());
  return *std::move(choices);
}

Preview look(std::string_view text, std::string_view words = "") {
  const test::TextFile file(text);
  auto preview = core::lookAt(file.path(), chosen(words));
  if (!preview) throw std::runtime_error(preview.error().text());
  return *std::move(preview);
}

std::string refusal(std::string_view text, std::string_view words) {
  const test::TextFile file(text);
  const auto preview = core::lookAt(file.path(), chosen(words));
  const auto read = core::readRecording(file.path(), chosen(words));
  EXPECT_FALSE(read);
  if (preview) return "looked at";
  EXPECT_EQ(preview.error(), read.error());
  return preview.error().text();
}

core::Recording mustRead(std::string_view text, std::string_view words) {
  const test::TextFile file(text);
  auto read = core::readRecording(file.path(), chosen(words));
  if (!read) throw std::runtime_error(read.error().text());
  return *std::move(read);
}

const std::string file = "Alder Fen Test Hall\nZeit;Kraft;Weg\ns;kN;mm\n0,0;1,5;7\n0,5;2;8\n1,0;3;9\n";

TEST(TextPreview, ShowsWhatWasGuessedAndTheFirstRowsAsTheyStand) {
  const Preview preview = look(file);
  const core::Layout& layout = preview.layout;
  EXPECT_EQ(layout.separator, ';');
  EXPECT_EQ(layout.decimal, ',');
  EXPECT_EQ(layout.firstRow, 4u);
  EXPECT_EQ(layout.nameLine, 2u);
  EXPECT_EQ(layout.unitLine, 3u);
  EXPECT_EQ(layout.time.column, 0u);
  EXPECT_THAT(layout.columns, ElementsAre(ColumnHeading{"Zeit", "s"}, ColumnHeading{"Kraft", "kN"},
                                          ColumnHeading{"Weg", "mm"}));
  ASSERT_EQ(preview.rows.size(), 6u);
  EXPECT_EQ(preview.rows[0].role, RowRole::Preamble);
  EXPECT_THAT(preview.rows[0].cells, ElementsAre("Alder Fen Test Hall"));
  EXPECT_EQ(preview.rows[1].role, RowRole::Names);
  EXPECT_EQ(preview.rows[2].role, RowRole::Units);
  EXPECT_EQ(preview.rows[3].role, RowRole::Values);
  EXPECT_EQ(preview.rows[3].line, 4u);
  EXPECT_THAT(preview.rows[3].cells, ElementsAre("0,0", "1,5", "7"));
  EXPECT_THAT(preview.doubts, IsEmpty());
  EXPECT_THAT(preview.leftOut, IsEmpty());
}

TEST(TextPreview, ShowsNoMoreThanTheFirstRows) {
  std::string text = "t [s],a\n";
  for (int k = 0; k < 500; ++k) text += std::to_string(k) + ",1\n";
  EXPECT_EQ(look(text).rows.size(), core::greatestPreviewRows);
  // Under a long preamble the values are in view.
  EXPECT_EQ(look(std::string(400, '\n') + text).rows.back().role, RowRole::Values);
}

TEST(TextPreview, SaysWhatCannotBeTold) {
  EXPECT_THAT(look("Time,a\n0,1\n1,2\n").doubts, ElementsAre(HasSubstr("no unit of time")));
  EXPECT_THAT(look("0,5\n1,4\n2,6\n").doubts, ElementsAre(HasSubstr("rises throughout")));
  EXPECT_THAT(look("a,b\n2,5\n1,4\n2,6\n").doubts,
              ElementsAre(HasSubstr("No column is known to be the time")));
  EXPECT_THAT(look("Date,a\n03/04/2026 10:00:00,1\n03/04/2026 10:00:01,2\n").doubts,
              ElementsAre(HasSubstr("03/04/2026 may be day-first or month-first: day-first is taken")));
  EXPECT_THAT(look("Date,a\n03/13/2026 10:00:00,1\n03/13/2026 10:00:01,2\n").doubts, IsEmpty());
  EXPECT_THAT(look("Clock,a\n10:00:00,1\n10:00:00,2\n10:00:00,2\n10:00:00,3\n10:00:01,2\n").doubts,
              ElementsAre(HasSubstr("coarse")));
}

TEST(TextPreview, DoubtsNamesThatAreMoreOrFewerThanTheColumns) {
  // The third value of a row may be that of "b" or of "Remark": nothing tells.
  const Preview preview = look("t [s];a;b;Remark\n0;5;6\n1;4;6\n2;6;6\n");
  EXPECT_EQ(preview.layout.nameLine, 0u);
  EXPECT_THAT(preview.doubts,
              testing::Contains(HasSubstr("Line 1 has 4 cells and the rows of numbers have 3")));
  EXPECT_THAT(look("t a b c\n0 5 6\n1 4 6\n2 6 6\n").doubts,
              testing::Contains(HasSubstr("Line 1 has 4 cells and the rows of numbers have 3")));
  EXPECT_THAT(look("t [s];a;b;Remark\n0;5;6\n1;4;6\n2;6;6\n", "names=1").doubts,
              ElementsAre(HasSubstr("may stand above the wrong column")));
}

TEST(TextPreview, TellsMissingNumbersOfInstruments) {
  const core::Recording rec = mustRead("t [s],a,b\n0,9.91E37,1\n1,2,1\n2,-9.9E+37,1\n", "");
  EXPECT_EQ(rec.cellsMissing, 2u);
  EXPECT_THAT(rec.missing[0].reason, HasSubstr("'not a number' of SCPI"));
  EXPECT_THAT(rec.missing[1].reason, HasSubstr("'infinity' of SCPI"));
}

TEST(TextPreview, TakesThousandsAndNamesTheCellThatMayBeEither) {
  const core::Recording rec = mustRead("t [s];a;b\n0;1,234.5;1\n1;999.5;1\n2;1,234;1\n", "");
  EXPECT_EQ(rec.columns[0].values[0], 1234.5);
  EXPECT_EQ(rec.cellsMissing, 1u);
  EXPECT_THAT(rec.missing[0].reason, HasSubstr("'1,234' in 'a'"));
  EXPECT_EQ(mustRead("t [s];a\n0,0;1.234,5\n0,1;999,5\n", "").columns[0].values[0], 1234.5);
}

TEST(TextPreview, SaysWhetherAFileIsEmptyOrEndsAtItsHeading) {
  EXPECT_THAT(refusal("", ""), HasSubstr("the file is empty"));
  EXPECT_THAT(refusal("\n \n", ""), HasSubstr("blank lines"));
  EXPECT_THAT(refusal("Alder Fen\ntime [s],a,b\n", ""),
              HasSubstr("there is a heading and no row of numbers below it"));
  EXPECT_THAT(refusal("just words, and more\n", ""), HasSubstr("no line holds only numbers"));
}

TEST(TextPreview, NamesWhatIsLeftOut) {
  EXPECT_THAT(look("No.,t [s],a,Mark,Clock,b\n1,0,5,on,10:00:00,\n2,1,6,off,10:00:01,\n3,2,6,off,10:00:02,\n")
                  .leftOut,
              ElementsAre(HasSubstr("'No.' counts"), HasSubstr("'Mark' holds words"), HasSubstr("'Clock'"),
                          HasSubstr("'b' has no number")));
}

TEST(TextPreview, TakesEveryChoiceAsGiven) {
  const Preview preview =
      look(file, "decimal=comma first-row=5 names=none units=3 time=3 time-form=ms unit.2=N");
  EXPECT_EQ(preview.layout.firstRow, 5u);
  EXPECT_EQ(preview.layout.nameLine, 0u);
  EXPECT_EQ(preview.layout.time.column, 2u);
  EXPECT_EQ(preview.layout.time.form, core::TimeForm::Milliseconds);
  EXPECT_EQ(preview.layout.columns[1], (ColumnHeading{"Column 2", "N"}));
  const core::Recording rec = mustRead(file, "first-row=5 names=none time=3 time-form=ms unit.2=N");
  EXPECT_EQ(rec.time[1], 0.009);
  EXPECT_EQ(rec.columns[1].unit, "N");
  EXPECT_EQ(rec.linesRead, 6u);
}

TEST(TextPreview, TakesARateInPlaceOfATimeColumn) {
  const core::Recording rec = mustRead(file, "rate=100");
  ASSERT_EQ(rec.columns.size(), 2u);  // all but the time
  EXPECT_EQ(rec.columns[0].name, "Kraft");
  EXPECT_EQ(rec.time[2], 0.02);
  EXPECT_THAT(look(file, "rate=100").leftOut, ElementsAre("'Zeit' is a time that is not needed"));
  EXPECT_THAT(look("n,v\n0,5\n1,4\n2,6\n", "rate=100").leftOut, ElementsAre("'n' counts the rows"));
  // Nothing would be left.
  EXPECT_EQ(mustRead("t\n1\n5\n3\n", "rate=100").columns.size(), 1u);
  EXPECT_EQ(rec.timeSource, "sample number and the sample rate given");
  EXPECT_EQ(mustRead("Sample rate: 50 Hz\nx;a\n1;5\n3;6\n", "time=1").time[1], 3);
}

TEST(TextPreview, TakesTheOrderOfDatesAndTheEncoding) {
  const std::string dates = "Date,a\n03/04/2026 10:00:00,1\n03/04/2026 10:00:01,2\n";
  EXPECT_EQ(mustRead(dates, "date-order=mdy").startedAt, "2026-03-04T10:00:00");
  EXPECT_EQ(mustRead(dates, "date-order=dmy").startedAt, "2026-04-03T10:00:00");
  EXPECT_THAT(look(dates, "date-order=mdy").doubts, IsEmpty());
  EXPECT_EQ(look("t [s],\xC3\xA4\n0,1\n1,2\n", "encoding=latin-1").layout.columns[1].name,
            "\xC3\x83\xC2\xA4");
}

TEST(TextPreview, RefusesAChoiceThatCannotBeRight) {
  EXPECT_THAT(refusal(file, "separator=comma decimal=comma"), HasSubstr("separator=comma and decimal=comma"));
  EXPECT_THAT(refusal(file, "time=9"),
              testing::AllOf(HasSubstr("time=9: the file has 3 columns"), HasSubstr("time=3")));
  EXPECT_THAT(refusal(file, "unit.9=N"), HasSubstr("unit.9: the file has 3 columns"));
  EXPECT_THAT(refusal(file, "first-row=70"), HasSubstr("first-row=70: the file has 6 lines"));
  EXPECT_THAT(refusal(file, "names=4"), HasSubstr("names=4: the values begin in line 4"));
  EXPECT_THAT(refusal(file, "first-row=3 units=3"), HasSubstr("units=3: it must stand above the first row"));
  EXPECT_THAT(refusal(file, "names=2 units=2"), HasSubstr("the same line"));
  EXPECT_THAT(refusal(file, "time=1 rate=50"), HasSubstr("contradict each other"));
}

TEST(TextPreview, AFormThatNoCellHasLeavesNoRow) {
  const test::TextFile text(file);
  EXPECT_THAT(core::readRecording(text.path(), chosen("time-form=date")).error().text(),
              testing::AllOf(HasSubstr("no row has a time"), HasSubstr("is not a date and time")));
}

}  // namespace text_preview_test
