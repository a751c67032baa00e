// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/text/delimited_text.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <set>

#include "core/recording/file_bytes.h"
#include "core/recording/text/text_heading.h"
#include "core/recording/text/text_table.h"

namespace core {
namespace {

constexpr std::size_t linesLookedAt = 1000;  ///< to find format and heading
constexpr std::size_t linesPerReport = 4096;

/// The lines below the heading, read into columns. What the time is made of comes afterwards, since a column
/// without a name is only known to rise once all of it is read.
struct Rows {
  std::vector<std::vector<double>> columns;
  std::vector<std::size_t> lines;      ///< the line each row stands in
  std::vector<std::size_t> positions;  ///< the place of each row among all rows, skipped ones counted
};

void skip(Recording& recording, std::size_t line, std::string reason) {
  ++recording.linesSkipped;
  if (recording.skipped.size() < greatestSkippedListed)
    recording.skipped.push_back({line, std::move(reason)});
}

std::optional<Error> faultOfBytes(std::string_view bytes, const std::string& fileName) {
  if (bytes.starts_with("\xFF\xFE") || bytes.starts_with("\xFE\xFF")) {
    return Error{fileName, "the file is UTF-16 text", "Save it as UTF-8 text"};
  }
  if (bytes.find('\0') != std::string_view::npos) {
    return Error{fileName, "the file holds NUL bytes, so it is binary data or UTF-16 and not plain text",
                 "Export the recording as text (UTF-8)"};
  }
  return std::nullopt;
}

std::vector<std::string_view> beginningOf(std::string_view bytes) {
  std::vector<std::string_view> lines;
  LineReader reader(bytes);
  while (lines.size() < linesLookedAt) {
    const auto line = reader.next();
    if (!line) break;
    lines.push_back(line->size() > longestLine ? std::string_view() : *line);
  }
  return lines;
}

/// Names for columns without one, and a number behind names that come twice.
void nameColumns(std::vector<ColumnHeading>& columns) {
  std::set<std::string> taken;
  for (std::size_t k = 0; k < columns.size(); ++k) {
    std::string& name = columns[k].name;
    if (name.empty()) name = "column " + std::to_string(k + 1);
    const std::string first = name;
    for (int again = 2; !taken.insert(name).second; ++again)
      name = first + " (" + std::to_string(again) + ")";
  }
}

/// Why the cells are no row of numbers; otherwise they are in `row`.
std::optional<std::string> faultOfRow(const std::vector<std::string_view>& cells, const TextHeading& heading,
                                      char decimal, std::vector<double>& row) {
  if (cells.size() != heading.columns.size()) {
    return "has " + std::to_string(cells.size()) + " of " + std::to_string(heading.columns.size()) + " cells";
  }
  for (std::size_t k = 0; k < cells.size(); ++k) {
    const CellNumber number = readNumber(cells[k], decimal);
    if (number.fault) {
      return "'" + cleanText(cells[k], 40) + "' in '" + heading.columns[k].name + "' " + number.fault;
    }
    row[k] = number.value;
  }
  return std::nullopt;
}

/// Reads what stands below the heading; `recording` gets the account of the lines. False when stopped.
bool readRows(std::string_view bytes, const TextHeading& heading, TextFormat format, Recording& recording,
              Rows& rows, const std::stop_token& stop, const Progress& progress) {
  LineReader reader(bytes);
  std::vector<std::string_view> cells;
  std::vector<double> row(heading.columns.size());
  std::size_t position = 0;
  for (std::size_t line = 1;; ++line) {
    if (line % linesPerReport == 0) {
      if (stop.stop_requested()) return false;
      if (progress) progress(static_cast<double>(reader.position()) / static_cast<double>(bytes.size()));
    }
    const auto text = reader.next();
    if (!text) return true;
    const bool tooLong = text->size() > longestLine;
    if (!tooLong) splitCells(*text, format.separator, cells);
    if (line <= heading.lines || (!tooLong && cells.empty())) {
      ++recording.linesRead;
      continue;
    }
    ++position;
    const auto fault = tooLong ? "is longer than " + std::to_string(longestLine) + " bytes"
                               : faultOfRow(cells, heading, format.decimal, row);
    if (fault) {
      skip(recording, line, *fault);
      continue;
    }
    rows.lines.push_back(line);
    rows.positions.push_back(position - 1);
    for (std::size_t k = 0; k < row.size(); ++k) rows.columns[k].push_back(row[k]);
  }
}

/// The time of every row, and the column it comes from.
struct RowTimes {
  std::vector<double> time_s;
  std::string source;
  std::optional<std::size_t> column;
};

Result<RowTimes> timesOf(const Rows& rows, const TextHeading& heading, std::optional<TimeColumn> named,
                         bool firstMayBeTime, const std::string& fileName) {
  RowTimes times;
  if (!named && heading.samplesPerSecond) {
    for (const std::size_t position : rows.positions) {
      times.time_s.push_back(static_cast<double>(position) / *heading.samplesPerSecond);
    }
    times.source = "sample number and the sample rate of the preamble";
    return times;
  }
  const auto& first = rows.columns.front();
  const bool rises = first.size() > 1 &&
                     std::adjacent_find(first.begin(), first.end(), std::greater_equal<>()) == first.end();
  if (!named && firstMayBeTime && rises && rows.columns.size() > 1) named = TimeColumn{0, 1};
  if (!named) {
    return Error{fileName, "no column is known to be the time",
                 "Name the time column 'Time [s]', or give a line 'Sample rate: 50 Hz' above the names"};
  }
  times.time_s = rows.columns[named->index];
  for (double& t : times.time_s) t *= named->unit_s;
  times.source = "column '" + heading.columns[named->index].name + "'";
  times.column = named->index;
  return times;
}

/// The rows whose time is a number and does not lie before that of the row above; the others are skipped.
std::vector<std::size_t> risingRows(Recording& recording, const Rows& rows,
                                    const std::vector<double>& time_s) {
  std::vector<std::size_t> kept;
  for (std::size_t i = 0; i < time_s.size(); ++i) {
    if (!std::isfinite(time_s[i])) {
      skip(recording, rows.lines[i], "its time is beyond the range of numbers");
    } else if (!kept.empty() && time_s[i] < time_s[kept.back()]) {
      skip(recording, rows.lines[i], "its time lies before that of the row above");
    } else {
      kept.push_back(i);
    }
  }
  std::sort(recording.skipped.begin(), recording.skipped.end(),
            [](const SkippedLine& a, const SkippedLine& b) { return a.line < b.line; });
  return kept;
}

/// Keeps those of `values` that stand at the rising places `kept`.
void keepOnly(std::vector<double>& values, const std::vector<std::size_t>& kept) {
  for (std::size_t i = 0; i < kept.size(); ++i) values[i] = values[kept[i]];
  values.resize(kept.size());
}

void takeRows(Recording& recording, Rows rows, RowTimes times, const TextHeading& heading) {
  const std::vector<std::size_t> kept = risingRows(recording, rows, times.time_s);
  recording.linesRead += kept.size();
  std::vector<double> time_s = std::move(times.time_s);
  recording.timeSource = std::move(times.source);
  keepOnly(time_s, kept);
  recording.time = TimeAxis(std::move(time_s));
  for (std::size_t k = 0; k < rows.columns.size(); ++k) {
    if (times.column == k) continue;
    keepOnly(rows.columns[k], kept);
    recording.columns.push_back(
        {heading.columns[k].name, heading.columns[k].unit, std::move(rows.columns[k])});
  }
}

}  // namespace

Result<Recording> readDelimitedText(std::string_view bytes, const std::string& fileName, std::stop_token stop,
                                    const Progress& progress) {
  if (auto fault = faultOfBytes(bytes, fileName)) return *fault;
  if (bytes.starts_with("\xEF\xBB\xBF")) bytes.remove_prefix(3);
  const auto beginning = beginningOf(bytes);
  const TableShape shape = shapeOf(beginning);
  if (shape.columns == 0) {
    return Error{fileName, "no line holds only numbers", "Choose a text file with columns of numbers"};
  }
  if (shape.columns > greatestColumns) {
    return Error{fileName, "the table has more than " + std::to_string(greatestColumns) + " columns",
                 "Export fewer channels at a time"};
  }
  TextHeading heading = readHeading(beginning, shape);
  const auto named = namedTimeColumn(heading.columns);
  const bool firstMayBeTime = mayBeTime(heading.columns.front());
  nameColumns(heading.columns);

  Recording recording;
  Rows rows;
  rows.columns.resize(shape.columns);
  if (stop.stop_requested() || !readRows(bytes, heading, shape.format, recording, rows, stop, progress)) {
    return cancelled();
  }
  auto times = timesOf(rows, heading, named, firstMayBeTime, fileName);
  if (!times) return times.error();
  takeRows(recording, std::move(rows), *std::move(times), heading);
  if (recording.columns.empty()) {
    return Error{fileName, "there is a time column and nothing else", "Export at least one channel"};
  }
  if (recording.time.empty()) {
    return Error{fileName, "no row has a time that is a number", "Check the unit of the time column"};
  }
  if (progress) progress(1);
  return recording;
}

Result<Recording> readDelimitedFile(const std::filesystem::path& path, std::stop_token stop,
                                    const Progress& progress) {
  const auto bytes = readRegularFile(path, greatestFileSize, stop);
  if (!bytes) return bytes.error();
  return readDelimitedText(*bytes, cleanText(path.filename().string()), stop, progress);
}

}  // namespace core
