// SPDX-License-Identifier: GPL-3.0-or-later
// Each kind against files that outside programs wrote. All expected numbers are the formulas of
// tests/data/recordings/make_recordings.py, exact in binary, so that they must agree to the last bit.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/core/recording/binary_samples.h"

namespace {

using core::FileKind;
using core::LayoutChoices;
using core::Recording;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

std::vector<std::string> names(const Recording& recording) {
  std::vector<std::string> list;
  for (const core::Column& column : recording.columns) list.push_back(column.name);
  return list;
}

TEST(BinaryKinds, AreToldByTheContent) {
  const std::pair<const char*, FileKind> files[] = {
      {"int16.wav", FileKind::Wav},    {"named.npy", FileKind::Npy},   {"level4.mat", FileKind::Mat},
      {"level5.mat", FileKind::Mat},   {"level5z.mat", FileKind::Mat}, {"level73.mat", FileKind::Hdf5},
      {"datasets.h5", FileKind::Hdf5}, {"even.uff", FileKind::Uff58},  {"little.uff", FileKind::Uff58},
      {"big.uff", FileKind::Uff58},    {"uneven.uff", FileKind::Uff58}};
  for (const auto& [name, kind] : files) EXPECT_EQ(samples::kindOf(samples::bytes(name)), kind) << name;
}

TEST(BinaryKinds, TextIsNone) {
  for (const std::string_view text :
       {"", "t,a\n0,1\n", "    -1\n    -2\n", "-1\n58\n", "RIFF 1 2 3\n4 5 6\n", "    -1", "\xFF\xFEt\0,\0"})
    EXPECT_EQ(core::binaryKindOf(text), std::nullopt) << text;
}

TEST(Wav, IntegersAreInPartsOfFullScale) {
  for (const char* name : {"int16.wav", "int32.wav"}) {
    SCOPED_TRACE(name);
    const Recording rec = samples::read(name);
    EXPECT_THAT(names(rec), ElementsAre("Channel 1", "Channel 2"));
    EXPECT_EQ(rec.columns[0].unit, "FS");
    // 512 k of 32768.
    EXPECT_EQ(rec.columns[0].values, samples::all(samples::time));
    EXPECT_EQ(rec.columns[1].values, samples::all([](std::size_t k) { return -samples::time(k); }));
    EXPECT_EQ(samples::times(rec), samples::all(samples::time));
    EXPECT_THAT(rec.timeSource, HasSubstr("64 Hz"));
    samples::expectSound(rec);
  }
  // (128 + 2 k) of 256, with 128 for zero.
  EXPECT_EQ(samples::read("uint8.wav").columns.at(0).values, samples::all(samples::time));
}

TEST(Wav, FloatsStandAsTheyAre) {
  for (const char* name : {"float32.wav", "float64.wav"}) {
    SCOPED_TRACE(name);
    const Recording rec = samples::read(name);
    EXPECT_EQ(rec.columns[0].values, samples::all(samples::force));
    EXPECT_EQ(rec.columns[1].values, samples::all(samples::strain));
    EXPECT_EQ(rec.columns[0].unit, "");
  }
}

std::string word(std::uint64_t value, int bytes) {
  std::string text;
  for (int k = 0; k < bytes; ++k) text += static_cast<char>(value >> (8 * k));
  return text;
}

/// A WAV file by hand, three bytes a sample, in the extensible form. Source: Multimedia Programming Interface
/// and Data Specifications 1.0; the extensible form and RF64 (EBU Tech 3306) from memory.
std::string wav24(std::string_view data, std::uint64_t announced, bool rf64) {
  const std::string guid =
      word(1, 2) + std::string("\x00\x00\x00\x00\x10\x00\x80\x00\x00\xAA\x00\x38\x9B\x71", 14);
  std::string bytes = (rf64 ? "RF64" : "RIFF") + word(0xFFFFFFFF, 4) + "WAVE";
  if (rf64) bytes += "ds64" + word(28, 4) + word(0, 8) + word(announced, 8) + word(0, 8) + word(0, 4);
  bytes += "LIST" + word(5, 4) + "INFOx" + std::string(1, '\0');  // odd: padded with one byte
  bytes += "fmt " + word(40, 4) + word(0xFFFE, 2) + word(1, 2) + word(1000, 4) + word(3000, 4) + word(3, 2) +
           word(24, 2) + word(22, 2) + word(24, 2) + word(4, 4) + guid;
  return bytes + "data" + word(rf64 ? 0xFFFFFFFF : announced, 4) + std::string(data);
}

TEST(Wav, ReadsThreeBytesExtensibleRf64AndPassesOddChunks) {
  // 2^22, -2^23 and -1 of 2^23.
  const std::string data("\x00\x00\x40\x00\x00\x80\xFF\xFF\xFF", 9);
  for (const bool rf64 : {false, true}) {
    const samples::MemoryFile file(wav24(data, 9, rf64));
    const auto rec = core::readBinary(file.path(), FileKind::Wav);
    ASSERT_TRUE(rec) << rec.error().text();
    EXPECT_THAT(rec->columns.at(0).values, ElementsAre(0.5, -1.0, -1.0 / 8388608));
    EXPECT_EQ(rec->time[2], 0.002);
  }
}

TEST(Wav, ADataChunkCutShortIsReadAsFarAsItGoes) {
  const samples::MemoryFile file(wav24(std::string(10, '\0'), 30, false));
  const auto rec = core::readBinary(file.path(), FileKind::Wav);
  ASSERT_TRUE(rec) << rec.error().text();
  EXPECT_EQ(rec->linesRead, 3u);
  // Ten are announced; the fourth has one byte of three.
  EXPECT_EQ(rec->linesSkipped, 7u);
  ASSERT_EQ(rec->skipped.size(), 7u);
  EXPECT_EQ(rec->skipped[0].line, 4u);
  EXPECT_EQ(rec->skipped[0].reason, "the data end before it");
  const auto preview = core::lookAtBinary(file.path(), FileKind::Wav);
  ASSERT_TRUE(preview);
  EXPECT_THAT(preview->doubts, ElementsAre("The file announces 10 samples and ends after 3."));
}

TEST(Wav, ALengthNeverFilledInMeansToTheEnd) {
  for (const std::uint64_t announced : {std::uint64_t{0}, std::uint64_t{0xFFFFFFFF}}) {
    const samples::MemoryFile file(wav24(std::string(9, '\0'), announced, false));
    const auto rec = core::readBinary(file.path(), FileKind::Wav);
    ASSERT_TRUE(rec) << rec.error().text();
    EXPECT_EQ(rec->linesRead, 3u);
    EXPECT_EQ(rec->linesSkipped, 0u);
  }
}

TEST(Npy, TheLongerAxisIsTheSamplesInEitherOrder) {
  for (const char* name : {"rows.npy", "channels.npy", "fortran.npy"}) {
    SCOPED_TRACE(name);
    const Recording rec = samples::read(name);
    EXPECT_EQ(samples::times(rec), samples::all(samples::time));
    EXPECT_THAT(names(rec), ElementsAre("Column 2", "Column 3"));
    EXPECT_EQ(rec.columns[0].values, samples::all(samples::force));
    EXPECT_EQ(rec.columns[1].values, samples::all(samples::strain));
    EXPECT_EQ(rec.timeSource, "column 'Column 1'");
    EXPECT_THAT(samples::look(name).doubts, ElementsAre(HasSubstr("taken as the time")));
    samples::expectSound(rec);
  }
}

TEST(Npy, NamedNumbersOfEveryTypeAndByteOrder) {
  const Recording rec = samples::read("named.npy");
  EXPECT_EQ(rec.timeSource, "column 'Time'");
  EXPECT_EQ(rec.columns.size(), 22u);
  for (const core::Column& column : rec.columns) {
    if (column.name.starts_with("pair")) continue;
    const double first = column.name[0] == 'u' ? 0 : -20;
    EXPECT_EQ(column.values, samples::all([&](std::size_t k) { return static_cast<double>(k) + first; }))
        << column.name;
  }
  EXPECT_EQ(samples::column(rec, "pair(1)"), samples::all(samples::force));
  EXPECT_EQ(samples::column(rec, "pair(2)"), samples::all(samples::strain));
  EXPECT_THAT(samples::look("named.npy").leftOut, ElementsAre(HasSubstr("label")));
}

TEST(Npy, WithoutATimeTheUserIsAsked) {
  const auto refused = core::readBinary(samples::path("vector.npy"), FileKind::Npy);
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error().where, "vector.npy");
  EXPECT_THAT(refused.error().text(), HasSubstr("sample rate"));
  EXPECT_THAT(samples::look("vector.npy").doubts, ElementsAre(HasSubstr("sample rate")));

