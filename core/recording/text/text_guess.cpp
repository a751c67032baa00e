// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/text/text_guess.h"

#include <algorithm>
#include <cmath>

#include "core/recording/column_heading.h"
#include "core/recording/text/number.h"
#include "core/recording/text/table_guess.h"
#include "core/recording/text/time_guess.h"
#include "core/recording/time_units.h"
#include "core/units/language.h"

namespace core {
namespace {

constexpr std::size_t linesWanted = 1000;
constexpr std::size_t linesOfALongSearch = 100'000;

std::string number(std::size_t n) { return std::to_string(n); }

/// Choices that cannot be right whatever the file holds.
std::optional<Error> faultOfChoices(const LayoutChoices& choices) {
  const auto fault = [](std::string what, std::string mend) {
    return Error{"layout", std::move(what), std::move(mend)};
  };
  if (choices.separator == ',' && choices.decimal == ',')
    return fault(say("separator=comma and decimal=comma cannot both be"),
                 say("Choose another separator or decimal=point"));
  if (choices.firstRow == std::size_t{0})
    return fault(say("first-row=0: lines count from 1"), say("Choose first-row=1 or more"));
  if (choices.timeColumn && choices.rate_Hz)
    return fault(say("time={1} and rate= contradict each other", {number(*choices.timeColumn + 1)}),
                 say("Choose one of the two"));
  if (choices.rate_Hz && !(std::isfinite(*choices.rate_Hz) && *choices.rate_Hz > 0))
    return fault(say("rate= must be a number above 0"), say("Give the samples per second, such as rate=50"));
  if (choices.nameLine && choices.unitLine && *choices.nameLine != 0 &&
      *choices.nameLine == *choices.unitLine)
    return fault(say("names= and units= name the same line"),
                 say("Choose names=none or units=none, or another line"));
  const std::pair<const char*, std::optional<std::size_t>> lines[] = {{"names", choices.nameLine},
                                                                      {"units", choices.unitLine}};
  for (const auto& [word, line] : lines)
    if (line && choices.firstRow && *line >= *choices.firstRow)
      return fault(say("{1}={2}: it must stand above the first row, line {3}",
                       {std::string(word), number(*line), number(*choices.firstRow)}),
                   say("Choose a line above it, or {1}=none", {std::string(word)}));
  return std::nullopt;
}

/// Choices that this file does not bear.
std::optional<Error> faultIn(const LayoutChoices& choices, const Layout& layout) {
  const std::size_t columns = layout.columns.size();
  const auto fault = [](std::string what, std::string mend) {
    return Error{"layout", std::move(what), std::move(mend)};
  };
  const std::string have = sayCount(columns, "the file has {n} column", "the file has {n} columns");
  if (choices.timeColumn && *choices.timeColumn >= columns)
    return fault("time=" + number(*choices.timeColumn + 1) + ": " + have,
                 say("Choose time=1 to time={1}", {number(columns)}));
  for (const auto& [column, unit] : choices.units)
    if (column >= columns)
      return fault("unit." + number(column + 1) + ": " + have,
                   say("Choose unit.1 to unit.{1}", {number(columns)}));
  const std::pair<const char*, std::optional<std::size_t>> lines[] = {{"names", choices.nameLine},
                                                                      {"units", choices.unitLine}};
  for (const auto& [word, line] : lines)
    if (line && *line >= layout.firstRow)
      return fault(say("{1}={2}: the values begin in line {3}",
                       {std::string(word), number(*line), number(layout.firstRow)}),
                   say("Choose a line above it, {1}=none, or another first-row", {std::string(word)}));
  return std::nullopt;
}

Error where(Error error, const std::string& name) {
  error.where = name + ", " + error.where;
  return error;
}

Result<TableGuess> findTable(const RegularFile& file, const LayoutChoices& choices,
                             const std::stop_token& stop, TextSample& sample) {
  for (std::size_t lines = std::max(linesWanted, choices.firstRow.value_or(0) + 100);;
       lines = linesOfALongSearch) {
    auto found = sampleOf(file, choices, lines, stop);
    if (!found) return found.error();
    sample = *std::move(found);
    if (choices.firstRow && *choices.firstRow > sample.lines.size())
      return where({"layout",
                    say("first-row={1}: the file has {2} lines",
                        {number(*choices.firstRow), number(sample.lines.size())}),
                    say("Choose a line that holds values")},
                   file.name());
    auto table = guessTable(sample, choices, file.name());
    // A long preamble may hide the values.
    if (table || sample.isWhole || lines >= linesOfALongSearch) return table;
  }
}

/// Whether a column merely counts the rows and is named so, or has no name.
bool countsRows(const TableGuess& table, std::size_t column) {
  const std::string& name = table.layout.columns[column].name;
  if (!(isCounterName(name) || name.empty()) || table.kinds[column] != CellKind::Number) return false;
  std::optional<double> last;
  std::size_t steps = 0;
  for (const Cells& row : table.rows) {
    const CellNumber number = readNumber(row[column], table.layout.decimal);
    if (number.fault) continue;
    if (last && steps < 100 && number.value != *last + 1) return false;
    steps += last.has_value();
    last = number.value;
  }
  return steps > 1;
}

/// Whether a column is a time beside the one that counts, or a rate: its name says so and no unit denies it.
bool isOtherTime(const TableGuess& table, std::size_t column) {
  const auto& [name, unit] = table.layout.columns[column];
  return table.kinds[column] == CellKind::Number && timeNameStrength(name) > 1 &&
         (unit.empty() || unitOfTime(unit) || looksLikeTimePattern(unit));
}

/// Why a column that is not the time is no value, as the end of a sentence; null when it is one.
const char* reasonToLeaveOut(const TableGuess& table, std::size_t column) {
  if (countsRows(table, column)) return sayLater("counts the rows").data();
  if (isOtherTime(table, column)) return sayLater("is a time that is not needed").data();
  if (isStamp(table.kinds[column])) return sayLater("holds dates or times of day that are not needed").data();
  return table.kinds[column] == CellKind::Words ? sayLater("holds words").data() : nullptr;
}

/// Which columns are values; the others are named in `leftOut`, unless the time is made from them.
void sortColumns(const TableGuess& table, TextGuess& guess) {
  const auto& time = guess.layout.time;
  const std::size_t columns = table.kinds.size();
  const auto isTime = [&](std::size_t k) { return time.column == k || time.dateColumn == k; };
  // A number that counts or is named like a time is better than no value.
  bool hasValue = false;
  for (std::size_t k = 0; k < columns; ++k)
    hasValue = hasValue || (!isTime(k) && table.kinds[k] == CellKind::Number && !reasonToLeaveOut(table, k));
  RowPlan& plan = guess.plan;
  for (std::size_t k = 0; k < columns; ++k) {
    const std::string& name = guess.layout.columns[k].name;
    plan.names.push_back(name);
    CellUse use = CellUse::Value;
    const char* const reason = reasonToLeaveOut(table, k);
    if (isTime(k)) {
      use = time.column == k ? CellUse::Time : CellUse::Date;
    } else if (reason && (hasValue || table.kinds[k] != CellKind::Number)) {
      use = CellUse::LeftOut;
      guess.leftOut.push_back(say("'{1}' {2}", {name, say(reason)}));
    } else if (table.kinds[k] != CellKind::Number) {
      guess.leftOut.push_back(say("'{1}' has no number in the lines looked at", {name}));
    }
    plan.uses.push_back(use);
    if (use == CellUse::Value) plan.values.push_back(k);
  }
}

void setTime(const TimeGuess& time, TextGuess& guess) {
  RowPlan& plan = guess.plan;
  guess.layout.time = time.time;
  plan.hasTimeColumn = time.time.column.has_value();
  plan.form = time.time.form;
  plan.order = time.time.order;
  plan.hasDateColumn = time.time.dateColumn.has_value();
  plan.isAbsolute = time.isAbsolute;
  plan.base_ns = time.base_ns;
  // Of a clock alone the midnights are counted, so it must stay what it shows.
  if (plan.form == TimeForm::Clock && !plan.hasDateColumn) plan.base_ns = 0;
  guess.ahead_min = time.ahead_min;
}

}  // namespace

Result<TextGuess> guessText(const RegularFile& file, const LayoutChoices& choices,
                            const std::stop_token& stop) {
  if (auto fault = faultOfChoices(choices)) return where(*fault, file.name());
  TextGuess guess;
  auto table = findTable(file, choices, stop, guess.sample);
  if (!table) return table.error();
  if (auto fault = faultIn(choices, table->layout)) return where(*fault, file.name());
  for (const auto& [column, unit] : choices.units) table->layout.columns[column].unit = unit;
  guess.layout = table->layout;
  nameColumns(guess.layout.columns);
  guess.plan.separator = guess.layout.separator;
  guess.plan.decimal = guess.layout.decimal;
  const TimeGuess time = guessTime(*table, guess.layout.columns, choices);
  setTime(time, guess);
  guess.rateSource = choices.rate_Hz ? say("sample number and the sample rate given")
                                     : say("sample number and the sample rate of the preamble");
  guess.doubts = table->doubts;
  guess.doubts.insert(guess.doubts.end(), time.doubts.begin(), time.doubts.end());
  sortColumns(*table, guess);
  return guess;
}

}  // namespace core
