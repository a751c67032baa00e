// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/binary/uff_numbers.h"

#include <algorithm>
#include <limits>
#include <optional>

#include "core/recording/binary/line_scanner.h"
#include "core/recording/binary/number_records.h"

namespace core {
namespace {

constexpr std::size_t greatestOnLine = 6;

/// The fields of a line: E13.5 for single numbers and every abscissa, E20.12 for double ordinates.
struct LineForm {
  std::size_t fields = 6;
  std::size_t widths[2] = {13, 13};  ///< in turn
};

LineForm lineFormOf(const Uff58Heading& heading) {
  if (!heading.isDouble()) return {6, {13, 13}};
  return heading.even ? LineForm{4, {20, 20}} : LineForm{4, {13, 20}};
}

/// By the columns of the line, where numbers may touch each other. None when they do not stand there.
std::optional<std::size_t> numbersByColumns(std::string_view line, const LineForm& form, double* to) {
  std::size_t count = 0;
  for (std::size_t at = 0; count < form.fields && at < line.size(); ++count) {
    const std::size_t width = form.widths[count % 2];
    const auto number = uffNumber(line.substr(at, width));
    if (!number) return std::nullopt;
    to[count] = *number;
    at += width;
  }
  return count;
}

/// By blanks, for writers who do not keep to the columns.
std::size_t numbersByBlanks(std::string_view line, double* to) {
  std::size_t count = 0;
  for (std::size_t at = line.find_first_not_of(" \t"); at < line.size() && count < greatestOnLine;) {
    const std::size_t end = std::min(line.find_first_of(" \t", at), line.size());
    to[count++] = uffNumber(line.substr(at, end - at)).value_or(std::numeric_limits<double>::quiet_NaN());
    at = line.find_first_not_of(" \t", end);
  }
  return count;
}

Result<Uff58Numbers> numbersOfText(const RegularFile& file, const Uff58Set& set, std::uint64_t count,
                                   const std::stop_token& stop, const Progress& progress) {
  constexpr std::size_t linesBetweenLooks = 4096;
  const LineForm form = lineFormOf(set.heading);
  const bool pairs = !set.heading.even;
  Uff58Numbers numbers;
  numbers.ordinate.reserve(static_cast<std::size_t>(std::min(count, (set.end - set.begin) / 10)));
  LineScanner lines(file, set.begin, set.end);
  std::size_t inPair = 0;
  for (std::size_t k = 1; numbers.ordinate.size() < count && lines.next(); ++k) {
    double values[greatestOnLine];
    const std::string_view line = lines.line().substr(0, lines.line().find_last_not_of(" \t") + 1);
    const std::size_t held = numbersByColumns(line, form, values).value_or(0);
    const std::size_t found = held > 0 ? held : numbersByBlanks(line, values);
    for (std::size_t n = 0; n < found && numbers.ordinate.size() < count; ++n) {
      const bool isAbscissa = pairs && inPair++ % 2 == 0;
      (isAbscissa ? numbers.abscissa : numbers.ordinate).push_back(values[n]);
    }
    if (k % linesBetweenLooks != 0) continue;
    if (stop.stop_requested()) return cancelled();
    if (progress)
      progress(static_cast<double>(lines.nextOffset() - set.begin) /
               static_cast<double>(set.end - set.begin));
  }
  if (lines.fault()) return *lines.fault();
  // A pair of which the second number is missing.
  if (pairs) numbers.abscissa.resize(numbers.ordinate.size());
  return numbers;
}

Result<Uff58Numbers> numbersOfBytes(const RegularFile& file, const Uff58Set& set, std::uint64_t count,
                                    const std::stop_token& stop, const Progress& progress) {
  const bool bigEndian = set.heading.form == Uff58Form::BigEndian;
  const std::size_t abscissaBytes = set.heading.even ? 0 : 4;
  RecordField ordinate;
  ordinate.offset = abscissaBytes;
  ordinate.format = {NumberKind::Float, set.heading.isDouble() ? 8UL : 4UL, bigEndian};
  RecordBlock block{set.begin, abscissaBytes + ordinate.format.bytes, 0, {ordinate}};
  block.records = std::min(set.heading.count, (set.end - set.begin) / block.recordBytes);
  if (!set.heading.even) {
    RecordField abscissa;
    abscissa.format = {NumberKind::Float, abscissaBytes, bigEndian};
    abscissa.column = 1;
    block.fields.push_back(abscissa);
  }
  auto values = readBlocks(file, {block}, 2, count, stop, progress);
  if (!values) return values.error();
  return Uff58Numbers{std::move((*values)[1]), std::move((*values)[0])};
}

}  // namespace

Result<Uff58Numbers> uff58Numbers(const RegularFile& file, const Uff58Set& set, std::uint64_t count,
                                  const std::stop_token& stop, const Progress& progress) {
  count = std::min(count, set.heading.count);
  return set.heading.form == Uff58Form::Text ? numbersOfText(file, set, count, stop, progress)
                                             : numbersOfBytes(file, set, count, stop, progress);
}

}  // namespace core
