// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/units/result.h"

// How a recording's file is to be read. A layout is guessed from the file; every part of the guess can be
// replaced by the user's choice.

namespace core {

/// Told by the content of a file, never by its name.
enum class FileKind : std::uint8_t { Text, Wav, Npy, Mat, Hdf5, Uff58 };

enum class TextEncoding : std::uint8_t { Utf8, Latin1, Utf16LittleEndian, Utf16BigEndian };

/// How the cells of the time column are written.
enum class TimeForm : std::uint8_t {
  Seconds,
  Milliseconds,
  Microseconds,
  Minutes,
  Hours,
  Clock,        ///< 13:45:10.25, running on past midnight
  DateAndTime,  ///< 2026-05-11T13:45:10.25, also with a blank, and in other orders of the date
};

enum class DateOrder : std::uint8_t { YearMonthDay, DayMonthYear, MonthDayYear };

/// Name and unit of a column as the heading gives them; both may be empty.
struct ColumnHeading {
  std::string name;
  std::string unit;

  friend bool operator==(const ColumnHeading&, const ColumnHeading&) = default;
};

/// Where the times come from: a column, or the sample number over a rate.
struct TimeLayout {
  std::optional<std::size_t> column;      ///< index among all columns of the file
  std::optional<std::size_t> dateColumn;  ///< with TimeForm::Clock: the date stands in a column of its own
  TimeForm form = TimeForm::Seconds;
  DateOrder order = DateOrder::YearMonthDay;
  double rate_Hz = 0;  ///< above 0 when there is no time column; 0 with no column: the time is not known

  friend bool operator==(const TimeLayout&, const TimeLayout&) = default;
};

/// All that is needed to read a file. Lines are counted from 1, columns from 0.
struct Layout {
  FileKind kind = FileKind::Text;
  // Text alone:
  TextEncoding encoding = TextEncoding::Utf8;
  char separator = ',';      ///< ',', ';', tab, '|', or ' ' for any run of blanks
  char decimal = '.';        ///< '.' or ','; ',' beside a separating ',' only where cells are quoted
  std::size_t firstRow = 1;  ///< the first line that is a row of numbers
  std::size_t nameLine = 0;  ///< the line of names; 0: none
  std::size_t unitLine = 0;  ///< the line of units; 0: none, or they stand in the names
  // All kinds:
  TimeLayout time;
  std::vector<ColumnHeading> columns;  ///< all columns of the file, the time too; names unique, not empty

  friend bool operator==(const Layout&, const Layout&) = default;
};

/// What the user decided; everything else is guessed.
struct LayoutChoices {
  std::optional<TextEncoding> encoding;
  std::optional<char> separator;
  std::optional<char> decimal;
  std::optional<std::size_t> firstRow;
  std::optional<std::size_t> nameLine;
  std::optional<std::size_t> unitLine;
  std::optional<std::size_t> timeColumn;  ///< takes the place of a rate
  std::optional<TimeForm> timeForm;
  std::optional<DateOrder> dateOrder;
  std::optional<double> rate_Hz;             ///< takes the place of a time column
  std::map<std::size_t, std::string> units;  ///< of columns, by their index

  bool empty() const { return *this == LayoutChoices{}; }
  friend bool operator==(const LayoutChoices&, const LayoutChoices&) = default;
};

/// The choices in one line, as documents and the command line write them, empty for none:
/// "encoding=latin-1 separator=semicolon decimal=comma first-row=12 names=10 units=11 time=1 time-form=ms
/// date-order=dmy rate=50 unit.3=kN"; columns and lines counted from 1. choicesFromText reads it back
/// exactly; it names the word that it does not know and what may stand there. A unit is percent-encoded where
/// it holds blanks.
std::string textOf(const LayoutChoices& choices);
Result<LayoutChoices> choicesFromText(std::string_view text);

enum class RowRole : std::uint8_t { Preamble, Names, Units, Values };

/// A line of the beginning of a file, as it stands there.
struct PreviewRow {
  std::size_t line = 0;  ///< counted from 1
  RowRole role = RowRole::Values;
  std::vector<std::string> cells;  ///< clean UTF-8; of a preamble line one cell
};

/// What is known of a file before all of it is read.
struct Preview {
  Layout layout;
  std::vector<PreviewRow> rows;  ///< the first lines, at most greatestPreviewRows
  /// What could not be told for sure, or stands in the way of reading, as sentences; empty when the guess is
  /// plain.
  std::vector<std::string> doubts;
  /// Columns that cannot be read with the others, by name, and why ("has 12 of 5000 samples").
  std::vector<std::string> leftOut;
};

constexpr std::size_t greatestPreviewRows = 60;

}  // namespace core