  LayoutChoices choices;
  choices.rate_Hz = 64;
  choices.units[0] = "N";
  const Recording rec = samples::read("vector.npy", choices);
  EXPECT_EQ(samples::times(rec), samples::all(samples::time));
  EXPECT_EQ(rec.columns.at(0).values, samples::all(samples::force));
  EXPECT_EQ(rec.columns[0].unit, "N");
}

TEST(Npy, ObjectsAndComplexNumbersAreRefused) {
  for (const auto& [name, word] :
       {std::pair{"objects.npy", "objects"}, std::pair{"complex.npy", "complex"}}) {
    const auto refused = core::readBinary(samples::path(name), FileKind::Npy);
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.error().text(), HasSubstr(word));
  }
}

TEST(Npy, GapsAreNamedAndNeverNumbers) {
  LayoutChoices choices;
  choices.timeColumn = 0;
  const Recording rec = samples::read("gaps.npy", choices);
  samples::expectSound(rec);
  EXPECT_EQ(rec.linesRead, 38u);
  ASSERT_EQ(rec.linesSkipped, 2u);
  EXPECT_EQ(rec.skipped[0].line, 11u);
  EXPECT_EQ(rec.skipped[0].reason, "its time is not a finite number");
  EXPECT_EQ(rec.skipped[1].line, 21u);
  EXPECT_EQ(rec.skipped[1].reason, "its time lies before that of the one above");
  ASSERT_EQ(rec.cellsMissing, 2u);
  EXPECT_EQ(rec.missing[0].line, 4u);
  EXPECT_EQ(rec.missing[0].reason, "it is not a number");
  EXPECT_EQ(rec.missing[1].line, 5u);
  EXPECT_EQ(rec.missing[1].reason, "it is not a finite number");
  EXPECT_TRUE(std::isnan(rec.columns[0].values[3]));
  // Sample 12 is the twelfth that is left, as the eleventh record has no time.
  EXPECT_EQ(rec.columns[0].values[10], samples::force(11));
}

