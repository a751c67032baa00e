// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/text/text_heading.h"

#include <algorithm>
#include <array>

namespace core {
namespace {

using Cells = std::vector<std::string_view>;

std::string lower(std::string_view text) {
  std::string result(text);
  for (char& c : result) {
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  }
  return result;
}

std::string_view trimmed(std::string_view text) {
  const std::size_t begin = text.find_first_not_of(" \t");
  if (begin == std::string_view::npos) return {};
  return text.substr(begin, text.find_last_not_of(" \t") - begin + 1);
}

template <std::size_t N>
bool isOneOf(std::string_view word, const std::array<std::string_view, N>& words) {
  return std::find(words.begin(), words.end(), word) != words.end();
}

/// Seconds in a unit of time; nothing for any other unit.
std::optional<double> unitOfTime(std::string_view unit) {
  const std::string word = lower(unit);
  if (isOneOf<6>(word, {"s", "sec", "secs", "second", "seconds", "sek"})) return 1.0;
  if (word == "ms") return 1e-3;
  if (isOneOf<3>(word, {"us", "\xC2\xB5s", "\xCE\xBCs"})) return 1e-6;
  if (isOneOf<3>(word, {"min", "minute", "minutes"})) return 60.0;
  if (isOneOf<3>(word, {"h", "hour", "hours"})) return 3600.0;
  return std::nullopt;
}

bool isTimeName(std::string_view name) {
  const std::string word = lower(name);
  if (word.starts_with("time") || word.starts_with("zeit")) return true;
  return word.ends_with(" time") ||
         isOneOf<8>(word, {"t", "seconds", "sec", "elapsed", "temps", "tempo", "tiempo", "tid"});
}

bool inBrackets(std::string_view text) {
  if (text.size() < 2) return false;
  return (text.front() == '[' && text.back() == ']') || (text.front() == '(' && text.back() == ')');
}

std::string_view withoutBrackets(std::string_view text) {
  return inBrackets(text) ? trimmed(text.substr(1, text.size() - 2)) : text;
}

/// "Force [kN]" taken apart.
ColumnHeading headingOf(std::string_view cell) {
  const std::size_t open = cell.find_last_of("[(");
  const bool closed = !cell.empty() && open != std::string_view::npos && inBrackets(cell.substr(open));
  if (!closed) return {cleanText(cell), ""};
  return {cleanText(trimmed(cell.substr(0, open))), cleanText(withoutBrackets(cell.substr(open)))};
}

bool isUnitRow(const Cells& cells) {
  if (unitOfTime(withoutBrackets(cells.front())) && !isTimeName(cells.front())) return true;
  return std::all_of(cells.begin(), cells.end(),
                     [](std::string_view cell) { return cell.empty() || inBrackets(cell); });
}

/// The cells of a heading row, without a comment sign before them.
Cells headingCells(std::string_view line, char separator) {
  line = trimmed(line);
  while (!line.empty() && (line.front() == '#' || line.front() == '%')) line.remove_prefix(1);
  Cells cells;
  splitCells(separator == '\t' ? line : trimmed(line), separator, cells);
  return cells;
}

/// A row of the table even if one of its cells is bad: as wide as the table and beginning with a number.
bool isRow(std::string_view line, const TableShape& shape) {
  Cells cells;
  splitCells(line, shape.format.separator, cells);
  if (cells.size() != shape.columns) return false;
  const CellNumber first = readNumber(cells.front(), shape.format.decimal);
  return !first.fault || first.fault == std::string_view("is not a finite number");
}

bool isRowOfNumbers(std::string_view line, const TableShape& shape) {
  Cells cells;
  splitCells(line, shape.format.separator, cells);
  return cells.size() == shape.columns && std::all_of(cells.begin(), cells.end(), [&](std::string_view cell) {
           return !readNumber(cell, shape.format.decimal).fault;
         });
}

std::size_t firstRow(const std::vector<std::string_view>& lines, const TableShape& shape) {
  std::size_t row = 0;
  while (row < lines.size() && !isRowOfNumbers(lines[row], shape)) ++row;
  while (row > 0 && isRow(lines[row - 1], shape)) --row;
  return row;
}

/// The number in "Sample rate: 50 Hz", "Abtastrate;2,5 kHz" and the like.
std::optional<double> sampleRate(std::string_view line) {
  const std::string text = lower(line);
  constexpr std::array<std::string_view, 8> names = {
      "sample rate",        "samplerate",         "sampling rate", "sample_rate",
      "sampling frequency", "samples per second", "abtastrate",    "messrate"};
  const auto named = [&](std::string_view name) { return text.find(name) != std::string::npos; };
  if (std::none_of(names.begin(), names.end(), named)) return std::nullopt;
  const std::size_t begin = text.find_first_of("0123456789");
  if (begin == std::string::npos) return std::nullopt;
  const std::size_t end = std::min(text.find_first_not_of("0123456789.,", begin), text.size());
  const std::string_view digits = std::string_view(text).substr(begin, end - begin);
  const char decimal = digits.find(',') != std::string_view::npos ? ',' : '.';
  const CellNumber rate = readNumber(digits, decimal);
  if (rate.fault || rate.value <= 0) return std::nullopt;
  return text.find("khz", end) != std::string::npos ? rate.value * 1000 : rate.value;
}

std::vector<ColumnHeading> columnHeadings(const std::vector<std::string_view>& lines, const TableShape& shape,
                                          std::size_t row) {
  std::vector<ColumnHeading> columns(shape.columns);
  std::vector<Cells> above;
  while (row > 0 && above.size() < 2) {
    const std::string_view line = lines[--row];
    if (trimmed(line).empty()) continue;
    above.push_back(headingCells(line, shape.format.separator));
    if (above.back().size() != shape.columns) above.back().clear();
  }
  if (above.empty() || above.front().empty()) return columns;
  const bool units = isUnitRow(above.front());
  const Cells names = !units ? above.front() : above.size() > 1 ? above.back() : Cells{};
  for (std::size_t k = 0; k < names.size(); ++k) columns[k] = headingOf(names[k]);
  for (std::size_t k = 0; units && k < shape.columns; ++k) {
    columns[k].unit = cleanText(withoutBrackets(above.front()[k]));
  }
  return columns;
}

}  // namespace

TextHeading readHeading(const std::vector<std::string_view>& lines, const TableShape& shape) {
  TextHeading heading;
  heading.lines = firstRow(lines, shape);
  heading.columns = columnHeadings(lines, shape, heading.lines);
  for (std::size_t k = 0; k < heading.lines && !heading.samplesPerSecond; ++k) {
    heading.samplesPerSecond = sampleRate(lines[k]);
  }
  return heading;
}

std::optional<TimeColumn> namedTimeColumn(const std::vector<ColumnHeading>& columns) {
  for (std::size_t k = 0; k < columns.size(); ++k) {
    const auto& [name, unit] = columns[k];
    if (name.ends_with("_ms") && isTimeName(name) && unit.empty()) return TimeColumn{k, 1e-3};
    const auto unit_s = unitOfTime(unit);
    if (isTimeName(name) && (unit.empty() || unit_s)) return TimeColumn{k, unit_s.value_or(1)};
    if (k == 0 && unit_s) return TimeColumn{k, *unit_s};
  }
  return std::nullopt;
}

bool mayBeTime(const ColumnHeading& heading) {
  const std::string word = lower(heading.name);
  const bool counts = isOneOf<11>(
      word, {"sample", "samples", "index", "no", "no.", "nr", "nr.", "number", "count", "n", "i"});
  return heading.unit.empty() && !counts;
}

}  // namespace core