TEST(Uff, FunctionsOverTimeAreColumns) {
  for (const char* name : {"even.uff", "little.uff", "big.uff"}) {
    SCOPED_TRACE(name);
    const Recording rec = samples::read(name);
    EXPECT_THAT(names(rec), ElementsAre("Force", "Strain"));
    EXPECT_EQ(rec.columns[0].unit, "N");
    EXPECT_EQ(rec.columns[1].unit, "um/m");
    EXPECT_EQ(samples::times(rec), samples::all(samples::time));
    EXPECT_EQ(rec.columns[0].values, samples::all(samples::force));
    EXPECT_EQ(rec.columns[1].values, samples::all(samples::strain));
    samples::expectSound(rec);
  }
}

TEST(Uff, WhatIsNoSuchFunctionIsNamedOrCounted) {
  EXPECT_THAT(samples::look("even.uff").leftOut,
              ElementsAre(HasSubstr("not over time"), HasSubstr("has 12 of 40 samples"),
                          HasSubstr("1 data set of another kind")));
}

TEST(Uff, TimesWrittenOutAreAColumnAndNodesTellSharedNames) {
  const Recording rec = samples::read("uneven.uff");
  EXPECT_EQ(rec.timeSource, "column 'Time'");
  EXPECT_THAT(names(rec), ElementsAre("Response TAIL:12 +Z", "Response TAIL:13 +Z"));
  // The times have six digits in the file: half of the last one at 0.1 to 1 is 5e-7 (relative 5e-6 of k /
  // 64).
  for (std::size_t k = 0; k < samples::count; ++k) EXPECT_NEAR(rec.time[k], samples::time(k), 5.1e-7);
  EXPECT_EQ(rec.columns[0].values, samples::all(samples::force));
  EXPECT_EQ(rec.columns[1].values, samples::all(samples::strain));
}

TEST(Uff, NumbersMayTouchOrStandFree) {
  std::string text = samples::bytes("even.uff");
  // Once without blanks between the columns, once with other widths and another letter for the exponent.
  const auto begin = text.find("  0.00000E+00 -1.90000E+01");
  const auto end = text.find('\n', begin);
  for (const std::string_view line :
       {"-1.000000E+00-2.000000E+00-3.000000E+00-4.000000E+00-5.000000E+00-6.000000E+00",
        "-1 -2.0 -3.0D+00 -4e0 -5.0000000000000000000 -6"}) {
    std::string changed = text;
    changed.replace(begin, end - begin, line);
    const samples::MemoryFile file(changed);
    const auto rec = core::readBinary(file.path(), FileKind::Uff58);
    ASSERT_TRUE(rec) << rec.error().text();
    const auto& values = samples::column(*rec, "Force");
    EXPECT_THAT(std::vector<double>(values.begin(), values.begin() + 6), ElementsAre(-1, -2, -3, -4, -5, -6));
    EXPECT_EQ(values[6], samples::force(6));
  }
}

TEST(Uff, AFunctionCutShortKeepsWhatIsWhole) {
  const std::string text = samples::bytes("little.uff");
  // The last 11 bytes of data of the second function are gone, and the fence behind them: 38 doubles are
  // left.
  const samples::MemoryFile file(text.substr(0, text.size() - 7 - 11));
  const auto rec = core::readBinary(file.path(), FileKind::Uff58);
  ASSERT_TRUE(rec) << rec.error().text();
  samples::expectSound(*rec);
  EXPECT_EQ(samples::column(*rec, "Force"), samples::all(samples::force));
  EXPECT_EQ(rec->cellsMissing, 2u);
  EXPECT_EQ(rec->missing[0].line, 39u);
  EXPECT_EQ(rec->missing[0].reason, "the data end before it");
}

TEST(Matlab, Levels4And5WithAndWithoutCompression) {
  for (const char* name : {"level4.mat", "level5.mat", "level5z.mat"}) {
    SCOPED_TRACE(name);
    const Recording rec = samples::read(name);
    samples::expectSound(rec);
    EXPECT_EQ(rec.timeSource, "column 't'");
    EXPECT_EQ(samples::times(rec), samples::all(samples::time));
    EXPECT_THAT(names(rec), ElementsAre("force", "both(1)", "both(2)", "counts"));
    EXPECT_EQ(samples::column(rec, "force"), samples::all(samples::force));
    EXPECT_EQ(samples::column(rec, "both(1)"), samples::all(samples::force));
    EXPECT_EQ(samples::column(rec, "both(2)"), samples::all(samples::strain));
    EXPECT_EQ(samples::column(rec, "counts"),
              samples::all([](std::size_t k) { return 3.0 * static_cast<double>(k); }));
    EXPECT_EQ(rec.linesSkipped, 0u);
  }
}

TEST(Matlab, WhatIsNoRealNumberIsLeftOutByName) {
  for (const char* name : {"level5.mat", "level5z.mat"}) {
    EXPECT_THAT(samples::look(name).leftOut,
                ElementsAre(HasSubstr("has 12 of 40 samples"), HasSubstr("a single number"),
                            HasSubstr("text"), HasSubstr("cell array"), HasSubstr("structure"),
                            HasSubstr("complex"), HasSubstr("3 dimensions")));
  }
}

TEST(Matlab, ANumberCalledFsIsTheRate) {
  const Recording rec = samples::read("rate.mat");
  EXPECT_THAT(rec.timeSource, HasSubstr("fs"));
  EXPECT_EQ(samples::times(rec), samples::all(samples::time));
  EXPECT_EQ(samples::column(rec, "wide(2)"), samples::all(samples::strain));
  EXPECT_THAT(samples::look("rate.mat").leftOut, IsEmpty());
}

TEST(Matlab, Level73BehindItsUserBlock) {
  const Recording rec = samples::read("level73.mat");
  EXPECT_EQ(samples::times(rec), samples::all(samples::time));
  EXPECT_THAT(names(rec), ElementsAre("both(1)", "both(2)", "counts"));
  EXPECT_EQ(samples::column(rec, "both(1)"), samples::all(samples::force));
  EXPECT_EQ(samples::column(rec, "both(2)"), samples::all(samples::strain));
  EXPECT_THAT(samples::look("level73.mat").leftOut,
              ElementsAre(HasSubstr("none"), HasSubstr("text"), HasSubstr("part of a structure"),
                          HasSubstr("complex")));
}

TEST(Hdf5, DatasetsByTheirPathWithUnits) {
  const Recording rec = samples::read("datasets.h5");
  EXPECT_EQ(rec.timeSource, "column 'run1/time'");
  EXPECT_EQ(samples::times(rec), samples::all(samples::time));
  EXPECT_THAT(names(rec), ElementsAre("run1/both(1)", "run1/both(2)", "run1/force"));
  EXPECT_EQ(rec.columns[2].unit, "N");
  EXPECT_EQ(samples::column(rec, "run1/force"), samples::all(samples::force));
  EXPECT_EQ(samples::column(rec, "run1/both(2)"), samples::all(samples::strain));
  // Neither the soft link nor the one into another file is followed.
  EXPECT_THAT(samples::look("datasets.h5").leftOut,
              ElementsAre(HasSubstr("label"), HasSubstr("12 of 40"), HasSubstr("complex")));
}

TEST(Hdf5, ATablesFieldsAreColumnsAndTheTimeMayBeMilliseconds) {
  const Recording rec = samples::read("table.h5");
  EXPECT_EQ(samples::look("table.h5").layout.time.form, core::TimeForm::Milliseconds);
  // 1000 k / 64 times 0.001 is rounded twice: 2 units of the last place below 1 s.
  for (std::size_t k = 0; k < samples::count; ++k) EXPECT_NEAR(rec.time[k], samples::time(k), 2.3e-16);
  EXPECT_EQ(samples::column(rec, "log/force"), samples::all(samples::force));
  EXPECT_EQ(samples::column(rec, "log/strain"), samples::all(samples::strain));
}

TEST(Hdf5, AnAttributeCalledSampleRateIsTheRate) {
  const Recording rec = samples::read("rate.h5");
  EXPECT_EQ(samples::times(rec), samples::all(samples::time));
  EXPECT_EQ(samples::column(rec, "bridge(1)"), samples::all(samples::force));
}

TEST(BinaryLayout, TheFirstRowsAreShownAndEveryGuessCanBeChanged) {
  const core::Preview preview = samples::look("rows.npy");
  ASSERT_GE(preview.rows.size(), 3u);
  EXPECT_THAT(preview.rows[1].cells, ElementsAre("0.015625", "-19", "-6.75"));
  EXPECT_EQ(preview.layout.time.column, 0u);

  LayoutChoices rate;
  rate.rate_Hz = 50;
  const Recording even = samples::read("rows.npy", rate);
  EXPECT_THAT(names(even), ElementsAre("Column 1", "Column 2", "Column 3"));
  EXPECT_EQ(even.time[1], 1.0 / 50);

  LayoutChoices minutes;
  minutes.timeForm = core::TimeForm::Minutes;
  EXPECT_EQ(samples::read("rows.npy", minutes).time[64 / 2], 30.0);
  LayoutChoices unit;
  unit.units[0] = "min";
  EXPECT_EQ(samples::read("rows.npy", unit).time[64 / 2], 30.0);
}

TEST(BinaryLayout, AColumnOrAFormThatCannotBeIsAnError) {
  LayoutChoices choices;
  choices.timeColumn = 7;
  const auto tooFar = core::readBinary(samples::path("rows.npy"), FileKind::Npy, choices);
  ASSERT_FALSE(tooFar);
  EXPECT_THAT(tooFar.error().text(), HasSubstr("no column 8"));
  choices.timeColumn = 0;
  choices.timeForm = core::TimeForm::Clock;
  const auto clock = core::readBinary(samples::path("rows.npy"), FileKind::Npy, choices);
  ASSERT_FALSE(clock);
  EXPECT_THAT(clock.error().text(), HasSubstr("plain numbers"));
}

TEST(BinaryLayout, ProgressRisesToOneAndStopEndsAtOnce) {
  for (const char* name : {"rows.npy", "even.uff", "level5z.mat", "datasets.h5", "float64.wav"}) {
    SCOPED_TRACE(name);
    const FileKind kind = *samples::kindOf(samples::bytes(name));
    std::vector<double> shares;
    const auto rec =
        core::readBinary(samples::path(name), kind, {}, {}, [&](double share) { shares.push_back(share); });
    ASSERT_TRUE(rec);
    EXPECT_TRUE(std::is_sorted(shares.begin(), shares.end()));
    EXPECT_EQ(shares.empty() ? 0.0 : shares.back(), 1.0);
    std::stop_source source;
    source.request_stop();
    const auto stopped = core::readBinary(samples::path(name), kind, {}, source.get_token());
    ASSERT_FALSE(stopped);
    EXPECT_EQ(stopped.error(), core::cancelled());
  }
}

}  // namespace
